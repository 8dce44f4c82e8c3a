//! What is believed after some tests: the states still possible, how near that is to an end, and what a test would tell.

use super::problem::{Problem, Ready};
use super::table::{Group, Table, surprise};

/// A state less likely than this is not followed further: it only counts.
const NOT_FOLLOWED: f64 = 1e-3;
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
    /// For each class its decisions, whether it explains, and its group.
    classes: Vec<Class>,
    decisions: usize,
    tables: Vec<Table>,
    /// Probability of the states that only count, by class.
    aside: Vec<f64>,
}

/// States that ask for the same.
#[derive(Debug)]
struct Class {
    right: Vec<usize>,
    explains: bool,
    group: usize,
}

/// The states still followed, by their places in the order of groups, with their probabilities, and those that only count.
#[derive(Debug, Clone)]
pub(super) struct Belief {
    states: Vec<(usize, f64)>,
    /// By class.
    aside: Vec<f64>,
    pub ready: Ready,
}

/// How near a belief is to an end.
#[derive(Debug, Clone, Copy)]
pub(super) struct Stand {
    /// The stop rule is met.
    pub ended: bool,
    /// One decision is sure enough, whether or not it explains the complaint.
    pub found: bool,
    /// What the best decision is worth: the probability that it is right, taken in part where it does not explain the complaint.
    pub best: f64,
    /// What is open about the decision, bit.
    pub open: f64,
}

impl Belief {
    /// Probability of everything that is still counted.
    #[cfg(test)]
    pub fn counted(&self) -> f64 {
        self.states.iter().map(|(_, p)| p).chain(&self.aside).sum()
    }

    /// How many states are still followed.
    pub fn size(&self) -> usize {
        self.states.len()
    }
}

impl Numbers {
    pub fn new(problem: Problem) -> Self {
        let counted = || problem.states.iter().chain(&problem.aside);
        let decisions = counted().flat_map(|s| &s.right).max().map_or(0, |d| d + 1);
        let mut often = vec![0.0; decisions];
        for state in counted() {
            state.right.iter().for_each(|d| often[*d] += state.p);
        }
        let mut groups: Vec<(Option<usize>, bool)> = Vec::new();
        let mut group_of = |right: &[usize], explains: bool| {
            let often = |a: &usize, b: &usize| often[*a].total_cmp(&often[*b]).then(b.cmp(a));
            let own = (right.iter().copied().max_by(often), explains);
            groups.iter().position(|g| *g == own).unwrap_or_else(|| {
                groups.push(own);
                groups.len() - 1
            })
        };
        let mut classes: Vec<Class> = Vec::new();
        let class_of: Vec<usize> = counted()
            .map(|state| {
                let mut right = state.right.clone();
                right.sort_unstable();
                let same = |c: &Class| c.right == right && c.explains == state.explains;
                classes.iter().position(same).unwrap_or_else(|| {
                    classes.push(Class {
                        group: group_of(&right, state.explains),
                        explains: state.explains,
                        right,
                    });
                    classes.len() - 1
                })
            })
            .collect();
        let group = |state: &usize| classes[class_of[*state]].group;
        let mut order: Vec<usize> = (0..problem.states.len()).collect();
        order.sort_by_key(group);
        let mut aside = vec![0.0; classes.len()];
        for (state, class) in problem.aside.iter().zip(&class_of[problem.states.len()..]) {
            aside[*class] += state.p;
        }
        Self {
            class: order.iter().map(|s| class_of[*s]).collect(),
            group: order.iter().map(group).collect(),
            groups: groups.len(),
            decisions,
            classes,
            tables: problem
                .tests
                .iter()
                .map(|t| Table::new(&t.chances, &order))
                .collect(),
            aside,
            order,
            problem,
        }
    }

    /// What is believed at first.
    pub fn prior(&self) -> Belief {
        let p = |at: usize| self.problem.states[self.order[at]].p;
        let possible = (0..self.order.len()).filter(|at| p(*at) > 0.0);
        Belief {
            states: possible.map(|at| (at, p(at))).collect(),
            aside: self.aside.clone(),
            ready: self.problem.ready,
        }
    }

    pub fn stand(&self, belief: &Belief) -> Stand {
        let mut of_class = belief.aside.clone();
        for (state, p) in &belief.states {
            of_class[self.class[*state]] += p;
        }
        let mut of_group = vec![0.0; self.groups];
        let mut right = vec![(0.0, 0.0); self.decisions];
        for (class, p) in self.classes.iter().zip(&of_class).filter(|(_, p)| **p > 0.0) {
            of_group[class.group] += p;
            for decision in &class.right {
                right[*decision].0 += p;
                right[*decision].1 += if class.explains { *p } else { 0.0 };
            }
        }
        let worth =
            |(p, explained): &(f64, f64)| explained + self.problem.unexplained_worth * (p - explained);
        let ended = right
            .iter()
            .any(|(p, explained)| *p >= self.problem.enough && *explained >= self.problem.explained * p);
        Stand {
            ended,
            found: right.iter().any(|(p, _)| *p >= self.problem.enough),
            best: right.iter().map(worth).fold(0.0, f64::max),
            open: of_group.into_iter().map(surprise).sum(),
        }
    }

    /// What giving up is expected to cost, min. What is sure and does not explain the complaint is a finding, too.
    pub fn give_up(&self, stand: &Stand) -> f64 {
        let undecided = if stand.found {
            0.0
        } else {
            self.problem.undecided_minutes
        };
        undecided + self.problem.wrong_minutes * (1.0 - stand.best)
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
        let ready = self.problem.after(belief.ready, &self.problem.tests[test]);
        let table = &self.tables[test];
        let followed: f64 = belief.states.iter().map(|(_, p)| p).sum();
        let after = |outcome: usize| {
            let joint = |(state, p): &(usize, f64)| (*state, p * table.chance(*state, outcome));
            let mut states: Vec<(usize, f64)> = belief.states.iter().map(joint).collect();
            let chance = states.iter().map(|(_, joint)| joint).sum::<f64>() / followed;
            let mut aside = belief.aside.clone();
            states.retain_mut(|(state, p)| {
                *p /= chance;
                let follow = *p > NOT_FOLLOWED;
                if !follow && *p > 0.0 {
                    aside[self.class[*state]] += *p;
                }
                follow
            });
            (chance, Belief { states, aside, ready })
        };
        (0..self.problem.tests[test].chances.len())
            .map(after)
            .filter(|(chance, _)| *chance > 0.0)
            .collect()
    }
}
