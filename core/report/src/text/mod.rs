//! Type: the embedded family, shaping and measuring.

mod fonts;
mod shape;

pub(crate) use fonts::{Face, Ruler};
pub(crate) use shape::Typesetter;

#[cfg(test)]
mod tests;
