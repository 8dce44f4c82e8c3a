//! How things stand as a [`Problem`]: the states that count, the tests left, and what each can show.

use std::cell::OnceCell;

use super::belief::Numbers;
use super::chances::Imagined;
use super::in_play::in_play;
use super::order::data;
use super::outcomes::Outcomes;
use super::problem::{Problem, Ready, State, Trial};
use super::search::{Choice, choices};
use crate::finding::{Reasoned, SURELY_EXPLAINED};
use crate::inference::{Observation, Seen};
use crate::{Catalogue, EngineNeed, EngineState, TestId, TestSpec};

/// States that are kept at most.
const STATES: usize = 90;
/// A test that tells less, bit, can no longer change what to do.
pub(super) const CHANGES_NOTHING: f64 = 0.008;
/// Probability of the causes in play from which on the rest counts against every decision.
const NEARLY_ALL: f64 = 0.98;
/// Nothing has to be surer for that.
const SUREST: f64 = 0.99;
/// Ways whose chances differ by no more are one state.
const ALIKE: f64 = 0.1;

/// The search as it stands, in numbers, with what the numbers stand for.
pub(crate) struct Outlook {
    /// The tests left, in the order of the problem's.
    pub(super) specs: Vec<TestSpec>,
    pub(super) problem: Problem,
    /// For each state the faults of its likeliest cause, as numbers in the model.
    pub(super) states: Vec<Vec<usize>>,
    /// For each test a reading that stands for each outcome.
    pub(super) outcomes: Vec<Vec<Observation>>,
    choices: OnceCell<Vec<Choice>>,
}

impl Outlook {
    /// From what follows from the readings. Tests that can show nothing are left out.
    pub fn new(reasoned: &Reasoned<'_>) -> Self {
        let model = &reasoned.model;
        let (circuit, situation) = (model.layout.circuit, model.situation);
        let specs = Catalogue::standard().tests_for(circuit, situation);
        let ready = ready(reasoned, &specs);
        let causes = in_play(reasoned);
        let ways: Vec<(usize, usize)> = causes
            .iter()
            .enumerate()
            .flat_map(|(c, cause)| (0..cause.ways.len()).map(move |w| (c, w)))
            .collect();
        let total: f64 = causes.iter().map(|c| c.cause.p).sum();
        let p: Vec<f64> = ways
            .iter()
            .map(|(c, w)| causes[*c].cause.p / total * causes[*c].ways[*w].way.weight)
            .collect();
        let mut left = Vec::new();
        let (mut tables, mut outcomes) = (Vec::new(), Vec::new());
        for spec in specs
            .into_iter()
            .filter(|spec| !reasoned.tests.contains(&spec.id))
        {
            let of_test = Outcomes::of(model, &causes, &spec.id);
            let Some(imagined) = Imagined::new(model, &causes, &p, &of_test) else {
                continue;
            };
            if imagined.outcomes.len() > 1 {
                left.push(spec);
                tables.push(imagined.chances);
                outcomes.push(imagined.outcomes);
            }
        }
        let members = put_together(&p, &tables, |i| {
            let (c, w) = ways[i];
            (&causes[c].right, causes[c].ways[w].explains)
        });
        let states: Vec<(usize, usize)> = members.iter().map(|m| ways[m[0]]).collect();
        let weight = |members: &[usize]| members.iter().map(|i| p[*i]).sum::<f64>();
        let kept: f64 = members.iter().map(|m| weight(m)).sum();
        let problem = Problem {
            states: members
                .iter()
                .zip(&states)
                .map(|(members, (c, w))| State {
                    p: weight(members) / kept,
                    right: causes[*c].right.clone(),
                    explains: causes[*c].ways[*w].explains,
                })
                .collect(),
            tests: left
                .iter()
                .zip(&tables)
                .map(|(spec, table)| {
                    let mean =
                        |row: &[f64], m: &[usize]| m.iter().map(|i| p[*i] * row[*i]).sum::<f64>() / weight(m);
                    let row = |row: &Vec<f64>| members.iter().map(|m| mean(row, m)).collect();
                    trial(spec, table.iter().map(row).collect())
                })
                .collect(),
            ready,
            engine_minutes: data().change_minutes.engine,
            connector_minutes: data().change_minutes.connector,
            enough: if total >= NEARLY_ALL {
                // What is left out is for none of the decisions.
                (situation.confidence / total).min(situation.confidence.max(SUREST))
            } else {
                situation.confidence
            },
            explained: SURELY_EXPLAINED,
            wrong_minutes: data().wrong_trial_minutes,
            undecided_minutes: data().undecided_minutes,
        };
        Self {
            specs: left,
            problem,
            states: states
                .iter()
                .map(|(c, _)| causes[*c].cause.faults.clone())
                .collect(),
            outcomes,
            choices: OnceCell::new(),
        }
    }

    /// What a test tells about what to do, bit.
    pub fn bits(&self, test: &TestId) -> f64 {
        let numbers = Numbers::new(&self.problem);
        let belief = numbers.prior();
        let number = self.specs.iter().position(|s| s.id == *test);
        number.map_or(0.0, |n| numbers.bits(&belief, &numbers.stand(&belief), n))
    }

    /// What is open about what to do, bit.
    pub fn open_bits(&self) -> f64 {
        let numbers = Numbers::new(&self.problem);
        numbers.stand(&numbers.prior()).open.max(f64::MIN_POSITIVE)
    }

    /// Minutes of a test, getting the car ready for it included.
    pub fn minutes(&self, ready: Ready, spec: &TestSpec) -> f64 {
        self.problem.minutes(ready, &trial(spec, Vec::new()))
    }

    /// The tests that can still change what to do, the best first; none where going on costs more than it is expected to
    /// save.
    pub fn choices(&self) -> &[Choice] {
        self.choices.get_or_init(|| {
            let numbers = Numbers::new(&self.problem);
            let prior = numbers.prior();
            let all: Vec<usize> = (0..self.specs.len()).collect();
            let mut choices = choices(&numbers, &prior, &numbers.stand(&prior), &all);
            let give_up = numbers.give_up(&numbers.stand(&prior));
            choices.retain(|c| c.bits >= CHANGES_NOTHING && c.expected() < give_up);
            choices
        })
    }

    /// Whether any test can still change what to do.
    pub fn can_change(&self) -> bool {
        let numbers = Numbers::new(&self.problem);
        let prior = numbers.prior();
        let stand = numbers.stand(&prior);
        let gains = |test| {
            numbers.gain(&prior, &stand, test) > 0.0 && numbers.bits(&prior, &stand, test) >= CHANGES_NOTHING
        };
        (0..self.specs.len()).any(gains) || !self.choices().is_empty()
    }
}

fn trial(spec: &TestSpec, chances: Vec<Vec<f64>>) -> Trial {
    Trial {
        minutes: spec.minutes,
        running: runs(spec.needs.engine),
        connected: spec.needs.connected,
        chances,
    }
}

/// Whether the engine must run.
fn runs(need: EngineNeed) -> Option<bool> {
    match need {
        EngineNeed::Any => None,
        EngineNeed::Off | EngineNeed::KeyOn => Some(false),
        EngineNeed::Idle | EngineNeed::InGear => Some(true),
    }
}

/// The state that the last tests left the car in; before the first the engine stands and the connector is plugged in.
pub(super) fn ready(reasoned: &Reasoned<'_>, specs: &[TestSpec]) -> Ready {
    let mut ready = Ready {
        running: false,
        connected: true,
    };
    for observation in reasoned.observations.iter().filter(|o| o.seen != Seen::Complaint) {
        let Some(spec) = specs.iter().find(|s| s.id == observation.test) else {
            continue;
        };
        if runs(spec.needs.engine).is_some() {
            ready.running = observation.engine != EngineState::Off;
        }
        ready.connected = observation
            .connected
            .or(spec.needs.connected)
            .unwrap_or(ready.connected);
    }
    ready
}

/// Puts ways together that ask for the same and show nearly the same in all tests; the likeliest [`STATES`] are kept.
fn put_together<'c>(
    p: &[f64],
    tables: &[Vec<Vec<f64>>],
    class: impl Fn(usize) -> (&'c Vec<usize>, bool),
) -> Vec<Vec<usize>> {
    let rows = || tables.iter().flatten();
    let alike = |a: usize, b: usize| rows().all(|row| (row[a] - row[b]).abs() <= ALIKE);
    let mut order: Vec<usize> = (0..p.len()).filter(|i| p[*i] > 0.0).collect();
    order.sort_by(|a, b| p[*b].total_cmp(&p[*a]));
    let mut groups: Vec<Vec<usize>> = Vec::new();
    for i in order {
        let group = groups
            .iter_mut()
            .find(|g| class(g[0]) == class(i) && alike(g[0], i));
        match group {
            Some(group) => group.push(i),
            None => groups.push(vec![i]),
        }
    }
    let weight = |g: &[usize]| g.iter().map(|i| p[*i]).sum::<f64>();
    groups.sort_by(|a, b| weight(b).total_cmp(&weight(a)));
    groups.truncate(STATES);
    groups
}
