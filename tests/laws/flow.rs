//! Laws of flow and of falling vacuum.

use holdfast_measure::si::{
    f64::{Pressure, ThermodynamicTemperature, Time, Volume},
    pressure::pascal,
    thermodynamic_temperature::kelvin,
    time::second,
    volume::cubic_meter,
};
use holdfast_measure::{
    ClosedVolume, Element, LeakForm, LeakRate, fall_of_one, limit_leak, standard_atmosphere,
    steady_vacuum_at_mount,
};
use proptest::prelude::*;

fn any_form() -> impl Strategy<Value = LeakForm> {
    prop_oneof![Just(LeakForm::Hole), Just(LeakForm::Viscous)]
}

fn any_element() -> impl Strategy<Value = Element> {
    prop_oneof![
        (any_form(), 0.1..5000.0)
            .prop_map(|(form, leak)| Element::leak(form, LeakRate::from_std_cm3_min(leak))),
        (0.001..0.5, 0.0..0.6).prop_map(|(c, b)| Element::iso_6358(c, b)),
    ]
}

fn fall(ambient: f64, volume: f64, vacuum: f64, leaks: Vec<Element>, seconds: f64) -> f64 {
    let air = ThermodynamicTemperature::new::<kelvin>(293.15);
    let closed = ClosedVolume::rigid(
        Volume::new::<cubic_meter>(volume),
        Pressure::new::<pascal>(vacuum),
        air,
        leaks,
    );
    fall_of_one(
        Pressure::new::<pascal>(ambient),
        air,
        &closed,
        &[Time::new::<second>(seconds)],
    )
    .unwrap()[0]
        .value
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 64, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn flow_runs_downhill_and_turns_with_the_pressures(
        element in any_element(), a in 1e4..1.1e5, b in 1e4..1.1e5, t in 250.0..330.0,
    ) {
        let there = element.mass_flow(a, b, t);
        prop_assert!(there * (a - b) >= 0.0);
        prop_assert_eq!(there, -element.mass_flow(b, a, t));
    }

    #[test]
    fn deeper_vacuum_never_draws_less(element in any_element(), p in 2e4..1e5, less in 0.0..2e4) {
        prop_assert!(
            element.mass_flow(101_325.0, p - less, 293.15) >= element.mass_flow(101_325.0, p, 293.15) * (1.0 - 1e-12)
        );
    }

    #[test]
    fn parallel_leaks_add(form in any_form(), a in 1.0..500.0, b in 1.0..500.0, t in 1.0..30.0) {
        let leak = |figure: f64| Element::leak(form, LeakRate::from_std_cm3_min(figure));
        let apart = fall(101_325.0, 1e-4, 6e4, vec![leak(a), leak(b)], t);
        let together = fall(101_325.0, 1e-4, 6e4, vec![leak(a + b)], t);
        prop_assert!((apart - together).abs() < 2.0, "{} {}", apart, together);
    }

    #[test]
    fn all_times_scale_with_the_volume(
        element in any_element(), volume in 3e-5..7e-4, factor in 0.3..3.0, t in 0.5..20.0,
    ) {
        let one = fall(95_000.0, volume, 6e4, vec![element], t);
        let other = fall(95_000.0, volume * factor, 6e4, vec![element], t * factor);
        prop_assert!((one - other).abs() < 2.0, "{} {}", one, other);
    }

    #[test]
    fn a_larger_leak_leaves_less(form in any_form(), leak in 1.0..2000.0, t in 0.5..30.0) {
        let left = |figure: f64| {
            fall(101_325.0, 1e-4, 6.7e4, vec![Element::leak(form, LeakRate::from_std_cm3_min(figure))], t)
        };
        prop_assert!(left(leak * 1.1) <= left(leak) + 1.0);
    }

    #[test]
    fn a_closed_volume_never_passes_ambient(element in any_element(), t in 1.0..600.0) {
        let left = fall(101_325.0, 5e-5, 6.7e4, vec![element], t);
        prop_assert!((-1.0..=67_001.0).contains(&left), "{}", left);
    }

    #[test]
    fn the_needle_rule_grows_with_volume_and_drop(volume in 3e-5..7e-4, drop in 500.0..20_000.0, t in 5.0..120.0) {
        let rule = |volume: f64, drop: f64| limit_leak(
            Volume::new::<cubic_meter>(volume), Pressure::new::<pascal>(101_325.0), Pressure::new::<pascal>(drop), t,
            Pressure::new::<pascal>(67_000.0),
        ).std_cm3_min();
        let one = rule(volume, drop);
        prop_assert!((rule(2.0 * volume, drop) / one - 2.0).abs() < 1e-9);
        prop_assert!(rule(volume, 1.2 * drop) > one);
    }

    #[test]
    fn air_thins_with_altitude(low in -400.0..5000.0_f64, more in 1.0..1000.0) {
        let at = |m: f64| standard_atmosphere(
            holdfast_measure::Length::new::<holdfast_measure::si::length::meter>(m));
        prop_assert!(at(low + more) < at(low));
    }

    #[test]
    fn a_mount_never_gets_more_than_the_source(leak in any_element(), feed in any_element(), source in 1e4..7e4) {
        let found = steady_vacuum_at_mount(
            Pressure::new::<pascal>(source), Pressure::new::<pascal>(101_325.0),
            ThermodynamicTemperature::new::<kelvin>(293.15), &[feed], &[leak],
        ).value;
        prop_assert!((-1.0..=source + 1.0).contains(&found), "{}", found);
    }
}
