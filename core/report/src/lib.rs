//! Scenes (one display list), diagrams and charts, PNG and PDF.
mod scene;

pub use scene::{Anchor, Dash, Ends, Item, Point, Role, Scene, Stroke, Weight};
