//! Tests done more than once.

use serde_json::json;

use super::tests::Known;
use crate::{Message, Next, Policy};

fn lost(inhg: f64) -> serde_json::Value {
    json!({"start": 20, "readings": [[20, 20.0 - inhg]], "unit": "inHg"})
}

/// The branch and the pump by itself lose as much.
fn leaking_pump() -> Known {
    let mut known = Known::sound();
    known.read("hold:branch", &lost(1.5));
    known.read("hand-pump", &lost(6.0));
    known
}

fn p_of(known: &Known, fault: &str) -> f64 {
    let finding = known.finding();
    let names = |c: &&crate::Cause| c.faults.iter().any(|f| f.to_string() == fault);
    finding.causes.iter().filter(names).map(|c| c.p).sum()
}

fn asked(next: Next) -> (String, Message) {
    match next {
        Next::Test { id, why, .. } => (id.to_string(), why),
        other => panic!("{other:?}"),
    }
}

#[test]
fn a_tester_found_bad_is_put_right_and_proved_before_more_is_read_with_it() {
    let mut known = leaking_pump();
    known.confirm_last();
    let (test, why) = asked(known.next(Policy::Guided));
    assert_eq!((test.as_str(), why.id.as_str()), ("hand-pump", "why-mends"));
    assert!(!known.finding().decided);

    known.read("hand-pump", &lost(0.0));
    assert!(p_of(&known, "hand_pump/leaks") < 0.05, "it was put right");
    let mut other = Known::sound();
    other.read("hand-pump", &lost(0.0));
    for (ours, theirs) in known.finding().causes.iter().zip(&other.finding().causes) {
        assert_eq!(ours, theirs, "what was read with the bad one says nothing");
    }
}

/// A pump and a meter: the readings of the one add up, those of the other take each other's place.
#[test]
fn a_tester_that_stays_bad_is_not_asked_about_again() {
    let dead = json!({"open": true, "battery": 0.0});
    for (test, bad, fault) in [
        ("hand-pump", lost(6.0), "hand_pump/leaks"),
        ("prove-meter", dead, "multimeter/dead"),
    ] {
        let mut known = Known::sound();
        known.read(test, &bad);
        known.confirm_last();
        assert_eq!(
            asked(known.next(Policy::Guided)).1.id.as_str(),
            "why-mends",
            "{test}"
        );
        known.read(test, &bad);
        known.confirm_last();
        assert!(p_of(&known, fault) > 0.9, "{test}");
        assert_ne!(asked(known.next(Policy::Guided)).0, test);
    }
}

#[test]
fn a_tester_proved_once_more_takes_nothing_away() {
    let mut known = leaking_pump();
    known.read("hand-pump", &lost(0.0));
    known.read("hold:front_mount", &lost(9.0));
    let before = p_of(&known, "front_mount/leaks");
    known.read("hand-pump", &lost(0.0));
    assert!(
        p_of(&known, "front_mount/leaks") > before,
        "it was good all along"
    );
}

#[test]
fn a_hold_done_twice_is_two_witnesses_and_a_look_is_one() {
    let p_after = |test: &str, answer: serde_json::Value, fault: &str, times: usize| {
        let mut known = Known::sound();
        (0..times).for_each(|_| known.read(test, &answer));
        p_of(&known, fault)
    };
    let hold = |times| p_after("hold:front_mount", lost(9.0), "front_mount/leaks", times);
    assert!(hold(2) > hold(1), "one bad seal is likelier than two");
    let torn = json!({"torn": true, "wet": false, "sag_mm": 0});
    let look = |times| p_after("mount-look:front_mount", torn.clone(), "front_mount/torn", times);
    assert!((look(2) - look(1)).abs() < 1e-12);
}

/// Source: the reading that is left is the only one, so the two must agree to the last digit but for rounding.
#[test]
fn a_test_done_again_takes_the_place_of_the_one_before() {
    let mut known = Known::sound();
    known.read("flow:outlet_hose", &json!({"free": false}));
    known.read("flow:outlet_hose", &json!({"free": true}));
    let mut other = Known::sound();
    other.read("flow:outlet_hose", &json!({"free": true}));
    assert_eq!(known.finding().causes, other.finding().causes);
}
