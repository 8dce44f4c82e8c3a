//! The result of a test: what came out, what it means, the ways on.

use holdfast_diagnose::{CarState, Outcome, TestSpec};

use crate::companion::Companion;
use crate::compose::{self, MapOf};
use crate::flow::amend;
use crate::flow::brief::photo_buttons;
use crate::flow::hold::Running;
use crate::flow::hold_act;
use crate::flow::parts::{plain, primary, quiet};
use crate::job::JobView;
use crate::protocol::{Action, Body, Button, Frame, PhotoSubject, Place, TestScreen, TestStage};
use crate::session::{At, Purpose, TestAt};
use crate::text::Args;
use crate::turn::Turn;

/// The reading shown: the last of this test, before or after the repair.
fn shown<'a>(
    job: &'a JobView,
    at: &TestAt,
    spec: &TestSpec,
) -> Option<(
    &'a holdfast_diagnose::Reading,
    &'a holdfast_diagnose::TestResult,
    &'a crate::job::Behind,
)> {
    job.last(&spec.id, at.purpose == Purpose::Retest)
}

/// Puts the logged reading right.
pub(super) fn correct(core: &mut Companion, at: &TestAt, spec: &TestSpec) {
    let Some((reading, _, behind)) = core.job.as_ref().and_then(|job| shown(job, at, spec)) else {
        return;
    };
    let entry = behind.entry.to_string();
    let stage = amend::stage(core, spec, reading, &entry);
    let car = (reading.state != CarState::default()).then_some(reading.state);
    core.session.at = At::Test(TestAt {
        car,
        ..TestAt::at(at.test.clone(), Purpose::Correct { entry }, stage)
    });
}

/// On with an undecided hold: what is read then takes the place of the reading before.
pub(super) fn go_on(core: &mut Companion, at: TestAt, hold: Running, turn: &mut Turn<'_>) {
    let Some(job) = &core.job else { return };
    let Some(spec) = core.spec(&at.test) else { return };
    let Some((_, result, behind)) = shown(job, &at, &spec) else {
        return;
    };
    let Some(more_s) = result.hold.as_ref().and_then(|hold| hold.more_seconds) else {
        return;
    };
    let purpose = Purpose::Correct {
        entry: behind.entry.to_string(),
    };
    hold_act::watch_more(core, TestAt { purpose, ..at }, hold, more_s, turn);
}

pub(super) fn body(core: &Companion, at: &TestAt, spec: &TestSpec, going: Option<&Running>) -> Body {
    let Some(job) = &core.job else {
        return core.nothing();
    };
    let Some((reading, result, _)) = shown(job, at, spec) else {
        return core.nothing();
    };
    let texts = &core.texts;
    let words = compose::result(texts, job, reading, result);
    let retest = at.purpose == Purpose::Retest;
    let before = if retest { job.last(&spec.id, false) } else { None };
    let chart = match before {
        Some((first, outcome, _)) => {
            compose::before_and_after(texts, job, (first, outcome), (reading, result)).or(words.chart)
        }
        None => words.chart,
    };
    let more = result.hold.as_ref().and_then(|hold| hold.more_seconds);
    let mut buttons = Vec::new();
    if let (Outcome::Undecided, Some(more_s), Some(_)) = (result.outcome, more, going) {
        let args = Args::new().quantity("seconds", texts.seconds(more_s.ceil()), more_s);
        buttons.push(primary(core.say_with("result-go-on", &args), Action::GoOn));
    }
    buttons.push(next_button(core, retest, buttons.is_empty()));
    if result.outcome == Outcome::NotDone {
        buttons.push(plain(core.say("result-do-it"), Action::RedoTest));
    } else {
        buttons.push(plain(core.say("result-redo"), Action::RedoTest));
        buttons.push(quiet(core.say("result-correct"), Action::CorrectReading));
    }
    let stage = TestStage::Result {
        mark: words.mark,
        sentence: words.sentence,
        meaning: words.meaning,
        details: words.details,
        chart,
        buttons,
        extras: photo_buttons(
            core,
            PhotoSubject::Test {
                test: at.test.clone(),
            },
        ),
    };
    let picture = compose::place_map(texts, job, MapOf::Test(&spec.id));
    let place = core.test_words(&at.test, "where");
    Body::Test {
        test: TestScreen {
            picture,
            own: None,
            place,
            stage,
        },
    }
}

/// On: to where we stand, or to the report.
fn next_button(core: &Companion, retest: bool, first: bool) -> Button {
    let make = if first { primary } else { plain };
    if retest {
        make(core.say("result-to-report"), Action::Go { to: Place::Report })
    } else {
        make(core.say("result-on"), Action::Go { to: Place::Overview })
    }
}

/// A test that this circuit no longer has.
pub(super) fn unknown(core: &Companion) -> (Frame, Body) {
    (Frame::titled(core.say("test-unknown")), core.nothing())
}
