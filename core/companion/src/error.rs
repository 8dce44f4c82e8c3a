//! What can go wrong, and what the person can do about it. Opening and acting fail differently, so they are two
//! enums; an entry that can't be right is no error but words beside its field.

use std::path::PathBuf;

use holdfast_joblog::UseError;

use crate::text::{Args, Texts};

/// What the person can do about an error.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Remedy {
    /// Put the entry right.
    CorrectEntry,
    /// Free space on the phone.
    FreeSpace,
    /// Install the newer version of the app.
    UpdateApp,
    /// Try again.
    TryAgain,
    /// Export what can be read.
    ExportData,
}

/// Why the data folder could not be opened.
#[derive(Debug, thiserror::Error)]
pub enum OpenError {
    /// The log in it could not be opened.
    #[error("the job log could not be opened: {0}")]
    Log(#[from] holdfast_joblog::OpenError),
    /// The log was opened and could not be read.
    #[error("the job log could not be read: {0}")]
    Read(#[from] holdfast_joblog::UseError),
    /// The folder could not be made.
    #[error("the data folder {path} could not be made: {source}")]
    Folder {
        /// Which.
        path: PathBuf,
        /// Why.
        #[source]
        source: std::io::Error,
    },
}

/// Why an action could not be carried out. What was there before is still there.
#[derive(Debug, thiserror::Error)]
pub enum ActError {
    /// The log could not be written or read.
    #[error("the job log refused: {0}")]
    Log(#[from] holdfast_joblog::UseError),
    /// The session, or an answer, could not be written as text.
    #[error("it could not be written as text: {0}")]
    Text(#[from] serde_json::Error),
}

impl OpenError {
    /// What the person can do.
    #[must_use]
    pub fn remedy(&self) -> Remedy {
        use holdfast_joblog::OpenError as Log;
        match self {
            Self::Log(Log::Newer { .. }) => Remedy::UpdateApp,
            Self::Log(Log::NoSpace(_) | Log::NoAccess(_)) | Self::Folder { .. } => Remedy::FreeSpace,
            Self::Log(Log::NotALog { .. }) => Remedy::ExportData,
            Self::Log(Log::InUse | Log::NoRandom | Log::Io(_) | Log::Database(_)) => Remedy::TryAgain,
            Self::Read(error) => remedy_in_use(error),
        }
    }

    /// What to say to the person, in the language of a locale.
    #[must_use]
    pub fn text(&self, locale: &str) -> String {
        use holdfast_joblog::OpenError as Log;
        let texts = Texts::new(locale);
        match self {
            Self::Log(Log::Newer { found, .. }) => texts.say_with(
                "problem-open-newer",
                &Args::new().text("version", found.to_string()),
            ),
            Self::Log(Log::NoSpace(_)) => texts.say("problem-full"),
            Self::Log(Log::NoAccess(_)) | Self::Folder { .. } => texts.say("problem-folder"),
            Self::Log(Log::NotALog { .. }) => texts.say("problem-open-not-a-log"),
            Self::Log(Log::InUse | Log::NoRandom | Log::Io(_) | Log::Database(_)) => {
                texts.say("problem-open")
            }
            Self::Read(error) => texts.say(key_in_use(error)),
        }
    }
}

impl ActError {
    /// What the person can do.
    #[must_use]
    pub fn remedy(&self) -> Remedy {
        match self {
            Self::Log(error) => remedy_in_use(error),
            Self::Text(_) => Remedy::TryAgain,
        }
    }

    /// What to say to the person, in the language of a locale.
    #[must_use]
    pub fn text(&self, locale: &str) -> String {
        self.text_in(&Texts::new(locale))
    }

    pub(crate) fn text_in(&self, texts: &Texts) -> String {
        texts.say(match self {
            Self::Log(error) => key_in_use(error),
            Self::Text(_) => "problem-session",
        })
    }
}

fn remedy_in_use(error: &UseError) -> Remedy {
    match error {
        UseError::NoSpace | UseError::ReadOnly => Remedy::FreeSpace,
        UseError::Damaged(_) => Remedy::ExportData,
        UseError::TooLarge { .. } | UseError::Body(_) => Remedy::CorrectEntry,
        UseError::InUse
        | UseError::NoTarget { .. }
        | UseError::Purged { .. }
        | UseError::NotBinned { .. }
        | UseError::Io(_)
        | UseError::Database(_) => Remedy::TryAgain,
    }
}

/// The text key of what went wrong in use.
pub(crate) fn key_in_use(error: &UseError) -> &'static str {
    match error {
        UseError::NoSpace => "problem-full",
        UseError::ReadOnly => "problem-read-only",
        UseError::Damaged(_) => "problem-damaged",
        UseError::TooLarge { .. } | UseError::Body(_) => "problem-entry-too-large",
        UseError::InUse
        | UseError::NoTarget { .. }
        | UseError::Purged { .. }
        | UseError::NotBinned { .. }
        | UseError::Io(_)
        | UseError::Database(_) => "problem-store",
    }
}
