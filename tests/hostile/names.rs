//! Names in any script and of any length, shown and printed.

use holdfast_companion::{Action, Body, FieldId, Place};

use crate::hands::{killed, phone};

const NAMES: [&str; 9] = [
    "\u{202e}txet desrever\u{202c}",
    "محمد عبد الله",
    "משה כהן",
    "山田 太郎",
    "🚗🔧👩‍🔧",
    "\u{0}\u{7}\u{1b}[31mred",
    "a\nb\tc\r\nd",
    "'; DROP TABLE entries; --",
    "{\"$\": {$x} }",
];

/// Turns the direction of what stands around it (Unicode Bidirectional Algorithm, UAX #9, section 2).
fn turns(c: char) -> bool {
    matches!(c, '\u{202A}'..='\u{202E}' | '\u{2066}'..='\u{2069}')
}

fn assert_ready(shell: &holdfast_play::Shell) {
    let Body::Report { report } = &shell.screen().body else {
        panic!("report expected")
    };
    assert!(
        matches!(report.state, holdfast_companion::ReportState::Ready { .. }),
        "{:?}",
        report.state
    );
}

#[test]
fn any_name_is_kept_found_shown_and_printed() {
    for (number, name) in NAMES.iter().enumerate() {
        let mut phone = phone();
        phone.shell.press(&Action::NewJob).unwrap();
        for field in [
            FieldId::Label,
            FieldId::Customer,
            FieldId::Plate,
            FieldId::ComplaintNote,
        ] {
            phone.shell.type_in(&field, name).unwrap();
        }
        phone
            .shell
            .type_in(&FieldId::Odometer, &format!("{number}{number}"))
            .unwrap();
        let complaint = holdfast_companion::Pick::Complaint {
            id: "shake_idle".into(),
        };
        phone
            .shell
            .pick(&complaint, holdfast_companion::Picked::Yes)
            .unwrap();
        phone.shell.press(&Action::Confirm).unwrap();
        phone.shell.tick_cautions().unwrap();
        phone.shell.press(&Action::Confirm).unwrap();
        phone.shell.press(&Action::Go { to: Place::Report }).unwrap();
        phone.shell.press(&Action::MakeReport).unwrap();
        assert_ready(&phone.shell);

        let mut phone = killed(phone, 1_000);
        phone.shell.send(Action::Go { to: Place::Jobs }).unwrap();
        let Body::Jobs { jobs } = &phone.shell.screen().body else {
            panic!("jobs expected")
        };
        let shown = &jobs.rows[0].vehicle;
        let letters: String = name.chars().filter(|c| !turns(*c) && !c.is_control()).collect();
        assert_eq!(jobs.rows.len(), 1);
        assert!(shown.chars().all(|c| !turns(c) && !c.is_control()), "{shown:?}");
        assert!(
            shown.contains(letters.trim().chars().next().unwrap()),
            "{shown:?} of {name:?}"
        );
        let first_word: String = letters
            .chars()
            .filter(|c| c.is_alphanumeric() || *c == ' ')
            .collect();
        if let Some(word) = first_word.split_whitespace().next() {
            phone.shell.type_in(&FieldId::Search, word).unwrap();
            let Body::Jobs { jobs } = &phone.shell.screen().body else {
                panic!("jobs expected")
            };
            assert_eq!(jobs.rows.len(), 1, "{name:?} by {word:?}");
        }
    }
}

#[test]
fn ten_thousand_characters_are_taken_shown_and_printed_with_a_cut() {
    let long = "Wörter ".repeat(1_500);
    let mut phone = phone();
    phone.shell.press(&Action::NewJob).unwrap();
    for field in [
        FieldId::Label,
        FieldId::Customer,
        FieldId::Plate,
        FieldId::ComplaintNote,
        FieldId::Vin,
    ] {
        phone.shell.type_in(&field, &long).unwrap();
    }
    let complaint = holdfast_companion::Pick::Complaint {
        id: "shake_idle".into(),
    };
    phone
        .shell
        .pick(&complaint, holdfast_companion::Picked::Yes)
        .unwrap();
    phone.shell.press(&Action::Confirm).unwrap();
    phone.shell.tick_cautions().unwrap();
    phone.shell.press(&Action::Confirm).unwrap();
    phone.shell.press(&Action::Go { to: Place::Report }).unwrap();
    phone.shell.press(&Action::MakeReport).unwrap();
    assert_ready(&phone.shell);
}
