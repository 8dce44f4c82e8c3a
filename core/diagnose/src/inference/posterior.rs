//! From readings to a ranking of causes: every cause enumerated, what is unknown about it summed over, in log space.

use std::cell::RefCell;
use std::rc::Rc;

use super::bayes::{log_sum, normalised};
use super::causes::Size;
use super::condition::Setting;
use super::model::{Case, Model, World};
use super::observation::Observation;
use super::predict::{depends_at_rest, depends_on_meter};
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

/// One way a cause can be: the size that shows in a test at rest, the size at work, and the setting.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Way {
    pub weight: f64,
    pub at_rest: f64,
    pub at_work: f64,
    pub setting: Setting,
}

impl Evaluated {
    /// The world of this cause with its fault of a size.
    pub fn world(&self, model: &Model<'_>, size: f64) -> World {
        let faults: Vec<(usize, f64)> = self.faults.iter().map(|f| (*f, size)).collect();
        model.world(&faults)
    }
}

/// All causes, the likeliest first.
#[derive(Debug, Clone)]
pub(crate) struct Posterior {
    pub causes: Vec<Evaluated>,
}

/// Points on a standard normal scale that stand for the size of a leak in a test at rest.
const REST_POINTS: usize = 49;
/// The same for a resistance.
const OHM_POINTS: usize = 31;
/// Points enough for a size that nothing has measured.
const FEW_POINTS: usize = 9;
/// How far these points go, in standard deviations.
const REST_REACH: f64 = 3.0;
/// Decimal logarithms of leaks at work, std cm³/min: first, step and number.
const WORK_GRID: (f64, f64, usize) = (0.0, 0.5, 11);
/// Ways of a cause that are kept for planning.
const WAYS: usize = 5;

/// Ranks every cause by what was observed.
///
/// `weigh_each`: also weigh each observation by itself, which an explanation needs.
pub(crate) fn rank(model: &Model<'_>, seen: &[Observation], weigh_each: bool) -> Posterior {
    let evaluation = Evaluation::new(model, seen);
    let mut causes = vec![evaluation.cause(&[], weigh_each)];
    causes.extend((0..model.faults.len()).map(|fault| evaluation.cause(&[fault], weigh_each)));
    let ln: Vec<f64> = causes.iter().map(|c| c.ln_weight).collect();
    for (cause, p) in causes.iter_mut().zip(normalised(&ln)) {
        cause.p = p;
    }
    causes.sort_by(|a, b| b.p.total_cmp(&a.p).then_with(|| a.faults.cmp(&b.faults)));
    Posterior { causes }
}

/// A grid of sizes with the ln of their weights, and the ln likelihoods of the observations that the fault touches.
struct Grid {
    sizes: Vec<f64>,
    ln_weights: Vec<f64>,
    /// One row for each size, or for each setting and in it each size; one column for each observation touched.
    rows: Vec<f64>,
    touched: Vec<usize>,
}

impl Grid {
    fn row(&self, number: usize) -> &[f64] {
        let width = self.touched.len();
        self.rows
            .get(number * width..(number + 1) * width)
            .unwrap_or_default()
    }
}

struct Evaluation<'m> {
    model: &'m Model<'m>,
    seen: &'m [Observation],
    at_rest: Vec<bool>,
    /// ln likelihood of each observation for a sound circuit, by setting.
    sound_ln: Vec<Vec<f64>>,
    /// For each observation and setting the first setting that it can't tell from that one: with sound electrics, and
    /// with others.
    twins: Vec<[Vec<usize>; 2]>,
    /// Probabilities of leaks at work, for each leak at rest; by the spread of leaks.
    links: RefCell<Vec<(Spread, Rc<Link>)>>,
}

/// Probabilities of the sizes at work, for each size at rest.
type Link = Vec<Vec<f64>>;

impl<'m> Evaluation<'m> {
    fn new(model: &'m Model<'m>, seen: &'m [Observation]) -> Self {
        let settings: Vec<Setting> = model.settings.iter().map(|(s, _)| *s).collect();
        let twins: Vec<[Vec<usize>; 2]> = seen
            .iter()
            .map(|o| {
                [false, true].map(|electric| {
                    let twin = |(n, b): (usize, &Setting)| {
                        settings
                            .iter()
                            .take(n)
                            .position(|a| o.is_blind_to(electric, *a, *b))
                            .unwrap_or(n)
                    };
                    settings.iter().enumerate().map(twin).collect()
                })
            })
            .collect();
        let sound = model.world(&[]);
        let cases: Vec<Case<'_>> = settings.iter().map(|s| Case::new(&sound, *s)).collect();
        let sound_ln = seen
            .iter()
            .zip(&twins)
            .map(|(o, [twins, _])| {
                let mut ln: Vec<f64> = Vec::with_capacity(cases.len());
                for (n, case) in cases.iter().enumerate() {
                    ln.push(if twins[n] < n {
                        ln[twins[n]]
                    } else {
                        model.likelihood(o, case).ln()
                    });
                }
                ln
            })
            .collect();
        let at_rest = seen.iter().map(depends_at_rest).collect();
        Self {
            model,
            seen,
            at_rest,
            sound_ln,
            twins,
            links: RefCell::default(),
        }
    }

    fn cause(&self, faults: &[usize], weigh_each: bool) -> Evaluated {
        let model = self.model;
        let size = faults.first().map_or(Size::Fixed, |f| model.faults[*f].size());
        let weight =
            faults.iter().map(|f| model.faults[*f].weight).product::<f64>() * model.data.nothing_wrong;
        let world = |size: f64| model.world(&faults.iter().map(|f| (*f, size)).collect::<Vec<_>>());
        let touched: Vec<bool> = self.seen.iter().map(|o| model.touches(o, faults)).collect();
        let electric = faults.iter().any(|f| model.faults[*f].is_electric());

        let rest = self.rest_grid(size, &touched, &world);
        let work = self.work_grid(size, &touched, electric, &world);
        let sizes = work.sizes.len();
        // ln of everything at work, by setting and size, then by size alone.
        let untouched = |setting: usize| -> f64 {
            (0..self.seen.len())
                .filter(|o| !touched[*o] && !self.at_rest[*o])
                .map(|o| self.sound_ln[o][setting])
                .sum()
        };
        let of_setting: Vec<f64> = model
            .settings
            .iter()
            .enumerate()
            .map(|(n, (_, p))| p.ln() + untouched(n))
            .collect();
        let work_ln: Vec<f64> = (0..of_setting.len() * sizes)
            .map(|i| of_setting[i / sizes] + work.ln_weights[i % sizes] + work.row(i).iter().sum::<f64>())
            .collect();
        let work_top = max(&work_ln);
        let work_e: Vec<f64> = work_ln.iter().map(|ln| (ln - work_top).exp()).collect();
        let by_size: Vec<f64> = (0..sizes)
            .map(|w| work_e.iter().skip(w).step_by(sizes).sum())
            .collect();
        let rest_untouched: f64 = (0..self.seen.len())
            .filter(|o| !touched[*o] && self.at_rest[*o])
            .filter_map(|o| self.sound_ln[o].first())
            .sum();
        let rest_ln: Vec<f64> = rest
            .ln_weights
            .iter()
            .enumerate()
            .map(|(r, w)| w + rest.row(r).iter().sum::<f64>())
            .collect();
        let rest_top = max(&rest_ln);
        let rest_e: Vec<f64> = rest_ln.iter().map(|ln| (ln - rest_top).exp()).collect();

        // The joint of both sizes: the one at rest says what to expect of the one at work.
        let link = self.link(size, &rest.sizes, &work.sizes);
        let mut rest_p = vec![0.0; rest_e.len()];
        let mut work_factor = vec![0.0; sizes];
        for (r, row) in link.iter().enumerate() {
            let mut sum = 0.0;
            for (w, p) in row.iter().enumerate() {
                sum += p * by_size[w];
                work_factor[w] += p * rest_e[r];
            }
            rest_p[r] = rest_e[r] * sum;
        }
        let total: f64 = rest_p.iter().sum::<f64>().max(f64::MIN_POSITIVE);
        rest_p.iter_mut().for_each(|p| *p /= total);
        let work_p: Vec<f64> = work_e
            .iter()
            .enumerate()
            .map(|(i, e)| e * work_factor[i % sizes] / total)
            .collect();

        let ln_given_others = if weigh_each {
            self.given_others((&rest, &rest_p), (&work, &work_p))
        } else {
            Vec::new()
        };
        let ln_weight = weight.ln() + rest_untouched + rest_top + work_top + total.ln();
        let ways = self.ways((&rest.sizes, &rest_p), (&work.sizes, &work_p));
        Evaluated {
            faults: faults.to_vec(),
            p: 0.0,
            ln_weight,
            ln_given_others,
            ways,
        }
    }

    /// For each observation the ln of its probability, all others given: 1 over the mean of 1/likelihood.
    fn given_others(&self, rest: (&Grid, &[f64]), work: (&Grid, &[f64])) -> Vec<f64> {
        let sizes = work.0.sizes.len();
        let by_setting: Vec<f64> = work.1.chunks(sizes).map(|p| p.iter().sum()).collect();
        (0..self.seen.len())
            .map(|o| {
                let (grid, p) = if self.at_rest[o] { rest } else { work };
                let inverse: f64 = match grid.touched.iter().position(|t| *t == o) {
                    Some(column) => p
                        .iter()
                        .enumerate()
                        .map(|(i, p)| p * (-grid.row(i)[column]).exp())
                        .sum(),
                    None => by_setting
                        .iter()
                        .zip(&self.sound_ln[o])
                        .map(|(p, ln)| p * (-ln).exp())
                        .sum(),
                };
                -inverse.ln()
            })
            .collect()
    }

    /// The sizes at rest with the likelihoods of the holds.
    fn rest_grid(&self, size: Size, touched: &[bool], world: &dyn Fn(f64) -> World) -> Grid {
        let touched: Vec<usize> = (0..self.seen.len())
            .filter(|o| touched[*o] && self.at_rest[*o])
            .collect();
        let (sizes, ln_weights) = match size {
            Size::Leak(spread) => points(
                spread,
                if touched.is_empty() {
                    FEW_POINTS
                } else {
                    REST_POINTS
                },
            ),
            Size::Fixed | Size::Resistance(_) => (vec![0.0], vec![0.0]),
        };
        let setting = self.model.settings.first().map(|(s, _)| *s).unwrap_or_default();
        let mut rows = Vec::with_capacity(sizes.len() * touched.len());
        if !touched.is_empty() {
            for size in &sizes {
                let world = world(*size);
                let case = Case::new(&world, setting);
                rows.extend(
                    touched
                        .iter()
                        .map(|o| self.model.likelihood(&self.seen[*o], &case).ln()),
                );
            }
        }
        Grid {
            sizes,
            ln_weights,
            rows,
            touched,
        }
    }

    /// For each setting, the sizes at work with the likelihoods of everything but the holds.
    fn work_grid(&self, size: Size, touched: &[bool], electric: bool, world: &dyn Fn(f64) -> World) -> Grid {
        let touched: Vec<usize> = (0..self.seen.len())
            .filter(|o| touched[*o] && !self.at_rest[*o])
            .collect();
        let (sizes, ln_weights) = match size {
            Size::Fixed => (vec![0.0], vec![0.0]),
            Size::Resistance(spread) => {
                let metered = touched.iter().any(|o| depends_on_meter(&self.seen[*o]));
                points(spread, if metered { OHM_POINTS } else { FEW_POINTS })
            }
            Size::Leak(_) => {
                let (first, step, number) = WORK_GRID;
                (
                    (0..number).map(|i| 10f64.powf(first + step * i as f64)).collect(),
                    vec![0.0; number],
                )
            }
        };
        let settings = &self.model.settings;
        let width = touched.len();
        let mut rows = vec![0.0; settings.len() * sizes.len() * width];
        if width > 0 {
            for (at, size) in sizes.iter().enumerate() {
                let world = world(*size);
                for (number, (setting, _)) in settings.iter().enumerate() {
                    let case = Case::new(&world, *setting);
                    for (column, o) in touched.iter().enumerate() {
                        // What this setting doesn't change against an earlier one is taken over.
                        let twin = self.twins[*o][usize::from(electric)][number];
                        rows[(number * sizes.len() + at) * width + column] = if twin < number {
                            rows[(twin * sizes.len() + at) * width + column]
                        } else {
                            self.model.likelihood(&self.seen[*o], &case).ln()
                        };
                    }
                }
            }
        }
        Grid {
            sizes,
            ln_weights,
            rows,
            touched,
        }
    }

    /// Probabilities of the sizes at work for each size at rest.
    fn link(&self, size: Size, at_rest: &[f64], at_work: &[f64]) -> Rc<Link> {
        let Size::Leak(spread) = size else {
            return Rc::new(vec![vec![1.0; at_work.len()]; at_rest.len()]);
        };
        let known = |(s, link): &&(Spread, Rc<Link>)| *s == spread && link.len() == at_rest.len();
        if let Some((_, link)) = self.links.borrow().iter().find(known) {
            return Rc::clone(link);
        }
        let times = self.model.data.physics.leak_at_work_times.0;
        let row = |rest: &f64| {
            let weight =
                |work: &f64| (-0.5 * ((work / rest / times.median).log10() / times.log10_sd).powi(2)).exp();
            let row: Vec<f64> = at_work.iter().map(weight).collect();
            let total: f64 = row.iter().sum::<f64>().max(f64::MIN_POSITIVE);
            row.into_iter().map(|w| w / total).collect()
        };
        let link = Rc::new(at_rest.iter().map(row).collect::<Link>());
        self.links.borrow_mut().push((spread, Rc::clone(&link)));
        link
    }

    fn ways(&self, rest: (&[f64], &[f64]), work: (&[f64], &[f64])) -> Vec<Way> {
        let (work_sizes, work_p) = work;
        let mut order: Vec<usize> = (0..work_p.len()).collect();
        order.sort_by(|a, b| work_p[*b].total_cmp(&work_p[*a]));
        order.truncate(WAYS);
        let kept: f64 = order
            .iter()
            .map(|w| work_p[*w])
            .sum::<f64>()
            .max(f64::MIN_POSITIVE);
        let leaks = rest.0.len() > 1;
        let way = |(i, w): (usize, &usize)| {
            let at_work = work_sizes[w % work_sizes.len()];
            let share = (i as f64 + 0.5) / order.len() as f64;
            let at_rest = if leaks {
                rest.0[quantile(rest.1, share)]
            } else {
                at_work
            };
            Way {
                weight: work_p[*w] / kept,
                at_rest,
                at_work,
                setting: self.model.settings[w / work_sizes.len()].0,
            }
        };
        order.iter().enumerate().map(way).collect()
    }
}

/// Sizes at equal steps of the normal scale, and the ln of their weights.
fn points(spread: Spread, number: usize) -> (Vec<f64>, Vec<f64>) {
    let step = 2.0 * REST_REACH / (number - 1) as f64;
    let deviates: Vec<f64> = (0..number).map(|i| -REST_REACH + step * i as f64).collect();
    let total = log_sum(deviates.iter().map(|z| -0.5 * z * z));
    (
        deviates.iter().map(|z| spread.at(*z)).collect(),
        deviates.iter().map(|z| -0.5 * z * z - total).collect(),
    )
}

/// The number of the point at which a share of the weight is reached.
fn quantile(weights: &[f64], share: f64) -> usize {
    let mut sum = 0.0;
    let reached = weights.iter().position(|w| {
        sum += w;
        sum >= share
    });
    reached.unwrap_or(weights.len().saturating_sub(1))
}

fn max(values: &[f64]) -> f64 {
    values.iter().copied().fold(f64::NEG_INFINITY, f64::max)
}
