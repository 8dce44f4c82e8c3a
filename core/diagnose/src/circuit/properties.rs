//! What decides which reading of a circuit is right.

use serde::{Deserialize, Serialize};

/// Properties of a circuit.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Properties {
    /// What vacuum does to the mounts.
    pub vacuum_means: VacuumMeans,
    /// What the valve does without power.
    pub rest: ValveRest,
    /// Which side of the coil the module switches.
    pub switched: Switched,
    /// Where the power comes from.
    pub feed: Feed,
    /// When the module commands the valve.
    pub window: Window,
    /// What makes the vacuum.
    pub source: SourceKind,
    /// Air is let into the branch on purpose, so that a hold there can't hold.
    pub bleed: bool,
    /// The module chops its output, so that a DC meter shows a mean.
    pub pulsed: bool,
    /// The module drives both pins.
    pub push_pull: bool,
    /// Rating of the fuse, A.
    pub fuse_a: f64,
    /// Lowest and highest resistance of a sound coil at 20 °C, Ω.
    pub coil_ohm: (f64, f64),
    /// The coil's band was given for this vehicle; otherwise it is only the usual one.
    pub coil_known: bool,
}

/// What vacuum does to a mount.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum VacuumMeans {
    /// Makes it soft, for idling.
    Soft,
    /// Makes it stiff, for driving.
    Stiff,
    /// Not known.
    #[default]
    Unknown,
}

/// What the valve does without power.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ValveRest {
    /// Shuts the inlet and vents the mounts.
    #[default]
    Closed,
    /// Passes vacuum to the mounts.
    Open,
}

/// Which side of the coil the module switches.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Switched {
    /// The ground side; the other pin is fed.
    Ground,
    /// The supply side; the other pin is ground.
    Supply,
    /// Not known.
    #[default]
    Unknown,
}

/// Where the coil's power comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Feed {
    /// On with the ignition.
    Ignition,
    /// Through a relay that the module holds: it may drop seconds after key-on, so it counts at idle.
    Relay,
    /// Not known.
    #[default]
    Unknown,
}

/// When the module commands the valve.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Window {
    /// Idling.
    Idle,
    /// Only idling in gear.
    IdleInGear,
    /// Not known.
    #[default]
    Unknown,
}

/// What makes the vacuum.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum SourceKind {
    /// The engine's intake.
    #[default]
    Intake,
    /// A pump driven by the engine.
    MechanicalPump,
    /// An electric pump.
    ElectricPump,
}
