//! What a person set once: units, instruments, limit, certainty, speech and buzz. Part of the session row.

use std::collections::BTreeMap;

use holdfast_measure::{PressureUnit, parse_number};
use serde::{Deserialize, Serialize};

use crate::text::{Language, Texts, locale_of};
use crate::units::{Units, vacuum_unit};

/// Settings that outlive a job. Figures are kept as typed, so that a number is shown the way it was entered.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub(crate) struct Settings {
    /// Tag of the language; empty where it follows the phone.
    pub language: String,
    /// Symbol of the unit vacuum is shown in.
    pub shown_unit: String,
    /// The units of the other instruments.
    pub units: Units,
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
    /// What the phone says during a hold in place of the texts: line by line, for each language.
    pub script: BTreeMap<String, BTreeMap<String, String>>,
    /// Whether figures are shown so large that they can be read at two metres.
    pub large_figures: Switch,
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
            units: Units::METRIC,
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
            script: BTreeMap::new(),
            large_figures: Switch::Off,
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
        self.texts_in(language, phone)
    }

    /// The wording in a language, with the chosen units.
    pub(crate) fn texts_in(&self, language: Language, phone: &str) -> Texts {
        let locale = locale_of(phone);
        let mut texts = Texts::in_language(language, &locale);
        self.show_in_units(&mut texts);
        texts
    }

    /// The chosen units for a wording.
    pub(crate) fn show_in_units(&self, texts: &mut Texts) {
        texts.show_in(self.shown_unit());
        texts.measure_in(self.units);
    }

    /// As a phone of a region has it before anything was set: its units, and the usual gauge there.
    pub(crate) fn of_region(phone: &str) -> Self {
        let locale = locale_of(phone);
        let mut settings = Self {
            units: Units::of(&locale),
            ..Self::default()
        };
        let vacuum = vacuum_unit(&locale);
        settings.shown_unit = vacuum.symbol().to_owned();
        settings.read_gauge_in(vacuum);
        settings
    }

    /// A gauge in another unit: the usual dial of that unit, or the person's own converted; the allowed drop converted.
    pub(crate) fn read_gauge_in(&mut self, new: PressureUnit) {
        let Some(old) = PressureUnit::from_symbol(&self.gauge.unit).filter(|old| *old != new) else {
            return;
        };
        let convert = |text: &mut String, figures: f64| {
            if let Ok(figure) = parse_number(text) {
                let figure = new.from_pressure(old.to_pressure(figure));
                let digits = 10f64.powf(figures - 1.0 - figure.abs().max(1e-9).log10().floor());
                *text = ((figure * digits).round() / digits).to_string();
            }
        };
        convert(&mut self.limit_drop, 3.0);
        if self.gauge.is_usual(old) {
            let grade = std::mem::take(&mut self.gauge.grade);
            self.gauge = GaugeTyped {
                grade,
                ..GaugeTyped::usual(new)
            };
            return;
        }
        convert(&mut self.gauge.span, 3.0);
        convert(&mut self.gauge.division, 3.0);
        convert(&mut self.gauge.read_to, 3.0);
        self.gauge.unit = new.symbol().to_owned();
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
        Self::usual(PressureUnit::InHg)
    }
}

impl GaugeTyped {
    /// The dial that hand pumps of a unit usually have. From memory.
    fn usual(unit: PressureUnit) -> Self {
        let (span, division, read_to) = match unit {
            PressureUnit::InHg => ("30", "1", "0.5"),
            PressureUnit::KPa => ("100", "2", "1"),
            PressureUnit::Mbar => ("1000", "20", "10"),
            PressureUnit::Bar | PressureUnit::KgfCm2 => ("1", "0.02", "0.01"),
            PressureUnit::CmHg => ("76", "2", "1"),
            PressureUnit::MmHg => ("760", "20", "10"),
            PressureUnit::Psi => ("15", "0.5", "0.25"),
        };
        Self {
            unit: unit.symbol().to_owned(),
            span: span.to_owned(),
            division: division.to_owned(),
            grade: "B".into(),
            read_to: read_to.to_owned(),
        }
    }

    /// Whether its figures are those of the usual dial.
    fn is_usual(&self, unit: PressureUnit) -> bool {
        *self
            == Self {
                grade: self.grade.clone(),
                ..Self::usual(unit)
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
