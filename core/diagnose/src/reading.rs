//! What a person saw.

use std::collections::BTreeMap;

use holdfast_measure::PressureUnit;
use serde::{Deserialize, Serialize};

use crate::{ComponentId, FieldKey, TestId};

/// One answer to one test.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Reading {
    /// The test.
    pub test: TestId,
    /// What was seen.
    pub answer: Answer,
    /// The state the car was in, where it was said; what is missing was as the test asks.
    #[serde(default)]
    pub state: CarState,
    /// The person was asked about this reading and keeps it.
    #[serde(default)]
    pub confirmed: bool,
    /// Taken after the repair.
    #[serde(default)]
    pub after_repair: bool,
}

impl Reading {
    /// A reading taken as the test asks, before any repair.
    pub fn new(test: TestId, answer: Answer) -> Self {
        Self {
            test,
            answer,
            state: CarState::default(),
            confirmed: false,
            after_repair: false,
        }
    }

    /// Whether the test was done and anything was seen.
    pub fn is_answered(&self) -> bool {
        !matches!(self.answer, Answer::NotDone { .. } | Answer::NotAvailable)
    }

    /// The number under a key, if there is one.
    pub fn number(&self, key: &str) -> Option<f64> {
        match self.value(key) {
            Some(Value::Number(x)) => Some(*x),
            _ => None,
        }
    }

    /// The yes or no under a key, if there is one.
    pub fn yes(&self, key: &str) -> Option<bool> {
        match self.value(key) {
            Some(Value::YesNo(b)) => Some(*b),
            _ => None,
        }
    }

    /// Whether the ohms (or the key itself) read over range.
    pub fn is_open(&self, key: &str) -> bool {
        matches!(self.value(key), Some(Value::Open))
    }

    /// The value under a key.
    pub fn value(&self, key: &str) -> Option<&Value> {
        match &self.answer {
            Answer::Values(values) => values.get(&FieldKey::from(key)),
            _ => None,
        }
    }

    /// The unit the person read the gauge in, if it was said.
    pub fn unit(&self) -> Option<PressureUnit> {
        match &self.answer {
            Answer::Hold(hold) => Some(hold.unit),
            Answer::Values(_) => match self.value("unit") {
                Some(Value::Word(symbol)) => PressureUnit::from_symbol(symbol),
                _ => None,
            },
            _ => None,
        }
    }
}

/// The state the car was in. `None`: as the test asks.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct CarState {
    /// The valve's connector was plugged in.
    pub connected: Option<bool>,
    /// What the engine did.
    pub engine: Option<EngineState>,
    /// The parts were hot.
    pub hot: Option<bool>,
}

/// What the engine does.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum EngineState {
    /// Not running.
    Off,
    /// Idling, in neutral or park.
    Idle,
    /// Idling in gear, brakes held.
    InGear,
}

/// What was seen.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Answer {
    /// A vacuum hold.
    Hold(HoldAnswer),
    /// Values by their keys. Vacuum in Pa below ambient (the unit it was read in stands under `unit`), everything else
    /// in the unit its [`crate::FieldSpec`] names.
    Values(BTreeMap<FieldKey, Value>),
    /// The state of each component looked at; what is missing is ok.
    Look(BTreeMap<ComponentId, LookState>),
    /// Can't be done here, and why.
    NotDone {
        /// Why.
        reason: String,
    },
    /// Nobody can answer this test.
    NotAvailable,
}

/// One value of an answer.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Value {
    /// A number in the field's unit (vacuum: Pa below ambient).
    Number(f64),
    /// Yes or no.
    YesNo(bool),
    /// Ohms over range: no connection.
    Open,
    /// A word.
    Word(String),
    /// Several words, such as stored codes.
    Words(Vec<String>),
    /// Acceleration recorded by the phone.
    Samples {
        /// Samples a second.
        hz: f64,
        /// Acceleration, thousandths of the standard acceleration of free fall.
        mg: Vec<f64>,
    },
}

/// What a component looks like.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum LookState {
    /// Nothing to see.
    Ok,
    /// Cracked or split.
    Cracked,
    /// Come off.
    Off,
    /// Oily.
    Oily,
    /// Kinked or squashed.
    Kinked,
    /// Chafed through or nearly.
    Chafed,
    /// Green, white or loose at the contacts.
    Corroded,
    /// Fluid inside.
    WetInside,
}

impl LookState {
    /// Every state, `Ok` first.
    pub const ALL: [Self; 8] = [
        Self::Ok,
        Self::Cracked,
        Self::Off,
        Self::Oily,
        Self::Kinked,
        Self::Chafed,
        Self::Corroded,
        Self::WetInside,
    ];

    /// The stable text, such as `wet_inside`.
    pub fn as_str(self) -> &'static str {
        match self {
            Self::Ok => "ok",
            Self::Cracked => "cracked",
            Self::Off => "off",
            Self::Oily => "oily",
            Self::Kinked => "kinked",
            Self::Chafed => "chafed",
            Self::Corroded => "corroded",
            Self::WetInside => "wet_inside",
        }
    }
}

/// A vacuum hold as it was read: gauge figures in the gauge's own unit, vacuum positive.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub struct HoldAnswer {
    /// The unit read.
    pub unit: PressureUnit,
    /// What the gauge did.
    pub course: HoldCourse,
    /// Strokes to the start, if they were counted.
    #[serde(default)]
    pub strokes: Option<f64>,
    /// Seconds were taken by a person's eye, not by the app's timer.
    #[serde(default)]
    pub hand_timed: bool,
}

/// What the gauge did in a hold.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum HoldCourse {
    /// Read at some moments.
    Spots {
        /// When pumping had stopped.
        start: f64,
        /// Seconds since the start, and the gauge then; seconds rise.
        readings: Vec<(f64, f64)>,
    },
    /// Watched all the time; a lost frame is `None`.
    Trace {
        /// Readings a second.
        hz: f64,
        /// The readings; the first is the start.
        readings: Vec<Option<f64>>,
    },
    /// The target was never reached.
    NeverReached {
        /// The highest figure reached.
        highest: f64,
    },
}
