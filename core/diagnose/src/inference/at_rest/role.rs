//! How faults show in the holds of a job.

use super::one_hold::{Hold, Shape};
use crate::faults::{Effect, Hides, Rates, Stuck};
use crate::inference::causes::{Fault, Size};
use crate::inference::model::Model;
use crate::inference::sizes::LeakSizes;

/// Some of a job's holds, by their numbers. Nobody holds vacuum in more than [`HoldSet::MOST`] places.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub(super) struct HoldSet(u128);

impl HoldSet {
    /// Holds that can be told apart.
    pub const MOST: usize = u128::BITS as usize;

    pub fn contains(self, hold: usize) -> bool {
        hold < Self::MOST && self.0 >> hold & 1 == 1
    }
}

/// The holds of which it is said.
impl FromIterator<bool> for HoldSet {
    fn from_iter<I: IntoIterator<Item = bool>>(holds: I) -> Self {
        let holds = holds.into_iter().take(Self::MOST).enumerate();
        Self(holds.fold(0, |set, (hold, is)| set | u128::from(is) << hold))
    }
}

/// How a fault shows in the holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub(super) enum Role {
    /// There is no such fault, or it has nothing to do with holds and leaks.
    None,
    /// A leak.
    Leak {
        /// Its spread, by number.
        spread: usize,
        /// Which holds see it.
        sees: HoldSet,
        /// Which holds may not see it although it is there, and why.
        at_times: HoldSet,
        hides: Option<Hides>,
        /// It also leaks at work.
        at_work: bool,
    },
    /// It changes which parts the pump reaches, by the fault's number.
    Shape(usize),
    /// It moves the needle without a leak, by the fault's number.
    Needle(usize),
}

impl Role {
    /// Whether a hold sees it as a leak.
    pub fn seen_by(&self, hold: usize) -> bool {
        matches!(self, Self::Leak { sees, .. } if sees.contains(hold))
    }

    /// How often a hold sees it that sees it at all.
    pub fn often(&self, rates: &Rates, hold: usize) -> f64 {
        match self {
            Self::Leak { at_times, hides, .. } if at_times.contains(hold) => rates.leaks_although(*hides),
            _ => 1.0,
        }
    }
}

/// What a fault could be in the holds, whatever the pump reaches.
#[derive(Debug, Clone, Copy)]
pub(super) enum Part {
    Nothing,
    Shape(usize),
    Needle(usize),
    Leak {
        spread: usize,
        /// The component that leaks where it shows in a hold at all.
        at: Option<usize>,
        /// It is in the tester, which every hold has.
        in_tester: bool,
        at_times: HoldSet,
        hides: Option<Hides>,
        at_work: bool,
    },
}

impl Part {
    /// Of a fault, by its number.
    pub fn of(model: &Model<'_>, holds: &[&Hold], leaks: &LeakSizes, number: usize) -> Self {
        let fault = &model.faults[number];
        if shapes_holds(fault, holds) {
            return Self::Shape(number);
        }
        match fault.size() {
            Size::Needle(_) if !holds.is_empty() => Self::Needle(number),
            Size::Leak(spread) => {
                let shows = fault.effects.iter().any(Effect::shows_in_hold);
                let hides = |hold: &Hold| fault.hides(hold.scope().is_one());
                Self::Leak {
                    spread: leaks.spreads.iter().position(|s| *s == spread).unwrap_or(0),
                    at: fault.part.filter(|_| shows),
                    in_tester: fault.part == model.layout.tester,
                    at_times: holds.iter().map(|h| hides(h).is_some()).collect(),
                    hides: holds.iter().find_map(|h| hides(h)),
                    at_work: fault.has_size_at_work(),
                }
            }
            _ => Self::Nothing,
        }
    }

    /// Whether it changes which parts the pump reaches.
    pub fn shapes(self) -> bool {
        matches!(self, Self::Shape(_))
    }

    /// The role where each hold's pump sees this.
    pub fn role<'s>(self, seen: impl Iterator<Item = &'s Shape>) -> Role {
        match self {
            Self::Nothing => Role::None,
            Self::Shape(fault) => Role::Shape(fault),
            Self::Needle(fault) => Role::Needle(fault),
            Self::Leak {
                spread,
                at,
                in_tester,
                at_times,
                hides,
                at_work,
            } => {
                let sees =
                    |shape: &Shape| at.is_some_and(|at| in_tester || shape.reached.get(at) == Some(&true));
                let sees: HoldSet = seen.map(sees).collect();
                if !at_work && sees == HoldSet::default() {
                    return Role::None;
                }
                Role::Leak {
                    spread,
                    sees,
                    at_times,
                    hides,
                    at_work,
                }
            }
        }
    }
}

/// Whether a fault changes which parts the pump reaches, or lets in air that has no size of its own.
fn shapes_holds(fault: &Fault, holds: &[&Hold]) -> bool {
    let shapes = |e: &Effect| {
        matches!(
            e,
            Effect::Blocks | Effect::Stuck(Stuck::Open) | Effect::VentBlocked
        )
    };
    fault.effects.iter().any(shapes)
        && fault
            .part
            .is_some_and(|part| holds.iter().any(|h| h.scope().contains(part)))
}
