//! Timings, each beside a peer in the same run: `cargo xtask bench`.
//!
//! The method is set here once: work and peer take turns, so that a machine that slows down slows both; medians
//! and 99th percentiles are printed, never judged on absolute time alone.

#![allow(clippy::expect_used, reason = "a bench that cannot run ends loudly")]

mod act;
mod log;
mod peer;
mod percentile;
mod photo;
mod report;
mod table;

fn main() {
    let mut rows = act::rows();
    rows.extend(photo::rows());
    rows.extend(log::rows());
    table::print(&rows);
    table::print(&report::rows());
}
