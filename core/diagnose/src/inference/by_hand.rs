//! What eyes and hands say of a cause: the same in any setting, and of no size.

use super::model::{Case, Model};
use super::observation::{Observation, Seen};
use super::predict::is_by_hand;

/// Everything seen and felt in a job.
pub(super) struct Signs<'m> {
    model: &'m Model<'m>,
    seen: Vec<&'m Observation>,
    /// ln likelihood of each for a sound circuit, and of each fault over that.
    sound: Vec<f64>,
    singles: Vec<Vec<f64>>,
}

impl<'m> Signs<'m> {
    pub fn new(model: &'m Model<'m>, seen: &'m [Observation]) -> Self {
        let mut signs = Self {
            model,
            seen: seen.iter().filter(|o| is_by_hand(o)).collect(),
            sound: Vec::new(),
            singles: Vec::new(),
        };
        signs.sound = signs.seen.iter().map(|o| signs.ln(o, &[])).collect();
        let over_sound = |fault: usize| {
            let over = |(o, sound): (&&Observation, &f64)| {
                if model.touches(o, &[fault]) {
                    signs.ln(o, &[fault]) - sound
                } else {
                    0.0
                }
            };
            signs.seen.iter().zip(&signs.sound).map(over).collect()
        };
        signs.singles = (0..model.faults.len()).map(over_sound).collect();
        signs
    }

    /// ln likelihood of everything seen and felt under up to two faults.
    pub fn of(&self, faults: &[usize]) -> f64 {
        let of = |at: usize, sound: &f64| match *faults {
            [] => *sound,
            [fault] => sound + self.singles[fault][at],
            [a, b, ..] => {
                let (first, second) = (self.singles[a][at], self.singles[b][at]);
                if first == 0.0 || second == 0.0 || self.are_apart(self.seen[at], a, b) {
                    sound + first + second
                } else {
                    self.ln(self.seen[at], faults)
                }
            }
        };
        self.sound
            .iter()
            .enumerate()
            .map(|(at, sound)| of(at, sound))
            .sum()
    }

    /// Whether two faults can't get into each other's way: a look-over sees each part by itself.
    fn are_apart(&self, seen: &Observation, a: usize, b: usize) -> bool {
        let part = |f: usize| self.model.faults[f].part;
        matches!(seen.seen, Seen::Look(_)) && part(a) != part(b)
    }

    fn ln(&self, seen: &Observation, faults: &[usize]) -> f64 {
        let sized: Vec<(usize, f64)> = faults.iter().map(|f| (*f, 0.0)).collect();
        let world = self.model.world(&sized);
        let setting = self.model.settings.first().map(|(s, _)| *s).unwrap_or_default();
        self.model.likelihood(seen, &Case::new(&world, setting)).ln()
    }
}
