//! The state of every component under a supposed cause.

use crate::faults::{Command, Effect, Stuck};

/// The state of one component. The default is a sound one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Condition {
    /// Leak from outside, std cm³/min at reference conditions.
    pub leak: f64,
    /// What an end lets in that is off the part it belongs on, std cm³/min; nothing gets past it.
    pub open_end: f64,
    /// Leak back towards the source's side while the source rests.
    pub back_leak: f64,
    /// Leak through a closed seat.
    pub seat_leak: f64,
    /// Leak through the vent of a valve that is on.
    pub vent_leak: f64,
    /// Passes nothing.
    pub blocks: bool,
    /// Leads to the wrong place.
    pub misrouted: bool,
    /// A valve that does not move.
    pub stuck: Option<Stuck>,
    /// Air does not get in when it should.
    pub vent_blocked: bool,
    /// Share of the vacuum that the source should make.
    pub source_share: f64,
    /// A mount that does not change with vacuum.
    pub dead: bool,
    /// Resistance in series, Ω; infinite when open.
    pub series: f64,
    /// Path to ground, Ω; infinite when there is none.
    pub to_ground: f64,
    /// Path to battery, Ω; infinite when there is none.
    pub to_battery: f64,
    /// Own resistance over what it should be.
    pub ohm_share: f64,
    /// Volts over what they should be.
    pub volts_share: f64,
    /// A command that does not follow the window.
    pub command: Option<Command>,
    /// Vacuum that a needle loses in the end without a leak, kPa, and with which time constant, s.
    pub drift: (f64, f64),
    /// The needle stays until so much vacuum has gone, kPa.
    pub sticks: f64,
}

impl Default for Condition {
    fn default() -> Self {
        Self {
            leak: 0.0,
            open_end: 0.0,
            back_leak: 0.0,
            seat_leak: 0.0,
            vent_leak: 0.0,
            blocks: false,
            misrouted: false,
            stuck: None,
            vent_blocked: false,
            source_share: 1.0,
            dead: false,
            series: 0.0,
            to_ground: f64::INFINITY,
            to_battery: f64::INFINITY,
            ohm_share: 1.0,
            volts_share: 1.0,
            command: None,
            drift: (0.0, 1.0),
            sticks: 0.0,
        }
    }
}

impl Condition {
    /// Everything that gets in from outside, std cm³/min.
    pub fn lets_in(&self) -> f64 {
        self.leak + self.open_end
    }

    /// Whether an end is off the part that it belongs on.
    pub fn is_off(&self) -> bool {
        self.open_end > 0.0
    }

    /// Adds what a fault does. `size` is the value of its spread (a leak or a resistance), where it has one.
    pub fn suffer(&mut self, effect: &Effect, size: f64) {
        match effect {
            Effect::Leaks(_) | Effect::LeaksAtTimes(_) => self.leak += size,
            Effect::EndOff(_) => self.open_end += size,
            Effect::BackLeaks(_) => self.back_leak += size,
            Effect::SeatLeaks(_) => self.seat_leak += size,
            Effect::VentLeaks(_) => self.vent_leak += size,
            Effect::Blocks => self.blocks = true,
            Effect::Misrouted => self.misrouted = true,
            Effect::Stuck(position) => self.stuck = Some(*position),
            Effect::VentBlocked => self.vent_blocked = true,
            Effect::SourceShare(share) => self.source_share *= share,
            Effect::MountDead => self.dead = true,
            Effect::Opens => self.series = f64::INFINITY,
            Effect::Series(_) => self.series += size,
            Effect::ToGround(ohm) => self.to_ground = *ohm,
            Effect::ToBattery(ohm) => self.to_battery = *ohm,
            Effect::OhmShare(share) => self.ohm_share *= share,
            Effect::VoltsShare(share) => self.volts_share *= share,
            Effect::Command(command) => self.command = Some(*command),
            Effect::Drifts(drift) => self.drift = (drift.lost(size), drift.seconds),
            Effect::Sticks(_) => self.sticks += size,
            Effect::MeterDead => {}
        }
    }
}

/// What is not known of the circuit and what must be the same in all readings.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Default)]
pub(crate) struct Setting {
    /// The module switches the ground side.
    pub ground_switched: bool,
    /// The feed comes with the ignition, not by a relay that the module holds.
    pub ignition_fed: bool,
    /// The module commands at plain idle, not only in gear.
    pub window_at_idle: bool,
    /// Vacuum makes the mounts soft, not stiff.
    pub softens: bool,
    /// Where a bad connector is bad; and near which of its ends a coil touches its case.
    pub joint: Joint,
}

/// Where an electric fault sits that can be on either side of the coil. In a connector: at the pin of the power wire or of the
/// other one, where the halves meet or where the wire ends in its terminal. Only the latter shows with the connector off.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Default)]
pub(crate) enum Joint {
    #[default]
    PowerContact,
    PowerTerminal,
    ControlContact,
    ControlTerminal,
}

impl Joint {
    /// Whether it is on the power wire's side.
    pub fn at_power(self) -> bool {
        matches!(self, Self::PowerContact | Self::PowerTerminal)
    }

    /// Either side, with the probability of the power wire's.
    pub fn sides(at_power: f64) -> [(Self, f64); 2] {
        [
            (Self::PowerContact, at_power),
            (Self::ControlContact, 1.0 - at_power),
        ]
    }

    /// Every joint with its probability, a share `contact` of the bad ones being where the halves meet.
    pub fn all(contact: f64) -> [(Self, f64); 4] {
        let (contact, terminal) = (0.5 * contact, 0.5 * (1.0 - contact));
        [
            (Self::PowerContact, contact),
            (Self::PowerTerminal, terminal),
            (Self::ControlContact, contact),
            (Self::ControlTerminal, terminal),
        ]
    }
}
