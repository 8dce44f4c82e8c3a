//! No sentence of the job stands in a shell: what a person reads comes from the core, in the person's language.
//!
//! A text in the sources is taken for a sentence when two words stand side by side in it. What only a programmer reads
//! (a broken promise, a log, a command line) is told by what stands before it on its line.

use std::fs;
use std::path::Path;

use anyhow::{Context, Result, bail};

use crate::toolchain::files_under;

/// Sources in which no sentence may stand, with their ending.
const PLACES: [(&str, &str); 6] = [
    ("android/ui/src/main/kotlin", ".kt"),
    ("android/app/src/main/kotlin", ".kt"),
    ("android/desktop/src/main/kotlin", ".kt"),
    ("ios/App", ".swift"),
    ("ios/Sources/HoldfastKit", ".swift"),
    ("ios/Sources/HoldfastApp", ".swift"),
];

/// What comes before words for programmers.
const FOR_PROGRAMMERS: [&str; 9] = [
    "check(",
    "checkNotNull(",
    "require(",
    "error(",
    "Exception(",
    "fatalError(",
    "precondition(",
    "@available(",
    "println(",
];

/// Every sentence found, with its place.
///
/// # Errors
/// When a source can't be read, or there is none.
pub fn sentences(root: &Path) -> Result<Vec<String>> {
    let mut found = Vec::new();
    for (folder, ending) in PLACES {
        let files = files_under(&root.join(folder), ending)?;
        if files.is_empty() {
            bail!("no {ending} file below {folder}: the wall guards nothing");
        }
        for file in files {
            let place = file.strip_prefix(root).context("below the root")?.display();
            let source = fs::read_to_string(&file).with_context(|| format!("reading {place}"))?;
            for (line, text) in sentences_of(&source) {
                found.push(format!("{place}:{line} says \"{text}\" to a person"));
            }
        }
    }
    Ok(found)
}

/// The sentences of one source with their lines, counted from 1.
fn sentences_of(source: &str) -> Vec<(usize, String)> {
    let lines: Vec<&str> = source.lines().collect();
    texts(source)
        .into_iter()
        .filter(|text| is_sentence(&text.words))
        .filter(|text| {
            let before = lines
                .get(text.line - 1)
                .map(|line| line.chars().take(text.column).collect::<String>())
                .unwrap_or_default();
            !FOR_PROGRAMMERS.iter().any(|mark| before.contains(mark))
        })
        .map(|text| (text.line, text.words))
        .collect()
}

/// Two words of letters, side by side.
fn is_sentence(text: &str) -> bool {
    let is_word = |word: &str| {
        let word = word.trim_matches(|c: char| c.is_ascii_punctuation() || c == '…' || c == '’');
        word.chars().count() > 1
            && word
                .chars()
                .all(|c| c.is_alphabetic() || c == '\'' || c == '’' || c == '-')
    };
    let words: Vec<bool> = text.split(' ').map(is_word).collect();
    words.windows(2).any(|pair| pair == [true, true])
}

/// A text in a source; what is put in between stands as a blank.
struct Text {
    line: usize,
    column: usize,
    words: String,
}

/// Reads Kotlin and Swift alike: both have `"…"`, `"""…"""`, `//` and `/* */`.
struct Reader<'a> {
    rest: std::iter::Peekable<std::str::Chars<'a>>,
    line: usize,
    column: usize,
}

impl Reader<'_> {
    fn next(&mut self) -> Option<char> {
        let letter = self.rest.next()?;
        if letter == '\n' {
            self.line += 1;
            self.column = 0;
        } else {
            self.column += 1;
        }
        Some(letter)
    }

    fn takes(&mut self, letter: char) -> bool {
        let there = self.rest.peek() == Some(&letter);
        if there {
            self.next();
        }
        there
    }

    fn skip_line(&mut self) {
        while self.rest.peek().is_some_and(|c| *c != '\n') {
            self.next();
        }
    }

    fn skip_block(&mut self) {
        let mut last = ' ';
        while let Some(letter) = self.next() {
            if last == '*' && letter == '/' {
                return;
            }
            last = letter;
        }
    }

    /// The rest of a text whose first quote was read.
    fn text(&mut self) -> Text {
        let (line, column) = (self.line, self.column.saturating_sub(1));
        let mut words = String::new();
        let long = self.takes('"') && {
            if !self.takes('"') {
                return Text { line, column, words };
            }
            true
        };
        let mut quotes = 0;
        while let Some(letter) = self.next() {
            quotes = if letter == '"' { quotes + 1 } else { 0 };
            match letter {
                '"' if !long || quotes == 3 => break,
                '"' => {}
                '\\' if self.takes('(') => self.put_in('(', ')', &mut words),
                '$' if self.takes('{') => self.put_in('{', '}', &mut words),
                '\\' => {
                    self.next();
                }
                '\n' if !long => break,
                other => words.push(other),
            }
        }
        Text { line, column, words }
    }

    /// Skips what is put in, and leaves a mark that is no word.
    fn put_in(&mut self, opens: char, closes: char, words: &mut String) {
        words.push('0');
        let mut depth = 1;
        while depth > 0 {
            match self.next() {
                Some(c) if c == opens => depth += 1,
                Some(c) if c == closes => depth -= 1,
                Some(_) => {}
                None => return,
            }
        }
    }
}

fn texts(source: &str) -> Vec<Text> {
    let mut reader = Reader {
        rest: source.chars().peekable(),
        line: 1,
        column: 0,
    };
    let mut found = Vec::new();
    while let Some(letter) = reader.next() {
        match letter {
            '/' if reader.takes('/') => reader.skip_line(),
            '/' if reader.takes('*') => reader.skip_block(),
            // A quote as a letter of its own: Kotlin's '"'.
            '\'' if reader.takes('"') => {}
            '"' => found.push(reader.text()),
            _ => {}
        }
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    fn found(source: &str) -> Vec<String> {
        sentences_of(source).into_iter().map(|(_, text)| text).collect()
    }

    #[test]
    fn a_sentence_is_found_in_both_languages() {
        assert_eq!(found("Text(\"Let go of the pump\")"), ["Let go of the pump"]);
        assert_eq!(
            found("val x = \"\"\"\n  Read it now\n\"\"\""),
            ["\n  Read it now\n"]
        );
        assert_eq!(sentences_of("let a = 1\nlet b = \"Stop pumping\"")[0].0, 2);
    }

    #[test]
    fn comments_ids_and_single_words_are_no_sentences() {
        assert_eq!(found("// \"Let go of the pump\"\n/* \"Let go now\" */"), [""; 0]);
        assert_eq!(
            found("Image(\"car.fill\"); x(\"public.zip-archive\", \"Holdfast\")"),
            [""; 0]
        );
        assert_eq!(found("\"$a $b\"; \"\\(a) \\(b)\"; \"${a(\"x\")} and\""), [""; 0]);
    }

    #[test]
    fn words_for_programmers_are_left_alone() {
        assert_eq!(found("check(open) { \"the core is not open\" }"), [""; 0]);
        assert_eq!(found("println(\"the report is made\")"), [""; 0]);
        assert_eq!(
            found("show(\"the core is not open\") // check("),
            ["the core is not open"]
        );
    }
}
