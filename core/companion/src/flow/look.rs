//! The circuit looked over, part by part; what is not touched is in order.
//!
//! | event | leads to |
//! |---|---|
//! | `Look` | that component's state |
//! | `Confirm` | reading handed in |

use std::collections::BTreeMap;

use holdfast_diagnose::{Answer, ComponentId, ComponentKind, LookState};
use holdfast_report::State;

use crate::companion::Companion;
use crate::compose::{self, MapOf};
use crate::error::ActError;
use crate::flow::kind;
use crate::flow::parts::{plain, primary};
use crate::flow::reading::{Handed, hand_in};
use crate::job::JobView;
use crate::protocol::{
    Action, Body, Choice, ChoiceKind, ChoiceOption, LookRow, LookScreen, PhotoSource, PhotoSubject, Picked,
};
use crate::session::{At, Stage, TestAt};
use crate::turn::Turn;

pub(super) fn act(
    core: &mut Companion,
    at: TestAt,
    action: Action,
    turn: &mut Turn<'_>,
) -> Result<(), ActError> {
    let Stage::Look { seen } = &at.stage else {
        return Ok(());
    };
    let mut seen = seen.clone();
    match action {
        Action::Look { component, state } => {
            seen.retain(|(id, _)| *id != component);
            if state != LookState::Ok.as_str() {
                seen.push((component, state));
            }
            core.session.at = At::Test(TestAt {
                stage: Stage::Look { seen },
                ..at
            });
            Ok(())
        }
        Action::Confirm => hand_in(core, at, Answer::Look(states(&seen)), Handed::default(), turn),
        _ => Ok(()),
    }
}

fn states(seen: &[(String, String)]) -> BTreeMap<ComponentId, LookState> {
    seen.iter()
        .filter_map(|(id, state)| {
            let state = LookState::ALL.into_iter().find(|s| s.as_str() == state)?;
            Some((ComponentId::new(id.clone()), state))
        })
        .collect()
}

/// Parts that eyes can judge.
fn can_be_seen(kind: ComponentKind) -> bool {
    !matches!(
        kind,
        ComponentKind::Coil
            | ComponentKind::Module
            | ComponentKind::HandPump
            | ComponentKind::Engine
            | ComponentKind::Source
            | ComponentKind::Battery
    )
}

/// What can be seen on a part, besides that it is in order.
fn can_show(kind: ComponentKind) -> Vec<LookState> {
    use LookState as L;
    match kind {
        ComponentKind::Hose => vec![
            L::Ok,
            L::Cracked,
            L::Off,
            L::Kinked,
            L::Chafed,
            L::Oily,
            L::WetInside,
        ],
        ComponentKind::Tee | ComponentKind::CheckValve | ComponentKind::Reservoir => {
            vec![L::Ok, L::Cracked, L::Off, L::WetInside]
        }
        ComponentKind::Mount => vec![L::Ok, L::Cracked, L::Oily],
        ComponentKind::Valve => vec![L::Ok, L::Cracked, L::Oily, L::WetInside],
        ComponentKind::Connector | ComponentKind::GroundPoint | ComponentKind::Splice => {
            vec![L::Ok, L::Off, L::Corroded, L::Oily]
        }
        ComponentKind::Wire => vec![L::Ok, L::Chafed, L::Off],
        ComponentKind::Fuse | ComponentKind::Relay => vec![L::Ok, L::Off, L::Corroded],
        _ => vec![L::Ok, L::Cracked, L::Off],
    }
}

pub(super) fn body(core: &Companion, seen: &[(String, String)]) -> Body {
    let Some(job) = &core.job else {
        return core.nothing();
    };
    let states = states(seen);
    let marks: BTreeMap<ComponentId, State> = job
        .circuit
        .components
        .iter()
        .filter(|part| can_be_seen(part.kind))
        .map(|part| {
            let state = if states.contains_key(&part.id) {
                State::Leaks
            } else {
                State::Holds
            };
            (part.id.clone(), state)
        })
        .collect();
    let rows = job
        .circuit
        .components
        .iter()
        .filter(|part| can_be_seen(part.kind))
        .map(|part| {
            let state = states.get(&part.id).copied().unwrap_or(LookState::Ok);
            row(core, job, &part.id, part.kind, state)
        })
        .collect();
    let look = LookScreen {
        map: compose::circuit_map(&core.texts, job, MapOf::Look(&marks)),
        rows,
        done: primary(core.say("look-done"), Action::Confirm),
    };
    Body::LookOver { look }
}

fn row(core: &Companion, job: &JobView, id: &ComponentId, kind: ComponentKind, now: LookState) -> LookRow {
    let word = |state: LookState| core.say(&format!("look-{}", state.as_str().replace('_', "-")));
    let options = can_show(kind)
        .into_iter()
        .map(|state| ChoiceOption {
            label: word(state),
            detail: String::new(),
            picture: None,
            picked: if state == now { Picked::Yes } else { Picked::No },
            action: Action::Look {
                component: id.to_string(),
                state: state.as_str().to_owned(),
            },
        })
        .collect();
    let state = if now == LookState::Ok {
        State::Holds
    } else {
        State::Leaks
    };
    LookRow {
        mark: compose::mark(state, word(now)),
        states: Choice {
            label: compose::part_to_look_at(&core.texts, job, id),
            kind: ChoiceKind::One,
            options,
        },
        own: kind::of_part(core, id),
        photo: plain(
            core.say("photo-take"),
            Action::AddPhoto {
                from: PhotoSource::Camera,
                about: PhotoSubject::Component {
                    component: id.to_string(),
                },
            },
        ),
    }
}
