use std::collections::{BTreeMap, BTreeSet};

use serde_json::json;

use super::data::{CAUTIONS, CautionData, TESTS, TestData};
use super::*;
use crate::{Circuit, CircuitChoice, Situation, TestId, TestKind, Tool, layouts, templates};

fn contract() -> Circuit {
    Circuit::build(&CircuitChoice::Template("two-mounts-one-valve".into())).unwrap()
}

fn every_circuit() -> Vec<Circuit> {
    let mut all = Vec::new();
    for template in templates() {
        for layout in layouts() {
            for window in ["idle", "idle_in_gear", "unknown"] {
                let json = json!({"template": template.id, "electric": layout.id, "window": window});
                all.push(Circuit::build(&serde_json::from_value(json).unwrap()).unwrap());
            }
        }
    }
    all
}

#[test]
fn the_shipped_files_parse() {
    serde_json::from_str::<TestData>(TESTS).unwrap();
    serde_json::from_str::<CautionData>(CAUTIONS).unwrap();
}

#[test]
fn every_kind_of_test_is_in_the_catalogue() {
    let kinds: BTreeSet<TestKind> = Catalogue::standard().tests.tests.iter().map(|t| t.kind).collect();
    assert_eq!(kinds, TestKind::ALL.into_iter().collect());
}

#[test]
fn every_test_makes_sense() {
    let cautions: BTreeMap<&str, Signal> = Catalogue::standard()
        .cautions()
        .iter()
        .map(|c| (c.id.as_str(), c.signal))
        .collect();
    for circuit in every_circuit() {
        let specs = Catalogue::standard().all_for(&circuit);
        let ids: BTreeSet<_> = specs.iter().map(|s| &s.id).collect();
        assert_eq!(
            ids.len(),
            specs.len(),
            "{}: a test is there twice",
            circuit.template
        );
        for spec in &specs {
            let name = format!("{} of {}", spec.id, circuit.template);
            assert!(spec.steps >= 1 && spec.minutes > 0.0, "{name}");
            for caution in &spec.cautions {
                assert!(
                    caution.at_step <= spec.steps,
                    "{name}: {} stands after the last step",
                    caution.id
                );
                assert_eq!(
                    cautions.get(caution.id.as_str()),
                    Some(&caution.signal),
                    "{name}: {}",
                    caution.id
                );
            }
            let hold = spec.form == Form::Hold;
            assert_eq!(spec.id.is_hold(), hold, "{name}");
            assert_eq!(circuit.scope(&spec.id).is_some(), hold, "{name}");
            if !hold && spec.form != Form::LookOver {
                assert!(
                    spec.fields.first().is_some_and(|f| f.required),
                    "{name}: the first field decides"
                );
            }
            for field in &spec.fields {
                if let Some(other) = &field.instead_of {
                    assert!(spec.field(other.as_str()).is_some(), "{name}: {other}");
                }
            }
            let reached = spec
                .id
                .part
                .as_ref()
                .is_none_or(|part| circuit.component(part).is_some() || circuit.reaches().contains(part));
            assert!(reached, "{name}");
            assert!(!spec.means.is_empty(), "{name}");
        }
    }
}

/// Source: common practice, no source; an agreed table of minutes, access of this circuit included.
#[test]
fn minutes_are_those_of_the_design() {
    let circuit = contract();
    for (test, minutes) in [
        ("complaint", 3.0),
        ("codes", 3.0),
        ("idle-quality", 2.0),
        ("look", 3.0),
        ("mount-look:front_mount", 3.0),
        ("mount-look:rear_mount", 7.0),
        ("mount-move:front_mount", 3.0),
        ("hand-pump", 1.0),
        ("delivered", 4.0),
        ("switch-over", 1.0),
        ("bypass", 4.0),
        ("hold:branch", 4.0),
        ("hold:front_mount", 6.0),
        ("hold:rear_mount", 11.0),
        ("hold:outlet_hose", 5.0),
        ("hold:front_hose", 6.0),
        ("hold:rear_hose", 9.0),
        ("hold:tee", 4.0),
        ("hold:inlet", 4.0),
        ("hold:valve", 4.0),
        ("flow:front_hose", 3.0),
        ("source", 4.0),
        ("supply-volts", 4.0),
        ("supply-loaded", 5.0),
        ("fuse", 2.0),
        ("power-wire", 6.0),
        ("valve-volts", 5.0),
        ("control-pin", 5.0),
        ("control-wire", 8.0),
        ("coil", 3.0),
        ("prove-meter", 1.0),
        ("shake", 3.0),
        ("shake:front_mount", 5.0),
        ("wiggle:connector", 3.0),
    ] {
        let spec = Catalogue::standard().spec(&circuit, &test.parse().unwrap());
        assert_eq!(spec.map(|s| s.minutes), Some(minutes), "{test}");
    }
    let both: f64 = ["valve-off", "valve-on"]
        .iter()
        .filter_map(|t| Catalogue::standard().spec(&circuit, &t.parse().unwrap()))
        .map(|s| s.minutes)
        .sum();
    assert_eq!(both, 8.0);
}

/// The textbook order, as agreed for the fixed policy.
#[test]
fn every_test_of_the_textbook_order_is_there() {
    for test in [
        "look",
        "hand-pump",
        "hold:branch",
        "hold:front_mount",
        "hold:rear_mount",
        "hold:front_hose",
        "hold:rear_hose",
        "hold:outlet_hose",
        "hold:tee",
        "hold:inlet",
        "hold:valve",
        "supply-volts",
        "fuse",
        "power-wire",
        "valve-volts",
        "control-wire",
        "coil",
        "source",
    ] {
        assert!(
            Catalogue::standard()
                .spec(&contract(), &test.parse().unwrap())
                .is_some(),
            "{test}"
        );
    }
}

#[test]
fn in_gear_is_never_offered_to_a_person_alone() {
    let mut seen = 0;
    for circuit in every_circuit() {
        for second_person in [false, true] {
            let situation = Situation {
                second_person,
                ..Situation::default()
            };
            for advice in Catalogue::standard().advice(&circuit, &situation) {
                if advice.spec.needs.engine == EngineNeed::InGear {
                    seen += 1;
                    assert!(advice.spec.needs.second_person);
                    assert_eq!(advice.not_offered.is_some(), !second_person, "{}", advice.spec.id);
                    assert!(
                        advice
                            .spec
                            .cautions
                            .iter()
                            .any(|c| c.id == "in-gear" && c.at_step == 0)
                    );
                }
            }
        }
    }
    assert!(seen > 100, "in-gear tests were there: {seen}");
}

#[test]
fn every_test_with_the_engine_on_warns_before_it_begins() {
    for spec in Catalogue::standard().all_for(&contract()) {
        let first: Vec<&str> = spec
            .cautions
            .iter()
            .filter(|c| c.at_step == 0)
            .map(|c| c.id.as_str())
            .collect();
        match spec.needs.engine {
            EngineNeed::Idle | EngineNeed::InGear => {
                assert!(
                    first.contains(&"engine-running") && first.contains(&"fumes"),
                    "{}",
                    spec.id
                );
            }
            EngineNeed::KeyOn => assert!(first.contains(&"engine-may-start-key-on"), "{}", spec.id),
            EngineNeed::Off => assert!(first.contains(&"engine-may-start"), "{}", spec.id),
            EngineNeed::Any => {}
        }
    }
}

#[test]
fn whose_hands_are_at_hot_parts_is_told_so() {
    for spec in Catalogue::standard().all_for(&contract()) {
        let told = spec.cautions.iter().any(|c| c.id == "hot-parts" && c.at_step > 0);
        if spec.needs.engine == EngineNeed::Off {
            assert_eq!(spec.needs.at_hot_parts, told, "{}", spec.id);
        }
    }
}

#[test]
fn a_missing_tool_or_engine_takes_its_tests_away() {
    let mut situation = Situation {
        tools: Some(BTreeSet::new()),
        ..Situation::default()
    };
    let offered = |situation: &Situation| {
        Catalogue::standard()
            .tests_for(&contract(), situation)
            .into_iter()
            .map(|s| s.id)
            .collect::<Vec<_>>()
    };
    let bare = offered(&situation);
    assert!(bare.contains(&TestId::of(TestKind::Look)));
    assert!(!bare.iter().any(TestId::is_hold));
    assert!(!bare.contains(&TestId::of(TestKind::Coil)));
    situation.tools = Some([Tool::HandPump].into());
    assert!(offered(&situation).contains(&"hold:branch".parse().unwrap()));
    assert!(
        !offered(&situation).contains(&"hold:front_hose".parse().unwrap()),
        "the far end needs a cap"
    );
    situation.engine.can_run = false;
    assert!(!offered(&situation).contains(&TestId::of(TestKind::Delivered)));
}

#[test]
fn several_valves_are_tested_one_by_one() {
    let circuit = Circuit::build(&CircuitChoice::Template("two-valves-shared-feed".into())).unwrap();
    for test in [
        "coil:front_valve",
        "hold:branch_rear_valve",
        "hold:front_valve",
        "delivered:rear_valve",
        "fuse",
    ] {
        assert!(
            Catalogue::standard()
                .spec(&circuit, &test.parse().unwrap())
                .is_some(),
            "{test}"
        );
    }
    assert!(
        Catalogue::standard()
            .spec(&circuit, &"coil".parse().unwrap())
            .is_none()
    );
}
