//! Opening: look before touching, repair by setting aside, migrate, derive, sweep.

use std::fs;
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
        open_by(dir, None, MIGRATIONS)
    }

    /// As [`Store::open`], but a new log gets the device id `device`: for runs that have to be the same each time.
    ///
    /// # Errors
    /// As [`Store::open`].
    pub fn open_as(dir: &Path, device: DeviceId) -> Result<Self, OpenError> {
        open_by(dir, Some(device), MIGRATIONS)
    }

    /// Opens the log in `dir` only to read: nothing in the folder is changed.
    ///
    /// # Errors
    /// [`OpenError::NoAccess`] if there is none or it can't be read; else as [`Store::open`].
    pub fn open_to_read(dir: &Path) -> Result<Self, OpenError> {
        refuse_foreign(dir, MIGRATIONS)?;
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

pub(super) fn open_by(
    dir: &Path,
    device: Option<DeviceId>,
    migrations: &[Migration],
) -> Result<Store, OpenError> {
    fs::create_dir_all(dir)?;
    salvage::finish_interrupted(dir)?;
    let mut condition = Condition::Good;
    if refuse_foreign(dir, migrations)? == Found::Damaged {
        condition = salvage::salvage(dir, device, migrations)?;
    }
    let file = connect::log_file(dir);
    let mut connection = connect::to_write(&file)?;
    if connection.is_readonly("main")? {
        drop(connection);
        return Store::open_to_read(dir);
    }
    connect::set_up(&connection)?;
    migrate::migrate(&mut connection, migrations)?;
    let device = match own_device(&connection)? {
        Some(device) => device,
        None => name_log(&connection, device)?,
    };
    derived::ensure(&mut connection)?;
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

/// What is there.
#[derive(Debug, PartialEq, Eq)]
enum Found {
    Fresh,
    Log,
    Damaged,
}

/// Looks at what is there without changing it.
fn refuse_foreign(dir: &Path, migrations: &[Migration]) -> Result<Found, OpenError> {
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
        // A log whose first write was broken off has neither mark.
        Header::Database {
            application: 0,
            version: 0,
        } => {}
        Header::Database { application, .. } if application != connect::APPLICATION_ID => {
            return Err(OpenError::NotALog { path: file });
        }
        Header::Database { .. } => {}
    }
    // What was committed last may still stand in the WAL: ask SQLite, without writing.
    match inspect(&file) {
        Ok(Inspected { version, .. }) if version > known => Err(OpenError::Newer {
            found: version,
            known,
        }),
        Ok(Inspected { whole: true, .. }) => Ok(Found::Log),
        Ok(Inspected { whole: false, .. }) => Ok(Found::Damaged),
        Err(error) if is_damage(&error) => Ok(Found::Damaged),
        Err(error) => Err(error.into()),
    }
}

struct Inspected {
    version: u32,
    whole: bool,
}

fn inspect(file: &Path) -> Result<Inspected, rusqlite::Error> {
    let connection = connect::to_read(file)?;
    let version = migrate::version(&connection)?;
    let verdict: String = connection.query_row("PRAGMA quick_check(1)", [], |row| row.get(0))?;
    Ok(Inspected {
        version,
        whole: verdict == "ok",
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
