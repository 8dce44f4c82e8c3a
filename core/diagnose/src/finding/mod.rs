//! What all readings say together: the ranked causes, whether that is enough, what to replace and what speaks for it.

mod cause;
mod counted;
mod doubt;
mod evidence;
mod remedy;
mod repair;
mod stop;

use std::cell::OnceCell;
use std::sync::Arc;

use serde::Serialize;

pub use cause::Cause;
use counted::Counted;
pub(crate) use doubt::Doubt;
pub(crate) use remedy::Remedy;
pub use repair::{fix_for, retest_for};
pub(crate) use stop::{SURELY_EXPLAINED, Standing};

use crate::inference::{Memory, Model, Observation, Posterior, rank};
use crate::plan::Outlook;
use crate::{Circuit, ComponentId, FaultId, Message, Reading, Situation, TestId, TestKind, TestResult};

/// What all readings say together. Serialized as the player's result shows it.
#[derive(Debug, Clone, PartialEq, Default, Serialize)]
pub struct Finding {
    /// Every cause with its probability, the likeliest first; they sum to 1.
    pub causes: Vec<Cause>,
    /// The stop rule is met: the first cause is sure enough, and explains the complaint, or no
    /// test that is left is worth its minutes; and no reading is to be looked at again first.
    pub decided: bool,
    /// What has to be put right, when that is decided; empty for a sound circuit or a cause outside it.
    pub parts: Vec<ComponentId>,
    /// Whether the first cause explains what is complained of; `None` where nothing is.
    pub explains_complaint: Option<bool>,
    /// Faults that the readings have not ruled out, the likeliest first.
    pub left_open: Vec<FaultId>,
    /// What speaks for the first cause, the weightiest first.
    #[serde(skip)]
    pub speaks_for: Vec<Message>,
    /// What speaks against it, the weightiest first.
    #[serde(skip)]
    pub speaks_against: Vec<Message>,
    /// Parts that no test that is left can tell apart; empty where that is not the case.
    #[serde(skip)]
    pub inseparable: Vec<ComponentId>,
    /// The likeliest thing to put right is the tester itself: nothing is proved of the car.
    #[serde(skip)]
    pub in_tester: bool,
}

/// Everything that follows from one set of readings.
pub(crate) struct Reasoned<'a> {
    pub model: Model<'a>,
    /// The tests that were asked for and count, in their order, and whether each was answered.
    tests: Vec<(TestId, bool)>,
    /// Faults of a tester that was found bad and can be put right, with the test that proves it.
    to_mend: Vec<(usize, TestId)>,
    pub observations: Vec<Observation>,
    pub posterior: Arc<Posterior>,
    pub outlook: OnceCell<Outlook>,
    standing: OnceCell<Standing>,
    remedies: OnceCell<Vec<(Remedy, f64)>>,
    /// What was worked out on the way.
    memory: &'a Memory,
}

impl<'a> Reasoned<'a> {
    /// Draws the conclusions.
    pub fn new(
        circuit: &'a Circuit,
        situation: &'a Situation,
        readings: &[(Reading, TestResult)],
        memory: &'a mut Memory,
    ) -> Self {
        let model = Model::new(circuit, situation);
        let counted = Counted::of(&model, readings);
        let taken: Vec<&Reading> = counted.readings.iter().map(|(r, _)| r).collect();
        let observations = model.observe_all(&taken);
        let posterior = rank(&model, memory, &observations);
        let again: Vec<Observation> = observations
            .iter()
            .map(|o| model.looked_again(o.clone()))
            .collect();
        memory.learn(&model, &again);
        let tests = taken.iter().map(|r| (r.test.clone(), r.is_answered()));
        Self {
            tests: tests.collect(),
            to_mend: counted.to_mend,
            model,
            observations,
            posterior,
            outlook: OnceCell::new(),
            standing: OnceCell::new(),
            remedies: OnceCell::new(),
            memory,
        }
    }
}

impl Reasoned<'_> {
    /// Whether a test was asked for.
    pub(crate) fn is_asked(&self, test: &TestId) -> bool {
        self.tests.iter().any(|(t, _)| t == test)
    }

    /// Whether a test was not asked for yet, or can show more when it is done once more: a hold, set up anew.
    pub(crate) fn can_be_next(&self, test: &TestId) -> bool {
        let mut times = self
            .tests
            .iter()
            .filter(|(t, _)| t == test)
            .map(|(_, answered)| *answered);
        let Some(last) = times.next_back() else {
            return true;
        };
        last && test.kind == TestKind::Hold && !times.any(|answered| answered)
    }
}

/// The reasoning about one circuit in one situation. It keeps what it worked out from reading to reading, so that one more
/// reading costs little.
pub struct Reasoner {
    circuit: Circuit,
    situation: Situation,
    memory: Memory,
}

impl Reasoner {
    /// For a circuit in a situation.
    pub fn new(circuit: Circuit, situation: Situation) -> Self {
        Self {
            circuit,
            situation,
            memory: Memory::default(),
        }
    }

    /// Whether it is about this circuit in this situation.
    pub fn is_about(&self, circuit: &Circuit, situation: &Situation) -> bool {
        self.circuit == *circuit && self.situation == *situation
    }

    /// What all readings say together.
    ///
    /// The order of the readings matters only where a test was done again. Readings with `after_repair` are left out.
    pub fn finding(&mut self, readings: &[(Reading, TestResult)]) -> Finding {
        let reasoned = self.reasoned(readings);
        reasoned.explained(readings)
    }

    /// The same without what speaks for and against the first cause, which takes longest to work out.
    pub fn outline(&mut self, readings: &[(Reading, TestResult)]) -> Finding {
        self.reasoned(readings).outline()
    }

    /// What follows from the readings.
    pub(crate) fn reasoned(&mut self, readings: &[(Reading, TestResult)]) -> Reasoned<'_> {
        Reasoned::new(&self.circuit, &self.situation, readings, &mut self.memory)
    }

    /// The same, of the circuit it is about.
    pub(crate) fn about(&self) -> (&Circuit, &Situation) {
        (&self.circuit, &self.situation)
    }
}

/// What all readings say together, without keeping what was worked out: [`Reasoner::finding`].
pub fn finding(circuit: &Circuit, situation: &Situation, readings: &[(Reading, TestResult)]) -> Finding {
    Reasoner::new(circuit.clone(), situation.clone()).finding(readings)
}

/// From this probability on it is said what speaks for what is to be done.
const WORTH_EXPLAINING: f64 = 0.5;

impl Reasoned<'_> {
    /// What all readings say together.
    pub(crate) fn explained(&self, readings: &[(Reading, TestResult)]) -> Finding {
        let (speaks_for, speaks_against) = if self.standing().sure >= WORTH_EXPLAINING {
            self.evidence(&Counted::of(&self.model, readings).readings)
        } else {
            (Vec::new(), Vec::new())
        };
        Finding {
            speaks_for,
            speaks_against,
            ..self.outline()
        }
    }

    /// The same without what speaks for and against the first cause.
    pub(crate) fn outline(&self) -> Finding {
        let standing = self.standing();
        Finding {
            decided: standing.decided,
            parts: if standing.decided {
                standing.parts.clone()
            } else {
                Vec::new()
            },
            explains_complaint: standing.explains,
            left_open: self.left_open(),
            inseparable: standing.inseparable.clone(),
            in_tester: standing.remedy == Remedy::Tester,
            causes: self.causes(standing.decided),
            speaks_for: Vec::new(),
            speaks_against: Vec::new(),
        }
    }
}

#[cfg(test)]
mod counted_tests;
#[cfg(test)]
mod doubt_tests;
#[cfg(test)]
pub(crate) mod tests;
