//! The errors that cross the boundary, grouped by what the person can do about them.

use crate::{ActError, OpenError, Remedy};

/// What a shell gets instead of an answer. `text` is for the person; `detail` is for a log and is never shown.
#[derive(Debug, thiserror::Error, uniffi::Error)]
pub enum HoldfastError {
    /// The entry can be put right.
    #[error("{detail}")]
    CorrectEntry {
        /// What to say to the person.
        text: String,
        /// What to write into a log.
        detail: String,
    },
    /// The phone is full, or the folder can't be written to.
    #[error("{detail}")]
    FreeSpace {
        /// What to say to the person.
        text: String,
        /// What to write into a log.
        detail: String,
    },
    /// The data is from a newer version of the app.
    #[error("{detail}")]
    UpdateApp {
        /// What to say to the person.
        text: String,
        /// What to write into a log.
        detail: String,
    },
    /// It may work the next time.
    #[error("{detail}")]
    TryAgain {
        /// What to say to the person.
        text: String,
        /// What to write into a log.
        detail: String,
    },
    /// The data is damaged: export what can be read.
    #[error("{detail}")]
    ExportData {
        /// What to say to the person.
        text: String,
        /// What to write into a log.
        detail: String,
    },
}

impl HoldfastError {
    fn grouped(remedy: Remedy, text: String, detail: String) -> Self {
        match remedy {
            Remedy::CorrectEntry => Self::CorrectEntry { text, detail },
            Remedy::FreeSpace => Self::FreeSpace { text, detail },
            Remedy::UpdateApp => Self::UpdateApp { text, detail },
            Remedy::TryAgain => Self::TryAgain { text, detail },
            Remedy::ExportData => Self::ExportData { text, detail },
        }
    }

    /// The error of opening, in the words of this language.
    pub(super) fn opening(error: &OpenError, locale: &str) -> Self {
        Self::grouped(error.remedy(), error.text(locale), error.to_string())
    }

    /// The error of an action, in the words of this language.
    pub(super) fn acting(error: &ActError, locale: &str) -> Self {
        Self::grouped(error.remedy(), error.text(locale), error.to_string())
    }
}
