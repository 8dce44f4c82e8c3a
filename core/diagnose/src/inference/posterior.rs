//! From readings to a ranking of causes: every cause enumerated, what is unknown about it summed over, in log space.

use super::causes::Size;
use super::condition::Setting;
use super::model::{Model, World};
use super::observation::Observation;
use super::predict::{Depends, depends};
use crate::faults::Spread;

/// How well one cause fits everything that was read.
#[derive(Debug, Clone)]
pub(crate) struct Evaluated {
    /// Its faults, as numbers in [`Model::faults`]; none for "nothing is wrong".
    pub faults: Vec<usize>,
    /// Its probability.
    pub p: f64,
    /// ln of weight × likelihood.
    pub ln_weight: f64,
    /// For each observation, ln of its probability under this cause, given all others.
    pub ln_given_others: Vec<f64>,
    /// A few ways the cause can be, with their weights: what is unknown about it, as the readings leave it.
    pub ways: Vec<Way>,
}

/// One way a cause can be.
#[derive(Debug, Clone)]
pub(crate) struct Way {
    pub weight: f64,
    /// As it shows in a test at rest.
    pub at_rest: World,
    /// As it shows at work.
    pub at_work: World,
    pub setting: Setting,
}

/// All causes, the likeliest first.
#[derive(Debug, Clone)]
pub(crate) struct Posterior {
    pub causes: Vec<Evaluated>,
}

/// Points on a standard normal scale that stand for a size read in a test at rest.
const REST_POINTS: usize = 49;
/// How far these points go, in standard deviations.
const REST_REACH: f64 = 3.0;
/// Decimal logarithms of leaks at work, std cm³/min: first, step and number.
const WORK_GRID: (f64, f64, usize) = (0.0, 0.3, 17);
/// Ways of a cause that are kept for planning.
const WAYS: usize = 5;

/// Ranks every cause by what was observed.
pub(crate) fn rank(model: &Model<'_>, seen: &[Observation]) -> Posterior {
    let evaluation = Evaluation::new(model, seen);
    let mut causes = vec![evaluation.cause(&[])];
    causes.extend((0..model.faults.len()).map(|fault| evaluation.cause(&[fault])));
    let top = causes
        .iter()
        .map(|c| c.ln_weight)
        .fold(f64::NEG_INFINITY, f64::max);
    let total: f64 = causes.iter().map(|c| (c.ln_weight - top).exp()).sum();
    for cause in &mut causes {
        cause.p = (cause.ln_weight - top).exp() / total;
    }
    causes.sort_by(|a, b| b.p.total_cmp(&a.p).then_with(|| a.faults.cmp(&b.faults)));
    Posterior { causes }
}

/// One step of the sum over what is unknown: a size with its weight, and the ln likelihoods of the observations.
struct Step {
    size: f64,
    ln_weight: f64,
    ln_likelihoods: Vec<f64>,
}

struct Evaluation<'m> {
    model: &'m Model<'m>,
    seen: &'m [Observation],
    depends: Vec<Depends>,
    /// ln likelihood of each observation for a sound circuit, by setting.
    sound_ln: Vec<Vec<f64>>,
}

impl<'m> Evaluation<'m> {
    fn new(model: &'m Model<'m>, seen: &'m [Observation]) -> Self {
        let sound = model.world(&[]);
        let depends: Vec<Depends> = seen.iter().map(|o| depends(&o.seen, o.test.kind)).collect();
        let sound_ln = seen
            .iter()
            .map(|o| {
                model
                    .settings
                    .iter()
                    .map(|(s, _)| model.likelihood(o, &sound, *s).ln())
                    .collect()
            })
            .collect();
        Self {
            model,
            seen,
            depends,
            sound_ln,
        }
    }

    fn cause(&self, faults: &[usize]) -> Evaluated {
        let model = self.model;
        let size = faults.first().map_or(Size::Fixed, |f| model.faults[*f].size());
        let weight =
            faults.iter().map(|f| model.faults[*f].weight).product::<f64>() * model.data.nothing_wrong;
        let world = |size: f64| model.world(&faults.iter().map(|f| (*f, size)).collect::<Vec<_>>());
        let touched: Vec<bool> = self.seen.iter().map(|o| model.touches(o, faults)).collect();

        let rest = self.rest_steps(size, &touched, &world);
        let work = self.work_steps(size, &touched, &world);
        let settings = &model.settings;
        let ln_settings: Vec<f64> = settings.iter().map(|(_, p)| p.ln()).collect();

        let sum = |ln: &[f64]| ln.iter().sum::<f64>();
        let rest_ln: Vec<f64> = rest
            .iter()
            .map(|s| s.ln_weight + sum(&s.ln_likelihoods))
            .collect();
        let work_ln: Vec<f64> = work
            .iter()
            .map(|(setting, s)| ln_settings[*setting] + s.ln_weight + sum(&s.ln_likelihoods))
            .collect();
        let steps_of_setting = work.len() / settings.len();
        let by_size: Vec<f64> = (0..steps_of_setting)
            .map(|w| log_sum((0..settings.len()).map(|s| work_ln[s * steps_of_setting + w])))
            .collect();
        // Joint of both sizes; the setting hangs on the size at work alone.
        let mut rest_total = vec![f64::NEG_INFINITY; rest.len()];
        let mut work_factor = vec![f64::NEG_INFINITY; steps_of_setting];
        for (r, total) in rest_total.iter_mut().enumerate() {
            let link = self.link(size, rest[r].size, &work[..steps_of_setting]);
            for (w, link) in link.iter().enumerate() {
                *total = log_add(*total, link + by_size[w]);
                work_factor[w] = log_add(work_factor[w], link + rest_ln[r]);
            }
            *total += rest_ln[r];
        }
        let evidence = log_sum(rest_total.iter().copied());
        let rest_p: Vec<f64> = rest_total.iter().map(|ln| (ln - evidence).exp()).collect();
        let work_p: Vec<f64> = work_ln
            .iter()
            .enumerate()
            .map(|(i, ln)| (ln + work_factor[i % steps_of_setting] - evidence).exp())
            .collect();

        let ln_given_others = (0..self.seen.len())
            .map(|o| {
                let inverse: f64 = if self.depends[o] == Depends::Rest {
                    rest.iter()
                        .zip(&rest_p)
                        .map(|(s, p)| p * (-s.ln_likelihoods[o]).exp())
                        .sum()
                } else {
                    work.iter()
                        .zip(&work_p)
                        .map(|((_, s), p)| p * (-s.ln_likelihoods[o]).exp())
                        .sum()
                };
                -inverse.ln()
            })
            .collect();
        let ways = self.ways(&rest, &rest_p, &work, &work_p, &world);
        Evaluated {
            faults: faults.to_vec(),
            p: 0.0,
            ln_weight: weight.ln() + evidence,
            ln_given_others,
            ways,
        }
    }

    /// ln of the probabilities of the sizes at work, when the size at rest is known.
    fn link(&self, size: Size, at_rest: f64, work: &[(usize, Step)]) -> Vec<f64> {
        let Size::Leak(_) = size else {
            return vec![0.0; work.len()];
        };
        let times = self.model.data.physics.leak_at_work_times.0;
        let ln: Vec<f64> = work
            .iter()
            .map(|(_, step)| ((step.size / at_rest / times.median).log10() / times.log10_sd).powi(2) * -0.5)
            .collect();
        let total = log_sum(ln.iter().copied());
        ln.into_iter().map(|l| l - total).collect()
    }

    /// The sizes at rest with the ln likelihoods of the holds.
    fn rest_steps(&self, size: Size, touched: &[bool], world: &dyn Fn(f64) -> World) -> Vec<Step> {
        let points = match size {
            Size::Leak(spread) => points(spread, REST_POINTS),
            Size::Fixed | Size::Resistance(_) => vec![(0.0, 0.0)],
        };
        points
            .into_iter()
            .map(|(size, ln_weight)| {
                let world = world(size);
                let ln = |o: usize| match (self.depends[o], touched[o]) {
                    (Depends::Rest, true) => self.model.settings.first().map_or(0.0, |(s, _)| {
                        self.model.likelihood(&self.seen[o], &world, *s).ln()
                    }),
                    (Depends::Rest, false) => self.sound_ln[o].first().copied().unwrap_or(0.0),
                    _ => 0.0,
                };
                Step {
                    size,
                    ln_weight,
                    ln_likelihoods: (0..self.seen.len()).map(ln).collect(),
                }
            })
            .collect()
    }

    /// For each setting, the sizes at work with the ln likelihoods of everything but the holds.
    fn work_steps(&self, size: Size, touched: &[bool], world: &dyn Fn(f64) -> World) -> Vec<(usize, Step)> {
        let points = match size {
            Size::Fixed => vec![(0.0, 0.0)],
            Size::Resistance(spread) => points(spread, REST_POINTS),
            Size::Leak(_) => {
                let (first, step, number) = WORK_GRID;
                (0..number)
                    .map(|i| (10f64.powf(first + step * i as f64), 0.0))
                    .collect()
            }
        };
        let worlds: Vec<World> = points.iter().map(|(size, _)| world(*size)).collect();
        let mut steps = Vec::with_capacity(points.len() * self.model.settings.len());
        for (setting_number, (setting, _)) in self.model.settings.iter().enumerate() {
            for ((size, ln_weight), world) in points.iter().zip(&worlds) {
                let ln = |o: usize| match (self.depends[o], touched[o]) {
                    (Depends::Rest, _) => 0.0,
                    (_, false) => self.sound_ln[o][setting_number],
                    (_, true) => self.model.likelihood(&self.seen[o], world, *setting).ln(),
                };
                let ln_likelihoods = (0..self.seen.len()).map(ln).collect();
                steps.push((
                    setting_number,
                    Step {
                        size: *size,
                        ln_weight: *ln_weight,
                        ln_likelihoods,
                    },
                ));
            }
        }
        steps
    }

    fn ways(
        &self,
        rest: &[Step],
        rest_p: &[f64],
        work: &[(usize, Step)],
        work_p: &[f64],
        world: &dyn Fn(f64) -> World,
    ) -> Vec<Way> {
        let mut order: Vec<usize> = (0..work.len()).collect();
        order.sort_by(|a, b| work_p[*b].total_cmp(&work_p[*a]));
        order.truncate(WAYS);
        let kept: f64 = order.iter().map(|w| work_p[*w]).sum();
        let leaks = rest.len() > 1;
        order
            .iter()
            .enumerate()
            .map(|(i, w)| {
                let (setting, step) = &work[*w];
                let at_work = if leaks || step.size > 0.0 {
                    world(step.size)
                } else {
                    world(0.0)
                };
                let share = (i as f64 + 0.5) / order.len() as f64;
                let at_rest = if leaks {
                    world(rest[quantile(rest_p, share)].size)
                } else {
                    at_work.clone()
                };
                Way {
                    weight: work_p[*w] / kept.max(f64::MIN_POSITIVE),
                    at_rest,
                    at_work,
                    setting: self.model.settings[*setting].0,
                }
            })
            .collect()
    }
}

/// Sizes at equal steps of the normal scale, with the ln of their weights.
fn points(spread: Spread, number: usize) -> Vec<(f64, f64)> {
    let step = 2.0 * REST_REACH / (number - 1) as f64;
    let deviates: Vec<f64> = (0..number).map(|i| -REST_REACH + step * i as f64).collect();
    let total = log_sum(deviates.iter().map(|z| -0.5 * z * z));
    deviates
        .into_iter()
        .map(|z| (spread.at(z), -0.5 * z * z - total))
        .collect()
}

/// The number of the point at which a share of the weight is reached.
fn quantile(weights: &[f64], share: f64) -> usize {
    let mut sum = 0.0;
    for (i, w) in weights.iter().enumerate() {
        sum += w;
        if sum >= share {
            return i;
        }
    }
    weights.len().saturating_sub(1)
}

fn log_add(a: f64, b: f64) -> f64 {
    let (high, low) = if a > b { (a, b) } else { (b, a) };
    if low == f64::NEG_INFINITY {
        high
    } else {
        high + (low - high).exp().ln_1p()
    }
}

/// ln of a sum, of terms given by their ln.
pub(crate) fn log_sum(terms: impl Iterator<Item = f64> + Clone) -> f64 {
    let top = terms.clone().fold(f64::NEG_INFINITY, f64::max);
    if top == f64::NEG_INFINITY {
        top
    } else {
        top + terms.map(|t| (t - top).exp()).sum::<f64>().ln()
    }
}
