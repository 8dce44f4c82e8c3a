//! What each outcome of a test would do to the ranking.

use std::collections::BTreeMap;

use crate::finding::Reasoned;
use crate::inference::{Model, Observation, Seeable, Seen};
use crate::{
    Answer, Cause, Circuit, FieldKey, Message, Reading, Situation, TestId, TestKind, TestResult, Value, judge,
};

/// One outcome of a test, and where it would lead.
#[derive(Debug, Clone, PartialEq)]
pub struct Branch {
    /// What would be seen, in the words of a result.
    pub outcome: Message,
    /// The chance of it, 0–1.
    pub chance: f64,
    /// The likeliest causes then, the first first.
    pub causes: Vec<Cause>,
    /// That would be enough for a finding.
    pub decided: bool,
}

/// Causes that are named.
const NAMED: usize = 4;
/// A rarer outcome is not shown.
const SHOWN: f64 = 0.005;

/// What a test could show and where each outcome would lead, the likeliest first; outcomes that are alike to a person are
/// one. Empty for a test that is done, can't be done, or can show nothing new.
pub fn what_if(
    circuit: &Circuit,
    situation: &Situation,
    readings: &[(Reading, TestResult)],
    test: &TestId,
) -> Vec<Branch> {
    let reasoned = Reasoned::new(circuit, situation, readings);
    let outlook = reasoned.outlook();
    let Some(number) = outlook.specs.iter().position(|s| s.id == *test) else {
        return Vec::new();
    };
    let states = &outlook.problem.states;
    let earlier: Vec<Reading> = readings.iter().map(|(r, _)| r.clone()).collect();
    let mut branches: Vec<Branch> = Vec::new();
    let mut outcomes: Vec<(f64, &Observation)> = outlook.problem.tests[number]
        .chances
        .iter()
        .map(|row| row.iter().zip(states).map(|(c, s)| c * s.p).sum())
        .zip(&outlook.outcomes[number])
        .filter(|(chance, _)| *chance >= SHOWN)
        .collect();
    outcomes.sort_by(|a, b| b.0.total_cmp(&a.0));
    for (chance, observation) in outcomes {
        let Some(reading) = as_reading(&reasoned.model, situation, observation) else {
            continue;
        };
        let result = judge(circuit, situation, &earlier, &reading);
        let Some(outcome) = result.says.first().cloned() else {
            continue;
        };
        let mut then = readings.to_vec();
        then.push((reading, result));
        let after = Reasoned::new(circuit, situation, &then);
        let decided = after.standing().decided;
        let mut causes = after.causes(decided);
        causes.truncate(NAMED);
        let alike = |b: &&mut Branch| {
            let first = |causes: &[Cause]| causes.first().map(|c| c.faults.clone());
            b.outcome.id == outcome.id && b.decided == decided && first(&b.causes) == first(&causes)
        };
        match branches.iter_mut().find(alike) {
            Some(branch) => branch.chance += chance,
            None => branches.push(Branch {
                outcome,
                chance,
                causes,
                decided,
            }),
        }
    }
    branches.sort_by(|a, b| b.chance.total_cmp(&a.chance));
    branches
}

/// An imagined observation as somebody would have put it in.
fn as_reading(model: &Model<'_>, situation: &Situation, observation: &Observation) -> Option<Reading> {
    let answer = match &observation.seen {
        Seen::Hold(hold) => Answer::Hold(hold.as_answer(situation.instruments.gauge.unit)?),
        Seen::Look(parts) => {
            let id = |number: usize| model.layout.circuit.components[number].id.clone();
            Answer::Look(parts.iter().map(|(n, state)| (id(*n), *state)).collect())
        }
        Seen::Fields(fields) if observation.test.kind == TestKind::Shake => {
            let changes = fields.iter().any(|(_, value)| *value == Seeable::Yes(true));
            let scale = |key: &str, felt: f64| (FieldKey::from(key), Value::Number(felt));
            Answer::Values(BTreeMap::from([
                scale("on_0_3", if changes { 1.0 } else { 3.0 }),
                scale("off_0_3", 3.0),
            ]))
        }
        Seen::Fields(fields) => {
            let fields = fields
                .iter()
                .map(|(key, value)| (FieldKey::new(key), as_value(key, *value)));
            Answer::Values(fields.collect())
        }
        Seen::Complaint => return None,
    };
    Some(Reading::new(observation.test.clone(), answer))
}

fn as_value(key: &str, value: Seeable) -> Value {
    match value {
        Seeable::Number(kpa) if key == "gauge" => Value::Number(1_000.0 * kpa.max(0.0)),
        Seeable::Number(x) => Value::Number(x),
        Seeable::Open => Value::Open,
        Seeable::Yes(yes) if key == "list" => Value::Words(if yes { vec!["…".into()] } else { Vec::new() }),
        Seeable::Yes(yes) => Value::YesNo(yes),
    }
}
