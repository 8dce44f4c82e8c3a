//! Where the person stands: the screen with its drafts and a running hold. One row beside the log, overwritten by
//! each action that changes it, so that a killed process reopens where it was.

mod drafts;
mod lists;
mod test;

use serde::{Deserialize, Serialize};

use crate::protocol::{Clock, PhotoSubject};
use crate::settings::Settings;
use crate::typed::Typed;

pub(crate) use drafts::{
    ApprovalDraft, CircuitDraft, CostTyped, CostsDraft, PhotoAt, PrepareDraft, RepairDraft, ReportMade,
    StageTyped, VehicleDraft,
};
pub(crate) use lists::{ListAt, NoticeAt, Took};
pub(crate) use test::{Meant, Parked, Purpose, Questioned, Recorded, Stage, Taken, TestAt, Tried, ValuesAt};

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
