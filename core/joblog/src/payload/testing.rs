//! Tests: what was read, what was broken off, what could not be done.

use serde::{Deserialize, Serialize};
use serde_json::Value;

/// A caution was ticked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Acknowledged {
    /// The caution, by its id in the catalogue.
    pub caution: String,
    /// Before which test; none: for the whole job.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub test: Option<String>,
}

/// A field as the person typed it, so that a later reader can see what they saw.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Typed {
    /// The field's key in the catalogue.
    pub key: String,
    /// The text, verbatim.
    pub text: String,
    /// Symbol of the unit it was typed in, or empty.
    #[serde(default)]
    pub unit: String,
}

/// The state the car was in. Left out: as the test asks.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
pub struct CarState {
    /// The connector was on.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub connected: Option<bool>,
    /// `off`, `idle` or `in_gear`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub engine: Option<String>,
    /// It was hot.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hot: Option<bool>,
}

/// A test's answer.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Reading {
    /// The test, by its id, such as `hold:branch`.
    pub test: String,
    /// The answer in the form that `holdfast-diagnose` reads, kept as it came.
    pub answer: Value,
    /// What was typed for it.
    #[serde(default)]
    pub typed: Vec<Typed>,
    /// The state the car was in.
    #[serde(default)]
    pub state: CarState,
    /// It was questioned, and the person kept it.
    #[serde(default)]
    pub confirmed: bool,
    /// It is the same test again after a repair.
    #[serde(default)]
    pub after_repair: bool,
    /// When the test was begun, ms since 1970-01-01T00:00Z by the wall clock.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub begun_at_ms: Option<i64>,
    /// How long the gauge was watched, s by the monotonic clock.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub watched_s: Option<f64>,
    /// Why this test was asked for, as the planner said it then; kept as it came.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub asked_because: Option<Value>,
}

/// One gauge reading of a hold.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct HoldPoint {
    /// Seconds since pumping stopped, by the monotonic clock.
    pub at_s: f64,
    /// Vacuum, in the hold's unit.
    pub vacuum: f64,
}

/// Part of a gauge trace, at most a second of it, so that a kill loses no more.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct TraceChunk {
    /// Which hold it belongs to: any text that is the same for all chunks of one hold.
    pub hold: String,
    /// The test, by its id.
    pub test: String,
    /// Time of the first frame, s since pumping stopped.
    pub from_s: f64,
    /// Frames a second.
    pub hz: f64,
    /// Symbol of the vacuum's unit.
    pub unit: String,
    /// The frames; none: a lost one.
    pub vacuum: Vec<Option<f64>>,
}

/// A hold that was broken off: the process was killed, the phone restarted, the person left it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Interrupted {
    /// The test, by its id.
    pub test: String,
    /// `killed`, `restarted`, `left`, or `unseen` by the camera.
    pub by: String,
    /// Symbol of the vacuum's unit.
    pub unit: String,
    /// Vacuum when pumping stopped, if it got that far.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub start: Option<f64>,
    /// What was read until then.
    #[serde(default)]
    pub points: Vec<HoldPoint>,
    /// Pump strokes counted until then.
    #[serde(default)]
    pub strokes: u32,
    /// How long it had run, s by the monotonic clock, as far as is known.
    #[serde(default)]
    pub ran_s: f64,
}

/// A test that can't be done.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Skipped {
    /// The test, by its id.
    pub test: String,
    /// Why: `no_access`, `no_tool`, `not_safe`, `not_fitted`, `not_now`, `not_available`, `own_words`.
    pub reason: String,
    /// In the person's words, or empty.
    #[serde(default)]
    pub note: String,
    /// Why this test was asked for, as the planner said it then; kept as it came.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub asked_because: Option<Value>,
}
