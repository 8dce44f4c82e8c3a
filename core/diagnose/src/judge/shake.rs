//! Vibration with vacuum on and off.

use crate::{Arg, Message, TestKind, VacuumMeans, Value};

use super::{Case, TestResult};

/// The level changes at least this many times where the mounts work (from memory: 1.5–4 times).
const WORKS: f64 = 1.5;
/// Below this they don't, or the phone lies where nothing moves (from memory).
const NO_EFFECT: f64 = 1.2;
/// The top of the scale for what is felt.
const STRONGEST: f64 = 3.0;
/// Shortest recording that says something, s: four turns of a slow idle's half order. Common practice, no source.
const SHORTEST_S: f64 = 2.0;

/// Idle vibration, vacuum on and off.
pub(super) fn shake(case: &Case<'_>) -> TestResult {
    let level = |scale: &str, samples: &str| match (case.number(scale), case.reading.value(samples)) {
        (_, Some(Value::Samples { hz, mg })) => Some(Level::Recorded(rms(*hz, mg)?)),
        (Some(felt), _) => Some(Level::Felt(felt)),
        _ => None,
    };
    let too_short = ["on", "off"].iter().any(
        |key| matches!(case.reading.value(key), Some(Value::Samples { hz, mg }) if rms(*hz, mg).is_none()),
    );
    if too_short {
        return TestResult::open(Message::new("shake-too-short").with("seconds", Arg::Seconds(SHORTEST_S)));
    }
    let (on, off) = (level("on_0_3", "on"), level("off_0_3", "off"));
    let result = match (on, off) {
        (Some(Level::Recorded(on)), Some(Level::Recorded(off))) => recorded(case, on, off),
        (Some(Level::Felt(on)), Some(Level::Felt(off))) => felt(case, on, off),
        (None, _) => return TestResult::does_not_fit(),
        _ => return TestResult::open(Message::new("shake-one-side")),
    };
    let rough = case
        .last(TestKind::IdleQuality)
        .is_some_and(|r| r.yes("rough") == Some(true));
    if rough {
        result.and(Message::new("shake-engine-rough"))
    } else {
        result
    }
}

enum Level {
    Recorded(f64),
    Felt(f64),
}

/// Level of a recording, its mean (gravity) taken off. `None`: too short or not finite.
fn rms(hz: f64, mg: &[f64]) -> Option<f64> {
    if mg.is_empty() || !hz.is_finite() || (mg.len() as f64) < SHORTEST_S * hz {
        return None;
    }
    let count = mg.len() as f64;
    let mean = mg.iter().sum::<f64>() / count;
    let level = (mg.iter().map(|x| (x - mean).powi(2)).sum::<f64>() / count).sqrt();
    level.is_finite().then_some(level)
}

fn recorded(case: &Case<'_>, on: f64, off: f64) -> TestResult {
    let (low, high) = (on.min(off), on.max(off));
    if high <= 0.0 {
        return TestResult::open(Message::new("shake-nothing-recorded"));
    }
    let times = if low > 0.0 { high / low } else { f64::from(u8::MAX) };
    let say = |id: &'static str| Message::new(id).with("times", Arg::Times(times));
    if times < NO_EFFECT {
        TestResult::bad(say("shake-no-effect")).and(Message::new("shake-move-the-phone"))
    } else if times < WORKS {
        TestResult::open(say("shake-small-effect"))
    } else {
        direction(case, on < off, say)
    }
}

fn felt(case: &Case<'_>, on: f64, off: f64) -> TestResult {
    let say = |id: &'static str| {
        Message::new(id)
            .with("on", Arg::Count(on.round() as i64))
            .with("off", Arg::Count(off.round() as i64))
    };
    if (on - off).abs() < 0.5 {
        return if on < 0.5 {
            TestResult::open(say("shake-none-either-way"))
        } else if on > STRONGEST - 0.5 {
            TestResult::open(say("shake-strong-either-way"))
        } else {
            TestResult::bad(say("shake-felt-no-effect"))
        };
    }
    direction(case, on < off, |id| {
        say(match id {
            "shake-works" => "shake-felt-works",
            "shake-wrong-way" => "shake-felt-wrong-way",
            other => other,
        })
    })
}

/// A change there is; whether it goes the way this kind of mount should.
fn direction(case: &Case<'_>, softer_with_vacuum: bool, say: impl Fn(&'static str) -> Message) -> TestResult {
    let right = match case.circuit.properties.vacuum_means {
        VacuumMeans::Soft => softer_with_vacuum,
        VacuumMeans::Stiff => !softer_with_vacuum,
        VacuumMeans::Unknown => true,
    };
    if right {
        TestResult::good(say("shake-works"))
    } else {
        TestResult::bad(say("shake-wrong-way"))
    }
}
