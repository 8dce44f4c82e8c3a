//! How things stand as a [`Problem`]: the states that count, the tests left, and what each can show.

use std::cell::OnceCell;

use super::belief::{Belief, Numbers, Stand};
use super::chances::Imagined;
use super::in_play::{InPlay, in_play};
use super::kinds::Sorted;
use super::order::data;
use super::outcomes::Outcomes;
use super::problem::{Problem, Ready, State, Trial};
use super::search::{Choice, best};
use crate::finding::{Reasoned, SURELY_EXPLAINED};
use crate::inference::{Observation, Seen};
use crate::{Catalogue, EngineNeed, EngineState, TestId, TestSpec};

/// States that are followed at most.
const STATES: usize = 90;
/// A test that tells less, bit, can no longer change what to do.
pub(super) const CHANGES_NOTHING: f64 = 0.008;
/// Ways whose chances differ by no more are one state.
const ALIKE: f64 = 0.1;

/// The search as it stands, in numbers, with what the numbers stand for.
pub(crate) struct Outlook {
    /// The tests left, in the order of the problem's.
    pub(super) specs: Vec<TestSpec>,
    numbers: Numbers,
    prior: Belief,
    stand: Stand,
    /// For each state the faults of its likeliest cause, as numbers in the model.
    pub(super) states: Vec<Vec<usize>>,
    /// For each test a reading that stands for each outcome.
    pub(super) outcomes: Vec<Vec<Observation>>,
    choice: OnceCell<Option<Choice>>,
}

impl Outlook {
    /// From what follows from the readings. Tests that can show nothing are left out.
    pub fn new(reasoned: &Reasoned<'_>) -> Self {
        let model = &reasoned.model;
        let (circuit, situation) = (model.layout.circuit, model.situation);
        let specs = Catalogue::standard().tests_for(circuit, situation);
        let ready = ready(reasoned, &specs);
        let in_play = in_play(reasoned);
        let sorted = Sorted::new(model, &in_play);
        let (mut left, mut imagined) = (Vec::new(), Vec::new());
        for spec in specs.into_iter().filter(|spec| reasoned.can_be_next(&spec.id)) {
            let outcomes = Outcomes::of(model, &in_play, &sorted, &spec.id);
            let of_test = Imagined::new(model, &in_play, &sorted, &outcomes);
            if let Some(of_test) = of_test.filter(|i| i.outcomes.len() > 1) {
                left.push(spec);
                imagined.push(of_test);
            }
        }
        let mut states = put_together(&in_play, &imagined);
        let rest = states.split_off(STATES.min(states.len()));
        let p = |way: &usize| in_play.ways[*way].p;
        let weight = |members: &[usize]| members.iter().map(p).sum::<f64>();
        let state = |members: &Vec<usize>| {
            let first = &in_play.ways[members[0]];
            State {
                p: weight(members),
                right: in_play.causes[first.cause].right.clone(),
                explains: first.explains,
            }
        };
        let trial = |(spec, of_test): (&TestSpec, &Imagined)| {
            let kinds = &of_test.kinds;
            let mean = |row: &[f64], members: &[usize]| {
                let kind = kinds[members[0]];
                if members.iter().all(|way| kinds[*way] == kind) {
                    return row[kind];
                }
                let sum: f64 = members.iter().map(|way| p(way) * row[kinds[*way]]).sum();
                sum / weight(members)
            };
            let row = |row: &Vec<f64>| states.iter().map(|m| mean(row, m)).collect();
            trial(spec, of_test.chances.iter().map(row).collect())
        };
        let problem = Problem {
            states: states.iter().map(state).collect(),
            aside: rest.iter().map(state).collect(),
            tests: left.iter().zip(&imagined).map(trial).collect(),
            ready,
            engine_minutes: data().change_minutes.engine,
            connector_minutes: data().change_minutes.connector,
            heat_minutes: data().change_minutes.heat,
            cools_minutes: data().cools_minutes,
            enough: situation.confidence,
            explained: SURELY_EXPLAINED,
            unexplained_worth: data().unexplained_worth,
            wrong_minutes: data().wrong_trial_minutes,
            undecided_minutes: data().undecided_minutes,
        };
        let numbers = Numbers::new(problem);
        let prior = numbers.prior();
        Self {
            specs: left,
            stand: numbers.stand(&prior),
            prior,
            numbers,
            states: states
                .iter()
                .map(|members| {
                    let first = in_play.ways[members[0]].cause;
                    in_play.causes[first].cause.faults.clone()
                })
                .collect(),
            outcomes: imagined.into_iter().map(|i| i.outcomes).collect(),
            choice: OnceCell::new(),
        }
    }

    /// The problem that has to be solved.
    pub(super) fn problem(&self) -> &Problem {
        &self.numbers.problem
    }

    /// What a test tells about what to do, bit.
    pub fn bits(&self, test: &TestId) -> f64 {
        let number = self.specs.iter().position(|s| s.id == *test);
        number.map_or(0.0, |number| self.tells(number))
    }

    fn tells(&self, test: usize) -> f64 {
        self.numbers.bits(&self.prior, &[test]).iter().sum()
    }

    /// What is open about what to do, bit.
    pub fn open_bits(&self) -> f64 {
        self.stand.open.max(f64::MIN_POSITIVE)
    }

    /// Minutes of a test, getting the car ready for it included.
    pub fn minutes(&self, ready: Ready, spec: &TestSpec) -> f64 {
        self.problem().minutes(ready, &trial(spec, Vec::new()))
    }

    /// The best of the tests that can still change what to do; none where going on costs more than it is expected to save.
    pub fn choice(&self) -> Option<&Choice> {
        let choose = || {
            let all: Vec<usize> = (0..self.specs.len()).collect();
            best(&self.numbers, &self.prior, &self.stand, &all, CHANGES_NOTHING)
        };
        self.choice.get_or_init(choose).as_ref()
    }

    /// Whether any of some tests can still change what to do.
    pub fn can_change(&self, of: impl Fn(&TestId) -> bool) -> bool {
        let counts = |test: usize| of(&self.specs[test].id);
        let gains = |test| {
            self.numbers.gain(&self.prior, &self.stand, test) > 0.0 && self.tells(test) >= CHANGES_NOTHING
        };
        (0..self.specs.len()).any(|test| counts(test) && gains(test))
            || self.choice().is_some_and(|choice| counts(choice.test))
    }
}

fn trial(spec: &TestSpec, chances: Vec<Vec<f64>>) -> Trial {
    Trial {
        minutes: spec.minutes,
        running: runs(spec.needs.engine),
        connected: spec.needs.connected,
        at_hot_parts: spec.needs.at_hot_parts,
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

/// The state that the last tests left the car in; before the first the engine stands, as hot as was said, and the connector is
/// plugged in.
pub(super) fn ready(reasoned: &Reasoned<'_>, specs: &[TestSpec]) -> Ready {
    let cools = data().cools_minutes;
    let stopped = reasoned.model.situation.engine.stopped_min;
    let mut ready = Ready {
        running: false,
        connected: true,
        hot_minutes: stopped.map_or(0.0, |minutes| (cools - minutes).max(0.0)),
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
        ready.hot_minutes = if ready.running {
            cools
        } else if spec.needs.at_hot_parts {
            0.0
        } else if observation.hot {
            cools
        } else {
            (ready.hot_minutes - spec.minutes).max(0.0)
        };
    }
    ready
}

/// Puts ways together that ask for the same and show nearly the same in all tests, and the unlikely ones with the nearest that
/// ask for the same; the likeliest first.
fn put_together(in_play: &InPlay<'_>, tests: &[Imagined]) -> Vec<Vec<usize>> {
    let p = |way: usize| in_play.ways[way].p;
    let asks = |way: usize| {
        let way = &in_play.ways[way];
        (&in_play.causes[way.cause].right, way.explains)
    };
    // By how much the chance of any outcome differs at most, unless that is more than `most`.
    let apart = |a: usize, b: usize, most: f64| {
        let so_far = |so_far: f64, test: &Imagined| {
            let apart = so_far.max(test.apart(a, b));
            (apart <= most).then_some(apart)
        };
        tests.iter().try_fold(0.0, so_far)
    };
    let mut order: Vec<usize> = (0..in_play.ways.len()).filter(|way| p(*way) > 0.0).collect();
    order.sort_by(|a, b| p(*b).total_cmp(&p(*a)));
    let mut groups: Vec<Vec<usize>> = Vec::new();
    for way in order {
        let is_full = groups.len() >= STATES;
        let (mut nearest, mut most) = (None, if is_full { f64::INFINITY } else { ALIKE });
        for (number, group) in groups.iter().enumerate().filter(|(_, g)| asks(g[0]) == asks(way)) {
            if let Some(apart) = apart(group[0], way, most) {
                (nearest, most) = (Some(number), apart);
                // Where there are states enough the nearest has to do, before that the first that is near.
                if !is_full {
                    break;
                }
            }
        }
        match nearest {
            Some(number) => groups[number].push(way),
            None => groups.push(vec![way]),
        }
    }
    let weight = |g: &[usize]| g.iter().map(|way| p(*way)).sum::<f64>();
    groups.sort_by(|a, b| weight(b).total_cmp(&weight(a)));
    groups
}
