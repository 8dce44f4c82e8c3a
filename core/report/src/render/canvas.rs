//! What an item is made of: outlines, set lines, pictures. Every renderer knows these and nothing more.

use crate::scene::{Anchor, Ends, Item, Point, Role, Stroke, arc_points, needle_shapes};
use crate::text::{Shaped, Typesetter};

/// What items are drawn on.
pub(crate) trait Canvas {
    /// Why something could not be drawn.
    type Error;

    /// The type that texts are set in.
    fn type_(&mut self) -> &mut Typesetter;

    /// Fills an outline, then draws its line.
    fn outline(&mut self, outline: &Outline<'_>, stroke: Option<Stroke>, fill: Option<Tint>);

    /// Draws a set line whose baseline begins at a place.
    fn line(&mut self, line: &Shaped, start: Point, size: f32, role: Role) -> Result<(), Self::Error>;

    /// Draws a picture file into a box.
    fn picture(&mut self, path: &str, corner: Point, width: f32, height: f32) -> Result<(), Self::Error>;
}

/// What is drawn along or filled.
pub(crate) enum Outline<'a> {
    /// Straight from corner to corner.
    Corners(&'a [Point], Ends),
    /// A circle by its centre and radius.
    Circle(Point, f32),
}

/// A colour, and how much it covers what is under it: 0–1.
#[derive(Clone, Copy)]
pub(crate) struct Tint {
    pub(crate) role: Role,
    pub(crate) opacity: f32,
}

impl Tint {
    pub(crate) fn solid(role: Role) -> Self {
        Self { role, opacity: 1.0 }
    }
}

/// What an outline is written into.
pub(crate) trait Path {
    /// Begins at a place.
    fn move_to(&mut self, x: f32, y: f32);
    /// Goes straight to a place.
    fn line_to(&mut self, x: f32, y: f32);
    /// Goes to the last place in a curve drawn towards the first two.
    fn cubic_to(&mut self, ax: f32, ay: f32, bx: f32, by: f32, x: f32, y: f32);
    /// Joins the end with the beginning.
    fn close(&mut self);
}

impl Outline<'_> {
    /// Writes the outline; a circle as four curves.
    pub(crate) fn write(&self, path: &mut impl Path) {
        match *self {
            Self::Corners(points, ends) => {
                let Some((first, rest)) = points.split_first() else {
                    return;
                };
                path.move_to(first.x, first.y);
                for point in rest {
                    path.line_to(point.x, point.y);
                }
                if ends == Ends::Closed {
                    path.close();
                }
            }
            Self::Circle(Point { x, y }, r) => {
                const REACH: f32 = 0.552_285;
                let c = r * REACH;
                path.move_to(x + r, y);
                path.cubic_to(x + r, y + c, x + c, y + r, x, y + r);
                path.cubic_to(x - c, y + r, x - r, y + c, x - r, y);
                path.cubic_to(x - r, y - c, x - c, y - r, x, y - r);
                path.cubic_to(x + c, y - r, x + r, y - c, x + r, y);
                path.close();
            }
        }
    }
}

/// Draws an item. A place to touch is not to be seen.
///
/// # Errors
/// What the canvas says.
pub(crate) fn draw<C: Canvas>(canvas: &mut C, item: &Item) -> Result<(), C::Error> {
    match item {
        Item::Path {
            points,
            ends,
            stroke,
            fill,
        } => canvas.outline(&Outline::Corners(points, *ends), *stroke, fill.map(Tint::solid)),
        Item::Circle {
            centre,
            radius,
            stroke,
            fill,
        } => canvas.outline(&Outline::Circle(*centre, *radius), *stroke, fill.map(Tint::solid)),
        Item::Arc {
            centre,
            radius,
            start_deg,
            sweep_deg,
            stroke,
        } => {
            let points = arc_points(*centre, *radius, *start_deg, *sweep_deg);
            canvas.outline(&Outline::Corners(&points, Ends::Open), Some(*stroke), None);
        }
        Item::Text {
            at,
            anchor,
            size,
            weight,
            role,
            text,
        } => {
            let line = canvas.type_().line(text, *weight, *size);
            let before = match anchor {
                Anchor::Start => 0.0,
                Anchor::Middle => line.width / 2.0,
                Anchor::End => line.width,
            };
            let start = Point {
                x: at.x - before,
                y: at.y,
            };
            return canvas.line(&line, start, *size, *role);
        }
        Item::Image {
            path,
            at,
            width,
            height,
        } => return canvas.picture(path, *at, *width, *height),
        Item::Needle {
            pivot,
            length,
            angle_deg,
            doubt_deg,
            role,
        } => {
            for shape in needle_shapes(*pivot, *length, *angle_deg, *doubt_deg) {
                let tint = Tint {
                    role: *role,
                    opacity: shape.opacity,
                };
                canvas.outline(&Outline::Corners(&shape.points, Ends::Closed), None, Some(tint));
            }
        }
        Item::Region { .. } => {}
    }
    Ok(())
}
