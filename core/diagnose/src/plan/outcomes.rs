//! What a test could show: a few readings that stand for all, as the causes in play would have them.

use crate::inference::{Expect, HoldSeen, Model, Observation, Seeable, Seen, is_by_hand};
use crate::{LookState, TestId, TestKind, hold_target};

use super::in_play::{CauseInPlay, InPlay};
use super::kinds::Sorted;

/// Drops that are told apart at first, kPa in [`WATCHED`] seconds: nearer together than they are read.
const DROPS: [f64; 17] = [
    -0.8, 0.0, 0.8, 1.7, 2.8, 4.0, 5.5, 7.2, 9.2, 11.5, 14.5, 18.0, 22.0, 27.0, 33.0, 40.0, 49.0,
];
/// Seconds that a hold is watched.
pub(super) const WATCHED: f64 = 20.0;
/// A drop up to this is no drop to the eye, kPa.
const STILL: f64 = 0.8;
/// Where the needle stays when a hold never gets there, kPa.
const NEVER: f64 = 10.0;
/// Strokes that a hold takes whose hose is blocked.
const STROKES_BLOCKED: f64 = 3.0;
/// Readings that stand for one test at most.
const READINGS: usize = 14;

/// What a test could show.
pub(super) enum Outcomes {
    /// A hold: drops, and how they are weighed.
    Hold(Box<Drops>),
    /// Anything else: readings, each by its likelihood.
    Readings(Vec<Observation>),
}

/// What a hold could show.
pub(super) struct Drops {
    /// The test, as an observation.
    pub test: Observation,
    /// Vacuum at the start, kPa.
    pub start: f64,
    /// The drops, kPa in [`WATCHED`] seconds, from the least, and what each stands for.
    pub drops: Vec<f64>,
    pub widths: Vec<f64>,
    /// The drops that are none to the eye.
    pub still: usize,
    /// The needle stands still after as many strokes as usual, and after as few as a blocked hose takes.
    pub by_strokes: Option<[HoldSeen; 2]>,
}

impl Outcomes {
    pub fn of(model: &Model<'_>, in_play: &InPlay<'_>, sorted: &Sorted<'_>, test: &TestId) -> Self {
        if test.is_hold() {
            Self::Hold(Box::new(Drops::of(model, test)))
        } else if test.kind == TestKind::Look {
            Self::Readings(looks(model, in_play, test))
        } else {
            Self::Readings(readings(model, in_play, sorted, test))
        }
    }

    /// The test as an observation; `None` where nothing can be seen.
    pub fn test(&self) -> Option<&Observation> {
        match self {
            Self::Hold(drops) => Some(&drops.test),
            Self::Readings(readings) => readings.first(),
        }
    }

    /// An outcome as a reading. A hold's are: still after few strokes, its drops from the least, never reached.
    pub fn observation(&self, number: usize) -> Observation {
        match self {
            Self::Readings(readings) => readings[number].clone(),
            Self::Hold(drops) => {
                let mut observation = drops.test.clone();
                observation.seen = Seen::Hold(drops.seen(number));
                observation
            }
        }
    }
}

impl Drops {
    fn seen(&self, number: usize) -> HoldSeen {
        let few = self.by_strokes.as_ref().map(|[_, few]| few);
        match (number, few) {
            (0, Some(few)) => few.clone(),
            _ => self
                .drops
                .get(number - usize::from(few.is_some()))
                .map_or(HoldSeen::never_reached(NEVER), |drop| {
                    watched(self.start, *drop, None)
                }),
        }
    }

    fn of(model: &Model<'_>, test: &TestId) -> Self {
        let start = hold_target(model.situation).vacuum.value / 1_000.0;
        let mut drops: Vec<f64> = DROPS.iter().copied().filter(|d| *d < 0.9 * start).collect();
        drops.push(start);
        let usual = model
            .usual_strokes(test, start)
            .filter(|n| *n > 1.5 * STROKES_BLOCKED);
        Self {
            test: model.imagine(test, Seen::Hold(watched(start, 0.0, None))),
            widths: widths(&drops),
            still: drops.iter().filter(|d| **d <= STILL).count(),
            by_strokes: usual.map(|usual| [usual, STROKES_BLOCKED].map(|n| watched(start, 0.0, Some(n)))),
            start,
            drops,
        }
    }
}

fn watched(start: f64, drop: f64, strokes: Option<f64>) -> HoldSeen {
    HoldSeen::watched(start, drop, WATCHED, strokes)
}

/// What each of rising values stands for: half the way to its neighbours.
fn widths(values: &[f64]) -> Vec<f64> {
    let last = values.len().saturating_sub(1);
    (0..values.len())
        .map(|i| {
            let below = values[i] - values[i.saturating_sub(1)];
            let above = values[(i + 1).min(last)] - values[i];
            if i == 0 {
                above
            } else {
                0.5 * (below + if i == last { below } else { above })
            }
        })
        .collect()
}

/// The values that causes in play would have, the likelier causes first.
fn readings(model: &Model<'_>, in_play: &InPlay<'_>, sorted: &Sorted<'_>, test: &TestId) -> Vec<Observation> {
    let empty = model.imagine(test, Seen::Fields(Vec::new()));
    let kinds = sorted.of(&empty);
    let touched =
        |cause: &CauseInPlay<'_>| cause.cause.faults.is_empty() || model.touches(&empty, &cause.cause.faults);
    let touched: Vec<bool> = in_play.causes.iter().map(touched).collect();
    // By hand, ways of one kind can differ in what is typical of them.
    let each = is_by_hand(&empty);
    let mut done = vec![false; kinds.firsts.len()];
    let mut distinct: Vec<Values> = Vec::new();
    for (way, kind) in in_play.ways.iter().zip(&kinds.of_way) {
        if distinct.len() >= READINGS {
            break;
        }
        if !touched[way.cause] || (done[*kind] && !each) {
            continue;
        }
        done[*kind] = true;
        for (_, fields) in model.fields(&empty, &way.at_work) {
            for values in typical(&fields) {
                if !distinct.iter().any(|known| are_alike(known, &values)) {
                    distinct.push(values);
                }
            }
        }
    }
    distinct.truncate(READINGS);
    let named = |values: Values| values.into_iter().map(|(key, value)| (key.to_owned(), value));
    let reading = |values| model.imagine(test, Seen::Fields(named(values).collect()));
    distinct.into_iter().map(reading).collect()
}

/// Values of a test by their keys.
type Values = Vec<(&'static str, Seeable)>;

/// Every set of values that are typical of what is expected.
fn typical(fields: &[(&'static str, Expect)]) -> Vec<Values> {
    let mut sets = vec![Values::with_capacity(fields.len())];
    for (key, expect) in fields {
        let values = expect.typical();
        if let [value] = values.as_slice() {
            sets.iter_mut().for_each(|set| set.push((*key, *value)));
        } else {
            let with = |set: &Values, value: &Seeable| [set.as_slice(), &[(*key, *value)]].concat();
            sets = sets
                .iter()
                .flat_map(|set| values.iter().map(move |value| with(set, value)))
                .collect();
        }
    }
    sets
}

/// Whether two sets of values would be read as the same thing.
fn are_alike(ours: &Values, theirs: &Values) -> bool {
    let alike = |((k, a), (l, b)): (&(&str, Seeable), &(&str, Seeable))| k == l && a.is_like(b);
    ours.len() == theirs.len() && ours.iter().zip(theirs).all(alike)
}

/// Nothing to see, and one component that shows something.
fn looks(model: &Model<'_>, in_play: &InPlay<'_>, test: &TestId) -> Vec<Observation> {
    let mut seen = vec![Seen::Look(Vec::new())];
    let faults = in_play
        .causes
        .iter()
        .flat_map(|c| &c.cause.faults)
        .map(|f| &model.faults[*f]);
    for fault in faults {
        let Some(part) = fault.part else { continue };
        for (at, state) in LookState::ALL.into_iter().enumerate().skip(1) {
            let one = Seen::Look(vec![(part, state)]);
            if seen.len() < READINGS && fault.look[at] > 0.0 && !seen.contains(&one) {
                seen.push(one);
            }
        }
    }
    seen.into_iter().map(|s| model.imagine(test, s)).collect()
}
