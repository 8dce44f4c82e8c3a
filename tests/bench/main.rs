//! Timings, each beside a peer in the same run: `cargo xtask bench`.
//!
//! The method is set here once: work and peer take turns, so that a machine that slows down slows both; medians
//! and 99th percentiles are printed, never judged on absolute time alone. What a thread waited for a processor that others
//! had is taken off, but where work is shared among threads. A part can be asked for by its name:
//! `cargo bench -p holdfast-tests --bench times -- report`.

#![allow(clippy::expect_used, reason = "a bench that cannot run ends loudly")]

mod act;
mod log;
mod peer;
mod percentile;
mod photo;
mod report;
mod table;
mod watch;

/// A part of the bench: the name that asks for it alone, and what makes its figures.
type Part = (&'static str, fn() -> Vec<table::Row>);

const PARTS: [Part; 4] = [
    ("act", act::rows),
    ("photo", photo::rows),
    ("log", log::rows),
    ("report", report::rows),
];

fn main() {
    let asked: Vec<String> = std::env::args()
        .skip(1)
        .filter(|word| !word.starts_with('-'))
        .collect();
    for (name, rows) in PARTS {
        if asked.is_empty() || asked.iter().any(|word| word == name) {
            table::print(&rows());
        }
    }
}
