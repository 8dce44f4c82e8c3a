//! The bin: in, out, and emptied for good.

use rusqlite::params;

use super::{Store, derived, rows, spare};
use crate::entry::{Entry, JobId, Stamp};
use crate::error::UseError;
use crate::payload::{Binned, Payload};

impl Store {
    /// Puts a job in the bin. Undoing the entry that comes back fetches it out again.
    ///
    /// # Errors
    /// As [`Store::write`].
    pub fn bin(&mut self, job: JobId, stamp: Stamp) -> Result<Entry, UseError> {
        self.append(job, &Payload::Binned(Binned {}), stamp)
    }

    /// Fetches a job out of the bin; nothing if it is not there.
    ///
    /// # Errors
    /// As [`Store::write`].
    pub fn unbin(&mut self, job: JobId, stamp: Stamp) -> Result<Option<Entry>, UseError> {
        match self.fold(job)?.binned {
            Some(binned) => self.undo(job, binned, stamp).map(Some),
            None => Ok(None),
        }
    }

    /// Takes a binned job's entries and the photos that no other job names away for good, leaving its random id,
    /// so that an old bundle does not bring it back unasked. What was freed is overwritten in the file
    /// (`secure_delete`); the spare copy goes too. Logs that were damaged and kept aside are not searched.
    ///
    /// # Errors
    /// [`UseError::NotBinned`]; else as [`Store::write`].
    pub fn purge(&mut self, job: JobId) -> Result<(), UseError> {
        if self.fold(job)?.binned.is_none() {
            return Err(UseError::NotBinned { job });
        }
        if self.condition == super::Condition::ReadOnly {
            return Err(UseError::ReadOnly);
        }
        spare::remove_spare(&self.dir);
        let transaction = self.begin()?;
        let photos: Vec<String> = transaction
            .prepare(
                "SELECT sha256 FROM job_photo AS mine WHERE job = ?1
                 AND NOT EXISTS (SELECT 1 FROM job_photo WHERE sha256 = mine.sha256 AND job <> ?1)",
            )?
            .query_map([job.0], |row| row.get(0))?
            .collect::<Result<_, _>>()?;
        derived::remove_job(&transaction, job)?;
        transaction.execute("DELETE FROM entries WHERE job = ?1", params![job.0])?;
        transaction.execute("INSERT OR IGNORE INTO purged (job) VALUES (?1)", params![job.0])?;
        transaction.commit()?;
        // The WAL holds what the file held before: write it back and empty it.
        self.connection
            .query_row("PRAGMA wal_checkpoint(TRUNCATE)", [], |_| Ok(()))?;
        let shelf = self.photos();
        for photo in photos {
            shelf.remove(&photo)?;
        }
        Ok(())
    }

    /// Empties the bin: see [`Store::purge`]. Gives the jobs that went.
    ///
    /// # Errors
    /// As [`Store::write`]; what was purged before the error stays so.
    pub fn empty_bin(&mut self) -> Result<Vec<JobId>, UseError> {
        let binned: Vec<JobId> = self
            .connection
            .prepare("SELECT job FROM job_list WHERE binned = 1")?
            .query_map([], |row| row.get(0).map(JobId))?
            .collect::<Result<_, _>>()?;
        binned.iter().try_for_each(|job| self.purge(*job))?;
        Ok(binned)
    }

    /// The jobs that were purged here.
    ///
    /// # Errors
    /// [`UseError::Damaged`] if the file can't be read.
    pub fn purged(&self) -> Result<Vec<JobId>, UseError> {
        let mut statement = self.connection.prepare("SELECT job FROM purged ORDER BY job")?;
        let jobs = statement
            .query_map([], |row| row.get(0).map(JobId))?
            .collect::<Result<_, _>>()?;
        Ok(jobs)
    }

    /// Lets a purged job be taken in again, when the person asks for it.
    ///
    /// # Errors
    /// As [`Store::write`].
    pub fn allow_again(&mut self, job: JobId) -> Result<(), UseError> {
        let transaction = self.begin()?;
        if rows::is_purged(&transaction, job)? {
            transaction.execute("DELETE FROM purged WHERE job = ?1", params![job.0])?;
        }
        transaction.commit()?;
        Ok(())
    }
}
