//! The job's log: every entry in words, what was corrected or taken back still there and marked.

use holdfast_diagnose::{Circuit, ComponentId, TestId};
use holdfast_joblog::{
    Closed, Content, CostStage, HoldPoint, Interrupted, JobState, Payload, Reading, RecordLine, Repair,
    Skipped, Standing, Subject,
};
use holdfast_measure::PressureUnit;

use super::approval::approval_words;
use super::reading::{reading_words, reason_words};
use super::stated::{circuit_words, fields, instrument_words, limit_words, place_words};
use super::time::date_and_time;
use crate::job::{JobView, OWN_WORDS};
use crate::protocol::LogRow;
use crate::situation;
use crate::text::{Args, Language, Texts, capital, kebab, sentence};

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

/// How many readings a hold's trace has.
fn seen_in_trace(log: &JobState, hold: &str) -> usize {
    let chunks = log.traces.get(hold).into_iter().flatten();
    chunks.map(|chunk| chunk.vacuum.iter().flatten().count()).sum()
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
        Content::Known(Payload::Acknowledged(ticked)) => Some(caution_words(texts, &ticked.caution)),
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
        (Standing::CorrectedBy { instead, .. }, _) => texts.say_with(
            "log-corrected",
            &Args::new().text("instead", content_words(texts, circuit, log, instead)),
        ),
    }
}

fn skipped_words(texts: &Texts, skipped: &Skipped) -> String {
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

fn content_words(texts: &Texts, circuit: &Circuit, log: &JobState, content: &Content) -> String {
    match content {
        Content::Known(payload) => payload_words(texts, circuit, log, payload),
        Content::Newer => texts.say("problem-entry-from-newer"),
        Content::Unreadable { .. } => texts.say("log-unreadable"),
    }
}

fn payload_words(texts: &Texts, circuit: &Circuit, log: &JobState, payload: &Payload) -> String {
    let about = |words: String, subject: &Subject| about_words(texts, words, subject);
    match payload {
        Payload::Opened(opened) => texts.say_with(
            "log-opened",
            &Args::new().text("software", opened.software.as_str()),
        ),
        Payload::VehicleKind(kind) => {
            texts.say_with("log-vehicle-kind", &Args::new().text("kind", kind.label.as_str()))
        }
        Payload::Vehicle(vehicle) => fields(
            texts,
            &[
                ("record-plate", vehicle.plate.as_deref()),
                ("record-label", vehicle.label.as_deref()),
                ("record-vin", vehicle.vin.as_deref()),
                (
                    "record-odometer",
                    vehicle
                        .odometer
                        .as_deref()
                        .map(|typed| texts.odometer(typed))
                        .as_deref(),
                ),
                (
                    "record-odometer-out",
                    vehicle
                        .odometer_out
                        .as_deref()
                        .map(|typed| texts.odometer(typed))
                        .as_deref(),
                ),
                ("record-handed-over", vehicle.handed_over.as_deref()),
                ("record-customer", vehicle.customer.as_deref()),
                ("record-agreed", vehicle.agreed.as_deref()),
            ],
        ),
        Payload::Complaint(complaint) => {
            let mut said: Vec<String> = complaint
                .phrases
                .iter()
                .map(|id| texts.say(&format!("complaint-{}", kebab(id))))
                .collect();
            if !complaint.note.trim().is_empty() {
                said.push(texts.say_with("quoted", &Args::new().text("words", complaint.note.trim())));
            }
            texts.say_with("log-complaint", &Args::new().text("complaint", said.join("; ")))
        }
        Payload::Circuit(stated) => circuit_words(texts, stated),
        Payload::Place(place) => place_words(texts, place),
        Payload::Instruments(instruments) => texts.say_with(
            "log-instruments",
            &Args::new().text("what", instrument_words(texts, instruments)),
        ),
        Payload::Tools(tools) if tools.have.is_empty() => texts.say("log-no-tools"),
        Payload::Tools(tools) => {
            let tools: Vec<String> = tools
                .have
                .iter()
                .map(|id| texts.say(&format!("tool-{id}")))
                .collect();
            texts.say_with("log-tools", &Args::new().text("tools", tools.join("; ")))
        }
        Payload::Engine(engine) => match (engine.can_run, engine.stopped_min) {
            (false, _) => texts.say("log-engine-cannot-run"),
            (true, None) => texts.say("log-engine-runs"),
            (true, Some(minutes)) => texts.say_with(
                "log-engine-stopped",
                &Args::new().text("minutes", texts.minutes(minutes)),
            ),
        },
        Payload::SecondPerson(person) => texts.say(if person.there {
            "log-second-person"
        } else {
            "log-alone"
        }),
        Payload::Profile(profile) => texts.say_with(
            "log-profile",
            &Args::new().text("profile", texts.say(&format!("profile-{}", profile.id))),
        ),
        Payload::Limit(limit) => limit_words(texts, limit),
        Payload::Acknowledged(ticked) => texts.say_with(
            "log-acknowledged",
            &Args::new().text("caution", caution_words(texts, &ticked.caution)),
        ),
        Payload::Reading(reading) => read_words(texts, circuit, reading),
        Payload::TraceChunk(chunk) => texts.say_with(
            "log-trace",
            &Args::new()
                .text("test", test_words(texts, &chunk.test))
                .count("count", seen_in_trace(log, &chunk.hold)),
        ),
        Payload::Interrupted(interrupted) => interrupted_words(texts, interrupted),
        Payload::Skipped(skipped) => skipped_words(texts, skipped),
        Payload::Correction(correction) => {
            let instead = correction.content();
            texts.say_with(
                "log-correction",
                &Args::new().text("instead", content_words(texts, circuit, log, &instead)),
            )
        }
        Payload::Undo(undo) => {
            let target = log.record.iter().find(|line| line.entry.key == undo.target);
            match target {
                Some(line) if !matches!(line.content, Content::Known(Payload::Undo(_))) => texts.say_with(
                    "log-undo",
                    &Args::new().text("what", content_words(texts, circuit, log, &line.content)),
                ),
                _ => texts.say("log-undo-undo"),
            }
        }
        Payload::Photo(photo) => {
            let words = if photo.caption.trim().is_empty() {
                texts.say("log-photo")
            } else {
                texts.say_with(
                    "log-photo-caption",
                    &Args::new().text("caption", photo.caption.trim()),
                )
            };
            about(words, &photo.about)
        }
        Payload::PhotoMarked(marked) => {
            let marks = Args::new().count("count", marked.marks.len());
            let words = texts.say_with("log-photo-marked", &marks);
            let caption = marked.caption.trim();
            if caption.is_empty() {
                words
            } else {
                let args = Args::new().text("label", words).text("value", caption);
                texts.say_with("reading-field", &args)
            }
        }
        Payload::Note(note) => about(
            texts.say_with("log-note", &Args::new().text("note", note.text.trim())),
            &note.about,
        ),
        Payload::Repair(repair) => repair_words(texts, repair),
        Payload::Costs(costs) => {
            let total = costs
                .totals()
                .map(|totals| texts.money(totals.total, &costs.currency));
            let key = match costs.stage {
                CostStage::Estimate { .. } => "log-costs-estimate",
                CostStage::Charged => "log-costs-charged",
            };
            texts.say_with(key, &Args::new().text("total", total.unwrap_or_default()))
        }
        Payload::ReportLanguage(chosen) => match Language::of_tag(&chosen.tag) {
            Some(language) => texts.say_with(
                "log-report-language",
                &Args::new().text("language", texts.name_of(language)),
            ),
            None => texts.say("log-report-language-screens"),
        },
        Payload::ReportParts(parts) if parts.left_out.is_empty() => texts.say("log-report-whole"),
        Payload::ReportParts(parts) => {
            let named: Vec<String> = parts
                .left_out
                .iter()
                .map(|part| texts.say(&format!("report-part-{}", part.as_str())))
                .collect();
            let parts = named.join(", ").to_lowercase();
            texts.say_with("log-report-parts", &Args::new().text("parts", parts))
        }
        Payload::Workshop(workshop) => {
            let business = workshop.business.lines().next().unwrap_or_default();
            let named = [workshop.technician.trim(), business.trim()]
                .into_iter()
                .filter(|name| !name.is_empty())
                .collect::<Vec<_>>()
                .join(", ");
            if named.is_empty() {
                texts.say("log-workshop-none")
            } else {
                texts.say_with("log-workshop", &Args::new().text("name", named))
            }
        }
        Payload::Approval(approval) => {
            let words = approval_words(texts, approval);
            if approval.signature.is_some() {
                texts.say_with("log-signed", &Args::new().text("words", words))
            } else {
                words
            }
        }
        Payload::Closed(closed) => closed_words(texts, closed),
        Payload::ReportMade(made) => texts.say_with(
            "log-report",
            &Args::new()
                .count("pages", made.pages as usize)
                .text("digest", made.sha256.chars().take(12).collect::<String>()),
        ),
        Payload::Binned(_) => texts.say("log-binned"),
    }
}

fn about_words(texts: &Texts, words: String, subject: &Subject) -> String {
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

/// A test's name by its id; an id that is none is shown as it is.
#[must_use]
pub(super) fn test_words(texts: &Texts, id: &str) -> String {
    id.parse::<TestId>()
        .map_or_else(|_| id.to_owned(), |test| texts.test_name(&test))
}

fn read_words(texts: &Texts, circuit: &Circuit, record: &Reading) -> String {
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

fn interrupted_words(texts: &Texts, interrupted: &Interrupted) -> String {
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

fn repair_words(texts: &Texts, repair: &Repair) -> String {
    let part = ComponentId::new(repair.component.clone());
    let key = if repair.done {
        "log-repair-done"
    } else {
        "log-repair-proposed"
    };
    let mut words = texts.say_with(key, &texts.of_part(&part));
    let torque = repair.torque.trim();
    let torque = if torque.is_empty() {
        String::new()
    } else {
        texts.say_with("log-repair-torque", &Args::new().text("torque", torque))
    };
    for more in [&repair.part, &torque, &repair.note] {
        if !more.trim().is_empty() {
            words.push(' ');
            words.push_str(&sentence(more));
        }
    }
    words
}

fn closed_words(texts: &Texts, closed: &Closed) -> String {
    let headline = if closed.headline.trim().is_empty() {
        let parts: Vec<String> = closed
            .parts
            .iter()
            .map(|id| texts.part(&ComponentId::new(id.clone())))
            .collect();
        if parts.is_empty() {
            texts.say("job-state-no-fault")
        } else {
            capital(&texts.list(&parts))
        }
    } else {
        closed.headline.clone()
    };
    texts.say_with(
        if closed.repaired {
            "log-closed-repaired"
        } else {
            "log-closed"
        },
        &Args::new()
            .text("finding", headline.trim_end_matches('.'))
            .text("percent", texts.percent(closed.p))
            .text("software", closed.software.as_str()),
    )
}

/// A caution by its id, of a test or of the whole job.
fn caution_words(texts: &Texts, id: &str) -> String {
    texts
        .caution(id)
        .or_else(|| texts.find(&format!("prepare-caution-{id}"), &Args::new()))
        .unwrap_or_else(|| id.to_owned())
}
