//! JCGM 100:2008 (GUM), Guide to the expression of uncertainty in measurement.
//!
//! Worked on the gauge of the job: 0–30 inHg, grade B, 1 inHg divisions read to the division. Left out: degrees of
//! freedom (annex G), correlation (5.2), and the H examples, which are other instruments.

use holdfast_measure::{Gauge, Measured};

use crate::close;

/// Source: JCGM 100:2008, 4.3.7 and F.2.2.1: a/√3 and δ/√12.
#[test]
fn rectangular_and_resolution() {
    close(Measured::rectangular(18.6, 0.6).u, 0.346_41, 1e-5);
    close(Measured::resolved(18.6, 1.0).u, 0.288_68, 2e-5);
}

/// Source: JCGM 100:2008, 5.1.2, worked: reading 18.6, u = 0.450925, U (k = 2) = 0.90185 inHg.
#[test]
fn one_reading_of_a_grade_b_gauge() {
    let gauge = Gauge {
        read_to: 1.0,
        ..Gauge::default()
    };
    close(gauge.u_grade(18.6), 0.346_41, 1e-5);
    close(gauge.u_resolution(), 0.288_68, 2e-5);
    let reading = Measured::new(18.6, gauge.u_grade(18.6)).with_u(gauge.u_resolution());
    close(reading.u, 0.450_925, 1e-5);
    close(reading.expanded(2.0), 0.901_85, 1e-5);
}

/// Source: JCGM 100:2008, 5.1.2, worked: in a drop the gauge's common error cancels: √2 · 0.28868 = 0.40825 inHg.
#[test]
fn a_drop_on_one_gauge() {
    let gauge = Gauge {
        read_to: 1.0,
        ..Gauge::default()
    };
    let start = Measured::new(20.0, gauge.u_resolution());
    let end = Measured::new(19.0, gauge.u_resolution());
    let drop = start - end;
    close(drop.u, 0.408_25, 2e-5);
    close(drop.value / drop.u, 2.449, 2e-4);
}

/// Source: JCGM 100:2008, 5.1.6 equation (12): relative uncertainties of a product add in quadrature; Q = V·Δp/Δt.
#[test]
fn a_leak_by_propagation() {
    let volume = Measured::relative(150e-6, 0.06);
    let drop = Measured::new(2.0 * 3386.389, 0.408_25 * 3386.389);
    let time = Measured::new(60.0, 0.3);
    let leak = volume * drop / time;
    close(leak.value, 0.016_931_9, 1e-4);
    let by_hand = (0.06_f64.powi(2) + (0.408_25_f64 / 2.0).powi(2) + 0.005_f64.powi(2)).sqrt();
    close(leak.relative_u(), by_hand, 1e-9);
}
