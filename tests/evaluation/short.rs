//! The short run: 320 jobs with a seed of their own.

use std::sync::LazyLock;

use crate::batch::{Plan, Record, done};
use crate::bounds;
use crate::table::Figures;

static GUIDED: LazyLock<Vec<Record>> = LazyLock::new(|| {
    done(Plan {
        natural: 180,
        double: 20,
        one_slip: 40,
        sound: 40,
        tester: 20,
        oracle: 20,
        from: 900_000,
        textbook: false,
    })
});

static BOTH_WAYS: LazyLock<Vec<Record>> = LazyLock::new(|| {
    done(Plan {
        natural: 20,
        double: 0,
        one_slip: 0,
        sound: 0,
        tester: 0,
        oracle: 0,
        from: 950_000,
        textbook: true,
    })
});

#[test]
fn every_answer_fits_the_test_that_was_asked() {
    for record in GUIDED.iter() {
        assert_eq!(record.refused, None, "seed {}", record.seed);
    }
}

#[test]
fn the_faulty_part_is_named() {
    let f = Figures::of(&GUIDED);
    assert!(
        f.single_right.value() >= bounds::SINGLE_RIGHT,
        "{}",
        f.single_right
    );
}

#[test]
fn jobs_end_with_a_finding_or_with_what_cannot_be_told_apart() {
    let f = Figures::of(&GUIDED);
    assert!(f.ended.value() >= bounds::ENDED, "{}", f.ended);
}

#[test]
fn sound_circuits_are_not_blamed() {
    let f = Figures::of(&GUIDED);
    assert!(
        f.sound_blamed.value() <= bounds::SOUND_BLAMED,
        "{}",
        f.sound_blamed
    );
}

#[test]
fn a_leaking_tester_does_not_end_as_a_faulty_car() {
    let f = Figures::of(&GUIDED);
    assert!(
        f.tester_blames.hits <= bounds::TESTER_BLAMES,
        "{}",
        f.tester_blames
    );
}

#[test]
fn said_probabilities_come_true() {
    let f = Figures::of(&GUIDED);
    assert!(f.calibration <= bounds::CALIBRATION, "{}", f.calibration);
}

#[test]
fn one_slip_does_not_lead_astray() {
    let f = Figures::of(&GUIDED);
    assert!(f.slip_right.value() >= bounds::SLIP_RIGHT, "{}", f.slip_right);
}

#[test]
fn an_oracle_does_hardly_better_on_the_same_readings() {
    let f = Figures::of(&GUIDED);
    let below = f.oracle_parts.value() - f.core_parts.value();
    assert!(
        below <= bounds::BELOW_ORACLE,
        "oracle {}, core {}",
        f.oracle_parts,
        f.core_parts
    );
}

#[test]
fn the_guided_way_takes_fewer_minutes_than_the_textbook_s_order() {
    let f = Figures::of(&BOTH_WAYS);
    let (fixed, skipping) = (f.fixed.unwrap(), f.skipping.unwrap());
    assert!(fixed.share >= bounds::SAVED, "{fixed}");
    assert!(skipping.share >= bounds::SAVED_SKIPPING, "{skipping}");
}
