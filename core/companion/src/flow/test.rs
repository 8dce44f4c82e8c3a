//! A test from its briefing to its result.
//!
//! | event | in | leads to |
//! |---|---|---|
//! | `ShowTest` | anywhere | the test where it was left; else a question if its reading is to be looked at again, or its
//! result if it was done, unless it was gone to as what is next; else its briefing |
//! | `BeginTest` with cautions ticked | briefing | the measurement that suits its form |
//! | `CannotDo` | briefing | logged as not done with the reason; where we stand |
//! | `RedoTest` | result | briefing |
//! | `CorrectReading` | result | the measurement again; what is entered puts the logged reading right |
//! | `GoOn` | undecided result of a hold | watching from where it is |
//! | `Confirm` | result | where we stand |
//! | `KeepReading` | question | logged as confirmed; result |
//! | `ChangeReading` | question | the measurement with what was entered |

use holdfast_diagnose::{Form, TestId, TestSpec};
use holdfast_joblog::{Payload, Skipped};

use crate::companion::Companion;
use crate::error::ActError;
use crate::flow::hold::HoldAt;
use crate::flow::{amend, ask, brief, hold_act, hold_screen, look, places, reading, result, values};
use crate::job::{Because, OWN_WORDS};
use crate::protocol::{Action, Body, CannotReason, FieldId, Frame};
use crate::session::{At, Purpose, Stage, TestAt, ValuesAt};
use crate::turn::Turn;

/// Shows a test: where it was left, else its result, else its briefing.
pub(super) fn show(core: &mut Companion, test: &str, turn: &mut Turn<'_>) -> Result<(), ActError> {
    let Ok(id) = test.parse::<TestId>() else {
        return Ok(());
    };
    if core.job.is_none() {
        return Ok(());
    }
    places::settle(core, turn)?;
    let retest = matches!(core.session.at, At::Repaired(_));
    let from_next = matches!(core.session.at, At::Overview);
    if let At::Test(at) = core.session.at.clone() {
        places::park(core, at);
    }
    core.session.notice = None;
    core.session.at = match core.session.take_parked(test) {
        Some(at) => At::Test(at),
        None if retest => places::briefing(test.to_owned(), Purpose::Retest),
        None => {
            let Some(job) = &core.job else { return Ok(()) };
            if let Some(at) = reading::to_look_again(core, &id) {
                At::Test(at)
            } else if job.last(&id, false).is_some() && !(from_next && job.is_next(&id)) {
                At::Test(TestAt::at(
                    test.to_owned(),
                    Purpose::Find,
                    Stage::Result { going: None },
                ))
            } else {
                places::briefing(test.to_owned(), Purpose::Find)
            }
        }
    };
    core.moving.needle = None;
    Ok(())
}

/// The measurement that suits a test.
pub(super) fn measurement(spec: &TestSpec) -> Stage {
    match spec.form {
        Form::Hold => Stage::Hold(HoldAt::begin()),
        Form::YesNo => Stage::Ask { said: Vec::new() },
        Form::LookOver => Stage::Look { seen: Vec::new() },
        Form::Gauge | Form::Meter | Form::Words | Form::Vibration => Stage::Values(ValuesAt::default()),
    }
}

pub(super) fn act(
    core: &mut Companion,
    at: TestAt,
    action: Action,
    turn: &mut Turn<'_>,
) -> Result<(), ActError> {
    let Some(spec) = core.spec(&at.test) else {
        return Ok(());
    };
    match (&at.stage, action) {
        (Stage::Brief { .. }, Action::BeginTest) => {
            if brief::unticked(core, &at, &spec) == 0 {
                core.moving = crate::moving::Moving {
                    clock: core.moving.clock.clone(),
                    ..Default::default()
                };
                begin(core, at, &spec, turn);
            }
            Ok(())
        }
        (Stage::Brief { .. }, Action::CannotDo { reason }) => refuse(core, &at, reason, turn),
        (Stage::Brief { .. }, action) => {
            core.session.at = At::Test(brief::filled_in(at, action));
            Ok(())
        }
        (Stage::Result { .. }, Action::RedoTest) => {
            core.session.at = places::briefing(at.test, at.purpose);
            Ok(())
        }
        (Stage::Result { .. }, Action::CorrectReading) => {
            result::correct(core, &at, &spec);
            Ok(())
        }
        (Stage::Result { going: Some(hold) }, Action::GoOn) => {
            result::go_on(core, at.clone(), hold.clone(), turn);
            Ok(())
        }
        (Stage::Result { .. }, Action::Confirm) => {
            core.session.at = At::Overview;
            Ok(())
        }
        (Stage::Question { .. }, action) => reading::answer(core, at, action, turn),
        (Stage::Hold(_), action) => hold_act::act(core, at, action, turn),
        (Stage::Values(_), action) => values::act(core, at, &spec, action, turn),
        (Stage::Ask { .. }, action) => ask::act(core, at, &spec, action, turn),
        (Stage::Look { .. }, action) => look::act(core, at, action, turn),
        (Stage::Amend(_), action) => amend::act(core, at, action, turn),
        _ => Ok(()),
    }
}

fn begin(core: &mut Companion, at: TestAt, spec: &TestSpec, turn: &mut Turn<'_>) {
    brief::log_ticks(core, &at, spec, turn);
    core.session.at = At::Test(TestAt {
        stage: measurement(spec),
        ..at
    });
}

fn reason_id(reason: CannotReason) -> &'static str {
    match reason {
        CannotReason::NoAccess => "no_access",
        CannotReason::NoTool => "no_tool",
        CannotReason::NotSafe => "not_safe",
        CannotReason::NotFitted => "not_fitted",
        CannotReason::NotNow => "not_now",
        CannotReason::NotAvailable => "not_available",
        CannotReason::OwnWords => OWN_WORDS,
    }
}

/// The test shown can't be done, and why; it takes no minutes.
fn refuse(
    core: &mut Companion,
    at: &TestAt,
    reason: CannotReason,
    turn: &mut Turn<'_>,
) -> Result<(), ActError> {
    let note = match (&at.stage, reason) {
        (Stage::Brief { typed, .. }, CannotReason::OwnWords) => typed.get(&FieldId::CannotWhy),
        _ => None,
    };
    let note = note.unwrap_or_default().trim().to_owned();
    if reason == CannotReason::OwnWords && note.is_empty() {
        core.session.at = At::Test(brief::ask_why(at.clone()));
        return Ok(());
    }
    let because = Because {
        minutes: 0.0,
        ..core.because(&at.test)
    };
    let skipped = Skipped {
        test: at.test.clone(),
        reason: reason_id(reason).to_owned(),
        note,
        asked_because: Some(serde_json::to_value(because)?),
    };
    core.append(Payload::Skipped(skipped), turn);
    core.session.at = At::Overview;
    Ok(())
}

pub(super) fn screen(core: &Companion, at: &TestAt) -> (Frame, Body) {
    let Some(spec) = core.spec(&at.test) else {
        return result::unknown(core);
    };
    let title = core.texts.test_title(&spec.id);
    let body = match &at.stage {
        Stage::Brief {
            acknowledged, typed, ..
        } => brief::body(core, at, &spec, acknowledged, typed),
        Stage::Hold(hold) => hold_screen::body(core, &spec, hold),
        Stage::Values(values) => values::body(core, at, &spec, values),
        Stage::Ask { said } => ask::body(core, &spec, said),
        Stage::Look { seen } => look::body(core, seen),
        Stage::Amend(figures) => amend::body(core, figures),
        Stage::Question { reading, taken, .. } => reading::body(core, at, reading, *taken),
        Stage::Result { going } => result::body(core, at, &spec, going.as_ref()),
    };
    (Frame::titled(title), body)
}
