//! Names of components, tests, values, faults.

use std::fmt;
use std::str::FromStr;
use std::sync::Arc;

use serde::{Deserialize, Serialize};

macro_rules! text_id {
    ($(#[$doc:meta])* $name:ident) => {
        $(#[$doc])*
        #[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
        #[serde(transparent)]
        pub struct $name(Arc<str>);

        impl $name {
            /// From text, taken as it is.
            pub fn new(text: impl Into<Arc<str>>) -> Self {
                Self(text.into())
            }

            /// As text.
            pub fn as_str(&self) -> &str {
                &self.0
            }
        }

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str(&self.0)
            }
        }

        impl From<&str> for $name {
            fn from(text: &str) -> Self {
                Self::new(text)
            }
        }
    };
}

text_id! {
    /// A component of a circuit, such as `front_hose`; unique in its circuit.
    ComponentId
}
text_id! {
    /// The key of one value in an answer, such as `pin1` or `plugged_v`.
    FieldKey
}

/// What kind of test, without the part it is done on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum TestKind {
    /// Reproduce the complaint.
    Complaint,
    /// Stored codes and freeze frame.
    Codes,
    /// Rpm, steadiness and roughness of the engine itself.
    IdleQuality,
    /// Look over hoses, ends, connector, shield.
    Look,
    /// Look at one mount.
    MountLook,
    /// Move the engine against one mount.
    MountMove,
    /// Hold test of hand pump, gauge and adapter, capped.
    HandPump,
    /// Gauge on a tee at the valve's outlet while commanded.
    Delivered,
    /// The same gauge when the command ends.
    SwitchOver,
    /// Vacuum straight to the branch by a spare hose.
    Bypass,
    /// Vacuum hold test of a part, of the branch or of the inlet side.
    Hold,
    /// Far end open: does it pass freely?
    Flow,
    /// Vacuum at the valve's inlet hose at idle.
    Source,
    /// The valve without power.
    ValveOff,
    /// The valve on a fused jumper.
    ValveOn,
    /// Each pin to chassis ground.
    SupplyVolts,
    /// The power pin again under a lamp's load.
    SupplyLoaded,
    /// The fuse, by both test points or by ohms.
    Fuse,
    /// Fuse to connector.
    PowerWire,
    /// Across both pins, commanded.
    ValveVolts,
    /// Control pin to ground, connected, off and on.
    ControlPin,
    /// Connector to module.
    ControlWire,
    /// Ohms across the valve and to its case.
    Coil,
    /// Meter and lamp on the battery, leads shorted.
    ProveMeter,
    /// Vibration with vacuum on and off.
    Shake,
    /// Watching gauge or meter while moving a part.
    Wiggle,
}

impl TestKind {
    /// Every kind, in the order in which the catalogue lists them.
    pub const ALL: [Self; 26] = [
        Self::Complaint,
        Self::Codes,
        Self::IdleQuality,
        Self::Look,
        Self::MountLook,
        Self::MountMove,
        Self::HandPump,
        Self::Delivered,
        Self::SwitchOver,
        Self::Bypass,
        Self::Hold,
        Self::Flow,
        Self::Source,
        Self::ValveOff,
        Self::ValveOn,
        Self::SupplyVolts,
        Self::SupplyLoaded,
        Self::Fuse,
        Self::PowerWire,
        Self::ValveVolts,
        Self::ControlPin,
        Self::ControlWire,
        Self::Coil,
        Self::ProveMeter,
        Self::Shake,
        Self::Wiggle,
    ];

    /// The stable text, such as `idle-quality`.
    pub fn as_str(self) -> &'static str {
        match self {
            Self::Complaint => "complaint",
            Self::Codes => "codes",
            Self::IdleQuality => "idle-quality",
            Self::Look => "look",
            Self::MountLook => "mount-look",
            Self::MountMove => "mount-move",
            Self::HandPump => "hand-pump",
            Self::Delivered => "delivered",
            Self::SwitchOver => "switch-over",
            Self::Bypass => "bypass",
            Self::Hold => "hold",
            Self::Flow => "flow",
            Self::Source => "source",
            Self::ValveOff => "valve-off",
            Self::ValveOn => "valve-on",
            Self::SupplyVolts => "supply-volts",
            Self::SupplyLoaded => "supply-loaded",
            Self::Fuse => "fuse",
            Self::PowerWire => "power-wire",
            Self::ValveVolts => "valve-volts",
            Self::ControlPin => "control-pin",
            Self::ControlWire => "control-wire",
            Self::Coil => "coil",
            Self::ProveMeter => "prove-meter",
            Self::Shake => "shake",
            Self::Wiggle => "wiggle",
        }
    }
}

impl fmt::Display for TestKind {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.as_str())
    }
}

/// Why a text is no id.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum IdError {
    /// The part before the colon is no kind of test.
    #[error("'{0}' is no kind of test")]
    UnknownTest(String),
    /// A fault is written `component/mode`.
    #[error("'{0}' is no fault: write component/mode")]
    NoFault(String),
}

/// A test: its kind, and the part where the kind is done on several (`hold:branch`, `coil`).
///
/// `branch` and `inlet` are not components but reaches of the circuit; see [`crate::Circuit::scope`].
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct TestId {
    /// What is done.
    pub kind: TestKind,
    /// On which part, where that must be said.
    pub part: Option<ComponentId>,
}

impl TestId {
    /// A test that needs no part.
    pub fn of(kind: TestKind) -> Self {
        Self { kind, part: None }
    }

    /// A test of one part.
    pub fn on(kind: TestKind, part: impl Into<ComponentId>) -> Self {
        Self {
            kind,
            part: Some(part.into()),
        }
    }

    /// Whether the answer is a vacuum hold: `hand-pump` and every `hold:…`.
    pub fn is_hold(&self) -> bool {
        matches!(self.kind, TestKind::Hold | TestKind::HandPump)
    }
}

impl fmt::Display for TestId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match &self.part {
            Some(part) => write!(f, "{}:{}", self.kind, part),
            None => write!(f, "{}", self.kind),
        }
    }
}

impl FromStr for TestId {
    type Err = IdError;

    fn from_str(text: &str) -> Result<Self, IdError> {
        let (kind, part) = match text.split_once(':') {
            Some((kind, part)) => (kind, Some(ComponentId::new(part))),
            None => (text, None),
        };
        let kind = TestKind::ALL
            .into_iter()
            .find(|k| k.as_str() == kind)
            .ok_or_else(|| IdError::UnknownTest(text.to_owned()))?;
        Ok(Self { kind, part })
    }
}

/// A component in a bad state, written `front_hose/leaks`. A cause outside the circuit that has no component,
/// `other`, is written without a mode.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct FaultId {
    /// The component.
    pub component: ComponentId,
    /// The bad state; empty only for `other`.
    pub mode: Arc<str>,
}

impl FaultId {
    /// The fault `mode` of `component`.
    pub fn new(component: impl Into<ComponentId>, mode: impl Into<Arc<str>>) -> Self {
        Self {
            component: component.into(),
            mode: mode.into(),
        }
    }

    /// Something that no list names.
    pub fn other() -> Self {
        Self::new("other", "")
    }
}

impl fmt::Display for FaultId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.mode.is_empty() {
            write!(f, "{}", self.component)
        } else {
            write!(f, "{}/{}", self.component, self.mode)
        }
    }
}

impl FromStr for FaultId {
    type Err = IdError;

    fn from_str(text: &str) -> Result<Self, IdError> {
        if text == "other" {
            return Ok(Self::other());
        }
        match text.split_once('/') {
            Some((component, mode)) if !component.is_empty() && !mode.is_empty() => {
                Ok(Self::new(component, mode))
            }
            _ => Err(IdError::NoFault(text.to_owned())),
        }
    }
}

macro_rules! serde_as_text {
    ($name:ident) => {
        impl Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                serializer.collect_str(self)
            }
        }

        impl<'de> Deserialize<'de> for $name {
            fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
                let text = String::deserialize(deserializer)?;
                text.parse().map_err(serde::de::Error::custom)
            }
        }
    };
}
serde_as_text!(TestId);
serde_as_text!(FaultId);

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_kind_reads_back_from_its_text() {
        for kind in TestKind::ALL {
            assert_eq!(kind.as_str().parse::<TestId>().unwrap(), TestId::of(kind));
            let json = serde_json::to_string(&kind).unwrap();
            assert_eq!(json, format!("\"{}\"", kind.as_str()), "serde and Display agree");
        }
    }

    #[test]
    fn a_part_stands_behind_a_colon() {
        let id: TestId = "hold:branch".parse().unwrap();
        assert_eq!(id, TestId::on(TestKind::Hold, "branch"));
        assert_eq!(id.to_string(), "hold:branch");
        assert_eq!(
            "weigh:branch".parse::<TestId>(),
            Err(IdError::UnknownTest("weigh:branch".into()))
        );
    }

    #[test]
    fn a_fault_is_component_and_mode() {
        let fault: FaultId = "front_hose/leaks".parse().unwrap();
        assert_eq!(fault, FaultId::new("front_hose", "leaks"));
        assert_eq!("other".parse::<FaultId>().unwrap(), FaultId::other());
        assert!("front_hose".parse::<FaultId>().is_err());
        assert_eq!(serde_json::to_string(&fault).unwrap(), "\"front_hose/leaks\"");
    }
}
