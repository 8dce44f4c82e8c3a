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
mod tests {
    use serde_json::json;

    use super::*;
    use crate::{CircuitChoice, TestKind};

    fn parse(test: &str, json: Json) -> Result<(Answer, CarState), AnswerError> {
        let circuit = Circuit::build(&CircuitChoice::Template("two-mounts-one-valve".into())).unwrap();
        parse_answer(&circuit, &test.parse().unwrap(), &json)
    }

    /// The examples of the scenario format, each as it is written there.
    #[test]
    fn every_example_of_the_format_is_read() {
        let examples = [
            (
                "hold:branch",
                json!({"start": 20, "readings": [[20, 13.5]], "strokes": 19, "unit": "inHg"}),
            ),
            (
                "hold:branch",
                json!({"trace_hz": 10, "trace": [20.0, null, 19.9], "unit": "inHg"}),
            ),
            ("hold:branch", json!({"never_reached": 6, "unit": "inHg"})),
            ("source", json!({"gauge": 19, "unit": "inHg", "steady": true})),
            ("source", json!({"felt": true})),
            ("delivered", json!({"gauge": 18.5, "unit": "inHg", "seconds": 2})),
            ("switch-over", json!({"seconds": 1.5, "gauge": 0, "unit": "inHg"})),
            ("bypass", json!({"changes": true})),
            (
                "idle-quality",
                json!({"rpm": 750, "steady": true, "rough": false}),
            ),
            ("complaint", json!({"present": true})),
            ("codes", json!({"list": []})),
            ("prove-meter", json!({"ohms": 0.2, "battery": 12.6})),
            ("wiggle:connector", json!({"steady": true})),
            ("look", json!({"front_hose": "cracked", "connector": "corroded"})),
            (
                "mount-look:front_mount",
                json!({"torn": false, "wet": false, "sag_mm": 0}),
            ),
            (
                "mount-move:front_mount",
                json!({"clunk": false, "gap_opens": false}),
            ),
            ("flow:front_hose", json!({"free": true})),
            (
                "supply-volts",
                json!({"pin1": 12.4, "pin2": 0.02, "battery": 12.5}),
            ),
            ("supply-loaded", json!({"pin1": 12.1})),
            ("fuse", json!({"in_v": 12.4, "out_v": 0.0})),
            ("fuse", json!({"ohms": 0.2})),
            ("power-wire", json!({"ohms": 0.4})),
            (
                "valve-volts",
                json!({"volts": 13.8, "plugged_v": 13.6, "battery": 13.9}),
            ),
            ("control-pin", json!({"off_v": 13.8, "on_v": 0.3})),
            ("power-wire", json!({"ohms": 0.4, "to_ground_open": true})),
            ("control-wire", json!({"ohms": 0.5, "to_ground_open": true})),
            ("coil", json!({"ohms": 28.5, "to_case_open": true})),
            ("valve-off", json!({"passes": false, "vents": true})),
            (
                "valve-on",
                json!({"passes": true, "clicks": true, "vents": false}),
            ),
            (
                "shake",
                json!({"on": {"hz": 100, "mg": [1.0, -1.0]}, "off": {"hz": 100, "mg": [3.0, -3.0]}}),
            ),
            ("shake", json!({"on_0_3": 1, "off_0_3": 3})),
            ("coil", json!({"open": true})),
            ("coil", json!({"ohms": {"open": true}})),
            (
                "power-wire",
                json!({"open": true, "connected": false, "engine": "off", "hot": true}),
            ),
        ];
        for (test, json) in examples {
            parse(test, json.clone()).unwrap_or_else(|e| panic!("{test} {json}: {e}"));
        }
    }

    #[test]
    fn open_stands_for_ohms_over_range() {
        for json in [json!({"open": true}), json!({"ohms": {"open": true}})] {
            let (answer, _) = parse("power-wire", json).unwrap();
            let Answer::Values(values) = answer else { panic!() };
            assert_eq!(values.get(&"ohms".into()), Some(&Value::Open));
        }
    }

    #[test]
    fn the_state_of_the_car_is_no_value() {
        let (answer, state) = parse(
            "coil",
            json!({"ohms": 30, "hot": true, "engine": "in_gear", "connected": true}),
        )
        .unwrap();
        assert_eq!(
            state,
            CarState {
                connected: Some(true),
                engine: Some(EngineState::InGear),
                hot: Some(true)
            }
        );
        let Answer::Values(values) = answer else { panic!() };
        assert_eq!(values.len(), 1);
    }

    #[test]
    fn vacuum_is_kept_in_pascals_with_the_unit_it_was_read_in() {
        let (answer, _) = parse("source", json!({"gauge": 60, "unit": "kPa"})).unwrap();
        let Answer::Values(values) = answer else { panic!() };
        let Some(Value::Number(pa)) = values.get(&"gauge".into()) else {
            panic!()
        };
        approx::assert_relative_eq!(*pa, 60_000.0, max_relative = 1e-12);
        assert_eq!(values.get(&"unit".into()), Some(&Value::Word("kPa".into())));
    }

    #[test]
    fn what_a_test_does_not_know_is_refused() {
        let key = parse("coil", json!({"ohms": 30, "volts": 3}));
        assert!(matches!(key, Err(AnswerError::UnknownKey { .. })), "{key:?}");
        let part = parse("look", json!({"turbo": "oily"}));
        assert!(matches!(part, Err(AnswerError::UnknownKey { .. })), "{part:?}");
        let kind = parse("coil", json!({"ohms": "thirty"}));
        assert!(matches!(kind, Err(AnswerError::WrongKind { .. })), "{kind:?}");
        let empty = parse("source", json!({"steady": true}));
        assert!(matches!(empty, Err(AnswerError::Empty { .. })), "{empty:?}");
        let test = parse("hold:turbo", json!({"start": 20}));
        assert_eq!(
            test,
            Err(AnswerError::UnknownTest(TestId::on(TestKind::Hold, "turbo")))
        );
        let shape = parse("hold:branch", json!({"readings": [[20, 13]]}));
        assert!(matches!(shape, Err(AnswerError::Shape { .. })), "{shape:?}");
    }
}
