//! Shaping and line breaking by parley, with the embedded family alone: no system fonts, so every machine agrees.

use std::ops::Range;
use std::sync::Arc;

use parley::fontique::{Blob, Collection, CollectionOptions, SourceCache};
use parley::style::{FontFamily, FontFamilyName, FontWeight, OverflowWrap};
use parley::{FontContext, Layout, LayoutContext, StyleProperty};

use super::fonts::{FAMILY, Face, drawable};
use crate::scene::Weight;

/// Shapes text. Keep one for a whole scene or document: it parses the fonts once.
pub(crate) struct Typesetter {
    fonts: FontContext,
    scratch: LayoutContext<()>,
    blobs: Vec<(u64, Face)>,
}

/// One line of shaped text.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Shaped {
    /// What is drawn, after replacement; glyphs name ranges of it.
    pub(crate) text: String,
    /// From the start of the line to its end.
    pub(crate) width: f32,
    /// Glyphs in drawing order.
    pub(crate) runs: Vec<ShapedRun>,
}

/// Glyphs of one face.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct ShapedRun {
    pub(crate) face: Face,
    /// Where the run starts, from the start of the line.
    pub(crate) x: f32,
    pub(crate) glyphs: Vec<ShapedGlyph>,
}

/// One glyph; lengths in the units of the type size.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct ShapedGlyph {
    pub(crate) id: u32,
    pub(crate) advance: f32,
    pub(crate) dx: f32,
    pub(crate) dy: f32,
    pub(crate) text: Range<usize>,
}

impl Typesetter {
    pub(crate) fn new() -> Self {
        let mut fonts = FontContext {
            collection: Collection::new(CollectionOptions {
                shared: false,
                system_fonts: false,
            }),
            source_cache: SourceCache::default(),
        };
        let mut blobs = Vec::with_capacity(Face::ALL.len());
        for face in Face::ALL {
            let blob = Blob::new(Arc::new(face.bytes()));
            blobs.push((blob.id(), face));
            fonts.collection.register_fonts(blob, None);
        }
        Self {
            fonts,
            scratch: LayoutContext::new(),
            blobs,
        }
    }

    /// Shapes one line.
    pub(crate) fn line(&mut self, text: &str, weight: Weight, size: f32) -> Shaped {
        let text = drawable(text, weight);
        let mut layout = self.layout(&text, weight, size);
        layout.break_all_lines(None);
        let mut runs = Vec::new();
        let mut x = 0.0;
        for run in layout.lines().flat_map(|line| line.runs()) {
            let id = run.font().data.id();
            let face = self
                .blobs
                .iter()
                .find(|b| b.0 == id)
                .map_or(Face::of(weight), |b| b.1);
            let start = x;
            let mut glyphs: Vec<ShapedGlyph> = Vec::new();
            for cluster in run.visual_clusters() {
                if cluster.is_ligature_continuation() {
                    if let Some(last) = glyphs.last_mut() {
                        last.text.end = cluster.text_range().end;
                    }
                    continue;
                }
                for glyph in cluster.glyphs() {
                    let (advance, dx, dy) = (glyph.advance, glyph.x, glyph.y);
                    glyphs.push(ShapedGlyph {
                        id: glyph.id,
                        advance,
                        dx,
                        dy,
                        text: cluster.text_range(),
                    });
                    x += advance;
                }
            }
            runs.push(ShapedRun {
                face,
                x: start,
                glyphs,
            });
        }
        Shaped { text, width: x, runs }
    }

    /// Breaks a text into lines no wider than `width`, by the Unicode line breaking rules; at least one line.
    pub(crate) fn wrap(&mut self, text: &str, weight: Weight, size: f32, width: f32) -> Vec<String> {
        let mut lines = Vec::new();
        for paragraph in text.split('\n') {
            let paragraph = drawable(paragraph, weight);
            let mut layout = self.layout(&paragraph, weight, size);
            layout.break_all_lines(Some(width));
            let before = lines.len();
            lines.extend(
                layout
                    .lines()
                    .filter_map(|l| paragraph.get(l.text_range()))
                    .map(str::to_owned),
            );
            // Between lines a space stays, so that a reader that joins them finds the words apart.
            if let Some(last) = lines.last_mut() {
                last.truncate(last.trim_end().len());
            }
            if lines.len() == before {
                lines.push(String::new());
            }
        }
        lines
    }

    /// Width of one line.
    pub(crate) fn width(&mut self, text: &str, weight: Weight, size: f32) -> f32 {
        self.line(text, weight, size).width
    }

    fn layout(&mut self, text: &str, weight: Weight, size: f32) -> Layout<()> {
        let mut builder = self.scratch.ranged_builder(&mut self.fonts, text, 1.0, false);
        builder.push_default(StyleProperty::FontFamily(FontFamily::Single(
            FontFamilyName::Named(FAMILY.into()),
        )));
        builder.push_default(StyleProperty::FontSize(size));
        builder.push_default(StyleProperty::OverflowWrap(OverflowWrap::BreakWord));
        let weight = match weight {
            Weight::Regular => FontWeight::NORMAL,
            Weight::Bold => FontWeight::BOLD,
        };
        builder.push_default(StyleProperty::FontWeight(weight));
        builder.build(text)
    }
}
