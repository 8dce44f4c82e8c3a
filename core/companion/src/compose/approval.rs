//! What the customer said to the work, in words and as it is signed.

use holdfast_joblog::{Approval, Dated, Decision, Signature};
use holdfast_report::{PAD, Point, SignLine};

use super::report::repair_proposals;
use super::time::date_and_time;
use crate::job::JobView;
use crate::text::{Args, Texts, kebab};

/// The work that is proposed now, in a phrase; what was repaired, once it was; empty where there is neither.
#[must_use]
pub(crate) fn proposed(texts: &Texts, job: &JobView) -> String {
    match job.repaired() {
        Some(repair) => texts.say_with(
            "approval-repaired",
            &Args::new().text("part", texts.part(&repair.component.as_str().into())),
        ),
        None => texts.list(&repair_proposals(texts, job)),
    }
}

/// What was said, by whom: for the log and for work that is not done.
#[must_use]
pub(super) fn approval_words(texts: &Texts, approval: &Approval) -> String {
    let decision = texts.say(&format!("approval-{}", kebab(approval.decision.id())));
    let args = Args::new()
        .text("decision", decision)
        .text("work", approval.work.trim())
        .text("name", approval.name.trim());
    texts.say_with(
        if approval.work.trim().is_empty() || approval.decision == Decision::HandedOver {
            "approval-said"
        } else {
            "approval-said-of"
        },
        &args,
    )
}

/// Work that was refused or put off and not agreed to since.
#[must_use]
pub(super) fn work_not_done(texts: &Texts, job: &JobView) -> Vec<String> {
    let said = &job.log.approvals;
    said.iter()
        .enumerate()
        .filter(|(_, dated)| matches!(dated.value.decision, Decision::PutOff | Decision::Refused))
        .filter(|(at, dated)| {
            let later = said.iter().skip(at + 1);
            !later
                .into_iter()
                .any(|later| later.value.work == dated.value.work)
        })
        .map(|(_, dated)| approval_words(texts, &dated.value))
        .collect()
}

/// A decision as a line that is signed.
#[must_use]
pub(super) fn signed_line(texts: &Texts, dated: &Dated<Approval>) -> SignLine {
    let approval = &dated.value;
    let decision = texts.say(&format!("approval-{}", kebab(approval.decision.id())));
    let when = date_and_time(texts, dated.at_ms, dated.offset_min);
    SignLine {
        label: texts.say_with("report-sign-decided", &Args::new().text("decision", decision)),
        written: texts.say_with(
            "report-signed-when",
            &Args::new().text("name", approval.name.trim()).text("when", when),
        ),
        signature: approval.signature.as_ref().and_then(|signature| {
            let alt = texts.say_with(
                "report-signature-of",
                &Args::new().text("name", approval.name.trim()),
            );
            holdfast_report::signature(&strokes(signature), &alt)
        }),
    }
}

/// The logged strokes in the pad's units.
fn strokes(signature: &Signature) -> Vec<Vec<Point>> {
    let length = |share: u16| f32::from(share) / 10_000.0 * PAD.0;
    signature
        .strokes
        .iter()
        .map(|stroke| {
            let place = |[x, y]: &[u16; 2]| Point {
                x: length(*x),
                y: length(*y),
            };
            stroke.iter().map(place).collect()
        })
        .collect()
}
