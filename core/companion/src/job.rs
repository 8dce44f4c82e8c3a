//! The open job as everything else sees it: the folded log, the circuit and situation it states, its readings with
//! their results, the finding and the next test. Computed once a change, never on a tick.

use std::sync::{Arc, Mutex, PoisonError};

use holdfast_diagnose::{
    Answer, Branch, Catalogue, Circuit, CircuitChoice, Finding, Message, Next, Policy, Reading, Reasoner,
    Situation, TestId, TestResult, TestSpec, judge,
};
use holdfast_joblog::{EntryKey, JobId, JobState, TestEvent};
use serde::{Deserialize, Serialize};

use crate::experience::Experience;
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
    /// Whether `finding` and `next` are of what is known now.
    pub reasoned: Reasoned,
    /// What all of them say.
    pub finding: Finding,
    /// What to do next.
    pub next: Next,
    /// What draws the conclusions.
    pub thinking: Thinking,
}

/// Whether finding and next test are of what is known now.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Reasoned {
    /// They are.
    Now,
    /// They are of what was known before the last change.
    Before,
}

/// Finding and next test with what they were drawn from.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Conclusion {
    circuit: Circuit,
    situation: Situation,
    done: Vec<(Reading, TestResult)>,
    finding: Finding,
    next: Next,
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
    /// The view of a folded log, everything worked out. What did not change since `before` is taken over from there.
    ///
    /// None if not even the commonest circuit can be built, which the data of diagnosis rules out.
    #[cfg(test)]
    pub(crate) fn of(log: JobState, before: Option<Self>, policy: Policy) -> Option<Self> {
        let mut view = Self::judged(log, before, &Experience::default())?;
        view.reason(policy);
        Some(view)
    }

    /// The same, but where finding and next test would change they are still those of `before`: that takes longer
    /// than a tap may, and a result can be shown without them. [`JobView::reason`] brings them up to date.
    pub(crate) fn judged(log: JobState, before: Option<Self>, experience: &Experience) -> Option<Self> {
        let (choice, circuit) = situation::circuit(&log)?;
        let situation = Situation {
            learned: experience.on(&choice, log.job),
            ..situation::situation(&log)
        };
        let (readings, behind) = readings(&log);
        let Some(before) = before.filter(|b| b.id == log.job) else {
            let specs = Catalogue::standard().tests_for(&circuit, &situation);
            let done = judged(&circuit, &situation, &readings, Vec::new());
            let (finding, next) = nothing_yet();
            let (id, reasoned) = (log.job, Reasoned::Before);
            return Some(Self {
                id,
                log,
                choice,
                circuit,
                situation,
                specs,
                done,
                behind,
                reasoned,
                finding,
                next,
                thinking: Thinking::default(),
            });
        };
        let same_car = before.circuit == circuit && before.situation == situation;
        if same_car && before.done.iter().map(|(known, _)| known).eq(&readings) {
            return Some(Self {
                log,
                behind,
                choice,
                ..before
            });
        }
        let (specs, known) = if same_car {
            (before.specs, before.done)
        } else {
            (Catalogue::standard().tests_for(&circuit, &situation), Vec::new())
        };
        let done = judged(&circuit, &situation, &readings, known);
        let reasoned = Reasoned::Before;
        let Self {
            id,
            finding,
            next,
            thinking,
            ..
        } = Self {
            specs: Vec::new(),
            done: Vec::new(),
            ..before
        };
        Some(Self {
            id,
            log,
            choice,
            circuit,
            situation,
            specs,
            done,
            behind,
            reasoned,
            finding,
            next,
            thinking,
        })
    }

    /// Brings finding and next test up to date, if they are not.
    pub(crate) fn reason(&mut self, policy: Policy) {
        if self.reasoned == Reasoned::Before {
            (self.finding, self.next) = self
                .thinking
                .ask(&self.circuit, &self.situation, |r| r.conclude(&self.done, policy));
            self.reasoned = Reasoned::Now;
        }
    }

    /// The reasoning still to be done for a situation that holds or is about to, to be done elsewhere. None if it is
    /// done, or `drawn` is it.
    pub(crate) fn to_reason(
        &self,
        situation: &Situation,
        drawn: Option<&Conclusion>,
        policy: Policy,
    ) -> Option<impl FnOnce() -> Conclusion + Send + use<>> {
        let done = self.reasoned == Reasoned::Now && self.situation == *situation;
        let readings = || self.done.iter().map(|(reading, _)| reading);
        let drawn = drawn.is_some_and(|drawn| {
            drawn.circuit == self.circuit
                && drawn.situation == *situation
                && drawn.done.iter().map(|(reading, _)| reading).eq(readings())
        });
        if done || drawn {
            return None;
        }
        let readings: Vec<Reading> = readings().cloned().collect();
        let known = if self.situation == *situation {
            self.done.clone()
        } else {
            Vec::new()
        };
        let (circuit, situation) = (self.circuit.clone(), situation.clone());
        let thinking = self.thinking.clone();
        Some(move || {
            let done = judged(&circuit, &situation, &readings, known);
            let (finding, next) = thinking.ask(&circuit, &situation, |r| r.conclude(&done, policy));
            Conclusion {
                circuit,
                situation,
                done,
                finding,
                next,
            }
        })
    }

    /// What each outcome of a test would change; worked out once for what is known.
    pub(crate) fn what_if(&self, test: &TestId) -> Vec<Branch> {
        let mut kept = self.thinking.1.lock().unwrap_or_else(PoisonError::into_inner);
        if let Some(outlook) = kept.as_ref().filter(|o| o.test == *test && o.done == self.done) {
            return outlook.branches.clone();
        }
        let branches = self
            .thinking
            .ask(&self.circuit, &self.situation, |r| r.what_if(&self.done, test));
        *kept = Some(Outlook {
            test: test.clone(),
            done: self.done.clone(),
            branches: branches.clone(),
        });
        branches
    }

    /// Takes up a conclusion drawn elsewhere; gives it back if it is not of what is known now.
    pub(crate) fn conclude(&mut self, drawn: Conclusion) -> Option<Conclusion> {
        let of_now =
            drawn.circuit == self.circuit && drawn.situation == self.situation && drawn.done == self.done;
        if !of_now {
            return Some(drawn);
        }
        (self.finding, self.next) = (drawn.finding, drawn.next);
        self.reasoned = Reasoned::Now;
        None
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

    /// The last reading of a test before any repair, whether or not it could be done once more.
    pub(crate) fn last_answered(&self, test: &TestId) -> Option<(&Reading, &Behind)> {
        let taken = self.done.iter().zip(&self.behind).rev();
        taken
            .map(|((reading, _), behind)| (reading, behind))
            .find(|(reading, _)| &reading.test == test && !reading.after_repair && reading.is_answered())
    }

    /// Whether a test is to be done next, for the first time or once more.
    pub(crate) fn is_next(&self, test: &TestId) -> bool {
        matches!(&self.next, Next::Test { id, .. } if id == test)
    }

    /// The reading of an entry, as it was logged.
    pub(crate) fn logged(&self, entry: &str) -> Option<&holdfast_joblog::Reading> {
        let mut tests = self.log.tests.iter();
        match &tests.find(|dated| dated.key.to_string() == entry)?.value {
            TestEvent::Read(read) => Some(read),
            TestEvent::Skipped(_) => None,
        }
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

/// What stands until the first reasoning; no screen that shows it is composed before that.
fn nothing_yet() -> (Finding, Next) {
    let why = Message::new("finding-nothing-known");
    (Finding::default(), Next::Stop { why })
}

/// The reasoning about a job, which keeps what it worked out from reading to reading; other threads may ask it, too.
#[derive(Clone, Default)]
pub(crate) struct Thinking(Arc<Mutex<Option<Reasoner>>>, Arc<Mutex<Option<Outlook>>>);

/// What each outcome of a test would change, as things stood.
#[derive(Debug)]
struct Outlook {
    test: TestId,
    done: Vec<(Reading, TestResult)>,
    branches: Vec<Branch>,
}

impl std::fmt::Debug for Thinking {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("Thinking")
    }
}

impl Thinking {
    /// Asks the reasoner of a circuit in a situation; a new one where the last was about another.
    pub(crate) fn ask<T>(
        &self,
        circuit: &Circuit,
        situation: &Situation,
        what: impl FnOnce(&mut Reasoner) -> T,
    ) -> T {
        let mut kept = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        let mut reasoner = kept
            .take()
            .filter(|r| r.is_about(circuit, situation))
            .unwrap_or_else(|| Reasoner::new(circuit.clone(), situation.clone()));
        let answer = what(&mut reasoner);
        *kept = Some(reasoner);
        answer
    }
}

/// Each reading with what it says; results of readings that did not change are taken over.
fn judged(
    circuit: &Circuit,
    situation: &Situation,
    readings: &[Reading],
    known: Vec<(Reading, TestResult)>,
) -> Vec<(Reading, TestResult)> {
    let mut done = known;
    let same = done
        .iter()
        .zip(readings)
        .take_while(|((known, _), reading)| known == *reading)
        .count();
    done.truncate(same);
    for (at, reading) in readings.iter().enumerate().skip(same) {
        let earlier = readings.get(..at).unwrap_or(&[]);
        done.push((reading.clone(), judge(circuit, situation, earlier, reading)));
    }
    done
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

/// The reason of a test that was not done for a reason in the person's own words, which stand in its note.
pub(crate) const OWN_WORDS: &str = "own_words";

fn skipped_reading(skipped: &holdfast_joblog::Skipped) -> Option<Reading> {
    let answer = match skipped.reason.as_str() {
        "not_available" => Answer::NotAvailable,
        OWN_WORDS => Answer::NotDone {
            reason: skipped.note.clone(),
        },
        reason => Answer::NotDone {
            reason: reason.to_owned(),
        },
    };
    skipped.test.parse().ok().map(|test| Reading::new(test, answer))
}
