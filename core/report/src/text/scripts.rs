//! Which font files to try for which characters: by the names that the Noto project and phones give them.

use std::ops::RangeInclusive;

/// A stretch of characters and how the names of files that may have them begin, best first.
pub(super) struct Script {
    pub(super) characters: RangeInclusive<char>,
    pub(super) files: &'static [&'static str],
}

const CJK: &[&str] = &[
    "NotoSansCJK",
    "NotoSansSC",
    "NotoSansJP",
    "NotoSansKR",
    "DroidSansFallback",
];
const ARABIC: &[&str] = &["NotoSansArabic", "NotoNaskhArabic"];
const HEBREW: &[&str] = &["NotoSansHebrew"];

const fn script(first: char, last: char, files: &'static [&'static str]) -> Script {
    Script {
        characters: first..=last,
        files,
    }
}

/// Source of the stretches: the Unicode Standard, Blocks.txt. The embedded family itself has Latin, Greek, Cyrillic and
/// Devanagari.
const SCRIPTS: [Script; 25] = [
    script('\u{0530}', '\u{058f}', &["NotoSansArmenian"]),
    script('\u{0590}', '\u{05ff}', HEBREW),
    script('\u{0600}', '\u{06ff}', ARABIC),
    script('\u{0750}', '\u{077f}', ARABIC),
    script('\u{08a0}', '\u{08ff}', ARABIC),
    script('\u{0980}', '\u{09ff}', &["NotoSansBengali"]),
    script('\u{0a00}', '\u{0a7f}', &["NotoSansGurmukhi"]),
    script('\u{0a80}', '\u{0aff}', &["NotoSansGujarati"]),
    script('\u{0b80}', '\u{0bff}', &["NotoSansTamil"]),
    script('\u{0c00}', '\u{0c7f}', &["NotoSansTelugu"]),
    script('\u{0c80}', '\u{0cff}', &["NotoSansKannada"]),
    script('\u{0d00}', '\u{0d7f}', &["NotoSansMalayalam"]),
    script('\u{0d80}', '\u{0dff}', &["NotoSansSinhala"]),
    script('\u{0e00}', '\u{0e7f}', &["NotoSansThai"]),
    script('\u{0e80}', '\u{0eff}', &["NotoSansLao"]),
    script('\u{1000}', '\u{109f}', &["NotoSansMyanmar"]),
    script('\u{10a0}', '\u{10ff}', &["NotoSansGeorgian"]),
    script('\u{1200}', '\u{137f}', &["NotoSansEthiopic"]),
    script('\u{1780}', '\u{17ff}', &["NotoSansKhmer"]),
    script('\u{2e80}', '\u{9fff}', CJK),
    script('\u{ac00}', '\u{d7af}', CJK),
    script('\u{f900}', '\u{faff}', CJK),
    script('\u{fb1d}', '\u{fb4f}', HEBREW),
    script('\u{fb50}', '\u{fdff}', ARABIC),
    script('\u{ff00}', '\u{ffef}', CJK),
];

/// The script that a character belongs to, by its place in the table.
pub(super) fn script_of(c: char) -> Option<usize> {
    SCRIPTS.iter().position(|script| script.characters.contains(&c))
}

/// How the names of files begin that may have a script's characters.
pub(super) fn files_of(script: usize) -> &'static [&'static str] {
    SCRIPTS.get(script).map_or(&[], |script| script.files)
}

/// All scripts that the same files are for.
pub(super) fn scripts_of(files: &[&str]) -> impl Iterator<Item = usize> {
    (0..SCRIPTS.len()).filter(move |script| files_of(*script) == files)
}

/// Whether a character belongs to a script that is written to the left.
pub(super) fn runs_left(c: char) -> bool {
    script_of(c).is_some_and(|script| [HEBREW, ARABIC].contains(&files_of(script)))
}

/// Whether all words of a text run left.
pub(super) fn is_all_left(text: &str) -> bool {
    let mut letters = text.chars().filter(|c| c.is_alphabetic()).peekable();
    letters.peek().is_some() && letters.all(runs_left)
}

/// Whether a text is Japanese rather than Chinese: it has kana in it.
pub(super) fn is_japanese(text: &str) -> bool {
    text.chars().any(|c| ('\u{3040}'..='\u{30ff}').contains(&c))
}

/// Whether a text is Korean: it has hangul in it.
pub(super) fn is_korean(text: &str) -> bool {
    text.chars()
        .any(|c| ('\u{ac00}'..='\u{d7af}').contains(&c) || ('\u{1100}'..='\u{11ff}').contains(&c))
}

/// A text in a line that runs right, with each name from the right kept to itself: a mark after it keeps figures that
/// follow, as in "name, 14 March", from being read as part of it. Figures between two such words stay with them.
pub(super) fn kept_apart(text: &str) -> String {
    const MARK: char = '\u{200e}';
    let letters: Vec<char> = text.chars().collect();
    let mut kept = String::with_capacity(text.len());
    for (at, c) in letters.iter().enumerate() {
        kept.push(*c);
        let rest = letters.get(at + 1..).unwrap_or_default();
        if runs_left(*c) && !rest.first().is_some_and(|next| runs_left(*next)) && leads_to_figures(rest) {
            kept.push(MARK);
        }
    }
    kept
}

/// Whether figures come next, and after them no word that runs left.
fn leads_to_figures(rest: &[char]) -> bool {
    let next = rest.iter().position(|c| c.is_ascii_digit() || c.is_alphabetic());
    let figures = next.filter(|at| rest.get(*at).is_some_and(char::is_ascii_digit));
    figures.is_some_and(|at| {
        let after = rest.get(at..).unwrap_or_default();
        !after
            .iter()
            .find(|c| c.is_alphabetic())
            .is_some_and(|c| runs_left(*c))
    })
}
