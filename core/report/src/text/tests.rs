use super::fonts::{Face, REPLACEMENT};
use super::*;
use crate::scene::Weight;

fn drawable(text: &str, weight: Weight) -> String {
    Typesetter::new().drawable(text, weight)
}

#[test]
fn both_faces_can_be_read() {
    for face in Face::ALL {
        assert!(face.font().is_some(), "{face:?}");
    }
}

#[test]
fn latin_greek_and_cyrillic_are_drawn_as_they_are() {
    for text in [
        "Kühlwasser, señal, łożysko",
        "Λάδι 30 Ω",
        "Подушка двигателя",
        "± − – … • · ² µ °",
    ] {
        for weight in [Weight::Regular, Weight::Bold] {
            assert_eq!(drawable(text, weight), text);
        }
    }
}

#[test]
fn characters_the_family_lacks_are_replaced_and_steering_ones_go() {
    assert_eq!(
        drawable("山\u{202e}a\u{200d}\u{7}", Weight::Regular),
        format!("{REPLACEMENT}a ")
    );
}

#[test]
fn replacement_itself_can_be_drawn() {
    for weight in [Weight::Regular, Weight::Bold] {
        assert_eq!(drawable("\u{fffd}", weight), "\u{fffd}");
        let shaped = Typesetter::new().line("\u{fffd}", weight, 10.0);
        assert!(shaped.runs.iter().flat_map(|r| &r.glyphs).all(|g| g.id != 0));
    }
}

#[test]
fn figures_are_all_as_wide() {
    for weight in [Weight::Regular, Weight::Bold] {
        let ruler = Ruler::of(weight, 100.0);
        let one = ruler.width("1");
        assert!(
            "0123456789"
                .chars()
                .all(|c| (ruler.width(&c.to_string()) - one).abs() < 0.01),
            "{weight:?}"
        );
    }
}

#[test]
fn ruler_agrees_with_shaping_to_kerning() {
    let mut type_ = Typesetter::new();
    for text in ["Front mount", "12.4 V", "Outlet hose"] {
        let (rough, shaped) = (
            Ruler::of(Weight::Regular, 13.0).width(text),
            type_.line(text, Weight::Regular, 13.0).width,
        );
        assert!(
            (rough - shaped).abs() < 0.03 * shaped,
            "{text}: {rough} and {shaped}"
        );
    }
}

#[test]
fn wrapped_lines_are_no_wider_than_asked_and_lose_no_word() {
    let text = "Half an inHg in twenty seconds is allowed, and the gauge lost six and a half.";
    let mut type_ = Typesetter::new();
    let lines = type_.wrap(text, Weight::Regular, 10.0, 120.0);
    assert!(lines.len() > 2);
    for line in &lines {
        assert!(
            type_.width(line.trim_end(), Weight::Regular, 10.0) <= 120.0,
            "{line}"
        );
    }
    assert_eq!(lines.concat(), text);
}

#[test]
fn a_word_longer_than_the_line_is_broken() {
    let mut type_ = Typesetter::new();
    for line in type_.wrap(&"x".repeat(200), Weight::Regular, 10.0, 60.0) {
        assert!(type_.width(&line, Weight::Regular, 10.0) <= 60.0, "{line}");
    }
}
