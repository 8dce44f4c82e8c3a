//! ISO 2533:1975, Standard Atmosphere (the same below 32 km as the U.S. Standard Atmosphere 1976).
//!
//! Values by geometric altitude as two public libraries compute them (ambiance 1.3.1, fluids 1.3.0, agreeing
//! within 10⁻⁶). Left out: altitudes above 4,000 m, where nobody tests an engine mount, and density.

use holdfast_measure::{PressureUnit, max_vacuum, standard_atmosphere, station_pressure, viscosity};

use crate::{close, metres, pa};

/// Source: ISO 2533 by way of ambiance 1.3.1 and fluids 1.3.0: altitude m, pressure Pa, greatest vacuum inHg.
#[test]
fn pressure_by_geometric_altitude() {
    for (altitude, pressure, vacuum) in [
        (0.0, 101_325.0, 29.921),
        (500.0, 95_461.3, 28.190),
        (1000.0, 89_876.3, 26.540),
        (1500.0, 84_559.7, 24.970),
        (2000.0, 79_501.4, 23.477),
        (2500.0, 74_691.7, 22.056),
        (3000.0, 70_121.1, 20.707),
        (4000.0, 61_660.4, 18.208),
    ] {
        let found = standard_atmosphere(metres(altitude));
        close(found.value, pressure, 2e-5);
        close(PressureUnit::InHg.from_pressure(max_vacuum(found)), vacuum, 3e-5);
    }
}

/// Source: ISO 2533 equation (15) (Sutherland) by way of fluids 1.3.0: temperature K, viscosity Pa·s.
#[test]
fn viscosity_by_temperature() {
    for (kelvin, expected) in [
        (288.150, 1.789_38e-5),
        (281.651, 1.757_85e-5),
        (268.659, 1.693_76e-5),
        (293.15, 1.813_41e-5),
    ] {
        close(viscosity(kelvin), expected, 1e-5);
    }
}

/// Source: altimeter-setting formula, from memory; at the standard QNH it must give the standard atmosphere.
#[test]
fn station_pressure_from_a_sea_level_figure() {
    let at = |hpa: f64, altitude: f64| station_pressure(pa(hpa * 100.0), metres(altitude)).value / 100.0;
    assert!((at(1020.0, 1500.0) - 851.4).abs() < 1.0);
    for altitude in [0.0, 500.0, 1500.0, 3000.0] {
        let standard = standard_atmosphere(metres(altitude)).value / 100.0;
        assert!((at(1013.25, altitude) - standard).abs() < 0.2, "{altitude}");
    }
}
