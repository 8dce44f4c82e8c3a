//! The list of jobs in hand, and what is said across a screen.

use serde::{Deserialize, Serialize};

/// The list of jobs in hand.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub(crate) struct ListAt {
    /// What was typed.
    pub search: String,
    /// The shelf, by its id.
    pub shelf: String,
    /// When they were worked on, by its id.
    pub time: String,
    /// The first day, as typed.
    #[serde(default)]
    pub from: String,
    /// The last day, as typed.
    #[serde(default)]
    pub until: String,
    /// Whether shelves and times are offered.
    pub filters: Filters,
    /// How many times more rows were asked for.
    pub pages: u32,
    /// The jobs picked out, while some are.
    pub picked: Option<Vec<String>>,
}

impl Default for ListAt {
    fn default() -> Self {
        Self {
            search: String::new(),
            shelf: "all".to_owned(),
            time: "any".to_owned(),
            from: String::new(),
            until: String::new(),
            filters: Filters::Hidden,
            pages: 0,
            picked: None,
        }
    }
}

/// Whether what narrows the list down is offered.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub(crate) enum Filters {
    /// Not now: there is more room for the list.
    #[default]
    Hidden,
    /// It is.
    Offered,
}

impl ListAt {
    /// Whether what narrows it down is offered.
    pub(crate) fn is_narrowed(&self) -> bool {
        self.filters == Filters::Offered
    }

    /// With shelves and times offered; or, where they were, with all jobs.
    pub(crate) fn narrowed(self) -> Self {
        if self.is_narrowed() {
            return Self {
                search: self.search,
                picked: self.picked,
                ..Self::default()
            };
        }
        Self {
            filters: Filters::Offered,
            ..self
        }
    }

    /// With a job picked out, or no longer.
    pub(crate) fn toggled(mut self, job: String) -> Self {
        let picked = self.picked.get_or_insert_default();
        if picked.contains(&job) {
            picked.retain(|there| *there != job);
        } else {
            picked.push(job);
        }
        self
    }
}

/// A notice by key, with what it names.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub(crate) enum NoticeAt {
    /// A job went into the bin and can be taken out again.
    Binned {
        /// Which.
        job: String,
    },
    /// A test was left running or half done.
    Parked {
        /// Which.
        test: String,
    },
    /// Whether the bin is to be emptied for good.
    EmptyBin,
    /// A bundle was taken in.
    Took {
        /// What came of it.
        took: Took,
    },
    /// A work that the person waits for.
    Working {
        /// What it does, by text key.
        key: String,
        /// Which work.
        work: u64,
    },
    /// Only words, by text key.
    Words {
        /// The key.
        key: String,
    },
}

impl NoticeAt {
    /// Only words.
    pub(crate) fn words(key: &str) -> Self {
        Self::Words { key: key.to_owned() }
    }
}

/// What came of taking a bundle in.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub(crate) struct Took {
    /// Jobs that have new entries.
    pub jobs: usize,
    /// Entries that were left out.
    pub left_out: usize,
    /// Photos that no decoder reads.
    pub broken_photos: usize,
    /// Jobs that were deleted here and stay away.
    pub deleted: Vec<String>,
    /// The bundle, to be taken in again with them.
    pub again: Option<String>,
}
