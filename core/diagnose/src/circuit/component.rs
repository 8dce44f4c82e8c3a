//! The parts of a circuit.

use serde::{Deserialize, Serialize};

use crate::ComponentId;

/// A part of a circuit, or something beside it that can be the cause.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Component {
    /// Its id, unique in the circuit.
    pub id: ComponentId,
    /// What it is.
    pub kind: ComponentKind,
    /// Air it holds, cm³; 0 for parts that hold none. A hose's follows from length and bore.
    #[serde(default)]
    pub volume_cm3: f64,
    /// Relative standard uncertainty of that volume, 0–1.
    #[serde(default)]
    pub volume_rel_sd: f64,
    /// Length of a hose or wire, m.
    #[serde(default)]
    pub length_m: Option<f64>,
    /// Inner diameter of a hose, or the narrowest passage of a valve, restrictor or bleed, mm.
    #[serde(default)]
    pub bore_mm: Option<f64>,
    /// Conductor cross-section of a wire, mm².
    #[serde(default)]
    pub area_mm2: Option<f64>,
    /// Minutes more to get at it.
    #[serde(default)]
    pub access: Access,
}

/// Minutes more than the catalogue's to get at a part.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Access {
    /// To see or lever it, min.
    pub look: f64,
    /// To open it and put a gauge or cap on, min.
    pub open: f64,
}

/// What a component is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ComponentKind {
    /// Where the vacuum comes from.
    Source,
    /// Lets air pass towards the source only.
    CheckValve,
    /// Stores vacuum.
    Reservoir,
    /// A vacuum hose with its two ends.
    Hose,
    /// Joins three hoses or more.
    Tee,
    /// A vacuum solenoid.
    Valve,
    /// A vacuum-operated engine mount, or one of its chambers.
    Mount,
    /// A narrow passage that slows the switching.
    Restrictor,
    /// A passage to the air, made on purpose.
    Bleed,
    /// Other users of the same vacuum.
    Consumer,
    /// The battery.
    Battery,
    /// A fuse.
    Fuse,
    /// A relay.
    Relay,
    /// A wire.
    Wire,
    /// The valve's connector.
    Connector,
    /// The valve's coil.
    Coil,
    /// The engine control module.
    Module,
    /// Where a wire meets the chassis.
    GroundPoint,
    /// Where wires join.
    Splice,
    /// The tester: hand pump, gauge and adapter.
    HandPump,
    /// The engine itself.
    Engine,
}

/// On which side of the circuit a component is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    /// Air goes through it.
    Vacuum,
    /// Current goes through it.
    Electric,
    /// Beside the circuit: the tester, the engine.
    Beside,
}

impl ComponentKind {
    /// On which side of the circuit such a component is. The coil is electric, the valve around it vacuum.
    pub fn side(self) -> Side {
        match self {
            Self::Source
            | Self::CheckValve
            | Self::Reservoir
            | Self::Hose
            | Self::Tee
            | Self::Valve
            | Self::Mount
            | Self::Restrictor
            | Self::Bleed
            | Self::Consumer => Side::Vacuum,
            Self::Battery
            | Self::Fuse
            | Self::Relay
            | Self::Wire
            | Self::Connector
            | Self::Coil
            | Self::Module
            | Self::GroundPoint
            | Self::Splice => Side::Electric,
            Self::HandPump | Self::Engine => Side::Beside,
        }
    }
}

/// A vacuum connection.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(from = "(ComponentId, ComponentId)", into = "(ComponentId, ComponentId)")]
pub struct Link {
    /// Nearer to the source.
    pub from: ComponentId,
    /// Nearer to the mounts.
    pub to: ComponentId,
}

impl From<(ComponentId, ComponentId)> for Link {
    fn from((from, to): (ComponentId, ComponentId)) -> Self {
        Self { from, to }
    }
}

impl From<Link> for (ComponentId, ComponentId) {
    fn from(link: Link) -> Self {
        (link.from, link.to)
    }
}

/// The electric parts that work one valve, in the order in which the current passes them where the ground side is
/// switched: battery, fuse, relay, splice, power wire, connector, coil, connector, control wire, module.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Drive {
    /// The valve.
    pub valve: ComponentId,
    /// The battery.
    pub battery: ComponentId,
    /// The fuse.
    pub fuse: ComponentId,
    /// The relay that the module holds, where there is one of its own.
    pub relay: Option<ComponentId>,
    /// Where the feed is shared out, where there is such a place.
    pub splice: Option<ComponentId>,
    /// Fuse to connector.
    pub power_wire: ComponentId,
    /// The valve's connector.
    pub connector: ComponentId,
    /// The coil.
    pub coil: ComponentId,
    /// Connector to module.
    pub control_wire: ComponentId,
    /// The module.
    pub module: ComponentId,
    /// Where the coil's return meets the chassis, where the supply side is switched.
    pub ground_point: Option<ComponentId>,
}

impl Drive {
    /// All its parts but the valve itself, from the battery on.
    pub fn parts(&self) -> Vec<&ComponentId> {
        [
            Some(&self.battery),
            Some(&self.fuse),
            self.relay.as_ref(),
            self.splice.as_ref(),
            Some(&self.power_wire),
            Some(&self.connector),
            Some(&self.coil),
            Some(&self.control_wire),
            Some(&self.module),
            self.ground_point.as_ref(),
        ]
        .into_iter()
        .flatten()
        .collect()
    }
}
