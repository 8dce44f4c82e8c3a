//! Where the person stands: the screen with its drafts and a running hold. One row beside the log, overwritten by
//! each action that changes it, so that a killed process reopens where it was.

use holdfast_diagnose::CarState;
use holdfast_joblog::{CostKind, Decision};
use serde::{Deserialize, Serialize};

use crate::drawn::PagesOf;
use crate::flow::Outcomes;
use crate::flow::hold::HoldAt;
use crate::protocol::{Clock, PhotoSubject};
use crate::settings::Settings;
use crate::typed::Typed;

/// Everything a reopened process needs beside the log.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(default)]
pub(crate) struct Session {
    /// What was set once.
    pub settings: Settings,
    /// The job that is open.
    pub job: Option<String>,
    /// The screen.
    pub at: At,
    /// Tests left in the middle, to be taken up again.
    pub parked: Vec<Parked>,
    /// Something to know now.
    pub notice: Option<NoticeAt>,
    /// What the photo shows that is awaited from the phone.
    pub photo_for: Option<PhotoSubject>,
    /// The report made last, by its path, and of how many entries.
    pub report: Option<ReportMade>,
}

impl Session {
    /// The session of its JSON; one that does not read (from a newer version) starts anew, with the settings of the
    /// phone's region.
    pub(crate) fn read(json: &str, phone: &str) -> Self {
        serde_json::from_str(json).unwrap_or_else(|_| Self {
            settings: Settings::of_region(phone),
            ..Self::default()
        })
    }

    /// As it stands after the process was ended and opened again: a running hold is marked interrupted.
    pub(crate) fn reopened(mut self, clock: &Clock) -> Self {
        let unit = self.settings.gauge.unit.clone();
        // Works end with their process.
        self.notice = self
            .notice
            .filter(|notice| !matches!(notice, NoticeAt::Working { .. }));
        self.at = self.at.reopened(clock, &unit);
        self.parked = self
            .parked
            .into_iter()
            .map(|parked| Parked {
                at: parked.at.reopened(clock, &unit),
                ..parked
            })
            .collect();
        self
    }
}

/// The screens and what each has in hand.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub(crate) enum At {
    /// The list of jobs.
    #[default]
    Jobs,
    /// The list of jobs, searched, narrowed down, or with jobs picked out.
    Listed(ListAt),
    /// Vehicle and complaint.
    Vehicle(VehicleDraft),
    /// The circuit, to be edited.
    Circuit(CircuitDraft),
    /// Before you start.
    Prepare(PrepareDraft),
    /// Where we stand.
    Overview,
    /// A test.
    Test(TestAt),
    /// A photo.
    Photo(PhotoAt),
    /// The finding.
    Finding,
    /// The repair.
    Repaired(RepairDraft),
    /// The report.
    Report,
    /// What the work costs.
    Costs(CostsDraft),
    /// What the customer says to it.
    Approval(ApprovalDraft),
    /// The log.
    Log,
    /// Settings; where the way back leads.
    Settings {
        /// What is typed and not yet valid.
        typed: Typed,
        /// The screen before.
        before: Box<At>,
    },
}

/// The list of jobs in hand.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub(crate) struct ListAt {
    /// What was typed.
    pub search: String,
    /// The shelf, by its id.
    pub shelf: String,
    /// When they were worked on, by its id.
    pub time: String,
    /// The first day, as typed.
    #[serde(default)]
    pub from: String,
    /// The last day, as typed.
    #[serde(default)]
    pub until: String,
    /// Whether shelves and times are offered.
    pub filters: Filters,
    /// How many times more rows were asked for.
    pub pages: u32,
    /// The jobs picked out, while some are.
    pub picked: Option<Vec<String>>,
}

impl Default for ListAt {
    fn default() -> Self {
        Self {
            search: String::new(),
            shelf: "all".to_owned(),
            time: "any".to_owned(),
            from: String::new(),
            until: String::new(),
            filters: Filters::Hidden,
            pages: 0,
            picked: None,
        }
    }
}

/// Whether what narrows the list down is offered.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub(crate) enum Filters {
    /// Not now: there is more room for the list.
    #[default]
    Hidden,
    /// It is.
    Offered,
}

impl ListAt {
    /// Whether what narrows it down is offered.
    pub(crate) fn is_narrowed(&self) -> bool {
        self.filters == Filters::Offered
    }

    /// With shelves and times offered; or, where they were, with all jobs.
    pub(crate) fn narrowed(self) -> Self {
        if self.is_narrowed() {
            return Self {
                search: self.search,
                picked: self.picked,
                ..Self::default()
            };
        }
        Self {
            filters: Filters::Offered,
            ..self
        }
    }

    /// With a job picked out, or no longer.
    pub(crate) fn toggled(mut self, job: String) -> Self {
        let picked = self.picked.get_or_insert_default();
        if picked.contains(&job) {
            picked.retain(|there| *there != job);
        } else {
            picked.push(job);
        }
        self
    }
}

/// A notice by key, with what it names.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub(crate) enum NoticeAt {
    /// A job went into the bin and can be taken out again.
    Binned {
        /// Which.
        job: String,
    },
    /// A test was left running or half done.
    Parked {
        /// Which.
        test: String,
    },
    /// Whether the bin is to be emptied for good.
    EmptyBin,
    /// A bundle was taken in.
    Took {
        /// What came of it.
        took: Took,
    },
    /// A work that the person waits for.
    Working {
        /// What it does, by text key.
        key: String,
        /// Which work.
        work: u64,
    },
    /// Only words, by text key.
    Words {
        /// The key.
        key: String,
    },
}

impl NoticeAt {
    /// Only words.
    pub(crate) fn words(key: &str) -> Self {
        Self::Words { key: key.to_owned() }
    }
}

/// What came of taking a bundle in.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub(crate) struct Took {
    /// Jobs that have new entries.
    pub jobs: usize,
    /// Entries that were left out.
    pub left_out: usize,
    /// Photos that no decoder reads.
    pub broken_photos: usize,
    /// Jobs that were deleted here and stay away.
    pub deleted: Vec<String>,
    /// The bundle, to be taken in again with them.
    pub again: Option<String>,
}

/// A report that was made.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub(crate) struct ReportMade {
    /// Of what; where that has changed since, it is out of date.
    #[serde(default)]
    pub of: PagesOf,
    /// Path of the file.
    pub path: String,
}

/// Vehicle and complaint in hand.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub(crate) struct VehicleDraft {
    /// Fields.
    pub typed: Typed,
    /// Complaints tapped, by id; none: as logged.
    pub complaint: Option<Vec<String>>,
}

/// The circuit in hand.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub(crate) struct CircuitDraft {
    /// Fields.
    pub typed: Typed,
}

/// Before you start, in hand.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub(crate) struct PrepareDraft {
    /// Fields.
    pub typed: Typed,
    /// Cautions ticked.
    pub acknowledged: Vec<String>,
    /// Tools tapped, by id; none: as logged.
    pub tools: Option<Vec<String>>,
    /// Whether the engine can run; none: as logged.
    pub engine_runs: Option<bool>,
    /// Whether a second person is there; none: as logged.
    pub second_person: Option<bool>,
    /// Absolute pressure from the phone's barometer, kPa.
    pub barometer_kpa: Option<f64>,
}

/// A test in hand.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub(crate) struct TestAt {
    /// Which, such as `hold:branch`.
    pub test: String,
    /// What it is done for.
    pub purpose: Purpose,
    /// Whether a reading of it was questioned: that is done once.
    #[serde(default)]
    pub questioned: Questioned,
    /// The state of the car, where it may differ from what the test asks; none: not asked about.
    #[serde(default)]
    pub car: Option<CarState>,
    /// How far it is.
    pub stage: Stage,
}

impl Session {
    /// The test of the open job that was left in the middle, no longer parked.
    pub(crate) fn take_parked(&mut self, test: &str) -> Option<TestAt> {
        let job = self.job.clone()?;
        let at = self
            .parked
            .iter()
            .position(|parked| parked.job == job && parked.at.test == test)?;
        Some(self.parked.remove(at).at)
    }

    /// Keeps a test of the open job as it stands; the oldest is given up where there are very many.
    pub(crate) fn park(&mut self, at: TestAt) {
        let Some(job) = self.job.clone() else { return };
        self.take_parked(&at.test);
        self.parked.push(Parked { job, at });
        if self.parked.len() > MOST_PARKED {
            self.parked.remove(0);
        }
    }
}

/// Tests left in the middle that are kept, over all jobs.
const MOST_PARKED: usize = 60;

impl At {
    fn reopened(self, clock: &Clock, unit: &str) -> Self {
        match self {
            Self::Test(at) => Self::Test(at.reopened(clock, unit)),
            Self::Settings { typed, before } => Self::Settings {
                typed,
                before: Box::new(before.reopened(clock, unit)),
            },
            Self::Photo(at) => Self::Photo(PhotoAt {
                before: Box::new(at.before.reopened(clock, unit)),
                ..at
            }),
            other => other,
        }
    }
}

/// A test left in the middle.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub(crate) struct Parked {
    /// Of which job.
    pub job: String,
    /// The test as it stood.
    pub at: TestAt,
}

impl TestAt {
    /// A test at a stage.
    pub(crate) fn at(test: String, purpose: Purpose, stage: Stage) -> Self {
        Self {
            test,
            purpose,
            questioned: Questioned::No,
            car: None,
            stage,
        }
    }

    fn reopened(self, clock: &Clock, unit: &str) -> Self {
        match self.stage {
            Stage::Hold(hold) => Self {
                stage: Stage::Hold(hold.reopened(clock, unit)),
                ..self
            },
            _ => self,
        }
    }
}

/// Whether a reading was questioned.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub(crate) enum Questioned {
    /// Not yet.
    #[default]
    No,
    /// Once.
    Yes,
}

/// What a test is done for.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub(crate) enum Purpose {
    /// To find out.
    Find,
    /// To put an entered reading right.
    Correct {
        /// The entry to put right.
        entry: String,
    },
    /// To see whether a repair helped.
    Retest,
}

/// How far a test is.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub(crate) enum Stage {
    /// The briefing.
    Brief {
        /// Cautions ticked.
        acknowledged: Vec<String>,
        /// Why it can't be done, as typed.
        #[serde(default)]
        typed: Typed,
        /// Whether it is shown what each outcome would change.
        #[serde(default)]
        outcomes: Outcomes,
    },
    /// A vacuum hold test.
    Hold(HoldAt),
    /// Values of a meter, gauge, scale or in words.
    Values(ValuesAt),
    /// Questions with two answers, one after the other.
    Ask {
        /// What was said so far, by key.
        said: Vec<(String, String)>,
    },
    /// The circuit part by part.
    Look {
        /// What was seen, by component.
        seen: Vec<(String, String)>,
    },
    /// A hold's figures are put right.
    Amend(crate::flow::amend::AmendAt),
    /// A reading that can hardly be right is asked about.
    Question {
        /// The stage to go back to.
        back: Box<Stage>,
        /// The reading as it would be logged.
        reading: serde_json::Value,
        /// The hold it comes from.
        going: Option<crate::flow::hold::Running>,
        /// When it was entered.
        #[serde(default)]
        taken: Option<Taken>,
    },
    /// The result.
    Result {
        /// A hold that can still be gone on with.
        going: Option<crate::flow::hold::Running>,
    },
}

/// When something was entered.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub(crate) struct Taken {
    /// Ms since 1970-01-01T00:00Z.
    pub at_ms: i64,
    /// Local time's offset from UTC then, minutes.
    pub offset_min: i32,
}

/// Values in hand.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub(crate) struct ValuesAt {
    /// Fields.
    pub typed: Typed,
    /// Options tapped, by key.
    pub picked: Vec<(String, String)>,
    /// Vibration recorded, by key.
    #[serde(default)]
    pub recorded: Vec<(String, Recorded)>,
    /// The key whose vibration is being recorded.
    #[serde(default)]
    pub recording: Option<String>,
    /// Whether figures outside the instrument's range are meant.
    #[serde(default)]
    pub meant: Meant,
    /// The unit of the gauge, where it differs from the settings.
    pub unit: Option<String>,
    /// Whether going on was tried: then what is missing is said.
    pub tried: Tried,
}

/// Vibration as the phone recorded it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub(crate) struct Recorded {
    /// Samples a second.
    pub hz: f64,
    /// Acceleration, thousandths of the standard acceleration of free fall.
    pub mg: Vec<f64>,
}

/// Whether a figure outside the instrument's range is meant.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub(crate) enum Meant {
    /// It is taken for a slip, and the range is said.
    #[default]
    No,
    /// The person says that the instrument shows it.
    Yes,
}

/// Whether the person has tried to go on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub(crate) enum Tried {
    /// Not yet: an empty field is no mistake.
    #[default]
    No,
    /// Yes.
    Yes,
}

/// A photo in hand.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub(crate) struct PhotoAt {
    /// Its entry.
    pub photo: String,
    /// The mark that a touch sets.
    pub tool: String,
    /// How a new mark looks.
    pub style: String,
    /// What goes to a new test point.
    pub lead: String,
    /// The mark in hand, by its place among the photo's marks.
    pub mark: Option<usize>,
    /// The caption, and the words beside the mark in hand, as typed.
    pub typed: Typed,
    /// The screen before.
    pub before: Box<At>,
}

/// A repair in hand.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub(crate) struct RepairDraft {
    /// The component.
    pub component: String,
    /// Fields.
    pub typed: Typed,
}

/// Costs in hand, as typed.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub(crate) struct CostsDraft {
    /// Whether they are foreseen or charged.
    pub stage: StageTyped,
    /// The currency's code.
    pub currency: String,
    /// Tax on parts and other things, percent.
    pub tax_parts: String,
    /// Tax on labour, percent.
    pub tax_labour: String,
    /// How long an estimate is good, days.
    pub valid_days: String,
    /// The lines.
    pub lines: Vec<CostTyped>,
}

/// Whether costs are foreseen or charged.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub(crate) enum StageTyped {
    /// An estimate.
    #[default]
    Estimate,
    /// Charged.
    Charged,
}

/// A line of the costs as typed.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub(crate) struct CostTyped {
    /// What is paid for.
    pub kind: CostKind,
    /// In words.
    pub words: String,
    /// How much.
    pub quantity: String,
    /// Price of one.
    pub price: String,
}

/// A customer's word in hand.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub(crate) struct ApprovalDraft {
    /// Fields.
    pub typed: Typed,
    /// What is said.
    pub decision: Decision,
    /// Strokes on the pad, in its units.
    pub strokes: Vec<Vec<[f32; 2]>>,
}
