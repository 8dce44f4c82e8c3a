//! One vacuum hold test from the first tap to the PDF, through every crate.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "a test ends loudly"
)]

mod phone;

use holdfast_companion::{
    Action, Body, Buzz, FieldId, HoldPhase, MarkShape, Pick, Place, ReportState, Request, TestStage,
};
use holdfast_diagnose::Outcome;
use phone::{Phone, button};

#[test]
fn a_leaking_branch_is_found_and_printed() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.hold("hold:branch", 19, "20", "13,5");
    let TestStage::Result {
        mark,
        sentence,
        chart,
        ..
    } = phone.stage()
    else {
        panic!("{:?}", phone.stage());
    };
    assert_eq!(mark.shape, MarkShape::Wedge, "{sentence}");
    assert!(chart.is_some());
    let done = phone.core.results();
    assert_eq!(done.len(), 1);
    assert_eq!(done[0].result.outcome, Outcome::Leaks);
    let hold = done[0].result.hold.as_ref().expect("a hold's numbers");
    assert!((hold.seconds - 20.0).abs() < 0.5, "{}", hold.seconds);

    phone.send(Action::Go { to: Place::Report });
    phone.asked.clear();
    phone.send(Action::MakeReport);
    let Body::Report { report } = phone.screen().body else {
        panic!("no report")
    };
    let ReportState::Ready { path, .. } = report.state else {
        panic!("{:?}", report.state)
    };
    let bytes = std::fs::read(path).expect("the file");
    assert!(bytes.starts_with(b"%PDF-"));
    let shared = phone.send(Action::ShareReport);
    assert!(matches!(shared.requests.as_slice(), [Request::Share { mime, .. }] if mime == "application/pdf"));
}

#[test]
fn the_phone_ticks_each_five_seconds_and_says_when_to_read() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.begin_test("hold:branch");
    phone.asked.clear();
    phone.send(Action::LetGo);
    assert!(phone.asked.contains(&Request::KeepScreenOn));
    assert!(phone.asked.contains(&Request::StartTicks { every_ms: 100 }));
    phone.type_in(holdfast_companion::FieldId::GaugeReading, "20");
    phone.send(Action::Confirm);
    phone.asked.clear();
    phone.wait(25.0);
    let ticks = phone
        .asked
        .iter()
        .filter(|r| **r == Request::Buzz { pattern: Buzz::Tick })
        .count();
    assert_eq!(ticks, 3, "at 5, 10 and 15 s");
    assert!(phone.asked.contains(&Request::Buzz {
        pattern: Buzz::ReadNow
    }));
    assert!(
        phone
            .asked
            .iter()
            .any(|r| matches!(r, Request::Speak { text, .. } if text == "Read it now."))
    );
    assert!(phone.asked.contains(&Request::StopTicks));
    assert!(phone.asked.contains(&Request::LetScreenSleep));
}

#[test]
fn a_tick_changes_only_the_moving_part_and_writes_nothing() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.pump_and_let_go("hold:branch", 19, "20");
    let rev = phone.screen().rev;
    let before = phone.core.entries();
    phone.clock.mono_ms += 2_000;
    let update = phone.send(Action::Tick);
    assert!(update.screen.is_none());
    let live = update.live.expect("the moving part");
    let size = live.seconds.len() + live.reading.len() + live.cue.len() + 4;
    assert!(size < 256, "{size} bytes");
    assert_eq!(live.seconds, "2");
    assert_eq!(phone.screen().rev, rev);
    assert_eq!(phone.core.entries(), before);
}

#[test]
fn an_undecided_hold_goes_on_from_where_it_is() {
    let mut phone = Phone::new();
    phone.begin_job();
    // A fall at the limit itself, read to half an inHg, can't be called after 20 s.
    phone.hold("hold:branch", 19, "20", "19.5");
    let TestStage::Result { buttons, .. } = phone.stage() else {
        panic!("{:?}", phone.stage())
    };
    assert_eq!(phone.core.results()[0].result.outcome, Outcome::Undecided);
    assert!(button(&buttons, &Action::GoOn).is_some(), "{buttons:?}");
    phone.send(Action::GoOn);
    assert!(matches!(phone.phase(), HoldPhase::Watch { .. }));
    let more = phone.core.results()[0]
        .result
        .hold
        .as_ref()
        .and_then(|h| h.more_seconds)
        .expect("seconds");
    phone.wait(more + 1.0);
    assert!(matches!(phone.phase(), HoldPhase::Read { .. }));
    phone.type_in(holdfast_companion::FieldId::GaugeReading, "10");
    phone.send(Action::Confirm);
    let done = phone.core.results();
    assert_eq!(done.len(), 1, "the longer reading takes the place of the first");
    assert_eq!(done[0].result.outcome, Outcome::Leaks);
    assert!(
        done[0]
            .result
            .hold
            .as_ref()
            .is_some_and(|h| h.seconds > 20.0 + more - 1.0)
    );
}

#[test]
fn a_result_does_not_wait_for_the_reasoning_and_a_screen_that_shows_it_does() {
    let mut phone = Phone::new();
    phone.begin_job();
    let overview = phone.screen();
    phone.pump_and_let_go("hold:branch", 19, "20");
    phone.wait(21.0);
    phone.type_in(FieldId::GaugeReading, "13.5");
    phone.send_only(Action::Confirm);
    let result = phone.screen();
    let Body::Test { test } = &result.body else {
        panic!("the result")
    };
    assert!(matches!(test.stage, TestStage::Result { .. }), "at once");
    let away = phone.send_only(Action::Go { to: Place::Overview });
    assert!(
        away.screen.is_none(),
        "what is shown there is still being worked out"
    );
    assert_eq!(phone.screen(), result, "nothing moves under a finger");
    phone.work();
    let now = phone.screen();
    assert!(matches!(now.body, Body::Overview { .. }));
    assert_ne!(now.body, overview.body);
    let again = phone.kill_and_reopen(1_000);
    assert_eq!(
        again.screen().body,
        now.body,
        "worked out anew where the app was opened again"
    );
}

#[test]
fn a_second_tap_while_the_reasoning_is_waited_for_is_no_second_repair() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.hold("hold:branch", 19, "20", "13.5");
    phone.send(Action::Go { to: Place::Overview });
    phone.send(Action::Repair {
        component: "front_hose".into(),
    });
    for _ in 0..2 {
        phone.send_only(Action::RepairDone);
    }
    phone.work();
    phone.send(Action::Go { to: Place::Log });
    let Body::Log { log } = phone.screen().body else {
        panic!("the log")
    };
    assert_eq!(format!("{log:?}").matches("Repaired: ").count(), 1, "{log:?}");
}

#[test]
fn the_first_overview_is_reasoned_out_while_the_form_before_it_is_filled_in() {
    let mut phone = Phone::new();
    phone.send(Action::NewJob);
    phone.pick(Pick::Complaint {
        id: "shake_idle".into(),
    });
    phone.send(Action::Confirm);
    phone.pick(Pick::Tool {
        id: "hand-pump".into(),
    });
    phone.tick_cautions();
    phone.send(Action::Confirm);
    let asked = phone.send_only(Action::Resume).requests;
    assert!(
        !asked.iter().any(|r| matches!(r, Request::Work { .. })),
        "nothing is left to do"
    );
}

#[test]
fn the_report_s_pages_are_laid_out_where_no_tap_waits() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.hold("hold:branch", 19, "20", "13.5");
    let pages = |phone: &Phone| match phone.screen().body {
        Body::Report { report } => report.pages.len(),
        other => panic!("no report: {other:?}"),
    };
    phone.send_only(Action::Go { to: Place::Report });
    assert_eq!(pages(&phone), 0);
    phone.work();
    let on_a4 = pages(&phone);
    assert!(on_a4 > 1, "{on_a4}");
    let before = phone.screen();
    phone.pick(Pick::Paper { id: "letter".into() });
    assert_ne!(phone.screen().body, before.body, "laid out anew for other paper");
    assert!(pages(&phone) > 1);
}
