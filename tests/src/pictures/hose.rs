//! A vacuum hose on its nipple: split, or new.

use image::RgbImage;

use super::{Canvas, bay, tone};

/// The state of the hose.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Hose {
    /// Old, with a split at its end.
    Split,
    /// New, with a clip.
    New,
}

/// Draws a hose end, `width` pixels wide and three quarters as high.
#[must_use]
pub fn hose(hose: Hose, width: u32, seed: u32) -> Option<RgbImage> {
    let mut canvas = Canvas::new(width)?;
    bay::behind(&mut canvas, seed);
    // The mount: a round metal can with a plastic nipple.
    canvas.tube(&[(0.86, 0.52), (1.1, 0.58)], 0.34, [0.42, 0.43, 0.45]);
    canvas.tube(&[(0.70, 0.42), (0.84, 0.47)], 0.075, [0.16, 0.16, 0.17]);
    canvas.tube(&[(0.745, 0.435), (0.755, 0.439)], 0.095, [0.16, 0.16, 0.17]);
    let path: Vec<(f32, f32)> = (0..=40_u8)
        .map(|i| {
            let t = f32::from(i) / 40.0;
            (-0.05 + 0.76 * t, 0.16 + 0.26 * t + 0.05 * (t * 4.2).sin())
        })
        .collect();
    let rubber = match hose {
        Hose::Split => [0.20, 0.19, 0.18],
        Hose::New => [0.13, 0.14, 0.17],
    };
    canvas.tube(&path, 0.115, rubber);
    match hose {
        Hose::Split => split(&mut canvas),
        Hose::New => clip(&mut canvas),
    }
    Some(canvas.photographed(seed))
}

/// A slit along the hose near its end, with cracks around it.
fn split(canvas: &mut Canvas) {
    let slit = [
        (0.520, 0.352),
        (0.548, 0.356),
        (0.580, 0.364),
        (0.612, 0.377),
        (0.650, 0.398),
        (0.618, 0.392),
        (0.582, 0.385),
        (0.550, 0.371),
    ];
    canvas.shape(&slit, tone([0.015, 0.015, 0.015]));
    canvas.line(&slit[..5], 0.0035, tone([0.46, 0.44, 0.42]));
    for (from, to) in [
        ((0.50, 0.345), (0.52, 0.353)),
        ((0.56, 0.352), (0.572, 0.338)),
        ((0.60, 0.394), (0.594, 0.412)),
        ((0.635, 0.383), (0.652, 0.372)),
        ((0.47, 0.352), (0.482, 0.34)),
        ((0.44, 0.33), (0.455, 0.319)),
    ] {
        canvas.line(&[from, to], 0.0028, tone([0.05, 0.05, 0.05]));
    }
}

/// A spring clip around the hose.
fn clip(canvas: &mut Canvas) {
    for (x, y) in [(0.598, 0.376), (0.634, 0.392)] {
        let ring = [(x - 0.012, y + 0.056), (x + 0.002, y), (x + 0.02, y - 0.056)];
        canvas.line(&ring, 0.012, tone([0.42, 0.43, 0.45]));
        canvas.line(&ring, 0.005, tone([0.80, 0.82, 0.84]));
    }
    canvas.line(&[(0.618, 0.319), (0.655, 0.334)], 0.016, tone([0.52, 0.53, 0.55]));
    canvas.line(&[(0.618, 0.316), (0.655, 0.332)], 0.005, tone([0.86, 0.87, 0.88]));
}
