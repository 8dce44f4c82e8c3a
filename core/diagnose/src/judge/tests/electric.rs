use serde_json::json;

use super::*;
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

/// Source: common practice, no source: with the supply side switched neither pin is live at rest.
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
    let key_on = json!({"pin1": 0.0, "pin2": 0.02, "battery": 12.5, "engine": "off"});
    expect(&relay, "supply-volts", key_on, Open, "supply-volts-relay-off");
    let as_asked = json!({"pin1": 0.0, "pin2": 0.02, "battery": 13.9});
    expect(&relay, "supply-volts", as_asked, Bad, "supply-volts-none");
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

/// Source: data sheets of driver chips: many switch off, or hold a bias, while nothing is connected.
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
