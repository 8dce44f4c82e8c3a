//! From a job's entries to its state. Only the entries count: no clock, no phone, no order of arrival.

mod standing;
mod state;

use std::collections::BTreeSet;

use crate::entry::{Entry, JobId};
use crate::payload::{Content, Payload};

pub use standing::Standing;
pub use state::{Dated, JobState, PhotoState, RecordLine, TestEvent};

/// Folds the entries of `job` into its state. Entries may come in any order and more than once; those of other
/// jobs are left out.
///
/// Order is (hlc, device, counter). A correction or undo counts for a target that comes before it; of two that
/// name one target the later wins. What was corrected or undone stays in [`JobState::record`].
pub fn fold(job: JobId, entries: &[Entry]) -> JobState {
    let read: Vec<(&Entry, Content)> = in_order(job, entries)
        .into_iter()
        .map(|entry| (entry, Payload::read(&entry.kind, entry.v, &entry.body)))
        .collect();
    let standings = standing::of(&read);

    let mut state = JobState::empty(job);
    for ((entry, content), standing) in read.into_iter().zip(standings) {
        let corrected = matches!(standing, Standing::CorrectedBy { .. });
        // What a correction or undo does is in its target's standing, whatever became of it.
        let is_change = matches!(
            &content,
            Content::Known(Payload::Correction(_) | Payload::Undo(_))
        );
        let holds = match &standing {
            Standing::Stands => Some(&content),
            Standing::CorrectedBy { instead, .. } => Some(instead.as_ref()),
            Standing::UndoneBy { .. } => None,
        };
        if let (false, Some(Content::Known(payload))) = (is_change, holds) {
            state.take(entry, payload, corrected);
        }
        state.push_line(entry, content, standing);
    }
    state.settle_photos();
    state
}

/// The job's entries in the order that holds everywhere, each key once. Entries that differ under one key (a data
/// folder that was copied and used twice) are decided by their text, so that every phone decides alike.
fn in_order(job: JobId, entries: &[Entry]) -> Vec<&Entry> {
    let mut ordered: Vec<&Entry> = entries.iter().filter(|entry| entry.job == job).collect();
    ordered.sort_by(|a, b| {
        let text = |e: &'_ Entry| (e.order(), e.v, e.at_ms, e.offset_min);
        text(a)
            .cmp(&text(b))
            .then_with(|| (&a.kind, &a.body).cmp(&(&b.kind, &b.body)))
    });
    let mut seen = BTreeSet::new();
    ordered.retain(|entry| seen.insert(entry.key));
    ordered
}

#[cfg(test)]
mod tests;
