//! Pictures that look like photos from an engine bay and are none: drawn here, of nothing that exists, with words on
//! them that say so.

mod bay;
mod gauge;
mod hose;

use image::RgbImage;
use tiny_skia::{Color, Paint, PathBuilder, Pixmap, Rect, Stroke, Transform};

pub use gauge::gauge;
pub use hose::{Hose, hose};

/// What every picture says at its lower edge.
const DRAWN: &str = "Drawn for this example";

/// A picture under way; places are shares of its width, from the upper left corner.
struct Canvas {
    pixmap: Pixmap,
    width: f32,
    height: f32,
}

impl Canvas {
    /// An empty picture three quarters as high as wide.
    fn new(width: u32) -> Option<Self> {
        let height = width * 3 / 4;
        Some(Self {
            pixmap: Pixmap::new(width, height)?,
            width: width as f32,
            height: height as f32,
        })
    }

    fn at(&self, (x, y): (f32, f32)) -> (f32, f32) {
        (x * self.width, y * self.width)
    }

    /// A line through places, rounded, so wide.
    fn line(&mut self, places: &[(f32, f32)], width: f32, colour: Color) {
        let mut path = PathBuilder::new();
        let mut places = places.iter().map(|place| self.at(*place));
        if let Some((x, y)) = places.next() {
            path.move_to(x, y);
        }
        for (x, y) in places {
            path.line_to(x, y);
        }
        let stroke = Stroke {
            width: width * self.width,
            line_cap: tiny_skia::LineCap::Round,
            line_join: tiny_skia::LineJoin::Round,
            ..Stroke::default()
        };
        if let Some(path) = path.finish() {
            self.pixmap
                .stroke_path(&path, &paint(colour), &stroke, Transform::identity(), None);
        }
    }

    /// A shape with these corners.
    fn shape(&mut self, places: &[(f32, f32)], colour: Color) {
        let mut path = PathBuilder::new();
        for (index, place) in places.iter().enumerate() {
            let (x, y) = self.at(*place);
            if index == 0 {
                path.move_to(x, y);
            } else {
                path.line_to(x, y);
            }
        }
        path.close();
        if let Some(path) = path.finish() {
            let rule = tiny_skia::FillRule::Winding;
            self.pixmap
                .fill_path(&path, &paint(colour), rule, Transform::identity(), None);
        }
    }

    /// A tube through places: dark at its edges, light along a line above its middle.
    fn tube(&mut self, places: &[(f32, f32)], width: f32, [red, green, blue]: [f32; 3]) {
        const SHADES: u8 = 18;
        for step in 0..SHADES {
            let inward = f32::from(step) / f32::from(SHADES);
            let light = 0.35 + 0.65 * (inward * std::f32::consts::FRAC_PI_2).sin();
            let rise = -0.22 * width * inward;
            let moved: Vec<(f32, f32)> = places.iter().map(|(x, y)| (*x, y + rise)).collect();
            let colour = tone([red * light, green * light, blue * light]);
            self.line(&moved, width * (1.0 - inward * 0.94), colour);
        }
        let shine: Vec<(f32, f32)> = places.iter().map(|(x, y)| (*x, y - 0.26 * width)).collect();
        let bright = |c: f32| (c * 1.7 + 0.1).min(1.0);
        self.line(
            &shine,
            width * 0.05,
            tone([bright(red), bright(green), bright(blue)]),
        );
    }

    /// The picture as a camera gives it: a little grain, darker corners, and words that say what it is.
    fn photographed(mut self, seed: u32) -> RgbImage {
        let bar = self.height * 0.055;
        if let Some(rect) = Rect::from_xywh(0.0, self.height - bar, self.width, bar) {
            self.pixmap.fill_rect(
                rect,
                &paint(tone([0.08, 0.08, 0.08])),
                Transform::identity(),
                None,
            );
        }
        let (width, height) = (self.pixmap.width(), self.pixmap.height());
        let mut picture = RgbImage::new(width, height);
        for (pixel, from) in picture.pixels_mut().zip(self.pixmap.pixels()) {
            pixel.0 = [from.red(), from.green(), from.blue()];
        }
        bay::grain(&mut picture, seed, bar as u32);
        lettering(&mut picture, bar);
        picture
    }
}

/// The words at the lower edge, in the report's own type.
fn lettering(picture: &mut RgbImage, bar: f32) {
    use holdfast_report::{Anchor, Item, Point, Role, Scene, Weight, render_png, theme::Theme};
    let (width, size) = (picture.width(), bar * 0.55);
    let at = Point {
        x: size,
        y: bar * 0.5 + size * 0.36,
    };
    let scene = Scene {
        width: width as f32,
        height: bar,
        alt: DRAWN.into(),
        items: vec![Item::Text {
            at,
            anchor: Anchor::Start,
            size,
            weight: Weight::Regular,
            role: Role::Ink,
            text: DRAWN.into(),
        }],
    };
    let drawn = render_png(&scene, Theme::Night, width).ok();
    let strip = drawn.and_then(|png| image::load_from_memory(&png).ok());
    if let Some(strip) = strip {
        let top = i64::from(picture.height()) - bar as i64;
        image::imageops::overlay(picture, &strip.to_rgb8(), 0, top);
    }
}

fn tone([red, green, blue]: [f32; 3]) -> Color {
    let share = |c: f32| c.clamp(0.0, 1.0);
    Color::from_rgba(share(red), share(green), share(blue), 1.0).unwrap_or(Color::BLACK)
}

fn paint(colour: Color) -> Paint<'static> {
    let mut paint = Paint {
        anti_alias: true,
        ..Paint::default()
    };
    paint.set_color(colour);
    paint
}
