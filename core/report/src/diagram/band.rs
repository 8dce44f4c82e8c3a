//! The expected band with the reading on it.

use crate::diagram::sketch::{Sketch, at, solid};
use crate::diagram::state::State;
use crate::scene::{Anchor, Role, Scene, Weight};

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
    /// The two ends as text with unit; when both ends are equal the first is enough.
    pub low_text: String,
    /// See `low_text`.
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

/// Draws the band, 360 by 120 units.
#[must_use]
pub fn band(band: &Band) -> Scene {
    let mut sketch = Sketch::new();
    let reading = band.reading.filter(|r| r.is_finite());
    let low = reading.unwrap_or(band.low).min(band.low).min(0.0);
    let high = reading.unwrap_or(band.high).max(band.high).max(low + 1e-9);
    #[expect(clippy::cast_possible_truncation, reason = "a place to draw")]
    let x = |v: f64| 24.0 + 312.0 * ((v - low) / (high - low)) as f32;
    sketch.line(&[at(24.0, 70.0), at(336.0, 70.0)], solid(2.0, Role::Line));
    sketch.rect(
        at(x(band.low), 58.0),
        (x(band.high) - x(band.low)).max(3.0),
        24.0,
        None,
        Some(Role::Band),
    );
    if let Some(reading) = reading {
        sketch.line(
            &[at(x(reading), 50.0), at(x(reading), 90.0)],
            solid(3.0, Role::Needle),
        );
    }
    sketch.text(
        at(24.0, 24.0),
        Anchor::Start,
        14.0,
        Weight::Regular,
        Role::QuietInk,
        &band.title,
    );
    sketch.text(
        at(336.0, 24.0),
        Anchor::End,
        18.0,
        Weight::Bold,
        Role::Ink,
        &band.reading_text,
    );
    sketch.text(
        at(x(band.low), 108.0),
        Anchor::Start,
        14.0,
        Weight::Regular,
        Role::Ink,
        &band.low_text,
    );
    sketch.finish(360.0, 120.0, &band.alt)
}
