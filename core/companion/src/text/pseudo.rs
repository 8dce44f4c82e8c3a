//! Two languages that nobody speaks, made from the English texts as they are shown: one longer and accented, one that
//! runs from right to left. What they leave readable as plain English did not come from the texts; what they push out
//! of a screen would be pushed out by a longer language too.

use std::borrow::Cow;

/// What happens to each piece of text.
pub(super) type Transform = fn(&str) -> Cow<'_, str>;

/// Accents on letters, vowels twice: about a third longer than English, as German and French are.
pub(super) fn longer(text: &str) -> Cow<'_, str> {
    let mut made = String::with_capacity(text.len() * 2);
    for letter in text.chars() {
        let accented = match letter {
            'a' => 'á',
            'e' => 'ë',
            'i' => 'ï',
            'o' => 'ô',
            'u' => 'ü',
            'c' => 'ç',
            'n' => 'ñ',
            'y' => 'ý',
            's' => 'š',
            'A' => 'Å',
            'E' => 'É',
            'I' => 'Î',
            'O' => 'Ö',
            'U' => 'Û',
            'C' => 'Ç',
            'N' => 'Ñ',
            'S' => 'Š',
            other => other,
        };
        made.push(accented);
        if matches!(letter, 'a' | 'e' | 'i' | 'o' | 'u') {
            made.push(accented);
        }
    }
    Cow::Owned(made)
}

/// Starts a run that is set from right to left whatever its letters are (Unicode, annex 9).
const OVERRIDE: char = '\u{202E}';
/// Ends it.
const POP: char = '\u{202C}';

/// Every word set from right to left.
pub(super) fn mirrored(text: &str) -> Cow<'_, str> {
    let mut made = String::with_capacity(text.len() * 2);
    let mut inside = false;
    for letter in text.chars() {
        if letter.is_alphanumeric() != inside {
            made.push(if inside { POP } else { OVERRIDE });
            inside = !inside;
        }
        made.push(letter);
    }
    if inside {
        made.push(POP);
    }
    Cow::Owned(made)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_is_a_third_longer_the_other_turns_each_word() {
        let text = "Watch the needle for a while. Read it when the phone buzzes.";
        let long = longer(text).chars().count();
        assert!(long * 10 >= text.chars().count() * 13, "{long}");
        assert!(!longer(text).contains("needle"));
        assert_eq!(mirrored("Go on."), "\u{202E}Go\u{202C} \u{202E}on\u{202C}.");
    }
}
