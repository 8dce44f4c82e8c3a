//! Seeded draws. A stream belongs to a seed and a label, so that one draw more in one place moves nothing elsewhere.

use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use statrs::distribution::{ContinuousCDF, Normal};

/// A stream of random numbers.
pub struct Draw(ChaCha8Rng);

impl Draw {
    /// The stream of a seed and a label.
    pub fn of(seed: u64, label: &str) -> Self {
        // FNV-1a, so that labels spread over all seeds.
        let hash = label.bytes().fold(
            0xcbf2_9ce4_8422_2325_u64 ^ seed.wrapping_mul(0x9e37_79b9_7f4a_7c15),
            |h, b| (h ^ u64::from(b)).wrapping_mul(0x0100_0000_01b3),
        );
        Self(ChaCha8Rng::seed_from_u64(hash))
    }

    /// Uniform in 0–1.
    pub fn share(&mut self) -> f64 {
        self.0.random::<f64>()
    }

    /// Uniform between two bounds.
    pub fn uniform(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.share()
    }

    /// Standard normal (Box and Muller).
    pub fn normal(&mut self) -> f64 {
        let a = self.share().max(f64::MIN_POSITIVE);
        let b = self.share();
        (-2.0 * a.ln()).sqrt() * (std::f64::consts::TAU * b).cos()
    }

    /// Log-normal by median and standard deviation in decades.
    pub fn log_normal(&mut self, median: f64, decades: f64) -> f64 {
        median * 10_f64.powf(decades * self.normal())
    }

    /// Exponential by its mean.
    pub fn exponential(&mut self, mean: f64) -> f64 {
        -mean * self.share().max(f64::MIN_POSITIVE).ln()
    }

    /// Whether something happens that happens so often.
    pub fn happens(&mut self, share: f64) -> bool {
        self.share() < share
    }

    /// The number of an item drawn by weight; 0 where there is none.
    pub fn by_weight(&mut self, weights: impl IntoIterator<Item = f64> + Clone) -> usize {
        let total: f64 = weights.clone().into_iter().sum();
        let mut left = self.share() * total;
        let mut last = 0;
        for (number, weight) in weights.into_iter().enumerate() {
            if weight > 0.0 {
                last = number;
                if left < weight {
                    return number;
                }
                left -= weight;
            }
        }
        last
    }

    /// One of several.
    pub fn pick<'a, T>(&mut self, of: &'a [T]) -> &'a T {
        let number = ((self.share() * of.len() as f64) as usize).min(of.len() - 1);
        &of[number]
    }
}

/// The standard normal's inverse distribution.
pub fn quantile(p: f64) -> f64 {
    let p = p.clamp(f64::MIN_POSITIVE, 1.0 - f64::EPSILON);
    Normal::standard().inverse_cdf(p)
}

/// Probability that a standard normal stays below `x`.
pub fn below(x: f64) -> f64 {
    Normal::standard().cdf(x)
}
