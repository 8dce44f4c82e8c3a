//! What a person did, or what the phone has to tell.

use holdfast_report::Point;

use super::{CannotReason, ExportOf, FieldId, PhotoSource, PhotoSubject, Pick, Place, Said};

/// Everything a shell can send. A shell builds only the ones with a payload of its own (`Type`, `Drag`, `Grab`,
/// `Release`, `Ink`, `PhotoTaken`, `PhotoNotTaken`, `PictureNotDecoded`, `BundleTaken`, `BundleNotTaken`,
/// `BarometerRead`, `BarometerMissing`, `GaugeSeen`, `GaugeNotSeen`, `VibrationRecorded`, `VibrationNotRecorded`,
/// `TextSize`, `Tick`, `WorkDone`, `Tap`); all others come ready-made on buttons.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Action {
    /// The way back: the back gesture sends it too.
    Back,
    /// Go to a screen.
    Go {
        /// Which.
        to: Place,
    },
    /// The app was opened, or came back to the front.
    Resume,
    /// The app leaves the front: a running hold is kept as it is.
    Pause,

    // Jobs
    /// Start a new job.
    NewJob,
    /// Open a job.
    OpenJob {
        /// Which.
        job: String,
    },
    /// Put a job in the bin.
    BinJob {
        /// Which.
        job: String,
    },
    /// Take a job out of the bin.
    UnbinJob {
        /// Which.
        job: String,
    },
    /// Begin a new job on the vehicle of this one.
    DuplicateJob {
        /// Which.
        job: String,
    },
    /// Empty the bin: asked once more.
    EmptyBin,
    /// Empty the bin for good.
    EmptyBinForGood,
    /// Leave the bin as it is.
    KeepBin,
    /// Offer what narrows the list down; or, when it is offered, show all jobs.
    NarrowDown,
    /// Show more rows of the list.
    ShowMore,
    /// Pick out jobs of the list.
    SelectJobs,
    /// Pick out no jobs.
    SelectNone,
    /// Pack jobs into a bundle and hand it on.
    ExportJobs {
        /// Which jobs.
        of: ExportOf,
    },
    /// Ask for a bundle to take in.
    ImportBundle,
    /// The phone has a bundle file.
    BundleTaken {
        /// Path of the file the shell may delete when the work this asks for has ended.
        path: String,
    },
    /// No bundle came.
    BundleNotTaken,
    /// Let jobs in again that were deleted here.
    TakeAgain,
    /// Take the last thing back, where the screen offers it.
    Undo,

    // Forms
    /// A field's text changed.
    Type {
        /// Which field.
        field: FieldId,
        /// Its whole text now.
        text: String,
    },
    /// An option was tapped.
    Pick {
        /// Which.
        pick: Pick,
    },
    /// A caution was ticked.
    Acknowledge {
        /// Which, by its id in the catalogue.
        caution: String,
    },
    /// The form is filled in: go on.
    Confirm,

    // Tests
    /// Show the briefing of a test.
    ShowTest {
        /// Which, such as `hold:branch`.
        test: String,
    },
    /// Say that the car stands otherwise than the test shown asks.
    StateCar,
    /// What each outcome of the test shown would change.
    WhatIf,
    /// Begin the test shown.
    BeginTest,
    /// The test shown can't be done.
    CannotDo {
        /// Why.
        reason: CannotReason,
    },
    /// Do the test shown once more.
    RedoTest,
    /// Put an entered reading right.
    CorrectReading,
    /// Say yes, no or not sure to the question shown.
    Say {
        /// What was seen.
        said: Said,
    },
    /// The state of one component in the look-over.
    Look {
        /// Which component.
        component: String,
        /// What was seen, by its id in the catalogue.
        state: String,
    },
    /// Record the vibration for a value of the test shown.
    Record {
        /// The value's key in the catalogue.
        key: String,
    },
    /// Keep a reading that was questioned, or that lies outside the instrument's range.
    KeepReading,
    /// Enter a questioned reading again.
    ChangeReading,

    // Hold test
    /// A pump stroke was made.
    Stroke,
    /// A stroke was counted too many.
    UnStroke,
    /// Pumping has stopped.
    LetGo,
    /// The gauge does not get to the target.
    WillNotBuild,
    /// Read the gauge before the time is up.
    ReadNow,
    /// Watch on, without starting again.
    GoOn,
    /// Start the hold from the beginning.
    StartAgain,
    /// Use what there is of an interrupted hold.
    UseWhatThereIs,
    /// Let the camera watch the gauge.
    WatchByCamera,
    /// Watch the gauge by eye.
    WatchByEye,
    /// A finger drags the needle, or the mark it has grabbed; scene coordinates.
    Drag {
        /// To the right, scene units.
        x: f32,
        /// Down, scene units.
        y: f32,
    },

    // Scenes
    /// A region of a scene was tapped.
    Tap {
        /// The region's id.
        region: String,
    },
    /// A finger comes down on the photo; scene coordinates. `Drag` follows it, `Release` ends it.
    Grab {
        /// To the right, scene units.
        x: f32,
        /// Down, scene units.
        y: f32,
        /// How far the finger reaches to each side, scene units: less where the photo is zoomed in.
        reach: f32,
    },
    /// The finger on the photo leaves it.
    Release,

    // Photos
    /// Take a photo for the thing shown.
    AddPhoto {
        /// From where.
        from: PhotoSource,
        /// What it shows.
        about: PhotoSubject,
    },
    /// The phone has a picture file.
    PhotoTaken {
        /// Path of the file the shell may delete when the work this asks for has ended.
        path: String,
    },
    /// No photo came.
    PhotoNotTaken,
    /// The phone can't decode the picture either.
    PictureNotDecoded,
    /// Open a photo of this job.
    OpenPhoto {
        /// Its entry.
        photo: String,
    },
    /// Take a photo out of the job.
    RemovePhoto {
        /// Its entry.
        photo: String,
    },
    /// Take the mark in hand away.
    RemoveMark,
    /// Keep the photo shown for the vehicle's kind, or no longer.
    PromotePhoto,
    /// Hand on a copy of the photo shown with its marks burnt in.
    SharePhoto,

    // Finding, repair, report
    /// This component is the one to repair.
    Repair {
        /// Which.
        component: String,
    },
    /// Another component is the one to repair.
    RepairOther,
    /// Record the repair as done.
    RepairDone,
    /// Add a line to the costs.
    AddCost {
        /// `part`, `labour` or `other`.
        kind: String,
    },
    /// Take a line out of the costs.
    RemoveCost {
        /// Which, counted from the top.
        line: u32,
    },
    /// A stroke of the pen on the signature pad, begun and ended.
    Ink {
        /// The places it went through; scene coordinates.
        stroke: Vec<Point>,
    },
    /// Wipe the signature pad.
    WipeInk,
    /// Close the job.
    CloseJob,
    /// Make the report.
    MakeReport,
    /// Hand the report to another program.
    ShareReport,
    /// Hand the readings to another program.
    ShareReadings,
    /// Stop the work under way.
    StopWork,

    // From the phone
    /// Time has passed (the clock comes with every action).
    Tick,
    /// The phone's words are so much larger than usual.
    TextSize {
        /// Times the usual size.
        larger: f32,
    },
    /// The pressure sensor's reading.
    BarometerRead {
        /// Absolute pressure at the phone, Pa.
        pa: f64,
    },
    /// There is no pressure sensor reading.
    BarometerMissing,
    /// The camera looked at the gauge.
    GaugeSeen {
        /// Where the needle stood, in the gauge's unit; none: not seen in this frame.
        vacuum: Option<f64>,
    },
    /// The camera does not watch the gauge, or no longer.
    GaugeNotSeen,
    /// Vibration was recorded.
    VibrationRecorded {
        /// Samples a second.
        hz: f64,
        /// Acceleration along gravity, thousandths of the standard acceleration of free fall.
        mg: Vec<f64>,
    },
    /// No vibration could be recorded.
    VibrationNotRecorded,
    /// Work has ended, well or not.
    WorkDone {
        /// Which.
        id: u64,
    },
}
