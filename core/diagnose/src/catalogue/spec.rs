//! The shape of one test in the catalogue.

use serde::{Deserialize, Serialize};

use crate::{EngineState, FieldKey, MessageId, Outcome, TestId, Tool};

/// One test as it is done on one circuit.
#[derive(Debug, Clone, PartialEq)]
pub struct TestSpec {
    /// The test.
    pub id: TestId,
    /// What the ids of its texts start with: `hold-mount` for `hold:front_mount`.
    pub stem: String,
    /// What kind of screen asks for it.
    pub form: Form,
    /// Tools it can't be done without.
    pub tools: Vec<Tool>,
    /// Tools that make it better.
    pub optional_tools: Vec<Tool>,
    /// Minutes it takes, access included.
    pub minutes: f64,
    /// The state the car must be in.
    pub needs: Needs,
    /// What is to be filled in, the most important first.
    pub fields: Vec<FieldSpec>,
    /// Cautions, each at the step it belongs to.
    pub cautions: Vec<CautionRef>,
    /// How many steps it has, ≥ 1.
    pub steps: usize,
    /// What can come out; each has a text that says what it would mean.
    pub means: Vec<Outcome>,
}

impl TestSpec {
    /// The id of its name: `test-hold-mount-title`.
    pub fn title(&self) -> MessageId {
        self.text("title")
    }

    /// The id of the sentence that says where: `test-hold-mount-where`.
    pub fn place(&self) -> MessageId {
        self.text("where")
    }

    /// The id of step `n`, from 1: `test-hold-mount-step-1`.
    pub fn step(&self, n: usize) -> MessageId {
        self.text(&format!("step-{n}"))
    }

    /// The id of what a result would mean: `test-hold-mount-means-slow-leak`.
    pub fn meaning(&self, outcome: Outcome) -> MessageId {
        self.text(&format!("means-{}", outcome.as_str().replace('_', "-")))
    }

    /// The id of a field's label: `test-hold-mount-field-sag-mm`.
    pub fn label(&self, key: &FieldKey) -> MessageId {
        self.text(&format!("field-{}", key.as_str().replace('_', "-")))
    }

    /// The field with a key.
    pub fn field(&self, key: &str) -> Option<&FieldSpec> {
        self.fields.iter().find(|f| f.key.as_str() == key)
    }

    fn text(&self, what: &str) -> MessageId {
        MessageId::new(format!("test-{}-{what}", self.stem))
    }
}

/// What kind of screen asks for a test.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Form {
    /// A vacuum hold with its timer.
    Hold,
    /// Readings of a vacuum gauge.
    Gauge,
    /// Readings of a meter.
    Meter,
    /// Questions answered by yes or no, sometimes with a number beside.
    YesNo,
    /// Words to type.
    Words,
    /// The circuit part by part.
    LookOver,
    /// Vibration with vacuum on and off.
    Vibration,
}

/// The state the car must be in for a test.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Needs {
    /// What the engine does.
    pub engine: EngineNeed,
    /// The module must be commanding the valve.
    pub window: bool,
    /// The power pin must be live: where a relay feeds it that the module may let drop, the engine has to run.
    pub fed: bool,
    /// A second person must sit in the car.
    pub second_person: bool,
    /// Hands are at parts that the engine heats: it takes longer while they are hot.
    pub at_hot_parts: bool,
    /// The valve's connector: plugged in, unplugged, or as the test's fields say.
    pub connected: Option<bool>,
}

/// What the engine does in a test.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum EngineNeed {
    /// It doesn't matter.
    #[default]
    Any,
    /// Off, key off.
    Off,
    /// Off, ignition on.
    KeyOn,
    /// Idling, in neutral or park.
    Idle,
    /// Idling in gear, brakes held.
    InGear,
}

impl EngineNeed {
    /// What the engine does then.
    pub fn state(self) -> EngineState {
        match self {
            Self::Any | Self::Off | Self::KeyOn => EngineState::Off,
            Self::Idle => EngineState::Idle,
            Self::InGear => EngineState::InGear,
        }
    }
}

/// One value to fill in.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FieldSpec {
    /// Its key in the answer.
    pub key: FieldKey,
    /// What it is.
    pub quantity: Quantity,
    /// The test says nothing without it (or what stands instead of it).
    #[serde(default)]
    pub required: bool,
    /// It can be given in place of this other one.
    #[serde(default)]
    pub instead_of: Option<FieldKey>,
}

/// What a value is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Quantity {
    /// Direct voltage, V.
    Volts,
    /// Resistance, Ω, or open.
    Ohms,
    /// Vacuum, Pa below ambient, read in the gauge's unit.
    Vacuum,
    /// Time, s.
    Seconds,
    /// Engine speed, 1/min.
    Rpm,
    /// A count.
    Count,
    /// A length, mm.
    Millimetres,
    /// Yes or no.
    YesNo,
    /// 0 none, 1 slight, 2 clear, 3 strong.
    Scale,
    /// Words.
    Words,
    /// Acceleration recorded by the phone.
    Samples,
}

/// A caution of a test.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CautionRef {
    /// Its id; its text is `caution-<id>`.
    pub id: String,
    /// How grave.
    pub signal: Signal,
    /// The step before which it stands; 0: before the test begins.
    pub at_step: usize,
}

impl CautionRef {
    /// The id of its text.
    pub fn text(&self) -> MessageId {
        MessageId::new(format!("caution-{}", self.id))
    }
}

/// Signal words in the sense of ANSI Z535.4: the first three for harm to people, the last for damage to things.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Signal {
    /// Will kill or maim if not avoided.
    Danger,
    /// Can kill or maim.
    Warning,
    /// Can hurt.
    Caution,
    /// Can damage things.
    Notice,
}

/// Why a test is not offered here and now.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NotOffered {
    /// A tool is missing.
    Tool(Tool),
    /// It needs a second person.
    Alone,
    /// The engine can't be run.
    EngineCannotRun,
}

impl NotOffered {
    /// The id of the text that says so.
    pub fn text(self) -> MessageId {
        match self {
            Self::Tool(tool) => MessageId::new(format!("not-offered-{}", tool.as_str())),
            Self::Alone => "not-offered-alone".into(),
            Self::EngineCannotRun => "not-offered-engine".into(),
        }
    }
}

/// A test and whether it is offered.
#[derive(Debug, Clone, PartialEq)]
pub struct Advice {
    /// The test.
    pub spec: TestSpec,
    /// Why it is not offered; `None`: it is.
    pub not_offered: Option<NotOffered>,
}
