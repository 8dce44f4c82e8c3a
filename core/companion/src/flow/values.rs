//! Values of a meter, a gauge, a 0–3 scale, or words.
//!
//! | event | leads to |
//! |---|---|
//! | `Type` | the field's text kept |
//! | `Pick` an option | picked; picked again, not picked |
//! | `Pick` a car state | that state, instead of what the test asks |
//! | `Confirm` with something missing or wrong | the same, and what is missing is said |
//! | `Confirm` | reading handed in |

use std::collections::BTreeMap;

use holdfast_diagnose::{Answer, CarState, FieldKey, FieldSpec, Form, Profile, Quantity, TestSpec, Value};
use holdfast_joblog::Typed as TypedRecord;
use holdfast_measure::si::pressure::pascal;
use holdfast_measure::{Bound, Pressure, PressureUnit, QuantityError, parse_vacuum};

use crate::companion::Companion;
use crate::compose;
use crate::error::ActError;
use crate::flow::numbers::{self, NumberField};
use crate::flow::parts::{entry, one_of, option, primary, text_field, words};
use crate::flow::reading::{Handed, hand_in};
use crate::protocol::{Action, Body, FieldId, FormItem, Keys, MeterScreen, Pick};
use crate::session::{At, Stage, TestAt, Tried, ValuesAt};
use crate::situation;
use crate::text::Args;
use crate::turn::Turn;

pub(super) fn act(
    core: &mut Companion,
    at: TestAt,
    spec: &TestSpec,
    action: Action,
    turn: &mut Turn<'_>,
) -> Result<(), ActError> {
    let Stage::Values(mut values) = at.stage.clone() else {
        return Ok(());
    };
    match action {
        Action::Type { field, text } => values.typed.put(field, &text),
        Action::Pick {
            pick: Pick::Answer { key, value },
        } => pick(&mut values.picked, key, value),
        Action::Pick {
            pick: Pick::CarState { property, value },
        } => pick(&mut values.state, property, value),
        Action::Confirm => {
            if missing(core, spec, &values).is_empty() {
                let (answer, typed) = answer(core, spec, &values);
                let handed = Handed {
                    state: car_state(&values),
                    typed,
                    hold: None,
                };
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

fn picked<'a>(values: &'a ValuesAt, key: &str) -> Option<&'a str> {
    values
        .picked
        .iter()
        .find(|(k, _)| k == key)
        .map(|(_, value)| value.as_str())
}

fn field_id(spec: &FieldSpec) -> FieldId {
    FieldId::Answer {
        key: spec.key.to_string(),
    }
}

/// The unit of the reading that is put right, else the gauge's.
fn unit_of(core: &Companion, values: &ValuesAt) -> PressureUnit {
    values
        .unit
        .as_deref()
        .and_then(PressureUnit::from_symbol)
        .unwrap_or_else(|| core.gauge_unit())
}

/// The range of a quantity that is typed as a plain number.
fn bound(quantity: Quantity) -> Option<Bound> {
    match quantity {
        Quantity::Volts => Some(Bound::VOLTS),
        Quantity::Ohms => Some(Bound::OHMS),
        Quantity::Seconds => Some(Bound::SECONDS),
        Quantity::Rpm => Some(Bound::RPM),
        Quantity::Count => Some(Bound::COUNT),
        Quantity::Millimetres => Some(Bound::MILLIMETRES),
        Quantity::Scale => Some(Bound::SCALE),
        Quantity::Vacuum | Quantity::YesNo | Quantity::Words | Quantity::Samples => None,
    }
}

/// What a field says; an error where something is typed that can't be.
fn value(core: &Companion, field: &FieldSpec, values: &ValuesAt) -> Result<Option<Value>, QuantityError> {
    let text = values.typed.get(&field_id(field)).unwrap_or("").trim();
    let option = picked(values, field.key.as_str());
    match field.quantity {
        Quantity::YesNo => Ok(option.map(|said| Value::YesNo(said == "yes"))),
        Quantity::Ohms if option == Some("open") => Ok(Some(Value::Open)),
        Quantity::Scale => Ok(option.and_then(numbers::figure).map(Value::Number)),
        Quantity::Samples => Ok(None),
        Quantity::Words => {
            let list: Vec<String> = text
                .split([',', ';', '\n', ' '])
                .map(str::trim)
                .filter(|w| !w.is_empty())
                .map(str::to_owned)
                .collect();
            Ok((field.required || !list.is_empty()).then_some(Value::Words(list)))
        }
        _ if text.is_empty() => Ok(None),
        Quantity::Vacuum => {
            let unit = unit_of(core, values);
            let vacuum = parse_vacuum(text, unit, core.most_vacuum(unit))?;
            Ok(Some(Value::Number(vacuum.get::<pascal>())))
        }
        quantity => match bound(quantity) {
            Some(bound) => bound.parse(text).map(|figure| Some(Value::Number(figure))),
            None => Ok(None),
        },
    }
}

/// Keys of required fields that say nothing yet, and of fields that say something impossible.
fn missing(core: &Companion, spec: &TestSpec, values: &ValuesAt) -> Vec<String> {
    let says = |field: &FieldSpec| matches!(value(core, field, values), Ok(Some(_)));
    spec.fields
        .iter()
        .filter(|field| match value(core, field, values) {
            Err(_) => true,
            Ok(Some(_)) => false,
            Ok(None) => {
                let stands_in = spec.fields.iter().any(|other| {
                    says(other)
                        && (other.instead_of.as_ref() == Some(&field.key)
                            || field.instead_of.as_ref() == Some(&other.key)
                            || (other.instead_of.is_some() && other.instead_of == field.instead_of))
                });
                field.required && !stands_in
            }
        })
        .map(|field| field.key.to_string())
        .collect()
}

/// The answer, and what was typed for it.
fn answer(core: &Companion, spec: &TestSpec, values: &ValuesAt) -> (Answer, Vec<TypedRecord>) {
    let mut said: BTreeMap<FieldKey, Value> = BTreeMap::new();
    let mut typed = Vec::new();
    let unit = unit_of(core, values);
    for field in &spec.fields {
        let Ok(Some(value)) = value(core, field, values) else {
            continue;
        };
        if field.quantity == Quantity::Vacuum {
            said.insert(FieldKey::from("unit"), Value::Word(unit.symbol().to_owned()));
        }
        if let Some(text) = values.typed.get(&field_id(field)) {
            let symbol = match field.quantity {
                Quantity::Vacuum => unit.symbol(),
                quantity => bound(quantity).map_or("", |bound| bound.unit),
            };
            typed.push(TypedRecord {
                key: field.key.to_string(),
                text: text.to_owned(),
                unit: symbol.to_owned(),
            });
        }
        said.insert(field.key.clone(), value);
    }
    (Answer::Values(said), typed)
}

fn car_state(values: &ValuesAt) -> CarState {
    let said = |property: &str| {
        values
            .state
            .iter()
            .find(|(p, _)| p == property)
            .map(|(_, v)| v.as_str())
    };
    CarState {
        connected: said("connected").map(|v| v == "yes"),
        engine: said("engine").and_then(situation::engine_state),
        hot: said("hot").map(|v| v == "yes"),
    }
}

pub(super) fn body(core: &Companion, spec: &TestSpec, values: &ValuesAt) -> Body {
    let Some(job) = &core.job else {
        return core.nothing();
    };
    let texts = &core.texts;
    let args = compose::test_args(texts, job);
    let mut items: Vec<FormItem> = Vec::new();
    for field in &spec.fields {
        items.extend(field_items(core, spec, field, values));
    }
    if spec.form == Form::Meter && job.situation.profile == Profile::Mechanic {
        items.extend(state_items(core, spec, values));
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
        leads: compose::lead_lines(texts, &job.circuit, &spec.id)
            .into_iter()
            .flatten()
            .collect(),
        hint: texts.test_text(&spec.id, "hint", &args).unwrap_or_default(),
        items,
        band: first
            .and_then(|field| compose::band(texts, job, &spec.id, car_state(values), &field.key, read)),
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
    let problem = match value(core, field, values) {
        Err(error) => Some(numbers::problem(core, &error)),
        Ok(_) => None,
    };
    match field.quantity {
        Quantity::Samples => Vec::new(),
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
            drawn.unit = unit.symbol().to_owned();
            drawn.hint = core.say("values-reading-hint");
            drawn.problem = problem;
            vec![entry(drawn)]
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
            let mut items = vec![entry(drawn)];
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
    core.texts
        .test_text(
            &spec.id,
            &format!("field-{}-{said}", key.replace('_', "-")),
            &Args::new(),
        )
        .unwrap_or_else(|| core.say(&format!("said-{said}")))
}

/// The state the car was in, where it was another than the test asks.
fn state_items(core: &Companion, spec: &TestSpec, values: &ValuesAt) -> Vec<FormItem> {
    let choose = |property: &str, value: &str, key: &str| {
        let there = values.state.iter().any(|(p, v)| p == property && v == value);
        option(
            core.say(key),
            there,
            Pick::CarState {
                property: property.to_owned(),
                value: value.to_owned(),
            },
        )
    };
    let mut items = vec![one_of(
        core.say("state-engine"),
        vec![
            choose("engine", "off", "state-engine-off"),
            choose("engine", "idle", "state-engine-idle"),
            choose("engine", "in_gear", "state-engine-in-gear"),
        ],
    )];
    if spec.needs.connected.is_some() {
        items.push(one_of(
            core.say("state-connected"),
            vec![
                choose("connected", "yes", "state-connected-yes"),
                choose("connected", "no", "state-connected-no"),
            ],
        ));
    }
    items.push(one_of(
        core.say("state-hot"),
        vec![
            choose("hot", "yes", "state-hot-yes"),
            choose("hot", "no", "state-hot-no"),
        ],
    ));
    items
}
