//! A scene as PNG, by tiny-skia, with real shaped text.

use std::path::{Path as FilePath, PathBuf};

use skrifa::instance::{LocationRef, Size};
use skrifa::outline::{DrawSettings, OutlinePen};
use skrifa::{GlyphId, MetadataProvider};
use tiny_skia::{
    FillRule, FilterQuality, IntSize, LineCap, LineJoin, Paint, Path, PathBuilder, Pixmap, PixmapPaint,
    StrokeDash, Transform,
};

use super::{Outline, Tint, draw};
use crate::scene::{Dash, Point, Role, Scene, Stroke, dash_lengths};
use crate::text::{Shaped, Typesetter};
use crate::theme::{Theme, colour};

/// Why a scene could not become a PNG.
#[derive(Debug, thiserror::Error)]
pub enum RenderError {
    /// The scene or the picture has no size, or one over 16,384 pixels a side.
    #[error("a picture of {width} × {height} pixels can't be drawn")]
    Size {
        /// Pixels across.
        width: u32,
        /// Pixels down.
        height: u32,
    },
    /// A picture file named by the scene could not be read.
    #[error("picture {} can't be read", path.display())]
    Image {
        /// The file.
        path: PathBuf,
        /// Why not.
        #[source]
        source: image::ImageError,
    },
    /// The PNG could not be written.
    #[error("the PNG can't be encoded")]
    Encode,
}

/// Draws a scene `width_px` pixels wide on the theme's paper.
///
/// # Errors
/// [`RenderError::Size`] unless `1 <= width_px <= 16384` and the height comes out in the same range;
/// [`RenderError::Image`] when a picture the scene names can't be read.
pub fn render_png(scene: &Scene, theme: Theme, width_px: u32) -> Result<Vec<u8>, RenderError> {
    let scale = width_px as f32 / scene.width;
    let height_px = (scene.height * scale).ceil() as u32;
    let size = RenderError::Size {
        width: width_px,
        height: height_px,
    };
    if !(1..=16_384).contains(&width_px) || !(1..=16_384).contains(&height_px) {
        return Err(size);
    }
    let mut pixels = Pixels {
        pixmap: Pixmap::new(width_px, height_px).ok_or(size)?,
        theme,
        to_pixels: Transform::from_scale(scale, scale),
        type_: Typesetter::new(),
    };
    pixels.pixmap.fill(skia(Role::Paper, theme));
    for item in &scene.items {
        draw(&mut pixels, item)?;
    }
    pixels.pixmap.encode_png().map_err(|_| RenderError::Encode)
}

fn skia(role: Role, theme: Theme) -> tiny_skia::Color {
    let [red, green, blue] = colour(role, theme);
    tiny_skia::Color::from_rgba8(red, green, blue, 255)
}

struct Pixels {
    pixmap: Pixmap,
    theme: Theme,
    to_pixels: Transform,
    type_: Typesetter,
}

impl super::Canvas for Pixels {
    type Error = RenderError;

    fn type_(&mut self) -> &mut Typesetter {
        &mut self.type_
    }

    fn outline(&mut self, outline: &Outline<'_>, stroke: Option<Stroke>, fill: Option<Tint>) {
        let mut path = PathBuilder::new();
        outline.write(&mut path);
        let Some(path) = path.finish() else { return };
        if let Some(tint) = fill {
            self.fill(&path, tint);
        }
        if let Some(stroke) = stroke {
            self.stroke(&path, stroke);
        }
    }

    fn line(&mut self, line: &Shaped, start: Point, size: f32, role: Role) -> Result<(), RenderError> {
        for run in &line.runs {
            let Some(font) = self.type_.font(run.face) else {
                continue;
            };
            let outlines = font.outline_glyphs();
            let mut pen = Pen {
                path: PathBuilder::new(),
                x: start.x + run.x,
                y: start.y,
            };
            for glyph in &run.glyphs {
                let (x, y) = (pen.x, pen.y);
                pen.x += glyph.dx;
                pen.y -= glyph.dy;
                if let Some(outline) = outlines.get(GlyphId::new(glyph.id)) {
                    // A glyph whose outline is damaged is left blank.
                    let settings = DrawSettings::unhinted(Size::new(size), LocationRef::default());
                    let _ = outline.draw(settings, &mut pen);
                }
                pen.x = x + glyph.advance;
                pen.y = y;
            }
            if let Some(path) = pen.path.finish() {
                self.fill(&path, Tint::solid(role));
            }
        }
        Ok(())
    }

    fn picture(&mut self, path: &str, corner: Point, width: f32, height: f32) -> Result<(), RenderError> {
        let path = FilePath::new(path);
        let failed = |source| RenderError::Image {
            path: path.to_owned(),
            source,
        };
        let reader = image::ImageReader::open(path).map_err(|e| failed(image::ImageError::IoError(e)))?;
        let reader = reader
            .with_guessed_format()
            .map_err(|e| failed(image::ImageError::IoError(e)))?;
        let mut pixels = reader.decode().map_err(failed)?.to_rgba8();
        let size = IntSize::from_wh(pixels.width(), pixels.height()).ok_or(RenderError::Encode)?;
        for pixel in pixels.pixels_mut() {
            let image::Rgba([red, green, blue, alpha]) = *pixel;
            let premultiplied = tiny_skia::ColorU8::from_rgba(red, green, blue, alpha).premultiply();
            pixel.0 = [
                premultiplied.red(),
                premultiplied.green(),
                premultiplied.blue(),
                alpha,
            ];
        }
        let Some(picture) = Pixmap::from_vec(pixels.into_raw(), size) else {
            return Err(RenderError::Encode);
        };
        let fit = self
            .to_pixels
            .pre_translate(corner.x, corner.y)
            .pre_scale(width / size.width() as f32, height / size.height() as f32);
        let look = PixmapPaint {
            quality: FilterQuality::Bilinear,
            ..PixmapPaint::default()
        };
        self.pixmap.draw_pixmap(0, 0, picture.as_ref(), &look, fit, None);
        Ok(())
    }
}

impl Pixels {
    fn fill(&mut self, path: &Path, tint: Tint) {
        let paint = self.ink(tint);
        self.pixmap
            .fill_path(path, &paint, FillRule::Winding, self.to_pixels, None);
    }

    fn stroke(&mut self, path: &Path, stroke: Stroke) {
        let dash = dash_lengths(stroke).and_then(|lengths| StrokeDash::new(lengths, 0.0));
        let round = stroke.dash == Dash::Dotted;
        let look = tiny_skia::Stroke {
            width: stroke.width,
            dash,
            line_cap: if round { LineCap::Round } else { LineCap::Butt },
            line_join: LineJoin::Round,
            ..tiny_skia::Stroke::default()
        };
        let paint = self.ink(Tint::solid(stroke.role));
        self.pixmap.stroke_path(path, &paint, &look, self.to_pixels, None);
    }

    fn ink(&self, tint: Tint) -> Paint<'static> {
        let mut colour = skia(tint.role, self.theme);
        colour.set_alpha(tint.opacity);
        let mut paint = Paint::default();
        paint.set_color(colour);
        paint
    }
}

impl super::Path for PathBuilder {
    fn move_to(&mut self, x: f32, y: f32) {
        Self::move_to(self, x, y);
    }

    fn line_to(&mut self, x: f32, y: f32) {
        Self::line_to(self, x, y);
    }

    fn cubic_to(&mut self, ax: f32, ay: f32, bx: f32, by: f32, x: f32, y: f32) {
        Self::cubic_to(self, ax, ay, bx, by, x, y);
    }

    fn close(&mut self) {
        Self::close(self);
    }
}

/// Writes glyph outlines into a path at the place of the text.
struct Pen {
    path: PathBuilder,
    x: f32,
    y: f32,
}

impl OutlinePen for Pen {
    fn move_to(&mut self, x: f32, y: f32) {
        self.path.move_to(self.x + x, self.y - y);
    }

    fn line_to(&mut self, x: f32, y: f32) {
        self.path.line_to(self.x + x, self.y - y);
    }

    fn quad_to(&mut self, cx: f32, cy: f32, x: f32, y: f32) {
        self.path
            .quad_to(self.x + cx, self.y - cy, self.x + x, self.y - y);
    }

    fn curve_to(&mut self, ax: f32, ay: f32, bx: f32, by: f32, x: f32, y: f32) {
        self.path.cubic_to(
            self.x + ax,
            self.y - ay,
            self.x + bx,
            self.y - by,
            self.x + x,
            self.y - y,
        );
    }

    fn close(&mut self) {
        self.path.close();
    }
}
