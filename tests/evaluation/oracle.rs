//! What somebody would conclude from the same readings who knows how this evaluation makes them.
//!
//! The oracle uses the generator's own laws and the generator's own rates. It even knows those of the car's incidental
//! figures that a reading shows by itself (volumes, voltages, the coil), which takes nothing from the faults; over everything
//! else that is hidden, the faults' sizes above all, it sums as the generator draws it. Pairs are left out of its causes, so
//! it is asked about jobs with at most one fault.

use crate::ailments::{Ailment, Fault, faults_of};
use crate::car::{Car, Nature};
use crate::complaints;
use crate::draw::{Draw, quantile};
use crate::jobs::Job;
use crate::law::ln_mass;
use crate::physics::Physics;
use crate::runner::Run;
use crate::witness::laws;

/// The oracle's first cause.
#[derive(Debug, Clone)]
pub struct Opinion {
    /// Its parts in the circuit are the faulty ones.
    pub parts_right: bool,
    pub cause_right: bool,
    pub said: String,
    pub p: f64,
    /// Probability that it gives to the parts that the core named first.
    pub p_parts: f64,
    /// Probability that it gives to the faulty part.
    pub p_truth: f64,
}

/// Samples of what is hidden, for each fault; at first so many, and all for those that are still worth it.
const SAMPLES: usize = 400;
const FIRST_SAMPLES: usize = 100;
/// A fault less likely than the likeliest by this factor is not looked at more closely.
const HOPELESS: f64 = 1e-9;

/// One sample of what the oracle doesn't know; sizes are spread evenly over their distribution.
fn sample(job: &Job, fault: Option<&Fault>, k: usize, of: usize) -> (Nature, Vec<Ailment>) {
    let mut d = Draw::of(job.seed.wrapping_add(k as u64), "oracle");
    let nature = Nature {
        volumes: job.nature.volumes.clone(),
        battery: job.nature.battery,
        charging: job.nature.charging,
        coil_20: job.nature.coil_20,
        leads: job.nature.leads,
        ..Nature::drawn(&job.scene, job.seed.wrapping_add(1 + k as u64))
    };
    let ailments = fault.map(|f| Ailment {
        size: quantile((k as f64 + d.share()) / of as f64),
        ..Ailment::drawn(f.clone(), &mut d)
    });
    (nature, ailments.into_iter().collect())
}

/// The oracle's opinion on a job's readings.
pub fn opinion(job: &Job, run: &Run) -> Opinion {
    let faults = faults_of(&job.scene.circuit);
    let mut causes: Vec<(Option<&Fault>, f64)> = vec![(None, 1.0)];
    causes.extend(faults.iter().map(|f| (Some(f), f.weight)));
    let weigh = |fault, rate: f64, samples| rate.ln() + ln_likelihood(job, run, fault, samples);
    let most_of = |weighed: &[(Option<&Fault>, f64)]| {
        let weights = weighed.iter().map(|(_, w)| *w);
        weights.fold(f64::NEG_INFINITY, f64::max)
    };
    let mut weighed: Vec<(Option<&Fault>, f64)> = causes
        .iter()
        .map(|(fault, rate)| (*fault, weigh(*fault, *rate, FIRST_SAMPLES)))
        .collect();
    let hopeless = most_of(&weighed) + HOPELESS.ln();
    for ((fault, rate), (_, w)) in causes.iter().zip(&mut weighed) {
        if *w > hopeless {
            *w = weigh(*fault, *rate, SAMPLES);
        }
    }
    let most = most_of(&weighed);
    let total: f64 = weighed.iter().map(|(_, w)| (w - most).exp()).sum();
    for (_, w) in &mut weighed {
        *w = (*w - most).exp() / total;
    }
    let part = |fault: &Option<&Fault>| {
        fault
            .filter(|f| f.is_of_the_circuit())
            .map(|f| f.id.component.clone())
    };
    let p_of = |wanted: &Option<holdfast_diagnose::ComponentId>| -> f64 {
        weighed
            .iter()
            .filter(|(f, _)| part(f) == *wanted)
            .map(|(_, p)| p)
            .sum()
    };
    // What to do first, as the core's stop rule asks: the likeliest part, not the likeliest mode.
    let remedies: Vec<_> = weighed.iter().map(|(f, _)| part(f)).collect();
    let first = remedies
        .iter()
        .max_by(|a, b| p_of(a).total_cmp(&p_of(b)))
        .cloned()
        .flatten();
    let (cause, p) = weighed
        .iter()
        .max_by(|a, b| a.1.total_cmp(&b.1))
        .copied()
        .unwrap_or((None, 0.0));
    let truth = job.ailments.first().map(|a| &a.fault);
    let core = run.finding.causes.first().and_then(|c| c.faults.first());
    let named = core
        .filter(|f| faults.iter().any(|g| &g.id == *f && g.is_of_the_circuit()))
        .map(|f| f.component.clone());
    Opinion {
        parts_right: first == part(&truth),
        cause_right: cause.map(|f| &f.id) == truth.map(|f| &f.id),
        said: cause.map_or_else(|| "nothing".to_owned(), |f| f.id.to_string()),
        p,
        p_parts: p_of(&named),
        p_truth: p_of(&part(&truth)),
    }
}

fn ln_likelihood(job: &Job, run: &Run, fault: Option<&Fault>, of: usize) -> f64 {
    let each = (0..of).map(|k| {
        let (nature, ailments) = sample(job, fault, k, of);
        let car = Car {
            scene: &job.scene,
            nature,
            ailments,
        };
        let physics = Physics::of(&car);
        let readings: f64 = run
            .taken
            .iter()
            .map(|t| {
                let laws = if t.is_plain() {
                    laws(&physics, &t.test, &t.seconds)
                } else {
                    t.laws(&car)
                };
                ln_mass(&laws, &t.report)
            })
            .sum();
        readings + complaints::ln_mass(&physics, &job.scene.situation.complaint)
    });
    let each: Vec<f64> = each.collect();
    let most = each.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    most + (each.iter().map(|l| (l - most).exp()).sum::<f64>() / of as f64).ln()
}
