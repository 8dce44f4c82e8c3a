//! Entries as rows.

use rusqlite::types::Type;
use rusqlite::{Connection, OptionalExtension, Row, params};
use sha2::{Digest, Sha256};

use crate::entry::{DeviceId, Entry, EntryKey, JobId};

/// The columns in the order that [`entry`] reads.
pub(super) const COLUMNS: &str = "device, counter, job, hlc, at_ms, offset_min, kind, v, body";

/// Reads a row of [`COLUMNS`].
pub(super) fn entry(row: &Row<'_>) -> Result<Entry, rusqlite::Error> {
    let counter: i64 = row.get(1)?;
    let counter = u64::try_from(counter).map_err(|_| rusqlite::Error::IntegralValueOutOfRange(1, counter))?;
    Ok(Entry {
        key: EntryKey {
            device: DeviceId(row.get(0)?),
            counter,
        },
        job: JobId(row.get(2)?),
        hlc: row.get(3)?,
        at_ms: row.get(4)?,
        offset_min: row.get(5)?,
        kind: row.get(6)?,
        v: row.get(7)?,
        body: row.get(8)?,
    })
}

/// A counter as SQLite holds it.
pub(super) fn stored_counter(key: EntryKey) -> Result<i64, rusqlite::Error> {
    i64::try_from(key.counter)
        .map_err(|error| rusqlite::Error::FromSqlConversionFailure(1, Type::Integer, error.into()))
}

/// Puts an entry in. Fails if there is one under its key.
pub(super) fn insert(connection: &Connection, entry: &Entry) -> Result<(), rusqlite::Error> {
    connection
        .prepare_cached(
            "INSERT INTO entries (device, counter, job, hlc, at_ms, offset_min, kind, v, body)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9)",
        )?
        .execute(params![
            entry.key.device.0,
            stored_counter(entry.key)?,
            entry.job.0,
            entry.hlc,
            entry.at_ms,
            entry.offset_min,
            entry.kind,
            entry.v,
            entry.body,
        ])?;
    Ok(())
}

/// The entry under a key.
pub(super) fn find(connection: &Connection, key: EntryKey) -> Result<Option<Entry>, rusqlite::Error> {
    connection
        .prepare_cached(
            "SELECT device, counter, job, hlc, at_ms, offset_min, kind, v, body FROM entries
             WHERE device = ?1 AND counter = ?2",
        )?
        .query_row(params![key.device.0, stored_counter(key)?], entry)
        .optional()
}

/// A job's entries in order.
pub(super) fn of_job(connection: &Connection, job: JobId) -> Result<Vec<Entry>, rusqlite::Error> {
    connection
        .prepare_cached(
            "SELECT device, counter, job, hlc, at_ms, offset_min, kind, v, body FROM entries
             WHERE job = ?1 ORDER BY hlc, device, counter",
        )?
        .query_map([job.0], entry)?
        .collect()
}

/// Whether a job was purged.
pub(super) fn is_purged(connection: &Connection, job: JobId) -> Result<bool, rusqlite::Error> {
    connection
        .prepare_cached("SELECT 1 FROM purged WHERE job = ?1")?
        .exists([job.0])
}

/// The id of the `nth` job named since opening: a digest of device, counter and `nth`, so that it says nothing and
/// the same steps on the same device give the same id.
pub(super) fn name_job(connection: &Connection, device: DeviceId, nth: u64) -> JobId {
    let counter: i64 = connection
        .query_row("SELECT last_counter FROM log", [], |row| row.get(0))
        .unwrap_or_default();
    let digest = Sha256::new()
        .chain_update(device.0)
        .chain_update(counter.to_be_bytes())
        .chain_update(nth.to_be_bytes())
        .finalize();
    let mut id = [0; 16];
    for (to, from) in id.iter_mut().zip(digest.iter()) {
        *to = *from;
    }
    JobId(id)
}
