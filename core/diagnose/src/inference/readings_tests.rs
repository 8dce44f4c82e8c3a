//! What single readings say of causes.

use serde_json::json;

use super::tests::{given, job, p};
use crate::{
    Circuit, CircuitChoice, Complaint, Reading, Situation, TestId, TestResult, finding, judge, parse_answer,
};

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

/// A circuit of its template in a car that shakes at idle.
pub(super) fn shaking(template: &str) -> (Circuit, Situation) {
    let situation = Situation {
        complaint: [Complaint::ShakeIdle].into(),
        ..Situation::default()
    };
    let circuit = Circuit::build(&CircuitChoice::Template(template.into())).unwrap();
    (circuit, situation)
}

/// An answer with its result.
pub(super) fn read(
    circuit: &Circuit,
    situation: &Situation,
    test: &str,
    answer: &serde_json::Value,
) -> (Reading, TestResult) {
    let test: TestId = test.parse().unwrap();
    let (answer, state) = parse_answer(circuit, &test, answer).unwrap();
    let reading = Reading {
        state,
        ..Reading::new(test, answer)
    };
    let result = judge(circuit, situation, &[], &reading);
    (reading, result)
}

/// Two valves behind one fuse: a short in either circuit opens it for both.
#[test]
fn a_short_behind_a_shared_fuse_is_suspected_from_either_side() {
    let (circuit, situation) = shaking("two-valves-shared-feed");
    let dead = json!({"pin1": 0.0, "pin2": 0.0, "battery": 12.5});
    let supply = read(&circuit, &situation, "supply-volts:front_valve", &dead);
    let before = finding(&circuit, &situation, &[]);
    let after = finding(&circuit, &situation, &[supply]);
    let (near, far) = (p(&after, "front_coil/shorted"), p(&after, "rear_coil/shorted"));
    assert!(far > 1.5 * p(&before, "rear_coil/shorted"));
    assert!((far / near - 1.0).abs() < 0.1, "{far} beside {near}");
}

/// Ohm's law: a coil that touches its case at the end of the control wire is closed by it as by a chafed wire, until the
/// connector is pulled.
#[test]
fn a_coil_on_its_case_behind_the_winding_keeps_the_valve_on() {
    let off = json!({"gauge": 12.0, "unit": "inHg", "seconds": 5});
    assert!(times("coil/to_ground", &[("switch-over", off.clone())]) > 2.0);
    let pin = json!({"off_v": 0.4, "on_v": 0.3, "battery": 14.0});
    let wire = json!({"ohms": 0.4, "to_ground_open": true, "to_battery_open": true});
    let answers = [("switch-over", off), ("control-pin", pin), ("control-wire", wire)];
    assert!(times("coil/to_ground", &answers[..2]) > 2.0);
    assert!(times("coil/to_ground", &answers) > 10.0 * times("control_wire/to_ground", &answers));
    // With the connector off nothing closes the circuit; a chafed wire still does.
    let across = json!({"volts": 13.9, "plugged_v": 13.9, "battery": 14.0});
    let answers = [answers[0].clone(), ("valve-volts", across)];
    assert!(times("coil/to_ground", &answers) < 0.2 * times("control_wire/to_ground", &answers));
}

/// A hose that is off brings nothing to a gauge behind it; where it came off the valve, a gauge on its own end shows all that the
/// source makes. Little vacuum is neither.
#[test]
fn a_gauge_on_a_hose_that_is_off_shows_all_or_nothing() {
    let of = |template: &str, fault: &str, gauge: f64| {
        let (circuit, situation) = shaking(template);
        let source = read(
            &circuit,
            &situation,
            "source",
            &json!({"gauge": gauge, "unit": "inHg"}),
        );
        let ratio = |readings: &[(Reading, TestResult)]| {
            let finding = finding(&circuit, &situation, readings);
            let sound = finding.causes.iter().find(|c| c.faults.is_empty()).unwrap().p;
            p(&finding, fault) / sound
        };
        ratio(&[source]) / ratio(&[])
    };
    let farther_up = |gauge| of("two-mounts-one-valve", "inlet_hose/off", gauge);
    assert!(farther_up(18.5) < 0.05);
    assert!(farther_up(0.0) > 10.0 * farther_up(6.0));
    let at_the_valve = |gauge| of("reservoir-on-tee", "valve_hose/off", gauge);
    assert!((0.3..0.8).contains(&at_the_valve(18.5)));
    assert!(at_the_valve(0.0) > 10.0 * at_the_valve(6.0));
}

/// What the source brings does not go through the hand pump: a leaking one is as likely as before, beside the dead meter.
#[test]
fn vacuum_at_work_says_nothing_of_the_hand_pump() {
    for test in ["delivered", "source"] {
        let answers = [(test, json!({"gauge": 18.5, "unit": "inHg"}))];
        let (leaks, dead) = (
            times("hand_pump/leaks", &answers),
            times("multimeter/dead", &answers),
        );
        assert!((leaks / dead - 1.0).abs() < 0.01, "{test}: {leaks}, {dead}");
    }
}

/// An adapter's cone seals most ends that came off: a hose that won't hold by itself, and was not seen to be off, is split.
#[test]
fn a_hose_that_fails_alone_is_rather_split_than_off() {
    let answers = [
        ("look", json!({})),
        ("hold:front_hose", json!({"never_reached": 3, "unit": "inHg"})),
    ];
    let finding = given(&job("leaking front mount"), &answers);
    assert!(p(&finding, "front_hose/leaks") > p(&finding, "front_hose/off"));
    assert!(p(&finding, "front_hose/off") > 0.02);
}
