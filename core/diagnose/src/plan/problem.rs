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
    /// What can be the case, too, but is too unlikely to be followed: it only counts, whatever a test shows.
    #[serde(default)]
    pub aside: Vec<State>,
    /// The tests that are left.
    pub tests: Vec<Trial>,
    /// The state the car is in now.
    pub ready: Ready,
    /// Minutes of starting or stopping the engine.
    pub engine_minutes: f64,
    /// Minutes of plugging or unplugging the connector.
    pub connector_minutes: f64,
    /// Minutes that working at hot parts takes more, once each time the engine has made them hot.
    pub heat_minutes: f64,
    /// Minutes after which the parts of a stopped engine can be touched.
    pub cools_minutes: f64,
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
    /// Its probability. Those of all states, the ones aside included, sum to 1; what they are short of it counts against every
    /// decision.
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
    /// Hands are at parts that the engine heats.
    pub at_hot_parts: bool,
    /// For each outcome its chance in each state; in each state they sum to 1.
    pub chances: Vec<Vec<f64>>,
}

/// The state a car is in.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Ready {
    /// The engine runs.
    pub running: bool,
    /// The connector is plugged in.
    pub connected: bool,
    /// Minutes until parts that the engine has heated can be touched; 0 where they can.
    pub hot_minutes: f64,
}

impl Problem {
    /// The state a test leaves the car in.
    pub(super) fn after(&self, ready: Ready, test: &Trial) -> Ready {
        let running = test.running.unwrap_or(ready.running);
        Ready {
            running,
            connected: test.connected.unwrap_or(ready.connected),
            hot_minutes: if running {
                self.cools_minutes
            } else if test.at_hot_parts {
                // Gloves are on, or what burns is covered.
                0.0
            } else {
                (ready.hot_minutes - test.minutes).max(0.0)
            },
        }
    }

    /// Minutes of a test, getting the car ready for it included.
    pub fn minutes(&self, ready: Ready, test: &Trial) -> f64 {
        let after = self.after(ready, test);
        let more = |is: bool, minutes: f64| if is { minutes } else { 0.0 };
        let is_hot = test.at_hot_parts && !after.running && ready.hot_minutes > 0.0;
        test.minutes
            + more(after.running != ready.running, self.engine_minutes)
            + more(after.connected != ready.connected, self.connector_minutes)
            + more(is_hot, self.heat_minutes)
    }
}
