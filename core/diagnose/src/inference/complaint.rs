//! What a car's faults make people complain of, and how much of a complaint they explain.

use super::expect::Expect;
use super::model::{Case, Model};
use super::predict::UNFELT;
use crate::faults::Symptom;
use crate::{Complaint, EngineState};

impl Model<'_> {
    pub(super) fn reproduced(&self, case: &Case<'_>) -> Expect {
        let explained = self.explained(case);
        Expect::Yes(explained * self.data.rates.complaint_reproduced.value + (1.0 - explained) * UNFELT)
    }

    /// Probability that somebody with this car complains as was done.
    pub(super) fn complaints(&self, case: &Case<'_>) -> f64 {
        self.complaint_shares(case).into_iter().map(|(_, p)| p).product()
    }

    /// How much of the complaint is due to the world's faults and not to chance, 0–1.
    pub(crate) fn explained(&self, case: &Case<'_>) -> f64 {
        let base = self.data.complaint_without_fault;
        let shares = self.complaint_shares(case);
        let least = shares
            .iter()
            .filter(|(c, _)| *c != Complaint::None)
            .map(|(_, p)| 1.0 - base / p);
        least
            .fold(None, |worst: Option<f64>, x| Some(worst.map_or(x, |w| w.min(x))))
            .unwrap_or(0.0)
            .clamp(0.0, 1.0)
    }

    fn complaint_shares(&self, case: &Case<'_>) -> Vec<(Complaint, f64)> {
        let symptoms = self.symptoms(case);
        let table = |complaint: Complaint| {
            let quiet: f64 = symptoms
                .iter()
                .map(|(symptom, p)| {
                    let side = if case.setting.softens {
                        &symptom.soft
                    } else {
                        &symptom.stiff
                    };
                    1.0 - p * side.get(&complaint).copied().unwrap_or(0.0)
                })
                .product();
            1.0 - (1.0 - self.data.complaint_without_fault) * quiet
        };
        self.situation
            .complaint
            .iter()
            .map(|&complaint| match complaint {
                Complaint::None => {
                    let silent = Complaint::ALL
                        .into_iter()
                        .filter(|c| *c != Complaint::None)
                        .map(|c| 1.0 - table(c));
                    (complaint, silent.product())
                }
                other => (other, table(other)),
            })
            .collect()
    }

    fn symptoms(&self, case: &Case<'_>) -> Vec<(&Symptom, f64)> {
        let figures = &self.data.physics;
        let at_mounts = case.at_mounts(self, EngineState::InGear);
        let (mounts, fault_seen) = (&at_mounts.mounts, at_mounts.fault_seen);
        let share = |n: usize| (n as f64 / mounts.len().max(1) as f64).sqrt();
        let starved = mounts
            .iter()
            .filter(|m| m.on < figures.starved_below.value)
            .count();
        let weak = mounts.iter().filter(|m| m.on < figures.weak_below.value).count() - starved;
        let kept = mounts
            .iter()
            .filter(|m| m.off > figures.starved_below.value)
            .count();
        let felt = [
            ("starved", share(starved)),
            ("weak_vacuum", share(weak)),
            ("kept", share(kept)),
            ("circuit_fault_seen", if fault_seen { 1.0 } else { 0.0 }),
        ];
        let of_faults = case.world.faults.iter().flat_map(|f| self.faults[*f].symptoms);
        felt.into_iter()
            .chain(of_faults.map(|(name, p)| (name.as_str(), *p)))
            .filter(|(_, p)| *p > 0.0)
            .filter_map(|(name, p)| Some((self.data.symptoms.get(name)?, p)))
            .collect()
    }
}
