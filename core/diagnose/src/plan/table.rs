//! The chances of one test's outcomes, laid out for many sums.

/// Outcomes that are summed up side by side.
const LANES: usize = 4;

type Lanes = [f64; LANES];

/// The chances of one test: what it can't tell apart is there once.
#[derive(Debug)]
pub(super) struct Table {
    /// The kind of each state: states of one kind show the same.
    kind: Vec<usize>,
    /// Blocks of outcomes.
    blocks: usize,
    /// For each kind its chances, block after block; outcomes that there are not have none.
    chances: Vec<Lanes>,
    /// For each kind what is open about the outcome, bit.
    open: Vec<f64>,
}

/// The possible states of one group, at least one, with their probabilities, and the sum of these.
pub(super) struct Group<'b> {
    states: &'b [(usize, f64)],
    p: f64,
}

impl<'b> Group<'b> {
    /// States that are side by side, with their probabilities, cut where `same` says that two are of different groups.
    pub fn all(states: &'b [(usize, f64)], same: impl Fn(usize, usize) -> bool) -> Vec<Self> {
        let group = |states: &'b [(usize, f64)]| Self {
            states,
            p: states.iter().map(|(_, p)| p).sum(),
        };
        states.chunk_by(|a, b| same(a.0, b.0)).map(group).collect()
    }
}

impl Table {
    /// From the chances of each outcome in each state. `order`: the order in which the states stand here.
    pub fn new(outcomes: &[Vec<f64>], order: &[usize]) -> Self {
        let mut firsts: Vec<usize> = Vec::new();
        let kind = |state: &usize| {
            let same = |first: &usize| outcomes.iter().all(|row| row[*first] == row[*state]);
            firsts.iter().position(same).unwrap_or_else(|| {
                firsts.push(*state);
                firsts.len() - 1
            })
        };
        let kind = order.iter().map(kind).collect();
        let block = |state: usize, rows: &[Vec<f64>]| -> Lanes {
            std::array::from_fn(|lane| rows.get(lane).map_or(0.0, |row| row[state]))
        };
        let blocks = |state: &usize| outcomes.chunks(LANES).map(|rows| block(*state, rows)).collect();
        let by_kind: Vec<Vec<Lanes>> = firsts.iter().map(blocks).collect();
        Self {
            kind,
            blocks: outcomes.len().div_ceil(LANES),
            open: by_kind
                .iter()
                .map(|blocks| blocks.iter().map(of_lanes).sum())
                .collect(),
            chances: by_kind.concat(),
        }
    }

    /// The chance of an outcome in a state.
    pub fn chance(&self, state: usize, outcome: usize) -> f64 {
        self.chances[self.kind[state] * self.blocks + outcome / LANES][outcome % LANES]
    }

    /// The mutual information of the outcome and the group that a state is in, bit: what is open about the outcome, less what
    /// is open where the group is known; times the probability of the groups together. `of_kind`: room for the probability of
    /// each kind.
    pub fn told_of(&self, groups: &[Group<'_>], of_kind: &mut Vec<f64>) -> f64 {
        of_kind.clear();
        of_kind.resize(self.open.len(), 0.0);
        let mut in_groups = 0.0;
        for group in groups {
            let kind = self.kind[group.states[0].0];
            // Mostly a test shows the same in a whole group.
            if group.states.iter().all(|(state, _)| self.kind[*state] == kind) {
                of_kind[kind] += group.p;
                in_groups += group.p * self.open[kind];
            } else {
                let states = group.states.iter().map(|(state, p)| (self.kind[*state], *p));
                in_groups += self.surprises(states.clone()) - surprise(group.p);
                states.for_each(|(kind, p)| of_kind[kind] += p);
            }
        }
        let possible = of_kind.iter().copied().enumerate().filter(|(_, p)| *p > 0.0);
        let all = self.surprises(possible) - surprise(groups.iter().map(|g| g.p).sum());
        (all - in_groups).max(0.0)
    }

    /// The sum of −p·log2 p over the outcomes, of states by their kinds and with their probabilities.
    fn surprises(&self, states: impl Iterator<Item = (usize, f64)> + Clone) -> f64 {
        let of_block = |block: usize| {
            let mut sums = [0.0; LANES];
            for (kind, p) in states.clone() {
                let chances = &self.chances[kind * self.blocks + block];
                for lane in 0..LANES {
                    sums[lane] += p * chances[lane];
                }
            }
            of_lanes(&sums)
        };
        (0..self.blocks).map(of_block).sum()
    }
}

fn of_lanes(p: &Lanes) -> f64 {
    let mut each = [0.0; LANES];
    for lane in 0..LANES {
        each[lane] = surprise(p[lane]);
    }
    each.iter().sum()
}

/// −p·log2 p.
pub(super) fn surprise(p: f64) -> f64 {
    -p * log2(p)
}

/// log₂ of a positive number; its error is below 1e-7.
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
