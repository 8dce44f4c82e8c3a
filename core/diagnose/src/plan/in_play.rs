//! The causes that still count, and the ways each can be.

use std::borrow::Cow;

use crate::Complaint;
use crate::finding::{Reasoned, Remedy};
use crate::inference::{Case, Evaluated, Model, Way};

/// Causes that together are less likely than this are left out.
const LEFT_OUT: f64 = 0.004;
/// Causes that are looked at, at most.
const CAUSES: usize = 72;
/// Share of a complaint that must be due to a cause before it counts as explained.
const EXPLAINED: f64 = 0.5;

/// A cause in play, and the ways it can be.
pub(super) struct InPlay<'r> {
    pub cause: &'r Evaluated,
    /// The decisions that are right under it, by their numbers.
    pub right: Vec<usize>,
    pub ways: Vec<WayInPlay>,
}

/// One way, worked out once for all tests.
pub(super) struct WayInPlay {
    pub way: Way,
    pub at_rest: Case<'static>,
    pub at_work: Case<'static>,
    /// It explains what is complained of, or nothing needs to be explained.
    pub explains: bool,
}

/// The causes in play, the likeliest first.
pub(super) fn in_play<'r>(reasoned: &'r Reasoned<'_>) -> Vec<InPlay<'r>> {
    let (mut causes, mut covered) = (Vec::new(), 0.0);
    let mut decisions: Vec<Remedy> = Vec::new();
    for cause in reasoned.posterior.causes.iter().filter(|c| !c.ways.is_empty()) {
        if covered > 1.0 - LEFT_OUT || causes.len() >= CAUSES {
            break;
        }
        covered += cause.p;
        let remedies = reasoned.remedies_of(cause);
        let nothing = remedies.contains(&Remedy::Nothing);
        let right = remedies
            .into_iter()
            .filter(|r| *r != Remedy::Tester)
            .map(|remedy| {
                decisions.iter().position(|d| *d == remedy).unwrap_or_else(|| {
                    decisions.push(remedy);
                    decisions.len() - 1
                })
            })
            .collect();
        causes.push(InPlay {
            cause,
            right,
            ways: ways(&reasoned.model, cause, nothing),
        });
    }
    causes
}

/// The ways of a cause, those that are the same put together.
fn ways(model: &Model<'_>, cause: &Evaluated, explains: bool) -> Vec<WayInPlay> {
    let mut ways: Vec<WayInPlay> = Vec::new();
    let complained = model.situation.complaint.iter().any(|c| *c != Complaint::None);
    for way in &cause.ways {
        let same = |w: &&mut WayInPlay| {
            w.way.at_rest == way.at_rest && w.way.at_work == way.at_work && w.way.setting == way.setting
        };
        if let Some(same) = ways.iter_mut().find(same) {
            same.way.weight += way.weight;
            continue;
        }
        let at_work = Case::of(Cow::Owned(cause.world(model, way.at_work)), way.setting);
        ways.push(WayInPlay {
            way: *way,
            at_rest: Case::of(Cow::Owned(cause.world(model, way.at_rest)), way.setting),
            explains: explains || !complained || {
                let told = model.told(&cause.faults);
                model.explained(at_work.behaviour(model), &told, way.setting.softens) >= EXPLAINED
            },
            at_work,
        });
    }
    ways
}
