//! The normal distribution, and decisions by it.

use std::sync::LazyLock;

/// `Φ(z)`: probability that a standard normal variable is below `z`.
///
/// Relative error of the smaller tail below 2·10⁻⁷.
///
/// # Source
/// A Chebyshev fit of the complementary error function, coefficients from memory; checked against
/// published values in `tests/reference/jcgm_106.rs`.
#[must_use]
pub fn normal_cdf(z: f64) -> f64 {
    let x = z.abs() / std::f64::consts::SQRT_2;
    let t = 1.0 / (1.0 + 0.5 * x);
    let poly = -x * x - 1.265_512_23
        + t * (1.000_023_68
            + t * (0.374_091_96
                + t * (0.096_784_18
                    + t * (-0.186_288_06
                        + t * (0.278_868_07
                            + t * (-1.135_203_98
                                + t * (1.488_515_87 + t * (-0.822_152_23 + t * 0.170_872_77))))))));
    let tail = 0.5 * t * poly.exp();
    if z >= 0.0 { 1.0 - tail } else { tail }
}

/// The `z` with `Φ(z) = p`; infinite at 0 and 1, not a number outside.
///
/// # Source
/// P. J. Acklam's rational approximation (relative error 1.2·10⁻⁹), from memory; checked against
/// published quantiles in `tests/reference/jcgm_106.rs`.
#[must_use]
pub fn normal_quantile(p: f64) -> f64 {
    const A: [f64; 6] = [
        -3.969_683_028_665_376e1,
        2.209_460_984_245_205e2,
        -2.759_285_104_469_687e2,
        1.383_577_518_672_69e2,
        -3.066_479_806_614_716e1,
        2.506_628_277_459_239,
    ];
    const B: [f64; 5] = [
        -5.447_609_879_822_406e1,
        1.615_858_368_580_409e2,
        -1.556_989_798_598_866e2,
        6.680_131_188_771_972e1,
        -1.328_068_155_288_572e1,
    ];
    const C: [f64; 6] = [
        -7.784_894_002_430_293e-3,
        -3.223_964_580_411_365e-1,
        -2.400_758_277_161_838,
        -2.549_732_539_343_734,
        4.374_664_141_464_968,
        2.938_163_982_698_783,
    ];
    const D: [f64; 4] = [
        7.784_695_709_041_462e-3,
        3.224_671_290_700_398e-1,
        2.445_134_137_142_996,
        3.754_408_661_907_416,
    ];
    const EDGE: f64 = 0.024_25;
    let tail = |q: f64| {
        (((((C[0] * q + C[1]) * q + C[2]) * q + C[3]) * q + C[4]) * q + C[5])
            / ((((D[0] * q + D[1]) * q + D[2]) * q + D[3]) * q + 1.0)
    };
    if !(0.0..=1.0).contains(&p) {
        f64::NAN
    } else if p == 0.0 {
        f64::NEG_INFINITY
    } else if p == 1.0 {
        f64::INFINITY
    } else if p < EDGE {
        tail((-2.0 * p.ln()).sqrt())
    } else if p > 1.0 - EDGE {
        -tail((-2.0 * (1.0 - p).ln()).sqrt())
    } else {
        let q = p - 0.5;
        let r = q * q;
        (((((A[0] * r + A[1]) * r + A[2]) * r + A[3]) * r + A[4]) * r + A[5]) * q
            / (((((B[0] * r + B[1]) * r + B[2]) * r + B[3]) * r + B[4]) * r + 1.0)
    }
}

/// Probability that a measured quantity is above a limit.
///
/// # Source
/// JCGM 106:2012, 7.2: `Φ((value − limit)/u)` for a normal state of knowledge. With `u = 0` it is 0, ½ or 1.
#[must_use]
pub fn probability_above(measured: crate::Measured, limit: f64) -> f64 {
    let gap = measured.value - limit;
    if measured.u > 0.0 {
        normal_cdf(gap / measured.u)
    } else if gap == 0.0 {
        0.5
    } else {
        f64::from(u8::from(gap > 0.0))
    }
}

const TABLE_PER_UNIT: f64 = 64.0;
const TABLE_LEN: usize = 769;

/// `Φ` by a table for the inner loops of the inference: absolute error below 10⁻⁵, exactly 0 and 1 beyond ±6.
pub(crate) struct QuickCdf([f64; TABLE_LEN + 1]);

static TABLE: LazyLock<QuickCdf> = LazyLock::new(|| {
    QuickCdf(std::array::from_fn(|i| {
        let steps = u32::try_from(i).map_or(0.0, f64::from);
        normal_cdf(steps / TABLE_PER_UNIT - QuickCdf::REACH)
    }))
});

impl QuickCdf {
    /// Where the table ends: beyond ±6 the value is 0 or 1.
    pub(crate) const REACH: f64 = 6.0;

    /// The one table.
    pub(crate) fn table() -> &'static Self {
        &TABLE
    }

    /// `Φ(z)`.
    #[inline]
    pub(crate) fn at(&self, z: f64) -> f64 {
        let place = (z.clamp(-Self::REACH, Self::REACH) + Self::REACH) * TABLE_PER_UNIT;
        // Within 0..=768 by the clamp (a NaN casts to 0).
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let cell = place as u32;
        let index = cell as usize;
        match (self.0.get(index), self.0.get(index + 1)) {
            (Some(low), Some(high)) => low + (place - f64::from(cell)) * (high - low),
            _ => 1.0,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn table_and_function_agree() {
        let mut z = -7.0;
        while z < 7.0 {
            assert!((QuickCdf::table().at(z) - normal_cdf(z)).abs() < 1e-5, "{z}");
            z += 0.0137;
        }
    }

    #[test]
    fn quantile_inverts_the_distribution() {
        for p in [1e-6, 0.01, 0.2, 0.5, 0.7, 0.975, 0.999_99] {
            assert!((normal_cdf(normal_quantile(p)) - p).abs() < 2e-7);
        }
        assert!(normal_quantile(1.1).is_nan());
    }
}
