mod damage;
mod kill;
mod merge;
mod migration;
mod purge;
mod search;

use std::path::Path;

use tempfile::TempDir;

use super::*;
use crate::entry::{Entry, EntryKey, Stamp};
use crate::error::UseError;
use crate::payload::{Note, Opened, Payload, Reading, Subject, Undo, Vehicle};

fn at(ms: i64) -> Stamp {
    Stamp {
        wall_ms: ms,
        offset_min: 60,
    }
}

fn new_log() -> (TempDir, Store) {
    let dir = tempfile::tempdir().unwrap();
    let store = Store::open_as(dir.path(), DeviceId([1; 16])).unwrap();
    (dir, store)
}

fn reopened(dir: &TempDir, store: Store) -> Store {
    drop(store);
    Store::open(dir.path()).unwrap()
}

fn opened() -> Payload {
    Payload::Opened(Opened::by("0.1.0"))
}

fn note(text: &str) -> Payload {
    Payload::Note(Note {
        text: text.into(),
        about: Subject::Job,
    })
}

fn plate(plate: &str) -> Payload {
    Payload::Vehicle(Vehicle {
        plate: Some(plate.into()),
        ..Vehicle::default()
    })
}

fn reading(test: &str) -> Payload {
    Payload::Reading(Reading {
        test: test.into(),
        answer: serde_json::json!({"start": 20.0, "readings": [[20.0, 13.5]], "unit": "inHg"}),
        typed: vec![],
        state: crate::payload::CarState::default(),
        confirmed: false,
        after_repair: false,
        begun_at_ms: None,
        watched_s: None,
        asked_because: None,
    })
}

/// The derived tables as they stand, without the row numbers, which are the file's own.
fn derived_rows(store: &Store) -> Vec<String> {
    let dump = |sql: &str| -> Vec<String> {
        let mut statement = store.connection.prepare(sql).unwrap();
        let width = statement.column_count();
        let rows = statement.query_map([], |row| {
            Ok((0..width)
                .map(|i| format!("{:?}", row.get_ref(i).unwrap()))
                .collect::<Vec<_>>()
                .join("|"))
        });
        rows.unwrap().collect::<Result<_, _>>().unwrap()
    };
    let mut all = dump(
        "SELECT job, opened_ms, opened_offset_min, last_ms, last_hlc, plate, plate_search, vin, label, customer,
            complaint, closed_parts, closed_p, closed_headline, repaired, binned, entries, readings, photos, newer
         FROM job_list ORDER BY job",
    );
    all.extend(dump("SELECT sha256, job FROM job_photo ORDER BY sha256, job"));
    all.extend(dump(
        "SELECT job_list.job, job_text.plate, job_text.vin, job_text.label, job_text.customer, job_text.complaint,
            job_text.finding, job_text.notes
         FROM job_list JOIN job_text ON job_text.rowid = job_list.row ORDER BY job_list.job",
    ));
    all
}

/// The derived rows, which have to be what a rebuild from the entries gives.
fn rebuilt_rows(store: &Store) -> Vec<String> {
    derived::rebuild(&store.connection).unwrap();
    derived_rows(store)
}

fn all_bytes(dir: &Path) -> Vec<u8> {
    let mut all = Vec::new();
    for file in std::fs::read_dir(dir).unwrap() {
        let path = file.unwrap().path();
        if path.is_file() {
            all.extend(std::fs::read(path).unwrap());
        } else {
            all.extend(all_bytes(&path));
        }
    }
    all
}

fn contains(bytes: &[u8], text: &str) -> bool {
    bytes.windows(text.len()).any(|window| window == text.as_bytes())
}

#[test]
fn entries_read_back_as_written_after_reopening() {
    let (dir, mut store) = new_log();
    let job = store.new_job();
    let mut written = vec![store.append(job, &opened(), at(1_000)).unwrap()];
    written.push(
        store
            .append(job, &note("Ölspur, 油, \u{202e}x"), at(1_000))
            .unwrap(),
    );
    let store = reopened(&dir, store);
    assert_eq!(store.entries(job).unwrap(), written);
    assert_eq!(store.device(), DeviceId([1; 16]));
    assert_eq!(*store.condition(), Condition::Good);
    let keys: Vec<_> = written
        .iter()
        .map(|entry| (entry.key.counter, entry.hlc, entry.at_ms))
        .collect();
    assert_eq!(keys, [(1, 1_000, 1_000), (2, 1_001, 1_000)]);
}

#[test]
fn a_new_log_draws_a_device_id_and_keeps_it() {
    let (one, two) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
    let (first, second) = (Store::open(one.path()).unwrap(), Store::open(two.path()).unwrap());
    assert_ne!(first.device(), second.device());
    let drawn = first.device();
    assert_eq!(reopened(&one, first).device(), drawn);
}

#[test]
fn new_jobs_differ_even_before_their_first_entry() {
    let (dir, mut store) = new_log();
    let (one, two) = (store.new_job(), store.new_job());
    assert_ne!(one, two);
    store.append(one, &opened(), at(1)).unwrap();
    let mut store = reopened(&dir, store);
    assert!(![one, two].contains(&store.new_job()));
}

#[test]
fn a_write_is_kept_whole_or_not_at_all() {
    let (_dir, mut store) = new_log();
    let job = store.new_job();
    store.append(job, &opened(), at(1)).unwrap();
    let stranger = EntryKey {
        device: DeviceId([7; 16]),
        counter: 1,
    };
    let write = Write {
        entries: vec![
            (job, note("first")),
            (job, Payload::Undo(Undo { target: stranger })),
        ],
        session: Some("{}".into()),
    };
    let refused = store.write(&write, at(2));
    assert!(matches!(refused, Err(UseError::NoTarget { target, .. }) if target == stranger));
    assert_eq!(store.entries(job).unwrap().len(), 1);
    assert_eq!(store.session().unwrap(), None);
    // The counter was not used up, either.
    assert_eq!(store.append(job, &note("second"), at(3)).unwrap().key.counter, 2);
}

#[test]
fn an_entry_of_another_job_is_no_target() {
    let (_dir, mut store) = new_log();
    let (one, two) = (store.new_job(), store.new_job());
    let first = store.append(one, &opened(), at(1)).unwrap();
    assert!(matches!(
        store.undo(two, first.key, at(2)),
        Err(UseError::NoTarget { .. })
    ));
}

#[test]
fn session_is_one_row_overwritten() {
    let (dir, mut store) = new_log();
    assert_eq!(store.session().unwrap(), None);
    store.set_session("{\"at\":1}").unwrap();
    store.set_session("{\"at\":2}").unwrap();
    let store = reopened(&dir, store);
    assert_eq!(store.session().unwrap().as_deref(), Some("{\"at\":2}"));
    let rows: i64 = store
        .connection
        .query_row("SELECT count(*) FROM session", [], |row| row.get(0))
        .unwrap();
    assert_eq!((rows, store.all_entries().unwrap().len()), (1, 0));
}

#[test]
fn a_body_past_the_bound_and_a_number_json_lacks_are_refused() {
    let (_dir, mut store) = new_log();
    let job = store.new_job();
    let long = note(&"x".repeat(MOST_BODY_BYTES));
    assert!(matches!(
        store.append(job, &long, at(1)),
        Err(UseError::TooLarge { .. })
    ));
    assert!(store.append(job, &note(&"ö".repeat(10_000)), at(1)).is_ok());
}

#[test]
fn clock_set_back_between_writes_keeps_the_order_and_says_the_wall_time() {
    let (_dir, mut store) = new_log();
    let job = store.new_job();
    store.append(job, &note("first"), at(5_000_000)).unwrap();
    store.append(job, &note("second"), at(1_000_000)).unwrap();
    let notes: Vec<_> = store
        .fold(job)
        .unwrap()
        .notes
        .into_iter()
        .map(|note| (note.value.text, note.at_ms))
        .collect();
    assert_eq!(
        notes,
        [("first".to_owned(), 5_000_000), ("second".to_owned(), 1_000_000)]
    );
}

#[test]
fn derived_rows_kept_up_by_writes_are_those_of_a_rebuild() {
    let (_dir, mut store) = new_log();
    let (one, two) = (store.new_job(), store.new_job());
    for (ms, job, payload) in [
        (1, one, opened()),
        (2, one, plate("HF-204")),
        (3, two, opened()),
        (4, one, reading("hold:branch")),
        (5, two, reading("source")),
        (6, one, note("oil")),
    ] {
        store.append(job, &payload, at(ms)).unwrap();
    }
    let undone = store.append(two, &plate("XX 1"), at(7)).unwrap();
    store.undo(two, undone.key, at(8)).unwrap();
    store.append(two, &reading("source"), at(9)).unwrap();
    let kept_up = derived_rows(&store);
    assert_eq!(kept_up, rebuilt_rows(&store));
    assert_eq!(kept_up.len(), 4);
}

#[test]
fn derived_tables_of_other_rules_are_made_anew_on_opening() {
    let (dir, mut store) = new_log();
    let job = store.new_job();
    store.append(job, &plate("HF-204"), at(1)).unwrap();
    let before = derived_rows(&store);
    store
        .connection
        .execute_batch("UPDATE derived SET fold_version = 0; DELETE FROM job_list")
        .unwrap();
    let store = reopened(&dir, store);
    assert_eq!(derived_rows(&store), before);
}
