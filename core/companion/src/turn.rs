//! What one action leads to, collected while it is carried out.

use holdfast_joblog::{JobId, Payload, Stamp};

use crate::protocol::{Buzz, Clock, Live, Request};
use crate::settings::Switch;

/// What one action leads to.
pub(crate) struct Turn<'a> {
    /// The clocks at the action.
    pub clock: &'a Clock,
    /// To be logged, together with the session, when the action is through.
    pub entries: Vec<(JobId, Payload)>,
    /// To be done by the shell.
    pub requests: Vec<Request>,
    /// The moving part, if it changed.
    pub live: Option<Live>,
    /// Whether the screen is to be composed anew.
    pub seen: Seen,
    /// When what is in hand is written.
    pub kept: Kept,
}

/// When what is in hand is written. Entries never wait.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Kept {
    /// Before the action is through.
    Now,
    /// With the next action: what a kill takes is nothing that was learned of a vehicle.
    WithTheNext,
}

/// Whether the screen can have changed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Seen {
    /// Only the moving part: a tick, a drag.
    Same,
    /// Compose it and compare.
    Anew,
}

impl<'a> Turn<'a> {
    pub(crate) fn new(clock: &'a Clock) -> Self {
        Self {
            clock,
            entries: Vec::new(),
            requests: Vec::new(),
            live: None,
            seen: Seen::Anew,
            kept: Kept::Now,
        }
    }

    /// The wall clock as the log wants it.
    pub(crate) fn stamp(&self) -> Stamp {
        Stamp {
            wall_ms: self.clock.wall_ms,
            offset_min: self.clock.offset_min,
        }
    }

    /// Asks the phone for something.
    pub(crate) fn ask(&mut self, request: Request) {
        self.requests.push(request);
    }

    /// Buzzes, if that is switched on.
    pub(crate) fn buzz_if(&mut self, switch: Switch, pattern: Buzz) {
        if switch.is_on() {
            self.ask(Request::Buzz { pattern });
        }
    }
}
