//! Bundles: jobs, their photos and what is known of vehicle kinds, in one file that travels between phones.
//!
//! The format is described in `docs/bundle.md` and `docs/bundle.schema.json`. A bundle is read from its start to its
//! end, twice: once to see that all of it is sound, once to take it in. Nothing is held in memory but one entry or
//! one piece of a picture at a time, and the zip's own directory is not used.

mod error;
mod export;
mod form;
mod import;
mod measured;
mod read;

pub use error::BundleError;
pub use export::{Exporter, Selection};
pub use import::{Importer, Received};

/// The format this software writes, and the newest it reads.
pub(crate) const VERSION: u32 = 1;

#[cfg(test)]
mod tests;
