//! When it is enough: one thing to do is sure, or nothing that can be tested would change what to do.

use super::{Reasoned, Remedy};
use crate::inference::{Case, Evaluated, Way};
use crate::{Complaint, ComponentId};

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

/// Probability from which a complaint counts as explained by a cause.
const EXPLAINED: f64 = 0.5;
/// The same before that ends the search while something can still be tested.
pub(crate) const SURELY_EXPLAINED: f64 = 0.65;
/// With more remedies than this in play nothing is close to an end.
const FEW: usize = 4;
/// Parts at least this likely are named as not told apart.
const SUSPECT: f64 = 0.05;

impl Reasoned<'_> {
    /// How things stand.
    pub(crate) fn standing(&self) -> Standing {
        let remedies = self.remedies();
        let confidence = self.model.situation.confidence;
        let (remedy, sure) = remedies.first().cloned().unwrap_or((Remedy::Nothing, 0.0));
        let parts = parts_of(remedies.iter().filter(|(r, p)| *r == remedy || *p >= confidence));
        let first = self
            .posterior
            .causes
            .iter()
            .find(|c| self.remedies_of(c).contains(&remedy));
        let explained = first.and_then(|c| self.explained_by(c, &remedy, &parts));
        let enough = sure >= confidence && remedy != Remedy::Tester;
        // A part that may not explain the complaint is not the end while something can still be tested; a sound circuit
        // explains nothing by itself.
        let met =
            enough && (remedy == Remedy::Nothing || explained.is_none_or(|share| share >= SURELY_EXPLAINED));
        // What could still be tested matters only where the rule is not met by itself, and where few remedies are left.
        let few = remedies.iter().filter(|(_, p)| *p >= SUSPECT).count() <= FEW;
        let exhausted = !met && (enough || few) && !self.can_change();
        let ids = |parts: Vec<usize>| parts.into_iter().map(|n| self.id(n)).collect();
        Standing {
            outside: first.is_some_and(|c| c.faults.iter().any(|f| self.model.faults[*f].is_outside())),
            decided: met || (enough && exhausted),
            inseparable: if exhausted && !enough {
                ids(parts_of(remedies.iter().filter(|(_, p)| *p >= SUSPECT)))
            } else {
                Vec::new()
            },
            parts: ids(parts),
            remedy,
            sure,
            explains: explained.map(|share| share >= EXPLAINED),
        }
    }

    fn id(&self, number: usize) -> ComponentId {
        self.model.layout.circuit.components[number].id.clone()
    }

    /// Probability that the faults of a cause that lie in these parts explain what is complained of, the others left
    /// aside.
    fn explained_by(&self, cause: &Evaluated, remedy: &Remedy, parts: &[usize]) -> Option<f64> {
        let complained = self
            .model
            .situation
            .complaint
            .iter()
            .any(|c| *c != Complaint::None);
        complained.then(|| {
            let counts = |fault: usize| {
                let part = self.model.faults[fault].part;
                *remedy == Remedy::Nothing || part.is_some_and(|p| parts.contains(&p))
            };
            let of_way = |way: &Way| {
                let faults: Vec<(usize, f64)> = cause
                    .faults
                    .iter()
                    .copied()
                    .zip(way.at_work)
                    .filter(|(f, _)| counts(*f))
                    .collect();
                let world = self.model.world(&faults);
                way.weight * self.model.explained(&Case::new(&world, way.setting))
            };
            cause.ways.iter().map(of_way).sum()
        })
    }
}

/// The parts of some remedies, each once, in the order of the remedies.
fn parts_of<'r>(remedies: impl Iterator<Item = &'r (Remedy, f64)>) -> Vec<usize> {
    let mut parts = Vec::new();
    for (remedy, _) in remedies {
        if let Remedy::Parts(of_remedy) = remedy {
            for part in of_remedy {
                if !parts.contains(part) {
                    parts.push(*part);
                }
            }
        }
    }
    parts
}
