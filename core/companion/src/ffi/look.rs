//! How things look and feel, for shells that draw scenes themselves: the report crate's table of colours, its broken lines
//! and its needle.

use crate::Buzz;
use holdfast_report::theme::{self, Theme};
use holdfast_report::{NeedleShape, Point, Role, Stroke};

#[uniffi::remote(Enum)]
pub enum Theme {
    Day,
    Night,
}

#[uniffi::remote(Record)]
pub struct NeedleShape {
    pub points: Vec<Point>,
    pub opacity: f32,
}

/// The colour of a role, 0xRRGGBB in sRGB.
#[uniffi::export]
pub fn colour(role: Role, theme: Theme) -> u32 {
    let [red, green, blue] = theme::colour(role, theme);
    u32::from_be_bytes([0, red, green, blue])
}

/// The shapes of a needle, in drawing order; lengths in scene units, angles in degrees as in the scene.
#[uniffi::export]
pub fn needle_shapes(pivot: Point, length: f32, angle_deg: f32, doubt_deg: f32) -> Vec<NeedleShape> {
    holdfast_report::needle_shapes(pivot, length, angle_deg, doubt_deg)
}

/// Lengths of ink and gap of a broken line, scene units; none for a whole one. Dots need round ends.
#[uniffi::export]
pub fn dash_lengths(stroke: Stroke) -> Option<Vec<f32>> {
    holdfast_report::dash_lengths(stroke)
}

/// How a pattern feels: milliseconds of shaking and of rest by turns, beginning with shaking.
#[uniffi::export]
pub fn buzz_times(pattern: Buzz) -> Vec<u32> {
    pattern.times_ms().to_vec()
}
