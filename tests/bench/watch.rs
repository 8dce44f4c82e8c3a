//! Time that a piece of work took, less the time it stood in line for a processor that other programs had: a bench is
//! rarely alone on its machine. Linux tells; elsewhere nothing is taken off.

use std::time::{Duration, Instant};

/// A running watch of one thread.
pub struct Watch {
    start: Instant,
    queued: Duration,
}

impl Watch {
    /// Starts.
    pub fn start() -> Self {
        let queued = queued();
        Self {
            start: Instant::now(),
            queued,
        }
    }

    /// What has been taken since.
    pub fn elapsed(&self) -> Duration {
        let took = self.start.elapsed();
        took.saturating_sub(queued().saturating_sub(self.queued))
    }
}

/// How long this thread has been ready to run and not running.
///
/// Source: the kernel's documentation of scheduler statistics: of `schedstat`'s three figures the second, nanoseconds.
fn queued() -> Duration {
    let stat = std::fs::read_to_string("/proc/thread-self/schedstat").unwrap_or_default();
    let queued = stat.split_whitespace().nth(1).and_then(|ns| ns.parse().ok());
    Duration::from_nanos(queued.unwrap_or(0))
}
