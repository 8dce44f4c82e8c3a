//! What a needle looks like: one tapered pointer, and its doubt as a fan that fades out.

use super::Point;

/// A filled shape of the needle, with how much it covers what is under it.
#[derive(Debug, Clone, PartialEq)]
pub struct NeedleShape {
    /// Its corners, scene units.
    pub points: Vec<Point>,
    /// 0–1.
    pub opacity: f32,
}

/// The shapes of a needle, in drawing order: the fuzzy edge in three steps, the pointer, the hub.
#[must_use]
pub fn needle_shapes(pivot: Point, length: f32, angle_deg: f32, doubt_deg: f32) -> Vec<NeedleShape> {
    let at = |radius: f32, degrees: f32| {
        let (sin, cos) = degrees.to_radians().sin_cos();
        Point {
            x: pivot.x + radius * cos,
            y: pivot.y + radius * sin,
        }
    };
    let mut shapes = Vec::with_capacity(5);
    if doubt_deg > 0.0 {
        for (share, opacity) in [(1.0, 0.12), (0.66, 0.16), (0.33, 0.22)] {
            let half = doubt_deg * share;
            let mut points = vec![pivot];
            points.extend((-4_i8..=4).map(|i| at(length * 0.97, angle_deg + half * f32::from(i) / 4.0)));
            shapes.push(NeedleShape { points, opacity });
        }
    }
    let half = length * 0.022;
    let side = |radius: f32, across: f32| {
        let along = at(radius, angle_deg);
        let (sin, cos) = angle_deg.to_radians().sin_cos();
        Point {
            x: along.x - across * sin,
            y: along.y + across * cos,
        }
    };
    shapes.push(NeedleShape {
        points: vec![
            side(-length * 0.16, half * 1.6),
            side(-length * 0.16, -half * 1.6),
            side(length * 0.98, -half * 0.35),
            at(length, angle_deg),
            side(length * 0.98, half * 0.35),
        ],
        opacity: 1.0,
    });
    let hub = (0_u8..24)
        .map(|i| at(length * 0.075, f32::from(i) * 15.0))
        .collect();
    shapes.push(NeedleShape {
        points: hub,
        opacity: 1.0,
    });
    shapes
}
