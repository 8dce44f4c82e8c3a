//! The vibration's spectrum: how strong it is at each frequency, in one state of the mounts and the other.

use crate::diagram::axes::{Axes, HEIGHT, WIDTH};
use crate::diagram::label::cut_to;
use crate::diagram::sketch::{Sketch, at, dashed, solid};
use crate::scene::{Anchor, Point, Role, Scene, Stroke, Weight};

/// One or two recordings on one pair of axes.
#[derive(Debug, Clone, PartialEq)]
pub struct Spectrum {
    /// Alternative text.
    pub alt: String,
    /// Unit of the levels, such as "mg".
    pub unit: String,
    /// Words under the other axis, such as "vibrations a second (Hz)".
    pub frequency_label: String,
    /// The recordings: the first is drawn whole, the second broken.
    pub series: Vec<SpectrumSeries>,
    /// Decimal mark of the person's language, for the numbers on the axes.
    pub decimal: char,
}

/// One recording.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct SpectrumSeries {
    /// Name, such as "with vacuum".
    pub label: String,
    /// Frequency in Hz and level, in rising frequency.
    pub lines: Vec<(f64, f64)>,
}

const SMALL: f32 = 14.0;
/// Between a peak and its name.
const BESIDE: f32 = 8.0;

/// Draws the spectrum, 360 by 264 units, with each recording's name at its highest peak.
#[must_use]
pub fn spectrum(spectrum: &Spectrum) -> Scene {
    let points = || spectrum.series.iter().flat_map(|series| series.lines.iter());
    let most = |pick: fn(&(f64, f64)) -> f64| {
        points()
            .map(pick)
            .filter(|figure| figure.is_finite())
            .fold(0.0_f64, f64::max)
    };
    let axes = Axes::over(most(|line| line.0).max(1.0), 0.0, most(|line| line.1).max(1e-6));
    let mut sketch = Sketch::new();
    axes.draw(
        &mut sketch,
        &spectrum.unit,
        &spectrum.frequency_label,
        spectrum.decimal,
    );
    let looks: [Stroke; 2] = [solid(2.2, Role::Needle), dashed(1.8, Role::Ink)];
    let mut taken: Option<f32> = None;
    for (series, look) in spectrum.series.iter().zip(looks) {
        let line = axes.line(&series.lines);
        sketch.line(&line, look);
        if let Some(peak) = line.iter().copied().min_by(|a, b| a.y.total_cmp(&b.y)) {
            let y = clear_of(peak.y + 5.0, taken);
            name(&mut sketch, at(peak.x, y), &series.label, look.role);
            taken = Some(y);
        }
    }
    sketch.finish(WIDTH, HEIGHT, &spectrum.alt)
}

/// A height for words that is a line apart from other words.
fn clear_of(y: f32, taken: Option<f32>) -> f32 {
    const LINE: f32 = 17.0;
    match taken {
        Some(other) if (y - other).abs() < LINE => other + LINE,
        _ => y,
    }
}

/// Words beside a peak, on the side that has more room.
fn name(sketch: &mut Sketch, peak: Point, words: &str, role: Role) {
    let (x, anchor, room) = if peak.x < WIDTH / 2.0 {
        (peak.x + BESIDE, Anchor::Start, WIDTH - peak.x - BESIDE)
    } else {
        (peak.x - BESIDE, Anchor::End, peak.x - BESIDE)
    };
    let words = cut_to(words, Weight::Bold, SMALL, room);
    sketch.text(at(x, peak.y), anchor, SMALL, Weight::Bold, role, &words);
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scene::Item;

    fn drawn(levels: [f64; 2]) -> Scene {
        let series = |label: &str, level: f64| SpectrumSeries {
            label: label.into(),
            lines: vec![(12.5, 1.0), (25.0, level), (f64::NAN, 90.0), (50.0, 2.0)],
        };
        spectrum(&Spectrum {
            alt: String::new(),
            unit: "mg".into(),
            frequency_label: "Hz".into(),
            series: vec![series("on", levels[0]), series("off", levels[1])],
            decimal: '.',
        })
    }

    fn place(scene: &Scene, words: &str) -> Point {
        let is_it = |item: &Item| match item {
            Item::Text { text, at, .. } if text == words => Some(*at),
            _ => None,
        };
        scene.items.iter().find_map(is_it).expect(words)
    }

    #[test]
    fn each_recording_is_named_at_its_peak() {
        let scene = drawn([10.0, 40.0]);
        let (on, off) = (place(&scene, "on"), place(&scene, "off"));
        assert!(off.y < on.y, "the stronger one stands higher");
    }

    #[test]
    fn names_of_peaks_of_one_height_stand_apart() {
        let scene = drawn([30.0, 30.0]);
        let (on, off) = (place(&scene, "on"), place(&scene, "off"));
        assert!((on.y - off.y).abs() >= 17.0);
    }

    #[test]
    fn nothing_recorded_draws_axes_alone() {
        let empty = Spectrum {
            alt: String::new(),
            unit: "mg".into(),
            frequency_label: "Hz".into(),
            series: Vec::new(),
            decimal: '.',
        };
        assert!(!spectrum(&empty).items.is_empty());
    }
}
