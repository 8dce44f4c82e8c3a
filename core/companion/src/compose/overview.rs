//! Where we stand: the next test and why, the causes, every test with its state.

use holdfast_diagnose::{Advice, Catalogue, Cause, ComponentId, Finding, Next, Profile, TestId};

use super::map::{MapOf, circuit_map};
use super::mark::{cannot_do, mark_of, not_done};
use super::reading::reading_words;
use super::test::{not_offered, why_now};
use crate::job::JobView;
use crate::protocol::{Action, Button, ButtonWeight, CauseRow, NextCard, OverviewScreen, Place, TestRow};
use crate::text::{Args, Texts, capital, sentence};

/// Where we stand.
#[must_use]
pub(crate) fn overview(texts: &Texts, job: &JobView) -> OverviewScreen {
    OverviewScreen {
        subject: subject(texts, job),
        next: next_card(texts, job),
        map: circuit_map(texts, job, MapOf::Job),
        causes: causes(texts, &job.finding, MOST_CAUSES),
        tests: test_rows(texts, job),
        buttons: buttons(texts, job),
    }
}

/// How many causes stand on the overview.
const MOST_CAUSES: usize = 3;

/// Causes below this are not shown.
const LEAST_SHOWN: f64 = 0.005;

/// The vehicle and the complaint in a line.
#[must_use]
pub(super) fn subject(texts: &Texts, job: &JobView) -> String {
    let vehicle = &job.log.vehicle;
    let name: Vec<&str> = [vehicle.plate.as_deref(), vehicle.label.as_deref()]
        .into_iter()
        .flatten()
        .collect();
    let complaint = complaint_phrase(texts, job);
    match (name.is_empty(), complaint.is_empty()) {
        (true, _) => capital(&complaint),
        (false, true) => name.join(", "),
        (false, false) => texts.say_with(
            "overview-subject",
            &Args::new()
                .text("vehicle", name.join(", "))
                .text("complaint", complaint),
        ),
    }
}

/// The complaints as one phrase: "shaking at idle and a stored code".
#[must_use]
pub(super) fn complaint_phrase(texts: &Texts, job: &JobView) -> String {
    let phrases: Vec<String> = job
        .situation
        .complaint
        .iter()
        .map(|complaint| {
            texts.say(&format!(
                "complaint-{}-phrase",
                complaint.as_str().replace('_', "-")
            ))
        })
        .collect();
    texts.list(&phrases)
}

fn next_card(texts: &Texts, job: &JobView) -> NextCard {
    match &job.next {
        Next::Test { id, why, minutes, .. } => NextCard {
            title: texts.test_title(id),
            why: match job.situation.profile {
                Profile::Owner => why_now(texts, job, id),
                Profile::Mechanic => sentence(&texts.message(why)),
            },
            minutes: texts.say_with(
                "overview-minutes",
                &Args::new().text("minutes", texts.minutes(*minutes)),
            ),
            go: button(
                texts.say("overview-go"),
                Action::ShowTest { test: id.to_string() },
                ButtonWeight::Primary,
            ),
        },
        Next::LookAgain { id, why, minutes } => NextCard {
            title: texts.say_with(
                "overview-look-again",
                &Args::new().text("test", texts.test_name(id)),
            ),
            why: sentence(&texts.message(why)),
            minutes: texts.say_with(
                "overview-minutes",
                &Args::new().text("minutes", texts.minutes(*minutes)),
            ),
            go: button(
                texts.say("overview-go-again"),
                Action::ShowTest { test: id.to_string() },
                ButtonWeight::Primary,
            ),
        },
        Next::Stop { why } => NextCard {
            title: headline(texts, &job.finding),
            why: sentence(&texts.message(why)),
            minutes: String::new(),
            go: button(
                texts.say("overview-to-finding"),
                Action::Go { to: Place::Finding },
                ButtonWeight::Primary,
            ),
        },
    }
}

/// The finding in one sentence, without its certainty.
#[must_use]
pub(crate) fn headline(texts: &Texts, finding: &Finding) -> String {
    match finding.causes.first() {
        Some(cause) if finding.decided && cause.faults.is_empty() => texts.say("finding-sound"),
        Some(cause) if finding.decided && !is_mode_certain(finding, cause) => texts.say_with(
            // What does not explain the complaint is not called its cause.
            match finding.explains_complaint {
                Some(false) => "finding-part-aside",
                Some(true) | None => "finding-part",
            },
            &Args::new()
                .text("parts", parts_words(texts, finding))
                .text("cause", cause_words(texts, cause)),
        ),
        Some(_) if is_tester(finding) => texts.say("finding-tester"),
        Some(cause) if finding.decided => sentence(&cause_words(texts, cause)),
        Some(cause) if cause.p < LIKELY => texts.say("finding-not-clear"),
        Some(cause) => texts.say_with(
            "finding-likeliest",
            &Args::new().text("cause", cause_words(texts, cause)),
        ),
        None => texts.say("finding-nothing-known"),
    }
}

/// The decided finding as a clause: the cause, or only the parts where it is not certain what is wrong with them.
#[must_use]
pub(super) fn found_words(texts: &Texts, finding: &Finding, cause: &Cause) -> String {
    if is_mode_certain(finding, cause) {
        cause_words(texts, cause)
    } else {
        parts_words(texts, finding)
    }
}

fn parts_words(texts: &Texts, finding: &Finding) -> String {
    let parts: Vec<String> = finding.parts.iter().map(|part| texts.part(part)).collect();
    texts.list(&parts)
}

fn is_mode_certain(finding: &Finding, cause: &Cause) -> bool {
    finding.parts.is_empty() || cause.p >= MODE_CERTAIN * sure(finding)
}

/// Whether the likeliest cause is the tester itself, so that nothing is proved of the car.
#[must_use]
pub(super) fn is_tester(finding: &Finding) -> bool {
    finding.in_tester && finding.causes.first().is_some_and(|cause| cause.p >= LIKELY)
}

/// Below this a likeliest cause is no headline, and its part is not offered for repair.
pub(crate) const LIKELY: f64 = 0.5;

/// Below this share of the part's probability its likeliest fault is not said as a fact: the probability that stands beside
/// the sentence is the part's.
const MODE_CERTAIN: f64 = 0.95;

/// How sure the finding is: all causes in which the named parts are at fault, added up.
#[must_use]
pub(crate) fn sure(finding: &Finding) -> f64 {
    let parts = |cause: &Cause| {
        let mut parts: Vec<ComponentId> = cause.faults.iter().map(|fault| fault.component.clone()).collect();
        parts.sort();
        parts.dedup();
        parts
    };
    let Some(first) = finding.causes.first() else {
        return 0.0;
    };
    if !finding.decided {
        return first.p;
    }
    let mut named = finding.parts.clone();
    named.sort();
    let named = if named.is_empty() { parts(first) } else { named };
    finding
        .causes
        .iter()
        .filter(|cause| {
            let parts = parts(cause);
            match named.as_slice() {
                [] => parts.is_empty(),
                // With another fault beside it the part is at fault all the same.
                named => named.iter().all(|part| parts.contains(part)),
            }
        })
        .map(|cause| cause.p)
        .sum()
}

/// A cause as a clause.
#[must_use]
pub(crate) fn cause_words(texts: &Texts, cause: &Cause) -> String {
    texts.cause(&cause.faults)
}

/// The leading causes, likeliest first.
#[must_use]
pub(crate) fn causes(texts: &Texts, finding: &Finding, most: usize) -> Vec<CauseRow> {
    finding
        .causes
        .iter()
        .filter(|cause| cause.p >= LEAST_SHOWN)
        .take(most)
        .map(|cause| CauseRow {
            name: capital(&cause_words(texts, cause)),
            percent: texts.percent(cause.p),
            bar_permille: permille(cause.p),
        })
        .collect()
}

fn permille(share: f64) -> u16 {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "0 to 1,000 after the clamp"
    )]
    let permille = (share.clamp(0.0, 1.0) * 1_000.0).round() as u16;
    permille
}

/// Every test of the circuit, in catalogue order: its last result, its minutes, or why it is not offered.
fn test_rows(texts: &Texts, job: &JobView) -> Vec<TestRow> {
    Catalogue::standard()
        .advice(&job.circuit, &job.situation)
        .iter()
        .map(|advice| test_row(texts, job, advice))
        .collect()
}

fn test_row(texts: &Texts, job: &JobView, advice: &Advice) -> TestRow {
    let spec = &advice.spec;
    let not_offered = advice.not_offered.map(|why| not_offered(texts, why));
    let (mark, detail) = match (last(job, &spec.id), &not_offered) {
        (Some((reading, result)), _) => (
            mark_of(texts, result.outcome),
            reading_words(texts, &job.circuit, reading),
        ),
        (None, Some(why)) => (cannot_do(texts), why.clone()),
        (None, None) => {
            let minutes = Args::new().text("minutes", texts.minutes(spec.minutes));
            (not_done(texts), texts.say_with("overview-takes", &minutes))
        }
    };
    let show = Action::ShowTest {
        test: spec.id.to_string(),
    };
    TestRow {
        title: texts.test_title(&spec.id),
        detail,
        mark,
        open: button(texts.say("overview-open-test"), show, ButtonWeight::Plain),
    }
}

/// The last result of a test, whenever it was done.
fn last<'a>(
    job: &'a JobView,
    test: &TestId,
) -> Option<(&'a holdfast_diagnose::Reading, &'a holdfast_diagnose::TestResult)> {
    job.done
        .iter()
        .rev()
        .find(|(reading, _)| &reading.test == test)
        .map(|(reading, result)| (reading, result))
}

fn buttons(texts: &Texts, job: &JobView) -> Vec<Button> {
    let go = |key: &str, to: Place| button(texts.say(key), Action::Go { to }, ButtonWeight::Plain);
    let mut buttons = Vec::new();
    if !matches!(job.next, Next::Stop { .. }) && !job.done.is_empty() {
        buttons.push(go("overview-finding", Place::Finding));
    }
    buttons.push(go("overview-log", Place::Log));
    buttons.push(go("overview-report", Place::Report));
    buttons
}

/// A button that can be tapped.
#[must_use]
pub(super) fn button(label: String, action: Action, weight: ButtonWeight) -> Button {
    Button {
        label,
        action,
        weight,
        why_not: None,
    }
}
