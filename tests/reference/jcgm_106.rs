//! JCGM 106:2012, The role of measurement uncertainty in conformity assessment.
//!
//! Quantiles and probabilities by scipy 1.17.1 (`norm.ppf`, `norm.cdf`). Left out: shared-risk and global
//! consumer's risk (clauses 9.5 on), which need a production process.

use holdfast_measure::{Measured, normal_cdf, normal_quantile, probability_above};

use crate::close;

/// Source: scipy 1.17.1 `norm.ppf`.
#[test]
fn quantiles() {
    for (p, z) in [
        (0.8, 0.841_62),
        (0.9, 1.281_55),
        (0.95, 1.644_85),
        (0.975, 1.959_96),
        (0.99, 2.326_35),
    ] {
        close(normal_quantile(p), z, 1e-5);
        close(normal_cdf(z), p, 1e-5);
        close(normal_cdf(-z), 1.0 - p, 5e-5);
    }
}

/// Source: JCGM 106:2012, 7.2, worked: must hold ≥ 18 inHg, read 18.6, u = 0.450925: 0.90834; guarded 18.7417.
#[test]
fn must_hold_at_least_eighteen_inches() {
    let reading = Measured::new(18.6, 0.450_925);
    close(probability_above(reading, 18.0), 0.908_34, 2e-5);
    close(18.0 + normal_quantile(0.95) * reading.u, 18.7417, 1e-5);
    close(
        probability_above(Measured::new(18.901_85, reading.u), 18.0),
        0.977_25,
        2e-5,
    );
    close(probability_above(Measured::new(18.0, reading.u), 18.0), 0.5, 1e-6);
}

/// Source: JCGM 106:2012, example with −5.47 V, u = 0.05 V, limit −5.40 V (text from memory): 0.92.
#[test]
fn the_guide_s_own_voltage() {
    let reading = Measured::new(-5.47, 0.05);
    close(1.0 - probability_above(reading, -5.40), 0.9192, 1e-4);
}
