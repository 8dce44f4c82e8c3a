#![doc = include_str!("../README.md")]

mod companion;
mod compose;
mod drawn;
mod error;
mod experience;
#[cfg(feature = "ffi")]
mod ffi;
mod flow;
mod job;
mod known;
mod moving;
mod odometer;
mod player;
mod protocol;
mod session;
mod settings;
mod situation;
mod text;
mod turn;
mod typed;
mod units;
mod work;
mod works;

pub use companion::Companion;
pub use error::{ActError, OpenError, Remedy};
pub use player::{Asked, AskedHold, AskedStage, Done};
pub use protocol::*;
pub use work::{Work, WorkOutcome};

#[cfg(feature = "ffi")]
uniffi::setup_scaffolding!("holdfast");
