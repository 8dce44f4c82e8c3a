//! What a hold survives: a kill, a restart of the phone, a clock set back, sleep.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "a test ends loudly"
)]

mod phone;

use holdfast_companion::{Action, Body, FieldId, HoldPhase, Place, TestStage};
use holdfast_diagnose::Outcome;
use phone::{Phone, button};

#[test]
fn killed_in_mid_hold_it_reopens_interrupted_with_what_it_had() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.pump_and_let_go("hold:branch", 19, "20");
    phone.wait(8.0);
    let mut phone = phone.kill_and_reopen(4_000);
    let HoldPhase::Interrupted { text, buttons } = phone.phase() else {
        panic!("{:?}", phone.phase())
    };
    assert!(text.contains("20\u{a0}inHg"), "{text}");
    assert!(
        button(&buttons, &Action::GoOn).is_some(),
        "the monotonic clock went on"
    );
    assert!(button(&buttons, &Action::StartAgain).is_some());
    phone.send(Action::GoOn);
    assert!(matches!(phone.phase(), HoldPhase::Watch { .. }));
    phone.wait(9.0);
    phone.type_in(FieldId::GaugeReading, "13.5");
    phone.send(Action::Confirm);
    let done = phone.core.results();
    assert_eq!(done[0].result.outcome, Outcome::Leaks);
    let seconds = done[0].result.hold.as_ref().expect("numbers").seconds;
    assert!((20.0..22.0).contains(&seconds), "{seconds}: the time away counts");
}

#[test]
fn killed_while_pumping_it_keeps_the_strokes() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.begin_test("hold:branch");
    for _ in 0..7 {
        phone.send(Action::Stroke);
    }
    let phone = phone.kill_and_reopen(60_000);
    let HoldPhase::Pump { strokes, .. } = phone.phase() else {
        panic!("{:?}", phone.phase())
    };
    assert_eq!(strokes, "7 strokes");
}

#[test]
fn after_a_restart_of_the_phone_only_starting_again_is_left() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.pump_and_let_go("hold:branch", 19, "20");
    phone.wait(3.0);
    phone.clock.boot_id = "second boot".into();
    phone.clock.mono_ms = 1_000;
    phone.send(Action::Tick);
    let HoldPhase::Interrupted { buttons, .. } = phone.phase() else {
        panic!("{:?}", phone.phase())
    };
    assert!(button(&buttons, &Action::GoOn).is_none());
    phone.send(Action::StartAgain);
    assert!(matches!(phone.phase(), HoldPhase::Pump { .. }));
}

#[test]
fn an_interrupted_go_on_can_use_the_first_reading() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.hold("hold:branch", 19, "20", "19.5");
    phone.send(Action::GoOn);
    phone.wait(2.0);
    let mut phone = phone.kill_and_reopen(1_000);
    let HoldPhase::Interrupted { buttons, .. } = phone.phase() else {
        panic!("{:?}", phone.phase())
    };
    assert!(button(&buttons, &Action::UseWhatThereIs).is_some());
    phone.send(Action::UseWhatThereIs);
    assert!(matches!(phone.stage(), TestStage::Result { .. }));
    assert_eq!(phone.core.results().len(), 1);
}

#[test]
fn a_clock_set_back_an_hour_changes_nothing() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.pump_and_let_go("hold:branch", 19, "20");
    phone.wait(10.0);
    phone.clock.wall_ms -= 3_600_000;
    phone.clock.offset_min -= 60;
    phone.wait(11.0);
    phone.type_in(FieldId::GaugeReading, "13.5");
    phone.send(Action::Confirm);
    let seconds = phone.core.results()[0]
        .result
        .hold
        .as_ref()
        .expect("numbers")
        .seconds;
    assert!((19.9..21.0).contains(&seconds), "{seconds}");
}

#[test]
fn a_phone_that_slept_reads_at_the_true_time_and_says_so() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.pump_and_let_go("hold:branch", 19, "20");
    phone.wait(5.0);
    phone.clock.mono_ms += 9_000;
    phone.send(Action::Tick);
    let HoldPhase::Watch { prompt, .. } = phone.phase() else {
        panic!("{:?}", phone.phase())
    };
    assert!(prompt.contains("slept for 9\u{a0}s"), "{prompt}");
    phone.clock.mono_ms += 30_000;
    phone.send(Action::Tick);
    phone.type_in(FieldId::GaugeReading, "10");
    phone.send(Action::Confirm);
    let seconds = phone.core.results()[0]
        .result
        .hold
        .as_ref()
        .expect("numbers")
        .seconds;
    assert!((43.0..46.0).contains(&seconds), "{seconds}");
}

#[test]
fn a_reading_typed_and_killed_is_still_in_its_field() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.begin_test("source");
    phone.type_in(FieldId::Answer { key: "gauge".into() }, "18,5");
    let phone = phone.kill_and_reopen(1_000);
    let Body::Meter { meter } = phone.screen().body else {
        panic!("{:?}", phone.screen().body)
    };
    assert!(format!("{:?}", meter.items).contains("18,5"));
}

#[test]
fn a_test_left_half_way_is_taken_up_where_it_was() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.begin_test("hold:branch");
    phone.send(Action::Stroke);
    phone.send(Action::Back);
    assert!(matches!(phone.screen().body, Body::Overview { .. }));
    let notice = phone.screen().frame.notice.expect("it is said");
    assert_eq!(notice.buttons.len(), 1);
    let mut phone = phone.kill_and_reopen(1_000);
    phone.send(Action::Go { to: Place::Settings });
    phone.send(Action::Back);
    phone.send(Action::ShowTest {
        test: "hold:branch".into(),
    });
    let HoldPhase::Pump { strokes, .. } = phone.phase() else {
        panic!("{:?}", phone.phase())
    };
    assert_eq!(strokes, "One stroke");
}

#[test]
fn every_screen_survives_a_kill() {
    let mut phone = Phone::new();
    phone.begin_job();
    for place in [
        Place::Vehicle,
        Place::Circuit,
        Place::Prepare,
        Place::Overview,
        Place::Finding,
        Place::Report,
        Place::Log,
        Place::Settings,
    ] {
        phone.send(Action::Go { to: place });
        let before = phone.screen();
        phone = phone.kill_and_reopen(500);
        phone.send(Action::Resume);
        let after = phone.screen();
        assert_eq!(before.frame, after.frame, "{place:?}");
        assert_eq!(before.body, after.body, "{place:?}");
    }
}
