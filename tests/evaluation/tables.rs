//! The generator's distributions as a small discrete network: how often each test ends how with each cause.

use std::collections::BTreeMap;

use holdfast_diagnose::{Catalogue, Reading, TestId, judge, parse_answer};

use crate::ailments::{Ailment, Fault, faults_of};
use crate::car::{Car, Nature};
use crate::draw::Draw;
use crate::jobs::Job;
use crate::network::{Cause, Network, Test};
use crate::physics::Physics;
use crate::witness;

/// Readings drawn for each cause and test.
const DRAWS: u64 = 40;

/// The network of a job's scene: every cause with one fault, and these tests by their results.
pub fn network(job: &Job, tests: &[TestId]) -> Network {
    let faults = faults_of(&job.scene.circuit);
    let mut causes: Vec<Option<&Fault>> = vec![None];
    causes.extend(faults.iter().map(Some));
    let total: f64 = 1.0 + faults.iter().map(|f| f.weight).sum::<f64>();
    let counts: Vec<Vec<BTreeMap<&'static str, usize>>> =
        causes.iter().map(|fault| counted(job, *fault, tests)).collect();
    let table = |(number, id): (usize, &TestId)| {
        let mut outcomes: Vec<&str> = counts.iter().flat_map(|c| c[number].keys().copied()).collect();
        outcomes.sort_unstable();
        outcomes.dedup();
        // A little for what never came up, so that nothing is impossible.
        let share = |of: &BTreeMap<&'static str, usize>| -> Vec<f64> {
            let all = DRAWS as f64 + 0.5 * outcomes.len() as f64;
            outcomes
                .iter()
                .map(|o| (of.get(o).copied().unwrap_or(0) as f64 + 0.5) / all)
                .collect()
        };
        Test {
            id: id.to_string(),
            p: counts.iter().map(|c| share(&c[number])).collect(),
            outcomes: outcomes.iter().map(|o| (*o).to_owned()).collect(),
        }
    };
    Network {
        tests: tests.iter().enumerate().map(table).collect(),
        causes: causes
            .iter()
            .map(|fault| Cause {
                name: fault.map_or_else(|| "nothing".into(), |f| f.id.to_string()),
                p: fault.map_or(1.0, |f| f.weight) / total,
            })
            .collect(),
    }
}

fn counted(job: &Job, fault: Option<&Fault>, tests: &[TestId]) -> Vec<BTreeMap<&'static str, usize>> {
    let mut counts = vec![BTreeMap::new(); tests.len()];
    for k in 0..DRAWS {
        let mut d = Draw::of(job.seed + k, "tables");
        let nature = Nature::drawn(&job.scene, job.seed + k);
        let ailments = fault
            .map(|f| Ailment::drawn(f.clone(), &mut d))
            .into_iter()
            .collect();
        let car = Car {
            scene: &job.scene,
            nature,
            ailments,
        };
        let physics = Physics::of(&car);
        for (count, id) in counts.iter_mut().zip(tests) {
            if let Some(outcome) = outcome(job, &physics, id, &mut d) {
                *count.entry(outcome).or_default() += 1;
            }
        }
    }
    counts
}

fn outcome(job: &Job, physics: &Physics<'_, '_>, id: &TestId, d: &mut Draw) -> Option<&'static str> {
    let (circuit, situation) = (&job.scene.circuit, &job.scene.situation);
    let spec = Catalogue::standard().spec(circuit, id)?;
    let taken = witness::drawn(physics, id, &[situation.limit.seconds], d);
    let json = taken.json(spec.form, situation.instruments.gauge.unit.symbol());
    let (answer, state) = parse_answer(circuit, id, &json).ok()?;
    let reading = Reading {
        state,
        ..Reading::new(id.clone(), answer)
    };
    Some(judge(circuit, situation, &[], &reading).outcome.as_str())
}
