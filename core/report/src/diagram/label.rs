//! Short texts made to fit a place: broken between words, where a word is too long between its syllables, and what is
//! left over cut with a mark.

use hypher::{Lang, hyphenate_bounded};

use crate::scene::Weight;
use crate::text::Ruler;

const CUT: &str = "…";
const HYPHEN: &str = "-";
/// Widths tried for a broken word, in parts of the whole.
const STEPS: usize = 16;
const NARROWEST: usize = 6;
/// Letters that stay together at either end of a word.
const LEAST_LETTERS: usize = 3;

/// A place for a short text.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Place<'a> {
    /// BCP 47 tag of the text's language: words are broken by its rules.
    pub(crate) language: &'a str,
    pub(crate) weight: Weight,
    pub(crate) size: f32,
    pub(crate) width: f32,
    /// Lines there is room for.
    pub(crate) lines: usize,
}

impl Place<'_> {
    /// The text in lines that are no wider than the place; what does not fit is cut with a mark.
    pub(crate) fn wrapped(&self, text: &str) -> Vec<String> {
        let ruler = Ruler::of(self.weight, self.size);
        let mut lines = Lines {
            full: Vec::new(),
            last: String::new(),
            width: self.width,
            ruler: &ruler,
        };
        for word in text.split_whitespace() {
            lines.add_word(&pieces(word, self.language));
        }
        let mut lines = lines.finish();
        if lines.len() > self.lines {
            let rest = lines.split_off(self.lines.max(1) - 1).join(" ");
            lines.push(rest);
        }
        lines
            .into_iter()
            .map(|line| cut(line, &ruler, self.width))
            .collect()
    }
}

/// The text in lines no wider than this, in a language that is not told: words stay whole where a line has room for them.
pub(crate) fn wrapped(text: &str, weight: Weight, size: f32, width: f32, lines: usize) -> Vec<String> {
    let language = "";
    Place {
        language,
        weight,
        size,
        width,
        lines,
    }
    .wrapped(text)
}

/// The widest piece of a text that is never broken, with its hyphen.
pub(crate) fn widest_piece(text: &str, language: &str, ruler: &Ruler) -> f32 {
    let words = text.split_whitespace().flat_map(|word| pieces(word, language));
    words
        .map(|piece| ruler.width(piece.text) + ruler.width(piece.hyphen()))
        .fold(0.0, f32::max)
}

/// A part of a word that is not broken.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Piece<'a> {
    text: &'a str,
    end: End,
}

/// What a piece ends with.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum End {
    /// The word, or a hyphen that the word has anyway.
    Whole,
    /// A syllable: a hyphen is added where the line ends here.
    Syllable,
}

impl Piece<'_> {
    fn hyphen(&self) -> &'static str {
        match self.end {
            End::Whole => "",
            End::Syllable => HYPHEN,
        }
    }

    /// Itself, or in parts no wider than this; what has other signs in it than letters stays whole.
    fn split_to(self, ruler: &Ruler, width: f32) -> Vec<Self> {
        let wide = |text: &str| ruler.width(text) + ruler.width(HYPHEN) > width;
        if !is_word(self.text) || ruler.width(self.text) + ruler.width(self.hyphen()) <= width {
            return vec![self];
        }
        let ends = self
            .text
            .char_indices()
            .map(|(at, letter)| at + letter.len_utf8());
        let mut fitting = ends.take_while(|end| self.text.get(..*end).is_some_and(|text| !wide(text)));
        let first = fitting.next();
        let Some((text, rest)) = fitting
            .last()
            .or(first)
            .and_then(|end| self.text.split_at_checked(end))
        else {
            return vec![self];
        };
        let part = Self {
            text,
            end: End::Syllable,
        };
        let rest = Self { text: rest, ..self };
        std::iter::once(part).chain(rest.split_to(ruler, width)).collect()
    }
}

/// What a word may be broken between: the parts it joins by hyphens, and their syllables.
fn pieces<'a>(word: &'a str, language: &str) -> Vec<Piece<'a>> {
    word.split_inclusive('-')
        .flat_map(|part| syllables(part, language))
        .collect()
}

/// The syllables of a word that is all letters; what is elided before it or added behind it stays with the nearest.
fn syllables<'a>(part: &'a str, language: &str) -> Vec<Piece<'a>> {
    let mut pieces = Vec::new();
    let mut rest = part;
    if let Some(lang) = lang_of(language).filter(|_| is_word(part)) {
        let runs = part.split(is_joint).map(|run| (run.chars().count(), run));
        let longest = runs.max_by_key(|(count, _)| *count).map_or("", |(_, run)| run);
        let mut before = part.find(longest).unwrap_or_default();
        let mut left = longest.len();
        for syllable in hyphenate_bounded(longest, lang, LEAST_LETTERS, LEAST_LETTERS) {
            left -= syllable.len();
            let Some((text, after)) = rest
                .split_at_checked(before + syllable.len())
                .filter(|_| left > 0)
            else {
                break;
            };
            pieces.push(Piece {
                text,
                end: End::Syllable,
            });
            rest = after;
            before = 0;
        }
    }
    pieces.push(Piece {
        text: rest,
        end: End::Whole,
    });
    pieces
}

/// Whether there are but letters in it and what joins them: then it may be broken.
fn is_word(part: &str) -> bool {
    part.chars().all(|c| c.is_alphabetic() || is_joint(c))
}

fn is_joint(c: char) -> bool {
    matches!(c, '\'' | '’' | '-')
}

fn lang_of(tag: &str) -> Option<Lang> {
    let code = tag.split('-').next()?.as_bytes();
    Lang::from_iso(code.try_into().ok()?)
}

/// Lines being filled.
struct Lines<'a> {
    full: Vec<String>,
    last: String,
    width: f32,
    ruler: &'a Ruler,
}

impl Lines<'_> {
    fn fits(&self, line: &str) -> bool {
        self.ruler.width(line) <= self.width
    }

    /// Adds a word: whole where it fits on this line or the next, else broken.
    fn add_word(&mut self, pieces: &[Piece<'_>]) {
        let word: String = pieces.iter().map(|piece| piece.text).collect();
        let glue = if self.last.is_empty() { "" } else { " " };
        let longer = format!("{}{glue}{word}", self.last);
        if self.fits(&longer) {
            self.last = longer;
            return;
        }
        self.end_line();
        if self.fits(&word) {
            self.last = word;
        } else {
            self.full.extend(evenly(pieces, self.ruler, self.width));
            self.last = self.full.pop().unwrap_or_default();
        }
    }

    fn end_line(&mut self) {
        if !self.last.is_empty() {
            self.full.push(std::mem::take(&mut self.last));
        }
    }

    fn finish(mut self) -> Vec<String> {
        self.end_line();
        self.full
    }
}

/// A broken word in as few lines as fit: after its own hyphens where that does, else none of them much shorter than the
/// others, as compounds then break where their words meet more often than not.
fn evenly(pieces: &[Piece<'_>], ruler: &Ruler, width: f32) -> Vec<String> {
    // A syllable that is longer than a line is broken between letters, no other.
    let pieces: Vec<Piece<'_>> = pieces
        .iter()
        .flat_map(|piece| piece.split_to(ruler, width))
        .collect();
    let fewest = filled(&pieces, ruler, width);
    let parts = whole_parts(&pieces);
    let parts: Vec<Piece<'_>> = parts
        .iter()
        .map(|text| Piece {
            text,
            end: End::Whole,
        })
        .collect();
    let unbroken = filled(&parts, ruler, width);
    let all_fit = unbroken.iter().all(|line| ruler.width(line) <= width);
    if all_fit && unbroken.len() == fewest.len() {
        return unbroken;
    }
    let narrower = (NARROWEST..STEPS).map(|step| filled(&pieces, ruler, width * step as f32 / STEPS as f32));
    let fits = |lines: &Vec<String>| lines.len() == fewest.len();
    narrower.into_iter().find(fits).unwrap_or(fewest)
}

/// What a word joins by its own hyphens.
fn whole_parts(pieces: &[Piece<'_>]) -> Vec<String> {
    let parts = pieces.chunk_by(|piece, _| piece.end == End::Syllable);
    parts
        .map(|part| part.iter().map(|piece| piece.text).collect())
        .collect()
}

/// A broken word, each line filled.
fn filled(pieces: &[Piece<'_>], ruler: &Ruler, width: f32) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    let mut line = String::new();
    let mut hyphen = "";
    for piece in pieces {
        let longer = format!("{line}{}", piece.text);
        if line.is_empty() || ruler.width(&longer) + ruler.width(piece.hyphen()) <= width {
            line = longer;
        } else {
            lines.push(std::mem::replace(&mut line, piece.text.to_owned()) + hyphen);
        }
        hyphen = piece.hyphen();
    }
    lines.push(line);
    lines
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

    fn in_language(language: &str, text: &str, width: f32) -> Vec<String> {
        Place {
            language,
            weight: Weight::Regular,
            size: 13.0,
            width,
            lines: 5,
        }
        .wrapped(text)
    }

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

    // Division of words as Duden, Littré and the Real Academia's dictionary have it.
    #[test]
    fn a_word_longer_than_the_line_is_broken_by_the_rules_of_its_language() {
        assert_eq!(
            in_language("de", "Schlauch zum Unterdruckspeicher", 68.0),
            ["Schlauch", "zum", "Unter-", "druck-", "speicher"]
        );
        assert_eq!(
            in_language("fr", "durite d’alimentation", 68.0),
            ["durite", "d’alimen-", "tation"]
        );
        assert_eq!(in_language("en", "reservoir's", 50.0), ["reser-", "voir's"]);
        assert_eq!(in_language("es", "electroválvula", 68.0), ["electro-", "válvula"]);
    }

    #[test]
    fn a_word_with_a_hyphen_is_not_broken_elsewhere_if_that_will_do() {
        assert_eq!(
            in_language("de", "Karosserie-Masse", 90.0),
            ["Karosserie-", "Masse"]
        );
    }

    #[test]
    fn a_word_that_fits_a_line_is_not_broken() {
        assert_eq!(in_language("de", "T-Stück hinten", 68.0), ["T-Stück", "hinten"]);
        assert_eq!(
            in_language("xx", "Unterdruckspeicher", 200.0),
            ["Unterdruckspeicher"]
        );
    }

    #[test]
    fn what_is_set_from_the_right_is_not_broken() {
        let word = "\u{202E}reservoirs\u{202C}";
        assert_eq!(pieces(word, "en").len(), 1);
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
    fn one_word_without_syllables_is_broken_between_letters_and_cut_too() {
        let lines = wrapped(&"x".repeat(300), Weight::Bold, 13.0, 60.0, 2);
        assert_eq!(lines.len(), 2);
        assert!(lines[0].ends_with('-'), "{lines:?}");
        assert!(lines[1].ends_with('…'), "{lines:?}");
    }
}
