//! The test to do next: least expected minutes to an end, looking ahead.
//!
//! A policy that does nothing but take the test that tells most bits a minute is followed through all outcomes; the best
//! tests are tried against it, in small searches also once more after each outcome (policy improvement, R. Howard 1960, from
//! memory). Rare branches are estimated by the bits still open.

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
/// A test that tells less, bit, is not followed.
const TELLS: f64 = 1e-3;
/// Minutes to the end over those in which the first test's bits a minute would get there. Source: fitted to searches in
/// the project's own circuits, where a bit takes about 15 minutes.
const SLOWER: f64 = 2.0;
/// What is still open about a decision that is sure enough, bit. Source: worked out for 0.95 and a rest of several.
const SETTLED: f64 = 0.4;
/// Sums (states × tests) after which every branch is estimated.
const SUMS: usize = 300_000;

/// The tests worth doing next, the best first; none where giving up is cheaper than every test.
///
/// Nobody asks whether the search has ended before it begins. Chances that don't sum to 1 in a state make nonsense.
pub fn plan_small(problem: &Problem) -> Vec<Choice> {
    let numbers = Numbers::new(problem);
    let belief = numbers.prior();
    let stand = numbers.stand(&belief);
    let all: Vec<usize> = (0..problem.tests.len()).collect();
    let give_up = numbers.give_up(&stand);
    let mut worth = choices(&numbers, &belief, &stand, &all);
    worth.retain(|c| c.expected() < give_up);
    worth
}

/// The same from a belief, with some of the tests; those that are no better than giving up follow at the end.
pub(super) fn choices(numbers: &Numbers<'_>, belief: &Belief, stand: &Stand, tests: &[usize]) -> Vec<Choice> {
    Search {
        numbers,
        left: SUMS,
        rate: 0.0,
    }
    .choices(belief, stand, tests)
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
    numbers: &'n Numbers<'n>,
    left: usize,
    /// Bits a minute of the best test at the beginning: what is open takes as long on every branch.
    rate: f64,
}

impl Search<'_> {
    fn give_up(&self, stand: &Stand) -> f64 {
        self.numbers.give_up(stand)
    }

    fn choices(&mut self, belief: &Belief, stand: &Stand, tests: &[usize]) -> Vec<Choice> {
        let rated = self.rated(belief, stand, tests);
        self.rate = rated.first().map_or(1.0, Rated::rate);
        let left: Vec<usize> = rated.iter().map(|r| r.test).collect();
        let mut by_bits = rated.clone();
        by_bits.sort_by(|a, b| b.bits.total_cmp(&a.bits));
        let mut tried: Vec<Rated> = rated.into_iter().take(TRIED).collect();
        for telling in by_bits.iter().copied().take(TELLING) {
            if tried.iter().all(|t| t.test != telling.test) {
                tried.push(telling);
            }
        }
        let gain = |r: &Rated| self.numbers.gain(belief, stand, r.test);
        if let Some(gaining) = by_bits.iter().max_by(|a, b| gain(a).total_cmp(&gain(b)))
            && tried.iter().all(|t| t.test != gaining.test)
        {
            tried.push(*gaining);
        }
        let few = belief.size() * tests.len() <= FEW;
        let each = SUMS / tried.len().max(1);
        let mut choices: Vec<Choice> = tried
            .iter()
            .map(|r| {
                self.left = each;
                let cost = self.with(belief, r, &left, if few { FOLLOWED } else { 1.0 }, few);
                let after = self.numbers.after(belief, r.test);
                let ends = after
                    .iter()
                    .filter(|(_, after)| self.numbers.stand(after).ended)
                    .fold(0.0, |sum, (chance, _)| sum + chance);
                Choice {
                    test: r.test,
                    minutes: cost.minutes,
                    wrong: cost.wrong,
                    bits: r.bits,
                    ends,
                }
            })
            .collect();
        // What is no better than giving up stays in the order of bits a minute.
        let give_up = self.give_up(stand);
        choices.sort_by(|a, b| a.expected().min(give_up).total_cmp(&b.expected().min(give_up)));
        choices
    }

    /// Tests by bits a minute; those that tell nothing are left out.
    fn rated(&mut self, belief: &Belief, stand: &Stand, tests: &[usize]) -> Vec<Rated> {
        self.left = self.left.saturating_sub(belief.size() * tests.len());
        let mut rated = Vec::with_capacity(tests.len());
        for &test in tests {
            let bits = self.numbers.bits(belief, stand, test);
            if bits >= TELLS {
                let minutes = self.numbers.minutes(belief, test);
                rated.push(Rated { test, bits, minutes });
            }
        }
        rated.sort_by(|a, b| b.rate().total_cmp(&a.rate()));
        rated
    }

    /// What is spent when a test is done next.
    fn with(&mut self, belief: &Belief, rated: &Rated, tests: &[usize], reach: f64, again: bool) -> Cost {
        let left: Vec<usize> = tests.iter().copied().filter(|t| *t != rated.test).collect();
        let mut cost = Cost {
            minutes: rated.minutes,
            wrong: 0.0,
        };
        for (chance, after) in self.numbers.after(belief, rated.test) {
            let then = self.then(&after, &left, reach * chance, again);
            cost.minutes += chance * then.minutes;
            cost.wrong += chance * then.wrong;
        }
        cost
    }

    /// What is spent from here; only where tests are tried `again` by more than bits a minute.
    fn then(&mut self, belief: &Belief, tests: &[usize], reach: f64, again: bool) -> Cost {
        let spend = |minutes, wrong| Cost { minutes, wrong };
        let stand = self.numbers.stand(belief);
        if stand.ended {
            return spend(0.0, 0.0);
        }
        let give_up = self.give_up(&stand);
        let rated = self.rated(belief, &stand, tests);
        let Some(first) = rated.first() else {
            return spend(0.0, give_up);
        };
        if give_up <= first.minutes {
            return spend(0.0, give_up);
        }
        if reach < RARE || self.left == 0 {
            // The tests left tell no more than all of them together; for the rest it is given up.
            let told: f64 = rated.iter().map(|r| r.bits).sum();
            let share = (told / (stand.open - SETTLED).max(f64::MIN_POSITIVE)).clamp(0.0, 1.0);
            let minutes = first.minutes + share * SLOWER * stand.open / self.rate;
            let wrong = (1.0 - share) * give_up;
            return if give_up < minutes + wrong {
                spend(0.0, give_up)
            } else {
                spend(minutes, wrong)
            };
        }
        let left: Vec<usize> = rated.iter().map(|r| r.test).collect();
        let tried = if again { TRIED_AGAIN } else { 1 };
        let mut best = spend(0.0, give_up);
        for r in rated.iter().take(tried) {
            let cost = self.with(belief, r, &left, reach, false);
            if cost.all() < best.all() {
                best = cost;
            }
        }
        best
    }
}
