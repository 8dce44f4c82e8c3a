//! What a report is made from. Every word arrives final, in the report's language.

use std::path::PathBuf;

use crate::diagram::state::State;
use crate::scene::Scene;

/// Everything a report shows, in reading order.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Report {
    /// Language of the words, as a BCP 47 tag such as `en-GB`.
    pub language: String,
    /// Which way that language runs: its pages are laid out to match.
    pub direction: Direction,
    /// Title of the document, shown in the reader's window and on the first page.
    pub title: String,
    /// The time of the last entry: the only date the file carries.
    pub written: Written,
    /// Who did the work.
    pub business: Business,
    /// Vehicle, customer, dates: the facts under the title.
    pub facts: Vec<Fact>,
    /// The finding, first thing on the customer's page.
    pub finding: Finding,
    /// Pictures beside the start of the customer's page, at the end side, one below the other. The first one's share of
    /// the text width, to 0.6, holds for all.
    pub aside: Vec<Figure>,
    /// The rest of the customer's page.
    pub customer: Vec<Block>,
    /// Pictures and charts; starts on a page of its own. Left out when it has no blocks.
    pub evidence: Section,
    /// Every entry; starts on a page of its own. Left out when it has no blocks.
    pub record: Section,
    /// Font files for names in scripts that the embedded family lacks. Each is read only where a text needs it.
    pub fonts: Vec<PathBuf>,
    /// Files that ride inside the PDF.
    pub attachments: Vec<Attachment>,
    /// Digest of the record, printed at its end and on every page's foot in short form, or empty.
    pub digest: String,
    /// Name and version of the software that wrote it.
    pub version: String,
    /// The words the layout itself needs.
    pub words: ReportWords,
}

/// Which way a language runs.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Direction {
    /// From left to right.
    #[default]
    LeftToRight,
    /// From right to left: pages are mirrored, drawings and numbers are not.
    RightToLeft,
}

/// A file inside the PDF: data the pages show, for other programs.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Attachment {
    /// Its name, such as `readings.csv`.
    pub name: String,
    /// Its media type, such as `text/csv`.
    pub mime: String,
    /// What it is, in the report's language.
    pub description: String,
    /// Its bytes.
    pub data: Vec<u8>,
}

/// When the last entry was made: local time of the place with its zone.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Written {
    /// Milliseconds since 1970-01-01T00:00Z.
    pub at_ms: i64,
    /// Minutes the local time is ahead of UTC, from −1,439 to 1,439; further is taken as the nearer end.
    pub offset_min: i32,
}

/// Who did the work.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Business {
    /// Name of the business or the person; empty when there is none to print.
    pub name: String,
    /// Address, phone, licence: a line each.
    pub lines: Vec<String>,
}

/// A label with its value.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Fact {
    /// Such as "Number plate".
    pub label: String,
    /// Such as "HF 204 K".
    pub value: String,
}

/// The finding as the customer reads it.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Finding {
    /// The state whose shape stands before the sentence.
    pub state: Option<State>,
    /// One sentence that says what was wrong.
    pub sentence: String,
    /// How sure, in plain words, or empty.
    pub certainty: String,
}

/// A part of the report with its own heading and page.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Section {
    /// Heading.
    pub heading: String,
    /// Content in reading order.
    pub blocks: Vec<Block>,
}

/// A block of content.
#[derive(Debug, Clone, PartialEq)]
pub enum Block {
    /// A heading inside the section; stays with the block that follows.
    Heading(String),
    /// A paragraph; line feeds inside start a new line.
    Text(String),
    /// A list, each item with a bullet.
    List(Vec<String>),
    /// Labels with values, in columns.
    Facts(Vec<Fact>),
    /// A signal word with its text.
    Caution {
        /// How grave.
        signal: Signal,
        /// The signal word in the report's language, such as "WARNING".
        word: String,
        /// What to do or not to do.
        text: String,
    },
    /// A picture with its caption; never split over pages.
    Figure(Figure),
    /// Two pictures beside each other, each with its caption; never split.
    Pair(Figure, Figure),
    /// A table; its head is repeated on every page it needs.
    Table(Table),
    /// Lines to sign on.
    Sign(Vec<SignLine>),
}

/// How grave a caution is: the signal words of ISO 3864 and ANSI Z535.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Signal {
    /// Death or serious injury will follow.
    Danger,
    /// Death or serious injury could follow.
    Warning,
    /// Minor or moderate injury could follow.
    Caution,
    /// Harm to things, not to people; no triangle.
    Notice,
}

/// A picture in the report. Its alternative text is the scene's.
#[derive(Debug, Clone, PartialEq)]
pub struct Figure {
    /// What is drawn.
    pub scene: Scene,
    /// The words under it.
    pub caption: String,
    /// Share of the text width it takes, 0.2 to 1; outside is taken as the nearer end.
    pub width_share: f32,
}

/// A table with a head row.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Table {
    /// Words over the table, or empty.
    pub caption: String,
    /// Columns from the start side on.
    pub columns: Vec<Column>,
    /// Rows; cells missing at the end are empty, surplus ones are left out.
    pub rows: Vec<Vec<String>>,
    /// So many rows at the end are sums, the last of them the one that counts.
    pub sums: usize,
}

/// A column of a table.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Column {
    /// Head.
    pub head: String,
    /// How cells stand.
    pub align: Align,
}

/// How cells of a column stand.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Align {
    /// At the start side.
    #[default]
    Start,
    /// Numbers: decimal marks under each other; what follows the number is kept after it.
    Decimal,
    /// At the end side.
    End,
}

/// A line to sign on.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct SignLine {
    /// What is under the line, such as "Approved by".
    pub label: String,
    /// What is already written on it, or under it where there is a signature; or empty.
    pub written: String,
    /// The signature drawn for it, as a picture of vectors.
    pub signature: Option<Scene>,
}

/// Words the layout itself needs.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ReportWords {
    /// Page number with `{page}` and `{pages}` in it, such as "Page {page} of {pages}".
    pub page: String,
    /// Word before the digest, such as "Record digest".
    pub digest: String,
    /// Word before the software version, such as "Written by".
    pub version: String,
    /// Prefix of a caption with `{number}` in it, such as "Figure {number}".
    pub figure: String,
    /// Decimal mark of numbers in the report.
    pub decimal: char,
}

impl Default for ReportWords {
    fn default() -> Self {
        Self {
            page: "Page {page} of {pages}".into(),
            digest: "Record digest".into(),
            version: "Written by".into(),
            figure: "Figure {number}".into(),
            decimal: '.',
        }
    }
}

/// Paper size, upright.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Paper {
    /// 210 mm by 297 mm.
    #[default]
    A4,
    /// 8.5 in by 11 in.
    Letter,
}

impl Paper {
    /// Width and height in points of 1/72 in.
    #[must_use]
    pub fn size_pt(self) -> (f32, f32) {
        match self {
            Self::A4 => (595.276, 841.89),
            Self::Letter => (612.0, 792.0),
        }
    }
}
