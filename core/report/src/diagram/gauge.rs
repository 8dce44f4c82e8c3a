//! The gauge: a dial in the unit of the person's own gauge, with target band and one needle.

use crate::diagram::sketch::{Sketch, at, polar, solid};
use crate::scene::{Anchor, Item, Point, Role, Scene, Weight};

const SIDE: f32 = 360.0;
const PIVOT: Point = at(180.0, 180.0);
const RADIUS: f32 = 168.0;
/// Degrees clockwise from the right where the scale starts (lower left).
const START_DEG: f32 = 135.0;
/// Degrees the scale covers, clockwise.
const SWEEP_DEG: f32 = 270.0;

/// A vacuum gauge as the person holds it. Readings are in its unit; all words are final.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Dial {
    /// Alternative text.
    pub alt: String,
    /// Unit as written on the dial, such as "inHg".
    pub unit: String,
    /// End of the scale, above zero; anything else is drawn as 30.
    pub span: f64,
    /// Smallest graduation, above zero; anything else is drawn as a thirtieth of the span.
    pub division: f64,
    /// Where the needle points.
    pub reading: f64,
    /// Half width of the needle's fuzzy edge: the doubt of the reading, same unit, zero for none.
    pub doubt: f64,
    /// Band the reading should reach, from and to.
    pub target: Option<(f64, f64)>,
    /// Words for the band, such as "pump to here", or empty.
    pub target_label: String,
    /// The reading as text in the middle, or empty.
    pub reading_text: String,
}

impl Dial {
    /// Where a reading stands on the scale: degrees clockwise from the right, from 135 (zero) to 405 (span).
    /// Readings outside the scale stand at its end, and no number stands at zero.
    #[must_use]
    pub fn angle_of(&self, reading: f64) -> f32 {
        let share = (reading / self.scale_end()).clamp(0.0, 1.0);
        #[expect(clippy::cast_possible_truncation, reason = "an angle to draw")]
        let share = if share.is_nan() { 0.0 } else { share as f32 };
        START_DEG + SWEEP_DEG * share
    }

    /// The reading under a finger at a place in the gauge's scene; in the gap at the bottom the nearer end.
    #[must_use]
    pub fn reading_at(&self, point: Point) -> f64 {
        let degrees = f64::from(point.y - PIVOT.y)
            .atan2(f64::from(point.x - PIVOT.x))
            .to_degrees();
        let along = (degrees - f64::from(START_DEG)).rem_euclid(360.0);
        let sweep = f64::from(SWEEP_DEG);
        let share = if along <= sweep {
            along / sweep
        } else if along - sweep < (360.0 - sweep) / 2.0 {
            1.0
        } else {
            0.0
        };
        share * self.scale_end()
    }

    fn scale_end(&self) -> f64 {
        if self.span.is_finite() && self.span > 0.0 {
            self.span
        } else {
            30.0
        }
    }
}

/// Draws the gauge, 360 by 360 units.
#[must_use]
pub fn gauge(dial: &Dial) -> Scene {
    let mut sketch = Sketch::new();
    sketch.circle(PIVOT, RADIUS, Some(solid(2.0, Role::Ink)), Some(Role::Paper));
    if let Some((from, to)) = dial.target {
        let (start, end) = (dial.angle_of(from), dial.angle_of(to));
        sketch.arc(PIVOT, RADIUS - 14.0, start, end - start, solid(20.0, Role::Band));
    }
    for i in 0_u8..=6 {
        let value = dial.scale_end() * f64::from(i) / 6.0;
        let angle = dial.angle_of(value);
        sketch.line(
            &[
                polar(PIVOT, RADIUS - 4.0, angle),
                polar(PIVOT, RADIUS - 24.0, angle),
            ],
            solid(2.5, Role::Ink),
        );
        let place = polar(PIVOT, RADIUS - 44.0, angle);
        sketch.text(
            at(place.x, place.y + 7.0),
            Anchor::Middle,
            20.0,
            Weight::Bold,
            Role::Ink,
            &format!("{value:.0}"),
        );
    }
    sketch.text(
        at(PIVOT.x, PIVOT.y + 70.0),
        Anchor::Middle,
        18.0,
        Weight::Regular,
        Role::QuietInk,
        &dial.unit,
    );
    sketch.text(
        at(PIVOT.x, PIVOT.y + 110.0),
        Anchor::Middle,
        28.0,
        Weight::Bold,
        Role::Ink,
        &dial.reading_text,
    );
    let angle_deg = dial.angle_of(dial.reading);
    let doubt_deg = dial.angle_of(dial.reading + dial.doubt.max(0.0)) - angle_deg;
    sketch.push(Item::Needle {
        pivot: PIVOT,
        length: RADIUS - 22.0,
        angle_deg,
        doubt_deg,
        role: Role::Needle,
    });
    sketch.finish(SIDE, SIDE, &dial.alt)
}
