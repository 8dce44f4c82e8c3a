//! Names in scripts that the embedded family lacks, with cut-down fonts of the Noto project (`testdata/README.md`).

use std::path::{Path, PathBuf};

use super::fonts::REPLACEMENT;
use super::{FaceId, Typesetter};
use crate::scene::Weight;

fn files() -> Vec<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("testdata/fonts");
    std::fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .collect()
}

/// Devanagari is in the embedded family.
const HINDI: &str = "कृष्णा शर्मा";

const NAMES: [&str; 6] = ["محمد الأمين", "אברהם כהן", HINDI, "张伟", "山田はなこ", "김민수"];

/// Glyphs of each word, left to right. Source: HarfBuzz 15.0.0 (uharfbuzz 0.57.0), `hb.shape` on the same font files.
#[test]
fn words_are_shaped_as_harfbuzz_shapes_them() {
    let expected: [(&str, &[u32]); 8] = [
        ("محمد", &[10, 60, 21, 59]),
        ("الأمين", &[74, 169, 59, 37, 2]),
        ("אברהם", &[5, 7, 11, 2, 1]),
        ("כהן", &[6, 7, 8]),
        ("कृष्णा", &[3935, 3971, 4240, 3950, 3881]),
        ("शर्मा", &[3979, 3945, 3881, 4149]),
        ("张伟", &[17, 11]),
        ("山田はなこ", &[13, 31, 7, 6, 5]),
    ];
    let mut type_ = Typesetter::with(&files());
    for (word, glyphs) in expected {
        let line = type_.line(word, Weight::Regular, 10.0);
        let shaped: Vec<u32> = line
            .runs
            .iter()
            .flat_map(|run| &run.glyphs)
            .map(|g| g.id)
            .collect();
        assert_eq!(shaped, glyphs, "{word}");
    }
}

#[test]
fn names_in_six_scripts_are_drawn_whole_in_both_weights() {
    let mut type_ = Typesetter::with(&files());
    for name in NAMES {
        for weight in [Weight::Regular, Weight::Bold] {
            assert_eq!(type_.drawable(name, weight), name);
            let line = type_.line(name, weight, 10.0);
            assert!(line.width > 10.0, "{name}");
            let glyphs = line.runs.iter().flat_map(|run| &run.glyphs);
            assert!(glyphs.clone().all(|glyph| glyph.id != 0), "{name}");
            // Every letter is some glyph's, so that a reader can copy the name.
            let mut letters = vec![false; name.len()];
            for glyph in glyphs {
                letters[glyph.text.clone()].fill(true);
            }
            assert!(letters.iter().all(|covered| *covered), "{name}");
        }
    }
}

#[test]
fn without_a_font_a_name_is_replaced_visibly() {
    let mut type_ = Typesetter::new();
    for name in NAMES.into_iter().filter(|name| *name != HINDI) {
        let shown = type_.drawable(name, Weight::Regular);
        assert!(shown.contains(REPLACEMENT), "{name}: {shown}");
        assert_eq!(shown.chars().count(), name.chars().count());
    }
}

#[test]
fn a_name_that_runs_left_stands_where_it_was_put_in_a_line_that_runs_right() {
    let mut type_ = Typesetter::with(&files());
    let line = type_.line("אברהם: checked", Weight::Regular, 10.0);
    let latin = line.runs.iter().find(|run| {
        run.glyphs.first().is_some_and(|g| {
            line.text
                .get(g.text.clone())
                .is_some_and(|t| t.starts_with(|c: char| c.is_ascii_alphabetic()))
        })
    });
    // The name comes first although its letters run left.
    assert!(latin.is_some_and(|run| run.x > 20.0), "{:?}", line.runs);
    let name = &line.runs[0];
    assert!(
        name.glyphs[0].text.start > name.glyphs[1].text.start,
        "from the right"
    );
    // Alone, its full stop stands at its left end.
    let alone = type_.line("אברהם.", Weight::Regular, 10.0);
    let first = alone.runs.iter().min_by(|a, b| a.x.total_cmp(&b.x)).unwrap();
    assert_eq!(alone.text.get(first.glyphs[0].text.clone()), Some("."));
}

#[test]
fn japanese_and_chinese_take_their_own_form_of_a_character() {
    let mut type_ = Typesetter::with(&files());
    let mut face = |text: &str| match type_.line(text, Weight::Regular, 10.0).runs[0].face {
        FaceId::Extra(at) => at,
        FaceId::Embedded(_) => panic!("{text} is not in the embedded family"),
    };
    let (chinese, japanese) = (face("直骨海"), face("直骨海はな"));
    assert_ne!(chinese, japanese);
    let family = |at: usize, type_: &Typesetter| type_.extra(at).unwrap().family.clone();
    assert_eq!(family(chinese, &type_), "Noto Sans CJK SC");
    assert_eq!(family(japanese, &type_), "Noto Sans CJK JP");
}

#[test]
fn files_that_are_no_fonts_or_gone_do_no_harm() {
    let dir = tempfile::tempdir().unwrap();
    let broken = dir.path().join("NotoSansHebrew-Regular.ttf");
    std::fs::write(&broken, b"not a font").unwrap();
    let gone = dir.path().join("NotoSansArabic-Regular.ttf");
    let mut type_ = Typesetter::with(&[broken, gone]);
    assert_eq!(type_.drawable("אב", Weight::Regular), "\u{fffd}\u{fffd}");
    assert_eq!(type_.drawable("مح", Weight::Regular), "\u{fffd}\u{fffd}");
}

#[test]
fn lines_of_a_wrapped_name_lose_nothing() {
    let mut type_ = Typesetter::with(&files());
    for name in NAMES {
        let long = [name; 12].join(" ");
        let lines = type_.wrap(&long, Weight::Regular, 10.0, 70.0);
        assert!(lines.len() > 1, "{name}");
        assert_eq!(lines.concat(), long);
        for line in lines {
            assert!(
                type_.width(line.trim_end(), Weight::Regular, 10.0) <= 70.5,
                "{line}"
            );
        }
    }
}

#[test]
fn figures_after_a_name_from_the_right_stay_with_what_follows_them() {
    let mut type_ = Typesetter::with(&files());
    for name in ["محمد", "אברהם"] {
        let line = type_.line(&format!("{name}, 14 March"), Weight::Regular, 10.0);
        let mut at = Vec::new();
        for run in &line.runs {
            let mut x = run.x;
            for glyph in &run.glyphs {
                let text = line.text.get(glyph.text.clone()).unwrap_or_default();
                at.extend(text.chars().next().map(|c| (c, x)));
                x += glyph.advance;
                assert_ne!(glyph.id, 0, "{name}");
            }
        }
        let place = |wanted: char| at.iter().find(|(c, _)| *c == wanted).map(|(_, x)| *x);
        let name_ends = at
            .iter()
            .filter(|(c, _)| name.contains(*c))
            .map(|(_, x)| *x)
            .fold(0.0, f32::max);
        assert!(place('1') > Some(name_ends), "{name}: {at:?}");
        assert!(place('1') < place('M'), "{name}: {at:?}");
    }
}
