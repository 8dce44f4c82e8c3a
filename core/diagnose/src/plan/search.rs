//! The test to do next: least expected minutes to an end, looking ahead.
//!
//! A policy that does nothing but take the test that tells most bits a minute is followed through all outcomes; the best
//! tests are tried against it, in small searches also once more after each outcome (policy improvement, R. Howard 1960, from
//! memory). Rare branches are estimated by the bits still open.
//!
//! A test is followed until what its outcomes cost so far, with the least that the others can cost, is no less than all that the
//! best one before it costs (branch and bound): the choice is the same as if all were followed to the end.

use super::belief::{Belief, Numbers, Stand};
use super::problem::Problem;

/// A test with what choosing it is expected to cost.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Choice {
    /// The test's number.
    pub test: usize,
    /// Expected minutes to the end when it is done next, its own included.
    pub minutes: f64,
    /// Expected minutes that wrong decisions cost when the search ends without one that is sure enough.
    pub wrong: f64,
    /// What it tells about the decision, bit.
    pub bits: f64,
    /// Probability that the search ends with it.
    pub ends: f64,
}

impl Choice {
    /// All that is expected to be spent.
    pub fn expected(&self) -> f64 {
        self.minutes + self.wrong
    }
}

/// Tests that are tried at the beginning, by bits a minute.
const TRIED: usize = 7;
/// Tests that are tried after the first outcome, too, where states × tests are few enough to follow every branch.
const TRIED_AGAIN: usize = 3;
const FEW: usize = 150;
/// Tests that are tried at the beginning because they tell much, whatever they take.
const TELLING: usize = 2;
/// A branch less likely than this is estimated.
const RARE: f64 = 0.05;
/// The weight of the beginning where every branch is to be followed.
const FOLLOWED: f64 = 1e3;
/// Tests that differ by less in what they tell, bit, or by less in what they make one spend, min, are equally good: the first
/// is taken, as of two mounts that are alike. Sums are good for more digits than that.
const SAME_BITS: f64 = 1e-6;
const SAME_MINUTES: f64 = 1e-4;
/// A test that tells less, bit, is not followed.
const TELLS: f64 = 1e-3;
/// Minutes to the end over those in which the first test's bits a minute would get there. Source: fitted to searches in
/// the project's own circuits, where a bit takes about 15 minutes.
const SLOWER: f64 = 2.0;
/// What is still open about a decision that is sure enough, bit. Source: worked out for 0.95 and a rest of several.
const SETTLED: f64 = 0.4;
/// Sums (states × tests) after which every branch is estimated.
const SUMS: usize = 300_000;

/// The test to do next; none where giving up is cheaper than every test.
///
/// Nobody asks whether the search has ended before it begins. Chances that don't sum to 1 in a state make nonsense.
pub fn plan_small(problem: &Problem) -> Option<Choice> {
    let numbers = Numbers::new(problem.clone());
    let belief = numbers.prior();
    let all: Vec<usize> = (0..problem.tests.len()).collect();
    best(&numbers, &belief, &numbers.stand(&belief), &all, TELLS)
}

/// The same from a belief, with some of the tests: those that tell at least so much, bit.
pub(super) fn best(
    numbers: &Numbers,
    belief: &Belief,
    stand: &Stand,
    tests: &[usize],
    tells: f64,
) -> Option<Choice> {
    Search {
        numbers,
        left: SUMS,
        rate: 0.0,
    }
    .best(belief, stand, tests, tells)
}

/// What is expected to be spent.
#[derive(Debug, Clone, Copy)]
struct Cost {
    minutes: f64,
    wrong: f64,
}

impl Cost {
    fn all(self) -> f64 {
        self.minutes + self.wrong
    }
}

/// A test with its bits and minutes as things stand.
#[derive(Debug, Clone, Copy)]
struct Rated {
    test: usize,
    bits: f64,
    minutes: f64,
}

impl Rated {
    fn rate(&self) -> f64 {
        self.bits / self.minutes.max(f64::MIN_POSITIVE)
    }
}

struct Search<'n> {
    numbers: &'n Numbers,
    left: usize,
    /// Bits a minute of the best test at the beginning: what is open takes as long on every branch.
    rate: f64,
}

impl Search<'_> {
    fn give_up(&self, stand: &Stand) -> f64 {
        self.numbers.give_up(stand)
    }

    fn best(&mut self, belief: &Belief, stand: &Stand, tests: &[usize], tells: f64) -> Option<Choice> {
        let rated = self.rated(belief, tests);
        self.rate = rated.first().map_or(1.0, Rated::rate);
        let left: Vec<usize> = rated.iter().map(|r| r.test).collect();
        let tried = self.tried(belief, stand, rated);
        let few = belief.size() * tests.len() <= FEW;
        let reach = if few { FOLLOWED } else { 1.0 };
        let each = SUMS / tried.len().max(1);
        let mut best: Option<Choice> = None;
        for r in tried.iter().filter(|r| r.bits >= tells) {
            self.left = each;
            let limit = best.as_ref().map_or(self.give_up(stand), Choice::expected);
            if let Some((cost, ends)) = self.with(belief, r, &left, (reach, few), limit)
                && cost.all() < limit - SAME_MINUTES
            {
                best = Some(Choice {
                    test: r.test,
                    minutes: cost.minutes,
                    wrong: cost.wrong,
                    bits: r.bits,
                    ends,
                });
            }
        }
        best
    }

    /// The tests that are tried at the beginning: the best by bits a minute, by bits, and by what one of them saves alone.
    fn tried(&self, belief: &Belief, stand: &Stand, rated: Vec<Rated>) -> Vec<Rated> {
        let mut by_bits: Vec<(Rated, f64)> = rated
            .iter()
            .map(|r| (*r, self.numbers.gain(belief, stand, r.test)))
            .collect();
        by_bits.sort_by(|a, b| b.0.bits.total_cmp(&a.0.bits));
        let telling = by_bits.iter().take(TELLING);
        let gaining = by_bits.iter().max_by(|a, b| a.1.total_cmp(&b.1));
        let mut tried: Vec<Rated> = rated.into_iter().take(TRIED).collect();
        for (more, _) in telling.chain(gaining) {
            if tried.iter().all(|t| t.test != more.test) {
                tried.push(*more);
            }
        }
        tried
    }

    /// Tests by bits a minute; those that tell nothing are left out.
    fn rated(&mut self, belief: &Belief, tests: &[usize]) -> Vec<Rated> {
        self.left = self.left.saturating_sub(belief.size() * tests.len());
        let mut rated = Vec::with_capacity(tests.len());
        for (&test, bits) in tests.iter().zip(self.numbers.bits(belief, tests)) {
            let bits = (bits / SAME_BITS).round() * SAME_BITS;
            if bits >= TELLS {
                let minutes = self.numbers.minutes(belief, test);
                rated.push(Rated { test, bits, minutes });
            }
        }
        rated.sort_by(|a, b| b.rate().total_cmp(&a.rate()));
        rated
    }

    /// What is spent when a test is done next, and the probability that the search ends with it; none where that is at
    /// least `limit`, which shows as soon as the outcomes looked at leave less than the others cost at the least. `reach`: the
    /// weight of the beginning, and whether tests are tried again.
    fn with(
        &mut self,
        belief: &Belief,
        rated: &Rated,
        tests: &[usize],
        (reach, again): (f64, bool),
        limit: f64,
    ) -> Option<(Cost, f64)> {
        let numbers = self.numbers;
        let left: Vec<usize> = tests.iter().copied().filter(|t| *t != rated.test).collect();
        let minutes = |test: &usize| numbers.problem.tests[*test].minutes;
        let quickest = left.iter().map(minutes).fold(f64::INFINITY, f64::min);
        let after = numbers
            .after(belief, rated.test)
            .into_iter()
            .map(|(chance, after)| {
                let stand = numbers.stand(&after);
                // Who has not ended does a test or gives up.
                let least = if stand.ended {
                    0.0
                } else {
                    numbers.give_up(&stand).min(quickest)
                };
                (chance, after, stand, least)
            });
        let after: Vec<(f64, Belief, Stand, f64)> = after.collect();
        let mut spent = rated.minutes
            + after
                .iter()
                .map(|(chance, .., least)| chance * least)
                .sum::<f64>();
        let (mut cost, mut ends) = (
            Cost {
                minutes: rated.minutes,
                wrong: 0.0,
            },
            0.0,
        );
        for (chance, after, stand, least) in &after {
            if stand.ended {
                ends += chance;
                continue;
            }
            if spent >= limit {
                return None;
            }
            let others = spent - chance * least;
            let then = self.then(
                after,
                stand,
                &left,
                (reach * chance, again),
                (limit - others) / chance,
            )?;
            cost.minutes += chance * then.minutes;
            cost.wrong += chance * then.wrong;
            spent = others + chance * then.all();
        }
        Some((cost, ends))
    }

    /// What is spent from a belief that has not ended; only where tests are tried again by more than bits a minute. None where
    /// that is at least `limit`.
    fn then(
        &mut self,
        belief: &Belief,
        stand: &Stand,
        tests: &[usize],
        (reach, again): (f64, bool),
        limit: f64,
    ) -> Option<Cost> {
        let give_up = Cost {
            minutes: 0.0,
            wrong: self.give_up(stand),
        };
        let rated = self.rated(belief, tests);
        let Some(first) = rated.first().filter(|first| first.minutes < give_up.wrong) else {
            return Some(give_up);
        };
        if reach < RARE || self.left == 0 {
            return Some(self.estimate(stand, &rated, first, give_up));
        }
        let left: Vec<usize> = rated.iter().map(|r| r.test).collect();
        let tried = if again { TRIED_AGAIN } else { 1 };
        let mut best = give_up;
        for r in rated.iter().take(tried) {
            if let Some((cost, _)) = self.with(belief, r, &left, (reach, false), limit)
                && cost.all() < best.all()
            {
                best = cost;
            }
        }
        (best.all() < limit).then_some(best)
    }

    /// What is spent on a branch that is not followed.
    fn estimate(&self, stand: &Stand, rated: &[Rated], first: &Rated, give_up: Cost) -> Cost {
        // The tests left tell no more than all of them together; for the rest it is given up.
        let told: f64 = rated.iter().map(|r| r.bits).sum();
        let share = (told / (stand.open - SETTLED).max(f64::MIN_POSITIVE)).clamp(0.0, 1.0);
        let going_on = Cost {
            minutes: first.minutes + share * SLOWER * stand.open / self.rate,
            wrong: (1.0 - share) * give_up.wrong,
        };
        if give_up.all() < going_on.all() {
            give_up
        } else {
            going_on
        }
    }
}
