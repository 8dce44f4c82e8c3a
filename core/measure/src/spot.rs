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
const NODES: usize = 72;
/// Time constant of creep, s (common practice, no source: rubber settles in the first 2–5 s).
const CREEP_TIME: f64 = 3.0;
/// Errors of the moment of reading that the nodes take in turn, as mean and spread of twelve equally likely parts
/// of a normal distribution, in standard deviations.
const MOMENTS: [(f64, f64); 12] = [
    (-1.84, 0.4),
    (-1.158, 0.119),
    (-0.815, 0.084),
    (-0.55, 0.07),
    (-0.319, 0.064),
    (-0.105, 0.061),
    (0.105, 0.061),
    (0.319, 0.064),
    (0.55, 0.07),
    (0.815, 0.084),
    (1.158, 0.119),
    (1.84, 0.4),
];
/// Steps through [`MOMENTS`], one a reading, so that the errors of two readings are independent.
const TURNS: [usize; 4] = [1, 5, 7, 11];
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
    moments: [Moment; MOMENTS.len()],
}

/// A reading taken a little early or late.
struct Moment {
    progress: Progress,
    /// 1 over the scatter of the reading, 1/Pa.
    per_u: f64,
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
        // The latest reading first: it is the one that rules most trial leaks out.
        let mut readings = readings.to_vec();
        readings.sort_by(|a, b| b.seconds.total_cmp(&a.seconds));
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
                        let inside = pa - r.vacuum;
                        let warming = inside / kelvin * warmed * r.seconds / last;
                        // A volume that has shrunk presses more as the pressure inside comes up.
                        let creep = crept * inside / (pa - start) * (1.0 - (-r.seconds / CREEP_TIME).exp());
                        offset - warming - creep
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
            readings,
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
                    moments: MOMENTS.map(|(mean, spread)| {
                        let seconds = (r.seconds + mean * self.u_time).max(SOONEST);
                        Moment {
                            progress: Progress::new(form, s * seconds),
                            per_u: 1.0 / self.u_reader.hypot(spread * self.u_time * fall_speed),
                        }
                    }),
                }
            })
            .collect();
        let normal = QuickCdf::table();
        let mut sum = 0.0;
        for (index, node) in self.nodes.iter().enumerate() {
            let mut product = 1.0;
            for ((aim, shift), step) in aims.iter().zip(&node.shifts).zip(TURNS.iter().cycle()) {
                let Some(moment) = aim
                    .moments
                    .get((index * step + index / MOMENTS.len()) % MOMENTS.len())
                else {
                    continue;
                };
                let gap = aim.vacuum - (self.ambient * (1.0 - moment.progress.from(node.start)) + shift);
                let half = self.half_step;
                if (gap.abs() - half) * moment.per_u > QuickCdf::REACH {
                    product = 0.0;
                    break;
                }
                product *= normal.at((gap + half) * moment.per_u) - normal.at((gap - half) * moment.per_u);
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
