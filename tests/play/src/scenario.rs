//! The scenario file: design.md section 10 is the contract.

use std::collections::BTreeMap;

use serde::Deserialize;
use serde_json::Value;

/// A job to play. Keys that are not known are left alone, so that a file may carry notes of its own.
#[derive(Debug, Clone, Deserialize)]
pub struct Scenario {
    /// Its name.
    pub name: String,
    /// The vehicle.
    #[serde(default)]
    pub vehicle: Vehicle,
    /// Complaint ids.
    #[serde(default)]
    pub complaint: Vec<String>,
    /// The circuit: a template's id or an object.
    pub circuit: Value,
    /// Where.
    #[serde(default)]
    pub place: Place,
    /// With what.
    #[serde(default)]
    pub instruments: Instruments,
    /// Tools at hand; none: all of them.
    pub tools: Option<Vec<String>>,
    /// The engine.
    #[serde(default)]
    pub engine: Engine,
    /// A second person is there.
    #[serde(default)]
    pub second_person: bool,
    /// `mechanic` or `owner`.
    #[serde(default = "mechanic")]
    pub profile: String,
    /// What each test reads, by its id; a list: one for each time.
    #[serde(default)]
    pub answers: BTreeMap<String, Value>,
    /// Tests that can't be done, with the reason.
    #[serde(default)]
    pub cannot: BTreeMap<String, String>,
    /// What is repaired at the end.
    pub repair: Option<Repair>,
}

fn mechanic() -> String {
    "mechanic".to_owned()
}

/// The vehicle.
#[derive(Debug, Clone, Default, Deserialize)]
pub struct Vehicle {
    /// What it is called.
    #[serde(default)]
    pub label: String,
    /// Its VIN.
    pub vin: Option<String>,
}

/// Where.
#[derive(Debug, Clone, Default, Deserialize)]
pub struct Place {
    /// Altitude, m.
    pub altitude_m: Option<f64>,
    /// Ambient absolute pressure, kPa.
    pub ambient_kpa: Option<f64>,
    /// Air temperature, °C.
    pub air_c: Option<f64>,
}

/// With what.
#[derive(Debug, Clone, Default, Deserialize)]
pub struct Instruments {
    /// The gauge.
    pub gauge: Option<Gauge>,
    /// Hand pump, gauge and adapter, cm³.
    pub pump_cm3: Option<f64>,
    /// One stroke, cm³.
    pub stroke_cm3: Option<f64>,
    /// The meter.
    pub meter: Option<Meter>,
}

/// The gauge, in its own unit.
#[derive(Debug, Clone, Default, Deserialize)]
pub struct Gauge {
    /// Symbol of the unit.
    pub unit: Option<String>,
    /// End of scale.
    pub span: Option<f64>,
    /// Division.
    pub division: Option<f64>,
    /// Grade.
    pub grade: Option<String>,
    /// How finely it is read.
    pub read_to: Option<f64>,
}

/// The meter.
#[derive(Debug, Clone, Default, Deserialize)]
pub struct Meter {
    /// Percent of reading.
    pub percent: Option<f64>,
    /// Counts.
    pub counts: Option<f64>,
    /// Decimals.
    pub digits: Option<f64>,
}

/// The engine.
#[derive(Debug, Clone, Deserialize)]
pub struct Engine {
    /// It can run.
    #[serde(default = "yes")]
    pub can_run: bool,
    /// Minutes since it was stopped.
    pub stopped_min: Option<f64>,
}

fn yes() -> bool {
    true
}

impl Default for Engine {
    fn default() -> Self {
        Self {
            can_run: true,
            stopped_min: None,
        }
    }
}

/// What is repaired at the end, and what the tests read then.
#[derive(Debug, Clone, Deserialize)]
pub struct Repair {
    /// The component.
    pub replaced: String,
    /// What each test reads after it.
    #[serde(default)]
    pub answers: BTreeMap<String, Value>,
}
