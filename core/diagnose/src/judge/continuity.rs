//! Wires by ohms, and the meter itself.

use holdfast_measure::{Length, ThermodynamicTemperature, WireGauge, wire_resistance};
use uom::si::electrical_resistance::ohm;
use uom::si::length::meter;
use uom::si::thermodynamic_temperature::degree_celsius;

use crate::{Arg, Message, TestKind};

use super::battery::{AT_REST, Band};
use super::{Case, TestResult};

/// Terminals and a stranded conductor's extra, Ω. Source: from memory, continuity under 0.5–1 Ω, leads subtracted.
const TERMINALS: f64 = 0.5;
/// Above this on top of the wire itself it is bad; between, nothing is decided. From memory, as above.
const TOO_MUCH: f64 = 1.0;
/// Loss of a sound power wire under its load, V: sound, and at most; public lists disagree between them.
const DROP: (f64, f64) = (0.2, 0.5);
/// Shorted leads read at most this, Ω (from memory).
pub(super) const LEADS_OHMS: f64 = 0.5;
/// A wire whose length or area nobody said is taken as this long, m, and this thick, mm². Common practice, no source.
const USUAL_WIRE: (f64, f64) = (2.0, 0.5);

/// The wire's own resistance, Ω, from its length, area and the air's temperature.
pub(super) fn wire_ohms(case: &Case<'_>, power: bool) -> f64 {
    let drive = case.circuit.drive(case.reading.test.part.as_ref());
    let wire = drive.and_then(|d| {
        case.circuit
            .component(if power { &d.power_wire } else { &d.control_wire })
    });
    let length = wire.and_then(|w| w.length_m).unwrap_or(USUAL_WIRE.0);
    let area = wire.and_then(|w| w.area_mm2).unwrap_or(USUAL_WIRE.1);
    let air = ThermodynamicTemperature::new::<degree_celsius>(case.situation.place.air_c);
    wire_resistance(Length::new::<meter>(length), WireGauge::Mm2(area), air).get::<ohm>()
}

/// Where a sound wire's ohms lie, the meter's leads still in.
pub(super) fn wire_band(case: &Case<'_>) -> Band {
    let (leads, unsure) = case.leads();
    let power = case.reading.test.kind == TestKind::PowerWire;
    Band::new(0.0, wire_ohms(case, power) + TERMINALS + leads + unsure)
}

enum Wire {
    Open,
    Good(f64),
    Marginal(f64),
    Bad(f64),
}

fn wire(case: &Case<'_>) -> Option<Wire> {
    if case.reading.is_open("ohms") {
        return Some(Wire::Open);
    }
    let ohms = case.number("ohms")?;
    let band = wire_band(case);
    let own = (ohms - case.leads().0).max(0.0);
    let over = band.miss(ohms) - case.meter_limit(ohms);
    Some(if over <= 0.0 {
        Wire::Good(own)
    } else if over <= TOO_MUCH - TERMINALS {
        Wire::Marginal(own)
    } else {
        Wire::Bad(own)
    })
}

/// What a resistance in the feed costs under the coil's current.
fn under_load(case: &Case<'_>, ohms: f64) -> Message {
    let (low, high) = case.circuit.properties.coil_ohm;
    let coil = f64::midpoint(low, high);
    let volts = 13.8;
    let left = volts * coil / (coil + ohms);
    Message::new("wire-under-load")
        .with("left", Arg::Volts(left))
        .with("drop", Arg::Volts(volts - left))
}

/// Fuse to connector.
pub(super) fn power_wire(case: &Case<'_>) -> TestResult {
    if case.yes("to_ground_open") == Some(false) {
        return TestResult::bad(Message::new("power-wire-to-ground"));
    }
    let drop = case.number("drop_v");
    if let Some(drop) = drop.filter(|d| *d > DROP.1 + case.meter_limit(*d)) {
        return TestResult::bad(Message::new("power-wire-drop").with("drop", Arg::Volts(drop)));
    }
    let result = match wire(case) {
        None => return TestResult::does_not_fit(),
        Some(Wire::Open) => TestResult::bad(Message::new("power-wire-open")),
        Some(Wire::Good(ohms)) => {
            let result = TestResult::good(Message::new("power-wire-good").with("ohms", Arg::Ohms(ohms)))
                .and(Message::new("wire-one-strand"));
            if case.yes("to_ground_open").is_none() {
                result.and(Message::new("power-wire-ground-not-tried"))
            } else {
                result
            }
        }
        Some(Wire::Marginal(ohms)) => {
            TestResult::open(Message::new("power-wire-marginal").with("ohms", Arg::Ohms(ohms)))
        }
        Some(Wire::Bad(ohms)) => {
            TestResult::bad(Message::new("power-wire-high").with("ohms", Arg::Ohms(ohms)))
                .and(under_load(case, ohms))
        }
    };
    match drop {
        Some(drop)
            if drop > DROP.0 + case.meter_limit(drop) && result.outcome == crate::Outcome::AsExpected =>
        {
            TestResult::open(Message::new("power-wire-drop-marginal").with("drop", Arg::Volts(drop)))
        }
        _ => result,
    }
}

/// Connector to module.
pub(super) fn control_wire(case: &Case<'_>) -> TestResult {
    if case.yes("to_ground_open") == Some(false) {
        return TestResult::bad(Message::new("control-wire-to-ground"));
    }
    if case.yes("to_battery_open") == Some(false) {
        return TestResult::bad(Message::new("control-wire-to-battery"));
    }
    match wire(case) {
        None => TestResult::does_not_fit(),
        Some(Wire::Open) => TestResult::bad(Message::new("control-wire-open")),
        Some(Wire::Good(ohms)) => {
            let result = TestResult::good(Message::new("control-wire-good").with("ohms", Arg::Ohms(ohms)));
            if case.yes("to_ground_open").is_none() {
                result.and(Message::new("control-wire-ground-not-tried"))
            } else {
                result
            }
        }
        Some(Wire::Marginal(ohms)) => {
            TestResult::open(Message::new("control-wire-marginal").with("ohms", Arg::Ohms(ohms)))
        }
        Some(Wire::Bad(ohms)) => {
            TestResult::bad(Message::new("control-wire-high").with("ohms", Arg::Ohms(ohms)))
                .and(under_load(case, ohms))
        }
    }
}

/// Meter and lamp on the battery, leads shorted.
pub(super) fn prove_meter(case: &Case<'_>) -> TestResult {
    if case.reading.is_open("ohms") {
        return TestResult::bad(Message::new("prove-meter-leads-open"));
    }
    let Some(ohms) = case.number("ohms") else {
        return TestResult::does_not_fit();
    };
    if ohms > LEADS_OHMS + case.meter_limit(ohms) {
        return TestResult::bad(Message::new("prove-meter-leads-high").with("ohms", Arg::Ohms(ohms)));
    }
    if case.yes("lamp") == Some(false) {
        return TestResult::bad(Message::new("prove-meter-lamp"));
    }
    let good = TestResult::good(Message::new("prove-meter-good").with("ohms", Arg::Ohms(ohms)));
    match case.number("battery") {
        None => good,
        Some(volts) if volts < 1.0 => {
            TestResult::bad(Message::new("prove-meter-no-battery").with("volts", Arg::Volts(volts)))
        }
        // Advice, never a finding.
        Some(volts) if volts < AT_REST.low => good.and(battery_low(volts)),
        Some(_) => good,
    }
}

/// Charge first: a low battery makes every other voltage low.
fn battery_low(volts: f64) -> Message {
    Message::new("battery-charge-first").with("volts", Arg::Volts(volts))
}
