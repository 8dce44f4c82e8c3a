//! What is known of each part: how likely it is the cause, and what its tests came to.

use std::collections::BTreeMap;

use holdfast_diagnose::{
    Answer, ComponentId, Finding, LookState, Outcome, Reading, TestId, TestKind, TestResult,
};
use holdfast_report::State;

use super::mark::state_of;

/// How likely each part is a cause: the causes that name it, added up.
pub(super) fn suspicion(finding: &Finding) -> BTreeMap<ComponentId, f64> {
    let mut shares = BTreeMap::new();
    for cause in &finding.causes {
        let mut named: Vec<&ComponentId> = cause.faults.iter().map(|fault| &fault.component).collect();
        named.dedup();
        for component in named {
            *shares.entry(component.clone()).or_insert(0.0) += cause.p;
        }
    }
    shares
}

/// What the tests done on each part alone came to, and what looked wrong; of several the worst, of one test the latest.
pub(super) fn part_states(done: &[(Reading, TestResult)]) -> BTreeMap<ComponentId, State> {
    let mut latest: BTreeMap<(ComponentId, &TestId), Outcome> = BTreeMap::new();
    for (reading, result) in done {
        if let Some(part) = tested_part(&reading.test) {
            latest.insert((part, &reading.test), result.outcome);
        }
    }
    let mut states: BTreeMap<ComponentId, State> = BTreeMap::new();
    let mut worst = |part: ComponentId, state: State| {
        let known = states.entry(part).or_insert(state);
        if weight(state) > weight(*known) {
            *known = state;
        }
    };
    for ((part, _), outcome) in latest {
        worst(part, state_of(outcome));
    }
    let looked = done.iter().rev().find_map(|(reading, _)| match &reading.answer {
        Answer::Look(seen) => Some(seen),
        _ => None,
    });
    for (part, state) in looked.into_iter().flatten() {
        if *state != LookState::Ok {
            worst(part.clone(), State::Leaks);
        }
    }
    states
}

/// How much a state says against a part.
fn weight(state: State) -> u8 {
    match state {
        State::NotDone => 0,
        State::CantDo => 1,
        State::Holds => 2,
        State::Undecided => 3,
        State::SlowLeak => 4,
        State::WontBuild => 5,
        State::Leaks => 6,
    }
}

/// The one part a test says something about.
fn tested_part(test: &TestId) -> Option<ComponentId> {
    match test.kind {
        TestKind::Hold => test
            .part
            .clone()
            .filter(|part| !matches!(part.as_str(), "branch" | "inlet")),
        TestKind::MountLook | TestKind::MountMove | TestKind::Flow | TestKind::Shake | TestKind::Wiggle => {
            test.part.clone()
        }
        TestKind::Fuse => Some("fuse".into()),
        TestKind::PowerWire => Some("power_wire".into()),
        TestKind::ControlWire => Some("control_wire".into()),
        TestKind::Coil => Some("coil".into()),
        TestKind::Source => Some("source".into()),
        TestKind::ValveOff | TestKind::ValveOn => Some("valve".into()),
        _ => None,
    }
}
