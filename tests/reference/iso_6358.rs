//! ISO 6358-1:2013, Pneumatic fluid power, flow-rate characteristics: sonic conductance C and critical ratio b.
//!
//! Formula and reference density 1.185 kg/m³ from memory, T0 and p0 seen; cases computed from it outside this
//! project's code. Left out: the measuring procedure, and cracking pressure of part 1's annex.

use holdfast_measure::{Element, nozzle_share};

use crate::close;

/// Source: ISO 6358-1, flow-rate equations: C dm³/(s·bar), b, p1, p2 Pa, T1 K, mass flow kg/s. Tolerance 0.2 %.
#[test]
fn flow_through_components() {
    for (c, b, p1, p2, kelvin, kg_s) in [
        (0.05, 0.30, 101_325.0, 33_597.22, 293.15, 5.997_39e-5),
        (0.05, 0.30, 101_325.0, 67_461.11, 293.15, 5.118_62e-5),
        (0.20, 0.40, 101_325.0, 90_000.0, 303.15, 1.372_62e-4),
    ] {
        close(Element::iso_6358(c, b).mass_flow(p1, p2, kelvin), kg_s, 2e-3);
    }
}

/// Source: arithmetic: an ideal nozzle has 0.199195 dm³/(s·bar) a mm², and the ellipse with b = 0.528 follows the
/// isentropic curve within 0.35 % up to r = 0.99.
#[test]
fn an_ideal_nozzle_as_a_component() {
    let component = Element::iso_6358(0.199_195, 0.528);
    let choked = Element::Nozzle { area: 1e-6 }.mass_flow(1e5, 3e4, 293.15);
    close(component.mass_flow(1e5, 3e4, 293.15), choked, 1e-3);
    for hundredths in 53..=99 {
        let ratio = f64::from(hundredths) / 100.0;
        close(
            component.mass_flow(1e5, ratio * 1e5, 293.15),
            choked * nozzle_share(ratio),
            4.5e-3,
        );
    }
}
