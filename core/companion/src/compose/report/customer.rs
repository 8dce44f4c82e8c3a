//! The customer's page: at most 150 words of prose, the finding in one sentence first.

use holdfast_diagnose::{Outcome, TestId};
use holdfast_report::{Block, Figure, Signal};

use super::advice::{cares, next, repair, sign};
use crate::compose::approval::work_not_done;
use crate::compose::finding::{certainty_now, explains, headline_now, left_open};
use crate::compose::hold::before_and_after;
use crate::compose::money::{costs_heading, costs_table};
use crate::compose::overview::complaint_phrase;
use crate::compose::reading::reason_words;
use crate::compose::reasons::{seen, telling};
use crate::compose::repaired::{is_cured, retested};
use crate::job::JobView;
use crate::text::{Args, Texts, capital, sentence};

/// Words of prose on the page (look.md); the finding's own sentences count.
pub(super) const MOST_WORDS: usize = 150;

/// Lines under "how it is known".
const MOST_REASONS: usize = 3;

/// Tests named as not done.
const MOST_NOT_DONE: usize = 3;

/// Words of the complaint that are quoted, or of work that was refused.
const MOST_QUOTED: usize = 30;

/// Characters of one word on the page.
const LONGEST_WORD: usize = 60;

/// Lines of work that was refused or put off.
const MOST_REFUSED: usize = 3;

/// The page below the finding. Cautions come before remarks, remarks are left out when the words run short.
pub(super) fn page(texts: &Texts, job: &JobView) -> Vec<Block> {
    let mut page = Page::new(texts, job);
    page.section("report-complaint", vec![complaint(texts, job)]);
    page.section("report-known", known(texts, job));
    page.section("report-done", vec![repair(texts, job)]);
    page.care(texts, job);
    page.costs(texts, job);
    page.not_done(texts, job);
    page.section("report-next", vec![next(texts, job)]);
    page.section("report-not-tested", not_tested(texts, job));
    if !is_cured(job) {
        page.section("report-left-open", left_open(texts, job));
    }
    page.section("report-seen", also_seen(texts, job));
    page.blocks.push(sign(texts, job));
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

    /// What it costs. A table is no prose; its heading says how long an estimate is good.
    fn costs(&mut self, texts: &Texts, job: &JobView) {
        let Some(dated) = &job.log.costs else { return };
        let Some(table) = costs_table(texts, &dated.value) else {
            return;
        };
        let heading = costs_heading(texts, dated);
        self.left = self.left.saturating_sub(words(&heading));
        self.blocks.push(Block::Heading(heading));
        self.blocks.push(Block::Table(table));
    }

    /// Work that was refused or put off: never left out.
    fn not_done(&mut self, texts: &Texts, job: &JobView) {
        let lines: Vec<String> = work_not_done(texts, job)
            .into_iter()
            .take(MOST_REFUSED)
            .map(|line| cut(&line, MOST_QUOTED))
            .collect();
        if lines.is_empty() {
            return;
        }
        let heading = texts.say("report-not-done-work");
        let said = words(&heading) + lines.iter().map(|line| words(line)).sum::<usize>();
        self.left = self.left.saturating_sub(said);
        self.blocks.push(Block::Heading(heading));
        self.blocks.push(Block::List(lines));
    }

    /// What has to be minded until it is repaired: never left out.
    fn care(&mut self, texts: &Texts, job: &JobView) {
        for (signal, key) in cares(job) {
            let (signal, word) = signal_of(signal);
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

/// How a signal is drawn, and the key of its word.
fn signal_of(signal: holdfast_diagnose::Signal) -> (Signal, &'static str) {
    match signal {
        holdfast_diagnose::Signal::Danger => (Signal::Danger, "signal-danger"),
        holdfast_diagnose::Signal::Warning => (Signal::Warning, "signal-warning"),
        holdfast_diagnose::Signal::Caution => (Signal::Caution, "signal-caution"),
        holdfast_diagnose::Signal::Notice => (Signal::Notice, "signal-notice"),
    }
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
    texts.say_with("quoted", &Args::new().text("words", cut(note, MOST_QUOTED)))
}

/// A text cut with a mark after so many words, and within the longest of them.
fn cut(text: &str, most: usize) -> String {
    let mut words = text.split_whitespace();
    let mut kept: Vec<String> = words.by_ref().take(most).map(cut_word).collect();
    if words.next().is_some() {
        kept.push("…".to_owned());
    }
    kept.join(" ")
}

/// A word no longer than words are.
fn cut_word(word: &str) -> String {
    if word.chars().count() <= LONGEST_WORD {
        return word.to_owned();
    }
    word.chars().take(LONGEST_WORD).chain(['…']).collect()
}

/// How it is known: what speaks for it, and whether it explains the complaint.
fn known(texts: &Texts, job: &JobView) -> Vec<String> {
    let mut lines: Vec<String> = telling(job)
        .into_iter()
        .take(MOST_REASONS)
        .filter_map(|test| seen(texts, job, test))
        .collect();
    // The same test done twice says the same twice.
    lines.dedup();
    if job.finding.explains_complaint.is_some() {
        lines.push(explains(texts, &job.finding));
    }
    lines
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
                    &texts
                        .of_part(part)
                        .text("state", texts.say(&format!("look-{state}-phrase"))),
                ),
            )
        })
        .collect()
}

/// What stands beside the text: the figure that tells most, and the circuit where the page has room for it.
pub(super) fn aside(job: &JobView, map: &mut Option<Figure>, telling: Option<Figure>) -> Vec<Figure> {
    let full = job.log.costs.is_some() || !job.log.approvals.is_empty();
    let map = map.take_if(|_| !full);
    map.into_iter()
        .chain(telling)
        .map(|figure| Figure {
            width_share: SHARE,
            ..figure
        })
        .collect()
}

/// Share of the text width that pictures beside the text take.
const SHARE: f32 = 0.44;

/// The same test before and after the repair, where there is both.
pub(super) fn comparison(texts: &Texts, job: &JobView) -> Option<Figure> {
    let (before, after) = retested(job)?;
    let scene = before_and_after(texts, job, before, after)?;
    Some(Figure {
        scene,
        caption: texts.say("report-caption-before-after"),
        width_share: SHARE,
    })
}
