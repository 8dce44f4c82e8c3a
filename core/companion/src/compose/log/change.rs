//! Entries about entries: what was put right or taken back.

use holdfast_diagnose::Circuit;
use holdfast_joblog::{Content, Correction, JobState, Payload, Reading, Undo};

use super::{content_words, testing};
use crate::text::{Args, Texts};

/// A reading that was only questioned and kept was not put right.
pub(super) fn correction(
    texts: &Texts,
    circuit: &Circuit,
    log: &JobState,
    correction: &Correction,
) -> String {
    let instead = correction.content();
    let target = log.record.iter().find(|line| line.entry.key == correction.target);
    match (&instead, target) {
        (Content::Known(Payload::Reading(kept)), Some(line)) if is_kept(&line.content, &instead) => {
            let asked = Reading {
                confirmed: false,
                ..kept.clone()
            };
            let reading = testing::reading(texts, circuit, &asked);
            texts.say_with("log-kept", &Args::new().text("reading", reading))
        }
        _ => {
            let words = content_words(texts, circuit, log, &instead);
            texts.say_with("log-correction", &Args::new().text("instead", words))
        }
    }
}

/// Whether what holds instead is the same reading, confirmed.
pub(super) fn is_kept(was: &Content, instead: &Content) -> bool {
    match (was, instead) {
        (Content::Known(Payload::Reading(was)), Content::Known(Payload::Reading(instead))) => {
            instead.confirmed && !was.confirmed && was.test == instead.test && was.answer == instead.answer
        }
        _ => false,
    }
}

pub(super) fn undo(texts: &Texts, circuit: &Circuit, log: &JobState, undo: &Undo) -> String {
    let target = log.record.iter().find(|line| line.entry.key == undo.target);
    match target {
        Some(line) if !matches!(line.content, Content::Known(Payload::Undo(_))) => texts.say_with(
            "log-undo",
            &Args::new().text("what", content_words(texts, circuit, log, &line.content)),
        ),
        _ => texts.say("log-undo-undo"),
    }
}
