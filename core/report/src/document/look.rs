//! The report's type: sizes, leading and the looks of running text.

use crate::diagram::sketch::at;
use crate::scene::{Anchor, Item, Role, Weight};

/// Type of the report, in points.
pub(super) const BODY: f32 = 10.0;
pub(super) const LEADING: f32 = 14.5;
pub(super) const SMALL: f32 = 8.5;
pub(super) const SMALL_LEADING: f32 = 11.5;
/// A measure longer than this is hard to read: running text stays narrower than figures and tables.
pub(super) const MEASURE: f32 = 430.0;
/// Space between blocks.
pub(super) const BETWEEN: f32 = 9.0;

/// How a run of text looks.
#[derive(Clone, Copy)]
pub(super) struct Look {
    pub(super) size: f32,
    pub(super) leading: f32,
    pub(super) weight: Weight,
    pub(super) role: Role,
}

/// Running text.
pub(super) const PLAIN: Look = Look {
    size: BODY,
    leading: LEADING,
    weight: Weight::Regular,
    role: Role::Ink,
};
/// Small print.
pub(super) const FINE: Look = Look {
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

    pub(super) fn item(self, x: f32, top: f32, anchor: Anchor, text: impl Into<String>) -> Item {
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
