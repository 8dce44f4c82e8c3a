//! Causes as they are shown.

use serde::Serialize;

use super::Reasoned;
use crate::FaultId;
use crate::inference::Evaluated;

/// A fault, or several that come together, with the probability that this is it.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Cause {
    /// The faults, the one to begin with first; empty: nothing is wrong.
    pub faults: Vec<FaultId>,
    /// Its probability, 0–1.
    pub p: f64,
}

/// Causes less likely than this are left out of "left open".
const WORTH_NAMING: f64 = 0.02;

impl Reasoned<'_> {
    /// Every cause, the likeliest first.
    pub(super) fn causes(&self) -> Vec<Cause> {
        self.posterior
            .causes
            .iter()
            .map(|c| Cause {
                faults: self.faults_of(c),
                p: c.p,
            })
            .collect()
    }

    /// The faults of a cause and what they break in turn, such as the fuse that a chafed wire blows.
    pub(super) fn faults_of(&self, cause: &Evaluated) -> Vec<FaultId> {
        let mut ids: Vec<FaultId> = cause
            .faults
            .iter()
            .map(|f| self.model.faults[*f].id.clone())
            .collect();
        ids.extend(self.broken_in_turn(cause));
        ids
    }

    /// What a cause breaks in turn.
    pub(super) fn broken_in_turn(&self, cause: &Evaluated) -> Vec<FaultId> {
        let electric = cause.faults.iter().any(|f| self.model.faults[*f].is_electric());
        let way = cause.ways.first().filter(|_| electric);
        way.map_or_else(Vec::new, |w| {
            self.model
                .broken_in_turn(&cause.world(&self.model, w.at_work), w.setting)
        })
    }

    /// Faults that the readings have not ruled out, beside the first cause.
    pub(super) fn left_open(&self) -> Vec<FaultId> {
        let first = self
            .posterior
            .causes
            .first()
            .map(|c| c.faults.as_slice())
            .unwrap_or_default();
        let mut open = Vec::new();
        for cause in self
            .posterior
            .causes
            .iter()
            .skip(1)
            .filter(|c| c.p >= WORTH_NAMING)
        {
            for fault in cause.faults.iter().filter(|f| !first.contains(f)) {
                let id = &self.model.faults[*fault].id;
                if !open.contains(id) {
                    open.push(id.clone());
                }
            }
        }
        open
    }
}
