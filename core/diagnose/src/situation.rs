//! Where the job is done, with what and by whom.

use std::collections::{BTreeMap, BTreeSet};

use holdfast_measure::{Gauge, HandPump, Length, Meter, Pressure, Volume};
use serde::{Deserialize, Serialize};
use uom::si::length::meter;
use uom::si::pressure::{kilopascal, pascal};
use uom::si::volume::cubic_centimeter;

use crate::FaultId;

/// Everything about the job that is not the circuit and not a reading.
///
/// Serialized with the names of the scenario file.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Situation {
    /// Where.
    pub place: Place,
    /// With which instruments.
    pub instruments: Instruments,
    /// Tools at hand. `None`: nobody said, so every tool counts as at hand.
    pub tools: Option<BTreeSet<Tool>>,
    /// What the engine can do.
    pub engine: Engine,
    /// A second person is there and has been ticked.
    pub second_person: bool,
    /// Who is at work.
    pub profile: Profile,
    /// When a hold counts as leaking.
    pub limit: Limit,
    /// How sure a finding must be, 0.5 < confidence < 1.
    pub confidence: f64,
    /// What is complained of.
    pub complaint: BTreeSet<Complaint>,
    /// What the person's own confirmed jobs on this kind of circuit ended with.
    #[serde(skip)]
    pub learned: Learned,
}

/// How often confirmed jobs on one kind of circuit ended with each fault.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Learned(BTreeMap<FaultId, u32>);

impl Learned {
    /// One more job that ended with these faults, the repair tested and found good.
    pub fn confirm(&mut self, faults: impl IntoIterator<Item = FaultId>) {
        for fault in faults {
            *self.0.entry(fault).or_default() += 1;
        }
    }

    /// How many jobs ended with a fault.
    pub fn of(&self, fault: &FaultId) -> u32 {
        self.0.get(fault).copied().unwrap_or_default()
    }

    /// Every fault that was confirmed, with how often, the commonest first.
    pub fn faults(&self) -> Vec<(&FaultId, u32)> {
        let mut faults: Vec<(&FaultId, u32)> = self.0.iter().map(|(fault, n)| (fault, *n)).collect();
        faults.sort_by_key(|(_, n)| std::cmp::Reverse(*n));
        faults
    }
}

impl Default for Situation {
    fn default() -> Self {
        Self {
            place: Place::default(),
            instruments: Instruments::default(),
            tools: None,
            engine: Engine::default(),
            second_person: false,
            profile: Profile::default(),
            limit: Limit::default(),
            confidence: 0.95,
            complaint: BTreeSet::new(),
            learned: Learned::default(),
        }
    }
}

impl Situation {
    /// Whether a tool is at hand.
    pub fn has(&self, tool: Tool) -> bool {
        self.tools.as_ref().is_none_or(|tools| tools.contains(&tool))
    }

    /// The pressure of the air around, absolute: as read or typed, else from the altitude (ISO 2533).
    pub fn ambient(&self) -> Pressure {
        self.place.ambient()
    }

    /// Volume of hand pump, gauge and adapter.
    pub fn pump_volume(&self) -> Volume {
        Volume::new::<cubic_centimeter>(self.instruments.pump_cm3)
    }

    /// The hand pump.
    pub fn pump(&self) -> HandPump {
        HandPump {
            volume: self.pump_volume(),
            stroke: Volume::new::<cubic_centimeter>(self.instruments.stroke_cm3),
        }
    }
}

/// Where the job is done.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Place {
    /// Height above the sea, m.
    pub altitude_m: Option<f64>,
    /// Pressure of the air around, absolute, kPa; from the phone's barometer or typed.
    pub ambient_kpa: Option<f64>,
    /// Temperature of the air, °C.
    pub air_c: f64,
}

impl Default for Place {
    fn default() -> Self {
        Self {
            altitude_m: None,
            ambient_kpa: None,
            air_c: 20.0,
        }
    }
}

impl Place {
    /// The pressure of the air around, absolute: as read or typed, else ISO 2533 from the altitude, else sea level.
    pub fn ambient(&self) -> Pressure {
        match (self.ambient_kpa, self.altitude_m) {
            (Some(kpa), _) => Pressure::new::<kilopascal>(kpa),
            (None, Some(m)) => holdfast_measure::standard_atmosphere(Length::new::<meter>(m)),
            (None, None) => Pressure::new::<pascal>(101_325.0),
        }
    }

    /// How the ambient pressure is known.
    pub fn ambient_from(&self) -> AmbientFrom {
        match (self.ambient_kpa, self.altitude_m) {
            (Some(_), _) => AmbientFrom::Measured,
            (None, Some(_)) => AmbientFrom::Altitude,
            (None, None) => AmbientFrom::SeaLevelAssumed,
        }
    }
}

/// How the ambient pressure is known.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum AmbientFrom {
    /// Read by a barometer or typed.
    Measured,
    /// From the altitude, by ISO 2533.
    Altitude,
    /// Nothing was said: sea level, and this must be said.
    SeaLevelAssumed,
}

/// The instruments at hand.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Instruments {
    /// The gauge.
    pub gauge: Gauge,
    /// Volume of hand pump, gauge and adapter, cm³.
    pub pump_cm3: f64,
    /// Volume of one stroke, cm³.
    pub stroke_cm3: f64,
    /// The multimeter.
    pub meter: Meter,
}

impl Default for Instruments {
    fn default() -> Self {
        Self {
            gauge: Gauge::default(),
            pump_cm3: 30.0,
            stroke_cm3: 15.0,
            meter: Meter::default(),
        }
    }
}

/// A tool that decides which tests can be done.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Tool {
    /// A hand vacuum pump with gauge and adapters.
    HandPump,
    /// A cap for an open hose end or port.
    Cap,
    /// A multimeter.
    Multimeter,
    /// A jumper lead with its own fuse.
    FusedJumper,
    /// A 2–5 W filament lamp as a load.
    Lamp,
    /// A spare length of vacuum hose.
    SpareHose,
    /// A reader of stored codes.
    CodeReader,
    /// A tachometer, or a code reader that shows rpm.
    Tachometer,
    /// A wooden lever.
    WoodenLever,
}

impl Tool {
    /// Every tool, in the order in which they are asked about.
    pub const ALL: [Self; 9] = [
        Self::HandPump,
        Self::Cap,
        Self::Multimeter,
        Self::FusedJumper,
        Self::Lamp,
        Self::SpareHose,
        Self::CodeReader,
        Self::Tachometer,
        Self::WoodenLever,
    ];

    /// The stable text, such as `hand-pump`.
    pub fn as_str(self) -> &'static str {
        match self {
            Self::HandPump => "hand-pump",
            Self::Cap => "cap",
            Self::Multimeter => "multimeter",
            Self::FusedJumper => "fused-jumper",
            Self::Lamp => "lamp",
            Self::SpareHose => "spare-hose",
            Self::CodeReader => "code-reader",
            Self::Tachometer => "tachometer",
            Self::WoodenLever => "wooden-lever",
        }
    }
}

/// What the engine can do.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Engine {
    /// It can be run.
    pub can_run: bool,
    /// Minutes since it was stopped; `None`: not known.
    pub stopped_min: Option<f64>,
}

impl Default for Engine {
    fn default() -> Self {
        Self {
            can_run: true,
            stopped_min: None,
        }
    }
}

/// Who is at work. It changes how much is explained and which tests are offered, never what is computed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Profile {
    /// Does this for a living.
    #[default]
    Mechanic,
    /// Does this for the first time.
    Owner,
}

/// When a hold counts as leaking: more than `drop_kpa` lost in `seconds` in the volume under test, from the target.
///
/// Default: half an inHg in 20 s. Source: common practice, no source (the needle must not move).
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Limit {
    /// Vacuum lost, kPa, > 0.
    pub drop_kpa: f64,
    /// In this time, s, > 0.
    pub seconds: f64,
}

impl Default for Limit {
    fn default() -> Self {
        Self {
            drop_kpa: 0.5 * 3.386_389,
            seconds: 20.0,
        }
    }
}

/// What is complained of.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Complaint {
    /// Nothing: a check only.
    None,
    /// It shakes at idle.
    ShakeIdle,
    /// It shakes a little at idle.
    ShakeIdleSlight,
    /// It shakes at idle in gear.
    ShakeIdleGear,
    /// It pulls away harshly.
    HarshPullingAway,
    /// The engine moves about under way.
    SoftUnderWay,
    /// A clunk.
    Clunk,
    /// A stored code.
    CodeStored,
}

impl Complaint {
    /// Every complaint, in the order in which they are offered.
    pub const ALL: [Self; 8] = [
        Self::ShakeIdle,
        Self::ShakeIdleSlight,
        Self::ShakeIdleGear,
        Self::HarshPullingAway,
        Self::SoftUnderWay,
        Self::Clunk,
        Self::CodeStored,
        Self::None,
    ];

    /// It is of a shake at idle.
    #[must_use]
    pub fn is_shake(self) -> bool {
        matches!(
            self,
            Self::ShakeIdle | Self::ShakeIdleSlight | Self::ShakeIdleGear
        )
    }

    /// The stable text, such as `shake_idle`.
    pub fn as_str(self) -> &'static str {
        match self {
            Self::None => "none",
            Self::ShakeIdle => "shake_idle",
            Self::ShakeIdleSlight => "shake_idle_slight",
            Self::ShakeIdleGear => "shake_idle_gear",
            Self::HarshPullingAway => "harsh_pulling_away",
            Self::SoftUnderWay => "soft_under_way",
            Self::Clunk => "clunk",
            Self::CodeStored => "code_stored",
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The keys of the scenario format that say where, with what and by whom.
    #[test]
    fn the_contract_s_keys_are_read() {
        let situation: Situation = serde_json::from_str(
            r#"{"complaint": ["shake_idle"],
                "place": {"altitude_m": 0, "ambient_kpa": null, "air_c": 20},
                "instruments": {"gauge": {"unit": "inHg", "span": 30, "division": 1, "grade": "B", "read_to": 0.5},
                                "pump_cm3": 30, "stroke_cm3": 15, "meter": {"percent": 0.5, "counts": 2, "digits": 2}},
                "tools": ["hand-pump", "cap", "multimeter", "fused-jumper", "lamp", "spare-hose"],
                "engine": {"can_run": true, "stopped_min": null}, "second_person": false, "profile": "owner"}"#,
        )
        .unwrap();
        assert_eq!(situation.profile, Profile::Owner);
        assert!(situation.has(Tool::Lamp) && !situation.has(Tool::CodeReader));
        assert_eq!(situation.complaint, [Complaint::ShakeIdle].into());
        assert!(serde_json::from_str::<Situation>(r#"{"tools": ["hammer"]}"#).is_err());
        assert!(serde_json::from_str::<Situation>(r#"{"place": {"height": 3}}"#).is_err());
    }

    #[test]
    fn ids_are_those_of_the_files() {
        for tool in Tool::ALL {
            assert_eq!(serde_json::to_value(tool).unwrap(), tool.as_str());
        }
        for complaint in Complaint::ALL {
            assert_eq!(serde_json::to_value(complaint).unwrap(), complaint.as_str());
        }
    }

    #[test]
    fn the_barometer_outranks_the_altitude() {
        let place = Place {
            altitude_m: Some(1_500.0),
            ambient_kpa: Some(90.0),
            ..Place::default()
        };
        assert_eq!(place.ambient().value, 90_000.0);
        assert_eq!(place.ambient_from(), AmbientFrom::Measured);
        let place = Place {
            ambient_kpa: None,
            ..place
        };
        // Source: ISO 2533 at 1,500 m (geometric), 84,559.7 Pa.
        assert!((place.ambient().value / 84_559.7 - 1.0).abs() < 2e-4);
    }
}
