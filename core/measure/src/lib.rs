#![doc = include_str!("../README.md")]
#![forbid(unsafe_code)]
#![deny(missing_docs)]

mod air;
mod atmosphere;
mod bounds;
mod closed_volumes;
mod element;
mod everyday_unit;
mod fall_curve;
mod gauge;
mod hand_pump;
mod hold;
mod infer;
mod leak_rate;
mod likelihood;
mod log_grid;
mod measured;
mod meter;
mod mount_supply;
mod normal;
mod number;
mod ode;
mod posterior;
mod pressure_unit;
mod spectrum;
mod spot;
mod trace;
mod watch;
mod wire;

pub use air::{GAS_CONSTANT, STD_DENSITY, STD_PRESSURE, STD_TEMPERATURE, viscosity};
pub use atmosphere::{max_vacuum, standard_atmosphere, station_pressure};
pub use bounds::{Bound, QuantityError};
pub use closed_volumes::{ClosedVolume, Creep, FallError, Warming, fall_of_one, fall_of_two};
pub use element::{CRITICAL_RATIO, Element, LeakForm, choked_mass_flux, nozzle_share};
pub use everyday_unit::EverydayUnit;
pub use gauge::{Gauge, GaugeGrade};
pub use hand_pump::{HandPump, strokes_to_reach, volume_from_strokes};
pub use hold::{HoldData, HoldError, HoldKind, HoldSetup, limit_leak, predict, predict_form};
pub use infer::infer_leak;
pub use leak_rate::{LeakRate, ideal_hole, leak_of_hole};
pub use measured::Measured;
pub use meter::Meter;
pub use mount_supply::steady_vacuum_at_mount;
pub use normal::{normal_cdf, normal_quantile, probability_above};
pub use number::{NumberError, parse_number, parse_vacuum};
pub use posterior::LeakPosterior;
pub use pressure_unit::PressureUnit;
pub use spectrum::{SpectrumLine, spectrum};
pub use uom::si;
pub use uom::si::f64::{
    Area, ElectricCurrent, ElectricPotential, ElectricalResistance, Length, Power, Pressure,
    TemperatureInterval, ThermodynamicTemperature, Time, Volume, VolumeRate,
};
pub use watch::{read_to_that_decides, seconds_to_decide};
pub use wire::{
    COPPER_COEFFICIENT, COPPER_RESISTIVITY, WireGauge, coil_at, coil_at_20, copper_factor, lamp_resistance,
    loaded_voltage, mean_of_pulsed, parallel, series_resistance, voltage_drop, wire_resistance,
};
