//! Which test next, as numbers alone: states, what would be right in each, tests, what they cost and what they can show.

use serde::{Deserialize, Serialize};

/// A search for what to do, as plain numbers.
///
/// One of the states is the case. Tests are done one after the other, each once, until one decision is right with a
/// probability of at least `enough`. Whoever gives up before pays `wrong_minutes` times the probability that the best
/// decision is wrong (in part where it is right and does not explain the complaint), and `undecided_minutes`. Asked for is the
/// least expected sum of minutes.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Problem {
    /// What can be the case.
    pub states: Vec<State>,
    /// The tests that are left.
    pub tests: Vec<Trial>,
    /// The state the car is in now.
    pub ready: Ready,
    /// Minutes of starting or stopping the engine.
    pub engine_minutes: f64,
    /// Minutes of plugging or unplugging the connector.
    pub connector_minutes: f64,
    /// Probability at which a decision is sure enough, 0–1.
    pub enough: f64,
    /// Share of the states behind a decision that must explain the complaint before it ends the search, 0–1.
    pub explained: f64,
    /// What a right decision that does not explain the complaint is worth beside one that does, 0–1.
    pub unexplained_worth: f64,
    /// Minutes that a wrong decision costs.
    pub wrong_minutes: f64,
    /// Minutes that it costs to end without a decision, whatever it would be.
    pub undecided_minutes: f64,
}

/// One thing that can be the case.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct State {
    /// Its probability; those of all states sum to 1.
    pub p: f64,
    /// The decisions that are right then, by their numbers: several where two things are wrong, none where none is.
    pub right: Vec<usize>,
    /// It explains what is complained of.
    pub explains: bool,
}

/// One test.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Trial {
    /// Minutes it takes with the car in the state it asks for.
    pub minutes: f64,
    /// The engine must run (or must not).
    pub running: Option<bool>,
    /// The connector must be plugged in (or must not).
    pub connected: Option<bool>,
    /// For each outcome its chance in each state; in each state they sum to 1.
    pub chances: Vec<Vec<f64>>,
}

/// The state a car is in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct Ready {
    /// The engine runs.
    pub running: bool,
    /// The connector is plugged in.
    pub connected: bool,
}

impl Ready {
    /// The state a test leaves the car in.
    pub(super) fn after(self, test: &Trial) -> Self {
        Self {
            running: test.running.unwrap_or(self.running),
            connected: test.connected.unwrap_or(self.connected),
        }
    }
}

impl Problem {
    /// Minutes of a test, getting the car ready for it included.
    pub fn minutes(&self, ready: Ready, test: &Trial) -> f64 {
        let after = ready.after(test);
        let change = |changes: bool, minutes: f64| if changes { minutes } else { 0.0 };
        test.minutes
            + change(after.running != ready.running, self.engine_minutes)
            + change(after.connected != ready.connected, self.connector_minutes)
    }
}
