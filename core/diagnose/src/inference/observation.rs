//! A reading in the form the likelihoods take: kPa, numbers by key, and only what can be compared.

use super::expect::Value;
use super::hold::{HoldScope, HoldSeen};
use super::model::Model;
use crate::codes;
use crate::{Answer, EngineState, LookState, Reading, TestId, TestKind, Value as Read};

/// One reading, or a reading that could be made.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Observation {
    pub test: TestId,
    pub engine: EngineState,
    pub hot: bool,
    pub connected: Option<bool>,
    pub seen: Seen,
    /// The person was asked about it and looked again.
    pub looked_again: bool,
    /// Vacuum that was read at the valve's inlet in this job, kPa, if it was any to speak of.
    pub seen_source: Option<f64>,
    pub(super) scope: Option<HoldScope>,
}

impl Observation {
    /// A number among the values seen.
    pub fn number(&self, key: &str) -> Option<f64> {
        let Seen::Fields(values) = &self.seen else {
            return None;
        };
        values.iter().find_map(|(k, v)| match v {
            Value::Number(x) if k == key => Some(*x),
            _ => None,
        })
    }
}

/// What was seen.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Seen {
    /// A vacuum hold.
    Hold(HoldSeen),
    /// Values by their keys.
    Fields(Vec<(String, Value)>),
    /// Components by their number; all others are ok.
    Look(Vec<(usize, LookState)>),
    /// What is complained of.
    Complaint,
}

/// A source is taken as read from this share of its usual vacuum on.
const SOURCE_SEEN: f64 = 0.3;
/// Keys of the marks given to the shake with vacuum on and off, on the scale for what is felt.
pub(super) const MARKS: [&str; 2] = ["on_0_3", "off_0_3"];
/// Key of whether anything changes with vacuum.
pub(super) const CHANGES: &str = "changes";
/// Least ratio of vibration levels that counts as a change. Source: from memory, under 1.2 times is no effect.
const LEVEL_RATIO: f64 = 1.2;

impl Model<'_> {
    /// What is complained of, as an observation; nothing where nobody said.
    pub(crate) fn complained(&self) -> Option<Observation> {
        let test = TestId::of(TestKind::Complaint);
        (!self.situation.complaint.is_empty()).then(|| self.imagine(&test, Seen::Complaint))
    }

    /// What all readings of a job say; those that were not done say nothing. Where the source was read, what arrives is
    /// compared with that.
    pub(crate) fn observe_all(&self, readings: &[&Reading]) -> Vec<Observation> {
        let mut seen: Vec<Observation> = readings.iter().filter_map(|r| self.observe(r)).collect();
        let source = seen.iter().rev().filter(|o| o.test.kind == TestKind::Source);
        let source = source
            .filter_map(|o| o.number("gauge"))
            .next()
            .filter(|kpa| *kpa > SOURCE_SEEN * self.source.0 && *kpa < self.ambient);
        for observation in &mut seen {
            if matches!(observation.test.kind, TestKind::Delivered | TestKind::SwitchOver) {
                observation.seen_source = source;
            }
        }
        seen.extend(self.complained());
        seen
    }

    /// What a reading says, or nothing where it was not done.
    pub(crate) fn observe(&self, reading: &Reading) -> Option<Observation> {
        let seen = match &reading.answer {
            Answer::Hold(hold) => Seen::Hold(HoldSeen::from_answer(
                hold,
                self.ambient,
                self.data.slips.unit.value,
            )?),
            Answer::Values(_) if matches!(reading.test.kind, TestKind::Shake) => {
                Seen::Fields(shaken(reading))
            }
            Answer::Values(values) => {
                let mut fields: Vec<(String, Value)> = values
                    .iter()
                    .filter_map(|(key, v)| Some((key.as_str().to_owned(), self.field(key.as_str(), v)?)))
                    .collect();
                if let Some(Read::Words(list)) = reading.value("list") {
                    let (misfires, others): (Vec<_>, Vec<_>) =
                        list.iter().partition(|code| codes::is_misfire(code));
                    fields.push(("list".into(), Value::Yes(!others.is_empty())));
                    fields.push(("misfire".into(), Value::Yes(!misfires.is_empty())));
                }
                // The one pin that was loaded is the power pin, whatever its number.
                if reading.test.kind == TestKind::SupplyLoaded && fields.iter().all(|(k, _)| k != "pin1") {
                    for (key, _) in fields.iter_mut().filter(|(k, _)| k == "pin2") {
                        *key = "pin1".into();
                    }
                }
                Seen::Fields(fields)
            }
            Answer::Look(parts) => Seen::Look(
                parts
                    .iter()
                    .filter(|(_, state)| **state != LookState::Ok)
                    .filter_map(|(id, state)| Some((self.layout.number(id)?, *state)))
                    .collect(),
            ),
            Answer::NotDone { .. } | Answer::NotAvailable => return None,
        };
        let observation = Observation {
            engine: reading
                .state
                .engine
                .unwrap_or_else(|| self.asked_engine(reading.test.kind)),
            hot: reading.state.hot.unwrap_or(false),
            connected: reading.state.connected,
            looked_again: false,
            scope: self.hold_scope(&reading.test),
            test: reading.test.clone(),
            seen_source: None,
            seen,
        };
        Some(if reading.confirmed {
            self.looked_again(observation)
        } else {
            observation
        })
    }

    /// What an observation says once it was looked at again.
    pub(crate) fn looked_again(&self, of: Observation) -> Observation {
        let seen = match of.seen {
            Seen::Hold(hold) => Seen::Hold(hold.looked_again(self.data.slips.kept.value)),
            seen => seen,
        };
        Observation {
            seen,
            looked_again: true,
            ..of
        }
    }

    /// A reading that could be made, in the state the test asks for.
    pub(crate) fn imagine(&self, test: &TestId, seen: Seen) -> Observation {
        Observation {
            engine: self.asked_engine(test.kind),
            hot: false,
            connected: None,
            looked_again: false,
            scope: self.hold_scope(test),
            test: test.clone(),
            seen_source: None,
            seen,
        }
    }

    fn field(&self, key: &str, value: &Read) -> Option<Value> {
        Some(match value {
            Read::Number(x) if key == "gauge" => Value::Number(x / 1_000.0),
            Read::Number(x) => Value::Number(*x),
            Read::Open => Value::Open,
            Read::YesNo(yes) => Value::Yes(*yes),
            Read::Words(_) | Read::Word(_) | Read::Samples { .. } => return None,
        })
    }
}

/// How strong the shake was felt with vacuum on and off, or whether the phone recorded a difference.
fn shaken(reading: &Reading) -> Vec<(String, Value)> {
    let mark = |key: &str| Some((key.to_owned(), Value::Number(reading.number(key)?)));
    let marks: Vec<_> = MARKS.into_iter().filter_map(mark).collect();
    if !marks.is_empty() {
        return marks;
    }
    recorded(reading).into_iter().collect()
}

fn recorded(reading: &Reading) -> Option<(String, Value)> {
    let level = |key: &str| match reading.value(key) {
        Some(Read::Samples { mg, .. }) if mg.len() > 1 => {
            let mean = mg.iter().sum::<f64>() / mg.len() as f64;
            Some((mg.iter().map(|x| (x - mean).powi(2)).sum::<f64>() / mg.len() as f64).sqrt())
        }
        _ => None,
    };
    let (on, off) = (level("on")?, level("off")?);
    Some((
        CHANGES.to_owned(),
        Value::Yes(on.max(off) >= LEVEL_RATIO * on.min(off)),
    ))
}
