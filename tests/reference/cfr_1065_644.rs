//! 40 CFR 1065.644, Vacuum-decay leak rate, equation 1.
//!
//! The regulation's example: 2.0000 L, 25.300 to 50.600 kPa in 70 s at 293.15 K. Left out: its acceptance limit,
//! which is for sampling systems.

use holdfast_measure::{
    Gauge, HoldData, HoldKind, HoldSetup, Measured, PressureUnit, infer_leak, limit_leak,
};

use crate::{celsius, close, cm3, pa, seconds};

/// Molar volume in the standard state of this crate, m³/mol.
const MOLAR_VOLUME: f64 = 8.314_472 * 293.15 / 101_325.0;

/// Source: 40 CFR 1065.644, example of equation 1: 2.96570·10⁻⁴ mol/s (printed 0.00030).
#[test]
fn the_regulation_s_example_as_a_needle_rule() {
    let (start, end) = (pa(101_325.0 - 25_300.0), pa(101_325.0 - 50_600.0));
    let leak = limit_leak(cm3(2000.0), pa(101_325.0), start - end, 70.0, start);
    close(leak.std_m3_s() / MOLAR_VOLUME, 2.965_70e-4, 1e-3);
}

/// Source: the same example, read on a fine gauge and inferred backwards.
#[test]
fn the_regulation_s_example_inferred() {
    let gauge = Gauge {
        unit: PressureUnit::KPa,
        span: 100.0,
        division: 0.01,
        read_to: 0.01,
        ..Gauge::default()
    };
    let mut setup = HoldSetup::new(pa(101_325.0), celsius(20.0), gauge, Measured::exact(2000e-6));
    setup.hand_timed = false;
    setup.thermal_k = 0.0;
    setup.creep = pa(0.0);
    let data = HoldData {
        start: pa(76_025.0),
        points: (1..=10)
            .map(|i| {
                let t = 7.0 * f64::from(i);
                (seconds(t), pa(76_025.0 - 25_300.0 * t / 70.0))
            })
            .collect(),
        kind: HoldKind::Spot,
    };
    let found = infer_leak(&setup, &data).unwrap();
    close(found.value().std_m3_s() / MOLAR_VOLUME, 2.965_70e-4, 2e-3);
}
