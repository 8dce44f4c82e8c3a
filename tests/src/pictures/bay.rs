//! What lies behind: pipes, a wall, dirt, and what a camera adds.

use image::RgbImage;

use super::{Canvas, tone};

/// Fills the picture with a dim engine bay.
pub(super) fn behind(canvas: &mut Canvas, seed: u32) {
    let bands = 60_u16;
    for band in 0..bands {
        let down = f32::from(band) / f32::from(bands);
        let (top, bottom) = (down * 0.75, (down + 1.2 / f32::from(bands)) * 0.75);
        let light = 0.30 - 0.16 * down;
        canvas.shape(
            &[(0.0, top), (1.0, top), (1.0, bottom), (0.0, bottom)],
            tone([light * 0.95, light, light * 1.04]),
        );
    }
    for index in 0..9_u16 {
        let chance = |salt: u32| share(seed.wrapping_mul(97) ^ (u32::from(index) * 31 + salt));
        let y = 0.05 + 0.7 * chance(1);
        let bend = 0.2 * (chance(2) - 0.5);
        let pipe: Vec<(f32, f32)> = (0..=24_u16)
            .map(|i| {
                let x = f32::from(i) / 20.0 - 0.1;
                (x, y + bend * (x * 5.0 + chance(3) * 6.0).sin())
            })
            .collect();
        let grey = 0.16 + 0.26 * chance(4);
        let warm = 0.94 + 0.12 * chance(5);
        canvas.tube(&pipe, 0.02 + 0.06 * chance(6), [grey * warm, grey, grey / warm]);
    }
}

/// Grain, dirt and darker corners, but not on the lowest `bar` rows.
pub(super) fn grain(picture: &mut RgbImage, seed: u32, bar: u32) {
    let (width, height) = picture.dimensions();
    let (w, h) = (width as f32, height as f32);
    let cell = (w / 90.0).max(2.0);
    for (x, y, pixel) in picture.enumerate_pixels_mut() {
        if y >= height - bar.min(height) {
            continue;
        }
        let fine = share(hash(x, y, seed)) - 0.5;
        let dirt = share(hash(
            (x as f32 / cell) as u32,
            (y as f32 / cell) as u32,
            seed ^ 0x9e37,
        )) - 0.5;
        let (dx, dy) = (x as f32 / w - 0.5, y as f32 / h - 0.5);
        let corner = 1.0 - 0.55 * (dx * dx + dy * dy);
        for channel in &mut pixel.0 {
            let value = f32::from(*channel) * corner + fine * 9.0 + dirt * 5.0;
            *channel = value.clamp(0.0, 255.0) as u8;
        }
    }
}

/// A number from 0 to 1 that only its seed decides.
fn share(seed: u32) -> f32 {
    (hash(seed, 17, 3) >> 8) as f32 / (1_u32 << 24) as f32
}

fn hash(x: u32, y: u32, seed: u32) -> u32 {
    let mut h = x.wrapping_mul(0x85eb_ca6b) ^ y.wrapping_mul(0xc2b2_ae35) ^ seed.wrapping_mul(0x27d4_eb2f);
    h ^= h >> 15;
    h = h.wrapping_mul(0x2c1b_3c6d);
    h ^= h >> 12;
    h = h.wrapping_mul(0x297a_2d39);
    h ^ (h >> 15)
}
