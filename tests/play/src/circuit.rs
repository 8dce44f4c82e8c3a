//! A circuit in the contract's detail, stated on the circuit's screen.

use holdfast_companion::{Action, FieldId, Pick, Picked};
use holdfast_diagnose::{ComponentId, CustomCircuit};
use serde_json::Value;

use crate::error::PlayError;
use crate::setup::figure;
use crate::shell::Shell;

/// States what is known of the circuit beyond its template.
///
/// # Errors
/// [`PlayError::Missing`] or [`PlayError::Refused`] where the screen does not take it.
pub(crate) fn state(shell: &mut Shell, custom: &CustomCircuit) -> Result<(), PlayError> {
    if let Some(id) = custom.electric.clone() {
        shell.pick(&Pick::Layout { id }, Picked::Yes)?;
    }
    let json = serde_json::to_value(custom)?;
    for property in ["vacuum_means", "switched", "feed", "window", "check_valve"] {
        let value = match json.get(property) {
            Some(Value::String(word)) => word.clone(),
            Some(Value::Bool(true)) => "yes".to_owned(),
            Some(Value::Bool(false)) => "no".to_owned(),
            _ => continue,
        };
        let property = property.to_owned();
        shell.pick(&Pick::Property { property, value }, Picked::Yes)?;
    }
    if custom.reservoir_cm3 == Some(0.0) {
        let component = "reservoir".to_owned();
        shell.press(&Action::Pick {
            pick: Pick::RemoveComponent { component },
        })?;
    }
    for (field, number) in figures(custom) {
        shell.fill(&field, &figure(number))?;
    }
    Ok(())
}

fn figures(custom: &CustomCircuit) -> Vec<(FieldId, f64)> {
    let chamber = |id: &ComponentId| FieldId::ChamberVolume {
        component: id.to_string(),
    };
    let length = |id: &ComponentId| FieldId::HoseLength {
        component: id.to_string(),
    };
    let reservoir = ComponentId::new("reservoir");
    let mut all: Vec<(FieldId, f64)> = Vec::new();
    all.extend(custom.chamber_cm3.iter().map(|(id, cm3)| (chamber(id), *cm3)));
    all.extend(
        custom
            .reservoir_cm3
            .filter(|cm3| *cm3 > 0.0)
            .map(|cm3| (chamber(&reservoir), cm3)),
    );
    all.extend(custom.length_m.iter().map(|(id, m)| (length(id), *m)));
    all.extend(
        custom
            .chamber_rel_sd
            .map(|share| (FieldId::ChamberDoubt, (share * 1e9).round() / 1e7)),
    );
    all.extend(custom.bore_mm.map(|mm| (FieldId::HoseBore, mm)));
    // The upper end first: the screen keeps the two in order.
    all.extend(custom.coil_ohm.map(|(_, high)| (FieldId::CoilHigh, high)));
    all.extend(custom.coil_ohm.map(|(low, _)| (FieldId::CoilLow, low)));
    all.extend(custom.fuse_a.map(|amps| (FieldId::FuseRating, amps)));
    all
}
