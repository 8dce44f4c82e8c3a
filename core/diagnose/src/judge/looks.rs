//! What eyes, ears and hands say.

use std::collections::BTreeMap;

use crate::codes;
use crate::{Arg, Complaint, ComponentId, LookState, Message, MessageId, Value};

use super::battery::Band;
use super::{Case, TestResult};

/// Normal warm idle, 1/min (from memory).
pub(super) const IDLE_RPM: Band = Band {
    low: 600.0,
    high: 850.0,
};
/// Beyond the band by this it is not as expected, 1/min: loads and cold running raise idle.
const IDLE_SLACK: f64 = 150.0;
/// A mount sits at most this much lower than its pair, mm (from memory: a sagged one 3–8 mm).
pub(super) const SAG_MM: f64 = 2.0;
/// From this it has sagged, mm.
const SAGGED_MM: f64 = 3.0;
/// Reproducing the complaint.
pub(super) fn complaint(case: &Case<'_>) -> TestResult {
    let complained = case.situation.complaint.iter().any(|c| *c != Complaint::None);
    match (case.yes("present"), complained) {
        (None, _) => TestResult::does_not_fit(),
        (Some(true), _) => TestResult::good(Message::new("complaint-reproduced")),
        (Some(false), true) => TestResult::bad(Message::new("complaint-not-reproduced")),
        (Some(false), false) => TestResult::good(Message::new("complaint-none-felt")),
    }
}

/// Stored codes. A code names a circuit, never a part; no code clears nothing.
pub(super) fn codes(case: &Case<'_>) -> TestResult {
    let Some(Value::Words(list)) = case.reading.value("list") else {
        return TestResult::does_not_fit();
    };
    if list.is_empty() {
        return TestResult::good(Message::new("codes-none"));
    }
    let count = Arg::Count(list.len() as i64);
    let words = Arg::Words(list.join(", "));
    let of_mounts = list.iter().any(|code| codes::is_of_a_mount(code));
    let id = if of_mounts {
        "codes-mount-circuit"
    } else {
        "codes-others"
    };
    TestResult::bad(Message::new(id).with("codes", words).with("count", count))
}

/// The engine itself.
pub(super) fn idle_quality(case: &Case<'_>) -> TestResult {
    let rpm = case.number("rpm");
    let say = |id: &'static str| match rpm {
        Some(rpm) => Message::new(id).with("rpm", Arg::Rpm(rpm)),
        None => Message::new(id),
    };
    if case.yes("rough") == Some(true) {
        return TestResult::bad(say("idle-rough"));
    }
    if case.yes("steady") == Some(false) {
        return TestResult::bad(say("idle-hunting"));
    }
    let Some(rpm) = rpm else {
        return TestResult::does_not_fit();
    };
    match IDLE_RPM.miss(rpm) {
        miss if miss <= 0.0 => TestResult::good(say("idle-good")),
        miss if miss <= IDLE_SLACK => TestResult::open(say(if rpm < IDLE_RPM.low {
            "idle-lowish"
        } else {
            "idle-highish"
        })),
        _ => TestResult::bad(say(if rpm < IDLE_RPM.low {
            "idle-low"
        } else {
            "idle-high"
        })),
    }
}

/// The look-over.
pub(super) fn look(seen: &BTreeMap<ComponentId, LookState>) -> TestResult {
    let found: Vec<_> = seen
        .iter()
        .filter(|(_, state)| **state != LookState::Ok)
        .collect();
    if found.is_empty() {
        return TestResult::good(Message::new("look-clear"));
    }
    let mut result =
        TestResult::bad(Message::new("look-found").with("count", Arg::Count(found.len() as i64)));
    for (part, state) in found {
        let id = format!("look-found-{}", state.as_str().replace('_', "-"));
        result = result.and(Message::new(MessageId::new(id)).with("part", Arg::Part(part.clone())));
    }
    result
}

/// One mount by eye.
pub(super) fn mount_look(case: &Case<'_>) -> TestResult {
    let part = case.reading.test.part.clone().unwrap_or_else(|| "mount".into());
    let sag = case.number("sag_mm");
    let say = |id: &'static str| Message::new(id).with("part", Arg::Part(part.clone()));
    let mut found = Vec::new();
    if case.yes("torn") == Some(true) {
        found.push(say("mount-torn"));
    }
    if case.yes("wet") == Some(true) {
        found.push(say("mount-wet"));
    }
    if let Some(sag) = sag.filter(|mm| *mm >= SAGGED_MM) {
        found.push(say("mount-sagged").with("sag", Arg::Millimetres(sag)));
    }
    let mut found = found.into_iter();
    if let Some(first) = found.next() {
        return found.fold(TestResult::bad(first), TestResult::and);
    }
    if let Some(sag) = sag.filter(|mm| *mm > SAG_MM) {
        return TestResult::open(say("mount-sags-a-little").with("sag", Arg::Millimetres(sag)));
    }
    match case.yes("torn") {
        Some(_) => TestResult::good(say("mount-looks-good")),
        None => TestResult::does_not_fit(),
    }
}

/// One mount under a lever.
pub(super) fn mount_move(case: &Case<'_>) -> TestResult {
    let part = case.reading.test.part.clone().unwrap_or_else(|| "mount".into());
    let say = |id: &'static str| Message::new(id).with("part", Arg::Part(part.clone()));
    match (case.yes("clunk"), case.yes("gap_opens")) {
        (_, Some(true)) => TestResult::bad(say("mount-gap-opens")),
        (Some(true), _) => TestResult::bad(say("mount-clunks")),
        (Some(false), _) => TestResult::good(say("mount-moves-well")),
        (None, _) => TestResult::does_not_fit(),
    }
}

/// A part moved, warmed or loaded while gauge or meter is watched.
pub(super) fn wiggle(case: &Case<'_>) -> TestResult {
    let part = case.reading.test.part.clone().unwrap_or_else(|| "part".into());
    let say = |id: &'static str| Message::new(id).with("part", Arg::Part(part.clone()));
    match case.yes("steady") {
        Some(true) => TestResult::good(say("wiggle-steady")),
        Some(false) => TestResult::bad(say("wiggle-jumps")),
        None => TestResult::does_not_fit(),
    }
}
