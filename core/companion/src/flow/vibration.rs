//! Vibration recorded by the phone, one value of a test at a time.
//!
//! | event | leads to |
//! |---|---|
//! | `Record` | the phone is asked to record |
//! | `VibrationRecorded` | kept as that value |
//! | `VibrationNotRecorded`, a recording that can't be | nothing kept, and it is said |

use holdfast_diagnose::FieldSpec;
use holdfast_report::State;

use crate::companion::Companion;
use crate::compose;
use crate::flow::parts::{plain, tap};
use crate::protocol::{Action, FormItem, PhonePart, Request};
use crate::session::{At, NoticeAt, Recorded, Stage, TestAt, ValuesAt};
use crate::text::Args;
use crate::turn::Turn;

/// How long is recorded, ms: eight seconds are 50 turns of a slow idle. Common practice, no source.
const FOR_MS: u32 = 8_000;
/// The fastest sampling that is believed, 1/s.
const MOST_HZ: f64 = 10_000.0;
/// The most samples that are kept: a minute at the fastest rate of common phones.
const MOST_SAMPLES: usize = 60 * 1_000;

/// Asks for a recording.
pub(super) fn record(core: &Companion, values: &mut ValuesAt, key: String, turn: &mut Turn<'_>) {
    if core.has(PhonePart::Accelerometer) {
        values.recording = Some(key);
        turn.ask(Request::RecordVibration { for_ms: FOR_MS });
    }
}

/// The phone has recorded, or not. One that nobody waits for any more is dropped.
pub(super) fn recorded(core: &mut Companion, action: Action) {
    let At::Test(at) = core.session.at.clone() else {
        return;
    };
    let Stage::Values(mut values) = at.stage.clone() else {
        return;
    };
    let Some(key) = values.recording.take() else {
        return;
    };
    match action {
        Action::VibrationRecorded { hz, mg } if can_be(hz, &mg) => {
            values.recorded.retain(|(k, _)| *k != key);
            values.recorded.push((key, Recorded { hz, mg }));
        }
        _ => {
            core.session.notice = Some(NoticeAt::Words {
                key: "vibration-not-recorded".to_owned(),
            });
        }
    }
    core.session.at = At::Test(TestAt {
        stage: Stage::Values(values),
        ..at
    });
}

fn can_be(hz: f64, mg: &[f64]) -> bool {
    hz > 0.0
        && hz <= MOST_HZ
        && !mg.is_empty()
        && mg.len() <= MOST_SAMPLES
        && mg.iter().all(|a| a.is_finite())
}

/// What was recorded for a key.
pub(super) fn of<'a>(values: &'a ValuesAt, key: &str) -> Option<&'a Recorded> {
    values
        .recorded
        .iter()
        .find(|(k, _)| k == key)
        .map(|(_, kept)| kept)
}

/// The button that records a value, and what was recorded. Nothing where the phone can't.
pub(super) fn items(core: &Companion, field: &FieldSpec, label: &str, values: &ValuesAt) -> Vec<FormItem> {
    let key = field.key.as_str();
    let mut items = Vec::new();
    if core.has(PhonePart::Accelerometer) {
        let said = if values.recording.as_deref() == Some(key) {
            "vibration-recording"
        } else {
            "vibration-record"
        };
        let args = Args::new()
            .text("what", label)
            .text("seconds", core.texts.seconds(f64::from(FOR_MS) / 1_000.0));
        let action = Action::Record { key: key.to_owned() };
        items.push(tap(plain(core.say_with(said, &args), action)));
    }
    if let Some(kept) = of(values, key) {
        let seconds = core.texts.seconds(kept.mg.len() as f64 / kept.hz);
        let text = core.say_with(
            "vibration-kept",
            &Args::new().text("what", label).text("seconds", seconds),
        );
        items.push(FormItem::State {
            mark: compose::mark(State::Holds, core.say("vibration-kept-word")),
            text,
        });
    }
    items
}
