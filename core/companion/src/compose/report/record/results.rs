//! Every test that was done: with what, how well, and what it says.

use holdfast_diagnose::{Answer, HoldCourse, Outcome, Quantity, Reading, TestResult, Value};
use holdfast_measure::{Pressure, si::pressure::pascal};
use holdfast_report::{Align, Table};

use super::columns;
use crate::compose::mark::mark_of;
use crate::compose::reading::reading_words;
use crate::compose::time::minute;
use crate::job::{Behind, JobView};
use crate::text::{Args, Texts};

/// A coverage factor of two: about 95 % (JCGM 100).
const COVERAGE: f64 = 2.0;

/// Every test that was done: when, what was read, how well, what it says.
pub(super) fn result_table(texts: &Texts, job: &JobView) -> Table {
    let rows = job
        .done
        .iter()
        .zip(&job.behind)
        .filter(|((_, result), _)| result.outcome != Outcome::NotDone)
        .map(|((reading, result), behind)| result_row(texts, job, reading, result, behind))
        .collect();
    Table {
        caption: texts.say("record-results-caption"),
        columns: columns(
            texts,
            &[
                ("record-time", Align::Start),
                ("record-test", Align::Start),
                ("record-read", Align::Start),
                ("record-uncertainty", Align::Start),
                ("record-instrument", Align::Start),
                ("record-result", Align::Start),
            ],
        ),
        rows,
        sums: 0,
    }
}

fn result_row(
    texts: &Texts,
    job: &JobView,
    reading: &Reading,
    result: &TestResult,
    behind: &Behind,
) -> Vec<String> {
    let mut test = texts.test_name(&reading.test);
    if reading.after_repair {
        test = texts.say_with("record-after-repair", &Args::new().text("test", test));
    }
    let state = state_words(texts, reading);
    let mut read = reading_words(texts, &job.circuit, reading);
    if !state.is_empty() {
        read = format!("{read} ({state})");
    }
    if reading.confirmed {
        read = texts.say_with("record-kept", &Args::new().text("reading", read));
    }
    vec![
        minute(behind.at_ms, behind.offset_min),
        test,
        read,
        uncertainty(texts, job, reading),
        instrument(texts, reading),
        mark_of(texts, result.outcome).word,
    ]
}

/// The state of the car that was said beside a reading.
fn state_words(texts: &Texts, reading: &Reading) -> String {
    let yes_no = |key: &str, value: Option<bool>| {
        value.map(|yes| {
            let state = texts.say(&format!("state-{key}-{}", if yes { "yes" } else { "no" }));
            format!("{} {state}", texts.say(&format!("state-{key}")))
        })
    };
    let engine = reading.state.engine.map(|engine| {
        let key = match engine {
            holdfast_diagnose::EngineState::Off => "state-engine-off",
            holdfast_diagnose::EngineState::Idle => "state-engine-idle",
            holdfast_diagnose::EngineState::InGear => "state-engine-in-gear",
        };
        format!("{} {}", texts.say("state-engine"), texts.say(key))
    });
    [
        yes_no("connected", reading.state.connected),
        engine,
        yes_no("hot", reading.state.hot),
    ]
    .into_iter()
    .flatten()
    .collect::<Vec<_>>()
    .join(", ")
}

/// What a reading was taken with; which one it is, is said once, under the conditions.
pub(in crate::compose::report) fn instrument(texts: &Texts, reading: &Reading) -> String {
    texts.say(match instrument_of(reading) {
        Instrument::Gauge => "instrument-name-gauge",
        Instrument::Meter => "instrument-name-meter",
        Instrument::Phone => "instrument-name-phone",
        Instrument::Person => "instrument-name-person",
    })
}

/// What a reading is read with.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(in crate::compose) enum Instrument {
    Gauge,
    Meter,
    Phone,
    /// Eyes, ears and hands.
    Person,
}

/// What a reading is read with, by what it holds.
pub(in crate::compose) fn instrument_of(reading: &Reading) -> Instrument {
    match &reading.answer {
        Answer::Hold(_) => Instrument::Gauge,
        Answer::Look(_) | Answer::NotDone { .. } | Answer::NotAvailable => Instrument::Person,
        Answer::Values(_) if reading.unit().is_some() => Instrument::Gauge,
        Answer::Values(values) => {
            let has = |wanted: fn(&Value) -> bool| values.values().any(wanted);
            let figures = has(|value| matches!(value, Value::Number(_) | Value::Open));
            if has(|value| matches!(value, Value::Samples { .. })) {
                Instrument::Phone
            } else if is_electric(reading) && figures {
                Instrument::Meter
            } else {
                Instrument::Person
            }
        }
    }
}

/// Whether a test is done with a meter.
fn is_electric(reading: &Reading) -> bool {
    use holdfast_diagnose::TestKind;
    !matches!(
        reading.test.kind,
        TestKind::Complaint
            | TestKind::Codes
            | TestKind::IdleQuality
            | TestKind::MountLook
            | TestKind::MountMove
            | TestKind::Shake
    )
}

/// Expanded uncertainty of a reading, k = 2.
pub(in crate::compose::report) fn uncertainty(texts: &Texts, job: &JobView, reading: &Reading) -> String {
    let instruments = &job.situation.instruments;
    let gauge = &instruments.gauge;
    match &reading.answer {
        Answer::Hold(hold) => {
            let drop = gauge.unit.to_pressure(COVERAGE * gauge.u_drop());
            let key = match hold.course {
                HoldCourse::NeverReached { .. } => "record-u-reading",
                HoldCourse::Spots { .. } | HoldCourse::Trace { .. } => "record-u-drop",
            };
            texts.say_with(key, &Args::new().text("u", texts.vacuum_in(drop, hold.unit)))
        }
        Answer::Values(values) => {
            let spec = holdfast_diagnose::Catalogue::standard().spec(&job.circuit, &reading.test);
            let mut said: Vec<String> = Vec::new();
            // In the order in which they are read.
            for field in spec.iter().flat_map(|spec| &spec.fields) {
                let Some(value) = values.get(&field.key) else {
                    continue;
                };
                let Value::Number(number) = value else { continue };
                let words = match field.quantity {
                    Quantity::Volts => {
                        texts.with_unit(&texts.two_figures(COVERAGE * instruments.meter.u(*number)), "V")
                    }
                    Quantity::Ohms => {
                        texts.with_unit(&texts.two_figures(COVERAGE * instruments.meter.u(*number)), "Ω")
                    }
                    Quantity::Vacuum => {
                        let u = gauge
                            .u_reading()
                            .hypot(gauge.u_grade(gauge.unit.from_pressure(Pressure::new::<pascal>(*number))));
                        texts.vacuum_in(
                            gauge.unit.to_pressure(COVERAGE * u),
                            reading.unit().unwrap_or(gauge.unit),
                        )
                    }
                    _ => continue,
                };
                let words = texts.say_with("record-u", &Args::new().text("u", words));
                if !said.contains(&words) {
                    said.push(words);
                }
            }
            said.join(", ")
        }
        Answer::Look(_) | Answer::NotDone { .. } | Answer::NotAvailable => String::new(),
    }
}
