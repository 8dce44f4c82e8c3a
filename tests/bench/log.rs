//! The list of 10,000 jobs: opened, and searched key by key, against the same question by `LIKE` over the same texts.

use std::path::Path;

use holdfast_companion::{Action, Body, Clock, Companion, FieldId, PhoneFacts, Place};
use holdfast_joblog::{
    Closed, DeviceId, Entry, EntryKey, JobId, Note, Opened, Payload, Store, Subject, Vehicle,
};
use rusqlite::Connection;

use crate::percentile::Times;
use crate::table::Row;
use crate::watch::Watch;

const JOBS: u32 = 10_000;
/// What is typed, letter by letter: a plate, a model, a part, a finding, a name, words of a note, nothing there.
const TYPED: [&str; 7] = [
    "hf-123",
    "estate",
    "rear mount",
    "leaks",
    "sample",
    "oily hose",
    "zzyzx",
];
const OPENINGS: usize = 20;

/// Opens the log and the list again and again, and types into its search.
pub fn rows() -> Vec<Row> {
    let dir = tempfile::tempdir().expect("a folder");
    let peer = fill(dir.path());
    let clock = Clock {
        wall_ms: 1_790_000_000_000,
        offset_min: 0,
        mono_ms: 0,
        boot_id: "bench".into(),
    };
    let facts = PhoneFacts {
        locale: "en-US".into(),
        parts: Vec::new(),
        fonts: Vec::new(),
    };
    let open = || Companion::open(dir.path(), facts.clone(), &clock).expect("the log opens");
    // The first opening makes the spare copy.
    drop(open());
    let (mut opened, mut gone_to) = (Times::default(), Times::default());
    for _ in 0..OPENINGS {
        let watch = Watch::start();
        let mut core = open();
        assert_eq!(listed(&core), 40, "the first rows");
        opened.push(watch.elapsed());
        core.act(Action::Go { to: Place::Settings }, &clock)
            .expect("settings");
        let watch = Watch::start();
        core.act(Action::Go { to: Place::Jobs }, &clock)
            .expect("the list");
        gone_to.push(watch.elapsed());
    }
    let mut core = open();
    let (mut keys, mut likes) = (Times::default(), Times::default());
    for words in TYPED {
        for length in 1..=words.len() {
            let text: String = words.chars().take(length).collect();
            let action = Action::Type {
                field: FieldId::Search,
                text: text.clone(),
            };
            let watch = Watch::start();
            core.act(action, &clock).expect("a search");
            keys.push(watch.elapsed());
            let watch = Watch::start();
            let _found = like(&peer, &text);
            likes.push(watch.elapsed());
        }
        let found = listed(&core);
        assert_eq!(found == 0, words == "zzyzx", "{words}: {found} found");
    }
    vec![
        Row::wanted(
            "10,000 jobs: app opened on the list, median",
            "< 50 ms",
            opened.percentile_ms(0.5),
        ),
        Row::shown("  slowest of 20", opened.percentile_ms(1.0)),
        Row::wanted(
            "10,000 jobs: the list gone to, p99",
            "< 50 ms",
            gone_to.percentile_ms(0.99),
        ),
        Row::wanted(
            "10,000 jobs: search, p99 of a key",
            "< 10 ms",
            keys.percentile_ms(0.99),
        ),
        Row::shown(
            format!("  median of {} keys", keys.len()),
            keys.percentile_ms(0.5),
        ),
        Row::shown("  the same question by LIKE, p99", likes.percentile_ms(0.99)),
    ]
}

fn listed(core: &Companion) -> usize {
    match core.screen().body {
        Body::Jobs { jobs } => jobs.rows.len(),
        _ => 0,
    }
}

/// 10,000 invented jobs of nine entries, as if merged from another phone; and their texts in a table for the peer.
fn fill(dir: &Path) -> Connection {
    let mut store = Store::open(dir).expect("a log");
    let peer = Connection::open_in_memory().expect("a database");
    peer.execute_batch("CREATE TABLE t (hlc INTEGER, words TEXT)")
        .expect("a table");
    let models = [
        "Blue estate",
        "Grey saloon",
        "Van 2.0",
        "Silver hatchback",
        "Old coupe",
    ];
    let parts = ["front_hose", "rear_mount", "valve", "fuse", "tee", "front_mount"];
    let names = ["Sample", "Invented", "Example", "Muster", "Prueba"];
    let of = |list: &[&str], n: u32| {
        list.get(n as usize % list.len())
            .copied()
            .unwrap_or_default()
            .to_owned()
    };
    let mut entries = Vec::new();
    let mut counter = 0;
    for n in 0..JOBS {
        let plate = format!("HF-{n:05}");
        let (label, part, name) = (of(&models, n), of(&parts, n / 3), of(&names, n / 7));
        let headline = format!("The {} leaks.", part.replace('_', " "));
        let note = format!("oily hose end at bay {n}, shake at idle in gear");
        let words = format!("{plate} {label} {name} {headline} {note}").to_lowercase();
        peer.execute("INSERT INTO t VALUES (?1, ?2)", (n, words))
            .expect("a row");
        let vehicle = Vehicle {
            plate: Some(plate),
            label: Some(label),
            customer: Some(name),
            ..Vehicle::default()
        };
        let closed = Closed {
            parts: vec![part],
            p: 0.97,
            causes: Vec::new(),
            repaired: n % 2 == 0,
            headline,
            software: "0.1.0".into(),
        };
        let about = |text: String| {
            Payload::Note(Note {
                text,
                about: Subject::Job,
            })
        };
        let mut job = vec![
            Payload::Opened(Opened::by("0.1.0")),
            Payload::Vehicle(vehicle),
            about(note),
        ];
        job.extend((0..5).map(|m| about(format!("reading {m} of job {n}: 20 inHg, after 20 s 19.5 inHg"))));
        if n % 4 != 0 {
            job.push(Payload::Closed(closed));
        }
        for payload in job {
            counter += 1;
            entries.push(entry(n, counter, &payload));
        }
    }
    store.merge(&entries).expect("the jobs are taken in");
    peer
}

fn entry(job: u32, counter: u64, payload: &Payload) -> Entry {
    let at_ms = 1_700_000_000_000 + i64::from(job) * 7_000_000;
    let mut id = [7; 16];
    id[..4].copy_from_slice(&job.to_be_bytes());
    Entry {
        key: EntryKey {
            device: DeviceId([9; 16]),
            counter,
        },
        job: JobId(id),
        hlc: at_ms + i64::try_from(counter).unwrap_or_default(),
        at_ms,
        offset_min: 0,
        kind: payload.kind().to_owned(),
        v: payload.version(),
        body: payload.body().expect("JSON"),
    }
}

/// The first rows that hold each of the words, by looking at every text.
fn like(peer: &Connection, text: &str) -> usize {
    let words: Vec<String> = text
        .split_whitespace()
        .map(|word| format!("%{}%", word.to_lowercase()))
        .collect();
    let wheres = vec!["words LIKE ?"; words.len().max(1)].join(" AND ");
    let mut statement = peer
        .prepare(&format!(
            "SELECT hlc FROM t WHERE {wheres} ORDER BY hlc DESC LIMIT 41"
        ))
        .expect("a query");
    let all = if words.is_empty() {
        vec!["%".to_owned()]
    } else {
        words
    };
    statement
        .query_map(rusqlite::params_from_iter(all), |row| row.get::<_, i64>(0))
        .expect("rows")
        .count()
}
