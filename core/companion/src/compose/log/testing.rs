//! The tests in the log: cautions ticked, readings, traces, what was interrupted or not done.

use holdfast_diagnose::{Circuit, TestId};
use holdfast_joblog::{Acknowledged, HoldPoint, Interrupted, JobState, Reading, Skipped, TraceChunk};
use holdfast_measure::PressureUnit;

use crate::compose::reading::{reading_words, reason_words};
use crate::job::OWN_WORDS;
use crate::situation;
use crate::text::{Args, Texts, kebab};

pub(super) fn acknowledged(texts: &Texts, ticked: &Acknowledged) -> String {
    texts.say_with(
        "log-acknowledged",
        &Args::new().text("caution", caution_words(texts, &ticked.caution)),
    )
}

pub(super) fn reading(texts: &Texts, circuit: &Circuit, record: &Reading) -> String {
    let Some(reading) = situation::reading(record) else {
        return texts.say_with(
            "log-reading-unknown",
            &Args::new().text("test", test_words(texts, &record.test)),
        );
    };
    let key = match (record.after_repair, record.confirmed) {
        (true, _) => "log-reading-after",
        (false, true) => "log-reading-kept",
        (false, false) => "log-reading",
    };
    texts.say_with(
        key,
        &Args::new()
            .text("test", texts.test_name(&reading.test))
            .text("reading", reading_words(texts, circuit, &reading)),
    )
}

pub(super) fn trace(texts: &Texts, log: &JobState, chunk: &TraceChunk) -> String {
    texts.say_with(
        "log-trace",
        &Args::new()
            .text("test", test_words(texts, &chunk.test))
            .count("count", seen_in_trace(log, &chunk.hold)),
    )
}

/// How many readings a hold's trace has.
fn seen_in_trace(log: &JobState, hold: &str) -> usize {
    let chunks = log.traces.get(hold).into_iter().flatten();
    chunks.map(|chunk| chunk.vacuum.iter().flatten().count()).sum()
}

pub(super) fn interrupted(texts: &Texts, interrupted: &Interrupted) -> String {
    let unit = PressureUnit::from_symbol(&interrupted.unit).unwrap_or_else(|| texts.unit());
    let vacuum = |figure: f64| texts.vacuum_in(unit.to_pressure(figure), unit);
    let mut had: Vec<String> = interrupted.start.map(vacuum).into_iter().collect();
    had.extend(
        interrupted
            .points
            .iter()
            .map(|HoldPoint { at_s, vacuum: figure }| {
                texts.say_with(
                    "reading-hold-later",
                    &Args::new()
                        .text("vacuum", vacuum(*figure))
                        .text("seconds", texts.seconds(*at_s)),
                )
            }),
    );
    let by = texts
        .find(
            &format!("log-interrupted-{}", kebab(&interrupted.by)),
            &Args::new(),
        )
        .unwrap_or_else(|| interrupted.by.clone());
    let had = if had.is_empty() {
        texts.say("reading-nothing")
    } else {
        had.join(", ")
    };
    texts.say_with(
        "log-interrupted",
        &Args::new()
            .text("test", test_words(texts, &interrupted.test))
            .text("by", by)
            .text("had", had),
    )
}

pub(super) fn skipped(texts: &Texts, skipped: &Skipped) -> String {
    let note = skipped.note.trim();
    let (key, reason) = match skipped.reason.as_str() {
        OWN_WORDS => ("log-skipped", note.to_owned()),
        reason if note.is_empty() => ("log-skipped", reason_words(texts, reason)),
        reason => ("log-skipped-note", reason_words(texts, reason)),
    };
    let args = Args::new()
        .text("test", test_words(texts, &skipped.test))
        .text("reason", reason)
        .text("note", note);
    texts.say_with(key, &args)
}

/// A test's name by its id; an id that is none is shown as it is.
#[must_use]
pub(in crate::compose) fn test_words(texts: &Texts, id: &str) -> String {
    id.parse::<TestId>()
        .map_or_else(|_| id.to_owned(), |test| texts.test_name(&test))
}

/// A caution by its id, of a test or of the whole job.
pub(super) fn caution_words(texts: &Texts, id: &str) -> String {
    texts
        .caution(id)
        .or_else(|| texts.find(&format!("prepare-caution-{id}"), &Args::new()))
        .unwrap_or_else(|| id.to_owned())
}
