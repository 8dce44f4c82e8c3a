//! Bad input and bad moments, through the companion as a shell meets them: design.md section 11, a file a row.

#![expect(
    clippy::unwrap_used,
    clippy::panic,
    reason = "the helpers of tests, too, end them by panicking"
)]

mod hands;
mod interrupted;
mod names;
mod numbers;
mod photos;
mod storage;
