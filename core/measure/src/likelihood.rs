//! How well a trial leak explains the readings, by whichever way of reading they came.

use crate::element::LeakForm;
use crate::fall_curve::{speed_factor, time_between};
use crate::hold::{HoldKind, HoldSetup};
use crate::leak_rate::LeakRate;
use crate::spot::{Reading, SpotLikelihood};
use crate::trace::TraceLikelihood;

/// Both forms, in the order in which everything about them is kept.
pub(crate) const FORMS: [LeakForm; 2] = [LeakForm::Hole, LeakForm::Viscous];
/// The prior's range, std cm³/min: below, no gauge sees it in an hour; above, no vacuum can be built at all.
const PRIOR: (f64, f64) = (0.2, 20_000.0);
/// Readings beyond which the blocks of [`crate::trace`] serve better than nodes.
const MOST_SPOTS: usize = 6;
/// Steps over the prior's range of the first search.
const COARSE: u32 = 12;
/// Best logarithm of a spot likelihood below which the readings contradict the physics.
const CONTRADICTION: f64 = -14.0;

/// The best trial of one form.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Peak {
    /// Logarithm of the likelihood there.
    pub(crate) ln: f64,
    /// Logarithm of leak over volume.
    pub(crate) at: f64,
}

enum Source {
    Spot(SpotLikelihood),
    Trace(TraceLikelihood),
}

/// The readings of one hold test, ready for trial leaks.
pub(crate) struct Likelihood {
    source: Source,
    /// How many times wider than gauge and reader explain the errors had to be taken.
    pub(crate) stretch: f64,
    /// The best of each form.
    pub(crate) peaks: [Peak; 2],
}

impl Likelihood {
    /// `readings` in order of time, at least one.
    pub(crate) fn new(setup: &HoldSetup, start: f64, readings: &[Reading], kind: HoldKind) -> Self {
        let dense = matches!(kind, HoldKind::Trace { .. }) && readings.len() > 2;
        if dense || readings.len() > MOST_SPOTS {
            Self::of_trace(setup, start, readings)
        } else {
            Self::of_spots(setup, start, readings)
        }
    }

    fn of_trace(setup: &HoldSetup, start: f64, readings: &[Reading]) -> Self {
        let trace = TraceLikelihood::new(setup, start, readings);
        // A few readings, evenly over the trace, are enough to find the neighbourhood.
        let every = readings.len().div_ceil(4);
        let few: Vec<Reading> = readings.iter().rev().step_by(every).copied().collect();
        let mut peaks = search(setup, start, &few, |form, speed| trace.ln(form, speed).0);
        for (form, peak) in FORMS.into_iter().zip(&mut peaks) {
            climb(peak, prior_range(setup), |at| trace.ln(form, at.exp()).0);
        }
        // A misfit beyond its expectation means that neither form is quite true: everything is widened.
        let misfit = FORMS
            .into_iter()
            .zip(&peaks)
            .map(|(form, peak)| trace.ln(form, peak.at.exp()).1);
        let stretch = (misfit.fold(f64::INFINITY, f64::min) / trace.freedom())
            .sqrt()
            .max(1.0);
        peaks.iter_mut().for_each(|peak| peak.ln /= stretch * stretch);
        Self {
            source: Source::Trace(trace),
            stretch,
            peaks,
        }
    }

    fn of_spots(setup: &HoldSetup, start: f64, readings: &[Reading]) -> Self {
        let mut stretch = 1.0;
        loop {
            let spot = SpotLikelihood::new(setup, start, readings, stretch);
            let peaks = search(setup, start, readings, |form, speed| spot.ln(form, speed));
            if peaks.iter().any(|peak| peak.ln > CONTRADICTION) || stretch > 1e4 {
                return Self {
                    source: Source::Spot(spot),
                    stretch,
                    peaks,
                };
            }
            stretch *= 2.0;
        }
    }

    /// Logarithm of the likelihood at a total leak over volume (std m³/s per m³).
    pub(crate) fn ln(&self, form: LeakForm, speed: f64) -> f64 {
        match &self.source {
            Source::Spot(spot) => spot.ln(form, speed),
            Source::Trace(trace) => trace.ln(form, speed).0 / (self.stretch * self.stretch),
        }
    }
}

/// The prior's range as logarithms of leak over volume.
pub(crate) fn prior_range(setup: &HoldSetup) -> (f64, f64) {
    let ln = |std_cm3_min| (LeakRate::from_std_cm3_min(std_cm3_min).std_m3_s() / setup.volume.value).ln();
    (ln(PRIOR.0), ln(PRIOR.1))
}

/// The best of each form among coarse steps over the prior's range and what each reading alone says.
fn search(
    setup: &HoldSetup,
    start: f64,
    readings: &[Reading],
    ln_likelihood: impl Fn(LeakForm, f64) -> f64,
) -> [Peak; 2] {
    let (low, high) = prior_range(setup);
    let pa = setup.ambient.value;
    let x0 = (pa - start) / pa;
    let step = setup.gauge.read_to * setup.gauge.unit_pa();
    let coarse = (0..=COARSE).map(|i| low + (high - low) * f64::from(i) / f64::from(COARSE));
    FORMS.map(|form| {
        let alone = readings.iter().flat_map(|reading| {
            [-0.7, 0.0, 0.7].map(|nudge| {
                let x = ((pa - reading.vacuum + nudge * step) / pa).clamp(x0, 0.9995);
                let time = time_between(form, x0, x);
                (time / reading.seconds / speed_factor(form, pa, setup.air.value)).ln()
            })
        });
        coarse
            .clone()
            .chain(alone)
            .filter(|at| (low..=high).contains(at))
            .fold(
                Peak {
                    ln: f64::NEG_INFINITY,
                    at: f64::midpoint(low, high),
                },
                |best, at| {
                    let ln = ln_likelihood(form, at.exp());
                    if ln > best.ln { Peak { ln, at } } else { best }
                },
            )
    })
}

/// Moves a peak uphill by steps that halve, within a range.
fn climb(peak: &mut Peak, (low, high): (f64, f64), ln_likelihood: impl Fn(f64) -> f64) {
    let mut step = 0.1;
    while step > 2e-4 {
        let tried = [peak.at - step, peak.at + step]
            .map(|at| at.clamp(low, high))
            .map(|at| Peak {
                ln: ln_likelihood(at),
                at,
            });
        match tried.into_iter().find(|other| other.ln > peak.ln) {
            Some(better) => *peak = better,
            None => step /= 2.0,
        }
    }
}
