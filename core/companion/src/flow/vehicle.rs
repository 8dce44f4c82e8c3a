//! Vehicle, complaint and circuit.
//!
//! | event | leads to |
//! |---|---|
//! | `Type` | the field's text kept |
//! | `Pick` a complaint | it is tapped or untapped; "nothing" and the others exclude each other |
//! | `Pick` a template | the circuit is logged as that template |
//! | `Pick` owner or mechanic | logged, and kept for the next job |
//! | `Confirm` | what changed is logged; before you start |

use holdfast_diagnose::{CircuitChoice, templates};
use holdfast_joblog::vin::{self, VinCheck};
use holdfast_joblog::{CircuitStated, Complaint, Payload, Typed as TypedRecord, Vehicle};
use holdfast_measure::EverydayUnit;

use crate::companion::Companion;
use crate::error::ActError;
use crate::flow::parts::{any_of, entry, one_of, option, plain, primary, section, tap, text_field, words};
use crate::odometer;
use crate::protocol::{
    Action, Body, Field, FieldId, FormItem, FormScreen, Frame, Keys, Pick, Place, Section,
};
use crate::session::{At, PrepareDraft, VehicleDraft};
use crate::settings::Profile;
use crate::text::Args;
use crate::turn::Turn;

/// The one complaint that excludes all others.
const NO_COMPLAINT: &str = "none";

pub(super) fn act(
    core: &mut Companion,
    mut draft: VehicleDraft,
    action: Action,
    turn: &mut Turn<'_>,
) -> Result<(), ActError> {
    match action {
        Action::Type { field, text } => draft.typed.put(field, &text),
        Action::Pick {
            pick: Pick::Complaint { id },
        } => {
            let mut picked = complaint(core, &draft);
            toggle(&mut picked, id);
            draft.complaint = Some(picked);
        }
        Action::Pick {
            pick: Pick::Template { id },
        } => {
            state_circuit(core, &CircuitChoice::Template(id), Vec::new(), turn)?;
        }
        Action::Pick {
            pick: Pick::Profile { id },
        } => {
            if let Some(profile) = Profile::from_id(&id) {
                core.session.settings.profile = profile;
                core.state_settings(turn);
            }
        }
        Action::Confirm => {
            settle(core, &draft, turn)?;
            core.session.at = At::Prepare(PrepareDraft::default());
            return Ok(());
        }
        _ => return Ok(()),
    }
    core.session.at = At::Vehicle(draft);
    Ok(())
}

fn toggle(picked: &mut Vec<String>, id: String) {
    if picked.contains(&id) {
        picked.retain(|there| *there != id);
    } else if id == NO_COMPLAINT {
        *picked = vec![id];
    } else {
        picked.retain(|there| there != NO_COMPLAINT);
        picked.push(id);
    }
}

/// Logs a circuit and what was typed for its figures, unless it is the one that stands already.
pub(crate) fn state_circuit(
    core: &mut Companion,
    choice: &CircuitChoice,
    typed: Vec<TypedRecord>,
    turn: &mut Turn<'_>,
) -> Result<(), ActError> {
    let stated = CircuitStated {
        choice: serde_json::to_value(choice)?,
        typed,
    };
    let stands = core
        .job
        .as_ref()
        .and_then(|job| job.log.circuit.as_ref())
        .is_some_and(|there| *there == stated);
    if !stands {
        core.append(Payload::Circuit(stated), turn);
    }
    Ok(())
}

/// Logs what changed in the vehicle and the complaint.
pub(super) fn settle(
    core: &mut Companion,
    draft: &VehicleDraft,
    turn: &mut Turn<'_>,
) -> Result<(), ActError> {
    let Some(job) = &core.job else { return Ok(()) };
    let there = job.log.vehicle.clone();
    let changed = |field: FieldId, there: &Option<String>| {
        let text = draft.typed.get(&field)?.trim();
        (text != there.as_deref().unwrap_or("")).then(|| text.to_owned())
    };
    let odometer = |field: FieldId, there: &Option<String>| {
        let typed = changed(field, there)?;
        let (text, km) = odometer::kept(&core.texts, &typed, odometer_unit(core, there.as_deref()));
        (Some(&text) != there.as_ref()).then_some((text, km))
    };
    let driven_in = odometer(FieldId::Odometer, &there.odometer);
    let driven_out = odometer(FieldId::OdometerOut, &there.odometer_out);
    let vehicle = Vehicle {
        plate: changed(FieldId::Plate, &there.plate),
        vin: changed(FieldId::Vin, &there.vin),
        label: changed(FieldId::Label, &there.label),
        odometer_km: driven_in.as_ref().and_then(|(_, km)| *km),
        odometer: driven_in.map(|(text, _)| text),
        odometer_out_km: driven_out.as_ref().and_then(|(_, km)| *km),
        odometer_out: driven_out.map(|(text, _)| text),
        handed_over: changed(FieldId::HandedOver, &there.handed_over),
        customer: changed(FieldId::Customer, &there.customer),
        agreed: changed(FieldId::Agreed, &there.agreed),
    };
    let complained = Complaint {
        phrases: complaint(core, draft),
        note: draft
            .typed
            .get(&FieldId::ComplaintNote)
            .unwrap_or(&job.log.complaint.note)
            .trim()
            .to_owned(),
    };
    let complaint_changed = complained != job.log.complaint;
    if vehicle != Vehicle::default() {
        core.append(Payload::Vehicle(vehicle), turn);
    }
    if complaint_changed {
        core.append(Payload::Complaint(complained), turn);
    }
    Ok(())
}

fn complaint(core: &Companion, draft: &VehicleDraft) -> Vec<String> {
    draft.complaint.clone().unwrap_or_else(|| {
        core.job
            .as_ref()
            .map(|job| job.log.complaint.phrases.clone())
            .unwrap_or_default()
    })
}

pub(super) fn screen(core: &Companion, draft: &VehicleDraft) -> (Frame, Body) {
    let picked = complaint(core, draft);
    let missing = picked.is_empty().then(|| core.say("vehicle-complaint-missing"));
    let sections = vec![
        complaint_section(core, draft, &picked),
        section(core.say("vehicle-vehicle"), vehicle_fields(core, draft)),
        circuit_section(core),
        section(core.say("vehicle-who"), vec![profile_choice(core)]),
    ];
    let next = primary(core.say("vehicle-next"), Action::Confirm).unless(missing);
    let form = FormScreen {
        sections,
        next: Some(next),
    };
    (Frame::titled(core.say("vehicle-title")), Body::Vehicle { form })
}

fn complaint_section(core: &Companion, draft: &VehicleDraft, picked: &[String]) -> Section {
    let options = holdfast_diagnose::Complaint::ALL
        .into_iter()
        .map(|complaint| {
            let id = complaint.as_str();
            let there = picked.iter().any(|p| p == id);
            option(
                core.say(&key("complaint", id)),
                there,
                Pick::Complaint { id: id.to_owned() },
            )
        })
        .collect();
    let logged = core
        .job
        .as_ref()
        .map(|job| job.log.complaint.note.clone())
        .unwrap_or_default();
    let note = draft
        .typed
        .get(&FieldId::ComplaintNote)
        .map_or(logged, str::to_owned);
    section(
        core.say("complaint-question"),
        vec![
            any_of(String::new(), options),
            entry(text_field(
                FieldId::ComplaintNote,
                core.say("vehicle-complaint-note"),
                note,
                Keys::Lines,
            )),
            words(core.say("not-this-job")),
        ],
    )
}

fn vehicle_fields(core: &Companion, draft: &VehicleDraft) -> Vec<FormItem> {
    let there = core
        .job
        .as_ref()
        .map(|job| job.log.vehicle.clone())
        .unwrap_or_default();
    let field = |id: FieldId, label: &str, logged: Option<String>, keys| {
        let value = draft
            .typed
            .get(&id)
            .map_or_else(|| logged.unwrap_or_default(), str::to_owned);
        text_field(id, core.say(label), value, keys)
    };
    let mut vin = field(FieldId::Vin, "vehicle-vin", there.vin, Keys::Code);
    explain_vin(core, &mut vin);
    let odometer = odometer_field(core, draft, FieldId::Odometer, "vehicle-odometer", there.odometer);
    let mut agreed = field(FieldId::Agreed, "vehicle-agreed", there.agreed, Keys::Lines);
    agreed.hint = core.say("vehicle-agreed-hint");
    let mut items = vec![
        entry(field(FieldId::Plate, "vehicle-plate", there.plate, Keys::Code)),
        entry(field(FieldId::Label, "vehicle-label", there.label, Keys::Text)),
        entry(vin),
        entry(odometer),
        entry(field(
            FieldId::Customer,
            "vehicle-customer",
            there.customer,
            Keys::Text,
        )),
    ];
    // An owner agrees with nobody about the own car, and gives it back to nobody.
    if core.session.settings.profile == Profile::Mechanic {
        items.push(entry(agreed));
        if core.job.as_ref().is_some_and(|job| !job.done.is_empty()) {
            let out = odometer_field(
                core,
                draft,
                FieldId::OdometerOut,
                "vehicle-odometer-out",
                there.odometer_out,
            );
            let mut over = field(
                FieldId::HandedOver,
                "vehicle-handed-over",
                there.handed_over,
                Keys::Text,
            );
            over.hint = core.say("vehicle-handed-over-hint");
            items.extend([entry(out), entry(over)]);
        }
    }
    items
}

/// The unit of the car's odometer: as it was read before, else the person's.
fn odometer_unit(core: &Companion, logged: Option<&str>) -> EverydayUnit {
    logged
        .and_then(|logged| odometer::parts(logged).1)
        .unwrap_or(core.session.settings.units.odometer)
}

/// The odometer with its unit behind it, unless one is typed into it.
fn odometer_field(
    core: &Companion,
    draft: &VehicleDraft,
    id: FieldId,
    label: &str,
    logged: Option<String>,
) -> Field {
    let unit = odometer_unit(core, logged.as_deref());
    let typed = draft.typed.get(&id).map(str::to_owned);
    let is_typed = typed.is_some();
    let text = typed.or(logged).unwrap_or_default();
    let (figure, written) = odometer::parts(&text);
    let value = if is_typed { text.clone() } else { figure.to_owned() };
    let mut field = text_field(id, core.say(label), value, Keys::Text);
    if !is_typed || written.is_none() {
        field.unit = unit.symbol().to_owned();
    }
    field.hint = core.say("vehicle-odometer-hint");
    field
}

/// The check digit explained; it never refuses a VIN, since only North American ones must have one.
fn explain_vin(core: &Companion, field: &mut Field) {
    match vin::check(&field.value) {
        VinCheck::Empty => field.hint = core.say("vehicle-vin-hint"),
        VinCheck::Fits => field.hint = core.say("vin-fits"),
        VinCheck::Length { found } => {
            field.problem = Some(core.say_with("vin-length", &Args::new().count("count", found)));
        }
        VinCheck::Sign { found, .. } => {
            field.problem = Some(core.say_with("vin-character", &Args::new().text("character", found)));
        }
        VinCheck::CheckDigit { found, expected } => {
            let args = Args::new().text("there", found).text("expected", expected);
            field.problem = Some(core.say_with("vin-differs", &args));
        }
    }
}

fn circuit_section(core: &Companion) -> Section {
    let stated = core
        .job
        .as_ref()
        .map(|job| job.choice.template().to_owned())
        .unwrap_or_default();
    let options = templates()
        .iter()
        .map(|template| {
            let mut card = option(
                core.say(&format!("template-{}", template.id)),
                template.id == stated,
                Pick::Template {
                    id: template.id.to_owned(),
                },
            );
            card.picture = core.drawn.template(&core.texts, template.id);
            card
        })
        .collect();
    section(
        core.say("vehicle-circuit"),
        vec![
            words(core.say("vehicle-circuit-hint")),
            one_of(String::new(), options),
            tap(plain(
                core.say("vehicle-circuit-edit"),
                Action::Go { to: Place::Circuit },
            )),
        ],
    )
}

fn profile_choice(core: &Companion) -> FormItem {
    let options = [Profile::Owner, Profile::Mechanic]
        .into_iter()
        .map(|profile| {
            let id = profile.id();
            let mut card = option(
                core.say(&format!("profile-{id}")),
                core.session.settings.profile == profile,
                Pick::Profile { id: id.to_owned() },
            );
            card.detail = core.say(&format!("profile-{id}-detail"));
            card
        })
        .collect();
    one_of(String::new(), options)
}

/// The text key of an id of the contract: `shake_idle` of `complaint` is `complaint-shake-idle`.
pub(super) fn key(group: &str, id: &str) -> String {
    format!("{group}-{}", id.replace('_', "-"))
}
