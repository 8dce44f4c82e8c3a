//! Forms, photos and papers in hand.

use holdfast_joblog::{CostKind, Decision};
use serde::{Deserialize, Serialize};

use super::At;
use crate::drawn::PagesOf;
use crate::typed::Typed;

/// A report that was made.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub(crate) struct ReportMade {
    /// Of what; where that has changed since, it is out of date.
    #[serde(default)]
    pub of: PagesOf,
    /// Path of the file.
    pub path: String,
}

/// Vehicle and complaint in hand.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub(crate) struct VehicleDraft {
    /// Fields.
    pub typed: Typed,
    /// Complaints tapped, by id; none: as logged.
    pub complaint: Option<Vec<String>>,
}

/// The circuit in hand.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub(crate) struct CircuitDraft {
    /// Fields.
    pub typed: Typed,
}

/// Before you start, in hand.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub(crate) struct PrepareDraft {
    /// Fields.
    pub typed: Typed,
    /// Cautions ticked.
    pub acknowledged: Vec<String>,
    /// Tools tapped, by id; none: as logged.
    pub tools: Option<Vec<String>>,
    /// Whether the engine can run; none: as logged.
    pub engine_runs: Option<bool>,
    /// Whether a second person is there; none: as logged.
    pub second_person: Option<bool>,
    /// Absolute pressure from the phone's barometer, kPa.
    pub barometer_kpa: Option<f64>,
}

/// A photo in hand.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub(crate) struct PhotoAt {
    /// Its entry.
    pub photo: String,
    /// The mark that a touch sets.
    pub tool: String,
    /// How a new mark looks.
    pub style: String,
    /// What goes to a new test point.
    pub lead: String,
    /// The mark in hand, by its place among the photo's marks.
    pub mark: Option<usize>,
    /// The caption, and the words beside the mark in hand, as typed.
    pub typed: Typed,
    /// The screen before.
    pub before: Box<At>,
}

/// A repair in hand.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub(crate) struct RepairDraft {
    /// The component.
    pub component: String,
    /// Fields.
    pub typed: Typed,
}

/// Costs in hand, as typed.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub(crate) struct CostsDraft {
    /// Whether they are foreseen or charged.
    pub stage: StageTyped,
    /// The currency's code.
    pub currency: String,
    /// Tax on parts and other things, percent.
    pub tax_parts: String,
    /// Tax on labour, percent.
    pub tax_labour: String,
    /// How long an estimate is good, days.
    pub valid_days: String,
    /// The lines.
    pub lines: Vec<CostTyped>,
}

/// Whether costs are foreseen or charged.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub(crate) enum StageTyped {
    /// An estimate.
    #[default]
    Estimate,
    /// Charged.
    Charged,
}

/// A line of the costs as typed.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub(crate) struct CostTyped {
    /// What is paid for.
    pub kind: CostKind,
    /// In words.
    pub words: String,
    /// How much.
    pub quantity: String,
    /// Price of one.
    pub price: String,
}

/// A customer's word in hand.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub(crate) struct ApprovalDraft {
    /// Fields.
    pub typed: Typed,
    /// What is said.
    pub decision: Decision,
    /// Strokes on the pad, in its units.
    pub strokes: Vec<Vec<[f32; 2]>>,
}
