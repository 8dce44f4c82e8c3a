//! The circuit map: one vehicle's vacuum side and electric side, shaded by suspicion.

mod draw;
mod place;
mod symbol;

use crate::diagram::state::{Lead, State};
use crate::scene::Scene;

/// What the map shows. All words are final and in the person's language.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct CircuitMap {
    /// BCP 47 tag of the language of the words: names are broken by its rules.
    pub language: String,
    /// Alternative text of the whole drawing.
    pub alt: String,
    /// Parts; the order among equals decides who stands left.
    pub parts: Vec<MapPart>,
    /// What is joined to what, from the source outwards (vacuum) or from the battery outwards (electric).
    pub links: Vec<MapLink>,
    /// How much larger than usual the names may be drawn, up to 2; they grow as far as each word still fits its place.
    /// Anything below 1 is taken as 1.
    pub larger: f32,
}

/// One part on the map.
#[derive(Debug, Clone, PartialEq)]
pub struct MapPart {
    /// What the core calls it; becomes the region's id.
    pub id: String,
    /// Which symbol stands for it.
    pub kind: PartKind,
    /// The name written beside it.
    pub label: String,
    /// What is known of it; `None` draws no state shape.
    pub state: Option<State>,
    /// How likely it is the cause, if that is known.
    pub suspicion: Option<Suspicion>,
    /// Whether it belongs to what is being tested now.
    pub in_test: bool,
    /// A test point at this part, if the running test has one here.
    pub test_point: Option<TestPoint>,
    /// What a screen reader says when the part is touched.
    pub spoken: String,
}

impl MapPart {
    /// A part of which nothing is known yet; `spoken` starts as its label.
    #[must_use]
    pub fn new(id: impl Into<String>, kind: PartKind, label: impl Into<String>) -> Self {
        let label = label.into();
        Self {
            id: id.into(),
            kind,
            spoken: label.clone(),
            label,
            state: None,
            suspicion: None,
            in_test: false,
            test_point: None,
        }
    }
}

/// How likely a part is the cause.
#[derive(Debug, Clone, PartialEq)]
pub struct Suspicion {
    /// Share from 0 to 1; values outside are taken as the nearer end.
    pub share: f64,
    /// The same as text, such as "62 %".
    pub text: String,
}

/// Where a tool goes in the running test.
#[derive(Debug, Clone, PartialEq)]
pub struct TestPoint {
    /// One or two characters written in the test point's pin, such as "1".
    pub mark: String,
    /// The meter lead that goes there; `None` for hand pump, gauge or cap.
    pub lead: Option<Lead>,
}

/// What kind of thing a part is: decides the symbol and the side of the map.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum PartKind {
    /// Where vacuum comes from: intake or pump.
    Source,
    /// Check valve.
    CheckValve,
    /// Vacuum reservoir.
    Reservoir,
    /// Hose.
    Hose,
    /// Tee.
    Tee,
    /// Solenoid valve.
    Valve,
    /// Vacuum-operated mount.
    Mount,
    /// Restrictor or delay valve.
    Restrictor,
    /// Fixed bleed to the open air.
    Bleed,
    /// Other vacuum users on the same line.
    OtherUser,
    /// Battery.
    Battery,
    /// Fuse.
    Fuse,
    /// Relay.
    Relay,
    /// Wire.
    Wire,
    /// Connector.
    Connector,
    /// Coil of a valve.
    Coil,
    /// Control module.
    Module,
    /// Ground point.
    GroundPoint,
    /// Splice.
    Splice,
}

impl PartKind {
    /// The side of the circuit this kind belongs to.
    #[must_use]
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
            | Self::OtherUser => Side::Vacuum,
            Self::Battery
            | Self::Fuse
            | Self::Relay
            | Self::Wire
            | Self::Connector
            | Self::Coil
            | Self::Module
            | Self::GroundPoint
            | Self::Splice => Side::Electric,
        }
    }
}

/// A side of the circuit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Side {
    /// Hoses, valves, mounts.
    Vacuum,
    /// Battery, wires, module.
    Electric,
}

/// Two parts that are joined.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct MapLink {
    /// Id of the part nearer the source or battery.
    pub from: String,
    /// Id of the part further out.
    pub to: String,
}

impl MapLink {
    /// A link from one part to another.
    #[must_use]
    pub fn new(from: impl Into<String>, to: impl Into<String>) -> Self {
        Self {
            from: from.into(),
            to: to.into(),
        }
    }
}

/// Draws the map for a phone held upright: vacuum side on the left from the source down to the mounts, electric side on
/// the right from the battery down, meeting at the valve. At least 360 units wide, wider with four columns or more, and
/// as high as the circuit needs.
#[must_use]
pub fn circuit_map(map: &CircuitMap) -> Scene {
    draw::draw(map, &place::place(map))
}
