#![doc = include_str!("../README.md")]

mod diagram;
mod document;
mod render;
mod scene;
mod text;
pub mod theme;

pub use diagram::band::{Band, band};
pub use diagram::circuit::{CircuitMap, MapLink, MapPart, PartKind, Side, Suspicion, TestPoint, circuit_map};
pub use diagram::connector::{ConnectorFace, GroundPlace, Pin, connector_face};
pub use diagram::gauge::{Dial, gauge};
pub use diagram::hold_chart::{FitPoint, HoldChart, HoldSeries, LimitLine, hold_chart};
pub use diagram::photo::{PhotoMark, PhotoScene, PhotoShape, Spot, photo};
pub use diagram::signature::{PAD, SignaturePad, signature, signature_pad};
pub use diagram::spectrum::{Spectrum, SpectrumSeries, spectrum};
pub use diagram::state::{Lead, State};
pub use document::{
    Align, Attachment, Block, Business, Column, Direction, Fact, Figure, Finding, Page, Paper, PdfError,
    Report, ReportWords, Section, SignLine, Signal, Table, Written, pages, render_pdf,
};
pub use render::{RenderError, render_png};
pub use scene::{
    Anchor, Dash, Ends, Item, NeedleShape, Point, Role, Scene, Stroke, Weight, dash_lengths, needle_shapes,
};
