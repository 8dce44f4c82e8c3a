//! Which ways of causes a test can tell apart at all: those of one kind show the same in it, and are worked out once.
//!
//! Nothing is lost by it: a way's kind is everything that a test's chances depend on.

use std::borrow::Cow;
use std::collections::BTreeMap;

use super::in_play::{CauseInPlay, InPlay, WayInPlay};
use crate::inference::{Depends, Model, Observation, Setting, Sizes, depends};

/// Ways in play, sorted by what a test can tell of them.
#[derive(Debug, Clone)]
pub(super) struct Kinds {
    /// The kind of each way, in the order of the ways.
    pub of_way: Vec<usize>,
    /// The first way of each kind.
    pub firsts: Vec<usize>,
}

impl Kinds {
    /// Ways of the same key are of one kind.
    fn by<K: Ord + Copy>(keys: impl Iterator<Item = K>) -> Self {
        let (mut known, mut firsts) = (BTreeMap::new(), Vec::new());
        // Neighbours are often of one cause, and alike.
        let mut last: Option<(K, usize)> = None;
        let of_way = keys.enumerate().map(|(way, key)| match last {
            Some((same, kind)) if same == key => kind,
            _ => {
                let kind = *known.entry(key).or_insert_with(|| {
                    firsts.push(way);
                    firsts.len() - 1
                });
                last = Some((key, kind));
                kind
            }
        });
        Self {
            of_way: of_way.collect(),
            firsts,
        }
    }

    /// The probability of each kind.
    pub fn p(&self, ways: &[WayInPlay]) -> Vec<f64> {
        let mut p = vec![0.0; self.firsts.len()];
        for (kind, way) in self.of_way.iter().zip(ways) {
            p[*kind] += way.p;
        }
        p
    }
}

/// The ways in play, sorted for every test.
pub(super) struct Sorted<'r> {
    model: &'r Model<'r>,
    in_play: &'r InPlay<'r>,
    /// By what the circuit does at work.
    by_work: Kinds,
    /// By that, what is felt of the faults themselves, and what vacuum does to the mounts.
    by_told: Kinds,
    /// By the electric faults with their sizes, and the wiring.
    by_wiring: Kinds,
}

impl<'r> Sorted<'r> {
    pub fn new(model: &'r Model<'r>, in_play: &'r InPlay<'r>) -> Self {
        let ways = &in_play.ways;
        let does = numbered(ways.iter().map(|way| way.at_work.behaviour(model)));
        let told = numbered(in_play.causes.iter().map(|c| model.told(&c.cause.faults)));
        let told = ways
            .iter()
            .zip(&does)
            .map(|(way, does)| (*does, told[way.cause], way.way.setting.softens));
        let electric = shown(in_play, |fault| model.faults[fault].is_electric());
        let wired = ways.iter().map(|way| {
            let wiring = Setting {
                softens: true,
                ..way.way.setting
            };
            (sized(electric[way.cause], way.way.at_work), wiring)
        });
        Self {
            by_told: Kinds::by(told),
            by_wiring: Kinds::by(wired),
            by_work: Kinds::by(does.iter()),
            model,
            in_play,
        }
    }

    /// The kinds for a test.
    pub fn of(&self, test: &Observation) -> Cow<'_, Kinds> {
        match depends(&test.seen, &test.test) {
            Depends::Work => Cow::Borrowed(&self.by_work),
            Depends::Told => Cow::Borrowed(&self.by_told),
            Depends::Electric => Cow::Borrowed(&self.by_wiring),
            Depends::Rest => Cow::Owned(self.by_faults(test, |way| way.way.at_rest)),
            // What is seen or felt by hand is the same with any size.
            Depends::Signs => Cow::Owned(self.by_faults(test, |_| [0.0; 2])),
        }
    }

    /// By the faults that a test can show, with their sizes.
    fn by_faults(&self, test: &Observation, sizes: impl Fn(&WayInPlay) -> Sizes) -> Kinds {
        let mut known: Vec<Option<bool>> = vec![None; self.model.faults.len()];
        let shows = |fault: usize| *known[fault].get_or_insert_with(|| self.model.touches(test, &[fault]));
        let shown = shown(self.in_play, shows);
        let ways = self.in_play.ways.iter();
        Kinds::by(ways.map(|way| sized(shown[way.cause], sizes(way))))
    }
}

/// The faults of a cause that count, each in its place.
type Shown = [Option<usize>; 2];

fn shown(in_play: &InPlay<'_>, mut counts: impl FnMut(usize) -> bool) -> Vec<Shown> {
    let mut of_cause = |cause: &CauseInPlay<'_>| {
        let mut fault = |at: usize| cause.cause.faults.get(at).copied().filter(|f| counts(*f));
        [fault(0), fault(1)]
    };
    in_play.causes.iter().map(&mut of_cause).collect()
}

/// The faults that count, each with the bits of its size.
fn sized([first, second]: Shown, sizes: Sizes) -> [Option<(usize, u64)>; 2] {
    let of = |fault: Option<usize>, size: f64| fault.map(|fault| (fault, size.to_bits()));
    match of(first, sizes[0]) {
        None => [of(second, sizes[1]), None],
        first => [first, of(second, sizes[1])],
    }
}

/// Alike things under one number.
fn numbered<T: PartialEq>(things: impl Iterator<Item = T>) -> Vec<usize> {
    let mut distinct: Vec<T> = Vec::new();
    let number = |thing: T| {
        distinct.iter().rposition(|d| *d == thing).unwrap_or_else(|| {
            distinct.push(thing);
            distinct.len() - 1
        })
    };
    things.map(number).collect()
}
