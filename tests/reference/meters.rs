//! Data sheets of handheld multimeters: accuracy as ±(% of reading + counts), in the form they all share.
//!
//! One published example; the others are arithmetic on common figures. Left out: alternating ranges, temperature
//! coefficients.

use holdfast_measure::Meter;

use crate::close;

/// Source: accuracy as ±(% + counts): %, counts, digits, reading, limit, standard uncertainty (0: not given).
#[test]
fn limits_of_readings() {
    for (percent, counts, digits, reading, limit, u) in [
        (0.5, 2.0, 2, 12.34, 0.0817, 0.047_17),
        (0.8, 3.0, 1, 13.8, 0.4104, 0.2369),
        (0.5, 2.0, 3, 0.412, 0.004_06, 0.0),
    ] {
        let meter = Meter {
            percent,
            counts,
            digits,
            ..Meter::default()
        };
        close(meter.limit(reading), limit, 1e-9);
        if u > 0.0 {
            close(meter.u(reading), u, 2e-4);
        }
    }
}

/// Source: a public tutorial's example: 1.755 V, ±(0.5 % + 1 count) at 0.001 V, printed ±0.010 V.
#[test]
fn a_published_example() {
    let meter = Meter {
        percent: 0.5,
        counts: 1.0,
        digits: 3,
        ..Meter::default()
    };
    close(meter.limit(1.755), 0.009_775, 1e-9);
    close(meter.limit(1.755), 0.010, 0.05);
}
