//! Copper: wires, coils, and what a meter or a lamp does to a voltage.

use serde::{Deserialize, Serialize};
use uom::si::electrical_resistance::ohm;
use uom::si::f64::{
    ElectricCurrent, ElectricPotential, ElectricalResistance, Length, ThermodynamicTemperature,
};
use uom::si::length::meter;
use uom::si::thermodynamic_temperature::degree_celsius;

/// Resistivity of annealed copper at 20 °C, Ω·mm²/m.
///
/// # Source
/// IEC 60028: 1/58.
pub const COPPER_RESISTIVITY: f64 = 1.0 / 58.0;
/// Temperature coefficient of resistance of copper at 20 °C, 1/K.
///
/// # Source
/// IEC 60028.
pub const COPPER_COEFFICIENT: f64 = 0.003_93;

/// The size of a wire.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub enum WireGauge {
    /// Cross-section in mm².
    #[serde(rename = "mm2")]
    Mm2(f64),
    /// American wire gauge number, 0 to 40.
    #[serde(rename = "awg")]
    Awg(u8),
}

impl WireGauge {
    /// Diameter of a solid wire of this size.
    ///
    /// # Source
    /// ASTM B258 for AWG: `0.127 mm·92^((36−n)/39)`.
    #[must_use]
    pub fn diameter(self) -> Length {
        let mm = match self {
            Self::Mm2(area) => (4.0 * area / std::f64::consts::PI).sqrt(),
            Self::Awg(number) => 0.127 * 92f64.powf((36.0 - f64::from(number)) / 39.0),
        };
        Length::new::<meter>(mm / 1000.0)
    }

    /// Cross-section in mm².
    #[must_use]
    pub fn mm2(self) -> f64 {
        match self {
            Self::Mm2(area) => area,
            Self::Awg(_) => {
                let mm = self.diameter().value * 1000.0;
                std::f64::consts::PI / 4.0 * mm * mm
            }
        }
    }
}

/// How much more copper resists at a temperature than at 20 °C, as a factor.
#[must_use]
pub fn copper_factor(temperature: ThermodynamicTemperature) -> f64 {
    1.0 + COPPER_COEFFICIENT * (temperature.get::<degree_celsius>() - 20.0)
}

/// Resistance of a plain solid copper wire. Stranded automotive wire has 5–8 % more (ISO 6722-1, IEC 60228);
/// terminals add their own.
#[must_use]
pub fn wire_resistance(
    length: Length,
    size: WireGauge,
    temperature: ThermodynamicTemperature,
) -> ElectricalResistance {
    let cold = COPPER_RESISTIVITY * length.get::<meter>() / size.mm2();
    ElectricalResistance::new::<ohm>(cold * copper_factor(temperature))
}

/// What is lost over a resistance at a current.
#[must_use]
pub fn voltage_drop(current: ElectricCurrent, resistance: ElectricalResistance) -> ElectricPotential {
    current * resistance
}

/// Resistance of a copper coil at a temperature, from its resistance at 20 °C.
#[must_use]
pub fn coil_at(at_20: ElectricalResistance, temperature: ThermodynamicTemperature) -> ElectricalResistance {
    at_20 * copper_factor(temperature)
}

/// A coil's resistance at 20 °C, from what it reads at a temperature.
#[must_use]
pub fn coil_at_20(read: ElectricalResistance, temperature: ThermodynamicTemperature) -> ElectricalResistance {
    read / copper_factor(temperature)
}

/// Voltage over a load fed through a series resistance: `supply·load/(series + load)`.
///
/// With a meter of 10 MΩ as the only load even a corroded joint shows full voltage; with a lamp it doesn't.
#[must_use]
pub fn loaded_voltage(
    supply: ElectricPotential,
    series: ElectricalResistance,
    load: ElectricalResistance,
) -> ElectricPotential {
    if load.value.is_infinite() {
        return supply;
    }
    supply * (load / (series + load)).value
}

/// Series resistance of a feed, from its voltage without and with a known load.
///
/// `None` unless `0 < loaded <= unloaded`.
#[must_use]
pub fn series_resistance(
    unloaded: ElectricPotential,
    loaded: ElectricPotential,
    load: ElectricalResistance,
) -> Option<ElectricalResistance> {
    (loaded.value > 0.0 && loaded <= unloaded).then(|| load * ((unloaded - loaded) / loaded).value)
}

/// Two loads side by side; an infinite one counts as absent.
#[must_use]
pub fn parallel(a: ElectricalResistance, b: ElectricalResistance) -> ElectricalResistance {
    if a.value.is_infinite() {
        b
    } else if b.value.is_infinite() || (a + b).value == 0.0 {
        a
    } else {
        a * (b / (a + b)).value
    }
}

/// Resistance of a lamp at its rated voltage and power, glowing. Cold it is about a tenth (from memory).
#[must_use]
pub fn lamp_resistance(rated_volts: f64, watts: f64) -> ElectricalResistance {
    ElectricalResistance::new::<ohm>(rated_volts * rated_volts / watts)
}

/// What a direct-voltage meter shows of a pulsed drive: the mean, `on_share·supply`.
#[must_use]
pub fn mean_of_pulsed(supply: ElectricPotential, on_share: f64) -> ElectricPotential {
    supply * on_share.clamp(0.0, 1.0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use uom::si::electric_potential::volt;

    #[test]
    fn a_corroded_joint_shows_only_under_load() {
        let supply = ElectricPotential::new::<volt>(13.8);
        let joint = ElectricalResistance::new::<ohm>(100.0);
        let ten_megohm = ElectricalResistance::new::<ohm>(10e6);
        let coil = ElectricalResistance::new::<ohm>(29.0);
        assert!(loaded_voltage(supply, joint, ten_megohm).value > 13.799);
        let loaded = loaded_voltage(supply, joint, parallel(ten_megohm, coil));
        assert!((loaded.value - 3.10).abs() < 0.01);
        let found = series_resistance(supply, loaded, coil).unwrap();
        assert!((found.value - 100.0).abs() < 0.1);
    }

    #[test]
    fn no_load_and_no_resistance_are_harmless() {
        let supply = ElectricPotential::new::<volt>(12.0);
        let none = ElectricalResistance::new::<ohm>(f64::INFINITY);
        let zero = ElectricalResistance::new::<ohm>(0.0);
        assert_eq!(loaded_voltage(supply, zero, none), supply);
        assert_eq!(parallel(zero, zero).value, 0.0);
        assert_eq!(parallel(none, zero).value, 0.0);
        assert_eq!(
            series_resistance(supply, ElectricPotential::new::<volt>(0.0), zero),
            None
        );
    }
}
