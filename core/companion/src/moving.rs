//! What moves while a person watches or drags: never written to disk.

use crate::flow::marks::Held;
use crate::protocol::Clock;

/// The moving parts.
#[derive(Debug, Clone, PartialEq, Default)]
pub(crate) struct Moving {
    /// The clocks at the last action.
    pub clock: Option<Clock>,
    /// Where the needle was dragged to, in the gauge's unit.
    pub needle: Option<f64>,
    /// What the camera saw and is not in the log yet.
    pub frames: Frames,
    /// Monotonic time of the last tick.
    pub ticked_ms: Option<i64>,
    /// Five-second marks that were buzzed.
    pub marks: f64,
    /// Seconds left that were said last.
    pub left: Option<f64>,
    /// The mark that follows the finger.
    pub held: Option<Held>,
    /// How many of the spoken figures on the way up were said.
    pub spoken: usize,
}

/// Frames of a gauge watched by camera, one after the other; none: the needle was not seen.
#[derive(Debug, Clone, PartialEq, Default)]
pub(crate) struct Frames {
    /// The place of the first, counted from letting go.
    pub from: usize,
    /// The frames.
    pub seen: Vec<Option<f64>>,
}

impl Frames {
    /// The place after the last.
    pub(crate) fn end(&self) -> usize {
        self.from + self.seen.len()
    }

    /// Sets the frame at a place; what lies between is lost. A place before the first is left alone.
    pub(crate) fn put(&mut self, place: usize, vacuum: Option<f64>) {
        if self.seen.is_empty() {
            self.from = place;
        }
        let Some(at) = place.checked_sub(self.from) else {
            return;
        };
        if self.seen.len() <= at {
            self.seen.resize(at + 1, None);
        }
        if let Some(frame) = self.seen.get_mut(at) {
            *frame = vacuum.or(*frame);
        }
    }
}
