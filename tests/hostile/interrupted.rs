//! Killed, asleep, restarted, the clock changed: a hold goes by the monotonic clock, and what was there is there.

use holdfast_companion::{Action, AskedHold, AskedStage, Body, FieldId, HoldPhase, Place};
use holdfast_diagnose::Outcome;

use crate::hands::{Phone, begin, job, killed};

fn stage(phone: &Phone) -> AskedStage {
    phone.shell.core.asked().unwrap().stage
}

fn ticks(phone: &mut Phone, seconds: f64) {
    for _ in 0..(seconds * 10.0).round() as u32 {
        phone.shell.clock.wait_ms(100);
        phone.shell.send(Action::Tick).unwrap();
    }
}

/// Pumped, let go at 20, watching.
fn watching() -> Phone {
    let mut phone = job();
    begin(&mut phone, "hold:branch");
    for _ in 0..11 {
        phone.shell.press(&Action::Stroke).unwrap();
    }
    phone.shell.press(&Action::LetGo).unwrap();
    phone.shell.fill(&FieldId::GaugeReading, "20").unwrap();
    phone.shell.press(&Action::Confirm).unwrap();
    assert!(matches!(stage(&phone), AskedStage::Hold(AskedHold::Watch { .. })));
    phone
}

fn read(phone: &mut Phone, figure: &str) {
    phone.shell.fill(&FieldId::GaugeReading, figure).unwrap();
    phone.shell.press(&Action::Confirm).unwrap();
}

fn seconds(phone: &Phone) -> f64 {
    phone
        .shell
        .core
        .results()
        .last()
        .unwrap()
        .result
        .hold
        .as_ref()
        .unwrap()
        .seconds
}

#[test]
fn killed_while_watching_it_reopens_on_the_same_test_marked_interrupted_with_what_it_had() {
    let mut phone = watching();
    ticks(&mut phone, 8.0);
    let title = phone.shell.screen().frame.title.clone();
    let mut phone = killed(phone, 3_000);
    assert_eq!(phone.shell.screen().frame.title, title);
    let Body::Hold { hold } = &phone.shell.screen().body else {
        panic!("{:?}", phone.shell.screen().body)
    };
    let HoldPhase::Interrupted { text, .. } = &hold.phase else {
        panic!("{:?}", hold.phase)
    };
    assert!(text.contains("20"), "the first reading is named: {text}");
    // The monotonic clock never stopped: eight seconds, three dead, nine more.
    phone.shell.press(&Action::GoOn).unwrap();
    ticks(&mut phone, 9.0);
    assert!(matches!(stage(&phone), AskedStage::Hold(AskedHold::Read { .. })));
    read(&mut phone, "13.5");
    assert!((seconds(&phone) - 20.0).abs() < 0.15, "{}", seconds(&phone));
    assert_eq!(
        phone.shell.core.results().last().unwrap().result.outcome,
        Outcome::Leaks
    );
}

#[test]
fn killed_at_every_step_of_a_hold_it_reopens_where_it_was_and_the_log_is_whole() {
    let steps: Vec<Action> = [
        vec![Action::Stroke; 3],
        vec![Action::LetGo],
        vec![
            Action::Type {
                field: FieldId::GaugeReading,
                text: "19,5".into(),
            },
            Action::Confirm,
        ],
        vec![Action::ReadNow],
        vec![
            Action::Type {
                field: FieldId::GaugeReading,
                text: "12".into(),
            },
            Action::Confirm,
        ],
    ]
    .concat();
    for kill_after in 0..=steps.len() {
        let mut phone = job();
        begin(&mut phone, "hold:front_hose");
        for action in &steps[..kill_after] {
            phone.shell.clock.wait_ms(2_000);
            phone.shell.send(action.clone()).unwrap();
        }
        let before = phone.shell.core.asked().unwrap();
        let entries = phone.shell.core.entries();
        let phone = killed(phone, 500);
        let after = phone.shell.core.asked().unwrap();
        assert_eq!(
            (after.test, phone.shell.core.entries()),
            (before.test, entries),
            "after {kill_after} steps"
        );
        // A clock that ran is marked as interrupted; all else stands as it stood.
        match before.stage {
            AskedStage::Hold(AskedHold::First | AskedHold::Watch { .. } | AskedHold::Read { .. }) => {
                assert_eq!(
                    after.stage,
                    AskedStage::Hold(AskedHold::Interrupted),
                    "after {kill_after} steps"
                );
            }
            same => assert_eq!(after.stage, same, "after {kill_after} steps"),
        }
    }
}

#[test]
fn strokes_and_half_typed_values_outlive_a_kill() {
    let mut phone = job();
    begin(&mut phone, "supply-volts");
    let pin = FieldId::Answer { key: "pin1".into() };
    phone.shell.fill(&pin, "12,4").unwrap();
    let phone = killed(phone, 1_000);
    assert_eq!(phone.shell.field(&pin).unwrap().value, "12,4");

    let mut phone = phone;
    begin(&mut phone, "hold:branch");
    for _ in 0..7 {
        phone.shell.press(&Action::Stroke).unwrap();
    }
    let phone = killed(phone, 1_000);
    let Body::Hold { hold } = &phone.shell.screen().body else {
        panic!("hold expected")
    };
    let HoldPhase::Pump { strokes, .. } = &hold.phase else {
        panic!("{:?}", hold.phase)
    };
    assert!(strokes.contains('7'), "{strokes}");
}

#[test]
fn a_wall_clock_set_back_an_hour_in_mid_hold_changes_nothing_in_the_result() {
    let mut plain = watching();
    ticks(&mut plain, 20.0);
    read(&mut plain, "13.5");

    for by_ms in [-3_600_000, 86_400_000, -20 * 365 * 86_400_000] {
        let mut phone = watching();
        ticks(&mut phone, 9.0);
        phone.shell.clock.set_wall(by_ms);
        ticks(&mut phone, 11.0);
        read(&mut phone, "13.5");
        assert_eq!(phone.shell.core.results(), plain.shell.core.results());
        assert_eq!(phone.shell.core.finding(), plain.shell.core.finding());
        // The log keeps its order, and goes on after a kill.
        let entries = phone.shell.core.entries();
        let phone = killed(phone, 1_000);
        assert_eq!(phone.shell.core.entries(), entries);
        assert_eq!(phone.shell.core.results(), plain.shell.core.results());
    }
}

#[test]
fn a_phone_that_slept_gives_the_reading_its_true_moment_and_shows_the_gap() {
    let mut phone = watching();
    ticks(&mut phone, 5.0);
    phone.shell.clock.wait_ms(8_000);
    phone.shell.send(Action::Tick).unwrap();
    let prompt = match &phone.shell.core.screen().body {
        Body::Hold { hold } => match &hold.phase {
            HoldPhase::Watch { prompt, .. } => prompt.clone(),
            other => panic!("{other:?}"),
        },
        other => panic!("{other:?}"),
    };
    assert!(prompt.contains('8'), "the gap is named: {prompt}");
    phone.shell.clock.wait_ms(22_000);
    phone.shell.send(Action::Tick).unwrap();
    phone.shell.look_again();
    read(&mut phone, "10");
    assert!((seconds(&phone) - 35.0).abs() < 0.15, "{}", seconds(&phone));
}

#[test]
fn a_phone_started_anew_in_mid_hold_knows_nothing_of_the_time_and_says_so() {
    let mut phone = watching();
    ticks(&mut phone, 8.0);
    phone.shell.clock.reboot();
    let mut phone = killed(phone, 0);
    assert_eq!(stage(&phone), AskedStage::Hold(AskedHold::Interrupted));
    assert!(
        !phone.shell.offers(&Action::GoOn),
        "the time since letting go is lost"
    );
    phone.shell.press(&Action::StartAgain).unwrap();
    assert_eq!(stage(&phone), AskedStage::Hold(AskedHold::Pump));
    // What was broken off is in the log.
    phone.shell.send(Action::Go { to: Place::Log }).unwrap();
    let Body::Log { log } = &phone.shell.screen().body else {
        panic!("log expected")
    };
    assert!(log.rows.len() > 5);
}
