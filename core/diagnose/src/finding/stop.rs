//! When it is enough: one thing to do is sure, or nothing that can be tested would change what to do.

use super::Reasoned;
use crate::inference::{Case, Evaluated};
use crate::plan::Candidates;
use crate::{Complaint, ComponentId};

/// What a cause asks one to do.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub(crate) enum Remedy {
    /// Nothing in this circuit: it is sound, and if there is a cause it lies outside.
    Nothing,
    /// The tester itself.
    Tester,
    /// These components, by their numbers.
    Parts(Vec<usize>),
}

/// How things stand.
pub(crate) struct Standing {
    /// The stop rule is met.
    pub decided: bool,
    /// What the first cause asks one to do, and how sure that is.
    pub remedy: Remedy,
    pub sure: f64,
    /// The first cause lies outside the circuit.
    pub outside: bool,
    pub parts: Vec<ComponentId>,
    pub explains: Option<bool>,
    /// Parts that can't be told apart.
    pub inseparable: Vec<ComponentId>,
}

/// Share of a complaint that must be due to a cause before it counts as explained.
const EXPLAINED: f64 = 0.5;
/// With more remedies than this in play nothing is close to an end.
const FEW: usize = 4;
/// Parts at least this likely are named as not told apart.
const SUSPECT: f64 = 0.05;

impl Reasoned<'_> {
    /// What a cause asks one to do.
    pub(crate) fn remedy(&self, cause: &Evaluated) -> Remedy {
        let faults = || cause.faults.iter().map(|f| &self.model.faults[*f]);
        let mut parts: Vec<usize> = faults().filter(|f| !f.tester).filter_map(|f| f.part).collect();
        let in_turn = self.broken_in_turn(cause);
        parts.extend(
            in_turn
                .iter()
                .filter_map(|f| self.model.layout.number(&f.component)),
        );
        parts.sort_unstable();
        parts.dedup();
        if !parts.is_empty() {
            Remedy::Parts(parts)
        } else if faults().any(|f| f.tester) {
            Remedy::Tester
        } else {
            Remedy::Nothing
        }
    }

    /// Probability of each remedy, the likeliest first.
    pub(crate) fn remedies(&self) -> Vec<(Remedy, f64)> {
        let mut remedies: Vec<(Remedy, f64)> = Vec::new();
        for cause in &self.posterior.causes {
            let remedy = self.remedy(cause);
            match remedies.iter_mut().find(|(r, _)| *r == remedy) {
                Some((_, p)) => *p += cause.p,
                None => remedies.push((remedy, cause.p)),
            }
        }
        remedies.sort_by(|a, b| b.1.total_cmp(&a.1));
        remedies
    }

    /// How things stand.
    pub(crate) fn standing(&self) -> Standing {
        let remedies = self.remedies();
        let (remedy, sure) = remedies.first().cloned().unwrap_or((Remedy::Nothing, 0.0));
        let first = self.posterior.causes.iter().find(|c| self.remedy(c) == remedy);
        let explains = first.and_then(|c| self.explains(c));
        let enough = sure >= self.model.situation.confidence && remedy != Remedy::Tester;
        // A part that doesn't explain the complaint is not the end while something can still be tested; a sound circuit
        // explains nothing by itself.
        let met = enough && (explains != Some(false) || remedy == Remedy::Nothing);
        // What could still be tested matters only where the rule is not met by itself, and where few remedies are left.
        let few = remedies.iter().filter(|(_, p)| *p >= SUSPECT).count() <= FEW;
        let exhausted = !met && (enough || few) && !Candidates::new(self).can_change();
        let inseparable = if exhausted && !enough {
            let parts = remedies
                .iter()
                .filter(|(_, p)| *p >= SUSPECT)
                .filter_map(|(r, _)| match r {
                    Remedy::Parts(parts) => Some(parts),
                    _ => None,
                });
            parts.flatten().map(|n| self.id(*n)).collect()
        } else {
            Vec::new()
        };
        let parts = match (&remedy, first) {
            (Remedy::Parts(_), Some(cause)) => {
                let mut parts: Vec<ComponentId> =
                    self.faults_of(cause).into_iter().map(|f| f.component).collect();
                parts.dedup();
                parts
            }
            _ => Vec::new(),
        };
        let outside = first.is_some_and(|c| c.faults.iter().any(|f| self.model.faults[*f].is_outside()));
        Standing {
            outside,
            decided: met || (enough && exhausted),
            remedy,
            sure,
            parts,
            explains,
            inseparable,
        }
    }

    fn id(&self, number: usize) -> ComponentId {
        self.model.layout.circuit.components[number].id.clone()
    }

    /// Whether a cause explains what is complained of.
    fn explains(&self, cause: &Evaluated) -> Option<bool> {
        let complained = self
            .model
            .situation
            .complaint
            .iter()
            .any(|c| *c != Complaint::None);
        complained.then(|| {
            let share: f64 = cause
                .ways
                .iter()
                .map(|w| {
                    w.weight
                        * self
                            .model
                            .explained(&Case::new(&cause.world(&self.model, w.at_work), w.setting))
                })
                .sum();
            share >= EXPLAINED
        })
    }
}
