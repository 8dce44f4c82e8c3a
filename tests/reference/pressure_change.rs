//! Leak testing by pressure change: form of ASTM E2930, EN 1779, EN 13184 (titles and form from memory), worked
//! with scipy 1.17.1 (`solve_ivp`, LSODA, rtol 10⁻¹¹, inverse-checked by quadrature).
//!
//! Left out: the 50 µm × 5 mm capillary as a real passage; it is used for the algebra of the laminar curve only.

use holdfast_measure::{
    ClosedVolume, Element, Gauge, HoldSetup, LeakForm, LeakRate, Measured, PressureUnit, Warming,
    fall_of_one, ideal_hole, limit_leak, predict_form,
};

use crate::{celsius, close, cm3, inhg, metres, mm, pa, seconds};

const SEA: f64 = 101_325.0;

/// Source: scipy 1.17.1: 100 cm³, ideal 0.1 mm hole, from 20 inHg: s, Pa absolute. Tolerance 0.1 %.
const HOLE_FALL: [(f64, f64); 13] = [
    (0.0, 33_597.22),
    (2.0, 36_758.63),
    (5.0, 41_500.74),
    (10.0, 49_404.26),
    (12.6089, 53_528.15),
    (15.0, 57_303.92),
    (20.0, 65_097.27),
    (25.0, 72_578.41),
    (30.0, 79_542.75),
    (35.0, 85_798.54),
    (40.0, 91_172.90),
    (50.0, 98_710.35),
    (60.018, 101_325.0),
];

fn rigid(volume: f64, leak: Element) -> ClosedVolume {
    ClosedVolume::rigid(cm3(volume), inhg(20.0), celsius(20.0), vec![leak])
}

/// Source: scipy 1.17.1 `solve_ivp`, table above.
#[test]
fn fall_through_a_hole_integrated() {
    let times: Vec<_> = HOLE_FALL.iter().map(|(t, _)| seconds(*t)).collect();
    let fall = fall_of_one(
        pa(SEA),
        celsius(20.0),
        &rigid(100.0, Element::round_hole(mm(0.1))),
        &times,
    )
    .unwrap();
    for ((_, expected), vacuum) in HOLE_FALL.iter().zip(fall) {
        close(SEA - vacuum.value, *expected, 1e-4);
    }
}

/// Source: the same table, by the closed form that the inference uses.
#[test]
fn fall_through_a_hole_in_closed_form() {
    let setup = HoldSetup::new(pa(SEA), celsius(20.0), Gauge::default(), Measured::exact(100e-6));
    let leak = Element::round_hole(mm(0.1)).leak_rate();
    for (t, expected) in HOLE_FALL {
        let drop = predict_form(&setup, LeakForm::Hole, inhg(20.0), leak, t);
        close(33_597.22 + drop.value, expected, 1e-4);
    }
}

/// Source: scipy 1.17.1: choked slope 0.46678 inHg/s; seconds to read 19, 15, 10, 5, 1 inHg.
#[test]
fn times_to_read_marks() {
    let leak = Element::round_hole(mm(0.1)).leak_rate();
    for (reading, t) in [
        (19.0, 2.1423),
        (15.0, 10.7116),
        (10.0, 21.551),
        (5.0, 33.818),
        (1.0, 48.601),
    ] {
        let needle_rule = limit_leak(cm3(100.0), pa(SEA), inhg(20.0 - reading), t, inhg(20.0));
        close(needle_rule.std_cm3_min(), leak.std_cm3_min(), 1e-3);
    }
}

/// Source: closed form p = pa·tanh(K·pa·t + artanh(p0/pa)), scipy 1.17.1: s, inHg. Tolerance 0.1 %.
#[test]
fn fall_through_a_laminar_path() {
    let capillary = Element::capillary(mm(0.05), mm(5.0));
    let table = [
        (10.0, 19.5461),
        (30.0, 18.6545),
        (60.0, 17.3602),
        (120.0, 14.9381),
        (300.0, 9.1057),
    ];
    let times: Vec<_> = table.iter().map(|(t, _)| seconds(*t)).collect();
    let fall = fall_of_one(pa(SEA), celsius(20.0), &rigid(50.0, capillary), &times).unwrap();
    let setup = HoldSetup::new(pa(SEA), celsius(20.0), Gauge::default(), Measured::exact(50e-6));
    for ((t, expected), vacuum) in table.into_iter().zip(fall) {
        close(PressureUnit::InHg.from_pressure(vacuum), expected, 1e-3);
        let drop = predict_form(&setup, LeakForm::Viscous, inhg(20.0), capillary.leak_rate(), t);
        close(20.0 - PressureUnit::InHg.from_pressure(drop), expected, 1e-3);
    }
}

/// Source: Q = V·Δp/Δt: 150 mL, 20 to 18 inHg in 60 s; half an inHg in 300 s on 100 mL. Tolerance 0.1 %.
#[test]
fn worked_leaks() {
    let leak = limit_leak(cm3(150.0), pa(SEA), inhg(2.0), 60.0, inhg(20.0));
    close(leak.pa_m3_s(), 0.016_931_9, 1e-3);
    close(leak.std_cm3_min(), 10.0263, 1e-3);
    close(leak.kg_s(), 2.012_15e-7, 1e-3);
    close(ideal_hole(leak).value * 1000.0, 0.032_729, 1e-3);
    let small = limit_leak(cm3(100.0), pa(SEA), inhg(0.5), 300.0, inhg(20.0));
    close(small.pa_m3_s(), 5.644e-4, 1e-3);
    close(small.std_cm3_min(), 0.3342, 1e-3);
}

/// Source: p/T constant, from 20 inHg: start °C, end °C, reading inHg. Tolerance 0.2 %.
#[test]
fn drift_of_trapped_gas() {
    for (from, to, reading) in [
        (30.0, 20.0, 20.3273),
        (90.0, 20.0, 21.9124),
        (20.0, 25.0, 19.8308),
    ] {
        let sealed = ClosedVolume {
            leaks: vec![],
            temperature: celsius(from),
            warming: Warming::Towards {
                kelvin: celsius(to).value,
                time_constant: 1.0,
            },
            ..rigid(100.0, Element::leak(LeakForm::Hole, LeakRate::ZERO))
        };
        let end = fall_of_one(pa(SEA), celsius(20.0), &sealed, &[seconds(60.0)]).unwrap()[0];
        close(PressureUnit::InHg.from_pressure(end), reading, 2e-4);
    }
}

/// Source: hose figures of the laminar pipe flow: 1 m of 3.5 mm hose hides under 0.1 inHg in a hold test.
#[test]
fn a_hose_between_leak_and_gauge_is_invisible_on_a_dial() {
    let hose = Element::capillary(mm(3.5), metres(1.0));
    let tester = ClosedVolume::rigid(cm3(30.0), inhg(20.0), celsius(20.0), vec![]);
    let part = rigid(70.0, Element::round_hole(mm(0.3)));
    let times = [seconds(1.0), seconds(2.0)];
    let both = holdfast_measure::fall_of_two(pa(SEA), celsius(20.0), (&tester, &part), hose, &times).unwrap();
    for (gauge, leaking) in both {
        let behind = PressureUnit::InHg.from_pressure(gauge - leaking);
        assert!(behind > 0.0 && behind < 0.1, "{behind}");
    }
}
