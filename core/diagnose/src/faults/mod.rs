//! What can be wrong: fault modes of each kind of component, causes outside the circuit, and the figures that turn
//! them into readings. All of it is data (`data/faults.json`); this module only reads it.

mod effect;
mod figures;
mod mode;

use std::collections::{BTreeMap, BTreeSet};
use std::sync::LazyLock;

use serde::Deserialize;

pub(crate) use effect::{Command, Effect, Hides, Spread, Stuck};
pub(crate) use figures::{Figure, Figures, Rates, Slips};
pub use mode::{Care, Fix};
pub(crate) use mode::{Mode, Outside};

use crate::{Circuit, Complaint, FaultId};

/// The share of people who would complain of something, by complaint.
pub(crate) type Complaints = BTreeMap<Complaint, f64>;

/// What a symptom makes people complain of, by what vacuum does to the mounts.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Symptom {
    /// Vacuum makes the mounts soft.
    pub soft: Complaints,
    /// Vacuum makes the mounts stiff.
    pub stiff: Complaints,
}

/// A normal distribution.
#[derive(Debug, Clone, Copy, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Normal {
    /// Mean.
    pub mean: f64,
    /// Standard deviation.
    pub sd: f64,
}

/// How much the person's own confirmed jobs count.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Learning {
    /// Where the figures are from.
    #[serde(rename = "source")]
    _source: String,
    /// So many jobs of one's own weigh as much as the weights of this file.
    pub jobs: f64,
    /// No weight becomes more than so many times larger, or smaller.
    pub most_times: f64,
}

/// The whole file.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct FaultData {
    #[serde(rename = "$schema")]
    _schema: String,
    /// Where the figures are from.
    #[serde(rename = "source")]
    _source: String,
    /// Weight of "nothing is wrong".
    pub nothing_wrong: f64,
    /// How much the person's own jobs count.
    pub learning: Learning,
    /// Fault modes by kind of component.
    pub modes: Vec<Mode>,
    /// Causes outside the circuit.
    pub outside: Vec<Outside>,
    /// Share of sound cars that show a sign, by `test.sign`.
    pub signs_when_sound: BTreeMap<String, f64>,
    /// Figures that a sound car shows, by `test.field`, in the field's own unit.
    pub figures_when_sound: BTreeMap<String, Normal>,
    /// Signs that are good news when answered with yes.
    pub good_when_yes: BTreeSet<String>,
    /// What symptoms make people complain of.
    pub symptoms: BTreeMap<String, Symptom>,
    /// Share of people who complain of something without any fault.
    pub complaint_without_fault: f64,
    /// How often readings and answers are wrong.
    pub slips: Slips,
    /// What unknown circuits are like.
    pub rates: Rates,
    /// Figures of the physics.
    pub physics: Figures,
}

/// The fault data. The file is part of the program, and a test reads it; without it nothing is ever suspected.
pub(crate) fn data() -> &'static FaultData {
    static DATA: LazyLock<FaultData> =
        LazyLock::new(|| serde_json::from_str(include_str!("../../data/faults.json")).unwrap_or_default());
    &DATA
}

/// What has to be minded until a fault is repaired; none for most.
#[must_use]
pub fn care_for(circuit: &Circuit, fault: &FaultId) -> Option<&'static Care> {
    let kind = circuit.component(&fault.component)?.kind;
    data()
        .modes
        .iter()
        .find(|mode| mode.kind == kind && mode.mode == *fault.mode)?
        .care
        .as_ref()
}

/// Keys of the texts that faults ask for.
#[must_use]
pub fn care_texts() -> Vec<&'static str> {
    let cares = data().modes.iter().filter_map(|mode| mode.care.as_ref());
    cares.map(|care| care.text.as_str()).collect()
}

#[cfg(test)]
mod tests;
