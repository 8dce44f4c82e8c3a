//! The log seen from another thread: a snapshot to read from, a second connection to merge by.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

use rusqlite::{Connection, OptionalExtension, TransactionBehavior};

use super::salvage::Readable;
use super::write::{Merged, merge_in};
use super::{Condition, Store, connect, derived, rows};
use crate::bundle::{Exporter, Importer};
use crate::entry::{Entry, JobId};
use crate::error::UseError;
use crate::kind;

impl Store {
    /// Packs bundles of this log, on any thread; `software` is the version that does.
    pub fn exporter(&self, software: &str) -> Exporter {
        Exporter::new(&self.dir, software)
    }

    /// Takes bundles into this log, on any thread. What it took in is there for the store's next call.
    pub fn importer(&self) -> Importer {
        Importer::new(&self.dir, self.condition != Condition::ReadOnly)
    }
}

/// The log as it stood at one moment.
pub(crate) enum Snapshot {
    /// In a read transaction.
    Log(Connection),
    /// What can be read of a damaged log and its spare copy.
    Readable(BTreeMap<JobId, Vec<Entry>>),
}

impl Snapshot {
    /// Of a log that reads.
    pub(crate) fn of_log(dir: &Path) -> Result<Self, UseError> {
        let connection = connect::to_read(&connect::log_file(dir))?;
        connection.execute_batch("BEGIN")?;
        Ok(Self::Log(connection))
    }

    /// Of whatever can be read.
    pub(crate) fn of_readable(dir: &Path) -> Self {
        let mut jobs: BTreeMap<JobId, Vec<Entry>> = BTreeMap::new();
        for entry in Readable::of(dir).into_entries() {
            jobs.entry(entry.job).or_default().push(entry);
        }
        Self::Readable(jobs)
    }

    pub(crate) fn all_jobs(&self) -> Result<BTreeSet<JobId>, UseError> {
        match self {
            Self::Log(connection) => Ok(connection
                .prepare("SELECT DISTINCT job FROM entries")?
                .query_map([], |row| row.get(0).map(JobId))?
                .collect::<Result<_, _>>()?),
            Self::Readable(jobs) => Ok(jobs.keys().copied().collect()),
        }
    }

    /// These jobs, and the streams of what is known of their vehicle kinds.
    pub(crate) fn with_kinds(&self, jobs: &[JobId]) -> Result<BTreeSet<JobId>, UseError> {
        let mut all: BTreeSet<JobId> = jobs.iter().copied().collect();
        for job in jobs {
            let label: Option<String> = match self {
                Self::Log(connection) => connection
                    .query_row("SELECT label FROM job_list WHERE job = ?1", [job.0], |row| {
                        row.get(0)
                    })
                    .optional()?
                    .flatten(),
                Self::Readable(_) => crate::fold::fold(*job, &self.entries_of(*job)?).vehicle.label,
            };
            let kind = label.and_then(|label| kind::stream(&label));
            all.extend(kind.filter(|kind| self.entries_of(*kind).is_ok_and(|entries| !entries.is_empty())));
        }
        Ok(all)
    }

    pub(crate) fn entries_of(&self, job: JobId) -> Result<Vec<Entry>, UseError> {
        match self {
            Self::Log(connection) => Ok(rows::of_job(connection, job)?),
            Self::Readable(jobs) => Ok(jobs.get(&job).cloned().unwrap_or_default()),
        }
    }

    /// The digests of the photos that these jobs name.
    pub(crate) fn photos_of(&self, jobs: &BTreeSet<JobId>) -> Result<BTreeSet<String>, UseError> {
        let mut digests = BTreeSet::new();
        for job in jobs {
            match self {
                Self::Log(connection) => {
                    let mut statement =
                        connection.prepare_cached("SELECT sha256 FROM job_photo WHERE job = ?1")?;
                    for digest in statement.query_map([job.0], |row| row.get(0))? {
                        digests.insert(digest?);
                    }
                }
                Self::Readable(_) => {
                    let entries = self.entries_of(*job)?;
                    digests.extend(entries.iter().flat_map(|entry| derived::digests_in(&entry.body)));
                }
            }
        }
        Ok(digests)
    }
}

/// A second connection that writes to an open log.
pub(crate) struct Beside {
    connection: Connection,
}

impl Beside {
    pub(crate) fn open(dir: &Path) -> Result<Self, UseError> {
        let connection = connect::to_write(&connect::log_file(dir))?;
        connect::set_up(&connection)?;
        Ok(Self { connection })
    }

    /// As [`Store::merge`].
    pub(crate) fn merge(&mut self, entries: &[Entry]) -> Result<Merged, UseError> {
        let transaction = self
            .connection
            .transaction_with_behavior(TransactionBehavior::Immediate)?;
        let merged = merge_in(&transaction, entries)?;
        for job in &merged.jobs {
            derived::rebuild_job(&transaction, *job)?;
        }
        transaction.commit()?;
        Ok(merged)
    }
}
