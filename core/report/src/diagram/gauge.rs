//! The gauge: a dial in the unit of the person's own gauge, with target band and one needle.

use crate::diagram::scale::{number, step};
use crate::diagram::sketch::{Sketch, at, polar, solid};
use crate::scene::{Anchor, Item, Point, Role, Scene, Weight};

const SIDE: f32 = 360.0;
const PIVOT: Point = at(180.0, 180.0);
/// Radius of the bezel.
const BEZEL: f32 = 172.0;
/// Radius where the graduation starts; the numbers stand outside it, where the needle never covers them.
const RIM: f32 = 139.0;
const NUMBERS: f32 = 154.5;
const TIP: f32 = 128.0;
/// Degrees clockwise from the right where the scale starts (lower left).
const START_DEG: f32 = 135.0;
/// Degrees the scale covers, clockwise.
const SWEEP_DEG: f32 = 270.0;
/// More graduation lines than this would run together; every second, fifth or tenth is drawn then.
const MOST_LINES: f64 = 100.0;
/// More numbers than this would run together.
const MOST_NUMBERS: f64 = 8.0;

/// A vacuum gauge as the person holds it. Readings are in its unit; all words are final.
#[derive(Debug, Clone, PartialEq)]
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
    /// Words for the band, such as "pump to 20", or empty; they stand under the reading.
    pub target_label: String,
    /// The reading as text, or empty.
    pub reading_text: String,
    /// Decimal mark of the person's language, for the numbers on the scale.
    pub decimal: char,
}

impl Default for Dial {
    fn default() -> Self {
        Self {
            alt: String::new(),
            unit: "inHg".into(),
            span: 30.0,
            division: 1.0,
            reading: 0.0,
            doubt: 0.0,
            target: None,
            target_label: String::new(),
            reading_text: String::new(),
            decimal: '.',
        }
    }
}

impl Dial {
    /// Where a reading stands on the scale: degrees clockwise from the right, from 135 (zero) to 405 (span).
    /// Readings outside the scale stand at its end; what is not a number stands at zero.
    ///
    /// ```
    /// let dial = holdfast_report::Dial { span: 30.0, ..Default::default() };
    /// assert_eq!(dial.angle_of(15.0), 270.0); // straight up
    /// assert_eq!(dial.angle_of(99.0), dial.angle_of(30.0));
    /// ```
    #[must_use]
    pub fn angle_of(&self, reading: f64) -> f32 {
        let share = (reading / self.end()).clamp(0.0, 1.0);
        START_DEG + SWEEP_DEG * if share.is_nan() { 0.0 } else { share as f32 }
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
        share * self.end()
    }

    fn end(&self) -> f64 {
        if self.span.is_finite() && self.span > 0.0 {
            self.span
        } else {
            30.0
        }
    }

    /// Steps of graduation and of numbers. A number always stands on a line.
    fn steps(&self) -> (f64, f64) {
        let end = self.end();
        let division = if self.division.is_finite() && self.division > 0.0 {
            self.division.min(end)
        } else {
            end / 30.0
        };
        let thin = [1.0, 2.0, 5.0, 10.0, 50.0]
            .into_iter()
            .find(|m| end / (division * m) <= MOST_LINES);
        let line = thin.map_or(end / 30.0, |m| division * m);
        let numbered = step(end, MOST_NUMBERS);
        let on_lines = (numbered / line).round().max(1.0) * line;
        (line, on_lines)
    }
}

/// Draws the gauge, 360 by 360 units.
#[must_use]
pub fn gauge(dial: &Dial) -> Scene {
    let mut sketch = Sketch::new();
    sketch.circle(PIVOT, BEZEL, Some(solid(3.0, Role::Ink)), Some(Role::Raised));
    if let Some((from, to)) = dial.target {
        let (start, end) = (dial.angle_of(from.min(to)), dial.angle_of(from.max(to)));
        sketch.arc(PIVOT, RIM - 9.0, start, end - start, solid(18.0, Role::Band));
        for edge in [start, end] {
            sketch.line(
                &[polar(PIVOT, RIM, edge), polar(PIVOT, RIM - 18.0, edge)],
                solid(2.5, Role::Holds),
            );
        }
    }
    graduation(&mut sketch, dial);
    sketch.text(
        at(PIVOT.x, 112.0),
        Anchor::Middle,
        18.0,
        Weight::Regular,
        Role::QuietInk,
        &dial.unit,
    );
    sketch.text(
        at(PIVOT.x, 284.0),
        Anchor::Middle,
        38.0,
        Weight::Bold,
        Role::Ink,
        &dial.reading_text,
    );
    sketch.text(
        at(PIVOT.x, 312.0),
        Anchor::Middle,
        16.0,
        Weight::Regular,
        Role::Holds,
        &dial.target_label,
    );
    let angle_deg = dial.angle_of(dial.reading);
    let span_deg = SWEEP_DEG as f64 * dial.doubt.max(0.0) / dial.end();
    let doubt_deg = if span_deg.is_finite() {
        span_deg.min(45.0) as f32
    } else {
        0.0
    };
    sketch.push(Item::Needle {
        pivot: PIVOT,
        length: TIP,
        angle_deg,
        doubt_deg,
        role: Role::Needle,
    });
    sketch.finish(SIDE, SIDE, &dial.alt)
}

fn graduation(sketch: &mut Sketch, dial: &Dial) {
    let end = dial.end();
    let (line, numbered) = dial.steps();
    let every = (numbered / line).round() as i64;
    let half = if every % 2 == 0 { every / 2 } else { 0 };
    let lines = (end / line + 1e-6).floor() as i64;
    sketch.arc(PIVOT, RIM, START_DEG, SWEEP_DEG, solid(1.5, Role::Ink));
    for i in 0..=lines {
        let value = line * i as f64;
        let angle = dial.angle_of(value);
        let (length, width) = match i {
            i if i % every == 0 => (20.0, 3.0),
            i if half > 0 && i % half == 0 => (14.0, 1.6),
            _ => (9.0, 1.2),
        };
        sketch.line(
            &[polar(PIVOT, RIM, angle), polar(PIVOT, RIM - length, angle)],
            solid(width, Role::Ink),
        );
        if i % every == 0 {
            let place = polar(PIVOT, NUMBERS, angle);
            let text = number(value, numbered, dial.decimal);
            sketch.text(
                at(place.x, place.y + 7.0),
                Anchor::Middle,
                20.0,
                Weight::Bold,
                Role::Ink,
                &text,
            );
        }
    }
    if (end / line - lines as f64).abs() > 1e-6 {
        let angle = dial.angle_of(end);
        sketch.line(
            &[polar(PIVOT, RIM, angle), polar(PIVOT, RIM - 20.0, angle)],
            solid(3.0, Role::Ink),
        );
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn needle_comes_back_to_the_reading_it_was_dragged_from() {
        for (span, division) in [(30.0, 1.0), (100.0, 2.0), (76.0, 2.0), (1.0, 0.05), (760.0, 10.0)] {
            let dial = Dial {
                span,
                division,
                ..Dial::default()
            };
            for i in 0_u8..=20 {
                let reading = span * f64::from(i) / 20.0;
                let finger = polar(PIVOT, 120.0, dial.angle_of(reading));
                assert!(
                    (dial.reading_at(finger) - reading).abs() < span * 1e-4,
                    "{reading} of {span}"
                );
            }
        }
    }

    #[test]
    fn finger_in_the_gap_takes_the_nearer_end() {
        let dial = Dial::default();
        assert!((dial.reading_at(at(185.0, 350.0)) - 30.0).abs() < 1e-9);
        assert!(dial.reading_at(at(175.0, 350.0)).abs() < 1e-9);
    }

    #[test]
    fn readings_that_are_not_numbers_stand_at_an_end() {
        let dial = Dial::default();
        assert_eq!(dial.angle_of(f64::NAN), 135.0);
        assert_eq!(dial.angle_of(f64::INFINITY), 405.0);
        assert_eq!(dial.angle_of(-3.0), 135.0);
    }

    #[test]
    fn numbers_on_common_dials_are_the_ones_printed_on_them() {
        let numbers = |unit: &str, span, division| -> Vec<String> {
            let dial = Dial {
                unit: unit.into(),
                span,
                division,
                ..Dial::default()
            };
            gauge(&dial)
                .items
                .iter()
                .filter_map(|i| match i {
                    Item::Text { text, .. } if text != unit => Some(text.clone()),
                    _ => None,
                })
                .collect()
        };
        assert_eq!(
            numbers("inHg", 30.0, 1.0),
            ["0", "5", "10", "15", "20", "25", "30"]
        );
        assert_eq!(numbers("kPa", 100.0, 2.0), ["0", "20", "40", "60", "80", "100"]);
        assert_eq!(
            numbers("bar", 1.0, 0.02),
            ["0", "0.2", "0.4", "0.6", "0.8", "1.0"]
        );
        assert_eq!(
            numbers("cmHg", 76.0, 2.0),
            ["0", "10", "20", "30", "40", "50", "60", "70"]
        );
    }

    #[test]
    fn a_scale_without_sense_is_still_drawn() {
        for (span, division) in [
            (0.0, 0.0),
            (f64::NAN, 1.0),
            (-5.0, -1.0),
            (30.0, 1e-9),
            (1e12, 1.0),
        ] {
            let scene = gauge(&Dial {
                span,
                division,
                ..Dial::default()
            });
            assert!(
                scene.items.len() < 400,
                "{span}/{division}: {}",
                scene.items.len()
            );
        }
    }
}
