//! A photo with its marks: vectors over the picture, editable later.

use crate::diagram::sketch::{Sketch, at, solid};
use crate::diagram::state::Lead;
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
pub enum PhotoMark {
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
    /// A test point.
    TestPoint {
        /// Where the tool goes.
        at: Spot,
        /// The lead that goes there; `None` for hand pump, gauge or cap.
        lead: Option<Lead>,
        /// What goes there, in words.
        words: String,
    },
    /// A short text.
    Text {
        /// Left end of its baseline.
        at: Spot,
        /// The words.
        text: String,
    },
}

const WIDTH: f32 = 360.0;
const LINE: f32 = 4.0;
/// Extra width of the paper-coloured edge that keeps a mark apart from what is under it.
const EDGE: f32 = 3.0;
const TYPE: f32 = 15.0;

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
        match mark {
            PhotoMark::Ring { centre, radius } => {
                let radius = WIDTH * radius.clamp(0.01, 1.0) as f32;
                let centre = sheet.place(*centre);
                sheet
                    .sketch
                    .circle(centre, radius, Some(solid(LINE + EDGE, Role::Paper)), None);
                sheet
                    .sketch
                    .circle(centre, radius, Some(solid(LINE, Role::Needle)), None);
            }
            PhotoMark::Arrow { from, to } => sheet.arrow(sheet.place(*from), sheet.place(*to)),
            PhotoMark::Pin { at, number } => sheet.pin(sheet.place(*at), number),
            PhotoMark::TestPoint { at, lead, words } => sheet.test_point(sheet.place(*at), *lead, words),
            PhotoMark::Text { at, text } => sheet.plate(sheet.place(*at), text, Role::Ink),
        }
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

    fn arrow(&mut self, from: Point, to: Point) {
        let (dx, dy) = (to.x - from.x, to.y - from.y);
        let length = dx.hypot(dy).max(1.0);
        let (ux, uy) = (dx / length, dy / length);
        let head = 17.0_f32.min(length);
        let neck = at(to.x - ux * head, to.y - uy * head);
        let wing = |side: f32| at(neck.x - uy * 9.0 * side, neck.y + ux * 9.0 * side);
        let tip = [to, wing(1.0), wing(-1.0)];
        self.sketch.line(&[from, neck], solid(LINE + EDGE, Role::Paper));
        self.sketch
            .shape(&tip, Some(solid(EDGE, Role::Paper)), Some(Role::Needle));
        self.sketch
            .line(&[from, at(neck.x + ux, neck.y + uy)], solid(LINE, Role::Needle));
    }

    /// A drop with its tip at the place and the number in its head.
    fn pin(&mut self, tip: Point, number: &str) {
        let head = at(tip.x, tip.y - 30.0);
        let drop = [
            at(head.x - 11.0, head.y + 9.0),
            at(head.x + 11.0, head.y + 9.0),
            tip,
        ];
        self.sketch.circle(head, 16.0, None, Some(Role::Paper));
        self.sketch
            .shape(&drop, Some(solid(EDGE, Role::Paper)), Some(Role::Needle));
        self.sketch.circle(head, 14.0, None, Some(Role::Needle));
        let place = at(head.x, head.y + 5.5);
        self.sketch
            .text(place, Anchor::Middle, TYPE, Weight::Bold, Role::OnNeedle, number);
    }

    fn test_point(&mut self, place: Point, lead: Option<Lead>, words: &str) {
        let role = lead.map_or(Role::Needle, Lead::role);
        self.sketch
            .circle(place, 11.0, Some(solid(LINE + EDGE, Role::Paper)), None);
        self.sketch.circle(place, 11.0, Some(solid(LINE, role)), None);
        self.sketch.circle(place, 2.5, None, Some(role));
        self.plate(at(place.x + 18.0, place.y + 5.0), words, role);
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
