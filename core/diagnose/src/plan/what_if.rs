//! What each outcome of a test would do to the ranking.

use crate::finding::Reasoner;
use crate::inference::{Model, Observation, Seeable, Seen};
use crate::{Answer, Cause, FieldKey, Message, Reading, Situation, TestId, TestResult, Value, judge};

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

impl Reasoner {
    /// What a test could show and where each outcome would lead, the likeliest first; outcomes that are alike to a person
    /// are one. Empty for a test that is done and can show nothing new, or that can't be done.
    pub fn what_if(&mut self, readings: &[(Reading, TestResult)], test: &TestId) -> Vec<Branch> {
        let imagined = self.imagined(readings, test);
        let mut branches: Vec<Branch> = Vec::new();
        for (chance, reading) in imagined {
            let Some(branch) = self.branch(readings, reading, chance) else {
                continue;
            };
            let first = |branch: &Branch| branch.causes.first().map(|c| c.faults.clone());
            let alike = |b: &&mut Branch| {
                b.outcome.id == branch.outcome.id && b.decided == branch.decided && first(b) == first(&branch)
            };
            match branches.iter_mut().find(alike) {
                Some(known) => known.chance += branch.chance,
                None => branches.push(branch),
            }
        }
        branches.sort_by(|a, b| b.chance.total_cmp(&a.chance));
        branches
    }

    /// Readings that stand for the outcomes of a test, with their chances, the likeliest first.
    fn imagined(&mut self, readings: &[(Reading, TestResult)], test: &TestId) -> Vec<(f64, Reading)> {
        let reasoned = self.reasoned(readings);
        let outlook = reasoned.outlook();
        let Some(number) = outlook.specs.iter().position(|s| s.id == *test) else {
            return Vec::new();
        };
        let states = &outlook.problem().states;
        let followed: f64 = states.iter().map(|s| s.p).sum();
        let mut outcomes: Vec<(f64, Reading)> = outlook.problem().tests[number]
            .chances
            .iter()
            .map(|row| row.iter().zip(states).map(|(c, s)| c * s.p / followed).sum())
            .zip(&outlook.outcomes[number])
            .filter(|(chance, _): &(f64, _)| *chance >= SHOWN)
            .filter_map(|(chance, seen)| {
                Some((
                    chance,
                    as_reading(&reasoned.model, reasoned.model.situation, seen)?,
                ))
            })
            .collect();
        outcomes.sort_by(|a, b| b.0.total_cmp(&a.0));
        outcomes
    }

    fn branch(
        &mut self,
        readings: &[(Reading, TestResult)],
        reading: Reading,
        chance: f64,
    ) -> Option<Branch> {
        let earlier: Vec<Reading> = readings.iter().map(|(r, _)| r.clone()).collect();
        let (circuit, situation) = self.about();
        let result = judge(circuit, situation, &earlier, &reading);
        let outcome = result.says.first().cloned()?;
        let mut then = readings.to_vec();
        then.push((reading, result));
        let after = self.reasoned(&then);
        let decided = after.standing().decided;
        let mut causes = after.causes(decided);
        causes.truncate(NAMED);
        Some(Branch {
            outcome,
            chance,
            causes,
            decided,
        })
    }
}

/// An imagined observation as somebody would have put it in.
fn as_reading(model: &Model<'_>, situation: &Situation, observation: &Observation) -> Option<Reading> {
    let answer = match &observation.seen {
        Seen::Hold(hold) => Answer::Hold(hold.as_answer(situation.instruments.gauge.unit)?),
        Seen::Look(parts) => {
            let id = |number: usize| model.layout.circuit.components[number].id.clone();
            Answer::Look(parts.iter().map(|(n, state)| (id(*n), *state)).collect())
        }
        Seen::Fields(fields) => {
            let fields = fields
                .iter()
                .map(|(key, value)| (FieldKey::new(key.as_str()), as_value(key, *value)));
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
