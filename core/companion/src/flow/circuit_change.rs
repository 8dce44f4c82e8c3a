//! What a person changes in a circuit, by tapping and by typing.

use holdfast_diagnose::{Circuit, CircuitChoice, ComponentId, ComponentKind, CustomCircuit, Edit};
use holdfast_measure::Bound;
use serde_json::Value;

use crate::companion::Companion;
use crate::flow::numbers::NumberField;
use crate::protocol::{FieldId, Pick};
use crate::typed::Typed;

/// A mount added by hand: air in it, cm³, and its hose, m. From memory, to be put right by the person.
const ADDED_CHAMBER_CM3: f64 = 80.0;
const ADDED_HOSE_M: f64 = 0.5;
const ADDED_REL_SD: f64 = 0.1;

/// Properties that can be picked, with their options as in the contract.
pub(super) const PROPERTIES: [(&str, &[&str]); 5] = [
    ("vacuum_means", &["soft", "stiff", "unknown"]),
    ("switched", &["ground", "supply", "unknown"]),
    ("feed", &["ignition", "relay", "unknown"]),
    ("window", &["idle", "idle_in_gear", "unknown"]),
    ("check_valve", &["yes", "no"]),
];

/// The circuit with what was picked; none if it can't be.
pub(super) fn picked(mut custom: CustomCircuit, circuit: &Circuit, pick: Pick) -> Option<CustomCircuit> {
    match pick {
        Pick::Layout { id } => custom.electric = Some(id),
        Pick::Property { property, value } => return with_property(&custom, &property, &value),
        Pick::AddMount => custom.edits.push(Edit::AddMount {
            id: unused_mount(circuit)?,
            at: branching(circuit)?,
            chamber_cm3: ADDED_CHAMBER_CM3,
            hose_m: ADDED_HOSE_M,
        }),
        Pick::RemoveComponent { component } => {
            custom.edits.push(Edit::Remove {
                id: ComponentId::new(component),
            });
        }
        _ => return None,
    }
    Some(custom)
}

/// The circuit with one property stated, by its name in the contract.
fn with_property(custom: &CustomCircuit, property: &str, value: &str) -> Option<CustomCircuit> {
    let (_, values) = PROPERTIES.iter().find(|(name, _)| *name == property)?;
    let value = values.iter().find(|v| **v == value)?;
    let stated = match *value {
        "yes" => Value::Bool(true),
        "no" => Value::Bool(false),
        word => Value::String(word.to_owned()),
    };
    let mut json = serde_json::to_value(custom).ok()?;
    json.as_object_mut()?.insert(property.to_owned(), stated);
    serde_json::from_value(json).ok()
}

/// An id for one more mount.
fn unused_mount(circuit: &Circuit) -> Option<ComponentId> {
    (2..=9)
        .map(|n| ComponentId::new(format!("mount_{n}")))
        .find(|id| circuit.component(id).is_none())
}

/// Where one more mount hangs: the last tee, else the valve.
fn branching(circuit: &Circuit) -> Option<ComponentId> {
    let last = |kind| circuit.of_kind(kind).last().map(|c| c.id.clone());
    last(ComponentKind::Tee).or_else(|| last(ComponentKind::Valve))
}

/// The number fields of a circuit with what stands in them.
pub(super) fn fields(circuit: &Circuit) -> Vec<(NumberField, f64)> {
    let mut all = Vec::new();
    for part in &circuit.components {
        let component = part.id.to_string();
        match part.kind {
            ComponentKind::Mount | ComponentKind::Reservoir => all.push((
                NumberField {
                    id: FieldId::ChamberVolume { component },
                    label: "circuit-volume",
                    bound: Bound::CHAMBER,
                },
                part.volume_cm3,
            )),
            ComponentKind::Hose | ComponentKind::Wire => {
                if let Some(length) = part.length_m {
                    all.push((
                        NumberField {
                            id: FieldId::HoseLength { component },
                            label: "circuit-length",
                            bound: Bound::HOSE_LENGTH,
                        },
                        length,
                    ));
                }
            }
            _ => {}
        }
    }
    all
}

/// The number fields that the whole circuit has one of.
pub(super) fn shared_fields(circuit: &Circuit) -> Vec<(NumberField, f64)> {
    let bore = circuit.of_kind(ComponentKind::Hose).find_map(|hose| hose.bore_mm);
    let doubt = circuit
        .of_kind(ComponentKind::Mount)
        .map(|mount| mount.volume_rel_sd)
        .reduce(f64::max);
    let (low, high) = circuit.properties.coil_ohm;
    let number = |id, label, bound| NumberField { id, label, bound };
    let mut all = vec![
        (number(FieldId::CoilLow, "circuit-coil-low", Bound::COIL), low),
        (number(FieldId::CoilHigh, "circuit-coil-high", Bound::COIL), high),
        (
            number(FieldId::FuseRating, "circuit-fuse", Bound::FUSE),
            circuit.properties.fuse_a,
        ),
    ];
    if let Some(doubt) = doubt {
        all.push((
            number(FieldId::ChamberDoubt, "circuit-doubt", Bound::CHAMBER_DOUBT),
            doubt * 100.0,
        ));
    }
    if let Some(bore) = bore {
        all.push((number(FieldId::HoseBore, "circuit-bore", Bound::BORE), bore));
    }
    all
}

/// The circuit with the figures that were typed and are valid. What a template knows by itself is stated as such;
/// what a person built on is changed by one more edit.
pub(super) fn with_typed(
    core: &Companion,
    mut custom: CustomCircuit,
    circuit: &Circuit,
    typed: &Typed,
) -> CustomCircuit {
    let template = Circuit::build(&CircuitChoice::Template(custom.template.clone())).ok();
    let is_own = |id: &ComponentId| {
        template
            .as_ref()
            .is_some_and(|circuit| circuit.component(id).is_some())
    };
    for (field, _) in fields(circuit) {
        let Some(figure) = field.typed(core, typed) else {
            continue;
        };
        match &field.id {
            FieldId::ChamberVolume { component } => {
                let id = ComponentId::new(component.clone());
                state_volume(&mut custom, circuit, id, figure, &is_own);
            }
            FieldId::HoseLength { component } => {
                let id = ComponentId::new(component.clone());
                custom
                    .edits
                    .retain(|edit| !matches!(edit, Edit::Length { id: of, .. } if *of == id));
                if is_own(&id) {
                    custom.length_m.insert(id, figure);
                } else {
                    custom.edits.push(Edit::Length { id, m: figure });
                }
            }
            _ => {}
        }
    }
    for (field, stands) in shared_fields(circuit) {
        let Some(figure) = field.typed(core, typed) else {
            continue;
        };
        let (low, high) = custom.coil_ohm.unwrap_or(circuit.properties.coil_ohm);
        match field.id {
            FieldId::CoilLow => custom.coil_ohm = Some((figure, high.max(figure))),
            FieldId::CoilHigh => custom.coil_ohm = Some((low.min(figure), figure)),
            FieldId::FuseRating => custom.fuse_a = Some(figure),
            FieldId::ChamberDoubt => custom.chamber_rel_sd = Some(share(figure)),
            FieldId::HoseBore if (figure - stands).abs() > 1e-9 => custom.bore_mm = Some(figure),
            _ => {}
        }
    }
    custom
}

/// Percent as a share, so that 6.3 % is the number that 0.063 is.
fn share(percent: f64) -> f64 {
    (percent * 1e7).round() / 1e9
}

fn state_volume(
    custom: &mut CustomCircuit,
    circuit: &Circuit,
    id: ComponentId,
    cm3: f64,
    is_own: &impl Fn(&ComponentId) -> bool,
) {
    custom
        .edits
        .retain(|edit| !matches!(edit, Edit::Volume { id: of, .. } if *of == id));
    let part = circuit.component(&id);
    match part.map(|part| part.kind) {
        Some(ComponentKind::Mount) if is_own(&id) => {
            custom.chamber_cm3.insert(id, cm3);
        }
        Some(ComponentKind::Reservoir) if is_own(&id) => custom.reservoir_cm3 = Some(cm3),
        _ => {
            let rel_sd = part.map_or(ADDED_REL_SD, |part| part.volume_rel_sd);
            custom.edits.push(Edit::Volume { id, cm3, rel_sd });
        }
    }
}
