use serde_json::json;

use super::*;
use Outcome::{AsExpected as Good, NotAsExpected as Bad, Undecided as Open};

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
        Open,
        "shake-strong-either-way",
    );
    expect(
        &known(),
        "shake",
        json!({"on_0_3": 2, "off_0_3": 2}),
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
