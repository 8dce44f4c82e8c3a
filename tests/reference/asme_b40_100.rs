//! ASME B40.100, Pressure gauges and gauge attachments: accuracy grades.
//!
//! Grade A and the form quarter / half / quarter were seen in a public text, the rest is from memory. Left out:
//! EN 837-1 classes, which no field of the app offers.

use holdfast_measure::{Gauge, GaugeGrade};

use crate::close;

/// Source: ASME B40.100, table of grades (from memory but for A): 0–30 inHg, limits in inHg low, middle, high.
#[test]
fn limits_of_a_thirty_inch_gauge() {
    for (grade, outer, middle) in [
        (GaugeGrade::B, 0.9, 0.6),
        (GaugeGrade::A, 0.6, 0.3),
        (GaugeGrade::G2A, 0.15, 0.15),
        (GaugeGrade::G1A, 0.3, 0.3),
        (GaugeGrade::G3A, 0.075, 0.075),
        (GaugeGrade::G4A, 0.03, 0.03),
        (GaugeGrade::C, 1.2, 0.9),
        (GaugeGrade::D, 1.5, 1.5),
    ] {
        let gauge = Gauge {
            grade,
            ..Gauge::default()
        };
        close(gauge.grade_limit(5.0), outer, 1e-9);
        close(gauge.grade_limit(18.6), middle, 1e-9);
        close(gauge.grade_limit(25.0), outer, 1e-9);
    }
}
