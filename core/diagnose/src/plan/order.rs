//! The textbook's order, and the minutes of getting the car ready and of a wrong repair. Data: `data/plan.json`.

use std::sync::LazyLock;

use serde::Deserialize;

use crate::{Circuit, ComponentKind, TestId, TestKind, TestSpec};

/// The whole file.
#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct PlanData {
    #[serde(rename = "$schema")]
    _schema: String,
    #[serde(rename = "source")]
    _source: String,
    textbook: Vec<Entry>,
    pub change_minutes: ChangeMinutes,
    pub cools_minutes: f64,
    pub wrong_repair_minutes: f64,
    pub wrong_trial_minutes: f64,
    pub undecided_minutes: f64,
    pub unexplained_worth: f64,
    pub mend_tester_minutes: f64,
    pub look_again: LookAgain,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Entry {
    test: TestKind,
    of: Option<Place>,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
enum Place {
    Branch,
    Mount,
    MountHose,
    BranchHose,
    Tee,
    Inlet,
    Valve,
}

/// What looking again at a reading costs, min.
#[derive(Debug, Clone, Copy, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct LookAgain {
    /// At the last one, nothing taken down yet.
    pub at_once_minutes: f64,
    /// What is tested anew once a slip was found.
    pub astray_minutes: f64,
}

#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct ChangeMinutes {
    pub engine: f64,
    pub connector: f64,
    /// Gloves on, what burns covered.
    pub heat: f64,
}

/// The plan's data. The file is part of the program, and a test reads it.
pub(crate) fn data() -> &'static PlanData {
    static DATA: LazyLock<PlanData> =
        LazyLock::new(|| serde_json::from_str(include_str!("../../data/plan.json")).unwrap_or_default());
    &DATA
}

impl PlanData {
    /// The textbook's tests of a circuit, in their order.
    pub fn textbook(&self, circuit: &Circuit, specs: &[TestSpec]) -> Vec<TestId> {
        let mut order = Vec::new();
        for entry in &self.textbook {
            let fits = |id: &&TestId| {
                id.kind == entry.test && entry.of.is_none_or(|place| is_at(circuit, id, place))
            };
            order.extend(specs.iter().map(|s| &s.id).filter(fits).cloned());
        }
        order
    }
}

fn is_at(circuit: &Circuit, id: &TestId, place: Place) -> bool {
    let Some(part) = &id.part else { return false };
    let kind = circuit.component(part).map(|c| c.kind);
    let fed_by_valve = || {
        circuit
            .drives
            .iter()
            .any(|d| circuit.branch_of(&d.valve).contains(part))
    };
    let feeds_mount = || {
        circuit.downstream(part).any(|n| {
            circuit
                .component(n)
                .is_some_and(|c| c.kind == ComponentKind::Mount)
        })
    };
    match place {
        Place::Branch => kind.is_none() && part.as_str().starts_with("branch"),
        Place::Inlet => kind.is_none() && part.as_str().starts_with("inlet"),
        Place::Mount => kind == Some(ComponentKind::Mount),
        Place::MountHose => kind == Some(ComponentKind::Hose) && feeds_mount(),
        Place::BranchHose => kind == Some(ComponentKind::Hose) && fed_by_valve() && !feeds_mount(),
        Place::Tee => kind == Some(ComponentKind::Tee) && fed_by_valve(),
        Place::Valve => kind == Some(ComponentKind::Valve),
    }
}
