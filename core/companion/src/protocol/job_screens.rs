//! The screens of jobs as a whole: the list, where we stand, the log.

use holdfast_report::Scene;

use super::{Button, Choice, Field, FormItem, Mark, Picked};

/// The list of jobs.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct JobsScreen {
    /// The search field.
    pub search: Field,
    /// Offers what narrows the list down, or takes it back.
    pub narrow: Button,
    /// What narrows the list down: shelf, time; none until it is asked for.
    pub filters: Vec<Choice>,
    /// The first and the last day, where the time is bounded by them.
    pub dates: Vec<Field>,
    /// The rows, the job last worked on first.
    pub rows: Vec<JobRow>,
    /// More rows, where there are more.
    pub more: Option<Button>,
    /// What stands there when there are no rows, or empty.
    pub empty: String,
    /// What can be done with many jobs at once: pick out, export, import, empty the bin.
    pub buttons: Vec<Button>,
    /// New job; or, while jobs are picked out, their export.
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
    /// Whose it is and what was found, or empty.
    pub found: String,
    /// Its state.
    pub mark: Mark,
    /// When it was last touched, in words.
    pub when: String,
    /// Whether it is picked out, while jobs are.
    pub picked: Option<Picked>,
    /// Opens it, or picks it out.
    pub open: Button,
    /// Begin anew on this vehicle, into the bin, out of it.
    pub buttons: Vec<Button>,
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

/// The job's log.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct LogScreen {
    /// Add a photo, the photos, and the job's export.
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
