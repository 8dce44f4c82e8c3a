use serde_json::{Value as Json, json};

use super::*;
use crate::{Catalogue, CircuitChoice, Place, listed_messages, parse_answer};

/// A circuit of which all is known: ground side switched, ignition fed, window at idle, vacuum makes soft.
fn known() -> Json {
    json!({"template": "two-mounts-one-valve", "vacuum_means": "soft", "switched": "ground",
           "feed": "ignition", "window": "idle", "coil_ohm": [25, 31]})
}

fn plain() -> Json {
    json!("two-mounts-one-valve")
}

fn with(mut base: Json, change: Json) -> Json {
    for (key, value) in change.as_object().unwrap() {
        base[key] = value.clone();
    }
    base
}

fn circuit(choice: &Json) -> Circuit {
    Circuit::build(&serde_json::from_value::<CircuitChoice>(choice.clone()).unwrap()).unwrap()
}

fn reading(circuit: &Circuit, test: &str, answer: &Json) -> Reading {
    let test = test.parse().unwrap();
    let (answer, state) = parse_answer(circuit, &test, answer).unwrap();
    Reading {
        state,
        ..Reading::new(test, answer)
    }
}

/// Judges the last of some answers, the others before it; every message must be listed as it is said.
fn result(choice: &Json, situation: &Situation, answers: &[(&str, Json)]) -> TestResult {
    let circuit = circuit(choice);
    let readings: Vec<Reading> = answers
        .iter()
        .map(|(test, json)| reading(&circuit, test, json))
        .collect();
    let (last, earlier) = readings.split_last().unwrap();
    let result = judge(&circuit, situation, earlier, last);
    assert!(!result.says.is_empty(), "{answers:?} says nothing");
    for message in &result.says {
        let listed = listed_messages().iter().find(|m| m.id == message.id.as_str());
        assert!(
            listed.is_some_and(|l| l.fits(message)),
            "{answers:?}: {message:?} is not as listed"
        );
    }
    result
}

fn first(choice: &Json, answers: &[(&str, Json)]) -> (Outcome, String) {
    let result = result(choice, &Situation::default(), answers);
    (result.outcome, result.says[0].id.to_string())
}

fn says(result: &TestResult, id: &str) -> bool {
    result.says.iter().any(|m| m.id.as_str() == id)
}

#[track_caller]
fn expect(choice: &Json, test: &str, answer: Json, outcome: Outcome, message: &str) {
    assert_eq!(
        first(choice, &[(test, answer.clone())]),
        (outcome, message.to_owned()),
        "{test} {answer}"
    );
}

use Outcome::{AsExpected as Good, NotAsExpected as Bad, Undecided as Open};

#[test]
fn power_at_the_pins_of_a_ground_switched_circuit() {
    let ground = known();
    expect(
        &ground,
        "supply-volts",
        json!({"pin1": 12.4, "pin2": 0.02, "battery": 12.5}),
        Good,
        "supply-volts-one",
    );
    expect(
        &ground,
        "supply-volts",
        json!({"pin1": 0.02, "pin2": 12.4, "battery": 12.5}),
        Good,
        "supply-volts-one",
    );
    expect(
        &ground,
        "supply-volts",
        json!({"pin1": 12.4, "pin2": 2.5, "battery": 12.5}),
        Good,
        "supply-volts-one",
    );
    expect(
        &ground,
        "supply-volts",
        json!({"pin1": 0.0, "pin2": 0.02, "battery": 12.5}),
        Bad,
        "supply-volts-none",
    );
    expect(
        &ground,
        "supply-volts",
        json!({"pin1": 12.4, "pin2": 12.4, "battery": 12.5}),
        Open,
        "supply-volts-both",
    );
    expect(
        &ground,
        "supply-volts",
        json!({"pin1": 8.0, "pin2": 0.0, "battery": 12.5}),
        Bad,
        "supply-volts-low",
    );
    expect(
        &plain(),
        "supply-volts",
        json!({"pin1": 0.0, "pin2": 0.02, "battery": 12.5}),
        Bad,
        "supply-volts-none",
    );
}

/// Source: trade sheet, 1.4.
#[test]
fn power_at_the_pins_depends_on_the_layout() {
    let none = json!({"pin1": 0.0, "pin2": 0.02, "battery": 12.5});
    let supply = with(known(), json!({"switched": "supply"}));
    expect(
        &supply,
        "supply-volts",
        none.clone(),
        Good,
        "supply-volts-none-normal",
    );
    expect(
        &supply,
        "supply-volts",
        json!({"pin1": 12.4, "pin2": 0.0, "battery": 12.5}),
        Bad,
        "supply-volts-always-on",
    );
    let relay = with(known(), json!({"feed": "relay"}));
    expect(
        &relay,
        "supply-volts",
        none.clone(),
        Open,
        "supply-volts-relay-off",
    );
    let at_idle = json!({"pin1": 0.0, "pin2": 0.02, "battery": 13.9, "engine": "idle"});
    expect(&relay, "supply-volts", at_idle, Bad, "supply-volts-none");
    let push_pull = with(known(), json!({"electric": "push-pull"}));
    expect(
        &push_pull,
        "supply-volts",
        json!({"pin1": 12.4, "pin2": 12.4, "battery": 12.5}),
        Good,
        "supply-volts-both-normal",
    );
}

#[test]
fn battery_is_what_it_is_now() {
    // 11.9 V would be low against a fresh battery, and is all there is here.
    expect(
        &known(),
        "supply-volts",
        json!({"pin1": 11.7, "pin2": 0.0, "battery": 11.8}),
        Good,
        "supply-volts-one",
    );
    expect(
        &known(),
        "supply-volts",
        json!({"pin1": 11.7, "pin2": 0.0, "battery": 12.9}),
        Bad,
        "supply-volts-low",
    );
}

#[test]
fn a_corroded_joint_shows_only_under_load() {
    let volts = (
        "supply-volts",
        json!({"pin1": 12.4, "pin2": 0.0, "battery": 12.5}),
    );
    let answers = [
        volts.clone(),
        ("supply-loaded", json!({"pin1": 3.1, "battery": 12.5})),
    ];
    let low = result(&known(), &Situation::default(), &answers);
    assert_eq!(low.outcome, Bad);
    assert!(says(&low, "supply-loaded-hidden-joint"), "{low:?}");
    let good = [volts, ("supply-loaded", json!({"pin1": 12.1}))];
    assert_eq!(first(&known(), &good), (Good, "supply-loaded-good".into()));
    expect(
        &known(),
        "supply-loaded",
        json!({"pin1": 11.9, "battery": 12.5}),
        Open,
        "supply-loaded-marginal",
    );
}

#[test]
fn the_fuse_in_both_forms() {
    let fuse = |answer: Json, outcome, message| expect(&known(), "fuse", answer, outcome, message);
    fuse(json!({"in_v": 12.4, "out_v": 12.4}), Good, "fuse-good");
    fuse(json!({"in_v": 12.4, "out_v": 0.0}), Bad, "fuse-blown");
    fuse(json!({"in_v": 0.0, "out_v": 0.0}), Bad, "fuse-no-feed");
    fuse(json!({"in_v": 12.4, "out_v": 9.0}), Bad, "fuse-loses");
    fuse(json!({"in_v": 12.4}), Open, "fuse-one-side");
    fuse(json!({"ohms": 0.2}), Good, "fuse-ohms-good");
    fuse(json!({"ohms": 40}), Bad, "fuse-ohms-bad");
    fuse(json!({"open": true}), Bad, "fuse-open");
    let relay = with(known(), json!({"feed": "relay"}));
    expect(
        &relay,
        "fuse",
        json!({"in_v": 0.0, "out_v": 0.0}),
        Open,
        "fuse-no-feed-relay",
    );
}

#[test]
fn wires_by_ohms() {
    expect(
        &known(),
        "power-wire",
        json!({"ohms": 0.4}),
        Good,
        "power-wire-good",
    );
    expect(
        &known(),
        "power-wire",
        json!({"ohms": 1.4}),
        Open,
        "power-wire-marginal",
    );
    expect(
        &known(),
        "power-wire",
        json!({"ohms": 12}),
        Bad,
        "power-wire-high",
    );
    expect(
        &known(),
        "power-wire",
        json!({"open": true}),
        Bad,
        "power-wire-open",
    );
    expect(
        &known(),
        "power-wire",
        json!({"ohms": 0.4, "drop_v": 1.2}),
        Bad,
        "power-wire-drop",
    );
    expect(
        &known(),
        "control-wire",
        json!({"ohms": 0.5, "to_ground_open": true}),
        Good,
        "control-wire-good",
    );
    expect(
        &known(),
        "control-wire",
        json!({"ohms": 0.5, "to_ground_open": false}),
        Bad,
        "control-wire-to-ground",
    );
    expect(
        &known(),
        "control-wire",
        json!({"ohms": 0.5, "to_battery_open": false}),
        Bad,
        "control-wire-to-battery",
    );
    expect(
        &known(),
        "control-wire",
        json!({"open": true}),
        Bad,
        "control-wire-open",
    );
    // Leads of 1.0 Ω would make a good wire look bad, and are taken off.
    let leads = [
        ("prove-meter", json!({"ohms": 1.0})),
        ("power-wire", json!({"ohms": 1.4})),
    ];
    assert_eq!(first(&known(), &leads).0, Good);
}

/// Source: trade sheet, 1.3 and 6: the connected reading decides.
#[test]
fn an_open_connector_never_ends_in_the_module() {
    for choice in [known(), plain(), with(known(), json!({"window": "idle_in_gear"}))] {
        let (outcome, message) = first(
            &choice,
            &[("valve-volts", json!({"volts": 0.0, "battery": 13.9}))],
        );
        assert_eq!((outcome, message.as_str()), (Open, "valve-volts-open-none"));
    }
    expect(
        &known(),
        "valve-volts",
        json!({"volts": 0.0, "plugged_v": 13.6, "battery": 13.9}),
        Good,
        "valve-volts-good",
    );
    expect(
        &known(),
        "valve-volts",
        json!({"volts": 13.8, "plugged_v": 13.6, "battery": 13.9}),
        Good,
        "valve-volts-good",
    );
    expect(
        &known(),
        "valve-volts",
        json!({"volts": 0.0, "plugged_v": 0.0, "battery": 13.9}),
        Bad,
        "valve-volts-none",
    );
    expect(
        &known(),
        "valve-volts",
        json!({"volts": 0.0, "connected": true, "battery": 13.9}),
        Bad,
        "valve-volts-none",
    );
    expect(
        &known(),
        "valve-volts",
        json!({"volts": 13.8, "plugged_v": 2.8, "battery": 13.9}),
        Bad,
        "valve-volts-low",
    );
}

#[test]
fn nothing_outside_the_window_says_nothing() {
    let gear = with(known(), json!({"window": "idle_in_gear"}));
    let at_idle = json!({"volts": 0.0, "plugged_v": 0.0, "battery": 13.9, "engine": "idle"});
    let idle = result(&gear, &Situation::default(), &[("valve-volts", at_idle)]);
    assert_eq!(idle.outcome, Open);
    assert!(says(&idle, "command-window-not-met"));
    let in_gear = json!({"volts": 0.0, "plugged_v": 0.0, "battery": 13.9, "engine": "in_gear"});
    expect(&gear, "valve-volts", in_gear, Bad, "valve-volts-none");
    let unknown = json!({"volts": 0.0, "plugged_v": 0.0, "battery": 13.9});
    expect(&plain(), "valve-volts", unknown.clone(), Open, "valve-volts-none");
    expect(
        &gear,
        "delivered",
        json!({"gauge": 0, "engine": "idle"}),
        Open,
        "delivered-none",
    );
    expect(&known(), "delivered", json!({"gauge": 0}), Bad, "delivered-none");
    // Vacuum that came proves the window.
    let shown = [("delivered", json!({"gauge": 18.5})), ("valve-volts", unknown)];
    assert_eq!(first(&plain(), &shown).0, Bad);
}

#[test]
fn the_control_pin_switches() {
    expect(
        &known(),
        "control-pin",
        json!({"off_v": 13.8, "on_v": 0.3, "battery": 13.9}),
        Good,
        "control-pin-good",
    );
    expect(
        &known(),
        "control-pin",
        json!({"off_v": 13.8, "on_v": 13.8, "battery": 13.9}),
        Bad,
        "control-pin-no-change",
    );
    expect(
        &plain(),
        "control-pin",
        json!({"off_v": 13.8, "on_v": 13.8, "battery": 13.9}),
        Open,
        "control-pin-no-change",
    );
    expect(
        &known(),
        "control-pin",
        json!({"off_v": 0.1, "on_v": 0.1, "battery": 13.9}),
        Bad,
        "control-pin-always-low",
    );
    expect(
        &known(),
        "control-pin",
        json!({"off_v": 13.8, "on_v": 5.0, "battery": 13.9}),
        Bad,
        "control-pin-weak",
    );
    expect(
        &known(),
        "control-pin",
        json!({"off_v": 13.8}),
        Open,
        "control-pin-off-good",
    );
    let supply = with(known(), json!({"switched": "supply"}));
    expect(
        &supply,
        "control-pin",
        json!({"off_v": 0.0, "on_v": 13.6, "battery": 13.9}),
        Good,
        "control-pin-good",
    );
    let pulsed = with(known(), json!({"electric": "pulsed-with-diode"}));
    expect(
        &pulsed,
        "control-pin",
        json!({"off_v": 13.8, "on_v": 8.0, "battery": 13.9}),
        Good,
        "control-pin-pulsed",
    );
}

#[test]
fn the_coil_s_band_goes_with_temperature() {
    expect(
        &known(),
        "coil",
        json!({"ohms": 28.5, "to_case_open": true}),
        Good,
        "coil-good",
    );
    expect(&known(), "coil", json!({"open": true}), Bad, "coil-open");
    expect(&known(), "coil", json!({"ohms": 2}), Bad, "coil-shorted");
    expect(
        &known(),
        "coil",
        json!({"ohms": 28.5, "to_case_open": false}),
        Bad,
        "coil-to-case",
    );
    // Source: references, e: copper at 80 °C has 1.2358 times its resistance at 20 °C; 31 Ω reads 38.3.
    expect(
        &known(),
        "coil",
        json!({"ohms": 38.3, "hot": true}),
        Good,
        "coil-good",
    );
    expect(
        &known(),
        "coil",
        json!({"ohms": 38.3, "hot": false}),
        Bad,
        "coil-high",
    );
    // Of an unknown coil only the usual band is known, so its edge is no finding.
    expect(&plain(), "coil", json!({"ohms": 15}), Open, "coil-near-band");
    expect(&plain(), "coil", json!({"ohms": 300}), Bad, "coil-high");
}

#[test]
fn vacuum_at_the_source_goes_with_the_air() {
    expect(
        &known(),
        "source",
        json!({"gauge": 19, "steady": true}),
        Good,
        "source-good",
    );
    expect(
        &known(),
        "source",
        json!({"gauge": 19, "steady": false}),
        Bad,
        "source-unsteady",
    );
    expect(&known(), "source", json!({"gauge": 0.5}), Bad, "source-none");
    expect(&known(), "source", json!({"gauge": 8}), Bad, "source-low");
    expect(&known(), "source", json!({"gauge": 14}), Open, "source-lowish");
    expect(&known(), "source", json!({"felt": true}), Good, "source-felt");
    let place = Place {
        altitude_m: Some(2_400.0),
        ..Place::default()
    };
    let high = Situation {
        place,
        ..Situation::default()
    };
    assert_eq!(
        result(&known(), &high, &[("source", json!({"gauge": 12}))]).outcome,
        Good
    );
    let pump = json!("pump-with-brake-booster");
    expect(&pump, "source", json!({"gauge": 26}), Good, "source-good");
    expect(&pump, "source", json!({"gauge": 18}), Bad, "source-low");
}

#[test]
fn vacuum_arrives_and_leaves() {
    let source = ("source", json!({"gauge": 19}));
    let delivered = |json: Json| first(&known(), &[source.clone(), ("delivered", json)]);
    assert_eq!(
        delivered(json!({"gauge": 18.5, "seconds": 2})),
        (Good, "delivered-good".into())
    );
    assert_eq!(delivered(json!({"gauge": 10})), (Bad, "delivered-low".into()));
    assert_eq!(
        delivered(json!({"gauge": 18.5, "seconds": 9})),
        (Bad, "delivered-slow".into())
    );
    expect(
        &known(),
        "switch-over",
        json!({"seconds": 1.5, "gauge": 0}),
        Good,
        "switch-over-good",
    );
    expect(
        &known(),
        "switch-over",
        json!({"seconds": 8, "gauge": 0}),
        Bad,
        "switch-over-slow",
    );
    let stays = [
        ("delivered", json!({"gauge": 18.5})),
        ("switch-over", json!({"seconds": 10, "gauge": 18})),
    ];
    assert_eq!(first(&known(), &stays), (Bad, "switch-over-stays".into()));
}

#[test]
fn the_valve_goes_by_its_rest_state() {
    expect(
        &known(),
        "valve-off",
        json!({"passes": false, "vents": true}),
        Good,
        "valve-off-good",
    );
    expect(
        &known(),
        "valve-off",
        json!({"passes": true, "vents": true}),
        Bad,
        "valve-off-passes",
    );
    expect(
        &known(),
        "valve-off",
        json!({"passes": false, "vents": false}),
        Bad,
        "valve-off-no-vent",
    );
    expect(
        &known(),
        "valve-on",
        json!({"passes": true, "clicks": true, "vents": false}),
        Good,
        "valve-on-good",
    );
    expect(
        &known(),
        "valve-on",
        json!({"passes": false, "clicks": false}),
        Bad,
        "valve-on-dead",
    );
    expect(
        &known(),
        "valve-on",
        json!({"passes": false, "clicks": true}),
        Bad,
        "valve-on-clicks-only",
    );
    expect(
        &known(),
        "valve-on",
        json!({"passes": true, "clicks": true, "vents": true}),
        Bad,
        "valve-on-vents",
    );
    let open = json!("two-mounts-open-at-rest");
    expect(
        &open,
        "valve-off",
        json!({"passes": true, "vents": false}),
        Good,
        "valve-off-good",
    );
    expect(
        &open,
        "valve-on",
        json!({"passes": false, "clicks": true, "vents": true}),
        Good,
        "valve-on-good",
    );
}

#[test]
fn what_vibration_should_do_goes_with_the_mount() {
    expect(
        &known(),
        "shake",
        json!({"on_0_3": 1, "off_0_3": 3}),
        Good,
        "shake-felt-works",
    );
    expect(
        &known(),
        "shake",
        json!({"on_0_3": 3, "off_0_3": 3}),
        Bad,
        "shake-felt-no-effect",
    );
    expect(
        &known(),
        "shake",
        json!({"on_0_3": 0, "off_0_3": 0}),
        Open,
        "shake-none-either-way",
    );
    let stiff = with(known(), json!({"vacuum_means": "stiff"}));
    expect(
        &stiff,
        "shake",
        json!({"on_0_3": 1, "off_0_3": 3}),
        Bad,
        "shake-felt-wrong-way",
    );
    expect(
        &stiff,
        "shake",
        json!({"on_0_3": 3, "off_0_3": 1}),
        Good,
        "shake-felt-works",
    );
    let wave = |level: f64| -> Vec<f64> { (0..300).map(|i| 1000.0 + level * f64::from(i).sin()).collect() };
    let samples =
        |on: f64, off: f64| json!({"on": {"hz": 100, "mg": wave(on)}, "off": {"hz": 100, "mg": wave(off)}});
    expect(&known(), "shake", samples(10.0, 25.0), Good, "shake-works");
    expect(&known(), "shake", samples(10.0, 10.5), Bad, "shake-no-effect");
    expect(&known(), "shake", samples(10.0, 13.0), Open, "shake-small-effect");
    let short = json!({"on": {"hz": 100, "mg": [1.0, 2.0]}, "off": {"hz": 100, "mg": [1.0, 2.0]}});
    expect(&known(), "shake", short, Open, "shake-too-short");
}

#[test]
fn eyes_and_hands() {
    expect(&known(), "look", json!({}), Good, "look-clear");
    expect(
        &known(),
        "look",
        json!({"front_hose": "cracked", "tee": "ok"}),
        Bad,
        "look-found",
    );
    expect(
        &known(),
        "mount-look:front_mount",
        json!({"torn": false, "wet": false, "sag_mm": 0}),
        Good,
        "mount-looks-good",
    );
    expect(
        &known(),
        "mount-look:front_mount",
        json!({"torn": true, "wet": true}),
        Bad,
        "mount-torn",
    );
    expect(
        &known(),
        "mount-look:front_mount",
        json!({"torn": false, "sag_mm": 6}),
        Bad,
        "mount-sagged",
    );
    expect(
        &known(),
        "mount-move:front_mount",
        json!({"clunk": true}),
        Bad,
        "mount-clunks",
    );
    expect(
        &known(),
        "mount-move:front_mount",
        json!({"clunk": false, "gap_opens": true}),
        Bad,
        "mount-gap-opens",
    );
    expect(
        &known(),
        "flow:front_hose",
        json!({"free": false}),
        Bad,
        "flow-blocked",
    );
    expect(&known(), "codes", json!({"list": []}), Good, "codes-none");
    expect(
        &known(),
        "codes",
        json!({"list": ["P0A15"]}),
        Bad,
        "codes-mount-circuit",
    );
    expect(&known(), "codes", json!({"list": ["P0301"]}), Bad, "codes-others");
    expect(
        &known(),
        "idle-quality",
        json!({"rpm": 750, "steady": true, "rough": false}),
        Good,
        "idle-good",
    );
    expect(
        &known(),
        "idle-quality",
        json!({"rpm": 750, "rough": true}),
        Bad,
        "idle-rough",
    );
    expect(
        &known(),
        "wiggle:connector",
        json!({"steady": false}),
        Bad,
        "wiggle-jumps",
    );
    expect(
        &known(),
        "bypass",
        json!({"changes": true}),
        Good,
        "bypass-changes",
    );
    expect(
        &known(),
        "prove-meter",
        json!({"ohms": 0.2, "battery": 12.6}),
        Good,
        "prove-meter-good",
    );
    expect(
        &known(),
        "prove-meter",
        json!({"open": true}),
        Bad,
        "prove-meter-leads-open",
    );
}

#[test]
fn a_test_that_was_not_done_says_so() {
    let circuit = circuit(&plain());
    let test = "hold:rear_mount".parse().unwrap();
    let reading = Reading::new(
        test,
        Answer::NotDone {
            reason: "no access".into(),
        },
    );
    assert_eq!(
        judge(&circuit, &Situation::default(), &[], &reading).outcome,
        Outcome::NotDone
    );
}

#[test]
fn every_band_holds_a_sound_reading() {
    let circuit = circuit(&known());
    let band = |test: &str, key: &str| {
        let test = test.parse().unwrap();
        expected_band(
            &circuit,
            &Situation::default(),
            &[],
            &test,
            crate::CarState::default(),
            &key.into(),
        )
        .unwrap()
    };
    assert!(band("coil", "ohms").holds(28.5));
    assert!(band("supply-loaded", "pin1").holds(12.2));
    assert!(band("control-pin", "off_v").holds(13.8));
    assert!(band("control-pin", "on_v").holds(0.3));
    assert!(band("valve-volts", "plugged_v").holds(13.6));
    assert!(band("power-wire", "ohms").holds(0.4));
    assert!(band("source", "gauge").holds(19.0 * 3386.389));
    for spec in Catalogue::standard().all_for(&circuit) {
        for field in &spec.fields {
            if let Some(band) = expected_band(
                &circuit,
                &Situation::default(),
                &[],
                &spec.id,
                crate::CarState::default(),
                &field.key,
            ) {
                assert!(band.low < band.high, "{} {}", spec.id, field.key);
            }
        }
    }
}
