//! How well each cause fits what was read: physics of a circuit with faults, expected readings, likelihoods, and the
//! ranking that follows (Bayes' theorem over every cause, enumerated).

mod air;
mod causes;
mod condition;
mod electric;
mod expect;
mod hold;
mod layout;
mod model;
mod observation;
mod posterior;
mod predict;
mod vacuum;

pub(crate) use hold::HoldSeen;
pub(crate) use model::{Case, Model};
pub(crate) use observation::{Observation, Seen};
pub(crate) use posterior::{Evaluated, Posterior, log_sum, rank};
pub(crate) use predict::depends_at_rest;

#[cfg(test)]
mod tests;
