//! For programs that play a whole job in Rust: what is asked, what came out. Not part of what phones load.

use holdfast_diagnose::{Circuit, Finding, Next, Policy, Situation, TestId, TestResult, TestSpec};

use crate::companion::Companion;
use crate::job::{Because, JobView};
use crate::session::{At, Stage};

/// What the screen asks of the person now.
#[derive(Debug, Clone, PartialEq)]
pub struct Asked {
    /// The test.
    pub test: TestId,
    /// Its catalogue entry.
    pub spec: TestSpec,
    /// How far it is.
    pub stage: AskedStage,
}

/// How far the test on the screen is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum AskedStage {
    /// The briefing: to be begun, or refused with a reason.
    Brief,
    /// A vacuum hold test.
    Hold(AskedHold),
    /// Values to be typed or picked.
    Values,
    /// A question with two answers.
    Ask,
    /// The circuit part by part.
    Look,
    /// A hold's figures, to be put right.
    Amend,
    /// An odd reading: to be kept or changed.
    Question,
    /// The result.
    Result,
}

/// How far a hold is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum AskedHold {
    /// Pumping.
    Pump,
    /// The reading at letting go.
    First,
    /// The highest reading.
    Highest,
    /// Watching: seconds since letting go at which the next reading is due.
    Watch {
        /// When it is due, s.
        due_s: f64,
    },
    /// A later reading: seconds since letting go at which it was asked for.
    Read {
        /// When it was asked for, s.
        at_s: f64,
    },
    /// Cut off.
    Interrupted,
}

/// A test that was done, with what it said.
#[derive(Debug, Clone, PartialEq)]
pub struct Done {
    /// The test.
    pub test: TestId,
    /// What its reading said.
    pub result: TestResult,
    /// Why it was asked for, as it was said then; empty where the person chose it.
    pub why: String,
    /// Minutes it took, by the catalogue.
    pub minutes: f64,
    /// Its reading could hardly be right, and the person was asked.
    pub asked_again: bool,
    /// It is the same test after a repair.
    pub after_repair: bool,
}

impl Companion {
    /// What the screen asks now; none outside a test.
    #[must_use]
    pub fn asked(&self) -> Option<Asked> {
        use crate::flow::hold::HoldAt;
        let At::Test(at) = &self.session.at else {
            return None;
        };
        let spec = self.spec(&at.test)?;
        let stage = match &at.stage {
            Stage::Brief { .. } => AskedStage::Brief,
            Stage::Hold(hold) => AskedStage::Hold(match hold {
                HoldAt::Pump { .. } => AskedHold::Pump,
                HoldAt::First { .. } => AskedHold::First,
                HoldAt::Highest { .. } => AskedHold::Highest,
                HoldAt::Watch(running) => AskedHold::Watch { due_s: running.due_s },
                HoldAt::Read { at_s, .. } => AskedHold::Read { at_s: *at_s },
                HoldAt::Interrupted { .. } => AskedHold::Interrupted,
            }),
            Stage::Values(_) => AskedStage::Values,
            Stage::Ask { .. } => AskedStage::Ask,
            Stage::Look { .. } => AskedStage::Look,
            Stage::Amend(_) => AskedStage::Amend,
            Stage::Question { .. } => AskedStage::Question,
            Stage::Result { .. } => AskedStage::Result,
        };
        Some(Asked {
            test: spec.id.clone(),
            spec,
            stage,
        })
    }

    /// The tests of the open job that were done or could not be, in order.
    #[must_use]
    pub fn results(&self) -> Vec<Done> {
        let Some(job) = &self.job else { return Vec::new() };
        job.done
            .iter()
            .zip(&job.behind)
            .map(|((reading, result), behind)| {
                let Because {
                    why,
                    minutes,
                    asked_again,
                } = behind.because.clone();
                Done {
                    test: reading.test.clone(),
                    result: result.clone(),
                    why,
                    minutes,
                    asked_again,
                    after_repair: reading.after_repair,
                }
            })
            .collect()
    }

    /// What all readings of the open job say.
    #[must_use]
    pub fn finding(&self) -> Option<Finding> {
        self.up_to_date().map(|job| job.finding)
    }

    /// What the planner wants next.
    #[must_use]
    pub fn next(&self) -> Option<Next> {
        self.up_to_date().map(|job| job.next)
    }

    fn up_to_date(&self) -> Option<JobView> {
        let mut job = self.job.clone()?;
        job.reason(self.policy);
        Some(job)
    }

    /// The circuit of the open job.
    #[must_use]
    pub fn circuit(&self) -> Option<&Circuit> {
        self.job.as_ref().map(|job| &job.circuit)
    }

    /// The situation of the open job.
    #[must_use]
    pub fn situation(&self) -> Option<&Situation> {
        self.job.as_ref().map(|job| &job.situation)
    }

    /// How many entries the open job's log has.
    #[must_use]
    pub fn entries(&self) -> usize {
        self.job.as_ref().map_or(0, |job| job.log.record.len())
    }

    /// Plays by another rule for the next test from now on; a person's app is always guided.
    ///
    /// # Errors
    /// As reading the log.
    pub fn play_by(&mut self, policy: Policy) -> Result<(), crate::ActError> {
        if self.policy == policy {
            return Ok(());
        }
        self.policy = policy;
        self.foreseen = None;
        self.job = None;
        self.take_up_job()?;
        Ok(())
    }
}
