//! What a person set once: units, instruments, limit, certainty, speech and buzz. Part of the session row.

use serde::{Deserialize, Serialize};

use crate::text::{Language, Texts, locale_of};

/// Settings that outlive a job. Figures are kept as typed, so that a number is shown the way it was entered.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub(crate) struct Settings {
    /// Tag of the language; empty where it follows the phone.
    pub language: String,
    /// Symbol of the unit vacuum is shown in.
    pub shown_unit: String,
    /// Who uses the app.
    pub profile: Profile,
    /// The vacuum gauge.
    pub gauge: GaugeTyped,
    /// Hand pump, gauge and adapter together, cm³.
    pub pump_cm3: String,
    /// One stroke, cm³.
    pub stroke_cm3: String,
    /// The meter's percent of reading.
    pub meter_percent: String,
    /// The meter's counts.
    pub meter_counts: String,
    /// The meter's decimals.
    pub meter_digits: String,
    /// The gauge's serial number and calibration.
    pub gauge_identity: String,
    /// The meter's serial number and calibration.
    pub meter_identity: String,
    /// Drop that is allowed, in the gauge's unit.
    pub limit_drop: String,
    /// Time over which it is allowed, s.
    pub limit_s: String,
    /// Certainty at which a finding counts, percent.
    pub confidence: String,
    /// Whether the phone speaks during a hold.
    pub speech: Switch,
    /// Whether the phone buzzes during a hold.
    pub buzz: Switch,
    /// Jobs closed before this teach nothing, ms since 1970-01-01T00:00Z.
    pub learned_since_ms: i64,
    /// Tools at hand, by id; offered again for the next job.
    pub tools: Vec<String>,
    /// The workshop, for the report: its name on the first line.
    pub business: String,
    /// The technician, for the report.
    pub technician: String,
    /// The currency's code as used last, or empty.
    pub currency: String,
    /// Tax on parts as used last, percent.
    pub tax_parts: String,
    /// Tax on labour as used last, percent.
    pub tax_labour: String,
    /// The report's paper.
    pub paper: String,
}

impl Default for Settings {
    fn default() -> Self {
        Self {
            language: String::new(),
            shown_unit: "inHg".into(),
            profile: Profile::Owner,
            gauge: GaugeTyped::default(),
            pump_cm3: "30".into(),
            stroke_cm3: "15".into(),
            meter_percent: "0.5".into(),
            meter_counts: "2".into(),
            meter_digits: "2".into(),
            gauge_identity: String::new(),
            meter_identity: String::new(),
            limit_drop: "0.5".into(),
            limit_s: "20".into(),
            confidence: "95".into(),
            speech: Switch::On,
            buzz: Switch::On,
            learned_since_ms: 0,
            tools: Vec::new(),
            business: String::new(),
            technician: String::new(),
            currency: String::new(),
            tax_parts: String::new(),
            tax_labour: String::new(),
            paper: "a4".into(),
        }
    }
}

impl Settings {
    /// The wording in the chosen language, else in the phone's, with the chosen unit.
    pub(crate) fn texts(&self, phone: &str) -> Texts {
        let locale = locale_of(phone);
        let language = Language::of_tag(&self.language).unwrap_or_else(|| Language::of(&locale));
        let mut texts = Texts::in_language(language, &locale);
        texts.show_in(self.shown_unit());
        texts
    }
}

/// The gauge as typed, in its own unit.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub(crate) struct GaugeTyped {
    /// Symbol of its unit.
    pub unit: String,
    /// End of scale.
    pub span: String,
    /// Division.
    pub division: String,
    /// Accuracy grade.
    pub grade: String,
    /// How finely it is read.
    pub read_to: String,
}

impl Default for GaugeTyped {
    fn default() -> Self {
        Self {
            unit: "inHg".into(),
            span: "30".into(),
            division: "1".into(),
            grade: "B".into(),
            read_to: "0.5".into(),
        }
    }
}

/// Who uses the app: decides how much is explained and which tests are offered, never what is computed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum Profile {
    /// An owner: everything explained, nothing in gear.
    Owner,
    /// A mechanic: short, everything offered.
    Mechanic,
}

impl Profile {
    /// Its id in the scenario contract.
    pub(crate) fn id(self) -> &'static str {
        match self {
            Self::Owner => "owner",
            Self::Mechanic => "mechanic",
        }
    }

    /// The profile of an id.
    pub(crate) fn from_id(id: &str) -> Option<Self> {
        match id {
            "owner" => Some(Self::Owner),
            "mechanic" => Some(Self::Mechanic),
            _ => None,
        }
    }
}

/// On or off.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum Switch {
    /// On.
    On,
    /// Off.
    Off,
}

impl Switch {
    /// The other one.
    pub(crate) fn turned(self) -> Self {
        match self {
            Self::On => Self::Off,
            Self::Off => Self::On,
        }
    }

    /// Whether it is on.
    pub(crate) fn is_on(self) -> bool {
        self == Self::On
    }
}
