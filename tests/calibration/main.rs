//! Calibration of the hold test: thousands of simulated tests, seeded, judged against what was put in.
//!
//! The simulator (`simulator.rs`) shares no formula with the inference: it integrates the textbook equations
//! step by step and reads a dial. `exact.rs` finds the exact posterior by brute force with the simulator's own
//! priors, as the yardstick for widths.
#![allow(
    clippy::unwrap_used,
    clippy::panic,
    reason = "helpers of tests may unwrap as tests do"
)]

mod coverage;
mod decisions;
mod exact;
mod physics;
mod simulator;
