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
        let mut remedies: Vec<Remedy> = self
            .to_mend(cause)
            .map(|(fault, part)| self.remedy(cause, fault, part))
            .collect();
        remedies.dedup();
        if remedies.is_empty() {
            remedies.push(self.remedy_of_none(cause));
        }
        remedies
    }

    /// The faults of a cause that can be put right here, with their parts.
    fn to_mend(&self, cause: &Evaluated) -> impl Iterator<Item = (usize, usize)> {
        let part = |fault: &usize| {
            let of = &self.model.faults[*fault];
            of.part.filter(|_| !of.tester).map(|part| (*fault, part))
        };
        cause.faults.iter().filter_map(part)
    }

    /// What puts a fault right under a cause.
    fn remedy(&self, cause: &Evaluated, fault: usize, part: usize) -> Remedy {
        let mut parts = vec![part];
        if self.breaks_others(fault) {
            let broken = self.broken_in_turn(cause).into_iter();
            let broken = broken.filter_map(|f| self.model.layout.number(&f.component));
            parts.extend(broken.filter(|b| *b != part));
        }
        Remedy::Parts(parts)
    }

    /// What is right under a cause with nothing to put right here.
    fn remedy_of_none(&self, cause: &Evaluated) -> Remedy {
        if cause.faults.iter().any(|f| self.model.faults[*f].is_bad_tester()) {
            Remedy::Tester
        } else {
            Remedy::Nothing
        }
    }

    /// Whether a fault may break something in turn; where not, what puts it right is the same under every cause.
    fn breaks_others(&self, fault: usize) -> bool {
        let heavy = |e: &Effect| matches!(e, Effect::ToGround(_) | Effect::OhmShare(_));
        self.model.faults[fault].effects.iter().any(heavy)
    }

    /// Probability that each remedy is right, the likeliest first. More than one can be right at once.
    pub(crate) fn remedies(&self) -> &[(Remedy, f64)] {
        self.remedies.get_or_init(|| self.sum_remedies())
    }

    fn sum_remedies(&self) -> Vec<(Remedy, f64)> {
        let mut sums = Sums::default();
        // The places of what is the same under every cause, by part.
        let mut usual: Vec<Option<usize>> = vec![None; self.model.layout.circuit.components.len()];
        for cause in self.posterior.causes.iter().filter(|c| c.p >= COUNTS) {
            let mut last = None;
            for (fault, part) in self.to_mend(cause) {
                let place = if self.breaks_others(fault) {
                    sums.place(self.remedy(cause, fault, part))
                } else {
                    *usual[part].get_or_insert_with(|| sums.place(Remedy::Parts(vec![part])))
                };
                if last != Some(place) {
                    sums.remedies[place].1 += cause.p;
                }
                last = Some(place);
            }
            if last.is_none() {
                let place = sums.place(self.remedy_of_none(cause));
                sums.remedies[place].1 += cause.p;
            }
        }
        let mut remedies = sums.remedies;
        remedies.sort_by(|a, b| b.1.total_cmp(&a.1));
        remedies
    }
}

/// Remedies with their probabilities in the making.
#[derive(Default)]
struct Sums {
    remedies: Vec<(Remedy, f64)>,
    places: BTreeMap<Remedy, usize>,
}

impl Sums {
    fn place(&mut self, remedy: Remedy) -> usize {
        *self.places.entry(remedy).or_insert_with_key(|remedy| {
            self.remedies.push((remedy.clone(), 0.0));
            self.remedies.len() - 1
        })
    }
}
