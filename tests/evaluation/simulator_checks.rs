//! The simulation itself against figures from outside and against its own distributions.

use crate::ailments;
use crate::air::{INHG, Leak, after, flow, standard_atmosphere};
use crate::draw::{Draw, below, quantile};
use crate::jobs::{Job, Stratum};
use crate::law::{Branch, Datum, Law, ln_mass, with_slips};

#[test]
fn the_normal_s_quantile_undoes_its_distribution() {
    // Source: JCGM 106 and tables of the normal distribution: 0.95 → 1.64485, 0.975 → 1.95996.
    assert!((quantile(0.95) - 1.644_85).abs() < 1e-5);
    assert!((quantile(0.975) - 1.959_96).abs() < 1e-5);
    for p in [0.001, 0.02, 0.3, 0.5, 0.9, 0.999] {
        assert!((below(quantile(p)) - p).abs() < 3e-7, "{p}");
    }
}

#[test]
fn the_air_is_that_of_the_standard_atmosphere() {
    // Source: ISO 2533; 84,559.7 Pa at 1,500 m, 70,121.1 at 3,000 m (geometric).
    assert!((standard_atmosphere(1_500.0) / 84_559.7 - 1.0).abs() < 2e-4);
    assert!((standard_atmosphere(3_000.0) / 70_121.1 - 1.0).abs() < 4e-4);
}

#[test]
fn a_choked_hole_makes_the_needle_fall_in_a_straight_line() {
    // Source: gas dynamics of an ideal hole of 0.1 mm (nozzle, 93.602 std cm³/min) on 100 cm³ from 20 inHg at sea level:
    // 1,580.70 Pa/s while choked.
    let leak = Leak {
        hole: 93.602,
        thin: 0.0,
    };
    let start = 101_325.0 - 20.0 * INHG;
    let p = after(leak, 100.0, 101_325.0, 293.15, start, 10.0);
    assert!(((p - start) / 15_807.0 - 1.0).abs() < 3e-3, "{p}");
    assert!(flow(leak, 101_325.0, start, 293.15) - 93.602 < 1e-9);
}

#[test]
fn a_thin_path_follows_the_hyperbolic_tangent() {
    // Source: laminar leak in closed form, p = pa · tanh(K·pa·t + artanh(p0/pa)).
    let leak = Leak {
        hole: 0.0,
        thin: 50.0,
    };
    let (pa, start) = (101_325.0, 33_597.0);
    let k = flow(leak, pa, start, 293.15) / 60.0 * pa / 100.0 / (pa * pa - start * start);
    let exact = pa * (k * pa * 40.0 + (start / pa).atanh()).tanh();
    let p = after(leak, 100.0, pa, 293.15, start, 40.0);
    assert!((p / exact - 1.0).abs() < 1e-4, "{p} {exact}");
}

#[test]
fn draws_come_as_often_as_their_mass_says() {
    let right = Branch::right(vec![
        ("x".into(), Law::number(3.2, 0.8, 0.5)),
        ("y".into(), Law::Yes(0.3)),
    ]);
    let slip = vec![
        ("x".into(), Law::number(0.0, 0.2, 0.5)),
        ("y".into(), Law::Yes(0.7)),
    ];
    let branches = with_slips(right, vec![(0.1, crate::law::Slip::WrongPin, slip)]);
    let mut draw = Draw::of(1, "check");
    let mut hits = 0;
    let wanted = vec![("x".into(), Datum::Number(3.0)), ("y".into(), Datum::Yes(true))];
    let count = 40_000;
    for _ in 0..count {
        let branch = &branches[draw.by_weight(branches.iter().map(|b| b.weight))];
        let report: crate::law::Report = branch
            .fields
            .iter()
            .map(|(k, law)| (k.clone(), law.draw(&mut draw)))
            .collect();
        hits += i32::from(report == wanted);
    }
    let mass = ln_mass(&branches, &wanted).exp();
    let seen = f64::from(hits) / f64::from(count);
    assert!(
        (seen - mass).abs() < 4.0 * (mass / f64::from(count)).sqrt(),
        "{seen} {mass}"
    );
}

#[test]
fn the_same_seed_gives_the_same_job() {
    let (a, b) = (Job::drawn(Stratum::Natural, 7), Job::drawn(Stratum::Natural, 7));
    assert_eq!(format!("{a:?}"), format!("{b:?}"));
    assert_ne!(a.seed, Job::drawn(Stratum::Natural, 8).seed);
}

/// Faults that the simulation has no physics for are never drawn; there may be few of them.
#[test]
fn nearly_every_fault_of_the_core_s_data_is_simulated() {
    let left_out: f64 = ailments::not_simulated().iter().map(|(_, w)| w).sum();
    assert!(left_out < 0.05, "{:?}", ailments::not_simulated());
}
