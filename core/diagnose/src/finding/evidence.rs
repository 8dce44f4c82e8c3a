//! What speaks for and against the first cause, by weight of evidence.

use super::Reasoned;
use crate::inference::{Evaluated, Observation, Seen, weigh};
use crate::{Arg, Message, Reading, TestResult};

/// Less than this factor is not worth a sentence.
const WORTH_SAYING: f64 = 1.5;
/// Odds don't go beyond this.
const SURE: f64 = 1e-9;
/// Sentences each way.
const SENTENCES: usize = 3;

impl Reasoned<'_> {
    /// The weightiest readings for and against what the first cause asks one to do.
    ///
    /// The weight of a test's readings is the factor by which they change the odds of that, all others given (I. J. Good's
    /// weight of evidence, from memory).
    pub(super) fn evidence(&self, counted: &[&(Reading, TestResult)]) -> (Vec<Message>, Vec<Message>) {
        let Some((remedy, _)) = self.remedies().first() else {
            return (Vec::new(), Vec::new());
        };
        let odds = |causes: &[Evaluated]| {
            let ours: f64 = causes
                .iter()
                .filter(|c| self.remedies_of(c).contains(remedy))
                .map(|c| c.p)
                .sum();
            ours.clamp(SURE, 1.0 - SURE).ln() - (1.0 - ours).clamp(SURE, 1.0 - SURE).ln()
        };
        let now = odds(&self.posterior.causes);
        let mut weighed: Vec<(f64, Message)> = Vec::new();
        for (at, (reading, result)) in counted.iter().enumerate() {
            let test = &reading.test;
            let of_test = |o: &Observation| o.seen != Seen::Complaint && o.test == *test;
            let later = || counted[at + 1..].iter().map(|(r, _)| r);
            let is_last = !later().any(|r| r.test == *test && r.is_answered());
            if !reading.is_answered() || !is_last || !self.observations.iter().any(of_test) {
                continue;
            }
            let others = self.observations.iter().filter(|o| !of_test(o));
            let others: Vec<Observation> = others.cloned().collect();
            let weight = now - odds(&weigh(&self.model, self.memory, &others, &self.posterior).causes);
            if !weight.is_finite() || weight.abs() < WORTH_SAYING.ln() {
                continue;
            }
            let id = if weight > 0.0 {
                "evidence-for"
            } else {
                "evidence-against"
            };
            let message = Message::new(id)
                .with("test", Arg::Test(test.clone()))
                .with(
                    "outcome",
                    Arg::Text(crate::MessageId::new(format!(
                        "outcome-{}",
                        result.outcome.as_str().replace('_', "-")
                    ))),
                )
                .with("times", Arg::Times(weight.abs().exp()));
            weighed.push((weight, message));
        }
        weighed.sort_by(|a, b| b.0.abs().total_cmp(&a.0.abs()));
        let side = |positive: bool| {
            weighed
                .iter()
                .filter(|(w, _)| (*w > 0.0) == positive)
                .take(SENTENCES)
                .map(|(_, m)| m.clone())
                .collect()
        };
        (side(true), side(false))
    }
}
