//! What a car's faults make people complain of, and how much of a complaint they explain.

use super::air;
use super::expect::Expect;
use super::model::Model;
use super::vacuum::{Behaviour, MountAtWork};
use crate::Complaint;
use crate::faults::{Complaints, FaultData};

impl Model<'_> {
    /// What is felt and told of some faults by themselves.
    pub(crate) fn told(&self, faults: &[usize]) -> Told {
        let mut quiet = [[1.0; COMPLAINTS]; 2];
        let symptoms = faults.iter().flat_map(|f| &self.faults[*f].symptoms);
        for (symptom, p) in symptoms.clone() {
            self.felt.hush(&mut quiet, *symptom, *p);
        }
        let shaking = symptoms
            .clone()
            .filter(|(symptom, _)| *symptom == self.felt.engine_shakes);
        let usual: Vec<(usize, f64)> = faults
            .iter()
            .map(|f| (*f, self.faults[*f].usual_size()))
            .collect();
        let world = self.world(&usual);
        let pumped = |mount: &usize| air::pumped_against(world.of(Some(*mount)).lets_in());
        Told {
            quiet,
            pumped: self.layout.mounts.iter().map(pumped).collect(),
            shakes: 1.0 - shaking.map(|(_, p)| 1.0 - p).product::<f64>(),
            no_code: self.no_sign("codes.list", faults),
            no_misfire: self.no_sign("codes.misfire", faults),
        }
    }

    pub(super) fn reproduced(&self, behaviour: &Behaviour, told: &Told, softens: bool) -> Expect {
        let explained = self.explained(behaviour, told, softens);
        let rates = &self.data.rates;
        let otherwise = rates.complaint_reproduced_otherwise.value;
        Expect::Yes(explained * rates.complaint_reproduced.value + (1.0 - explained) * otherwise)
    }

    /// Probability that somebody with this car complains as was done.
    pub(super) fn complaints(&self, behaviour: &Behaviour, told: &Told, softens: bool) -> f64 {
        let quiet = self.quiet(behaviour, told)[usize::from(softens)];
        let spoken: f64 = self.complaint_shares(&quiet).map(|(_, p)| p).product();
        spoken * self.unspoken(&quiet)
    }

    /// Probability that nothing else is complained of. A shake is told once, however it is put.
    fn unspoken(&self, quiet: &[f64; COMPLAINTS]) -> f64 {
        let complained = &self.situation.complaint;
        if complained.contains(&Complaint::None) {
            return 1.0;
        }
        let shakes = complained.iter().any(|c| c.is_shake());
        let could_be_told =
            |c: &Complaint| *c != Complaint::None && !complained.contains(c) && !(shakes && c.is_shake());
        let told = self.data.rates.complaint_told.value;
        Complaint::ALL
            .into_iter()
            .filter(could_be_told)
            .map(|c| 1.0 - told * self.share(quiet, c))
            .product()
    }

    /// Share of cars with this that are complained of in one way.
    fn share(&self, quiet: &[f64; COMPLAINTS], complaint: Complaint) -> f64 {
        1.0 - (1.0 - self.data.complaint_without_fault) * quiet[complaint as usize]
    }

    /// How much of the complaint is due to the faults and not to chance, 0–1.
    pub(crate) fn explained(&self, behaviour: &Behaviour, told: &Told, softens: bool) -> f64 {
        let base = self.data.complaint_without_fault;
        let quiet = self.quiet(behaviour, told)[usize::from(softens)];
        let shares = self.complaint_shares(&quiet);
        let least = shares
            .filter(|(c, _)| *c != Complaint::None)
            .map(|(_, p)| 1.0 - base / p);
        least
            .fold(None, |worst: Option<f64>, x| Some(worst.map_or(x, |w| w.min(x))))
            .unwrap_or(0.0)
            .clamp(0.0, 1.0)
    }

    fn complaint_shares(&self, quiet: &[f64; COMPLAINTS]) -> impl Iterator<Item = (Complaint, f64)> {
        let share = |complaint: Complaint| self.share(quiet, complaint);
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

    /// Probability that nothing makes people complain, by complaint, where vacuum stiffens and where it softens the mounts.
    fn quiet(&self, behaviour: &Behaviour, told: &Told) -> [[f64; COMPLAINTS]; 2] {
        let figures = &self.data.physics;
        let mounts = &behaviour.in_gear.mounts;
        let share = |n: usize| (n as f64 / mounts.len().max(1) as f64).sqrt();
        let count = |what: &dyn Fn(&MountAtWork) -> bool| mounts.iter().filter(|m| what(m)).count();
        let starved = count(&|m| m.on < figures.starved_below.value);
        let weak = count(&|m| m.on < figures.weak_below.value) - starved;
        let kept = count(&|m| m.off > figures.kept_above.value);
        let seen = if behaviour.in_gear.fault_seen { 1.0 } else { 0.0 };
        let felt = &self.felt;
        let mut quiet = told.quiet;
        for (symptom, p) in [
            (felt.starved, share(starved)),
            (felt.weak, share(weak)),
            (felt.kept, share(kept)),
            (felt.fault_seen, seen),
        ] {
            felt.hush(&mut quiet, symptom, p);
        }
        quiet
    }
}

/// What some faults make people complain of by themselves, whatever vacuum does, and that they store no code.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Told {
    /// Probability of no complaint, where vacuum stiffens and where it softens the mounts, by complaint.
    quiet: [[f64; COMPLAINTS]; 2],
    /// Share of what each mount does that a hand pump on it keeps up against leaks of their usual size.
    pub pumped: Vec<f64>,
    /// Probability that something shakes on the softest mounts.
    pub shakes: f64,
    /// Probability of no code but of misfires.
    pub no_code: f64,
    /// Probability of no code of misfires.
    pub no_misfire: f64,
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
    engine_shakes: usize,
}

impl Felt {
    /// Takes into account that a share `p` of cars shows a symptom.
    fn hush(&self, quiet: &mut [[f64; COMPLAINTS]; 2], symptom: usize, p: f64) {
        let Some(shares) = self.shares.get(symptom).filter(|_| p > 0.0) else {
            return;
        };
        for (quiet, shares) in quiet.iter_mut().zip(shares) {
            for (quiet, share) in quiet.iter_mut().zip(shares) {
                *quiet *= 1.0 - p * share;
            }
        }
    }

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
            engine_shakes: number("engine_shakes"),
        }
    }
}

/// The number of a symptom.
pub(super) fn symptom_number(data: &FaultData, name: &str) -> Option<usize> {
    data.symptoms.keys().position(|k| k == name)
}
