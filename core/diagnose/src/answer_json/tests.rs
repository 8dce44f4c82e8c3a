//! Answers in the contract's form, read.

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
