//! A part in the look-over: what it is and what to look for, for someone who never saw one.

use holdfast_diagnose::{ComponentId, Profile};

use crate::job::JobView;
use crate::text::Texts;

/// A part's name; for an owner with what it does and what to look for.
#[must_use]
pub(crate) fn part_to_look_at(texts: &Texts, job: &JobView, part: &ComponentId) -> String {
    let name = texts.part_title(part);
    match job.situation.profile {
        Profile::Mechanic => name,
        Profile::Owner => [
            Some(format!("{name}.")),
            texts.about_part(part),
            texts.look_hint(part),
        ]
        .into_iter()
        .flatten()
        .collect::<Vec<_>>()
        .join(" "),
    }
}
