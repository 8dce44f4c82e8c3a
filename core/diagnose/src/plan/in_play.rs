//! The causes that still count, and the ways each can be.

use std::borrow::Cow;
use std::cell::OnceCell;

use crate::Complaint;
use crate::finding::{Reasoned, Remedy};
use crate::inference::{Case, Evaluated, Model, Way, World};

/// Causes that together are less likely than this are left out.
const LEFT_OUT: f64 = 0.004;
/// Causes that are looked at, at most.
const CAUSES: usize = 72;
/// Share of a complaint that must be due to a cause before it counts as explained.
const EXPLAINED: f64 = 0.5;

/// The causes in play, the likeliest first, and their ways, cause by cause.
pub(super) struct InPlay<'r> {
    pub causes: Vec<CauseInPlay<'r>>,
    pub ways: Vec<WayInPlay>,
}

/// A cause in play.
pub(super) struct CauseInPlay<'r> {
    pub cause: &'r Evaluated,
    /// The decisions that are right under it, by their numbers.
    pub right: Vec<usize>,
}

/// One way, worked out once for all tests.
pub(super) struct WayInPlay {
    /// The cause's place among those in play.
    pub cause: usize,
    /// Its probability.
    pub p: f64,
    pub way: Way,
    pub at_work: Case<'static>,
    /// It explains what is complained of, or nothing needs to be explained.
    pub explains: bool,
    at_rest: OnceCell<World>,
}

impl InPlay<'_> {
    /// The world as a test at rest finds it in a way.
    pub fn at_rest<'w>(&self, model: &Model<'_>, way: &'w WayInPlay) -> &'w World {
        way.at_rest
            .get_or_init(|| self.causes[way.cause].cause.world(model, way.way.at_rest))
    }
}

/// The causes in play.
pub(super) fn in_play<'r>(reasoned: &'r Reasoned<'_>) -> InPlay<'r> {
    let mut in_play = InPlay {
        causes: Vec::new(),
        ways: Vec::new(),
    };
    let mut covered = 0.0;
    let mut decisions: Vec<Remedy> = Vec::new();
    for cause in reasoned.posterior.causes.iter().filter(|c| !c.ways.is_empty()) {
        if covered > 1.0 - LEFT_OUT || in_play.causes.len() >= CAUSES {
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
        let ways = ways(&reasoned.model, cause, in_play.causes.len(), nothing);
        in_play.causes.push(CauseInPlay { cause, right });
        in_play.ways.extend(ways);
    }
    add_left_out(reasoned, &mut in_play, &decisions, covered);
    in_play
}

/// Gives the causes that are left out to those in play that ask for the same, by their shares: tests show much the same in them.
/// What is left out and asks for nothing that is in play counts against every decision.
fn add_left_out(reasoned: &Reasoned<'_>, in_play: &mut InPlay<'_>, decisions: &[Remedy], covered: f64) {
    let counted = |decision: usize| -> f64 {
        let asking = in_play.causes.iter().filter(|c| c.right.contains(&decision));
        asking.map(|c| c.cause.p).sum()
    };
    let left_out = |(decision, remedy): (usize, &Remedy)| {
        let all = reasoned.remedies().iter().find(|(r, _)| r == remedy);
        let counted = counted(decision);
        (all.map_or(0.0, |(_, p)| (p - counted).max(0.0)), counted)
    };
    let left_out: Vec<(f64, f64)> = decisions.iter().enumerate().map(left_out).collect();
    // A pair that is left out is there for each of its two.
    let twice: f64 = left_out.iter().map(|(p, _)| p).sum();
    let share = ((1.0 - covered).max(0.0) / twice.max(f64::MIN_POSITIVE)).min(1.0);
    for way in &mut in_play.ways {
        let more = |decision: &usize| {
            let (p, counted) = left_out[*decision];
            share * p / counted.max(f64::MIN_POSITIVE)
        };
        way.p *= 1.0 + in_play.causes[way.cause].right.iter().map(more).sum::<f64>();
    }
}

/// The ways of a cause, those that are the same put together; `number` is the cause's place.
fn ways(model: &Model<'_>, cause: &Evaluated, number: usize, explains: bool) -> Vec<WayInPlay> {
    let mut distinct: Vec<Way> = Vec::with_capacity(cause.ways.len());
    for way in &cause.ways {
        let same =
            |w: &&mut Way| w.at_rest == way.at_rest && w.at_work == way.at_work && w.setting == way.setting;
        match distinct.iter_mut().find(same) {
            Some(same) => same.weight += way.weight,
            None => distinct.push(*way),
        }
    }
    let complained = model.situation.complaint.iter().any(|c| *c != Complaint::None);
    let told = model.told(&cause.faults);
    let in_play = |way: Way| {
        let at_work = Case::of(Cow::Owned(cause.world(model, way.at_work)), way.setting);
        WayInPlay {
            cause: number,
            p: cause.p * way.weight,
            explains: explains
                || !complained
                || model.explained(at_work.behaviour(model), &told, way.setting.softens) >= EXPLAINED,
            way,
            at_work,
            at_rest: OnceCell::new(),
        }
    };
    distinct.into_iter().map(in_play).collect()
}
