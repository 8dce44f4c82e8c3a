//! What moves while a person watches or drags: never written to disk.

use crate::protocol::Clock;

/// The moving parts.
#[derive(Debug, Clone, PartialEq, Default)]
pub(crate) struct Moving {
    /// The clocks at the last action.
    pub clock: Option<Clock>,
    /// Where the needle was dragged to, in the gauge's unit.
    pub needle: Option<f64>,
    /// Monotonic time of the last tick.
    pub ticked_ms: Option<i64>,
    /// Five-second marks that were buzzed.
    pub marks: f64,
    /// How many of the spoken figures on the way up were said.
    pub spoken: usize,
}
