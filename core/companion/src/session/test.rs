//! A test in hand: how far it is and what was entered.

use holdfast_diagnose::CarState;
use serde::{Deserialize, Serialize};

use crate::flow::Outcomes;
use crate::flow::hold::HoldAt;
use crate::protocol::Clock;
use crate::typed::Typed;

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

    pub(super) fn reopened(self, clock: &Clock, unit: &str) -> Self {
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
