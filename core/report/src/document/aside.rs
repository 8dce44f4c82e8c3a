//! Pictures at the end side of the page, with text running beside them.

use super::compose::Composer;
use super::flow::Piece;
use super::input::Figure;
use super::look::{BETWEEN, MEASURE};
use super::structure::NodeId;
use crate::diagram::sketch::at;

/// The widest share of the text width a picture beside text takes.
const WIDEST: f32 = 0.6;

/// How far pictures beside text may shrink: their words stay readable.
const SMALLEST: f32 = 0.85;

/// Space between text and picture.
const GUTTER: f32 = 26.0;

/// The pictures that text runs beside.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Aside {
    /// The first piece beside it.
    first: usize,
    /// How far down it reaches from there.
    height: f32,
    /// Width of the text beside it.
    column: f32,
}

impl Composer<'_> {
    /// Places the pictures; what follows runs beside them.
    pub(super) fn begin_aside(&mut self, section: NodeId, figures: &[Figure]) {
        const GAP: f32 = 10.0;
        let Some(first) = figures.first() else { return };
        let text_width = self.sheet.text_width();
        let share = first.width_share.clamp(0.2, WIDEST) * self.shrink.max(SMALLEST);
        let width = text_width * share;
        let (mut runs, mut height) = (Vec::new(), 0.0);
        for figure in figures {
            let (drawn, taken) =
                self.placed_figure(section, figure, at(text_width - width, height), width, 1.0);
            runs.extend(drawn);
            height += taken + BETWEEN;
        }
        self.pieces.push(Piece {
            gap: GAP,
            runs,
            // Beside what follows, never a page before it.
            stay: true,
            ..Piece::default()
        });
        self.aside = Some(Aside {
            first: self.pieces.len(),
            height,
            column: text_width - width - GUTTER,
        });
    }

    /// What follows stands below the pictures.
    pub(super) fn end_aside(&mut self) {
        let Some(aside) = self.aside.take() else { return };
        let beside = self.pieces.get(aside.first..).unwrap_or_default();
        let reached: f32 = beside
            .iter()
            .map(|piece| piece.gap * self.tighten + piece.height)
            .sum();
        if reached < aside.height {
            self.pieces.push(Piece {
                height: aside.height - reached,
                ..Piece::default()
            });
        }
    }

    /// Width that headings have.
    pub(super) fn column(&self) -> f32 {
        self.aside.map_or(self.sheet.text_width(), |aside| aside.column)
    }

    /// Width that running text has.
    pub(super) fn measure(&self) -> f32 {
        MEASURE.min(self.column())
    }
}
