//! What was typed for a circuit's figures: kept beside them, and given back as it was typed.

use holdfast_diagnose::Circuit;
use holdfast_joblog::Typed as TypedRecord;

use crate::companion::Companion;
use crate::compose::figure_key;
use crate::flow::circuit_change::{fields, shared_fields};
use crate::flow::numbers::{Logged, NumberField};
use crate::job::JobView;
use crate::protocol::FieldId;
use crate::typed::Typed;

/// What stands in the log for a figure of the circuit.
pub(super) fn logged<'a>(job: &'a JobView, field: &FieldId, stands: f64) -> Logged<'a> {
    let records = job.log.circuit.as_ref().map_or(&[][..], |stated| &stated.typed);
    Logged::with(Some(stands), records, &figure_key(field).unwrap_or_default())
}

/// What was typed: now, else before where the figure is still that one. `changed` is the circuit with what was typed.
pub(super) fn records(core: &Companion, job: &JobView, changed: &Circuit, typed: &Typed) -> Vec<TypedRecord> {
    let before = job.log.circuit.as_ref().map_or(&[][..], |stated| &stated.typed);
    let figures = fields(changed).into_iter().chain(shared_fields(changed));
    let record = |(field, stands): (NumberField, f64)| {
        let key = figure_key(&field.id)?;
        let before = || before.iter().find(|record| record.key == key).cloned();
        let record = field.record(core, typed, &key).or_else(before)?;
        field.says(core, &record, stands).then_some(record)
    };
    figures.filter_map(record).collect()
}
