//! Labels with values, and lines to sign on.

use super::compose::Composer;
use super::figure::items;
use super::flow::{Piece, Run};
use super::input::{Fact, SignLine};
use super::look::{FINE, PLAIN};
use super::structure::{Kind, NodeId};
use crate::diagram::sketch::{Sketch, at, solid};
use crate::scene::{Anchor, Point, Role};

/// Between two lines to sign on that stand beside each other.
const SIGN_GUTTER: f32 = 24.0;
/// Room above a line to sign on with a pen.
const SIGN_RULE: f32 = 17.0;
/// Room above a line for a signature that is drawn.
const SIGNED_RULE: f32 = 38.0;

impl Composer<'_> {
    /// Labels with values in two columns, each label above its value.
    pub(super) fn facts(&mut self, parent: NodeId, facts: &[Fact], gap: f32) {
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

    /// Lines to sign on, two beside each other, with what is signed already.
    pub(super) fn sign(&mut self, parent: NodeId, lines: &[SignLine]) {
        let width = (self.sheet.text_width() - SIGN_GUTTER) / 2.0;
        for pair in lines.chunks(2) {
            let signed = pair.iter().any(|line| line.signature.is_some());
            let rule_y = if signed { SIGNED_RULE } else { SIGN_RULE };
            let runs = pair
                .iter()
                .enumerate()
                .flat_map(|(i, line)| {
                    let place = at(i as f32 * (width + SIGN_GUTTER), rule_y);
                    self.sign_line(parent, line, place, width)
                })
                .collect();
            self.pieces.push(Piece {
                gap: 16.0,
                height: rule_y + 2.0 + FINE.leading + if signed { FINE.leading } else { 0.0 },
                runs,
                ..Piece::default()
            });
        }
    }

    /// One line to sign on; `place` is its start.
    fn sign_line(&mut self, parent: NodeId, line: &SignLine, place: Point, width: f32) -> Vec<Run> {
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
        let below = |lines: f32| place.y + 2.0 + lines * FINE.leading;
        // Words that follow are kept apart by a space, for a reader that joins them.
        let words = match (line.written.as_str(), &line.signature) {
            ("", _) => vec![FINE.item(place.x, below(0.0), Anchor::Start, &line.label)],
            (written, Some(_)) => vec![
                FINE.item(place.x, below(0.0), Anchor::Start, format!("{} ", line.label)),
                FINE.item(place.x, below(1.0), Anchor::Start, written),
            ],
            (written, None) => vec![
                PLAIN.item(place.x, place.y - 16.0, Anchor::Start, format!("{written} ")),
                FINE.item(place.x, below(0.0), Anchor::Start, &line.label),
            ],
        };
        runs.push(Run {
            node: Some(node),
            items: words,
        });
        runs
    }
}
