//! The core beside others in the same run: its posterior beside a general-purpose library's on the same network, its
//! choice of tests beside the exact optimum on problems cut out of that network.

use std::collections::BTreeMap;
use std::time::Instant;

use holdfast_diagnose::{
    Circuit, CircuitChoice, Network, Problem, Ready, Situation, State, Trial, discretised, plan_small,
};
use serde_json::{Value, json};

use crate::draw::Draw;
use crate::peer::Peer;

/// Sets of outcomes that both are asked about.
const QUESTIONS: usize = 100;
/// Times that the core answers each, since one answer is too quick for the clock.
const TIMES: usize = 200;
/// Problems that are cut out, their causes and their tests.
const PROBLEMS: usize = 100;
const CAUSES: usize = 5;
const TESTS: usize = 5;

fn network(template: &str) -> Network {
    let circuit = Circuit::build(&CircuitChoice::Template(template.into())).expect("a template of the core");
    discretised(&circuit, &Situation::default())
}

/// Prints both comparisons.
pub fn print() {
    for template in ["two-mounts-one-valve", "four-mounts"] {
        beside_library(template);
    }
    beside_optimum("two-mounts-one-valve");
}

fn beside_library(template: &str) {
    let network = network(template);
    let Some(mut peer) = Peer::start("posterior.py") else {
        println!(
            "  {template}: pgmpy was not fetched, so nothing is compared (cargo xtask bench fetches it)"
        );
        return;
    };
    let said = json!({"causes": network.causes, "tests": network.tests});
    peer.tell(&said.to_string());
    let (mut apart, mut ours, mut theirs) = (0.0f64, Vec::new(), Vec::new());
    for question in 0..QUESTIONS {
        let mut draw = Draw::of(question as u64, "outcomes");
        let outcomes = outcomes(&network, &mut draw);
        let start = Instant::now();
        for _ in 0..TIMES {
            std::hint::black_box(network.posterior(std::hint::black_box(&outcomes)));
        }
        ours.push(start.elapsed().as_secs_f64() / TIMES as f64);
        let answer: Value =
            serde_json::from_str(&peer.ask(&json!(outcomes).to_string())).expect("the peer answers in JSON");
        theirs.push(answer["seconds"].as_f64().expect("how long it took"));
        let found = network.posterior(&outcomes);
        let posterior = answer["posterior"].as_array().expect("a posterior");
        assert_eq!(found.len(), posterior.len(), "as many causes");
        for (a, b) in found.iter().zip(posterior) {
            apart = apart.max((a - b.as_f64().expect("a probability")).abs());
        }
    }
    let (ours, theirs) = (median(ours), median(theirs));
    println!(
        "  {template}: {} causes, {} tests, {QUESTIONS} sets of outcomes: at most {apart:.1e} apart from pgmpy (wanted 1e-9), {:.0} times faster (wanted 100; {:.1} µs, {:.2} ms)",
        network.causes.len(),
        network.tests.len(),
        theirs / ours,
        1e6 * ours,
        1e3 * theirs
    );
}

/// One to six tests with outcomes that one and the same cause can show.
fn outcomes(network: &Network, draw: &mut Draw) -> Vec<(usize, usize)> {
    let cause = draw.by_weight(network.causes.iter().map(|(_, p)| *p));
    let mut tests: Vec<usize> = Vec::new();
    for _ in 0..=draw.by_weight([1.0; 6]) {
        let test = draw.by_weight(vec![1.0; network.tests.len()]);
        if !tests.contains(&test) {
            tests.push(test);
        }
    }
    tests
        .into_iter()
        .map(|t| {
            (
                t,
                draw.by_weight(network.tests[t].chances.iter().map(|row| row[cause])),
            )
        })
        .collect()
}

fn beside_optimum(template: &str) {
    let network = network(template);
    let (mut over, mut worst) = (0.0, 0.0f64);
    for number in 0..PROBLEMS {
        let problem = cut(&network, &mut Draw::of(number as u64, "problem"));
        let prior: Vec<f64> = problem.states.iter().map(|s| s.p).collect();
        let all: Vec<usize> = (0..problem.tests.len()).collect();
        let least = spent(&problem, &prior, &all, problem.ready, &mut |_, _, _| None);
        let ours = spent(&problem, &prior, &all, problem.ready, &mut |p, left, ready| {
            Some(chosen(&problem, p, left, ready))
        });
        if least > 0.0 {
            over += ours / least - 1.0;
            worst = worst.max(ours / least - 1.0);
        }
    }
    println!(
        "  {PROBLEMS} problems of {CAUSES} causes and {TESTS} tests cut out of {template}: {:.2} % over the exact optimum (wanted 5), worst {:.1} %",
        100.0 * over / PROBLEMS as f64,
        100.0 * worst
    );
}

/// A few causes and tests of a network as a problem by itself; causes of the same parts ask for the same.
fn cut(network: &Network, draw: &mut Draw) -> Problem {
    let mut causes: Vec<usize> = Vec::new();
    while causes.len() < CAUSES {
        let cause = draw.by_weight(network.causes.iter().map(|(_, p)| *p));
        if !causes.contains(&cause) {
            causes.push(cause);
        }
    }
    let mut tests: Vec<usize> = Vec::new();
    while tests.len() < TESTS {
        let test = draw.by_weight(vec![1.0; network.tests.len()]);
        if !tests.contains(&test) {
            tests.push(test);
        }
    }
    let total: f64 = causes.iter().map(|c| network.causes[*c].1).sum();
    let mut decisions: BTreeMap<String, usize> = BTreeMap::new();
    let states = causes
        .iter()
        .map(|c| {
            let (name, p) = &network.causes[*c];
            let part = name.split(['/', '@']).next().unwrap_or_default().to_owned();
            let next = decisions.len();
            State {
                p: p / total,
                right: vec![*decisions.entry(part).or_insert(next)],
                explains: true,
            }
        })
        .collect();
    let trial = |t: &usize| Trial {
        minutes: network.tests[*t].minutes,
        running: None,
        connected: None,
        at_hot_parts: false,
        chances: network.tests[*t]
            .chances
            .iter()
            .map(|row| causes.iter().map(|c| row[*c]).collect())
            .collect(),
    };
    Problem {
        states,
        aside: Vec::new(),
        tests: tests.iter().map(trial).collect(),
        ready: Ready {
            running: false,
            connected: true,
            hot_minutes: 0.0,
        },
        engine_minutes: 0.5,
        connector_minutes: 0.5,
        heat_minutes: 0.5,
        cools_minutes: 20.0,
        enough: 0.95,
        explained: 0.5,
        unexplained_worth: 0.0,
        wrong_minutes: 240.0,
        undecided_minutes: 0.0,
    }
}

/// What the core does next; none: it stops.
fn chosen(problem: &Problem, p: &[f64], left: &[usize], ready: Ready) -> Option<usize> {
    let states = problem
        .states
        .iter()
        .zip(p)
        .map(|(s, p)| State { p: *p, ..s.clone() });
    let now = Problem {
        states: states.collect(),
        tests: left.iter().map(|t| problem.tests[*t].clone()).collect(),
        ready,
        ..problem.clone()
    };
    plan_small(&now).map(|choice| left[choice.test])
}

type Choose<'c> = &'c mut dyn FnMut(&[f64], &[usize], Ready) -> Option<Option<usize>>;

/// Expected minutes to the end, giving up included: as `choose` says, else the least there is over every order and outcome.
fn spent(problem: &Problem, p: &[f64], left: &[usize], ready: Ready, choose: Choose<'_>) -> f64 {
    let mut right: BTreeMap<usize, f64> = BTreeMap::new();
    for (state, p) in problem.states.iter().zip(p) {
        for decision in &state.right {
            *right.entry(*decision).or_default() += p;
        }
    }
    let best = right.values().copied().fold(0.0, f64::max);
    if best >= problem.enough {
        return 0.0;
    }
    let give_up = problem.wrong_minutes * (1.0 - best);
    let with = |test: usize, choose: Choose<'_>| {
        let others: Vec<usize> = left.iter().copied().filter(|t| *t != test).collect();
        let trial = &problem.tests[test];
        let then: f64 = trial
            .chances
            .iter()
            .map(|row| {
                let joint: Vec<f64> = p.iter().zip(row).map(|(p, c)| p * c).collect();
                let chance: f64 = joint.iter().sum();
                if chance <= 0.0 {
                    return 0.0;
                }
                let after: Vec<f64> = joint.iter().map(|j| j / chance).collect();
                chance * spent(problem, &after, &others, ready, choose)
            })
            .sum();
        problem.minutes(ready, trial) + then
    };
    match choose(p, left, ready) {
        Some(Some(test)) => with(test, choose),
        Some(None) => give_up,
        None => left
            .iter()
            .map(|test| with(*test, choose))
            .fold(give_up, f64::min),
    }
}

fn median(mut of: Vec<f64>) -> f64 {
    of.sort_by(f64::total_cmp);
    of[of.len() / 2]
}
