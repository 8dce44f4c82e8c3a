//! What every build step needs: where things are, how programs are run, and which steps may be skipped.

mod places;
mod program;
mod step;

pub use places::{Places, fresh};
pub use program::run_quietly;
pub use step::{Fingerprint, Step, files_under};
