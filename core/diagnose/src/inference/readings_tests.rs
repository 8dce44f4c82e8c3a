//! What single readings say of causes.

use serde_json::json;

use super::tests::{given, job, p};

/// How many times likelier a fault is than nothing wrong, after the last reading over before it.
fn times(fault: &str, answers: &[(&str, serde_json::Value)]) -> f64 {
    let base = job("leaking front mount");
    let odds = |answers: &[(&str, serde_json::Value)]| {
        let finding = given(&base, answers);
        let nothing = finding.causes.iter().find(|c| c.faults.is_empty()).unwrap().p;
        p(&finding, fault) / nothing
    };
    odds(answers) / odds(&answers[..answers.len() - 1])
}

/// A misfire is felt on soft mounts, too, so that a shake with vacuum on and off speaks for it; hard mounts speak of
/// themselves only where vacuum should be on.
#[test]
fn a_shake_with_and_without_vacuum_speaks_for_the_engine_and_for_dead_mounts() {
    let shake = |on: u8, off: u8| [("shake", json!({"on_0_3": on, "off_0_3": off}))];
    assert!(times("engine/rough", &shake(3, 3)) > 3.0);
    assert!(times("valve/stuck_closed", &shake(3, 3)) > 3.0);
    assert!(times("engine/rough", &shake(0, 2)) < 0.3);
    assert!(times("valve/stuck_closed", &shake(0, 2)) < 0.3);
}

/// Common practice, no source: a needle that flicks at idle means a misfire.
#[test]
fn a_needle_that_does_not_stand_still_speaks_for_the_engine() {
    let source = |steady: bool| [("source", json!({"gauge": 18.5, "unit": "inHg", "steady": steady}))];
    assert!(times("engine/rough", &source(false)) > 5.0);
    assert!(times("engine/rough", &source(true)) < 0.7);
}

/// Ohm's law: nothing is lost where no current flows.
#[test]
fn an_open_coil_has_all_the_volts_and_leaves_none_at_the_control_pin() {
    let across = |plugged: f64| {
        let volts = json!({"volts": 13.9, "plugged_v": plugged, "battery": 13.9});
        [("valve-volts", volts)]
    };
    assert!(times("coil/open", &across(13.9)) > 1.5 * times("coil/open", &across(13.4)));
    let pin = |off: f64, on: f64| [("control-pin", json!({"off_v": off, "on_v": on, "battery": 13.9}))];
    assert!(times("coil/open", &pin(0.02, 0.0)) > 20.0);
    assert!(times("coil/open", &pin(13.9, 0.4)) < 0.05);
}

#[test]
fn a_weak_battery_shows_where_it_is_read_beside_other_volts() {
    let with = |battery: f64| {
        let pins = json!({"pin1": battery, "pin2": 0.0, "battery": battery});
        [("supply-volts", pins)]
    };
    assert!(times("battery/weak", &with(10.5)) > 20.0);
    assert!(times("battery/weak", &with(12.5)) < 0.1);
}

/// From memory: the coil of a stuck valve still pulls at it, which some people hear.
#[test]
fn a_click_does_not_prove_that_a_valve_passes() {
    let on = |clicks: bool| {
        [(
            "valve-on",
            json!({"passes": false, "clicks": clicks, "vents": true}),
        )]
    };
    assert!(times("valve/stuck_closed", &on(true)) > 5.0);
    assert!(times("coil/open", &on(true)) < times("coil/open", &on(false)));
}
