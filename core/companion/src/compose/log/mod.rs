//! The job's log: every entry in words, what was corrected or taken back still there and marked.

mod case;
mod change;
mod money;
mod photo;
mod setting;
mod testing;

pub(super) use testing::test_words;

use holdfast_diagnose::{Circuit, ComponentId};
use holdfast_joblog::{Content, JobState, Payload, RecordLine, Standing, Subject};

use super::stated::{circuit_words, limit_words, place_words};
use super::time::date_and_time;
use crate::job::JobView;
use crate::protocol::LogRow;
use crate::text::{Args, Texts};

/// Every entry, newest first.
#[must_use]
pub(crate) fn log_rows(texts: &Texts, job: &JobView) -> Vec<LogRow> {
    job.log
        .record
        .iter()
        .rev()
        .filter(|line| is_told(&job.log, line))
        .map(|line| LogRow {
            when: date_and_time(texts, line.entry.at_ms, line.entry.offset_min),
            text: line_words(texts, &job.circuit, &job.log, line),
            state: standing_words(texts, &job.circuit, &job.log, line),
        })
        .collect()
}

/// Whether an entry has a line of its own: of a gauge trace only its first second has, and it speaks for all.
#[must_use]
pub(super) fn is_told(log: &JobState, line: &RecordLine) -> bool {
    let Content::Known(Payload::TraceChunk(chunk)) = &line.content else {
        return true;
    };
    let first = log.traces.get(&chunk.hold).and_then(|chunks| chunks.first());
    first.is_none_or(|first| first.from_s >= chunk.from_s)
}

/// What an entry says, in a line.
#[must_use]
pub(super) fn line_words(texts: &Texts, circuit: &Circuit, log: &JobState, line: &RecordLine) -> String {
    content_words(texts, circuit, log, &line.content)
}

/// The caution that an entry says was read and ticked.
#[must_use]
pub(super) fn ticked_caution(texts: &Texts, line: &RecordLine) -> Option<String> {
    match &line.content {
        Content::Known(Payload::Acknowledged(ticked)) => Some(testing::caution_words(texts, &ticked.caution)),
        _ => None,
    }
}

/// What became of an entry, or empty where it stands.
#[must_use]
pub(super) fn standing_words(texts: &Texts, circuit: &Circuit, log: &JobState, line: &RecordLine) -> String {
    match (&line.standing, &line.content) {
        (_, Content::Newer) => texts.say("log-newer-short"),
        (Standing::Stands, _) => String::new(),
        (Standing::UndoneBy { .. }, _) => texts.say("log-undone"),
        (Standing::CorrectedBy { instead, .. }, was) if change::is_kept(was, instead) => {
            texts.say("log-kept-later")
        }
        (Standing::CorrectedBy { instead, .. }, _) => texts.say_with(
            "log-corrected",
            &Args::new().text("instead", content_words(texts, circuit, log, instead)),
        ),
    }
}

fn content_words(texts: &Texts, circuit: &Circuit, log: &JobState, content: &Content) -> String {
    match content {
        Content::Known(payload) => payload_words(texts, circuit, log, payload),
        Content::Newer => texts.say("problem-entry-from-newer"),
        Content::Unreadable { .. } => texts.say("log-unreadable"),
    }
}

fn payload_words(texts: &Texts, circuit: &Circuit, log: &JobState, payload: &Payload) -> String {
    match payload {
        Payload::Opened(opened) => case::opened(texts, opened),
        Payload::VehicleKind(kind) => case::vehicle_kind(texts, kind),
        Payload::Vehicle(vehicle) => case::vehicle(texts, vehicle),
        Payload::Complaint(complaint) => case::complaint(texts, complaint),
        Payload::Note(note) => case::note(texts, note),
        Payload::Repair(repair) => case::repair(texts, repair),
        Payload::Closed(closed) => case::closed(texts, closed),
        Payload::ReportLanguage(chosen) => case::report_language(texts, chosen),
        Payload::ReportParts(parts) => case::report_parts(texts, parts),
        Payload::ReportMade(made) => case::report_made(texts, made),
        Payload::Circuit(stated) => circuit_words(texts, stated),
        Payload::Place(place) => place_words(texts, place),
        Payload::Limit(limit) => limit_words(texts, limit),
        Payload::Instruments(instruments) => setting::instruments(texts, instruments),
        Payload::Tools(tools) => setting::tools(texts, tools),
        Payload::Engine(engine) => setting::engine(texts, engine),
        Payload::SecondPerson(person) => setting::second_person(texts, person),
        Payload::Profile(profile) => setting::profile(texts, profile),
        Payload::Acknowledged(ticked) => testing::acknowledged(texts, ticked),
        Payload::Reading(reading) => testing::reading(texts, circuit, reading),
        Payload::TraceChunk(chunk) => testing::trace(texts, log, chunk),
        Payload::Interrupted(interrupted) => testing::interrupted(texts, interrupted),
        Payload::Skipped(skipped) => testing::skipped(texts, skipped),
        Payload::Correction(correction) => change::correction(texts, circuit, log, correction),
        Payload::Undo(undo) => change::undo(texts, circuit, log, undo),
        Payload::Binned(_) => texts.say("log-binned"),
        Payload::Photo(photo) => photo::taken(texts, photo),
        Payload::PhotoMarked(marked) => photo::marked(texts, marked),
        Payload::Costs(costs) => money::costs(texts, costs),
        Payload::Workshop(workshop) => money::workshop(texts, workshop),
        Payload::Approval(approval) => money::approval(texts, approval),
    }
}

/// Words with what they are about.
fn about(texts: &Texts, words: String, subject: &Subject) -> String {
    let about = match subject {
        Subject::Job => return words,
        Subject::Test(test) => test_words(texts, test),
        Subject::Component(part) => texts.part(&ComponentId::new(part.clone())),
    };
    texts.say_with(
        "log-about",
        &Args::new().text("words", words).text("about", about),
    )
}
