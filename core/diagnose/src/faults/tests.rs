use std::collections::BTreeSet;

use super::{FaultData, data};
use crate::{Circuit, CircuitChoice, ComponentKind, templates};

#[test]
fn the_data_file_reads() {
    serde_json::from_str::<FaultData>(include_str!("../../data/faults.json")).unwrap();
}

#[test]
fn every_share_is_a_probability_and_every_weight_positive() {
    let data = data();
    let shares = data
        .modes
        .iter()
        .flat_map(|m| m.signs.values().chain(m.symptoms.values()))
        .chain(
            data.outside
                .iter()
                .flat_map(|o| o.signs.values().chain(o.symptoms.values())),
        )
        .chain(data.signs_when_sound.values())
        .chain(
            data.symptoms
                .values()
                .flat_map(|s| s.soft.values().chain(s.stiff.values())),
        );
    for share in shares {
        assert!((0.0..1.0).contains(share), "{share}");
    }
    for weight in data
        .modes
        .iter()
        .map(|m| m.weight)
        .chain(data.outside.iter().map(|o| o.weight))
    {
        assert!(weight > 0.0 && weight < data.nothing_wrong);
    }
    for spread in data
        .modes
        .iter()
        .flat_map(|m| &m.effects)
        .filter_map(super::Effect::spread)
    {
        assert!(spread.median > 0.0 && spread.log10_sd > 0.0);
    }
}

#[test]
fn every_symptom_and_sign_that_a_fault_names_is_explained() {
    let data = data();
    let named = data
        .modes
        .iter()
        .flat_map(|m| m.symptoms.keys())
        .chain(data.outside.iter().flat_map(|o| o.symptoms.keys()));
    for symptom in named {
        assert!(data.symptoms.contains_key(symptom), "{symptom}");
    }
    let signs = data
        .modes
        .iter()
        .flat_map(|m| m.signs.keys())
        .chain(data.outside.iter().flat_map(|o| o.signs.keys()));
    for sign in signs {
        assert!(data.signs_when_sound.contains_key(sign), "{sign}");
    }
    let figures = data
        .modes
        .iter()
        .flat_map(|m| m.figures.keys())
        .chain(data.outside.iter().flat_map(|o| o.figures.keys()));
    for figure in figures {
        assert!(data.figures_when_sound.contains_key(figure), "{figure}");
    }
}

#[test]
fn no_mode_is_listed_twice() {
    let mut seen = BTreeSet::new();
    for mode in &data().modes {
        assert!(
            seen.insert((mode.kind, mode.mode.as_str())),
            "{:?}/{}",
            mode.kind,
            mode.mode
        );
    }
}

#[test]
fn every_part_of_every_template_can_fail_but_what_is_not_tested() {
    let untested = [ComponentKind::Engine, ComponentKind::Consumer];
    for template in templates() {
        let circuit = Circuit::build(&CircuitChoice::Template(template.id.into())).unwrap();
        for component in circuit.components.iter().filter(|c| !untested.contains(&c.kind)) {
            assert!(
                data().modes.iter().any(|m| m.kind == component.kind),
                "{}: {}",
                template.id,
                component.id
            );
        }
    }
}
