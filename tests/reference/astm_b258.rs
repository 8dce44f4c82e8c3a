//! ASTM B258, Standard nominal diameters and cross-sectional areas of AWG sizes of solid round wires.
//!
//! Two public tables agree with the formula to 0.5 %. Left out: sizes outside 16 to 24.

use holdfast_measure::{WireGauge, wire_resistance};

use crate::{celsius, close, metres};

/// Source: ASTM B258 with the copper of IEC 60028: AWG, mm, mm², mΩ/m at 20 °C. Tolerance 0.1 %.
#[test]
fn sizes_and_resistances() {
    for (number, mm, mm2, milliohms) in [
        (16, 1.290_85, 1.308_70, 13.1745),
        (17, 1.149_53, 1.037_84, 16.6127),
        (18, 1.023_69, 0.823_05, 20.9482),
        (19, 0.911_62, 0.652_71, 26.4152),
        (20, 0.811_82, 0.517_62, 33.3090),
        (21, 0.722_95, 0.410_49, 42.0019),
        (22, 0.643_80, 0.325_53, 52.9634),
        (23, 0.573_32, 0.258_16, 66.7856),
        (24, 0.510_56, 0.204_73, 84.2151),
    ] {
        let wire = WireGauge::Awg(number);
        close(wire.diameter().value * 1000.0, mm, 1e-3);
        close(wire.mm2(), mm2, 1e-3);
        close(
            wire_resistance(metres(1.0), wire, celsius(20.0)).value * 1000.0,
            milliohms,
            1e-3,
        );
    }
}
