//! Readings typed, or set by dragging the needle: right, odd and wrong.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "a test ends loudly"
)]

mod phone;

use holdfast_companion::{Action, Body, FieldId, FormItem, HoldPhase, Place, TestStage};
use holdfast_diagnose::Outcome;
use phone::Phone;

fn answer(key: &str) -> FieldId {
    FieldId::Answer { key: key.into() }
}

#[test]
fn kilopascals_typed_as_inches_are_asked_about_once_and_kept_if_confirmed() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.send(Action::Go { to: Place::Settings });
    phone.type_in(FieldId::GaugeSpan, "100");
    phone.send(Action::Back);
    phone.begin_test("source");
    phone.type_in(answer("gauge"), "64");
    phone.send(Action::Confirm);
    let TestStage::Question { text, entered, .. } = phone.stage() else {
        panic!("{:?}", phone.screen().body)
    };
    assert!(!text.is_empty());
    assert!(
        entered.lines[0].ends_with("64\u{a0}inHg"),
        "as typed: {entered:?}"
    );
    assert!(
        entered.taken[0].starts_with("Gauge 0–100\u{a0}inHg"),
        "{entered:?}"
    );
    assert!(entered.taken[1].starts_with("Entered "), "{entered:?}");
    phone.send(Action::ChangeReading);
    assert!(matches!(phone.screen().body, Body::Meter { .. }));
    phone.send(Action::Confirm);
    assert!(
        matches!(phone.stage(), TestStage::Result { .. }),
        "asked once, not twice"
    );
    assert_eq!(phone.core.results().len(), 1);
    assert!(phone.core.results()[0].asked_again);
}

#[test]
fn a_figure_out_of_range_is_said_beside_its_field_and_nothing_is_lost() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.begin_test("supply-volts");
    phone.type_in(answer("pin1"), "124");
    phone.type_in(answer("pin2"), "abc");
    phone.send(Action::Confirm);
    let Body::Meter { meter } = phone.screen().body else {
        panic!("{:?}", phone.screen().body)
    };
    let problems: Vec<(String, Option<String>)> = meter
        .items
        .iter()
        .filter_map(|item| match item {
            FormItem::Entry { field } => Some((field.value.clone(), field.problem.clone())),
            _ => None,
        })
        .collect();
    assert_eq!(problems[0].0, "124");
    assert!(
        problems[0].1.as_ref().is_some_and(|p| p.contains("40")),
        "{problems:?}"
    );
    assert_eq!(problems[1].0, "abc");
    assert!(problems[1].1.is_some());
}

#[test]
fn a_minus_and_a_comma_are_accepted_on_the_gauge() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.hold("hold:branch", 19, "-20,0", "\u{2212}13,5");
    assert_eq!(phone.core.results()[0].result.outcome, Outcome::Leaks);
}

#[test]
fn never_reaching_the_target_is_a_result() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.begin_test("hold:branch");
    phone.send(Action::WillNotBuild);
    phone.type_in(FieldId::GaugeReading, "6");
    phone.send(Action::Confirm);
    assert_eq!(phone.core.results()[0].result.outcome, Outcome::WillNotBuild);
}

#[test]
fn dragging_the_needle_fills_the_reading_and_speaks_on_the_way_up() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.begin_test("hold:branch");
    phone.asked.clear();
    // Across the top of the dial, from the lower left to the right.
    for (x, y) in [
        (60.0, 180.0),
        (180.0, 40.0),
        (250.0, 60.0),
        (310.0, 150.0),
        (320.0, 200.0),
    ] {
        phone.send(Action::Drag { x, y });
    }
    let said: Vec<String> = phone
        .asked
        .iter()
        .filter_map(|r| match r {
            holdfast_companion::Request::Speak { text, .. } => Some(text.clone()),
            _ => None,
        })
        .collect();
    assert_eq!(said.last().map(String::as_str), Some("Stop. Let go."), "{said:?}");
    phone.send(Action::LetGo);
    let update = phone.send(Action::Drag { x: 250.0, y: 60.0 });
    assert!(update.live.is_some());
    let HoldPhase::Read { confirm, .. } = phone.phase() else {
        panic!("{:?}", phone.phase())
    };
    assert!(confirm.why_not.is_none());
    phone.send(Action::Confirm);
    assert!(matches!(phone.phase(), HoldPhase::Watch { .. }));
}
