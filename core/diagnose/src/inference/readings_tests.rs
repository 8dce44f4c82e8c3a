//! What single readings say of causes.

use serde_json::json;

use super::tests::{given, job, p};
use crate::finding;

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

/// A hose on a wrong port of the valve leads to the mounts when vacuum is put on it by hand.
#[test]
fn a_spare_hose_in_the_valves_place_reaches_the_mounts_behind_a_crossed_hose() {
    let answers = [
        ("delivered", json!({"gauge": 0.0, "unit": "inHg"})),
        ("bypass", json!({"changes": true})),
    ];
    let of = |fault: &str| times(fault, &answers);
    assert!((of("outlet_hose/crossed") / of("valve/stuck_closed") - 1.0).abs() < 0.2);
    assert!(of("outlet_hose/blocked") < 0.3 * of("valve/stuck_closed"));
}

/// Who says that it shakes, and nothing of a clunk, has seldom a loose mount.
#[test]
fn what_is_not_complained_of_speaks_too() {
    let base = job("leaking front mount");
    let finding = given(&base, &[]);
    let loose = p(&finding, "front_mount/loose");
    let weight = |fault: &str| {
        let data = &crate::faults::data().modes;
        let (part, mode) = fault.split_once('/').unwrap();
        data.iter()
            .find(|m| m.mode == mode && format!("{:?}", m.kind).to_lowercase() == part)
            .unwrap()
            .weight
    };
    let prior = weight("mount/loose") / weight("mount/sagged");
    assert!(loose / p(&finding, "front_mount/sagged") < 0.3 * prior);
}

/// Two valves behind one fuse: a short in either circuit opens it for both.
#[test]
fn a_short_behind_a_shared_fuse_is_suspected_from_either_side() {
    let circuit =
        crate::Circuit::build(&crate::CircuitChoice::Template("two-valves-shared-feed".into())).unwrap();
    let situation = crate::Situation {
        complaint: [crate::Complaint::ShakeIdle].into(),
        ..crate::Situation::default()
    };
    let test: crate::TestId = "supply-volts:front_valve".parse().unwrap();
    let dead = json!({"pin1": 0.0, "pin2": 0.0, "battery": 12.5});
    let (answer, state) = crate::parse_answer(&circuit, &test, &dead).unwrap();
    let reading = crate::Reading {
        state,
        ..crate::Reading::new(test, answer)
    };
    let result = crate::judge(&circuit, &situation, &[], &reading);
    let before = finding(&circuit, &situation, &[]);
    let after = finding(&circuit, &situation, &[(reading, result)]);
    let (near, far) = (p(&after, "front_coil/shorted"), p(&after, "rear_coil/shorted"));
    assert!(far > 1.5 * p(&before, "rear_coil/shorted"));
    assert!((far / near - 1.0).abs() < 0.1, "{far} beside {near}");
}
