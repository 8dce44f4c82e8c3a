//! The simulated phone's clocks.

use holdfast_companion::Clock;

/// A phone clock that only runs when it is told to, so that a scenario plays the same each time.
#[derive(Debug, Clone)]
pub struct PhoneClock {
    now: Clock,
}

/// 2026-03-02T09:00:00Z.
const START_MS: i64 = 1_772_442_000_000;

impl Default for PhoneClock {
    fn default() -> Self {
        Self {
            now: Clock {
                wall_ms: START_MS,
                offset_min: 60,
                mono_ms: 60_000,
                boot_id: "first".into(),
            },
        }
    }
}

impl PhoneClock {
    /// What the clocks show.
    pub fn now(&self) -> &Clock {
        &self.now
    }

    /// Time passes, ms.
    pub fn wait_ms(&mut self, ms: i64) {
        self.now.wall_ms += ms;
        self.now.mono_ms += ms;
    }

    /// Somebody sets the wall clock, by so many ms.
    pub fn set_wall(&mut self, by_ms: i64) {
        self.now.wall_ms += by_ms;
    }

    /// The phone is started anew.
    pub fn reboot(&mut self) {
        self.now.boot_id.push('+');
        self.now.mono_ms = 5_000;
    }
}

/// Seconds as whole milliseconds.
pub(crate) fn ms(seconds: f64) -> i64 {
    (seconds * 1_000.0).round() as i64
}
