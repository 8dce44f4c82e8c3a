//! Compressible laminar flow in a round pipe (Hagen-Poiseuille, isothermal): any handbook of vacuum technique.
//!
//! Figures computed outside this project's code, crossed with fluids 1.3.0 `isothermal_gas`. Left out: the third
//! capillary (50 µm × 5 mm), too short for the formula by its own validity rule, and transitional hose flow.

use holdfast_measure::{Element, viscosity};

use crate::{close, metres, mm};

/// Source: ṁ = π·d⁴·(p1² − p2²)/(256·μ·R·T·L), p1 = 101,325 Pa, 20 °C: d µm, L mm, p2, kg/s, Pa·m³/s. Tolerance 0.5 %.
#[test]
fn fine_capillaries() {
    for (micrometres, millimetres, p2, kg_s, pa_m3_s) in [
        (20.0, 10.0, 33_597.22, 1.175_81e-9, 9.8943e-5),
        (30.0, 20.0, 67_461.11, 1.861_64e-9, 1.566_55e-4),
    ] {
        let capillary = Element::capillary(mm(micrometres / 1000.0), mm(millimetres));
        close(capillary.mass_flow(101_325.0, p2, 293.15), kg_s, 5e-3);
        close(capillary.throughput(101_325.0, p2, 293.15), pa_m3_s, 5e-3);
    }
}

/// Source: the first capillary above, whose state is that in which a leak is stated: 1.17581·10⁻⁹ kg/s over the
/// density of air at 20 °C and 101,325 Pa, 1.20411 kg/m³.
#[test]
fn a_capillary_as_a_leak() {
    let leak = Element::capillary(mm(0.02), mm(10.0)).leak_rate();
    close(leak.std_cm3_min(), 1.175_81e-9 / 1.204_11 * 6e7, 5e-3);
    close(leak.kg_s(), 1.175_81e-9, 5e-3);
}

/// Source: fluids 1.3.0 `friction_factor` and `isothermal_gas`: 3.5 mm hose, 1 m, laminar (Re 339). Tolerance 2 %.
#[test]
fn the_drop_along_a_hose_behind_a_small_hole() {
    let hose = Element::capillary(mm(3.5), metres(1.0));
    for (p1, drop) in [(33_597.0, 209.2), (101_325.0, 69.15)] {
        close(hose.mass_flow(p1, p1 - drop, 293.15), 1.6906e-5, 2e-2);
    }
}

/// Source: incompressible Hagen-Poiseuille: 82.06 Pa a metre at 1 L/min in a 3.5 mm bore. Tolerance 2 %.
#[test]
fn the_drop_along_a_hose_at_a_litre_a_minute() {
    let hose = Element::capillary(mm(3.5), metres(1.0));
    let mean = 101_325.0;
    let kg_s = hose.mass_flow(mean + 41.03, mean - 41.03, 293.15);
    let density = mean / (287.05 * 293.15);
    close(kg_s / density * 60_000.0, 1.0, 2e-2);
    close(viscosity(293.15), 1.8134e-5, 1e-4);
}
