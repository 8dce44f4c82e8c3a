//! Which readings count, where tests were done more than once.

use crate::inference::Model;
use crate::{Answer, Outcome, Reading, TestKind, TestResult};

/// A reading with its result.
type Taken = (Reading, TestResult);

/// The readings that count, in their order.
///
/// Readings after a repair are of another car. What was read with a tester that was found bad, put right and proved anew
/// since is of another tester. A hold is a new one each time: the seal, the loose end, the warm gas. Every other test done
/// again takes the place of the one before: whoever judges the same thing twice is no second witness.
pub(super) fn counted<'r>(model: &Model<'_>, readings: &'r [Taken]) -> Vec<&'r Taken> {
    let before: Vec<&Taken> = readings.iter().filter(|(r, _)| !r.after_repair).collect();
    let replaced = |at: usize| {
        let reading = &before[at].0;
        let later = || before[at + 1..].iter().map(|(r, _)| r);
        !matches!(reading.answer, Answer::Hold(_))
            && reading.is_answered()
            && later().any(|r| r.test == reading.test && r.is_answered())
    };
    let testers = put_right(model, &before);
    let by_another = |at: usize| {
        let seen = || model.observe(&before[at].0);
        testers
            .iter()
            .any(|(tester, proved)| at < *proved && seen().is_some_and(|o| model.touches(&o, &[*tester])))
    };
    let counts = |at: &usize| !replaced(*at) && !by_another(*at);
    (0..before.len()).filter(counts).map(|at| before[at]).collect()
}

/// The faults of a tester that was put right, and the place of the reading that proved it last.
fn put_right(model: &Model<'_>, readings: &[&Taken]) -> Vec<(usize, usize)> {
    let proved = |fault: usize| {
        let test = proof_of(model, fault)?;
        let is_proof = |(r, _): &&Taken| r.test.kind == test && r.is_answered();
        let failed = |taken: &&Taken| is_proof(taken) && !is_good(taken.1.outcome);
        let last = readings.iter().rposition(is_proof)?;
        let put_right = is_good(readings[last].1.outcome) && readings[..last].iter().any(failed);
        put_right.then_some((fault, last))
    };
    (0..model.faults.len()).filter_map(proved).collect()
}

/// The kind of test that proves a tester, if the fault is one of a tester.
pub(super) fn proof_of(model: &Model<'_>, fault: usize) -> Option<TestKind> {
    let fault = &model.faults[fault];
    fault.retest.filter(|_| fault.is_bad_tester())
}

fn is_good(outcome: Outcome) -> bool {
    matches!(outcome, Outcome::Holds | Outcome::AsExpected)
}
