//! Which test next: the textbook's order, or the one with which the finding is nearest; and when to stop.
//!
//! `problem.rs` is the choice as numbers alone, `search.rs` solves it, `outlook.rs` makes it from what follows from the
//! readings, with the outcomes that `outcomes.rs` imagines and `chances.rs` weighs.

mod belief;
mod chances;
mod choice;
mod in_play;
mod kinds;
mod network;
mod order;
mod outcomes;
mod outlook;
mod problem;
mod search;
mod table;
mod what_if;

pub use network::{Network, NetworkTest, discretised};
pub(crate) use order::data as plan_data;
pub(crate) use outlook::Outlook;
pub use problem::{Problem, Ready, State, Trial};
pub use search::{Choice, plan_small};
pub use what_if::Branch;

use crate::finding::{Finding, Reasoned, Reasoner, Remedy, Standing};
use crate::{Arg, Message, Reading, TestId, TestResult};

/// How the next test is chosen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Policy {
    /// The test after which the finding is expected in the fewest minutes.
    #[default]
    Guided,
    /// The textbook's order, nothing skipped, with the same stop rule.
    Fixed,
    /// The textbook's order without the tests that can no longer change what to do, with the same stop rule.
    FixedSkipping,
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
        /// Minutes to the finding that are expected, this test included; `None` in the textbook's order.
        to_finding: Option<f64>,
    },
    /// Look again at what was read in this test before anything is built on it: confirm it or put it right.
    LookAgain {
        /// Which.
        id: TestId,
        /// Why.
        why: Message,
        /// Minutes it takes.
        minutes: f64,
    },
    /// Stop here.
    Stop {
        /// Why.
        why: Message,
    },
}

impl Reasoner {
    /// The next test, or the end.
    ///
    /// A test that was skipped or can't be answered is not asked for again; one that was done only where doing it once more can
    /// tell more, or proves a tester that was put right; one whose tool is missing never is.
    pub fn next(&mut self, readings: &[(Reading, TestResult)], policy: Policy) -> Next {
        self.reasoned(readings).next(policy)
    }

    /// The finding and what to do next, in one go.
    pub fn conclude(&mut self, readings: &[(Reading, TestResult)], policy: Policy) -> (Finding, Next) {
        let reasoned = self.reasoned(readings);
        (reasoned.explained(readings), reasoned.next(policy))
    }
}

impl Reasoned<'_> {
    fn next(&self, policy: Policy) -> Next {
        let standing = self.standing();
        if let Some(doubt) = &standing.doubt {
            return Next::LookAgain {
                id: doubt.test.clone(),
                why: Message::new(if doubt.leans { "why-leans" } else { "why-odd" })
                    .with("test", Arg::Test(doubt.test.clone()))
                    .with("minutes", Arg::Minutes(doubt.minutes))
                    .with("chance", Arg::Percent(doubt.slip)),
                minutes: doubt.minutes,
            };
        }
        let in_order = policy != Policy::Guided;
        let choice = match policy {
            _ if standing.decided || standing.exhausted => None,
            _ if standing.to_mend.is_some() => self.mended(),
            _ if in_order && !self.outlook().can_change(|test| !self.is_asked(test)) => None,
            Policy::Fixed => self.textbook(false),
            Policy::FixedSkipping => self.textbook(true),
            Policy::Guided => self.best(),
        };
        match choice {
            Some(choice) => Next::Test {
                id: choice.id,
                why: choice.why,
                minutes: choice.minutes,
                to_finding: choice.to_finding,
            },
            None => Next::Stop { why: stop(standing) },
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
mod small_problems;
#[cfg(test)]
mod tests;
