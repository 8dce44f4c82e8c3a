//! When a test of the textbook's order can no longer change anything: none of the parts it is about is still suspected.

use std::collections::BTreeSet;

use holdfast_diagnose::{Circuit, ComponentId, Finding, Side, TestId, TestKind};

/// All causes that a test could speak for or against are together less likely than this.
const IDLE_BELOW: f64 = 0.005;

/// Whether a test has nothing left to say.
pub fn is_idle(circuit: &Circuit, finding: &Finding, test: &TestId) -> bool {
    let about = about(circuit, test);
    if about.is_empty() {
        return false;
    }
    let suspected: f64 = finding
        .causes
        .iter()
        .filter(|c| c.faults.iter().any(|f| about.contains(&f.component)))
        .map(|c| c.p)
        .sum();
    suspected < IDLE_BELOW
}

/// The parts whose faults a test shows; empty: it may show anything.
fn about(circuit: &Circuit, test: &TestId) -> BTreeSet<ComponentId> {
    if let Some(scope) = circuit.scope(test) {
        return scope.parts.into_iter().collect();
    }
    let drive = test
        .part
        .as_ref()
        .and_then(|p| circuit.drive(Some(p)))
        .or(circuit.drives.first());
    let Some(drive) = drive else {
        return BTreeSet::new();
    };
    let of = |ids: &[&ComponentId]| ids.iter().map(|id| (*id).clone()).collect();
    match test.kind {
        TestKind::SupplyVolts | TestKind::Fuse => circuit
            .components
            .iter()
            .filter(|c| c.kind.side() == Side::Electric)
            .map(|c| c.id.clone())
            .collect(),
        TestKind::PowerWire => of(&[&drive.power_wire, &drive.connector]),
        TestKind::ValveVolts => drive.parts().into_iter().cloned().collect(),
        TestKind::ControlWire => of(&[&drive.control_wire, &drive.connector, &drive.module]),
        TestKind::Coil => of(&[&drive.coil]),
        TestKind::Source => circuit
            .inlet_of(&drive.valve)
            .unwrap_or_default()
            .into_iter()
            .chain(circuit.upstream(&drive.valve).cloned())
            .chain(
                circuit
                    .components
                    .iter()
                    .filter(|c| upstream_kind(c.kind))
                    .map(|c| c.id.clone()),
            )
            .collect(),
        _ => BTreeSet::new(),
    }
}

fn upstream_kind(kind: holdfast_diagnose::ComponentKind) -> bool {
    use holdfast_diagnose::ComponentKind::{CheckValve, Source};
    matches!(kind, Source | CheckValve)
}
