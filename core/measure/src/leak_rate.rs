//! A leak as a flow in a stated reference state.

use std::ops::{Add, Mul};

use serde::{Deserialize, Serialize};
use uom::si::f64::{Length, VolumeRate};
use uom::si::length::meter;
use uom::si::volume_rate::cubic_meter_per_second;

use crate::air::{STD_DENSITY, STD_PRESSURE, STD_TEMPERATURE};
use crate::element::choked_mass_flux;
use crate::pressure_unit::PressureUnit;

/// One `std cm³/min` in `std m³/s`.
const STD_CM3_MIN: f64 = 1e-6 / 60.0;

/// A leak, stated as the air that it passes with 101.325 kPa and 20 °C outside and 20 inHg of vacuum inside,
/// counted as volume at 101.325 kPa and 20 °C.
///
/// Shown in std cm³/min. The figure belongs to the leak, not to the test: what it passes at another altitude
/// or vacuum follows from its [`LeakForm`](crate::LeakForm).
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default, Serialize, Deserialize)]
#[serde(transparent)]
pub struct LeakRate {
    std_cm3_min: f64,
}

impl LeakRate {
    /// No leak.
    pub const ZERO: Self = Self { std_cm3_min: 0.0 };

    /// A leak in std cm³/min.
    #[must_use]
    pub const fn from_std_cm3_min(figure: f64) -> Self {
        Self { std_cm3_min: figure }
    }

    /// A leak in std m³/s, the SI figure.
    #[must_use]
    pub fn from_std_m3_s(figure: f64) -> Self {
        Self {
            std_cm3_min: figure / STD_CM3_MIN,
        }
    }

    /// In std cm³/min (20 °C, 101.325 kPa).
    #[must_use]
    pub const fn std_cm3_min(self) -> f64 {
        self.std_cm3_min
    }

    /// In std m³/s (20 °C, 101.325 kPa).
    #[must_use]
    pub fn std_m3_s(self) -> f64 {
        self.std_cm3_min * STD_CM3_MIN
    }

    /// As a volume rate of air in the standard state.
    #[must_use]
    pub fn volume_rate(self) -> VolumeRate {
        VolumeRate::new::<cubic_meter_per_second>(self.std_m3_s())
    }

    /// As throughput at 20 °C, Pa·m³/s.
    #[must_use]
    pub fn pa_m3_s(self) -> f64 {
        self.std_m3_s() * STD_PRESSURE
    }

    /// As mass flow, kg/s.
    #[must_use]
    pub fn kg_s(self) -> f64 {
        self.std_m3_s() * STD_DENSITY
    }
}

impl Add for LeakRate {
    type Output = Self;
    /// Leaks side by side add.
    fn add(self, other: Self) -> Self {
        Self {
            std_cm3_min: self.std_cm3_min + other.std_cm3_min,
        }
    }
}

impl Mul<f64> for LeakRate {
    type Output = Self;
    fn mul(self, factor: f64) -> Self {
        Self {
            std_cm3_min: self.std_cm3_min * factor,
        }
    }
}

impl std::iter::Sum for LeakRate {
    fn sum<I: Iterator<Item = Self>>(leaks: I) -> Self {
        leaks.fold(Self::ZERO, Add::add)
    }
}

/// Diameter of the round, frictionless hole that passes this leak in the reference state.
///
/// A real hole of the same flow is wider: a sharp edge passes 60–85 % (from memory). Zero for no leak.
#[must_use]
pub fn ideal_hole(leak: LeakRate) -> Length {
    let area = leak.kg_s().max(0.0) / choked_mass_flux(STD_PRESSURE, STD_TEMPERATURE);
    Length::new::<meter>((4.0 * area / std::f64::consts::PI).sqrt())
}

/// The leak that an ideal round hole of this diameter is.
#[must_use]
pub fn leak_of_hole(diameter: Length) -> LeakRate {
    let area = std::f64::consts::PI / 4.0 * diameter.value * diameter.value;
    LeakRate::from_std_m3_s(area * choked_mass_flux(STD_PRESSURE, STD_TEMPERATURE) / STD_DENSITY)
}

/// Absolute pressure inside in the reference state of every [`LeakRate`], Pa.
#[must_use]
pub(crate) fn reference_inside() -> f64 {
    STD_PRESSURE - PressureUnit::InHg.to_pressure(20.0).value
}
