//! Before you start: cautions that apply today, tools at hand, place, engine, people.
//!
//! | event | leads to |
//! |---|---|
//! | `Acknowledge` | that caution ticked |
//! | `Pick` a tool, second person, engine runs | tapped or untapped |
//! | `Type` | the field's text kept |
//! | `BarometerRead` | ambient pressure filled in, unless one was typed |
//! | `Confirm` with every caution ticked | what changed is logged; where we stand |

use holdfast_diagnose::{ComponentKind, Engine as EngineState, Situation, Tool};
use holdfast_joblog::{
    Acknowledged, Engine, Payload, Place as PlaceRecord, SecondPerson, Tools, Typed as TypedRecord,
};
use holdfast_measure::Bound;

use crate::companion::Companion;
use crate::error::ActError;
use crate::flow::numbers::{Logged, NumberField};
use crate::flow::parts::{any_of, entry, option, primary, section, words};
use crate::protocol::{
    Acknowledgement, Action, Body, Caution, FieldId, FormItem, FormScreen, Frame, Pick, Section, Signal,
};
use crate::session::{At, PrepareDraft};
use crate::settings::Profile;
use crate::situation;
use crate::text::Args;
use crate::turn::Turn;

const ALTITUDE: NumberField = NumberField {
    id: FieldId::Altitude,
    label: "prepare-altitude",
    bound: Bound::ALTITUDE,
};
const AMBIENT: NumberField = NumberField {
    id: FieldId::Ambient,
    label: "prepare-ambient",
    bound: Bound::AMBIENT,
};
const AIR: NumberField = NumberField {
    id: FieldId::AirTemperature,
    label: "prepare-air",
    bound: Bound::AIR,
};
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

fn place(core: &Companion, draft: &PrepareDraft) -> PlaceRecord {
    let there = core
        .job
        .as_ref()
        .and_then(|job| job.log.place.clone())
        .unwrap_or_default();
    let altitude_m = ALTITUDE.holds(core, &draft.typed, there.altitude_m);
    let typed = AMBIENT.typed(core, &draft.typed);
    let logged = if AMBIENT.emptied(&draft.typed) {
        None
    } else {
        there.ambient_kpa
    };
    let ambient_kpa = typed.or(draft.barometer_kpa).or(logged);
    let ambient_from = match (typed, draft.barometer_kpa, logged, altitude_m) {
        (Some(_), ..) => "typed".to_owned(),
        (None, Some(_), ..) => "barometer".to_owned(),
        (None, None, Some(_), _) => there.ambient_from,
        (None, None, None, Some(_)) => "altitude".to_owned(),
        (None, None, None, None) => "sea_level".to_owned(),
    };
    PlaceRecord {
        altitude_m,
        ambient_kpa,
        ambient_from,
        air_c: AIR.holds(core, &draft.typed, there.air_c),
        typed: typed_records(core, draft, there.typed),
    }
}

/// What was typed for the place: now, else before where the field was left alone.
fn typed_records(core: &Companion, draft: &PrepareDraft, before: Vec<TypedRecord>) -> Vec<TypedRecord> {
    let mut records = before;
    for (field, key) in [
        (&ALTITUDE, "altitude_m"),
        (&AMBIENT, "ambient_kpa"),
        (&AIR, "air_c"),
    ] {
        if draft.typed.get(&field.id).is_some() {
            records.retain(|record| record.key != key);
            records.extend(field.record(core, &draft.typed, key));
        }
    }
    records
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

/// The cautions that apply today, gravest first. Usual trade practice; common practice, no source.
fn cautions(core: &Companion, draft: &PrepareDraft) -> Vec<(&'static str, Signal)> {
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

fn unticked(core: &Companion, draft: &PrepareDraft) -> usize {
    cautions(core, draft)
        .iter()
        .filter(|(id, _)| !is_ticked(core, draft, id))
        .count()
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

fn caution_section(core: &Companion, draft: &PrepareDraft) -> Section {
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

fn place_section(core: &Companion, draft: &PrepareDraft) -> Section {
    let there = core
        .job
        .as_ref()
        .and_then(|job| job.log.place.clone())
        .unwrap_or_default();
    let logged = |figure, key| Logged::with(figure, &there.typed, key);
    let ambient_kpa = draft.barometer_kpa.or(there.ambient_kpa);
    let mut ambient = AMBIENT.field(core, &draft.typed, logged(ambient_kpa, "ambient_kpa"));
    let found = draft.typed.get(&FieldId::Ambient).is_none() && draft.barometer_kpa.is_some();
    if found {
        ambient.hint = core.say("prepare-ambient-found");
    }
    section(
        core.say("prepare-place"),
        vec![
            words(core.say("prepare-place-hint")),
            entry(ALTITUDE.field(core, &draft.typed, logged(there.altitude_m, "altitude_m"))),
            entry(ambient),
            entry(AIR.field(core, &draft.typed, logged(there.air_c, "air_c"))),
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
