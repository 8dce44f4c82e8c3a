//! The report as pages and as PDF.

#[path = "layouts/mod.rs"]
mod layouts;

use std::error::Error;

use holdfast_report::{
    Anchor, Block, Direction, Figure, Item, Paper, PdfError, Report, Section, SignLine, Table, pages,
    render_pdf,
};
use layouts::sample_report::report;

type Outcome = Result<(), Box<dyn Error>>;

fn texts(report: &Report, paper: Paper) -> Vec<Vec<String>> {
    let text = |i: &Item| {
        if let Item::Text { text, .. } = i {
            Some(text.clone())
        } else {
            None
        }
    };
    pages(report, paper)
        .iter()
        .map(|p| p.scene.items.iter().filter_map(text).collect())
        .collect()
}

#[test]
fn same_report_gives_the_same_bytes() -> Outcome {
    let sample = report(40, None);
    assert_eq!(
        render_pdf(&sample, Paper::A4)?,
        render_pdf(&sample.clone(), Paper::A4)?
    );
    Ok(())
}

#[test]
fn file_names_both_standards_and_only_the_given_date() -> Outcome {
    let bytes = render_pdf(&report(3, None), Paper::A4)?;
    let raw = String::from_utf8_lossy(&bytes);
    assert!(raw.contains("<pdfaid:part>3</pdfaid:part>"));
    assert!(raw.contains("<pdfuaid:part>1</pdfuaid:part>"));
    // 1 790 000 000 s after 1970 is 2026-09-21 14:13:20 UTC (`date -u -d @1790000000`), two hours ahead 16:13:20.
    assert!(
        raw.contains("2026-09-21T16:13:20+02:00"),
        "date of the last entry"
    );
    Ok(())
}

#[test]
fn table_head_is_repeated_on_every_page_of_the_table() {
    let pages = texts(&report(120, None), Paper::A4);
    let with_rows: Vec<_> = pages
        .iter()
        .filter(|p| p.iter().any(|t| t == "Rear hose"))
        .skip(1)
        .collect();
    assert!(with_rows.len() >= 3, "{} pages of table", with_rows.len());
    for page in with_rows.iter().filter(|p| p.iter().any(|t| t.trim() == "15:21")) {
        assert!(page.iter().any(|t| t.trim() == "Uncertainty"), "{page:?}");
    }
}

#[test]
fn pages_are_numbered_to_the_last() {
    let pages = texts(&report(120, None), Paper::Letter);
    let count = pages.len();
    for (i, page) in pages.iter().enumerate() {
        assert!(page.contains(&format!("Page {} of {count}", i + 1)));
    }
}

#[test]
fn nothing_is_drawn_off_the_paper() {
    for paper in [Paper::A4, Paper::Letter] {
        let (width, height) = paper.size_pt();
        for page in pages(&report(60, None), paper) {
            for item in &page.scene.items {
                if let Item::Text { at, anchor, text, .. } = item {
                    assert!(
                        (0.0..=width).contains(&at.x) && (0.0..=height).contains(&at.y),
                        "{text} at {at:?}"
                    );
                    assert!(*anchor != Anchor::End || at.x > 20.0, "{text}");
                }
            }
        }
    }
}

#[test]
fn caption_stays_on_the_page_of_its_figure() {
    let mut sample = report(1, None);
    let figure = sample.evidence.blocks[2].clone();
    sample.evidence.blocks = std::iter::repeat_n(figure, 30).collect();
    for page in pages(&sample, Paper::A4) {
        let captions = page
            .scene
            .items
            .iter()
            .filter(|i| matches!(i, Item::Text { text, .. } if text.starts_with("Figure ")))
            .count();
        // Each pair has two bands, and each band is titled.
        let titles = page
            .scene
            .items
            .iter()
            .filter(|i| matches!(i, Item::Text { text, .. } if text.ends_with("alone, 20 s")))
            .count();
        if titles > 0 {
            assert_eq!(captions, titles);
        }
    }
}

#[test]
fn ten_thousand_characters_without_a_space_stay_inside_the_measure() -> Outcome {
    let mut sample = report(1, None);
    sample.customer.push(Block::Text("x".repeat(10_000)));
    sample.record.blocks.push(Block::Table(Table {
        columns: vec![Default::default(), Default::default()],
        rows: vec![vec!["note ".repeat(2_000), "y".repeat(10_000)]],
        ..Table::default()
    }));
    assert!(pages(&sample, Paper::A4).len() > 5);
    // Words of one letter never shape narrower than this many to a line of the page.
    for text in texts(&sample, Paper::A4).concat() {
        assert!(
            text.chars().count() <= 200,
            "{} characters on a line",
            text.chars().count()
        );
    }
    render_pdf(&sample, Paper::A4)?;
    Ok(())
}

#[test]
fn names_in_scripts_the_family_lacks_are_replaced_visibly() -> Outcome {
    let mut sample = report(1, None);
    sample.facts[5].value = "\u{202e}Ahmad \u{5d0}\u{5d1} 山田 🚗\u{7}\u{200d}".into();
    render_pdf(&sample, Paper::A4)?;
    Ok(())
}

#[test]
fn a_report_without_title_or_language_is_refused() {
    assert!(matches!(
        render_pdf(&Report::default(), Paper::A4),
        Err(PdfError::Unnamed)
    ));
}

#[test]
fn pictures_go_into_the_file_once_however_often_they_are_shown() -> Outcome {
    let folder = tempfile::tempdir()?;
    let path = folder.path().join("split.png");
    let scene = holdfast_report::gauge(&layouts::samples::dial());
    std::fs::write(
        &path,
        holdfast_report::render_png(&scene, holdfast_report::theme::Theme::Day, 400)?,
    )?;
    let mut sample = report(1, path.to_str());
    let once = render_pdf(&sample, Paper::A4)?.len();
    if let Some(Block::Figure(figure)) = sample.evidence.blocks.last().cloned() {
        sample.evidence.blocks.push(Block::Figure(figure));
    }
    let twice = render_pdf(&sample, Paper::A4)?.len();
    let picture = std::fs::metadata(&path)?.len() as usize;
    assert!(
        once > picture / 2 && twice - once < picture / 2,
        "{once}, {twice}, picture {picture}"
    );
    Ok(())
}

#[test]
fn a_figure_taller_than_the_page_is_made_to_fit_under_its_heading() {
    let mut sample = report(1, None);
    let tall = holdfast_report::Scene {
        width: 100.0,
        height: 5_000.0,
        alt: "tall".into(),
        items: vec![],
    };
    let figure = holdfast_report::Figure {
        scene: tall,
        caption: "Tall".into(),
        width_share: 1.0,
    };
    sample.evidence.blocks = vec![Block::Figure(figure)];
    let pages = texts(&sample, Paper::Letter);
    let page = pages.iter().find(|p| p.iter().any(|t| t == "Evidence"));
    assert!(page.is_some_and(|p| p.iter().any(|t| t == "Tall")));
}

#[test]
fn customers_page_is_one_page_on_both_papers() {
    for paper in [Paper::A4, Paper::Letter] {
        let pages = texts(&report(10, None), paper);
        assert!(pages[0].iter().any(|t| t == "Work done by"), "{paper:?}");
        assert!(pages[1].iter().any(|t| t == "Evidence"), "{paper:?}");
    }
}

#[test]
fn a_missing_picture_is_named() {
    let sample = report(1, Some("/nowhere/split.jpg"));
    match render_pdf(&sample, Paper::A4) {
        Err(PdfError::Image { path, .. }) => assert!(path.ends_with("split.jpg")),
        other => panic!("{other:?}"),
    }
}

#[test]
fn a_report_with_nothing_but_a_title_is_one_page() -> Outcome {
    let bare = Report {
        title: "Report".into(),
        language: "en".into(),
        ..Report::default()
    };
    assert_eq!(pages(&bare, Paper::A4).len(), 1);
    render_pdf(&bare, Paper::A4)?;
    let empty = Report {
        evidence: Section {
            heading: "Evidence".into(),
            blocks: vec![],
        },
        ..bare
    };
    assert_eq!(pages(&empty, Paper::A4).len(), 1);
    Ok(())
}

#[test]
fn text_runs_beside_the_picture_and_a_signature_stands_below_it() {
    let mut sample = report(3, None);
    let Some(Block::Pair(figure, _)) = sample.evidence.blocks.first().cloned() else {
        panic!("a figure in the sample");
    };
    sample.aside = vec![Figure {
        caption: "Beside".into(),
        width_share: 0.44,
        ..figure
    }];
    sample.customer = vec![
        Block::Text("A short text that runs beside the picture, in lines of its own width.".into()),
        Block::Sign(vec![SignLine {
            label: "Signed".into(),
            ..SignLine::default()
        }]),
    ];
    let page = pages(&sample, Paper::A4).remove(0).scene;
    let place = |words: &str| {
        page.items
            .iter()
            .find_map(|item| match item {
                Item::Text { at, text, .. } if text.trim_end().starts_with(words) => Some(*at),
                _ => None,
            })
            .unwrap_or_else(|| panic!("{words} is on the page"))
    };
    let (text, caption, signed) = (place("A short text"), place("Beside"), place("Signed"));
    assert!(text.x < caption.x && text.y < caption.y, "beside the picture");
    assert!(signed.y > caption.y, "below the picture and its caption");
}

#[test]
fn words_under_a_line_to_sign_on_stay_under_it() {
    let long = "Cliente, fecha. Reparación: aceptada / más tarde / rechazada por ahora";
    let mut sample = report(3, None);
    sample.aside.clear();
    sample.customer = vec![Block::Sign(vec![
        SignLine {
            label: long.into(),
            ..SignLine::default()
        },
        SignLine {
            label: "Right".into(),
            written: "Somebody with a name that is longer than a line to sign on has room for".into(),
            ..SignLine::default()
        },
    ])];
    let page = pages(&sample, Paper::A4).remove(0).scene;
    let words = page.items.iter().filter_map(|item| match item {
        Item::Text { at, text, .. } => Some((*at, text.trim_end())),
        _ => None,
    });
    let words: Vec<_> = words.collect();
    let right = words.iter().find(|(_, text)| *text == "Right").unwrap().0;
    let under = |x: f32| {
        let lines = words
            .iter()
            .filter(move |(at, _)| at.y >= right.y && (at.x - x).abs() < 1.0);
        lines.map(|(_, text)| *text).collect::<Vec<_>>()
    };
    let left = words
        .iter()
        .find(|(_, text)| text.starts_with("Cliente"))
        .unwrap()
        .0;
    assert_eq!(under(left.x)[..2].join(" "), long);
    assert_eq!(
        under(right.x)[1..3].join(" "),
        "Somebody with a name that is longer than a line to sign on has room for"
    );
}

/// Keys: ISO 19005-3, 6.8 (embedded files), and ISO 32000-2, 7.11.3 and table 43.
#[test]
fn an_attachment_says_what_it_is_and_how_it_belongs_to_the_pages() -> Outcome {
    let bytes = render_pdf(&report(3, None), Paper::A4)?;
    let raw = String::from_utf8_lossy(&bytes);
    for part in [
        "/AFRelationship/Data",
        "/Subtype/text#2Fcsv",
        "/EmbeddedFiles",
        "The readings of this report as a table",
        "readings.csv",
    ] {
        assert!(raw.contains(part), "{part}");
    }
    Ok(())
}

#[test]
fn two_attachments_of_one_name_are_refused() {
    let mut sample = report(1, None);
    let twice = sample.attachments.clone();
    sample.attachments.extend(twice);
    assert!(matches!(
        render_pdf(&sample, Paper::A4),
        Err(PdfError::Attachment)
    ));
}

/// Left edges of the texts with these words on all pages, and where each is anchored.
fn places(report: &Report, words: &str) -> Vec<(f32, Anchor)> {
    pages(report, Paper::A4)
        .iter()
        .flat_map(|page| page.scene.items.clone())
        .filter_map(|item| match item {
            Item::Text { at, anchor, text, .. } if text.trim() == words => Some((at.x, anchor)),
            _ => None,
        })
        .collect()
}

#[test]
fn a_language_from_the_right_gets_its_pages_mirrored_and_its_drawings_as_they_are() -> Outcome {
    let usual = report(3, None);
    let mirrored = Report {
        language: "ar-XB".into(),
        direction: Direction::RightToLeft,
        ..usual.clone()
    };
    let (width, _) = Paper::A4.size_pt();
    // What begins at the left margin begins as far from the right edge.
    for words in ["Kerbside Motor Works", "How we know", "Evidence", "Full record"] {
        let (there, here) = (places(&usual, words), places(&mirrored, words));
        assert!(!there.is_empty(), "{words}");
        for ((x, anchor), (turned, turned_anchor)) in there.iter().zip(&here) {
            assert!((turned - (width - x)).abs() < 0.01, "{words}: {x} {turned}");
            assert_eq!((*anchor, *turned_anchor), (Anchor::Start, Anchor::End), "{words}");
        }
    }
    // A scale still grows the way it did.
    let step = |report: &Report| {
        let found = |words: &str| places(report, words).first().map(|(x, _)| *x);
        found("20").zip(found("0")).map(|(twenty, zero)| twenty - zero)
    };
    let (Some(there), Some(here)) = (step(&usual), step(&mirrored)) else {
        panic!("no chart with a scale")
    };
    assert!((there - here).abs() < 0.01, "{there} {here}");
    // ISO 32000-1, 14.9.2 (language of the document) and table 150 (direction of reading).
    let bytes = render_pdf(&mirrored, Paper::A4)?;
    let raw = String::from_utf8_lossy(&bytes);
    assert!(raw.contains("/Lang (ar-XB)") || raw.contains("/Lang(ar-XB)"));
    assert!(raw.contains("/Direction /R2L") || raw.contains("/Direction/R2L"));
    assert!(raw.contains("<dc:language><rdf:Bag><rdf:li>ar-XB") || raw.contains("ar-XB</rdf:li>"));
    Ok(())
}
