//! A damaged log: kept aside as it is, what can be read of it and of the spare copy put into a new one.
//!
//! The new log is built whole beside the damaged one before any file is moved, so a kill at any step loses
//! nothing: before the move it is begun anew, after it the new log only has to get its name.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use rusqlite::{Connection, params};

use super::migrate::{self, Migration};
use super::{Condition, connect, derived, open, rows, spare, write};
use crate::entry::{DeviceId, Entry, EntryKey};
use crate::error::{OpenError, UseError};

fn new_file(dir: &Path) -> PathBuf {
    dir.join("joblog.salvaged.sqlite")
}

/// Ends what a kill broke off: a salvaged log without its name gets it.
pub(super) fn finish_interrupted(dir: &Path) -> Result<(), OpenError> {
    let (new, log) = (new_file(dir), connect::log_file(dir));
    if new.exists() && !log.exists() {
        fs::rename(new, log)?;
    }
    Ok(())
}

/// Builds a new log from what is readable and keeps the damaged one aside.
pub(super) fn salvage(
    dir: &Path,
    device: Option<DeviceId>,
    migrations: &[Migration],
) -> Result<Condition, OpenError> {
    let log = connect::log_file(dir);
    let found = Readable::of(dir);

    let new = new_file(dir);
    for leftover in connect::with_companions(&new) {
        let _gone = fs::remove_file(leftover);
    }
    let entries = found.entries.len();
    let missing = found
        .keys
        .keys()
        .filter(|key| !found.entries.contains_key(key))
        .count();
    build(&new, &found, device, migrations)?;

    let kept_in = free_folder(dir)?;
    // The log itself goes last: as long as it stands there, the salvage counts as not begun.
    for file in connect::with_companions(&log).iter().rev() {
        if let (true, Some(name)) = (file.exists(), file.file_name()) {
            fs::rename(file, kept_in.join(name))?;
        }
    }
    fs::rename(&new, &log)?;
    Ok(Condition::Salvaged {
        kept_in,
        entries,
        missing,
    })
}

/// The new log, in one file, closed.
fn build(
    file: &Path,
    found: &Readable,
    device: Option<DeviceId>,
    migrations: &[Migration],
) -> Result<(), OpenError> {
    let mut connection = connect::to_write(file)?;
    connect::set_up(&connection)?;
    migrate::migrate(&mut connection, migrations)?;
    // A device id of its own: which counters the damaged log had given away can't be known for sure.
    open::name_log(
        &connection,
        device.filter(|device| !found.entries.keys().any(|key| key.device == *device)),
    )?;
    let transaction = connection.transaction()?;
    for job in &found.purged {
        transaction.execute("INSERT OR IGNORE INTO purged (job) VALUES (?1)", [job])?;
    }
    let entries: Vec<Entry> = found.entries.values().cloned().collect();
    write::merge_in(&transaction, &entries).map_err(|error| match error {
        UseError::Database(error) | UseError::Damaged(error) => OpenError::from(error),
        UseError::NoSpace => OpenError::NoSpace(std::io::ErrorKind::StorageFull.into()),
        other => OpenError::Io(std::io::Error::other(other)),
    })?;
    if let Some(session) = &found.session {
        transaction.execute("INSERT INTO session (one, body) VALUES (1, ?1)", [session])?;
    }
    derived::rebuild(&transaction)?;
    transaction.commit()?;
    connection.query_row("PRAGMA wal_checkpoint(TRUNCATE)", [], |_| Ok(()))?;
    connection.close().map_err(|(_, error)| error)?;
    fs::File::open(file)?.sync_all()?;
    Ok(())
}

/// A folder for the damaged files that is not there yet.
fn free_folder(dir: &Path) -> Result<PathBuf, OpenError> {
    let free = (1u32..)
        .map(|n| dir.join(format!("damaged-{n}")))
        .find(|folder| !folder.exists());
    let folder = free.ok_or_else(|| OpenError::Io(std::io::ErrorKind::AlreadyExists.into()))?;
    fs::create_dir(&folder)?;
    Ok(folder)
}

/// What could be read.
#[derive(Debug, Default)]
pub(super) struct Readable {
    entries: BTreeMap<EntryKey, Entry>,
    /// Keys that an index names, whether or not their entries can be read.
    keys: BTreeMap<EntryKey, ()>,
    purged: Vec<[u8; 16]>,
    session: Option<String>,
}

impl Readable {
    /// What can be read of the log in `dir` and of its spare copy.
    pub(super) fn of(dir: &Path) -> Self {
        let mut found = Self::default();
        found.read_from(&connect::log_file(dir));
        found.read_from(&spare::spare_file(dir));
        found
    }

    /// The entries of jobs that were not purged, by device and counter.
    pub(super) fn into_entries(self) -> impl Iterator<Item = Entry> {
        let purged = self.purged;
        let stays = move |entry: &Entry| !purged.contains(&entry.job.0);
        self.entries.into_values().filter(stays)
    }

    /// Reads what it can of one file; what can't be read is passed over.
    fn read_from(&mut self, file: &Path) {
        if !file.exists() {
            return;
        }
        let Ok(connection) = connect::to_read(file) else {
            return;
        };
        for order in ["ASC", "DESC"] {
            let sql = format!(
                "SELECT {} FROM entries ORDER BY device {order}, counter {order}",
                rows::COLUMNS
            );
            each(&connection, &sql, rows::entry, |entry| {
                self.entries.entry(entry.key).or_insert(entry);
            });
        }
        let keys = "SELECT device, counter FROM entries INDEXED BY entries_of_job ORDER BY job, hlc, device, counter";
        let key = |row: &rusqlite::Row<'_>| {
            let counter: i64 = row.get(1)?;
            Ok(EntryKey {
                device: DeviceId(row.get(0)?),
                counter: counter.unsigned_abs(),
            })
        };
        each(&connection, keys, key, |key| {
            self.keys.insert(key, ());
        });
        let missing: Vec<EntryKey> = self
            .keys
            .keys()
            .filter(|key| !self.entries.contains_key(key))
            .copied()
            .collect();
        for key in missing {
            if let Ok(Some(entry)) = rows::find(&connection, key) {
                self.entries.insert(key, entry);
            }
        }
        each(
            &connection,
            "SELECT job FROM purged",
            |row| row.get(0),
            |job| self.purged.push(job),
        );
        if self.session.is_none() {
            self.session = connection
                .query_row("SELECT body FROM session", params![], |row| row.get(0))
                .ok();
        }
    }
}

/// Reads rows until the end or the first that can't be read.
fn each<T>(
    connection: &Connection,
    sql: &str,
    read: impl Fn(&rusqlite::Row<'_>) -> Result<T, rusqlite::Error>,
    mut take: impl FnMut(T),
) {
    let Ok(mut statement) = connection.prepare(sql) else {
        return;
    };
    let Ok(rows) = statement.query_map([], |row| read(row)) else {
        return;
    };
    for row in rows {
        match row {
            Ok(row) => take(row),
            Err(_) => break,
        }
    }
}
