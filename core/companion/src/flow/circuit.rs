//! The vehicle's circuit, to be edited.
//!
//! | event | leads to |
//! |---|---|
//! | `Type` | the field's text kept; valid ones are logged on leaving |
//! | `Pick` a layout or property | the circuit with it, logged |
//! | `Pick` add a mount, take a part out | the circuit with that edit, logged; what can't be taken out stays, and it is said |
//! | `Confirm` | the vehicle screen |

use holdfast_diagnose::{
    Circuit, CircuitChoice, ComponentId, ComponentKind, CustomCircuit, Edit, LayoutSummary, layouts,
};
use holdfast_measure::Bound;
use serde_json::Value;

use crate::companion::Companion;
use crate::compose;
use crate::error::ActError;
use crate::flow::numbers::NumberField;
use crate::flow::parts::{entry, one_of, option, plain, primary, quiet, section, tap, words};
use crate::flow::vehicle::{key, state_circuit};
use crate::protocol::{Action, Body, FieldId, FormItem, FormScreen, Frame, Pick, Section};
use crate::session::{At, CircuitDraft, NoticeAt, VehicleDraft};
use crate::text::Args;
use crate::turn::Turn;
use crate::typed::Typed;

/// A mount added by hand: air in it, cm³, and its hose, m. From memory, to be put right by the person.
const ADDED_CHAMBER_CM3: f64 = 80.0;
const ADDED_HOSE_M: f64 = 0.5;

/// Properties that can be picked, with their options as in the contract.
const PROPERTIES: [(&str, &[&str]); 5] = [
    ("vacuum_means", &["soft", "stiff", "unknown"]),
    ("switched", &["ground", "supply", "unknown"]),
    ("feed", &["ignition", "relay", "unknown"]),
    ("window", &["idle", "idle_in_gear", "unknown"]),
    ("check_valve", &["yes", "no"]),
];

pub(super) fn act(
    core: &mut Companion,
    mut draft: CircuitDraft,
    action: Action,
    turn: &mut Turn<'_>,
) -> Result<(), ActError> {
    core.session.notice = None;
    match action {
        Action::Type { field, text } => {
            draft.typed.put(field, &text);
            core.session.at = At::Circuit(draft);
        }
        Action::Pick { pick } => {
            settle(core, &draft, turn)?;
            core.session.at = At::Circuit(CircuitDraft::default());
            let Some(job) = &core.job else { return Ok(()) };
            match picked(job.choice.to_custom(), &job.circuit, pick) {
                Some(custom) if Circuit::build(&custom.clone().into()).is_ok() => {
                    state_circuit(core, &CircuitChoice::from(custom), turn)?;
                }
                _ => {
                    core.session.notice = Some(NoticeAt::Words {
                        key: "circuit-cannot".to_owned(),
                    })
                }
            }
        }
        Action::Confirm => {
            settle(core, &draft, turn)?;
            core.session.at = At::Vehicle(VehicleDraft::default());
        }
        _ => {}
    }
    Ok(())
}

/// The circuit with what was picked; none if it can't be.
fn picked(mut custom: CustomCircuit, circuit: &Circuit, pick: Pick) -> Option<CustomCircuit> {
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
fn fields(circuit: &Circuit) -> Vec<(NumberField, f64)> {
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
            ComponentKind::Hose => {
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
fn shared_fields(circuit: &Circuit) -> Vec<(NumberField, f64)> {
    let bore = circuit.of_kind(ComponentKind::Hose).find_map(|hose| hose.bore_mm);
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
    if let Some(bore) = bore {
        all.push((number(FieldId::HoseBore, "circuit-bore", Bound::BORE), bore));
    }
    all
}

/// Logs the circuit with what was typed and is valid.
pub(super) fn settle(
    core: &mut Companion,
    draft: &CircuitDraft,
    turn: &mut Turn<'_>,
) -> Result<(), ActError> {
    let Some(job) = &core.job else { return Ok(()) };
    if draft.typed.is_empty() {
        return Ok(());
    }
    let custom = with_typed(job.choice.to_custom(), &job.circuit, &draft.typed);
    if Circuit::build(&custom.clone().into()).is_err() {
        core.session.notice = Some(NoticeAt::Words {
            key: "circuit-cannot".to_owned(),
        });
        return Ok(());
    }
    state_circuit(core, &CircuitChoice::from(custom), turn)
}

fn with_typed(mut custom: CustomCircuit, circuit: &Circuit, typed: &Typed) -> CustomCircuit {
    for (field, _) in fields(circuit) {
        let Some(figure) = field.typed(typed) else {
            continue;
        };
        match &field.id {
            FieldId::ChamberVolume { component } => {
                let id = ComponentId::new(component.clone());
                let rel_sd = circuit.component(&id).map_or(0.1, |part| part.volume_rel_sd);
                custom.edits.push(Edit::Volume {
                    id,
                    cm3: figure,
                    rel_sd,
                });
            }
            FieldId::HoseLength { component } => {
                custom.edits.push(Edit::Length {
                    id: ComponentId::new(component.clone()),
                    m: figure,
                });
            }
            _ => {}
        }
    }
    for (field, stands) in shared_fields(circuit) {
        let Some(figure) = field.typed(typed) else {
            continue;
        };
        let (low, high) = custom.coil_ohm.unwrap_or(circuit.properties.coil_ohm);
        match field.id {
            FieldId::CoilLow => custom.coil_ohm = Some((figure, high.max(figure))),
            FieldId::CoilHigh => custom.coil_ohm = Some((low.min(figure), figure)),
            FieldId::FuseRating => custom.fuse_a = Some(figure),
            FieldId::HoseBore if (figure - stands).abs() > 1e-9 => custom.bore_mm = Some(figure),
            _ => {}
        }
    }
    custom
}

pub(super) fn screen(core: &Companion, draft: &CircuitDraft) -> (Frame, Body) {
    let mut sections = Vec::new();
    if let Some(job) = &core.job {
        let map = compose::plain_map(&core.texts, &job.circuit);
        sections.push(section(String::new(), vec![FormItem::Picture { scene: map }]));
        sections.push(part_section(core, &job.circuit, draft));
        sections.push(property_section(core, &job.choice.to_custom(), &job.circuit));
        sections.push(electric_section(core, &job.circuit, draft));
    }
    let form = FormScreen {
        sections,
        next: Some(primary(core.say("circuit-done"), Action::Confirm)),
    };
    (Frame::titled(core.say("circuit-title")), Body::Vehicle { form })
}

fn part_section(core: &Companion, circuit: &Circuit, draft: &CircuitDraft) -> Section {
    let mut items = vec![words(core.say("circuit-hint"))];
    for (field, stands) in fields(circuit) {
        let mut drawn = field.field(core, &draft.typed, Some(stands));
        if let FieldId::ChamberVolume { component } | FieldId::HoseLength { component } = &field.id {
            drawn.label = core.say_with(field.label, &Args::new().text("part", core.part_name(component)));
        }
        items.push(entry(drawn));
    }
    items.push(tap(plain(
        core.say("circuit-add-mount"),
        Action::Pick { pick: Pick::AddMount },
    )));
    let removable = [
        ComponentKind::Mount,
        ComponentKind::Reservoir,
        ComponentKind::Hose,
        ComponentKind::Restrictor,
    ];
    for part in circuit.components.iter().filter(|c| removable.contains(&c.kind)) {
        let component = part.id.to_string();
        let label = core.say_with(
            "circuit-remove",
            &Args::new().text("part", core.part_name(&component)),
        );
        items.push(tap(quiet(
            label,
            Action::Pick {
                pick: Pick::RemoveComponent { component },
            },
        )));
    }
    section(core.say("circuit-parts"), items)
}

fn property_section(core: &Companion, custom: &CustomCircuit, circuit: &Circuit) -> Section {
    let stated = serde_json::to_value(custom).unwrap_or_default();
    let has_check_valve = circuit.of_kind(ComponentKind::CheckValve).next().is_some();
    let items = PROPERTIES
        .iter()
        .map(|(property, values)| {
            let holds = match stated.get(*property) {
                Some(Value::String(word)) => word.clone(),
                Some(Value::Bool(there)) => yes_no(*there).to_owned(),
                _ if *property == "check_valve" => yes_no(has_check_valve).to_owned(),
                _ => "unknown".to_owned(),
            };
            let options = values
                .iter()
                .map(|value| {
                    let label = match *value {
                        "unknown" => core.say("property-unknown"),
                        _ => core.say(&format!(
                            "{}-{}",
                            key("property", property),
                            value.replace('_', "-")
                        )),
                    };
                    let (property, value) = ((*property).to_owned(), (*value).to_owned());
                    option(label, value == holds, Pick::Property { property, value })
                })
                .collect();
            one_of(core.say(&key("property", property)), options)
        })
        .collect();
    section(core.say("circuit-properties"), items)
}

fn yes_no(there: bool) -> &'static str {
    if there { "yes" } else { "no" }
}

fn electric_section(core: &Companion, circuit: &Circuit, draft: &CircuitDraft) -> Section {
    let options = layouts()
        .iter()
        .map(|LayoutSummary { id, .. }| {
            option(
                core.say(&format!("layout-{id}")),
                circuit.electric == *id,
                Pick::Layout { id: (*id).to_owned() },
            )
        })
        .collect();
    let mut items = vec![one_of(core.say("circuit-layout"), options)];
    for (field, stands) in shared_fields(circuit) {
        items.push(entry(field.field(core, &draft.typed, Some(stands))));
    }
    section(core.say("circuit-electric"), items)
}
