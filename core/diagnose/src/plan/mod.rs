//! Which test next: the textbook's order, or the one that settles most a minute; and when to stop.

mod candidates;
mod order;
mod worth;

pub(crate) use candidates::Candidates;

use crate::finding::{Finding, Reasoned, Remedy, Standing};
use crate::{Arg, Circuit, Message, Reading, Situation, TestId, TestResult};

/// How the next test is chosen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Policy {
    /// The test that is expected to settle most a minute.
    #[default]
    Guided,
    /// The textbook's order, nothing skipped, with the same stop rule.
    Fixed,
}

/// What to do next.
#[derive(Debug, Clone, PartialEq)]
pub enum Next {
    /// Do this test.
    Test {
        /// Which.
        id: TestId,
        /// Why now.
        why: Message,
        /// Minutes it takes, changes of engine and connector included.
        minutes: f64,
    },
    /// Stop here.
    Stop {
        /// Why.
        why: Message,
    },
}

/// The next test, or the end.
///
/// A test that was done, skipped or can't be answered is not asked for again; one whose tool is missing never is.
pub fn next(
    circuit: &Circuit,
    situation: &Situation,
    readings: &[(Reading, TestResult)],
    policy: Policy,
) -> Next {
    Reasoned::new(circuit, situation, readings, false).next(policy)
}

/// The finding and what to do next, in one go: the same as [`crate::finding`] and [`next`] at less cost.
pub fn conclude(
    circuit: &Circuit,
    situation: &Situation,
    readings: &[(Reading, TestResult)],
    policy: Policy,
) -> (Finding, Next) {
    let reasoned = Reasoned::new(circuit, situation, readings, true);
    (reasoned.finding(readings), reasoned.next(policy))
}

impl Reasoned<'_> {
    fn next(&self, policy: Policy) -> Next {
        let standing = self.standing();
        let candidates = Candidates::new(self);
        let choice = match policy {
            _ if standing.decided => None,
            Policy::Fixed => candidates.textbook(),
            Policy::Guided => candidates.best(),
        };
        match choice {
            Some(choice) => Next::Test {
                id: choice.id,
                why: choice.why,
                minutes: choice.minutes,
            },
            None => Next::Stop { why: stop(&standing) },
        }
    }
}

fn stop(standing: &Standing) -> Message {
    let sure = Arg::Percent(standing.sure);
    let id = match (&standing.remedy, standing.decided) {
        (Remedy::Nothing, true) if standing.outside => "stop-outside",
        (Remedy::Nothing, true) => "stop-sound",
        (Remedy::Parts(_), true) if standing.explains == Some(false) => "stop-found-unexplained",
        (Remedy::Parts(_), true) => "stop-found",
        (Remedy::Tester, _) => "stop-tester",
        (_, false) if standing.inseparable.is_empty() => "stop-nothing-left",
        (_, false) => "stop-inseparable",
    };
    let message = Message::new(id).with("sure", sure);
    let named = if standing.decided {
        &standing.parts
    } else {
        &standing.inseparable
    };
    match named.as_slice() {
        [] => message,
        [part] => message.with("part", Arg::Part(part.clone())),
        [part, second, ..] => message
            .with("part", Arg::Part(part.clone()))
            .with("second", Arg::Part(second.clone()))
            .with(
                "count",
                Arg::Count(i64::try_from(named.len()).unwrap_or(i64::MAX)),
            ),
    }
}

#[cfg(test)]
mod tests;
