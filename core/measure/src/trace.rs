//! Likelihood of a dense trace: frames are gathered into blocks, and what all frames share is integrated out
//! in closed form.
//!
//! Shared, all linear and normal: the error of the start, the gauge's offset, drift of the trapped gas, and creep with a fast and a
//! slow time constant. Lost frames only make a block lighter.

use crate::element::LeakForm;
use crate::fall_curve::{FallStart, Progress, slope, speed_factor};
use crate::hold::HoldSetup;
use crate::log_grid::count;
use crate::spot::Reading;

/// What all readings share: start, gauge offset, drift, fast and slow creep.
const SHARED: usize = 5;
/// Time constants of the two creep terms, s (common practice, no source).
const CREEP_TIMES: [f64; 2] = [1.5, 5.0];
/// Mean and standard deviation of a half-normal variable of unit scale.
const HALF_NORMAL: (f64, f64) = (0.797_884_560_802_865, 0.602_810_274_989_5);
/// Longest block in the first seconds, where creep happens, s.
const EARLY_BLOCK: f64 = 0.8;
/// A short trace is a fast fall: at least so many blocks, or the bend within one would be lost in its mean.
const LEAST_BLOCKS: f64 = 14.0;
/// End of those first seconds.
const EARLY_END: f64 = 8.0;
/// Blocks after them.
const LATE_BLOCKS: f64 = 14.0;

struct Block {
    seconds: f64,
    vacuum: f64,
    weight: f64,
}

/// A trace made ready for many trial leaks.
pub(crate) struct TraceLikelihood {
    ambient: f64,
    kelvin: f64,
    start_x: f64,
    last: f64,
    blocks: Vec<Block>,
    /// Standard deviations of the shared terms, Pa (drift: K).
    spreads: [f64; SHARED],
    creep_mean: f64,
}

impl TraceLikelihood {
    /// `readings` in order of time, at least two.
    pub(crate) fn new(setup: &HoldSetup, start: f64, readings: &[Reading]) -> Self {
        let unit = setup.gauge.unit_pa();
        let step = setup.gauge.read_to * unit;
        let scatter = scatter(readings);
        let last = readings.iter().map(|r| r.seconds).fold(1e-9, f64::max);
        let half_creep = setup.creep.value / 2.0;
        Self {
            ambient: setup.ambient.value,
            kelvin: setup.air.value,
            start_x: (setup.ambient.value - start) / setup.ambient.value,
            last,
            blocks: gather(readings, last, step, scatter),
            spreads: [
                setup.gauge.u_reading() * unit,
                setup.gauge.u_grade(setup.gauge.span / 2.0) * unit,
                setup.thermal_k,
                half_creep * HALF_NORMAL.1 * std::f64::consts::SQRT_2,
                half_creep * HALF_NORMAL.1 * std::f64::consts::SQRT_2,
            ],
            creep_mean: half_creep * HALF_NORMAL.0,
        }
    }

    /// Blocks beyond the figures fitted.
    pub(crate) fn freedom(&self) -> f64 {
        (count(self.blocks.len()) - 2.0).max(1.0)
    }

    /// Logarithm of the likelihood at a total leak over volume (std m³/s per m³), and twice its misfit (χ²).
    pub(crate) fn ln(&self, form: LeakForm, speed: f64) -> (f64, f64) {
        let s = speed_factor(form, self.ambient, self.kelvin) * speed;
        let start = FallStart::new(self.start_x);
        let start_slope = slope(form, self.start_x).max(1e-9);
        let mut normal = [[0.0; SHARED]; SHARED];
        let mut against = [0.0; SHARED];
        let mut squares = 0.0;
        for block in &self.blocks {
            let x = Progress::new(form, s * block.seconds).from(start);
            let creep = CREEP_TIMES.map(|time| x / self.start_x * ((-block.seconds / time).exp() - 1.0));
            // A start that is off moves later readings less where the fall has slowed; an offset of the gauge
            // moves the reading, and the true start with it.
            let carried = (slope(form, x) / start_slope).min(1.0);
            let columns = [
                self.spreads[0] * carried,
                self.spreads[1] * (1.0 - carried),
                -self.spreads[2] * self.ambient * x / self.kelvin * block.seconds / self.last,
                self.spreads[3] * creep[0],
                self.spreads[4] * creep[1],
            ];
            let expected = self.ambient * (1.0 - x) + self.creep_mean * (creep[0] + creep[1]);
            let gap = block.vacuum - expected;
            squares += block.weight * gap * gap;
            for (row, a) in columns.iter().enumerate() {
                against[row] += block.weight * a * gap;
                for (cell, b) in normal[row].iter_mut().zip(&columns) {
                    *cell += block.weight * a * b;
                }
            }
        }
        for (index, row) in normal.iter_mut().enumerate() {
            row[index] += 1.0; // the shared terms are scaled to unit prior variance
        }
        let (explained, ln_det) = solve(&mut normal, &against);
        let misfit = (squares - explained).max(0.0);
        (-0.5 * misfit - 0.5 * ln_det, misfit)
    }
}

/// `b'A⁻¹b` and `ln det A` of a positive definite matrix, by its Cholesky factor.
fn solve(a: &mut [[f64; SHARED]; SHARED], b: &[f64; SHARED]) -> (f64, f64) {
    let mut forward = [0.0; SHARED];
    let (mut explained, mut ln_det) = (0.0, 0.0);
    for i in 0..SHARED {
        for j in 0..=i {
            let inner: f64 = (0..j).map(|k| a[i][k] * a[j][k]).sum();
            a[i][j] = if i == j {
                (a[i][i] - inner).max(1e-12).sqrt()
            } else {
                (a[i][j] - inner) / a[j][j]
            };
        }
        let inner: f64 = (0..i).map(|k| a[i][k] * forward[k]).sum();
        forward[i] = (b[i] - inner) / a[i][i];
        explained += forward[i] * forward[i];
        ln_det += 2.0 * a[i][i].ln();
    }
    (explained, ln_det)
}

/// Scatter of single frames, Pa, from second differences, which a steady fall does not enter.
fn scatter(readings: &[Reading]) -> f64 {
    let mut squares: Vec<f64> = readings
        .windows(3)
        .map(|w| match w {
            [a, b, c] => (a.vacuum - 2.0 * b.vacuum + c.vacuum).powi(2) / 6.0,
            _ => 0.0,
        })
        .collect();
    if squares.is_empty() {
        return 0.0;
    }
    squares.sort_by(f64::total_cmp);
    // The largest twentieth is left out: a glint or a jump in a camera's reading is not scatter.
    let kept = (squares.len() * 19).div_ceil(20);
    (squares.iter().take(kept).sum::<f64>() / count(kept)).sqrt()
}

/// Means of blocks with their weights (1/variance).
fn gather(readings: &[Reading], last: f64, step: f64, scatter: f64) -> Vec<Block> {
    let early = EARLY_BLOCK.min(last / LEAST_BLOCKS);
    let late = ((last - EARLY_END) / LATE_BLOCKS).max(EARLY_BLOCK);
    let key = |seconds: f64| {
        if seconds < EARLY_END {
            (seconds / early).floor()
        } else {
            1000.0 + ((seconds - EARLY_END) / late).floor()
        }
    };
    let same_block = |a: &Reading, b: &Reading| key(a.seconds) == key(b.seconds);
    let blocks: Vec<&[Reading]> = readings.chunk_by(same_block).collect();
    // A needle that crosses few steps rounds alike in block after block: no more roundings are independent than
    // steps are crossed.
    let means: Vec<f64> = blocks.iter().map(|frames| mean(frames, |r| r.vacuum)).collect();
    let steps = means
        .first()
        .zip(means.last())
        .map_or(0.0, |(first, last)| (first - last).abs() / step);
    let alike = (count(blocks.len()) / (1.0 + steps)).max(1.0).sqrt();
    blocks
        .into_iter()
        .zip(means)
        .map(|(frames, vacuum)| {
            let highest = frames.iter().map(|r| r.vacuum).fold(f64::MIN, f64::max);
            let lowest = frames.iter().map(|r| r.vacuum).fold(f64::MAX, f64::min);
            // Rounding averages out over the steps that the block crosses, or under scatter wider than a step
            // (the error of a dithered quantiser's mean falls as exp(−2π²σ²/step²)).
            let crossed = ((highest - lowest) / step).max(1.0);
            let noise = (scatter * scatter - step * step / 12.0).max(0.0);
            let dither = (-2.0 * std::f64::consts::PI.powi(2) * noise / (step * step)).exp();
            let rounding = step / 12f64.sqrt() * (alike * dither / crossed).max(0.1);
            let u = (scatter / count(frames.len()).sqrt()).hypot(rounding);
            Block {
                seconds: mean(frames, |r| r.seconds),
                vacuum,
                weight: 1.0 / (u * u),
            }
        })
        .collect()
}

fn mean(frames: &[Reading], figure: impl Fn(&Reading) -> f64) -> f64 {
    frames.iter().map(figure).sum::<f64>() / count(frames.len())
}
