//! What one reading says by itself.

mod result;
mod target;

pub use result::{FinerGauge, FitPoint, HoldResult, LeakRange, Outcome, Target, TestResult};
pub use target::hold_target;
