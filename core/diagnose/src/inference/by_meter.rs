//! The electric side: every way it can be, what each does to the valves, and what meters say of it.

use std::collections::BTreeMap;

use super::causes::Size;
use super::condition::{Joint, Setting};
use super::model::Model;
use super::observation::{Observation, Seen};
use super::sizes::Points;
use super::vacuum::Pulls;
use crate::ComponentKind;
use crate::faults::Effect;

/// Points of a resistance alone, and as one of two.
const POINTS: [usize; 2] = [31, 5];

/// One way in which an electric side can be.
#[derive(Debug, Clone, Copy)]
pub(super) struct ElectricCase {
    pub setting: Setting,
    pub sizes: [f64; 2],
    /// The number of what it does to the valves.
    pub work: usize,
    /// ln of its weight before any reading.
    ln_weight: f64,
}

/// Up to two electric faults and every way they can be.
#[derive(Debug)]
pub(super) struct ElectricSide {
    faults: Vec<usize>,
    pub cases: Vec<ElectricCase>,
    /// The number of the first case among those of all sides.
    first: usize,
}

/// Every electric side of a circuit.
#[derive(Debug)]
pub(super) struct Electrics {
    pub sides: Vec<ElectricSide>,
    numbers: BTreeMap<Vec<usize>, usize>,
    works: Vec<Pulls>,
    /// So many of the works can be done by sides with no fault, with one at most, with two.
    known: [usize; 3],
    cases: usize,
}

/// What all meter readings say of one electric side.
#[derive(Debug, Clone)]
pub(super) struct Metered {
    /// ln of the scale of the weights.
    pub ln: f64,
    /// Weight × likelihood of each case.
    pub weights: Vec<f64>,
    /// The same for each thing that the side can do to the valves.
    pub by_work: Vec<(usize, f64)>,
}

impl Electrics {
    pub fn new(model: &Model<'_>) -> Self {
        let electric: Vec<usize> = (0..model.faults.len())
            .filter(|f| model.faults[*f].is_electric())
            .collect();
        let mut electrics = Self {
            sides: Vec::new(),
            numbers: BTreeMap::new(),
            works: Vec::new(),
            known: [0; 3],
            cases: 0,
        };
        let wirings = wirings(model);
        electrics.add(model, &wirings, &[]);
        electrics.known[0] = electrics.works.len();
        for fault in &electric {
            electrics.add(model, &wirings, &[*fault]);
        }
        electrics.known[1] = electrics.works.len();
        for (n, a) in electric.iter().enumerate() {
            for b in electric.iter().skip(n + 1) {
                if !model.faults[*a].excludes(&model.faults[*b]) {
                    electrics.add(model, &wirings, &[*a, *b]);
                }
            }
        }
        electrics.known[2] = electrics.works.len();
        electrics
    }

    fn add(&mut self, model: &Model<'_>, wirings: &[(Setting, f64)], faults: &[usize]) {
        let points = |at: usize| match faults.get(at).map(|f| model.faults[*f].size()) {
            Some(Size::Resistance(spread)) => {
                Points::spread_over(spread, POINTS[usize::from(faults.len() > 1)])
            }
            _ => Points::none(),
        };
        let (first, second) = (points(0), points(1));
        let joints = joints(model, faults);
        let jointed = |(setting, p): &(Setting, f64)| {
            let (setting, p) = (*setting, *p);
            joints
                .clone()
                .into_iter()
                .map(move |(joint, share)| (Setting { joint, ..setting }, p * share))
        };
        let mut cases = Vec::with_capacity(wirings.len() * first.len() * second.len());
        for (a, weight_a) in first.sizes.iter().zip(&first.weights) {
            for (b, weight_b) in second.sizes.iter().zip(&second.weights) {
                let world = model.world(&sized(faults, [*a, *b]));
                for (setting, p) in wirings.iter().flat_map(jointed) {
                    let pulls = model.pulls(&world, setting);
                    let work = self.works.iter().position(|w| *w == pulls).unwrap_or_else(|| {
                        self.works.push(pulls);
                        self.works.len() - 1
                    });
                    cases.push(ElectricCase {
                        setting,
                        sizes: [*a, *b],
                        work,
                        ln_weight: (p * weight_a * weight_b).ln(),
                    });
                }
            }
        }
        self.numbers.insert(faults.to_vec(), self.sides.len());
        let first = self.cases;
        self.cases += cases.len();
        self.sides.push(ElectricSide {
            faults: faults.to_vec(),
            cases,
            first,
        });
    }

    /// The number of the side with just these faults.
    pub fn number(&self, faults: &[usize]) -> Option<usize> {
        self.numbers.get(faults).copied()
    }

    /// What the electric side does to the valves, by its number.
    pub fn pulls(&self, work: usize) -> &Pulls {
        &self.works[work]
    }

    /// How many works there are for causes that have so many faults on the vacuum side.
    pub fn works_beside(&self, vacuum: usize) -> usize {
        self.known[2usize.saturating_sub(vacuum)]
    }

    /// ln likelihood of one reading in each case of each side.
    pub fn row(&self, model: &Model<'_>, seen: &Observation) -> Vec<f64> {
        let Seen::Fields(values) = &seen.seen else {
            return vec![0.0; self.cases];
        };
        let mut row = Vec::with_capacity(self.cases);
        for side in &self.sides {
            let mut last: Option<([f64; 2], crate::inference::model::World)> = None;
            for case in &side.cases {
                if last.as_ref().is_none_or(|(sizes, _)| *sizes != case.sizes) {
                    last = Some((case.sizes, model.world(&sized(&side.faults, case.sizes))));
                }
                let likelihood = last.as_ref().map_or(1.0, |(_, world)| {
                    model.values_likelihood(seen, values, &model.electric_fields(seen, world, case.setting))
                });
                row.push(likelihood.ln());
            }
        }
        row
    }

    /// What all rows say of a side.
    pub fn metered(&self, side: &ElectricSide, rows: &[&[f64]]) -> Metered {
        let mut ln: Vec<f64> = side.cases.iter().map(|c| c.ln_weight).collect();
        for row in rows {
            for (sum, ln) in ln.iter_mut().zip(row.iter().skip(side.first)) {
                *sum += ln;
            }
        }
        let scale = ln.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        let weights: Vec<f64> = ln.iter().map(|ln| (ln - scale).exp()).collect();
        let mut by_work: Vec<(usize, f64)> = Vec::new();
        for (case, weight) in side.cases.iter().zip(&weights) {
            match by_work.iter_mut().find(|(work, _)| *work == case.work) {
                Some((_, sum)) => *sum += weight,
                None => by_work.push((case.work, *weight)),
            }
        }
        Metered {
            ln: scale,
            weights,
            by_work,
        }
    }
}

/// How the electric side can be wired, what vacuum does to the mounts left open.
fn wirings(model: &Model<'_>) -> Vec<(Setting, f64)> {
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
    wirings
}

/// Where the connector can be bad, if it is, or the coil touch its case.
pub(super) fn joints(model: &Model<'_>, faults: &[usize]) -> Vec<(Joint, f64)> {
    let is = |fault: &usize, kind: ComponentKind| {
        let part = model.faults[*fault].part;
        part.is_some_and(|part| model.layout.kind(part) == kind)
    };
    let to_case = |fault: &usize| {
        let effects = &model.faults[*fault].effects;
        is(fault, ComponentKind::Coil) && effects.iter().any(|e| matches!(e, Effect::ToGround(_)))
    };
    if faults.iter().any(|f| is(f, ComponentKind::Connector)) {
        Joint::all(model.data.rates.connector_at_contact.value).to_vec()
    } else if faults.iter().any(to_case) {
        Joint::sides(model.data.rates.coil_case_at_power.value).to_vec()
    } else {
        vec![(Joint::default(), 1.0)]
    }
}

fn sized(faults: &[usize], sizes: [f64; 2]) -> Vec<(usize, f64)> {
    faults.iter().copied().zip(sizes).collect()
}
