//! What a cause asks one to do.

use std::collections::BTreeMap;

use super::Reasoned;
use crate::faults::Effect;
use crate::inference::Evaluated;

/// One thing to do.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub(crate) enum Remedy {
    /// Nothing in this circuit: it is sound, and if there is a cause it lies outside.
    Nothing,
    /// The tester itself.
    Tester,
    /// These components, by their numbers: one with a fault, then what that fault has broken in turn.
    Parts(Vec<usize>),
}

/// Causes less likely than this don't count when remedies are summed up.
const COUNTS: f64 = 1e-7;

impl Reasoned<'_> {
    /// Everything that is right to do under a cause: one thing for each of its faults that can be put right here.
    pub(crate) fn remedies_of(&self, cause: &Evaluated) -> Vec<Remedy> {
        let faults = || cause.faults.iter().map(|f| (*f, &self.model.faults[*f]));
        let mut remedies: Vec<Remedy> = faults()
            .filter(|(_, f)| !f.tester)
            .filter_map(|(number, fault)| {
                let mut parts = vec![fault.part?];
                let broken = self.broken_by(cause, number);
                parts.extend(broken.into_iter().filter(|b| Some(*b) != fault.part));
                Some(Remedy::Parts(parts))
            })
            .collect();
        remedies.dedup();
        if remedies.is_empty() {
            remedies.push(if faults().any(|(_, f)| f.is_bad_tester()) {
                Remedy::Tester
            } else {
                Remedy::Nothing
            });
        }
        remedies
    }

    /// The parts that one fault of a cause breaks in turn.
    fn broken_by(&self, cause: &Evaluated, fault: usize) -> Vec<usize> {
        let effects = self.model.faults[fault].effects;
        let heavy = |e: &Effect| matches!(e, Effect::ToGround(_) | Effect::OhmShare(_));
        if !effects.iter().any(heavy) {
            return Vec::new();
        }
        self.broken_in_turn(cause)
            .iter()
            .filter_map(|f| self.model.layout.number(&f.component))
            .collect()
    }

    /// Probability that each remedy is right, the likeliest first. More than one can be right at once.
    pub(crate) fn remedies(&self) -> &[(Remedy, f64)] {
        self.remedies.get_or_init(|| self.sum_remedies())
    }

    fn sum_remedies(&self) -> Vec<(Remedy, f64)> {
        let mut remedies: Vec<(Remedy, f64)> = Vec::new();
        let mut places: BTreeMap<Remedy, usize> = BTreeMap::new();
        for cause in self.posterior.causes.iter().filter(|c| c.p >= COUNTS) {
            for remedy in self.remedies_of(cause) {
                if let Some(place) = places.get(&remedy) {
                    remedies[*place].1 += cause.p;
                } else {
                    places.insert(remedy.clone(), remedies.len());
                    remedies.push((remedy, cause.p));
                }
            }
        }
        remedies.sort_by(|a, b| b.1.total_cmp(&a.1));
        remedies
    }
}
