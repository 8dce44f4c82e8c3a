//! What eyes and hands say of a cause: the same in any setting, sizes taken as usual.

use super::model::{Case, Model};
use super::observation::{Observation, Seen};
use super::predict::shows_a_sign;

/// What one thing seen or felt by hand says of each fault.
#[derive(Debug)]
pub(super) struct SignRow {
    pub seen: Observation,
    /// ln likelihood for a sound circuit.
    sound: f64,
    /// ln likelihood of each fault over that.
    singles: Vec<f64>,
}

impl SignRow {
    pub fn new(model: &Model<'_>, seen: &Observation) -> Self {
        let sound = ln(model, seen, &[]);
        let over_sound = |fault: usize| {
            if model.touches(seen, &[fault]) {
                ln(model, seen, &[fault]) - sound
            } else {
                0.0
            }
        };
        Self {
            seen: seen.clone(),
            sound,
            singles: (0..model.faults.len()).map(over_sound).collect(),
        }
    }

    /// ln likelihood under up to two faults.
    pub fn of(&self, model: &Model<'_>, faults: &[usize]) -> f64 {
        match *faults {
            [] => self.sound,
            [fault] => self.sound + self.singles[fault],
            [a, b, ..] => {
                let (first, second) = (self.singles[a], self.singles[b]);
                if first == 0.0 || second == 0.0 || self.are_apart(model, a, b) {
                    self.sound + first + second
                } else {
                    ln(model, &self.seen, faults)
                }
            }
        }
    }

    /// Whether two faults can't get into each other's way: a look-over sees each part by itself.
    fn are_apart(&self, model: &Model<'_>, a: usize, b: usize) -> bool {
        let part = |f: usize| model.faults[f].part;
        matches!(self.seen.seen, Seen::Look(_)) && part(a) != part(b)
    }
}

fn ln(model: &Model<'_>, seen: &Observation, faults: &[usize]) -> f64 {
    let usual = |f: &usize| (*f, model.faults[*f].usual_size());
    let sized: Vec<(usize, f64)> = faults.iter().map(usual).collect();
    let world = model.world(&sized);
    let setting = model.settings.first().map(|(s, _)| *s).unwrap_or_default();
    let likelihood = match &seen.seen {
        Seen::Fields(values) if shows_a_sign(seen) => {
            model.values_likelihood(seen, values, &vec![(1.0, model.sign_fields(seen, faults))])
        }
        _ => model.likelihood(seen, &Case::new(&world, setting)),
    };
    likelihood.ln()
}
