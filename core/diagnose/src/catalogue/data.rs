//! The catalogue shipped with the program, applied to a circuit.

use std::sync::LazyLock;

use serde::Deserialize;

use super::{Advice, CautionRef, EngineNeed, FieldSpec, Form, Needs, NotOffered, Signal, TestSpec};
use crate::{
    Circuit, ComponentId, ComponentKind, EngineState, Feed, Outcome, Properties, Situation, TestId, TestKind,
    Tool, Window,
};

pub(crate) const TESTS: &str = include_str!("../../data/tests.json");
pub(crate) const CAUTIONS: &str = include_str!("../../data/cautions.json");

#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct TestData {
    #[serde(rename = "$schema")]
    pub(crate) _schema: String,
    #[serde(rename = "about")]
    pub(crate) _about: String,
    pub(crate) tests: Vec<Entry>,
}

/// One test as it stands in the file.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Entry {
    pub(crate) id: String,
    pub(crate) kind: TestKind,
    pub(crate) on: Vec<On>,
    pub(crate) form: Form,
    pub(crate) tools: Vec<Tool>,
    pub(crate) optional_tools: Vec<Tool>,
    pub(crate) minutes: f64,
    pub(crate) access: AccessNeed,
    pub(crate) needs: Needs,
    pub(crate) fields: Vec<FieldSpec>,
    pub(crate) cautions: Vec<CautionRef>,
    pub(crate) steps: usize,
    pub(crate) means: Vec<Outcome>,
}

/// What a test is done on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum On {
    Once,
    Branch,
    Inlet,
    /// The one valve that isn't named, or each of several.
    Drive,
    Valve,
    Fuse,
    Mount,
    Hose,
    Tee,
    CheckValve,
    Reservoir,
    Restrictor,
    Connector,
    Wire,
}

/// Which of a part's access minutes count.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum AccessNeed {
    None,
    Look,
    Open,
}

#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct CautionData {
    #[serde(rename = "$schema")]
    pub(crate) _schema: String,
    #[serde(rename = "about")]
    pub(crate) _about: String,
    pub(crate) cautions: Vec<CautionSummary>,
}

/// One caution.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CautionSummary {
    /// Its id; its text is `caution-<id>`.
    pub id: String,
    /// How grave.
    pub signal: Signal,
}

/// All tests.
#[derive(Debug)]
pub struct Catalogue {
    pub(crate) tests: TestData,
    pub(crate) cautions: CautionData,
}

static CATALOGUE: LazyLock<Catalogue> = LazyLock::new(|| Catalogue {
    // Tests prove that the shipped files parse; a broken one would offer no test rather than end the program.
    tests: serde_json::from_str(TESTS).unwrap_or_default(),
    cautions: serde_json::from_str(CAUTIONS).unwrap_or_default(),
});

impl Catalogue {
    /// The catalogue shipped with the program.
    pub fn standard() -> &'static Self {
        &CATALOGUE
    }

    /// The tests offered here and now, in catalogue order.
    pub fn tests_for(&self, circuit: &Circuit, situation: &Situation) -> Vec<TestSpec> {
        self.advice(circuit, situation)
            .into_iter()
            .filter(|a| a.not_offered.is_none())
            .map(|a| a.spec)
            .collect()
    }

    /// Every test this circuit has, each with the reason if it isn't offered here and now.
    pub fn advice(&self, circuit: &Circuit, situation: &Situation) -> Vec<Advice> {
        self.all_for(circuit)
            .into_iter()
            .map(|spec| Advice {
                not_offered: not_offered(&spec, situation),
                spec,
            })
            .collect()
    }

    /// Every test this circuit has, in catalogue order.
    pub fn all_for(&self, circuit: &Circuit) -> Vec<TestSpec> {
        self.tests
            .tests
            .iter()
            .flat_map(|entry| specs(entry, circuit))
            .collect()
    }

    /// One test of this circuit. `None`: the circuit has no such test.
    pub fn spec(&self, circuit: &Circuit, test: &TestId) -> Option<TestSpec> {
        let entries = self.tests.tests.iter().filter(|entry| entry.kind == test.kind);
        entries
            .flat_map(|entry| specs(entry, circuit))
            .find(|spec| &spec.id == test)
    }

    /// What the engine does in a test of this kind on this circuit, as the test asks.
    pub fn engine_in(&self, circuit: &Circuit, kind: TestKind) -> EngineState {
        let entry = self.tests.tests.iter().find(|entry| entry.kind == kind);
        entry.map_or(EngineState::Off, |entry| {
            engine_need(entry.needs, &circuit.properties).state()
        })
    }

    /// Every caution.
    pub fn cautions(&self) -> &[CautionSummary] {
        &self.cautions.cautions
    }
}

/// One entry of the catalogue, once for each place where it is done on this circuit.
fn specs(entry: &Entry, circuit: &Circuit) -> Vec<TestSpec> {
    let parts = entry.on.iter().flat_map(|on| places(*on, circuit));
    parts.map(|part| apply(entry, part, circuit)).collect()
}

fn apply(entry: &Entry, part: Option<ComponentId>, circuit: &Circuit) -> TestSpec {
    let access = part
        .as_ref()
        .and_then(|id| circuit.component(id))
        .map(|c| c.access)
        .unwrap_or_default();
    let extra = match entry.access {
        AccessNeed::None => 0.0,
        AccessNeed::Look => access.look,
        AccessNeed::Open => access.open,
    };
    let mut needs = entry.needs;
    let mut cautions = entry.cautions.clone();
    needs.engine = engine_need(entry.needs, &circuit.properties);
    if needs.engine != entry.needs.engine && entry.needs.engine == EngineNeed::KeyOn {
        cautions.retain(|c| c.id != KEY_ON);
        for id in RUNNING.into_iter().rev() {
            cautions.insert(0, warning(id));
        }
    }
    if needs.engine == EngineNeed::InGear {
        needs.second_person = true;
        cautions.insert(0, warning("in-gear"));
    }
    TestSpec {
        id: TestId {
            kind: entry.kind,
            part,
        },
        stem: entry.id.clone(),
        form: entry.form,
        tools: entry.tools.clone(),
        optional_tools: entry.optional_tools.clone(),
        minutes: entry.minutes + extra,
        needs,
        fields: entry.fields.clone(),
        cautions,
        steps: entry.steps,
        means: entry.means.clone(),
    }
}

/// The caution of work with the ignition on.
const KEY_ON: &str = "engine-may-start-key-on";
/// The cautions of work with the engine on.
const RUNNING: [&str; 2] = ["engine-running", "fumes"];

fn warning(id: &str) -> CautionRef {
    CautionRef {
        id: id.to_owned(),
        signal: Signal::Warning,
        at_step: 0,
    }
}

/// What the engine has to do in a test on this circuit.
fn engine_need(needs: Needs, properties: &Properties) -> EngineNeed {
    if needs.window && properties.window == Window::IdleInGear {
        EngineNeed::InGear
    } else if needs.fed && properties.feed == Feed::Relay {
        EngineNeed::Idle
    } else {
        needs.engine
    }
}

/// Where a test is done: `None` stands for "needs no part named".
fn places(on: On, circuit: &Circuit) -> Vec<Option<ComponentId>> {
    let kind = |kind| {
        circuit
            .of_kind(kind)
            .map(|c| Some(c.id.clone()))
            .collect::<Vec<_>>()
    };
    let single = |list: Vec<Option<ComponentId>>| if list.len() == 1 { vec![None] } else { list };
    match on {
        On::Once => vec![None],
        On::Branch | On::Inlet => {
            let start = if on == On::Branch { "branch" } else { "inlet" };
            circuit
                .reaches()
                .into_iter()
                .filter(|r| r.as_str().starts_with(start))
                .map(Some)
                .collect()
        }
        On::Drive => single(kind(ComponentKind::Valve)),
        On::Valve => kind(ComponentKind::Valve),
        On::Fuse => single(kind(ComponentKind::Fuse)),
        On::Mount => kind(ComponentKind::Mount),
        On::Hose => kind(ComponentKind::Hose),
        On::Tee => kind(ComponentKind::Tee),
        On::CheckValve => kind(ComponentKind::CheckValve),
        On::Reservoir => kind(ComponentKind::Reservoir),
        On::Restrictor => kind(ComponentKind::Restrictor),
        On::Connector => kind(ComponentKind::Connector),
        On::Wire => kind(ComponentKind::Wire),
    }
}

/// Why a test is not offered. Work in gear is never offered to a person alone, whoever it is.
fn not_offered(spec: &TestSpec, situation: &Situation) -> Option<NotOffered> {
    if spec.needs.second_person && !situation.second_person {
        return Some(NotOffered::Alone);
    }
    let runs = matches!(spec.needs.engine, EngineNeed::Idle | EngineNeed::InGear);
    if runs && !situation.engine.can_run {
        return Some(NotOffered::EngineCannotRun);
    }
    spec.tools
        .iter()
        .find(|tool| !situation.has(**tool))
        .map(|tool| NotOffered::Tool(*tool))
}
