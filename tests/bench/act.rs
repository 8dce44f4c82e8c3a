//! `act` against one commit of the same file system: a shell waits for both on every tap.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::path::Path;
use std::rc::Rc;
use std::time::Instant;

use holdfast_companion::Action;
use holdfast_play::{Options, Scenario, open, play_on};

use crate::percentile::Times;
use crate::table::Row;

/// Kinds of action that are shown one by one: the slowest.
const SHOWN: usize = 6;

/// The times of one run.
#[derive(Default)]
struct Measured {
    /// Everything a person does.
    taps: Times,
    /// What the phone tells ten times a second, and the ends of works.
    told: Times,
    /// A bare commit after each tap.
    commits: Times,
    /// Taps by kind.
    kinds: BTreeMap<String, Times>,
}

/// Plays every scenario to its report, timing each action, with a bare commit after every tap.
pub fn rows() -> Vec<Row> {
    let dir = tempfile::tempdir().expect("a folder");
    let peer = rusqlite::Connection::open(dir.path().join("peer.db")).expect("a database");
    peer.execute_batch("PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; CREATE TABLE t(x TEXT) STRICT;")
        .expect("a table");
    let peer = Rc::new(peer);
    let measured = Rc::new(RefCell::new(Measured::default()));
    for (at, scenario) in scenarios().iter().enumerate() {
        let mut shell = open(&dir.path().join(at.to_string())).expect("an empty log opens");
        let (times, peer) = (Rc::clone(&measured), Rc::clone(&peer));
        shell.time(Box::new(move |action, took| {
            let mut times = times.borrow_mut();
            if matches!(action, Action::Tick | Action::WorkDone { .. }) {
                times.told.push(took);
                return;
            }
            times.taps.push(took);
            times.kinds.entry(kind(action)).or_default().push(took);
            let start = Instant::now();
            peer.execute("INSERT INTO t VALUES(?1)", ["x".repeat(1_000)])
                .expect("a commit");
            times.commits.push(start.elapsed());
        }));
        let report = dir.path().join("report.pdf");
        let options = Options {
            report: Some(&report),
            ..Options::default()
        };
        play_on(&mut shell, scenario, options).expect("the scenario plays");
    }
    figures(&measured.borrow())
}

fn figures(measured: &Measured) -> Vec<Row> {
    let (act, commit) = (
        measured.taps.percentile_ms(0.99),
        measured.commits.percentile_ms(0.99),
    );
    let mut rows = vec![
        Row::wanted("act, p99, less one commit", "< 2 ms", act - commit),
        Row::shown(format!("act, p99 of {} taps", measured.taps.len()), act),
        Row::shown("act, median", measured.taps.percentile_ms(0.5)),
        Row::shown("commit of the same file system, p99", commit),
        Row::shown("commit, median", measured.commits.percentile_ms(0.5)),
        Row::shown("tick or end of a work, p99", measured.told.percentile_ms(0.99)),
    ];
    let mut kinds: Vec<_> = measured
        .kinds
        .iter()
        .map(|(kind, times)| (times.percentile_ms(0.99), kind, times.len()))
        .collect();
    kinds.sort_by(|a, b| b.0.total_cmp(&a.0));
    rows.extend(
        kinds
            .into_iter()
            .take(SHOWN)
            .map(|(ms, kind, count)| Row::shown(format!("  {kind}, p99 of {count}"), ms)),
    );
    rows
}

/// The action's kind, with the place it goes to.
fn kind(action: &Action) -> String {
    let words = format!("{action:?}");
    match action {
        Action::Go { .. } => words,
        _ => words.split([' ', '{', '(']).next().unwrap_or_default().to_owned(),
    }
}

fn scenarios() -> Vec<Scenario> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("scenarios");
    let mut files: Vec<_> = std::fs::read_dir(folder)
        .expect("the scenarios")
        .map(|entry| entry.expect("an entry").path())
        .filter(|path| path.extension().is_some_and(|end| end == "json"))
        .collect();
    files.sort();
    files
        .iter()
        .map(|path| {
            let text = std::fs::read_to_string(path).expect("a scenario");
            serde_json::from_str(&text).expect("a scenario reads")
        })
        .collect()
}
