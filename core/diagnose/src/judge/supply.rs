//! Power at the connector and at the fuse.

use crate::{Arg, Feed, Message, Switched, TestKind};

use super::battery::{Band, ZERO};
use super::{Case, TestResult};

/// A bias that many modules leave on an open control pin, V. Source: driver-chip data sheets describe a pull-up for the
/// open-load check; the range is from memory.
const BIAS: Band = Band { low: 0.3, high: 5.5 };
/// What the power pin may lose under a small lamp, V: sound, and at most. Source: from memory 0.2; public lists disagree up
/// to 0.5, so between them nothing is decided.
const LOADED: (f64, f64) = (0.2, 0.5);
/// Current of a 5 W lamp, A. Source: 5 W at 12 V.
const LAMP_A: f64 = 0.42;
/// Ohms of a sound blade fuse with its clips, Ω, leads subtracted (from memory).
pub(super) const FUSE_OHMS: f64 = 0.5;
/// Loss over a sound fuse without load, V.
const FUSE_LOSS: f64 = 0.2;

#[derive(Clone, Copy, PartialEq, Eq)]
enum Pin {
    Battery,
    Zero,
    Between,
}

fn pin(case: &Case<'_>, volts: f64) -> Pin {
    let limit = case.meter_limit(volts);
    if case.battery().band.miss(volts) <= limit {
        Pin::Battery
    } else if volts.abs() <= ZERO + limit {
        Pin::Zero
    } else {
        Pin::Between
    }
}

/// Each pin to chassis ground.
pub(super) fn volts(case: &Case<'_>) -> TestResult {
    let Some(pin1) = case.number("pin1") else {
        return TestResult::does_not_fit();
    };
    let battery = case.battery();
    let mut pins = vec![pin1];
    pins.extend(case.number("pin2"));
    let kinds: Vec<Pin> = pins.iter().map(|v| pin(case, *v)).collect();
    let at_battery = kinds.iter().filter(|k| **k == Pin::Battery).count();
    let highest = pins.iter().copied().fold(f64::MIN, f64::max);
    let lowest = pins.iter().copied().fold(f64::MAX, f64::min);
    let say = |id: &'static str| {
        Message::new(id)
            .with("volts", Arg::Volts(highest))
            .with("battery", Arg::Volts(battery.volts))
    };
    let properties = &case.circuit.properties;
    if properties.switched == Switched::Supply {
        return match (at_battery, case.running()) {
            (0, false) => TestResult::good(say("supply-volts-none-normal")),
            (0, true) => TestResult::open(say("supply-volts-none-commanded")),
            (_, false) => TestResult::bad(say("supply-volts-always-on")),
            (_, true) => TestResult::good(say("supply-volts-one")),
        };
    }
    if at_battery == pins.len() && pins.len() == 2 {
        return if properties.push_pull {
            TestResult::good(say("supply-volts-both-normal"))
        } else {
            TestResult::open(say("supply-volts-both"))
        };
    }
    if at_battery == 1 {
        let result = TestResult::good(say("supply-volts-one"));
        let result = if pins.len() == 2 && kinds.contains(&Pin::Between) {
            result.and(Message::new("supply-volts-bias").with("volts", Arg::Volts(lowest)))
        } else {
            result
        };
        return result.and(Message::new("supply-volts-load-follows"));
    }
    if highest > BIAS.high {
        return TestResult::bad(say("supply-volts-low"));
    }
    let relay_may_be_off = !case.running();
    match properties.feed {
        Feed::Relay if relay_may_be_off => TestResult::open(say("supply-volts-relay-off")),
        Feed::Unknown if relay_may_be_off => {
            TestResult::bad(say("supply-volts-none")).and(Message::new("supply-volts-other-layouts"))
        }
        _ => TestResult::bad(say("supply-volts-none")),
    }
}

/// Where the power pin lies under a small lamp.
pub(super) fn loaded_band(case: &Case<'_>) -> Band {
    let battery = case.battery();
    let wire = super::continuity::wire_ohms(case, true);
    Band::new(battery.band.low - LOADED.0 - wire * LAMP_A, battery.band.high)
}

/// The power pin under a small lamp's load.
pub(super) fn loaded(case: &Case<'_>) -> TestResult {
    let Some(volts) = case.number("pin1") else {
        return TestResult::does_not_fit();
    };
    let battery = case.battery();
    let band = loaded_band(case);
    let drop = battery.volts - volts;
    let say = |id: &'static str| {
        Message::new(id)
            .with("volts", Arg::Volts(volts))
            .with("battery", Arg::Volts(battery.volts))
            .with("drop", Arg::Volts(drop))
    };
    if band.miss(volts) <= case.meter_limit(volts) {
        return TestResult::good(say("supply-loaded-good"));
    }
    if volts > band.high {
        return TestResult::open(say("supply-loaded-above-battery"));
    }
    if volts >= band.low - (LOADED.1 - LOADED.0) {
        return TestResult::open(say("supply-loaded-marginal"));
    }
    let open_good = case.last(TestKind::SupplyVolts).is_some_and(|r| {
        [r.number("pin1"), r.number("pin2")]
            .into_iter()
            .flatten()
            .any(|v| pin(case, v) == Pin::Battery)
    });
    let result = TestResult::bad(say("supply-loaded-low"));
    match (volts.abs() <= ZERO, case.circuit.properties.feed) {
        (true, Feed::Relay) if !case.running() => TestResult::open(say("supply-volts-relay-off")),
        _ if open_good => {
            // Series resistance that would explain it, the lamp glowing at its rated power.
            let ohms = drop / (LAMP_A * (volts / battery.volts).clamp(0.05, 1.0).powf(0.55));
            result.and(Message::new("supply-loaded-hidden-joint").with("ohms", Arg::Ohms(ohms)))
        }
        _ => result,
    }
}

/// The fuse, by both test points or by ohms.
pub(super) fn fuse(case: &Case<'_>) -> TestResult {
    let rating = Arg::Amps(case.circuit.properties.fuse_a);
    if case.reading.is_open("ohms") {
        return TestResult::bad(Message::new("fuse-open").with("rating", rating))
            .and(Message::new("fuse-find-the-cause"));
    }
    if let Some(ohms) = case.number("ohms") {
        let (leads, unsure) = case.leads();
        let own = (ohms - leads).max(0.0);
        let say = |id: &'static str| Message::new(id).with("ohms", Arg::Ohms(own));
        let most = FUSE_OHMS + unsure + case.meter_limit(ohms);
        return if own <= most {
            TestResult::good(say("fuse-ohms-good"))
        } else if own <= 4.0 * most {
            TestResult::open(say("fuse-ohms-high"))
        } else {
            TestResult::bad(say("fuse-ohms-bad"))
        };
    }
    let Some(in_v) = case.number("in_v") else {
        return TestResult::does_not_fit();
    };
    let battery = case.battery();
    let say = |id: &'static str| {
        Message::new(id)
            .with("in", Arg::Volts(in_v))
            .with("battery", Arg::Volts(battery.volts))
            .with("rating", rating.clone())
    };
    match pin(case, in_v) {
        Pin::Zero if case.circuit.properties.feed != Feed::Ignition && !case.running() => {
            return TestResult::open(say("fuse-no-feed-relay"));
        }
        Pin::Zero => return TestResult::bad(say("fuse-no-feed")),
        Pin::Between => return TestResult::bad(say("fuse-low-feed")),
        Pin::Battery => {}
    }
    let Some(out_v) = case.number("out_v") else {
        return TestResult::open(say("fuse-one-side"));
    };
    let say = |id: &'static str| say(id).with("out", Arg::Volts(out_v));
    if in_v - out_v <= FUSE_LOSS + case.meter_limit(in_v) {
        TestResult::good(say("fuse-good"))
    } else if out_v.abs() <= ZERO + case.meter_limit(out_v) {
        TestResult::bad(say("fuse-blown")).and(Message::new("fuse-find-the-cause"))
    } else {
        TestResult::bad(say("fuse-loses"))
    }
}
