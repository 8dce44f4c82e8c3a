//! A hold watched by camera: frames in, a trace in the log a second at a time, what a kill leaves of it.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "a test ends loudly"
)]

mod phone;

use holdfast_companion::{Action, Body, HoldPhase, PhonePart, Place, Request, TestStage};
use holdfast_diagnose::Outcome;
use phone::{Phone, button};

/// Lets the camera see the needle fall by so much a second, from `from_s` to `to_s` after letting go.
fn watch(phone: &mut Phone, let_go_ms: i64, fall: f64, from_s: f64, to_s: f64) {
    let tenths = |s: f64| (s * 10.0).round() as i64;
    for tenth in tenths(from_s)..=tenths(to_s) {
        let at_ms = let_go_ms + tenth * 100;
        phone.clock.wall_ms += at_ms - 20 - phone.clock.mono_ms;
        phone.clock.mono_ms = at_ms - 20;
        // Each seventh frame is lost in a reflection.
        let vacuum = (tenth % 7 != 5).then(|| 20.0 - fall * tenth as f64 / 10.0);
        phone.send(Action::GaugeSeen { vacuum });
    }
}

/// A job in which the camera watches the branch's hold, at letting go; the monotonic clock then.
fn let_go() -> (Phone, i64) {
    let mut phone = Phone::with(PhonePart::GaugeReader);
    phone.begin_job();
    phone.begin_test("hold:branch");
    phone.asked.clear();
    phone.send(Action::WatchByCamera);
    assert!(
        matches!(phone.asked.as_slice(), [Request::WatchGauge { every_ms: 100, unit, .. }] if unit == "inHg"),
        "{:?}",
        phone.asked
    );
    for _ in 0..19 {
        phone.send(Action::Stroke);
    }
    phone.send(Action::LetGo);
    let now = phone.clock.mono_ms;
    (phone, now)
}

#[test]
fn a_phone_without_a_reader_does_not_offer_it() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.begin_test("hold:branch");
    let HoldPhase::Pump { others, .. } = phone.phase() else {
        panic!("{:?}", phone.phase())
    };
    assert!(button(&others, &Action::WatchByCamera).is_none());
    phone.send(Action::WatchByCamera);
    phone.send(Action::LetGo);
    assert!(matches!(phone.phase(), HoldPhase::Read { .. }), "read by eye");
}

#[test]
fn seen_to_the_set_time_it_is_judged_without_a_reading_typed() {
    let (mut phone, let_go_ms) = let_go();
    watch(&mut phone, let_go_ms, 0.325, 0.0, 20.0);
    assert!(matches!(phone.stage(), TestStage::Result { .. }));
    let done = phone.core.results();
    assert_eq!(done[0].result.outcome, Outcome::Leaks);
    let hold = done[0].result.hold.as_ref().expect("numbers");
    assert!((hold.seconds - 20.0).abs() < 0.15, "{}", hold.seconds);
    assert!(
        phone.asked.contains(&Request::StopWatchingGauge),
        "the camera is let go"
    );
    phone.send(Action::Go { to: Place::Log });
    let Body::Log { log } = phone.screen().body else {
        panic!("no log")
    };
    let told = log
        .rows
        .iter()
        .filter(|row| row.text.contains("gauge readings recorded"));
    let told: Vec<&str> = told.map(|row| row.text.as_str()).collect();
    // 201 tenths of a second, each seventh lost from the fifth on: 28 of them.
    assert_eq!(
        told,
        ["Vacuum hold test, all after the valve: 173 gauge readings recorded"],
        "21 entries, one line"
    );
}

#[test]
fn a_kill_leaves_the_trace_up_to_the_last_second() {
    let (mut phone, let_go_ms) = let_go();
    watch(&mut phone, let_go_ms, 0.325, 0.0, 8.4);
    let mut phone = phone.kill_and_reopen(2_000);
    let HoldPhase::Interrupted { text, buttons } = phone.phase() else {
        panic!("{:?}", phone.phase())
    };
    assert!(text.contains("20\u{a0}inHg"), "{text}");
    assert!(
        text.contains("7.9\u{a0}s"),
        "eight seconds are in the log: {text}"
    );
    assert!(button(&buttons, &Action::UseWhatThereIs).is_some());
    phone.asked.clear();
    phone.send(Action::GoOn);
    assert!(
        phone
            .asked
            .iter()
            .any(|request| matches!(request, Request::WatchGauge { .. }))
    );
    watch(&mut phone, let_go_ms, 0.325, 10.8, 20.0);
    let done = phone.core.results();
    assert_eq!(done[0].result.outcome, Outcome::Leaks);
    let hold = done[0].result.hold.as_ref().expect("numbers");
    assert!((hold.seconds - 20.0).abs() < 0.15, "{}", hold.seconds);
    assert!(
        (hold.drop_kpa - 6.5 * 3.386_39).abs() < 0.3,
        "from the first frame to the last: {}",
        hold.drop_kpa
    );
}

#[test]
fn used_after_a_kill_it_says_what_the_log_holds() {
    let (mut phone, let_go_ms) = let_go();
    watch(&mut phone, let_go_ms, 0.325, 0.0, 12.2);
    let mut phone = phone.kill_and_reopen(60_000);
    phone.send(Action::UseWhatThereIs);
    let done = phone.core.results();
    let hold = done[0].result.hold.as_ref().expect("numbers");
    assert!((hold.seconds - 11.9).abs() < 0.15, "{}", hold.seconds);
}

#[test]
fn a_camera_that_gives_up_hands_over_to_the_eye() {
    let (mut phone, let_go_ms) = let_go();
    watch(&mut phone, let_go_ms, 0.1, 0.0, 5.0);
    phone.send(Action::GaugeNotSeen);
    assert!(matches!(phone.phase(), HoldPhase::Watch { .. }));
    phone.wait(16.0);
    assert!(
        matches!(phone.phase(), HoldPhase::Read { .. }),
        "{:?}",
        phone.phase()
    );
}

#[test]
fn a_camera_that_saw_nothing_is_said() {
    let (mut phone, _) = let_go();
    for _ in 0..30 {
        phone.wait(0.7);
        phone.send(Action::GaugeSeen { vacuum: None });
    }
    let HoldPhase::Interrupted { buttons, .. } = phone.phase() else {
        panic!("{:?}", phone.phase())
    };
    assert!(button(&buttons, &Action::GoOn).is_none());
    assert!(button(&buttons, &Action::StartAgain).is_some());
    assert!(phone.core.results().is_empty());
}

#[test]
fn left_in_the_middle_it_goes_on_where_it_is() {
    let (mut phone, let_go_ms) = let_go();
    watch(&mut phone, let_go_ms, 0.325, 0.0, 4.3);
    phone.send(Action::Go { to: Place::Overview });
    phone.send(Action::ShowTest {
        test: "hold:branch".into(),
    });
    watch(&mut phone, let_go_ms, 0.325, 6.0, 20.0);
    let done = phone.core.results();
    let hold = done[0].result.hold.as_ref().expect("numbers");
    assert!((hold.drop_kpa - 6.5 * 3.386_39).abs() < 0.3, "{}", hold.drop_kpa);
}
