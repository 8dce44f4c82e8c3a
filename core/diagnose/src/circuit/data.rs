//! The layouts shipped with the program.

use std::sync::LazyLock;

use serde::Deserialize;

use super::{Component, Feed, Link, SourceKind, Switched, ValveRest};
use crate::ComponentId;

/// The text of the data file; a test proves that it parses and makes sense.
pub(crate) const CIRCUITS: &str = include_str!("../../data/circuits.json");

/// The file's content.
#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct CircuitData {
    #[serde(rename = "$schema")]
    pub(crate) _schema: String,
    #[serde(rename = "about")]
    pub(crate) _about: String,
    pub(crate) vacuum: Vec<VacuumLayout>,
    pub(crate) electric: Vec<ElectricLayout>,
}

/// One vacuum layout.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct VacuumLayout {
    pub(crate) id: String,
    /// Its row in the trade's list of layouts, 1–12.
    pub(crate) layout: u8,
    /// The electric layout it comes with.
    pub(crate) electric: String,
    pub(crate) rest: ValveRest,
    pub(crate) source: SourceKind,
    pub(crate) components: Vec<Component>,
    pub(crate) links: Vec<Link>,
    pub(crate) valves: Vec<ValveSlot>,
}

/// A valve of a layout, and what the ids of its electric parts start with.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct ValveSlot {
    pub(crate) valve: ComponentId,
    #[serde(default)]
    pub(crate) prefix: String,
}

/// One electric layout.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct ElectricLayout {
    pub(crate) id: String,
    /// Its letter in the trade's list of layouts, a–f.
    pub(crate) layout: char,
    pub(crate) switched: Switched,
    pub(crate) feed: Feed,
    #[serde(default)]
    pub(crate) pulsed: bool,
    #[serde(default)]
    pub(crate) push_pull: bool,
    pub(crate) fuse_a: f64,
    pub(crate) coil_ohm: (f64, f64),
    /// Parts that all valves share.
    pub(crate) shared: Vec<Component>,
    /// Parts that each valve has of its own; their ids get the valve's prefix.
    pub(crate) each: Vec<Component>,
}

static DATA: LazyLock<CircuitData> = LazyLock::new(|| serde_json::from_str(CIRCUITS).unwrap_or_default());

pub(crate) fn data() -> &'static CircuitData {
    &DATA
}

/// One vacuum layout to choose from.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TemplateSummary {
    /// Its id, such as `two-mounts-one-valve`.
    pub id: &'static str,
    /// Its row in the trade's list of layouts, 1–12.
    pub layout: u8,
    /// How many mounts (or chambers) it has.
    pub mounts: usize,
    /// How many valves it has.
    pub valves: usize,
    /// The electric layout it comes with.
    pub electric: &'static str,
}

/// One electric layout to choose from.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LayoutSummary {
    /// Its id, such as `ignition-fed-ground-switched`.
    pub id: &'static str,
    /// Its letter in the trade's list of layouts, a–f.
    pub layout: char,
    /// Which side is switched.
    pub switched: Switched,
    /// Where the power comes from.
    pub feed: Feed,
}

/// The vacuum layouts to choose from, the most common first.
pub fn templates() -> &'static [TemplateSummary] {
    static LIST: LazyLock<Vec<TemplateSummary>> = LazyLock::new(|| {
        data()
            .vacuum
            .iter()
            .map(|layout| TemplateSummary {
                id: &layout.id,
                layout: layout.layout,
                mounts: layout
                    .components
                    .iter()
                    .filter(|c| c.kind == super::ComponentKind::Mount)
                    .count(),
                valves: layout.valves.len(),
                electric: &layout.electric,
            })
            .collect()
    });
    &LIST
}

/// The electric layouts to choose from, the most common first.
pub fn layouts() -> &'static [LayoutSummary] {
    static LIST: LazyLock<Vec<LayoutSummary>> = LazyLock::new(|| {
        data()
            .electric
            .iter()
            .map(|layout| LayoutSummary {
                id: &layout.id,
                layout: layout.layout,
                switched: layout.switched,
                feed: layout.feed,
            })
            .collect()
    });
    &LIST
}
