//! The report: a plain input, laid out into pages, written as PDF.

mod input;

pub use input::{
    Align, Block, Business, Column, Fact, Figure, Finding, Paper, Report, ReportWords, Section, SignLine,
    Signal, Table, Written,
};
