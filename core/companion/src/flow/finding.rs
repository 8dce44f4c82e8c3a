//! The finding.
//!
//! | event | leads to |
//! |---|---|
//! | `Repair` | the repair of that part |
//! | `RepairOther` | the repair of a part that is picked there |
//! | `ShowTest` | one more test |
//! | `CloseJob` | the finding logged; the report |

use holdfast_joblog::{CauseRecord, Closed, Payload};

use crate::companion::Companion;
use crate::compose;
use crate::error::ActError;
use crate::flow::parts::quiet;
use crate::flow::places;
use crate::job::JobView;
use crate::protocol::{Action, Body, Button, Frame};
use crate::session::At;
use crate::turn::Turn;

/// Causes kept with the closed job.
const CAUSES_KEPT: usize = 5;

pub(super) fn act(core: &mut Companion, action: Action, turn: &mut Turn<'_>) -> Result<(), ActError> {
    match action {
        Action::Repair { component } => core.session.at = places::repair_of(component),
        Action::RepairOther => core.session.at = places::repair_of(String::new()),
        Action::CloseJob => {
            close(core, turn);
            core.session.at = At::Report;
        }
        _ => {}
    }
    Ok(())
}

/// Logs the finding as it stands.
pub(super) fn close(core: &Companion, turn: &mut Turn<'_>) {
    let Some(job) = &core.job else { return };
    let repaired = job.repaired().is_some() && job.retested_good();
    let closed = Closed {
        parts: job.finding.parts.iter().map(ToString::to_string).collect(),
        p: job.finding.causes.first().map_or(0.0, |cause| cause.p),
        causes: job
            .finding
            .causes
            .iter()
            .take(CAUSES_KEPT)
            .map(|cause| CauseRecord {
                faults: cause.faults.iter().map(ToString::to_string).collect(),
                p: cause.p,
            })
            .collect(),
        repaired,
        headline: compose::finding(&core.texts, job).headline,
        software: env!("CARGO_PKG_VERSION").to_owned(),
    };
    core.append(Payload::Closed(closed), turn);
}

pub(super) fn screen(core: &Companion) -> (Frame, Body) {
    let body = match &core.job {
        Some(job) => {
            let mut finding = compose::finding(&core.texts, job);
            finding.buttons.extend(repair_anyway(core, job));
            finding
                .buttons
                .push(quiet(core.say("finding-repair-other"), Action::RepairOther));
            Body::Finding { finding }
        }
        None => core.nothing(),
    };
    (Frame::titled(core.say("finding-title")), body)
}

/// The likeliest part, where nothing is decided: a person may know more than the tests, and the retest will tell.
fn repair_anyway(core: &Companion, job: &JobView) -> Option<Button> {
    let likeliest = job
        .finding
        .causes
        .first()
        .filter(|cause| cause.p >= compose::LIKELY && !job.finding.decided)?;
    let part = &likeliest.faults.first()?.component;
    job.circuit.component(part)?;
    let label = core.say_with("finding-repair-anyway", &core.texts.of_part(part));
    Some(quiet(
        label,
        Action::Repair {
            component: part.to_string(),
        },
    ))
}
