//! A whole job by actions: complaint to closing, through every kind of test.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "a test ends loudly"
)]

mod phone;

use holdfast_companion::{
    Action, Body, CannotReason, FieldId, FormItem, HoldPhase, MarkShape, Pick, Place, Said, TestStage,
};
use holdfast_diagnose::Outcome;
use phone::{Phone, button};

fn answer(key: &str) -> FieldId {
    FieldId::Answer { key: key.into() }
}

#[test]
fn from_complaint_to_retest() {
    let mut phone = Phone::new();
    phone.begin_job();

    phone.begin_test("complaint");
    phone.send(Action::Say { said: Said::Yes });
    assert!(
        matches!(phone.stage(), TestStage::Result { .. }),
        "{:?}",
        phone.screen().body
    );

    phone.begin_test("look");
    phone.send(Action::Look {
        component: "front_hose".into(),
        state: "cracked".into(),
    });
    phone.send(Action::Confirm);
    assert_eq!(
        phone.core.results().last().map(|d| d.result.outcome),
        Some(Outcome::NotAsExpected)
    );

    phone.hold("hand-pump", 3, "20", "20");
    phone.hold("hold:branch", 19, "20", "8");
    phone.hold("hold:front_mount", 9, "20", "20");
    phone.send(Action::ShowTest {
        test: "hold:rear_mount".into(),
    });
    phone.send(Action::CannotDo {
        reason: CannotReason::NoAccess,
    });
    phone.hold("hold:front_hose", 4, "20", "2");

    phone.begin_test("source");
    phone.type_in(answer("gauge"), "19");
    phone.send(Action::Confirm);

    phone.begin_test("supply-volts");
    phone.type_in(answer("pin1"), "12.4");
    phone.type_in(answer("pin2"), "0,02");
    phone.type_in(answer("battery"), "12.5");
    phone.send(Action::Confirm);
    assert!(
        matches!(phone.stage(), TestStage::Result { .. }),
        "{:?}",
        phone.screen().body
    );

    let finding = phone.core.finding().expect("a finding").clone();
    assert_eq!(
        finding.causes[0].faults[0].to_string(),
        "front_hose/leaks",
        "{:?}",
        finding.causes.first()
    );
    let total: f64 = finding.causes.iter().map(|c| c.p).sum();
    assert!((total - 1.0).abs() < 1e-6, "{total}");

    phone.send(Action::Go { to: Place::Finding });
    let Body::Finding { finding } = phone.screen().body else {
        panic!("no finding")
    };
    assert!(
        button(
            &finding.buttons,
            &Action::Repair {
                component: "front_hose".into()
            }
        )
        .is_some()
            || !finding.buttons.is_empty()
    );
    phone.send(Action::Repair {
        component: "front_hose".into(),
    });
    phone.type_in(FieldId::RepairPart, "New hose, 0.5 m");
    phone.send(Action::RepairDone);
    let Body::Repaired { repair } = phone.screen().body else {
        panic!("no repair")
    };
    let Action::ShowTest { test } = repair.next.action.clone() else {
        panic!("{:?}", repair.next)
    };
    assert_eq!(test, "hold:front_hose");
    phone.hold(&test, 4, "20", "20");
    let TestStage::Result { mark, chart, .. } = phone.stage() else {
        panic!("{:?}", phone.stage())
    };
    assert_ne!(mark.shape, MarkShape::Wedge);
    assert!(chart.is_some(), "before and after on one chart");
    let last = phone.core.results().pop().expect("the retest");
    assert!(last.after_repair);

    phone.send(Action::Go { to: Place::Finding });
    phone.send(Action::Repair {
        component: "front_hose".into(),
    });
    phone.send(Action::CloseJob);
    assert!(matches!(phone.screen().body, Body::Report { .. }));
    phone.send(Action::Go { to: Place::Jobs });
    let Body::Jobs { jobs } = phone.screen().body else {
        panic!("no list")
    };
    assert_eq!(jobs.rows.len(), 1);
    assert_eq!(jobs.rows[0].plate, "TEST 123");

    // No job is open: what it taught is shown, and after a kill as well.
    phone.send(Action::Go { to: Place::Settings });
    assert!(settings_say(&phone, "The front hose leaks: once"));
    let mut phone = phone.kill_and_reopen(60_000);
    assert!(settings_say(&phone, "The front hose leaks: once"));
    phone.send(Action::Pick {
        pick: Pick::ForgetJobs,
    });
    assert!(!settings_say(&phone, "The front hose leaks"));
}

fn settings_say(phone: &Phone, wanted: &str) -> bool {
    let Body::Settings { form } = phone.screen().body else {
        panic!("no settings: {:?}", phone.screen().body)
    };
    let mut items = form.sections.into_iter().flat_map(|section| section.items);
    items.any(|item| matches!(item, FormItem::Words { text } if text.contains(wanted)))
}

#[test]
fn a_skipped_test_can_still_be_done() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.send(Action::ShowTest {
        test: "hold:branch".into(),
    });
    phone.send(Action::CannotDo {
        reason: CannotReason::NotNow,
    });
    assert_eq!(phone.core.results()[0].result.outcome, Outcome::NotDone);
    phone.send(Action::ShowTest {
        test: "hold:branch".into(),
    });
    let TestStage::Result { buttons, .. } = phone.stage() else {
        panic!("{:?}", phone.stage())
    };
    assert!(button(&buttons, &Action::RedoTest).is_some());
    phone.send(Action::RedoTest);
    phone.tick_cautions();
    phone.send(Action::BeginTest);
    assert!(matches!(phone.phase(), HoldPhase::Pump { .. }));
}

#[test]
fn a_corrected_reading_takes_the_place_of_the_wrong_one() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.hold("hold:branch", 19, "20", "13.5");
    let entries = phone.core.entries();
    phone.send(Action::CorrectReading);
    phone.type_in(answer("1"), "20x");
    phone.send(Action::Confirm);
    assert!(
        matches!(phone.screen().body, Body::Meter { .. }),
        "that is no figure"
    );
    phone.type_in(answer("1"), "20");
    phone.send(Action::Confirm);
    let done = phone.core.results();
    assert_eq!(done.len(), 1);
    assert_ne!(done[0].result.outcome, Outcome::Leaks);
    let seconds = done[0].result.hold.as_ref().expect("numbers").seconds;
    assert!((20.0..21.0).contains(&seconds), "{seconds}: the time stays");
    assert_eq!(
        phone.core.entries(),
        entries + 1,
        "the wrong one stays in the log"
    );
}

#[test]
fn a_late_tap_changes_nothing() {
    let mut phone = Phone::new();
    phone.begin_job();
    let before = phone.screen();
    for action in [
        Action::LetGo,
        Action::Stroke,
        Action::KeepReading,
        Action::GoOn,
        Action::ReadNow,
        Action::BeginTest,
    ] {
        assert!(phone.send(action).screen.is_none());
    }
    assert_eq!(phone.screen(), before);
}

#[test]
fn binned_jobs_come_back_by_undo() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.send(Action::Go { to: Place::Jobs });
    let Body::Jobs { jobs } = phone.screen().body else {
        panic!("no list")
    };
    phone.send(jobs.rows[0].buttons[1].action.clone());
    let Body::Jobs { jobs } = phone.screen().body else {
        panic!("no list")
    };
    assert!(jobs.rows.is_empty());
    phone.send(Action::Undo);
    let Body::Jobs { jobs } = phone.screen().body else {
        panic!("no list")
    };
    assert_eq!(jobs.rows.len(), 1);
    phone.type_in(FieldId::Search, "test");
    let Body::Jobs { jobs } = phone.screen().body else {
        panic!("no list")
    };
    assert_eq!(jobs.rows.len(), 1);
    phone.type_in(FieldId::Search, "nothing like it");
    let Body::Jobs { jobs } = phone.screen().body else {
        panic!("no list")
    };
    assert!(jobs.rows.is_empty() && !jobs.empty.is_empty());
}

#[test]
fn an_owner_alone_is_not_offered_work_in_gear() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.send(Action::Go { to: Place::Vehicle });
    phone.pick(Pick::Profile { id: "owner".into() });
    phone.send(Action::Go { to: Place::Overview });
    let situation = phone.core.situation().expect("a situation");
    assert_eq!(situation.profile, holdfast_diagnose::Profile::Owner);
    assert!(!situation.second_person);
}

#[test]
fn a_vin_with_a_wrong_check_digit_is_explained_and_kept() {
    let mut phone = Phone::new();
    phone.send(Action::NewJob);
    phone.type_in(FieldId::Vin, "11111111111111112");
    let text = format!("{:?}", phone.screen().body);
    assert!(text.contains("check digit"), "{text}");
    phone.pick(Pick::Complaint { id: "none".into() });
    phone.send(Action::Confirm);
    phone.send(Action::Go { to: Place::Vehicle });
    assert!(format!("{:?}", phone.screen().body).contains("11111111111111112"));
}

#[test]
fn values_are_put_right_from_what_was_entered() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.begin_test("source");
    phone.type_in(answer("gauge"), "9");
    phone.pick(Pick::Answer {
        key: "steady".into(),
        value: "yes".into(),
    });
    phone.send(Action::Confirm);
    phone.send(Action::CorrectReading);
    let text = format!("{:?}", phone.screen().body);
    assert!(text.contains("value: \"9\""), "{text}");
    phone.type_in(answer("gauge"), "19");
    phone.send(Action::Confirm);
    assert_eq!(phone.core.results().len(), 1);
    assert_eq!(phone.core.results()[0].result.outcome, Outcome::AsExpected);
}

#[test]
fn a_test_half_done_waits_while_another_job_is_looked_at() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.begin_test("hold:branch");
    phone.send(Action::Stroke);
    phone.send(Action::Go { to: Place::Jobs });
    phone.send(Action::NewJob);
    phone.send(Action::Go { to: Place::Jobs });
    let Body::Jobs { jobs } = phone.screen().body else {
        panic!("no list")
    };
    let first = jobs
        .rows
        .iter()
        .find(|row| row.plate == "TEST 123")
        .expect("the first job");
    phone.send(first.open.action.clone());
    phone.send(Action::ShowTest {
        test: "hold:branch".into(),
    });
    let HoldPhase::Pump { strokes, .. } = phone.phase() else {
        panic!("{:?}", phone.phase())
    };
    assert_eq!(strokes, "One stroke");
}
