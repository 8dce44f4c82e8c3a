//! A spare copy of the log, made while the log is known to be whole: what is left to read when it no longer is.

use std::fs::{self, File};
use std::path::{Path, PathBuf};

use rusqlite::Connection;

use super::connect;

/// Renewed when the log has grown by this many entries, or by a tenth, whichever is more: the copy costs the
/// size of the log.
const LEAST_GROWTH: i64 = 64;

/// The spare copy in a data folder.
pub(super) fn spare_file(dir: &Path) -> PathBuf {
    dir.join("joblog.spare.sqlite")
}

/// Renews the copy if the log has grown enough since. Call it only on a log that was checked.
pub(super) fn renew_if_due(connection: &Connection, dir: &Path) -> Result<bool, rusqlite::Error> {
    let count =
        |from: &Connection| from.query_row("SELECT count(*) FROM entries", [], |row| row.get::<_, i64>(0));
    let now = count(connection)?;
    let then = if spare_file(dir).exists() {
        connect::to_read(&spare_file(dir))
            .and_then(|spare| count(&spare))
            .unwrap_or(0)
    } else {
        0
    };
    if now - then < LEAST_GROWTH.max(now / 10) {
        return Ok(false);
    }
    let new = dir.join("joblog.spare.new");
    remove(&new);
    connection.execute("VACUUM INTO ?1", [new.to_string_lossy()])?;
    let renamed = File::open(&new)
        .and_then(|file| file.sync_all())
        .and_then(|()| fs::rename(&new, spare_file(dir)));
    Ok(renamed.is_ok())
}

/// Does away with the copy: what was purged must not stand in it.
pub(super) fn remove_spare(dir: &Path) {
    for file in connect::with_companions(&spare_file(dir)) {
        remove(&file);
    }
    remove(&dir.join("joblog.spare.new"));
}

fn remove(file: &Path) {
    // Not there is what is wanted; anything else shows when the name is used next.
    let _gone = fs::remove_file(file);
}
