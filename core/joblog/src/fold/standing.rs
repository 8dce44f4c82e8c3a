//! What became of an entry: it stands, was corrected, was undone.

use std::collections::BTreeMap;

use crate::entry::{Entry, EntryKey};
use crate::payload::{Content, Payload};

/// What became of an entry.
#[derive(Debug, Clone, PartialEq)]
pub enum Standing {
    /// It holds as written.
    Stands,
    /// Something else holds instead.
    CorrectedBy {
        /// The correction that won.
        by: EntryKey,
        /// What holds instead.
        instead: Box<Content>,
    },
    /// It was taken back.
    UndoneBy {
        /// The undo that won.
        by: EntryKey,
    },
}

/// The standing of each entry; `read` is in order, each key once.
///
/// Worked from the last entry to the first: whoever changes an entry comes after it, so its own standing is
/// settled already, and no two entries can undo each other.
pub(super) fn of(read: &[(&Entry, Content)]) -> Vec<Standing> {
    let mut changers: BTreeMap<EntryKey, Vec<usize>> = BTreeMap::new();
    for (index, (_, content)) in read.iter().enumerate() {
        let target = match content {
            Content::Known(Payload::Correction(correction)) => correction.target,
            Content::Known(Payload::Undo(undo)) => undo.target,
            _ => continue,
        };
        changers.entry(target).or_default().push(index);
    }

    let mut settled: BTreeMap<usize, Standing> = BTreeMap::new();
    for (index, (entry, _)) in read.iter().enumerate().rev() {
        let last = changers.get(&entry.key).and_then(|list| {
            let holds = |at: &&usize| !matches!(settled.get(at), Some(Standing::UndoneBy { .. }) | None);
            list.iter().rev().filter(|at| **at > index).find(holds)
        });
        let standing = last
            .and_then(|at| effect(read.get(*at)?, settled.get(at)?))
            .unwrap_or(Standing::Stands);
        settled.insert(index, standing);
    }
    settled.into_values().collect()
}

/// What a correction or undo, itself in this standing, does to its target.
fn effect((changer, content): &(&Entry, Content), standing: &Standing) -> Option<Standing> {
    let by = changer.key;
    match (content, standing) {
        (Content::Known(Payload::Undo(_)), _) => Some(Standing::UndoneBy { by }),
        (Content::Known(Payload::Correction(_)), Standing::CorrectedBy { instead, .. }) => {
            Some(Standing::CorrectedBy {
                by,
                instead: instead.clone(),
            })
        }
        (Content::Known(Payload::Correction(correction)), _) => Some(Standing::CorrectedBy {
            by,
            instead: Box::new(correction.content()),
        }),
        _ => None,
    }
}
