//! The screens of what was found: the finding, the repair, the report.

use holdfast_report::Scene;

use super::{Button, CauseRow, Mark, Section};

/// The finding.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct FindingScreen {
    /// The part and what is wrong with it, in one sentence.
    pub headline: String,
    /// How sure, in words.
    pub certainty: String,
    /// The state of the finding.
    pub mark: Mark,
    /// Whether it explains the complaint.
    pub explains: String,
    /// What speaks for it.
    pub speaks_for: Vec<String>,
    /// What speaks against it.
    pub speaks_against: Vec<String>,
    /// What can't be told apart or was not tested.
    pub left_open: Vec<String>,
    /// All causes that matter.
    pub causes: Vec<CauseRow>,
    /// The circuit with the part marked.
    pub map: Scene,
    /// Repair, test more, report.
    pub buttons: Vec<Button>,
}

/// The repair and its retest.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct RepairedScreen {
    /// What was done, what to mind, the retest.
    pub sections: Vec<Section>,
    /// Before and after on one chart, once there is both.
    pub chart: Option<Scene>,
    /// What ends it.
    pub next: Button,
}

/// The report as it will print.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct ReportScreen {
    /// Its pages.
    pub pages: Vec<Scene>,
    /// Paper, names and what goes in.
    pub sections: Vec<Section>,
    /// How far it is.
    pub state: ReportState,
}

/// What the customer says to the work, signed with a finger.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct ApprovalScreen {
    /// What is signed for.
    pub sections: Vec<Section>,
    /// The pad with what is drawn on it; a stroke sends `Action::Ink`.
    pub pad: Scene,
    /// Take a stroke back, wipe the pad.
    pub pad_buttons: Vec<Button>,
    /// What ends it.
    pub next: Button,
}

/// How far the report is.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum ReportState {
    /// Not made from what is known now.
    ToMake {
        /// Makes it.
        make: Button,
    },
    /// Being made.
    Working {
        /// In words.
        text: String,
        /// Stops it.
        stop: Button,
    },
    /// Made.
    Ready {
        /// The file.
        path: String,
        /// Shares it.
        share: Button,
        /// Shares the readings as a table.
        share_readings: Button,
    },
}
