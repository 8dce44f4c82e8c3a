//! The vacuum hold test: what was set up, what was seen, and the needle's fall through a known leak.

use thiserror::Error;
use uom::si::f64::{Pressure, ThermodynamicTemperature, Time, Volume};
use uom::si::pressure::pascal;

use crate::air::STD_PRESSURE;
use crate::bounds::{Bound, QuantityError};
use crate::element::LeakForm;
use crate::fall_curve::{fallen, speed_factor, time_between};
use crate::gauge::Gauge;
use crate::leak_rate::LeakRate;
use crate::measured::Measured;
use crate::pressure_unit::PressureUnit;

/// Everything about a hold test but its readings.
#[derive(Debug, Clone, PartialEq)]
pub struct HoldSetup {
    /// Ambient absolute pressure.
    pub ambient: Pressure,
    /// Temperature of the air outside, taken for the trapped gas as well.
    pub air: ThermodynamicTemperature,
    /// The gauge, or the camera's view of one.
    pub gauge: Gauge,
    /// Whole volume under test, tester included, m³.
    pub volume: Measured,
    /// The tester's own leak, std m³/s, as found with the tester capped; `None` where the tester is what is tested.
    pub tester: Option<Measured>,
    /// Standard uncertainty of how far the trapped gas warms or cools while the needle is watched, K.
    pub thermal_k: f64,
    /// Typical give of settling rubber left after the start reading; it comes in the first seconds.
    pub creep: Pressure,
    /// Whether the moments of reading are a person's (±0.3 s) or the instrument's own.
    pub hand_timed: bool,
}

impl HoldSetup {
    /// A setup with a settled part at rest: temperature steady within 0.5 K, 0.1 inHg of creep left after a few
    /// seconds of settling (common practice, no source), timed by hand, no leak of the tester taken off.
    #[must_use]
    pub fn new(ambient: Pressure, air: ThermodynamicTemperature, gauge: Gauge, volume: Measured) -> Self {
        Self {
            ambient,
            air,
            gauge,
            volume,
            tester: None,
            thermal_k: 0.5,
            creep: PressureUnit::InHg.to_pressure(0.1),
            hand_timed: true,
        }
    }

    /// Standard uncertainty of the moment of a reading, s.
    pub(crate) fn u_time(&self) -> f64 {
        if self.hand_timed { 0.3 } else { 0.02 }
    }

    pub(crate) fn check(&self) -> Result<(), HoldError> {
        Bound::AMBIENT.check(self.ambient.value / 1000.0)?;
        Bound::AIR.check(self.air.value - 273.15)?;
        self.gauge.checked()?;
        Bound::CHAMBER.check(self.volume.value * 1e6)?;
        let tester_ok = self.tester.is_none_or(|t| t.value.is_finite() && t.u.is_finite());
        let figures_ok = self.volume.u.is_finite() && self.thermal_k >= 0.0 && self.thermal_k.is_finite();
        if tester_ok && figures_ok && self.creep.value >= 0.0 && self.creep.is_finite() {
            Ok(())
        } else {
            Err(HoldError::NotFinite)
        }
    }
}

/// Where the readings come from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum HoldKind {
    /// Read by hand at some moments.
    Spot,
    /// Taken by an instrument at a steady rate; lost frames are simply absent.
    Trace {
        /// Frames a second.
        hz: f64,
    },
}

/// What was seen. Vacuum is positive below ambient.
#[derive(Debug, Clone, PartialEq)]
pub struct HoldData {
    /// Reading at the start, time 0.
    pub start: Pressure,
    /// Later readings with the time since the start; any order.
    pub points: Vec<(Time, Pressure)>,
    /// Where they come from.
    pub kind: HoldKind,
}

/// Why nothing can be said about a hold test.
#[derive(Debug, Clone, Copy, PartialEq, Error)]
pub enum HoldError {
    /// No reading after the start.
    #[error("there is no reading after the start")]
    NoReading,
    /// A time is not positive, or a figure is not finite.
    #[error("a figure of the hold test is not usable")]
    NotFinite,
    /// The start shows no vacuum to lose: less than twice the step to which the gauge is read.
    #[error("there was no vacuum at the start")]
    NoVacuum,
    /// A reading is above what the air allows, by more than the gauge's error.
    #[error("a reading shows more vacuum than the air allows")]
    AboveAmbient,
    /// A figure of the setup is out of its range.
    #[error(transparent)]
    Quantity(#[from] QuantityError),
}

/// The leak through which a volume loses `drop` of vacuum in `seconds`, from `start`: the needle rule as a leak.
///
/// Taken as a hole at 20 °C. From 20 inHg at sea level the fall is a straight line, so both forms agree.
/// Zero unless `drop > 0` and `seconds > 0`; a drop of all the vacuum counts as all but a thousandth.
#[must_use]
pub fn limit_leak(
    volume: Volume,
    ambient: Pressure,
    drop: Pressure,
    seconds: f64,
    start: Pressure,
) -> LeakRate {
    if !(drop.value > 0.0 && seconds > 0.0) {
        return LeakRate::ZERO;
    }
    let x0 = ((ambient - start) / ambient).value.clamp(0.0, 0.999);
    let x1 = (x0 + (drop / ambient).value).min(0.999);
    let speed = time_between(LeakForm::Hole, x0, x1) / seconds;
    LeakRate::from_std_m3_s(speed * volume.value)
}

/// The drop of vacuum after `seconds` through a leak of known form, from `start`, without warming or creep.
///
/// The tester's own leak, where given, is added.
#[must_use]
pub fn predict_form(
    setup: &HoldSetup,
    form: LeakForm,
    start: Pressure,
    leak: LeakRate,
    seconds: f64,
) -> Pressure {
    let pa = setup.ambient.value;
    let x0 = ((pa - start.value) / pa).clamp(0.0, 1.0);
    let total = leak.std_m3_s() + setup.tester.map_or(0.0, |t| t.value.max(0.0));
    let speed = speed_factor(form, pa, setup.air.value) * total / setup.volume.value;
    Pressure::new::<pascal>(pa * (fallen(form, x0, speed * seconds.max(0.0)) - x0))
}

/// [`predict_form`] for a hole from 20 inHg, or from the same share of ambient where the air allows less.
#[must_use]
pub fn predict(setup: &HoldSetup, leak: LeakRate, seconds: f64) -> Pressure {
    let share = PressureUnit::InHg.to_pressure(20.0).value / STD_PRESSURE;
    let start = PressureUnit::InHg
        .to_pressure(20.0)
        .value
        .min(share * setup.ambient.value);
    predict_form(
        setup,
        LeakForm::Hole,
        Pressure::new::<pascal>(start),
        leak,
        seconds,
    )
}
