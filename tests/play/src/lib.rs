#![doc = include_str!("../README.md")]
#![deny(missing_docs)]

mod answer;
mod circuit;
mod clock;
mod error;
mod hold;
mod job;
mod on_screen;
mod outcome;
mod scenario;
mod setup;
mod shell;

pub use clock::PhoneClock;
pub use error::PlayError;
pub use job::{Options, open, play, play_in, play_on};
pub use outcome::{Outcome, Step};
pub use scenario::Scenario;
pub use setup::begin;
pub use shell::{Shell, Stopwatch};
