//! How well each cause fits what was read: physics of a circuit with faults, expected readings, likelihoods, and the
//! ranking that follows (Bayes' theorem over every cause, enumerated).

mod air;
mod bayes;
mod causes;
mod complaint;
mod condition;
mod electric;
mod expect;
mod hold;
mod layout;
mod model;
mod observation;
mod posterior;
mod predict;
mod signs;
mod vacuum;

pub(crate) use bayes::{entropy, information, log_sum};
pub(crate) use hold::HoldSeen;
pub(crate) use model::{Case, Model};
pub(crate) use observation::{Observation, Seen};
pub(crate) use posterior::{Evaluated, Posterior, Way, rank};
pub(crate) use predict::{depends_at_rest, is_by_hand};

#[cfg(test)]
mod tests;
