//! Running text: headings, paragraphs, lists, cautions.

use super::compose::Composer;
use super::flow::{Piece, Run};
use super::input::Signal;
use super::look::{BETWEEN, LEADING, Look, PLAIN};
use super::structure::{Kind, NodeId};
use crate::diagram::sketch::{Sketch, at, solid};
use crate::scene::{Anchor, Role, Weight};

impl Composer<'_> {
    /// Space above a paragraph: little under a heading, more between paragraphs.
    pub(super) fn gap(&self) -> f32 {
        let under_heading = self.pieces.last().is_some_and(|p| p.stay);
        if under_heading { 2.0 } else { BETWEEN }
    }

    pub(super) fn heading(&mut self, parent: NodeId, level: u16, words: &str, look: Look, gap: f32) {
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
        let lines = self.type_.wrap(words, look.weight, look.size, self.column());
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
    pub(super) fn text(&mut self, node: NodeId, words: &str, look: Look, x: f32, width: f32, gap: f32) {
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

    pub(super) fn list(&mut self, parent: NodeId, entries: &[String]) {
        const INDENT: f32 = 13.0;
        let list = self.tree.add(parent, Kind::List);
        for (i, entry) in entries.iter().enumerate() {
            let item = self.tree.add(list, Kind::Item);
            let label = self.tree.add(item, Kind::Label);
            let body = self.tree.add(item, Kind::Body);
            let gap = if i == 0 { self.gap() } else { 3.0 };
            let first = self.pieces.len();
            self.text(body, entry, PLAIN, INDENT, self.measure() - INDENT, gap);
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

    pub(super) fn caution(&mut self, parent: NodeId, signal: Signal, word: &str, text: &str) {
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
        let first = self.first_line(text, self.measure() - INDENT - taken);
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
            self.text(
                node,
                tail.trim_start(),
                PLAIN,
                INDENT,
                self.measure() - INDENT,
                0.0,
            );
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
}
