//! Check values from published sources, one file a source. Each test names its source in its first line; the
//! tolerance is the source's own. "From memory" marks a source that was not seen; such a check guards against
//! slips, it proves nothing.
#![allow(
    clippy::unwrap_used,
    clippy::panic,
    reason = "helpers of tests may unwrap as tests do"
)]

mod asme_b40_100;
mod astm_b258;
mod cfr_1065_644;
mod gas_dynamics;
mod iec_60028;
mod iso_2533;
mod iso_6358;
mod jcgm_100;
mod jcgm_106;
mod meters;
mod nist_sp_811;
mod poiseuille;
mod pressure_change;
mod troubleshooting;

use holdfast_measure::si::{
    f64::{Length, Pressure, ThermodynamicTemperature, Time, Volume},
    length::{meter, millimeter},
    pressure::pascal,
    thermodynamic_temperature::degree_celsius,
    time::second,
    volume::cubic_centimeter,
};

fn mm(figure: f64) -> Length {
    Length::new::<millimeter>(figure)
}

fn metres(figure: f64) -> Length {
    Length::new::<meter>(figure)
}

fn pa(figure: f64) -> Pressure {
    Pressure::new::<pascal>(figure)
}

fn inhg(figure: f64) -> Pressure {
    holdfast_measure::PressureUnit::InHg.to_pressure(figure)
}

fn celsius(figure: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(figure)
}

fn seconds(figure: f64) -> Time {
    Time::new::<second>(figure)
}

fn cm3(figure: f64) -> Volume {
    Volume::new::<cubic_centimeter>(figure)
}

/// Fails unless `found` is within a relative tolerance of `expected`.
#[track_caller]
fn close(found: f64, expected: f64, tolerance: f64) {
    assert!(
        (found - expected).abs() <= tolerance * expected.abs(),
        "found {found}, expected {expected} within {tolerance}"
    );
}
