//! Short texts made to fit a place: words broken over lines, the rest cut with a mark.

use crate::scene::Weight;
use crate::text::Ruler;

const CUT: &str = "…";

/// The text in at most `most` lines no wider than `width`; what does not fit is cut with a mark.
pub(crate) fn wrapped(text: &str, weight: Weight, size: f32, width: f32, most: usize) -> Vec<String> {
    let ruler = Ruler::of(weight, size);
    let mut lines: Vec<String> = Vec::with_capacity(most);
    let mut current = String::new();
    let mut pieces = pieces(text);
    for (glue, piece) in pieces.by_ref() {
        let longer = if current.is_empty() {
            piece.to_owned()
        } else {
            format!("{current}{glue}{piece}")
        };
        if current.is_empty() || ruler.width(&longer) <= width {
            current = longer;
        } else if lines.len() + 1 == most {
            // Last line: the rest goes on it and is cut below.
            current = longer;
            break;
        } else {
            lines.push(std::mem::replace(&mut current, piece.to_owned()));
        }
    }
    for (glue, piece) in pieces {
        current.push_str(glue);
        current.push_str(piece);
    }
    if !current.is_empty() {
        lines.push(current);
    }
    lines.into_iter().map(|line| cut(line, &ruler, width)).collect()
}

/// What a line may be broken between, words and the parts of words joined by a hyphen, each with what stands before it.
fn pieces(text: &str) -> impl Iterator<Item = (&'static str, &str)> {
    text.split_whitespace().flat_map(|word| {
        let parts = word.split_inclusive('-').enumerate();
        parts.map(|(at, part)| (if at == 0 { " " } else { "" }, part))
    })
}

/// The text on one line no wider than `width`, cut with a mark.
pub(crate) fn cut_to(text: &str, weight: Weight, size: f32, width: f32) -> String {
    cut(text.to_owned(), &Ruler::of(weight, size), width)
}

fn cut(line: String, ruler: &Ruler, width: f32) -> String {
    let room = width - ruler.width(CUT);
    let mut taken = 0.0;
    let mut fits = 0;
    for (start, c) in line.char_indices() {
        taken += ruler.char_width(c);
        if taken <= room {
            fits = start + c.len_utf8();
        } else if taken > width {
            // Even without the mark it is too long; what came before may still have just fitted whole.
            return line.get(..fits).unwrap_or_default().trim_end().to_owned() + CUT;
        }
    }
    line
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn short_label_stays_on_one_line() {
        assert_eq!(wrapped("Valve", Weight::Regular, 13.0, 80.0, 2), ["Valve"]);
    }

    #[test]
    fn long_label_breaks_between_words() {
        assert_eq!(
            wrapped("Front mount hose", Weight::Regular, 13.0, 80.0, 2),
            ["Front mount", "hose"]
        );
    }

    #[test]
    fn a_word_with_a_hyphen_breaks_after_it_where_it_must() {
        let lines = |width| wrapped("Vacuum-out hose", Weight::Regular, 13.0, width, 2);
        assert_eq!(lines(80.0), ["Vacuum-out", "hose"]);
        assert_eq!(lines(62.0), ["Vacuum-", "out hose"]);
    }

    #[test]
    fn label_that_never_fits_is_cut_with_a_mark() {
        let lines = wrapped(&"hose ".repeat(2_000), Weight::Regular, 13.0, 80.0, 2);
        assert_eq!(lines.len(), 2);
        assert!(lines[1].ends_with('…'), "{lines:?}");
        assert!(
            lines
                .iter()
                .all(|l| Ruler::of(Weight::Regular, 13.0).width(l) <= 80.0),
            "{lines:?}"
        );
    }

    #[test]
    fn label_that_just_fits_is_not_cut() {
        let width = Ruler::of(Weight::Bold, 13.0).width("Outlet hose");
        assert_eq!(
            wrapped("Outlet hose", Weight::Bold, 13.0, width + 0.01, 1),
            ["Outlet hose"]
        );
    }

    #[test]
    fn one_word_without_spaces_is_cut_too() {
        let lines = wrapped(&"x".repeat(300), Weight::Bold, 13.0, 60.0, 2);
        assert_eq!(lines.len(), 1);
        assert!(lines[0].ends_with('…'));
    }
}
