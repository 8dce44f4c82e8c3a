//! Medians and percentiles of times.

use std::time::Duration;

/// Times of one kind of work.
#[derive(Default)]
pub struct Times(Vec<Duration>);

impl Times {
    /// Takes one in.
    pub fn push(&mut self, time: Duration) {
        self.0.push(time);
    }

    /// How many there are.
    pub fn len(&self) -> usize {
        self.0.len()
    }

    /// The time below which this share of them stays, ms.
    pub fn percentile_ms(&self, share: f64) -> f64 {
        let mut sorted = self.0.clone();
        sorted.sort();
        let at = ((sorted.len() as f64 * share).ceil() as usize).clamp(1, sorted.len()) - 1;
        sorted.get(at).map_or(f64::NAN, |time| time.as_secs_f64() * 1e3)
    }
}
