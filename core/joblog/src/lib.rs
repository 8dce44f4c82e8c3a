#![doc = include_str!("../README.md")]
#![forbid(unsafe_code)]
#![deny(missing_docs)]

mod bundle;
mod entry;
mod error;
mod fold;
pub mod kind;
pub mod money;
mod payload;
mod photo;
mod plate;
mod store;
pub mod vin;

pub use bundle::{BundleError, Exporter, Importer, Received, Selection};
pub use entry::{DeviceId, Entry, EntryKey, IdError, JobId, Stamp};
pub use error::{OpenError, UseError};
pub use fold::{Dated, JobState, PhotoState, RecordLine, Standing, TestEvent, fold};
pub use payload::{
    Acknowledged, Approval, Binned, CarState, CauseRecord, CircuitStated, Closed, Complaint, Content,
    Correction, CostKind, CostLine, CostStage, Costs, Decision, Engine, GaugeRecord, HoldPoint, Instruments,
    Interrupted, Limit, MarkRecord, MarkShapeRecord, MeterRecord, Note, Opened, Payload, Photo, PhotoFormat,
    PhotoMarked, Place, Profile, Reading, Repair, ReportLanguage, ReportMade, ReportPart, ReportParts,
    SecondPerson, Signature, Skipped, Subject, Tools, TraceChunk, Typed, Undo, Vehicle, VehicleKind,
    Workshop,
};
pub use photo::{BlurBox, ImportError, ImportStage, Imported, Photos, Rendition};
pub use plate::normal as plate_for_search;
pub use store::{ClosedRow, Condition, JobRow, Merged, Query, Shelf, Store, Write};
