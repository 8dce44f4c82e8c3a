//! The fall of one closed volume through one leak, in closed form.
//!
//! With `x = p/ambient` the fall obeys `x' = s·φ(x)`; all times scale with `s`, which goes with leak over
//! volume. Hole: `φ = 1` while choked; beyond, with `y = √(1 − x^(2/7))` (κ = 1.4), `y` falls in a straight
//! line, so that ambient is reached in finite time. Viscous: `φ = 1 − x²`, a hyperbolic tangent that never
//! quite arrives. Both isothermal.

use crate::air::{STD_PRESSURE, STD_TEMPERATURE, viscosity};
use crate::element::{CHOKED_FACTOR, CRITICAL_RATIO, LeakForm};
use crate::leak_rate::reference_inside;

/// `y` at the end of choking: `√(1 − 1/1.2)`.
const Y_CHOKED: f64 = 0.408_248_290_463_863;
/// `√5/CHOKED_FACTOR/7`: how fast `y` falls for `s = 1`.
const Y_SPEED: f64 = 2.236_067_977_499_79 / CHOKED_FACTOR / 7.0;

/// Where a fall starts, with what the curves need of it worked out once.
#[derive(Debug, Clone, Copy)]
pub(crate) struct FallStart {
    x: f64,
    y: f64,
}

impl FallStart {
    /// A start at `x = p/ambient`, held within 0 to 1.
    pub(crate) fn new(x: f64) -> Self {
        let x = x.clamp(0.0, 1.0);
        Self {
            x,
            y: if x <= CRITICAL_RATIO { Y_CHOKED } else { y_of(x) },
        }
    }
}

/// A dimensionless time `s·t` gone by on one curve, ready to be applied to many starts.
#[derive(Debug, Clone, Copy)]
pub(crate) enum Progress {
    /// Along the curve of a hole: the time itself.
    Hole(f64),
    /// Along the curve of a viscous leak: the time's hyperbolic tangent.
    Viscous(f64),
}

impl Progress {
    /// The time `s·t` on the curve of `form`.
    pub(crate) fn new(form: LeakForm, time: f64) -> Self {
        match form {
            LeakForm::Hole => Self::Hole(time),
            LeakForm::Viscous => Self::Viscous(time.tanh()),
        }
    }

    /// `x` after this time.
    pub(crate) fn from(self, start: FallStart) -> f64 {
        match self {
            Self::Hole(time) => {
                let straight = start.x + time;
                if straight <= CRITICAL_RATIO {
                    return straight;
                }
                let bent = time - (CRITICAL_RATIO - start.x).max(0.0);
                let y = (start.y - Y_SPEED * bent).max(0.0);
                let q = 1.0 - y * y;
                q * q * q * q.sqrt()
            }
            Self::Viscous(rise) => (start.x + rise) / (1.0 + start.x * rise),
        }
    }
}

/// `x` after the dimensionless time `s·t`, from `x0`.
#[must_use]
pub(crate) fn fallen(form: LeakForm, x0: f64, time: f64) -> f64 {
    Progress::new(form, time).from(FallStart::new(x0))
}

/// The dimensionless time from `x0` to `x`; infinite where a viscous leak never arrives.
#[must_use]
pub(crate) fn time_between(form: LeakForm, x0: f64, x: f64) -> f64 {
    match form {
        LeakForm::Hole => {
            let straight = x.min(CRITICAL_RATIO) - x0.min(CRITICAL_RATIO);
            let y = |x: f64| {
                if x <= CRITICAL_RATIO {
                    Y_CHOKED
                } else {
                    y_of(x.min(1.0))
                }
            };
            straight + (y(x0) - y(x)) / Y_SPEED
        }
        LeakForm::Viscous => x.atanh() - x0.atanh(),
    }
}

/// `φ(x)`: the slope `x'` for `s = 1`.
#[must_use]
pub(crate) fn slope(form: LeakForm, x: f64) -> f64 {
    match form {
        LeakForm::Hole => {
            if x <= CRITICAL_RATIO {
                1.0
            } else if x >= 1.0 {
                0.0
            } else {
                let q = x.powf(2.0 / 7.0);
                7.0 * Y_SPEED * q * q * q.sqrt() * (1.0 - q).max(0.0).sqrt()
            }
        }
        LeakForm::Viscous => (1.0 - x * x).max(0.0),
    }
}

fn y_of(x: f64) -> f64 {
    (1.0 - x.powf(2.0 / 7.0)).max(0.0).sqrt()
}

/// `s` (1/s) for one std m³/s of leak per m³ of volume, ambient in Pa, air and trapped gas at `kelvin`.
#[must_use]
pub(crate) fn speed_factor(form: LeakForm, ambient: f64, kelvin: f64) -> f64 {
    match form {
        LeakForm::Hole => (kelvin / STD_TEMPERATURE).sqrt(),
        LeakForm::Viscous => {
            let inside = reference_inside() / STD_PRESSURE;
            viscosity(STD_TEMPERATURE) / viscosity(kelvin) * (ambient / STD_PRESSURE)
                / (1.0 - inside * inside)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::element::nozzle_share;
    use approx::assert_relative_eq;

    #[test]
    fn time_and_fall_are_each_other_s_inverse() {
        for form in [LeakForm::Hole, LeakForm::Viscous] {
            for x0 in [0.1, 0.33, 0.6, 0.8] {
                for time in [0.0, 0.05, 0.2, 0.4] {
                    let x = fallen(form, x0, time);
                    if x < 1.0 {
                        assert_relative_eq!(time_between(form, x0, x), time, epsilon = 1e-9);
                    }
                }
            }
        }
    }

    #[test]
    fn the_slope_is_the_nozzle_s_share() {
        for x in [0.2, 0.5, 0.53, 0.7, 0.9, 0.99] {
            assert_relative_eq!(slope(LeakForm::Hole, x), nozzle_share(x), epsilon = 1e-9);
        }
    }
}
