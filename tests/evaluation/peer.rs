//! The reasoning beside a general-purpose library for probabilistic networks, and beside exact optima.

use holdfast_diagnose::TestId;

use crate::compared::compare;
use crate::draw::Draw;
use crate::exact::problems;
use crate::jobs::{Job, Stratum};
use crate::network::{Network, Plain, Seen};
use crate::small::MostDoubtAMinute;
use crate::tables::network;

/// Tests of the network that is compared.
const TESTS: [&str; 14] = [
    "look",
    "delivered",
    "source",
    "hold:branch",
    "hold:front_mount",
    "hold:rear_mount",
    "hold:inlet",
    "flow:front_hose",
    "supply-loaded",
    "coil",
    "control-pin",
    "control-wire",
    "valve-on",
    "idle-quality",
];
const QUESTIONS: usize = 200;

/// Prints both comparisons.
///
/// A network that can't be compared ends the bench: figures beside no peer say nothing.
pub fn print() {
    let job = (0..)
        .map(|seed| Job::drawn(Stratum::Natural, seed))
        .find(|job| job.scene.circuit.template == "two-mounts-one-valve");
    let tests: Vec<TestId> = TESTS.iter().filter_map(|t| t.parse().ok()).collect();
    let network = network(&job.expect("most jobs have two mounts"), &tests);
    let seen = questions(&network);
    // The enumeration is this package's own until the core's takes a network from outside.
    let c = compare(&Plain, &network, &seen).unwrap_or_else(|why| panic!("pgmpy: {why}"));
    println!(
        "posterior over {} causes after {} sets of findings: at most {:.1e} from pgmpy's (promised 1e-9); {:.1} µs \
         instead of {:.0} µs a question, {:.0} times faster (promised 100)",
        network.causes.len(),
        c.questions,
        c.apart,
        c.ours * 1e6,
        c.theirs * 1e6,
        c.theirs / c.ours
    );
    let small = problems(200);
    let best: f64 = small.iter().map(crate::small::SmallProblem::optimum).sum();
    let greedy: f64 = small.iter().map(|p| p.with(&MostDoubtAMinute)).sum();
    println!(
        "small problems: exact optimum {:.2} min, most doubt a minute {:.1} % above it (promised for the core's plan: 5 %)",
        best / small.len() as f64,
        100.0 * (greedy / best - 1.0)
    );
}

/// Findings as cases would give them: a cause by its probability, some of the tests, outcomes by theirs.
fn questions(network: &Network) -> Vec<Seen> {
    let mut d = Draw::of(5, "questions");
    let one = |_| {
        let cause = d.by_weight(network.causes.iter().map(|c| c.p));
        let mut seen = Vec::new();
        for (number, test) in network.tests.iter().enumerate() {
            if d.happens(0.5) {
                seen.push((number, d.by_weight(test.p[cause].iter().copied())));
            }
        }
        seen
    };
    (0..QUESTIONS).map(one).collect()
}
