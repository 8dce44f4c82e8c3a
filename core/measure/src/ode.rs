//! An adaptive integrator for small systems of ordinary differential equations.
//!
//! Dormand and Prince's pair of orders 5 and 4, local extrapolation, no step longer than 1/64 of the interval. Meant for a
//! handful of equations and a few thousand steps.
//!
//! # Source
//! J. R. Dormand, P. J. Prince, "A family of embedded Runge-Kutta formulae", J. Comp. Appl. Math. 6 (1980).

/// Relative and absolute error allowed in a step.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Tolerance {
    pub(crate) relative: f64,
    pub(crate) absolute: f64,
}

const NODES: [f64; 6] = [0.2, 0.3, 0.8, 8.0 / 9.0, 1.0, 1.0];
const STAGES: [[f64; 6]; 6] = [
    [0.2, 0.0, 0.0, 0.0, 0.0, 0.0],
    [3.0 / 40.0, 9.0 / 40.0, 0.0, 0.0, 0.0, 0.0],
    [44.0 / 45.0, -56.0 / 15.0, 32.0 / 9.0, 0.0, 0.0, 0.0],
    [
        19_372.0 / 6561.0,
        -25_360.0 / 2187.0,
        64_448.0 / 6561.0,
        -212.0 / 729.0,
        0.0,
        0.0,
    ],
    [
        9017.0 / 3168.0,
        -355.0 / 33.0,
        46_732.0 / 5247.0,
        49.0 / 176.0,
        -5103.0 / 18_656.0,
        0.0,
    ],
    [
        35.0 / 384.0,
        0.0,
        500.0 / 1113.0,
        125.0 / 192.0,
        -2187.0 / 6784.0,
        11.0 / 84.0,
    ],
];
/// Fifth-order weights minus fourth-order ones.
const ERRORS: [f64; 7] = [
    71.0 / 57_600.0,
    0.0,
    -71.0 / 16_695.0,
    71.0 / 1920.0,
    -17_253.0 / 339_200.0,
    22.0 / 525.0,
    -1.0 / 40.0,
];

/// Integrates `slope(t, y)` from `t0` to `t1`; `None` when more than `most_steps` steps would be needed.
pub(crate) fn integrate<const N: usize>(
    slope: &impl Fn(f64, &[f64; N]) -> [f64; N],
    (t0, t1): (f64, f64),
    start: [f64; N],
    tolerance: Tolerance,
    most_steps: usize,
) -> Option<[f64; N]> {
    let (mut t, mut y) = (t0, start);
    // A corner in the slope (the end of choking) can fall between all stages of a long step unseen.
    let longest = (t1 - t0) / 64.0;
    let mut step = longest;
    let mut first = slope(t, &y);
    for _ in 0..most_steps {
        if t >= t1 {
            return Some(y);
        }
        // The last step ends exactly on the mark, whatever rounding did to t.
        let last = t + step * (1.0 + 1e-12) >= t1;
        let h = if last { t1 - t } else { step };
        let (next, end_slope, error) = one_step(slope, t, &y, &first, h, tolerance);
        if error <= 1.0 {
            t = if last { t1 } else { t + h };
            y = next;
            first = end_slope;
        }
        let growth = if error > 0.0 { 0.9 * error.powf(-0.2) } else { 5.0 };
        step = (h * growth.clamp(0.2, 5.0)).min(longest);
    }
    None
}

/// One step: the new state, the slope there, and the error as a multiple of the tolerance.
fn one_step<const N: usize>(
    slope: &impl Fn(f64, &[f64; N]) -> [f64; N],
    t: f64,
    y: &[f64; N],
    first: &[f64; N],
    h: f64,
    tolerance: Tolerance,
) -> ([f64; N], [f64; N], f64) {
    let mut slopes = [[0.0; N]; 7];
    slopes[0] = *first;
    let mut next = *y;
    for (stage, (weights, node)) in STAGES.iter().zip(NODES).enumerate() {
        next = std::array::from_fn(|i| {
            y[i] + h * weights
                .iter()
                .zip(&slopes)
                .map(|(weight, k)| weight * k[i])
                .sum::<f64>()
        });
        slopes[stage + 1] = slope(t + node * h, &next);
    }
    let error = (0..N)
        .map(|i| {
            let miss = h * ERRORS
                .iter()
                .zip(&slopes)
                .map(|(weight, k)| weight * k[i])
                .sum::<f64>();
            miss.abs() / (tolerance.absolute + tolerance.relative * y[i].abs().max(next[i].abs()))
        })
        .fold(0.0, f64::max);
    (next, slopes[6], error)
}

#[cfg(test)]
mod tests {
    use super::*;

    const TIGHT: Tolerance = Tolerance {
        relative: 1e-10,
        absolute: 1e-12,
    };

    #[test]
    fn an_oscillator_comes_back_after_one_turn() {
        let turn = (0.0, 2.0 * std::f64::consts::PI);
        let end = integrate(&|_, y: &[f64; 2]| [y[1], -y[0]], turn, [1.0, 0.0], TIGHT, 10_000).unwrap();
        assert!((end[0] - 1.0).abs() < 1e-8 && end[1].abs() < 1e-8, "{end:?}");
    }

    #[test]
    fn too_few_steps_are_reported_not_hidden() {
        assert_eq!(
            integrate(&|_, y: &[f64; 1]| [-1e6 * y[0]], (0.0, 1.0), [1.0], TIGHT, 50),
            None
        );
    }

    #[test]
    fn an_empty_interval_changes_nothing() {
        assert_eq!(
            integrate(&|_, _: &[f64; 1]| [1.0], (2.0, 2.0), [3.0], TIGHT, 50),
            Some([3.0])
        );
    }
}
