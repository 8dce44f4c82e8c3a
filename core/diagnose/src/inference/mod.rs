//! How well each cause fits what was read: physics of a circuit with faults, expected readings, likelihoods, and the
//! ranking that follows (Bayes' theorem over every cause, enumerated).

mod air;
mod at_rest;
mod at_work;
mod atlas;
mod bayes;
mod by_gauge;
mod by_hand;
mod by_meter;
mod by_touch;
mod causes;
mod complaint;
mod condition;
mod electric;
mod expect;
mod hold;
mod hypotheses;
mod layout;
mod learning;
mod memory;
mod model;
mod observation;
mod posterior;
mod predict;
mod signs;
mod sizes;
mod vacuum;

pub(crate) use bayes::normalised;
pub(crate) use condition::Setting;
pub(crate) use expect::{Expect, Value as Seeable};
pub(crate) use hold::HoldSeen;
pub(crate) use memory::Memory;
pub(crate) use model::{Case, Model, World};
pub(crate) use observation::{Observation, Seen};
pub(crate) use posterior::{Evaluated, Posterior, Sizes, Way, rank, weigh, weigh_unless};
pub(crate) use predict::{Depends, depends, is_by_hand};

#[cfg(test)]
mod readings_tests;
#[cfg(test)]
mod tests;
