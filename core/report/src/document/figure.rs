//! Scenes placed on a page, with their captions.

use super::compose::Composer;
use super::flow::{Piece, Run};
use super::input::{Direction, Figure};
use super::look::Look;
use super::structure::{Kind, NodeId};
use crate::diagram::sketch::at;
use crate::scene::{Anchor, Item, Placement, Point, Role, Scene, Weight};

/// No figure is taller than this share of a page, so that its heading and caption find room beside it.
const TALLEST: f32 = 0.75;

/// Room for headings above a picture.
const HEADED: f32 = 100.0;

/// From line to line of a caption.
const CAPTION_LEADING: f32 = 13.0;

/// A caption longer than this is cut with a mark; the record has it whole.
const MOST_CAPTION_LINES: usize = 5;

/// A scene's items, scaled and moved; places to touch are left out, they mean nothing on paper. On a page that will be
/// mirrored it is turned within its box, to come out as it was drawn.
pub(crate) fn items(scene: &Scene, offset: Point, scale: f32, direction: Direction) -> Vec<Item> {
    let placement = Placement::scaled(scale, offset);
    let turn = Placement::turned_in(offset.x, scene.width * scale);
    let touched = |item: &&Item| matches!(item, Item::Region { .. });
    scene
        .items
        .iter()
        .filter(|item| !touched(item))
        .map(|item| {
            let mut item = placement.of(item);
            if direction == Direction::RightToLeft {
                turn.place(&mut item);
            }
            item
        })
        .collect()
}

impl Composer<'_> {
    /// One figure, or two beside each other, with captions; one piece.
    pub(super) fn figures(&mut self, parent: NodeId, figures: &[Figure]) {
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
            let (drawn, height) = self.placed_figure(parent, input, at(x, 0.0), column, share * self.shrink);
            runs.extend(drawn);
            tallest = tallest.max(height);
        }
        self.pieces.push(Piece {
            gap: 12.0,
            height: tallest,
            runs,
            ..Piece::default()
        });
    }

    /// A figure with its caption from `corner` on in a column, taking a share of its width; with the height of both.
    pub(super) fn placed_figure(
        &mut self,
        parent: NodeId,
        input: &Figure,
        corner: Point,
        column: f32,
        share: f32,
    ) -> (Vec<Run>, f32) {
        let captions = self.caption(&input.caption, column);
        // A heading, the picture and its caption fit on one page, however long the caption.
        let words = captions.len() as f32 * CAPTION_LEADING + 6.0;
        let height = self.sheet.text_height();
        let room = (height * TALLEST).min(height - HEADED - words);
        let scale = (column * share / input.scene.width.max(1.0)).min(room / input.scene.height.max(1.0));
        let node = self.tree.add(
            parent,
            Kind::Figure {
                alt: alt_of(&input.scene, &input.caption),
            },
        );
        let mut runs = vec![Run {
            node: Some(node),
            items: items(&input.scene, corner, scale, self.report.direction),
        }];
        let mut y = input.scene.height * scale + 6.0;
        if !captions.is_empty() {
            let node = self.tree.add(parent, Kind::Caption);
            let mut items = Vec::new();
            for line in &captions {
                let placement = Placement::moved(at(corner.x, corner.y + y));
                items.extend(line.iter().map(|item| placement.of(item)));
                y += CAPTION_LEADING;
            }
            runs.push(Run {
                node: Some(node),
                items,
            });
        }
        (runs, y)
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
            leading: CAPTION_LEADING,
            weight: Weight::Regular,
            role: Role::Ink,
        };
        let bold = Look {
            weight: Weight::Bold,
            ..look
        };
        let taken = self.type_.width(&number, bold.weight, bold.size) + 4.0;
        let mut lines = self.type_.wrap(words, look.weight, look.size, width - taken);
        if lines.len() > MOST_CAPTION_LINES {
            lines.truncate(MOST_CAPTION_LINES);
            if let Some(last) = lines.last_mut() {
                let kept = last.trim_end().chars().count().saturating_sub(2);
                *last = last.chars().take(kept).chain(['…']).collect();
            }
        }
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
