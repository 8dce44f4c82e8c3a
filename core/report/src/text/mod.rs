//! Type: the embedded family, shaping and measuring.

mod fonts;
mod shape;

pub(crate) use fonts::Face;
pub(crate) use shape::{Shaped, Typesetter};
