//! Problems small enough to be solved exactly: a few causes, a few tests with minutes. The least expected minutes to a
//! decision are found by trying every order after every outcome.

/// A small problem.
#[derive(Debug, Clone, PartialEq)]
pub struct SmallProblem {
    /// Probability of each cause; they sum to 1.
    pub causes: Vec<f64>,
    /// What each cause asks one to do, by number; causes with the same need not be told apart.
    pub remedy: Vec<usize>,
    pub tests: Vec<SmallTest>,
    /// A remedy this likely ends it.
    pub confidence: f64,
}

/// A test of a small problem; `p[outcome][cause]`.
#[derive(Debug, Clone, PartialEq)]
pub struct SmallTest {
    pub minutes: f64,
    pub p: Vec<Vec<f64>>,
}

/// Something that chooses the next test of a small problem.
pub trait Planner {
    /// The number of the test, one of `left`.
    fn next(&self, problem: &SmallProblem, belief: &[f64], left: &[usize]) -> usize;
}

/// The test that is expected to take most doubt away a minute; what most troubleshooters that look one step ahead do.
pub struct MostDoubtAMinute;

impl Planner for MostDoubtAMinute {
    fn next(&self, problem: &SmallProblem, belief: &[f64], left: &[usize]) -> usize {
        let doubt = |belief: &[f64]| -> f64 {
            problem
                .remedies(belief)
                .iter()
                .filter(|p| **p > 0.0)
                .map(|p| -p * p.ln())
                .sum()
        };
        let worth = |test: usize| {
            let after: f64 = problem
                .after(belief, test)
                .iter()
                .map(|(p, b)| p * doubt(b))
                .sum();
            (doubt(belief) - after) / problem.tests[test].minutes
        };
        left.iter()
            .copied()
            .max_by(|a, b| worth(*a).total_cmp(&worth(*b)))
            .unwrap_or(0)
    }
}

impl SmallProblem {
    /// Probability of each remedy.
    pub fn remedies(&self, belief: &[f64]) -> Vec<f64> {
        let mut p = vec![0.0; self.remedy.iter().max().map_or(0, |m| m + 1)];
        for (remedy, b) in self.remedy.iter().zip(belief) {
            p[*remedy] += b;
        }
        p
    }

    fn is_decided(&self, belief: &[f64]) -> bool {
        // A hair below counts, so that sums of binary fractions don't decide.
        self.remedies(belief)
            .iter()
            .any(|p| *p >= self.confidence - 1e-12)
    }

    /// The outcomes that can happen: their probability and the belief then.
    pub fn after(&self, belief: &[f64], test: usize) -> Vec<(f64, Vec<f64>)> {
        let outcome = |likely: &Vec<f64>| {
            let joint: Vec<f64> = belief.iter().zip(likely).map(|(b, l)| b * l).collect();
            let p: f64 = joint.iter().sum();
            (p > 1e-15).then(|| (p, joint.iter().map(|j| j / p).collect()))
        };
        self.tests[test].p.iter().filter_map(outcome).collect()
    }

    /// Whether any outcomes of the tests left can end in a decision.
    fn can_end(&self, belief: &[f64], left: &[usize]) -> bool {
        if self.is_decided(belief) {
            return true;
        }
        let Some((test, rest)) = left.split_first() else {
            return false;
        };
        // With or without this test: an outcome may also lead away from a decision that the others reach.
        self.can_end(belief, rest)
            || self
                .after(belief, *test)
                .iter()
                .any(|(_, b)| self.can_end(b, rest))
    }

    fn is_over(&self, belief: &[f64], left: &[usize]) -> bool {
        self.is_decided(belief) || left.is_empty() || !self.can_end(belief, left)
    }

    /// The least expected minutes to the end.
    pub fn optimum(&self) -> f64 {
        let all: Vec<usize> = (0..self.tests.len()).collect();
        self.least(&self.causes, &all)
    }

    fn least(&self, belief: &[f64], left: &[usize]) -> f64 {
        if self.is_over(belief, left) {
            return 0.0;
        }
        let with = |test: &usize| {
            let rest: Vec<usize> = left.iter().copied().filter(|t| t != test).collect();
            let later: f64 = self
                .after(belief, *test)
                .iter()
                .map(|(p, b)| p * self.least(b, &rest))
                .sum();
            self.tests[*test].minutes + later
        };
        left.iter().map(with).fold(f64::INFINITY, f64::min)
    }

    /// The expected minutes to the end when a planner chooses.
    pub fn with(&self, planner: &dyn Planner) -> f64 {
        let all: Vec<usize> = (0..self.tests.len()).collect();
        self.planned(planner, &self.causes, &all)
    }

    fn planned(&self, planner: &dyn Planner, belief: &[f64], left: &[usize]) -> f64 {
        if self.is_over(belief, left) {
            return 0.0;
        }
        let test = planner.next(self, belief, left);
        let rest: Vec<usize> = left.iter().copied().filter(|t| *t != test).collect();
        let later: f64 = self
            .after(belief, test)
            .iter()
            .map(|(p, b)| p * self.planned(planner, b, &rest))
            .sum();
        self.tests[test].minutes + later
    }

    /// One fault, one certain test for each component: the classic troubleshooting problem. With `inferred`, the last
    /// component left needs no test.
    pub fn classic(causes: &[f64], minutes: &[f64], inferred: bool) -> Self {
        let found = |number: usize| -> Vec<f64> {
            (0..causes.len())
                .map(|c| f64::from(u8::from(c == number)))
                .collect()
        };
        let test = |(number, minutes): (usize, &f64)| {
            let yes = found(number);
            let no = yes.iter().map(|p| 1.0 - p).collect();
            SmallTest {
                minutes: *minutes,
                p: vec![no, yes],
            }
        };
        let mut problem = Self {
            causes: causes.to_vec(),
            remedy: (0..causes.len()).collect(),
            tests: minutes.iter().enumerate().map(test).collect(),
            confidence: 1.0,
        };
        if !inferred {
            // A sliver of "something else" makes every component be tested before it is named.
            let sliver = 1e-9;
            for p in &mut problem.causes {
                *p *= 1.0 - sliver;
            }
            problem.causes.push(sliver);
            problem.remedy.push(causes.len());
            for test in &mut problem.tests {
                test.p[0].push(1.0);
                test.p[1].push(0.0);
            }
        }
        problem
    }
}
