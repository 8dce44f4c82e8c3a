//! One job step by step, for looking into it.

use holdfast_diagnose::{Next, Policy, Reasoner};

use crate::jobs::{Job, Stratum};
use crate::runner::{Way, run};

/// Prints each step of a job done as guided: what was known, what is done next and why.
pub fn print(stratum: Stratum, seed: u64) {
    let job = Job::drawn(stratum, seed / 1_000);
    println!(
        "{stratum:?} {} {}: {:?}, complaint {:?}, cannot {:?}",
        job.seed,
        job.scene.circuit.template,
        job.truth().iter().map(ToString::to_string).collect::<Vec<_>>(),
        job.scene.situation.complaint,
        job.scene.cannot
    );
    let done = run(&job, Way::Guided);
    let mut reasoner = Reasoner::new(job.scene.circuit.clone(), job.scene.situation.clone());
    for known in 0..=done.readings.len() {
        let readings = &done.readings[..known];
        let (finding, next) = reasoner.conclude(readings, Policy::Guided);
        if let Some((reading, result)) = readings.last() {
            println!("   {:?} → {}", reading.answer, result.outcome.as_str());
        }
        let causes: Vec<String> = finding
            .causes
            .iter()
            .take(7)
            .map(|c| {
                let faults: Vec<String> = c.faults.iter().map(ToString::to_string).collect();
                format!("{} {:.3}", faults.join("+"), c.p)
            })
            .collect();
        println!("   decided {}: {}", finding.decided, causes.join(", "));
        match next {
            Next::Test {
                id,
                minutes,
                to_finding,
                ..
            } => println!("{known}. {id}, {minutes:.1} min, {to_finding:.1?} to the finding"),
            Next::LookAgain { id, minutes, .. } => println!("{known}. look again at {id}, {minutes:.1} min"),
            Next::Stop { why } => println!("{known}. stop: {}", why.id),
        }
    }
}
