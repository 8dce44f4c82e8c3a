//! The search as a plain network of one cause and tests that depend on it alone, for comparison with other programs.

use serde::Serialize;

use crate::finding::Reasoner;
use crate::inference::normalised;
use crate::{Circuit, Situation, TestId};

/// A cause of which every test depends, all of them independent of each other once it is known.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Network {
    /// What can be the case, by name (`front_mount/leaks@2`: one way of a cause), and its probability; they sum to 1.
    pub causes: Vec<(String, f64)>,
    /// The tests.
    pub tests: Vec<NetworkTest>,
}

/// A test of a [`Network`].
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct NetworkTest {
    /// Which test.
    pub test: TestId,
    /// Minutes it takes, without getting the car ready.
    pub minutes: f64,
    /// Names of its outcomes.
    pub outcomes: Vec<String>,
    /// For each outcome its chance under each cause; under each cause they sum to 1.
    pub chances: Vec<Vec<f64>>,
}

/// The search that begins with a circuit in a situation, before any reading.
///
/// It is what the choice of tests is made from: causes that hardly count are left out, ways that look alike are one.
pub fn discretised(circuit: &Circuit, situation: &Situation) -> Network {
    let mut reasoner = Reasoner::new(circuit.clone(), situation.clone());
    let reasoned = reasoner.reasoned(&[]);
    let outlook = reasoned.outlook();
    let name = |(number, faults): (usize, &Vec<usize>)| {
        let faults: Vec<String> = faults
            .iter()
            .map(|f| reasoned.model.faults[*f].id.to_string())
            .collect();
        format!("{}@{number}", faults.join("+"))
    };
    let names = outlook.states.iter().enumerate().map(name);
    let tests = outlook.specs.iter().zip(&outlook.problem().tests);
    let states = &outlook.problem().states;
    let followed: f64 = states.iter().map(|s| s.p).sum();
    Network {
        causes: names.zip(states.iter().map(|s| s.p / followed)).collect(),
        tests: tests
            .map(|(spec, trial)| NetworkTest {
                test: spec.id.clone(),
                minutes: spec.minutes,
                outcomes: (1..=trial.chances.len())
                    .map(|n| format!("outcome-{n}"))
                    .collect(),
                chances: trial.chances.clone(),
            })
            .collect(),
    }
}

/// Chances that are multiplied at once.
const FEW: usize = 8;

impl Network {
    /// Probability of each cause after some outcomes, each given by the numbers of its test and of the outcome; by
    /// enumeration, in log space. An outcome that the network does not have says nothing.
    pub fn posterior(&self, outcomes: &[(usize, usize)]) -> Vec<f64> {
        let row = |(test, outcome): &(usize, usize)| self.tests.get(*test)?.chances.get(*outcome);
        let rows: Vec<&Vec<f64>> = outcomes.iter().filter_map(row).collect();
        // Chances of a few outcomes are multiplied before their ln is taken: no product of so few is too small for a number.
        let ln = |(cause, (_, p)): (usize, &(String, f64))| {
            let of_few = |few: &[&Vec<f64>]| few.iter().map(|row| row[cause]).product::<f64>().ln();
            p.ln() + rows.chunks(FEW).map(of_few).sum::<f64>()
        };
        normalised(&self.causes.iter().enumerate().map(ln).collect::<Vec<f64>>())
    }
}
