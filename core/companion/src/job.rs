//! The open job as everything else sees it: the folded log, the circuit and situation it states, its readings with
//! their results, the finding and the next test. Computed once a change, never on a tick.

use holdfast_diagnose::{
    Answer, Catalogue, Circuit, CircuitChoice, Finding, Next, Policy, Reading, Situation, TestId, TestResult,
    TestSpec, conclude, judge,
};
use holdfast_joblog::{EntryKey, JobId, JobState, TestEvent};
use serde::{Deserialize, Serialize};

use crate::situation;

/// The open job.
#[derive(Debug, Clone)]
pub(crate) struct JobView {
    /// Which.
    pub id: JobId,
    /// Its folded log.
    pub log: JobState,
    /// The circuit as chosen.
    pub choice: CircuitChoice,
    /// The circuit.
    pub circuit: Circuit,
    /// Everything else about the job that is not a reading.
    pub situation: Situation,
    /// The tests that can be offered.
    pub specs: Vec<TestSpec>,
    /// Readings that hold, in order, with what each says.
    pub done: Vec<(Reading, TestResult)>,
    /// For each of `done`: its entry, and why it was asked for.
    pub behind: Vec<Behind>,
    /// What all of them say.
    pub finding: Finding,
    /// What to do next.
    pub next: Next,
}

/// What stands behind a result.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Behind {
    /// The entry.
    pub entry: EntryKey,
    /// When it was written, ms since 1970-01-01T00:00Z.
    pub at_ms: i64,
    /// Local time's offset from UTC then, minutes.
    pub offset_min: i32,
    /// Why it was asked for, as said then.
    pub because: Because,
}

/// Why a test was asked for, as said then; part of the log.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(default)]
pub(crate) struct Because {
    /// One sentence, or empty where the person chose the test.
    pub why: String,
    /// The catalogue's minutes.
    pub minutes: f64,
    /// Its reading was questioned.
    pub asked_again: bool,
}

impl JobView {
    /// The view of a folded log. What did not change since `before` is taken over from there.
    ///
    /// None if not even the commonest circuit can be built, which the data of diagnosis rules out.
    pub(crate) fn of(log: JobState, before: Option<Self>, policy: Policy) -> Option<Self> {
        let (choice, circuit) = situation::circuit(&log)?;
        let situation = situation::situation(&log);
        let (readings, behind) = readings(&log);
        let before = before.filter(|b| b.id == log.job && b.circuit == circuit && b.situation == situation);
        let (specs, mut done) = match before {
            Some(b) if b.done.iter().map(|(known, _)| known).eq(&readings) => {
                return Some(Self {
                    log,
                    behind,
                    choice,
                    ..b
                });
            }
            Some(b) => (b.specs, b.done),
            None => (Catalogue::standard().tests_for(&circuit, &situation), Vec::new()),
        };
        let same = done
            .iter()
            .zip(&readings)
            .take_while(|((known, _), reading)| known == *reading)
            .count();
        done.truncate(same);
        for (at, reading) in readings.iter().enumerate().skip(same) {
            let earlier = readings.get(..at).unwrap_or(&[]);
            done.push((reading.clone(), judge(&circuit, &situation, earlier, reading)));
        }
        let (finding, next) = conclude(&circuit, &situation, &done, policy);
        Some(Self {
            id: log.job,
            finding,
            next,
            log,
            choice,
            circuit,
            situation,
            specs,
            done,
            behind,
        })
    }

    /// The test's catalogue entry, if it can be offered.
    pub(crate) fn spec(&self, test: &TestId) -> Option<&TestSpec> {
        self.specs.iter().find(|spec| &spec.id == test)
    }

    /// The last result of a test, before or after a repair.
    pub(crate) fn last(&self, test: &TestId, after_repair: bool) -> Option<(&Reading, &TestResult, &Behind)> {
        self.done
            .iter()
            .zip(&self.behind)
            .rev()
            .find(|((reading, _), _)| &reading.test == test && reading.after_repair == after_repair)
            .map(|((reading, result), behind)| (reading, result, behind))
    }

    /// The component whose repair was recorded as done last.
    pub(crate) fn repaired(&self) -> Option<&holdfast_joblog::Repair> {
        self.log
            .repairs
            .iter()
            .rev()
            .map(|repair| &repair.value)
            .find(|repair| repair.done)
    }
}

/// The log's tests as readings. One whose answer does not read (from a newer version) is left out here and still
/// shown in the log.
fn readings(log: &JobState) -> (Vec<Reading>, Vec<Behind>) {
    let mut readings = Vec::new();
    let mut behind = Vec::new();
    for dated in &log.tests {
        let (reading, because) = match &dated.value {
            TestEvent::Read(read) => (situation::reading(read), read.asked_because.clone()),
            TestEvent::Skipped(skipped) => (skipped_reading(skipped), skipped.asked_because.clone()),
        };
        let Some(reading) = reading else { continue };
        readings.push(reading);
        behind.push(Behind {
            entry: dated.key,
            at_ms: dated.at_ms,
            offset_min: dated.offset_min,
            because: because
                .and_then(|json| serde_json::from_value(json).ok())
                .unwrap_or_default(),
        });
    }
    (readings, behind)
}

fn skipped_reading(skipped: &holdfast_joblog::Skipped) -> Option<Reading> {
    let answer = match skipped.reason.as_str() {
        "not_available" => Answer::NotAvailable,
        reason => Answer::NotDone {
            reason: reason.to_owned(),
        },
    };
    skipped.test.parse().ok().map(|test| Reading::new(test, answer))
}
