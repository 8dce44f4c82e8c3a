//! Going from screen to screen: what is settled on leaving, what the phone is asked on entering.

use crate::companion::Companion;
use crate::error::ActError;
use crate::flow::Outcomes;
use crate::flow::parts::{plain, quiet};
use crate::flow::{approval, circuit, costs, cues, hold_camera, prepare, settings, travel, vehicle};
use crate::protocol::{Action, Button, Frame, Notice, PhonePart, Place, Request};
use crate::session::{
    At, CircuitDraft, NoticeAt, PrepareDraft, Purpose, RepairDraft, Stage, TestAt, VehicleDraft,
};
use crate::text::Args;
use crate::turn::Turn;
use crate::typed::Typed;

/// Milliseconds between ticks while seconds run.
const TICK_MS: u32 = 100;

/// The way back from a screen.
///
/// | event | in | leads to |
/// |---|---|---|
/// | `Back` | vehicle, overview, finding … | its parent |
/// | `Back` | a test's measurement | the overview; the test is parked as it stands |
/// | `Back` | settings, photo | where it was opened from |
pub(crate) fn back(core: &mut Companion, turn: &mut Turn<'_>) -> Result<(), ActError> {
    settle(core, turn)?;
    core.session.at = match core.session.at.clone() {
        At::Jobs | At::Listed(_) | At::Vehicle(_) | At::Overview => At::Jobs,
        At::Circuit(_) => At::Vehicle(VehicleDraft::default()),
        At::Prepare(_) => At::Vehicle(VehicleDraft::default()),
        At::Test(at) => {
            park(core, at);
            At::Overview
        }
        At::Finding | At::Report | At::Log => At::Overview,
        At::Repaired(_) => At::Finding,
        At::Costs(_) | At::Approval(_) => At::Report,
        At::Photo(at) => *at.before,
        At::Settings { before, .. } => *before,
    };
    forget_job_in_the_list(core);
    Ok(())
}

/// Going to a named screen.
pub(crate) fn go(core: &mut Companion, to: Place, turn: &mut Turn<'_>) -> Result<(), ActError> {
    settle(core, turn)?;
    if let (At::Test(at), false) = (core.session.at.clone(), to == Place::Settings) {
        park(core, at);
    }
    let needs_job = !matches!(to, Place::Jobs | Place::Settings);
    if needs_job && core.job.is_none() {
        return Ok(());
    }
    if to == Place::Settings {
        // Jobs may have been closed since.
        core.learn()?;
    }
    core.session.notice = None;
    core.session.at = match to {
        Place::Jobs => At::Jobs,
        Place::Vehicle => At::Vehicle(VehicleDraft::default()),
        Place::Circuit => At::Circuit(CircuitDraft::default()),
        Place::Prepare => At::Prepare(PrepareDraft::default()),
        Place::Overview => At::Overview,
        Place::Finding => At::Finding,
        Place::Report => At::Report,
        Place::Costs => At::Costs(costs::draft(core)),
        Place::Approval => At::Approval(approval::draft(core)),
        Place::Log => At::Log,
        Place::Settings => At::Settings {
            typed: Typed::default(),
            before: Box::new(core.session.at.clone()),
        },
    };
    forget_job_in_the_list(core);
    Ok(())
}

/// On the list of jobs no job is open.
fn forget_job_in_the_list(core: &mut Companion) {
    if core.session.at == At::Jobs {
        core.session.job = None;
        core.job = None;
    }
}

/// Logs what was typed on a form and is valid; what is not valid is dropped with the form.
pub(crate) fn settle(core: &mut Companion, turn: &mut Turn<'_>) -> Result<(), ActError> {
    match core.session.at.clone() {
        At::Vehicle(draft) => vehicle::settle(core, &draft, turn),
        At::Circuit(draft) => circuit::settle(core, &draft, turn),
        At::Prepare(draft) => prepare::settle(core, &draft, turn),
        At::Settings { .. } => settings::settle(core, turn),
        At::Costs(draft) => {
            costs::settle(core, &draft, turn);
            Ok(())
        }
        At::Photo(at) => crate::flow::photo::settle(core, &at, turn),
        At::Test(_) => {
            hold_camera::settle(core, turn);
            Ok(())
        }
        _ => Ok(()),
    }
}

/// Keeps a test as it stands, to be taken up again. A briefing or a result has nothing to keep.
pub(crate) fn park(core: &mut Companion, at: TestAt) {
    core.session.take_parked(&at.test);
    if matches!(at.stage, Stage::Brief { .. } | Stage::Result { .. }) {
        return;
    }
    core.session.notice = Some(NoticeAt::Parked {
        test: at.test.clone(),
    });
    core.session.park(at);
}

/// The app came back to the front: what runs is asked for again.
pub(crate) fn resume(core: &mut Companion, turn: &mut Turn<'_>) {
    if is_timed(&core.session.at) {
        start_timing(turn);
    }
    if is_watched_by_camera(&core.session.at) {
        turn.ask(hold_camera::request(core));
    }
}

/// Asks the phone for what the new screen needs, and takes back what the old one had.
pub(crate) fn leave_and_enter(before: &At, core: &mut Companion, turn: &mut Turn<'_>) {
    let now = &core.session.at;
    match (is_timed(before), is_timed(now)) {
        (false, true) => start_timing(turn),
        (true, false) => {
            turn.ask(Request::StopTicks);
            turn.ask(Request::LetScreenSleep);
        }
        _ => {}
    }
    match (is_watched_by_camera(before), is_watched_by_camera(now)) {
        (false, true) => turn.ask(hold_camera::request(core)),
        (true, false) => turn.ask(Request::StopWatchingGauge),
        _ => {}
    }
    cues::told_by_screen(core, before, turn);
    let entered = matches!(now, At::Prepare(_)) && !matches!(before, At::Prepare(_));
    let known = core.job.as_ref().is_some_and(|job| job.log.place.is_some());
    if entered && !known && core.has(PhonePart::Barometer) {
        turn.ask(Request::ReadBarometer);
    }
}

fn start_timing(turn: &mut Turn<'_>) {
    turn.ask(Request::KeepScreenOn);
    turn.ask(Request::StartTicks { every_ms: TICK_MS });
}

fn is_timed(at: &At) -> bool {
    matches!(at, At::Test(TestAt { stage: Stage::Hold(hold), .. }) if hold.is_timed())
}

fn is_watched_by_camera(at: &At) -> bool {
    matches!(at, At::Test(TestAt { stage: Stage::Hold(hold), .. }) if hold.is_watched_by_camera())
}

/// The repair screen of a component.
pub(crate) fn repair_of(component: String) -> At {
    At::Repaired(RepairDraft {
        component,
        typed: Typed::default(),
    })
}

/// A test from its briefing.
pub(crate) fn briefing(test: String, purpose: Purpose) -> At {
    At::Test(TestAt::at(test, purpose, brief()))
}

/// A briefing from its beginning.
pub(crate) fn brief() -> Stage {
    Stage::Brief {
        acknowledged: Vec::new(),
        typed: Typed::default(),
        outcomes: Outcomes::default(),
    }
}

/// The frame with what every screen has: the way back, other places, the notice.
pub(crate) fn framed(core: &Companion, mut frame: Frame) -> Frame {
    if !matches!(core.session.at, At::Jobs | At::Listed(_)) && frame.back.is_none() {
        frame = frame.with_back(core.say("back"));
    }
    let go = |place, key: &str| quiet(core.say(key), Action::Go { to: place });
    frame.menu = match &core.session.at {
        At::Jobs | At::Listed(_) => vec![go(Place::Settings, "menu-settings")],
        At::Settings { .. } | At::Photo(_) => Vec::new(),
        At::Vehicle(_) | At::Circuit(_) | At::Prepare(_) => vec![go(Place::Settings, "menu-settings")],
        _ => vec![
            go(Place::Overview, "menu-overview"),
            go(Place::Vehicle, "menu-vehicle"),
            go(Place::Prepare, "menu-prepare"),
            go(Place::Log, "menu-log"),
            go(Place::Report, "menu-report"),
            go(Place::Settings, "menu-settings"),
        ],
    };
    frame.with_notice(notice(core))
}

fn notice(core: &Companion) -> Option<Notice> {
    Some(match core.session.notice.as_ref()? {
        NoticeAt::Binned { .. } => said(
            core.say("notice-binned"),
            vec![plain(core.say("notice-binned-undo"), Action::Undo)],
        ),
        NoticeAt::EmptyBin => said(
            core.say("notice-empty-bin"),
            vec![
                plain(core.say("notice-empty-bin-yes"), Action::EmptyBinForGood),
                quiet(core.say("notice-empty-bin-no"), Action::KeepBin),
            ],
        ),
        NoticeAt::Took { took } => said(travel::took_words(core, took), travel::took_buttons(core, took)),
        NoticeAt::Working { key, work } => Notice {
            work: Some(*work),
            ..said(
                core.say(key),
                vec![quiet(core.say("report-stop"), Action::StopWork)],
            )
        },
        NoticeAt::Parked { test } => {
            if !matches!(core.session.at, At::Overview) {
                return None;
            }
            said(
                core.say_with("notice-parked", &Args::new().text("test", core.test_name(test))),
                vec![plain(
                    core.say("notice-parked-resume"),
                    Action::ShowTest { test: test.clone() },
                )],
            )
        }
        NoticeAt::Words { key } => said(core.say(key), Vec::new()),
    })
}

fn said(text: String, buttons: Vec<Button>) -> Notice {
    Notice {
        text,
        buttons,
        work: None,
    }
}
