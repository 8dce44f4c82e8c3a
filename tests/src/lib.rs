//! Tests that no single crate can hold: outside references (`reference/`), calibration of the hold test
//! against a simulator of its own (`calibration/`), laws of the physics (`laws/`), the reasoning on simulated
//! jobs (`evaluation/`).
