//! Entries about entries: put right, taken back, put in the bin.

use serde::{Deserialize, Serialize};
use serde_json::Value;

use super::{Content, Payload};
use crate::entry::EntryKey;

/// An earlier entry of the same job put right. The earlier one stays in the record.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Correction {
    /// The entry that was wrong.
    pub target: EntryKey,
    /// The kind of what holds instead.
    pub kind: String,
    /// The version of its body.
    pub v: u32,
    /// What holds instead.
    pub body: Value,
    /// Why, in the person's words, or empty.
    #[serde(default)]
    pub why: String,
}

impl Correction {
    /// Puts `instead` in the place of `target`.
    ///
    /// # Errors
    /// The body can't be written as JSON.
    pub fn of(target: EntryKey, instead: &Payload) -> Result<Self, serde_json::Error> {
        Ok(Self {
            target,
            kind: instead.kind().to_owned(),
            v: instead.version(),
            body: instead.to_value()?,
            why: String::new(),
        })
    }

    /// What holds instead, read as an entry of its own would be.
    pub fn content(&self) -> Content {
        Payload::read(&self.kind, self.v, &self.body.to_string())
    }
}

/// An earlier entry of the same job taken back. The earlier one stays in the record. Taking back an undo or a
/// correction lets its target stand again.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Undo {
    /// The entry taken back.
    pub target: EntryKey,
}

/// The job was put in the bin. Taking this entry back fetches it out again.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
pub struct Binned {}
