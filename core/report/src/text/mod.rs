//! Type: the embedded family, fonts for further scripts, shaping and measuring.

mod fonts;
mod kept;
mod scripts;
mod shape;
mod shelf;

pub(crate) use fonts::Ruler;
pub(crate) use shape::{FaceId, Shaped, Typesetter};

#[cfg(test)]
mod script_tests;
#[cfg(test)]
mod tests;
