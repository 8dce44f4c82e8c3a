//! The report as one file that is PDF/A-3a and PDF/UA-1 at once, by krilla.

use std::collections::HashMap;
use std::num::NonZeroU16;
use std::path::PathBuf;

use krilla::configure::{Accessibility, Archival, ConfigurationBuilder};
use krilla::destination::XyzDestination;
use krilla::embed::{AssociationKind, EmbeddedFile, MimeType};
use krilla::error::KrillaError;
use krilla::metadata::{DateTime, Metadata, TextDirection};
use krilla::outline::{Outline, OutlineNode};
use krilla::page::PageSettings;
use krilla::tagging::{
    Artifact, ArtifactType, ContentTag, Identifier, ListNumbering, SpanTag, TableHeaderScope, Tag, TagGroup,
    TagTree,
};
use krilla::{Document, SerializeSettings};

use super::compose::{Composed, Laid, compose};
use super::input::{Attachment, Direction, Paper, Report, Written};
use super::pdf_draw::{Ink, OnPage};
use super::structure::{Kind, NodeId, Tree};
use crate::render::draw;
use crate::scene::Item;

/// Why a report could not become a PDF.
#[derive(Debug, thiserror::Error)]
pub enum PdfError {
    /// A picture the report names could not be read.
    #[error("picture {} can't be read: {why}", path.display())]
    Image {
        /// The file.
        path: PathBuf,
        /// Why not.
        why: String,
    },
    /// The report has no title or no language; both are required of an accessible document.
    #[error("a report needs a title and a language")]
    Unnamed,
    /// The embedded fonts could not be read.
    #[error("the embedded fonts can't be read")]
    Font,
    /// The page's measures can't be drawn.
    #[error("the page can't be drawn")]
    Page,
    /// Two attachments have one name.
    #[error("two attachments have one name")]
    Attachment,
    /// The two standards can't be met together.
    #[error("the standards can't be met together")]
    Standard,
    /// The writer refused the document.
    #[error("the PDF can't be written")]
    Write(#[source] KrillaError),
}

/// Writes the report. The same report gives the same bytes; the only date in it is [`Report::written`].
///
/// # Errors
/// [`PdfError::Unnamed`] without a title or language; [`PdfError::Image`] when a picture is missing or damaged;
/// the others tell of a fault in this program, not in the report.
pub fn render_pdf(report: &Report, paper: Paper) -> Result<Vec<u8>, PdfError> {
    if report.title.trim().is_empty() || report.language.trim().is_empty() {
        return Err(PdfError::Unnamed);
    }
    let Composed { laid, type_ } = compose(report, paper);
    let configuration = ConfigurationBuilder::new()
        .with_archival_validator(Archival::A3_A)
        .with_accessibility_validator(Accessibility::UA1)
        .finish()
        .map_err(|_| PdfError::Standard)?;
    let mut document = Document::new_with(SerializeSettings {
        configuration,
        ..SerializeSettings::default()
    });
    let identifiers = draw_pages(&mut document, &laid, Ink::of(type_), paper)?;
    document.set_tag_tree(tags(&laid.tree, &identifiers, &report.language));
    document.set_outline(outline(&laid));
    document.set_metadata(metadata(report));
    for attachment in &report.attachments {
        document
            .embed_file(embedded(attachment, report.written))
            .ok_or(PdfError::Attachment)?;
    }
    document.finish().map_err(PdfError::Write)
}

/// Which identifiers each node's content got, in order.
type Identifiers = HashMap<NodeId, Vec<Identifier>>;

fn draw_pages(
    document: &mut Document,
    laid: &Laid,
    mut ink: Ink,
    paper: Paper,
) -> Result<Identifiers, PdfError> {
    let (width, height) = paper.size_pt();
    let mut identifiers = Identifiers::new();
    let owners = owners(laid);
    for (scene, owners) in laid.pages.iter().map(|p| &p.scene).zip(owners) {
        let mut page = document.start_page_with(PageSettings::from_wh(width, height).ok_or(PdfError::Page)?);
        let mut surface = page.surface();
        let mut at = 0;
        while at < scene.items.len() {
            // The next stretch of items with one owner.
            let (node, end) = owners.get(&at).copied().map_or_else(
                || {
                    (
                        None,
                        (at + 1..scene.items.len())
                            .find(|i| owners.contains_key(i))
                            .unwrap_or(scene.items.len()),
                    )
                },
                |(node, end)| (Some(node), end),
            );
            let items = scene.items.get(at..end).unwrap_or_default();
            let words = items.iter().all(|i| matches!(i, Item::Text { .. }));
            let id = surface.start_tagged(match node {
                None => ContentTag::Artifact(Artifact::with_kind(ArtifactType::Layout)),
                Some(_) if words => ContentTag::Span(SpanTag::empty()),
                Some(_) => ContentTag::Other,
            });
            if let Some(node) = node {
                identifiers.entry(node).or_default().push(id);
            }
            let mut canvas = OnPage {
                ink: &mut ink,
                surface: &mut surface,
            };
            let drawn = items.iter().try_for_each(|item| draw(&mut canvas, item));
            surface.end_tagged();
            drawn?;
            at = end;
        }
        surface.finish();
        page.finish();
    }
    Ok(identifiers)
}

/// For each page: at which item a node's content starts, whose it is and where it ends.
fn owners(laid: &Laid) -> Vec<HashMap<usize, (NodeId, usize)>> {
    let mut owners = vec![HashMap::new(); laid.pages.len()];
    for (id, node) in laid.tree.nodes.iter().enumerate() {
        for content in node.content.iter().filter(|c| !c.items.is_empty()) {
            if let Some(page) = owners.get_mut(content.page) {
                page.insert(content.items.start, (id, content.items.end));
            }
        }
    }
    owners
}

fn tags(tree: &Tree, identifiers: &Identifiers, language: &str) -> TagTree {
    let mut root = TagTree::new().with_lang(Some(language.to_owned()));
    if let Some(node) = tree.nodes.get(Tree::ROOT) {
        for child in &node.children {
            if let Some(group) = group(tree, *child, identifiers) {
                root.push(group);
            }
        }
    }
    root
}

/// A node with all under it; `None` where nothing was drawn.
fn group(tree: &Tree, id: NodeId, identifiers: &Identifiers) -> Option<TagGroup> {
    let node = tree.nodes.get(id)?;
    let mut group = match &node.kind {
        Kind::Group => TagGroup::new(Tag::NonStruct),
        Kind::Section => TagGroup::new(Tag::Section),
        Kind::Heading { level, words } => TagGroup::new(Tag::Hn(
            NonZeroU16::new(*level).unwrap_or(NonZeroU16::MIN),
            Some(words.clone()),
        )),
        Kind::Paragraph => TagGroup::new(Tag::P),
        Kind::List => TagGroup::new(Tag::L(ListNumbering::Disc)),
        Kind::Item => TagGroup::new(Tag::LI),
        Kind::Label => TagGroup::new(Tag::Lbl),
        Kind::Body => TagGroup::new(Tag::LBody),
        Kind::Table { summary } => {
            TagGroup::new(Tag::Table.with_summary(Some(summary.clone()).filter(|s| !s.is_empty())))
        }
        Kind::Row => TagGroup::new(Tag::TR),
        Kind::HeadCell => TagGroup::new(Tag::TH(TableHeaderScope::Column)),
        Kind::Cell => TagGroup::new(Tag::TD),
        Kind::Figure { alt } => TagGroup::new(Tag::Figure(Some(alt.clone()))),
        Kind::Caption => TagGroup::new(Tag::Caption),
    };
    let mut filled = false;
    for identifier in identifiers.get(&id).into_iter().flatten() {
        group.push(*identifier);
        filled = true;
    }
    for child in &node.children {
        if let Some(child) = self::group(tree, *child, identifiers) {
            group.push(child);
            filled = true;
        }
    }
    // An empty cell still counts: without it the row would be one short.
    (filled || matches!(node.kind, Kind::Cell | Kind::HeadCell)).then_some(group)
}

/// The headings, as the reader's outline; those inside a section hang under its heading.
fn outline(laid: &Laid) -> Outline {
    let mut outline = Outline::new();
    let mut open: Option<OutlineNode> = None;
    for node in &laid.tree.nodes {
        let Kind::Heading { level, words } = &node.kind else {
            continue;
        };
        let Some(content) = node.content.first() else {
            continue;
        };
        let item = laid
            .pages
            .get(content.page)
            .and_then(|p| p.scene.items.get(content.items.start));
        let y = if let Some(Item::Text { at, size, .. }) = item {
            at.y - size * 1.5
        } else {
            0.0
        };
        let place = XyzDestination::new(content.page, krilla::geom::Point::from_xy(0.0, y.max(0.0)));
        let entry = OutlineNode::new(words.clone(), place);
        match (&mut open, *level > 2) {
            (Some(section), true) => section.push_child(entry),
            _ => {
                if let Some(done) = open.replace(entry) {
                    outline.push_child(done);
                }
            }
        }
    }
    if let Some(last) = open {
        outline.push_child(last);
    }
    outline
}

fn metadata(report: &Report) -> Metadata {
    let mut metadata = Metadata::new()
        .title(report.title.clone())
        .language(report.language.clone())
        .producer(report.version.clone())
        .description(report.finding.sentence.clone())
        .document_id(format!(
            "{}\n{}\n{}",
            report.title, report.digest, report.written.at_ms
        ))
        .text_direction(match report.direction {
            Direction::LeftToRight => TextDirection::LeftToRight,
            Direction::RightToLeft => TextDirection::RightToLeft,
        })
        .creation_date(date(report.written));
    if !report.business.name.is_empty() {
        metadata = metadata.authors(vec![report.business.name.clone()]);
    }
    metadata
}

/// An attachment is what the pages were drawn from: `AFRelationship` is `Data` (PDF/A-3, ISO 32000-2 table 43).
fn embedded(attachment: &Attachment, written: Written) -> EmbeddedFile {
    EmbeddedFile {
        path: attachment.name.clone(),
        mime_type: MimeType::new(&attachment.mime),
        description: Some(attachment.description.clone()),
        association_kind: AssociationKind::Data,
        data: attachment.data.clone().into(),
        modification_date: Some(date(written)),
        compress: None,
        location: None,
    }
}

/// The entry's local time with its zone; years outside 0 to 9999 stand at the nearer end.
fn date(written: Written) -> DateTime {
    use chrono::{Datelike, FixedOffset, TimeZone, Timelike};
    let minutes = written.offset_min.clamp(-1_439, 1_439);
    let zone = FixedOffset::east_opt(minutes * 60);
    let local = zone.and_then(|z| z.timestamp_millis_opt(written.at_ms).single());
    let Some(local) = local else {
        return DateTime::new(1970);
    };
    let year = u16::try_from(local.year().clamp(0, 9_999)).unwrap_or(1970);
    DateTime::new(year)
        .month(local.month() as u8)
        .day(local.day() as u8)
        .hour(local.hour() as u8)
        .minute(local.minute() as u8)
        .second(local.second() as u8)
        .utc_offset_hour((minutes / 60) as i8)
        .utc_offset_minute((minutes % 60).unsigned_abs() as u8)
}
