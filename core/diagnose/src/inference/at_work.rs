//! What the tests with the engine running, and the complaint, say of everything that a circuit can do.

use std::cell::RefCell;

use super::atlas::Atlas;
use super::model::Model;
use super::observation::{Observation, Seen};

/// Likelihood of one reading at work under each behaviour.
pub(super) fn of_work(model: &Model<'_>, atlas: &Atlas, seen: &Observation) -> Vec<f64> {
    let Seen::Fields(values) = &seen.seen else {
        return vec![1.0; atlas.behaviours.len()];
    };
    let likelihood = |behaviour| model.values_likelihood(seen, values, &model.work_fields(seen, behaviour));
    atlas.behaviours.iter().map(likelihood).collect()
}

/// Likelihood of one reading that also depends on what is felt of the faults themselves and on what vacuum does to the
/// mounts; worked out where it is asked for.
pub(super) struct ToldRow {
    seen: Observation,
    /// By what is told, then behaviour: where vacuum stiffens and where it softens the mounts.
    known: RefCell<Vec<Vec<[f64; 2]>>>,
}

impl ToldRow {
    pub fn new(atlas: &Atlas, seen: &Observation) -> Self {
        Self {
            seen: seen.clone(),
            known: RefCell::new(vec![Vec::new(); atlas.tolds.len()]),
        }
    }

    /// Whether this is the row of a reading.
    pub fn is_of(&self, seen: &Observation) -> bool {
        self.seen == *seen
    }

    pub fn at(&self, model: &Model<'_>, atlas: &Atlas, told: usize, behaviour: u32) -> [f64; 2] {
        let mut known = self.known.borrow_mut();
        let Some(row) = known.get_mut(told) else {
            return [1.0; 2];
        };
        if row.is_empty() {
            row.resize(atlas.behaviours.len(), [f64::NAN; 2]);
        }
        let Some(entry) = row.get_mut(behaviour as usize) else {
            return [1.0; 2];
        };
        if entry[0].is_nan() {
            *entry = [false, true].map(|softens| self.likelihood(model, atlas, told, behaviour, softens));
        }
        *entry
    }

    fn likelihood(
        &self,
        model: &Model<'_>,
        atlas: &Atlas,
        told: usize,
        behaviour: u32,
        softens: bool,
    ) -> f64 {
        let (behaviour, told) = (&atlas.behaviours[behaviour as usize], &atlas.tolds[told]);
        match &self.seen.seen {
            Seen::Fields(values) => {
                let fields = model.told_fields(&self.seen, behaviour, told, softens);
                model.values_likelihood(&self.seen, values, &fields)
            }
            _ => model.complaints(behaviour, told, softens),
        }
    }
}
