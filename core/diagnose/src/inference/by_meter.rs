//! What the meter says of a cause's electric faults, and what they leave of the valves' work.

use std::cell::RefCell;

use super::causes::Size;
use super::condition::Setting;
use super::model::{Case, Model};
use super::observation::Observation;
use super::predict::depends_on_meter;
use super::sizes::Points;
use super::vacuum::Pulls;

/// Points of a resistance that a meter has looked at, alone and as one of two.
const METERED: [usize; 2] = [31, 9];
/// The same where no meter has.
const UNSEEN: [usize; 2] = [9, 3];

/// Everything that the electric side can do to the valves; each gets a number.
pub(super) struct Work {
    pub pulls: Pulls,
    /// Electric faults with their sizes, and a setting, that do this.
    pub faults: Vec<(usize, f64)>,
    pub setting: Setting,
}

/// One way in which a cause's electric side can be.
#[derive(Debug, Clone, Copy)]
pub(super) struct ElectricWay {
    pub setting: Setting,
    pub sizes: [f64; 2],
    /// The number of what it does to the valves.
    pub work: usize,
    /// Weight × likelihood, over the scale.
    pub weight: f64,
}

/// What all meter readings say of some electric faults.
pub(super) struct Electrics {
    /// ln of the scale of the weights.
    pub ln: f64,
    pub ways: Vec<ElectricWay>,
}

impl Electrics {
    /// Weight of each thing that the electric side can do.
    pub fn by_work(&self) -> Vec<(usize, f64)> {
        let mut by_work: Vec<(usize, f64)> = Vec::new();
        for way in &self.ways {
            match by_work.iter_mut().find(|(work, _)| *work == way.work) {
                Some((_, weight)) => *weight += way.weight,
                None => by_work.push((way.work, way.weight)),
            }
        }
        by_work
    }
}

/// All meter readings of a job.
pub(super) struct Meters<'m> {
    model: &'m Model<'m>,
    seen: Vec<&'m Observation>,
    /// How the circuit can be wired; what vacuum does to the mounts is left open here.
    wirings: Vec<(Setting, f64)>,
    works: RefCell<Vec<Work>>,
}

impl<'m> Meters<'m> {
    pub fn new(model: &'m Model<'m>, seen: &'m [Observation]) -> Self {
        let mut wirings: Vec<(Setting, f64)> = Vec::new();
        for (setting, p) in &model.settings {
            let wiring = Setting {
                softens: true,
                ..*setting
            };
            match wirings.iter_mut().find(|(w, _)| *w == wiring) {
                Some((_, sum)) => *sum += p,
                None => wirings.push((wiring, *p)),
            }
        }
        Self {
            model,
            seen: seen.iter().filter(|o| depends_on_meter(o)).collect(),
            wirings,
            works: RefCell::default(),
        }
    }

    /// What all meter readings say of up to two electric faults.
    pub fn of(&self, faults: &[usize]) -> Electrics {
        let points = |at: usize| self.points(faults, at);
        let (first, second) = (points(0), points(1));
        let mut ways = Vec::with_capacity(self.wirings.len() * first.len() * second.len());
        for (a, weight_a) in first.sizes.iter().zip(&first.weights) {
            for (b, weight_b) in second.sizes.iter().zip(&second.weights) {
                let sized: Vec<(usize, f64)> = faults.iter().copied().zip([*a, *b]).collect();
                let world = self.model.world(&sized);
                for (setting, p) in &self.wirings {
                    let case = Case::new(&world, *setting);
                    let ln: f64 = self
                        .seen
                        .iter()
                        .map(|o| self.model.likelihood(o, &case).ln())
                        .sum();
                    ways.push(ElectricWay {
                        setting: *setting,
                        sizes: [*a, *b],
                        work: self.work(&sized, &case),
                        weight: (p * weight_a * weight_b).ln() + ln,
                    });
                }
            }
        }
        let scale = ways.iter().map(|w| w.weight).fold(f64::NEG_INFINITY, f64::max);
        for way in &mut ways {
            way.weight = (way.weight - scale).exp();
        }
        Electrics { ln: scale, ways }
    }

    fn points(&self, faults: &[usize], at: usize) -> Points {
        let of_two = usize::from(faults.len() > 1);
        match faults.get(at).map(|f| self.model.faults[*f].size()) {
            Some(Size::Resistance(spread)) => {
                let metered = !self.seen.is_empty();
                let number = if metered { METERED } else { UNSEEN }[of_two];
                Points::spread_over(spread, number)
            }
            _ => Points::none(),
        }
    }

    /// The number of what an electric side does to the valves.
    fn work(&self, faults: &[(usize, f64)], case: &Case<'_>) -> usize {
        let pulls = self.model.all_pulls(&case.world, case.setting);
        let mut works = self.works.borrow_mut();
        if let Some(known) = works.iter().position(|w| w.pulls == pulls) {
            return known;
        }
        works.push(Work {
            pulls,
            faults: faults.to_vec(),
            setting: case.setting,
        });
        works.len() - 1
    }

    /// How many things the electric sides asked for so far can do.
    pub fn known_works(&self) -> usize {
        self.works.borrow().len()
    }

    /// Everything that the electric sides asked for so far can do.
    pub fn into_works(self) -> Vec<Work> {
        self.works.into_inner()
    }
}
