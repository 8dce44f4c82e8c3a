//! The job itself: vehicle, complaint, notes, repair, the finding it was closed with, its reports.

use serde::{Deserialize, Serialize};

use crate::entry::JobId;

/// The job was begun.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Opened {
    /// Version of the software that began it.
    pub software: String,
    /// The job this one continues for a returning vehicle.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub continues: Option<JobId>,
}

impl Opened {
    /// A new job, begun by this version of the software.
    pub fn by(software: &str) -> Self {
        Self {
            software: software.to_owned(),
            continues: None,
        }
    }
}

/// These entries are not a job's but what is known of a vehicle kind: where its parts are, on photos.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct VehicleKind {
    /// The kind's name, as the vehicle was called; the stream's id is made from it, see [`crate::kind`].
    pub label: String,
}

/// What is known of the vehicle. Left out: not touched. Empty: wiped out. So two people can fill in different
/// fields on two phones and neither takes the other's away.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
pub struct Vehicle {
    /// Number plate as typed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub plate: Option<String>,
    /// Vehicle identification number as typed; see [`crate::vin`].
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub vin: Option<String>,
    /// What the vehicle is called.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub label: Option<String>,
    /// Odometer as typed, with its unit.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub odometer: Option<String>,
    /// The same in km; left out where the text is no figure with a known unit.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub odometer_km: Option<f64>,
    /// Odometer when the vehicle was given back, as typed, with its unit.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub odometer_out: Option<String>,
    /// The same in km; left out where the text is no figure with a known unit.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub odometer_out_km: Option<f64>,
    /// When and to whom the vehicle was given back, as typed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub handed_over: Option<String>,
    /// The customer's name.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub customer: Option<String>,
    /// What was agreed with the customer: tests, photos, road test, amount; by whom and when.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub agreed: Option<String>,
}

impl Vehicle {
    /// Lays what `later` says over this.
    pub(crate) fn take(&mut self, later: &Vehicle) {
        // A distance belongs to its text: a new text without one wipes it out.
        for (mine, text, theirs) in [
            (&mut self.odometer_km, &later.odometer, later.odometer_km),
            (
                &mut self.odometer_out_km,
                &later.odometer_out,
                later.odometer_out_km,
            ),
        ] {
            if text.is_some() {
                *mine = theirs;
            }
        }
        for (mine, theirs) in [
            (&mut self.plate, &later.plate),
            (&mut self.vin, &later.vin),
            (&mut self.label, &later.label),
            (&mut self.odometer, &later.odometer),
            (&mut self.odometer_out, &later.odometer_out),
            (&mut self.handed_over, &later.handed_over),
            (&mut self.customer, &later.customer),
            (&mut self.agreed, &later.agreed),
        ] {
            if let Some(text) = theirs {
                *mine = if text.trim().is_empty() {
                    None
                } else {
                    Some(text.clone())
                };
            }
        }
    }
}

/// What is complained of.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
pub struct Complaint {
    /// Ids such as `shake_idle`.
    pub phrases: Vec<String>,
    /// In the person's own words, or empty.
    #[serde(default)]
    pub note: String,
}

/// What a note or a photo is about.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Subject {
    /// The job as a whole.
    #[default]
    Job,
    /// A test, by its id.
    Test(String),
    /// A component, by its id.
    Component(String),
}

/// A note.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Note {
    /// The words.
    pub text: String,
    /// What it is about.
    #[serde(default)]
    pub about: Subject,
}

/// A repair.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Repair {
    /// The component, by its id.
    pub component: String,
    /// What was put in, in the person's words, or empty.
    #[serde(default)]
    pub part: String,
    /// Torque that bolts were tightened to, with its source, or empty.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub torque: String,
    /// What else is to be said, or empty.
    #[serde(default)]
    pub note: String,
    /// Whether it has been done, or is only proposed.
    pub done: bool,
}

/// One cause of a finding.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct CauseRecord {
    /// Fault ids such as `front_hose/leaks`; none for a sound circuit.
    pub faults: Vec<String>,
    /// Its probability, `0 <= p <= 1`.
    pub p: f64,
}

/// The finding a job was closed with. The one place where a finding is stored: search and the learning from
/// closed jobs read it; everything shown of an open job is computed anew.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Closed {
    /// The parts named, by component id; none if nothing was found.
    pub parts: Vec<String>,
    /// Probability of the finding, `0 <= p <= 1`.
    pub p: f64,
    /// The causes that mattered, likeliest first.
    #[serde(default)]
    pub causes: Vec<CauseRecord>,
    /// Whether a repair was tested and found good.
    #[serde(default)]
    pub repaired: bool,
    /// The sentence shown to the person then, so that it can be searched for and shown in a list.
    #[serde(default)]
    pub headline: String,
    /// Version of the software that computed it.
    pub software: String,
}

/// The language of the job's reports, apart from that of the screens.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct ReportLanguage {
    /// BCP 47 tag such as `de`; empty: that of the screens.
    pub tag: String,
}

/// What the job's reports leave out. The customer's page is always in them.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct ReportParts {
    /// The parts left out.
    pub left_out: Vec<ReportPart>,
}

/// A part of the report behind the customer's page.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ReportPart {
    /// Circuit map, charts, readings on their bands.
    Drawings,
    /// The photos.
    Photos,
    /// The full record, and with it the readings that ride inside the file.
    Record,
}

impl ReportPart {
    /// In the order of the report.
    pub const ALL: [Self; 3] = [Self::Drawings, Self::Photos, Self::Record];

    /// Its id, as it stands in the log.
    #[must_use]
    pub fn as_str(self) -> &'static str {
        match self {
            Self::Drawings => "drawings",
            Self::Photos => "photos",
            Self::Record => "record",
        }
    }
}

/// A report was made.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ReportMade {
    /// SHA-256 of the file, 64 hex digits.
    pub sha256: String,
    /// Number of pages.
    pub pages: u32,
    /// `a4` or `letter`.
    pub paper: String,
    /// Version of the software that made it.
    pub software: String,
}
