//! The expected band with the reading on it.

use crate::diagram::label::wrapped;
use crate::diagram::scale::step;
use crate::diagram::sketch::{Sketch, at, solid};
use crate::diagram::state::State;
use crate::scene::{Anchor, Role, Scene, Weight};
use crate::text::Ruler;

/// A reading beside what was expected. Values in one unit; all words are final.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Band {
    /// Alternative text.
    pub alt: String,
    /// What is measured, such as "pin 1 to chassis ground", or empty.
    pub title: String,
    /// Lowest expected value.
    pub low: f64,
    /// Highest expected value.
    pub high: f64,
    /// The lower end as text with unit.
    pub low_text: String,
    /// The upper end as text with unit; left out when it equals the lower.
    pub high_text: String,
    /// Words for the band, such as "expected".
    pub band_label: String,
    /// The reading, if there is one.
    pub reading: Option<f64>,
    /// Half width of the reading's doubt, same unit.
    pub doubt: f64,
    /// The reading as text with unit, or words such as "over range".
    pub reading_text: String,
    /// What the reading says.
    pub state: Option<State>,
}

const WIDTH: f32 = 360.0;
const HEIGHT: f32 = 132.0;
const LEFT: f32 = 18.0;
const RIGHT: f32 = 342.0;
const AXIS: f32 = 84.0;
const SMALL: f32 = 15.0;
/// From line to line of the title.
const LINE: f32 = 17.0;
const BIG: f32 = 22.0;
/// How far the arrow of a reading beyond the scale goes past its end.
const BEYOND: f32 = 14.0;

/// Draws the band, 360 by 132 units.
#[must_use]
pub fn band(band: &Band) -> Scene {
    let finite = |v: f64| if v.is_finite() { v } else { 0.0 };
    let reading = band.reading.filter(|r| r.is_finite());
    let (expected_low, expected_high) = (finite(band.low.min(band.high)), finite(band.high.max(band.low)));
    let doubt = finite(band.doubt).max(0.0);
    let least = reading.map_or(expected_low, |r| (r - doubt).min(expected_low));
    let most = reading.map_or(expected_high, |r| (r + doubt).max(expected_high));
    let room = (most - least).max(most.abs().max(least.abs()) * 0.05).max(1e-9);
    // From zero where zero is near, else with room on both sides.
    let start = if least >= 0.0 && least < room * 2.0 {
        0.0
    } else {
        least - room * 0.25
    };
    let end = most + room * 0.25;
    let x = |v: f64| LEFT + (RIGHT - LEFT) * ((v - start) / (end - start)).clamp(0.0, 1.0) as f32;
    let mut sketch = Sketch::new();

    let (size, title) = heading(band);
    // The last of two lines stands beside the reading, too.
    let first = 24.0 - LINE / 2.0 * title.len().saturating_sub(1) as f32;
    for (n, line) in title.iter().enumerate() {
        let place = at(LEFT, first + LINE * n as f32);
        sketch.text(place, Anchor::Start, SMALL, Weight::Regular, Role::QuietInk, line);
    }
    let role = band.state.map_or(Role::Ink, State::role);
    sketch.text(
        at(RIGHT, 26.0),
        Anchor::End,
        size,
        Weight::Bold,
        role,
        &band.reading_text,
    );

    let (from, to) = (x(expected_low), x(expected_high).max(x(expected_low) + 4.0));
    sketch.rect(at(from, AXIS - 14.0), to - from, 28.0, None, Some(Role::Band));
    for edge in [from, to] {
        sketch.line(
            &[at(edge, AXIS - 14.0), at(edge, AXIS + 14.0)],
            solid(1.8, Role::Holds),
        );
    }
    sketch.line(&[at(LEFT, AXIS), at(RIGHT, AXIS)], solid(1.2, Role::Ink));
    graduation(&mut sketch, start, end, x);
    expected_words(&mut sketch, band, from, to);

    // Judged without a figure: it lies beyond the scale.
    if let (None, Some(state)) = (reading, band.state) {
        let (from, tip) = (at(RIGHT, AXIS), at(RIGHT + BEYOND, AXIS));
        let wing = |up: f32| at(from.x, AXIS + up);
        sketch.shape(&[wing(-7.0), wing(7.0), tip], None, Some(Role::Needle));
        sketch.state(at(RIGHT, AXIS - 24.0), 7.0, state);
    }
    if let Some(reading) = reading {
        let place = x(reading);
        if doubt > 0.0 {
            let (low, high) = (x(reading - doubt), x(reading + doubt));
            sketch.line(
                &[at(low, AXIS - 24.0), at(high, AXIS - 24.0)],
                solid(2.0, Role::Needle),
            );
            for end in [low, high] {
                sketch.line(
                    &[at(end, AXIS - 28.0), at(end, AXIS - 20.0)],
                    solid(2.0, Role::Needle),
                );
            }
        }
        let tip = at(place, AXIS + 1.0);
        sketch.shape(
            &[at(place - 6.0, AXIS - 30.0), at(place + 6.0, AXIS - 30.0), tip],
            None,
            Some(Role::Needle),
        );
        if let Some(state) = band.state {
            sketch.state(at(place, AXIS - 41.0), 7.0, state);
        }
    }
    sketch.finish(WIDTH, HEIGHT, &band.alt)
}

/// How large the reading is, and the title in two lines at most beside it: words such as "over range" give way to it.
fn heading(band: &Band) -> (f32, Vec<String>) {
    let beside = |size: f32| {
        let taken = Ruler::of(Weight::Bold, size).width(&band.reading_text);
        let room = RIGHT - LEFT - taken - 12.0;
        let whole = wrapped(&band.title, Weight::Regular, SMALL, room, usize::MAX).len() <= 2;
        (whole, wrapped(&band.title, Weight::Regular, SMALL, room, 2))
    };
    let sizes = [BIG, 18.0, SMALL];
    let fitting = sizes.into_iter().find(|size| beside(*size).0);
    let size = fitting.unwrap_or(SMALL);
    (size, beside(size).1)
}

fn graduation(sketch: &mut Sketch, start: f64, end: f64, x: impl Fn(f64) -> f32) {
    let by = step(end - start, 12.0);
    let first = (start / by).ceil() as i64;
    let last = (end / by).floor() as i64;
    for i in first..=last {
        let place = x(i as f64 * by);
        sketch.line(
            &[at(place, AXIS - 4.0), at(place, AXIS + 4.0)],
            solid(1.2, Role::Ink),
        );
    }
}

/// The ends of the band in words under it, on one line where the band is narrow.
fn expected_words(sketch: &mut Sketch, band: &Band, from: f32, to: f32) {
    let one = band.high_text.is_empty() || band.high_text == band.low_text;
    let ends = if one {
        band.low_text.clone()
    } else {
        format!("{} – {}", band.low_text, band.high_text)
    };
    let words = [band.band_label.as_str(), ends.as_str()]
        .into_iter()
        .filter(|w| !w.is_empty());
    let words = words.collect::<Vec<_>>().join("  ");
    let middle = (from + to) / 2.0;
    let y = AXIS + 34.0;
    let half = Ruler::of(Weight::Regular, SMALL).width(&words) / 2.0;
    let (place, anchor) = if middle - half < LEFT {
        (LEFT, Anchor::Start)
    } else if middle + half > RIGHT {
        (RIGHT, Anchor::End)
    } else {
        (middle, Anchor::Middle)
    };
    sketch.text(at(place, y), anchor, SMALL, Weight::Regular, Role::Holds, &words);
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scene::Item;

    fn needle(scene: &Scene) -> Option<f32> {
        scene.items.iter().find_map(|i| match i {
            Item::Path {
                points,
                fill: Some(Role::Needle),
                ..
            } => points.last().map(|p| p.x),
            _ => None,
        })
    }

    fn shaded(scene: &Scene) -> (f32, f32) {
        scene
            .items
            .iter()
            .find_map(|i| match i {
                Item::Path {
                    points,
                    fill: Some(Role::Band),
                    ..
                } => Some((points[0].x, points[1].x)),
                _ => None,
            })
            .unwrap()
    }

    #[test]
    fn reading_inside_stands_inside_and_outside_stands_outside() {
        let base = Band {
            low: 12.3,
            high: 12.6,
            reading: Some(12.4),
            ..Band::default()
        };
        let scene = band(&base);
        let (from, to) = shaded(&scene);
        let place = needle(&scene).unwrap();
        assert!(from < place && place < to);
        let scene = band(&Band {
            reading: Some(2.9),
            ..base
        });
        assert!(needle(&scene).unwrap() < shaded(&scene).0);
    }

    #[test]
    fn words_for_a_reading_leave_the_title_whole_and_point_beyond_the_scale() {
        let scene = band(&Band {
            title: "Ohms de l’électrovanne".into(),
            low: 20.0,
            high: 50.0,
            reading_text: "hors calibre, ouvert".into(),
            state: Some(State::Leaks),
            ..Band::default()
        });
        let words = scene.items.iter().filter_map(|item| match item {
            Item::Text { text, .. } => Some(text.as_str()),
            _ => None,
        });
        assert!(words.into_iter().all(|text| !text.ends_with('…')));
        assert!(needle(&scene).is_some_and(|tip| tip > RIGHT));
    }

    #[test]
    fn an_open_circuit_has_no_needle() {
        let scene = band(&Band {
            low: 20.0,
            high: 50.0,
            reading_text: "over range".into(),
            ..Band::default()
        });
        assert_eq!(needle(&scene), None);
    }

    #[test]
    fn numbers_without_sense_draw_nothing_outside_the_scene() {
        let wild = Band {
            low: f64::NAN,
            high: 1e300,
            reading: Some(-1e300),
            doubt: f64::INFINITY,
            ..Band::default()
        };
        for item in band(&wild).items {
            if let Item::Path { points, .. } = item {
                assert!(points.iter().all(|p| (0.0..=WIDTH).contains(&p.x)), "{points:?}");
            }
        }
    }
}
