//! Where pages may break, tried on reports of every make.

use proptest::prelude::*;

use super::compose::{Laid, compose};
use super::input::{Block, Column, Fact, Figure, Paper, Report, Section, SignLine, Signal, Table};
use super::structure::Kind;
use crate::diagram::sketch::at;
use crate::scene::{Ends, Item, Role, Scene};

/// A picture of a size, filled from edge to edge.
fn scene(width: f32, height: f32) -> Scene {
    let corners = vec![at(0.0, 0.0), at(width, 0.0), at(width, height), at(0.0, height)];
    Scene {
        width,
        height,
        alt: "a picture".into(),
        items: vec![Item::Path {
            points: corners,
            ends: Ends::Closed,
            stroke: None,
            fill: Some(Role::Band),
        }],
    }
}

fn words(most: usize) -> impl Strategy<Value = String> {
    proptest::collection::vec("[a-z]{1,14}", 1..most).prop_map(|words| words.join(" "))
}

fn figure() -> impl Strategy<Value = Figure> {
    (20.0_f32..700.0, 10.0_f32..2_000.0, words(70), 0.1_f32..1.2).prop_map(
        |(width, height, caption, width_share)| Figure {
            scene: scene(width, height),
            caption,
            width_share,
        },
    )
}

fn table() -> impl Strategy<Value = Table> {
    let rows = proptest::collection::vec(proptest::collection::vec(words(30), 3), 0..14);
    (rows, 0..14_usize).prop_map(|(rows, sums)| Table {
        caption: "Rows".into(),
        columns: ["One", "Two", "Three"]
            .map(|head| Column {
                head: head.into(),
                ..Column::default()
            })
            .into(),
        // Half of the tables have none.
        sums: rows.len().min(sums.saturating_sub(7)),
        rows,
    })
}

fn block() -> impl Strategy<Value = Block> {
    prop_oneof![
        1 => words(120).prop_map(Block::Text),
        1 => proptest::collection::vec(words(40), 1..6).prop_map(Block::List),
        1 => words(40).prop_map(|text| Block::Caution {
            signal: Signal::Warning,
            word: "WARNING".into(),
            text,
        }),
        1 => words(6).prop_map(|value| Block::Facts(vec![Fact {
            label: "Label".into(),
            value,
        }])),
        4 => figure().prop_map(Block::Figure),
        4 => (figure(), figure()).prop_map(|(left, right)| Block::Pair(left, right)),
        1 => table().prop_map(Block::Table),
        1 => words(3).prop_map(|label| Block::Sign(vec![SignLine {
            label,
            ..SignLine::default()
        }])),
    ]
}

fn report() -> impl Strategy<Value = Report> {
    // Some blocks have a heading; two headings never follow each other.
    let headed = || {
        (proptest::option::weighted(0.3, words(4)), block())
            .prop_map(|(heading, block)| heading.map(Block::Heading).into_iter().chain([block]).collect())
    };
    let blocks = move |most| {
        proptest::collection::vec(headed(), 0..most).prop_map(|all: Vec<Vec<Block>>| all.concat())
    };
    (blocks(6), blocks(14), proptest::option::of(figure())).prop_map(|(customer, evidence, aside)| Report {
        language: "en".into(),
        title: "Any report".into(),
        aside: aside.into_iter().collect(),
        customer,
        evidence: Section {
            heading: "Evidence".into(),
            blocks: evidence,
        },
        ..Report::default()
    })
}

/// The pages that a node's content stands on.
fn pages_of(laid: &Laid, node: usize) -> Vec<usize> {
    laid.tree.nodes[node]
        .content
        .iter()
        .map(|content| content.page)
        .collect()
}

/// Each picture with the caption that follows it.
fn captioned(laid: &Laid) -> Vec<(usize, usize)> {
    let kind = |node: usize| &laid.tree.nodes[node].kind;
    laid.tree
        .nodes
        .iter()
        .flat_map(|node| node.children.windows(2))
        .filter(|pair| {
            matches!(
                (kind(pair[0]), kind(pair[1])),
                (Kind::Figure { .. }, Kind::Caption)
            )
        })
        .map(|pair| (pair[0], pair[1]))
        .collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn no_page_parts_a_picture_from_its_caption(report in report(), letter in any::<bool>()) {
        let paper = if letter { Paper::Letter } else { Paper::A4 };
        let laid = compose(&report, paper).laid;
        let figures = laid.tree.nodes.iter().filter(|node| matches!(node.kind, Kind::Figure { .. })).count();
        let pairs = captioned(&laid);
        prop_assert_eq!(pairs.len(), figures, "each picture has a caption here");
        for (figure, caption) in pairs {
            let (pictures, words) = (pages_of(&laid, figure), pages_of(&laid, caption));
            prop_assert_eq!(pictures.len(), 1);
            prop_assert_eq!(pictures, words);
        }
    }

    #[test]
    fn no_picture_hangs_over_the_edge_of_its_page(report in report(), letter in any::<bool>()) {
        let paper = if letter { Paper::Letter } else { Paper::A4 };
        let (width, height) = paper.size_pt();
        for page in compose(&report, paper).laid.pages {
            for item in &page.scene.items {
                if let Item::Path { points, fill: Some(Role::Band), .. } = item {
                    for point in points {
                        prop_assert!((0.0..=width).contains(&point.x), "{point:?}");
                        prop_assert!((0.0..=height - 40.0).contains(&point.y), "{point:?}");
                    }
                }
            }
        }
    }

    #[test]
    fn a_heading_never_ends_a_page(report in report()) {
        let laid = compose(&report, Paper::A4).laid;
        let nodes = &laid.tree.nodes;
        for section in nodes {
            for pair in section.children.windows(2) {
                let (heading, next) = (&nodes[pair[0]], pair[1]);
                if !matches!(heading.kind, Kind::Heading { .. }) {
                    continue;
                }
                let Some(page) = heading.content.last().map(|content| content.page) else { continue };
                let Some(after) = first_page(&laid, next) else { continue };
                prop_assert!(after == page, "heading on {page}, what follows on {after}");
            }
        }
    }
}

/// The page on which a node or what is in it begins.
fn first_page(laid: &Laid, node: usize) -> Option<usize> {
    let own = pages_of(laid, node).into_iter().min();
    let inside = laid.tree.nodes[node].children.iter();
    inside
        .filter_map(|child| first_page(laid, *child))
        .chain(own)
        .min()
}
