//! Tests other than holds, answered on their screens.

use holdfast_companion::{Action, AskedStage, FieldId, Pick, Picked, Said};
use holdfast_diagnose::{CarState, EngineState, LookState, Quantity, TestSpec};
use serde_json::{Map, Value};

use crate::clock::ms;
use crate::error::PlayError;
use crate::setup::figure;
use crate::shell::Shell;

/// Answers the screens of a test until its reading is handed in.
pub(crate) fn play(shell: &mut Shell, spec: &TestSpec, answer: &Value) -> Result<(), PlayError> {
    let nothing = Map::new();
    let said = answer.as_object().unwrap_or(&nothing);
    // Questions come one by one, and the numbers beside them last: more stages than fields can't be.
    let mut questions = spec
        .fields
        .iter()
        .filter(|field| field.quantity == Quantity::YesNo);
    for _ in 0..spec.fields.len() + 2 {
        match shell.core.asked().map(|asked| asked.stage) {
            Some(AskedStage::Ask) => {
                let key = questions.next().map_or("", |field| field.key.as_str());
                let said = match said.get(key).and_then(Value::as_bool) {
                    Some(true) => Said::Yes,
                    Some(false) => Said::No,
                    None => Said::NotSure,
                };
                shell.press(&Action::Say { said })?;
            }
            Some(AskedStage::Values) => return values(shell, spec, said),
            Some(AskedStage::Look) => return look(shell, said),
            _ => return Ok(()),
        }
    }
    Err(shell.missing("end of its questions".into()))
}

/// Says in the briefing that the car stands otherwise than the test asks.
pub(crate) fn state_car(shell: &mut Shell, state: CarState) -> Result<(), PlayError> {
    if state == CarState::default() {
        return Ok(());
    }
    shell.press(&Action::StateCar)?;
    for (property, value) in stated(state) {
        let (property, value) = (property.into(), value.into());
        shell.pick(&Pick::CarState { property, value }, Picked::Yes)?;
    }
    Ok(())
}

fn values(shell: &mut Shell, spec: &TestSpec, said: &Map<String, Value>) -> Result<(), PlayError> {
    let open = said.get("open").and_then(Value::as_bool) == Some(true);
    let mut open_said = false;
    for field in &spec.fields {
        let key = field.key.as_str();
        let is_first_ohms = field.quantity == Quantity::Ohms && !open_said;
        if open && is_first_ohms {
            open_said = true;
            shell.pick(&answer_pick(key, "open"), Picked::Yes)?;
            continue;
        }
        let Some(value) = said.get(key) else { continue };
        value_of(shell, field.quantity, key, value)?;
    }
    // A figure outside the instrument's range is what it shows all the same.
    let done = if shell.offers(&Action::KeepReading) {
        Action::KeepReading
    } else {
        Action::Confirm
    };
    shell.press(&done)?;
    match shell.core.asked().map(|asked| asked.stage) {
        Some(AskedStage::Values) => Err(shell.missing("end of what it asks for".into())),
        _ => Ok(()),
    }
}

fn value_of(shell: &mut Shell, quantity: Quantity, key: &str, value: &Value) -> Result<(), PlayError> {
    match quantity {
        Quantity::YesNo => {
            let word = if value.as_bool() == Some(true) {
                "yes"
            } else {
                "no"
            };
            shell.pick(&answer_pick(key, word), Picked::Yes)?;
        }
        Quantity::Ohms if value.get("open").and_then(Value::as_bool) == Some(true) => {
            shell.pick(&answer_pick(key, "open"), Picked::Yes)?;
        }
        Quantity::Scale => {
            let step = figure(value.as_f64().unwrap_or(-1.0));
            shell.pick(&answer_pick(key, &step), Picked::Yes)?;
        }
        Quantity::Samples => record(shell, key, value)?,
        Quantity::Words => {
            let words: Vec<&str> = value
                .as_array()
                .into_iter()
                .flatten()
                .filter_map(Value::as_str)
                .collect();
            shell.type_in(&answer_field(key), &words.join("\n"))?;
        }
        _ => {
            let text = figure(value.as_f64().unwrap_or(f64::NAN));
            shell.type_in(&answer_field(key), &text)?;
        }
    }
    Ok(())
}

/// The phone records, and what it records is what the file has.
fn record(shell: &mut Shell, key: &str, value: &Value) -> Result<(), PlayError> {
    shell.press(&Action::Record { key: key.to_owned() })?;
    let hz = value.get("hz").and_then(Value::as_f64).unwrap_or(f64::NAN);
    let mg: Vec<f64> = value
        .get("mg")
        .and_then(Value::as_array)
        .into_iter()
        .flatten()
        .filter_map(Value::as_f64)
        .collect();
    shell.clock.wait_ms(ms(mg.len() as f64 / hz));
    shell.send(Action::VibrationRecorded { hz, mg })?;
    Ok(())
}

fn look(shell: &mut Shell, said: &Map<String, Value>) -> Result<(), PlayError> {
    for (component, state) in said {
        let state = state.as_str().unwrap_or_default();
        let action = Action::Look {
            component: component.clone(),
            state: state.to_owned(),
        };
        if state == LookState::Ok.as_str() {
            continue;
        }
        // A part may show what its row does not offer.
        shell.send(action)?;
    }
    shell.press(&Action::Confirm)?;
    Ok(())
}

fn stated(state: CarState) -> Vec<(&'static str, &'static str)> {
    let yes_no = |holds| if holds { "yes" } else { "no" };
    let mut all = Vec::new();
    all.extend(state.engine.map(|engine| {
        let word = match engine {
            EngineState::Off => "off",
            EngineState::Idle => "idle",
            EngineState::InGear => "in_gear",
        };
        ("engine", word)
    }));
    all.extend(state.connected.map(|holds| ("connected", yes_no(holds))));
    all.extend(state.hot.map(|holds| ("hot", yes_no(holds))));
    all
}

fn answer_field(key: &str) -> FieldId {
    FieldId::Answer { key: key.to_owned() }
}

fn answer_pick(key: &str, value: &str) -> Pick {
    Pick::Answer {
        key: key.to_owned(),
        value: value.to_owned(),
    }
}
