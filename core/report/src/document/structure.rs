//! The logical structure of the report: what a screen reader walks through, in reading order.

use std::ops::Range;

/// Index of a node in its [`Tree`].
pub(crate) type NodeId = usize;

/// What a node is.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Kind {
    /// Groups without meaning of their own.
    Group,
    /// A part of the document.
    Section,
    /// A heading; its words name it in the outline.
    Heading {
        level: u16,
        words: String,
    },
    Paragraph,
    List,
    Item,
    Label,
    Body,
    Table {
        summary: String,
    },
    Row,
    HeadCell,
    Cell,
    Figure {
        alt: String,
    },
    Caption,
}

/// A run of drawn items on one page that belongs to a node.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Content {
    pub(crate) page: usize,
    pub(crate) items: Range<usize>,
}

#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Node {
    pub(crate) kind: Kind,
    pub(crate) children: Vec<NodeId>,
    pub(crate) content: Vec<Content>,
}

/// Nodes; the first is the root.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Tree {
    pub(crate) nodes: Vec<Node>,
}

impl Tree {
    pub(crate) const ROOT: NodeId = 0;

    pub(crate) fn new() -> Self {
        Self {
            nodes: vec![Node {
                kind: Kind::Group,
                children: Vec::new(),
                content: Vec::new(),
            }],
        }
    }

    /// Adds a node as the last child of `parent`.
    pub(crate) fn add(&mut self, parent: NodeId, kind: Kind) -> NodeId {
        let id = self.nodes.len();
        self.nodes.push(Node {
            kind,
            children: Vec::new(),
            content: Vec::new(),
        });
        if let Some(parent) = self.nodes.get_mut(parent) {
            parent.children.push(id);
        }
        id
    }
}
