//! The app without a face: screens, actions, requests, timers, texts.

#[cfg(feature = "ffi")]
mod ffi;
mod job;
mod protocol;
mod situation;

pub use protocol::*;

#[cfg(feature = "ffi")]
uniffi::setup_scaffolding!("holdfast");
