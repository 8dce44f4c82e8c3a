//! The report with twelve photos of 12 megapixels, against ReportLab drawing the same pages from the same print
//! renditions. Ours is timed from the report's words to the bytes of the file, layout and standards included; the peer
//! gets the pages laid out, in memory, and only draws and writes them.

use std::path::Path;
use std::time::Duration;

use holdfast_joblog::{Rendition, Store, Subject};
use holdfast_report::theme::{Theme, colour};
use holdfast_report::{
    Align, Anchor, Block, Column, Ends, Fact, Figure, Finding, Item, Paper, PhotoScene, Point, Report, Role,
    Section, State, Stroke, Table, Weight, pages, photo, render_pdf,
};
use holdfast_tests::pictures::{Hose, gauge, hose};
use serde_json::{Value, json};

use crate::peer::Peer;
use crate::percentile::Times;
use crate::table::Row;
use crate::watch::Watch;

const PHOTOS: u32 = 12;
const RUNS: u32 = 61;
/// Pixels across a photo of 12 megapixels.
const WIDTH: u32 = 4_000;

/// Makes the report, taking turns with the peer.
pub fn rows() -> Vec<Row> {
    let dir = tempfile::tempdir().expect("a folder");
    let report = report(dir.path());
    let drawn = dir.path().join("pages.json");
    std::fs::write(&drawn, described(&report).to_string()).expect("a file");
    let mut peer = Peer::start("report.py");
    let (mut ours, mut pairs, mut size) = (Times::default(), Vec::new(), 0);
    let mut make = || -> Duration {
        let watch = Watch::start();
        let bytes = render_pdf(&report, Paper::A4).expect("a report");
        let took = watch.elapsed();
        size = bytes.len();
        took
    };
    for run in 0..RUNS {
        let mut first = (run % 2 == 0).then(&mut make);
        let theirs = peer
            .as_mut()
            .map(|peer| peer.time(drawn.to_str().expect("a path")));
        let took = first.take().unwrap_or_else(&mut make);
        // The first run warms both up.
        if run > 0 {
            ours.push(took);
            pairs.extend(theirs.map(|theirs| (took, theirs)));
        }
    }
    let what = "  as times as long as by ReportLab (95 % interval)";
    vec![
        Row::wanted(
            "report with 12 photos of 12 MP, median",
            "< 1000 ms",
            ours.percentile_ms(0.5),
        ),
        if peer.is_some() {
            Row::ratio(what, "< 0.33", &pairs)
        } else {
            Row::skipped(what, "cargo xtask bench fetches ReportLab")
        },
        Row::megabytes("  its size", "< 3 MB", size),
    ]
}

/// A report of four pages or so: a first page, twelve photos, sixty rows.
fn report(dir: &Path) -> Report {
    let photos = Store::open(&dir.join("log")).expect("a log").photos();
    let mut figures = (0..PHOTOS).map(|at| {
        let picture = match at % 3 {
            0 => hose(Hose::Split, WIDTH, at),
            1 => gauge(20.0 - f64::from(at), WIDTH, at),
            _ => hose(Hose::New, WIDTH, at),
        };
        let file = dir.join("taken.jpg");
        picture.expect("a picture").save(&file).expect("a JPEG");
        let imported = photos.import(&file, &|_| true).expect("the photo is taken in");
        let taken = imported.photo(Subject::Job, "");
        let print = photos
            .find(&taken, Rendition::Print)
            .expect("its print rendition");
        let scene = photo(&PhotoScene {
            alt: "A drawn picture".into(),
            path: print.to_string_lossy().into_owned(),
            width_px: taken.width,
            height_px: taken.height,
            ..PhotoScene::default()
        });
        Figure {
            scene,
            caption: format!("Picture {at}: the hose end and the gauge beside it, drawn for this bench."),
            width_share: 0.48,
        }
    });
    let mut blocks = Vec::new();
    while let (Some(left), Some(right)) = (figures.next(), figures.next()) {
        blocks.push(Block::Pair(left, right));
    }
    Report {
        language: "en-GB".into(),
        title: "HF 204 K: engine mount check".into(),
        facts: vec![Fact {
            label: "Vehicle".into(),
            value: "Estate, 2.0 diesel".into(),
        }],
        finding: Finding {
            state: Some(State::Leaks),
            sentence: "The vacuum hose to the front engine mount is split and leaks.".into(),
            certainty: "97 in 100 sure.".into(),
        },
        customer: vec![
            Block::Heading("How it is known".into()),
            Block::Text(
                "The gauge fell 6.5 inHg in 20 seconds with the hose alone on the hand pump. ".repeat(3),
            ),
        ],
        evidence: Section {
            heading: "Evidence".into(),
            blocks,
        },
        record: Section {
            heading: "Full record".into(),
            blocks: vec![Block::Table(record())],
        },
        version: "Holdfast".into(),
        ..Report::default()
    }
}

fn record() -> Table {
    let column = |head: &str, align| Column {
        head: head.into(),
        align,
    };
    Table {
        columns: vec![
            column("Time", Align::Start),
            column("Test", Align::Start),
            column("Read", Align::Decimal),
            column("Result", Align::Start),
        ],
        rows: (0..60)
            .map(|at| {
                vec![
                    format!("2026-03-14 09:{at:02}"),
                    "Vacuum hold test, front hose".into(),
                    format!("{:.1} inHg in 20 s", f64::from(at) / 7.0),
                    "Leaks".into(),
                ]
            })
            .collect(),
        ..Table::default()
    }
}

/// The pages as the peer reads them: what is drawn where and in which colour, and where the fonts are.
fn described(report: &Report) -> Value {
    let fonts = Path::new(env!("CARGO_MANIFEST_DIR")).join("../core/report/fonts");
    let (width, height) = Paper::A4.size_pt();
    let drawn: Vec<Value> = pages(report, Paper::A4)
        .iter()
        .map(|page| page.scene.items.iter().filter_map(item).collect())
        .collect();
    json!({
        "regular": fonts.join("NotoSans-Regular.ttf"), "bold": fonts.join("NotoSans-Bold.ttf"),
        "width": width, "height": height, "pages": drawn,
    })
}

fn item(item: &Item) -> Option<Value> {
    let rgb = |role: Role| colour(role, Theme::Day);
    let line = |stroke: &Option<Stroke>| stroke.map(|stroke| json!([stroke.width, rgb(stroke.role)]));
    let place = |point: &Point| json!([point.x, point.y]);
    Some(match item {
        Item::Path {
            points,
            ends,
            stroke,
            fill,
        } => json!({
            "kind": "path", "points": points.iter().map(place).collect::<Value>(),
            "closed": *ends == Ends::Closed, "stroke": line(stroke), "fill": fill.map(rgb),
        }),
        Item::Circle {
            centre,
            radius,
            stroke,
            fill,
        } => json!({
            "kind": "circle", "at": place(centre), "radius": radius, "stroke": line(stroke), "fill": fill.map(rgb),
        }),
        Item::Text {
            at,
            anchor,
            size,
            weight,
            role,
            text,
        } => json!({
            "kind": "text", "at": place(at), "size": size, "bold": *weight == Weight::Bold, "fill": rgb(*role),
            "anchor": match anchor { Anchor::Start => "start", Anchor::Middle => "middle", Anchor::End => "end" },
            "text": text,
        }),
        Item::Image {
            path,
            at,
            width,
            height,
        } => json!({"kind": "image", "path": path, "at": place(at), "width": width, "height": height}),
        // No gauge needle, arc or place to touch is on these pages.
        _ => return None,
    })
}
