//! The state the car was in, where it was another than the test asks.
//!
//! | event | leads to |
//! |---|---|
//! | `StateCar` in the briefing | the choices are shown |
//! | `Pick` a state | that state, instead of what the test asks; picked again, as the test asks |

use holdfast_diagnose::{CarState, EngineState};

use crate::companion::Companion;
use crate::flow::parts::{one_of, option};
use crate::protocol::{FormItem, Pick};
use crate::situation;
use crate::text::capital;

/// The state with one property picked, or let go where it held.
pub(super) fn pick(mut car: CarState, property: &str, value: &str) -> CarState {
    fn toggled<T: PartialEq>(held: Option<T>, picked: Option<T>) -> Option<T> {
        if held == picked { None } else { picked }
    }
    match property {
        "engine" => car.engine = toggled(car.engine, situation::engine_state(value)),
        "connected" => car.connected = toggled(car.connected, Some(value == YES)),
        "hot" => car.hot = toggled(car.hot, Some(value == YES)),
        _ => {}
    }
    car
}

const YES: &str = "yes";
const NO: &str = "no";

/// The choices.
pub(super) fn items(core: &Companion, car: CarState) -> Vec<FormItem> {
    let choose = |property: &str, value: &str, key: &str, holds: bool| {
        let (property, value) = (property.to_owned(), value.to_owned());
        option(capital(&core.say(key)), holds, Pick::CarState { property, value })
    };
    let engine = |state: EngineState, key: &str| {
        choose(
            "engine",
            situation::engine_id(state),
            key,
            car.engine == Some(state),
        )
    };
    vec![
        one_of(
            capital(&core.say("state-engine")),
            vec![
                engine(EngineState::Off, "state-engine-off"),
                engine(EngineState::Idle, "state-engine-idle"),
                engine(EngineState::InGear, "state-engine-in-gear"),
            ],
        ),
        one_of(
            capital(&core.say("state-connected")),
            vec![
                choose(
                    "connected",
                    YES,
                    "state-connected-yes",
                    car.connected == Some(true),
                ),
                choose(
                    "connected",
                    NO,
                    "state-connected-no",
                    car.connected == Some(false),
                ),
            ],
        ),
        one_of(
            capital(&core.say("state-hot")),
            vec![
                choose("hot", YES, "state-hot-yes", car.hot == Some(true)),
                choose("hot", NO, "state-hot-no", car.hot == Some(false)),
            ],
        ),
    ]
}
