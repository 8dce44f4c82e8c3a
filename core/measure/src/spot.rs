//! Likelihood of a few readings taken by hand.
//!
//! What is known of the start, the drift and the creep is a fixed set of equally weighted nodes spread
//! evenly over all of them at once (a rank-one sequence), the same for every leak, so that the likelihood
//! is a smooth function of the leak. A reading's own error is exact: uniform rounding and a normal reader.

use crate::element::LeakForm;
use crate::fall_curve::{FallStart, Progress, slope, speed_factor};
use crate::hold::HoldSetup;
use crate::log_grid::count;
use crate::normal::{normal_quantile, quick_cdf};

/// Nodes over start, drift and creep.
const NODES: usize = 96;
/// Time constant of creep, s (common practice, no source: rubber settles in the first 2–5 s).
const CREEP_TIME: f64 = 3.0;

/// One reading: seconds since the start, vacuum in Pa.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Reading {
    pub(crate) seconds: f64,
    pub(crate) vacuum: f64,
}

struct Node {
    start: FallStart,
    /// What drift and creep add to each reading, Pa.
    shifts: Vec<f64>,
}

/// The readings made ready for many trial leaks.
pub(crate) struct SpotLikelihood {
    ambient: f64,
    kelvin: f64,
    middle_x: f64,
    half_step: f64,
    u_reader: f64,
    u_time: f64,
    readings: Vec<Reading>,
    nodes: Vec<Node>,
}

impl SpotLikelihood {
    /// `stretch` widens the reader's scatter; 1 as a rule.
    pub(crate) fn new(setup: &HoldSetup, start: f64, readings: &[Reading], stretch: f64) -> Self {
        let pa = setup.ambient.value;
        let kelvin = setup.air.value;
        let step = setup.gauge.read_to * setup.gauge.unit_pa();
        let u_reader = setup.gauge.u_reader() * setup.gauge.unit_pa() * stretch;
        let last = readings.iter().map(|r| r.seconds).fold(1e-9, f64::max);
        let nodes = (0..NODES)
            .map(|index| {
                let [rounding, reader, drift, creep] = spread(index);
                let v0 = start + step * (rounding - 0.5) + u_reader * normal_quantile(reader);
                let warmed = setup.thermal_k * normal_quantile(drift);
                let crept = setup.creep.value * normal_quantile(0.5 + creep / 2.0);
                let shifts = readings
                    .iter()
                    .map(|r| {
                        let warming = (pa - r.vacuum) / kelvin * warmed * r.seconds / last;
                        -warming - crept * (1.0 - (-r.seconds / CREEP_TIME).exp())
                    })
                    .collect();
                Node {
                    start: FallStart::new((pa - v0) / pa),
                    shifts,
                }
            })
            .collect();
        Self {
            ambient: pa,
            kelvin,
            middle_x: (pa - start) / pa,
            half_step: step / 2.0,
            u_reader,
            u_time: setup.u_time(),
            readings: readings.to_vec(),
            nodes,
        }
    }

    /// Logarithm of the likelihood at a total leak over volume (std m³/s per m³).
    pub(crate) fn ln(&self, form: LeakForm, speed: f64) -> f64 {
        let s = speed_factor(form, self.ambient, self.kelvin) * speed;
        let middle = FallStart::new(self.middle_x);
        let aims: Vec<(Progress, f64, f64)> = self
            .readings
            .iter()
            .map(|r| {
                let progress = Progress::new(form, s * r.seconds);
                let fall_speed = self.ambient * s * slope(form, progress.from(middle));
                (
                    progress,
                    r.vacuum,
                    1.0 / self.u_reader.hypot(fall_speed * self.u_time),
                )
            })
            .collect();
        let mut sum = 0.0;
        for node in &self.nodes {
            let mut product = 1.0;
            for ((progress, seen, per_u), shift) in aims.iter().zip(&node.shifts) {
                let gap = seen - (self.ambient * (1.0 - progress.from(node.start)) + shift);
                product *=
                    quick_cdf((gap + self.half_step) * per_u) - quick_cdf((gap - self.half_step) * per_u);
                if product <= 0.0 {
                    break;
                }
            }
            sum += product;
        }
        (sum / count(NODES)).ln()
    }
}

/// Point `index` of an even spread over the open unit cube.
fn spread(index: usize) -> [f64; 4] {
    // Powers of the inverse of the root of x^5 = x + 1: the sequence that fills four dimensions evenly.
    const ROOT: f64 = 1.167_303_978_261_418_7;
    let place = count(index) + 1.0;
    std::array::from_fn(|k| {
        let power = ROOT.powi(-(i32::try_from(k).unwrap_or(0) + 1));
        (0.5 + place * power).fract().clamp(1e-6, 1.0 - 1e-6)
    })
}
