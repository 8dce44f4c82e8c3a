//! Whether a job ended right.

use std::collections::BTreeSet;

use holdfast_diagnose::{Cause, ComponentId, FaultId};

use crate::ailments::Harm;
use crate::jobs::Job;
use crate::runner::Run;

/// How a job ended, measured against what was wrong.
#[derive(Debug, Clone)]
pub struct Verdict {
    pub decided: bool,
    /// The parts named are those that are faulty (none, for a sound circuit or a cause outside it).
    pub parts_right: bool,
    /// The first cause is the truth, faults and all.
    pub cause_right: bool,
    /// A faulty part is named, or not ruled out; each of two.
    pub both_named_or_open: bool,
    /// Undecided, and said which parts can't be told apart, the faulty ones among them.
    pub rightly_inseparable: bool,
    /// A part of the circuit is named.
    pub blames: bool,
    pub said: Vec<FaultId>,
    /// The likeliest causes in words, for looking into a job.
    pub ranking: String,
    pub p: f64,
    /// Probability of all causes that ask for the same parts as the first.
    pub p_parts: f64,
    pub p_parts_right: bool,
    /// Probability of all causes that ask for the faulty parts.
    pub p_truth: f64,
}

/// What a short in the wiring or the coil breaks in turn.
fn in_turn(job: &Job) -> BTreeSet<ComponentId> {
    let shorts = job
        .ailments
        .iter()
        .any(|a| matches!(a.fault.harm, Harm::ToGround | Harm::CoilShorted));
    let fuses = job.scene.circuit.drives.iter().map(|d| d.fuse.clone());
    if shorts { fuses.collect() } else { BTreeSet::new() }
}

/// The parts of the circuit that a list of faults names; outside causes and the tester are none.
fn parts(job: &Job, faults: &[FaultId]) -> BTreeSet<ComponentId> {
    let in_circuit = |f: &&FaultId| {
        job.scene
            .circuit
            .component(&f.component)
            .is_some_and(|c| c.kind.side() != holdfast_diagnose::Side::Beside)
    };
    faults
        .iter()
        .filter(in_circuit)
        .map(|f| f.component.clone())
        .collect()
}

/// The likeliest causes with their probabilities.
fn ranking(causes: &[Cause]) -> String {
    let words = |cause: &Cause| {
        let faults: Vec<String> = cause.faults.iter().map(ToString::to_string).collect();
        format!(
            "{} {:.3}",
            if faults.is_empty() {
                "nothing".into()
            } else {
                faults.join("+")
            },
            cause.p
        )
    };
    causes.iter().take(6).map(words).collect::<Vec<_>>().join(", ")
}

impl Verdict {
    pub fn of(job: &Job, run: &Run) -> Self {
        let finding = &run.finding;
        let truth: Vec<FaultId> = job.circuit_faults().map(|f| f.id.clone()).collect();
        let true_parts = parts(job, &truth);
        let turn = in_turn(job);
        let same = |named: &BTreeSet<ComponentId>| {
            true_parts.is_subset(named) && named.iter().all(|p| true_parts.contains(p) || turn.contains(p))
        };
        let named: BTreeSet<ComponentId> = finding.parts.iter().cloned().collect();
        let first: Option<&Cause> = finding.causes.first();
        let said = first.map(|c| c.faults.clone()).unwrap_or_default();
        let first_parts = parts(job, &said);
        let p_of = |wanted: &dyn Fn(&BTreeSet<ComponentId>) -> bool| -> f64 {
            let causes = finding.causes.iter();
            causes
                .filter(|c| wanted(&parts(job, &c.faults)))
                .map(|c| c.p)
                .sum()
        };
        // A tester that was put right is none of the faults in the end.
        let left = job.ailments.iter().filter(|a| !run.mended.contains(&a.fault.harm));
        let whole: BTreeSet<FaultId> = left.map(|a| a.fault.id.clone()).collect();
        let said_set: BTreeSet<FaultId> = said.iter().cloned().collect();
        let cause_right = whole.is_subset(&said_set)
            && said_set
                .iter()
                .all(|f| whole.contains(f) || turn.contains(&f.component));
        let open = |part: &ComponentId| finding.left_open.iter().any(|f| &f.component == part);
        let inseparable: BTreeSet<&ComponentId> = finding.inseparable.iter().collect();
        // A sound circuit or an outside cause is among what can't be told apart when it keeps a twentieth of the probability.
        let p_none: f64 = finding
            .causes
            .iter()
            .filter(|c| parts(job, &c.faults).is_empty())
            .map(|c| c.p)
            .sum();
        let among = match true_parts.is_empty() {
            true => !inseparable.is_empty() && p_none >= 0.05,
            false => true_parts.iter().all(|p| inseparable.contains(p)),
        };
        Self {
            decided: finding.decided,
            parts_right: same(&named),
            cause_right,
            both_named_or_open: true_parts.iter().any(|p| named.contains(p))
                && true_parts.iter().all(|p| named.contains(p) || open(p)),
            rightly_inseparable: !finding.decided && among,
            blames: finding.decided && !named.is_empty(),
            p: first.map_or(0.0, |c| c.p),
            p_parts: p_of(&|of| *of == first_parts),
            p_truth: p_of(&same),
            p_parts_right: same(&first_parts),
            ranking: ranking(&finding.causes),
            said,
        }
    }
}
