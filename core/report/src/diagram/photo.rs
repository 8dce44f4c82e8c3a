//! A photo with its marks: vectors over the picture, editable later.

use crate::diagram::sketch::{Sketch, at, solid};
use crate::diagram::state::Lead;
use crate::scene::{Anchor, Item, Point, Role, Scene, Weight};

/// A photo and its marks.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct PhotoScene {
    /// Alternative text.
    pub alt: String,
    /// Path of an upright JPEG or PNG.
    pub path: String,
    /// Width in pixels, above zero.
    pub width_px: u32,
    /// Height in pixels, above zero.
    pub height_px: u32,
    /// Marks, drawn in order.
    pub marks: Vec<PhotoMark>,
}

/// A place on the photo as shares of its width and height, 0 to 1, from the upper left.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Spot {
    /// Share of the width.
    pub x: f64,
    /// Share of the height.
    pub y: f64,
}

/// A mark on the photo.
#[derive(Debug, Clone, PartialEq)]
pub enum PhotoMark {
    /// A ring round something.
    Ring {
        /// Centre.
        centre: Spot,
        /// Radius as a share of the photo's width.
        radius: f64,
    },
    /// An arrow that points at something.
    Arrow {
        /// Tail.
        from: Spot,
        /// Tip.
        to: Spot,
    },
    /// A numbered pin whose tip is at the place.
    Pin {
        /// Tip.
        at: Spot,
        /// One to three characters.
        number: String,
    },
    /// A test point.
    TestPoint {
        /// Where the tool goes.
        at: Spot,
        /// The lead that goes there; `None` for hand pump, gauge or cap.
        lead: Option<Lead>,
        /// What goes there, in words.
        words: String,
    },
    /// A short text.
    Text {
        /// Left end of its baseline.
        at: Spot,
        /// The words.
        text: String,
    },
}

/// Draws the photo 360 units wide, its height in proportion.
#[must_use]
pub fn photo(scene: &PhotoScene) -> Scene {
    let width = 360.0;
    #[expect(clippy::cast_possible_truncation, reason = "a size to draw")]
    let height = (width * f64::from(scene.height_px.max(1)) / f64::from(scene.width_px.max(1))) as f32;
    #[expect(clippy::cast_possible_truncation, reason = "a place to draw")]
    let place = |s: &Spot| -> Point { at(360.0 * s.x as f32, height * s.y as f32) };
    let mut sketch = Sketch::new();
    sketch.push(Item::Image {
        path: scene.path.clone(),
        at: at(0.0, 0.0),
        width: 360.0,
        height,
    });
    for mark in &scene.marks {
        match mark {
            #[expect(clippy::cast_possible_truncation, reason = "a size to draw")]
            PhotoMark::Ring { centre, radius } => {
                sketch.circle(
                    place(centre),
                    360.0 * *radius as f32,
                    Some(solid(4.0, Role::Needle)),
                    None,
                );
            }
            PhotoMark::Arrow { from, to } => sketch.line(&[place(from), place(to)], solid(4.0, Role::Needle)),
            PhotoMark::Pin { at, number } => {
                sketch.circle(place(at), 14.0, None, Some(Role::Needle));
                sketch.text(
                    place(at),
                    Anchor::Middle,
                    16.0,
                    Weight::Bold,
                    Role::OnNeedle,
                    number,
                );
            }
            PhotoMark::TestPoint { at, lead, words } => {
                let role = lead.map_or(Role::Needle, Lead::role);
                sketch.circle(place(at), 10.0, Some(solid(4.0, role)), None);
                sketch.text(place(at), Anchor::Start, 14.0, Weight::Bold, Role::Ink, words);
            }
            PhotoMark::Text { at, text } => {
                sketch.text(place(at), Anchor::Start, 16.0, Weight::Bold, Role::Ink, text);
            }
        }
    }
    sketch.finish(360.0, height, &scene.alt)
}
