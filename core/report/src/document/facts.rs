//! Labels with values, and lines to sign on.

use super::compose::Composer;
use super::figure::items;
use super::flow::{Piece, Run};
use super::input::{Fact, SignLine};
use super::look::{FINE, PLAIN};
use super::structure::{Kind, NodeId};
use crate::diagram::sketch::{Sketch, at, solid};
use crate::scene::{Anchor, Point, Role};

/// Columns of labels with values.
const COLUMNS: usize = 3;
/// Between two of them.
const FACT_GUTTER: f32 = 18.0;
/// Between two lines to sign on that stand beside each other.
const SIGN_GUTTER: f32 = 24.0;
/// Room above a line to sign on with a pen.
const SIGN_RULE: f32 = 17.0;
/// Room above a line for a signature that is drawn.
const SIGNED_RULE: f32 = 38.0;

impl Composer<'_> {
    /// Labels with values, each label above its value: in one row where all fit, else in three columns.
    pub(super) fn facts(&mut self, parent: NodeId, facts: &[Fact], gap: f32) {
        let room = self.sheet.text_width() - FACT_GUTTER * (COLUMNS - 1) as f32;
        let widths = match self.widths_in_one_row(facts) {
            Some(widths) if facts.len() > COLUMNS => widths,
            _ => vec![room / COLUMNS as f32; COLUMNS],
        };
        for (row, chunk) in facts.chunks(widths.len()).enumerate() {
            let mut runs = Vec::new();
            let (mut x, mut height): (f32, f32) = (0.0, 0.0);
            for (fact, width) in chunk.iter().zip(&widths) {
                let node = self.tree.add(parent, Kind::Paragraph);
                let mut items = vec![FINE.item(x, 0.0, Anchor::Start, format!("{} ", fact.label))];
                let mut y = FINE.leading;
                for line in self.type_.wrap(&fact.value, PLAIN.weight, PLAIN.size, *width) {
                    items.push(PLAIN.item(x, y, Anchor::Start, line));
                    y += 13.0;
                }
                height = height.max(y);
                runs.push(Run {
                    node: Some(node),
                    items,
                });
                x += width + FACT_GUTTER;
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

    /// Widths at which all labels and values stand on one line beside each other, what is left over shared evenly.
    fn widths_in_one_row(&mut self, facts: &[Fact]) -> Option<Vec<f32>> {
        let needs: Vec<f32> = facts
            .iter()
            .map(|fact| {
                let label = self.type_.width(&fact.label, FINE.weight, FINE.size);
                label.max(self.type_.width(&fact.value, PLAIN.weight, PLAIN.size)) + 0.5
            })
            .collect();
        let count = needs.len().max(1) as f32;
        let left = self.sheet.text_width() - FACT_GUTTER * (count - 1.0) - needs.iter().sum::<f32>();
        (left >= 0.0).then(|| needs.into_iter().map(|need| need + left / count).collect())
    }

    /// Lines to sign on, two beside each other, with what is signed already.
    pub(super) fn sign(&mut self, parent: NodeId, lines: &[SignLine]) {
        let width = (self.sheet.text_width() - SIGN_GUTTER) / 2.0;
        for pair in lines.chunks(2) {
            let signed = pair.iter().any(|line| line.signature.is_some());
            let rule_y = if signed { SIGNED_RULE } else { SIGN_RULE };
            let (mut runs, mut below) = (Vec::new(), 0);
            for (i, line) in pair.iter().enumerate() {
                let place = at(i as f32 * (width + SIGN_GUTTER), rule_y);
                let (more, lines) = self.sign_line(parent, line, place, width);
                runs.extend(more);
                below = below.max(lines);
            }
            self.pieces.push(Piece {
                gap: 16.0,
                height: rule_y + 2.0 + FINE.leading * below as f32,
                runs,
                ..Piece::default()
            });
        }
    }

    /// One line to sign on, and how many lines of words stand below it; `place` is its start.
    fn sign_line(&mut self, parent: NodeId, line: &SignLine, place: Point, width: f32) -> (Vec<Run>, usize) {
        let mut rule = Sketch::new();
        rule.line(&[place, at(place.x + width, place.y)], solid(0.75, Role::Ink));
        let mut runs = vec![Run {
            node: None,
            items: rule.finish(1.0, 1.0, "").items,
        }];
        if let Some(signature) = &line.signature {
            let scale = ((SIGNED_RULE - 4.0) / signature.height)
                .min(width * 0.8 / signature.width)
                .min(0.5);
            let corner = at(place.x + 8.0, place.y + 2.0 - signature.height * scale);
            let alt = signature.alt.clone();
            runs.push(Run {
                node: Some(self.tree.add(parent, Kind::Figure { alt })),
                items: items(signature, corner, scale, self.report.direction),
            });
        }
        let node = self.tree.add(parent, Kind::Paragraph);
        let mut words = Vec::new();
        let mut below = self.type_.wrap(&line.label, FINE.weight, FINE.size, width);
        let written = line.written.as_str();
        if !written.is_empty() {
            // A name stands where it would be signed, if there is room for it.
            let stands =
                line.signature.is_none() && self.type_.width(written, PLAIN.weight, PLAIN.size) <= width;
            if stands {
                // Words that follow are kept apart by a space, for a reader that joins them.
                words.push(PLAIN.item(place.x, place.y - 16.0, Anchor::Start, format!("{written} ")));
            } else {
                if let Some(last) = below.last_mut() {
                    last.push(' ');
                }
                below.extend(self.type_.wrap(written, FINE.weight, FINE.size, width));
            }
        }
        let lines = below.len();
        words.extend(below.into_iter().enumerate().map(|(n, line)| {
            let top = place.y + 2.0 + n as f32 * FINE.leading;
            FINE.item(place.x, top, Anchor::Start, line)
        }));
        runs.push(Run {
            node: Some(node),
            items: words,
        });
        (runs, lines)
    }
}
