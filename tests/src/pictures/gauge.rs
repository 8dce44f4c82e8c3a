//! A vacuum gauge held into the bay.

use holdfast_report::{Dial, render_png, theme::Theme};
use image::RgbImage;

use super::{Canvas, bay, tone};

/// Draws a gauge that shows `reading` inHg, `width` pixels wide and three quarters as high.
#[must_use]
pub fn gauge(reading: f64, width: u32, seed: u32) -> Option<RgbImage> {
    let mut canvas = Canvas::new(width)?;
    bay::behind(&mut canvas, seed);
    canvas.tube(&[(0.5, 0.62), (0.52, 0.8)], 0.07, [0.20, 0.19, 0.18]);
    canvas.line(&[(0.5, 0.37), (0.5, 0.37)], 0.66, tone([0.10, 0.10, 0.11]));
    canvas.line(&[(0.495, 0.36), (0.495, 0.36)], 0.64, tone([0.50, 0.51, 0.53]));
    canvas.line(&[(0.5, 0.37), (0.5, 0.37)], 0.60, tone([0.16, 0.16, 0.17]));
    canvas.line(&[(0.5, 0.37), (0.5, 0.37)], 0.585, tone([0.94, 0.93, 0.90]));
    let mut picture = canvas.photographed(seed);
    let dial = Dial {
        reading,
        doubt: 0.0,
        target: None,
        ..Dial::default()
    };
    let scene = holdfast_report::gauge(&dial);
    let side = width * 54 / 100;
    let png = render_png(&scene, Theme::Day, side).ok()?;
    let face = image::load_from_memory(&png).ok()?.to_rgb8();
    let (left, top) = (width * 23 / 100, width * 10 / 100);
    // Only the disc of the dial lies on the gauge; ink darkens what is there, so that grain stays.
    let radius = f64::from(side) * 0.5;
    for (x, y, ink) in face.enumerate_pixels() {
        let far = (f64::from(x) - radius).hypot(f64::from(y) - radius);
        if far < radius && left + x < picture.width() && top + y < picture.height() {
            let under = picture.get_pixel_mut(left + x, top + y);
            for (value, ink) in under.0.iter_mut().zip(ink.0) {
                *value = (u16::from(*value) * u16::from(ink) / 251).min(255) as u8;
            }
        }
    }
    Some(picture)
}
