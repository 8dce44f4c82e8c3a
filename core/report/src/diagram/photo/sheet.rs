//! The photo with the marks as they are drawn on it.

use super::plates::Plates;
use super::{LINE, PhotoMark, PhotoScene, PhotoShape, Spot, TYPE, WIDTH};
use crate::diagram::sketch::{Sketch, at, solid};
use crate::scene::{Anchor, Item, Point, Role, Scene, Weight};

/// Extra width of the paper-coloured edge that keeps a mark apart from what is under it.
const EDGE: f32 = 3.0;
/// From a pin's tip up to the middle of its head.
const PIN: f32 = 30.0;
/// Radius of a grip.
const GRIP: f32 = 7.0;
/// Half length of the strokes that end a measure.
const END_STROKE: f32 = 7.0;
/// From one line of a hatching to the next.
const HATCH: f32 = 12.0;

/// The photo while it is drawn on.
pub(super) struct Sheet {
    sketch: Sketch,
    height: f32,
    plates: Plates,
}

impl Sheet {
    /// The photo without marks.
    pub(super) fn of(scene: &PhotoScene) -> Self {
        let (width_px, height_px) = (scene.width_px.max(1), scene.height_px.max(1));
        let height = (f64::from(WIDTH) * f64::from(height_px) / f64::from(width_px)) as f32;
        let mut sketch = Sketch::new();
        sketch.push(Item::Image {
            path: scene.path.clone(),
            at: at(0.0, 0.0),
            width: WIDTH,
            height,
        });
        Self {
            sketch,
            height,
            plates: Plates::default(),
        }
    }

    /// The words above all marks, and the grips above them.
    pub(super) fn finish(mut self, scene: &PhotoScene) -> Scene {
        std::mem::take(&mut self.plates).draw(&mut self.sketch, self.height);
        for grip in &scene.grips {
            let place = self.place(*grip);
            self.sketch
                .circle(place, GRIP, Some(solid(EDGE, Role::Ink)), Some(Role::Paper));
        }
        self.sketch.finish(WIDTH, self.height, &scene.alt)
    }

    fn place(&self, spot: Spot) -> Point {
        let share = |v: f64| {
            if v.is_finite() {
                v.clamp(0.0, 1.0) as f32
            } else {
                0.5
            }
        };
        at(WIDTH * share(spot.x), self.height * share(spot.y))
    }

    /// Draws a mark; its words wait until all marks are drawn.
    pub(super) fn mark(&mut self, mark: &PhotoMark) {
        let PhotoMark { shape, role, words } = mark;
        let beside = match shape {
            PhotoShape::Ring { centre, radius } => {
                let radius = WIDTH * radius.clamp(0.01, 1.0) as f32;
                let centre = self.place(*centre);
                self.ring(centre, radius, *role);
                self.plates.keep_clear(centre);
                at(centre.x + radius + 10.0, centre.y + 5.0)
            }
            PhotoShape::Arrow { from, to } => {
                let (from, to) = (self.place(*from), self.place(*to));
                self.arrow(from, to, *role);
                self.plates.keep_clear(to);
                at(from.x, from.y + if to.y < from.y { 24.0 } else { -10.0 })
            }
            PhotoShape::Pin { at: tip, number } => {
                let tip = self.place(*tip);
                self.pin(tip, number, *role);
                self.plates.keep_clear(tip);
                self.plates.keep_clear(at(tip.x, tip.y - PIN));
                at(tip.x + 22.0, tip.y - 25.0)
            }
            PhotoShape::TestPoint { at: place } => {
                let place = self.place(*place);
                self.ring(place, 11.0, *role);
                self.sketch.circle(place, 2.5, None, Some(*role));
                self.plates.keep_clear(place);
                at(place.x + 22.0, place.y + 5.0)
            }
            PhotoShape::Measure { from, to } => {
                let (from, to) = (self.place(*from), self.place(*to));
                self.measure(from, to, *role);
                at(
                    f32::midpoint(from.x, to.x) + 8.0,
                    f32::midpoint(from.y, to.y) - 8.0,
                )
            }
            PhotoShape::Blur { from, to } => {
                let (from, to) = (self.place(*from), self.place(*to));
                self.hatched(from, to);
                return;
            }
            PhotoShape::Words { at } => self.place(*at),
        };
        self.plates.add(beside, words, *role);
    }

    /// A line with its paper-coloured edge.
    fn edged(&mut self, points: &[Point], role: Role) {
        self.sketch.line(points, solid(LINE + EDGE, Role::Paper));
        self.sketch.line(points, solid(LINE, role));
    }

    fn ring(&mut self, centre: Point, radius: f32, role: Role) {
        self.sketch
            .circle(centre, radius, Some(solid(LINE + EDGE, Role::Paper)), None);
        self.sketch.circle(centre, radius, Some(solid(LINE, role)), None);
    }

    fn arrow(&mut self, from: Point, to: Point, role: Role) {
        let (dx, dy) = (to.x - from.x, to.y - from.y);
        let length = dx.hypot(dy).max(1.0);
        let (ux, uy) = (dx / length, dy / length);
        let head = 17.0_f32.min(length);
        let neck = at(to.x - ux * head, to.y - uy * head);
        let wing = |side: f32| at(neck.x - uy * 9.0 * side, neck.y + ux * 9.0 * side);
        let tip = [to, wing(1.0), wing(-1.0)];
        self.sketch.line(&[from, neck], solid(LINE + EDGE, Role::Paper));
        self.sketch
            .shape(&tip, Some(solid(EDGE, Role::Paper)), Some(role));
        self.sketch
            .line(&[from, at(neck.x + ux, neck.y + uy)], solid(LINE, role));
    }

    /// A drop with its tip at the place and the number in its head.
    fn pin(&mut self, tip: Point, number: &str, role: Role) {
        let head = at(tip.x, tip.y - PIN);
        let drop = [
            at(head.x - 11.0, head.y + 9.0),
            at(head.x + 11.0, head.y + 9.0),
            tip,
        ];
        self.sketch.circle(head, 16.0, None, Some(Role::Paper));
        self.sketch
            .shape(&drop, Some(solid(EDGE, Role::Paper)), Some(role));
        self.sketch.circle(head, 14.0, None, Some(role));
        let place = at(head.x, head.y + 5.5);
        self.sketch
            .text(place, Anchor::Middle, TYPE, Weight::Bold, Role::Paper, number);
    }

    fn measure(&mut self, from: Point, to: Point, role: Role) {
        let (dx, dy) = (to.x - from.x, to.y - from.y);
        let length = dx.hypot(dy).max(1.0);
        let (across_x, across_y) = (-dy / length * END_STROKE, dx / length * END_STROKE);
        let end = |p: Point| {
            [
                at(p.x - across_x, p.y - across_y),
                at(p.x + across_x, p.y + across_y),
            ]
        };
        for line in [[from, to], end(from), end(to)] {
            self.edged(&line, role);
        }
    }

    fn hatched(&mut self, from: Point, to: Point) {
        let (left, right) = (from.x.min(to.x), from.x.max(to.x));
        let (top, bottom) = (from.y.min(to.y), from.y.max(to.y));
        let corners = [at(left, top), at(right, top), at(right, bottom), at(left, bottom)];
        self.sketch.shape(&corners, Some(solid(LINE, Role::Paper)), None);
        // Lines of 45 degrees: each starts on the upper or left side and ends on the right or lower one.
        let (width, height) = (right - left, bottom - top);
        let mut step = HATCH;
        while step < width + height {
            let (x0, y0) = (left + (step - height).max(0.0), top + step.min(height));
            let (x1, y1) = (left + step.min(width), top + (step - width).max(0.0));
            let line = [at(x0, y0), at(x1, y1)];
            self.sketch.line(&line, solid(EDGE, Role::Paper));
            self.sketch.line(&line, solid(1.0, Role::Ink));
            step += HATCH;
        }
        self.sketch.shape(&corners, Some(solid(1.5, Role::Ink)), None);
    }
}
