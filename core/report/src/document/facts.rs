//! Labels with values, and lines to sign on.

use super::compose::Composer;
use super::flow::{Piece, Run};
use super::input::{Fact, SignLine};
use super::look::{FINE, PLAIN};
use super::structure::{Kind, NodeId};
use crate::diagram::sketch::{Sketch, at, solid};
use crate::scene::{Anchor, Role};

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

    pub(super) fn sign(&mut self, parent: NodeId, lines: &[SignLine]) {
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
}
