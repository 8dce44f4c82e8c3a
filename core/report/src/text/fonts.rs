//! The one family, embedded: Noto Sans, regular and bold (SIL Open Font License, see `fonts/OFL.txt`).

use skrifa::charmap::Charmap;
use skrifa::instance::{LocationRef, Size};
use skrifa::metrics::GlyphMetrics;
use skrifa::{FontRef, GlyphId, MetadataProvider};

use super::scripts::{runs_left, script_of};
use crate::scene::Weight;

static REGULAR: &[u8] = include_bytes!("../../fonts/NotoSans-Regular.ttf");
static BOLD: &[u8] = include_bytes!("../../fonts/NotoSans-Bold.ttf");

/// Name of the family inside the font files.
pub(crate) const FAMILY: &str = "Noto Sans";

/// What stands in for a character that the family lacks.
pub(crate) const REPLACEMENT: char = '\u{fffd}';

/// One face of the family.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub(crate) enum Face {
    Regular,
    Bold,
}

impl Face {
    pub(crate) const ALL: [Self; 2] = [Self::Regular, Self::Bold];

    pub(crate) fn of(weight: Weight) -> Self {
        match weight {
            Weight::Regular => Self::Regular,
            Weight::Bold => Self::Bold,
        }
    }

    /// The font file.
    pub(crate) fn bytes(self) -> &'static [u8] {
        match self {
            Self::Regular => REGULAR,
            Self::Bold => BOLD,
        }
    }

    /// The parsed font; `None` only if the embedded file were damaged, which a test rules out.
    pub(crate) fn font(self) -> Option<FontRef<'static>> {
        FontRef::new(self.bytes()).ok()
    }
}

/// Width of a letter of Arabic or Hebrew as a share of its height, which no word of them exceeds.
const NARROW: f32 = 0.7;

/// Measures short texts without shaping: the sum of their advances, exact to kerning and ligatures.
///
/// A character of a script that only other fonts have is taken as wide as it is high, which none of them exceeds; one
/// that is written to the left as [`NARROW`].
/// Diagrams are drawn on every act; shaping each label would cost more than all the rest.
pub(crate) struct Ruler {
    size: f32,
    parts: Option<(Charmap<'static>, GlyphMetrics<'static>)>,
}

impl Ruler {
    pub(crate) fn of(weight: Weight, size: f32) -> Self {
        let parts = Face::of(weight).font().map(|font| {
            (
                font.charmap(),
                font.glyph_metrics(Size::new(size), LocationRef::default()),
            )
        });
        Self { size, parts }
    }

    pub(crate) fn width(&self, text: &str) -> f32 {
        text.chars().map(|c| self.char_width(c)).sum()
    }

    pub(crate) fn char_width(&self, c: char) -> f32 {
        let Some((map, metrics)) = &self.parts else {
            return 0.0;
        };
        match map.map(c) {
            None if runs_left(c) => self.size * NARROW,
            None if script_of(c).is_some() => self.size,
            glyph => metrics
                .advance_width(glyph.unwrap_or(GlyphId::NOTDEF))
                .unwrap_or(0.0),
        }
    }
}
