//! The report: a plain input, laid out into pages, written as PDF.

mod aside;
#[cfg(test)]
mod breaks;
mod compose;
mod facts;
mod figure;
mod flow;
mod input;
mod look;
mod pdf;
mod pdf_draw;
mod prose;
mod structure;
mod table;

pub use input::{
    Align, Attachment, Block, Business, Column, Direction, Fact, Figure, Finding, Paper, Report, ReportWords,
    Section, SignLine, Signal, Table, Written,
};
pub use pdf::{PdfError, render_pdf};

use crate::scene::Scene;

/// A page as it will print.
#[derive(Debug, Clone, PartialEq)]
pub struct Page {
    /// The page in points of 1/72 in; the PDF draws exactly these items.
    pub scene: Scene,
}

/// Lays the report out. The pages are the ones [`render_pdf`] writes.
#[must_use]
pub fn pages(report: &Report, paper: Paper) -> Vec<Page> {
    compose::compose(report, paper)
        .laid
        .pages
        .into_iter()
        .map(|p| Page { scene: p.scene })
        .collect()
}
