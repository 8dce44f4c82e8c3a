//! Two axes with their graduation, and the names of what is drawn between them.

use crate::diagram::label::cut_to;
use crate::diagram::scale::{number, step};
use crate::diagram::sketch::{Sketch, at, solid};
use crate::scene::{Anchor, Point, Role, Weight};

/// Width of a chart, scene units.
pub(crate) const WIDTH: f32 = 360.0;
/// Height of a chart, scene units.
pub(crate) const HEIGHT: f32 = 264.0;
const LEFT: f32 = 46.0;
/// Where the axis along ends; names of lines stand behind it.
pub(crate) const RIGHT: f32 = 282.0;
const TOP: f32 = 34.0;
const BOTTOM: f32 = 216.0;
const SMALL: f32 = 14.0;

/// From figures to the paper.
pub(crate) struct Axes {
    /// The axis along ends at this; it begins at zero.
    along: f64,
    low: f64,
    high: f64,
    along_step: f64,
    value_step: f64,
}

impl Axes {
    /// Axes that show values from `low` to `high`, both ends widened to round numbers, and `along` up to its end.
    pub(crate) fn over(along: f64, low: f64, high: f64) -> Self {
        let value_step = step(high - low, 5.0);
        let floor = if low >= 0.0 { 0.0 } else { f64::NEG_INFINITY };
        Self {
            along,
            low: ((low / value_step - 0.2).floor() * value_step).max(floor),
            high: (high / value_step + 0.2).ceil() * value_step,
            along_step: step(along, 6.0),
            value_step,
        }
    }

    fn x(&self, along: f64) -> f32 {
        LEFT + (RIGHT - LEFT) * (along / self.along).clamp(0.0, 1.0) as f32
    }

    fn y(&self, value: f64) -> f32 {
        BOTTOM - (BOTTOM - TOP) * ((value - self.low) / (self.high - self.low)).clamp(0.0, 1.0) as f32
    }

    /// The places of points; what is not finite is left out.
    pub(crate) fn line(&self, points: &[(f64, f64)]) -> Vec<Point> {
        points
            .iter()
            .filter(|(along, value)| along.is_finite() && value.is_finite())
            .map(|(along, value)| at(self.x(*along), self.y(*value)))
            .collect()
    }

    /// Draws the axes with graduation and their words.
    pub(crate) fn draw(&self, sketch: &mut Sketch, unit: &str, along: &str, decimal: char) {
        let words = |sketch: &mut Sketch, place: Point, anchor, role, text: &str| {
            sketch.text(place, anchor, SMALL, Weight::Regular, role, text);
        };
        let lines = ((self.high - self.low) / self.value_step).round() as i64;
        for i in 0..=lines {
            let value = self.low + self.value_step * i as f64;
            let y = self.y(value);
            sketch.line(&[at(LEFT, y), at(RIGHT, y)], solid(0.5, Role::Line));
            let text = number(value, self.value_step, decimal);
            words(sketch, at(LEFT - 10.0, y + 5.0), Anchor::End, Role::Ink, &text);
        }
        sketch.line(&[at(LEFT, BOTTOM), at(RIGHT, BOTTOM)], solid(1.5, Role::Ink));
        let ticks = (self.along / self.along_step + 1e-6).floor() as i64;
        for i in 0..=ticks {
            let value = self.along_step * i as f64;
            let x = self.x(value);
            sketch.line(&[at(x, BOTTOM), at(x, BOTTOM + 5.0)], solid(1.5, Role::Ink));
            let text = number(value, self.along_step, decimal);
            words(sketch, at(x, BOTTOM + 20.0), Anchor::Middle, Role::Ink, &text);
        }
        let middle = at((LEFT + RIGHT) / 2.0, BOTTOM + 40.0);
        words(sketch, middle, Anchor::Middle, Role::QuietInk, along);
        words(sketch, at(LEFT - 34.0, 16.0), Anchor::Start, Role::QuietInk, unit);
    }
}

/// Words at the right end of a line.
pub(crate) struct End {
    pub(crate) y: f32,
    pub(crate) text: String,
    pub(crate) role: Role,
    pub(crate) weight: Weight,
}

/// Names the lines at their right ends, pushed apart where they would overlap.
pub(crate) fn name_ends(sketch: &mut Sketch, mut ends: Vec<End>) {
    const APART: f32 = 17.0;
    ends.retain(|e| !e.text.is_empty());
    ends.sort_by(|a, b| a.y.total_cmp(&b.y));
    let mut least = TOP;
    for end in &mut ends {
        end.y = end.y.max(least);
        least = end.y + APART;
    }
    let mut most = BOTTOM;
    for end in ends.iter_mut().rev() {
        end.y = end.y.min(most);
        most = end.y - APART;
    }
    for end in ends {
        let text = cut_to(&end.text, end.weight, SMALL, WIDTH - RIGHT - 9.0);
        sketch.text(
            at(RIGHT + 9.0, end.y + 5.0),
            Anchor::Start,
            SMALL,
            end.weight,
            end.role,
            &text,
        );
    }
}
