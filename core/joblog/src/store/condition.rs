//! In what condition a log was found.

use std::path::PathBuf;

/// In what condition the log was found when it was opened.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Condition {
    /// All is well.
    Good,
    /// It can be read, not written to.
    ReadOnly,
    /// It was damaged. The damaged files were kept aside and a new log made of what could be read.
    Salvaged {
        /// The folder with the damaged files.
        kept_in: PathBuf,
        /// How many entries could be read.
        entries: usize,
        /// How many entries are known to be missing; there may be more.
        missing: usize,
    },
}
