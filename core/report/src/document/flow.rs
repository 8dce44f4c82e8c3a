//! Pieces that may not be split, flowed over pages.

use std::rc::Rc;

use super::structure::{Content, NodeId, Tree};
use crate::scene::{Anchor, Item, Placement, Point, Role, Scene, Weight};

/// Drawn items that belong to one node of the structure, or to none (decoration).
#[derive(Debug, Clone)]
pub(crate) struct Run {
    pub(crate) node: Option<NodeId>,
    pub(crate) items: Vec<Item>,
}

/// A piece of the report that is never split. Items are placed from its upper left corner.
#[derive(Debug, Clone, Default)]
pub(crate) struct Piece {
    /// Space above, left out at the top of a page.
    pub(crate) gap: f32,
    pub(crate) height: f32,
    pub(crate) runs: Vec<Run>,
    /// Stays on one page with the piece that follows, where a page can hold both.
    pub(crate) stay: bool,
    /// Starts a page, unless the one before it is the second or later and has room below.
    pub(crate) fresh: bool,
    /// Drawn again above this piece when it comes first on a page: a table's head.
    pub(crate) head: Option<Rc<Head>>,
}

/// What is repeated at the top of a page.
#[derive(Debug, Clone, Default)]
pub(crate) struct Head {
    pub(crate) height: f32,
    pub(crate) items: Vec<Item>,
}

/// Measures of the paper, in points.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Sheet {
    pub(crate) width: f32,
    pub(crate) height: f32,
    pub(crate) side: f32,
    pub(crate) top: f32,
    pub(crate) bottom: f32,
}

impl Sheet {
    pub(crate) fn text_width(&self) -> f32 {
        self.width - 2.0 * self.side
    }

    pub(crate) fn text_height(&self) -> f32 {
        self.height - self.top - self.bottom
    }
}

/// A laid out page.
#[derive(Debug, Clone)]
pub(crate) struct LaidPage {
    pub(crate) scene: Scene,
}

/// Pieces that were flowed.
pub(crate) struct Flowed {
    pub(crate) pages: Vec<LaidPage>,
    /// Whether the last page, if it isn't the only one, has hardly anything on it.
    pub(crate) ends_sparse: bool,
}

/// Flows the pieces over pages and notes in the tree where each node's content went.
pub(crate) fn flow(pieces: &[Piece], sheet: Sheet, tree: &mut Tree) -> Flowed {
    let mut press = Press {
        sheet,
        pages: Vec::new(),
        y: 0.0,
        tree,
    };
    press.page();
    let mut rest = pieces;
    while !rest.is_empty() {
        let length = rest.iter().position(|p| !p.stay).map_or(rest.len(), |i| i + 1);
        let (group, after) = rest.split_at(length);
        press.group(group);
        rest = after;
    }
    let ends_sparse = press.pages.len() > 1 && press.is_below(SPARSE);
    Flowed {
        pages: press.pages,
        ends_sparse,
    }
}

/// A last page filled less than this looks left over.
const SPARSE: f32 = 0.35;
/// A section goes on below one before it that ends higher than this on its page.
const ROOM_BELOW: f32 = 0.6;
/// Space between the two.
const BETWEEN_SECTIONS: f32 = 34.0;

struct Press<'a> {
    sheet: Sheet,
    pages: Vec<LaidPage>,
    /// Where the next piece goes, from the top of the text.
    y: f32,
    tree: &'a mut Tree,
}

impl Press<'_> {
    fn page(&mut self) {
        let scene = Scene {
            width: self.sheet.width,
            height: self.sheet.height,
            alt: String::new(),
            items: Vec::new(),
        };
        self.pages.push(LaidPage { scene });
        self.y = 0.0;
    }

    /// Whether the page is filled less than this share.
    fn is_below(&self, share: f32) -> bool {
        self.y < self.sheet.text_height() * share
    }

    fn at_top(&self) -> bool {
        self.y == 0.0
    }

    fn group(&mut self, group: &[Piece]) {
        let starts = group.first().is_some_and(|p| p.fresh);
        if starts && !self.at_top() {
            if self.pages.len() > 1 && self.is_below(ROOM_BELOW) {
                self.y += BETWEEN_SECTIONS;
            } else {
                self.page();
            }
        }
        let height: f32 = group.iter().map(|p| p.gap + p.height).sum();
        if !self.at_top() && self.y + height > self.sheet.text_height() {
            let head = group
                .first()
                .and_then(|p| p.head.as_ref())
                .map_or(0.0, |h| h.height);
            let first = group.first().map_or(0.0, |p| p.gap);
            // A group that no page can hold is split where it must; it need not start a page for that, unless nothing
            // but its heading would stand here.
            let is_whole = height - first + head <= self.sheet.text_height();
            if is_whole || self.y + beginning(group) > self.sheet.text_height() {
                self.page();
            }
        }
        for piece in group {
            self.piece(piece);
        }
    }

    fn piece(&mut self, piece: &Piece) {
        let fits = |y: f32| y + piece.gap + piece.height <= self.sheet.text_height();
        if !self.at_top() && !fits(self.y) {
            self.page();
        }
        if self.at_top() {
            if let (Some(head), true) = (&piece.head, self.pages.len() > 1) {
                self.draw(None, &head.items, 0.0);
                self.y += head.height;
            }
        } else {
            self.y += piece.gap;
        }
        let y = self.y;
        for run in &piece.runs {
            self.draw(run.node, &run.items, y);
        }
        self.y += piece.height.max(0.01);
    }

    fn draw(&mut self, node: Option<NodeId>, items: &[Item], y: f32) {
        let page = self.pages.len() - 1;
        let Some(LaidPage { scene }) = self.pages.last_mut() else {
            return;
        };
        let start = scene.items.len();
        let placement = Placement::moved(Point {
            x: self.sheet.side,
            y: self.sheet.top + y,
        });
        scene.items.extend(items.iter().map(|item| placement.of(item)));
        if let Some(node) = node.and_then(|n| self.tree.nodes.get_mut(n)) {
            node.content.push(Content {
                page,
                items: start..scene.items.len(),
            });
        }
    }
}

/// Height of what a group begins with: up to the first line below a table's head, or a piece and what stays with it.
fn beginning(group: &[Piece]) -> f32 {
    let row = group.iter().position(|piece| piece.head.is_some());
    let count = row.map_or(2, |row| row + 1);
    group
        .iter()
        .take(count)
        .map(|piece| piece.gap + piece.height)
        .sum()
}

/// Writes the foot of every page: a line of text at the start side, the page number at the other.
pub(crate) fn feet(pages: &mut [LaidPage], sheet: Sheet, start: &str, number: &str, size: f32) {
    let total = pages.len().to_string();
    for (i, page) in pages.iter_mut().enumerate() {
        let y = sheet.height - sheet.bottom / 2.0;
        let number = number
            .replace("{page}", &(i + 1).to_string())
            .replace("{pages}", &total);
        let mut text = |x: f32, anchor: Anchor, text: String| {
            let (at, weight, role) = (Point { x, y }, Weight::Regular, Role::QuietInk);
            page.scene.items.push(Item::Text {
                at,
                anchor,
                size,
                weight,
                role,
                text,
            });
        };
        text(sheet.side, Anchor::Start, start.to_owned());
        text(sheet.width - sheet.side, Anchor::End, number.clone());
        page.scene.alt = number;
    }
}
