use std::fs;

use super::*;
use crate::error::OpenError;

/// A log of `entries` notes, closed.
fn filled(entries: usize) -> (TempDir, JobId, Vec<Entry>) {
    let (dir, mut store) = new_log();
    let job = store.new_job();
    let notes = (0..entries)
        .map(|n| (job, note(&format!("note {n} {}", "x".repeat(300)))))
        .collect();
    let written = store
        .write(
            &Write {
                entries: notes,
                session: Some("\"here\"".into()),
            },
            at(1),
        )
        .unwrap();
    drop(store);
    (dir, job, written)
}

fn salvaged(store: &Store) -> (std::path::PathBuf, usize, usize) {
    match store.condition() {
        Condition::Salvaged {
            kept_in,
            entries,
            missing,
        } => (kept_in.clone(), *entries, *missing),
        other => panic!("{other:?}"),
    }
}

#[test]
fn a_file_that_is_no_database_is_kept_aside_and_the_spare_copy_read() {
    let (dir, job, written) = filled(100);
    drop(Store::open(dir.path()).unwrap()); // makes the spare copy
    let file = connect::log_file(dir.path());
    fs::write(&file, b"this was a log once").unwrap();
    let mut store = Store::open(dir.path()).unwrap();
    let (kept_in, entries, missing) = salvaged(&store);
    assert_eq!((entries, missing), (100, 0));
    assert_eq!(store.entries(job).unwrap(), written);
    assert_eq!(store.session().unwrap().as_deref(), Some("\"here\""));
    assert_eq!(
        fs::read(kept_in.join("joblog.sqlite")).unwrap(),
        b"this was a log once"
    );
    // It goes on as another device: which counters were given away is not known.
    assert_ne!(
        store.append(job, &note("after"), at(2)).unwrap().key.device,
        written[0].key.device
    );
    let again = reopened(&dir, store);
    assert_eq!(
        (again.condition(), again.entries(job).unwrap().len()),
        (&Condition::Good, 101)
    );
}

#[test]
fn damaged_pages_lose_their_own_entries_only() {
    let (dir, job, written) = filled(400);
    let file = connect::log_file(dir.path());
    let mut bytes = fs::read(&file).unwrap();
    let page = 4096;
    // A page in the middle that holds entries, and nothing else.
    let hit = (1..bytes.len() / page)
        .find(|n| contains(&bytes[n * page..(n + 1) * page], "note 200 x"))
        .unwrap();
    bytes[hit * page..(hit + 1) * page].fill(0x5A);
    fs::write(&file, bytes).unwrap();
    let store = Store::open(dir.path()).unwrap();
    let (_, entries, missing) = salvaged(&store);
    assert_eq!(entries + missing, 400);
    assert!((1..40).contains(&missing), "{missing} lost");
    let kept = store.entries(job).unwrap();
    assert!(kept.iter().all(|entry| written.contains(entry)));
    assert_eq!(derived_rows(&store), rebuilt_rows(&store));
}

#[test]
fn a_damaged_page_of_a_large_log_is_found_in_use_and_salvaged_by_a_checked_opening() {
    let (dir, job, written) = filled(60_000);
    let file = connect::log_file(dir.path());
    let mut bytes = fs::read(&file).unwrap();
    assert!(bytes.len() > 17 << 20);
    let page = 4096;
    let hit = (1..bytes.len() / page)
        .find(|n| contains(&bytes[n * page..(n + 1) * page], "note 30000 x"))
        .unwrap();
    bytes[hit * page..(hit + 1) * page].fill(0x5A);
    fs::write(&file, bytes).unwrap();
    let store = Store::open(dir.path()).unwrap();
    assert_eq!(*store.condition(), Condition::Good);
    assert!(matches!(store.entries(job), Err(UseError::Damaged(_))));
    drop(store);
    let store = Store::open_checked(dir.path()).unwrap();
    let (_, entries, missing) = salvaged(&store);
    assert_eq!(
        (entries + missing, store.entries(job).unwrap().len()),
        (written.len(), entries)
    );
    assert!((1..40).contains(&missing), "{missing} lost");
}

#[test]
fn a_truncated_log_opens_with_what_is_left() {
    let (dir, job, written) = filled(200);
    let file = connect::log_file(dir.path());
    let bytes = fs::read(&file).unwrap();
    for share in [10, 50, 90, 99] {
        fs::write(&file, &bytes[..bytes.len() * share / 100]).unwrap();
        for companion in &connect::with_companions(&file)[1..] {
            let _gone = fs::remove_file(companion);
        }
        let store = Store::open(dir.path()).unwrap();
        let (_, entries, _) = salvaged(&store);
        let kept = store.entries(job).unwrap();
        assert_eq!(kept.len(), entries);
        assert!(kept.iter().all(|entry| written.contains(entry)));
    }
    assert!(dir.path().join("damaged-4").is_dir(), "each damaged log is kept");
}

#[test]
fn a_salvage_killed_between_its_two_renames_is_ended_by_the_next_opening() {
    let (dir, job, written) = filled(5);
    let file = connect::log_file(dir.path());
    fs::rename(&file, dir.path().join("joblog.salvaged.sqlite")).unwrap();
    let store = Store::open(dir.path()).unwrap();
    assert_eq!(store.entries(job).unwrap(), written);
}

#[test]
fn photos_are_not_swept_when_the_log_was_salvaged() {
    let (dir, _, _) = filled(3);
    let photo = dir.path().join("photos").join(format!("{}.jpg", "a".repeat(64)));
    fs::create_dir_all(photo.parent().unwrap()).unwrap();
    fs::write(&photo, b"kept").unwrap();
    fs::write(connect::log_file(dir.path()), b"no database").unwrap();
    let store = Store::open(dir.path()).unwrap();
    salvaged(&store);
    assert!(photo.exists());
}

#[test]
fn a_newer_log_is_refused_by_its_number_and_left_as_it_is() {
    let (dir, _, _) = filled(3);
    let connection = Connection::open(connect::log_file(dir.path())).unwrap();
    connection.pragma_update(None, "user_version", 9).unwrap();
    drop(connection);
    let before = fs::read(connect::log_file(dir.path())).unwrap();
    assert!(matches!(
        Store::open(dir.path()),
        Err(OpenError::Newer { found: 9, known: 1 })
    ));
    assert!(matches!(
        Store::open_to_read(dir.path()),
        Err(OpenError::Newer { found: 9, known: 1 })
    ));
    assert_eq!(fs::read(connect::log_file(dir.path())).unwrap(), before);
}

#[test]
fn a_newer_number_that_only_the_wal_holds_is_seen_and_left_there() {
    let (dir, _, _) = filled(3);
    let elsewhere = tempfile::tempdir().unwrap();
    let connection = Connection::open(connect::log_file(dir.path())).unwrap();
    connection
        .execute_batch("PRAGMA journal_mode = WAL; PRAGMA wal_autocheckpoint = 0")
        .unwrap();
    connection.pragma_update(None, "user_version", 9).unwrap();
    // The files as a kill leaves them: the connection that would write the WAL back is still open.
    for file in connect::with_companions(&connect::log_file(dir.path()))
        .iter()
        .take(2)
    {
        fs::copy(file, elsewhere.path().join(file.file_name().unwrap())).unwrap();
    }
    let read = || {
        connect::with_companions(&connect::log_file(elsewhere.path()))[..2]
            .iter()
            .map(|file| fs::read(file).unwrap())
            .collect::<Vec<_>>()
    };
    let before = read();
    assert!(!before[1].is_empty());
    assert!(matches!(
        Store::open(elsewhere.path()),
        Err(OpenError::Newer { found: 9, .. })
    ));
    assert_eq!(read(), before);
}

#[test]
fn another_programs_database_is_left_alone() {
    let dir = tempfile::tempdir().unwrap();
    let connection = Connection::open(connect::log_file(dir.path())).unwrap();
    connection
        .execute_batch("CREATE TABLE songs (title TEXT)")
        .unwrap();
    drop(connection);
    let before = fs::read(connect::log_file(dir.path())).unwrap();
    let refused = Store::open(dir.path());
    assert!(matches!(refused, Err(OpenError::NotALog { .. })), "{refused:?}");
    assert_eq!(fs::read(connect::log_file(dir.path())).unwrap(), before);
}

#[test]
fn a_full_device_keeps_nothing_of_the_write_and_all_of_before() {
    let (dir, job, written) = filled(20);
    let mut store = Store::open(dir.path()).unwrap();
    let pages: i64 = store
        .connection
        .query_row("PRAGMA page_count", [], |row| row.get(0))
        .unwrap();
    store
        .connection
        .query_row(&format!("PRAGMA max_page_count = {}", pages + 1), [], |_| Ok(()))
        .unwrap();
    let long = note(&"y".repeat(100_000));
    assert!(matches!(store.append(job, &long, at(2)), Err(UseError::NoSpace)));
    assert_eq!(store.entries(job).unwrap(), written);
    store
        .connection
        .query_row("PRAGMA max_page_count = 1000000", [], |_| Ok(()))
        .unwrap();
    assert_eq!(
        store.append(job, &note("room again"), at(3)).unwrap().key.counter,
        21
    );
}

#[test]
fn a_log_opened_to_read_reads_and_refuses_to_write() {
    let (dir, job, written) = filled(5);
    let mut store = Store::open_to_read(dir.path()).unwrap();
    assert_eq!(*store.condition(), Condition::ReadOnly);
    assert_eq!(store.entries(job).unwrap(), written);
    assert_eq!(store.list(&Query::search("note")).unwrap().len(), 1);
    assert!(matches!(
        store.append(job, &note("no"), at(2)),
        Err(UseError::ReadOnly)
    ));
    assert!(matches!(store.bin(job, at(2)), Err(UseError::ReadOnly)));
    assert!(matches!(store.set_session("1"), Err(UseError::ReadOnly)));
}

#[test]
fn a_log_whose_wal_cannot_be_made_opens_to_read() {
    let (dir, job, written) = filled(5);
    let [_, wal, _] = connect::with_companions(&connect::log_file(dir.path()));
    fs::create_dir(wal).unwrap();
    let mut store = Store::open(dir.path()).unwrap();
    assert_eq!(
        (store.condition(), store.entries(job).unwrap()),
        (&Condition::ReadOnly, written)
    );
    assert!(matches!(
        store.append(job, &note("no"), at(2)),
        Err(UseError::ReadOnly)
    ));
}

#[test]
fn a_folder_that_is_a_file_is_no_access() {
    let dir = tempfile::tempdir().unwrap();
    let file = dir.path().join("taken");
    fs::write(&file, b"x").unwrap();
    assert!(matches!(Store::open(&file), Err(OpenError::NoAccess(_))));
    assert!(matches!(
        Store::open(&file.join("below")),
        Err(OpenError::NoAccess(_))
    ));
    assert!(matches!(
        Store::open_to_read(&dir.path().join("none")),
        Err(OpenError::NoAccess(_))
    ));
}

#[test]
fn the_spare_copy_follows_the_log_as_it_grows() {
    let (dir, job, _) = filled(100);
    let mut store = Store::open(dir.path()).unwrap();
    let count = || -> i64 {
        let spare = connect::to_read(&spare::spare_file(dir.path())).unwrap();
        spare
            .query_row("SELECT count(*) FROM entries", [], |row| row.get(0))
            .unwrap()
    };
    assert_eq!(count(), 100);
    store.append(job, &note("one more"), at(2)).unwrap();
    let mut store = reopened(&dir, store);
    assert_eq!(count(), 100, "one entry is no reason to copy the log");
    let more = (0..80).map(|n| (job, note(&n.to_string()))).collect();
    store
        .write(
            &Write {
                entries: more,
                session: None,
            },
            at(3),
        )
        .unwrap();
    reopened(&dir, store);
    assert_eq!(count(), 181);
}
