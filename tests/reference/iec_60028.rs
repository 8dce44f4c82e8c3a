//! IEC 60028, International standard of resistance for copper: 1/58 Ω·mm²/m at 20 °C, 0.00393 1/K.
//!
//! Stranded wire by IEC 60228 and ISO 6722-1 is only used as a resistance per metre. Left out: fuses.

use holdfast_measure::si::{
    electric_current::ampere,
    electric_potential::volt,
    electrical_resistance::ohm,
    f64::{ElectricCurrent, ElectricPotential, ElectricalResistance},
};
use holdfast_measure::{
    WireGauge, coil_at, coil_at_20, copper_factor, lamp_resistance, loaded_voltage, mean_of_pulsed, parallel,
    voltage_drop, wire_resistance,
};

use crate::{celsius, close, metres};

fn ohms(figure: f64) -> ElectricalResistance {
    ElectricalResistance::new::<ohm>(figure)
}

fn volts(figure: f64) -> ElectricPotential {
    ElectricPotential::new::<volt>(figure)
}

/// Source: IEC 60028: resistivity over area: mm², mΩ/m (ideal column).
#[test]
fn resistance_by_area() {
    for (mm2, milliohms) in [
        (0.35, 49.26),
        (0.5, 34.48),
        (0.75, 22.99),
        (1.0, 17.24),
        (1.5, 11.49),
    ] {
        let found = wire_resistance(metres(1.0), WireGauge::Mm2(mm2), celsius(20.0));
        close(found.value * 1000.0, milliohms, 5e-4);
    }
}

/// Source: IEC 60028: factor at 0, 60, 80 °C; a 30 Ω coil reads 37.074 Ω at 80 °C.
#[test]
fn copper_at_temperature() {
    for (at, factor) in [(0.0, 0.9214), (20.0, 1.0), (60.0, 1.1572), (80.0, 1.2358)] {
        close(copper_factor(celsius(at)), factor, 1e-9);
    }
    close(coil_at(ohms(30.0), celsius(80.0)).value, 37.074, 1e-9);
    close(coil_at_20(ohms(37.074), celsius(80.0)).value, 30.0, 1e-9);
}

/// Source: Ohm's law on ISO 6722-1 resistances (from memory): 12 Ω coil, 8 m of 0.5 mm² at 37.1 mΩ/m, 13.8 V.
#[test]
fn a_worked_drop() {
    let wire = ohms(8.0 * 0.0371);
    let current = volts(13.8) / (ohms(12.0) + wire);
    close(current.value, 1.122_24, 1e-5);
    close(voltage_drop(current, wire).value, 0.333_08, 1e-4);
    close(
        (volts(13.8) - loaded_voltage(volts(13.8), wire, ohms(12.0))).value,
        0.333_08,
        1e-4,
    );
    let long = voltage_drop(ElectricCurrent::new::<ampere>(5.0), ohms(6.0 * 0.0185));
    close(long.value, 0.555, 1e-9);
}

/// Source: Ohm's law: 100 Ω joint, 13.8 V: 13.8 on a 10 MΩ meter, 2.8–3.1 with a 29 Ω load; 10 Ω joint leaves a
/// 30 Ω coil 10.4 V; 30 % of 14.0 V reads 4.2 V.
#[test]
fn loading_by_meter_and_lamp() {
    close(
        loaded_voltage(volts(13.8), ohms(100.0), ohms(10e6)).value,
        13.8,
        2e-5,
    );
    let lamp = lamp_resistance(12.0, 5.0);
    close(lamp.value, 28.8, 1e-9);
    let loaded = loaded_voltage(volts(13.8), ohms(100.0), parallel(lamp, ohms(10e6))).value;
    assert!((2.8..3.15).contains(&loaded), "{loaded}");
    close(
        loaded_voltage(volts(13.8), ohms(10.0), ohms(30.0)).value,
        10.35,
        1e-9,
    );
    close(mean_of_pulsed(volts(14.0), 0.3).value, 4.2, 1e-9);
}
