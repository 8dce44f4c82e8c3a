//! Jobs: a scene and a car in it, drawn by kind and seed.

use holdfast_diagnose::{Complaint, FaultId};

use crate::ailments::{Ailment, Fault, Harm, faults_of};
use crate::car::{Car, Nature, Scene};
use crate::complaints;
use crate::draw::Draw;
use crate::physics::Physics;
use crate::scenes;

/// What is wrong in a job.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Stratum {
    /// As cars come: nothing, one fault, rarely two; circuit, outside or tester, by their rates.
    Natural,
    /// Two faults of the circuit.
    Double,
    /// One fault of the circuit, and just one slip.
    OneSlip,
    /// A sound circuit with a complaint: there is nothing, or the cause lies outside.
    Sound,
    /// A sound car, a leaking hand pump or a dead meter.
    Tester,
}

/// A job before it is done.
#[derive(Debug, Clone)]
pub struct Job {
    pub seed: u64,
    pub stratum: Stratum,
    pub scene: Scene,
    pub nature: Nature,
    pub ailments: Vec<Ailment>,
}

/// Share of natural cars with a second, unrelated fault.
pub const SECOND: f64 = 0.03;

impl Job {
    /// The job of a kind and seed. Cars nobody would bring are drawn again.
    pub fn drawn(stratum: Stratum, seed: u64) -> Self {
        for attempt in 0.. {
            let seed = seed.wrapping_mul(1_000).wrapping_add(attempt);
            if let Some(job) = Self::brought(stratum, seed) {
                return job;
            }
        }
        unreachable!("somebody brings a car in the end")
    }

    fn brought(stratum: Stratum, seed: u64) -> Option<Self> {
        let mut scene = scenes::drawn(seed);
        let nature = Nature::drawn(&scene, seed);
        let mut d = Draw::of(seed, "faults");
        let faults = faults(stratum, &faults_of(&scene.circuit), &mut d);
        let ailments: Vec<Ailment> = faults.into_iter().map(|f| Ailment::drawn(f, &mut d)).collect();
        let felt = {
            let car = Car {
                scene: &scene,
                nature: nature.clone(),
                ailments: ailments.clone(),
            };
            complaints::drawn(&Physics::of(&car), &mut d)
        };
        scene.situation.complaint = match (stratum, felt) {
            // A sound car is brought by somebody who feels something.
            (Stratum::Sound | Stratum::Tester, None) => [*d.pick(&[
                Complaint::ShakeIdle,
                Complaint::ShakeIdleSlight,
                Complaint::ShakeIdleGear,
                Complaint::None,
            ])]
            .into(),
            (_, felt) => felt?,
        };
        Some(Self {
            seed,
            stratum,
            scene,
            nature,
            ailments,
        })
    }

    pub fn car(&self) -> Car<'_> {
        Car {
            scene: &self.scene,
            nature: self.nature.clone(),
            ailments: self.ailments.clone(),
        }
    }

    /// The faults there are, those that others have caused left out.
    pub fn truth(&self) -> Vec<FaultId> {
        self.ailments.iter().map(|a| a.fault.id.clone()).collect()
    }

    /// Those of them that belong to the circuit.
    pub fn circuit_faults(&self) -> impl Iterator<Item = &Fault> {
        self.ailments
            .iter()
            .map(|a| &a.fault)
            .filter(|f| f.is_of_the_circuit())
    }
}

fn faults(stratum: Stratum, all: &[Fault], d: &mut Draw) -> Vec<Fault> {
    let weight = |keep: &dyn Fn(&Fault) -> bool| -> Vec<f64> {
        all.iter().map(|f| if keep(f) { f.weight } else { 0.0 }).collect()
    };
    let mut one = |keep: &dyn Fn(&Fault) -> bool| all[d.by_weight(weight(keep))].clone();
    let circuit = |f: &Fault| f.is_of_the_circuit();
    match stratum {
        Stratum::OneSlip => vec![one(&circuit)],
        Stratum::Sound => {
            let cause = one(&|f| f.harm == Harm::Outside);
            if d.happens(0.6) { vec![cause] } else { Vec::new() }
        }
        Stratum::Tester => {
            let mut tester = one(&|f| f.harm == Harm::TesterLeaks);
            if d.happens(0.2) {
                tester.id = FaultId::new("multimeter", "dead");
                tester.harm = Harm::MeterDead;
            }
            vec![tester]
        }
        Stratum::Natural => {
            let total: f64 = all.iter().map(|f| f.weight).sum();
            let first = one(&|_| true);
            let second = one(&|f| f.is_of_the_circuit() && f.id.component != first.id.component);
            if d.share() < 1.0 / (1.0 + total) {
                Vec::new()
            } else if first.is_of_the_circuit() && d.happens(SECOND) {
                vec![first, second]
            } else {
                vec![first]
            }
        }
        Stratum::Double => {
            let leaky = |f: &Fault| f.harm == Harm::Leaks;
            let both_leak = d.happens(0.4);
            let mut one = |keep: &dyn Fn(&Fault) -> bool| all[d.by_weight(weight(keep))].clone();
            let keep: &dyn Fn(&Fault) -> bool = if both_leak { &leaky } else { &circuit };
            let first = one(keep);
            let second = one(&|f| keep(f) && f.id.component != first.id.component);
            vec![first, second]
        }
    }
}
