//! Air: constants and viscosity.

/// Specific gas constant of dry air, J/(kg·K).
///
/// # Source
/// ISO 2533:1975, table 1.
pub const GAS_CONSTANT: f64 = 287.052_87;
/// Pressure of the standard state of every `std cm³` in this crate, Pa.
pub const STD_PRESSURE: f64 = 101_325.0;
/// Temperature of the standard state of every `std cm³` in this crate, K (20 °C).
pub const STD_TEMPERATURE: f64 = 293.15;
/// Density of dry air in the standard state, kg/m³.
pub const STD_DENSITY: f64 = STD_PRESSURE / (GAS_CONSTANT * STD_TEMPERATURE);

/// Dynamic viscosity of air, Pa·s, at a temperature in kelvin.
///
/// # Source
/// Sutherland's law with the constants of ISO 2533:1975, equation (15).
#[must_use]
pub fn viscosity(kelvin: f64) -> f64 {
    1.458e-6 * kelvin.powf(1.5) / (kelvin + 110.4)
}
