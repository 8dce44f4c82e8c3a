//! Pages for languages that run from right to left: laid out as for the others, then turned about their middle.
//!
//! What has a way of its own (a drawing, a photo, a column of numbers) is turned beforehand within its own box, so that
//! it comes out as it was, at the mirrored place. Letters are never turned, only their anchors.

use crate::scene::{Anchor, Item, Point};

/// Items turned about the middle of a box that begins at `left` and is so wide.
pub(super) fn turned(items: Vec<Item>, left: f32, width: f32) -> Vec<Item> {
    let axis = 2.0 * left + width;
    items.into_iter().map(|item| turn(item, axis)).collect()
}

/// An item turned about the upright line at half of `axis`.
pub(super) fn turn(item: Item, axis: f32) -> Item {
    let across = |point: Point| Point {
        x: axis - point.x,
        ..point
    };
    // A box is known by its left corner, which was its right one.
    let corner = |at: Point, width: f32| Point {
        x: axis - at.x - width,
        ..at
    };
    match item {
        Item::Path {
            points,
            ends,
            stroke,
            fill,
        } => Item::Path {
            points: points.into_iter().map(across).collect(),
            ends,
            stroke,
            fill,
        },
        Item::Circle {
            centre,
            radius,
            stroke,
            fill,
        } => Item::Circle {
            centre: across(centre),
            radius,
            stroke,
            fill,
        },
        Item::Arc {
            centre,
            radius,
            start_deg,
            sweep_deg,
            stroke,
        } => Item::Arc {
            centre: across(centre),
            radius,
            start_deg: 180.0 - start_deg - sweep_deg,
            sweep_deg,
            stroke,
        },
        Item::Text {
            at,
            anchor,
            size,
            weight,
            role,
            text,
        } => Item::Text {
            at: across(at),
            anchor: match anchor {
                Anchor::Start => Anchor::End,
                Anchor::Middle => Anchor::Middle,
                Anchor::End => Anchor::Start,
            },
            size,
            weight,
            role,
            text,
        },
        Item::Image {
            path,
            at,
            width,
            height,
        } => Item::Image {
            path,
            at: corner(at, width),
            width,
            height,
        },
        Item::Needle {
            pivot,
            length,
            angle_deg,
            doubt_deg,
            role,
        } => Item::Needle {
            pivot: across(pivot),
            length,
            angle_deg: 180.0 - angle_deg,
            doubt_deg,
            role,
        },
        Item::Region {
            id,
            at,
            width,
            height,
            label,
        } => Item::Region {
            id,
            at: corner(at, width),
            width,
            height,
            label,
        },
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::diagram::gauge::{Dial, gauge};

    #[test]
    fn turned_twice_everything_is_as_it_was() {
        let scene = gauge(&Dial::default());
        assert!(scene.items.iter().any(|item| matches!(item, Item::Needle { .. })));
        let there = turned(scene.items.clone(), 7.0, scene.width);
        assert_ne!(there, scene.items);
        let back = turned(there, 7.0, scene.width);
        for (back, before) in back.iter().zip(&scene.items) {
            if let (Item::Text { at, .. }, Item::Text { at: was, .. }) = (back, before) {
                assert!((at.x - was.x).abs() < 1e-3, "{back:?}");
            }
        }
    }
}
