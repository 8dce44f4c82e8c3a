//! Which circuit a vehicle has, as a person or a file says it.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use super::{Edit, Feed, Switched, VacuumMeans, Window};
use crate::ComponentId;

/// A template by its name, or a template with what is known of this vehicle.
///
/// In JSON a string or an object; unknown keys are refused, and what is left out is unknown.
///
/// ```
/// # use holdfast_diagnose::CircuitChoice;
/// let plain: CircuitChoice = serde_json::from_str(r#""two-mounts-one-valve""#).unwrap();
/// let known: CircuitChoice =
///     serde_json::from_str(r#"{"template": "two-mounts-one-valve", "fuse_a": 15, "switched": "ground"}"#).unwrap();
/// assert_eq!(plain.template(), known.template());
/// assert!(serde_json::from_str::<CircuitChoice>(r#"{"template": "x", "fuse": 15}"#).is_err());
/// ```
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(untagged)]
pub enum CircuitChoice {
    /// A template as it is.
    Template(String),
    /// A template and what is known.
    Custom(Box<CustomCircuit>),
}

impl<'de> Deserialize<'de> for CircuitChoice {
    // Written out so that an unknown key is named in the error, which an untagged enum can't do.
    fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Choice;

        impl<'de> serde::de::Visitor<'de> for Choice {
            type Value = CircuitChoice;

            fn expecting(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                f.write_str("the name of a template, or an object with a template")
            }

            fn visit_str<E: serde::de::Error>(self, text: &str) -> Result<CircuitChoice, E> {
                Ok(CircuitChoice::Template(text.to_owned()))
            }

            fn visit_map<A: serde::de::MapAccess<'de>>(self, map: A) -> Result<CircuitChoice, A::Error> {
                let custom = CustomCircuit::deserialize(serde::de::value::MapAccessDeserializer::new(map))?;
                Ok(CircuitChoice::Custom(Box::new(custom)))
            }
        }
        deserializer.deserialize_any(Choice)
    }
}

impl CircuitChoice {
    /// The template's name.
    pub fn template(&self) -> &str {
        match self {
            Self::Template(name) => name,
            Self::Custom(custom) => &custom.template,
        }
    }

    /// With all it says spelled out.
    pub fn to_custom(&self) -> CustomCircuit {
        match self {
            Self::Template(name) => CustomCircuit {
                template: name.clone(),
                ..CustomCircuit::default()
            },
            Self::Custom(custom) => (**custom).clone(),
        }
    }
}

impl From<CustomCircuit> for CircuitChoice {
    fn from(custom: CustomCircuit) -> Self {
        Self::Custom(Box::new(custom))
    }
}

/// A template and what is known of this vehicle.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CustomCircuit {
    /// The template's name.
    pub template: String,
    /// The electric layout's name; `None`: the template's own.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub electric: Option<String>,
    /// Air in mounts, cm³, 1–2,000.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub chamber_cm3: BTreeMap<ComponentId, f64>,
    /// Relative standard uncertainty of all chambers, 0–1.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub chamber_rel_sd: Option<f64>,
    /// Lengths of hoses and wires, m, 0.01–20.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub length_m: BTreeMap<ComponentId, f64>,
    /// Inner diameter of all hoses, mm, 0.5–20.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bore_mm: Option<f64>,
    /// Air in the reservoir, cm³, 0–10,000; 0: there is none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reservoir_cm3: Option<f64>,
    /// Lowest and highest resistance of a sound coil at 20 °C, Ω, 0.5–500.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub coil_ohm: Option<(f64, f64)>,
    /// Rating of the fuse, A, 0.5–100.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fuse_a: Option<f64>,
    /// Whether there is a check valve.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub check_valve: Option<bool>,
    /// What vacuum does to the mounts.
    #[serde(default)]
    pub vacuum_means: VacuumMeans,
    /// Which side of the coil the module switches.
    #[serde(default)]
    pub switched: Switched,
    /// Where the power comes from.
    #[serde(default)]
    pub feed: Feed,
    /// When the module commands the valve.
    #[serde(default)]
    pub window: Window,
    /// What the person changed, in order.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub edits: Vec<Edit>,
}
