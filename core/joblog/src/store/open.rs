//! Opening: look before touching, repair by setting aside, migrate, derive, sweep.

use std::fs;
use std::io::ErrorKind;
use std::path::Path;

use rusqlite::{Connection, OptionalExtension, params};

use super::connect::{self, Header};
use super::migrate::{self, MIGRATIONS, Migration};
use super::{Condition, Store, derived, salvage, spare};
use crate::entry::DeviceId;
use crate::error::OpenError;
use crate::photo::Photos;

impl Store {
    /// Opens the log in `dir`, making folder and log if there are none. A new log draws its device id from the
    /// system's randomness.
    ///
    /// A damaged log is kept aside and what can be read of it is put into a new one; a log that can only be read
    /// is opened so: see [`Store::condition`].
    ///
    /// # Errors
    /// [`OpenError::Newer`] and [`OpenError::NotALog`] leave the file untouched; the others say what the system
    /// refused.
    pub fn open(dir: &Path) -> Result<Self, OpenError> {
        open_by(dir, None, MIGRATIONS, Check::IfQuick)
    }

    /// As [`Store::open`], with every page of the file looked at, however large it is: what to call after
    /// [`UseError::Damaged`](crate::UseError::Damaged). [`Store::open`] looks at every page of a file up to 16 MiB only (some
    /// thousand jobs), because a larger one would make a person wait.
    ///
    /// # Errors
    /// As [`Store::open`].
    pub fn open_checked(dir: &Path) -> Result<Self, OpenError> {
        open_by(dir, None, MIGRATIONS, Check::Whole)
    }

    /// As [`Store::open`], but a new log gets the device id `device`: for runs that have to be the same each time.
    ///
    /// # Errors
    /// As [`Store::open`].
    pub fn open_as(dir: &Path, device: DeviceId) -> Result<Self, OpenError> {
        open_by(dir, Some(device), MIGRATIONS, Check::IfQuick)
    }

    /// Opens the log in `dir` only to read: nothing in the folder is changed.
    ///
    /// # Errors
    /// [`OpenError::NoAccess`] if there is none or it can't be read; else as [`Store::open`].
    pub fn open_to_read(dir: &Path) -> Result<Self, OpenError> {
        refuse_foreign(dir, MIGRATIONS, Check::IfQuick)?;
        let connection = connect::to_read(&connect::log_file(dir))?;
        let device = own_device(&connection)?.ok_or(OpenError::NotALog {
            path: connect::log_file(dir),
        })?;
        Ok(Store {
            connection,
            dir: dir.to_owned(),
            device,
            condition: Condition::ReadOnly,
            jobs_named: 0,
        })
    }
}

/// Whether every page is looked at.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Check {
    /// Only in a file of at most [`QUICK_BYTES`].
    IfQuick,
    /// In any.
    Whole,
}

const QUICK_BYTES: u64 = 16 << 20;

pub(super) fn open_by(
    dir: &Path,
    device: Option<DeviceId>,
    migrations: &[Migration],
    check: Check,
) -> Result<Store, OpenError> {
    fs::create_dir_all(dir)?;
    salvage::finish_interrupted(dir)?;
    let mut condition = Condition::Good;
    if refuse_foreign(dir, migrations, check)? == Found::Damaged {
        condition = salvage::salvage(dir, device, migrations)?;
    }
    let (connection, device) = match to_write(dir, device, migrations) {
        Ok(opened) => opened,
        // No room for the WAL, or no right to write: what is there can still be read.
        Err(error @ (OpenError::NoSpace(_) | OpenError::NoAccess(_))) => {
            return Store::open_to_read(dir).map_err(|_| error);
        }
        Err(other) => return Err(other),
    };
    if condition == Condition::Good {
        // Best effort, both: a log that opens is worth more than a tidy folder or a fresh spare copy.
        let named = named_photos(&connection)?;
        let _swept = Photos::at(dir).sweep(&|digest| named.contains(digest));
        let _renewed = spare::renew_if_due(&connection, dir);
    }
    Ok(Store {
        connection,
        dir: dir.to_owned(),
        device,
        condition,
        jobs_named: 0,
    })
}

fn to_write(
    dir: &Path,
    device: Option<DeviceId>,
    migrations: &[Migration],
) -> Result<(Connection, DeviceId), OpenError> {
    let mut connection = connect::to_write(&connect::log_file(dir))?;
    if connection.is_readonly("main")? {
        return Err(OpenError::NoAccess(ErrorKind::ReadOnlyFilesystem.into()));
    }
    connect::set_up(&connection)?;
    migrate::migrate(&mut connection, migrations)?;
    let device = match own_device(&connection)? {
        Some(device) => device,
        None => name_log(&connection, device)?,
    };
    derived::ensure(&mut connection)?;
    Ok((connection, device))
}

/// What is there.
#[derive(Debug, PartialEq, Eq)]
enum Found {
    Fresh,
    Log,
    Damaged,
}

/// Looks at what is there without changing it.
fn refuse_foreign(dir: &Path, migrations: &[Migration], check: Check) -> Result<Found, OpenError> {
    let file = connect::log_file(dir);
    let known = migrate::newest(migrations);
    match connect::header(&file)? {
        Header::Fresh => return Ok(Found::Fresh),
        Header::Damaged => return Ok(Found::Damaged),
        Header::Database { version, .. } if version > known => {
            return Err(OpenError::Newer {
                found: version,
                known,
            });
        }
        Header::Database { .. } => {}
    }
    // What was committed last may still stand in the WAL: ask SQLite, without writing.
    match inspect(&file, check) {
        Ok(seen) if seen.version > known => Err(OpenError::Newer {
            found: seen.version,
            known,
        }),
        Ok(seen) if !seen.whole => Ok(Found::Damaged),
        Ok(seen) if seen.application == connect::APPLICATION_ID => Ok(Found::Log),
        // A log whose first write was broken off has no mark yet, and nothing in it.
        Ok(seen) if seen.application == 0 && seen.tables == 0 => Ok(Found::Fresh),
        Ok(_) => Err(OpenError::NotALog { path: file }),
        Err(error) if is_damage(&error) => Ok(Found::Damaged),
        Err(error) => Err(error.into()),
    }
}

struct Inspected {
    application: u32,
    version: u32,
    tables: u32,
    whole: bool,
}

fn inspect(file: &Path, check: Check) -> Result<Inspected, rusqlite::Error> {
    let connection = connect::to_read(file)?;
    let ask = |sql| connection.query_row(sql, [], |row| row.get::<_, u32>(0));
    let whole = match check {
        Check::IfQuick if fs::metadata(file).is_ok_and(|meta| meta.len() > QUICK_BYTES) => "ok".to_owned(),
        Check::IfQuick | Check::Whole => {
            connection.query_row("PRAGMA quick_check(1)", [], |row| row.get(0))?
        }
    };
    Ok(Inspected {
        application: ask("PRAGMA application_id")?,
        version: migrate::version(&connection)?,
        tables: ask("SELECT count(*) FROM sqlite_schema")?,
        whole: whole == "ok",
    })
}

/// Whether an error means that the file is damaged.
pub(super) fn is_damage(error: &rusqlite::Error) -> bool {
    use rusqlite::ErrorCode as Code;
    matches!(
        error.sqlite_error_code(),
        Some(Code::DatabaseCorrupt | Code::NotADatabase)
    )
}

/// The log's own device id, if it has been named.
pub(super) fn own_device(connection: &Connection) -> Result<Option<DeviceId>, rusqlite::Error> {
    connection
        .query_row("SELECT device FROM log", [], |row| row.get(0).map(DeviceId))
        .optional()
}

/// Gives a new log its device id.
pub(super) fn name_log(connection: &Connection, device: Option<DeviceId>) -> Result<DeviceId, OpenError> {
    let device = match device {
        Some(device) => device,
        None => {
            let mut bytes = [0; 16];
            getrandom::fill(&mut bytes).map_err(|_| OpenError::NoRandom)?;
            DeviceId(bytes)
        }
    };
    connection.execute(
        "INSERT INTO log (one, device, last_counter, last_hlc) VALUES (1, ?1, 0, NULL)",
        params![device.0],
    )?;
    Ok(device)
}

fn named_photos(connection: &Connection) -> Result<std::collections::HashSet<String>, rusqlite::Error> {
    connection
        .prepare("SELECT DISTINCT sha256 FROM job_photo")?
        .query_map([], |row| row.get(0))?
        .collect()
}
