//! What the fields of a test say: read from what was typed, picked and recorded.

use std::collections::BTreeMap;

use holdfast_diagnose::{Answer, FieldKey, FieldSpec, Quantity, TestSpec, Value};
use holdfast_joblog::Typed as TypedRecord;
use holdfast_measure::si::pressure::pascal;
use holdfast_measure::{Bound, Pressure, PressureUnit, QuantityError};

use crate::companion::Companion;
use crate::flow::{numbers, vibration};
use crate::protocol::FieldId;
use crate::session::{Meant, ValuesAt};

/// More vacuum than any gauge can be misread for, kPa.
const MEANT_KPA: f64 = 10_000.0;

/// The most vacuum that a person may mean to have read.
pub(super) fn meant() -> Pressure {
    PressureUnit::KPa.to_pressure(MEANT_KPA)
}

/// The option picked for a key.
pub(super) fn picked<'a>(values: &'a ValuesAt, key: &str) -> Option<&'a str> {
    values
        .picked
        .iter()
        .find(|(k, _)| k == key)
        .map(|(_, value)| value.as_str())
}

/// The field of a value.
pub(super) fn field_id(spec: &FieldSpec) -> FieldId {
    FieldId::Answer {
        key: spec.key.to_string(),
    }
}

/// The unit of the reading that is put right, else the gauge's.
pub(super) fn unit_of(core: &Companion, values: &ValuesAt) -> PressureUnit {
    values
        .unit
        .as_deref()
        .and_then(PressureUnit::from_symbol)
        .unwrap_or_else(|| core.gauge_unit())
}

/// The range of a quantity that is typed as a plain number.
pub(super) fn bound(quantity: Quantity) -> Option<Bound> {
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
pub(super) fn value(
    core: &Companion,
    field: &FieldSpec,
    values: &ValuesAt,
) -> Result<Option<Value>, QuantityError> {
    let text = values.typed.get(&field_id(field)).unwrap_or("").trim();
    let option = picked(values, field.key.as_str());
    match field.quantity {
        Quantity::YesNo => Ok(option.map(|said| Value::YesNo(said == "yes"))),
        Quantity::Ohms if option == Some("open") => Ok(Some(Value::Open)),
        Quantity::Scale => Ok(option.and_then(numbers::figure).map(Value::Number)),
        Quantity::Samples => Ok(
            vibration::of(values, field.key.as_str()).map(|kept| Value::Samples {
                hz: kept.hz,
                mg: kept.mg.clone(),
            }),
        ),
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
            let most = match values.meant {
                Meant::No => core.most_vacuum(unit),
                Meant::Yes => meant(),
            };
            let vacuum = numbers::read_vacuum(core, text, unit, most)?;
            Ok(Some(Value::Number(vacuum.get::<pascal>())))
        }
        quantity => match bound(quantity).map(|bound| core.texts.units().typed(&bound)) {
            Some(typed) => {
                let stored = |figure| Value::Number(typed.stored(figure));
                match (numbers::read(core, &typed.bound, text), values.meant) {
                    (Err(QuantityError::OutOfRange { .. }), Meant::Yes) => {
                        Ok(numbers::kept(core, text).map(stored))
                    }
                    (parsed, _) => parsed.map(|figure| Some(stored(figure))),
                }
            }
            None => Ok(None),
        },
    }
}

/// Keys of required fields that say nothing yet, and of fields that say something impossible.
pub(super) fn missing(core: &Companion, spec: &TestSpec, values: &ValuesAt) -> Vec<String> {
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
pub(super) fn answer(core: &Companion, spec: &TestSpec, values: &ValuesAt) -> (Answer, Vec<TypedRecord>) {
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
                quantity => bound(quantity).map_or("", |bound| core.texts.units().typed(&bound).bound.unit),
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
