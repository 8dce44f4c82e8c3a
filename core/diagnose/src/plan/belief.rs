//! What is believed after some tests: the states still possible, how near that is to an end, and what a test would tell.

use super::problem::{Problem, Ready};
use super::table::{Group, Table, surprise};

/// A state less likely than this, beside the others, is forgotten.
const FORGOTTEN: f64 = 1e-3;
/// A problem laid out for many sums: states of one group side by side, outcomes in blocks.
///
/// A group is what a test has to tell apart: the states that one decision is right for. Where several are, the one that is
/// right most often counts, since it does not matter which other thing is wrong, too.
pub(super) struct Numbers {
    pub problem: Problem,
    /// The states in the order of their groups.
    order: Vec<usize>,
    /// The group of each state of `order`.
    group: Vec<usize>,
    groups: usize,
    /// The class of each state of `order`: same decisions right, same answer to whether it explains the complaint.
    class: Vec<usize>,
    /// For each class its decisions and whether it explains.
    classes: Vec<(Vec<usize>, bool)>,
    decisions: usize,
    tables: Vec<Table>,
}

/// The states still possible, by their places in the order of groups, and their probabilities.
#[derive(Debug, Clone)]
pub(super) struct Belief {
    states: Vec<(usize, f64)>,
    pub ready: Ready,
}

/// How near a belief is to an end.
#[derive(Debug, Clone, Copy)]
pub(super) struct Stand {
    /// The stop rule is met.
    pub ended: bool,
    /// What the best decision is worth: the probability that it is right, taken in part where it does not explain the complaint.
    pub best: f64,
    /// What is open about the decision, bit.
    pub open: f64,
}

impl Belief {
    /// How many states are still possible.
    pub fn size(&self) -> usize {
        self.states.len()
    }
}

impl Numbers {
    pub fn new(problem: Problem) -> Self {
        let mut classes: Vec<(Vec<usize>, bool)> = Vec::new();
        let of_state: Vec<usize> = problem
            .states
            .iter()
            .map(|state| {
                let mut right = state.right.clone();
                right.sort_unstable();
                let own = (right, state.explains);
                classes.iter().position(|c| *c == own).unwrap_or_else(|| {
                    classes.push(own);
                    classes.len() - 1
                })
            })
            .collect();
        let decisions = classes.iter().flat_map(|c| &c.0).max().map_or(0, |d| d + 1);
        let mut often = vec![0.0; decisions];
        for state in &problem.states {
            state.right.iter().for_each(|d| often[*d] += state.p);
        }
        let mut groups: Vec<(Option<usize>, bool)> = Vec::new();
        let group_of: Vec<usize> = problem
            .states
            .iter()
            .map(|state| {
                let most = state
                    .right
                    .iter()
                    .copied()
                    .max_by(|a, b| often[*a].total_cmp(&often[*b]).then(b.cmp(a)));
                let own = (most, state.explains);
                groups.iter().position(|g| *g == own).unwrap_or_else(|| {
                    groups.push(own);
                    groups.len() - 1
                })
            })
            .collect();
        let mut order: Vec<usize> = (0..problem.states.len()).collect();
        order.sort_by_key(|s| group_of[*s]);
        Self {
            class: order.iter().map(|s| of_state[*s]).collect(),
            group: order.iter().map(|s| group_of[*s]).collect(),
            groups: groups.len(),
            decisions,
            classes,
            tables: problem
                .tests
                .iter()
                .map(|t| Table::new(&t.chances, &order))
                .collect(),
            order,
            problem,
        }
    }

    /// What is believed at first.
    pub fn prior(&self) -> Belief {
        let p = |at: usize| self.problem.states[self.order[at]].p;
        let total: f64 = (0..self.order.len()).map(p).sum();
        let possible = (0..self.order.len()).filter(|at| p(*at) > 0.0);
        Belief {
            states: possible.map(|at| (at, p(at) / total)).collect(),
            ready: self.problem.ready,
        }
    }

    pub fn stand(&self, belief: &Belief) -> Stand {
        let mut of_class = vec![0.0; self.classes.len()];
        let mut of_group = vec![0.0; self.groups];
        for (state, p) in &belief.states {
            of_class[self.class[*state]] += p;
            of_group[self.group[*state]] += p;
        }
        let mut right = vec![(0.0, 0.0); self.decisions];
        for ((decisions, explains), p) in self.classes.iter().zip(&of_class).filter(|(_, p)| **p > 0.0) {
            for decision in decisions {
                right[*decision].0 += p;
                right[*decision].1 += if *explains { *p } else { 0.0 };
            }
        }
        let worth =
            |(p, explained): &(f64, f64)| explained + self.problem.unexplained_worth * (p - explained);
        let ended = right
            .iter()
            .any(|(p, explained)| *p >= self.problem.enough && *explained >= self.problem.explained * p);
        Stand {
            ended,
            best: right.iter().map(worth).fold(0.0, f64::max),
            open: of_group.into_iter().map(surprise).sum(),
        }
    }

    /// What giving up is expected to cost, min.
    pub fn give_up(&self, stand: &Stand) -> f64 {
        self.problem.undecided_minutes + self.problem.wrong_minutes * (1.0 - stand.best)
    }

    /// What is expected to be spent less when a test is done and then it is given up, or ended, min; its own minutes counted.
    pub fn gain(&self, belief: &Belief, stand: &Stand, test: usize) -> f64 {
        let then = |(chance, after): (f64, Belief)| {
            let stand = self.stand(&after);
            chance * if stand.ended { 0.0 } else { self.give_up(&stand) }
        };
        let after: f64 = self.after(belief, test).into_iter().map(then).sum();
        self.give_up(stand) - after - self.minutes(belief, test)
    }

    pub fn minutes(&self, belief: &Belief, test: usize) -> f64 {
        self.problem.minutes(belief.ready, &self.problem.tests[test])
    }

    /// What each of some tests is expected to tell about the decision, bit: the mutual information of outcome and group.
    pub fn bits(&self, belief: &Belief, tests: &[usize]) -> Vec<f64> {
        let groups = Group::all(&belief.states, |a, b| self.group[a] == self.group[b]);
        let mut room = Vec::new();
        let bits = |test: &usize| self.tables[*test].told_of(&groups, &mut room);
        tests.iter().map(bits).collect()
    }

    /// What is believed after each outcome of a test, with the outcome's chance.
    pub fn after(&self, belief: &Belief, test: usize) -> Vec<(f64, Belief)> {
        let ready = belief.ready.after(&self.problem.tests[test]);
        let table = &self.tables[test];
        let after = |outcome: usize| {
            let joint = |(state, p): &(usize, f64)| (*state, p * table.chance(*state, outcome));
            let mut states: Vec<(usize, f64)> = belief.states.iter().map(joint).collect();
            let chance: f64 = states.iter().map(|(_, joint)| joint).sum();
            states.retain(|(_, joint)| *joint > FORGOTTEN * chance);
            let kept: f64 = states.iter().map(|(_, joint)| joint).sum();
            states.iter_mut().for_each(|(_, p)| *p /= kept);
            (chance, Belief { states, ready })
        };
        (0..self.problem.tests[test].chances.len())
            .map(after)
            .filter(|(chance, _)| *chance > 0.0)
            .collect()
    }
}
