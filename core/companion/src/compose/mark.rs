//! States as shape, colour role and word.

use holdfast_diagnose::Outcome;
use holdfast_report::State;

use crate::protocol::{Mark, MarkShape};
use crate::text::{Texts, capital};

/// The state that stands for a result on a drawing.
#[must_use]
pub(crate) fn state_of(outcome: Outcome) -> State {
    match outcome {
        Outcome::Holds | Outcome::AsExpected => State::Holds,
        Outcome::SlowLeak => State::SlowLeak,
        Outcome::Leaks | Outcome::NotAsExpected => State::Leaks,
        Outcome::WillNotBuild => State::WontBuild,
        Outcome::Undecided => State::Undecided,
        Outcome::NotDone => State::CantDo,
    }
}

/// A result as a mark with its own word.
#[must_use]
pub(crate) fn mark_of(texts: &Texts, outcome: Outcome) -> Mark {
    mark(state_of(outcome), outcome_words(texts, outcome))
}

/// A result as it stands on a line: a meter reading is "as expected", a hold "holds".
#[must_use]
pub(super) fn outcome_words(texts: &Texts, outcome: Outcome) -> String {
    texts.say(match outcome {
        Outcome::Holds => "state-holds",
        Outcome::SlowLeak => "state-slow-leak",
        Outcome::Leaks => "state-leaks",
        Outcome::WillNotBuild => "state-will-not-build",
        Outcome::Undecided => "state-undecided",
        Outcome::AsExpected => "state-as-expected",
        Outcome::NotAsExpected => "state-not-as-expected",
        Outcome::NotDone => "state-cant-do",
    })
}

/// The mark of a test that has not been done.
#[must_use]
pub(crate) fn not_done(texts: &Texts) -> Mark {
    mark(State::NotDone, texts.say("state-not-done"))
}

/// The mark of a test that can't be done here and now.
#[must_use]
pub(crate) fn cannot_do(texts: &Texts) -> Mark {
    mark(State::CantDo, texts.say("state-cant-do"))
}

/// A mark with a word of its own.
#[must_use]
pub(crate) fn mark(state: State, word: impl AsRef<str>) -> Mark {
    let shape = match state {
        State::Holds => MarkShape::Disc,
        State::SlowLeak => MarkShape::HalfDisc,
        State::Leaks => MarkShape::Wedge,
        State::Undecided => MarkShape::Ring,
        State::WontBuild => MarkShape::BarredRing,
        State::NotDone => MarkShape::DottedRing,
        State::CantDo => MarkShape::GapRing,
    };
    Mark {
        shape,
        role: state.role(),
        word: capital(word.as_ref()),
    }
}
