//! The finding as a screen: the part and how sure, what speaks for and against, what stays open.

use holdfast_diagnose::{ComponentId, FaultId, Finding, Fix, Message, Next, fix_for};
use holdfast_report::State;

use super::map::{MapOf, circuit_map};
use super::mark::mark;
use super::overview::{LIKELY, button, cause_words, causes, found_words, headline, is_tester, sure};
use super::reasons::{seen, telling, weighed};
use super::repaired::{complaint_gone, is_cured, is_good, repaired_sentence, retested};
use crate::job::JobView;
use crate::protocol::{Action, Button, ButtonWeight, FindingScreen, Mark, Place};
use crate::text::{Args, Texts, capital};

/// Lines for and against on the screen (look.md: three each).
const MOST_LINES: usize = 3;

/// Faults that stay possible and are named.
const MOST_LEFT_OPEN: usize = 3;
/// Parts named as not told apart at most; the others are counted.
const MOST_INSEPARABLE: usize = 5;

/// Causes on the finding screen.
const MOST_CAUSES: usize = 6;

/// The finding.
#[must_use]
pub(crate) fn finding(texts: &Texts, job: &JobView) -> FindingScreen {
    let found = &job.finding;
    let lines = |messages: &[Message]| -> Vec<String> {
        messages
            .iter()
            .take(MOST_LINES)
            .map(|message| weighed(texts, job, message))
            .collect()
    };
    FindingScreen {
        headline: headline_now(texts, job),
        certainty: certainty_now(texts, job),
        mark: finding_mark(texts, job),
        explains: explains(texts, found),
        speaks_for: if is_tester(found) {
            let tests = telling(job).into_iter().take(MOST_LINES);
            tests.filter_map(|test| seen(texts, job, test)).collect()
        } else {
            lines(&found.speaks_for)
        },
        speaks_against: lines(&found.speaks_against),
        left_open: left_open(texts, job),
        causes: causes(texts, found, MOST_CAUSES),
        map: circuit_map(texts, job, MapOf::Job),
        buttons: buttons(texts, job),
    }
}

/// The finding in one sentence; after a repair and its retest what those came to.
#[must_use]
pub(super) fn headline_now(texts: &Texts, job: &JobView) -> String {
    repaired_sentence(texts, job).unwrap_or_else(|| headline(texts, &job.finding))
}

/// How sure; after a repair and its retest what was found before.
#[must_use]
pub(super) fn certainty_now(texts: &Texts, job: &JobView) -> String {
    match (repaired_sentence(texts, job), job.finding.causes.first()) {
        (Some(_), Some(cause)) => texts.say_with(
            "certainty-before",
            &Args::new()
                .text("cause", found_words(texts, &job.finding, cause))
                .text("percent", texts.percent(sure(&job.finding))),
        ),
        _ => certainty(texts, job),
    }
}

/// How sure, in plain words with the number: a percentage never stands alone.
#[must_use]
fn certainty(texts: &Texts, job: &JobView) -> String {
    if job.finding.causes.is_empty() {
        return texts.say("certainty-none");
    }
    let sure = sure(&job.finding);
    let percent = texts.percent(sure);
    let likeliest = job
        .finding
        .causes
        .first()
        .map(|cause| cause_words(texts, cause))
        .unwrap_or_default();
    let key = match (job.finding.decided, sure) {
        _ if is_tester(&job.finding) => "certainty-tester",
        (true, p) if p >= 0.99 => "certainty-very-sure",
        (true, _) if is_sound(&job.finding) => "certainty-sure-sound",
        (true, _) => "certainty-sure",
        (false, p) if p >= LIKELY => "certainty-likely",
        (false, _) => "certainty-open",
    };
    texts.say_with(
        key,
        &Args::new()
            .text("percent", percent)
            .text("cause", likeliest)
            .text("level", texts.percent(job.situation.confidence)),
    )
}

/// The state of the finding as shape and word.
#[must_use]
fn finding_mark(texts: &Texts, job: &JobView) -> Mark {
    let (state, key) = finding_state(job);
    mark(state, texts.say(key))
}

/// The state of the finding and the key of its word.
#[must_use]
pub(super) fn finding_state(job: &JobView) -> (State, &'static str) {
    let finding = &job.finding;
    if let (Some(_), Some((_, (_, is)))) = (job.repaired(), retested(job)) {
        return match (is_good(is.outcome), complaint_gone(job)) {
            (true, Some(true)) => (State::Holds, "state-repaired"),
            (true, _) => (State::Holds, "state-tests-good"),
            (false, _) => (State::Leaks, "state-not-repaired"),
        };
    }
    match (finding.decided, finding.causes.first()) {
        (true, Some(_)) if is_sound(finding) => (State::Holds, "job-state-no-fault"),
        (true, Some(_)) => (State::Leaks, "job-state-found"),
        _ => (State::Undecided, "job-state-undecided"),
    }
}

/// Whether the likeliest is that nothing is wrong.
fn is_sound(finding: &Finding) -> bool {
    finding
        .causes
        .first()
        .is_some_and(|cause| cause.faults.is_empty())
}

/// Whether there is a first cause that can be spoken of as one.
fn is_likely(finding: &Finding) -> bool {
    finding.decided || finding.causes.first().is_some_and(|cause| cause.p >= LIKELY)
}

/// Whether the cause explains the complaint; empty while no cause stands out.
#[must_use]
pub(super) fn explains(texts: &Texts, finding: &Finding) -> String {
    if !is_likely(finding) || is_tester(finding) {
        return String::new();
    }
    texts.say(match finding.explains_complaint {
        Some(true) => "finding-explains",
        Some(false) => "finding-explains-not",
        None => "finding-explains-no-complaint",
    })
}

/// What can't be told apart or was not tested. What the finding names is not left open beside it, nor is anything in a part
/// that tests good after its repair.
#[must_use]
pub(super) fn left_open(texts: &Texts, job: &JobView) -> Vec<String> {
    let finding = &job.finding;
    let mut lines = Vec::new();
    if let [_, _, ..] = finding.inseparable.as_slice() {
        let named = finding.inseparable.iter().take(MOST_INSEPARABLE);
        let parts: Vec<String> = named.map(|part| texts.part(part)).collect();
        let more = finding.inseparable.len() - parts.len();
        lines.push(if more == 0 {
            texts.say_with(
                "finding-inseparable",
                &Args::new().text("parts", texts.list(&parts)),
            )
        } else {
            texts.say_with(
                "finding-inseparable-more",
                &Args::new().text("parts", parts.join(", ")).count("count", more),
            )
        });
    }
    let first = finding.causes.first();
    let named = |fault: &FaultId| first.is_some_and(|cause| cause.faults.contains(fault));
    let cured = job.repaired().filter(|_| is_cured(job));
    let cured = |fault: &FaultId| cured.is_some_and(|repair| repair.component == fault.component.as_str());
    let others = finding
        .left_open
        .iter()
        .filter(|fault| !named(fault) && !cured(fault));
    lines.extend(others.take(MOST_LEFT_OPEN).map(|fault| {
        texts.say_with(
            "finding-left-open",
            &Args::new().text("fault", texts.fault(fault)),
        )
    }));
    lines
}

/// What puts a part right: "replace the front hose", by the likeliest fault that the finding names in it.
#[must_use]
pub(crate) fn remedy(texts: &Texts, job: &JobView, part: &ComponentId) -> String {
    let fault = job
        .finding
        .causes
        .iter()
        .flat_map(|cause| &cause.faults)
        .find(|fault| &fault.component == part);
    let fix = fault.and_then(|fault| fix_for(&job.circuit, fault));
    let key = match fix {
        Some(Fix::Replace) => "fix-replace",
        Some(Fix::Refit) => "fix-refit",
        Some(Fix::Repair) | None => "fix-repair",
        Some(Fix::Clean) => "fix-clean",
        Some(Fix::Charge) => "fix-charge",
    };
    texts.say_with(key, &texts.of_part(part))
}

fn buttons(texts: &Texts, job: &JobView) -> Vec<Button> {
    let found = &job.finding;
    let mut buttons: Vec<Button> = found
        .parts
        .iter()
        .enumerate()
        .filter(|(_, part)| job.circuit.component(part).is_some())
        .map(|(at, part)| {
            let weight = if at == 0 && found.decided {
                ButtonWeight::Primary
            } else {
                ButtonWeight::Plain
            };
            repair_button(texts, job, part, weight)
        })
        .collect();
    let more = match &job.next {
        Next::Test { id, .. } => Some(("finding-test-more", id)),
        Next::LookAgain { id, .. } => Some(("overview-look-again", id)),
        Next::Stop { .. } => None,
    };
    if let Some((key, id)) = more {
        let weight = if found.decided {
            ButtonWeight::Plain
        } else {
            ButtonWeight::Primary
        };
        buttons.push(button(
            texts.say_with(key, &Args::new().text("test", texts.test_name(id))),
            Action::ShowTest { test: id.to_string() },
            weight,
        ));
    }
    let weight = if buttons.iter().any(|b| b.weight == ButtonWeight::Primary) {
        ButtonWeight::Plain
    } else {
        ButtonWeight::Primary
    };
    buttons.push(button(
        texts.say("finding-report"),
        Action::Go { to: Place::Report },
        weight,
    ));
    buttons.sort_by_key(|b| u8::from(b.weight != ButtonWeight::Primary));
    buttons
}

fn repair_button(texts: &Texts, job: &JobView, part: &ComponentId, weight: ButtonWeight) -> Button {
    button(
        capital(&remedy(texts, job, part)),
        Action::Repair {
            component: part.to_string(),
        },
        weight,
    )
}
