//! The valve's coil by ohms.

use holdfast_measure::{ElectricalResistance, ThermodynamicTemperature, coil_at};
use uom::si::electrical_resistance::ohm;
use uom::si::thermodynamic_temperature::degree_celsius;

use crate::{Arg, Message};

use super::battery::Band;
use super::{Case, TestResult};

/// How warm a hot valve is, °C. Source: common practice, no source.
const HOT_C: (f64, f64) = (60.0, 100.0);
/// Below this a coil is shorted whatever its band, Ω (from memory).
const SHORTED: f64 = 5.0;
/// A coil of which nothing is known may lie this far outside the usual band before it is called bad.
const UNKNOWN_BAND: f64 = 0.5;

/// Where a sound coil reads, the meter's leads still in.
pub(super) fn coil_band(case: &Case<'_>) -> Band {
    let (low, high) = case.circuit.properties.coil_ohm;
    let at = |ohms: f64, celsius: f64| {
        let temperature = ThermodynamicTemperature::new::<degree_celsius>(celsius);
        coil_at(ElectricalResistance::new::<ohm>(ohms), temperature).get::<ohm>()
    };
    let air = case.situation.place.air_c;
    // Cold means as the air; a valve under a closed hood may still be some degrees warmer.
    let (cool, warm) = match case.reading.state.hot {
        Some(true) => HOT_C,
        Some(false) => (air - 5.0, air + 10.0),
        None => (air - 5.0, air + 25.0),
    };
    let (leads, unsure) = case.leads();
    Band::new(at(low, cool) + leads - unsure, at(high, warm) + leads + unsure)
}

/// Ohms across the valve and to its case.
pub(super) fn coil(case: &Case<'_>) -> TestResult {
    if case.yes("to_case_open") == Some(false) {
        return TestResult::bad(Message::new("coil-to-case"));
    }
    if case.reading.is_open("ohms") {
        return TestResult::bad(Message::new("coil-open"));
    }
    let Some(ohms) = case.number("ohms") else {
        return TestResult::does_not_fit();
    };
    let band = coil_band(case);
    let say = |id: &'static str| {
        Message::new(id)
            .with("ohms", Arg::Ohms(ohms))
            .with("low", Arg::Ohms(band.low))
            .with("high", Arg::Ohms(band.high))
    };
    let limit = case.meter_limit(ohms);
    if band.miss(ohms) <= limit {
        let result = TestResult::good(say("coil-good"));
        return if case.reading.state.hot == Some(true) {
            result
        } else {
            result.and(Message::new("coil-hot-too"))
        };
    }
    if ohms < SHORTED.min(band.low) {
        return TestResult::bad(say("coil-shorted"));
    }
    let slack = if case.circuit.properties.coil_known {
        0.1
    } else {
        UNKNOWN_BAND
    };
    let edge = if ohms < band.low { band.low } else { band.high };
    if band.miss(ohms) <= slack * edge + limit {
        return TestResult::open(say("coil-near-band"));
    }
    TestResult::bad(say(if ohms < band.low { "coil-low" } else { "coil-high" }))
}
