//! From readings to a ranking of causes: every cause enumerated, what is unknown about it summed over, in log space.

use std::cell::{OnceCell, RefCell};
use std::sync::Arc;

use rustc_hash::FxHashMap;

use super::at_rest::{AtRest, Holds};
use super::atlas::Entry;
use super::bayes::{log_sum, normalised};
use super::by_meter::Metered;
use super::condition::Setting;
use super::memory::{Memory, Seen};
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
    /// Its number in the atlas.
    entry: usize,
}

/// One way a cause can be: the size that shows in a test at rest, the size at work, and the setting.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Way {
    pub weight: f64,
    pub at_rest: Sizes,
    pub at_work: Sizes,
    pub setting: Setting,
}

/// The sizes of a cause's faults, in their order: leaks in std cm³/min, resistances in Ω, what a needle does in kPa; 0 where
/// a fault has none.
pub(crate) type Sizes = [f64; 2];

impl Evaluated {
    /// The world of this cause with its faults of these sizes.
    pub fn world(&self, model: &Model<'_>, sizes: Sizes) -> World {
        let faults: Vec<(usize, f64)> = self.faults.iter().copied().zip(sizes).collect();
        model.world(&faults)
    }
}

/// All causes, the likeliest first.
#[derive(Debug, Clone, Default)]
pub(crate) struct Posterior {
    pub causes: Vec<Evaluated>,
    /// ln of the probability (density) of everything that was seen, over a constant of the circuit.
    pub ln_evidence: f64,
}

/// Ways of a cause that are kept for planning, and causes that have any, at most.
const WAYS: usize = 5;
const WITH_WAYS: usize = 72;
/// No reading left out makes a cause likely that is less likely than this.
const NEVER_AGAIN: f64 = 1e-8;
/// A cause less likely than this has no ways.
const HARDLY: f64 = 1e-4;

/// Ranks every cause by what was observed. Asked once more about the same, it remembers.
pub(crate) fn rank(model: &Model<'_>, memory: &mut Memory, seen: &[Observation]) -> Arc<Posterior> {
    match &memory.ranked {
        Some((of, posterior)) if of == seen => Arc::clone(posterior),
        _ => {
            let posterior = Arc::new(rank_anew(model, memory, seen));
            memory.ranked = Some((seen.to_vec(), Arc::clone(&posterior)));
            posterior
        }
    }
}

fn rank_anew(model: &Model<'_>, memory: &mut Memory, seen: &[Observation]) -> Posterior {
    memory.learn(model, seen);
    let holds = Holds::new(model, &memory.holds, seen);
    let Some(recalled) = memory.recall(seen) else {
        return Posterior::default();
    };
    let evaluation = Evaluation::new(model, recalled, holds);
    let entries = &evaluation.seen.atlas.entries;
    let ln: Vec<f64> = entries.iter().map(|e| evaluation.ln_weight(e)).collect();
    let p = normalised(&ln);
    let mut order: Vec<usize> = (0..entries.len()).collect();
    order.sort_by(|a, b| p[*b].total_cmp(&p[*a]).then(a.cmp(b)));
    let evaluated = |(place, number): (usize, usize)| Evaluated {
        faults: entries[number].hypothesis.faults().to_vec(),
        entry: number,
        p: p[number],
        ways: if place < WITH_WAYS && p[number] >= HARDLY {
            evaluation.ways(&entries[number])
        } else {
            Vec::new()
        },
    };
    let causes = order.into_iter().enumerate().map(evaluated);
    let posterior = Posterior {
        causes: causes.collect(),
        ln_evidence: log_sum(ln.iter().copied()),
    };
    let results = evaluation.holds.results();
    memory.holds.keep(results);
    posterior
}

/// Weighs the likelier ones of ranked causes anew, without ways, by a part of what was seen and learned. A single reading
/// changes the odds of causes by less than lies between these and the others.
pub(crate) fn weigh(
    model: &Model<'_>,
    memory: &Memory,
    seen: &[Observation],
    ranked: &Posterior,
) -> Posterior {
    weigh_unless(model, memory, seen, ranked, f64::INFINITY).unwrap_or_default()
}

/// The same, unless what was seen is at least so likely, by the ln of it.
///
/// That is so once the first causes alone make it as likely: what the others add is never negative, and they need not be
/// looked at.
pub(crate) fn weigh_unless(
    model: &Model<'_>,
    memory: &Memory,
    seen: &[Observation],
    ranked: &Posterior,
    ln_enough: f64,
) -> Option<Posterior> {
    let holds = Holds::new(model, &memory.holds, seen);
    let Some(recalled) = memory.recall(seen) else {
        return Some(Posterior::default());
    };
    let evaluation = Evaluation::new(model, recalled, holds);
    let entries = &evaluation.seen.atlas.entries;
    let likelier = || ranked.causes.iter().filter(|c| c.p >= NEVER_AGAIN);
    let (mut ln, mut share) = (Vec::new(), 0.0);
    for entry in likelier().filter_map(|c| entries.get(c.entry)) {
        let weight = evaluation.ln_weight(entry);
        share += (weight - ln_enough).exp();
        if share >= 1.0 {
            return None;
        }
        ln.push(weight);
    }
    let causes = likelier().zip(normalised(&ln)).map(|(cause, p)| Evaluated {
        p,
        ways: Vec::new(),
        faults: cause.faults.clone(),
        entry: cause.entry,
    });
    Some(Posterior {
        causes: causes.collect(),
        ln_evidence: log_sum(ln.iter().copied()),
    })
}

/// Everything seen, with what it says of each part of a cause.
struct Evaluation<'m> {
    model: &'m Model<'m>,
    seen: Seen<'m>,
    holds: Holds<'m>,
    /// What the meters say of each electric side, worked out where it is asked for.
    metered: Vec<OnceCell<Metered>>,
    /// Likelihood of all readings at work, by behaviour, over the scale.
    works: Vec<f64>,
    /// ln of that scale.
    works_ln: f64,
    /// Probability that vacuum stiffens, and that it softens the mounts.
    softens: [f64; 2],
    /// Likelihood of everything seen at work, by what is told and by behaviour, whatever vacuum does to the mounts.
    at_work: RefCell<Vec<Vec<f64>>>,
    /// How well vacuum sides fit, by what the holds say of them, what they show, what is told, and the work.
    fits: RefCell<FxHashMap<Fit, f64>>,
}

type Fit = (*const AtRest, usize, usize, usize);

impl<'m> Evaluation<'m> {
    fn new(model: &'m Model<'m>, seen: Seen<'m>, holds: Holds<'m>) -> Self {
        let ln: Vec<f64> = (0..seen.atlas.behaviours.len())
            .map(|b| seen.works.iter().map(|row| row[b].ln()).sum())
            .collect();
        let works_ln = ln.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        let softening: f64 = model
            .settings
            .iter()
            .filter(|(s, _)| s.softens)
            .map(|(_, p)| p)
            .sum();
        Self {
            model,
            holds,
            metered: vec![OnceCell::new(); seen.atlas.electrics.sides.len()],
            works: ln.into_iter().map(|ln| (ln - works_ln).exp()).collect(),
            works_ln,
            softens: [1.0 - softening, softening],
            at_work: RefCell::new(vec![Vec::new(); seen.atlas.tolds.len()]),
            fits: RefCell::default(),
            seen,
        }
    }

    fn metered(&self, side: usize) -> &Metered {
        let electrics = &self.seen.atlas.electrics;
        self.metered[side].get_or_init(|| electrics.metered(&electrics.sides[side], &self.seen.meters))
    }

    /// ln of weight × likelihood.
    fn ln_weight(&self, entry: &Entry) -> f64 {
        let faults = entry.hypothesis.faults();
        let metered = self.metered(entry.electric);
        let at_rest = self.holds.of(&entry.vacuum);
        let signs: f64 = self.seen.signs.iter().map(|row| row.of(self.model, faults)).sum();
        let sum: f64 = metered
            .by_work
            .iter()
            .map(|(work, weight)| weight * self.fit(entry, &at_rest, *work))
            .sum();
        entry.hypothesis.ln_weight + signs + metered.ln + at_rest.ln + self.works_ln + sum.ln()
    }

    /// How well a vacuum side fits what the electric side does.
    fn fit(&self, entry: &Entry, at_rest: &Arc<AtRest>, work: usize) -> f64 {
        let key = (Arc::as_ptr(at_rest), entry.shows, entry.told, work);
        if let Some(known) = self.fits.borrow().get(&key) {
            return *known;
        }
        let fit = self.work_out_fit(entry, at_rest, work);
        self.fits.borrow_mut().insert(key, fit);
        fit
    }

    fn work_out_fit(&self, entry: &Entry, at_rest: &AtRest, work: usize) -> f64 {
        let behaviours = self.seen.atlas.shows[entry.shows].of(work);
        let mut known = self.at_work.borrow_mut();
        let Some(of_told) = known.get_mut(entry.told) else {
            return 0.0;
        };
        of_told.resize(self.works.len(), f64::NAN);
        let mut likelihood = |behaviour: u32| {
            let known = &mut of_told[behaviour as usize];
            if known.is_nan() {
                *known = self.likelihood(entry, behaviour).iter().sum();
            }
            *known
        };
        at_rest
            .work
            .iter()
            .zip(behaviours)
            .filter(|(w, _)| **w > 1e-15)
            .map(|(w, b)| w * likelihood(*b))
            .sum()
    }

    /// Likelihood of everything seen at work in one behaviour, where vacuum stiffens and where it softens the mounts, each
    /// with the probability of that.
    fn likelihood(&self, entry: &Entry, behaviour: u32) -> [f64; 2] {
        let of_work = self.works[behaviour as usize];
        let mut likelihood = self.softens.map(|p| p * of_work);
        for row in &self.seen.tolds {
            let told = row.at(self.model, self.seen.atlas, entry.told, behaviour);
            likelihood[0] *= told[0];
            likelihood[1] *= told[1];
        }
        likelihood
    }

    /// Ways that stand for a cause: evenly spread over the weight of all there are.
    fn ways(&self, entry: &Entry) -> Vec<Way> {
        let atlas = self.seen.atlas;
        let at_rest: Arc<AtRest> = self.holds.of(&entry.vacuum);
        let (metered, side) = (
            self.metered(entry.electric),
            &atlas.electrics.sides[entry.electric],
        );
        let fits = |work: usize| -> Vec<[f64; 2]> {
            let behaviours = atlas.shows[entry.shows].of(work);
            let fit = |(w, b): (&f64, &u32)| self.likelihood(entry, *b).map(|l| w * l);
            at_rest.work.iter().zip(behaviours).map(fit).collect()
        };
        let by_work: Vec<(usize, Vec<[f64; 2]>)> = metered
            .by_work
            .iter()
            .map(|(work, _)| (*work, fits(*work)))
            .collect();
        let of_work = |work: usize| by_work.iter().find(|(w, _)| *w == work).map(|(_, fits)| fits);
        let weights: Vec<f64> = side
            .cases
            .iter()
            .zip(&metered.weights)
            .flat_map(|(case, weight)| {
                [0, 1].map(|s| {
                    let fits = of_work(case.work).map_or(0.0, |fits| fits.iter().map(|f| f[s]).sum());
                    weight * fits
                })
            })
            .collect();
        let shows = &atlas.shows[entry.shows];
        let way = |i: usize| {
            let number = quantile(&weights, (i as f64 + 0.5) / WAYS as f64);
            let (case, softens) = (side.cases[number / 2], number % 2 == 1);
            let of_sizes: Vec<f64> = of_work(case.work)
                .map(|fits| fits.iter().map(|f| f[usize::from(softens)]).collect())
                .unwrap_or_default();
            let work = quantile(&of_sizes, spread(i, 1));
            let work = [work / shows.sizes[1], work % shows.sizes[1]];
            let rest = quantile(&at_rest.given(work), spread(i, 2));
            let second = at_rest.points[1].len();
            let rest = [
                at_rest.points[0].sizes[rest / second],
                at_rest.points[1].sizes[rest % second],
            ];
            let at_work = [0, 1].map(|n| {
                if shows.sizes[n] > 1 {
                    atlas.sizes[work[n]]
                } else {
                    rest[n]
                }
            });
            let sized = |of_vacuum: Sizes| -> Sizes {
                let mut sizes = [0.0; 2];
                let (mut vacuum, mut electric) = (of_vacuum.into_iter(), case.sizes.into_iter());
                for (size, fault) in sizes.iter_mut().zip(entry.hypothesis.faults()) {
                    let of = if entry.vacuum.contains(fault) {
                        vacuum.next()
                    } else {
                        electric.next()
                    };
                    *size = of.unwrap_or(0.0);
                }
                sizes
            };
            Way {
                weight: 1.0 / WAYS as f64,
                at_rest: sized(rest),
                at_work: sized(at_work),
                setting: Setting {
                    softens,
                    ..case.setting
                },
            }
        };
        (0..WAYS).map(way).collect()
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
