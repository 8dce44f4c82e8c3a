//! Small problems drawn by seed, as they come up in a job: a few parts, tests that are a little unsure, minutes.

use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;

use crate::small::{SmallProblem, SmallTest};

/// So many problems of three to five causes and three to five tests of two or three outcomes.
pub fn problems(count: u64) -> Vec<SmallProblem> {
    (0..count).map(problem).collect()
}

fn problem(seed: u64) -> SmallProblem {
    let mut rng = ChaCha8Rng::seed_from_u64(seed);
    let mut share = move || rng.random::<f64>();
    let count = 3 + (share() * 3.0) as usize;
    let weights: Vec<f64> = (0..count).map(|_| 0.1 + share()).collect();
    let total: f64 = weights.iter().sum();
    let tests = 3 + (share() * 3.0) as usize;
    let mut test = || {
        let outcomes = 2 + (share() * 2.0) as usize;
        // Each cause has an outcome that it nearly always gives.
        let usual: Vec<usize> = (0..count).map(|_| (share() * outcomes as f64) as usize).collect();
        let slip = 0.005 + 0.06 * share();
        let p = (0..outcomes)
            .map(|o| {
                usual
                    .iter()
                    .map(|u| {
                        if *u == o {
                            1.0 - slip
                        } else {
                            slip / (outcomes - 1) as f64
                        }
                    })
                    .collect()
            })
            .collect();
        SmallTest {
            minutes: (1.0 + 11.0 * share()).round(),
            p,
        }
    };
    let tests = (0..tests).map(|_| test()).collect();
    SmallProblem {
        causes: weights.iter().map(|w| w / total).collect(),
        remedy: (0..count).collect(),
        tests,
        confidence: 0.95,
    }
}
