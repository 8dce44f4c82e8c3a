//! Ohms: the fuse, wires and the coil.

use serde_json::json;

use super::*;
use Outcome::{AsExpected as Good, NotAsExpected as Bad, Undecided as Open};

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
        "power-wire",
        json!({"ohms": 0.4, "to_ground_open": false}),
        Bad,
        "power-wire-to-ground",
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
    // Source: IEC 60028: copper at 80 °C has 1.2358 times its resistance at 20 °C; 31 Ω reads 38.3.
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
