use serde_json::{Value as Json, json};

use super::*;
use crate::{CircuitChoice, parse_answer};

fn reading(test: &str, json: Json) -> Reading {
    let test = test.parse().unwrap();
    let (answer, state) = parse_answer(&circuit(), &test, &json).unwrap();
    Reading {
        state,
        ..Reading::new(test, answer)
    }
}

fn circuit() -> Circuit {
    Circuit::build(&CircuitChoice::Template("two-mounts-one-valve".into())).unwrap()
}

fn ask(test: &str, json: Json) -> Option<Slip> {
    question(&circuit(), &Situation::default(), &[], &reading(test, json))
}

fn likely(test: &str, json: Json) -> String {
    ask(test, json.clone())
        .unwrap_or_else(|| panic!("{test} {json} passed"))
        .likely
        .id
        .to_string()
}

#[test]
fn kilopascals_typed_as_inhg_are_asked_about() {
    let slip = ask(
        "hold:branch",
        json!({"start": 67.7, "readings": [[20, 60]], "unit": "inHg"}),
    )
    .unwrap();
    assert_eq!(slip.message.id.as_str(), "odd-above-ambient");
    assert_eq!(slip.unit, Some(PressureUnit::KPa));
}

#[test]
fn the_inner_scale_is_named() {
    let slip = ask(
        "hold:branch",
        json!({"start": 50.8, "readings": [[20, 50.8]], "unit": "inHg"}),
    )
    .unwrap();
    assert_eq!(slip.likely.id.as_str(), "likely-other-scale");
    assert_eq!(slip.unit, Some(PressureUnit::CmHg));
}

#[test]
fn inhg_typed_as_kilopascals_are_asked_about() {
    let slip = ask(
        "hold:branch",
        json!({"start": 20, "readings": [[20, 19.5]], "unit": "kPa"}),
    )
    .unwrap();
    assert_eq!(slip.message.id.as_str(), "odd-far-below-target");
    assert_eq!(slip.unit, Some(PressureUnit::InHg));
}

#[test]
fn a_gauge_at_work_cannot_show_more_than_the_air_allows() {
    let slip = ask("delivered", json!({"gauge": 60, "unit": "inHg"})).unwrap();
    assert_eq!(slip.unit, Some(PressureUnit::KPa));
    assert_eq!(slip.key, Some("gauge".into()));
}

#[test]
fn a_needle_that_rises_is_asked_about() {
    assert_eq!(
        likely(
            "hold:branch",
            json!({"start": 20, "readings": [[20, 23]], "unit": "inHg"})
        ),
        "likely-still-pumped"
    );
}

#[test]
fn meter_slips_are_named() {
    assert_eq!(
        likely("supply-volts", json!({"pin1": 12400, "battery": 12.5})),
        "likely-millivolts"
    );
    assert_eq!(
        likely("supply-volts", json!({"pin1": 27.5, "battery": 12.5})),
        "likely-ac-range"
    );
    assert_eq!(
        likely("supply-volts", json!({"pin1": -12.4, "battery": 12.5})),
        "likely-leads-swapped"
    );
    assert_eq!(
        likely("supply-volts", json!({"pin1": 14.2, "battery": 12.5})),
        "likely-other-engine-state"
    );
    assert_eq!(likely("coil", json!({"ohms": 0.0285})), "likely-kiloohms");
    assert_eq!(likely("power-wire", json!({"ohms": 20_000_000})), "likely-open");
    assert_eq!(likely("idle-quality", json!({"rpm": 75})), "likely-dial-factor");
}

#[test]
fn ordinary_readings_pass() {
    for (test, json) in [
        (
            "hold:branch",
            json!({"start": 20, "readings": [[20, 13.5]], "unit": "inHg"}),
        ),
        (
            "hold:branch",
            json!({"start": 12, "readings": [[20, 3]], "unit": "inHg"}),
        ),
        ("hold:branch", json!({"never_reached": 6, "unit": "inHg"})),
        (
            "hold:branch",
            json!({"start": 68, "readings": [[20, 66]], "unit": "kPa"}),
        ),
        (
            "hold:branch",
            json!({"start": 20, "readings": [[20, 20.3]], "unit": "inHg"}),
        ),
        ("source", json!({"gauge": 3, "unit": "inHg"})),
        (
            "supply-volts",
            json!({"pin1": 12.4, "pin2": 0.02, "battery": 12.5}),
        ),
        (
            "valve-volts",
            json!({"volts": 0.0, "plugged_v": 0.0, "battery": 13.9}),
        ),
        ("coil", json!({"ohms": 2.0})),
        ("coil", json!({"open": true})),
        ("power-wire", json!({"ohms": 40})),
    ] {
        assert_eq!(ask(test, json.clone()), None, "{test} {json}");
    }
}

#[test]
fn what_is_confirmed_is_not_asked_again() {
    let mut kept = reading(
        "hold:branch",
        json!({"start": 67.7, "readings": [[20, 60]], "unit": "inHg"}),
    );
    kept.confirmed = true;
    assert_eq!(question(&circuit(), &Situation::default(), &[], &kept), None);
}

#[test]
fn three_others_against_one_are_said() {
    let earlier = [
        reading("supply-loaded", json!({"pin1": 12.4, "battery": 12.5})),
        reading("delivered", json!({"gauge": 18.5, "unit": "inHg"})),
        reading(
            "control-pin",
            json!({"off_v": 13.8, "on_v": 0.3, "battery": 13.9}),
        ),
    ];
    let none = reading("supply-volts", json!({"pin1": 0.0, "pin2": 0.0, "battery": 12.5}));
    let ask = |earlier: &[Reading]| question(&circuit(), &Situation::default(), earlier, &none);
    assert_eq!(ask(&earlier[..2]), None, "two are not enough");
    assert_eq!(ask(&earlier).unwrap().message.id.as_str(), "odd-contradicts");
}
