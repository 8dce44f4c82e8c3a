use std::fs;

use rusqlite::Connection;

use super::*;
use crate::store::migrate::{MIGRATIONS, Migration, migrate, newest, version};

/// SHA-256 of each released migration. A released file never changes: other phones ran it as it was.
const RELEASED: &[(u32, &str)] = &[(
    1,
    "8a41a821d37e61c564e5631fff6b9bfc66cd490981a50bfcb152acecadeacabe",
)];

/// A log of each released version, as SQL.
const DUMPS: &[(u32, &str)] = &[(1, include_str!("../../../testdata/log_v1.sql"))];

fn sha256(text: &str) -> String {
    use sha2::{Digest, Sha256};
    Sha256::digest(text.as_bytes())
        .iter()
        .map(|byte| format!("{byte:02x}"))
        .collect()
}

fn put(dir: &TempDir, sql: &str) {
    let connection = Connection::open(connect::log_file(dir.path())).unwrap();
    connection.execute_batch(sql).unwrap();
    connection.execute_batch("PRAGMA journal_mode = WAL").unwrap();
}

/// Tables, indices and columns, as SQLite knows them.
fn schema(connection: &Connection) -> Vec<String> {
    let mut all = Vec::new();
    let names: Vec<(String, String)> = connection
        .prepare("SELECT type, name FROM sqlite_schema WHERE name NOT LIKE 'sqlite_%' ORDER BY name")
        .unwrap()
        .query_map([], |row| Ok((row.get(0)?, row.get(1)?)))
        .unwrap()
        .collect::<Result<_, _>>()
        .unwrap();
    for (kind, name) in names {
        all.push(format!("{kind} {name}"));
        let sql = if kind == "index" {
            "SELECT name FROM pragma_index_info(?1)"
        } else {
            "SELECT name || ' ' || type || ' ' || \"notnull\" || ' ' || pk || ' ' || ifnull(dflt_value, '') FROM pragma_table_info(?1)"
        };
        let mut statement = connection.prepare(sql).unwrap();
        let columns = statement
            .query_map([&name], |row| row.get::<_, Option<String>>(0))
            .unwrap();
        all.extend(columns.map(|column| format!("{name}: {column:?}")));
    }
    all
}

#[test]
fn released_migrations_are_as_they_were() {
    let now: Vec<_> = MIGRATIONS.iter().map(|one| (one.to, sha256(one.sql))).collect();
    let released: Vec<_> = RELEASED
        .iter()
        .map(|(to, hash)| (*to, (*hash).to_owned()))
        .collect();
    assert_eq!(now, released);
}

#[test]
fn migrations_are_numbered_from_one_without_gap_and_each_version_has_its_dump() {
    assert!(MIGRATIONS.iter().map(|one| one.to).eq(1..=newest(MIGRATIONS)));
    assert!(
        DUMPS
            .iter()
            .map(|(version, _)| *version)
            .eq(1..=newest(MIGRATIONS))
    );
}

#[test]
fn a_log_of_every_version_opens_with_nothing_lost() {
    let (_fresh_dir, fresh) = new_log();
    for (version, dump) in DUMPS {
        let dir = tempfile::tempdir().unwrap();
        put(&dir, dump);
        let entries_before: i64 = Connection::open(connect::log_file(dir.path()))
            .unwrap()
            .query_row("SELECT count(*) FROM entries", [], |row| row.get(0))
            .unwrap();
        let store = Store::open(dir.path()).unwrap();
        assert_eq!(*store.condition(), Condition::Good, "from {version}");
        assert_eq!(
            schema(&store.connection),
            schema(&fresh.connection),
            "from {version}"
        );
        let check: String = store
            .connection
            .query_row("PRAGMA integrity_check", [], |row| row.get(0))
            .unwrap();
        assert_eq!(check, "ok");
        let keys = store
            .connection
            .prepare("PRAGMA foreign_key_check")
            .unwrap()
            .exists([])
            .unwrap();
        assert!(!keys);
        assert_eq!(
            i64::try_from(store.all_entries().unwrap().len()).unwrap(),
            entries_before
        );
    }
}

#[test]
fn rows_that_matter_of_a_version_1_log_are_read() {
    let dir = tempfile::tempdir().unwrap();
    put(&dir, DUMPS[0].1);
    let mut store = Store::open(dir.path()).unwrap();
    let job = JobId([0x11; 16]);
    let state = store.fold(job).unwrap();
    assert_eq!(state.vehicle.plate.as_deref(), Some("HF-204"));
    assert_eq!(state.vehicle.customer.as_deref(), Some("Ms Ögmundsdóttir"));
    let readings: Vec<_> = state
        .readings()
        .map(|(dated, reading)| (dated.corrected, &reading.answer))
        .collect();
    assert_eq!(readings.len(), 1);
    assert!(readings[0].0, "the reading was corrected");
    assert_eq!(readings[0].1["readings"][0][1], 13.5);
    assert!(state.notes.is_empty(), "the note was undone");
    assert_eq!((state.newer(), state.record.len()), (2, 9));
    let strange = &state.record[7].entry;
    assert_eq!(
        (strange.kind.as_str(), strange.body.as_str()),
        ("hologram", "{ \"b\":1,  \"a\":[1.10] }")
    );
    assert_eq!(
        store.session().unwrap().as_deref(),
        Some("{\"screen\":\"hold\",\"draft\":\"13,5\"}")
    );
    assert_eq!(store.purged().unwrap(), [JobId([0x33; 16])]);
    assert_eq!(store.list(&Query::search("hf2")).unwrap().len(), 1);
    // It goes on where it was: own counter, and a clock past another phone's.
    let next = store.append(job, &note("goes on"), at(1)).unwrap();
    assert_eq!((next.key.counter, next.hlc), (41, 1_764_061_300_001));
}

/// A next version, as one would be: a column more, filled from what is there.
const NEXT: &[Migration] = &[
    MIGRATIONS[0],
    Migration {
        to: 2,
        sql: "ALTER TABLE purged ADD COLUMN at_ms INTEGER NOT NULL DEFAULT 0; UPDATE purged SET at_ms = 5;",
    },
];

#[test]
fn a_step_to_the_next_version_keeps_every_row() {
    let dir = tempfile::tempdir().unwrap();
    put(&dir, DUMPS[0].1);
    let store = open::open_by(dir.path(), None, NEXT, open::Check::Whole).unwrap();
    assert_eq!(version(&store.connection).unwrap(), 2);
    let purged: i64 = store
        .connection
        .query_row("SELECT at_ms FROM purged", [], |row| row.get(0))
        .unwrap();
    assert_eq!(
        (purged, store.fold(JobId([0x11; 16])).unwrap().record.len()),
        (5, 9)
    );
    drop(store);
    // The software of before refuses it, untouched.
    let before = fs::read(connect::log_file(dir.path())).unwrap();
    let refused = Store::open(dir.path());
    assert!(matches!(
        refused,
        Err(crate::error::OpenError::Newer { found: 2, known: 1 })
    ));
    assert_eq!(fs::read(connect::log_file(dir.path())).unwrap(), before);
}

#[test]
fn a_migration_that_fails_half_way_leaves_the_old_log_whole() {
    let broken = [
        NEXT[0],
        NEXT[1],
        Migration {
            to: 3,
            sql: "CREATE TABLE extra (x); INSERT INTO nowhere VALUES (1);",
        },
    ];
    let dir = tempfile::tempdir().unwrap();
    put(&dir, DUMPS[0].1);
    let mut connection = Connection::open(connect::log_file(dir.path())).unwrap();
    let before = schema(&connection);
    assert!(migrate(&mut connection, &broken).is_err());
    assert_eq!((version(&connection).unwrap(), schema(&connection)), (1, before));
    drop(connection);
    assert_eq!(
        Store::open(dir.path())
            .unwrap()
            .fold(JobId([0x11; 16]))
            .unwrap()
            .record
            .len(),
        9
    );
}
