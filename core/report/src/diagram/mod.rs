//! The drawings of the job, each from a plain input to a [`crate::Scene`].
//!
//! Every word arrives decided and in the person's language; nothing here joins sentences or formats quantities.

pub(crate) mod axes;
pub(crate) mod band;
pub(crate) mod circuit;
pub(crate) mod connector;
pub(crate) mod gauge;
pub(crate) mod hold_chart;
pub(crate) mod label;
pub(crate) mod photo;
pub(crate) mod scale;
pub(crate) mod signature;
pub(crate) mod sketch;
pub(crate) mod spectrum;
pub(crate) mod state;
