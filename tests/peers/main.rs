//! The reasoning beside what others have published: worked examples of troubleshooting, and problems small enough to be
//! solved exactly. The comparison with a general-purpose library for probabilistic networks is part of
//! `cargo xtask bench`, where that library is fetched.
#![allow(
    clippy::unwrap_used,
    clippy::panic,
    dead_code,
    reason = "helpers of tests may unwrap as tests do; the bench uses the rest of the modules"
)]

mod exact;
mod network;
mod small;
mod worked_examples;
