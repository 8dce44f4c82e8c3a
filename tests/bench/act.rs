//! `act` against one commit of the same file system: a shell waits for both on every tap.

use std::time::Instant;

use crate::driver::Driver;
use crate::percentile::Times;

const JOBS: usize = 20;
const PART_TESTS: [&str; 4] = [
    "hold:branch",
    "hold:front_mount",
    "hold:rear_mount",
    "hold:front_hose",
];

/// Plays jobs and prints the times of each action, with a bare commit between every two.
pub fn report() {
    let dir = tempfile::tempdir().expect("a folder");
    let peer = rusqlite::Connection::open(dir.path().join("peer.db")).expect("a database");
    peer.execute_batch("PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; CREATE TABLE t(x TEXT) STRICT;")
        .expect("a table");
    let (mut taps, mut ticks, mut commits) = (Times::default(), Times::default(), Times::default());
    let mut timed = |work: &mut dyn FnMut(), tick: bool| {
        let start = Instant::now();
        work();
        let took = start.elapsed();
        if tick {
            ticks.push(took);
            return;
        }
        taps.push(took);
        let start = Instant::now();
        peer.execute("INSERT INTO t VALUES(?1)", ["x".repeat(1_000)])
            .expect("a commit");
        commits.push(start.elapsed());
    };
    let mut results = 0;
    {
        let log = dir.path().join("log");
        let mut driver = Driver::new(&log, &mut timed);
        for _ in 0..JOBS {
            driver.begin_job();
            driver.hold("hand-pump", 3, "20", "20");
            for test in PART_TESTS {
                driver.hold(test, 12, "20", "18");
            }
            results += driver.results();
        }
    }
    assert_eq!(
        results,
        JOBS * (PART_TESTS.len() + 1),
        "every hold came to a result"
    );
    let (act, commit) = (taps.percentile_ms(0.99), commits.percentile_ms(0.99));
    println!(
        "act: {} taps in {JOBS} jobs, one commit of the same file system after each",
        taps.len()
    );
    println!(
        "  tap     median {:7.3} ms   p99 {act:7.3} ms",
        taps.percentile_ms(0.5)
    );
    println!(
        "  commit  median {:7.3} ms   p99 {commit:7.3} ms",
        commits.percentile_ms(0.5)
    );
    println!(
        "  tick    median {:7.3} ms   p99 {:7.3} ms",
        ticks.percentile_ms(0.5),
        ticks.percentile_ms(0.99)
    );
    println!(
        "  p99 tap less p99 commit: {:.3} ms (wanted: under 2 ms)",
        act - commit
    );
}
