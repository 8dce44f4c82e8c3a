//! Values of a meter, a gauge, a 0–3 scale, or words.
//!
//! | event | leads to |
//! |---|---|
//! | `Type` | the field's text kept |
//! | `Pick` an option | picked; picked again, not picked |
//! | `Pick` a car state | that state, instead of what the test asks |
//! | `Record` | a recording, see [`super::vibration`] |
//! | `KeepReading` | figures outside the instrument's range are meant; as `Confirm` |
//! | `Confirm` with something missing or wrong | the same, and what is missing is said |
//! | `Confirm` | reading handed in |

use holdfast_diagnose::{CarState, FieldSpec, Form, Profile, Quantity, TestSpec, Value};
use holdfast_measure::si::pressure::pascal;
use holdfast_measure::{Pressure, QuantityError};

use crate::companion::Companion;
use crate::compose::{self, MapOf};
use crate::error::ActError;
use crate::flow::answered::{answer, bound, field_id, missing, picked, unit_of, value};
use crate::flow::kind;
use crate::flow::numbers::{self, NumberField};
use crate::flow::parts::{entry, one_of, option, primary, quiet, tap, text_field, words};
use crate::flow::reading::{Handed, hand_in};
use crate::flow::{car_state, vibration};
use crate::protocol::{Action, Body, FormItem, Keys, MeterScreen, Pick};
use crate::session::{At, Meant, Stage, TestAt, Tried, ValuesAt};
use crate::text::{Args, capital};
use crate::turn::Turn;

pub(super) fn act(
    core: &mut Companion,
    mut at: TestAt,
    spec: &TestSpec,
    action: Action,
    turn: &mut Turn<'_>,
) -> Result<(), ActError> {
    let Stage::Values(mut values) = at.stage.clone() else {
        return Ok(());
    };
    if action == Action::KeepReading {
        values.meant = Meant::Yes;
    }
    match action {
        Action::Type { field, text } => {
            values.meant = Meant::No;
            values.typed.put(field, &text);
        }
        Action::Pick {
            pick: Pick::Answer { key, value },
        } => pick(&mut values.picked, key, value),
        Action::Pick {
            pick: Pick::CarState { property, value },
        } => at.car = Some(car_state::pick(at.car.unwrap_or_default(), &property, &value)),
        Action::Record { key } => vibration::record(core, &mut values, key, turn),
        Action::Confirm | Action::KeepReading => {
            if missing(core, spec, &values).is_empty() {
                let (answer, typed) = answer(core, spec, &values);
                let handed = Handed { typed, hold: None };
                at.stage = Stage::Values(values);
                return hand_in(core, at, answer, handed, turn);
            }
            values.tried = Tried::Yes;
        }
        _ => return Ok(()),
    }
    core.session.at = At::Test(TestAt {
        stage: Stage::Values(values),
        ..at
    });
    Ok(())
}

/// Picks an option of a key; the one that is picked already is let go.
fn pick(picked: &mut Vec<(String, String)>, key: String, value: String) {
    let was = picked.iter().any(|(k, v)| *k == key && *v == value);
    picked.retain(|(k, _)| *k != key);
    if !was {
        picked.push((key, value));
    }
}

pub(super) fn body(core: &Companion, at: &TestAt, spec: &TestSpec, values: &ValuesAt) -> Body {
    let Some(job) = &core.job else {
        return core.nothing();
    };
    let texts = &core.texts;
    let args = compose::test_args(texts, job);
    let mut items: Vec<FormItem> = Vec::new();
    for field in &spec.fields {
        items.extend(field_items(core, spec, field, values));
    }
    let car = at.car.unwrap_or_default();
    if spec.form == Form::Meter && job.situation.profile == Profile::Mechanic || car != CarState::default() {
        items.extend(car_state::items(core, car));
    }
    let missing = missing(core, spec, values);
    if values.tried == Tried::Yes && !missing.is_empty() {
        let names: Vec<String> = missing.iter().map(|key| label(core, spec, key)).collect();
        items.push(words(core.say_with(
            "problem-missing",
            &Args::new().text("what", texts.list(&names)),
        )));
    }
    let first = spec.fields.first();
    let read = first.and_then(|field| match value(core, field, values) {
        Ok(Some(Value::Number(figure))) => Some(figure),
        _ => None,
    });
    let meter = MeterScreen {
        picture: match spec.form {
            Form::Meter => compose::connector(texts, &job.circuit, &spec.id),
            Form::Gauge => {
                let unit = unit_of(core, values);
                let shown = read.map_or(0.0, |pa| unit.from_pressure(Pressure::new::<pascal>(pa)));
                let mut dial = compose::dial(texts, &job.situation, unit, shown);
                dial.target = None;
                dial.target_label = String::new();
                // The field below says it already.
                dial.reading_text = String::new();
                Some(holdfast_report::gauge(&dial))
            }
            _ => None,
        },
        map: match spec.form {
            Form::Meter => None,
            _ => compose::place_map(texts, job, MapOf::Near(&spec.id)),
        },
        own: kind::of_test(core, &spec.id),
        leads: compose::lead_lines(texts, &job.circuit, &spec.id)
            .into_iter()
            .flatten()
            .collect(),
        hint: texts.test_text(&spec.id, "hint", &args).unwrap_or_default(),
        items,
        band: first.and_then(|field| compose::band(texts, job, &spec.id, car, &field.key, read)),
        confirm: primary(core.say("values-confirm"), Action::Confirm),
    };
    if spec.form == Form::Vibration {
        Body::Vibration { meter }
    } else {
        Body::Meter { meter }
    }
}

fn label(core: &Companion, spec: &TestSpec, key: &str) -> String {
    core.texts
        .test_text(
            &spec.id,
            &format!("field-{}", key.replace('_', "-")),
            &Args::new(),
        )
        .unwrap_or_else(|| key.replace('_', " "))
}

fn field_items(core: &Companion, spec: &TestSpec, field: &FieldSpec, values: &ValuesAt) -> Vec<FormItem> {
    let key = field.key.as_str();
    let label = label(core, spec, key);
    let choose = |value: &str, text: String| {
        let there = picked(values, key) == Some(value);
        option(
            text,
            there,
            Pick::Answer {
                key: key.to_owned(),
                value: value.to_owned(),
            },
        )
    };
    let wrong = value(core, field, values).err();
    let keep = matches!(wrong, Some(QuantityError::OutOfRange { .. }))
        .then(|| tap(quiet(core.say("keep-out-of-range"), Action::KeepReading)));
    let problem = wrong.map(|error| numbers::problem(core, &error));
    match field.quantity {
        Quantity::Samples => vibration::items(core, field, &label, values),
        Quantity::YesNo => vec![one_of(
            label,
            ["yes", "no"]
                .map(|said| choose(said, said_words(core, spec, key, said)))
                .into(),
        )],
        Quantity::Scale => vec![one_of(
            label,
            ["0", "1", "2", "3"]
                .map(|step| choose(step, core.say(&format!("scale-{step}"))))
                .into(),
        )],
        Quantity::Words => {
            let text = values.typed.get(&field_id(field)).unwrap_or("").to_owned();
            let mut drawn = text_field(field_id(field), label, text, Keys::Lines);
            drawn.hint = core
                .texts
                .test_text(
                    &spec.id,
                    &format!("field-{}-hint", key.replace('_', "-")),
                    &Args::new(),
                )
                .unwrap_or_default();
            vec![entry(drawn)]
        }
        Quantity::Vacuum => {
            let unit = unit_of(core, values);
            let text = values.typed.get(&field_id(field)).unwrap_or("").to_owned();
            let mut drawn = text_field(field_id(field), label, text, Keys::Number);
            drawn.unit = core.texts.unit_name(unit.symbol());
            drawn.hint = core.say("values-reading-hint");
            drawn.problem = problem;
            [Some(entry(drawn)), keep].into_iter().flatten().collect()
        }
        quantity => {
            let Some(bound) = bound(quantity) else {
                return Vec::new();
            };
            let number = NumberField {
                id: field_id(field),
                label: "",
                bound,
            };
            let mut drawn = number.field(core, &values.typed, None);
            drawn.label = label;
            let mut items: Vec<FormItem> = [Some(entry(drawn)), keep].into_iter().flatten().collect();
            if quantity == Quantity::Ohms {
                items.push(one_of(
                    String::new(),
                    vec![choose("open", core.say("values-open"))],
                ));
            }
            items
        }
    }
}

/// What yes and no are called where a test has words for them.
pub(super) fn said_words(core: &Companion, spec: &TestSpec, key: &str, said: &str) -> String {
    let own = format!("field-{}-{said}", key.replace('_', "-"));
    match core.texts.test_text(&spec.id, &own, &Args::new()) {
        Some(words) => capital(&words),
        None => core.say(&format!("said-{said}")),
    }
}
