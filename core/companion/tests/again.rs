//! A test that is to be done once more begins anew, and both readings are in the log.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "a test ends loudly"
)]

mod phone;

use holdfast_companion::{Action, Body, Place, TestStage};
use holdfast_diagnose::Next;
use phone::Phone;

fn next(phone: &Phone) -> String {
    match phone.core.next() {
        Some(Next::Test { id, .. }) => id.to_string(),
        other => panic!("{other:?}"),
    }
}

/// Opens what is to be done next.
fn go(phone: &mut Phone) -> String {
    let Body::Overview { overview } = phone.screen().body else {
        panic!("{:?}", phone.screen().body)
    };
    phone.send(overview.next.go.action);
    overview.next.why
}

#[test]
fn a_leaking_pump_is_put_right_and_proved_again() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.hold("hand-pump", 3, "20", "12");
    phone.send(Action::Confirm);
    if matches!(phone.core.next(), Some(Next::LookAgain { .. })) {
        go(&mut phone);
        phone.send(Action::KeepReading);
        phone.send(Action::Confirm);
    }
    assert_eq!(next(&phone), "hand-pump");
    let why = go(&mut phone);
    assert!(why.contains("Put it right or change it"), "{why}");
    assert!(
        matches!(phone.stage(), TestStage::Brief { .. }),
        "not the result of the first: {:?}",
        phone.stage()
    );
    phone.send(Action::Go { to: Place::Overview });
    phone.hold("hand-pump", 3, "20", "20");
    phone.send(Action::Confirm);
    assert_eq!(phone.core.results().len(), 2, "both are in the log");
    assert_ne!(next(&phone), "hand-pump");
    assert!(
        phone.core.finding().unwrap().causes[0]
            .faults
            .iter()
            .all(|fault| fault.to_string() != "hand_pump/leaks"),
        "nothing is held against the pump any more"
    );
}
