//! Causes as they are shown.

use std::collections::BTreeMap;

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
pub(super) const TESTER_IN_DOUBT: f64 = 0.5;
/// Causes less likely than this are not named at all.
const NEVER: f64 = 1e-7;
/// A second fault that has kept this share of its probability is not ruled out.
const NOT_RULED_OUT: f64 = 0.35;
/// Faults less likely than this are left out of "left open" where the readings speak against them.
const WORTH_NAMING: f64 = 0.02;

impl Reasoned<'_> {
    /// Every cause that is at all possible, the likeliest first.
    ///
    /// What moves a needle and needs no mending is left out of a cause. While the tester is in doubt and no part is sure, its
    /// fault stands for everything it comes with: its readings say little about the car.
    pub(crate) fn causes(&self, decided: bool) -> Vec<Cause> {
        let is_tester = |f: &usize| self.model.faults[*f].is_bad_tester();
        let in_doubt = |c: &&Evaluated| c.faults.iter().any(is_tester);
        let doubt: f64 = self.posterior.causes.iter().filter(in_doubt).map(|c| c.p).sum();
        let lumped = !decided && doubt >= TESTER_IN_DOUBT;
        let named = self.posterior.causes.iter().filter(|c| c.p >= NEVER);
        let all: f64 = named.clone().map(|c| c.p).sum();
        let mut summed: BTreeMap<Vec<usize>, (f64, &Evaluated)> = BTreeMap::new();
        for cause in named {
            let tester_only = lumped && in_doubt(&cause);
            let kept = |f: &&usize| {
                let fault = &self.model.faults[**f];
                (!fault.tester || fault.is_bad_tester()) && (!tester_only || fault.tester)
            };
            let kept: Vec<usize> = cause.faults.iter().filter(kept).copied().collect();
            summed.entry(kept).or_insert((0.0, cause)).0 += cause.p / all;
        }
        let mut summed: Vec<(Vec<usize>, (f64, &Evaluated))> = summed.into_iter().collect();
        summed.sort_by(|a, b| b.1.0.total_cmp(&a.1.0).then_with(|| a.0.cmp(&b.0)));
        let cause = |(kept, (p, whole)): (Vec<usize>, (f64, &Evaluated))| {
            let mut faults: Vec<FaultId> = kept.iter().map(|f| self.model.faults[*f].id.clone()).collect();
            faults.extend(self.broken_in_turn(whole));
            Cause { faults, p }
        };
        summed.into_iter().map(cause).collect()
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

    /// Faults that the readings have not ruled out beside the first cause, the likeliest first: those that are likely, and
    /// those of which a second fault is still about as likely as before any reading. The tester's are none of them: nobody
    /// has to put them right on the car.
    pub(super) fn left_open(&self) -> Vec<FaultId> {
        let first = self
            .posterior
            .causes
            .first()
            .map(|c| c.faults.as_slice())
            .unwrap_or_default();
        let mut p = vec![0.0; self.model.faults.len()];
        for cause in self.posterior.causes.iter().skip(1) {
            cause.faults.iter().for_each(|f| p[*f] += cause.p);
        }
        let of_car = |fault: &&usize| {
            let fault = &self.model.faults[**fault];
            !fault.tester && !fault.is_outside()
        };
        let weights: f64 = self.model.faults.iter().map(|f| f.weight).sum();
        let as_second = |fault: usize| {
            self.model.data.rates.second_fault.value * self.model.faults[fault].weight / weights
        };
        let open = |fault: &usize| {
            let beside = of_car(&fault) && p[*fault] >= NOT_RULED_OUT * as_second(*fault);
            let tester = self.model.faults[*fault].tester;
            !tester && !first.contains(fault) && (p[*fault] >= WORTH_NAMING || beside)
        };
        let mut faults: Vec<usize> = (0..p.len()).filter(open).collect();
        faults.sort_by(|a, b| p[*b].total_cmp(&p[*a]));
        faults
            .into_iter()
            .map(|f| self.model.faults[f].id.clone())
            .collect()
    }
}
