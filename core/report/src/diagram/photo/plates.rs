//! The words of marks, on plates of paper that hide neither each other nor what is pointed at.

use super::{LINE, TYPE, WIDTH};
use crate::diagram::label::cut_to;
use crate::diagram::sketch::{Sketch, at};
use crate::scene::{Anchor, Point, Role, Weight};
use crate::text::Ruler;

/// Height of a plate with words.
pub(super) const PLATE_HEIGHT: f32 = 22.0;
/// From a plate's upper edge down to the baseline.
const PLATE_RISE: f32 = 16.0;
/// Paper beside the words on their plate.
const PLATE_EDGE: f32 = 6.0;
/// A plate that would hide something moves up or down by this,
const STEP: f32 = 6.0;
/// at most so many times.
const MOST_STEPS: i8 = 24;

/// The words of all marks, where they would best stand.
#[derive(Default)]
pub(super) struct Plates {
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

impl Plates {
    /// A place that no words may hide.
    pub(super) fn keep_clear(&mut self, spot: Point) {
        self.spots.push(spot);
    }

    /// Words whose baseline would best begin here.
    pub(super) fn add(&mut self, baseline: Point, text: &str, role: Role) {
        if text.is_empty() {
            return;
        }
        let words = cut_to(text, Weight::Bold, TYPE, WIDTH - 16.0);
        let width = Ruler::of(Weight::Bold, TYPE).width(&words);
        self.plates.push(Plate {
            start: at(baseline.x.min(WIDTH - width - 8.0).max(8.0), baseline.y),
            width,
            words,
            role,
        });
    }

    /// The words above all marks, so that none strikes out a word, on a photo so high.
    pub(super) fn draw(self, sketch: &mut Sketch, height: f32) {
        let mut placed: Vec<Plate> = Vec::new();
        for mut plate in self.plates {
            plate.start.y = free_place(&mut plate, &placed, &self.spots, height);
            placed.push(plate);
        }
        for plate in placed {
            let corner = at(plate.start.x - PLATE_EDGE, plate.start.y - PLATE_RISE);
            let width = plate.width + 2.0 * PLATE_EDGE;
            sketch.rounded(corner, width, PLATE_HEIGHT, 5.0, None, Some(Role::Paper));
            // In the middle: another font may set the words narrower.
            sketch.text(
                plate.middle(),
                Anchor::Middle,
                TYPE,
                Weight::Bold,
                plate.role,
                &plate.words,
            );
        }
    }
}

/// The height nearest to where the plate would best stand, kept inside the photo: down and up in turn, a little further
/// each time. Where all is taken it stays where it belongs.
fn free_place(plate: &mut Plate, placed: &[Plate], spots: &[Point], height: f32) -> f32 {
    let (top, bottom) = (20.0_f32.min(height), (height - 8.0).max(20.0));
    let wanted = plate.start.y.clamp(top, bottom);
    let steps = (0..=MOST_STEPS).flat_map(|steps| [steps, -steps]);
    for y in steps.map(|steps| wanted + f32::from(steps) * STEP) {
        plate.start.y = y;
        let hides =
            placed.iter().any(|other| other.covers(plate)) || spots.iter().any(|spot| plate.hides(*spot));
        if (top..=bottom).contains(&y) && !hides {
            return y;
        }
    }
    wanted
}
