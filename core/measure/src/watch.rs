//! How much longer to watch the needle until the result is decided.

use crate::element::LeakForm;
use crate::fall_curve::{FallStart, Progress, slope, speed_factor};
use crate::hold::{HoldData, HoldError, HoldSetup};
use crate::infer::infer_leak;
use crate::leak_rate::LeakRate;
use crate::posterior::LeakPosterior;

/// Standard deviations between leak and limit that decide at 95 % nine times in ten: 1.645 + 1.282.
const SEPARATION: f64 = 2.93;
/// The first offer is for a leak at half or one and a half times the limit; a later one comes closer.
const FIRST_GAP: f64 = 0.5;
/// No offer is made for a leak closer to the limit than this share of it.
const LEAST_GAP: f64 = 0.15;
/// Longest whole watch that is offered, s.
const LONGEST: f64 = 900.0;
/// Shortest extra watch, and the step to which an offer is rounded up, s.
const STEP: f64 = 5.0;
/// Probabilities of being over the limit between which a test is undecided.
const UNDECIDED: std::ops::Range<f64> = 0.05..0.95;

impl LeakPosterior {
    /// Seconds to go on watching, after the last reading, that would likely decide whether the leak is over `limit`.
    /// `setup` and `data` are those that it was inferred from.
    ///
    /// The drop grows with time and the errors of reading don't; so the watch is the one after which they are
    /// 2.93 standard deviations apart. `None` where the result is decided already, or where no watch of up to 15
    /// minutes would help: the leak is at the limit, or warming hides it. Then a finer gauge, or a steadier
    /// temperature, is the answer; see [`read_to_that_decides`](Self::read_to_that_decides).
    #[must_use]
    pub fn seconds_to_decide(&self, setup: &HoldSetup, data: &HoldData, limit: LeakRate) -> Option<f64> {
        let gap = Gap::open(self, setup, data, limit)?;
        let errors = gap.errors(setup, setup.gauge.u_drop() * setup.gauge.unit_pa());
        let whole = |share: f64| SEPARATION * errors / (share * gap.limit_slope);
        let first = whole(gap.share.max(FIRST_GAP));
        let needed = if first > gap.elapsed * 1.05 {
            first
        } else {
            whole(gap.share)
        };
        if gap.share < LEAST_GAP && first <= gap.elapsed * 1.05 || needed > LONGEST {
            return None;
        }
        let extra = (needed - gap.elapsed).max(STEP);
        Some((extra / STEP).ceil() * STEP)
    }

    /// The step, in the gauge's unit, to which a gauge would have to be read to decide in the time already watched.
    /// `setup` and `data` are those that it was inferred from.
    ///
    /// `None` where the result is decided already, or where warming and creep alone hide the difference.
    #[must_use]
    pub fn read_to_that_decides(&self, setup: &HoldSetup, data: &HoldData, limit: LeakRate) -> Option<f64> {
        let gap = Gap::open(self, setup, data, limit)?;
        let allowed = gap.share.max(FIRST_GAP) * gap.limit_slope * gap.elapsed / SEPARATION;
        let left = allowed * allowed - gap.errors(setup, 0.0).powi(2);
        if left <= 0.0 {
            return None;
        }
        // The reader's scatter is at least 0.3 of the step, so u_drop = √2·step·√(1/12 + 0.3²).
        let step = left.sqrt() / (2.0_f64 * (1.0 / 12.0 + 0.09)).sqrt() / setup.gauge.unit_pa();
        (step < setup.gauge.read_to).then_some(step)
    }
}

/// [`LeakPosterior::seconds_to_decide`] straight from the readings.
///
/// # Errors
/// As [`infer_leak`].
pub fn seconds_to_decide(
    setup: &HoldSetup,
    data: &HoldData,
    limit: LeakRate,
) -> Result<Option<f64>, HoldError> {
    Ok(infer_leak(setup, data)?.seconds_to_decide(setup, data, limit))
}

/// [`LeakPosterior::read_to_that_decides`] straight from the readings.
///
/// # Errors
/// As [`infer_leak`].
pub fn read_to_that_decides(
    setup: &HoldSetup,
    data: &HoldData,
    limit: LeakRate,
) -> Result<Option<f64>, HoldError> {
    Ok(infer_leak(setup, data)?.read_to_that_decides(setup, data, limit))
}

/// How far an undecided leak is from the limit.
struct Gap {
    /// Difference as a share of the limit.
    share: f64,
    /// Fall of the needle through a leak at the limit, Pa/s, at the last reading.
    limit_slope: f64,
    elapsed: f64,
    /// Absolute pressure of the trapped air over its temperature at the last reading, Pa/K.
    per_kelvin: f64,
}

impl Gap {
    /// `None` where the result is decided.
    fn open(posterior: &LeakPosterior, setup: &HoldSetup, data: &HoldData, limit: LeakRate) -> Option<Self> {
        let speed = limit.std_m3_s() / setup.volume.value;
        if speed <= 0.0 || !UNDECIDED.contains(&posterior.probability_over_speed(speed)) {
            return None;
        }
        let elapsed = data.points.iter().map(|(time, _)| time.value).fold(0.0, f64::max);
        let pa = setup.ambient.value;
        let s = speed_factor(LeakForm::Hole, pa, setup.air.value) * speed;
        let start = FallStart::new((pa - data.start.value) / pa);
        let x = Progress::new(LeakForm::Hole, s * elapsed).from(start);
        Some(Self {
            share: (posterior.speed.quantile(0.5) / speed - 1.0).abs(),
            limit_slope: pa * s * slope(LeakForm::Hole, x).max(1e-3),
            elapsed,
            per_kelvin: pa * x / setup.air.value,
        })
    }

    /// Standard uncertainty of a drop, Pa, with a reading's own part given.
    fn errors(&self, setup: &HoldSetup, u_drop: f64) -> f64 {
        // The spread of a half-normal creep is 0.6 of its scale; its mean is taken off by the inference.
        let creep = 0.6 * setup.creep.value;
        let timing = setup.u_time() * self.limit_slope;
        u_drop
            .hypot(creep)
            .hypot(setup.thermal_k * self.per_kelvin)
            .hypot(timing)
    }
}
