//! Connections to the file, and what the file says of itself before it is touched.

use std::fs::File;
use std::io::{ErrorKind, Read};
use std::path::{Path, PathBuf};

use rusqlite::{Connection, OpenFlags};

use crate::error::OpenError;

/// Marks the file as a job log (`PRAGMA application_id`): "HFjl".
pub(super) const APPLICATION_ID: u32 = 0x4846_6A6C;

const MAGIC: &[u8; 16] = b"SQLite format 3\0";

/// The log's file in a data folder.
pub(super) fn log_file(dir: &Path) -> PathBuf {
    dir.join("joblog.sqlite")
}

/// The files SQLite keeps beside a database, and itself.
pub(super) fn with_companions(file: &Path) -> [PathBuf; 3] {
    ["", "-wal", "-shm"].map(|end| {
        let mut name = file.as_os_str().to_owned();
        name.push(end);
        PathBuf::from(name)
    })
}

/// What a file is, as far as its first bytes say.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Header {
    /// There is none, or an empty one.
    Fresh,
    /// Too short, or not of SQLite.
    Damaged,
    /// A database, with the version that stands in the file.
    Database { version: u32 },
}

/// Reads a file's header without opening it as a database.
pub(super) fn header(file: &Path) -> Result<Header, OpenError> {
    let mut bytes = [0u8; 100];
    let read = match File::open(file) {
        Ok(mut open) => read_up_to(&mut open, &mut bytes)?,
        Err(error) if error.kind() == ErrorKind::NotFound => return Ok(Header::Fresh),
        Err(error) => return Err(error.into()),
    };
    // The format's number (`PRAGMA user_version`) stands big-endian at byte 60.
    let version = bytes
        .get(60..64)
        .and_then(|four| four.try_into().ok())
        .map_or(0, u32::from_be_bytes);
    Ok(match read {
        0 => Header::Fresh,
        100 if bytes.starts_with(MAGIC) => Header::Database { version },
        _ => Header::Damaged,
    })
}

fn read_up_to(from: &mut File, bytes: &mut [u8]) -> std::io::Result<usize> {
    let mut filled = 0;
    while let Some(rest) = bytes.get_mut(filled..).filter(|rest| !rest.is_empty()) {
        match from.read(rest)? {
            0 => break,
            more => filled += more,
        }
    }
    Ok(filled)
}

/// A connection that writes.
pub(super) fn to_write(file: &Path) -> Result<Connection, rusqlite::Error> {
    let flags =
        OpenFlags::SQLITE_OPEN_READ_WRITE | OpenFlags::SQLITE_OPEN_CREATE | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let connection = Connection::open_with_flags(file, flags)?;
    connection.busy_timeout(std::time::Duration::from_secs(2))?;
    Ok(connection)
}

/// What every writing connection is set to.
pub(super) fn set_up(connection: &Connection) -> Result<(), rusqlite::Error> {
    // Where shared memory can't be had SQLite stays with its rollback journal: as safe, only slower.
    connection.query_row("PRAGMA journal_mode = WAL", [], |_| Ok(()))?;
    connection.execute_batch(
        "PRAGMA synchronous = FULL;
         PRAGMA secure_delete = ON;
         PRAGMA foreign_keys = ON;
         PRAGMA trusted_schema = OFF;",
    )?;
    connection.set_prepared_statement_cache_capacity(64);
    Ok(())
}

/// A connection that only reads and leaves the file as it is.
pub(super) fn to_read(file: &Path) -> Result<Connection, rusqlite::Error> {
    let flags = OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let plain = Connection::open_with_flags(file, flags).and_then(|connection| {
        connection.busy_timeout(std::time::Duration::from_secs(2))?;
        connection.query_row("SELECT count(*) FROM sqlite_schema", [], |_| Ok(()))?;
        Ok(connection)
    });
    match plain {
        Err(error)
            if error.sqlite_error_code() == Some(rusqlite::ErrorCode::CannotOpen) && !has_wal(file) =>
        {
            immutable(file)
        }
        other => other,
    }
}

fn has_wal(file: &Path) -> bool {
    let [_, wal, _] = with_companions(file);
    std::fs::metadata(wal).is_ok_and(|meta| meta.is_file() && meta.len() > 0)
}

/// On a file system that can't be written to, SQLite can't make its shared memory file; without a pending WAL the
/// file itself is all there is, and can be read as it stands.
fn immutable(file: &Path) -> Result<Connection, rusqlite::Error> {
    let mut uri = String::from("file:");
    for byte in file.to_string_lossy().bytes() {
        match byte {
            b'a'..=b'z' | b'A'..=b'Z' | b'0'..=b'9' | b'/' | b'-' | b'_' | b'.' => uri.push(char::from(byte)),
            other => uri.push_str(&format!("%{other:02X}")),
        }
    }
    uri.push_str("?immutable=1");
    let flags =
        OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_NO_MUTEX | OpenFlags::SQLITE_OPEN_URI;
    Connection::open_with_flags(uri, flags)
}
