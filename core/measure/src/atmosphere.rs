//! What the air presses with where the test is made.

use uom::si::f64::{Length, Pressure};
use uom::si::length::meter;
use uom::si::pressure::pascal;

/// Radius in the relation of geometric and geopotential altitude, m (ISO 2533).
const EARTH_RADIUS: f64 = 6_356_766.0;
/// Sea-level temperature of the standard atmosphere, K.
const SEA_LEVEL_TEMPERATURE: f64 = 288.15;
/// Fall of temperature with geopotential altitude below 11 km, K/m.
const LAPSE: f64 = 0.0065;
/// `g/(R·lapse)` with g = 9.80665 m/s² and R = 287.05287 J/(kg·K).
const EXPONENT: f64 = 5.255_876;

/// Ambient absolute pressure of the standard atmosphere at a geometric altitude above sea level.
///
/// Altitudes are held within −1,000 m to 11,000 m, the layer of one temperature lapse. Weather is not
/// modelled: it moves the true figure by up to ±4 %.
///
/// # Source
/// ISO 2533:1975, equations (8) and (12).
#[must_use]
pub fn standard_atmosphere(altitude: Length) -> Pressure {
    let h = altitude.get::<meter>().clamp(-1000.0, 11_000.0);
    let geopotential = EARTH_RADIUS * h / (EARTH_RADIUS + h);
    let share = 1.0 - LAPSE * geopotential / SEA_LEVEL_TEMPERATURE;
    Pressure::new::<pascal>(101_325.0 * share.powf(EXPONENT))
}

/// Ambient pressure where a weather service's figure, reduced to sea level (QNH), holds.
///
/// # Source
/// Altimeter-setting formula, constants from memory; agrees with ISO 2533 at 1013.25 hPa within 0.1 hPa.
#[must_use]
pub fn station_pressure(qnh: Pressure, altitude: Length) -> Pressure {
    const POWER: f64 = 0.190_263;
    let reduced = (qnh.value / 100.0).powf(POWER) - 8.417_286e-5 * altitude.get::<meter>();
    Pressure::new::<pascal>(100.0 * reduced.max(0.0).powf(1.0 / POWER))
}

/// The greatest vacuum that any pump can reach: all of the ambient pressure.
#[must_use]
pub fn max_vacuum(ambient: Pressure) -> Pressure {
    ambient
}
