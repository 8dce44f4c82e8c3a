//! A logged reading put right: what was typed wrong is typed again, everything else stays as it was read.
//!
//! | event | leads to |
//! |---|---|
//! | `CorrectReading` after a hold | its figures, to be typed over; the times stay |
//! | `CorrectReading` after values | the values as they were entered |
//! | `CorrectReading` after questions | the questions again |
//! | `CorrectReading` after the look-over | the parts as they were seen |
//! | `Type` | the field's text kept |
//! | `Confirm` with valid figures | reading handed in, in place of the wrong one |

use holdfast_diagnose::{Answer, HoldAnswer, HoldCourse, Reading, TestSpec, Value};
use holdfast_joblog::Typed as TypedRecord;
use holdfast_measure::{EverydayUnit, PressureUnit};
use serde::{Deserialize, Serialize};

use crate::companion::Companion;
use crate::compose;
use crate::error::ActError;
use crate::flow::numbers;
use crate::flow::parts::{entry, primary, text_field, words};
use crate::flow::reading::{Handed, hand_in};
use crate::flow::test::measurement;
use crate::protocol::{Action, Body, Field, FieldId, Keys, MeterScreen};
use crate::session::{At, Recorded, Stage, TestAt, ValuesAt};
use crate::text::Args;
use crate::turn::Turn;
use crate::typed::Typed;
use crate::units::Reader;

/// A hold's figures to be put right.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub(crate) struct AmendAt {
    /// As it was read.
    pub hold: HoldAnswer,
    /// Figures typed over, by their place.
    pub typed: Typed,
}

/// The stage in which a logged reading is put right.
pub(super) fn stage(core: &Companion, spec: &TestSpec, reading: &Reading, entry: &str) -> Stage {
    match &reading.answer {
        Answer::Hold(hold) => match hold.course {
            HoldCourse::Trace { .. } => measurement(spec),
            HoldCourse::Spots { .. } | HoldCourse::NeverReached { .. } => Stage::Amend(AmendAt {
                hold: hold.clone(),
                typed: Typed::default(),
            }),
        },
        Answer::Values(_) => match measurement(spec) {
            Stage::Values(_) => Stage::Values(as_entered(core, spec, reading, entry)),
            other => other,
        },
        Answer::Look(seen) => Stage::Look {
            seen: seen
                .iter()
                .map(|(id, state)| (id.to_string(), state.as_str().to_owned()))
                .collect(),
        },
        Answer::NotDone { .. } | Answer::NotAvailable => measurement(spec),
    }
}

/// Values as they were typed and picked.
fn as_entered(core: &Companion, spec: &TestSpec, reading: &Reading, entry: &str) -> ValuesAt {
    let mut values = ValuesAt::default();
    let logged = core.job.as_ref().and_then(|job| job.logged(entry).cloned());
    for typed in logged.map(|read| read.typed).unwrap_or_default() {
        let text = in_todays_unit(core, reading, &typed).unwrap_or(typed.text);
        values.typed.put(FieldId::Answer { key: typed.key }, &text);
    }
    for field in &spec.fields {
        if let Some(Value::Samples { hz, mg }) = reading.value(field.key.as_str()) {
            let kept = Recorded {
                hz: *hz,
                mg: mg.clone(),
            };
            values.recorded.push((field.key.to_string(), kept));
        }
        let picked = match reading.value(field.key.as_str()) {
            Some(Value::YesNo(true)) => "yes".to_owned(),
            Some(Value::YesNo(false)) => "no".to_owned(),
            Some(Value::Open) => "open".to_owned(),
            Some(Value::Number(step)) if field.quantity == holdfast_diagnose::Quantity::Scale => {
                format!("{step:.0}")
            }
            _ => continue,
        };
        values.picked.push((field.key.to_string(), picked));
    }
    values.unit = reading.unit().map(|unit| unit.symbol().to_owned());
    values
}

/// A length or temperature that was typed in another unit than this person types now.
fn in_todays_unit(core: &Companion, reading: &Reading, typed: &TypedRecord) -> Option<String> {
    let unit = EverydayUnit::from_symbol(&typed.unit)?;
    let stored = Reader::ALL
        .into_iter()
        .map(|reader| reader.offered()[0])
        .find(|stored| core.texts.units().shown(*stored) == core.texts.units().shown(unit))?;
    let shown = core.texts.units().shown(stored);
    match reading.value(&typed.key) {
        Some(Value::Number(figure)) if shown != unit => {
            Some(numbers::plain(core, stored.convert(*figure, shown)))
        }
        _ => None,
    }
}

/// The figures of a hold in order, each with its label: the start and the later readings, or the highest.
fn figures(core: &Companion, hold: &HoldAnswer) -> Vec<(String, f64)> {
    match &hold.course {
        HoldCourse::Spots { start, readings } => {
            let later = readings.iter().map(|(at_s, figure)| {
                let args = Args::new().text("seconds", core.texts.seconds(*at_s));
                (core.say_with("amend-reading", &args), *figure)
            });
            std::iter::once((core.say("amend-start"), *start))
                .chain(later)
                .collect()
        }
        HoldCourse::NeverReached { highest } => vec![(core.say("amend-highest"), *highest)],
        HoldCourse::Trace { .. } => Vec::new(),
    }
}

fn id(place: usize) -> FieldId {
    FieldId::Answer {
        key: place.to_string(),
    }
}

/// The figure that stands at a place: typed over and valid, else as it was read. None if what is typed can't be.
fn stands(core: &Companion, amend: &AmendAt, place: usize, read: f64) -> Option<f64> {
    let unit = amend.hold.unit;
    match amend.typed.get(&id(place)) {
        None => Some(read),
        Some(text) => numbers::read_vacuum(core, text, unit, core.most_vacuum(unit))
            .ok()
            .map(|v| unit.from_pressure(v)),
    }
}

fn amended(core: &Companion, amend: &AmendAt) -> Option<HoldAnswer> {
    let stand: Option<Vec<f64>> = figures(core, &amend.hold)
        .iter()
        .enumerate()
        .map(|(place, (_, read))| stands(core, amend, place, *read))
        .collect();
    let mut stand = stand?.into_iter();
    let course = match &amend.hold.course {
        HoldCourse::Spots { readings, .. } => HoldCourse::Spots {
            start: stand.next()?,
            readings: readings.iter().map(|(at_s, _)| *at_s).zip(stand).collect(),
        },
        HoldCourse::NeverReached { .. } => HoldCourse::NeverReached {
            highest: stand.next()?,
        },
        HoldCourse::Trace { .. } => return None,
    };
    Some(HoldAnswer {
        course,
        ..amend.hold.clone()
    })
}

pub(super) fn act(
    core: &mut Companion,
    at: TestAt,
    action: Action,
    turn: &mut Turn<'_>,
) -> Result<(), ActError> {
    let Stage::Amend(amend) = &at.stage else {
        return Ok(());
    };
    match action {
        Action::Type { field, text } => {
            let mut amend = amend.clone();
            amend.typed.put(field, &text);
            core.session.at = At::Test(TestAt {
                stage: Stage::Amend(amend),
                ..at
            });
            Ok(())
        }
        Action::Confirm => match amended(core, amend) {
            Some(hold) => hand_in(core, at, Answer::Hold(hold), Handed::default(), turn),
            None => Ok(()),
        },
        _ => Ok(()),
    }
}

pub(super) fn body(core: &Companion, amend: &AmendAt) -> Body {
    let Some(job) = &core.job else {
        return core.nothing();
    };
    let unit = amend.hold.unit;
    let figures = figures(core, &amend.hold);
    let mut items = vec![words(core.say("amend-hint"))];
    let mut wrong = None;
    for (place, (label, read)) in figures.iter().enumerate() {
        let field = field(core, amend, place, label.clone(), *read, unit);
        wrong = wrong.or(field.problem.clone());
        items.push(entry(field));
    }
    let last = figures.len().saturating_sub(1);
    let shown = figures
        .last()
        .and_then(|(_, read)| stands(core, amend, last, *read))
        .unwrap_or(0.0);
    let mut dial = compose::dial(&core.texts, &job.situation, unit, shown);
    // The field below says it already.
    dial.reading_text = String::new();
    let meter = MeterScreen {
        picture: Some(holdfast_report::gauge(&dial)),
        map: None,
        own: None,
        leads: Vec::new(),
        hint: core.say("values-reading-hint"),
        items,
        band: None,
        confirm: primary(core.say("amend-confirm"), Action::Confirm).unless(wrong),
    };
    Body::Meter { meter }
}

fn field(
    core: &Companion,
    amend: &AmendAt,
    place: usize,
    label: String,
    read: f64,
    unit: PressureUnit,
) -> Field {
    let typed = amend.typed.get(&id(place));
    let value = typed.map_or_else(|| numbers::plain(core, read), str::to_owned);
    let problem = typed
        .and_then(|text| numbers::read_vacuum(core, text, unit, core.most_vacuum(unit)).err())
        .map(|error| numbers::problem(core, &error));
    Field {
        unit: core.texts.unit_name(unit.symbol()),
        problem,
        ..text_field(id(place), label, value, Keys::Number)
    }
}
