//! The cautions of the day, each to be ticked.

use holdfast_diagnose::ComponentKind;

use super::{engine_runs, second_person};
use crate::companion::Companion;
use crate::flow::parts::section;
use crate::protocol::{Acknowledgement, Action, Caution, FormItem, Section, Signal};
use crate::session::PrepareDraft;
use crate::settings::Profile;

/// The cautions that apply today, gravest first. Usual trade practice; common practice, no source.
pub(super) fn cautions(core: &Companion, draft: &PrepareDraft) -> Vec<(&'static str, Signal)> {
    let runs = engine_runs(core, draft);
    let shared = core
        .job
        .as_ref()
        .is_some_and(|job| job.circuit.of_kind(ComponentKind::Consumer).next().is_some());
    let owner = core.session.settings.profile == Profile::Owner;
    let in_gear = second_person(core, draft) && !owner;
    [
        (true, "orange-cables", Signal::Danger),
        (true, "engine-starts", Signal::Warning),
        (runs, "moving-parts", Signal::Warning),
        (runs, "fumes", Signal::Warning),
        (shared, "brake-vacuum", Signal::Warning),
        (runs && in_gear, "in-gear", Signal::Warning),
        (owner, "stop-lines", Signal::Warning),
        (true, "burns", Signal::Caution),
        (true, "service-information", Signal::Notice),
    ]
    .into_iter()
    .filter(|(applies, ..)| *applies)
    .map(|(_, id, signal)| (id, signal))
    .collect()
}

fn is_ticked(core: &Companion, draft: &PrepareDraft, caution: &str) -> bool {
    draft.acknowledged.iter().any(|ticked| ticked == caution) || core.acknowledged(caution)
}

pub(super) fn unticked(core: &Companion, draft: &PrepareDraft) -> usize {
    cautions(core, draft)
        .iter()
        .filter(|(id, _)| !is_ticked(core, draft, id))
        .count()
}

pub(super) fn caution_section(core: &Companion, draft: &PrepareDraft) -> Section {
    let items = cautions(core, draft)
        .into_iter()
        .map(|(id, signal)| {
            let ack = if is_ticked(core, draft, id) {
                Acknowledgement::Given
            } else {
                Acknowledgement::Open {
                    action: Action::Acknowledge {
                        caution: id.to_owned(),
                    },
                }
            };
            let caution = Caution {
                signal,
                word: core.signal_word(signal),
                text: core.say(&format!("prepare-caution-{id}")),
                ack,
            };
            FormItem::Care { caution }
        })
        .collect();
    section(core.say("prepare-cautions"), items)
}
