//! A reading that may be a slip is looked at again: kept, put right, or done once more.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "a test ends loudly"
)]

mod phone;

use holdfast_companion::{Action, Body, FieldId, Said, TestStage};
use holdfast_diagnose::Next;
use phone::Phone;

const HOSE: &str = "flow:outlet_hose";

/// Vacuum comes as far as the hose, and the hose is said to be blocked: that is rare, and so is a slip.
fn odd() -> Phone {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.begin_test("delivered");
    phone.type_in(FieldId::Answer { key: "gauge".into() }, "18.5");
    phone.type_in(
        FieldId::Answer {
            key: "seconds".into(),
        },
        "1.5",
    );
    phone.send(Action::Confirm);
    phone.send(Action::Confirm);
    phone.begin_test(HOSE);
    phone.send(Action::Say { said: Said::No });
    phone.send(Action::Confirm);
    phone
}

/// Opens what is to be done next.
fn follow(phone: &mut Phone) {
    let Body::Overview { overview } = phone.screen().body else {
        panic!("{:?}", phone.screen().body)
    };
    assert!(
        overview.next.title.starts_with("Look again"),
        "{}",
        overview.next.title
    );
    assert!(!overview.next.why.is_empty());
    phone.send(overview.next.go.action);
    let TestStage::Question { text, entered, .. } = phone.stage() else {
        panic!("{:?}", phone.stage())
    };
    assert!(text.contains('%'), "how likely it is a slip: {text}");
    assert_eq!(entered.lines, ["Needle rises and stays"], "what was said");
    assert_eq!(entered.taken.len(), 1, "when, and no instrument: {entered:?}");
}

fn is_asked_about(phone: &Phone) -> bool {
    matches!(phone.core.next(), Some(Next::LookAgain { id, .. }) if id.to_string() == HOSE)
}

#[test]
fn a_doubted_reading_that_is_kept_is_not_asked_about_again() {
    let mut phone = odd();
    assert!(is_asked_about(&phone));
    follow(&mut phone);
    phone.send(Action::KeepReading);
    assert!(matches!(phone.stage(), TestStage::Result { .. }));
    let done = phone.core.results();
    assert_eq!(done.len(), 2, "the same reading, not one more");
    assert!(done[1].asked_again);
    phone.send(Action::Confirm);
    assert!(!is_asked_about(&phone));
}

#[test]
fn a_doubted_reading_can_be_put_right() {
    let mut phone = odd();
    follow(&mut phone);
    phone.send(Action::ChangeReading);
    phone.send(Action::Say { said: Said::Yes });
    let done = phone.core.results();
    assert_eq!(done.len(), 2);
    assert_eq!(done[1].result.outcome.as_str(), "as_expected");
    phone.send(Action::Confirm);
    assert!(!is_asked_about(&phone));
}

#[test]
fn a_doubted_test_can_be_done_once_more_in_its_place() {
    let mut phone = odd();
    follow(&mut phone);
    phone.send(Action::RedoTest);
    phone.tick_cautions();
    phone.send(Action::BeginTest);
    phone.send(Action::Say { said: Said::No });
    assert_eq!(phone.core.results().len(), 2);
    phone.send(Action::Confirm);
    assert!(!is_asked_about(&phone), "it was looked at again");
}
