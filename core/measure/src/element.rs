//! Passages for air: holes, valves, hoses, cracks. Flow between two absolute pressures.

use serde::{Deserialize, Serialize};
use uom::si::f64::{Area, Length};

use crate::air::{GAS_CONSTANT, STD_DENSITY, STD_PRESSURE, STD_TEMPERATURE, viscosity};
use crate::leak_rate::{LeakRate, reference_inside};

/// Ratio of specific heats of air.
pub(crate) const KAPPA: f64 = 1.4;
/// `(2/(κ+1))^(κ/(κ−1))`: below this ratio of pressures a nozzle is choked.
pub const CRITICAL_RATIO: f64 = 0.528_281_787_717_174;
/// `(2/(κ+1))^((κ+1)/(2(κ−1)))`, exact for κ = 1.4.
pub(crate) const CHOKED_FACTOR: f64 = 125.0 / 216.0;
/// Density of air in the reference state of ISO 6358 (ANR, ISO 8778: 20 °C, 100 kPa, 65 % humidity), kg/m³.
const ANR_DENSITY: f64 = 1.185;
/// Temperature of that state, K.
const ANR_TEMPERATURE: f64 = 293.15;

/// How a leak's flow depends on the pressures.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum LeakForm {
    /// A hole or split: choked, so constant, while the vacuum is deep; the needle falls in a straight line.
    Hole,
    /// A long fine path: flow goes with the difference of the squares of the pressures.
    Viscous,
}

/// Choked mass flow of an ideal nozzle per area, kg/(s·m²), from upstream pressure (Pa) and temperature (K).
///
/// # Source
/// Isentropic nozzle of an ideal gas, κ = 1.4; any handbook of gas dynamics.
#[must_use]
pub fn choked_mass_flux(pressure: f64, kelvin: f64) -> f64 {
    pressure * (KAPPA / (GAS_CONSTANT * kelvin)).sqrt() * CHOKED_FACTOR
}

/// Flow of an ideal nozzle as a share of its choked flow, from the ratio of absolute pressures `down/up`.
#[must_use]
pub fn nozzle_share(ratio: f64) -> f64 {
    if ratio <= CRITICAL_RATIO {
        return 1.0;
    }
    if ratio >= 1.0 {
        return 0.0;
    }
    let y = (1.0 - ratio.powf((KAPPA - 1.0) / KAPPA)).max(0.0).sqrt();
    (2.0 / (KAPPA - 1.0)).sqrt() * ratio.powf(1.0 / KAPPA) * y / CHOKED_FACTOR
}

/// Ratio of pressures beyond which a passage counts as laminar, its flow proportional to the difference. The
/// formulas have an infinite slope at equal pressures, which no passage has and no integration survives.
const LAMINAR_RATIO: f64 = 0.999_9;

/// `share` of the choked flow at a ratio, made straight between [`LAMINAR_RATIO`] and equal pressures.
fn straightened(ratio: f64, share: impl Fn(f64) -> f64) -> f64 {
    if ratio <= LAMINAR_RATIO {
        share(ratio)
    } else {
        share(LAMINAR_RATIO) * (1.0 - ratio) / (1.0 - LAMINAR_RATIO)
    }
}

/// One passage. Passages side by side simply add. Within 10⁻⁴ of equal pressures the flow is proportional to
/// the difference.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Element {
    /// A pneumatic component by its measured characteristic.
    ///
    /// `q = c·ρ0·p1·√(T0/T1)`, times `[1 − ((r − b)/(1 − b))²]^m` once `r = p2/p1` is above `b`.
    ///
    /// # Source
    /// ISO 6358-1; formula and reference density 1.185 kg/m³ from memory.
    Iso6358 {
        /// Sonic conductance, m³/(s·Pa); 1 dm³/(s·bar) is 10⁻⁸.
        c: f64,
        /// Critical ratio of pressures, `0 <= b < 1`.
        b: f64,
        /// Subsonic index, 0.5 unless measured.
        m: f64,
    },
    /// An ideal, frictionless nozzle.
    Nozzle {
        /// Area, m².
        area: f64,
    },
    /// A long fine path: `ṁ = k·(p1² − p2²)/(μ·R·T)`.
    ///
    /// # Source
    /// Compressible isothermal Poiseuille flow; for a round capillary `k = π·d⁴/(256·L)`.
    Viscous {
        /// Geometry factor, m³.
        k: f64,
    },
}

impl Element {
    /// A component of ISO 6358 with conductance in dm³/(s·bar) and index 0.5.
    #[must_use]
    pub fn iso_6358(dm3_s_bar: f64, b: f64) -> Self {
        Self::Iso6358 {
            c: dm3_s_bar * 1e-8,
            b,
            m: 0.5,
        }
    }

    /// An ideal nozzle of this area.
    #[must_use]
    pub fn nozzle(area: Area) -> Self {
        Self::Nozzle { area: area.value }
    }

    /// An ideal round hole.
    #[must_use]
    pub fn round_hole(diameter: Length) -> Self {
        Self::Nozzle {
            area: std::f64::consts::PI / 4.0 * diameter.value * diameter.value,
        }
    }

    /// A smooth round capillary or hose in laminar flow. Inertia and the entrance are not modelled: true while
    /// `Re < 2000` and `64·L/(Re·d)` is far above `2·ln(p1/p2)`.
    #[must_use]
    pub fn capillary(diameter: Length, length: Length) -> Self {
        Self::Viscous {
            k: std::f64::consts::PI * diameter.value.powi(4) / (256.0 * length.value),
        }
    }

    /// The passage of a given form that is this leak in the reference state.
    #[must_use]
    pub fn leak(form: LeakForm, leak: LeakRate) -> Self {
        match form {
            LeakForm::Hole => Self::Nozzle {
                area: leak.kg_s() / choked_mass_flux(STD_PRESSURE, STD_TEMPERATURE),
            },
            LeakForm::Viscous => {
                let inside = reference_inside();
                let squares = STD_PRESSURE * STD_PRESSURE - inside * inside;
                Self::Viscous {
                    k: leak.kg_s() * viscosity(STD_TEMPERATURE) * GAS_CONSTANT * STD_TEMPERATURE / squares,
                }
            }
        }
    }

    /// The leak that this passage is: its flow in the reference state.
    #[must_use]
    pub fn leak_rate(&self) -> LeakRate {
        LeakRate::from_std_m3_s(
            self.mass_flow(STD_PRESSURE, reference_inside(), STD_TEMPERATURE) / STD_DENSITY,
        )
    }

    /// Mass flow, kg/s, from `from` to `to` (absolute, Pa), air at `kelvin`; negative when it runs back.
    #[must_use]
    pub fn mass_flow(&self, from: f64, to: f64, kelvin: f64) -> f64 {
        if to > from {
            return -self.mass_flow(to, from, kelvin);
        }
        if from <= 0.0 {
            return 0.0;
        }
        let ratio = (to / from).max(0.0);
        match *self {
            Self::Iso6358 { c, b, m } => {
                let share = straightened(ratio, |ratio| {
                    let beyond = ((ratio - b) / (1.0 - b)).max(0.0);
                    (1.0 - beyond * beyond).max(0.0).powf(m)
                });
                c * ANR_DENSITY * from * (ANR_TEMPERATURE / kelvin).sqrt() * share
            }
            Self::Nozzle { area } => {
                area * choked_mass_flux(from, kelvin) * straightened(ratio, nozzle_share)
            }
            Self::Viscous { k } => k * (from * from - to * to) / (viscosity(kelvin) * GAS_CONSTANT * kelvin),
        }
    }

    /// Flow as volume in the standard state, std m³/s; arguments as [`mass_flow`](Self::mass_flow).
    #[must_use]
    pub fn std_flow(&self, from: f64, to: f64, kelvin: f64) -> f64 {
        self.mass_flow(from, to, kelvin) / STD_DENSITY
    }

    /// Flow as throughput at the temperature of the air, Pa·m³/s.
    #[must_use]
    pub fn throughput(&self, from: f64, to: f64, kelvin: f64) -> f64 {
        self.mass_flow(from, to, kelvin) * GAS_CONSTANT * kelvin
    }
}
