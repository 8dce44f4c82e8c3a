//! The foreign-function face: one handle with a lock, the errors a person can act on, and the restated
//! scene types and looks of the report crate. Each exported method is one line of delegation.

mod error;
mod handle;
mod look;
mod scene;
