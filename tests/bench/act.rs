//! `act` against one commit of the same file system: a shell waits for both on every tap.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::path::Path;
use std::rc::Rc;

use holdfast_companion::Action;
use holdfast_play::{Options, Scenario, Stopwatch, open, play_on};

use crate::percentile::Times;
use crate::table::Row;
use crate::watch::Watch;

/// Kinds of action that are shown one by one: the slowest.
const SHOWN: usize = 6;

/// The times of one run.
#[derive(Default)]
struct Measured {
    /// Everything a person does.
    taps: Times,
    /// What the phone tells ten times a second, and the ends of works.
    told: Times,
    /// A bare commit beside each tap.
    commits: Times,
    /// Taps by kind.
    kinds: BTreeMap<String, Times>,
}

/// Stops the time of each action, and of a bare commit beside it.
struct Hand {
    measured: Rc<RefCell<Measured>>,
    peer: rusqlite::Connection,
    watch: Watch,
    turns: usize,
}

impl Stopwatch for Hand {
    fn begins(&mut self) {
        if self.turns.is_multiple_of(2) {
            self.commit();
        }
        self.watch = Watch::start();
    }

    fn ends(&mut self, action: &Action) {
        let took = self.watch.elapsed();
        let mut times = self.measured.borrow_mut();
        if matches!(action, Action::Tick | Action::WorkDone { .. }) {
            times.told.push(took);
            return;
        }
        times.taps.push(took);
        times.kinds.entry(kind(action)).or_default().push(took);
        drop(times);
        if !self.turns.is_multiple_of(2) {
            self.commit();
        }
        self.turns += 1;
    }
}

impl Hand {
    /// A bare commit, before every other tap and after the others: what comes second finds the disk awake.
    fn commit(&mut self) {
        let watch = Watch::start();
        self.peer
            .execute("INSERT INTO t VALUES(?1)", ["x".repeat(1_000)])
            .expect("a commit");
        self.measured.borrow_mut().commits.push(watch.elapsed());
    }
}

/// Plays every scenario to its report, timing each action, with a bare commit before or after every tap.
pub fn rows() -> Vec<Row> {
    let dir = tempfile::tempdir().expect("a folder");
    let measured = Rc::new(RefCell::new(Measured::default()));
    for (at, scenario) in scenarios().iter().enumerate() {
        let folder = dir.path().join(at.to_string());
        let mut shell = open(&folder).expect("an empty log opens");
        shell.time(Box::new(Hand {
            measured: Rc::clone(&measured),
            peer: bare_log(&folder.join("peer.db")),
            watch: Watch::start(),
            turns: 0,
        }));
        let report = folder.join("report.pdf");
        let options = Options {
            report: Some(&report),
            ..Options::default()
        };
        play_on(&mut shell, scenario, options).expect("the scenario plays");
    }
    figures(&measured.borrow())
}

/// A database to commit to, as young as the log beside it: a file that still grows takes longer to be written.
fn bare_log(path: &Path) -> rusqlite::Connection {
    let peer = rusqlite::Connection::open(path).expect("a database");
    peer.execute_batch("PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; CREATE TABLE t(x TEXT) STRICT;")
        .expect("a table");
    peer
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
