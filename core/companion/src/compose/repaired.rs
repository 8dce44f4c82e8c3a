//! What a repair came to: "repaired" only where the measurement and the complaint are both gone.

use holdfast_diagnose::{Complaint, ComponentId, Outcome, Reading, TestKind, TestResult};

use crate::job::JobView;
use crate::text::Texts;

/// A reading with what it says.
pub(super) type Judged<'a> = (&'a Reading, &'a TestResult);

/// The test that found the repaired part, before and after: the last one of that part itself, else the last one.
#[must_use]
pub(super) fn retested(job: &JobView) -> Option<(Judged<'_>, Judged<'_>)> {
    let repaired: ComponentId = job.repaired()?.component.as_str().into();
    let again = || {
        job.done
            .iter()
            .rev()
            .filter(|(reading, _)| reading.after_repair && reading.test.kind != TestKind::Complaint)
            .filter(|(_, result)| result.outcome != Outcome::NotDone)
    };
    let of_part = again().find(|(reading, _)| reading.test.part.as_ref() == Some(&repaired));
    let (after, after_result) = of_part.or_else(|| again().next())?;
    let (before, before_result, _) = job.last(&after.test, false)?;
    Some(((before, before_result), (after, after_result)))
}

/// Whether a result is what a sound part gives.
#[must_use]
pub(super) fn is_good(outcome: Outcome) -> bool {
    matches!(outcome, Outcome::Holds | Outcome::SlowLeak | Outcome::AsExpected)
}

/// Whether the repaired part tests good.
#[must_use]
pub(super) fn is_cured(job: &JobView) -> bool {
    retested(job).is_some_and(|(_, (_, is))| is_good(is.outcome))
}

/// Whether the complaint is gone; nothing where that was not tried after the repair.
#[must_use]
pub(super) fn complaint_gone(job: &JobView) -> Option<bool> {
    job.done
        .iter()
        .rev()
        .filter(|(reading, _)| reading.after_repair && reading.test.kind == TestKind::Complaint)
        .find_map(|(reading, _)| reading.yes("present"))
        .map(|present| !present)
}

/// What the repair came to, in one sentence; nothing where none was done or its test was not repeated.
#[must_use]
pub(crate) fn repaired_sentence(texts: &Texts, job: &JobView) -> Option<String> {
    let repair = job.repaired()?;
    let (_, (_, is)) = retested(job)?;
    let complained = job.situation.complaint.iter().any(|c| *c != Complaint::None);
    let key = match (is_good(is.outcome), complaint_gone(job)) {
        (false, _) => "repaired-not",
        (true, Some(true)) => "repaired-both",
        (true, Some(false)) => "repaired-complaint-stays",
        (true, None) if complained => "repaired-test-only",
        (true, None) => "repaired-test",
    };
    Some(texts.say_with(key, &texts.of_part(&repair.component.as_str().into())))
}
