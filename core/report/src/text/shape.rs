//! Shaping and line breaking by parley, with the embedded family and the font files that were handed in: nothing is
//! looked for on the machine, so that every machine that has the same files agrees.

use std::ops::Range;
use std::path::PathBuf;
use std::sync::Arc;

use parley::fontique::{Blob, Collection, CollectionOptions, FontInfoOverride, SourceCache};
use parley::style::{FontFamily, FontFamilyName, FontWeight, OverflowWrap};
use parley::{BaseDirection, FontContext, Layout, LayoutContext, Run, StyleProperty};
use skrifa::{FontRef, MetadataProvider};

use super::fonts::{FAMILY, Face, REPLACEMENT};
use super::kept::{Kept, Setting};
use super::scripts::{is_all_left, is_japanese, is_korean, kept_apart, script_of};
use super::shelf::{Extra, Shelf};
use crate::document::Direction;
use crate::scene::Weight;

/// Shapes text. Keep one for a whole scene or document: it parses the fonts once.
pub(crate) struct Typesetter {
    fonts: FontContext,
    scratch: LayoutContext<()>,
    shelf: Shelf,
    /// The direction of a text that does not run left as a whole.
    base: BaseDirection,
    extras: Vec<Extra>,
    /// Which face a font of the context is: its blob, and its index in there.
    known: Vec<(u64, u32, FaceId)>,
    lines: Kept<Shaped>,
    broken: Kept<Vec<String>>,
}

/// Bytes of a text up to which it is tried as one line before it is broken.
const SHORT: usize = 120;

/// A face that text is drawn with.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub(crate) enum FaceId {
    /// Of the embedded family.
    Embedded(Face),
    /// Of a file that was handed in, by its place among those in use.
    Extra(usize),
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
    pub(crate) face: FaceId,
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
    /// With the embedded family alone.
    pub(crate) fn new() -> Self {
        Self::with(&[])
    }

    /// With font files for the scripts that the embedded family lacks; each is read when a text first needs it.
    pub(crate) fn with(files: &[PathBuf]) -> Self {
        let mut type_ = Self {
            fonts: FontContext {
                collection: Collection::new(CollectionOptions {
                    shared: false,
                    system_fonts: false,
                }),
                source_cache: SourceCache::default(),
            },
            scratch: LayoutContext::new(),
            shelf: Shelf::of(files),
            base: BaseDirection::Ltr,
            extras: Vec::new(),
            known: Vec::new(),
            lines: Kept::new(),
            broken: Kept::new(),
        };
        for face in Face::ALL {
            let blob = Blob::new(Arc::new(face.bytes()));
            type_.known.push((blob.id(), 0, FaceId::Embedded(face)));
            type_.fonts.collection.register_fonts(blob, None);
        }
        type_
    }

    /// The same for texts of a language that runs this way.
    pub(crate) fn running(self, direction: Direction) -> Self {
        let base = match direction {
            Direction::LeftToRight => BaseDirection::Ltr,
            Direction::RightToLeft => BaseDirection::Rtl,
        };
        Self { base, ..self }
    }

    /// The font of a face; `None` only where its file is damaged.
    pub(crate) fn font(&self, face: FaceId) -> Option<FontRef<'_>> {
        match face {
            FaceId::Embedded(face) => face.font(),
            FaceId::Extra(at) => self.extras.get(at)?.font(),
        }
    }

    /// The file of a face that was handed in, and which face of it.
    pub(crate) fn extra(&self, at: usize) -> Option<&Extra> {
        self.extras.get(at)
    }

    /// Shapes one line.
    pub(crate) fn line(&mut self, text: &str, weight: Weight, size: f32) -> Arc<Shaped> {
        let setting = Setting::line(weight, size);
        match self.lines.find(setting, text) {
            Some(line) => line,
            None => {
                let line = self.shaped(text, weight, size);
                self.lines.keep(setting, text, line)
            }
        }
    }

    fn shaped(&mut self, text: &str, weight: Weight, size: f32) -> Shaped {
        let text = self.drawable(text, weight);
        let mut layout = self.layout(&text, weight, size);
        layout.break_all_lines(None);
        let mut runs = Vec::new();
        let mut x = 0.0;
        for run in layout.lines().flat_map(|line| line.runs()) {
            let (id, index) = (run.font().data.id(), run.font().index);
            let is_it = |known: &&(u64, u32, FaceId)| known.0 == id && known.1 == index;
            let face = self.known.iter().find(is_it);
            let face = face.map_or(FaceId::Embedded(Face::of(weight)), |known| known.2);
            let start = x;
            let glyphs = glyphs_of(&run);
            x += glyphs.iter().map(|glyph| glyph.advance).sum::<f32>();
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
            let setting = Setting::broken(weight, size, width);
            let broken = match self.broken.find(setting, paragraph) {
                Some(broken) => broken,
                None => {
                    let broken = self.paragraph(paragraph, weight, size, width);
                    self.broken.keep(setting, paragraph, broken)
                }
            };
            lines.extend(broken.iter().cloned());
        }
        lines
    }

    fn paragraph(&mut self, text: &str, weight: Weight, size: f32, width: f32) -> Vec<String> {
        let mut lines: Vec<String> = Vec::new();
        let whole = (text.len() <= SHORT).then(|| self.line(text, weight, size));
        if let Some(whole) = whole.filter(|line| line.width <= width) {
            lines.push(whole.text.clone());
        } else {
            let text = self.drawable(text, weight);
            let mut layout = self.layout(&text, weight, size);
            layout.break_all_lines(Some(width));
            let broken = layout.lines().filter_map(|line| text.get(line.text_range()));
            lines.extend(broken.map(str::to_owned));
        }
        // Between lines a space stays, so that a reader that joins them finds the words apart.
        match lines.last_mut() {
            Some(last) => last.truncate(last.trim_end().len()),
            None => lines.push(String::new()),
        }
        lines
    }

    /// Width of one line.
    pub(crate) fn width(&mut self, text: &str, weight: Weight, size: f32) -> f32 {
        self.line(text, weight, size).width
    }

    /// The text with nothing in it that can't be drawn: control and direction-override characters become spaces or go,
    /// characters that no font at hand has become a visible replacement.
    pub(crate) fn drawable(&mut self, text: &str, weight: Weight) -> String {
        self.take_from_shelf(text);
        let embedded = Face::of(weight).font().map(|font| font.charmap().clone());
        let known = |c: char| {
            embedded.as_ref().is_some_and(|map| map.map(c).is_some())
                || (script_of(c).is_some() && self.extras.iter().any(|extra| extra.has(c)))
        };
        // A joiner steers shaping inside a word of a script that joins; anywhere else it is a trick.
        let joins = text.chars().any(|c| script_of(c).is_some() && known(c));
        let shown: String = text
            .chars()
            .filter_map(|c| match c {
                '\u{200c}' | '\u{200d}' if joins => Some(c),
                // Direction marks and overrides, variation selectors: they only steer what is drawn.
                '\u{200b}'..='\u{200f}'
                | '\u{202a}'..='\u{202e}'
                | '\u{2060}'..='\u{2069}'
                | '\u{fe00}'..='\u{fe0f}'
                | '\u{feff}'
                | '\u{ad}' => None,
                c if c.is_control() => Some(' '),
                c if known(c) => Some(c),
                _ => Some(REPLACEMENT),
            })
            .collect();
        if joins && !is_all_left(&shown) {
            kept_apart(&shown)
        } else {
            shown
        }
    }

    /// Registers the faces that a text is the first to need.
    fn take_from_shelf(&mut self, text: &str) {
        for file in self.shelf.files_for(text) {
            let weight = match file.weight {
                Weight::Regular => FontWeight::NORMAL,
                Weight::Bold => FontWeight::BOLD,
            };
            let blob = Blob::new(Arc::clone(&file.bytes) as Arc<dyn AsRef<[u8]> + Send + Sync>);
            for face in file.faces() {
                let id = FaceId::Extra(self.extras.len());
                self.known.push((blob.id(), face.index, id));
                self.extras.push(face);
            }
            let named = FontInfoOverride {
                weight: Some(weight),
                ..FontInfoOverride::default()
            };
            self.fonts.collection.register_fonts(blob, Some(named));
        }
    }

    /// The families a text is set in: the embedded one, then those at hand, the right one of the Han families first.
    fn families(&self, text: &str) -> Vec<String> {
        let wanted = if is_japanese(text) {
            "JP"
        } else if is_korean(text) {
            "KR"
        } else {
            "SC"
        };
        let mut extras: Vec<&String> = self.extras.iter().map(|extra| &extra.family).collect();
        extras.dedup();
        extras.sort_by_key(|family| family.contains("CJK") && !family.ends_with(wanted));
        std::iter::once(FAMILY.to_owned())
            .chain(extras.into_iter().cloned())
            .collect()
    }

    fn layout(&mut self, text: &str, weight: Weight, size: f32) -> Layout<()> {
        let families: Vec<FontFamilyName<'static>> = self
            .families(text)
            .into_iter()
            .map(|family| FontFamilyName::Named(family.into()))
            .collect();
        let mut builder = self.scratch.ranged_builder(&mut self.fonts, text, 1.0, false);
        // A name from the right stays a name in a line of this page's language; a text of such words alone runs left.
        builder.set_base_direction(if is_all_left(text) {
            BaseDirection::Rtl
        } else {
            self.base
        });
        builder.push_default(StyleProperty::FontFamily(FontFamily::List(families.into())));
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

/// The glyphs of a run from left to right, each with the text it stands for; a ligature stands for all of its letters.
fn glyphs_of(run: &Run<'_, ()>) -> Vec<ShapedGlyph> {
    let mut clusters: Vec<Vec<ShapedGlyph>> = Vec::new();
    for cluster in run.clusters() {
        if cluster.is_ligature_continuation() {
            if let Some(glyph) = clusters.last_mut().and_then(|glyphs| glyphs.last_mut()) {
                glyph.text.end = cluster.text_range().end;
            }
            continue;
        }
        let glyph = |glyph: parley::Glyph| ShapedGlyph {
            id: glyph.id,
            advance: glyph.advance,
            dx: glyph.x,
            dy: glyph.y,
            text: cluster.text_range(),
        };
        clusters.push(cluster.glyphs().map(glyph).collect());
    }
    if run.is_rtl() {
        clusters.reverse();
    }
    clusters.into_iter().flatten().collect()
}
