//! Laws of the inferred leak.

use holdfast_measure::si::{pressure::kilopascal, thermodynamic_temperature::degree_celsius, time::second};
use holdfast_measure::{
    Gauge, HoldData, HoldError, HoldKind, HoldSetup, LeakForm, LeakRate, Measured, Pressure, PressureUnit,
    ThermodynamicTemperature, Time, infer_leak, predict_form, seconds_to_decide,
};
use proptest::prelude::*;

fn inhg(figure: f64) -> Pressure {
    PressureUnit::InHg.to_pressure(figure)
}

fn setup(cm3: f64, share: f64) -> HoldSetup {
    HoldSetup::new(
        Pressure::new::<kilopascal>(101.325),
        ThermodynamicTemperature::new::<degree_celsius>(20.0),
        Gauge::default(),
        Measured::relative(cm3 * 1e-6, share),
    )
}

fn read(seconds: f64, reading: f64) -> HoldData {
    HoldData {
        start: inhg(20.0),
        points: vec![(Time::new::<second>(seconds), inhg(reading))],
        kind: HoldKind::Spot,
    }
}

fn trace(setup: &HoldSetup, form: LeakForm, leak: f64, seconds: u32) -> HoldData {
    let points = (1..=seconds * 10)
        .filter(|i| i % 11 != 0)
        .map(|i| {
            let t = f64::from(i) / 10.0;
            let drop = predict_form(setup, form, inhg(20.0), LeakRate::from_std_cm3_min(leak), t);
            // A camera's figures: steps of 0.05 inHg with a scatter that repeats.
            let scatter = inhg(0.04 * (f64::from(i) * 2.4).sin());
            let shown = PressureUnit::InHg.from_pressure(inhg(20.0) - drop + scatter);
            (Time::new::<second>(t), inhg((shown * 20.0).round() / 20.0))
        })
        .collect();
    HoldData {
        start: inhg(20.0),
        points,
        kind: HoldKind::Trace { hz: 10.0 },
    }
}

/// A camera reads finer than the eye.
fn by_camera(mut setup: HoldSetup) -> HoldSetup {
    setup.gauge.read_to = 0.05;
    setup.hand_timed = false;
    setup
}

#[test]
fn straight_and_curved_falls_are_told_apart_by_a_trace() {
    let setup = by_camera(setup(100.0, 0.06));
    for form in [LeakForm::Hole, LeakForm::Viscous] {
        for leak in [60.0, 150.0, 400.0] {
            let found = infer_leak(&setup, &trace(&setup, form, leak, 20)).unwrap();
            assert_eq!(
                found.form(),
                Some(form),
                "{leak}: {}",
                found.probability_of_hole()
            );
            let (low, high) = found.interval(0.95);
            assert!(
                (low.std_cm3_min()..high.std_cm3_min()).contains(&leak),
                "{leak}: {low:?} {high:?}"
            );
            assert!(found.strain() < 1.5, "{}", found.strain());
        }
    }
}

#[test]
fn two_readings_cannot_tell_the_form() {
    assert_eq!(
        infer_leak(&setup(180.0, 0.06), &read(20.0, 13.5)).unwrap().form(),
        None
    );
}

#[test]
fn a_rising_needle_is_no_leak_and_shows_as_strain() {
    let found = infer_leak(&setup(100.0, 0.06), &read(20.0, 24.0)).unwrap();
    assert!(found.strain() > 2.0, "{}", found.strain());
    assert!(!found.is_proved());
    assert!(
        infer_leak(&setup(100.0, 0.06), &read(20.0, 20.0))
            .unwrap()
            .strain()
            == 1.0
    );
}

#[test]
fn the_tester_s_own_leak_is_taken_off() {
    let mut with = setup(100.0, 0.02);
    let tester = LeakRate::from_std_cm3_min(20.0).std_m3_s();
    with.tester = Some(Measured::new(tester, 0.1 * tester));
    let without = infer_leak(&setup(100.0, 0.02), &read(20.0, 15.0)).unwrap();
    let own = infer_leak(&with, &read(20.0, 15.0)).unwrap();
    let gone = without.value().std_cm3_min() - own.value().std_cm3_min();
    assert!((gone - 20.0).abs() < 3.0, "{gone}");
    assert!((own.tester_share() - 0.4).abs() < 0.06, "{}", own.tester_share());
    let all = infer_leak(&with, &read(20.0, 18.0)).unwrap();
    assert!(!all.is_proved());
    assert_eq!(all.interval(0.95).0, LeakRate::ZERO);
}

#[test]
fn unusable_data_are_refused_with_the_reason() {
    let setup = setup(100.0, 0.06);
    let none = HoldData {
        points: vec![],
        ..read(20.0, 20.0)
    };
    assert_eq!(infer_leak(&setup, &none), Err(HoldError::NoReading));
    assert_eq!(infer_leak(&setup, &read(-1.0, 20.0)), Err(HoldError::NotFinite));
    assert_eq!(
        infer_leak(&setup, &read(20.0, f64::NAN)),
        Err(HoldError::NotFinite)
    );
    assert_eq!(
        infer_leak(&setup, &read(20.0, 67.7)),
        Err(HoldError::AboveAmbient)
    );
    let flat = HoldData {
        start: inhg(0.0),
        ..read(20.0, 0.0)
    };
    assert_eq!(infer_leak(&setup, &flat), Err(HoldError::NoVacuum));
    let vast = HoldSetup {
        ambient: Pressure::new::<kilopascal>(500.0),
        ..setup
    };
    assert!(matches!(
        infer_leak(&vast, &read(20.0, 15.0)),
        Err(HoldError::Quantity(_))
    ));
}

#[test]
fn a_longer_watch_is_offered_when_half_a_division_is_in_doubt() {
    let setup = setup(100.0, 0.06);
    let limit = LeakRate::from_std_cm3_min(5.0);
    let more = seconds_to_decide(&setup, &read(20.0, 19.5), limit)
        .unwrap()
        .unwrap();
    assert!((10.0..120.0).contains(&more), "{more}");
    assert_eq!(seconds_to_decide(&setup, &read(20.0, 10.0), limit).unwrap(), None);
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 48, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn a_lower_reading_means_a_larger_leak(cm3 in 30.0..700.0, reading in 4.0..19.0) {
        let leak = |reading| infer_leak(&setup(cm3, 0.06), &read(20.0, reading)).unwrap().value().std_cm3_min();
        prop_assert!(leak(reading - 1.0) > leak(reading));
    }

    #[test]
    fn the_leak_scales_with_the_volume(cm3 in 40.0..300.0_f64, factor in 1.1..2.0_f64, reading in 8.0..18.0) {
        let leak = |cm3: f64| infer_leak(&setup(cm3, 0.06), &read(20.0, reading)).unwrap().value().std_cm3_min();
        let ratio = leak(cm3 * factor) / leak(cm3) / factor;
        prop_assert!((ratio - 1.0).abs() < 0.02, "{}", ratio);
    }

    #[test]
    fn interval_and_probabilities_are_of_one_mind(cm3 in 30.0..700.0, reading in 0.5..20.0, limit in 0.5..1000.0) {
        let found = infer_leak(&setup(cm3, 0.08), &read(20.0, reading)).unwrap();
        let (low, high) = found.interval(0.95);
        prop_assert!(low <= found.value() && found.value() <= high);
        let outside = if found.is_proved() { 0.025 } else { 0.05 };
        prop_assert!((found.probability_over(high) - outside).abs() < 1e-6);
        let p = found.probability_over(LeakRate::from_std_cm3_min(limit));
        prop_assert!((0.0..=1.0).contains(&p));
        prop_assert!(p >= found.probability_over(LeakRate::from_std_cm3_min(limit * 1.5)));
    }

    #[test]
    fn no_readings_break_the_inference(
        start in -10.0..40.0_f64,
        points in prop::collection::vec((-5.0..1000.0_f64, -5.0..40.0_f64), 0..12),
        cm3 in 1.0..20_000.0_f64,
        share in 0.0..3.0_f64,
        traced in any::<bool>(),
    ) {
        let data = HoldData {
            start: inhg(start),
            points: points.iter().map(|(t, v)| (Time::new::<second>(*t), inhg(*v))).collect(),
            kind: if traced { HoldKind::Trace { hz: 10.0 } } else { HoldKind::Spot },
        };
        if let Ok(found) = infer_leak(&setup(cm3, share), &data) {
            let (low, high) = found.interval(0.95);
            prop_assert!(low.std_cm3_min() >= 0.0 && high.std_cm3_min().is_finite() && low <= high);
            prop_assert!(found.hole_mm().is_finite() && found.strain() >= 1.0);
            prop_assert!((0.0..=1.0).contains(&found.probability_over_drop(inhg(0.5), 20.0, inhg(20.0))));
        }
    }
}
