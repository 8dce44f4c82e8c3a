//! Scenes to pixels, and what every renderer has in common.

mod canvas;
mod png;

pub(crate) use canvas::{Canvas, Outline, Path, Tint, draw};
pub use png::{RenderError, render_png};
