//! Scenes placed on a page.

use crate::scene::{Item, Point, Scene, Stroke};

/// A scene's items, scaled and moved; places to touch are left out, they mean nothing on paper.
pub(crate) fn items(scene: &Scene, offset: Point, scale: f32) -> Vec<Item> {
    scene
        .items
        .iter()
        .filter(|i| !matches!(i, Item::Region { .. }))
        .map(|i| placed(i, offset, scale))
        .collect()
}

/// An item scaled by `scale` and then moved by `offset`.
pub(crate) fn placed(item: &Item, offset: Point, scale: f32) -> Item {
    let point = |p: &Point| Point {
        x: offset.x + p.x * scale,
        y: offset.y + p.y * scale,
    };
    let line = |s: &Stroke| Stroke {
        width: s.width * scale,
        ..*s
    };
    match item {
        Item::Path {
            points,
            ends,
            stroke,
            fill,
        } => Item::Path {
            points: points.iter().map(point).collect(),
            ends: *ends,
            stroke: stroke.as_ref().map(line),
            fill: *fill,
        },
        Item::Circle {
            centre,
            radius,
            stroke,
            fill,
        } => Item::Circle {
            centre: point(centre),
            radius: radius * scale,
            stroke: stroke.as_ref().map(line),
            fill: *fill,
        },
        Item::Arc {
            centre,
            radius,
            start_deg,
            sweep_deg,
            stroke,
        } => Item::Arc {
            centre: point(centre),
            radius: radius * scale,
            start_deg: *start_deg,
            sweep_deg: *sweep_deg,
            stroke: line(stroke),
        },
        Item::Text {
            at,
            anchor,
            size,
            weight,
            role,
            text,
        } => Item::Text {
            at: point(at),
            anchor: *anchor,
            size: size * scale,
            weight: *weight,
            role: *role,
            text: text.clone(),
        },
        Item::Image {
            path,
            at,
            width,
            height,
        } => Item::Image {
            path: path.clone(),
            at: point(at),
            width: width * scale,
            height: height * scale,
        },
        Item::Needle {
            pivot,
            length,
            angle_deg,
            doubt_deg,
            role,
        } => Item::Needle {
            pivot: point(pivot),
            length: length * scale,
            angle_deg: *angle_deg,
            doubt_deg: *doubt_deg,
            role: *role,
        },
        Item::Region {
            id,
            at,
            width,
            height,
            label,
        } => Item::Region {
            id: id.clone(),
            at: point(at),
            width: width * scale,
            height: height * scale,
            label: label.clone(),
        },
    }
}
