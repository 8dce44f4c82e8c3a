//! A photo with its marks: vectors over the picture, editable later.

use crate::diagram::sketch::{Sketch, at, solid};
use crate::scene::{Anchor, Item, Point, Role, Scene, Weight};
use crate::text::Ruler;

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
    /// Where the mark in hand can be gripped; none but while it is edited.
    pub grips: Vec<Spot>,
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
pub struct PhotoMark {
    /// Shape and place.
    pub shape: PhotoShape,
    /// Its colour.
    pub role: Role,
    /// Words beside it, or empty.
    pub words: String,
}

/// Shape and place of a mark.
#[derive(Debug, Clone, PartialEq)]
pub enum PhotoShape {
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
    /// A test point: where a lead or a tool goes.
    TestPoint {
        /// The place.
        at: Spot,
    },
    /// A measure: a line with an end stroke on either side.
    Measure {
        /// One end.
        from: Spot,
        /// The other.
        to: Spot,
    },
    /// A box that is made unreadable on export; drawn hatched until then.
    Blur {
        /// One corner.
        from: Spot,
        /// The opposite one.
        to: Spot,
    },
    /// Words alone, beginning at the place.
    Words {
        /// Left end of their baseline.
        at: Spot,
    },
}

impl PhotoShape {
    /// The mark of this shape in the usual colour, without words.
    #[must_use]
    pub fn plain(self) -> PhotoMark {
        PhotoMark {
            shape: self,
            role: Role::Needle,
            words: String::new(),
        }
    }
}

const WIDTH: f32 = 360.0;
const LINE: f32 = 4.0;
/// Extra width of the paper-coloured edge that keeps a mark apart from what is under it.
const EDGE: f32 = 3.0;
const TYPE: f32 = 15.0;
/// Radius of a grip.
const GRIP: f32 = 7.0;
/// Half length of the strokes that end a measure.
const END_STROKE: f32 = 7.0;
/// From one line of a hatching to the next.
const HATCH: f32 = 12.0;

/// Draws the photo 360 units wide, its height in proportion.
#[must_use]
pub fn photo(scene: &PhotoScene) -> Scene {
    let height =
        (f64::from(WIDTH) * f64::from(scene.height_px.max(1)) / f64::from(scene.width_px.max(1))) as f32;
    let mut sheet = Sheet {
        sketch: Sketch::new(),
        height,
    };
    sheet.sketch.push(Item::Image {
        path: scene.path.clone(),
        at: at(0.0, 0.0),
        width: WIDTH,
        height,
    });
    for mark in &scene.marks {
        sheet.mark(mark);
    }
    for grip in &scene.grips {
        let place = sheet.place(*grip);
        sheet
            .sketch
            .circle(place, GRIP, Some(solid(EDGE, Role::Ink)), Some(Role::Paper));
    }
    sheet.sketch.finish(WIDTH, height, &scene.alt)
}

struct Sheet {
    sketch: Sketch,
    height: f32,
}

impl Sheet {
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

    fn mark(&mut self, mark: &PhotoMark) {
        let PhotoMark { shape, role, words } = mark;
        let beside = match shape {
            PhotoShape::Ring { centre, radius } => {
                let radius = WIDTH * radius.clamp(0.01, 1.0) as f32;
                let centre = self.place(*centre);
                self.ring(centre, radius, *role);
                at(centre.x + radius + 10.0, centre.y + 5.0)
            }
            PhotoShape::Arrow { from, to } => {
                let (from, to) = (self.place(*from), self.place(*to));
                self.arrow(from, to, *role);
                at(from.x, from.y + if to.y < from.y { 24.0 } else { -10.0 })
            }
            PhotoShape::Pin { at: tip, number } => {
                let tip = self.place(*tip);
                self.pin(tip, number, *role);
                at(tip.x + 22.0, tip.y - 25.0)
            }
            PhotoShape::TestPoint { at: place } => {
                let place = self.place(*place);
                self.ring(place, 11.0, *role);
                self.sketch.circle(place, 2.5, None, Some(*role));
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
        self.plate(beside, words, *role);
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
        let head = at(tip.x, tip.y - 30.0);
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

    /// A text on a plate of paper, kept inside the photo.
    fn plate(&mut self, baseline: Point, text: &str, role: Role) {
        if text.is_empty() {
            return;
        }
        let text = crate::diagram::label::cut_to(text, Weight::Bold, TYPE, WIDTH - 16.0);
        let width = Ruler::of(Weight::Bold, TYPE).width(&text);
        let left = baseline.x.min(WIDTH - width - 8.0).max(8.0);
        let y = baseline
            .y
            .clamp(20.0_f32.min(self.height), (self.height - 8.0).max(20.0));
        self.sketch.rounded(
            at(left - 6.0, y - 16.0),
            width + 12.0,
            22.0,
            5.0,
            None,
            Some(Role::Paper),
        );
        self.sketch
            .text(at(left, y), Anchor::Start, TYPE, Weight::Bold, role, &text);
    }
}
