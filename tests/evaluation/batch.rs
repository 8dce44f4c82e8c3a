//! Many jobs at once, over all processors; the order of the results is that of the seeds.

use std::sync::Mutex;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::Duration;

use holdfast_diagnose::FaultId;

use crate::jobs::{Job, Stratum};
use crate::oracle;
use crate::runner::{Run, Way, run};
use crate::verdict::Verdict;

/// How many jobs of each kind, and how many of them the oracle looks at.
#[derive(Debug, Clone, Copy)]
pub struct Plan {
    pub natural: u64,
    pub double: u64,
    pub one_slip: u64,
    pub sound: u64,
    pub tester: u64,
    pub oracle: u64,
    /// Seeds start here.
    pub from: u64,
    /// Do each job by the textbook's order too.
    pub textbook: bool,
}

/// A job done in every way.
#[derive(Debug)]
pub struct Record {
    pub seed: u64,
    pub stratum: Stratum,
    pub template: String,
    pub truth: Vec<FaultId>,
    pub can_run: bool,
    /// A part was out of reach, or a tool was missing.
    pub hindered: bool,
    pub slipped: usize,
    /// The tester was bad and was put right on the way.
    pub mended: bool,
    pub guided: Verdict,
    pub guided_minutes: f64,
    pub tests: Vec<String>,
    pub fixed: Option<(Verdict, f64)>,
    pub skipping: Option<(Verdict, f64)>,
    pub oracle: Option<oracle::Opinion>,
    pub mounts: usize,
    pub thinking: Vec<Duration>,
    /// Minutes to the end as they were said before a test, and as they were.
    pub said: Vec<(f64, f64)>,
    pub refused: Option<String>,
}

impl Record {
    fn of(job: &Job, plan: Plan, with_oracle: bool) -> Self {
        let guided = run(job, Way::Guided);
        let ended = |run: &Run| (Verdict::of(job, run), run.minutes);
        let compared = plan.textbook && job.stratum == Stratum::Natural;
        let other = |way| compared.then(|| ended(&run(job, way)));
        let scene = &job.scene;
        Self {
            seed: job.seed,
            stratum: job.stratum,
            template: scene.circuit.template.clone(),
            truth: job.truth(),
            can_run: scene.situation.engine.can_run,
            hindered: !scene.cannot.is_empty() || scene.situation.tools.is_some(),
            slipped: guided.slipped,
            mended: job.ailments.iter().any(|a| guided.mended.contains(&a.fault.harm)),
            guided: Verdict::of(job, &guided),
            guided_minutes: guided.minutes,
            tests: guided
                .taken
                .iter()
                .map(|t| format!("{}{}", t.test, if t.slip.is_some() { "!" } else { "" }))
                .collect(),
            fixed: other(Way::Fixed),
            skipping: other(Way::FixedSkipping),
            oracle: with_oracle.then(|| oracle::opinion(job, &guided)),
            mounts: scene
                .circuit
                .of_kind(holdfast_diagnose::ComponentKind::Mount)
                .count(),
            thinking: guided.thinking,
            said: guided.said,
            refused: guided.refused,
        }
    }
}

/// Does all jobs of a plan.
pub fn done(plan: Plan) -> Vec<Record> {
    let mut todo: Vec<(Stratum, u64, bool)> = Vec::new();
    for (stratum, count) in [
        (Stratum::Natural, plan.natural),
        (Stratum::OneSlip, plan.one_slip),
        (Stratum::Double, plan.double),
        (Stratum::Sound, plan.sound),
        (Stratum::Tester, plan.tester),
    ] {
        for n in 0..count {
            todo.push((
                stratum,
                plan.from + n,
                stratum == Stratum::Natural && n < plan.oracle,
            ));
        }
    }
    let next = AtomicUsize::new(0);
    let records = Mutex::new(Vec::with_capacity(todo.len()));
    let threads = std::thread::available_parallelism().map_or(1, usize::from);
    std::thread::scope(|scope| {
        for _ in 0..threads {
            scope.spawn(|| {
                while let Some((stratum, seed, with_oracle)) = todo.get(next.fetch_add(1, Ordering::Relaxed))
                {
                    let record = Record::of(&Job::drawn(*stratum, *seed), plan, *with_oracle);
                    records
                        .lock()
                        .expect("no thread panics while it holds this")
                        .push(record);
                }
            });
        }
    });
    let mut records = records.into_inner().expect("all threads are done");
    records.sort_by_key(|r| (r.stratum, r.seed));
    records
}
