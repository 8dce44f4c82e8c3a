//! What can go wrong, apart for opening the log and for using it: a caller does something else about each.

use std::io;
use std::path::PathBuf;

use crate::entry::{EntryKey, JobId};

/// The log can't be opened. Nothing of it was changed.
#[derive(Debug, thiserror::Error)]
pub enum OpenError {
    /// A newer version wrote it. To be opened by that version.
    #[error("the log has format {found}, this software knows up to {known}")]
    Newer {
        /// The format's number in the file.
        found: u32,
        /// The newest this software knows.
        known: u32,
    },
    /// The file there belongs to another program.
    #[error("{path} is not a job log")]
    NotALog {
        /// Which file.
        path: PathBuf,
    },
    /// Another process is writing to it for longer than this one can wait.
    #[error("the log is in use by another process")]
    InUse,
    /// No room on the device.
    #[error("no room on the device")]
    NoSpace(#[source] io::Error),
    /// The folder may not be read, or can't be made.
    #[error("the folder can't be used")]
    NoAccess(#[source] io::Error),
    /// No randomness for a device id.
    #[error("the system gives no random number")]
    NoRandom,
    /// Anything else of the file system.
    #[error("the file system failed")]
    Io(#[source] io::Error),
    /// Anything else of the database.
    #[error("the database failed")]
    Database(#[source] rusqlite::Error),
}

/// Something could not be read from or written to the open log. What was there before still is.
#[derive(Debug, thiserror::Error)]
pub enum UseError {
    /// No room on the device: nothing of this write was kept.
    #[error("no room on the device")]
    NoSpace,
    /// The log was opened for reading, or the file system became so.
    #[error("the log can only be read")]
    ReadOnly,
    /// The database is damaged: open it again by [`Store::open_checked`](crate::Store::open_checked), which keeps
    /// it aside and salvages what is readable.
    #[error("the database is damaged")]
    Damaged(#[source] rusqlite::Error),
    /// Another process is writing to it for longer than this one can wait.
    #[error("the log is in use by another process")]
    InUse,
    /// There is no such entry to correct or undo in this job.
    #[error("job {job} has no entry {target}")]
    NoTarget {
        /// The job.
        job: JobId,
        /// What was named.
        target: EntryKey,
    },
    /// The job was purged.
    #[error("job {job} was purged")]
    Purged {
        /// The job.
        job: JobId,
    },
    /// The job has to be in the bin to be purged.
    #[error("job {job} is not in the bin")]
    NotBinned {
        /// The job.
        job: JobId,
    },
    /// One body is larger than the log takes.
    #[error("a body of {bytes} bytes, at most {most} are taken")]
    TooLarge {
        /// Its size.
        bytes: usize,
        /// The bound.
        most: usize,
    },
    /// A number that JSON can't hold, such as infinity.
    #[error("the body can't be written as JSON")]
    Body(#[source] serde_json::Error),
    /// The file system failed.
    #[error("the file system failed")]
    Io(#[source] io::Error),
    /// Anything else of the database.
    #[error("the database failed")]
    Database(#[source] rusqlite::Error),
}

impl From<rusqlite::Error> for UseError {
    fn from(error: rusqlite::Error) -> Self {
        use rusqlite::ErrorCode as Code;
        match error.sqlite_error_code() {
            Some(Code::DiskFull) => UseError::NoSpace,
            Some(Code::ReadOnly) => UseError::ReadOnly,
            Some(Code::DatabaseBusy | Code::DatabaseLocked) => UseError::InUse,
            Some(Code::DatabaseCorrupt | Code::NotADatabase) => UseError::Damaged(error),
            _ => UseError::Database(error),
        }
    }
}

impl From<rusqlite::Error> for OpenError {
    fn from(error: rusqlite::Error) -> Self {
        use rusqlite::ErrorCode as Code;
        match error.sqlite_error_code() {
            Some(Code::DiskFull) => OpenError::NoSpace(io::Error::from(io::ErrorKind::StorageFull)),
            Some(Code::DatabaseBusy | Code::DatabaseLocked) => OpenError::InUse,
            Some(Code::CannotOpen | Code::PermissionDenied) => {
                OpenError::NoAccess(io::Error::from(io::ErrorKind::PermissionDenied))
            }
            _ => OpenError::Database(error),
        }
    }
}

impl From<io::Error> for OpenError {
    fn from(error: io::Error) -> Self {
        use io::ErrorKind as Kind;
        match error.kind() {
            Kind::StorageFull | Kind::QuotaExceeded | Kind::FileTooLarge => OpenError::NoSpace(error),
            Kind::PermissionDenied | Kind::ReadOnlyFilesystem | Kind::NotADirectory | Kind::AlreadyExists => {
                OpenError::NoAccess(error)
            }
            _ => OpenError::Io(error),
        }
    }
}

impl From<io::Error> for UseError {
    fn from(error: io::Error) -> Self {
        use io::ErrorKind as Kind;
        match error.kind() {
            Kind::StorageFull | Kind::QuotaExceeded | Kind::FileTooLarge => UseError::NoSpace,
            Kind::PermissionDenied | Kind::ReadOnlyFilesystem => UseError::ReadOnly,
            _ => UseError::Io(error),
        }
    }
}
