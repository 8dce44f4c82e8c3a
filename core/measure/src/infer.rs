//! From readings to the leak.

use crate::element::LeakForm;
use crate::hold::{HoldData, HoldError, HoldSetup};
use crate::leak_rate::LeakRate;
use crate::likelihood::{FORMS, Likelihood, Peak, prior_range};
use crate::log_grid::{LogGrid, count};
use crate::normal::normal_quantile;
use crate::posterior::LeakPosterior;
use crate::spot::Reading;

/// Cells of the grid over the part of the range that the readings leave open.
const CELLS: usize = 90;
/// Below `e^-REACH` of the best likelihood nothing is kept.
const REACH: f64 = 10.0;
/// `2·ln` of a likelihood ratio beyond which zero is outside the 95 % interval (χ², one degree of freedom).
const PROOF: f64 = 3.841_458_8;

/// Infers the leak from a hold test.
///
/// # Errors
/// [`HoldError`]: no reading after the start, figures that are not finite or times not positive, no vacuum at
/// the start, more vacuum than the air allows, or a setup out of range. Readings that contradict the physics
/// (a needle that rises) are no error: they show in [`LeakPosterior::strain`].
pub fn infer_leak(setup: &HoldSetup, data: &HoldData) -> Result<LeakPosterior, HoldError> {
    setup.check()?;
    let (start, readings) = usable(setup, data)?;
    let likelihood = Likelihood::new(setup, start, &readings, data.kind);
    let total = total_likelihood(setup, &likelihood);
    let own = match setup.tester {
        Some(tester) if tester.value > 0.0 || tester.u > 0.0 => total.without_tester(setup, tester),
        _ => total,
    };
    Ok(own.into_posterior(setup, start, likelihood.stretch))
}

/// Start and readings in Pa, in order of time.
fn usable(setup: &HoldSetup, data: &HoldData) -> Result<(f64, Vec<Reading>), HoldError> {
    let start = data.start.value;
    let mut readings: Vec<Reading> = data
        .points
        .iter()
        .map(|(time, vacuum)| Reading {
            seconds: time.value,
            vacuum: vacuum.value,
        })
        .collect();
    let finite = |r: &Reading| r.seconds.is_finite() && r.seconds >= 0.0 && r.vacuum.is_finite();
    if !start.is_finite() || !readings.iter().all(finite) {
        return Err(HoldError::NotFinite);
    }
    readings.retain(|r| r.seconds > 0.0);
    readings.sort_by(|a, b| a.seconds.total_cmp(&b.seconds));
    if readings.is_empty() {
        return Err(HoldError::NoReading);
    }
    let unit = setup.gauge.unit_pa();
    if start < 2.0 * setup.gauge.read_to * unit {
        return Err(HoldError::NoVacuum);
    }
    let allowed = setup.ambient.value + (2.0 * setup.gauge.grade_limit(setup.gauge.span)) * unit;
    if readings.iter().map(|r| r.vacuum).fold(start, f64::max) > allowed {
        return Err(HoldError::AboveAmbient);
    }
    Ok((start, readings))
}

/// Likelihood of both forms on one grid of speeds, and how it compares with no leak.
struct Forms {
    hole: LogGrid,
    viscous: LogGrid,
    proved: bool,
}

fn total_likelihood(setup: &HoldSetup, likelihood: &Likelihood) -> Forms {
    let (low, high) = prior_range(setup);
    let top = likelihood
        .peaks
        .iter()
        .map(|peak| peak.ln)
        .fold(f64::NEG_INFINITY, f64::max);
    // The two forms may explain the same readings by leaks far apart: each has its own range.
    let (mut left, mut right) = (high, low);
    let explaining = FORMS
        .into_iter()
        .zip(likelihood.peaks)
        .filter(|(_, peak)| peak.ln > top - REACH);
    for (form, peak) in explaining {
        let (from, to) = open_range(&|at: f64| likelihood.ln(form, at.exp()), peak, (low, high));
        left = left.min(from);
        right = right.max(to);
    }
    let step = (right - left) / count(CELLS);
    let first = left + step / 2.0;
    let ln_of = |form| -> Vec<f64> {
        (0..CELLS)
            .map(|i| likelihood.ln(form, (first + step * count(i)).exp()))
            .collect()
    };
    let (hole, viscous) = (ln_of(LeakForm::Hole), ln_of(LeakForm::Viscous));
    let top = hole
        .iter()
        .chain(&viscous)
        .copied()
        .fold(f64::NEG_INFINITY, f64::max);
    let none = likelihood.ln(LeakForm::Hole, 1e-12);
    let grid = |lns: Vec<f64>| LogGrid {
        first,
        step,
        mass: lns.into_iter().map(|ln| (ln - top).exp()).collect(),
    };
    Forms {
        hole: grid(hole),
        viscous: grid(viscous),
        proved: 2.0 * (top - none) > PROOF,
    }
}

/// The range around the best speed outside which a likelihood is negligible, all as logarithms.
fn open_range(ln_likelihood: &impl Fn(f64) -> f64, peak: Peak, range: (f64, f64)) -> (f64, f64) {
    let closed = |ln_speed: f64| ln_likelihood(ln_speed) <= peak.ln - REACH;
    let edge = |sign: f64, end: f64| {
        let (mut open, mut width) = (0.0, 0.01);
        loop {
            let ln_speed = peak.at + sign * width;
            if sign * (ln_speed - end) >= 0.0 {
                return end;
            }
            if closed(ln_speed) {
                break;
            }
            open = width;
            width *= 1.7;
        }
        for _ in 0..4 {
            let middle = f64::midpoint(open, width);
            if closed(peak.at + sign * middle) {
                width = middle
            } else {
                open = middle
            }
        }
        peak.at + sign * width
    };
    let (left, right) = (edge(-1.0, range.0), edge(1.0, range.1));
    if right - left > 1e-3 {
        (left, right)
    } else {
        (peak.at - 5e-4, peak.at + 5e-4)
    }
}

impl Forms {
    /// Takes the tester's own leak off: likelihood of the part's speed, over what is known of the tester's.
    fn without_tester(&self, setup: &HoldSetup, tester: crate::Measured) -> Self {
        let volume = setup.volume.value;
        let (low, _) = prior_range(setup);
        let quantiles = [0.05, 0.15, 0.25, 0.35, 0.45, 0.55, 0.65, 0.75, 0.85, 0.95];
        let off: Vec<f64> = quantiles
            .iter()
            .map(|p| ((tester.value + tester.u * normal_quantile(*p)) / volume).max(0.0))
            .collect();
        let right = self.hole.first + self.hole.step * (count(self.hole.mass.len()) - 0.5);
        let step = ((right - low) / count(CELLS)).max(1e-3);
        let first = low + step / 2.0;
        let part = |grid: &LogGrid| LogGrid {
            first,
            step,
            mass: (0..CELLS)
                .map(|i| {
                    let own = (first + step * count(i)).exp();
                    off.iter().map(|q| seen(grid, (own + q).ln())).sum::<f64>()
                })
                .collect(),
        };
        let (hole, viscous) = (part(&self.hole), part(&self.viscous));
        let top = hole.mass.iter().chain(&viscous.mass).copied().fold(0.0, f64::max);
        let none = off
            .iter()
            .map(|q| if *q > 0.0 { seen(&self.hole, q.ln()) } else { 0.0 })
            .sum::<f64>();
        let proved = self.proved && (none <= 0.0 || 2.0 * (top / none).ln() > PROOF);
        Self {
            hole,
            viscous,
            proved,
        }
    }

    fn into_posterior(self, setup: &HoldSetup, start: f64, stretch: f64) -> LeakPosterior {
        let hole: f64 = self.hole.mass.iter().sum();
        let viscous: f64 = self.viscous.mass.iter().sum();
        let p_hole = if hole + viscous > 0.0 {
            hole / (hole + viscous)
        } else {
            0.5
        };
        let mass = self
            .hole
            .mass
            .iter()
            .zip(&self.viscous.mass)
            .map(|(a, b)| a + b)
            .collect();
        let speed = LogGrid { mass, ..self.hole }.normalised();
        let share = setup.volume.relative_u().hypot(setup.gauge.relative_u_slope());
        let sigma = (share * share).ln_1p().sqrt().min(1.0);
        let to_std_cm3_min = LeakRate::from_std_m3_s(setup.volume.value).std_cm3_min();
        LeakPosterior {
            leak: speed.blurred(sigma).scaled(to_std_cm3_min),
            speed,
            p_hole,
            proved: self.proved,
            tester_speed: setup
                .tester
                .map_or(0.0, |t| t.value.max(0.0) / setup.volume.value),
            ambient: setup.ambient.value,
            kelvin: setup.air.value,
            start,
            stretch,
        }
    }
}

/// The likelihood that a grid holds at `ln`: flat to the left of it, nothing to the right.
fn seen(grid: &LogGrid, ln: f64) -> f64 {
    grid.density(ln) * grid.step
}
