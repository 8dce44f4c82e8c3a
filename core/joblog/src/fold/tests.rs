use proptest::prelude::*;

use super::*;
use crate::entry::{DeviceId, EntryKey};
use crate::payload::{Correction, Note, Opened, Photo, PhotoFormat, PhotoMarked, Subject, Undo, Vehicle};

const JOB: JobId = JobId([9; 16]);

fn key(counter: u64) -> EntryKey {
    EntryKey {
        device: DeviceId([1; 16]),
        counter,
    }
}

fn entry(counter: u64, payload: &Payload) -> Entry {
    Entry {
        key: key(counter),
        job: JOB,
        hlc: 1_000 + i64::try_from(counter).unwrap(),
        at_ms: 1_000,
        offset_min: 0,
        kind: payload.kind().into(),
        v: payload.version(),
        body: payload.to_value().unwrap().to_string(),
    }
}

fn note(text: &str) -> Payload {
    Payload::Note(Note {
        text: text.into(),
        about: Subject::Job,
    })
}

fn correct(target: u64, instead: &Payload) -> Payload {
    Payload::Correction(Correction::of(key(target), instead).unwrap())
}

fn undo(target: u64) -> Payload {
    Payload::Undo(Undo { target: key(target) })
}

fn log(payloads: &[Payload]) -> Vec<Entry> {
    payloads
        .iter()
        .zip(1..)
        .map(|(payload, counter)| entry(counter, payload))
        .collect()
}

fn notes(payloads: &[Payload]) -> Vec<String> {
    fold(JOB, &log(payloads))
        .notes
        .into_iter()
        .map(|note| note.value.text)
        .collect()
}

#[test]
fn correction_holds_instead_and_both_stay_in_the_record() {
    let state = fold(JOB, &log(&[note("front"), correct(1, &note("rear"))]));
    let shown: Vec<_> = state
        .notes
        .iter()
        .map(|note| (note.value.text.as_str(), note.corrected))
        .collect();
    assert_eq!(shown, [("rear", true)]);
    assert_eq!(state.notes[0].key, key(1));
    assert_eq!(state.record.len(), 2);
    assert_eq!(state.record[0].content, Content::Known(note("front")));
    assert_eq!(
        state.record[0].standing,
        Standing::CorrectedBy {
            by: key(2),
            instead: Box::new(Content::Known(note("rear")))
        }
    );
}

#[test]
fn of_two_that_name_one_target_the_later_wins() {
    assert_eq!(
        notes(&[note("a"), correct(1, &note("b")), correct(1, &note("c"))]),
        ["c"]
    );
    assert_eq!(
        notes(&[note("a"), correct(1, &note("b")), undo(1)]),
        [] as [&str; 0]
    );
    assert_eq!(notes(&[note("a"), undo(1), correct(1, &note("b"))]), ["b"]);
}

#[test]
fn undoing_a_correction_or_an_undo_lets_the_target_stand_again() {
    assert_eq!(notes(&[note("a"), correct(1, &note("b")), undo(2)]), ["a"]);
    assert_eq!(notes(&[note("a"), undo(1), undo(2)]), ["a"]);
    assert_eq!(
        notes(&[note("a"), correct(1, &note("b")), correct(1, &note("c")), undo(3)]),
        ["b"]
    );
}

#[test]
fn correcting_a_correction_changes_what_holds() {
    assert_eq!(
        notes(&[note("a"), correct(1, &note("b")), correct(2, &note("c"))]),
        ["c"]
    );
}

#[test]
fn a_change_that_comes_before_its_target_is_no_change() {
    assert_eq!(notes(&[undo(2), note("a"), undo(4), undo(3)]), ["a"]);
}

#[test]
fn correction_from_a_newer_version_takes_the_old_reading_out_and_is_shown_as_newer() {
    let mut later = correct(1, &note("b"));
    if let Payload::Correction(correction) = &mut later {
        correction.v = 99;
    }
    let state = fold(JOB, &log(&[note("a"), later]));
    assert!(state.notes.is_empty());
    assert_eq!(
        state.record[0].standing,
        Standing::CorrectedBy {
            by: key(2),
            instead: Box::new(Content::Newer)
        }
    );
}

#[test]
fn entries_from_a_newer_version_are_kept_verbatim_and_counted() {
    let mut strange = entry(1, &note("x"));
    strange.kind = "hologram".into();
    strange.body = "{ \"z\":1,  \"a\" : [1.10] }".into();
    let state = fold(JOB, std::slice::from_ref(&strange));
    assert_eq!((state.newer(), &state.record[0].entry), (1, &strange));
}

#[test]
fn vehicle_fields_are_laid_over_each_other_and_an_empty_one_wipes() {
    let vehicle = |plate: Option<&str>, label: Option<&str>| {
        Payload::Vehicle(Vehicle {
            plate: plate.map(Into::into),
            label: label.map(Into::into),
            ..Vehicle::default()
        })
    };
    let state = fold(
        JOB,
        &log(&[
            vehicle(Some("A 1"), Some("van")),
            vehicle(Some("B 2"), None),
            vehicle(None, Some(" ")),
        ]),
    );
    assert_eq!(
        (state.vehicle.plate.as_deref(), state.vehicle.label),
        (Some("B 2"), None)
    );
}

#[test]
fn last_marks_and_caption_of_a_photo_win_and_undo_gives_the_earlier_ones_back() {
    let photo = Payload::Photo(Photo {
        sha256: "0".repeat(64),
        format: PhotoFormat::Jpeg,
        width: 4,
        height: 3,
        orientation: 1,
        about: Subject::Job,
        caption: "first".into(),
        marks: vec![],
    });
    let marked = |caption: &str| {
        Payload::PhotoMarked(PhotoMarked {
            photo: key(1),
            caption: caption.into(),
            marks: vec![],
        })
    };
    let caption = |log: &[Entry]| fold(JOB, log).photos[0].value.caption.clone();
    let mut all = log(&[photo, marked("second"), marked("third")]);
    assert_eq!(caption(&all), "third");
    all.push(entry(4, &undo(3)));
    assert_eq!(caption(&all), "second");
}

#[test]
fn entries_of_other_jobs_are_left_out() {
    let mut all = log(&[note("mine"), note("theirs")]);
    all[1].job = JobId([8; 16]);
    assert_eq!(fold(JOB, &all).record.len(), 1);
}

/// Entries of two phones, of which a third are changes to earlier ones, some unreadable, some twice.
fn any_log() -> impl Strategy<Value = Vec<Entry>> {
    let any_payload = prop_oneof![
        3 => "[a-c]{1,2}".prop_map(|text| note(&text)),
        1 => "[a-c]{0,2}".prop_map(|text| Payload::Vehicle(Vehicle { plate: Some(text), ..Vehicle::default() })),
        2 => (1u8..3, 1u64..20).prop_map(|(device, counter)| {
            Payload::Undo(Undo { target: EntryKey { device: DeviceId([device; 16]), counter } })
        }),
        2 => (1u8..3, 1u64..20, "[d-f]").prop_map(|(device, counter, text)| {
            let target = EntryKey { device: DeviceId([device; 16]), counter };
            Payload::Correction(Correction::of(target, &note(&text)).unwrap())
        }),
        1 => Just(Payload::Opened(Opened::by("1"))),
    ];
    proptest::collection::vec((any_payload, 1u8..3, 0i64..6, 0u8..10), 0..30).prop_map(|drawn| {
        let mut counters = [0u64; 3];
        let mut all = Vec::new();
        for (payload, device, hlc, fate) in drawn {
            counters[usize::from(device)] += 1;
            let mut one = entry(counters[usize::from(device)], &payload);
            one.key.device = DeviceId([device; 16]);
            one.hlc = hlc;
            if fate == 0 {
                one.v = 7;
            }
            if fate == 1 {
                one.body = "broken".into();
            }
            all.push(one);
        }
        all
    })
}

proptest! {
    #[test]
    fn order_of_arrival_and_repeats_change_nothing(
        (log, shuffled) in any_log().prop_flat_map(|log| {
            let doubled: Vec<Entry> = log.iter().chain(log.iter().step_by(3)).cloned().collect();
            (Just(log), Just(doubled).prop_shuffle())
        })
    ) {
        prop_assert_eq!(fold(JOB, &log), fold(JOB, &shuffled));
    }

    #[test]
    fn every_entry_stays_in_the_record(log in any_log()) {
        let state = fold(JOB, &log);
        prop_assert_eq!(state.record.len(), log.len());
        let mut kept: Vec<Entry> = state.record.into_iter().map(|line| line.entry).collect();
        let mut given = log;
        kept.sort_by_key(|entry| entry.key);
        given.sort_by_key(|entry| entry.key);
        prop_assert_eq!(kept, given);
    }

    #[test]
    fn entries_that_differ_under_one_key_are_decided_alike_in_any_order(log in any_log(), other in any_log()) {
        let one: Vec<Entry> = log.iter().chain(&other).cloned().collect();
        let two: Vec<Entry> = other.iter().chain(&log).cloned().collect();
        prop_assert_eq!(fold(JOB, &one), fold(JOB, &two));
    }
}
