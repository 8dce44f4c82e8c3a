//! Whether the module works the valve.

use crate::{Arg, Message, Outcome, Switched, TestKind};

use super::battery::{Band, ZERO, window_met};
use super::{Case, TestResult};

/// A working switch to ground with the coil's current, V (from memory).
pub(super) const SWITCH: Band = Band { low: 0.0, high: 1.0 };
/// Wires, connector and switch may take this from the coil's voltage, V: switch 1.0 and 0.5 of joints (from memory).
const LOST_AT_MOST: f64 = 1.5;
/// A valve pulls in from about this, V (from memory); below it, it can't be said to be worked.
const PULL_IN: f64 = 9.0;

/// Across the coil while it is worked.
pub(super) fn driven_band(case: &Case<'_>) -> Band {
    let battery = case.battery();
    if case.circuit.properties.pulsed {
        // The mean of a chopped voltage: anything from a tenth to all of it.
        return Band::new(battery.volts * 0.1, battery.band.high);
    }
    Band::new(battery.band.low - LOST_AT_MOST, battery.band.high)
}

/// Whether the valve was to be worked, also by what another test showed in the same state of the engine.
fn commanded(case: &Case<'_>) -> Option<bool> {
    let by_window = window_met(&case.circuit.properties, case.engine());
    if by_window.is_some() {
        return by_window;
    }
    let shown = case.earlier.iter().enumerate().any(|(i, reading)| {
        let other = Case {
            reading,
            earlier: case.earlier.get(..i).unwrap_or_default(),
            ..*case
        };
        match reading.test.kind {
            TestKind::Delivered if other.engine() == case.engine() => {
                super::vacuum::delivered(&other).outcome == Outcome::AsExpected
            }
            _ => false,
        }
    });
    shown.then_some(true)
}

/// Nothing there although it may be asked for: three ways to say so.
fn nothing(case: &Case<'_>, dead: Message) -> TestResult {
    match commanded(case) {
        Some(true) => TestResult::bad(dead),
        Some(false) => TestResult::open(dead).and(Message::new("command-window-not-met")),
        None => TestResult::open(dead).and(Message::new("command-window-unknown")),
    }
}

/// Across both pins, commanded. The reading with the valve connected decides; the open connector only hints.
pub(super) fn valve_volts(case: &Case<'_>) -> TestResult {
    let band = driven_band(case);
    let battery = case.battery();
    let open = case.number("volts").map(f64::abs);
    // A reading taken connected is a connected reading, whatever the key.
    let (open, plugged) = match (
        case.reading.state.connected,
        case.number("plugged_v").map(f64::abs),
    ) {
        (Some(true), None) => (None, open),
        (_, plugged) => (open, plugged),
    };
    let say = |id: &'static str, volts: f64| {
        Message::new(id)
            .with("volts", Arg::Volts(volts))
            .with("battery", Arg::Volts(battery.volts))
    };
    let Some(plugged) = plugged else {
        let Some(open) = open else {
            return TestResult::does_not_fit();
        };
        return if band.miss(open) <= case.meter_limit(open) {
            TestResult::good(say("valve-volts-open-good", open)).and(Message::new("valve-volts-connect"))
        } else {
            // Many modules switch off when nothing is connected, so this alone never ends in the module.
            let result = TestResult::open(say("valve-volts-open-none", open));
            let result = match commanded(case) {
                Some(true) => result,
                Some(false) => result.and(Message::new("command-window-not-met")),
                None => result.and(Message::new("command-window-unknown")),
            };
            result.and(Message::new("valve-volts-connect"))
        };
    };
    if band.miss(plugged) <= case.meter_limit(plugged) {
        return TestResult::good(say("valve-volts-good", plugged));
    }
    if plugged <= ZERO + case.meter_limit(plugged) {
        return nothing(case, say("valve-volts-none", plugged));
    }
    let open_full = open.is_some_and(|v| band.miss(v) <= case.meter_limit(v));
    let result = if plugged < PULL_IN || open_full {
        TestResult::bad(say("valve-volts-low", plugged))
    } else {
        TestResult::open(say("valve-volts-low", plugged))
    };
    if open_full {
        result.and(Message::new("valve-volts-hidden-joint"))
    } else if case.circuit.properties.pulsed {
        result
    } else {
        result.and(Message::new("valve-volts-maybe-pulsed"))
    }
}

/// The control pin to ground, connected, off and on.
pub(super) fn control_pin(case: &Case<'_>) -> TestResult {
    let Some(off) = case.number("off_v") else {
        return TestResult::does_not_fit();
    };
    let battery = case.battery();
    let at_battery = |v: f64| battery.band.miss(v) <= case.meter_limit(v) + 0.3;
    let at_zero = |v: f64| v.abs() <= ZERO + case.meter_limit(v);
    let switched_on = |v: f64| SWITCH.miss(v) <= case.meter_limit(v);
    let on = case.number("on_v");
    let say = |id: &'static str| {
        let message = Message::new(id)
            .with("off", Arg::Volts(off))
            .with("battery", Arg::Volts(battery.volts));
        match on {
            Some(on) => message.with("on", Arg::Volts(on)),
            None => message,
        }
    };
    let switched = match case.circuit.properties.switched {
        // A pin that goes from battery to ground or back says which side is switched.
        Switched::Unknown if at_zero(off) && on.is_some_and(at_battery) => Switched::Supply,
        Switched::Unknown => Switched::Ground,
        known => known,
    };
    let Some(on) = on else {
        let sound = if switched == Switched::Supply {
            at_zero(off)
        } else {
            at_battery(off)
        };
        return if sound {
            TestResult::open(say("control-pin-off-good"))
        } else if switched == Switched::Ground && at_zero(off) {
            TestResult::bad(say("control-pin-always-low"))
        } else {
            TestResult::open(say("control-pin-off-odd"))
        };
    };
    if switched == Switched::Supply {
        return if at_battery(on) || driven_band(case).holds(on) {
            if at_zero(off) {
                TestResult::good(say("control-pin-good"))
            } else {
                TestResult::bad(say("control-pin-always-on"))
            }
        } else if at_zero(on) {
            nothing(case, say("control-pin-no-change"))
        } else {
            TestResult::bad(say("control-pin-weak"))
        };
    }
    if switched_on(off) && switched_on(on) {
        // Held to ground all the time, or nothing comes through the coil.
        return TestResult::bad(say("control-pin-always-low"));
    }
    if switched_on(on) {
        return TestResult::good(say("control-pin-good"));
    }
    if at_battery(on) {
        return nothing(case, say("control-pin-no-change"));
    }
    if case.circuit.properties.pulsed && on < off {
        return TestResult::good(say("control-pin-pulsed"));
    }
    TestResult::bad(say("control-pin-weak")).and(Message::new("control-pin-maybe-pulsed"))
}
