//! What was worked out for one circuit in one situation, kept from reading to reading.

use std::sync::Arc;

use super::at_rest::HoldMemory;
use super::at_work::{ToldRow, of_work};
use super::atlas::Atlas;
use super::by_hand::SignRow;
use super::model::Model;
use super::observation::Observation;
use super::posterior::Posterior;
use super::predict::{Depends, depends, has_signs};

/// What was worked out for one circuit in one situation. It belongs to one model: another circuit needs another memory.
#[derive(Default)]
pub(crate) struct Memory {
    atlas: Option<Atlas>,
    pub(super) holds: HoldMemory,
    signs: Vec<SignRow>,
    meters: Vec<(Observation, Vec<f64>)>,
    works: Vec<(Observation, Vec<f64>)>,
    tolds: Vec<ToldRow>,
    /// What was ranked last, and by what.
    pub(super) ranked: Option<(Vec<Observation>, Arc<Posterior>)>,
}

/// What was seen, by what it depends on.
pub(super) struct Seen<'m> {
    pub atlas: &'m Atlas,
    pub signs: Vec<&'m SignRow>,
    /// ln likelihoods, by electric case.
    pub meters: Vec<&'m [f64]>,
    /// Likelihoods, by behaviour.
    pub works: Vec<&'m [f64]>,
    pub tolds: Vec<&'m ToldRow>,
}

impl Memory {
    /// Works out what is new in what was seen.
    pub(crate) fn learn(&mut self, model: &Model<'_>, seen: &[Observation]) {
        let atlas = self.atlas.get_or_insert_with(|| Atlas::new(model));
        self.holds.learn(seen);
        for o in seen.iter().filter(|o| has_signs(o)) {
            if self.signs.iter().all(|s| s.seen != *o) {
                self.signs.push(SignRow::new(model, o));
            }
        }
        for o in seen {
            match depends(&o.seen, &o.test) {
                Depends::Rest | Depends::Signs => {}
                Depends::Electric => {
                    if self.meters.iter().all(|(m, _)| m != o) {
                        self.meters.push((o.clone(), atlas.electrics.row(model, o)));
                    }
                }
                Depends::Work => {
                    if self.works.iter().all(|(w, _)| w != o) {
                        self.works.push((o.clone(), of_work(model, atlas, o)));
                    }
                }
                Depends::Told => {
                    if !self.tolds.iter().any(|t| t.is_of(o)) {
                        self.tolds.push(ToldRow::new(atlas, o));
                    }
                }
            }
        }
    }

    /// What is known of what was seen; all of it must be learned.
    pub(super) fn recall(&self, seen: &[Observation]) -> Option<Seen<'_>> {
        let mut recalled = Seen {
            atlas: self.atlas.as_ref()?,
            signs: Vec::new(),
            meters: Vec::new(),
            works: Vec::new(),
            tolds: Vec::new(),
        };
        let rows =
            |of: &'_ [(Observation, Vec<f64>)], o: &Observation| of.iter().position(|(seen, _)| seen == o);
        for o in seen.iter().filter(|o| has_signs(o)) {
            recalled.signs.push(self.signs.iter().find(|s| s.seen == *o)?);
        }
        for o in seen {
            match depends(&o.seen, &o.test) {
                Depends::Rest | Depends::Signs => {}
                Depends::Electric => recalled.meters.push(&self.meters[rows(&self.meters, o)?].1),
                Depends::Work => recalled.works.push(&self.works[rows(&self.works, o)?].1),
                Depends::Told => recalled.tolds.push(self.tolds.iter().find(|t| t.is_of(o))?),
            }
        }
        Some(recalled)
    }
}
