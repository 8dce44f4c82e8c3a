//! Whether the reasoning is right, how sure it may be, how many minutes it takes: simulated jobs, seeded.
//!
//! The simulation was written without the core's likelihoods; its rates are from memory as the core's are, so that some lie
//! close to those, and how often each fault occurs is taken from the core's data. It draws places,
//! circuits, instruments and people (`scenes.rs`), cars with faults (`jobs.rs`, `ailments.rs`), works out their physics
//! (`condition.rs`, `air.rs`, `line.rs`, `wires.rs`, `physics.rs`), and what a person reports of it as explicit
//! distributions (`law.rs`; `holds.rs`, `gauges.rs`, `meters.rs`, `senses.rs`, `complaints.rs`). `witness.rs` answers as a
//! scenario file would; `runner.rs` does a job from first test to finding; `oracle.rs` says what somebody would conclude who
//! knows those distributions. The long run is `cargo xtask bench` (`full.rs`).
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::unreachable,
    dead_code,
    reason = "helpers of tests may unwrap as tests do; the long run uses the rest of the modules"
)]

include!("modules.rs");

mod bounds;
mod short;
mod simulator_checks;
