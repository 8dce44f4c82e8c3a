//! NIST Special Publication 811 (2008), Guide for the Use of the SI, appendix B.8: factors to pascals.
//!
//! Left out: the columns of mercury "at 32 °F" and "at 60 °F", which no unit here means.

use holdfast_measure::{EverydayUnit, PressureUnit};

use crate::close;

/// Source: NIST SP 811, B.8, and pint 0.25.3 for mmHg and psi.
#[test]
fn units_in_pascals() {
    for (unit, pascals) in [
        (PressureUnit::InHg, 3386.389),
        (PressureUnit::CmHg, 1333.224),
        (PressureUnit::MmHg, 133.3224),
        (PressureUnit::Psi, 6894.757),
        (PressureUnit::Mbar, 100.0),
        (PressureUnit::Bar, 1e5),
        (PressureUnit::KPa, 1e3),
        (PressureUnit::KgfCm2, 98_066.5),
    ] {
        close(unit.to_pressure(1.0).value, pascals, 1e-6);
    }
}

/// Source: arithmetic from the factors of SP 811: one standard atmosphere and 20 inHg in each unit.
#[test]
fn a_standard_atmosphere_and_twenty_inches() {
    let atmosphere = PressureUnit::KPa.to_pressure(101.325);
    close(PressureUnit::InHg.from_pressure(atmosphere), 29.9213, 2e-5);
    close(PressureUnit::Psi.from_pressure(atmosphere), 14.695_95, 2e-5);
    close(PressureUnit::MmHg.from_pressure(atmosphere), 760.0, 2e-5);
    let twenty = PressureUnit::InHg.to_pressure(20.0);
    for (unit, figure) in [
        (PressureUnit::KPa, 67.7278),
        (PressureUnit::Mbar, 677.278),
        (PressureUnit::Bar, 0.677_278),
        (PressureUnit::CmHg, 50.8),
        (PressureUnit::MmHg, 508.0),
        (PressureUnit::Psi, 9.823_08),
        (PressureUnit::KgfCm2, 0.690_632),
    ] {
        close(unit.from_pressure(twenty), figure, 2e-5);
    }
}

/// Source: NIST SP 811, B.8: the foot, inch and mile of 1959 are exact; B.8.1 °F to °C.
#[test]
fn lengths_and_temperatures() {
    for (unit, figure, other, there) in [
        (EverydayUnit::Foot, 1.0, EverydayUnit::Metre, 0.3048),
        (EverydayUnit::Inch, 1.0, EverydayUnit::Millimetre, 25.4),
        (EverydayUnit::Mile, 1.0, EverydayUnit::Kilometre, 1.609_344),
        (EverydayUnit::Fahrenheit, 212.0, EverydayUnit::Celsius, 100.0),
        (EverydayUnit::Fahrenheit, -40.0, EverydayUnit::Celsius, -40.0),
    ] {
        close(unit.convert(figure, other), there, 1e-9);
        close(other.convert(there, unit), figure, 1e-9);
    }
}
