//! Items put in another place: larger or smaller, moved, turned from left to right.

use super::{Anchor, Item, Point, Stroke};

/// Where items go. A place (x, y) comes to lie at (`x` ± `scale` · x, `y` + `scale` · y).
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Placement {
    offset: Point,
    scale: f32,
    /// Turned about an upright line. Letters are never turned, only their anchors.
    turned: bool,
}

impl Placement {
    /// Moved, as large as before.
    pub(crate) fn moved(offset: Point) -> Self {
        Self::scaled(1.0, offset)
    }

    /// Scaled, then moved.
    pub(crate) fn scaled(scale: f32, offset: Point) -> Self {
        Self {
            offset,
            scale,
            turned: false,
        }
    }

    /// Turned within a box that begins at `left` and is so wide.
    pub(crate) fn turned_in(left: f32, width: f32) -> Self {
        Self {
            offset: Point {
                x: 2.0 * left + width,
                y: 0.0,
            },
            scale: 1.0,
            turned: true,
        }
    }

    /// The item in its new place.
    pub(crate) fn of(self, item: &Item) -> Item {
        let mut item = item.clone();
        self.place(&mut item);
        item
    }

    /// Puts an item in its new place.
    pub(crate) fn place(self, item: &mut Item) {
        match item {
            Item::Path { points, stroke, .. } => {
                points.iter_mut().for_each(|point| self.point(point));
                self.line(stroke.as_mut());
            }
            Item::Circle {
                centre,
                radius,
                stroke,
                ..
            } => {
                self.point(centre);
                *radius *= self.scale;
                self.line(stroke.as_mut());
            }
            Item::Arc {
                centre,
                radius,
                start_deg,
                sweep_deg,
                stroke,
            } => {
                self.point(centre);
                *radius *= self.scale;
                if self.turned {
                    *start_deg = 180.0 - *start_deg - *sweep_deg;
                }
                self.line(Some(stroke));
            }
            Item::Text { at, anchor, size, .. } => {
                self.point(at);
                *size *= self.scale;
                if self.turned {
                    *anchor = match anchor {
                        Anchor::Start => Anchor::End,
                        Anchor::Middle => Anchor::Middle,
                        Anchor::End => Anchor::Start,
                    };
                }
            }
            Item::Image {
                at, width, height, ..
            }
            | Item::Region {
                at, width, height, ..
            } => {
                self.point(at);
                *width *= self.scale;
                *height *= self.scale;
                if self.turned {
                    // A box is known by its left corner, which was its right one.
                    at.x -= *width;
                }
            }
            Item::Needle {
                pivot,
                length,
                angle_deg,
                ..
            } => {
                self.point(pivot);
                *length *= self.scale;
                if self.turned {
                    *angle_deg = 180.0 - *angle_deg;
                }
            }
        }
    }

    fn point(self, point: &mut Point) {
        let along = if self.turned { -self.scale } else { self.scale };
        point.x = self.offset.x + point.x * along;
        point.y = self.offset.y + point.y * self.scale;
    }

    fn line(self, stroke: Option<&mut Stroke>) {
        if let Some(stroke) = stroke {
            stroke.width *= self.scale;
        }
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
        let turn = Placement::turned_in(7.0, scene.width);
        for item in &scene.items {
            let there = turn.of(item);
            let back = turn.of(&there);
            if let (Item::Text { at, .. }, Item::Text { at: was, .. }) = (&back, item) {
                assert!((at.x - was.x).abs() < 1e-3, "{back:?}");
            }
            if let (Item::Needle { angle_deg, .. }, Item::Needle { angle_deg: was, .. }) = (&back, item) {
                assert!((angle_deg - was).abs() < 1e-3, "{back:?}");
            }
        }
    }

    #[test]
    fn scaled_and_moved_a_box_keeps_its_corner_and_turned_it_changes_to_the_other() {
        let item = Item::Image {
            path: String::new(),
            at: Point { x: 10.0, y: 20.0 },
            width: 30.0,
            height: 40.0,
        };
        let corner = |item: Item| match item {
            Item::Image {
                at, width, height, ..
            } => [at.x, at.y, width, height],
            _ => [0.0; 4],
        };
        let scaled = Placement::scaled(2.0, Point { x: 5.0, y: 6.0 }).of(&item);
        assert_eq!(corner(scaled), [25.0, 46.0, 60.0, 80.0]);
        let turned = Placement::turned_in(0.0, 100.0).of(&item);
        assert_eq!(corner(turned), [60.0, 20.0, 30.0, 40.0]);
    }
}
