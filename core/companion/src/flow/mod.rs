//! The screens as nested state machines: one file a step. [`act`] sends an action to the step that is shown;
//! [`screen`] composes what is to be seen. Neither knows the phone.

pub(crate) mod amend;
mod answered;
mod approval;
mod ask;
mod brief;
mod car_state;
mod circuit;
mod circuit_change;
mod circuit_typed;
mod costs;
mod cues;
mod finding;
pub(crate) mod hold;
mod hold_act;
mod hold_camera;
mod hold_read;
mod hold_screen;
mod jobs;
mod kind;
mod log;
mod look;
mod mark_shapes;
pub(crate) mod marks;
mod narrow;
mod numbers;
mod overview;
mod parts;
mod photo;
mod photo_screen;
mod places;
mod prepare;
mod reading;
mod repair;
mod report;
mod result;
mod settings;
mod taught;
mod test;
mod travel;
mod values;
mod vehicle;
mod vibration;
mod what_if;

use holdfast_diagnose::Situation;

use crate::companion::Companion;
use crate::error::ActError;
use crate::protocol::{Action, Body, Frame};
use crate::session::{At, Stage};
use crate::turn::Turn;

pub(crate) use places::leave_and_enter;
pub(crate) use report::pages_to_lay;
pub(crate) use settings::payloads as settings_payloads;
pub(crate) use what_if::Outcomes;

/// Takes in one action.
///
/// | event | leads to |
/// |---|---|
/// | `Back`, `Go` | the screen before, or the one named; what was typed and is valid is logged, a test is parked |
/// | `NewJob`, `OpenJob` | the vehicle screen of a new job; where an opened job stands |
/// | `Tick`, `Drag`, `GaugeSeen` | the same screen, only its moving part |
/// | anything else | the step that is shown decides; what it does not offer changes nothing |
pub(crate) fn act(core: &mut Companion, action: Action, turn: &mut Turn<'_>) -> Result<(), ActError> {
    match action {
        Action::Tick => hold_act::tick(core, turn),
        Action::Drag { x, y } => {
            match core.session.at.clone() {
                At::Photo(at) => marks::drag(core, &at, x, y),
                _ => hold_act::drag(core, x, y, turn),
            }
            Ok(())
        }
        Action::Resume => {
            places::resume(core, turn);
            Ok(())
        }
        Action::Pause => Ok(()),
        Action::Back => places::back(core, turn),
        Action::Go { to } => places::go(core, to, turn),
        Action::NewJob | Action::OpenJob { .. } | Action::BinJob { .. } => jobs::act(core, action, turn),
        Action::TextSize { larger } => {
            core.texts.show_larger(larger);
            Ok(())
        }
        Action::BarometerRead { pa } => prepare::barometer(core, pa, turn),
        Action::BarometerMissing => Ok(()),
        Action::VibrationRecorded { .. } | Action::VibrationNotRecorded => {
            vibration::recorded(core, action);
            Ok(())
        }
        Action::GaugeSeen { .. } | Action::GaugeNotSeen => hold_camera::act(core, &action, turn),
        Action::AddPhoto { .. }
        | Action::PhotoTaken { .. }
        | Action::PhotoNotTaken
        | Action::PictureNotDecoded
        | Action::OpenPhoto { .. } => photo::add(core, action, turn),
        Action::WorkDone { id } => report::work_done(core, id, turn),
        Action::ExportJobs { .. }
        | Action::ImportBundle
        | Action::BundleTaken { .. }
        | Action::BundleNotTaken
        | Action::TakeAgain => travel::act(core, action, turn),
        Action::StopWork => {
            core.works.stop();
            core.session.notice = None;
            Ok(())
        }
        Action::ShowTest { test } => test::show(core, &test, turn),
        other => step(core, other, turn),
    }
}

/// Sends an action to the step that is shown.
fn step(core: &mut Companion, action: Action, turn: &mut Turn<'_>) -> Result<(), ActError> {
    match core.session.at.clone() {
        At::Jobs | At::Listed(_) => jobs::act(core, action, turn),
        At::Vehicle(draft) => vehicle::act(core, draft, action, turn),
        At::Circuit(draft) => circuit::act(core, draft, action, turn),
        At::Prepare(draft) => prepare::act(core, draft, action, turn),
        At::Overview => overview::act(core, action, turn),
        At::Test(at) => test::act(core, at, action, turn),
        At::Photo(at) => photo::act(core, at, action, turn),
        At::Finding => finding::act(core, action, turn),
        At::Repaired(draft) => repair::act(core, draft, action, turn),
        At::Report => report::act(core, action, turn),
        At::Costs(draft) => costs::act(core, draft, action, turn),
        At::Approval(draft) => approval::act(core, draft, action, turn),
        At::Log => Ok(()),
        At::Settings { typed, before } => settings::act(core, typed, before, action, turn),
    }
}

/// Whether a screen shows what all readings say together. A result doesn't: it stands by itself.
pub(crate) fn shows_reasoning(at: &At) -> bool {
    match at {
        At::Overview | At::Finding | At::Repaired(_) | At::Report | At::Approval(_) => true,
        At::Test(at) => matches!(at.stage, Stage::Brief { .. }),
        _ => false,
    }
}

/// The situation as it will stand when the form on the screen is confirmed; none where no form changes it.
pub(crate) fn situation_ahead(core: &Companion) -> Option<Situation> {
    match &core.session.at {
        At::Prepare(draft) => prepare::situation_ahead(core, draft),
        _ => None,
    }
}

/// What is to be seen now.
pub(crate) fn screen(core: &Companion) -> (Frame, Body) {
    let (frame, body) = match &core.session.at {
        At::Jobs | At::Listed(_) => jobs::screen(core),
        At::Vehicle(draft) => vehicle::screen(core, draft),
        At::Circuit(draft) => circuit::screen(core, draft),
        At::Prepare(draft) => prepare::screen(core, draft),
        At::Overview => overview::screen(core),
        At::Test(at) => test::screen(core, at),
        At::Photo(at) => photo_screen::screen(core, at),
        At::Finding => finding::screen(core),
        At::Repaired(draft) => repair::screen(core, draft),
        At::Report => report::screen(core),
        At::Costs(draft) => costs::screen(core, draft),
        At::Approval(draft) => approval::screen(core, draft),
        At::Log => log::screen(core),
        At::Settings { typed, .. } => settings::screen(core, typed),
    };
    (places::framed(core, frame), body)
}
