//! What does not go as the screens first suggest: another state of the car, a reason in one's own words, a figure
//! outside the range, a recording, a part that the finding does not name.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "a test ends loudly"
)]

mod phone;

use holdfast_companion::{
    Action, Body, Button, CannotReason, FieldId, HoldPhase, PhonePart, Pick, Place, Request, TestStage,
};
use holdfast_diagnose::Outcome;
use holdfast_report::Item;
use phone::{Phone, button};

fn refuse_button(phone: &Phone) -> Button {
    let TestStage::Brief { cannot, .. } = phone.stage() else {
        panic!("no briefing: {:?}", phone.stage())
    };
    let refuse = Action::CannotDo {
        reason: CannotReason::OwnWords,
    };
    button(&cannot, &refuse).expect("a button")
}

#[test]
fn a_reason_in_own_words_needs_words() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.send(Action::ShowTest {
        test: "source".into(),
    });
    let refuse = Action::CannotDo {
        reason: CannotReason::OwnWords,
    };
    phone.send(refuse.clone());
    assert!(phone.core.results().is_empty());
    assert!(refuse_button(&phone).why_not.is_some(), "it asks for words first");
    phone.type_in(FieldId::CannotWhy, "the wasps are home");
    assert!(refuse_button(&phone).why_not.is_none());
    phone.send(refuse);
    let done = phone.core.results();
    assert_eq!(done[0].result.outcome, Outcome::NotDone);
    phone.send(Action::Go { to: Place::Log });
    let Body::Log { log } = phone.screen().body else {
        panic!("no log")
    };
    assert!(
        log.rows[0].text.contains("the wasps are home"),
        "{}",
        log.rows[0].text
    );
}

#[test]
fn the_car_may_stand_otherwise_in_any_test() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.send(Action::ShowTest {
        test: "valve-volts".into(),
    });
    phone.tick_cautions();
    let engine_off = Pick::CarState {
        property: "engine".into(),
        value: "off".into(),
    };
    phone.pick(engine_off.clone());
    phone.send(Action::StateCar);
    phone.pick(engine_off);
    phone.send(Action::BeginTest);
    phone.type_in(FieldId::Answer { key: "volts".into() }, "0");
    phone.send(Action::Confirm);
    let done = phone.core.results();
    assert_ne!(
        done[0].result.outcome,
        Outcome::NotAsExpected,
        "no volts with the engine off blames nothing"
    );
}

#[test]
fn a_figure_outside_the_gauge_is_kept_and_questioned() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.begin_test("hold:branch");
    phone.send(Action::LetGo);
    phone.type_in(FieldId::GaugeReading, "67.7");
    let HoldPhase::Read {
        field,
        confirm,
        others,
        ..
    } = phone.phase()
    else {
        panic!("{:?}", phone.phase())
    };
    assert!(field.problem.is_some());
    assert!(confirm.why_not.is_some());
    assert!(button(&others, &Action::KeepReading).is_some());
    phone.send(Action::KeepReading);
    phone.wait(21.0);
    phone.type_in(FieldId::GaugeReading, "45.7");
    phone.send(Action::KeepReading);
    assert!(
        matches!(phone.stage(), TestStage::Question { .. }),
        "{:?}",
        phone.stage()
    );
    phone.send(Action::KeepReading);
    assert_eq!(phone.core.results().len(), 1);
    assert!(phone.core.results()[0].asked_again);
}

#[test]
fn vibration_is_recorded_with_vacuum_and_without() {
    let mut phone = Phone::with(PhonePart::Accelerometer);
    phone.begin_job();
    phone.begin_test("shake");
    let hz = 100.0;
    let shake = |size: f64| -> Vec<f64> { (0..800).map(|i| 1_000.0 + size * f64::from(i % 4 - 2)).collect() };
    phone.send(Action::Record { key: "on".into() });
    phone.send(Action::VibrationNotRecorded);
    phone.send(Action::Confirm);
    assert!(phone.core.results().is_empty(), "nothing was recorded");
    for (key, size) in [("on", 5.0), ("off", 20.0)] {
        phone.asked.clear();
        phone.send(Action::Record { key: key.into() });
        assert_eq!(phone.asked, [Request::RecordVibration { for_ms: 8_000 }]);
        phone.send(Action::VibrationRecorded { hz, mg: shake(size) });
        // One that nobody asked for is dropped.
        phone.send(Action::VibrationRecorded { hz, mg: vec![0.0] });
    }
    let mut phone = phone.kill_and_reopen(1_000);
    phone.send(Action::Confirm);
    let done = phone.core.results();
    assert_eq!(
        done[0].result.outcome,
        Outcome::AsExpected,
        "{:?}",
        done[0].result
    );
    // Its spectrum stands on the result and in the report: a turn of four samples at 100 a second is 25 Hz.
    let TestStage::Result { chart, .. } = phone.stage() else {
        panic!("{:?}", phone.stage())
    };
    let drawn = chart.expect("the spectrum").alt;
    assert!(drawn.matches("25.0\u{a0}Hz").count() == 2, "{drawn}");
    phone.send(Action::Go { to: Place::Report });
    phone.work();
    let Body::Report { report } = phone.screen().body else {
        panic!("no report")
    };
    let labelled =
        |item: &Item| matches!(item, Item::Text { text, .. } if text == "vibrations a second (Hz)");
    assert!(report.pages.iter().flat_map(|page| &page.items).any(labelled));
}

#[test]
fn another_part_than_the_finding_names_can_be_repaired() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.send(Action::Go { to: Place::Finding });
    phone.send(Action::RepairOther);
    phone.send(Action::RepairDone);
    let Body::Repaired { repair } = phone.screen().body else {
        panic!("no repair")
    };
    assert!(repair.next.why_not.is_some());
    phone.pick(Pick::Part {
        component: "rear_hose".into(),
    });
    phone.send(Action::RepairDone);
    let Body::Repaired { repair } = phone.screen().body else {
        panic!("no repair")
    };
    assert_eq!(
        repair.next.action,
        Action::ShowTest {
            test: "hold:rear_hose".into()
        }
    );
}
