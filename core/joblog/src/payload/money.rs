//! What the work costs, who does it, and what the customer says to it.

use serde::{Deserialize, Serialize};

use crate::entry::EntryKey;

/// What the work costs; the whole of it as it stands from now on.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Costs {
    /// Whether the work is still to be agreed to.
    pub stage: CostStage,
    /// The currency's ISO 4217 code.
    pub currency: String,
    /// The lines in order.
    pub lines: Vec<CostLine>,
}

/// Whether costs are foreseen or charged.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum CostStage {
    /// An estimate, good for so many days from its entry on.
    Estimate {
        /// Days.
        valid_days: u32,
    },
    /// What is charged for work that was done.
    Charged,
}

/// A line of the costs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct CostLine {
    /// What is paid for.
    pub kind: CostKind,
    /// In words.
    pub words: String,
    /// How much of it, in thousandths: hours, pieces, metres.
    pub quantity_milli: i64,
    /// Price of one, without tax, in the currency's minor unit; below zero for what is taken off.
    pub unit_minor: i64,
    /// Tax on it, in basis points: 1900 is 19 %.
    pub tax_bp: u32,
}

/// What a line is paid for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum CostKind {
    /// A part or material.
    Part,
    /// Work.
    Labour,
    /// Anything else: the way, disposal, a discount.
    Other,
}

impl CostKind {
    /// Every kind, in the order they are summed in.
    pub const ALL: [Self; 3] = [Self::Part, Self::Labour, Self::Other];

    /// Its id, as in the log.
    #[must_use]
    pub fn id(self) -> &'static str {
        match self {
            Self::Part => "part",
            Self::Labour => "labour",
            Self::Other => "other",
        }
    }
}

/// Who does the work, as the report names them.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Workshop {
    /// The business: its name on the first line, then address, phone, licence.
    #[serde(default)]
    pub business: String,
    /// The person, or empty.
    #[serde(default)]
    pub technician: String,
}

/// What the customer says to work, signed or not.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Approval {
    /// What they say.
    pub decision: Decision,
    /// To which work, in words; empty: to all that is proposed.
    #[serde(default)]
    pub work: String,
    /// Who says it.
    pub name: String,
    /// The costs as they stood then, if any were shown.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub costs: Option<EntryKey>,
    /// The signature drawn on the phone.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub signature: Option<Signature>,
}

/// What a customer says to work.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Decision {
    /// It is to be done.
    Agreed,
    /// It is put off.
    PutOff,
    /// It is not to be done.
    Refused,
    /// The vehicle was handed over.
    HandedOver,
}

impl Decision {
    /// Every decision.
    pub const ALL: [Self; 4] = [Self::Agreed, Self::PutOff, Self::Refused, Self::HandedOver];

    /// Its id, as in the log.
    #[must_use]
    pub fn id(self) -> &'static str {
        match self {
            Self::Agreed => "agreed",
            Self::PutOff => "put_off",
            Self::Refused => "refused",
            Self::HandedOver => "handed_over",
        }
    }
}

/// A signature as strokes of a pen. Lengths are ten-thousandths of the pad's width, from its upper left corner.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Signature {
    /// The pad's height.
    pub height: u16,
    /// Its strokes, each a row of places the pen went through.
    pub strokes: Vec<Vec<[u16; 2]>>,
}
