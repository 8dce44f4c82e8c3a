//! Likelihood of a few readings taken by hand.
//!
//! What is known of the start, the gauge's offset, the drift and the creep is a fixed set of equally weighted nodes spread
//! evenly over all of them at once (a rank-one sequence), the same for every leak, so that the likelihood
//! is a smooth function of the leak. A reading's own error is exact: uniform rounding and a normal reader.

use crate::element::LeakForm;
use crate::fall_curve::{FallStart, Progress, slope, speed_factor};
use crate::hold::HoldSetup;
use crate::log_grid::count;
use crate::normal::{QuickCdf, normal_quantile};

/// Nodes over start, offset, drift and creep.
const NODES: usize = 64;
/// Time constant of creep, s (common practice, no source: rubber settles in the first 2–5 s).
const CREEP_TIME: f64 = 3.0;
/// Errors of the moment of reading that the nodes take in turn: middles of eight equally likely parts of a
/// normal distribution, in standard deviations.
const MOMENTS: [f64; 8] = [-1.534, -0.887, -0.489, -0.157, 0.157, 0.489, 0.887, 1.534];
/// What is left of the moment's error within one of those parts.
const WITHIN_PART: f64 = 0.25;
/// A reading is never earlier than this, s.
const SOONEST: f64 = 0.05;

/// One reading: seconds since the start, vacuum in Pa.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Reading {
    pub(crate) seconds: f64,
    pub(crate) vacuum: f64,
}

struct Node {
    start: FallStart,
    /// What the gauge's offset, drift and creep add to each reading, Pa.
    shifts: Vec<f64>,
}

/// One reading against one trial leak.
struct Aim {
    vacuum: f64,
    /// 1 over the reader's scatter, Pa.
    per_u: f64,
    moments: [Progress; 8],
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
                let [rounding, reader, drift, creep, offset] = spread(index);
                let offset = setup.gauge.offset_limit() * setup.gauge.unit_pa() * (2.0 * offset - 1.0);
                let v0 = start + step * (rounding - 0.5) + u_reader * normal_quantile(reader);
                let warmed = setup.thermal_k * normal_quantile(drift);
                let crept = setup.creep.value * normal_quantile(0.5 + creep / 2.0);
                let shifts = readings
                    .iter()
                    .map(|r| {
                        let warming = (pa - r.vacuum) / kelvin * warmed * r.seconds / last;
                        offset - warming - crept * (1.0 - (-r.seconds / CREEP_TIME).exp())
                    })
                    .collect();
                Node {
                    start: FallStart::new((pa - v0 + offset) / pa),
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
        let aims: Vec<Aim> = self
            .readings
            .iter()
            .map(|r| {
                let fall_speed =
                    self.ambient * s * slope(form, Progress::new(form, s * r.seconds).from(middle));
                Aim {
                    vacuum: r.vacuum,
                    per_u: 1.0 / self.u_reader.hypot(WITHIN_PART * self.u_time * fall_speed),
                    moments: MOMENTS.map(|z| {
                        let seconds = (r.seconds + z * self.u_time).max(SOONEST);
                        Progress::new(form, s * seconds)
                    }),
                }
            })
            .collect();
        let normal = QuickCdf::table();
        let mut sum = 0.0;
        for (index, node) in self.nodes.iter().enumerate() {
            let mut product = 1.0;
            for (turn, (aim, shift)) in aims.iter().zip(&node.shifts).enumerate() {
                // Another order of moments for each reading, so that their errors are independent.
                let Some(progress) = aim.moments.get((index * (2 * turn + 1) + index / 8 * turn) % 8) else {
                    continue;
                };
                let gap = aim.vacuum - (self.ambient * (1.0 - progress.from(node.start)) + shift);
                let half = self.half_step;
                product *= normal.at((gap + half) * aim.per_u) - normal.at((gap - half) * aim.per_u);
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
fn spread(index: usize) -> [f64; 5] {
    // Powers of the inverse of the root of x^6 = x + 1: the sequence that fills five dimensions evenly.
    const ROOT: f64 = 1.134_724_138_401_519_4;
    let place = count(index) + 1.0;
    std::array::from_fn(|k| {
        let power = ROOT.powi(-(i32::try_from(k).unwrap_or(0) + 1));
        (0.5 + place * power).fract().clamp(1e-6, 1.0 - 1e-6)
    })
}
