use std::collections::BTreeSet;

use approx::assert_relative_eq;
use serde_json::json;

use super::*;
use crate::{TestId, TestKind};

fn template(name: &str) -> Circuit {
    Circuit::build(&CircuitChoice::Template(name.into())).unwrap()
}

fn custom(json: serde_json::Value) -> Result<Circuit, CircuitError> {
    Circuit::build(&serde_json::from_value(json).unwrap())
}

fn hold(part: &str) -> TestId {
    TestId::on(TestKind::Hold, part)
}

fn scope(circuit: &Circuit, part: &str) -> Vec<String> {
    circuit
        .scope(&hold(part))
        .map(|s| s.parts.iter().map(ToString::to_string).collect())
        .unwrap_or_default()
}

#[test]
fn the_shipped_file_parses() {
    serde_json::from_str::<data::CircuitData>(data::CIRCUITS).unwrap();
}

#[test]
fn the_contract_s_circuit_has_exactly_its_components() {
    let circuit = template("two-mounts-one-valve");
    let ids: BTreeSet<&str> = circuit.components.iter().map(|c| c.id.as_str()).collect();
    let contract = [
        "source",
        "check_valve",
        "inlet_hose",
        "reservoir",
        "valve",
        "outlet_hose",
        "tee",
        "front_hose",
        "rear_hose",
        "front_mount",
        "rear_mount",
        "battery",
        "fuse",
        "power_wire",
        "connector",
        "coil",
        "control_wire",
        "module",
        "hand_pump",
        "engine",
    ];
    assert_eq!(ids, contract.into_iter().collect());
}

#[test]
fn all_twelve_vacuum_and_six_electric_layouts_are_there() {
    let rows: BTreeSet<u8> = templates().iter().map(|t| t.layout).collect();
    assert_eq!(rows, (1..=12).collect());
    let letters: BTreeSet<char> = layouts().iter().map(|l| l.layout).collect();
    assert_eq!(letters, ('a'..='f').collect());
}

#[test]
fn every_vacuum_layout_goes_with_every_electric_layout() {
    for template in templates() {
        for layout in layouts() {
            let circuit = custom(json!({"template": template.id, "electric": layout.id})).unwrap();
            makes_sense(&circuit);
        }
    }
}

/// What must be true of any circuit.
fn makes_sense(circuit: &Circuit) {
    let name = format!("{} with {}", circuit.template, circuit.electric);
    let ids: BTreeSet<_> = circuit.components.iter().map(|c| &c.id).collect();
    assert_eq!(ids.len(), circuit.components.len(), "{name}: an id is used twice");
    for link in &circuit.links {
        assert!(
            ids.contains(&link.from) && ids.contains(&link.to),
            "{name}: {link:?} hangs in the air"
        );
        let side = |id| circuit.component(id).map(|c| c.kind.side());
        assert_eq!(side(&link.from), Some(Side::Vacuum), "{name}");
        assert_eq!(side(&link.to), Some(Side::Vacuum), "{name}");
    }
    assert!(!circuit.drives.is_empty(), "{name}: no valve");
    for drive in &circuit.drives {
        assert!(ids.contains(&drive.valve), "{name}");
        for part in drive.parts() {
            assert!(ids.contains(part), "{name}: {part} of the drive is missing");
        }
        let branch = circuit.branch_of(&drive.valve);
        let has_mount = branch.iter().any(|id| {
            circuit
                .component(id)
                .is_some_and(|c| c.kind == ComponentKind::Mount)
        });
        assert!(has_mount, "{name}: {} works no mount", drive.valve);
    }
    for mount in circuit.of_kind(ComponentKind::Mount) {
        let worked = circuit
            .drives
            .iter()
            .any(|d| circuit.branch_of(&d.valve).contains(&mount.id));
        assert!(worked, "{name}: no valve works {}", mount.id);
        assert!(mount.volume_cm3 > 0.0 && mount.volume_rel_sd > 0.0, "{name}");
    }
    for part in &circuit.components {
        assert!((0.0..=1.0).contains(&part.volume_rel_sd), "{name}: {}", part.id);
        if part.kind == ComponentKind::Hose {
            assert!(
                part.length_m.is_some() && part.bore_mm.is_some(),
                "{name}: {}",
                part.id
            );
        }
        let fed = circuit.upstream(&part.id).count();
        if part.kind.side() == Side::Vacuum {
            assert_eq!(
                fed,
                usize::from(part.kind != ComponentKind::Source),
                "{name}: {} is fed {fed} times",
                part.id
            );
        }
    }
}

#[test]
fn the_contract_s_object_is_understood() {
    let circuit = custom(json!({
        "template": "two-mounts-one-valve", "chamber_cm3": {"front_mount": 84}, "chamber_rel_sd": 0.06,
        "length_m": {"front_hose": 0.5}, "bore_mm": 3.5, "reservoir_cm3": 520, "coil_ohm": [25, 31], "fuse_a": 15,
        "check_valve": true, "vacuum_means": "soft", "switched": "ground", "feed": "ignition", "window": "idle"
    }))
    .unwrap();
    let front = circuit.component(&"front_mount".into()).unwrap();
    assert_eq!((front.volume_cm3, front.volume_rel_sd), (84.0, 0.06));
    assert_eq!(circuit.component(&"reservoir".into()).unwrap().volume_cm3, 520.0);
    let properties = &circuit.properties;
    assert_eq!(
        (properties.coil_ohm, properties.fuse_a, properties.coil_known),
        ((25.0, 31.0), 15.0, true)
    );
    assert_eq!(properties.vacuum_means, VacuumMeans::Soft);
    assert_eq!(
        (properties.switched, properties.feed),
        (Switched::Ground, Feed::Ignition)
    );
    assert_eq!(properties.window, Window::Idle);
}

#[test]
fn what_is_left_out_is_unknown() {
    let properties = template("two-mounts-one-valve").properties;
    assert_eq!(properties.vacuum_means, VacuumMeans::Unknown);
    assert_eq!(
        (properties.switched, properties.feed),
        (Switched::Unknown, Feed::Unknown)
    );
    assert_eq!(properties.window, Window::Unknown);
    assert!(!properties.coil_known);
}

#[test]
fn a_layout_that_was_picked_is_known() {
    let circuit = custom(json!({"template": "one-mount", "electric": "supply-switched"})).unwrap();
    assert_eq!(circuit.properties.switched, Switched::Supply);
    assert!(circuit.component(&"ground_point".into()).is_some());
}

#[test]
fn unknown_keys_and_impossible_values_are_refused() {
    for text in [
        r#"{"template": "two-mounts-one-valve", "fuse": 15}"#,
        r#"{"template": "two-mounts-one-valve", "switched": "both"}"#,
        r#"{"fuse_a": 15}"#,
        "15",
    ] {
        assert!(serde_json::from_str::<CircuitChoice>(text).is_err(), "{text}");
    }
    let error = serde_json::from_str::<CircuitChoice>(r#"{"template": "x", "fuse": 15}"#).unwrap_err();
    assert!(error.to_string().contains("fuse"), "the key is named: {error}");
    for json in [
        json!({"template": "no-such"}),
        json!({"template": "one-mount", "electric": "no-such"}),
        json!({"template": "two-mounts-one-valve", "chamber_cm3": {"third_mount": 84}}),
        json!({"template": "two-mounts-one-valve", "chamber_cm3": {"front_hose": 84}}),
        json!({"template": "two-mounts-one-valve", "chamber_cm3": {"front_mount": -84}}),
        json!({"template": "two-mounts-one-valve", "length_m": {"front_mount": 1}}),
        json!({"template": "two-mounts-one-valve", "coil_ohm": [31, 25]}),
        json!({"template": "two-mounts-one-valve", "bore_mm": 0}),
        json!({"template": "two-mounts-one-valve", "fuse_a": 1e300}),
    ] {
        assert!(custom(json.clone()).is_err(), "{json}");
    }
}

#[test]
fn a_hose_holds_length_times_cross_section() {
    // π/4 · (3.5 mm)² · 0.5 m = 4.81 cm³.
    let circuit = template("two-mounts-one-valve");
    let volume = circuit.volume(&hold("front_hose")).unwrap();
    assert_relative_eq!(volume.value * 1e6, 4.8106, max_relative = 1e-4);
    assert_relative_eq!(volume.u / volume.value, 0.15, max_relative = 1e-9);
}

#[test]
fn the_branch_is_everything_after_the_valve() {
    let circuit = template("two-mounts-one-valve");
    let parts = [
        "outlet_hose",
        "tee",
        "front_hose",
        "rear_hose",
        "front_mount",
        "rear_mount",
    ];
    assert_eq!(scope(&circuit, "branch"), parts);
    let sum: f64 = parts
        .iter()
        .map(|p| circuit.volume(&hold(p)).unwrap().value)
        .sum();
    assert_relative_eq!(
        circuit.volume(&hold("branch")).unwrap().value,
        sum,
        max_relative = 1e-12
    );
}

#[test]
fn the_inlet_side_ends_at_the_check_valve() {
    let circuit = template("two-mounts-one-valve");
    assert_eq!(
        scope(&circuit, "inlet"),
        ["check_valve", "inlet_hose", "reservoir"]
    );
    let on_tee = template("reservoir-on-tee");
    assert_eq!(
        scope(&on_tee, "inlet"),
        [
            "check_valve",
            "inlet_hose",
            "inlet_tee",
            "reservoir_hose",
            "reservoir",
            "valve_hose"
        ]
    );
    let shared = template("two-valves-shared-feed");
    let inlet = scope(&shared, "inlet_front_valve");
    assert!(
        inlet.contains(&"rear_valve".to_owned()),
        "the other valve's seat sees the vacuum: {inlet:?}"
    );
    assert!(
        !inlet.contains(&"rear_hose".to_owned()),
        "but not what hangs behind it: {inlet:?}"
    );
    let booster = template("pump-with-brake-booster");
    assert!(!scope(&booster, "inlet").contains(&"brake_booster".to_owned()));
}

#[test]
fn without_a_check_valve_there_is_no_inlet_test() {
    let circuit = custom(json!({"template": "two-mounts-one-valve", "check_valve": false})).unwrap();
    assert!(circuit.component(&"check_valve".into()).is_none());
    assert_eq!(circuit.scope(&hold("inlet")), None);
    assert_eq!(circuit.reaches(), [crate::ComponentId::from("branch")]);
    makes_sense(&circuit);
}

#[test]
fn no_reservoir_is_no_reservoir() {
    let circuit = custom(json!({"template": "two-mounts-one-valve", "reservoir_cm3": 0})).unwrap();
    assert_eq!(scope(&circuit, "inlet"), ["check_valve", "inlet_hose"]);
    makes_sense(&circuit);
}

#[test]
fn a_mount_can_be_added_and_taken_out_again() {
    let plain = template("two-mounts-one-valve");
    let add = json!({"add_mount": {"id": "third_mount", "at": "tee", "chamber_cm3": 60, "hose_m": 0.7}});
    let more = custom(json!({"template": "two-mounts-one-valve", "edits": [add]})).unwrap();
    makes_sense(&more);
    assert!(scope(&more, "branch").contains(&"third_mount_hose".to_owned()));
    let mut again = more.clone();
    again
        .apply(&Edit::Remove {
            id: "third_mount".into(),
        })
        .unwrap();
    assert_eq!(again, plain);
}

#[test]
fn edits_change_what_they_say() {
    let mut circuit = template("two-mounts-one-valve");
    circuit
        .apply(&Edit::Length {
            id: "front_hose".into(),
            m: 1.0,
        })
        .unwrap();
    circuit
        .apply(&Edit::Bore {
            id: "front_hose".into(),
            mm: 4.0,
        })
        .unwrap();
    // π/4 · (4 mm)² · 1 m = 12.57 cm³.
    assert_relative_eq!(
        circuit.volume(&hold("front_hose")).unwrap().value * 1e6,
        12.566,
        max_relative = 1e-4
    );
    circuit
        .apply(&Edit::Volume {
            id: "rear_mount".into(),
            cm3: 90.0,
            rel_sd: 0.1,
        })
        .unwrap();
    assert_relative_eq!(
        circuit.volume(&hold("rear_mount")).unwrap().value * 1e6,
        90.0,
        max_relative = 1e-9
    );
    for wrong in [
        Edit::Remove { id: "valve".into() },
        Edit::Remove { id: "battery".into() },
        Edit::Length {
            id: "front_mount".into(),
            m: 1.0,
        },
        Edit::Length {
            id: "front_hose".into(),
            m: f64::NAN,
        },
        Edit::Volume {
            id: "battery".into(),
            cm3: 10.0,
            rel_sd: 0.1,
        },
        Edit::AddMount {
            id: "tee".into(),
            at: "tee".into(),
            chamber_cm3: 60.0,
            hose_m: 0.5,
        },
        Edit::AddMount {
            id: "third".into(),
            at: "battery".into(),
            chamber_cm3: 60.0,
            hose_m: 0.5,
        },
    ] {
        let before = circuit.clone();
        assert!(circuit.apply(&wrong).is_err(), "{wrong:?}");
        assert_eq!(circuit, before, "a refused edit changes nothing");
    }
}

#[test]
fn the_last_mount_stays() {
    let mut circuit = template("one-mount");
    assert!(circuit.apply(&Edit::Remove { id: "mount".into() }).is_err());
}

#[test]
fn a_choice_reads_back_as_it_was_written() {
    let json = json!({
        "template": "two-mounts-one-valve", "electric": "push-pull", "length_m": {"front_hose": 0.7},
        "vacuum_means": "stiff", "switched": "unknown", "feed": "unknown", "window": "idle_in_gear",
        "edits": [{"remove": {"id": "reservoir"}}]
    });
    let choice: CircuitChoice = serde_json::from_value(json.clone()).unwrap();
    assert_eq!(serde_json::to_value(&choice).unwrap(), json);
}
