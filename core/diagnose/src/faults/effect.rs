//! What a fault does to the physics of its component.

use serde::Deserialize;

/// A size that differs from car to car: log-normal.
#[derive(Debug, Clone, Copy, PartialEq, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Spread {
    /// Median, in the unit of the figure it belongs to, > 0.
    pub median: f64,
    /// Standard deviation of its decimal logarithm, ≥ 0.
    pub log10_sd: f64,
}

impl Spread {
    /// The value at a standard normal deviate.
    pub fn at(self, z: f64) -> f64 {
        self.median * 10f64.powf(z * self.log10_sd)
    }
}

/// What a needle does in a hold without any leak.
#[derive(Debug, Clone, Copy, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Drift {
    /// How far it goes in the end.
    pub kpa: Spread,
    /// Time constant, s.
    pub seconds: f64,
    /// The way it goes.
    pub vacuum: Way,
}

/// Which way vacuum goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum Way {
    /// Less of it: as a leak would.
    Falls,
    /// More of it: hides a leak.
    Rises,
}

impl Drift {
    /// Vacuum lost in the end, kPa; below 0 where it rises.
    pub fn lost(&self, kpa: f64) -> f64 {
        match self.vacuum {
            Way::Falls => kpa,
            Way::Rises => -kpa,
        }
    }
}

/// In which position a valve sticks.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum Stuck {
    /// Passes nothing, vents the mounts.
    Closed,
    /// Passes always, never vents.
    Open,
}

/// One thing a fault does. Leaks in std cm³/min at reference conditions, resistances in Ω.
#[derive(Debug, Clone, Copy, PartialEq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum Effect {
    /// Lets air in from outside.
    Leaks(Spread),
    /// Lets air in from outside, at times: an end that seals or opens when touched.
    LeaksAtTimes(Spread),
    /// An end is off and lets air in; held alone the part often seems sound, since the tester takes the end's place.
    EndOff(Spread),
    /// Lets air back through from the source's side while the source rests.
    BackLeaks(Spread),
    /// Lets vacuum through a closed seat.
    SeatLeaks(Spread),
    /// Lets air in through the vent while the valve is on.
    VentLeaks(Spread),
    /// Passes nothing: what is behind it is cut off.
    Blocks,
    /// Passes and holds, but leads to the wrong place.
    Misrouted,
    /// A valve that does not move.
    Stuck(Stuck),
    /// Air does not get in when it should.
    VentBlocked,
    /// The source makes only this share of its vacuum.
    SourceShare(f64),
    /// A mount that does not change with vacuum.
    MountDead,
    /// No current passes.
    Opens,
    /// Resistance in series.
    Series(Spread),
    /// A path to ground of this resistance.
    ToGround(f64),
    /// A path to battery of this resistance.
    ToBattery(f64),
    /// The component's own resistance is this share of what it should be.
    OhmShare(f64),
    /// Volts are this share of what they should be.
    VoltsShare(f64),
    /// The module commands always or never.
    Command(Command),
    /// The needle of a hold drifts without a leak.
    Drifts(Drift),
    /// The needle stays where it is until so much vacuum has gone, kPa.
    Sticks(Spread),
    /// The meter shows nothing, whatever it is held to.
    MeterDead,
}

/// A command that does not follow the window.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum Command {
    /// Never on.
    Never,
    /// Always on.
    Always,
}

/// Why a hold may show nothing of a leak that is there.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub(crate) enum Hides {
    /// It leaks at times.
    LooseEnd,
    /// The tester takes the place of the end that is off.
    EndOff,
}

impl Effect {
    /// The spread of sizes, where the effect has one.
    pub fn spread(&self) -> Option<Spread> {
        match self {
            Self::Leaks(s)
            | Self::LeaksAtTimes(s)
            | Self::EndOff(s)
            | Self::BackLeaks(s)
            | Self::SeatLeaks(s)
            | Self::VentLeaks(s)
            | Self::Series(s)
            | Self::Sticks(s) => Some(*s),
            Self::Drifts(drift) => Some(drift.kpa),
            _ => None,
        }
    }

    /// Whether it can be felt in the electric circuit.
    pub fn is_electric(&self) -> bool {
        matches!(
            self,
            Self::Opens
                | Self::Series(_)
                | Self::ToGround(_)
                | Self::ToBattery(_)
                | Self::OhmShare(_)
                | Self::VoltsShare(_)
                | Self::Command(_)
                | Self::MeterDead
        )
    }

    /// Whether it changes what vacuum does with the engine running.
    pub fn shows_at_work(&self) -> bool {
        matches!(
            self,
            Self::Leaks(_)
                | Self::LeaksAtTimes(_)
                | Self::EndOff(_)
                | Self::SeatLeaks(_)
                | Self::VentLeaks(_)
                | Self::Blocks
                | Self::Misrouted
                | Self::Stuck(_)
                | Self::VentBlocked
                | Self::SourceShare(_)
                | Self::MountDead
        )
    }

    /// Why a hold test of the part alone, or of more than it, may show nothing of a leak that is there.
    pub fn hides(&self, alone: bool) -> Option<Hides> {
        match self {
            Self::LeaksAtTimes(_) => Some(Hides::LooseEnd),
            Self::EndOff(_) if alone => Some(Hides::EndOff),
            _ => None,
        }
    }

    /// Whether a hold test can show how much air it lets in.
    pub fn shows_in_hold(&self) -> bool {
        matches!(
            self,
            Self::Leaks(_)
                | Self::LeaksAtTimes(_)
                | Self::EndOff(_)
                | Self::BackLeaks(_)
                | Self::SeatLeaks(_)
        )
    }

    /// Whether it lets air in, more of it at work than at rest.
    pub fn leaks_more_at_work(&self) -> bool {
        matches!(
            self,
            Self::Leaks(_)
                | Self::LeaksAtTimes(_)
                | Self::BackLeaks(_)
                | Self::SeatLeaks(_)
                | Self::VentLeaks(_)
        )
    }
}
