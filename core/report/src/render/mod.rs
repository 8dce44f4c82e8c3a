//! Scenes to pixels.

mod png;

pub use png::{RenderError, render_png};
