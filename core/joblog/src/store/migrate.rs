//! Numbered migrations: each runs once, in order, all of them in one transaction. A released file never changes.

use rusqlite::{Connection, TransactionBehavior};

/// One step of the file format.
#[derive(Debug, Clone, Copy)]
pub(super) struct Migration {
    /// The format's number after it: 1, 2, 3 … without gap.
    pub(super) to: u32,
    /// What it does.
    pub(super) sql: &'static str,
}

/// All there are.
pub(super) const MIGRATIONS: &[Migration] = &[Migration {
    to: 1,
    sql: include_str!("../../migrations/0001_entries.sql"),
}];

/// The format that this software writes.
pub(super) fn newest(migrations: &[Migration]) -> u32 {
    migrations.last().map_or(0, |last| last.to)
}

/// The format a connection's file has.
pub(super) fn version(connection: &Connection) -> Result<u32, rusqlite::Error> {
    connection.query_row("PRAGMA user_version", [], |row| row.get(0))
}

/// Brings the file to the newest format. Killed or failing half-way, the file is as it was before.
///
/// Returns whether anything was done.
pub(super) fn migrate(
    connection: &mut Connection,
    migrations: &[Migration],
) -> Result<bool, rusqlite::Error> {
    if version(connection)? == newest(migrations) {
        return Ok(false);
    }
    let transaction = connection.transaction_with_behavior(TransactionBehavior::Immediate)?;
    let from = version(&transaction)?;
    for migration in migrations.iter().filter(|migration| migration.to > from) {
        transaction.execute_batch(migration.sql)?;
        transaction.pragma_update(None, "user_version", migration.to)?;
    }
    transaction.pragma_update(None, "application_id", super::connect::APPLICATION_ID)?;
    transaction.commit()?;
    // The version has to stand in the file itself: an older software reads it there before it touches anything.
    connection.query_row("PRAGMA wal_checkpoint(TRUNCATE)", [], |_| Ok(()))?;
    Ok(true)
}
