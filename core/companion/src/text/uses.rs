//! Every text is used and every text that is used exists: keys in the code, and those put together from data.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

use holdfast_diagnose::{
    Catalogue, Circuit, CircuitChoice, Complaint, ComponentId, FaultId, LookState, Outcome, Quantity, Tool,
    care_texts, layouts, listed_messages, templates,
};

use super::names::{families, kebab};
use super::{Language, Texts, checks};

/// The words between quotes in the sources under a folder, tests left out, each with the file it stands in.
fn quoted(folder: &str) -> BTreeMap<String, BTreeSet<String>> {
    let mut found: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    let mut folders = vec![Path::new(env!("CARGO_MANIFEST_DIR")).join(folder)];
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                folders.push(path);
            } else if path.extension().is_some_and(|e| e == "rs") {
                let source = std::fs::read_to_string(&path).unwrap();
                let source = source
                    .split("#[cfg(test)]\nmod tests {")
                    .next()
                    .unwrap()
                    .to_owned();
                for (at, word) in source.split('"').enumerate() {
                    if at % 2 == 1 {
                        found
                            .entry(word.to_owned())
                            .or_default()
                            .insert(path.display().to_string());
                    }
                }
            }
        }
    }
    found
}

fn looks_like_a_key(word: &str) -> bool {
    word.contains('-')
        && word
            .chars()
            .all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-')
}

fn circuits() -> Vec<Circuit> {
    templates()
        .iter()
        .flat_map(|template| {
            layouts().iter().map(|layout| {
                let choice: CircuitChoice = serde_json::from_value(
                    serde_json::json!({"template": template.id, "electric": layout.id}),
                )
                .or_else(|_| serde_json::from_value(serde_json::json!(template.id)))
                .unwrap();
                Circuit::build(&choice).unwrap()
            })
        })
        .collect()
}

/// Faults as the data has them: kind of component and mode, or a component outside the circuit and mode.
fn faults() -> Vec<(String, String, bool)> {
    let data: serde_json::Value =
        serde_json::from_str(include_str!("../../../diagnose/data/faults.json")).unwrap();
    let list = |name: &str, key: &str, outside: bool| -> Vec<(String, String, bool)> {
        data[name]
            .as_array()
            .unwrap()
            .iter()
            .map(|f| {
                (
                    f[key].as_str().unwrap().to_owned(),
                    f["mode"].as_str().unwrap().to_owned(),
                    outside,
                )
            })
            .collect()
    };
    [list("modes", "kind", false), list("outside", "component", true)].concat()
}

#[test]
fn every_listed_message_has_its_words_and_uses_only_what_it_always_gets() {
    let keys = checks::keys(Language::American);
    for message in listed_messages() {
        let Some(variables) = keys.get(&message.id) else {
            panic!("{} has no words: {}", message.id, message.gist)
        };
        for variable in variables {
            let name = variable.strip_suffix("-n").unwrap_or(variable);
            assert!(
                message.args.contains_key(name) || message.args.contains_key(&format!("{name}?")),
                "{} uses ${variable}, it gets {:?}",
                message.id,
                message.args
            );
        }
    }
}

#[test]
fn every_message_of_finding_and_plan_has_its_words() {
    let keys = checks::keys(Language::American);
    let folders = ["../diagnose/src/finding", "../diagnose/src/plan"];
    let mut found = 0;
    for (word, _) in folders.iter().flat_map(|folder| quoted(folder)) {
        if ["why-", "stop-", "evidence-"]
            .iter()
            .any(|beginning| word.starts_with(beginning))
            && looks_like_a_key(&word)
        {
            assert!(keys.contains_key(&word), "{word} has no words");
            found += 1;
        }
    }
    assert!(found >= 8, "only {found} messages found");
}

#[test]
fn every_key_asked_for_in_the_code_exists() {
    let texts = Texts::new("en-US");
    let mut missing = BTreeSet::new();
    let mut folders = vec![Path::new(env!("CARGO_MANIFEST_DIR")).join("src")];
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                folders.push(path);
                continue;
            }
            let source = std::fs::read_to_string(&path).unwrap();
            // What stands between quotes right after a call that says a text.
            let pieces: Vec<&str> = source.split('"').collect();
            for pair in pieces.windows(2) {
                let [before, key] = pair else { continue };
                let asks = ["say(", "say_with("]
                    .iter()
                    .any(|call| before.trim_end().ends_with(call));
                if asks && looks_like_a_key(key) && !texts.has(key) {
                    missing.insert(format!("{key} ({})", path.display()));
                }
            }
        }
    }
    assert!(missing.is_empty(), "{missing:#?}");
}

#[test]
fn parts_faults_and_repairs_of_every_circuit_have_their_words() {
    let texts = Texts::new("en-US");
    for circuit in circuits() {
        for component in &circuit.components {
            let id = component.id.as_str();
            let kind = serde_json::to_value(component.kind)
                .unwrap()
                .as_str()
                .unwrap()
                .to_owned();
            assert!(!texts.part(&component.id).contains('_'), "no name for {id}");
            assert!(texts.knows_part(id), "no name for {id}");
            let kind_family = kebab(&kind);
            for (of, mode, outside) in faults() {
                if !outside && kebab(&of) == kind_family {
                    let words = texts.fault(&FaultId::new(id, mode.clone()));
                    assert!(
                        !words.starts_with("something is wrong"),
                        "no words for {id}/{mode}"
                    );
                }
            }
            if kind != "consumer" && kind != "engine" {
                assert!(texts.repair_lines(&component.id).len() > 2, "no repair for {id}");
            }
        }
    }
    for (component, mode, outside) in faults() {
        if outside {
            let fault = if mode.is_empty() {
                FaultId::other()
            } else {
                FaultId::new(component.as_str(), mode)
            };
            assert!(
                !texts.fault(&fault).starts_with("something is wrong"),
                "no words for {fault}"
            );
        }
    }
    assert_eq!(
        texts.fault(&FaultId::new("front_hose", "leaks")),
        "the front hose leaks"
    );
    assert_eq!(
        texts.fault(&FaultId::new("rear_mount", "fluid_lost")),
        "the rear mount has lost its fluid"
    );
}

#[test]
fn what_is_picked_from_has_its_words() {
    let texts = Texts::new("en-US");
    let has = |key: String| assert!(texts.has(&key), "{key} is missing");
    for complaint in Complaint::ALL {
        has(format!("complaint-{}", kebab(complaint.as_str())));
        has(format!("complaint-{}-phrase", kebab(complaint.as_str())));
    }
    for tool in Tool::ALL {
        has(format!("tool-{}", tool.as_str()));
        has(format!("not-offered-{}", tool.as_str()));
    }
    for state in LookState::ALL {
        has(format!("look-{}", kebab(state.as_str())));
        if state != LookState::Ok {
            has(format!("look-{}-phrase", kebab(state.as_str())));
            has(format!("look-found-{}", kebab(state.as_str())));
        }
    }
    for outcome in Outcome::ALL {
        has(format!("outcome-{}", kebab(outcome.as_str())));
    }
    for template in templates() {
        has(format!("template-{}", template.id));
    }
    for layout in layouts() {
        has(format!("layout-{}", layout.id));
    }
    for caution in Catalogue::standard().cautions() {
        has(format!("caution-{}", caution.id));
    }
    for key in care_texts() {
        has(key.to_owned());
    }
}

/// Keys that data or an id put together; each maker says which keys it can make.
fn made_from_data() -> BTreeSet<String> {
    let mut made = BTreeSet::new();
    let mut add = |key: String| {
        made.insert(key);
    };
    for key in care_texts() {
        add(key.to_owned());
    }
    for circuit in circuits() {
        let parts: Vec<&ComponentId> = circuit.components.iter().map(|c| &c.id).collect();
        for part in parts {
            for family in families(part.as_str()) {
                for stem in ["part", "about", "look-hint"] {
                    add(format!("{stem}-{family}"));
                }
                for n in 1..10 {
                    add(format!("repair-{family}-{n}"));
                }
                for (_, mode, _) in faults() {
                    add(format!("fault-{family}-{}", kebab(&mode)));
                }
            }
        }
        for spec in Catalogue::standard().all_for(&circuit) {
            for stem in test_stems(&spec.id) {
                for what in [
                    "title",
                    "name",
                    "why",
                    "explain",
                    "where",
                    "lead-red",
                    "lead-black",
                    "hint",
                ] {
                    add(format!("{stem}-{what}"));
                }
                for n in 1..10 {
                    add(format!("{stem}-step-{n}"));
                    add(format!("{stem}-look-{n}"));
                }
                for outcome in &spec.means {
                    add(format!("{stem}-means-{}", kebab(outcome.as_str())));
                }
                for field in &spec.fields {
                    let label = format!("{stem}-field-{}", kebab(field.key.as_str()));
                    add(format!("{label}-hint"));
                    add(format!("{label}-read"));
                    if field.quantity == Quantity::YesNo {
                        add(format!("{label}-yes"));
                        add(format!("{label}-no"));
                    }
                    add(label);
                }
            }
        }
    }
    for reach in ["branch", "inlet", "hose", "chamber"] {
        add(format!("part-{reach}"));
    }
    for (component, mode, outside) in faults() {
        add(format!("fault-{}", kebab(&mode)));
        if outside {
            add(format!("part-{}", kebab(&component)));
            add(format!("fault-{}-{}", kebab(&component), kebab(&mode)));
            for n in 1..10 {
                add(format!("repair-{}-{n}", kebab(&component)));
            }
        }
    }
    made
}

fn test_stems(test: &holdfast_diagnose::TestId) -> Vec<String> {
    let kind = test.kind.as_str();
    let of_part = test.part.iter().flat_map(|part| families(part.as_str()));
    of_part
        .map(|family| format!("test-{kind}-{family}"))
        .chain([format!("test-{kind}")])
        .collect()
}

/// Beginnings of keys whose end comes from an id that other tests go through, or from a phone, a log or a setting.
const OPEN_ENDED: [&str; 33] = [
    "settings-unit-",
    "speak-",
    "script-",
    "language-",
    "said-",
    "scale-",
    "side-",
    "complaint-",
    "tool-",
    "not-offered-",
    "look-",
    "outcome-",
    "template-",
    "layout-",
    "caution-",
    "property-",
    "profile-",
    "cannot-",
    "window-",
    "state-",
    "report-part-",
    "log-ambient-",
    "log-interrupted-",
    "test-shake-scale-",
    "repair-part-",
    "repair-all-",
    "mark-",
    "paper-",
    "prepare-caution-",
    "approval-",
    "costs-kind-",
    "costs-add-",
    "costs-sum-",
];

#[test]
fn no_text_lies_unused() {
    let keys = checks::keys(Language::American);
    let in_code: BTreeSet<String> = quoted("src").into_keys().collect();
    let in_reasoning: BTreeSet<String> = quoted("../diagnose/src").into_keys().collect();
    let made = made_from_data();
    let unused: Vec<&String> = keys
        .keys()
        .filter(|key| !in_code.contains(*key) && !in_reasoning.contains(*key) && !made.contains(*key))
        .filter(|key| !OPEN_ENDED.iter().any(|beginning| key.starts_with(beginning)))
        .collect();
    assert!(unused.is_empty(), "{} unused: {unused:#?}", unused.len());
}

#[test]
fn a_key_that_data_makes_says_the_part_by_its_name() {
    let texts = Texts::new("en-US");
    assert_eq!(
        texts.test_title(&"hold:front_mount".parse().unwrap()),
        "Vacuum hold test: front mount alone"
    );
    assert_eq!(
        texts.test_title(&"hold:branch".parse().unwrap()),
        "Vacuum hold test: everything after the valve"
    );
    assert_eq!(texts.part(&"mount_2".into()), "mount 2");
    assert_eq!(texts.part(&"front_hose".into()), "front hose");
    assert_eq!(texts.part(&"rear_left_mount".into()), "rear left mount");
    assert_eq!(
        Texts::new("en-GB").part(&"front_ground_point".into()),
        "front earth point"
    );
}
