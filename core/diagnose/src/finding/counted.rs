//! Which readings count, where tests were done more than once.

use crate::inference::Model;
use crate::{Answer, Outcome, Reading, TestId, TestKind, TestResult};

/// A reading with its result.
type Taken = (Reading, TestResult);

/// What was asked for before any repair, and what of it counts.
pub(super) struct Counted<'r> {
    /// The readings that count, in their order.
    pub readings: Vec<&'r Taken>,
    /// Faults of a tester that was found bad, with the test that proves it anew: nobody has tried to put it right.
    pub to_mend: Vec<(usize, TestId)>,
}

impl<'r> Counted<'r> {
    /// Of all readings of a job.
    ///
    /// Readings after a repair are of another car. What was read with a tester that was found bad, put right and proved anew
    /// since is of another tester. A hold is a new one each time: the seal, the loose end, the warm gas. Every other test done
    /// again in the same state of the car takes the place of the one before: whoever judges the same thing twice is no second
    /// witness.
    pub fn of(model: &Model<'_>, readings: &'r [Taken]) -> Self {
        let before: Vec<&Taken> = readings.iter().filter(|(r, _)| !r.after_repair).collect();
        let proofs: Vec<Proofs> = (0..model.faults.len())
            .filter_map(|fault| Proofs::of(model, fault, &before))
            .collect();
        let replaced = |at: usize| {
            let reading = &before[at].0;
            let again = |r: &Reading| r.is_answered() && r.test == reading.test && r.state == reading.state;
            !matches!(reading.answer, Answer::Hold(_))
                && reading.is_answered()
                && before[at + 1..].iter().any(|(r, _)| again(r))
        };
        let by_another = |at: usize| {
            let touched = |fault| {
                model
                    .observe(&before[at].0)
                    .is_some_and(|o| model.touches(&o, &[fault]))
            };
            let is_before = |proofs: &&Proofs| proofs.put_right.is_some_and(|proved| at < proved);
            proofs
                .iter()
                .filter(is_before)
                .any(|proofs| touched(proofs.fault))
        };
        let counts = |at: &usize| !replaced(*at) && !by_another(*at);
        Self {
            readings: (0..before.len()).filter(counts).map(|at| before[at]).collect(),
            to_mend: proofs
                .into_iter()
                .filter(|proofs| proofs.is_open)
                .map(|proofs| (proofs.fault, TestId::of(proofs.test)))
                .collect(),
        }
    }
}

/// What the tests that prove a tester came to.
struct Proofs {
    fault: usize,
    test: TestKind,
    /// The place of the first good one after it was found bad.
    put_right: Option<usize>,
    /// The last one found it bad, and it was not tried again.
    is_open: bool,
}

impl Proofs {
    /// Of a tester with this fault, if it is one.
    fn of(model: &Model<'_>, fault: usize, readings: &[&Taken]) -> Option<Self> {
        let test = proof_of(model, fault)?;
        let (mut put_right, mut bad_times, mut refused) = (None, 0, false);
        let of_test = readings
            .iter()
            .enumerate()
            .filter(|(_, (r, _))| r.test.kind == test);
        for (at, (_, result)) in of_test {
            match result.outcome {
                Outcome::Leaks | Outcome::WillNotBuild | Outcome::NotAsExpected => {
                    bad_times += 1;
                    refused = false;
                }
                Outcome::Holds | Outcome::SlowLeak | Outcome::AsExpected => {
                    if bad_times > 0 {
                        put_right = Some(at);
                    }
                    bad_times = 0;
                }
                Outcome::NotDone => refused = true,
                Outcome::Undecided => {}
            }
        }
        Some(Self {
            fault,
            test,
            put_right,
            is_open: bad_times == 1 && !refused,
        })
    }
}

/// The kind of test that proves a tester, if the fault is one of a tester.
fn proof_of(model: &Model<'_>, fault: usize) -> Option<TestKind> {
    let fault = &model.faults[fault];
    fault.retest.filter(|_| fault.is_bad_tester())
}
