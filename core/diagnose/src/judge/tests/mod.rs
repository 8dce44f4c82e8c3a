mod electric;
mod hold;
mod hold_laws;
mod ohms;
mod vacuum;

use serde_json::{Value as Json, json};

use crate::judge::*;
use crate::{Catalogue, CircuitChoice, Place, listed_messages, parse_answer};

/// A circuit of which all is known: ground side switched, ignition fed, window at idle, vacuum makes soft.
pub(super) fn known() -> Json {
    json!({"template": "two-mounts-one-valve", "vacuum_means": "soft", "switched": "ground",
           "feed": "ignition", "window": "idle", "coil_ohm": [25, 31]})
}

pub(super) fn plain() -> Json {
    json!("two-mounts-one-valve")
}

pub(super) fn with(mut base: Json, change: Json) -> Json {
    for (key, value) in change.as_object().unwrap() {
        base[key] = value.clone();
    }
    base
}

pub(super) fn circuit(choice: &Json) -> Circuit {
    Circuit::build(&serde_json::from_value::<CircuitChoice>(choice.clone()).unwrap()).unwrap()
}

pub(super) fn reading(circuit: &Circuit, test: &str, answer: &Json) -> Reading {
    let test = test.parse().unwrap();
    let (answer, state) = parse_answer(circuit, &test, answer).unwrap();
    Reading {
        state,
        ..Reading::new(test, answer)
    }
}

/// Judges the last of some answers, the others before it; every message must be listed as it is said.
pub(super) fn result(choice: &Json, situation: &Situation, answers: &[(&str, Json)]) -> TestResult {
    let circuit = circuit(choice);
    let readings: Vec<Reading> = answers
        .iter()
        .map(|(test, json)| reading(&circuit, test, json))
        .collect();
    let (last, earlier) = readings.split_last().unwrap();
    let result = judge(&circuit, situation, earlier, last);
    assert!(!result.says.is_empty(), "{answers:?} says nothing");
    for message in &result.says {
        let listed = listed_messages().iter().find(|m| m.id == message.id.as_str());
        assert!(
            listed.is_some_and(|l| l.fits(message)),
            "{answers:?}: {message:?} is not as listed"
        );
    }
    result
}

pub(super) fn first(choice: &Json, answers: &[(&str, Json)]) -> (Outcome, String) {
    let result = result(choice, &Situation::default(), answers);
    (result.outcome, result.says[0].id.to_string())
}

pub(super) fn says(result: &TestResult, id: &str) -> bool {
    result.says.iter().any(|m| m.id.as_str() == id)
}

#[track_caller]
pub(super) fn expect(choice: &Json, test: &str, answer: Json, outcome: Outcome, message: &str) {
    assert_eq!(
        first(choice, &[(test, answer.clone())]),
        (outcome, message.to_owned()),
        "{test} {answer}"
    );
}

#[test]
fn a_test_that_was_not_done_says_so() {
    let circuit = circuit(&plain());
    let test = "hold:rear_mount".parse().unwrap();
    let reading = Reading::new(
        test,
        Answer::NotDone {
            reason: "no access".into(),
        },
    );
    assert_eq!(
        judge(&circuit, &Situation::default(), &[], &reading).outcome,
        Outcome::NotDone
    );
}

#[test]
fn every_band_holds_a_sound_reading() {
    let circuit = circuit(&known());
    let band = |test: &str, key: &str| {
        let test = test.parse().unwrap();
        expected_band(
            &circuit,
            &Situation::default(),
            &[],
            &test,
            crate::CarState::default(),
            &key.into(),
        )
        .unwrap()
    };
    assert!(band("coil", "ohms").holds(28.5));
    assert!(band("supply-loaded", "pin1").holds(12.2));
    assert!(band("control-pin", "off_v").holds(13.8));
    assert!(band("control-pin", "on_v").holds(0.3));
    assert!(band("valve-volts", "plugged_v").holds(13.6));
    assert!(band("power-wire", "ohms").holds(0.4));
    assert!(band("source", "gauge").holds(19.0 * 3386.389));
    for spec in Catalogue::standard().all_for(&circuit) {
        for field in &spec.fields {
            if let Some(band) = expected_band(
                &circuit,
                &Situation::default(),
                &[],
                &spec.id,
                crate::CarState::default(),
                &field.key,
            ) {
                assert!(band.low < band.high, "{} {}", spec.id, field.key);
            }
        }
    }
}

/// Any value that a field can hold, sensible or not.
fn any_value(quantity: crate::Quantity, seed: f64) -> crate::Value {
    use crate::{Quantity, Value};
    match quantity {
        Quantity::YesNo => Value::YesNo(seed > 0.5),
        Quantity::Words => Value::Words(vec![format!("P{:04}", (seed * 9_999.0) as u32)]),
        Quantity::Samples => Value::Samples {
            hz: seed * 200.0,
            mg: vec![seed; (seed * 600.0) as usize],
        },
        Quantity::Ohms if seed > 0.9 => Value::Open,
        Quantity::Vacuum => Value::Number(seed * 120_000.0),
        Quantity::Rpm => Value::Number(seed * 2_000.0),
        _ => Value::Number(seed * 20.0 - 2.0),
    }
}

proptest::proptest! {
    #![proptest_config(proptest::prelude::ProptestConfig { cases: 24, ..Default::default() })]

    /// Whatever is entered for any test of any circuit: an outcome of that test, and something listed to say.
    #[test]
    fn every_answer_gets_a_result(
        seeds in proptest::collection::vec(0.0..1.0f64, 8),
        template in 0..12usize,
        layout in 0..6usize,
    ) {
        let choice = json!({"template": crate::templates()[template].id, "electric": crate::layouts()[layout].id});
        let circuit = circuit(&choice);
        let mut earlier: Vec<Reading> = Vec::new();
        for spec in Catalogue::standard().all_for(&circuit) {
            if spec.id.is_hold() || spec.id.kind == TestKind::Look {
                continue;
            }
            let values = spec.fields.iter().zip(&seeds).map(|(f, s)| (f.key.clone(), any_value(f.quantity, *s)));
            let reading = Reading::new(spec.id.clone(), Answer::Values(values.collect()));
            let result = judge(&circuit, &Situation::default(), &earlier, &reading);
            let outcomes = [Outcome::AsExpected, Outcome::NotAsExpected, Outcome::Undecided];
            proptest::prop_assert!(outcomes.contains(&result.outcome), "{}: {:?}", spec.id, result);
            let question = crate::question(&circuit, &Situation::default(), &earlier, &reading);
            let asked = question.iter().flat_map(|slip| [&slip.message, &slip.likely]);
            for message in result.says.iter().chain(asked) {
                let listed = listed_messages().iter().find(|m| m.id == message.id.as_str());
                proptest::prop_assert!(listed.is_some_and(|l| l.fits(message)), "{}: {:?}", spec.id, message);
            }
            earlier.push(reading);
        }
    }

    /// An empty answer is no result.
    #[test]
    fn a_reading_without_values_does_not_fit(template in 0..12usize) {
        let circuit = circuit(&json!(crate::templates()[template].id));
        for spec in Catalogue::standard().all_for(&circuit) {
            let reading = Reading::new(spec.id.clone(), Answer::Values(std::collections::BTreeMap::new()));
            let result = judge(&circuit, &Situation::default(), &[], &reading);
            proptest::prop_assert_eq!(result.outcome, Outcome::Undecided, "{}", spec.id);
        }
    }
}
