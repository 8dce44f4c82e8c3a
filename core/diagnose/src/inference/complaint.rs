//! What a car's faults make people complain of, and how much of a complaint they explain.

use super::expect::Expect;
use super::model::{Case, Model};
use super::predict::UNFELT;
use crate::faults::{Complaints, FaultData};
use crate::{Complaint, EngineState};

impl Model<'_> {
    pub(super) fn reproduced(&self, case: &Case<'_>) -> Expect {
        let explained = self.explained(case);
        Expect::Yes(explained * self.data.rates.complaint_reproduced.value + (1.0 - explained) * UNFELT)
    }

    /// Probability that somebody with this car complains as was done.
    pub(super) fn complaints(&self, case: &Case<'_>) -> f64 {
        self.complaint_shares(case).map(|(_, p)| p).product()
    }

    /// How much of the complaint is due to the world's faults and not to chance, 0–1.
    pub(crate) fn explained(&self, case: &Case<'_>) -> f64 {
        let base = self.data.complaint_without_fault;
        let shares = self.complaint_shares(case);
        let least = shares
            .filter(|(c, _)| *c != Complaint::None)
            .map(|(_, p)| 1.0 - base / p);
        least
            .fold(None, |worst: Option<f64>, x| Some(worst.map_or(x, |w| w.min(x))))
            .unwrap_or(0.0)
            .clamp(0.0, 1.0)
    }

    fn complaint_shares(&self, case: &Case<'_>) -> impl Iterator<Item = (Complaint, f64)> {
        let quiet = self.quiet(case);
        let share = move |complaint: Complaint| {
            1.0 - (1.0 - self.data.complaint_without_fault) * quiet[complaint as usize]
        };
        self.situation
            .complaint
            .iter()
            .map(move |&complaint| match complaint {
                Complaint::None => {
                    let silent = Complaint::ALL
                        .into_iter()
                        .filter(|c| *c != Complaint::None)
                        .map(|c| 1.0 - share(c));
                    (complaint, silent.product())
                }
                other => (other, share(other)),
            })
    }

    /// Probability that none of the symptoms makes people complain, by complaint.
    fn quiet(&self, case: &Case<'_>) -> [f64; COMPLAINTS] {
        let figures = &self.data.physics;
        let at_mounts = case.at_mounts(self, EngineState::InGear);
        let mounts = &at_mounts.mounts;
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
        let seen = if at_mounts.fault_seen { 1.0 } else { 0.0 };
        let felt = &self.felt;
        let of_vacuum = [
            (felt.starved, share(starved)),
            (felt.weak, share(weak)),
            (felt.kept, share(kept)),
            (felt.fault_seen, seen),
        ];
        let of_faults = case.world.faults.iter().flat_map(|f| &self.faults[*f].symptoms);
        let mut quiet = [1.0; COMPLAINTS];
        for (symptom, p) in of_vacuum.iter().chain(of_faults).filter(|(_, p)| *p > 0.0) {
            let Some(shares) = felt.shares.get(*symptom) else {
                continue;
            };
            for (quiet, share) in quiet.iter_mut().zip(shares[usize::from(case.setting.softens)]) {
                *quiet *= 1.0 - p * share;
            }
        }
        quiet
    }
}

/// How many complaints there are, "none" included.
const COMPLAINTS: usize = Complaint::ALL.len();

/// What symptoms make people complain of, by number.
#[derive(Debug)]
pub(crate) struct Felt {
    /// By symptom, where vacuum stiffens and where it softens the mounts, and complaint.
    shares: Vec<[[f64; COMPLAINTS]; 2]>,
    starved: usize,
    weak: usize,
    kept: usize,
    fault_seen: usize,
}

impl Felt {
    pub fn new(data: &FaultData) -> Self {
        let of = |side: &Complaints| {
            let mut shares = [0.0; COMPLAINTS];
            for (complaint, share) in side {
                shares[*complaint as usize] = *share;
            }
            shares
        };
        let number = |name: &str| symptom_number(data, name).unwrap_or(usize::MAX);
        Self {
            shares: data
                .symptoms
                .values()
                .map(|s| [of(&s.stiff), of(&s.soft)])
                .collect(),
            starved: number("starved"),
            weak: number("weak_vacuum"),
            kept: number("kept"),
            fault_seen: number("circuit_fault_seen"),
        }
    }
}

/// The number of a symptom.
pub(super) fn symptom_number(data: &FaultData, name: &str) -> Option<usize> {
    data.symptoms.keys().position(|k| k == name)
}
