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

/// From this probability on the tester's fault is the first thing to see to.
const TESTER_IN_DOUBT: f64 = 0.5;
/// Causes less likely than this are left out of "left open".
const WORTH_NAMING: f64 = 0.02;

impl Reasoned<'_> {
    /// Every cause, the likeliest first.
    ///
    /// While the tester is in doubt and no part is sure, its fault stands for everything it comes with: its readings say
    /// little about the car.
    pub(crate) fn causes(&self, decided: bool) -> Vec<Cause> {
        let is_tester = |f: &usize| self.model.faults[*f].tester;
        let in_doubt = |c: &&Evaluated| c.faults.iter().any(is_tester);
        let doubt: f64 = self.posterior.causes.iter().filter(in_doubt).map(|c| c.p).sum();
        let lumped = !decided && doubt >= TESTER_IN_DOUBT;
        let mut causes: Vec<Cause> = Vec::with_capacity(self.posterior.causes.len());
        for cause in &self.posterior.causes {
            let faults = if lumped && in_doubt(&cause) {
                let of_tester = cause.faults.iter().filter(|f| is_tester(f));
                of_tester.map(|f| self.model.faults[*f].id.clone()).collect()
            } else {
                self.faults_of(cause)
            };
            let known = causes.iter_mut().find(|c| lumped && c.faults == faults);
            match known {
                Some(known) => known.p += cause.p,
                None => causes.push(Cause { faults, p: cause.p }),
            }
        }
        causes.sort_by(|a, b| b.p.total_cmp(&a.p));
        causes
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
        let setting = self.model.settings.first().map(|(s, _)| *s).unwrap_or_default();
        let (sizes, setting) = cause
            .ways
            .first()
            .map_or(([0.0; 2], setting), |way| (way.at_work, way.setting));
        if electric {
            self.model
                .broken_in_turn(&cause.world(&self.model, sizes), setting)
        } else {
            Vec::new()
        }
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
