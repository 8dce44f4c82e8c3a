//! What is believed after some tests: the states still possible, how near that is to an end, and what a test would tell.

use super::problem::{Problem, Ready};

/// A state less likely than this, beside the others, is forgotten.
const FORGOTTEN: f64 = 1e-3;
/// Outcomes that are summed up side by side.
const LANES: usize = 4;

type Lanes = [f64; LANES];

/// A problem laid out for many sums: states of one group side by side, outcomes in blocks.
///
/// A group is what a test has to tell apart: the states that one decision is right for. Where several are, the one that is
/// right most often counts, since it does not matter which other thing is wrong, too.
pub(super) struct Numbers<'p> {
    pub problem: &'p Problem,
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
    /// For each test, for each block of outcomes, their chances in each state of `order`.
    chances: Vec<Vec<Vec<Lanes>>>,
}

/// The states still possible, by their places in the order of groups.
#[derive(Debug, Clone)]
pub(super) struct Belief {
    states: Vec<usize>,
    p: Vec<f64>,
    pub ready: Ready,
}

/// How near a belief is to an end.
#[derive(Debug, Clone, Copy)]
pub(super) struct Stand {
    /// The stop rule is met.
    pub ended: bool,
    /// Probability that the best decision is right, and explains the complaint.
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

/// log₂ of a positive number; its error is below 1e-5.
///
/// Source: exponent and mantissa, and the series of artanh for the mantissa, which is brought near 1.
fn log2(x: f64) -> f64 {
    const MANTISSA: u64 = (1 << 52) - 1;
    let bits = x.max(f64::MIN_POSITIVE).to_bits();
    let exponent = (bits >> 52) as i64 - 1_023;
    let mantissa = f64::from_bits(bits & MANTISSA | 1_023 << 52);
    let centred = mantissa * std::f64::consts::FRAC_1_SQRT_2;
    let t = (centred - 1.0) / (centred + 1.0);
    let t2 = t * t;
    let series = t * (2.0 + t2 * (2.0 / 3.0 + t2 * (2.0 / 5.0 + t2 * (2.0 / 7.0))));
    exponent as f64 + 0.5 + series * std::f64::consts::LOG2_E
}

/// −p·log2 p.
fn surprise(p: f64) -> f64 {
    -p * log2(p)
}

impl<'p> Numbers<'p> {
    pub fn new(problem: &'p Problem) -> Self {
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
        let blocks = |chances: &Vec<Vec<f64>>| {
            let block = |rows: &[Vec<f64>]| {
                let lanes = |s: &usize| std::array::from_fn(|lane| rows.get(lane).map_or(0.0, |row| row[*s]));
                order.iter().map(lanes).collect()
            };
            chances.chunks(LANES).map(block).collect()
        };
        Self {
            problem,
            class: order.iter().map(|s| of_state[*s]).collect(),
            group: order.iter().map(|s| group_of[*s]).collect(),
            groups: groups.len(),
            decisions,
            classes,
            chances: problem.tests.iter().map(|t| blocks(&t.chances)).collect(),
            order,
        }
    }

    /// What is believed at first.
    pub fn prior(&self) -> Belief {
        let p = |at: usize| self.problem.states[self.order[at]].p;
        let states: Vec<usize> = (0..self.order.len()).filter(|at| p(*at) > 0.0).collect();
        let total: f64 = states.iter().map(|at| p(*at)).sum();
        Belief {
            p: states.iter().map(|at| p(*at) / total).collect(),
            states,
            ready: self.problem.ready,
        }
    }

    pub fn stand(&self, belief: &Belief) -> Stand {
        let mut of_class = vec![0.0; self.classes.len()];
        let mut of_group = vec![0.0; self.groups];
        for (state, p) in belief.states.iter().zip(&belief.p) {
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
        let ended = right
            .iter()
            .any(|(p, explained)| *p >= self.problem.enough && *explained >= self.problem.explained * p);
        Stand {
            ended,
            best: right.iter().map(|r| r.1).fold(0.0, f64::max),
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

    /// What a test is expected to tell about the decision, bit: the mutual information of outcome and group.
    pub fn bits(&self, belief: &Belief, stand: &Stand, test: usize) -> f64 {
        let after: f64 = self.chances[test]
            .iter()
            .map(|block| self.open_after(belief, block))
            .sum();
        (stand.open - after).max(0.0)
    }

    /// What stays open after some outcomes, each weighed by its chance.
    fn open_after(&self, belief: &Belief, block: &[Lanes]) -> f64 {
        let (mut all, mut of_group, mut open) = ([0.0; LANES], [0.0; LANES], [0.0; LANES]);
        let mut group = None;
        for (state, p) in belief.states.iter().zip(&belief.p) {
            if group != Some(self.group[*state]) {
                group = Some(self.group[*state]);
                for lane in 0..LANES {
                    open[lane] += surprise(of_group[lane]);
                    all[lane] += of_group[lane];
                    of_group[lane] = 0.0;
                }
            }
            let chances = &block[*state];
            for lane in 0..LANES {
                of_group[lane] += p * chances[lane];
            }
        }
        (0..LANES)
            .map(|lane| open[lane] + surprise(of_group[lane]) - surprise(all[lane] + of_group[lane]))
            .sum()
    }

    /// What is believed after each outcome of a test, with the outcome's chance.
    pub fn after(&self, belief: &Belief, test: usize) -> Vec<(f64, Belief)> {
        let trial = &self.problem.tests[test];
        let ready = belief.ready.after(trial);
        let after = |outcome: usize| {
            let block = &self.chances[test][outcome / LANES];
            let joint: Vec<f64> = belief
                .states
                .iter()
                .zip(&belief.p)
                .map(|(state, p)| p * block[*state][outcome % LANES])
                .collect();
            let chance: f64 = joint.iter().sum();
            let (mut states, mut p, mut kept) = (Vec::new(), Vec::new(), 0.0);
            for (state, joint) in belief.states.iter().zip(joint) {
                if joint > FORGOTTEN * chance {
                    states.push(*state);
                    p.push(joint);
                    kept += joint;
                }
            }
            p.iter_mut().for_each(|p| *p /= kept);
            (chance, Belief { states, p, ready })
        };
        (0..trial.chances.len())
            .map(after)
            .filter(|(chance, _)| *chance > 0.0)
            .collect()
    }
}
