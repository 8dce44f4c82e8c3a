//! From the log's records to the types of diagnosis. A record that does not read is taken as not stated.

use std::collections::BTreeSet;

use holdfast_diagnose::{
    CarState, Circuit, CircuitChoice, Complaint, Engine, EngineState, Instruments, Learned, Limit, Place,
    Profile, Reading, Situation, Tool,
};
use holdfast_joblog::{JobState, Place as PlaceRecord, Reading as ReadingRecord};
use holdfast_measure::{Gauge, GaugeGrade, Meter, PressureUnit};

/// The template of a job that states none.
const COMMONEST: &str = "two-mounts-one-valve";

/// Kilopascal in one unit of a gauge.
fn kpa(figure: f64, unit: PressureUnit) -> f64 {
    unit.to_pressure(figure)
        .get::<holdfast_measure::si::pressure::kilopascal>()
}

/// The circuit stated in the log; where none is stated, or it can't be built, the commonest template.
pub(crate) fn circuit(log: &JobState) -> Option<(CircuitChoice, Circuit)> {
    let built = |choice: CircuitChoice| Circuit::build(&choice).ok().map(|circuit| (choice, circuit));
    log.circuit
        .as_ref()
        .and_then(|stated| serde_json::from_value::<CircuitChoice>(stated.choice.clone()).ok())
        .and_then(built)
        .or_else(|| built(CircuitChoice::Template(COMMONEST.to_owned())))
}

/// The situation stated in the log.
pub(crate) fn situation(log: &JobState) -> Situation {
    let unstated = Situation::default();
    let instruments = instruments(log);
    Situation {
        place: log.place.as_ref().map_or_else(Place::default, place),
        limit: limit(log, instruments.gauge.unit).unwrap_or(unstated.limit),
        instruments,
        tools: log.tools.as_ref().map(|stated| tools(&stated.have)),
        engine: log.engine.as_ref().map_or(unstated.engine, |engine| Engine {
            can_run: engine.value.can_run,
            stopped_min: engine.value.stopped_min,
        }),
        second_person: log.second_person.as_ref().is_some_and(|person| person.there),
        profile: match log.profile.as_ref().map(|profile| profile.id.as_str()) {
            Some("owner") => Profile::Owner,
            _ => Profile::Mechanic,
        },
        confidence: log.limit.confidence.unwrap_or(unstated.confidence),
        complaint: complaint(log),
        learned: Learned::default(),
    }
}

fn complaint(log: &JobState) -> BTreeSet<Complaint> {
    Complaint::ALL
        .into_iter()
        .filter(|c| log.complaint.phrases.iter().any(|id| id == c.as_str()))
        .collect()
}

/// The place as stated.
pub(crate) fn place(stated: &PlaceRecord) -> Place {
    Place {
        altitude_m: stated.altitude_m,
        ambient_kpa: stated.ambient_kpa,
        air_c: stated.air_c.unwrap_or(Place::default().air_c),
    }
}

/// The tools of their ids; one that is not known is none.
pub(crate) fn tools(have: &[String]) -> BTreeSet<Tool> {
    let is_there = |tool: &Tool| have.iter().any(|id| id == tool.as_str());
    Tool::ALL.into_iter().filter(is_there).collect()
}

fn limit(log: &JobState, gauge_unit: PressureUnit) -> Option<Limit> {
    let drop = log.limit.drop?;
    let unit = log
        .limit
        .unit
        .as_deref()
        .and_then(PressureUnit::from_symbol)
        .unwrap_or(gauge_unit);
    Some(Limit {
        drop_kpa: kpa(drop, unit),
        seconds: log.limit.seconds?,
    })
}

fn instruments(log: &JobState) -> Instruments {
    let unstated = Instruments::default();
    let Some(stated) = &log.instruments else {
        return unstated;
    };
    let gauge = stated.gauge.as_ref().and_then(|gauge| {
        Some(Gauge {
            unit: PressureUnit::from_symbol(&gauge.unit)?,
            span: gauge.span,
            division: gauge.division,
            grade: grade(&gauge.grade)?,
            read_to: gauge.read_to,
        })
    });
    let meter = stated.meter.as_ref().map(|meter| Meter {
        percent: meter.percent,
        counts: meter.counts,
        digits: meter.digits,
        ..unstated.meter
    });
    Instruments {
        gauge: gauge.unwrap_or(unstated.gauge),
        pump_cm3: stated.pump_cm3.unwrap_or(unstated.pump_cm3),
        stroke_cm3: stated.stroke_cm3.unwrap_or(unstated.stroke_cm3),
        meter: meter.unwrap_or(unstated.meter),
    }
}

/// The accuracy grade of its letter.
pub(crate) fn grade(letter: &str) -> Option<GaugeGrade> {
    serde_json::from_value(serde_json::Value::String(letter.to_owned())).ok()
}

/// A reading as logged.
pub(crate) fn reading(record: &ReadingRecord) -> Option<Reading> {
    Some(Reading {
        test: record.test.parse().ok()?,
        answer: serde_json::from_value(record.answer.clone()).ok()?,
        state: CarState {
            connected: record.state.connected,
            engine: record.state.engine.as_deref().and_then(engine_state),
            hot: record.state.hot,
        },
        confirmed: record.confirmed,
        after_repair: record.after_repair,
    })
}

/// What the engine did, by its id.
pub(crate) fn engine_state(id: &str) -> Option<EngineState> {
    match id {
        "off" => Some(EngineState::Off),
        "idle" => Some(EngineState::Idle),
        "in_gear" => Some(EngineState::InGear),
        _ => None,
    }
}

/// The id of what the engine did.
pub(crate) fn engine_id(state: EngineState) -> &'static str {
    match state {
        EngineState::Off => "off",
        EngineState::Idle => "idle",
        EngineState::InGear => "in_gear",
    }
}
