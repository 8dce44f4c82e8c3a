//! What is meant by an action: where to, which answer, why not, of what.

/// Screens that can be gone to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, serde::Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Place {
    /// The list of jobs.
    Jobs,
    /// Vehicle and complaint.
    Vehicle,
    /// The vehicle's circuit, to be edited.
    Circuit,
    /// Before you start.
    Prepare,
    /// Where we stand.
    Overview,
    /// The finding.
    Finding,
    /// What the work costs.
    Costs,
    /// What the customer says to it, with a signature.
    Approval,
    /// The report.
    Report,
    /// The job's photos and log.
    Log,
    /// Settings.
    Settings,
}

/// Yes, no, or neither.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, serde::Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Said {
    /// It was seen.
    Yes,
    /// It was not.
    No,
    /// The person can't tell.
    NotSure,
}

/// Why a test can't be done.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, serde::Serialize, serde::Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum CannotReason {
    /// The part can't be reached.
    NoAccess,
    /// The tool is missing.
    NoTool,
    /// It isn't safe here.
    NotSafe,
    /// The vehicle has no such part, or the test point doesn't exist.
    NotFitted,
    /// The person does not want to.
    NotNow,
    /// It can't be had here: nobody can tell.
    NotAvailable,
    /// In the person's own words, as typed.
    OwnWords,
}

/// Which jobs are exported.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, serde::Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum ExportOf {
    /// Those picked out in the list.
    Picked,
    /// The one that is open.
    Open,
    /// The whole log, what is in the bin too.
    All,
}

/// Where a photo comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, serde::Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum PhotoSource {
    /// The camera.
    Camera,
    /// The gallery.
    Gallery,
}

/// What a photo shows.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, serde::Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum PhotoSubject {
    /// The job as a whole.
    Job,
    /// A test's reading or place.
    Test {
        /// Which.
        test: String,
    },
    /// A component.
    Component {
        /// Which.
        component: String,
    },
}
