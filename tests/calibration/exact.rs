//! The exact posterior by brute force: latent draws from the simulator's own priors, weighted by the
//! probability of exactly the readings that were seen.

use holdfast_measure::HoldData;

use crate::physics::{P_STD, R, Shape, T_STD, leak_flow};
use crate::simulator::{Draw, HoldTest, Nuisance};

/// Fall of `x = p/pa` in steps of a time scaled so that the flow into deep vacuum is 1, by small steps.
pub struct Curve {
    x: Vec<f64>,
    step: f64,
}

impl Curve {
    pub fn of(shape: Shape) -> Self {
        let full = leak_flow(shape, 1.0, P_STD, 0.0, T_STD);
        let slope = |x: f64| leak_flow(shape, 1.0, P_STD, P_STD * x.min(1.0), T_STD) / full;
        let (step, mut x) = (2e-4, vec![0.0]);
        while x.len() < 30_000 {
            let at = x[x.len() - 1];
            let middle = at + step / 2.0 * slope(at);
            x.push((at + step * slope(middle)).min(1.0));
        }
        Self { x, step }
    }

    fn at(&self, time: f64) -> f64 {
        let place = (time / self.step).min((self.x.len() - 2) as f64);
        let cell = place as usize;
        self.x[cell] + (place - cell as f64) * (self.x[cell + 1] - self.x[cell])
    }

    fn time_of(&self, x: f64) -> f64 {
        let cell = self.x.partition_point(|v| *v < x).clamp(1, self.x.len() - 1);
        let (low, high) = (self.x[cell - 1], self.x[cell]);
        let part = if high > low {
            ((x - low) / (high - low)).min(1.0)
        } else {
            0.0
        };
        self.step * ((cell - 1) as f64 + part)
    }
}

pub struct Curves {
    pub hole: Curve,
    pub capillary: Curve,
}

fn phi(z: f64) -> f64 {
    // Abramowitz and Stegun 7.1.26, absolute error below 1.5e-7.
    if z.abs() > 8.0 {
        return if z > 0.0 { 1.0 } else { 0.0 };
    }
    let x = z / std::f64::consts::SQRT_2;
    let t = 1.0 / (1.0 + 0.327_591_1 * x.abs());
    let tail = t
        * (0.254_829_592
            + t * (-0.284_496_736 + t * (1.421_413_741 + t * (-1.453_152_027 + t * 1.061_405_429))))
        * (-x * x).exp();
    if x >= 0.0 { 1.0 - tail / 2.0 } else { tail / 2.0 }
}

/// Quantiles at 2.5 % and 97.5 %, and the effective number of draws.
pub struct Exact {
    pub low: f64,
    pub high: f64,
    pub draws: f64,
}

/// `around` bounds where leaks are drawn; it must hold all of the posterior.
pub fn exact(
    curves: &Curves,
    test: &HoldTest,
    data: &HoldData,
    around: (f64, f64),
    draw: &mut Draw,
    draws: usize,
) -> Exact {
    let setup = &test.setup;
    let (pa, air) = (setup.ambient.value, setup.air.value);
    let step = setup.gauge.read_to * setup.gauge.unit.to_pressure(1.0).value;
    let (slope_limit, _) = setup.gauge.grade.limits();
    let times: Vec<f64> = data.points.iter().map(|(t, _)| t.value).collect();
    let last = times.iter().copied().fold(0.0, f64::max);
    let mut weighted: Vec<(f64, f64)> = (0..draws)
        .map(|_| {
            let leak = draw.log_uniform(around.0.max(0.5), around.1.min(5000.0));
            let (shape, curve) = if draw.uniform(0.0, 1.0) < 0.5 {
                (Shape::Hole, &curves.hole)
            } else {
                (Shape::Capillary, &curves.capillary)
            };
            let volume = setup.volume.value * Nuisance::volume_factor(draw, test.volume_share);
            let reader = Nuisance::reader_share(draw) * step;
            let slope = Nuisance::slope(draw, slope_limit);
            let offset = draw.uniform(-slope_limit, slope_limit)
                * setup.gauge.span
                * setup.gauge.unit.to_pressure(1.0).value;
            let shown0 = data.start.value + step * draw.uniform(-0.5, 0.5) + reader * draw.normal();
            let true0 = (shown0 - offset) / slope;
            let creep = draw.exponential(Nuisance::CREEP);
            let creep_time = Nuisance::creep_time(draw);
            let warming = Nuisance::WARMING_K * draw.normal();
            let speed = leak_flow(shape, leak, pa, 0.0, air) * R * air / volume / pa;
            let begin = curve.time_of(((pa - true0) / pa).max(1e-6));
            let mut weight = 1.0;
            for (time, seen) in times.iter().zip(&data.points) {
                let real = (time + Nuisance::HAND_TIME * draw.normal()).max(0.05);
                let p = pa * curve.at(begin + speed * real) * (1.0 + warming * real / last / air)
                    + creep * (1.0 - (-real / creep_time).exp());
                let shown = (pa - p.min(pa * 1.02)) * slope + offset;
                let gap = seen.1.value - shown;
                weight *= phi((gap + step / 2.0) / reader) - phi((gap - step / 2.0) / reader);
            }
            (leak, weight)
        })
        .filter(|(_, weight)| *weight > 0.0)
        .collect();
    weighted.sort_by(|a, b| a.0.total_cmp(&b.0));
    let total: f64 = weighted.iter().map(|(_, w)| w).sum();
    let squares: f64 = weighted.iter().map(|(_, w)| w * w).sum();
    let quantile = |p: f64| {
        let mut sum = 0.0;
        for (leak, weight) in &weighted {
            sum += weight;
            if sum >= p * total {
                return *leak;
            }
        }
        f64::NAN
    };
    Exact {
        low: quantile(0.025),
        high: quantile(0.975),

        draws: total * total / squares,
    }
}
