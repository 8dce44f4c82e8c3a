//! What the customer's page asks for: what to mind, the repair, the next step, a signature.

use holdfast_diagnose::{Component, ComponentKind, Next, Reading, Signal, TestResult, care_for};
use holdfast_joblog::{Approval, Dated, Decision};
use holdfast_report::{Block, SignLine};

use crate::compose::approval::signed_line;
use crate::compose::finding::remedy;
use crate::compose::hold::fall;
use crate::compose::overview::is_tester;
use crate::compose::reading::reading_words;
use crate::compose::repaired::{complaint_gone, is_good, retested};
use crate::job::JobView;
use crate::text::{Args, Texts};

/// The cautions of the page: where brakes share the vacuum, and what the finding asks for until it is repaired.
pub(super) fn cares(job: &JobView) -> Vec<(Signal, &'static str)> {
    let mut cares = Vec::new();
    let brakes =
        |part: &Component| part.kind == ComponentKind::Consumer && part.id.as_str().contains("booster");
    if job.circuit.components.iter().any(brakes) {
        cares.push((Signal::Warning, "report-care-brakes"));
    }
    if !job.finding.decided || job.repaired().is_some() {
        return cares;
    }
    let faults = job
        .finding
        .causes
        .first()
        .into_iter()
        .flat_map(|cause| &cause.faults);
    cares.extend(faults.filter_map(|fault| {
        let care = care_for(&job.circuit, fault)?;
        Some((care.signal, care.text.as_str()))
    }));
    cares
}

/// What was done about it with the figures before and after, or what is proposed.
pub(super) fn repair(texts: &Texts, job: &JobView) -> String {
    if let Some(repair) = job.repaired() {
        let done = texts.say_with(
            "report-repaired",
            &texts.of_part(&repair.component.as_str().into()),
        );
        return match retested(job) {
            Some((before, after)) => format!("{done} {}", compared(texts, job, before, after)),
            None => format!("{done} {}", texts.say("report-not-retested")),
        };
    }
    let proposed = proposals(texts, job);
    if proposed.is_empty() {
        return String::new();
    }
    // A leak that does no harm yet is not sold as the cure.
    let key = match job.finding.explains_complaint {
        Some(false) => "report-proposed-can-wait",
        Some(true) | None => "report-proposed",
    };
    texts.say_with(key, &Args::new().text("what", texts.list(&proposed)))
}

/// What the finding proposes, a phrase a part.
pub(in crate::compose) fn proposals(texts: &Texts, job: &JobView) -> Vec<String> {
    let found = &job.finding;
    let parts = found.parts.iter().filter(|_| found.decided);
    parts.map(|part| remedy(texts, job, part)).collect()
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

pub(super) fn next(texts: &Texts, job: &JobView) -> String {
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
    let found = &job.finding;
    if is_tester(found) {
        return texts.say("report-next-tester");
    }
    if found.decided {
        return texts.say(match (found.parts.as_slice(), found.explains_complaint) {
            ([_, ..], Some(true) | None) => "report-next-repair",
            ([_, ..], Some(false)) => "report-next-elsewhere",
            ([], None) => "report-next-nothing",
            ([], Some(_)) if found.causes.first().is_some_and(|cause| cause.faults.is_empty()) => {
                "report-next-elsewhere"
            }
            ([], Some(_)) => "report-next-outside",
        });
    }
    match &job.next {
        Next::Test { id, .. } | Next::LookAgain { id, .. } => {
            texts.say_with("report-next-test", &Args::new().text("test", texts.test_name(id)))
        }
        Next::Stop { .. } => texts.say("report-next-workshop"),
    }
}

/// Where tester and customer sign, with what was said last; else the customer also says what is to be done. Where more was
/// said, all of it is in the record.
pub(super) fn sign(texts: &Texts, job: &JobView) -> Block {
    let technician = job
        .log
        .workshop
        .as_ref()
        .map(|workshop| workshop.technician.trim());
    let tester = match technician.filter(|name| !name.is_empty()) {
        Some(name) => SignLine {
            label: texts.say("report-tested-by"),
            written: name.to_owned(),
            signature: None,
        },
        None => open_line(texts, "report-sign-work"),
    };
    let said = &job.log.approvals;
    let not_refused =
        |dated: &&Dated<Approval>| matches!(dated.value.decision, Decision::Agreed | Decision::HandedOver);
    let last = said.iter().rev().find(not_refused).or(said.last());
    let customer = match last {
        Some(dated) => signed_line(texts, dated),
        None => open_line(texts, customer_line(job)),
    };
    Block::Sign(vec![tester, customer])
}

/// Everything the customer said and signed, where it is more than the first page has.
pub(super) fn all_signed(texts: &Texts, job: &JobView) -> Option<Block> {
    let said = &job.log.approvals;
    (said.len() > 1).then(|| Block::Sign(said.iter().map(|dated| signed_line(texts, dated)).collect()))
}

fn open_line(texts: &Texts, key: &str) -> SignLine {
    SignLine {
        label: texts.say(key),
        ..SignLine::default()
    }
}

/// What the customer signs for on paper.
fn customer_line(job: &JobView) -> &'static str {
    if job.repaired().is_some() {
        "report-sign-handed-over"
    } else if job.finding.decided && !job.finding.parts.is_empty() {
        "report-sign-agreed"
    } else {
        "report-sign-customer"
    }
}
