//! From the list of jobs to where we stand: instruments, vehicle, complaint, circuit, cautions, tools, place.

use holdfast_companion::{Action, FieldId, Pick, Picked, Place};
use holdfast_diagnose::{Circuit, CircuitChoice, Complaint};
use holdfast_measure::PressureUnit;

use crate::circuit;
use crate::error::PlayError;
use crate::scenario::Scenario;
use crate::shell::Shell;

/// A figure as a person types it.
pub(crate) fn figure(number: f64) -> String {
    number.to_string()
}

/// Begins the scenario's job.
///
/// # Errors
/// [`PlayError::Value`] for what does not exist, [`PlayError::Refused`] for what a field does not take.
pub fn begin(shell: &mut Shell, scenario: &Scenario) -> Result<(), PlayError> {
    set_instruments(shell, scenario)?;
    shell.press(&Action::NewJob)?;
    state_vehicle(shell, scenario)?;
    state_circuit(shell, scenario)?;
    shell.press(&Action::Confirm)?;
    prepare(shell, scenario)?;
    shell.press(&Action::Confirm)?;
    Ok(())
}

fn set_instruments(shell: &mut Shell, scenario: &Scenario) -> Result<(), PlayError> {
    let given = &scenario.instruments;
    let gauge = given.gauge.clone().unwrap_or_default();
    let meter = given.meter.clone().unwrap_or_default();
    shell.press(&Action::Go { to: Place::Settings })?;
    if let Some(symbol) = gauge.unit {
        if PressureUnit::from_symbol(&symbol).is_none() {
            return Err(unknown("instruments.gauge.unit", &symbol));
        }
        shell.pick(
            &Pick::GaugeUnit {
                symbol: symbol.clone(),
            },
            Picked::Yes,
        )?;
        shell.pick(&Pick::ShownUnit { symbol }, Picked::Yes)?;
    }
    if let Some(grade) = gauge.grade {
        shell.pick(&Pick::GaugeGrade { grade }, Picked::Yes)?;
    }
    for (field, number) in [
        (FieldId::GaugeSpan, gauge.span),
        (FieldId::GaugeDivision, gauge.division),
        (FieldId::GaugeReadTo, gauge.read_to),
        (FieldId::PumpVolume, given.pump_cm3),
        (FieldId::PumpStroke, given.stroke_cm3),
        (FieldId::MeterPercent, meter.percent),
        (FieldId::MeterCounts, meter.counts),
        (FieldId::MeterDigits, meter.digits),
    ] {
        if let Some(number) = number {
            shell.fill(&field, &figure(number))?;
        }
    }
    shell.press(&Action::Back)?;
    Ok(())
}

fn state_vehicle(shell: &mut Shell, scenario: &Scenario) -> Result<(), PlayError> {
    let mut complaint = scenario.complaint.clone();
    if complaint.is_empty() {
        complaint.push(Complaint::None.as_str().to_owned());
    }
    for id in complaint {
        if !Complaint::ALL.iter().any(|known| known.as_str() == id) {
            return Err(unknown("complaint", &id));
        }
        shell.pick(&Pick::Complaint { id }, Picked::Yes)?;
    }
    if !scenario.vehicle.label.is_empty() {
        shell.type_in(&FieldId::Label, &scenario.vehicle.label)?;
    }
    if let Some(vin) = &scenario.vehicle.vin {
        // A check digit that does not fit is said and does not stop anybody.
        shell.type_in(&FieldId::Vin, vin)?;
    }
    if !matches!(scenario.profile.as_str(), "mechanic" | "owner") {
        return Err(unknown("profile", &scenario.profile));
    }
    shell.pick(
        &Pick::Profile {
            id: scenario.profile.clone(),
        },
        Picked::Yes,
    )
}

fn state_circuit(shell: &mut Shell, scenario: &Scenario) -> Result<(), PlayError> {
    let cannot = |why: String| PlayError::Value {
        what: "circuit".into(),
        why,
    };
    let choice: CircuitChoice =
        serde_json::from_value(scenario.circuit.clone()).map_err(|error| cannot(error.to_string()))?;
    let wanted = Circuit::build(&choice).map_err(|error| cannot(error.to_string()))?;
    let id = choice.template().to_owned();
    // The template of a new job stands without a tap; tapped, it is stated.
    let option = shell
        .option(&Pick::Template { id: id.clone() })
        .ok_or_else(|| shell.missing(format!("card of circuit {id}")))?;
    shell.send(option.action)?;
    if let CircuitChoice::Custom(custom) = &choice {
        shell.press(&Action::Go { to: Place::Circuit })?;
        circuit::state(shell, custom)?;
        shell.press(&Action::Confirm)?;
    }
    if shell.core.circuit() == Some(&wanted) {
        Ok(())
    } else {
        Err(cannot("the circuit's screen can't say all of it".into()))
    }
}

fn prepare(shell: &mut Shell, scenario: &Scenario) -> Result<(), PlayError> {
    let offered = shell.options(|pick| matches!(pick, Pick::Tool { .. }));
    let ids: Vec<String> = offered
        .into_iter()
        .filter_map(|option| match option.action {
            Action::Pick {
                pick: Pick::Tool { id },
            } => Some(id),
            _ => None,
        })
        .collect();
    if let Some(tool) = scenario.tools.iter().flatten().find(|tool| !ids.contains(tool)) {
        return Err(unknown("tools", tool));
    }
    for id in ids {
        let have = scenario.tools.as_ref().is_none_or(|tools| tools.contains(&id));
        shell.pick(&Pick::Tool { id }, picked(have))?;
    }
    for (field, number) in [
        (FieldId::Altitude, scenario.place.altitude_m),
        (FieldId::Ambient, scenario.place.ambient_kpa),
        (FieldId::AirTemperature, scenario.place.air_c),
        (FieldId::EngineStopped, scenario.engine.stopped_min),
    ] {
        if let Some(number) = number {
            shell.fill(&field, &figure(number))?;
        }
    }
    shell.pick(&Pick::EngineRuns, picked(scenario.engine.can_run))?;
    shell.pick(&Pick::SecondPerson, picked(scenario.second_person))?;
    shell.tick_cautions()
}

fn picked(holds: bool) -> Picked {
    if holds { Picked::Yes } else { Picked::No }
}

fn unknown(what: &str, value: &str) -> PlayError {
    PlayError::Value {
        what: what.to_owned(),
        why: format!("there is no {value:?}"),
    }
}
