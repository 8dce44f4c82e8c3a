//! The short run, with a seed of its own: so many jobs as half a minute allows. Its bounds catch what gets worse; the promises
//! are measured by the long run.

use std::sync::LazyLock;

use crate::batch::{Plan, Record, done};
use crate::bounds;
use crate::jobs::Stratum;
use crate::table::Figures;

static GUIDED: LazyLock<Vec<Record>> = LazyLock::new(|| {
    done(Plan {
        natural: 80,
        double: 0,
        one_slip: 80,
        sound: 20,
        tester: 16,
        oracle: 8,
        from: 900_000,
        textbook: false,
    })
});

static BOTH_WAYS: LazyLock<Vec<Record>> = LazyLock::new(|| {
    done(Plan {
        natural: 60,
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
    bounds::keeps(f.single_right, bounds::SINGLE_RIGHT);
}

#[test]
fn jobs_end_with_a_finding_or_with_what_cannot_be_told_apart() {
    let f = Figures::of(&GUIDED);
    bounds::keeps(f.ended, bounds::ENDED);
}

#[test]
fn sound_circuits_are_not_blamed() {
    let f = Figures::of(&GUIDED);
    bounds::stays_under(f.sound_blamed, bounds::SOUND_BLAMED);
}

#[test]
fn a_leaking_tester_does_not_end_as_a_faulty_car() {
    let f = Figures::of(&GUIDED);
    bounds::stays_under(f.tester_blames, bounds::TESTER_BLAMES);
}

#[test]
fn said_probabilities_come_true() {
    let f = Figures::of(&GUIDED);
    let natural = GUIDED.iter().filter(|r| r.stratum == Stratum::Natural).count();
    bounds::is_calibrated(f.calibration, natural);
}

#[test]
fn one_slip_does_not_lead_astray() {
    let f = Figures::of(&GUIDED);
    bounds::keeps(f.slip_right, bounds::SLIP_RIGHT);
}

#[test]
fn an_oracle_does_hardly_better_on_the_same_readings() {
    let f = Figures::of(&GUIDED);
    bounds::keeps(f.core_parts, f.oracle_parts.value() - bounds::BELOW_ORACLE);
}

#[test]
fn the_guided_way_takes_fewer_minutes_than_the_textbook_s_order() {
    let f = Figures::of(&BOTH_WAYS);
    let (fixed, skipping) = (f.fixed.unwrap(), f.skipping.unwrap());
    bounds::saves(fixed, bounds::SAVED);
    bounds::saves(skipping, bounds::SAVED_SKIPPING);
}
