//! The store: one SQLite file, photos beside it, one writer.

mod beside;
mod condition;
mod connect;
mod derived;
mod list;
mod migrate;
mod open;
mod purge;
mod read;
mod rows;
mod salvage;
mod spare;
mod write;

use std::path::{Path, PathBuf};

use rusqlite::Connection;

use crate::entry::{DeviceId, JobId};
use crate::photo::Photos;

pub(crate) use beside::{Beside, Snapshot};
pub use condition::Condition;
pub use list::{ClosedRow, JobRow, Query, Shelf};
pub use write::{Merged, Write};

/// The open job log of one data folder.
///
/// A write is on disk when its call returns (WAL, `synchronous = FULL`); a process killed at any moment leaves
/// either the whole write or nothing of it. Dropping the store closes it.
#[derive(Debug)]
pub struct Store {
    connection: Connection,
    dir: PathBuf,
    device: DeviceId,
    condition: Condition,
    /// Job ids handed out since opening, so that two asked for in a row differ.
    jobs_named: u64,
}

/// The size of a body at most, bytes: a one-second trace is under 1 kB, a long note under 100 kB.
pub(crate) const MOST_BODY_BYTES: usize = 4 << 20;

/// The latest clock an entry may carry: 9999-12-31T23:59:59.999Z.
pub(crate) const MOST_HLC: i64 = 253_402_300_799_999;

impl Store {
    /// This log's own id.
    pub fn device(&self) -> DeviceId {
        self.device
    }

    /// The data folder.
    pub fn dir(&self) -> &Path {
        &self.dir
    }

    /// In what condition the log was found.
    pub fn condition(&self) -> &Condition {
        &self.condition
    }

    /// The photos of this data folder: a handle of its own, for use on another thread.
    pub fn photos(&self) -> Photos {
        Photos::at(&self.dir)
    }

    /// An id for a new job. The job exists once it has an entry.
    pub fn new_job(&mut self) -> JobId {
        self.jobs_named += 1;
        rows::name_job(&self.connection, self.device, self.jobs_named)
    }
}

#[cfg(test)]
mod tests;
