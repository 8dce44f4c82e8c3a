//! Scene items drawn on a PDF page. Print has white paper whatever the screen's theme.

use std::collections::HashMap;
use std::path::Path as FilePath;
use std::sync::Arc;

use krilla::Data;
use krilla::color::rgb;
use krilla::geom::{Path, PathBuilder, Point as PdfPoint, Size, Transform};
use krilla::image::Image;
use krilla::num::NormalizedF32;
use krilla::paint::{Fill, FillRule, LineCap, LineJoin, Stroke as PdfStroke, StrokeDash};
use krilla::surface::Surface;
use krilla::text::{Font, GlyphId, KrillaGlyph};

use super::pdf::PdfError;
use crate::scene::{Anchor, Dash, Ends, Item, Point, Role, Stroke, arc_points, dash_lengths, needle_shapes};
use crate::text::{FaceId, Typesetter};
use crate::theme;

/// Fonts, pictures and type, kept over all pages so that each is embedded once.
pub(crate) struct Ink {
    type_: Typesetter,
    fonts: HashMap<FaceId, Font>,
    pictures: HashMap<String, Image>,
}

impl Ink {
    pub(crate) fn of(type_: Typesetter) -> Self {
        Self {
            type_,
            fonts: HashMap::new(),
            pictures: HashMap::new(),
        }
    }

    /// The font of a face, parsed when first drawn with.
    fn font(&mut self, face: FaceId) -> Result<Font, PdfError> {
        if let Some(font) = self.fonts.get(&face) {
            return Ok(font.clone());
        }
        let (data, index) = match face {
            FaceId::Embedded(face) => (Data::from(face.bytes()), 0),
            FaceId::Extra(at) => {
                let extra = self.type_.extra(at).ok_or(PdfError::Font)?;
                (Data::from(Arc::clone(&extra.bytes)), extra.index)
            }
        };
        let font = Font::new(data, index).ok_or(PdfError::Font)?;
        self.fonts.insert(face, font.clone());
        Ok(font)
    }

    pub(crate) fn draw(&mut self, surface: &mut Surface<'_>, item: &Item) -> Result<(), PdfError> {
        match item {
            Item::Path {
                points,
                ends,
                stroke,
                fill,
            } => {
                paint(surface, path_of(points, *ends).as_ref(), *stroke, *fill);
            }
            Item::Circle {
                centre,
                radius,
                stroke,
                fill,
            } => {
                paint(surface, circle(*centre, *radius).as_ref(), *stroke, *fill);
            }
            Item::Arc {
                centre,
                radius,
                start_deg,
                sweep_deg,
                stroke,
            } => {
                let points = arc_points(*centre, *radius, *start_deg, *sweep_deg);
                paint(
                    surface,
                    path_of(&points, Ends::Open).as_ref(),
                    Some(*stroke),
                    None,
                );
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
                surface.set_stroke(None);
                surface.set_fill(Some(fill_of(*role, 1.0)));
                for run in &shaped.runs {
                    let font = self.font(run.face)?;
                    let glyphs: Vec<KrillaGlyph> = run
                        .glyphs
                        .iter()
                        .map(|g| {
                            let share = |v: f32| v / size;
                            let id = GlyphId::new(g.id);
                            KrillaGlyph::new(
                                id,
                                share(g.advance),
                                share(g.dx),
                                share(g.dy),
                                0.0,
                                g.text.clone(),
                                None,
                            )
                        })
                        .collect();
                    let start = PdfPoint::from_xy(left + run.x, at.y);
                    surface.draw_glyphs(start, &glyphs, font, &shaped.text, *size, false);
                }
            }
            Item::Image {
                path,
                at,
                width,
                height,
            } => self.picture(surface, path, *at, *width, *height)?,
            Item::Needle {
                pivot,
                length,
                angle_deg,
                doubt_deg,
                role,
            } => {
                for shape in needle_shapes(*pivot, *length, *angle_deg, *doubt_deg) {
                    if let Some(path) = path_of(&shape.points, Ends::Closed) {
                        surface.set_stroke(None);
                        surface.set_fill(Some(fill_of(*role, shape.opacity)));
                        surface.draw_path(&path);
                    }
                }
            }
            Item::Region { .. } => {}
        }
        Ok(())
    }

    fn picture(
        &mut self,
        surface: &mut Surface<'_>,
        path: &str,
        at: Point,
        width: f32,
        height: f32,
    ) -> Result<(), PdfError> {
        let image = match self.pictures.get(path) {
            Some(image) => image.clone(),
            None => {
                let failed = |why: String| PdfError::Image {
                    path: FilePath::new(path).to_owned(),
                    why,
                };
                let bytes = std::fs::read(path).map_err(|e| failed(e.to_string()))?;
                let image = decode(bytes).map_err(failed)?;
                self.pictures.insert(path.to_owned(), image.clone());
                image
            }
        };
        if let Some(size) = Size::from_wh(width, height) {
            surface.push_transform(&Transform::from_translate(at.x, at.y));
            surface.draw_image(image, size);
            surface.pop();
        }
        Ok(())
    }
}

/// A JPEG goes in as it is; PNG and WebP are packed anew.
fn decode(bytes: Vec<u8>) -> Result<Image, String> {
    let format = image::guess_format(&bytes).map_err(|e| e.to_string())?;
    let data = Data::from(bytes);
    match format {
        image::ImageFormat::Jpeg => Image::from_jpeg(data, false),
        image::ImageFormat::Png => Image::from_png(data, false),
        image::ImageFormat::WebP => Image::from_webp(data, false),
        _ => Err("not a JPEG, PNG or WebP".into()),
    }
}

fn paint(surface: &mut Surface<'_>, path: Option<&Path>, stroke: Option<Stroke>, fill: Option<Role>) {
    let Some(path) = path else { return };
    if fill.is_none() && stroke.is_none() {
        return;
    }
    surface.set_fill(fill.map(|role| fill_of(role, 1.0)));
    surface.set_stroke(stroke.map(stroke_of));
    surface.draw_path(path);
}

fn rgb_of(role: Role) -> rgb::Color {
    let [red, green, blue] = theme::print(role);
    rgb::Color::new(red, green, blue)
}

fn fill_of(role: Role, opacity: f32) -> Fill {
    let opacity = NormalizedF32::new(opacity).unwrap_or(NormalizedF32::ONE);
    Fill {
        paint: rgb_of(role).into(),
        opacity,
        rule: FillRule::NonZero,
    }
}

fn stroke_of(stroke: Stroke) -> PdfStroke {
    PdfStroke {
        paint: rgb_of(stroke.role).into(),
        width: stroke.width,
        line_cap: if stroke.dash == Dash::Dotted {
            LineCap::Round
        } else {
            LineCap::Butt
        },
        line_join: LineJoin::Round,
        dash: dash_lengths(stroke).map(|array| StrokeDash { array, offset: 0.0 }),
        ..PdfStroke::default()
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

/// A circle as four curves.
fn circle(centre: Point, radius: f32) -> Option<Path> {
    const REACH: f32 = 0.552_285;
    let (x, y, r, c) = (centre.x, centre.y, radius, radius * REACH);
    let mut path = PathBuilder::new();
    path.move_to(x + r, y);
    path.cubic_to(x + r, y + c, x + c, y + r, x, y + r);
    path.cubic_to(x - c, y + r, x - r, y + c, x - r, y);
    path.cubic_to(x - r, y - c, x - c, y - r, x, y - r);
    path.cubic_to(x + c, y - r, x + r, y - c, x + r, y);
    path.close();
    path.finish()
}
