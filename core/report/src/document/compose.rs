//! From the report's blocks to pieces that can be flowed over pages.

use super::aside::Aside;
use super::flow::{Head, LaidPage, Piece, Run, Sheet, feet, flow};
use super::input::{Block, Direction, Paper, Report, Table};
use super::look::{BETWEEN, FINE, Look, MEASURE, PLAIN, SMALL};
use super::structure::{Kind, NodeId, Tree};
use super::table;
use crate::diagram::sketch::{Sketch, at, solid};
use crate::scene::{Anchor, Item, Placement, Role, Weight};
use crate::text::Typesetter;

const TITLE: f32 = 23.0;
const SECTION: f32 = 18.0;
const HEADING: f32 = 11.5;
const FINDING: f32 = 16.5;
const FINDING_LEADING: f32 = 22.0;

/// A report laid out: pages, and what is where.
pub(crate) struct Laid {
    pub(crate) pages: Vec<LaidPage>,
    pub(crate) tree: Tree,
}

/// A report laid out, with the type it was set in.
pub(crate) struct Composed {
    pub(crate) laid: Laid,
    pub(crate) type_: Typesetter,
}

/// Lays a report out on paper.
pub(crate) fn compose(report: &Report, paper: Paper) -> Composed {
    let (width, height) = paper.size_pt();
    let sheet = Sheet {
        width,
        height,
        side: 57.0,
        top: 54.0,
        bottom: 58.0,
    };
    let mut composer = Composer {
        report,
        sheet,
        type_: Typesetter::with(&report.fonts).running(report.direction),
        pieces: Vec::new(),
        tree: Tree::new(),
        figures: 0,
        shrink: 1.0,
        tighten: 1.0,
        aside: None,
    };
    composer.customer_on_one_page();
    let mut pages = composer.rest_without_a_sparse_page();
    let Composer { tree, type_, .. } = composer;
    let digest: String = report.digest.chars().take(16).collect();
    let foot: Vec<&str> = [report.title.as_str(), digest.as_str()]
        .into_iter()
        .filter(|s| !s.is_empty())
        .collect();
    feet(&mut pages, sheet, &foot.join("  ·  "), &report.words.page, SMALL);
    if report.direction == Direction::RightToLeft {
        // What has a way of its own (a drawing, a photo, a column of numbers) was turned beforehand in its own box.
        let turn = Placement::turned_in(0.0, sheet.width);
        for item in pages.iter_mut().flat_map(|page| &mut page.scene.items) {
            turn.place(item);
        }
    }
    Composed {
        laid: Laid { pages, tree },
        type_,
    }
}

pub(crate) struct Composer<'a> {
    pub(crate) report: &'a Report,
    pub(crate) sheet: Sheet,
    pub(crate) type_: Typesetter,
    pub(crate) pieces: Vec<Piece>,
    pub(crate) tree: Tree,
    pub(super) figures: usize,
    /// Factor on the size of figures, to keep the customer's page one page and the last one from being left over.
    pub(super) shrink: f32,
    /// Factor on the gaps, for the same.
    pub(super) tighten: f32,
    /// The picture that text runs beside now.
    pub(super) aside: Option<Aside>,
}

impl Composer<'_> {
    /// The customer's page, its figures and gaps as large as lets it stay one page; full size where that can't be.
    fn customer_on_one_page(&mut self) {
        for (shrink, tighten) in [
            (1.0, 1.0),
            (0.88, 1.0),
            (0.88, 0.75),
            (0.76, 0.7),
            (0.66, 0.65),
            (0.66, 0.5),
            (0.66, 0.35),
            (0.6, 0.2),
            (0.6, 0.1),
            (1.0, 1.0),
        ] {
            self.pieces.clear();
            self.tree = Tree::new();
            self.figures = 0;
            self.aside = None;
            (self.shrink, self.tighten) = (shrink, tighten);
            self.customer();
            self.pieces.iter_mut().for_each(|piece| piece.gap *= tighten);
            if flow(&self.pieces, self.sheet, &mut Tree::new()).pages.len() == 1 {
                break;
            }
        }
    }

    /// Evidence and record below the customer's page, flowed: a little smaller and closer where that spares a last page
    /// with hardly anything on it, full size where it can't be spared.
    fn rest_without_a_sparse_page(&mut self) -> Vec<LaidPage> {
        let (begun, figures) = (self.pieces.len(), self.figures);
        let tree = self.tree.clone();
        let mut pages = Vec::new();
        for (shrink, tighten) in [(1.0, 1.0), (0.96, 0.8), (0.92, 0.65), (0.86, 0.5), (1.0, 1.0)] {
            self.pieces.truncate(begun);
            self.figures = figures;
            self.tree = tree.clone();
            (self.shrink, self.tighten) = (shrink, tighten);
            self.rest();
            let rest = self.pieces.iter_mut().skip(begun);
            rest.for_each(|piece| piece.gap *= tighten);
            let flowed = flow(&self.pieces, self.sheet, &mut self.tree);
            pages = flowed.pages;
            if !flowed.ends_sparse {
                break;
            }
        }
        pages
    }

    fn rest(&mut self) {
        let report = self.report;
        for section in [&report.evidence, &report.record] {
            if !section.blocks.is_empty() {
                self.section(&section.heading, &section.blocks);
            }
        }
        self.colophon();
    }

    /// Title, facts and finding, then the blocks of the customer's page.
    fn customer(&mut self) {
        let section = self.tree.add(Tree::ROOT, Kind::Section);
        self.letterhead(section);
        let title = Look {
            size: TITLE,
            leading: 29.0,
            weight: Weight::Bold,
            role: Role::Ink,
        };
        let report = self.report;
        self.heading(section, 1, &report.title, title, 20.0);
        if !report.facts.is_empty() {
            self.facts(section, &report.facts, 10.0);
        }
        self.finding(section);
        self.begin_aside(section, &report.aside);
        self.blocks(section, &report.customer, 2);
        self.end_aside();
    }

    fn section(&mut self, heading: &str, blocks: &[Block]) {
        let section = self.tree.add(Tree::ROOT, Kind::Section);
        let look = Look {
            size: SECTION,
            leading: 24.0,
            weight: Weight::Bold,
            role: Role::Ink,
        };
        let first = self.pieces.len();
        self.heading(section, 2, heading, look, 0.0);
        if let Some(piece) = self.pieces.get_mut(first) {
            piece.fresh = true;
        }
        self.blocks(section, blocks, 3);
    }

    /// The name at the start side under a short bar in the accent, the lines at the other.
    fn letterhead(&mut self, section: NodeId) {
        let business = &self.report.business;
        if business.name.is_empty() && business.lines.is_empty() {
            return;
        }
        let node = self.tree.add(section, Kind::Paragraph);
        let mut bar = Sketch::new();
        bar.rect(at(0.0, 0.0), 30.0, 3.0, None, Some(Role::Needle));
        let name = Look {
            size: 12.5,
            leading: 16.0,
            weight: Weight::Bold,
            role: Role::Ink,
        };
        let mut items = vec![name.item(0.0, 9.0, Anchor::Start, &business.name)];
        let right = self.sheet.text_width();
        let mut y = 0.0;
        for line in &business.lines {
            items.push(FINE.item(right, y, Anchor::End, line));
            y += FINE.leading;
        }
        let runs = vec![
            Run {
                node: None,
                items: bar.finish(1.0, 1.0, "").items,
            },
            Run {
                node: Some(node),
                items,
            },
        ];
        self.pieces.push(Piece {
            height: y.max(26.0),
            runs,
            stay: true,
            ..Piece::default()
        });
    }

    fn finding(&mut self, section: NodeId) {
        let finding = &self.report.finding;
        if finding.sentence.is_empty() {
            return;
        }
        let node = self.tree.add(section, Kind::Paragraph);
        let look = Look {
            size: FINDING,
            leading: FINDING_LEADING,
            weight: Weight::Bold,
            role: Role::Ink,
        };
        let indent = if finding.state.is_some() { 24.0 } else { 0.0 };
        let lines = self.type_.wrap(
            &finding.sentence,
            look.weight,
            look.size,
            self.sheet.text_width() - indent,
        );
        let mut rule = Sketch::new();
        rule.line(
            &[at(0.0, 0.0), at(self.sheet.text_width(), 0.0)],
            solid(0.75, Role::Line),
        );
        if let Some(state) = finding.state {
            rule.state(at(7.0, 25.5), 7.0, state);
        }
        let items: Vec<Item> = lines
            .iter()
            .enumerate()
            .map(|(i, line)| look.item(indent, 14.0 + i as f32 * look.leading, Anchor::Start, line))
            .collect();
        let height = 14.0 + lines.len() as f32 * look.leading;
        let runs = vec![
            Run {
                node: None,
                items: rule.finish(1.0, 1.0, "").items,
            },
            Run {
                node: Some(node),
                items,
            },
        ];
        self.pieces.push(Piece {
            gap: 14.0,
            height,
            runs,
            stay: !finding.certainty.is_empty(),
            ..Piece::default()
        });
        if !finding.certainty.is_empty() {
            let node = self.tree.add(section, Kind::Paragraph);
            let quiet = Look {
                role: Role::QuietInk,
                ..PLAIN
            };
            self.text(node, &finding.certainty, quiet, indent, MEASURE - indent, 3.0);
        }
    }

    fn blocks(&mut self, parent: NodeId, blocks: &[Block], level: u16) {
        for (at, block) in blocks.iter().enumerate() {
            // A heading goes below the pictures with the wide block it belongs to.
            let is_heading = |block: &&Block| matches!(block, Block::Heading(_));
            let content = blocks.iter().skip(at).find(|block| !is_heading(block));
            if is_heading(&block) && content.is_some_and(is_wide) {
                self.end_aside();
            }
            self.block(parent, block, level);
        }
    }

    fn block(&mut self, parent: NodeId, block: &Block, level: u16) {
        if is_wide(block) {
            self.end_aside();
        }
        match block {
            Block::Heading(words) => {
                let look = Look {
                    size: HEADING,
                    leading: 16.0,
                    weight: Weight::Bold,
                    role: Role::Ink,
                };
                self.heading(parent, level, words, look, 16.0);
            }
            Block::Text(words) => {
                let node = self.tree.add(parent, Kind::Paragraph);
                self.text(node, words, PLAIN, 0.0, self.measure(), self.gap());
            }
            Block::List(entries) => self.list(parent, entries),
            Block::Facts(facts) => self.facts(parent, facts, BETWEEN),
            Block::Caution { signal, word, text } => self.caution(parent, *signal, word, text),
            Block::Figure(figure) => self.figures(parent, std::slice::from_ref(figure)),
            Block::Pair(left, right) => self.figures(parent, &[left.clone(), right.clone()]),
            Block::Table(input) => self.table(parent, input),
            Block::Sign(lines) => self.sign(parent, lines),
        }
    }

    fn table(&mut self, parent: NodeId, input: &Table) {
        let laid = table::lay(self, parent, input);
        self.pieces.extend(laid);
    }

    /// Digest and version, at the very end, on one page with what they stand under.
    fn colophon(&mut self) {
        let report = self.report;
        if let Some(last) = self.pieces.last_mut() {
            last.stay = true;
        }
        let pairs = [
            (&report.words.digest, &report.digest),
            (&report.words.version, &report.version),
        ];
        for (i, (word, value)) in pairs.into_iter().filter(|(_, v)| !v.is_empty()).enumerate() {
            let node = self.tree.add(Tree::ROOT, Kind::Paragraph);
            let words = format!("{word} {value}");
            self.text(
                node,
                &words,
                FINE,
                0.0,
                self.sheet.text_width(),
                if i == 0 { 18.0 } else { 0.0 },
            );
        }
    }
}

/// Whether a block needs the whole width.
fn is_wide(block: &Block) -> bool {
    match block {
        Block::Heading(_) | Block::Text(_) | Block::List(_) | Block::Caution { .. } => false,
        Block::Facts(_) | Block::Figure(_) | Block::Pair(..) | Block::Table(_) | Block::Sign(_) => true,
    }
}

/// A table's head drawn again on later pages, as decoration.
pub(crate) fn head_of(height: f32, runs: &[Run]) -> std::rc::Rc<Head> {
    std::rc::Rc::new(Head {
        height,
        items: runs.iter().flat_map(|r| r.items.iter().cloned()).collect(),
    })
}
