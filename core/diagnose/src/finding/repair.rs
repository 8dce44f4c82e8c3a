//! What puts a part right, and the test that shows whether it did.

use super::Finding;
use crate::faults::Fix;
use crate::inference::Model;
use crate::{Catalogue, Circuit, ComponentId, FaultId, Reading, Situation, TestId, TestKind, TestResult};

/// What puts a fault right. `None`: a cause outside the circuit, or no fault of this circuit.
pub fn fix_for(circuit: &Circuit, fault: &FaultId) -> Option<Fix> {
    let situation = Situation::default();
    let model = Model::new(circuit, &situation);
    model.faults.iter().find(|f| &f.id == fault)?.fix
}

/// The test that shows whether a repair of `part` has worked: of the kind that shows the part's likeliest fault, on the
/// part itself, else one that was done before, else any.
///
/// A part that no test is about is tried by the complaint.
pub fn retest_for(
    circuit: &Circuit,
    finding: &Finding,
    readings: &[(Reading, TestResult)],
    part: &ComponentId,
) -> TestId {
    retest(circuit, finding, readings, part).unwrap_or_else(|| TestId::of(TestKind::Complaint))
}

fn retest(
    circuit: &Circuit,
    finding: &Finding,
    readings: &[(Reading, TestResult)],
    part: &ComponentId,
) -> Option<TestId> {
    let situation = Situation::default();
    let model = Model::new(circuit, &situation);
    let likeliest = finding
        .causes
        .iter()
        .flat_map(|cause| &cause.faults)
        .find(|fault| &fault.component == part)?;
    let kind = model.faults.iter().find(|f| &f.id == likeliest)?.retest?;
    let offered = Catalogue::standard().all_for(circuit);
    let of_kind = || offered.iter().map(|s| &s.id).filter(|id| id.kind == kind);
    let was_done = |id: &&TestId| readings.iter().any(|(r, _)| !r.after_repair && &r.test == *id);
    let own = of_kind().find(|id| id.part.as_ref() == Some(part));
    own.or_else(|| of_kind().find(was_done))
        .or_else(|| of_kind().next())
        .cloned()
}
