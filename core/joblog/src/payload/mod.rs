//! What an entry's body can hold: one struct a kind, read through the upcasters, written in the newest form.

mod case;
mod change;
mod money;
mod photo;
mod setting;
mod testing;
mod upcast;

use serde_json::Value;

pub use case::{
    CauseRecord, Closed, Complaint, Note, Opened, Repair, ReportLanguage, ReportMade, ReportPart,
    ReportParts, Subject, Vehicle, VehicleKind,
};
pub use change::{Binned, Correction, Undo};
pub use money::{Approval, CostKind, CostLine, CostStage, Costs, Decision, Signature, Workshop};
pub use photo::{MarkRecord, MarkShapeRecord, Photo, PhotoFormat, PhotoMarked};
pub use setting::{
    CircuitStated, Engine, GaugeRecord, Instruments, Limit, MeterRecord, Place, Profile, SecondPerson, Tools,
};
pub use testing::{Acknowledged, CarState, HoldPoint, Interrupted, Reading, Skipped, TraceChunk, Typed};

/// What came out of reading an entry's body.
#[derive(Debug, Clone, PartialEq)]
pub enum Content {
    /// A kind and version that this software knows.
    Known(Payload),
    /// A kind this software doesn't know, or a newer version of one it does: kept, passed on, shown as such.
    Newer,
    /// A known kind and version whose body doesn't read: kept and shown as such.
    Unreadable {
        /// What the reader says, for a log; never shown as it is.
        detail: String,
    },
}

macro_rules! payloads {
    ($($(#[$doc:meta])* $name:ident($body:ty) = $kind:literal v $v:literal,)+) => {
        /// The body of an entry.
        #[derive(Debug, Clone, PartialEq)]
        pub enum Payload {
            $($(#[$doc])* $name($body),)+
        }

        impl Payload {
            /// Every kind with the version written now.
            pub const KINDS: &'static [(&'static str, u32)] = &[$(($kind, $v),)+];

            /// The kind as it stands in the log.
            pub fn kind(&self) -> &'static str {
                match self { $(Payload::$name(_) => $kind,)+ }
            }

            /// The version of the body's form written now.
            pub fn version(&self) -> u32 {
                match self { $(Payload::$name(_) => $v,)+ }
            }

            /// The body as it is written now.
            ///
            /// # Errors
            /// A number that JSON can't hold, such as infinity.
            pub fn body(&self) -> Result<String, serde_json::Error> {
                self.to_value().map(|body| body.to_string())
            }

            /// The body as a JSON value.
            pub(crate) fn to_value(&self) -> Result<Value, serde_json::Error> {
                match self { $(Payload::$name(body) => serde_json::to_value(body),)+ }
            }

            fn from_value(kind: &str, value: Value) -> Result<Option<Payload>, serde_json::Error> {
                match kind {
                    $($kind => serde_json::from_value(value).map(|body| Some(Payload::$name(body))),)+
                    _ => Ok(None),
                }
            }
        }
    };
}

payloads! {
    /// The job was begun.
    Opened(Opened) = "opened" v 1,
    /// Not a job, but what is known of a vehicle kind.
    VehicleKind(VehicleKind) = "vehicle_kind" v 1,
    /// The vehicle, or a part of what is known of it.
    Vehicle(Vehicle) = "vehicle" v 1,
    /// The complaint.
    Complaint(Complaint) = "complaint" v 1,
    /// The circuit as chosen and edited.
    Circuit(CircuitStated) = "circuit" v 2,
    /// Where the work is done.
    Place(Place) = "place" v 1,
    /// Gauge, hand pump and meter.
    Instruments(Instruments) = "instruments" v 1,
    /// The tools at hand.
    Tools(Tools) = "tools" v 1,
    /// Whether the engine can run.
    Engine(Engine) = "engine" v 1,
    /// Whether a second person is there.
    SecondPerson(SecondPerson) = "second_person" v 1,
    /// Owner or mechanic.
    Profile(Profile) = "profile" v 1,
    /// The allowed drop and the certainty that counts.
    Limit(Limit) = "limit" v 1,
    /// A caution was ticked.
    Acknowledged(Acknowledged) = "acknowledged" v 1,
    /// A test's answer.
    Reading(Reading) = "reading" v 1,
    /// Part of a gauge trace.
    TraceChunk(TraceChunk) = "trace" v 1,
    /// A hold that was broken off, with what it had.
    Interrupted(Interrupted) = "interrupted" v 1,
    /// A test that can't be done.
    Skipped(Skipped) = "skipped" v 1,
    /// An earlier entry put right.
    Correction(Correction) = "correction" v 1,
    /// An earlier entry taken back.
    Undo(Undo) = "undo" v 1,
    /// A photo.
    Photo(Photo) = "photo" v 1,
    /// A photo's caption and marks.
    PhotoMarked(PhotoMarked) = "photo_marked" v 1,
    /// A note.
    Note(Note) = "note" v 1,
    /// A repair.
    Repair(Repair) = "repair" v 1,
    /// What the work costs.
    Costs(Costs) = "costs" v 1,
    /// Who does the work.
    Workshop(Workshop) = "workshop" v 1,
    /// What the customer says to work.
    Approval(Approval) = "approval" v 1,
    /// The job was closed with this finding.
    Closed(Closed) = "closed" v 1,
    /// The language of the reports.
    ReportLanguage(ReportLanguage) = "report_language" v 1,
    /// What the reports leave out.
    ReportParts(ReportParts) = "report_parts" v 1,
    /// A report was made.
    ReportMade(ReportMade) = "report" v 1,
    /// The job was put in the bin.
    Binned(Binned) = "binned" v 1,
}

impl Payload {
    /// Reads a body of any version up to the one written now.
    pub fn read(kind: &str, v: u32, body: &str) -> Content {
        let Some((_, newest)) = Payload::KINDS.iter().find(|(known, _)| *known == kind) else {
            return Content::Newer;
        };
        if v > *newest {
            return Content::Newer;
        }
        let read = serde_json::from_str(body)
            .and_then(|value| Payload::from_value(kind, upcast::to_newest(upcast::STEPS, kind, v, value)));
        match read {
            Ok(Some(payload)) => Content::Known(payload),
            Ok(None) => Content::Newer,
            Err(error) => Content::Unreadable {
                detail: error.to_string(),
            },
        }
    }
}

#[cfg(test)]
mod tests;
