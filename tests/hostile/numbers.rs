//! Numbers as people type them, and as they can't be.

use holdfast_companion::{Action, AskedStage, FieldId};

use crate::hands::{begin, job, job_of};

fn pin(key: &str) -> FieldId {
    FieldId::Answer { key: key.into() }
}

#[test]
fn comma_and_point_minus_and_blanks_are_read() {
    let mut phone = job();
    begin(&mut phone, "delivered");
    let gauge = pin("gauge");
    for typed in ["18.5", "18,5", " 18,5 ", "-18.5", "\u{2212}18,5", "+18.5"] {
        assert_eq!(phone.shell.type_in(&gauge, typed).unwrap(), None, "{typed}");
    }
}

#[test]
fn what_is_no_number_or_out_of_range_is_said_at_the_field_with_the_range_and_nothing_is_lost() {
    let mut phone = job();
    begin(&mut phone, "delivered");
    let gauge = pin("gauge");
    let entries = phone.shell.core.entries();
    for typed in [
        "31",
        "1e9",
        "999999999999999999999",
        "NaN",
        "inf",
        "twenty",
        "1.2.3",
        "12 inHg",
        "\u{0661}\u{0662}x",
        "--5",
        ".",
    ] {
        let problem = phone.shell.type_in(&gauge, typed).unwrap();
        assert!(problem.is_some(), "{typed}");
        phone.shell.send(Action::Confirm).unwrap();
        assert_eq!(
            phone.shell.core.asked().unwrap().stage,
            AskedStage::Values,
            "{typed} was taken"
        );
        assert_eq!(
            phone.shell.field(&gauge).unwrap().value,
            typed,
            "what was typed stays"
        );
    }
    let problem = phone.shell.type_in(&gauge, "31").unwrap().unwrap();
    assert!(problem.contains("30"), "the range is named: {problem}");
    assert_eq!(phone.shell.core.entries(), entries);
    phone.shell.fill(&gauge, "19").unwrap();
    phone.shell.press(&Action::Confirm).unwrap();
    assert_eq!(phone.shell.core.asked().unwrap().stage, AskedStage::Result);
}

#[test]
fn a_hold_takes_no_reading_past_the_end_of_the_scale() {
    let mut phone = job();
    begin(&mut phone, "hold:branch");
    phone.shell.press(&Action::LetGo).unwrap();
    for typed in ["67.7", "-40", "NaN", "", "30,5"] {
        phone.shell.type_in(&FieldId::GaugeReading, typed).unwrap();
        assert!(!phone.shell.offers(&Action::Confirm), "{typed}");
    }
    phone.shell.fill(&FieldId::GaugeReading, "\u{2212}20").unwrap();
    assert!(phone.shell.offers(&Action::Confirm));
}

#[test]
fn more_vacuum_than_the_air_allows_is_asked_about_once_and_kept_if_meant() {
    // 28 inHg at 2,400 m, where the air allows 22.3 (ISO 2533: 75.6 kPa).
    let mut phone = job_of(
        r#"{"name": "x", "circuit": "two-mounts-one-valve", "complaint": ["shake_idle"], "place": {"altitude_m": 2400}}"#,
    );
    begin(&mut phone, "delivered");
    phone.shell.fill(&pin("gauge"), "28").unwrap();
    phone.shell.press(&Action::Confirm).unwrap();
    assert_eq!(phone.shell.core.asked().unwrap().stage, AskedStage::Question);
    phone.shell.press(&Action::ChangeReading).unwrap();
    assert_eq!(
        phone.shell.field(&pin("gauge")).unwrap().value,
        "28",
        "nothing is lost"
    );
    phone.shell.press(&Action::Confirm).unwrap();
    assert_eq!(
        phone.shell.core.asked().unwrap().stage,
        AskedStage::Result,
        "it is asked once"
    );
    assert!(phone.shell.core.results().last().unwrap().asked_again);
}

#[test]
fn settings_keep_the_last_figure_that_can_be() {
    let mut phone = job();
    phone
        .shell
        .press(&Action::Go {
            to: holdfast_companion::Place::Settings,
        })
        .unwrap();
    for typed in ["0", "-3", "x", "1e300", ""] {
        phone.shell.type_in(&FieldId::PumpVolume, typed).unwrap();
    }
    phone.shell.press(&Action::Back).unwrap();
    let pump = phone.shell.core.situation().unwrap().instruments.pump_cm3;
    assert!((pump - 30.0).abs() < 1e-9, "{pump}");
}
