//! A process killed at any moment: what SQLite had written then is the file and a WAL that ends anywhere.

use std::fs;

use super::*;

/// Does eight writes, each an entry and a session that says so, and gives the file and its WAL.
fn file_and_wal() -> (Vec<u8>, Vec<u8>, JobId, Vec<Entry>) {
    let (dir, mut store) = new_log();
    store
        .connection
        .query_row("PRAGMA wal_checkpoint(TRUNCATE)", [], |_| Ok(()))
        .unwrap();
    let job = store.new_job();
    let mut written = Vec::new();
    for n in 0..8 {
        let payload = if n % 2 == 0 {
            note(&format!("note {n}"))
        } else {
            plate(&format!("P {n}"))
        };
        let write = Write {
            entries: vec![(job, payload)],
            session: Some(format!("{}", n + 1)),
        };
        written.extend(store.write(&write, at(n)).unwrap());
    }
    let file = connect::log_file(dir.path());
    let [log, wal, _] = connect::with_companions(&file);
    (fs::read(log).unwrap(), fs::read(wal).unwrap(), job, written)
}

fn open_with(log: &[u8], wal: &[u8]) -> (TempDir, Store) {
    let dir = tempfile::tempdir().unwrap();
    let [file, wal_file, _] = connect::with_companions(&connect::log_file(dir.path()));
    fs::write(file, log).unwrap();
    fs::write(wal_file, wal).unwrap();
    let store = Store::open(dir.path()).unwrap();
    (dir, store)
}

#[test]
fn a_log_killed_at_any_byte_of_a_write_holds_whole_writes_and_their_session() {
    let (log, wal, job, written) = file_and_wal();
    let frame = 24 + 4096;
    assert!(wal.len() > 32 + 8 * frame, "the writes stand in the WAL");
    let mut lengths = std::collections::BTreeSet::new();
    let cuts = (0..=wal.len()).filter(|at| {
        let in_frame = at.saturating_sub(32) % frame;
        [0, 23, 2_000].contains(&in_frame)
    });
    for cut in cuts {
        let (_dir, store) = open_with(&log, &wal[..cut]);
        assert_eq!(*store.condition(), Condition::Good, "cut at {cut}");
        let entries = store.entries(job).unwrap();
        assert_eq!(entries, written[..entries.len()], "cut at {cut}");
        let session = store
            .session()
            .unwrap()
            .map_or(0, |session| session.parse::<usize>().unwrap());
        assert_eq!(session, entries.len(), "cut at {cut}");
        assert_eq!(derived_rows(&store), rebuilt_rows(&store), "cut at {cut}");
        lengths.insert(entries.len());
    }
    assert_eq!(lengths.len(), 9, "each number of writes was seen: {lengths:?}");
}

#[test]
fn a_torn_sector_in_the_wal_ends_the_log_before_it() {
    let (log, mut wal, job, written) = file_and_wal();
    let half = wal.len() / 2;
    wal[half..half + 512].fill(0xA5);
    let (_dir, store) = open_with(&log, &wal);
    let entries = store.entries(job).unwrap();
    assert_eq!(entries, written[..entries.len()]);
    assert!((1..8).contains(&entries.len()));
}

#[test]
fn a_log_killed_while_it_was_made_opens_as_a_new_one() {
    let (dir, store) = new_log();
    let file = connect::log_file(dir.path());
    let [log, wal, _] = connect::with_companions(&file);
    let (log, wal) = (fs::read(log).unwrap(), fs::read(wal).unwrap_or_default());
    drop(store);
    for (log, wal) in [
        (&log[..0], &wal[..0]),
        (&log[..], &wal[..0]),
        (&log[..], &wal[..wal.len() / 2]),
    ] {
        let (_dir, mut store) = open_with(log, wal);
        let job = store.new_job();
        store.append(job, &opened(), at(1)).unwrap();
        assert_eq!(store.list(&Query::default()).unwrap().len(), 1);
    }
}
