//! A scene as PNG, by tiny-skia, with real shaped text.

use std::path::{Path as FilePath, PathBuf};

use skrifa::instance::{LocationRef, Size};
use skrifa::outline::{DrawSettings, OutlinePen};
use skrifa::{GlyphId, MetadataProvider};
use tiny_skia::{
    FillRule, FilterQuality, IntSize, LineCap, LineJoin, Paint, Path, PathBuilder, Pixmap, PixmapPaint,
    StrokeDash, Transform,
};

use crate::scene::{
    Anchor, Dash, Ends, Item, Point, Role, Scene, Stroke, arc_points, dash_lengths, needle_shapes,
};
use crate::text::Typesetter;
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
    let mut canvas = Canvas {
        pixmap: Pixmap::new(width_px, height_px).ok_or(size)?,
        theme,
        to_pixels: Transform::from_scale(scale, scale),
        type_: Typesetter::new(),
    };
    canvas.pixmap.fill(skia(Role::Paper, theme));
    for item in &scene.items {
        canvas.draw(item)?;
    }
    canvas.pixmap.encode_png().map_err(|_| RenderError::Encode)
}

fn skia(role: Role, theme: Theme) -> tiny_skia::Color {
    let [red, green, blue] = colour(role, theme);
    tiny_skia::Color::from_rgba8(red, green, blue, 255)
}

struct Canvas {
    pixmap: Pixmap,
    theme: Theme,
    to_pixels: Transform,
    type_: Typesetter,
}

impl Canvas {
    fn draw(&mut self, item: &Item) -> Result<(), RenderError> {
        match item {
            Item::Path {
                points,
                ends,
                stroke,
                fill,
            } => {
                self.paint(path_of(points, *ends).as_ref(), *stroke, *fill);
            }
            Item::Circle {
                centre,
                radius,
                stroke,
                fill,
            } => {
                self.paint(
                    PathBuilder::from_circle(centre.x, centre.y, *radius).as_ref(),
                    *stroke,
                    *fill,
                );
            }
            Item::Arc {
                centre,
                radius,
                start_deg,
                sweep_deg,
                stroke,
            } => {
                let points = arc_points(*centre, *radius, *start_deg, *sweep_deg);
                self.paint(path_of(&points, Ends::Open).as_ref(), Some(*stroke), None);
            }
            Item::Text {
                at,
                anchor,
                size,
                weight,
                role,
                text,
            } => {
                let shaped = self.type_.line(text, *weight, *size);
                let left = match anchor {
                    Anchor::Start => at.x,
                    Anchor::Middle => at.x - shaped.width / 2.0,
                    Anchor::End => at.x - shaped.width,
                };
                for run in &shaped.runs {
                    let Some(font) = self.type_.font(run.face) else {
                        continue;
                    };
                    let outlines = font.outline_glyphs();
                    let mut pen = Pen {
                        path: PathBuilder::new(),
                        x: left + run.x,
                        y: at.y,
                    };
                    for glyph in &run.glyphs {
                        let (x, y) = (pen.x, pen.y);
                        pen.x += glyph.dx;
                        pen.y -= glyph.dy;
                        if let Some(outline) = outlines.get(GlyphId::new(glyph.id)) {
                            // A glyph whose outline is damaged is left blank.
                            let settings = DrawSettings::unhinted(Size::new(*size), LocationRef::default());
                            let _ = outline.draw(settings, &mut pen);
                        }
                        pen.x = x + glyph.advance;
                        pen.y = y;
                    }
                    self.paint(pen.path.finish().as_ref(), None, Some(*role));
                }
            }
            Item::Image {
                path,
                at,
                width,
                height,
            } => self.image(FilePath::new(path), *at, *width, *height)?,
            Item::Needle {
                pivot,
                length,
                angle_deg,
                doubt_deg,
                role,
            } => {
                for shape in needle_shapes(*pivot, *length, *angle_deg, *doubt_deg) {
                    let path = path_of(&shape.points, Ends::Closed);
                    self.fill_with_opacity(path.as_ref(), *role, shape.opacity);
                }
            }
            Item::Region { .. } => {}
        }
        Ok(())
    }

    fn paint(&mut self, path: Option<&Path>, stroke: Option<Stroke>, fill: Option<Role>) {
        if let Some(role) = fill {
            self.fill_with_opacity(path, role, 1.0);
        }
        if let (Some(path), Some(stroke)) = (path, stroke) {
            let dash = dash_lengths(stroke).and_then(|lengths| StrokeDash::new(lengths, 0.0));
            let round = stroke.dash == Dash::Dotted;
            let look = tiny_skia::Stroke {
                width: stroke.width,
                dash,
                line_cap: if round { LineCap::Round } else { LineCap::Butt },
                line_join: LineJoin::Round,
                ..tiny_skia::Stroke::default()
            };
            let paint = self.ink(stroke.role, 1.0);
            self.pixmap.stroke_path(path, &paint, &look, self.to_pixels, None);
        }
    }

    fn fill_with_opacity(&mut self, path: Option<&Path>, role: Role, opacity: f32) {
        if let Some(path) = path {
            let paint = self.ink(role, opacity);
            self.pixmap
                .fill_path(path, &paint, FillRule::Winding, self.to_pixels, None);
        }
    }

    fn ink(&self, role: Role, opacity: f32) -> Paint<'static> {
        let mut colour = skia(role, self.theme);
        colour.set_alpha(opacity);
        let mut paint = Paint::default();
        paint.set_color(colour);
        paint
    }

    fn image(&mut self, path: &FilePath, at: Point, width: f32, height: f32) -> Result<(), RenderError> {
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
            .pre_translate(at.x, at.y)
            .pre_scale(width / size.width() as f32, height / size.height() as f32);
        let look = PixmapPaint {
            quality: FilterQuality::Bilinear,
            ..PixmapPaint::default()
        };
        self.pixmap.draw_pixmap(0, 0, picture.as_ref(), &look, fit, None);
        Ok(())
    }
}

fn path_of(points: &[Point], ends: Ends) -> Option<Path> {
    let (first, rest) = points.split_first()?;
    let mut path = PathBuilder::new();
    path.move_to(first.x, first.y);
    for point in rest {
        path.line_to(point.x, point.y);
    }
    if ends == Ends::Closed {
        path.close();
    }
    path.finish()
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
