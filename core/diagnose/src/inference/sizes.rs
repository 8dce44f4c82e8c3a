//! What about a fault differs from car to car, as points with weights.

use std::sync::Arc;

use super::causes::{Fault, Size};
use crate::faults::Spread;

/// Steps of a decade between the sizes of leaks at rest.
const REST_STEPS: f64 = 20.0;
/// The same where two leaks are summed over at once.
const REST_STEPS_OF_TWO: f64 = 10.0;
/// How far points go, in standard deviations.
const REACH: f64 = 3.0;
/// Decimal logarithms of leaks at work, std cm³/min: close where a valve's passage makes the vacuum change most.
const WORK: [f64; 20] = [
    0.5, 1.5, 2.2, 2.6, 2.85, 3.05, 3.2, 3.3, 3.4, 3.5, 3.6, 3.7, 3.8, 3.9, 4.0, 4.1, 4.2, 4.35, 4.6, 5.0,
];
/// The same for sums of leaks: first, steps of a decade, number.
const FINE: (f64, f64, usize) = (0.5, 20.0, 101);

/// Sizes with weights that sum to 1.
#[derive(Debug, Clone)]
pub(super) struct Points {
    pub sizes: Vec<f64>,
    pub weights: Vec<f64>,
}

impl Points {
    /// The one point of what has no size.
    pub fn none() -> Self {
        Self {
            sizes: vec![0.0],
            weights: vec![1.0],
        }
    }

    /// The one point of what is taken as usual.
    pub fn one(size: f64) -> Self {
        Self {
            sizes: vec![size],
            weights: vec![1.0],
        }
    }

    /// Leaks at rest. The points of all spreads lie on one grid, so that sums of leaks do, too, or nearly.
    pub fn of_leak(spread: Spread, alone: bool) -> Self {
        let steps = if alone { REST_STEPS } else { REST_STEPS_OF_TWO };
        let middle = spread.median.log10();
        let first = ((middle - REACH * spread.log10_sd) * steps).ceil();
        let last = ((middle + REACH * spread.log10_sd) * steps).floor();
        let number = (last - first) as usize + 1;
        let at = |i: usize| (first + i as f64) / steps;
        Self::weighted(
            (0..number)
                .map(|i| (10f64.powf(at(i)), (at(i) - middle) / spread.log10_sd))
                .collect(),
        )
    }

    /// `number` values of a log-normal spread, at equal steps.
    pub fn spread_over(spread: Spread, number: usize) -> Self {
        let step = 2.0 * REACH / (number.max(2) - 1) as f64;
        Self::weighted(
            (0..number.max(2))
                .map(|i| -REACH + step * i as f64)
                .map(|z| (spread.at(z), z))
                .collect(),
        )
    }

    /// From sizes with their standard normal deviates.
    fn weighted(points: Vec<(f64, f64)>) -> Self {
        let weights: Vec<f64> = points.iter().map(|(_, z)| (-0.5 * z * z).exp()).collect();
        let total: f64 = weights.iter().sum();
        Self {
            sizes: points.into_iter().map(|(size, _)| size).collect(),
            weights: weights.into_iter().map(|w| w / total).collect(),
        }
    }

    /// How many there are.
    pub fn len(&self) -> usize {
        self.sizes.len()
    }
}

/// The sizes at rest that leaks can have, and which sizes at work they go with.
pub(super) struct LeakSizes {
    pub spreads: Vec<Spread>,
    /// For each spread, beside another leak and alone.
    pub points: Vec<[(Arc<Points>, Arc<Link>); 2]>,
}

impl LeakSizes {
    /// Of some faults. `times`: by how much more leaks at work.
    pub fn new(faults: &[Fault], times: Spread) -> Self {
        let mut spreads: Vec<Spread> = Vec::new();
        for fault in faults {
            if let Size::Leak(spread) = fault.size()
                && !spreads.contains(&spread)
            {
                spreads.push(spread);
            }
        }
        let points = |spread: &Spread| {
            [false, true].map(|alone| {
                let of_leak = Points::of_leak(*spread, alone);
                let link = link(&of_leak, times);
                (Arc::new(of_leak), Arc::new(link))
            })
        };
        Self {
            points: spreads.iter().map(points).collect(),
            spreads,
        }
    }
}

/// Sizes of leaks at work.
pub(super) fn at_work() -> Vec<f64> {
    WORK.iter().map(|log| 10f64.powf(*log)).collect()
}

/// Sizes of leaks at work, finer and at equal steps.
pub(super) fn fine_at_work() -> Vec<f64> {
    let (first, steps, number) = FINE;
    (0..number)
        .map(|i| 10f64.powf(first + i as f64 / steps))
        .collect()
}

/// The number of the fine size that is nearest.
pub(super) fn fine_number(size: f64) -> usize {
    let (first, steps, number) = FINE;
    (((size.log10() - first) * steps).round().max(0.0) as usize).min(number - 1)
}

/// Probability of each size at work, for each size at rest.
pub(super) type Link = Vec<Vec<f64>>;

/// What goes with what: a split opens under load and heat.
pub(super) fn link(at_rest: &Points, times: Spread) -> Link {
    let width = |i: usize| {
        let (below, above) = (i.saturating_sub(1), (i + 1).min(WORK.len() - 1));
        0.5 * (WORK[above] - WORK[below])
    };
    let row = |rest: &f64| {
        let middle = (rest * times.median).log10();
        let weight =
            |(i, work): (usize, &f64)| width(i) * (-0.5 * ((work - middle) / times.log10_sd).powi(2)).exp();
        let row: Vec<f64> = WORK.iter().enumerate().map(weight).collect();
        let total: f64 = row.iter().sum::<f64>().max(f64::MIN_POSITIVE);
        row.into_iter().map(|w| w / total).collect()
    };
    at_rest.sizes.iter().map(row).collect()
}
