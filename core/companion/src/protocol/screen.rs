//! What is to be seen now: one [`Body`] variant for each screen.

use super::{
    ApprovalScreen, Button, Caution, FindingScreen, HoldScreen, JobsScreen, LogScreen, LookScreen,
    MeterScreen, OverviewScreen, PhotoScreen, RepairedScreen, ReportScreen, Section, TestScreen, YesNoScreen,
};

/// What is to be seen now.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Screen {
    /// Grows with every change.
    pub rev: u64,
    /// BCP 47 tag of the language of its words, for a screen reader.
    pub language: String,
    /// Which way that language runs: the layout follows it.
    pub direction: Direction,
    /// How large figures that are read while working stand on it.
    pub figures: FigureSize,
    /// What every screen has.
    pub frame: Frame,
    /// What only this one has.
    pub body: Body,
}

/// How large figures stand that are read while working: seconds, the gauge's and the meter's figure.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum FigureSize {
    /// At arm's length.
    Usual,
    /// As large as the screen lets, to be read at two metres; everything else stays.
    Large,
}

/// Which way a language runs.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Direction {
    /// From left to right.
    LeftToRight,
    /// From right to left.
    RightToLeft,
}

/// What every screen has.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Frame {
    /// The screen's name.
    pub title: String,
    /// The way back, where there is one.
    pub back: Option<Button>,
    /// Other places to go from here.
    pub menu: Vec<Button>,
    /// Cautions that belong before anything on this screen.
    pub cautions: Vec<Caution>,
    /// Said aloud by a screen reader when the screen appears.
    pub spoken: String,
    /// Something to know now: a problem, or what can be undone.
    pub notice: Option<Notice>,
}

/// A message across the top.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Notice {
    /// One or two sentences.
    pub text: String,
    /// What can be done about it.
    pub buttons: Vec<Button>,
    /// The work that is under way: the shell shows how far it is.
    pub work: Option<u64>,
}

/// The screens.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Body {
    /// The list of jobs.
    Jobs {
        /// Its content.
        jobs: JobsScreen,
    },
    /// Vehicle, complaint and circuit.
    Vehicle {
        /// Its content.
        form: FormScreen,
    },
    /// Before you start: cautions, tools, place.
    Prepare {
        /// Its content.
        form: FormScreen,
    },
    /// Where we stand.
    Overview {
        /// Its content.
        overview: OverviewScreen,
    },
    /// A test: briefing, question about a reading, result.
    Test {
        /// Its content.
        test: TestScreen,
    },
    /// A vacuum hold test.
    Hold {
        /// Its content.
        hold: HoldScreen,
    },
    /// Readings with a meter or gauge.
    Meter {
        /// Its content.
        meter: MeterScreen,
    },
    /// One question with two large answers.
    YesNo {
        /// Its content.
        ask: YesNoScreen,
    },
    /// The circuit part by part.
    LookOver {
        /// Its content.
        look: LookScreen,
    },
    /// A photo and its marks.
    Photo {
        /// Its content.
        photo: PhotoScreen,
    },
    /// Vibration with vacuum on and off.
    Vibration {
        /// Its content.
        meter: MeterScreen,
    },
    /// The finding.
    Finding {
        /// Its content.
        finding: FindingScreen,
    },
    /// The repair and its retest.
    Repaired {
        /// Its content.
        repair: RepairedScreen,
    },
    /// The report as it will print.
    Report {
        /// Its content.
        report: ReportScreen,
    },
    /// What the work costs.
    Costs {
        /// Its content.
        form: FormScreen,
    },
    /// What the customer says to it, with a signature.
    Approval {
        /// Its content.
        approval: ApprovalScreen,
    },
    /// The job's log: entries and photos.
    Log {
        /// Its content.
        log: LogScreen,
    },
    /// Settings.
    Settings {
        /// Its content.
        form: FormScreen,
    },
}

/// A form from top to bottom with the button that ends it.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct FormScreen {
    /// Its parts.
    pub sections: Vec<Section>,
    /// What ends it, where something does.
    pub next: Option<Button>,
}
