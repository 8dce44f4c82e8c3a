//! What every renderer must agree on: the steps of an arc and the lengths of a broken line.

use super::{Dash, Point, Stroke};

/// Corners along an arc, close enough that the eye sees a curve: one for at most four degrees.
pub(crate) fn arc_points(centre: Point, radius: f32, start_deg: f32, sweep_deg: f32) -> Vec<Point> {
    let steps = (sweep_deg.abs() / 4.0).ceil().clamp(1.0, 180.0) as u16;
    (0..=steps)
        .map(|i| {
            let angle = (start_deg + sweep_deg * f32::from(i) / f32::from(steps)).to_radians();
            Point {
                x: centre.x + radius * angle.cos(),
                y: centre.y + radius * angle.sin(),
            }
        })
        .collect()
}

/// Lengths of ink and gap of a broken line, scene units; `None` for a whole one. Dots need round ends.
#[must_use]
pub fn dash_lengths(stroke: Stroke) -> Option<Vec<f32>> {
    match stroke.dash {
        Dash::Solid => None,
        Dash::Dashed => Some(vec![stroke.width * 3.5, stroke.width * 2.5]),
        Dash::Dotted => Some(vec![0.01, stroke.width * 2.0]),
    }
}
