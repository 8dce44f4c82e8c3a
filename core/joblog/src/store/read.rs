//! Reading: entries, a job's state, the session.

use rusqlite::OptionalExtension;

use super::{Store, rows};
use crate::entry::{Entry, EntryKey, JobId};
use crate::error::UseError;
use crate::fold::{JobState, fold};

impl Store {
    /// A job's entries in the order that holds everywhere.
    ///
    /// # Errors
    /// [`UseError::Damaged`] if the file can't be read.
    pub fn entries(&self, job: JobId) -> Result<Vec<Entry>, UseError> {
        Ok(rows::of_job(&self.connection, job)?)
    }

    /// Every entry of the log, by device and counter: for an export.
    ///
    /// # Errors
    /// [`UseError::Damaged`] if the file can't be read.
    pub fn all_entries(&self) -> Result<Vec<Entry>, UseError> {
        let sql = format!("SELECT {} FROM entries ORDER BY device, counter", rows::COLUMNS);
        let mut statement = self.connection.prepare(&sql)?;
        let entries = statement.query_map([], rows::entry)?.collect::<Result<_, _>>()?;
        Ok(entries)
    }

    /// One entry.
    ///
    /// # Errors
    /// [`UseError::Damaged`] if the file can't be read.
    pub fn entry(&self, key: EntryKey) -> Result<Option<Entry>, UseError> {
        Ok(rows::find(&self.connection, key)?)
    }

    /// A job's state; empty if it has no entries.
    ///
    /// # Errors
    /// [`UseError::Damaged`] if the file can't be read.
    pub fn fold(&self, job: JobId) -> Result<JobState, UseError> {
        Ok(fold(job, &self.entries(job)?))
    }

    /// The session as it was last set, JSON.
    ///
    /// # Errors
    /// [`UseError::Damaged`] if the file can't be read.
    pub fn session(&self) -> Result<Option<String>, UseError> {
        Ok(self
            .connection
            .query_row("SELECT body FROM session", [], |row| row.get(0))
            .optional()?)
    }
}
