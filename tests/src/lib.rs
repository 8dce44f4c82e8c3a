//! Tests that no single crate can hold: outside references (`reference/`), calibration of the hold test
//! against a simulator of its own (`calibration/`), laws of the physics (`laws/`), the reasoning on simulated
//! jobs (`evaluation/`), a report made to strain the layout (`stress/`).
//!
//! What several of them share is here: pictures that are drawn, the straining job, reports for each paper.

pub mod pictures;
pub mod printed;
pub mod stress;
