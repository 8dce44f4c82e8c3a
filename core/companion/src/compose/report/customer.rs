//! The customer's page: at most 150 words of prose, the finding in one sentence first.

use holdfast_diagnose::{Component, ComponentKind, Next, Outcome, Reading, TestId, TestResult};
use holdfast_report::{Block, Figure, Signal};

use super::evidence::map_caption;
use crate::compose::finding::{certainty_now, explains, headline_now, left_open, remedy};
use crate::compose::hold::{before_and_after, fall};
use crate::compose::map::{MapOf, circuit_map};
use crate::compose::overview::complaint_phrase;
use crate::compose::reading::{reading_words, reason_words};
use crate::compose::reasons::seen;
use crate::compose::repaired::{complaint_gone, is_good, retested};
use crate::job::JobView;
use crate::text::{Args, Texts, capital, sentence};

/// Words of prose on the page (look.md); the finding's own sentences count.
pub(super) const MOST_WORDS: usize = 150;

/// Lines under "how it is known".
const MOST_REASONS: usize = 3;

/// Tests named as not done.
const MOST_NOT_DONE: usize = 3;

/// Words of the complaint that are quoted.
const MOST_QUOTED: usize = 30;

/// The page below the finding. Cautions come before remarks, remarks are left out when the words run short.
pub(super) fn page(texts: &Texts, job: &JobView) -> Vec<Block> {
    let mut page = Page::new(texts, job);
    page.section("report-complaint", vec![complaint(texts, job)]);
    page.section("report-known", known(texts, job));
    page.section("report-done", vec![repair(texts, job)]);
    page.care(texts, job);
    page.section("report-next", vec![next(texts, job)]);
    page.section("report-not-tested", not_tested(texts, job));
    page.section("report-left-open", left_open(texts, &job.finding));
    page.section("report-seen", also_seen(texts, job));
    page.blocks.extend(figures(texts, job));
    page.blocks
}

/// The page as it fills, with the words that are left.
struct Page<'a> {
    texts: &'a Texts,
    blocks: Vec<Block>,
    left: usize,
}

impl<'a> Page<'a> {
    fn new(texts: &'a Texts, job: &JobView) -> Self {
        let said = words(&headline_now(texts, job)) + words(&certainty_now(texts, job));
        Self {
            texts,
            blocks: Vec::new(),
            left: MOST_WORDS.saturating_sub(said),
        }
    }

    /// A heading with as many of the lines as there are words left; nothing where not one line fits.
    fn section(&mut self, heading: &str, lines: Vec<String>) {
        let heading = self.texts.say(heading);
        let mut left = self.left.saturating_sub(words(&heading));
        let mut fitting = Vec::new();
        for line in lines.into_iter().filter(|line| !line.is_empty()) {
            let Some(rest) = left.checked_sub(words(&line)) else {
                break;
            };
            left = rest;
            fitting.push(line);
        }
        if fitting.is_empty() {
            return;
        }
        self.left = left;
        self.blocks.push(Block::Heading(heading));
        if fitting.len() == 1 {
            self.blocks.extend(fitting.into_iter().map(Block::Text));
        } else {
            self.blocks.push(Block::List(fitting));
        }
    }

    /// What has to be minded until it is repaired: never left out.
    fn care(&mut self, texts: &Texts, job: &JobView) {
        for (signal, word, key) in cares(job) {
            let text = texts.say(key);
            self.left = self.left.saturating_sub(words(&text));
            self.blocks.push(Block::Caution {
                signal,
                word: texts.say(word),
                text,
            });
        }
    }
}

/// The cautions of the page: where brakes share the vacuum, and what the finding asks for until it is repaired.
fn cares(job: &JobView) -> Vec<(Signal, &'static str, &'static str)> {
    let mut cares = Vec::new();
    let brakes =
        |part: &Component| part.kind == ComponentKind::Consumer && part.id.as_str().contains("booster");
    if job.circuit.components.iter().any(brakes) {
        cares.push((Signal::Warning, "signal-warning", "report-care-brakes"));
    }
    if !job.finding.decided || job.repaired().is_some() {
        return cares;
    }
    for fault in job.finding.causes.first().iter().flat_map(|cause| &cause.faults) {
        let kind = job.circuit.component(&fault.component).map(|part| part.kind);
        match (kind, fault.mode.as_str()) {
            (Some(ComponentKind::Mount), "fluid_lost") => {
                cares.push((Signal::Caution, "signal-caution", "caution-mount-fluid"));
            }
            (Some(ComponentKind::Mount), "torn" | "sagged" | "loose") => {
                cares.push((Signal::Notice, "signal-notice", "report-care-mount"));
            }
            (Some(ComponentKind::Fuse), _) => {
                cares.push((Signal::Caution, "signal-caution", "caution-fuse-same-rating"));
            }
            _ => {}
        }
    }
    cares
}

/// Words of a text: what stands between spaces and has a letter or digit in it; a number with its unit is one.
pub(in crate::compose) fn words(text: &str) -> usize {
    text.split(|c: char| c.is_whitespace() && c != '\u{a0}')
        .filter(|word| word.chars().any(char::is_alphanumeric))
        .count()
}

/// The complaint in the customer's words where there are any, else as it was tapped.
fn complaint(texts: &Texts, job: &JobView) -> String {
    let note = job.log.complaint.note.trim();
    if note.is_empty() {
        return sentence(&complaint_phrase(texts, job));
    }
    let mut cut: Vec<&str> = note.split_whitespace().take(MOST_QUOTED + 1).collect();
    let words = if cut.len() > MOST_QUOTED {
        cut.truncate(MOST_QUOTED);
        format!("{} …", cut.join(" "))
    } else {
        cut.join(" ")
    };
    texts.say_with("quoted", &Args::new().text("words", words))
}

/// How it is known: what speaks for it, and whether it explains the complaint.
fn known(texts: &Texts, job: &JobView) -> Vec<String> {
    let mut lines: Vec<String> = job
        .finding
        .speaks_for
        .iter()
        .take(MOST_REASONS)
        .map(|message| seen(texts, job, message))
        .collect();
    if job.finding.explains_complaint.is_some() {
        lines.push(explains(texts, &job.finding));
    }
    lines
}

/// What was done about it with the figures before and after, or what is proposed.
fn repair(texts: &Texts, job: &JobView) -> String {
    if let Some(repair) = job.repaired() {
        let part = texts.part(&repair.component.as_str().into());
        let done = texts.say_with("report-repaired", &Args::new().text("part", part));
        return match retested(job) {
            Some((before, after)) => format!("{done} {}", compared(texts, job, before, after)),
            None => format!("{done} {}", texts.say("report-not-retested")),
        };
    }
    if !job.finding.decided {
        return String::new();
    }
    let proposed: Vec<String> = job
        .finding
        .parts
        .iter()
        .map(|part| remedy(texts, job, part))
        .collect();
    if proposed.is_empty() {
        return String::new();
    }
    texts.say_with(
        "report-proposed",
        &Args::new().text("what", texts.list(&proposed)),
    )
}

fn compared(
    texts: &Texts,
    job: &JobView,
    (before, was): (&Reading, &TestResult),
    (after, is): (&Reading, &TestResult),
) -> String {
    let words = |reading: &Reading, result: &TestResult| match &result.hold {
        Some(hold) => fall(texts, hold),
        None => reading_words(texts, &job.circuit, reading),
    };
    let key = if is_good(is.outcome) {
        "report-compared"
    } else {
        "report-compared-not-gone"
    };
    texts.say_with(
        key,
        &Args::new()
            .text("test", texts.test_name(&after.test))
            .text("before", words(before, was))
            .text("after", words(after, is)),
    )
}

fn next(texts: &Texts, job: &JobView) -> String {
    if let Some((_, (_, is))) = retested(job) {
        return texts.say(match (is_good(is.outcome), complaint_gone(job)) {
            (true, Some(true)) => "report-next-road",
            (true, Some(false)) => "report-next-complaint-stays",
            (true, None) => "report-next-feel",
            (false, _) => "report-next-again",
        });
    }
    if job.repaired().is_some() {
        return texts.say("report-next-retest");
    }
    if job.finding.decided && !job.finding.parts.is_empty() {
        return texts.say("report-next-repair");
    }
    match &job.next {
        Next::Test { id, .. } => {
            texts.say_with("report-next-test", &Args::new().text("test", texts.test_name(id)))
        }
        Next::Stop { .. } => texts.say("report-next-workshop"),
    }
}

/// What was not tested and why, one line a reason.
fn not_tested(texts: &Texts, job: &JobView) -> Vec<String> {
    let mut tests: Vec<(&TestId, String)> = Vec::new();
    for (reading, result) in &job.done {
        tests.retain(|(test, _)| *test != &reading.test);
        if result.outcome == Outcome::NotDone {
            let reason = match &reading.answer {
                holdfast_diagnose::Answer::NotDone { reason } => reason_words(texts, reason),
                _ => reason_words(texts, "not_available"),
            };
            tests.push((&reading.test, reason));
        }
    }
    let mut lines: Vec<String> = tests
        .iter()
        .take(MOST_NOT_DONE)
        .map(|(test, reason)| {
            texts.say_with(
                "report-not-done",
                &Args::new()
                    .text("test", texts.test_name(test))
                    .text("reason", reason.as_str()),
            )
        })
        .collect();
    if tests.len() > MOST_NOT_DONE {
        lines.push(texts.say_with(
            "report-more-not-done",
            &Args::new().count("count", tests.len() - MOST_NOT_DONE),
        ));
    }
    lines
}

/// What else was seen: parts that look or test wrong and are not named by the finding.
fn also_seen(texts: &Texts, job: &JobView) -> Vec<String> {
    let named = &job.finding.parts;
    job.done
        .iter()
        .filter(|(reading, _)| !reading.after_repair)
        .filter_map(|(reading, _)| match &reading.answer {
            holdfast_diagnose::Answer::Look(seen) => Some(seen),
            _ => None,
        })
        .flatten()
        .filter(|(part, state)| **state != holdfast_diagnose::LookState::Ok && !named.contains(part))
        .map(|(part, state)| {
            let state = state.as_str().replace('_', "-");
            capital(
                &texts.say_with(
                    "report-seen-part",
                    &Args::new()
                        .text("part", texts.part(part))
                        .text("state", texts.say(&format!("look-{state}-phrase"))),
                ),
            )
        })
        .collect()
}

/// The one picture of the page: before and after where there is both, else the circuit with the part.
fn figures(texts: &Texts, job: &JobView) -> Vec<Block> {
    let chart = retested(job).and_then(|(before, after)| before_and_after(texts, job, before, after));
    let figure = match chart {
        Some(scene) => Figure {
            scene,
            caption: texts.say("report-caption-before-after"),
            width_share: 0.6,
        },
        None => Figure {
            scene: circuit_map(texts, job, MapOf::Job),
            caption: map_caption(texts, job),
            width_share: 0.6,
        },
    };
    vec![Block::Figure(figure)]
}
