//! Why a scenario can't be played.

use std::io;
use std::path::PathBuf;

use holdfast_companion::{ActError, FieldId, OpenError};
use holdfast_diagnose::AnswerError;

/// Why a scenario can't be played.
#[derive(Debug, thiserror::Error)]
pub enum PlayError {
    /// The file can't be read.
    #[error("{path} can't be read: {source}")]
    File {
        /// Which.
        path: PathBuf,
        /// Why.
        #[source]
        source: io::Error,
    },
    /// It is not a scenario.
    #[error("not a scenario: {0}")]
    Scenario(#[from] serde_json::Error),
    /// Something in it does not exist, or is out of range.
    #[error("the scenario's {what} can't be: {why}")]
    Value {
        /// Where in the scenario.
        what: String,
        /// Why.
        why: String,
    },
    /// An answer that its test can't have.
    #[error(transparent)]
    Answer(#[from] AnswerError),
    /// A screen lacks what the job needs there: the program is broken.
    #[error("the screen '{screen}' has no {missing}")]
    Missing {
        /// The screen's title.
        screen: String,
        /// What was looked for.
        missing: String,
    },
    /// A field refused a figure of the scenario.
    #[error("the field {field:?} refuses {text:?}: {problem}")]
    Refused {
        /// Which field.
        field: FieldId,
        /// What was typed.
        text: String,
        /// What it says.
        problem: String,
    },
    /// The job does not come to an end: the program is broken.
    #[error("no end after {0} tests")]
    Endless(usize),
    /// The companion could not open its data folder.
    #[error(transparent)]
    Open(#[from] OpenError),
    /// The companion could not carry out an action.
    #[error(transparent)]
    Act(#[from] ActError),
    /// The log could not be made.
    #[error(transparent)]
    Log(#[from] holdfast_joblog::OpenError),
    /// The report could not be made or written.
    #[error("the report: {0}")]
    Report(String),
    /// A folder or file could not be made.
    #[error(transparent)]
    Io(#[from] io::Error),
}
