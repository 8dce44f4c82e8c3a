//! What the work is done on and with: circuit, place, instruments, tools, people, limit.

use serde::{Deserialize, Serialize};
use serde_json::Value;

use super::testing::Typed;

/// The circuit as chosen and edited.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct CircuitStated {
    /// The form that `holdfast-diagnose` reads, figures in SI units and their decimal parts, kept as it came.
    pub choice: Value,
    /// What was typed for its figures, by where they stand in `choice`, such as `length_m/front_hose`.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub typed: Vec<Typed>,
}

impl CircuitStated {
    /// A circuit of whose figures none was typed.
    #[must_use]
    pub fn of(choice: Value) -> Self {
        Self {
            choice,
            typed: Vec::new(),
        }
    }
}

/// Where the work is done. Left out: not known.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
pub struct Place {
    /// Altitude above sea level, m.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub altitude_m: Option<f64>,
    /// Ambient absolute pressure, kPa.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub ambient_kpa: Option<f64>,
    /// Where the ambient pressure comes from: `barometer`, `typed`, `altitude`, `sea_level`; or empty.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub ambient_from: String,
    /// Air temperature, °C.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub air_c: Option<f64>,
    /// What was typed for these, by the names of the fields here, such as `altitude_m`.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub typed: Vec<Typed>,
}

/// A vacuum gauge, figures in its own unit.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct GaugeRecord {
    /// Symbol of its unit, such as `inHg`.
    pub unit: String,
    /// End of scale.
    pub span: f64,
    /// From line to line.
    pub division: f64,
    /// Accuracy grade, such as `B`.
    pub grade: String,
    /// How finely it is read.
    pub read_to: f64,
    /// Serial number and calibration as typed, or empty.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub identity: String,
}

/// A multimeter on the range in use.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct MeterRecord {
    /// Percent of reading.
    pub percent: f64,
    /// Counts of the last digit.
    pub counts: f64,
    /// Decimals shown.
    pub digits: u8,
    /// Serial number and calibration as typed, or empty.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub identity: String,
}

/// The instruments. Left out: not known.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
pub struct Instruments {
    /// The vacuum gauge.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gauge: Option<GaugeRecord>,
    /// Hand pump, gauge and adapter, cm³.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pump_cm3: Option<f64>,
    /// One stroke, cm³.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub stroke_cm3: Option<f64>,
    /// The meter.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub meter: Option<MeterRecord>,
}

/// The tools at hand.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
pub struct Tools {
    /// Ids such as `hand-pump`.
    pub have: Vec<String>,
}

/// Whether the engine can run, and since when it is off.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Engine {
    /// It can run.
    pub can_run: bool,
    /// Minutes since it was stopped, if known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub stopped_min: Option<f64>,
}

/// Whether a second person is there to help.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct SecondPerson {
    /// One is there.
    pub there: bool,
}

/// Who is at work.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Profile {
    /// `owner` or `mechanic`.
    pub id: String,
}

/// What a vacuum part may lose, and how sure a finding has to be. Left out: not touched.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
pub struct Limit {
    /// Allowed drop, in `unit`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub drop: Option<f64>,
    /// Symbol of the drop's unit.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub unit: Option<String>,
    /// The time for that drop, s.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub seconds: Option<f64>,
    /// Probability at which a finding counts, `0 < confidence < 1`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub confidence: Option<f64>,
}

impl Limit {
    /// Lays what `later` says over this.
    pub(crate) fn take(&mut self, later: &Limit) {
        self.drop = later.drop.or(self.drop);
        self.unit = later.unit.clone().or_else(|| self.unit.take());
        self.seconds = later.seconds.or(self.seconds);
        self.confidence = later.confidence.or(self.confidence);
    }
}
