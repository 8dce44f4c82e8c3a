//! Isentropic nozzle flow of an ideal gas, κ = 1.4, R = 287.05 J/(kg·K): any handbook of gas dynamics.
//!
//! Figures computed from the textbook formula and crossed with fluids 1.3.0 (API 520 sizing, within 0.002 %) and a
//! real-gas nozzle of CoolProp 8.0.0 (0.06 %, the size of what an ideal gas leaves out). Left out: discharge
//! coefficients, which belong to a real edge.

use holdfast_measure::{
    CRITICAL_RATIO, Element, LeakForm, LeakRate, choked_mass_flux, ideal_hole, leak_of_hole, nozzle_share,
};

use crate::{close, inhg, mm, pa};

const SEA: f64 = 101_325.0;
const TWENTY: f64 = 33_597.22;

/// Source: fluids 1.3.0 `P_critical_flow(P, 1.4)`; vacuum where choking ends at sea level, 1,500 m, 3,000 m.
#[test]
fn critical_ratio_and_the_vacuum_where_choking_ends() {
    close(CRITICAL_RATIO, 0.528_282, 1e-6);
    for (ambient, vacuum) in [(SEA, 14.114), (84_559.7, 11.779), (70_121.1, 9.768)] {
        close(
            ((1.0 - CRITICAL_RATIO) * pa(ambient) / inhg(1.0)).value,
            vacuum,
            1e-4,
        );
    }
}

/// Source: nozzle formula; CoolProp 8.0.0 real-gas nozzle 239.314 and 229.031 kg/(s·m²).
#[test]
fn mass_flow_through_a_square_metre() {
    close(choked_mass_flux(SEA, 293.15), 239.174, 1e-4);
    close(choked_mass_flux(SEA, 293.15), 239.314, 1e-3);
    close(
        choked_mass_flux(SEA, 293.15) * nozzle_share(67_461.11 / SEA),
        229.031,
        1e-3,
    );
}

/// Source: nozzle formula, ideal holes into 20 inHg: mm, kg/s, Pa·m³/s, std cm³/min at 20 °C. Tolerance 0.1 %.
#[test]
fn ideal_holes_into_twenty_inches() {
    for (diameter, kg_s, pa_m3_s, cm3_min) in [
        (0.1, 1.878_46e-6, 0.158_070, 93.602),
        (0.2, 7.513_86e-6, 0.632_282, 374.41),
        (0.3, 1.690_62e-5, 1.422_63, 842.42),
        (0.5, 4.696_16e-5, 3.951_76, 2340.1),
        (1.0, 1.878_46e-4, 15.8070, 9360.2),
    ] {
        let hole = Element::round_hole(mm(diameter));
        close(hole.mass_flow(SEA, TWENTY, 293.15), kg_s, 1e-3);
        close(hole.throughput(SEA, TWENTY, 293.15), pa_m3_s, 1e-3);
        let leak = leak_of_hole(mm(diameter));
        close(leak.std_cm3_min(), cm3_min, 1e-3);
        close(ideal_hole(leak).value * 1000.0, diameter, 1e-9);
        close(hole.leak_rate().std_cm3_min(), cm3_min, 1e-3);
    }
}

/// Source: nozzle formula: 15 inHg is still choked, 10 inHg is not (factor 0.957173).
#[test]
fn the_same_hole_at_fifteen_and_ten_inches() {
    let hole = Element::round_hole(mm(0.1));
    close(
        hole.mass_flow(SEA, SEA - inhg(15.0).value, 293.15),
        1.878_46e-6,
        1e-3,
    );
    close(
        hole.mass_flow(SEA, SEA - inhg(10.0).value, 293.15),
        1.798_02e-6,
        1e-3,
    );
}

/// Source: nozzle formula, flow as a share of choked flow. Tolerance 10⁻⁴.
#[test]
fn shares_beyond_choking() {
    for (ratio, share) in [
        (0.6, 0.988_59),
        (0.7, 0.932_22),
        (0.8, 0.818_80),
        (0.9, 0.617_15),
        (0.95, 0.449_29),
        (0.98, 0.288_94),
        (0.99, 0.205_43),
    ] {
        close(nozzle_share(ratio), share, 1e-4);
    }
}

/// Source: ideal-gas arithmetic: 1 Pa·m³/s is 592.154 cm³/min at 101,325 Pa of the same temperature.
#[test]
fn a_leak_in_other_units() {
    let leak = LeakRate::from_std_cm3_min(592.154);
    close(leak.pa_m3_s(), 1.0, 1e-5);
    close(
        Element::leak(LeakForm::Viscous, leak).leak_rate().std_cm3_min(),
        592.154,
        1e-9,
    );
}
