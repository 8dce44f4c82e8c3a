//! The screens: one [`Body`] variant for each, exclusive states as enums.

use holdfast_report::Scene;

use super::{Button, Caution, Choice, Field, FormItem, Live, Mark, Section};

/// What is to be seen now.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Screen {
    /// Grows with every change.
    pub rev: u64,
    /// What every screen has.
    pub frame: Frame,
    /// What only this one has.
    pub body: Body,
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

/// The list of jobs.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct JobsScreen {
    /// The search field.
    pub search: Field,
    /// The rows, unfinished jobs first.
    pub rows: Vec<JobRow>,
    /// What stands there when there are no rows, or empty.
    pub empty: String,
    /// New job.
    pub new_job: Button,
}

/// One job in the list.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct JobRow {
    /// Number plate, or empty.
    pub plate: String,
    /// The vehicle.
    pub vehicle: String,
    /// Its state.
    pub mark: Mark,
    /// When it was last touched, in words.
    pub when: String,
    /// Opens it.
    pub open: Button,
    /// Puts it in the bin.
    pub bin: Button,
}

/// Where we stand.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct OverviewScreen {
    /// The vehicle and complaint in a line.
    pub subject: String,
    /// What to do next.
    pub next: NextCard,
    /// The circuit, shaded by suspicion.
    pub map: Scene,
    /// Leading causes.
    pub causes: Vec<CauseRow>,
    /// All tests and their state.
    pub tests: Vec<TestRow>,
    /// Other things to do here.
    pub buttons: Vec<Button>,
}

/// The next thing to do and why.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct NextCard {
    /// What.
    pub title: String,
    /// One sentence.
    pub why: String,
    /// How long, in words, or empty.
    pub minutes: String,
    /// Goes there.
    pub go: Button,
}

/// One possible cause.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct CauseRow {
    /// The cause in words.
    pub name: String,
    /// How sure, as text.
    pub percent: String,
    /// Length of its bar, 0–1,000.
    pub bar_permille: u16,
}

/// One test in a list.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct TestRow {
    /// Its name.
    pub title: String,
    /// What came out, or how long it takes.
    pub detail: String,
    /// Its state.
    pub mark: Mark,
    /// Opens it.
    pub open: Button,
}

/// A test before, between and after.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct TestScreen {
    /// Where: map, connector face, or the person's own photo.
    pub picture: Option<Scene>,
    /// Where, in words.
    pub place: String,
    /// What is shown of the test now.
    pub stage: TestStage,
}

/// The stages of a test outside its measurement.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum TestStage {
    /// Before: why, what, how.
    Brief {
        /// Why now, one sentence.
        why: String,
        /// What is needed and how the car must be.
        needs: Vec<String>,
        /// The steps with the cautions that belong to them.
        steps: Vec<Step>,
        /// What each result would mean.
        means: Vec<Meaning>,
        /// Starts it.
        start: Button,
        /// Reasons why it can't be done.
        cannot: Vec<Button>,
        /// Photos and other extras.
        extras: Vec<FormItem>,
    },
    /// A reading that can hardly be right is asked about, once.
    Question {
        /// What is odd and the likely slip.
        text: String,
        /// Keep or change.
        buttons: Vec<Button>,
    },
    /// After: the result and what it means.
    Result {
        /// The result.
        mark: Mark,
        /// One sentence.
        sentence: String,
        /// What it means for the circuit.
        meaning: String,
        /// The numbers behind it, small.
        details: Vec<String>,
        /// The chart or band, where there is one.
        chart: Option<Scene>,
        /// Go on, do again, put right.
        buttons: Vec<Button>,
        /// Photos and other extras.
        extras: Vec<FormItem>,
    },
}

/// One step of a test.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Step {
    /// What to be careful of before it.
    pub cautions: Vec<Caution>,
    /// What to do.
    pub text: String,
}

/// What a result would mean.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Meaning {
    /// The result.
    pub mark: Mark,
    /// What it would mean.
    pub text: String,
}

/// A vacuum hold test.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct HoldScreen {
    /// The gauge with the target band.
    pub gauge: Scene,
    /// The moving part as it is now.
    pub live: Live,
    /// What is going on.
    pub phase: HoldPhase,
}

/// The phases of a hold test.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum HoldPhase {
    /// Pumping up to the target.
    Pump {
        /// What to pump to and why.
        target: String,
        /// Strokes so far, in words.
        strokes: String,
        /// One more, one less.
        count: Vec<Button>,
        /// Pumping has stopped.
        let_go: Button,
        /// The target can't be reached.
        wont_build: Button,
    },
    /// A reading is asked for: the first, a later one, or the highest reached.
    Read {
        /// Which reading.
        prompt: String,
        /// Keypad entry; dragging the needle fills it too.
        field: Field,
        /// Takes it.
        confirm: Button,
        /// Other ways on.
        others: Vec<Button>,
    },
    /// Watching the needle.
    Watch {
        /// What to do meanwhile.
        prompt: String,
        /// Read before time, stop.
        buttons: Vec<Button>,
    },
    /// The hold was cut off: what there is of it.
    Interrupted {
        /// What happened and what was kept.
        text: String,
        /// Ways on.
        buttons: Vec<Button>,
    },
}

/// Readings with a meter or gauge.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct MeterScreen {
    /// Where the leads or the gauge go.
    pub picture: Option<Scene>,
    /// Where each lead goes, in words; colour named.
    pub leads: Vec<String>,
    /// AC or DC, range, what to watch.
    pub hint: String,
    /// What to enter.
    pub items: Vec<FormItem>,
    /// The expected band with the reading on it, where it is known before.
    pub band: Option<Scene>,
    /// Takes it.
    pub confirm: Button,
}

/// One question with two large answers.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct YesNoScreen {
    /// Where.
    pub picture: Option<Scene>,
    /// What is asked.
    pub question: String,
    /// What to look or listen for.
    pub look_for: Vec<String>,
    /// Words that say what was seen.
    pub answers: Vec<Button>,
    /// Not sure.
    pub not_sure: Button,
}

/// The circuit as a checklist.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct LookScreen {
    /// The circuit with what was ticked.
    pub map: Scene,
    /// Part by part.
    pub rows: Vec<LookRow>,
    /// All looked over.
    pub done: Button,
}

/// One component in the look-over.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct LookRow {
    /// Its state now.
    pub mark: Mark,
    /// The states it can be in.
    pub states: Choice,
    /// Takes a photo of it.
    pub photo: Button,
}

/// A photo and its marks.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct PhotoScreen {
    /// The photo with its marks; a touch sends `Touch` in its coordinates.
    pub scene: Scene,
    /// The marks to choose from.
    pub palette: Choice,
    /// The caption.
    pub caption: Field,
    /// Undo, remove, done.
    pub buttons: Vec<Button>,
}

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
    },
}

/// The job's log.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct LogScreen {
    /// Add a photo, and the photos.
    pub photos: Vec<FormItem>,
    /// The entries, newest first.
    pub rows: Vec<LogRow>,
}

/// One entry of the log.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct LogRow {
    /// When.
    pub when: String,
    /// What.
    pub text: String,
    /// What became of it: corrected, from a newer version; or empty.
    pub state: String,
}
