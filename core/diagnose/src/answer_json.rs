//! Answers as they stand in a scenario file.

use std::collections::BTreeMap;

use holdfast_measure::PressureUnit;
use serde::Deserialize;
use serde_json::Value as Json;

use crate::{
    Answer, CarState, Catalogue, Circuit, ComponentId, EngineState, FieldKey, Form, HoldAnswer, HoldCourse,
    LookState, Quantity, TestId, TestSpec, Value,
};

/// Why an answer can't be read.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum AnswerError {
    /// The circuit has no such test.
    #[error("this circuit has no test '{0}'")]
    UnknownTest(TestId),
    /// A key that the test does not know.
    #[error("'{test}' has no value '{key}'")]
    UnknownKey {
        /// The test.
        test: TestId,
        /// The key.
        key: String,
    },
    /// A value of the wrong kind.
    #[error("'{key}' of '{test}': {value} is not {wanted}")]
    WrongKind {
        /// The test.
        test: TestId,
        /// The key.
        key: String,
        /// What stands there.
        value: String,
        /// What should.
        wanted: &'static str,
    },
    /// Not an object, or a hold without readings.
    #[error("the answer to '{test}' has not the right shape: {why}")]
    Shape {
        /// The test.
        test: TestId,
        /// What is wrong.
        why: String,
    },
    /// The value that the test is about is missing.
    #[error("the answer to '{test}' says nothing: '{key}' is missing")]
    Empty {
        /// The test.
        test: TestId,
        /// The key.
        key: FieldKey,
    },
}

/// Reads an answer of a scenario file: the answer, and the state of the car as far as it is said.
///
/// # Errors
/// [`AnswerError`]: an unknown test or key, a value of the wrong kind, nothing said.
pub fn parse_answer(
    circuit: &Circuit,
    test: &TestId,
    json: &Json,
) -> Result<(Answer, CarState), AnswerError> {
    let spec = Catalogue::standard()
        .spec(circuit, test)
        .ok_or_else(|| AnswerError::UnknownTest(test.clone()))?;
    let reader = Reader { test, spec: &spec };
    match spec.form {
        Form::Hold => reader.hold(json),
        Form::LookOver => reader.look(circuit, json),
        _ => reader.values(json),
    }
}

/// A hold as it stands in a scenario file.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct HoldJson {
    unit: Option<PressureUnit>,
    start: Option<f64>,
    readings: Option<Vec<(f64, f64)>>,
    strokes: Option<f64>,
    trace_hz: Option<f64>,
    trace: Option<Vec<Option<f64>>>,
    never_reached: Option<f64>,
    hand_timed: Option<bool>,
    connected: Option<bool>,
    engine: Option<EngineState>,
    hot: Option<bool>,
}

struct Reader<'a> {
    test: &'a TestId,
    spec: &'a TestSpec,
}

impl Reader<'_> {
    fn shape(&self, why: impl Into<String>) -> AnswerError {
        AnswerError::Shape {
            test: self.test.clone(),
            why: why.into(),
        }
    }

    fn hold(&self, json: &Json) -> Result<(Answer, CarState), AnswerError> {
        let hold = HoldJson::deserialize(json).map_err(|e| self.shape(e.to_string()))?;
        let course = match (hold.start, hold.trace, hold.never_reached) {
            (Some(start), None, None) => {
                let mut readings = hold.readings.unwrap_or_default();
                readings.sort_by(|a, b| a.0.total_cmp(&b.0));
                HoldCourse::Spots { start, readings }
            }
            (None, Some(readings), None) => {
                let hz = hold.trace_hz.filter(|hz| *hz > 0.0);
                HoldCourse::Trace {
                    hz: hz.ok_or_else(|| self.shape("trace_hz is missing"))?,
                    readings,
                }
            }
            (None, None, Some(highest)) => HoldCourse::NeverReached { highest },
            _ => return Err(self.shape("give one of start, trace, never_reached")),
        };
        let answer = HoldAnswer {
            unit: hold.unit.unwrap_or(PressureUnit::InHg),
            course,
            strokes: hold.strokes,
            hand_timed: hold.hand_timed.unwrap_or(false),
        };
        let state = CarState {
            connected: hold.connected,
            engine: hold.engine,
            hot: hold.hot,
        };
        Ok((Answer::Hold(answer), state))
    }

    fn look(&self, circuit: &Circuit, json: &Json) -> Result<(Answer, CarState), AnswerError> {
        let seen: BTreeMap<ComponentId, LookState> =
            BTreeMap::deserialize(json).map_err(|e| self.shape(e.to_string()))?;
        match seen.keys().find(|id| circuit.component(id).is_none()) {
            Some(id) => Err(AnswerError::UnknownKey {
                test: self.test.clone(),
                key: id.as_str().to_owned(),
            }),
            None => Ok((Answer::Look(seen), CarState::default())),
        }
    }

    fn values(&self, json: &Json) -> Result<(Answer, CarState), AnswerError> {
        let object = json
            .as_object()
            .ok_or_else(|| self.shape("it must be an object"))?;
        let unit = match object.get("unit") {
            Some(json) => self.as_kind(json, "unit", "a pressure unit")?,
            None => PressureUnit::InHg,
        };
        let mut state = CarState::default();
        let mut values = BTreeMap::new();
        for (key, json) in object {
            match key.as_str() {
                "connected" => state.connected = Some(self.as_kind(json, key, "yes or no")?),
                "engine" => state.engine = Some(self.as_kind(json, key, "a state of the engine")?),
                "hot" => state.hot = Some(self.as_kind(json, key, "yes or no")?),
                "unit" => {
                    values.insert(FieldKey::from("unit"), Value::Word(unit.symbol().to_owned()));
                }
                // `{"open": true}` stands for ohms over range.
                "open" if self.first_ohms().is_some() => {
                    if self.as_kind::<bool>(json, key, "yes or no")? {
                        values.extend(self.first_ohms().map(|key| (key, Value::Open)));
                    }
                }
                _ => {
                    let field = self.spec.field(key).ok_or_else(|| AnswerError::UnknownKey {
                        test: self.test.clone(),
                        key: key.clone(),
                    })?;
                    let value = self.value(field.quantity, key, json, unit)?;
                    values.insert(field.key.clone(), value);
                }
            }
        }
        for field in self.spec.fields.iter().filter(|f| f.required) {
            let instead = |key: &FieldKey| {
                self.spec
                    .fields
                    .iter()
                    .any(|f| f.instead_of.as_ref() == Some(key) && values.contains_key(&f.key))
            };
            if !values.contains_key(&field.key) && !instead(&field.key) {
                return Err(AnswerError::Empty {
                    test: self.test.clone(),
                    key: field.key.clone(),
                });
            }
        }
        Ok((Answer::Values(values), state))
    }

    fn first_ohms(&self) -> Option<FieldKey> {
        self.spec
            .fields
            .iter()
            .find(|f| f.quantity == Quantity::Ohms)
            .map(|f| f.key.clone())
    }

    fn value(
        &self,
        quantity: Quantity,
        key: &str,
        json: &Json,
        unit: PressureUnit,
    ) -> Result<Value, AnswerError> {
        Ok(match quantity {
            Quantity::Vacuum => {
                let figure = self.as_kind::<f64>(json, key, "a number")?;
                Value::Number(unit.to_pressure(figure).value)
            }
            Quantity::Ohms if json.get("open").and_then(Json::as_bool) == Some(true) => Value::Open,
            Quantity::Volts
            | Quantity::Ohms
            | Quantity::Seconds
            | Quantity::Rpm
            | Quantity::Count
            | Quantity::Millimetres
            | Quantity::Scale => Value::Number(self.as_kind(json, key, "a number")?),
            Quantity::YesNo => Value::YesNo(self.as_kind(json, key, "yes or no")?),
            Quantity::Words => Value::Words(self.as_kind(json, key, "a list of words")?),
            Quantity::Samples => {
                let Samples { hz, mg } = self.as_kind(json, key, "samples with hz and mg")?;
                Value::Samples { hz, mg }
            }
        })
    }

    fn as_kind<T: for<'de> Deserialize<'de>>(
        &self,
        json: &Json,
        key: &str,
        wanted: &'static str,
    ) -> Result<T, AnswerError> {
        T::deserialize(json).map_err(|_| AnswerError::WrongKind {
            test: self.test.clone(),
            key: key.to_owned(),
            value: json.to_string(),
            wanted,
        })
    }
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Samples {
    hz: f64,
    mg: Vec<f64>,
}

#[cfg(test)]
mod tests;
