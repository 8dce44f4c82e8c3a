//! What the customer says to the work, signed with a finger.
//!
//! | event | leads to |
//! |---|---|
//! | `Type`, `Pick` | kept |
//! | `Ink` | a stroke on the pad |
//! | `Undo` | without the last stroke |
//! | `WipeInk` | an empty pad |
//! | `Confirm` with a name | logged; the report |

use holdfast_joblog::{Approval, Decision, Payload, Signature};
use holdfast_report::{PAD, Point, SignaturePad, signature_pad};

use crate::companion::Companion;
use crate::compose;
use crate::error::ActError;
use crate::flow::parts::{entry, one_of, option, plain, primary, quiet, section, text_field, words};
use crate::protocol::{Action, ApprovalScreen, Body, FieldId, Frame, Keys, Pick, Section};
use crate::session::{ApprovalDraft, At};
use crate::text::Args;
use crate::turn::Turn;
use crate::typed::Typed;

/// Places of a stroke closer than this are one, in the pad's units.
const APART: f32 = 0.8;
/// Most places of one stroke, and most strokes: far more than any hand makes.
const MOST_PLACES: usize = 600;
const MOST_STROKES: usize = 120;

/// An empty pad; the decision that the job asks for next.
pub(super) fn draft(core: &Companion) -> ApprovalDraft {
    let repaired = core.job.as_ref().is_some_and(|job| job.repaired().is_some());
    ApprovalDraft {
        typed: Typed::default(),
        decision: if repaired {
            Decision::HandedOver
        } else {
            Decision::Agreed
        },
        strokes: Vec::new(),
    }
}

pub(super) fn act(
    core: &mut Companion,
    mut draft: ApprovalDraft,
    action: Action,
    turn: &mut Turn<'_>,
) -> Result<(), ActError> {
    match action {
        Action::Type { field, text } => draft.typed.put(field, &text),
        Action::Pick {
            pick: Pick::Decision { id },
        } => {
            let said = Decision::ALL.into_iter().find(|known| known.id() == id);
            draft.decision = said.unwrap_or(draft.decision);
        }
        Action::Ink { stroke } if draft.strokes.len() < MOST_STROKES => {
            let stroke = thinned(&stroke);
            if !stroke.is_empty() {
                draft.strokes.push(stroke);
            }
        }
        Action::Undo => {
            draft.strokes.pop();
        }
        Action::WipeInk => draft.strokes.clear(),
        Action::Confirm if !name(core, &draft).is_empty() => {
            core.append(Payload::Approval(said(core, &draft)), turn);
            core.session.at = At::Report;
            return Ok(());
        }
        _ => {}
    }
    core.session.at = At::Approval(draft);
    Ok(())
}

/// A stroke inside the pad, without places that say nothing.
fn thinned(stroke: &[Point]) -> Vec<[f32; 2]> {
    let mut kept: Vec<[f32; 2]> = Vec::new();
    let inside = |p: &&Point| p.x.is_finite() && p.y.is_finite();
    for place in stroke.iter().filter(inside) {
        let (x, y) = (place.x.clamp(0.0, PAD.0), place.y.clamp(0.0, PAD.1));
        let apart = kept
            .last()
            .is_none_or(|last| (last[0] - x).hypot(last[1] - y) >= APART);
        if apart && kept.len() < MOST_PLACES {
            kept.push([x, y]);
        }
    }
    kept
}

fn name(core: &Companion, draft: &ApprovalDraft) -> String {
    let customer = || {
        let job = core.job.as_ref()?;
        job.log.vehicle.customer.clone()
    };
    draft
        .typed
        .get(&FieldId::Signer)
        .map_or_else(|| customer().unwrap_or_default(), str::to_owned)
        .trim()
        .to_owned()
}

/// The work the decision is on: as typed, else what is proposed now.
fn work(core: &Companion, draft: &ApprovalDraft) -> String {
    let proposed = || core.job.as_ref().map(|job| compose::proposed(&core.texts, job));
    draft
        .typed
        .get(&FieldId::DecidedWork)
        .map_or_else(|| proposed().unwrap_or_default(), str::to_owned)
        .trim()
        .to_owned()
}

/// The word as it is logged.
fn said(core: &Companion, draft: &ApprovalDraft) -> Approval {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "shares of the pad, at most its width"
    )]
    let share = |length: f32| (length / PAD.0 * 10_000.0).round() as u16;
    let strokes = draft
        .strokes
        .iter()
        .map(|stroke| stroke.iter().map(|[x, y]| [share(*x), share(*y)]).collect())
        .collect();
    let signed = (!draft.strokes.is_empty()).then(|| Signature {
        height: share(PAD.1),
        strokes,
    });
    let costs = core.job.as_ref().and_then(|job| job.log.costs.as_ref());
    Approval {
        decision: draft.decision,
        work: work(core, draft),
        name: name(core, draft),
        costs: costs.map(|costs| costs.key),
        signature: signed,
    }
}

pub(super) fn screen(core: &Companion, draft: &ApprovalDraft) -> (Frame, Body) {
    let strokes: Vec<Vec<Point>> = draft
        .strokes
        .iter()
        .map(|stroke| stroke.iter().map(|[x, y]| Point { x: *x, y: *y }).collect())
        .collect();
    let pad = signature_pad(&SignaturePad {
        alt: core.say_with("approval-pad", &Args::new().count("count", strokes.len())),
        hint: core.say("approval-pad-hint"),
        strokes,
    });
    let empty = draft.strokes.is_empty().then(|| core.say("approval-pad-empty"));
    let unnamed = name(core, draft)
        .is_empty()
        .then(|| core.say("approval-name-missing"));
    let approval = ApprovalScreen {
        sections: sections(core, draft),
        pad,
        pad_buttons: vec![
            plain(core.say("approval-undo"), Action::Undo).unless(empty.clone()),
            quiet(core.say("approval-wipe"), Action::WipeInk).unless(empty),
        ],
        next: primary(core.say("approval-keep"), Action::Confirm).unless(unnamed),
    };
    (
        Frame::titled(core.say("approval-title")),
        Body::Approval { approval },
    )
}

fn sections(core: &Companion, draft: &ApprovalDraft) -> Vec<Section> {
    let options = Decision::ALL
        .into_iter()
        .map(|decision| {
            let id = decision.id();
            option(
                core.say(&format!("approval-{}", crate::text::kebab(id))),
                draft.decision == decision,
                Pick::Decision { id: id.to_owned() },
            )
        })
        .collect();
    let field = |id, key: &str, value: String| {
        let typed = draft.typed.get(&id).map(str::to_owned);
        entry(text_field(id, core.say(key), typed.unwrap_or(value), Keys::Text))
    };
    let mut first = vec![one_of(core.say("approval-decision"), options)];
    if draft.decision != Decision::HandedOver {
        first.push(field(FieldId::DecidedWork, "approval-work", work(core, draft)));
    }
    let costs = core.job.as_ref().and_then(|job| job.log.costs.as_ref());
    if let Some(costs) = costs.filter(|costs| !costs.value.lines.is_empty()) {
        first.extend(
            compose::sum_lines(&core.texts, &costs.value)
                .into_iter()
                .map(words),
        );
    }
    vec![
        section(String::new(), first),
        section(
            core.say("approval-signature"),
            vec![field(FieldId::Signer, "approval-name", name(core, draft))],
        ),
    ]
}
