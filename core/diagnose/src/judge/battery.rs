//! What "battery" is now, and the bands that follow from it.

use crate::{
    CarState, Circuit, EngineState, FieldKey, Properties, Reading, Situation, Switched, TestId, TestKind,
    Window,
};

use super::Case;

/// Where a sound reading lies, in the field's unit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Band {
    /// Lowest.
    pub low: f64,
    /// Highest.
    pub high: f64,
}

impl Band {
    pub(super) fn new(low: f64, high: f64) -> Self {
        Self { low, high }
    }

    /// Whether a reading is inside.
    pub fn holds(&self, reading: f64) -> bool {
        (self.low..=self.high).contains(&reading)
    }

    /// How far outside a reading is, 0 inside.
    pub fn miss(&self, reading: f64) -> f64 {
        (self.low - reading).max(reading - self.high).max(0.0)
    }
}

/// The battery at rest with the key on, V. Source: public texts, which agree within what a cheap meter tells
/// (0.2 V); 11.8 and less asks for charging first (from memory).
pub(super) const AT_REST: Band = Band {
    low: 11.8,
    high: 12.9,
};
/// The battery while charging, V. Source: three public texts give 13.5–14.8; managed alternators 12.5–15 (from memory).
pub(super) const CHARGING: Band = Band {
    low: 12.5,
    high: 15.0,
};
/// What a battery sags in some minutes with the key on, V (from memory).
const SAG: f64 = 0.3;
/// A joint without load loses less than this, V.
const JOINT: f64 = 0.1;
/// A pin that is connected to nothing, or to ground, reads at most this, V.
pub(super) const ZERO: f64 = 0.3;

/// The battery in this reading's state of the engine.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Battery {
    /// Volts.
    pub(super) volts: f64,
    /// Where a pin lies that is connected to it without load.
    pub(super) band: Band,
    /// Somebody measured it.
    pub(super) measured: bool,
}

impl Case<'_> {
    /// Battery now: in this very reading, else the last one in the same state of the engine, else the usual band.
    pub(super) fn battery(&self) -> Battery {
        let around = |volts: f64, below: f64| {
            let limit = self.meter_limit(volts) * 2.0;
            Battery {
                volts,
                band: Band::new(volts - below - limit, volts + JOINT + limit),
                measured: true,
            }
        };
        if let Some(volts) = self.number("battery") {
            return around(volts, JOINT);
        }
        let running = self.running();
        let last = self.earlier.iter().rev().find_map(|r| {
            let other = Case { reading: r, ..*self };
            (other.running() == running)
                .then(|| r.number("battery"))
                .flatten()
        });
        match last {
            Some(volts) => {
                let mut battery = around(volts, JOINT + SAG);
                battery.band.high += JOINT;
                battery
            }
            None => {
                let band = if running { CHARGING } else { AT_REST };
                Battery {
                    volts: f64::midpoint(band.low, band.high),
                    band,
                    measured: false,
                }
            }
        }
    }

    /// The meter's own leads, Ω, and how far that is unsure.
    pub(super) fn leads(&self) -> (f64, f64) {
        match self.last(TestKind::ProveMeter).and_then(|r| r.number("ohms")) {
            Some(ohms) if ohms < 2.0 => (ohms, 0.05),
            // Common practice, no source: leads read 0.1 to 0.5 Ω.
            _ => (0.3, 0.2),
        }
    }
}

/// Whether the module was to command the valve in a state of the engine. `None`: the window is not known.
pub(super) fn window_met(properties: &Properties, engine: EngineState) -> Option<bool> {
    match (properties.window, engine) {
        (_, EngineState::Off) => Some(false),
        (Window::Idle, _) | (Window::IdleInGear, EngineState::InGear) => Some(true),
        (Window::IdleInGear, EngineState::Idle) => Some(false),
        (Window::Unknown, _) => None,
    }
}

/// Where a sound circuit's reading lies, before it is taken: for the band drawn beside a field. `None`: no band can be named
/// for this field, or it depends on which pin is which.
pub fn expected_band(
    circuit: &Circuit,
    situation: &Situation,
    earlier: &[Reading],
    test: &TestId,
    state: CarState,
    key: &FieldKey,
) -> Option<Band> {
    let mut reading = Reading::new(
        test.clone(),
        crate::Answer::Values(std::collections::BTreeMap::new()),
    );
    reading.state = state;
    let case = Case {
        circuit,
        situation,
        earlier,
        reading: &reading,
    };
    let battery = case.battery();
    let feeds = circuit.properties.switched != Switched::Supply;
    match (test.kind, key.as_str()) {
        (_, "battery") => Some(if case.running() { CHARGING } else { AT_REST }),
        (TestKind::SupplyLoaded, "pin1") => Some(super::supply::loaded_band(&case)),
        (TestKind::Fuse, "in_v" | "out_v") => Some(battery.band),
        (TestKind::Fuse, "ohms") => Some(Band::new(0.0, super::supply::FUSE_OHMS + case.leads().0)),
        (TestKind::PowerWire | TestKind::ControlWire, "ohms") => Some(super::continuity::wire_band(&case)),
        (TestKind::ValveVolts, "volts" | "plugged_v") => Some(super::control::driven_band(&case)),
        (TestKind::ControlPin, "off_v") if feeds => Some(battery.band),
        (TestKind::ControlPin, "on_v") if feeds => Some(super::control::SWITCH),
        (TestKind::ControlPin, "off_v") => Some(Band::new(0.0, ZERO)),
        (TestKind::ControlPin, "on_v") => Some(super::control::driven_band(&case)),
        (TestKind::Coil, "ohms") => Some(super::coil::coil_band(&case)),
        (TestKind::ProveMeter, "ohms") => Some(Band::new(0.0, super::continuity::LEADS_OHMS)),
        (TestKind::Delivered, "gauge") => Some(super::vacuum::delivered_band(&case)),
        (TestKind::Source, "gauge") => Some(super::vacuum::source_band(&case)),
        (TestKind::SwitchOver, "seconds") => Some(Band::new(0.0, super::vacuum::leaves_within(&case))),
        (TestKind::SwitchOver, "gauge") => Some(Band::new(0.0, super::vacuum::RESTS_BELOW_PA)),
        (TestKind::IdleQuality, "rpm") => Some(super::looks::IDLE_RPM),
        (TestKind::MountLook, "sag_mm") => Some(Band::new(0.0, super::looks::SAG_MM)),
        _ => None,
    }
}
