//! The shape of a result.

use holdfast_measure::Pressure;
use serde::{Deserialize, Serialize};

use crate::Message;

/// What a reading says by itself.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct TestResult {
    /// In one word.
    pub outcome: Outcome,
    /// The numbers of a hold.
    #[serde(flatten, skip_serializing_if = "Option::is_none")]
    pub hold: Option<HoldResult>,
    /// What is to be said about it: first what was seen, then what it means, then remarks.
    #[serde(skip)]
    pub says: Vec<Message>,
}

/// A result in one word.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Outcome {
    /// Hold: P(leak over limit) ≤ 5 %, and no leak proved.
    Holds,
    /// Hold: a leak is proved, and P(leak over limit) ≤ 5 %.
    SlowLeak,
    /// Hold: P(leak over limit) ≥ 95 %.
    Leaks,
    /// Hold: the target can't be reached.
    WillNotBuild,
    /// Nothing can be said yet; the result says what would decide.
    Undecided,
    /// Other tests: as a sound circuit reads.
    AsExpected,
    /// Other tests: not as a sound circuit reads.
    NotAsExpected,
    /// Not done.
    NotDone,
}

impl Outcome {
    /// Every outcome.
    pub const ALL: [Self; 8] = [
        Self::Holds,
        Self::SlowLeak,
        Self::Leaks,
        Self::WillNotBuild,
        Self::Undecided,
        Self::AsExpected,
        Self::NotAsExpected,
        Self::NotDone,
    ];

    /// The stable text, such as `slow_leak`.
    pub fn as_str(self) -> &'static str {
        match self {
            Self::Holds => "holds",
            Self::SlowLeak => "slow_leak",
            Self::Leaks => "leaks",
            Self::WillNotBuild => "will_not_build",
            Self::Undecided => "undecided",
            Self::AsExpected => "as_expected",
            Self::NotAsExpected => "not_as_expected",
            Self::NotDone => "not_done",
        }
    }
}

/// A leak with its 95 % interval, std cm³/min: 20 °C, 101.325 kPa, as the flow passed at 101.325 kPa and 20 °C outside
/// with 20 inHg inside.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct LeakRange {
    /// Best estimate.
    pub value: f64,
    /// Lower end.
    pub low: f64,
    /// Upper end.
    pub high: f64,
}

/// The numbers of a hold. Vacuum is kPa below ambient.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct HoldResult {
    /// Probability that the leak is over the limit.
    pub p_over_limit: f64,
    /// The limit as a leak for the volume under test, std cm³/min.
    pub limit_std_cm3_min: f64,
    /// The part's own leak, the tester's taken off. `None`: not measured, as the target was not reached.
    #[serde(rename = "leak_std_cm3_min")]
    pub leak: Option<LeakRange>,
    /// Diameter of a single ideal hole that leaks as much, mm.
    pub hole_mm: Option<f64>,
    /// Volume under test, tester included, cm³.
    pub volume_cm3: f64,
    /// Standard uncertainty of that volume, cm³.
    pub volume_u_cm3: f64,
    /// Vacuum when pumping stopped; the highest reached where the target was not.
    pub start_kpa: f64,
    /// Vacuum lost at the last reading.
    pub drop_kpa: f64,
    /// Seconds from start to the last reading.
    pub seconds: f64,
    /// What was to be pumped to.
    pub target_kpa: f64,
    /// Seconds more to watch that would decide; only when undecided.
    pub more_seconds: Option<f64>,
    /// A gauge that would decide; only when undecided.
    pub finer_gauge: Option<FinerGauge>,
    /// Whether the fall was a straight line (a hole) or curved (a thin path); `None`: can't be told.
    pub form: Option<holdfast_measure::LeakForm>,
    /// Mean flow in this very test, std cm³/min.
    pub flow_in_test: Option<f64>,
    /// The leak as pV throughput, Pa·m³/s.
    pub pa_m3_s: Option<f64>,
    /// The readings, for a chart: seconds, vacuum kPa.
    pub points: Vec<(f64, f64)>,
    /// The fitted fall with its band, for a chart.
    pub fit: Vec<FitPoint>,
    /// Where the needle would go with a leak just at the limit, for a chart: seconds, vacuum kPa.
    pub limit_line: Vec<(f64, f64)>,
}

/// A point of the fitted fall.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct FitPoint {
    /// Seconds since the start.
    pub s: f64,
    /// Vacuum, kPa.
    pub kpa: f64,
    /// With the upper end of the leak.
    pub low_kpa: f64,
    /// With the lower end of the leak.
    pub high_kpa: f64,
}

/// How fine a gauge must be read to decide.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct FinerGauge {
    /// Read to this, kPa.
    pub read_to_kpa: f64,
}

/// What to pump to, and why that.
#[derive(Debug, Clone, PartialEq)]
pub struct Target {
    /// Vacuum to pump to.
    pub vacuum: Pressure,
    /// Why.
    pub why: Message,
}

impl TestResult {
    /// A result with one thing to say.
    pub(crate) fn just(outcome: Outcome, message: Message) -> Self {
        Self {
            outcome,
            hold: None,
            says: vec![message],
        }
    }

    pub(crate) fn good(message: Message) -> Self {
        Self::just(Outcome::AsExpected, message)
    }

    pub(crate) fn bad(message: Message) -> Self {
        Self::just(Outcome::NotAsExpected, message)
    }

    pub(crate) fn open(message: Message) -> Self {
        Self::just(Outcome::Undecided, message)
    }

    /// The same with one thing more to say.
    #[must_use]
    pub(crate) fn and(mut self, message: Message) -> Self {
        self.says.push(message);
        self
    }

    /// The answer is of another kind than the test, or the value that it is about is missing.
    pub(crate) fn does_not_fit() -> Self {
        Self::open(Message::new("answer-does-not-fit"))
    }
}
