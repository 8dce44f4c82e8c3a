//! From an answer to a logged reading: odd ones are asked about, once.
//!
//! | event | leads to |
//! |---|---|
//! | an answer handed in | logged, and its result; or a question, if it can hardly be right and none was asked yet |
//! | `KeepReading` | logged as confirmed, and its result |
//! | `ChangeReading` | the measurement with what was entered |

use holdfast_diagnose::{Answer, CarState, Message, Next, Reading, TestId, question};
use holdfast_joblog::{
    CarState as CarStateRecord, Correction, EntryKey, Payload, Reading as ReadingRecord, Typed,
};

use crate::companion::Companion;
use crate::compose;
use crate::error::ActError;
use crate::flow::hold::Running;
use crate::flow::parts::{plain, primary};
use crate::flow::{amend, places};
use crate::protocol::{Action, Body, Buzz, TestScreen, TestStage};
use crate::session::{At, Purpose, Questioned, Stage, Taken, TestAt};
use crate::situation;
use crate::turn::Turn;

/// What is handed in beside the answer.
#[derive(Default)]
pub(super) struct Handed {
    /// What was typed, by key, with its unit.
    pub typed: Vec<Typed>,
    /// The hold it comes from.
    pub hold: Option<Running>,
}

/// Hands an answer in.
pub(super) fn hand_in(
    core: &mut Companion,
    at: TestAt,
    answer: Answer,
    handed: Handed,
    turn: &mut Turn<'_>,
) -> Result<(), ActError> {
    let (Some(job), Ok(test)) = (&core.job, at.test.parse()) else {
        return Ok(());
    };
    let reading = Reading {
        test,
        answer,
        state: at.car.unwrap_or_default(),
        confirmed: false,
        after_repair: at.purpose == Purpose::Retest,
    };
    let earlier: Vec<Reading> = job.done.iter().map(|(reading, _)| reading.clone()).collect();
    let record = record(&reading, handed.typed, handed.hold.as_ref())?;
    match (
        question(&job.circuit, &job.situation, &earlier, &reading),
        at.questioned,
    ) {
        (None, Questioned::No) => log(core, at, record, handed.hold, turn),
        (_, Questioned::Yes) => {
            let record = ReadingRecord {
                confirmed: true,
                ..record
            };
            log(core, at, record, handed.hold, turn)
        }
        (Some(_), Questioned::No) => {
            let reading = serde_json::to_value(&record)?;
            let stage = Stage::Question {
                back: Box::new(at.stage.clone()),
                reading,
                going: handed.hold,
                taken: Some(Taken {
                    at_ms: turn.clock.wall_ms,
                    offset_min: turn.clock.offset_min,
                }),
            };
            core.session.at = At::Test(TestAt {
                stage,
                questioned: Questioned::Yes,
                ..at
            });
            Ok(())
        }
    }
}

/// The reading as it is logged.
fn record(reading: &Reading, typed: Vec<Typed>, hold: Option<&Running>) -> Result<ReadingRecord, ActError> {
    Ok(ReadingRecord {
        test: reading.test.to_string(),
        answer: serde_json::to_value(&reading.answer)?,
        typed,
        state: CarStateRecord {
            connected: reading.state.connected,
            engine: reading
                .state
                .engine
                .map(|engine| situation::engine_id(engine).to_owned()),
            hot: reading.state.hot,
        },
        confirmed: reading.confirmed,
        after_repair: reading.after_repair,
        begun_at_ms: None,
        watched_s: hold.and_then(|hold| hold.readings.last()).map(|(at_s, _)| *at_s),
        asked_because: None,
    })
}

/// Logs a reading and shows its result. One that puts another right takes that one's place.
fn log(
    core: &mut Companion,
    at: TestAt,
    mut record: ReadingRecord,
    hold: Option<Running>,
    turn: &mut Turn<'_>,
) -> Result<(), ActError> {
    let mut because = core.because(&at.test);
    let target = match &at.purpose {
        Purpose::Correct { entry } => entry.parse::<EntryKey>().ok(),
        Purpose::Find | Purpose::Retest => None,
    };
    let payload = match target {
        Some(target) => {
            if let Some(kept) = core.job.as_ref().and_then(|job| job.because(target)) {
                because = kept.clone();
            }
            let after_repair = core.job.as_ref().is_some_and(|job| job.is_after_repair(target));
            record.after_repair = after_repair;
            because.asked_again |= at.questioned == Questioned::Yes;
            record.asked_because = Some(serde_json::to_value(because)?);
            Payload::Correction(Correction::of(target, &Payload::Reading(record))?)
        }
        None => {
            because.asked_again = at.questioned == Questioned::Yes;
            record.asked_because = Some(serde_json::to_value(because)?);
            Payload::Reading(record)
        }
    };
    core.append(payload, turn);
    core.session.take_parked(&at.test);
    // The end of a hold has a way to feel of its own.
    if !matches!(at.stage, Stage::Hold(_)) {
        turn.buzz_if(core.session.settings.buzz, Buzz::Done);
    }
    let purpose = match at.purpose {
        Purpose::Correct { .. } => Purpose::Find,
        other => other,
    };
    core.session.at = At::Test(TestAt::at(at.test, purpose, Stage::Result { going: hold }));
    Ok(())
}

/// The question about a logged reading that is to be looked at again; none where it isn't.
pub(super) fn to_look_again(core: &Companion, test: &TestId) -> Option<TestAt> {
    doubted(core, test)?;
    let job = core.job.as_ref()?;
    let (reading, behind) = job.last_answered(test)?;
    let spec = core.spec(&test.to_string())?;
    let entry = behind.entry.to_string();
    let stage = Stage::Question {
        back: Box::new(amend::stage(core, &spec, reading, &entry)),
        reading: serde_json::to_value(job.logged(&entry)?).ok()?,
        going: None,
        taken: Some(Taken {
            at_ms: behind.at_ms,
            offset_min: behind.offset_min,
        }),
    };
    Some(TestAt {
        questioned: Questioned::Yes,
        car: (reading.state != CarState::default()).then_some(reading.state),
        ..TestAt::at(test.to_string(), Purpose::Correct { entry }, stage)
    })
}

/// Why the reading of a test is to be looked at again; none where it isn't.
fn doubted<'c>(core: &'c Companion, test: &TestId) -> Option<&'c Message> {
    match &core.job.as_ref()?.next {
        Next::LookAgain { id, why, .. } if id == test => Some(why),
        _ => None,
    }
}

/// Keep or change.
pub(super) fn answer(
    core: &mut Companion,
    at: TestAt,
    action: Action,
    turn: &mut Turn<'_>,
) -> Result<(), ActError> {
    let Stage::Question {
        back, reading, going, ..
    } = at.stage.clone()
    else {
        return Ok(());
    };
    match action {
        Action::KeepReading => {
            let mut record: ReadingRecord = serde_json::from_value(reading)?;
            record.confirmed = true;
            log(core, at, record, going, turn)
        }
        Action::ChangeReading => {
            core.session.at = At::Test(TestAt { stage: *back, ..at });
            Ok(())
        }
        Action::RedoTest => {
            let stage = places::brief();
            core.session.at = At::Test(TestAt { stage, ..at });
            Ok(())
        }
        _ => Ok(()),
    }
}

pub(super) fn body(core: &Companion, at: &TestAt, reading: &serde_json::Value, taken: Option<Taken>) -> Body {
    let record: Option<ReadingRecord> = serde_json::from_value(reading.clone()).ok();
    let (Some(job), Some(record)) = (&core.job, record) else {
        return core.nothing();
    };
    let slip = situation::reading(&record).and_then(|reading| {
        let earlier: Vec<Reading> = job.done.iter().map(|(reading, _)| reading.clone()).collect();
        question(&job.circuit, &job.situation, &earlier, &reading)
    });
    let doubt = || doubted(core, &at.test.parse().ok()?).map(|why| core.texts.message(why));
    let text = slip
        .map(|slip| core.texts.message(&slip.message))
        .or_else(doubt)
        .unwrap_or_default();
    let mut buttons = vec![
        primary(core.say("question-change"), Action::ChangeReading),
        plain(core.say("question-keep"), Action::KeepReading),
    ];
    if matches!(at.purpose, Purpose::Correct { .. }) {
        buttons.push(plain(core.say("result-redo"), Action::RedoTest));
    }
    let place = core.test_words(&at.test, "place");
    let entered = compose::entered(&core.texts, job, &record, taken);
    let stage = TestStage::Question {
        text,
        entered,
        buttons,
    };
    Body::Test {
        test: TestScreen {
            picture: None,
            own: None,
            place,
            stage,
        },
    }
}
