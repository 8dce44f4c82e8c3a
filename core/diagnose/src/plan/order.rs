//! The textbook's order, and the minutes of getting the car ready. Data: `data/plan.json`.

use std::sync::LazyLock;

use serde::Deserialize;

use crate::{Circuit, ComponentKind, EngineNeed, Needs, TestId, TestKind, TestSpec};

/// The whole file.
#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct PlanData {
    #[serde(rename = "$schema")]
    _schema: String,
    #[serde(rename = "source")]
    _source: String,
    textbook: Vec<Entry>,
    change_minutes: ChangeMinutes,
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

#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
struct ChangeMinutes {
    engine: f64,
    connector: f64,
}

/// The plan's data. The file is part of the program, and a test reads it.
pub(super) fn data() -> &'static PlanData {
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

    /// Minutes to get the car from one state into another; what a test doesn't care about stays as it is.
    pub fn change(&self, from: Needs, to: Needs) -> f64 {
        let running = |engine| match engine {
            EngineNeed::Any => None,
            EngineNeed::Off | EngineNeed::KeyOn => Some(false),
            EngineNeed::Idle | EngineNeed::InGear => Some(true),
        };
        let engine = match (running(from.engine), running(to.engine)) {
            (_, None) => false,
            (before, Some(after)) => before.unwrap_or(false) != after,
        };
        let connector = to
            .connected
            .is_some_and(|after| from.connected.unwrap_or(true) != after);
        let minutes = |change, minutes| if change { minutes } else { 0.0 };
        minutes(engine, self.change_minutes.engine) + minutes(connector, self.change_minutes.connector)
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
