//! Scene items drawn on a PDF page. Print has white paper whatever the screen's theme.

use std::collections::HashMap;
use std::path::Path as FilePath;
use std::sync::Arc;

use krilla::Data;
use krilla::color::rgb;
use krilla::geom::{PathBuilder, Point as PdfPoint, Size, Transform};
use krilla::image::Image;
use krilla::num::NormalizedF32;
use krilla::paint::{Fill, FillRule, LineCap, LineJoin, Stroke as PdfStroke, StrokeDash};
use krilla::surface::Surface;
use krilla::text::{Font, GlyphId, KrillaGlyph};

use super::pdf::PdfError;
use crate::render::{Canvas, Outline, Tint};
use crate::scene::{Dash, Point, Role, Stroke, dash_lengths};
use crate::text::{FaceId, Shaped, Typesetter};
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

    /// The picture of a file, read when first drawn.
    fn picture(&mut self, path: &str) -> Result<Image, PdfError> {
        if let Some(image) = self.pictures.get(path) {
            return Ok(image.clone());
        }
        let failed = |why: String| PdfError::Image {
            path: FilePath::new(path).to_owned(),
            why,
        };
        let bytes = std::fs::read(path).map_err(|e| failed(e.to_string()))?;
        let image = decode(bytes).map_err(failed)?;
        self.pictures.insert(path.to_owned(), image.clone());
        Ok(image)
    }
}

/// A page that is drawn on.
pub(crate) struct OnPage<'a, 's> {
    pub(crate) ink: &'a mut Ink,
    pub(crate) surface: &'a mut Surface<'s>,
}

impl Canvas for OnPage<'_, '_> {
    type Error = PdfError;

    fn type_(&mut self) -> &mut Typesetter {
        &mut self.ink.type_
    }

    fn outline(&mut self, outline: &Outline<'_>, stroke: Option<Stroke>, fill: Option<Tint>) {
        if fill.is_none() && stroke.is_none() {
            return;
        }
        let mut path = PathBuilder::new();
        outline.write(&mut path);
        let Some(path) = path.finish() else { return };
        self.surface.set_fill(fill.map(fill_of));
        self.surface.set_stroke(stroke.map(stroke_of));
        self.surface.draw_path(&path);
    }

    fn line(&mut self, line: &Shaped, start: Point, size: f32, role: Role) -> Result<(), PdfError> {
        self.surface.set_stroke(None);
        self.surface.set_fill(Some(fill_of(Tint::solid(role))));
        for run in &line.runs {
            let font = self.ink.font(run.face)?;
            let share = |length: f32| length / size;
            let glyphs: Vec<KrillaGlyph> = run
                .glyphs
                .iter()
                .map(|glyph| {
                    let [advance, dx, dy] = [glyph.advance, glyph.dx, glyph.dy].map(share);
                    KrillaGlyph::new(
                        GlyphId::new(glyph.id),
                        advance,
                        dx,
                        dy,
                        0.0,
                        glyph.text.clone(),
                        None,
                    )
                })
                .collect();
            let start = PdfPoint::from_xy(start.x + run.x, start.y);
            self.surface
                .draw_glyphs(start, &glyphs, font, &line.text, size, false);
        }
        Ok(())
    }

    fn picture(&mut self, path: &str, corner: Point, width: f32, height: f32) -> Result<(), PdfError> {
        let image = self.ink.picture(path)?;
        if let Some(size) = Size::from_wh(width, height) {
            self.surface
                .push_transform(&Transform::from_translate(corner.x, corner.y));
            self.surface.draw_image(image, size);
            self.surface.pop();
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

fn rgb_of(role: Role) -> rgb::Color {
    let [red, green, blue] = theme::print(role);
    rgb::Color::new(red, green, blue)
}

fn fill_of(tint: Tint) -> Fill {
    Fill {
        paint: rgb_of(tint.role).into(),
        opacity: NormalizedF32::new(tint.opacity).unwrap_or(NormalizedF32::ONE),
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

impl crate::render::Path for PathBuilder {
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
