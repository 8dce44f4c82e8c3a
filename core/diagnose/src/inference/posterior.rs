//! From readings to a ranking of causes: every cause enumerated, what is unknown about it summed over, in log space.

use std::collections::BTreeMap;
use std::rc::Rc;

use super::at_rest::{AtRest, Holds};
use super::at_work::{AtWork, Works};
use super::bayes::normalised;
use super::by_hand::Signs;
use super::by_meter::{Electrics, Meters};
use super::condition::Setting;
use super::hypotheses::{Hypothesis, hypotheses};
use super::model::{Model, World};
use super::observation::Observation;

/// How well one cause fits everything that was read.
#[derive(Debug, Clone)]
pub(crate) struct Evaluated {
    /// Its faults, as numbers in [`Model::faults`]; none for "nothing is wrong".
    pub faults: Vec<usize>,
    /// Its probability.
    pub p: f64,
    /// A few ways the cause can be, with their weights: what is unknown about it, as the readings leave it. Causes that
    /// hardly count have none.
    pub ways: Vec<Way>,
}

/// One way a cause can be: the size that shows in a test at rest, the size at work, and the setting.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Way {
    pub weight: f64,
    pub at_rest: Sizes,
    pub at_work: Sizes,
    pub setting: Setting,
}

/// The sizes of a cause's faults, in their order: leaks in std cm³/min, resistances in Ω; 0 where a fault has none.
pub(crate) type Sizes = [f64; 2];

impl Evaluated {
    /// The world of this cause with its faults of these sizes.
    pub fn world(&self, model: &Model<'_>, sizes: Sizes) -> World {
        let faults: Vec<(usize, f64)> = self.faults.iter().copied().zip(sizes).collect();
        model.world(&faults)
    }
}

/// All causes, the likeliest first.
#[derive(Debug, Clone)]
pub(crate) struct Posterior {
    pub causes: Vec<Evaluated>,
}

/// Ways of a cause that are kept for planning.
const WAYS: usize = 5;
/// A cause less likely than this has no ways.
const HARDLY: f64 = 1e-4;

/// Ranks every cause by what was observed.
pub(crate) fn rank(model: &Model<'_>, seen: &[Observation]) -> Posterior {
    let (evaluation, hypotheses) = (Evaluation::new(model, seen), hypotheses(model));
    let mut ranked = evaluation.probabilities(&hypotheses);
    ranked.sort_by(|a, b| b.1.total_cmp(&a.1).then_with(|| a.0.faults().cmp(b.0.faults())));
    let evaluated = |(hypothesis, p): (&Hypothesis, f64)| Evaluated {
        faults: hypothesis.faults().to_vec(),
        p,
        ways: if p >= HARDLY {
            evaluation.ways(hypothesis.faults())
        } else {
            Vec::new()
        },
    };
    Posterior {
        causes: ranked.into_iter().map(evaluated).collect(),
    }
}

/// The same without ways and in no order, which costs less.
pub(crate) fn weigh(model: &Model<'_>, seen: &[Observation]) -> Posterior {
    let (evaluation, hypotheses) = (Evaluation::new(model, seen), hypotheses(model));
    let evaluated = |(hypothesis, p): (&Hypothesis, f64)| Evaluated {
        faults: hypothesis.faults().to_vec(),
        p,
        ways: Vec::new(),
    };
    Posterior {
        causes: evaluation
            .probabilities(&hypotheses)
            .into_iter()
            .map(evaluated)
            .collect(),
    }
}

/// Everything seen, sorted by what it depends on, with what that says of parts of a cause.
///
/// A cause's vacuum side and its electric side meet only in what the electric side does to the valves. So what all causes
/// have in common is worked out once: for each electric side how likely it does what, for each vacuum side how well that
/// fits.
struct Evaluation<'m> {
    model: &'m Model<'m>,
    holds: Holds<'m>,
    signs: Signs<'m>,
    works: Works<'m>,
    electrics: BTreeMap<Vec<usize>, Electric>,
    softens: [f64; 2],
}

struct Electric {
    electrics: Electrics,
    by_work: Vec<(usize, f64)>,
}

impl<'m> Evaluation<'m> {
    fn new(model: &'m Model<'m>, seen: &'m [Observation]) -> Self {
        let meters = Meters::new(model, seen);
        let electric: Vec<usize> = (0..model.faults.len())
            .filter(|f| model.faults[*f].is_electric())
            .collect();
        let mut electrics = BTreeMap::new();
        let mut of_sound = 0;
        let mut add = |faults: &[usize]| {
            let electrics_of = meters.of(faults);
            of_sound = of_sound.max(if faults.is_empty() {
                meters.known_works()
            } else {
                0
            });
            let by_work = electrics_of.by_work();
            electrics.insert(
                faults.to_vec(),
                Electric {
                    electrics: electrics_of,
                    by_work,
                },
            );
        };
        add(&[]);
        for (n, a) in electric.iter().enumerate() {
            add(&[*a]);
            for b in electric.iter().skip(n + 1) {
                if !model.faults[*a].excludes(&model.faults[*b]) {
                    add(&[*a, *b]);
                }
            }
        }
        let softening: f64 = model
            .settings
            .iter()
            .filter(|(s, _)| s.softens)
            .map(|(_, p)| p)
            .sum();
        Self {
            model,
            holds: Holds::new(model, seen),
            signs: Signs::new(model, seen),
            works: Works::new(model, seen, meters.into_works(), of_sound),
            electrics,
            softens: [1.0 - softening, softening],
        }
    }

    fn probabilities<'h>(&self, hypotheses: &'h [Hypothesis]) -> Vec<(&'h Hypothesis, f64)> {
        let ln: Vec<f64> = hypotheses.iter().map(|h| self.ln_weight(h)).collect();
        hypotheses.iter().zip(normalised(&ln)).collect()
    }

    /// The electric and the other faults of a cause.
    fn sides(&self, faults: &[usize]) -> (Vec<usize>, Vec<usize>) {
        faults.iter().partition(|f| self.model.faults[**f].is_electric())
    }

    /// ln of weight × likelihood.
    fn ln_weight(&self, hypothesis: &Hypothesis) -> f64 {
        let (electric, vacuum) = self.sides(hypothesis.faults());
        let Some(electric) = self.electrics.get(&electric) else {
            return f64::NEG_INFINITY;
        };
        let (at_rest, at_work) = (self.holds.of(&vacuum), self.works.of(&vacuum));
        let sum: f64 = electric
            .by_work
            .iter()
            .map(|(work, weight)| weight * self.fit(&at_rest, &at_work, *work))
            .sum();
        hypothesis.ln_weight
            + self.signs.of(hypothesis.faults())
            + electric.electrics.ln
            + at_rest.ln
            + sum.ln()
    }

    /// How well a vacuum side fits what the electric side does.
    fn fit(&self, at_rest: &AtRest, at_work: &AtWork, work: usize) -> f64 {
        [false, true]
            .into_iter()
            .zip(self.softens)
            .filter(|(_, p)| *p > 0.0)
            .map(|(softens, p)| {
                let likelihoods = at_work.of(work, softens).iter();
                p * at_rest
                    .work
                    .iter()
                    .zip(likelihoods)
                    .map(|(w, l)| w * l)
                    .sum::<f64>()
            })
            .sum()
    }

    /// Ways that stand for a cause: evenly spread over the weight of all there are.
    fn ways(&self, faults: &[usize]) -> Vec<Way> {
        let (electric, vacuum) = self.sides(faults);
        let Some(side) = self.electrics.get(&electric) else {
            return Vec::new();
        };
        let (at_rest, at_work): (Rc<AtRest>, Rc<AtWork>) = (self.holds.of(&vacuum), self.works.of(&vacuum));
        let ways = &side.electrics.ways;
        let weights: Vec<f64> = ways
            .iter()
            .flat_map(|w| [false, true].map(|softens| (w, softens)))
            .zip(self.softens.iter().cycle())
            .map(|((w, softens), p)| {
                let likelihoods = at_work.of(w.work, softens).iter();
                let fit: f64 = at_rest.work.iter().zip(likelihoods).map(|(q, l)| q * l).sum();
                p * w.weight * fit
            })
            .collect();
        let place = |fault: &usize, sizes: [f64; 2], of: &[usize]| {
            of.iter().position(|f| f == fault).map(|at| sizes[at])
        };
        (0..WAYS)
            .map(|i| {
                let share = (i as f64 + 0.5) / WAYS as f64;
                let number = quantile(&weights, share);
                let (way, softens) = (ways[number / 2], number % 2 == 1);
                let likelihoods = at_work.of(way.work, softens).iter();
                let of_sizes: Vec<f64> = at_rest.work.iter().zip(likelihoods).map(|(q, l)| q * l).collect();
                let second = at_rest.works[1];
                let work = quantile(&of_sizes, spread(i, 1));
                let work = [work / second, work % second];
                let rest = quantile(&at_rest.given(work), spread(i, 2));
                let second = at_rest.points[1].len();
                let rest = [
                    at_rest.points[0].sizes[rest / second],
                    at_rest.points[1].sizes[rest % second],
                ];
                let work = self.works.sizes_of(&vacuum, work);
                let sized = |vacuum_sizes: [f64; 2]| {
                    let mut sizes = [0.0; 2];
                    for (size, fault) in sizes.iter_mut().zip(faults) {
                        *size = place(fault, vacuum_sizes, &vacuum)
                            .or_else(|| place(fault, way.sizes, &electric))
                            .unwrap_or(0.0);
                    }
                    sizes
                };
                Way {
                    weight: 1.0 / WAYS as f64,
                    at_rest: sized(rest),
                    at_work: sized(work),
                    setting: Setting {
                        softens,
                        ..way.setting
                    },
                }
            })
            .collect()
    }
}

/// Shares that are spread evenly in any direction. Source: the golden ratio's additive recurrence.
fn spread(number: usize, direction: u32) -> f64 {
    const GOLDEN: f64 = 0.618_033_988_749_895;
    (0.5 + (number + 1) as f64 * GOLDEN.powi(direction.cast_signed())).fract()
}

/// The number of the entry at which a share of the weight is reached.
fn quantile(weights: &[f64], share: f64) -> usize {
    let total: f64 = weights.iter().sum();
    let mut sum = 0.0;
    let reached = weights.iter().position(|w| {
        sum += w;
        sum >= share * total && *w > 0.0
    });
    reached.unwrap_or(0)
}
