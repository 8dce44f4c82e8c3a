//! Tests other than holds, answered on their screens.

use holdfast_companion::{Action, AskedStage, FieldId, Pick, Picked, Said};
use holdfast_diagnose::{CarState, EngineState, LookState, Quantity, TestSpec};
use serde_json::{Map, Value};

use crate::error::PlayError;
use crate::hold::Taken;
use crate::setup::figure;
use crate::shell::Shell;

/// Answers the screens of a test until its reading is handed in.
pub(crate) fn play(
    shell: &mut Shell,
    spec: &TestSpec,
    answer: &Value,
    state: CarState,
) -> Result<Taken, PlayError> {
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
                if state != CarState::default() {
                    return Ok(Taken::No);
                }
                let key = questions.next().map_or("", |field| field.key.as_str());
                let said = match said.get(key).and_then(Value::as_bool) {
                    Some(true) => Said::Yes,
                    Some(false) => Said::No,
                    None => Said::NotSure,
                };
                shell.press(&Action::Say { said })?;
            }
            Some(AskedStage::Values) => return values(shell, spec, said, state),
            Some(AskedStage::Look) => return look(shell, said),
            _ => return Ok(Taken::Yes),
        }
    }
    Err(shell.missing("end of its questions".into()))
}

fn values(
    shell: &mut Shell,
    spec: &TestSpec,
    said: &Map<String, Value>,
    state: CarState,
) -> Result<Taken, PlayError> {
    for (property, value) in stated(state) {
        let pick = Pick::CarState {
            property: property.into(),
            value: value.into(),
        };
        if shell.option(&pick).is_none() {
            return Ok(Taken::No);
        }
        shell.pick(&pick, Picked::Yes)?;
    }
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
        if value_of(shell, field.quantity, key, value)? == Taken::No {
            return Ok(Taken::No);
        }
    }
    shell.press(&Action::Confirm)?;
    // Handed in, or the screen still misses something.
    let stays = matches!(
        shell.core.asked().map(|asked| asked.stage),
        Some(AskedStage::Values)
    );
    Ok(if stays { Taken::No } else { Taken::Yes })
}

fn value_of(shell: &mut Shell, quantity: Quantity, key: &str, value: &Value) -> Result<Taken, PlayError> {
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
            let pick = answer_pick(key, &figure(value.as_f64().unwrap_or(-1.0)));
            if shell.option(&pick).is_none() {
                return Ok(Taken::No);
            }
            shell.pick(&pick, Picked::Yes)?;
        }
        Quantity::Samples => return Ok(Taken::No),
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
            if shell.type_in(&answer_field(key), &text)?.is_some() {
                return Ok(Taken::No);
            }
        }
    }
    Ok(Taken::Yes)
}

fn look(shell: &mut Shell, said: &Map<String, Value>) -> Result<Taken, PlayError> {
    for (component, state) in said {
        let state = state.as_str().unwrap_or_default();
        let action = Action::Look {
            component: component.clone(),
            state: state.to_owned(),
        };
        if state == LookState::Ok.as_str() {
            continue;
        }
        if !shell.shows(&action) {
            return Ok(Taken::No);
        }
        shell.send(action)?;
    }
    shell.press(&Action::Confirm)?;
    Ok(Taken::Yes)
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
