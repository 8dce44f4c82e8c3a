//! What a hold test says about the leak.

use uom::si::f64::Pressure;
use uom::si::length::millimeter;
use uom::si::pressure::pascal;

use crate::element::{Element, LeakForm};
use crate::fall_curve::{fallen, speed_factor};
use crate::leak_rate::{LeakRate, ideal_hole};
use crate::log_grid::LogGrid;

/// Probability from which a form is taken as told apart.
const FORM_LEVEL: f64 = 0.95;

/// State of knowledge of a part's leak after a hold test, the tester's own leak taken off.
///
/// A posterior over a broad prior: flat in the logarithm from 0.2 to 20,000 std cm³/min, hole and viscous
/// form equally likely beforehand. Start reading, rounding, reader, warming, creep, timing, gauge slope and
/// volume are integrated out.
#[derive(Debug, Clone, PartialEq)]
pub struct LeakPosterior {
    /// Speed of the fall as leak over volume, std m³/s per m³.
    pub(crate) speed: LogGrid,
    /// The leak itself, std cm³/min.
    pub(crate) leak: LogGrid,
    pub(crate) p_hole: f64,
    pub(crate) proved: bool,
    /// The tester's leak over volume, the same unit as `speed`.
    pub(crate) tester_speed: f64,
    pub(crate) ambient: f64,
    pub(crate) kelvin: f64,
    pub(crate) start: f64,
    pub(crate) stretch: f64,
}

impl LeakPosterior {
    /// The leak in std cm³/min: the median. Where nothing is [proved](Self::is_proved) it only says how little
    /// is known; show the interval's upper end then.
    #[must_use]
    pub fn value(&self) -> LeakRate {
        LeakRate::from_std_cm3_min(self.leak.quantile(0.5))
    }

    /// Interval that holds the leak with probability `level` (0.95): central where a leak is proved, from zero
    /// where it is not.
    #[must_use]
    pub fn interval(&self, level: f64) -> (LeakRate, LeakRate) {
        let level = level.clamp(0.01, 0.999);
        let at = |p| LeakRate::from_std_cm3_min(self.leak.quantile(p));
        if self.proved {
            (at(0.5 - level / 2.0), at(0.5 + level / 2.0))
        } else {
            (LeakRate::ZERO, at(level))
        }
    }

    /// Whether a leak is proved: no leak at all explains the readings so much worse than the best leak that
    /// zero is outside the 95 % likelihood interval.
    #[must_use]
    pub fn is_proved(&self) -> bool {
        self.proved
    }

    /// Probability that the leak, as a flow, is over a limit. The volume's uncertainty is in it; for a limit that
    /// is itself a drop in this volume see [`probability_over_drop`](Self::probability_over_drop).
    #[must_use]
    pub fn probability_over(&self, limit: LeakRate) -> f64 {
        if limit.std_cm3_min() <= 0.0 {
            return 1.0;
        }
        1.0 - self.leak.below(limit.std_cm3_min().ln())
    }

    /// Probability that this part in this volume loses more than `drop` in `seconds` from `start`. The volume
    /// cancels: the needle's own speed is compared with the rule.
    #[must_use]
    pub fn probability_over_drop(&self, drop: Pressure, seconds: f64, start: Pressure) -> f64 {
        1.0 - self
            .speed
            .below(limit_speed(self.ambient, self.kelvin, drop, seconds, start).ln())
    }

    /// The form that the readings tell, or `None` where both explain them.
    #[must_use]
    pub fn form(&self) -> Option<LeakForm> {
        if self.p_hole >= FORM_LEVEL {
            Some(LeakForm::Hole)
        } else if self.p_hole <= 1.0 - FORM_LEVEL {
            Some(LeakForm::Viscous)
        } else {
            None
        }
    }

    /// Probability that the leak is a hole rather than a viscous path.
    #[must_use]
    pub fn probability_of_hole(&self) -> f64 {
        self.p_hole
    }

    /// Air that the leak passed at the start of this very test, as volume in the standard state.
    #[must_use]
    pub fn flow_in_test(&self) -> LeakRate {
        let inside = (self.ambient - self.start).max(0.0);
        let flow = |form| Element::leak(form, self.value()).std_flow(self.ambient, inside, self.kelvin);
        LeakRate::from_std_m3_s(
            self.p_hole * flow(LeakForm::Hole) + (1.0 - self.p_hole) * flow(LeakForm::Viscous),
        )
    }

    /// The leak as throughput at 20 °C, Pa·m³/s.
    #[must_use]
    pub fn pa_m3_s(&self) -> f64 {
        self.value().pa_m3_s()
    }

    /// Diameter of the ideal round hole of the same flow, mm.
    #[must_use]
    pub fn hole_mm(&self) -> f64 {
        ideal_hole(self.value()).get::<millimeter>()
    }

    /// The tester's share of the whole leak seen, 0 to 1; above a half the part's own leak is hardly a result.
    #[must_use]
    pub fn tester_share(&self) -> f64 {
        let own = self.speed.quantile(0.5);
        if self.tester_speed > 0.0 {
            self.tester_speed / (self.tester_speed + own)
        } else {
            0.0
        }
    }

    /// How many times the readings scatter more than gauge and reader explain; 1 when they agree. Well above 1
    /// they contradict each other (a rising needle, an entry on the wrong scale).
    #[must_use]
    pub fn strain(&self) -> f64 {
        self.stretch
    }

    /// Vacuum expected after `seconds` along the fitted fall, for a chart.
    #[must_use]
    pub fn fitted(&self, seconds: f64) -> Pressure {
        let own = if self.proved {
            self.speed.quantile(0.5)
        } else {
            0.0
        };
        let x0 = (self.ambient - self.start) / self.ambient;
        let fall = |form| {
            let speed = speed_factor(form, self.ambient, self.kelvin) * (own + self.tester_speed);
            fallen(form, x0, speed * seconds.max(0.0))
        };
        let x = if self.p_hole >= 0.5 {
            fall(LeakForm::Hole)
        } else {
            fall(LeakForm::Viscous)
        };
        Pressure::new::<pascal>(self.ambient * (1.0 - x))
    }

    /// Probability that the leak over volume is above `speed`, std m³/s per m³.
    pub(crate) fn probability_over_speed(&self, speed: f64) -> f64 {
        1.0 - self.speed.below(speed.ln())
    }
}

/// The needle rule as leak over volume, std m³/s per m³, in the air of a test.
pub(crate) fn limit_speed(ambient: f64, kelvin: f64, drop: Pressure, seconds: f64, start: Pressure) -> f64 {
    let x0 = ((ambient - start.value) / ambient).clamp(0.0, 0.999);
    let x1 = (x0 + drop.value / ambient).min(0.999);
    let time = crate::fall_curve::time_between(LeakForm::Hole, x0, x1);
    time / seconds / speed_factor(LeakForm::Hole, ambient, kelvin)
}
