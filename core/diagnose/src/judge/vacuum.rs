//! Vacuum at work: at the source, at the mounts, leaving again.

use holdfast_measure::{Pressure, PressureUnit};
use uom::si::pressure::pascal;

use crate::{Arg, ComponentKind, EngineState, Message, Outcome, SourceKind, TestKind};

use super::battery::{Band, window_met};
use super::{Case, TestResult};

/// Intake vacuum at warm idle, sea level, inHg. Source: several public training texts.
const INTAKE_INHG: (f64, f64) = (16.0, 22.0);
/// In gear, with loads on or with throttle-free valve control it is less by up to this, inHg (from memory).
const LOAD_INHG: f64 = 4.0;
/// A vacuum pump's, at sea level, inHg (from memory); goes with ambient.
const PUMP_INHG: (f64, f64) = (24.0, 28.0);
/// What may be lost from source to mount, inHg (from memory).
const LOST_INHG: f64 = 2.0;
/// Below this nothing arrives, inHg.
const NOTHING_INHG: f64 = 2.0;
/// Vacuum arrives within this, s (from memory 1–3); above the second it is slow for sure.
const ARRIVES_S: (f64, f64) = (3.0, 5.0);
/// Vacuum leaves within this, s; above the second the vent is blocked (from memory).
const LEAVES_S: (f64, f64) = (2.0, 5.0);
/// Branch volume for which the two seconds hold, cm³. Source: worked out: 100 cm³ leave in 1.9 s through a 0.5 mm vent.
const LEAVES_CM3: f64 = 200.0;
/// After it has left the gauge rests below this, Pa (1 inHg).
pub(super) const RESTS_BELOW_PA: f64 = 3_386.389;
const SEA_LEVEL_PA: f64 = 101_325.0;

fn inhg(figure: f64) -> f64 {
    PressureUnit::InHg.to_pressure(figure).value
}

fn vacuum(pa: f64) -> Arg {
    Arg::Pressure(Pressure::new::<pascal>(pa))
}

impl Case<'_> {
    /// What the gauge may be wrong by at a vacuum, Pa.
    fn gauge_limit(&self, pa: f64) -> f64 {
        let gauge = &self.situation.instruments.gauge;
        let at = gauge.unit.from_pressure(Pressure::new::<pascal>(pa));
        gauge.unit.to_pressure(2.0 * gauge.u_single(at)).value
    }
}

/// Where the source's vacuum lies at idle, Pa. An engine's intake keeps its absolute pressure, so that thin air costs
/// vacuum one for one (about 1 inHg for 300 m, as public texts say); a pump keeps its share.
pub(super) fn source_band(case: &Case<'_>) -> Band {
    let ambient = case.situation.ambient().value;
    match case.circuit.properties.source {
        SourceKind::Intake => {
            let thin = SEA_LEVEL_PA - ambient;
            let load = if case.engine() == EngineState::InGear {
                inhg(LOAD_INHG)
            } else {
                0.0
            };
            Band::new(
                (inhg(INTAKE_INHG.0) - load - thin).max(0.0),
                (inhg(INTAKE_INHG.1) - thin).max(inhg(1.0)),
            )
        }
        SourceKind::MechanicalPump | SourceKind::ElectricPump => {
            let share = ambient / SEA_LEVEL_PA;
            Band::new(inhg(PUMP_INHG.0) * share, inhg(PUMP_INHG.1) * share)
        }
    }
}

/// The source's vacuum, Pa: as measured before, else the middle of what is usual. Says whether it was measured.
pub(crate) fn source_vacuum(case: &Case<'_>) -> (f64, bool) {
    match case.last(TestKind::Source).and_then(|r| r.number("gauge")) {
        Some(pa) => (pa, true),
        None => {
            let band = source_band(case);
            (f64::midpoint(band.low, band.high), false)
        }
    }
}

/// Vacuum at the valve's inlet hose.
pub(super) fn source(case: &Case<'_>) -> TestResult {
    let Some(pa) = case.number("gauge") else {
        return match case.yes("felt") {
            Some(true) => TestResult::good(Message::new("source-felt")),
            Some(false) => TestResult::bad(Message::new("source-not-felt")),
            None => TestResult::does_not_fit(),
        };
    };
    let band = source_band(case);
    let say = |id: &'static str| {
        Message::new(id)
            .with("vacuum", vacuum(pa))
            .with("low", vacuum(band.low))
            .with("high", vacuum(band.high))
    };
    let limit = case.gauge_limit(pa);
    if pa <= inhg(NOTHING_INHG) {
        return TestResult::bad(say("source-none"));
    }
    if case.yes("steady") == Some(false) && case.circuit.properties.source != SourceKind::ElectricPump {
        return TestResult::bad(say("source-unsteady"));
    }
    if pa >= band.low - limit {
        return TestResult::good(say(if pa > band.high + limit {
            "source-high"
        } else {
            "source-good"
        }));
    }
    let intake = case.circuit.properties.source == SourceKind::Intake;
    if intake && pa >= band.low - inhg(LOAD_INHG) {
        return TestResult::open(say("source-lowish"));
    }
    let result = TestResult::bad(say("source-low"));
    if intake {
        result.and(Message::new("source-low-throttle-free"))
    } else {
        result
    }
}

/// Where the vacuum at the mounts lies, Pa.
pub(super) fn delivered_band(case: &Case<'_>) -> Band {
    let (source, measured) = source_vacuum(case);
    let band = source_band(case);
    if measured {
        Band::new((source - inhg(LOST_INHG)).max(0.0), source + inhg(1.0))
    } else {
        Band::new((band.low - inhg(LOST_INHG)).max(0.0), band.high)
    }
}

/// A gauge at the valve's outlet while the module works the valve.
pub(super) fn delivered(case: &Case<'_>) -> TestResult {
    let Some(pa) = case.number("gauge") else {
        return TestResult::does_not_fit();
    };
    let band = delivered_band(case);
    let (source, source_measured) = source_vacuum(case);
    let seconds = case.number("seconds");
    let say = |id: &'static str| {
        let message = Message::new(id)
            .with("vacuum", vacuum(pa))
            .with("source", vacuum(source));
        match seconds {
            Some(s) => message.with("seconds", Arg::Seconds(s)),
            None => message,
        }
    };
    let limit = case.gauge_limit(pa);
    let window = window_met(&case.circuit.properties, case.engine());
    if pa <= inhg(NOTHING_INHG) {
        let none = say("delivered-none");
        return match window {
            Some(true) => TestResult::bad(none),
            Some(false) => TestResult::open(none).and(Message::new("command-window-not-met")),
            None => TestResult::open(none).and(Message::new("command-window-unknown")),
        };
    }
    let slow = seconds.is_some_and(|s| s > ARRIVES_S.1);
    let restricted = case.circuit.of_kind(ComponentKind::Restrictor).next().is_some();
    if pa >= band.low - limit {
        return match (slow && !restricted, window) {
            (true, _) => TestResult::bad(say("delivered-slow")),
            // It arrives although the module should not ask for it.
            (false, Some(false)) => TestResult::bad(say("delivered-uncalled")),
            (false, _) => TestResult::good(say("delivered-good")),
        };
    }
    if case.circuit.properties.bleed && pa >= 0.5 * band.low {
        return TestResult::good(say("delivered-bleed"));
    }
    if case.circuit.properties.pulsed {
        return TestResult::open(say("delivered-pulsed"));
    }
    let result = TestResult::bad(say("delivered-low"));
    if source_measured {
        result
    } else {
        result.and(Message::new("delivered-compare-source"))
    }
}

/// How long vacuum may take to leave, s: two seconds, more for a large branch.
pub(super) fn leaves_within(case: &Case<'_>) -> f64 {
    let valve = case
        .circuit
        .drive(case.reading.test.part.as_ref())
        .map(|d| &d.valve);
    let cm3: f64 = valve
        .map(|v| case.circuit.branch_of(v))
        .unwrap_or_default()
        .iter()
        .filter_map(|id| case.circuit.component(id))
        .map(|c| c.volume().value * 1e6)
        .sum();
    LEAVES_S.0 * (cm3 / LEAVES_CM3).max(1.0)
}

/// The same gauge when the command ends.
pub(super) fn switch_over(case: &Case<'_>) -> TestResult {
    let Some(seconds) = case.number("seconds") else {
        return TestResult::does_not_fit();
    };
    let rests = case.number("gauge").unwrap_or(0.0);
    let within = leaves_within(case);
    let say = |id: &'static str| {
        Message::new(id)
            .with("seconds", Arg::Seconds(seconds))
            .with("rests", vacuum(rests))
            .with("within", Arg::Seconds(within))
    };
    let was_there = case.last(TestKind::Delivered).and_then(|r| r.number("gauge"));
    if was_there.is_some_and(|pa| pa <= inhg(NOTHING_INHG)) {
        return TestResult::open(say("switch-over-nothing-to-leave"));
    }
    if rests > RESTS_BELOW_PA + case.gauge_limit(rests) {
        let whole = was_there.is_some_and(|pa| rests > 0.8 * pa);
        return TestResult::bad(say(if whole {
            "switch-over-stays"
        } else {
            "switch-over-stays-partly"
        }));
    }
    let restricted = case.circuit.of_kind(ComponentKind::Restrictor).next().is_some();
    let most = within * LEAVES_S.1 / LEAVES_S.0;
    if seconds <= within || restricted && seconds <= 3.0 * most {
        TestResult::good(say("switch-over-good"))
    } else if seconds <= most {
        TestResult::open(say("switch-over-slowish"))
    } else {
        TestResult::bad(say("switch-over-slow"))
    }
}

/// Far end open: does it pass?
pub(super) fn flow(case: &Case<'_>) -> TestResult {
    let part = case.reading.test.part.clone().unwrap_or_else(|| "hose".into());
    let say = |id: &'static str| Message::new(id).with("part", Arg::Part(part.clone()));
    match case.yes("free") {
        Some(true) => TestResult::good(say("flow-free")),
        Some(false) => TestResult::bad(say("flow-blocked")),
        None => TestResult::does_not_fit(),
    }
}

/// Vacuum straight to the branch. A change of the shake says that the mounts do work when vacuum comes.
pub(super) fn bypass(case: &Case<'_>) -> TestResult {
    let delivered_good = case.earlier.iter().enumerate().any(|(i, reading)| {
        let other = Case {
            reading,
            earlier: case.earlier.get(..i).unwrap_or_default(),
            ..*case
        };
        reading.test.kind == TestKind::Delivered && delivered(&other).outcome == Outcome::AsExpected
    });
    match case.yes("changes") {
        Some(true) if delivered_good => TestResult::open(Message::new("bypass-changes-though-delivered")),
        Some(true) => TestResult::good(Message::new("bypass-changes")),
        Some(false) => TestResult::bad(Message::new("bypass-no-change")),
        None => TestResult::does_not_fit(),
    }
}
