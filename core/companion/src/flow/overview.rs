//! Where we stand: the next test with its reason, the circuit, the leading causes, all tests.
//!
//! | event | leads to |
//! |---|---|
//! | `ShowTest` | that test |
//! | `Go` | finding, report, log, vehicle … |
//! | `Tap` a part of the map | its own hold test, or the test that names it |
//! | `Repair` | the repair of that part |

use crate::companion::Companion;
use crate::compose;
use crate::error::ActError;
use crate::flow::{places, test};
use crate::protocol::{Action, Body, Frame};
use crate::turn::Turn;

pub(super) fn act(core: &mut Companion, action: Action, turn: &mut Turn<'_>) -> Result<(), ActError> {
    match action {
        Action::Tap { region } => match about(core, &region) {
            Some(id) => test::show(core, &id, turn),
            None => Ok(()),
        },
        Action::Repair { component } => {
            core.session.at = places::repair_of(component);
            Ok(())
        }
        _ => Ok(()),
    }
}

/// The first test of a component that the map's region names.
fn about(core: &Companion, component: &str) -> Option<String> {
    let job = core.job.as_ref()?;
    let on_it = |spec: &&holdfast_diagnose::TestSpec| {
        spec.id
            .part
            .as_ref()
            .is_some_and(|part| part.as_str() == component)
            || spec.id.kind.as_str() == component
    };
    job.specs.iter().find(on_it).map(|spec| spec.id.to_string())
}

pub(super) fn screen(core: &Companion) -> (Frame, Body) {
    let body = match &core.job {
        Some(job) => Body::Overview {
            overview: compose::overview(&core.texts, job),
        },
        None => core.nothing(),
    };
    (Frame::titled(core.say("overview-title")), body)
}
