//! Laws that the physics must obey whatever the figures.
#![allow(clippy::unwrap_used, reason = "helpers of tests may unwrap as tests do")]

mod flow;
mod inference;
mod quantities;
