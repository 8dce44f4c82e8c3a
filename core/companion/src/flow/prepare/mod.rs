//! Before you start: cautions that apply today, tools at hand, place, engine, people.
//!
//! | event | leads to |
//! |---|---|
//! | `Acknowledge` | that caution ticked |
//! | `Pick` a tool, second person, engine runs | tapped or untapped |
//! | `Type` | the field's text kept |
//! | `BarometerRead` | ambient pressure filled in, unless one was typed |
//! | `Confirm` with every caution ticked | what changed is logged; where we stand |

mod cautions;
mod place;

use holdfast_diagnose::{Engine as EngineState, Situation, Tool};
use holdfast_joblog::{Acknowledged, Engine, Payload, SecondPerson, Tools};
use holdfast_measure::Bound;

use cautions::{caution_section, cautions, unticked};
use place::{place, place_section};

use crate::companion::Companion;
use crate::error::ActError;
use crate::flow::numbers::NumberField;
use crate::flow::parts::{any_of, entry, option, primary, section, words};
use crate::protocol::{Action, Body, FieldId, FormScreen, Frame, Pick, Section};
use crate::session::{At, PrepareDraft};
use crate::situation;
use crate::text::Args;
use crate::turn::Turn;

const STOPPED: NumberField = NumberField {
    id: FieldId::EngineStopped,
    label: "prepare-stopped",
    bound: Bound::SECONDS,
};

pub(super) fn act(
    core: &mut Companion,
    mut draft: PrepareDraft,
    action: Action,
    turn: &mut Turn<'_>,
) -> Result<(), ActError> {
    match action {
        Action::Type { field, text } => draft.typed.put(field, &text),
        Action::Acknowledge { caution } => {
            if cautions(core, &draft).iter().any(|(id, _)| *id == caution) {
                draft.acknowledged.push(caution);
            }
        }
        Action::Pick {
            pick: Pick::Tool { id },
        } => {
            let mut tools = tools(core, &draft);
            if tools.contains(&id) {
                tools.retain(|tool| *tool != id);
            } else {
                tools.push(id);
            }
            draft.tools = Some(tools);
        }
        Action::Pick {
            pick: Pick::SecondPerson,
        } => {
            draft.second_person = Some(!second_person(core, &draft));
        }
        Action::Pick {
            pick: Pick::EngineRuns,
        } => draft.engine_runs = Some(!engine_runs(core, &draft)),
        Action::Confirm => {
            if unticked(core, &draft) == 0 {
                settle(core, &draft, turn)?;
                core.session.at = At::Overview;
            }
            return Ok(());
        }
        _ => return Ok(()),
    }
    core.session.at = At::Prepare(draft);
    Ok(())
}

/// The phone's barometer, Pa: taken where nothing was typed.
pub(super) fn barometer(core: &mut Companion, pa: f64, _turn: &mut Turn<'_>) -> Result<(), ActError> {
    let At::Prepare(mut draft) = core.session.at.clone() else {
        return Ok(());
    };
    if let Ok(kpa) = Bound::AMBIENT.check(pa / 1_000.0) {
        draft.barometer_kpa = Some((kpa * 100.0).round() / 100.0);
        core.session.at = At::Prepare(draft);
    }
    Ok(())
}

/// Logs what changed.
pub(super) fn settle(
    core: &mut Companion,
    draft: &PrepareDraft,
    turn: &mut Turn<'_>,
) -> Result<(), ActError> {
    let Some(job) = &core.job else { return Ok(()) };
    let mut payloads = Vec::new();
    for caution in &draft.acknowledged {
        if !core.acknowledged(caution) {
            payloads.push(Payload::Acknowledged(Acknowledged {
                caution: caution.clone(),
                test: None,
            }));
        }
    }
    let place = place(core, draft);
    if job.log.place.as_ref() != Some(&place) {
        payloads.push(Payload::Place(place));
    }
    let have = Tools {
        have: tools(core, draft),
    };
    if job.log.tools.as_ref() != Some(&have) {
        payloads.push(Payload::Tools(have.clone()));
    }
    let engine = Engine {
        can_run: engine_runs(core, draft),
        stopped_min: stopped_min(core, draft),
    };
    if job.log.engine.as_ref().map(|there| &there.value) != Some(&engine) {
        payloads.push(Payload::Engine(engine));
    }
    let person = SecondPerson {
        there: second_person(core, draft),
    };
    if job.log.second_person.as_ref() != Some(&person) {
        payloads.push(Payload::SecondPerson(person));
    }
    core.session.settings.tools = have.have;
    for payload in payloads {
        core.append(payload, turn);
    }
    Ok(())
}

fn tools(core: &Companion, draft: &PrepareDraft) -> Vec<String> {
    let logged = || {
        core.job
            .as_ref()
            .and_then(|job| job.log.tools.as_ref())
            .map(|tools| tools.have.clone())
    };
    draft
        .tools
        .clone()
        .or_else(logged)
        .unwrap_or_else(|| core.session.settings.tools.clone())
}

fn engine_runs(core: &Companion, draft: &PrepareDraft) -> bool {
    let logged = || {
        core.job
            .as_ref()
            .and_then(|job| job.log.engine.as_ref())
            .map(|engine| engine.value.can_run)
    };
    draft.engine_runs.or_else(logged).unwrap_or(true)
}

fn stopped_min(core: &Companion, draft: &PrepareDraft) -> Option<f64> {
    let logged = core
        .job
        .as_ref()
        .and_then(|job| job.log.engine.as_ref())
        .and_then(|e| e.value.stopped_min);
    STOPPED.holds(core, &draft.typed, logged)
}

fn second_person(core: &Companion, draft: &PrepareDraft) -> bool {
    let logged = || {
        core.job
            .as_ref()
            .and_then(|job| job.log.second_person.as_ref())
            .map(|person| person.there)
    };
    draft.second_person.or_else(logged).unwrap_or(false)
}

/// The situation as it will stand when this is confirmed.
pub(super) fn situation_ahead(core: &Companion, draft: &PrepareDraft) -> Option<Situation> {
    let there = &core.job.as_ref()?.situation;
    Some(Situation {
        place: situation::place(&place(core, draft)),
        tools: Some(situation::tools(&tools(core, draft))),
        engine: EngineState {
            can_run: engine_runs(core, draft),
            stopped_min: stopped_min(core, draft),
        },
        second_person: second_person(core, draft),
        ..there.clone()
    })
}

pub(super) fn screen(core: &Companion, draft: &PrepareDraft) -> (Frame, Body) {
    let left = unticked(core, draft);
    let why_not = (left > 0).then(|| core.say_with("prepare-unticked", &Args::new().count("count", left)));
    let sections = vec![
        caution_section(core, draft),
        tool_section(core, draft),
        place_section(core, draft),
        engine_section(core, draft),
    ];
    let next = primary(core.say("prepare-next"), Action::Confirm).unless(why_not);
    let form = FormScreen {
        sections,
        next: Some(next),
    };
    (Frame::titled(core.say("prepare-title")), Body::Prepare { form })
}

fn tool_section(core: &Companion, draft: &PrepareDraft) -> Section {
    let have = tools(core, draft);
    let options = Tool::ALL
        .into_iter()
        .map(|tool| {
            let id = tool.as_str();
            let there = have.iter().any(|t| t == id);
            option(
                core.say(&format!("tool-{id}")),
                there,
                Pick::Tool { id: id.to_owned() },
            )
        })
        .collect();
    section(
        core.say("prepare-tools"),
        vec![
            words(core.say("prepare-tools-hint")),
            any_of(String::new(), options),
        ],
    )
}

fn engine_section(core: &Companion, draft: &PrepareDraft) -> Section {
    let logged = stopped_min(core, &PrepareDraft::default());
    let mut stopped = STOPPED.field(core, &draft.typed, logged);
    stopped.unit = core.say("unit-minutes");
    stopped.hint = core.say("prepare-stopped-hint");
    let options = vec![
        option(
            core.say("prepare-engine-runs"),
            engine_runs(core, draft),
            Pick::EngineRuns,
        ),
        option(
            core.say("prepare-second-person"),
            second_person(core, draft),
            Pick::SecondPerson,
        ),
    ];
    section(
        core.say("prepare-engine"),
        vec![any_of(String::new(), options), entry(stopped)],
    )
}
