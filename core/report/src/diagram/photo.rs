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
/// From a pin's tip up to the middle of its head.
const PIN: f32 = 30.0;
/// Radius of a grip.
const GRIP: f32 = 7.0;
/// Half length of the strokes that end a measure.
const END_STROKE: f32 = 7.0;
/// Height of a plate with words.
const PLATE_HEIGHT: f32 = 22.0;
/// From a plate's upper edge down to the baseline.
const PLATE_RISE: f32 = 16.0;
/// Paper beside the words on their plate.
const PLATE_EDGE: f32 = 6.0;
/// A plate that would hide something moves up or down by this,
const STEP: f32 = 6.0;
/// at most so many times.
const MOST_STEPS: i8 = 24;
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
        plates: Vec::new(),
        spots: Vec::new(),
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
    sheet.draw_plates();
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
    /// Words, where they would best stand.
    plates: Vec<Plate>,
    /// What marks point at, and the numbers of pins.
    spots: Vec<Point>,
}

/// Words on a plate of paper.
struct Plate {
    /// Where the words begin, on their baseline.
    start: Point,
    width: f32,
    words: String,
    role: Role,
}

impl Plate {
    fn covers(&self, other: &Self) -> bool {
        let apart = |a: f32, b: f32, size: f32| (a - b).abs() >= size;
        let (a, b) = (self.middle(), other.middle());
        !apart(
            a.x,
            b.x,
            f32::midpoint(self.width, other.width) + 2.0 * PLATE_EDGE,
        ) && !apart(a.y, b.y, PLATE_HEIGHT)
    }

    fn hides(&self, spot: Point) -> bool {
        let middle = self.middle();
        (spot.x - middle.x).abs() < self.width / 2.0 + PLATE_EDGE + LINE
            && (spot.y - middle.y + PLATE_RISE - PLATE_HEIGHT / 2.0).abs() < PLATE_HEIGHT / 2.0 + LINE
    }

    /// The middle of the words, on their baseline.
    fn middle(&self) -> Point {
        at(self.start.x + self.width / 2.0, self.start.y)
    }
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
                self.spots.push(centre);
                at(centre.x + radius + 10.0, centre.y + 5.0)
            }
            PhotoShape::Arrow { from, to } => {
                let (from, to) = (self.place(*from), self.place(*to));
                self.arrow(from, to, *role);
                self.spots.push(to);
                at(from.x, from.y + if to.y < from.y { 24.0 } else { -10.0 })
            }
            PhotoShape::Pin { at: tip, number } => {
                let tip = self.place(*tip);
                self.pin(tip, number, *role);
                self.spots.extend([tip, at(tip.x, tip.y - PIN)]);
                at(tip.x + 22.0, tip.y - 25.0)
            }
            PhotoShape::TestPoint { at: place } => {
                let place = self.place(*place);
                self.ring(place, 11.0, *role);
                self.sketch.circle(place, 2.5, None, Some(*role));
                self.spots.push(place);
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

    /// A text for a plate of paper whose baseline would best begin here.
    fn plate(&mut self, baseline: Point, text: &str, role: Role) {
        if text.is_empty() {
            return;
        }
        let words = crate::diagram::label::cut_to(text, Weight::Bold, TYPE, WIDTH - 16.0);
        let width = Ruler::of(Weight::Bold, TYPE).width(&words);
        self.plates.push(Plate {
            start: at(baseline.x.min(WIDTH - width - 8.0).max(8.0), baseline.y),
            width,
            words,
            role,
        });
    }

    /// The plates above all marks, so that none strikes out a word, where they hide neither each other nor what is
    /// pointed at.
    fn draw_plates(&mut self) {
        let mut placed: Vec<Plate> = Vec::new();
        for mut plate in std::mem::take(&mut self.plates) {
            plate.start.y = self.free_place(&mut plate, &placed);
            placed.push(plate);
        }
        for plate in placed {
            let corner = at(plate.start.x - PLATE_EDGE, plate.start.y - PLATE_RISE);
            let width = plate.width + 2.0 * PLATE_EDGE;
            self.sketch
                .rounded(corner, width, PLATE_HEIGHT, 5.0, None, Some(Role::Paper));
            // In the middle: another font may set the words narrower.
            self.sketch.text(
                plate.middle(),
                Anchor::Middle,
                TYPE,
                Weight::Bold,
                plate.role,
                &plate.words,
            );
        }
    }

    /// The height nearest to where the plate would best stand, kept inside the photo: down and up in turn, a little
    /// further each time. Where all is taken it stays where it belongs.
    fn free_place(&self, plate: &mut Plate, placed: &[Plate]) -> f32 {
        let (top, bottom) = (20.0_f32.min(self.height), (self.height - 8.0).max(20.0));
        let wanted = plate.start.y.clamp(top, bottom);
        let steps = (0..=MOST_STEPS).flat_map(|steps| [steps, -steps]);
        for y in steps.map(|steps| wanted + f32::from(steps) * STEP) {
            plate.start.y = y;
            let hides = placed.iter().any(|other| other.covers(plate))
                || self.spots.iter().any(|spot| plate.hides(*spot));
            if (top..=bottom).contains(&y) && !hides {
                return y;
            }
        }
        wanted
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn scene(marks: Vec<PhotoMark>) -> Scene {
        photo(&PhotoScene {
            width_px: 400,
            height_px: 300,
            marks,
            ..PhotoScene::default()
        })
    }

    fn test_point(x: f64, y: f64, words: &str) -> PhotoMark {
        let shape = PhotoShape::TestPoint { at: Spot { x, y } };
        PhotoMark {
            words: words.into(),
            ..shape.plain()
        }
    }

    fn words(scene: &Scene) -> Vec<Point> {
        let place = |item: &Item| match item {
            Item::Text { at, .. } => Some(*at),
            _ => None,
        };
        scene.items.iter().filter_map(place).collect()
    }

    #[test]
    fn words_of_marks_that_lie_together_do_not_cover_each_other() {
        let at_one_place =
            ["Red lead", "Black lead", "Measure here"].map(|words| test_point(0.5, 0.5, words));
        let places = words(&scene(at_one_place.into()));
        assert_eq!(places.len(), 3);
        for (i, place) in places.iter().enumerate() {
            let rest = places.iter().skip(i + 1);
            assert!(
                rest.clone()
                    .all(|other| (other.y - place.y).abs() >= PLATE_HEIGHT),
                "{places:?}"
            );
        }
    }

    #[test]
    fn words_hide_nothing_that_is_pointed_at() {
        let marks = vec![test_point(0.3, 0.5, "Red lead: pin 1"), test_point(0.45, 0.5, "")];
        let place = words(&scene(marks))[0];
        assert!((place.y - 0.5 * 270.0).abs() > PLATE_HEIGHT / 2.0, "{place:?}");
    }

    #[test]
    fn words_stay_inside_the_photo() {
        let marks = (0..12).map(|_| test_point(1.0, 1.0, "Measure here"));
        for place in words(&scene(marks.collect())) {
            assert!((0.0..=270.0).contains(&place.y) && place.x < WIDTH, "{place:?}");
        }
    }
}
