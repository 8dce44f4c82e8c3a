//! One way in which a kind of component, or something outside the circuit, is bad.

use std::collections::BTreeMap;

use serde::Deserialize;

use super::Effect;
use crate::{ComponentKind, Signal, TestKind};

/// One way in which a kind of component is bad.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Mode {
    /// The kind of component.
    pub kind: ComponentKind,
    /// The name of the mode, the second half of a fault's id.
    pub mode: String,
    /// How often, relative to "nothing is wrong", for one such component.
    pub weight: f64,
    /// What it does.
    #[serde(default)]
    pub effects: Vec<Effect>,
    /// What is felt in the car beside what follows from the effects: the share of cars that show a symptom.
    #[serde(default)]
    pub symptoms: BTreeMap<String, f64>,
    /// What can be seen or felt by hand, by `test.field`: the share of cars that show it.
    #[serde(default)]
    pub signs: BTreeMap<String, f64>,
    /// Figures that such a car shows, by `test.field`: the mean, in the field's own unit.
    #[serde(default)]
    pub figures: BTreeMap<String, f64>,
    /// What puts it right; none where nothing has to be mended.
    #[serde(default)]
    pub fix: Option<Fix>,
    /// The kind of test that shows the repair.
    pub retest: TestKind,
    /// The fault is the tester's, not the car's.
    #[serde(default)]
    pub tester: bool,
    /// What has to be minded until it is repaired.
    #[serde(default)]
    pub care: Option<Care>,
}

/// What has to be minded until a fault is repaired; the customer's page says it.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Care {
    /// How grave it is.
    pub signal: Signal,
    /// The key of its text.
    pub text: String,
}

/// What puts a fault right.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Fix {
    /// A new part.
    Replace,
    /// The old part, fitted properly.
    Refit,
    /// The old part, repaired.
    Repair,
    /// The old part, cleaned.
    Clean,
    /// Charging.
    Charge,
}

/// A cause outside the circuit.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Outside {
    /// What is bad.
    pub component: String,
    /// How; empty where nothing more is said.
    pub mode: String,
    /// How often, relative to "nothing is wrong".
    pub weight: f64,
    /// What it does to readings.
    #[serde(default)]
    pub effects: Vec<Effect>,
    /// What is felt in the car: the share of cars that show a symptom.
    #[serde(default)]
    pub symptoms: BTreeMap<String, f64>,
    /// What can be seen or felt by hand, by `test.field`.
    #[serde(default)]
    pub signs: BTreeMap<String, f64>,
    /// Figures that such a car shows, by `test.field`.
    #[serde(default)]
    pub figures: BTreeMap<String, f64>,
    /// What puts it right, where it is the tester's.
    #[serde(default)]
    pub fix: Option<Fix>,
    /// The kind of test that shows that it is not there, where it is the tester's.
    #[serde(default)]
    pub retest: Option<TestKind>,
    /// The fault is the tester's, not the car's.
    #[serde(default)]
    pub tester: bool,
}
