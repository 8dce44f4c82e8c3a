//! What a test is expected to settle, in bits: how much less uncertain it makes what to do.

use std::borrow::Cow;

use crate::finding::{Reasoned, Remedy};
use crate::inference::{
    Case, Evaluated, HoldSeen, Model, Observation, Seen, Way, depends_at_rest, entropy, information,
    is_by_hand,
};
use crate::{LookState, TestId, TestKind, hold_target};

/// Causes that together are less likely than this are left out of the sum.
const LEFT_OUT: f64 = 0.004;
/// Drops that stand for what a hold can show, kPa in [`WATCHED`] seconds.
const DROPS: [f64; 5] = [0.0, 1.7, 5.0, 15.0, 40.0];
/// Seconds that a hold is watched.
const WATCHED: f64 = 20.0;
/// Where the needle stays when a hold never gets there, kPa.
const NEVER: f64 = 10.0;
/// Strokes that a hold takes whose hose is blocked.
const STROKES_BLOCKED: f64 = 3.0;
/// Outcomes that a test is split into at most.
const OUTCOMES: usize = 12;

/// What tests are expected to settle as things stand.
pub(super) struct Worth<'r, 'a> {
    reasoned: &'r Reasoned<'a>,
    causes: Vec<InPlay<'r>>,
    remedies: usize,
    sound: Option<InPlay<'r>>,
}

/// A cause in play, and the ways it can be.
struct InPlay<'r> {
    cause: &'r Evaluated,
    /// The number of its remedy.
    remedy: usize,
    ways: Vec<InPlayWay>,
}

/// One way, worked out once for all tests.
struct InPlayWay {
    weight: f64,
    at_rest: Case<'static>,
    at_work: Case<'static>,
}

impl<'r> InPlay<'r> {
    fn new(model: &Model<'_>, cause: &'r Evaluated, remedy: usize) -> Self {
        let way = |way: &Way| InPlayWay {
            weight: way.weight,
            at_rest: Case::of(Cow::Owned(cause.world(model, way.at_rest)), way.setting),
            at_work: Case::of(Cow::Owned(cause.world(model, way.at_work)), way.setting),
        };
        Self {
            cause,
            remedy,
            ways: cause.ways.iter().map(way).collect(),
        }
    }
}

impl<'r, 'a> Worth<'r, 'a> {
    pub fn new(reasoned: &'r Reasoned<'a>) -> Self {
        let mut remedies: Vec<Remedy> = Vec::new();
        let mut causes = Vec::new();
        let mut covered = 0.0;
        for cause in &reasoned.posterior.causes {
            if covered > 1.0 - LEFT_OUT {
                break;
            }
            covered += cause.p;
            let remedy = reasoned.remedy(cause);
            let number = remedies.iter().position(|r| *r == remedy).unwrap_or_else(|| {
                remedies.push(remedy);
                remedies.len() - 1
            });
            causes.push(InPlay::new(&reasoned.model, cause, number));
        }
        let sound = reasoned.posterior.causes.iter().find(|c| c.faults.is_empty());
        let sound = sound.map(|s| InPlay::new(&reasoned.model, s, 0));
        Self {
            reasoned,
            causes,
            remedies: remedies.len(),
            sound,
        }
    }

    /// What is still open, bit.
    pub fn open_bits(&self) -> f64 {
        let mut shares = vec![0.0; self.remedies];
        for InPlay { cause, remedy, .. } in &self.causes {
            shares[*remedy] += cause.p;
        }
        entropy(&shares).max(f64::MIN_POSITIVE)
    }

    /// Mutual information between what a test shows and what to do, bit.
    pub fn bits(&self, test: &TestId) -> f64 {
        let outcomes = self.outcomes(test);
        if outcomes.len() < 2 {
            return 0.0;
        }
        let model = &self.reasoned.model;
        let untouched = self.sound.as_ref().map(|sound| chances(model, &outcomes, sound));
        // Joint of outcome and remedy.
        let mut joint = vec![vec![0.0; self.remedies]; outcomes.len()];
        for in_play in &self.causes {
            let InPlay { cause, remedy, .. } = in_play;
            let touched = outcomes.first().is_some_and(|o| model.touches(o, &cause.faults));
            let own;
            let chances = match &untouched {
                Some(chances) if !touched => chances,
                _ => {
                    own = chances(model, &outcomes, in_play);
                    &own
                }
            };
            for (row, chance) in joint.iter_mut().zip(chances) {
                row[*remedy] += cause.p * chance;
            }
        }
        information(&joint)
    }

    /// Readings that stand for what a test can show.
    fn outcomes(&self, test: &TestId) -> Vec<Observation> {
        let model = &self.reasoned.model;
        if test.is_hold() {
            return self.holds(test);
        }
        if test.kind == TestKind::Look {
            return self.looks(test);
        }
        let empty = model.imagine(test, Seen::Fields(Vec::new()));
        let mut outcomes: Vec<Observation> = Vec::new();
        for in_play in &self.causes {
            if !in_play.cause.faults.is_empty() && !model.touches(&empty, &in_play.cause.faults) {
                continue;
            }
            let Some(way) = in_play.ways.first() else { continue };
            for (_, fields) in model.fields(&empty, &way.at_work, None) {
                let mut sets = vec![Vec::new()];
                for (key, expect) in fields {
                    let typical = expect.typical();
                    sets = sets
                        .into_iter()
                        .flat_map(|set| {
                            typical.iter().map(move |value| {
                                let mut longer = set.clone();
                                longer.push((key.to_owned(), *value));
                                longer
                            })
                        })
                        .collect();
                }
                for set in sets {
                    let seen = Seen::Fields(set);
                    if outcomes.len() < OUTCOMES && !outcomes.iter().any(|o| o.seen.is_like(&seen)) {
                        outcomes.push(model.imagine(test, seen));
                    }
                }
            }
        }
        outcomes
    }

    fn holds(&self, test: &TestId) -> Vec<Observation> {
        let model = &self.reasoned.model;
        let start = hold_target(model.situation).vacuum.value / 1_000.0;
        let usual = model.usual_strokes(test, start);
        let watched = |drop: f64, strokes| {
            Seen::Hold(HoldSeen::watched(start, drop.min(0.9 * start), WATCHED, strokes))
        };
        let mut seen: Vec<Seen> = DROPS.iter().map(|drop| watched(*drop, usual)).collect();
        if usual.is_some_and(|n| n > 1.5 * STROKES_BLOCKED) {
            seen.push(watched(0.0, Some(STROKES_BLOCKED)));
        }
        seen.push(Seen::Hold(HoldSeen::never_reached(NEVER)));
        seen.into_iter().map(|s| model.imagine(test, s)).collect()
    }

    fn looks(&self, test: &TestId) -> Vec<Observation> {
        let model = &self.reasoned.model;
        let mut seen = vec![Seen::Look(Vec::new())];
        for fault in self
            .causes
            .iter()
            .flat_map(|c| &c.cause.faults)
            .map(|f| &model.faults[*f])
        {
            let Some(part) = fault.part else { continue };
            for (at, state) in LookState::ALL.into_iter().enumerate().skip(1) {
                let one = Seen::Look(vec![(part, state)]);
                if fault.look[at] > 0.0 && !seen.contains(&one) {
                    seen.push(one);
                }
            }
        }
        seen.into_iter().map(|s| model.imagine(test, s)).collect()
    }
}

/// The chance of each outcome under a cause; they sum to 1.
fn chances(model: &Model<'_>, outcomes: &[Observation], in_play: &InPlay<'_>) -> Vec<f64> {
    let mut chances = vec![0.0; outcomes.len()];
    let Some(first) = outcomes.first() else {
        return chances;
    };
    let at_rest = depends_at_rest(first);
    for way in &in_play.ways {
        let case = if at_rest { &way.at_rest } else { &way.at_work };
        // Every outcome is a set of values of the same test: what it should show is worked out once.
        let expected = matches!(first.seen, Seen::Fields(_)).then(|| model.fields(first, case, None));
        let likelihood = |o: &Observation| match (&o.seen, &expected) {
            (Seen::Fields(values), Some(expected)) => model.values_likelihood(values, expected),
            _ => model.likelihood(o, case),
        };
        let each: Vec<f64> = outcomes.iter().map(likelihood).collect();
        let total: f64 = each.iter().sum();
        for (chance, likelihood) in chances.iter_mut().zip(each) {
            *chance += way.weight * likelihood / total;
        }
        if is_by_hand(first) {
            // What is seen or felt doesn't depend on sizes and settings.
            chances.iter_mut().for_each(|c| *c /= way.weight);
            break;
        }
    }
    chances
}
