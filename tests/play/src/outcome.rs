//! What came of a scenario: design.md section 10 is the contract.

use holdfast_companion::Done;
use holdfast_diagnose::{Finding, TestResult};
use serde::{Serialize, Serializer};
use serde_json::Value;

use crate::scenario::Scenario;
use crate::shell::Shell;

/// What came of a scenario.
#[derive(Debug, Clone, Serialize)]
pub struct Outcome {
    /// The scenario's name.
    pub name: String,
    /// The tests asked, in order.
    pub steps: Vec<Step>,
    /// What all of them say.
    pub finding: Option<Finding>,
    /// The steps' minutes, summed.
    pub minutes: f64,
    /// The test done again after the repair.
    pub retest: Option<Step>,
    /// Entries in the job's log.
    pub entries: usize,
    /// The report's file.
    pub report: Option<String>,
}

/// A test that was asked.
#[derive(Debug, Clone, Serialize)]
pub struct Step {
    /// Its id.
    pub test: String,
    /// Why it was asked.
    pub why: String,
    /// What it took, by the catalogue.
    pub minutes: f64,
    /// Its reading could hardly be right, and the person was asked.
    pub asked_again: bool,
    /// What its reading says.
    #[serde(serialize_with = "without_drawing")]
    pub result: TestResult,
}

/// The numbers, without the points and lines of the chart.
fn without_drawing<S: Serializer>(result: &TestResult, to: S) -> Result<S::Ok, S::Error> {
    let mut json = serde_json::to_value(result).map_err(serde::ser::Error::custom)?;
    if let Value::Object(fields) = &mut json {
        for key in ["points", "fit", "limit_line"] {
            fields.remove(key);
        }
    }
    json.serialize(to)
}

impl Outcome {
    /// What came of it; the first `found` tests led to the finding, what comes after them is the retest.
    pub(crate) fn of(scenario: &Scenario, shell: &Shell, found: usize, report: Option<String>) -> Self {
        let step = |done: Done| Step {
            test: done.test.to_string(),
            why: done.why,
            minutes: done.minutes,
            asked_again: done.asked_again,
            result: done.result,
        };
        let mut before = shell.core.results();
        let after = before.split_off(found.min(before.len()));
        let steps: Vec<Step> = before.into_iter().map(step).collect();
        Self {
            name: scenario.name.clone(),
            minutes: steps.iter().map(|step| step.minutes).sum(),
            steps,
            finding: shell.core.finding(),
            retest: after.into_iter().next_back().map(step),
            entries: shell.core.entries(),
            report,
        }
    }

    /// The step of a test, the last time it was asked.
    pub fn step(&self, test: &str) -> Option<&Step> {
        self.steps.iter().rev().find(|step| step.test == test)
    }
}
