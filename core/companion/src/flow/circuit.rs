//! The vehicle's circuit, to be edited.
//!
//! | event | leads to |
//! |---|---|
//! | `Type` | the field's text kept; valid ones are logged on leaving |
//! | `Pick` a layout or property | the circuit with it, logged |
//! | `Pick` add a mount, take a part out | the circuit with that edit, logged; what can't be taken out stays, and it is said |
//! | `Confirm` | the vehicle screen |

use holdfast_diagnose::{
    Circuit, CircuitChoice, ComponentId, ComponentKind, CustomCircuit, LayoutSummary, layouts,
};
use serde_json::Value;

use crate::companion::Companion;
use crate::compose;
use crate::error::ActError;
use crate::flow::circuit_change::{PROPERTIES, fields, picked, shared_fields, with_typed};
use crate::flow::circuit_typed::{logged, records};
use crate::flow::parts::{entry, one_of, option, plain, primary, quiet, section, tap, words};
use crate::flow::vehicle::{key, state_circuit};
use crate::job::JobView;
use crate::protocol::{Action, Body, FieldId, FormItem, FormScreen, Frame, Pick, Section};
use crate::session::{At, CircuitDraft, NoticeAt, VehicleDraft};
use crate::turn::Turn;
use crate::typed::Typed;

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
            let Some(job) = &core.job else { return Ok(()) };
            let typed = with_typed(core, job.choice.to_custom(), &job.circuit, &draft.typed);
            match picked(typed, &job.circuit, pick) {
                Some(custom) => state(core, custom, &draft.typed, turn)?,
                None => core.session.notice = Some(cannot()),
            }
            // What can't be built is not logged; what was typed stays in hand.
            core.session.at = At::Circuit(match core.session.notice {
                Some(_) => draft,
                None => CircuitDraft::default(),
            });
        }
        Action::Confirm => {
            settle(core, &draft, turn)?;
            core.session.at = At::Vehicle(VehicleDraft::default());
        }
        _ => {}
    }
    Ok(())
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
    let custom = with_typed(core, job.choice.to_custom(), &job.circuit, &draft.typed);
    state(core, custom, &draft.typed, turn)
}

fn cannot() -> NoticeAt {
    NoticeAt::Words {
        key: "circuit-cannot".to_owned(),
    }
}

/// Logs a circuit with what was typed for it; what can't be built stays out, and it is said.
fn state(
    core: &mut Companion,
    custom: CustomCircuit,
    typed: &Typed,
    turn: &mut Turn<'_>,
) -> Result<(), ActError> {
    let choice = CircuitChoice::from(custom);
    let (Some(job), Ok(circuit)) = (&core.job, Circuit::build(&choice)) else {
        core.session.notice = Some(cannot());
        return Ok(());
    };
    let typed = records(core, job, &circuit, typed);
    state_circuit(core, &choice, typed, turn)
}

pub(super) fn screen(core: &Companion, draft: &CircuitDraft) -> (Frame, Body) {
    let mut sections = Vec::new();
    if let Some(job) = &core.job {
        let map = compose::plain_map(&core.texts, &job.circuit);
        sections.push(section(String::new(), vec![FormItem::Picture { scene: map }]));
        sections.push(part_section(core, job, draft));
        sections.push(property_section(core, &job.choice.to_custom(), &job.circuit));
        sections.push(electric_section(core, job, draft));
    }
    let form = FormScreen {
        sections,
        next: Some(primary(core.say("circuit-done"), Action::Confirm)),
    };
    (Frame::titled(core.say("circuit-title")), Body::Vehicle { form })
}

fn part_section(core: &Companion, job: &JobView, draft: &CircuitDraft) -> Section {
    let circuit = &job.circuit;
    let mut items = vec![words(core.say("circuit-hint"))];
    for (field, stands) in fields(circuit) {
        let mut drawn = field.field(core, &draft.typed, logged(job, &field.id, stands));
        if let FieldId::ChamberVolume { component } | FieldId::HoseLength { component } = &field.id {
            drawn.label = core.say_with(
                field.label,
                &core.texts.of_part(&ComponentId::new(component.as_str())),
            );
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
        let label = core.say_with("circuit-remove", &core.texts.of_part(&part.id));
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

fn electric_section(core: &Companion, job: &JobView, draft: &CircuitDraft) -> Section {
    let circuit = &job.circuit;
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
        items.push(entry(field.field(
            core,
            &draft.typed,
            logged(job, &field.id, stands),
        )));
    }
    section(core.say("circuit-electric"), items)
}
