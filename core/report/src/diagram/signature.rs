//! A signature as strokes: on the pad where it is drawn, and as it is printed.

use crate::diagram::sketch::{Sketch, at, dashed, solid};
use crate::scene::{Anchor, Point, Role, Scene, Weight};

/// A pad to sign on, with what is drawn on it so far.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct SignaturePad {
    /// Alternative text.
    pub alt: String,
    /// Words under the line.
    pub hint: String,
    /// Strokes in the pad's units.
    pub strokes: Vec<Vec<Point>>,
}

/// The pad's width and height, scene units.
pub const PAD: (f32, f32) = (360.0, 150.0);
/// Width of the pen, in the pad's units.
const PEN: f32 = 2.4;

/// Draws the pad, 360 by 150 units: a frame, a line to sign on, the strokes.
#[must_use]
pub fn signature_pad(pad: &SignaturePad) -> Scene {
    const LINE: f32 = 112.0;
    const HINT: f32 = 14.0;
    let (width, height) = PAD;
    let mut sketch = Sketch::new();
    sketch.rounded(
        at(1.0, 1.0),
        width - 2.0,
        height - 2.0,
        12.0,
        Some(solid(1.0, Role::Line)),
        Some(Role::Raised),
    );
    sketch.line(&[at(24.0, LINE), at(width - 24.0, LINE)], dashed(1.2, Role::Line));
    sketch.text(
        at(width / 2.0, LINE + 24.0),
        Anchor::Middle,
        HINT,
        Weight::Regular,
        Role::QuietInk,
        &pad.hint,
    );
    ink(&mut sketch, &pad.strokes, PEN);
    sketch.finish(width, height, &pad.alt)
}

/// A signature cut to what is drawn, as it prints; none where nothing is.
#[must_use]
pub fn signature(strokes: &[Vec<Point>], alt: &str) -> Option<Scene> {
    let places = || {
        strokes
            .iter()
            .flatten()
            .filter(|p| p.x.is_finite() && p.y.is_finite())
    };
    let span = |of: fn(&Point) -> f32| {
        places().fold(None, |span: Option<(f32, f32)>, p| {
            let (low, high) = span.unwrap_or((of(p), of(p)));
            Some((low.min(of(p)), high.max(of(p))))
        })
    };
    let ((left, right), (top, bottom)) = (span(|p| p.x)?, span(|p| p.y)?);
    let moved: Vec<Vec<Point>> = strokes
        .iter()
        .map(|stroke| {
            stroke
                .iter()
                .filter(|p| p.x.is_finite() && p.y.is_finite())
                .map(|p| at(p.x - left + PEN, p.y - top + PEN))
                .collect()
        })
        .collect();
    let mut sketch = Sketch::new();
    ink(&mut sketch, &moved, PEN);
    Some(sketch.finish(right - left + 2.0 * PEN, bottom - top + 2.0 * PEN, alt))
}

/// The strokes; one of a single place is a dot.
fn ink(sketch: &mut Sketch, strokes: &[Vec<Point>], pen: f32) {
    for stroke in strokes {
        match stroke.as_slice() {
            [] => {}
            [dot] => sketch.circle(*dot, pen * 0.7, None, Some(Role::Ink)),
            line => sketch.line(line, solid(pen, Role::Ink)),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scene::Item;

    #[test]
    fn a_printed_signature_is_cut_to_what_is_drawn() {
        let strokes = vec![vec![at(100.0, 50.0), at(180.0, 90.0)], vec![at(200.0, 60.0)]];
        let scene = signature(&strokes, "signed").unwrap();
        assert_eq!((scene.width, scene.height), (100.0 + 2.0 * PEN, 40.0 + 2.0 * PEN));
        assert_eq!(scene.items.len(), 2);
        assert!(matches!(scene.items[1], Item::Circle { .. }));
    }

    #[test]
    fn nothing_drawn_is_no_signature() {
        assert_eq!(signature(&[], "x"), None);
        assert_eq!(signature(&[vec![at(f32::NAN, 1.0)]], "x"), None);
    }
}
