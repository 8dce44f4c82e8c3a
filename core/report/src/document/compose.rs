//! From the report's blocks to pieces that can be flowed over pages.

use super::flow::{Head, LaidPage, Piece, Run, Sheet, feet, flow};
use super::input::{Block, Fact, Figure, Paper, Report, SignLine, Signal, Table};
use super::structure::{Kind, NodeId, Tree};
use super::{figure, table};
use crate::diagram::sketch::{Sketch, at, solid};
use crate::scene::{Anchor, Item, Point, Role, Scene, Weight};
use crate::text::Typesetter;

/// Type of the report, in points.
pub(crate) const BODY: f32 = 10.0;
pub(crate) const LEADING: f32 = 14.5;
pub(crate) const SMALL: f32 = 8.5;
pub(crate) const SMALL_LEADING: f32 = 11.5;
const TITLE: f32 = 23.0;
const SECTION: f32 = 18.0;
const HEADING: f32 = 11.5;
const FINDING: f32 = 16.5;
const FINDING_LEADING: f32 = 22.0;
/// A measure longer than this is hard to read: running text stays narrower than figures and tables.
const MEASURE: f32 = 430.0;
const BETWEEN: f32 = 9.0;
/// No figure is taller than this share of a page, so that its heading and caption find room beside it.
const TALLEST: f32 = 0.75;

/// A report laid out: pages, and what is where.
pub(crate) struct Laid {
    pub(crate) pages: Vec<LaidPage>,
    pub(crate) tree: Tree,
}

/// Lays a report out on paper.
pub(crate) fn compose(report: &Report, paper: Paper) -> Laid {
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
        type_: Typesetter::new(),
        pieces: Vec::new(),
        tree: Tree::new(),
        figures: 0,
        shrink: 1.0,
    };
    composer.customer_on_one_page();
    for section in [&report.evidence, &report.record] {
        if !section.blocks.is_empty() {
            composer.section(&section.heading, &section.blocks);
        }
    }
    composer.colophon();
    let Composer { pieces, mut tree, .. } = composer;
    let mut pages = flow(pieces, sheet, &mut tree);
    let digest: String = report.digest.chars().take(16).collect();
    let foot: Vec<&str> = [report.title.as_str(), digest.as_str()]
        .into_iter()
        .filter(|s| !s.is_empty())
        .collect();
    feet(&mut pages, sheet, &foot.join("  ·  "), &report.words.page, SMALL);
    Laid { pages, tree }
}

pub(crate) struct Composer<'a> {
    pub(crate) report: &'a Report,
    pub(crate) sheet: Sheet,
    pub(crate) type_: Typesetter,
    pub(crate) pieces: Vec<Piece>,
    pub(crate) tree: Tree,
    figures: usize,
    /// Factor on the size of figures, to keep the customer's page one page.
    shrink: f32,
}

/// How a run of text looks.
#[derive(Clone, Copy)]
pub(crate) struct Look {
    pub(crate) size: f32,
    pub(crate) leading: f32,
    pub(crate) weight: Weight,
    pub(crate) role: Role,
}

const PLAIN: Look = Look {
    size: BODY,
    leading: LEADING,
    weight: Weight::Regular,
    role: Role::Ink,
};
const FINE: Look = Look {
    size: SMALL,
    leading: SMALL_LEADING,
    weight: Weight::Regular,
    role: Role::QuietInk,
};

impl Look {
    /// Where the baseline of a line stands, from the top of the line.
    fn baseline(self) -> f32 {
        (self.leading - self.size) / 2.0 + self.size * 0.82
    }

    pub(crate) fn item(self, x: f32, top: f32, anchor: Anchor, text: impl Into<String>) -> Item {
        Item::Text {
            at: at(x, top + self.baseline()),
            anchor,
            size: self.size,
            weight: self.weight,
            role: self.role,
            text: text.into(),
        }
    }
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
            (1.0, 1.0),
        ] {
            self.pieces.clear();
            self.tree = Tree::new();
            self.figures = 0;
            self.shrink = shrink;
            self.customer();
            self.pieces.iter_mut().for_each(|piece| piece.gap *= tighten);
            if flow(self.pieces.clone(), self.sheet, &mut Tree::new()).len() == 1 {
                break;
            }
        }
        self.shrink = 1.0;
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
        self.blocks(section, &report.customer, 2);
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
        for block in blocks {
            self.block(parent, block, level);
        }
    }

    fn block(&mut self, parent: NodeId, block: &Block, level: u16) {
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
                self.text(node, words, PLAIN, 0.0, MEASURE, self.gap());
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

    /// Space above a paragraph: little under a heading, more between paragraphs.
    fn gap(&self) -> f32 {
        let under_heading = self.pieces.last().is_some_and(|p| p.stay);
        if under_heading { 2.0 } else { BETWEEN }
    }

    fn heading(&mut self, parent: NodeId, level: u16, words: &str, look: Look, gap: f32) {
        if words.trim().is_empty() {
            return;
        }
        let node = self.tree.add(
            parent,
            Kind::Heading {
                level,
                words: words.to_owned(),
            },
        );
        let lines = self
            .type_
            .wrap(words, look.weight, look.size, self.sheet.text_width());
        let items = lines
            .iter()
            .enumerate()
            .map(|(i, line)| look.item(0.0, i as f32 * look.leading, Anchor::Start, line))
            .collect();
        let height = lines.len() as f32 * look.leading;
        let runs = vec![Run {
            node: Some(node),
            items,
        }];
        self.pieces.push(Piece {
            gap,
            height,
            runs,
            stay: true,
            ..Piece::default()
        });
    }

    /// Running text, a piece a line; the first two and the last two lines stay together.
    fn text(&mut self, node: NodeId, words: &str, look: Look, x: f32, width: f32, gap: f32) {
        let lines = self.type_.wrap(words, look.weight, look.size, width);
        let count = lines.len();
        for (i, line) in lines.into_iter().enumerate() {
            let items = vec![look.item(x, 0.0, Anchor::Start, line)];
            self.pieces.push(Piece {
                gap: if i == 0 { gap } else { 0.0 },
                height: look.leading,
                runs: vec![Run {
                    node: Some(node),
                    items,
                }],
                stay: i + 1 < count && (i == 0 || i + 2 == count),
                ..Piece::default()
            });
        }
    }

    fn list(&mut self, parent: NodeId, entries: &[String]) {
        const INDENT: f32 = 13.0;
        let list = self.tree.add(parent, Kind::List);
        for (i, entry) in entries.iter().enumerate() {
            let item = self.tree.add(list, Kind::Item);
            let label = self.tree.add(item, Kind::Label);
            let body = self.tree.add(item, Kind::Body);
            let gap = if i == 0 { self.gap() } else { 3.0 };
            let first = self.pieces.len();
            self.text(body, entry, PLAIN, INDENT, MEASURE - INDENT, gap);
            if let Some(piece) = self.pieces.get_mut(first) {
                let items = vec![PLAIN.item(1.0, 0.0, Anchor::Start, "•")];
                piece.runs.insert(
                    0,
                    Run {
                        node: Some(label),
                        items,
                    },
                );
            }
        }
    }

    /// Labels with values in two columns, each label above its value.
    fn facts(&mut self, parent: NodeId, facts: &[Fact], gap: f32) {
        const GUTTER: f32 = 18.0;
        let columns = 3;
        let width = (self.sheet.text_width() - GUTTER * (columns as f32 - 1.0)) / columns as f32;
        for (row, chunk) in facts.chunks(columns).enumerate() {
            let mut runs = Vec::new();
            let mut height: f32 = 0.0;
            for (i, fact) in chunk.iter().enumerate() {
                let x = i as f32 * (width + GUTTER);
                let node = self.tree.add(parent, Kind::Paragraph);
                let mut items = vec![FINE.item(x, 0.0, Anchor::Start, format!("{} ", fact.label))];
                let mut y = FINE.leading;
                for line in self.type_.wrap(&fact.value, PLAIN.weight, PLAIN.size, width) {
                    items.push(PLAIN.item(x, y, Anchor::Start, line));
                    y += 13.0;
                }
                height = height.max(y);
                runs.push(Run {
                    node: Some(node),
                    items,
                });
            }
            let gap = if row == 0 { gap } else { 7.0 };
            self.pieces.push(Piece {
                gap,
                height,
                runs,
                ..Piece::default()
            });
        }
    }

    fn caution(&mut self, parent: NodeId, signal: Signal, word: &str, text: &str) {
        let role = match signal {
            Signal::Danger => Role::Danger,
            Signal::Warning => Role::Warning,
            Signal::Caution => Role::Caution,
            Signal::Notice => Role::Notice,
        };
        const INDENT: f32 = 22.0;
        let node = self.tree.add(parent, Kind::Paragraph);
        let bold = Look {
            weight: Weight::Bold,
            role,
            ..PLAIN
        };
        let word = format!("{word} ");
        let taken = self.type_.width(&word, bold.weight, bold.size) + 4.0;
        // The signal word stands on the first line; the text goes on after it and then under it.
        let first = self.first_line(text, MEASURE - INDENT - taken);
        let (head, tail) = text.split_at_checked(first).unwrap_or((text, ""));
        let mut items = vec![bold.item(INDENT, 0.0, Anchor::Start, word)];
        items.push(PLAIN.item(INDENT + taken, 0.0, Anchor::Start, head));
        let mut sign = Sketch::new();
        if signal != Signal::Notice {
            sign.shape(
                &[at(1.0, 12.5), at(15.0, 12.5), at(8.0, 0.5)],
                Some(solid(1.3, role)),
                None,
            );
            sign.line(&[at(8.0, 4.5), at(8.0, 8.6)], solid(1.4, role));
            sign.circle(at(8.0, 10.6), 0.8, None, Some(role));
        }
        let runs = vec![
            Run {
                node: None,
                items: sign.finish(1.0, 1.0, "").items,
            },
            Run {
                node: Some(node),
                items,
            },
        ];
        let more = !tail.trim().is_empty();
        self.pieces.push(Piece {
            gap: BETWEEN,
            height: LEADING,
            runs,
            stay: more,
            ..Piece::default()
        });
        if more {
            self.text(node, tail.trim_start(), PLAIN, INDENT, MEASURE - INDENT, 0.0);
        }
    }

    /// How many bytes of a text fit on a first line of a width.
    fn first_line(&mut self, text: &str, width: f32) -> usize {
        let shown = self.type_.wrap(text, PLAIN.weight, PLAIN.size, width);
        shown.first().map_or(0, |line| {
            if text.starts_with(line.as_str()) {
                line.len()
            } else {
                text.len()
            }
        })
    }

    /// One figure, or two beside each other, with captions; one piece.
    fn figures(&mut self, parent: NodeId, figures: &[Figure]) {
        const GUTTER: f32 = 24.0;
        let count = figures.len().max(1) as f32;
        let column = (self.sheet.text_width() - GUTTER * (count - 1.0)) / count;
        let mut runs = Vec::new();
        let mut tallest: f32 = 0.0;
        for (i, input) in figures.iter().enumerate() {
            let x = i as f32 * (column + GUTTER);
            let share = if figures.len() == 1 {
                input.width_share.clamp(0.2, 1.0)
            } else {
                1.0
            };
            let share = share * self.shrink;
            let mut captions = self.caption(&input.caption, column);
            let room = self.sheet.text_height() * TALLEST;
            let scale = (column * share / input.scene.width.max(1.0)).min(room / input.scene.height.max(1.0));
            let height = input.scene.height * scale;
            let node = self.tree.add(
                parent,
                Kind::Figure {
                    alt: alt_of(&input.scene, &input.caption),
                },
            );
            runs.push(Run {
                node: Some(node),
                items: figure::items(&input.scene, at(x, 0.0), scale),
            });
            let mut y = height + 6.0;
            if !captions.is_empty() {
                let node = self.tree.add(parent, Kind::Caption);
                let mut items = Vec::new();
                for line in &mut captions {
                    for item in line.iter() {
                        items.push(figure::placed(item, Point { x, y }, 1.0));
                    }
                    y += 13.0;
                }
                runs.push(Run {
                    node: Some(node),
                    items,
                });
            }
            tallest = tallest.max(y);
        }
        self.pieces.push(Piece {
            gap: 12.0,
            height: tallest,
            runs,
            ..Piece::default()
        });
    }

    /// The caption as lines of items: number in bold, then the words.
    fn caption(&mut self, words: &str, width: f32) -> Vec<Vec<Item>> {
        if words.is_empty() {
            return Vec::new();
        }
        self.figures += 1;
        let number = format!(
            "{} ",
            self.report
                .words
                .figure
                .replace("{number}", &self.figures.to_string())
        );
        let look = Look {
            size: 9.0,
            leading: 13.0,
            weight: Weight::Regular,
            role: Role::Ink,
        };
        let bold = Look {
            weight: Weight::Bold,
            ..look
        };
        let taken = self.type_.width(&number, bold.weight, bold.size) + 4.0;
        let lines = self.type_.wrap(words, look.weight, look.size, width - taken);
        lines
            .into_iter()
            .enumerate()
            .map(|(i, line)| {
                let mut items = Vec::new();
                if i == 0 {
                    items.push(bold.item(0.0, 0.0, Anchor::Start, number.clone()));
                }
                items.push(look.item(taken, 0.0, Anchor::Start, line));
                items
            })
            .collect()
    }

    fn table(&mut self, parent: NodeId, input: &Table) {
        let laid = table::lay(self, parent, input);
        self.pieces.extend(laid);
    }

    fn sign(&mut self, parent: NodeId, lines: &[SignLine]) {
        const GUTTER: f32 = 24.0;
        let width = (self.sheet.text_width() - GUTTER) / 2.0;
        for pair in lines.chunks(2) {
            let mut runs = Vec::new();
            for (i, line) in pair.iter().enumerate() {
                let x = i as f32 * (width + GUTTER);
                let node = self.tree.add(parent, Kind::Paragraph);
                let mut rule = Sketch::new();
                rule.line(&[at(x, 17.0), at(x + width, 17.0)], solid(0.75, Role::Ink));
                runs.push(Run {
                    node: None,
                    items: rule.finish(1.0, 1.0, "").items,
                });
                let mut items = Vec::new();
                if !line.written.is_empty() {
                    items.push(PLAIN.item(x, 1.0, Anchor::Start, format!("{} ", line.written)));
                }
                items.push(FINE.item(x, 19.0, Anchor::Start, &line.label));
                runs.push(Run {
                    node: Some(node),
                    items,
                });
            }
            self.pieces.push(Piece {
                gap: 20.0,
                height: 31.0,
                runs,
                ..Piece::default()
            });
        }
    }

    /// Digest and version, at the very end.
    fn colophon(&mut self) {
        let report = self.report;
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

/// The scene's own alternative text, or the caption where it has none.
fn alt_of(scene: &Scene, caption: &str) -> String {
    let alt = if scene.alt.trim().is_empty() {
        caption
    } else {
        &scene.alt
    };
    alt.to_owned()
}

/// A table's head drawn again on later pages, as decoration.
pub(crate) fn head_of(height: f32, runs: &[Run]) -> std::rc::Rc<Head> {
    std::rc::Rc::new(Head {
        height,
        items: runs.iter().flat_map(|r| r.items.iter().cloned()).collect(),
    })
}
