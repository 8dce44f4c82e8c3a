//! Figures as people type them, on any keyboard.

use thiserror::Error;
use uom::si::f64::Pressure;

use crate::bounds::QuantityError;
use crate::pressure_unit::PressureUnit;

/// Why a typed text is not a figure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Error)]
pub enum NumberError {
    /// Nothing but spaces.
    #[error("no figure was typed")]
    Empty,
    /// Letters, two signs, two decimal marks, or a word such as `nan`.
    #[error("this is not a figure")]
    NotANumber,
    /// A figure too large for any instrument (beyond ±10¹²).
    #[error("this figure is too large")]
    TooLarge,
}

/// The figure in a typed text.
///
/// Accepted: a decimal comma or point, the minus and plus signs of any keyboard, spaces (also
/// no-break and thin) around and between digits, digits of scripts other than Latin are not. `1.234,5`
/// and `1,234.5` are read by the last mark; a lone comma or point is always the decimal mark.
///
/// # Errors
/// [`NumberError::Empty`] for a blank text, [`NumberError::NotANumber`] for anything but a figure
/// (words, `nan`, `inf`, exponents), [`NumberError::TooLarge`] beyond ±10¹².
///
/// ```
/// use holdfast_measure::parse_number;
/// assert_eq!(parse_number(" \u{2212}13,5 "), Ok(-13.5));
/// assert!(parse_number("NaN").is_err());
/// ```
pub fn parse_number(text: &str) -> Result<f64, NumberError> {
    let dense: String = text
        .chars()
        .filter(|c| !c.is_whitespace() && *c != '\u{200e}' && *c != '\u{200f}')
        .collect();
    if dense.is_empty() {
        return Err(NumberError::Empty);
    }
    let mut rest = dense.chars().peekable();
    let negative = match rest.peek() {
        Some('-' | '\u{2212}' | '\u{2013}' | '\u{2012}' | '\u{fe63}' | '\u{ff0d}') => {
            rest.next();
            true
        }
        Some('+') => {
            rest.next();
            false
        }
        _ => false,
    };
    let body: Vec<char> = rest
        .map(|c| if c == '\u{66b}' || c == '\u{ff0c}' { ',' } else { c })
        .collect();
    let plain = without_grouping(&body).ok_or(NumberError::NotANumber)?;
    if !plain.chars().any(|c| c.is_ascii_digit()) || !plain.chars().all(|c| c.is_ascii_digit() || c == '.') {
        return Err(NumberError::NotANumber);
    }
    let figure: f64 = plain.parse().map_err(|_| NumberError::NotANumber)?;
    if figure > 1e12 {
        return Err(NumberError::TooLarge);
    }
    Ok(if negative && figure != 0.0 {
        -figure
    } else {
        figure
    })
}

/// The digits with a point as the only mark, or `None` when the marks make no sense.
fn without_grouping(body: &[char]) -> Option<String> {
    let points = body.iter().filter(|c| **c == '.').count();
    let commas = body.iter().filter(|c| **c == ',').count();
    let decimal = match (points, commas) {
        (0 | 1, 0) => '.',
        (0, 1) => ',',
        (1, _) if commas > 1 || last_mark(body) == Some('.') => '.',
        (_, 1) if points > 1 || last_mark(body) == Some(',') => ',',
        _ => return None,
    };
    if points > 0 && commas > 0 && last_mark(body) != Some(decimal) {
        return None;
    }
    Some(
        body.iter()
            .filter(|c| **c == decimal || (**c != '.' && **c != ','))
            .map(|c| if *c == decimal { '.' } else { *c })
            .collect(),
    )
}

fn last_mark(body: &[char]) -> Option<char> {
    body.iter().rev().copied().find(|c| *c == '.' || *c == ',')
}

/// A vacuum as a person typed it, positive below ambient.
///
/// Signed dials read −0.68 bar for a vacuum of 0.68 bar, so a minus is dropped. `max` is the greatest
/// vacuum that can be meant: the end of the gauge's scale or what the air allows.
///
/// # Errors
/// [`QuantityError::Number`] when `text` is no figure; [`QuantityError::OutOfRange`], with the allowed
/// range in `unit`, unless `0 <= vacuum <= max`.
pub fn parse_vacuum(text: &str, unit: PressureUnit, max: Pressure) -> Result<Pressure, QuantityError> {
    let figure = parse_number(text)?.abs();
    let most = unit.from_pressure(max);
    if figure > most * (1.0 + 1e-9) {
        return Err(QuantityError::OutOfRange {
            name: "vacuum",
            unit: unit.symbol(),
            min: 0.0,
            max: most,
            found: figure,
        });
    }
    Ok(unit.to_pressure(figure))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn commas_signs_and_spaces_are_accepted() {
        for (text, figure) in [
            ("13.5", 13.5),
            ("13,5", 13.5),
            ("\u{2212}0,68", -0.68),
            ("-20", -20.0),
            ("+20", 20.0),
            (" 1 234,5 ", 1234.5),
            ("1\u{202f}234", 1234.0),
            ("1.234,5", 1234.5),
            ("1,234.5", 1234.5),
            ("1,234,567.5", 1_234_567.5),
            ("1.234.567,5", 1_234_567.5),
            (",5", 0.5),
            ("5.", 5.0),
            ("-0", 0.0),
        ] {
            assert_eq!(parse_number(text), Ok(figure), "{text}");
        }
    }

    #[test]
    fn words_and_nonsense_are_refused() {
        for text in [
            "NaN",
            "inf",
            "-Infinity",
            "abc",
            "1e5",
            "0x10",
            "--5",
            "5-",
            "1.2.3",
            "1,2,3",
            "1.2,3.4",
            ".",
            "-",
            "٣",
        ] {
            assert_eq!(parse_number(text), Err(NumberError::NotANumber), "{text}");
        }
        assert_eq!(parse_number(" \u{a0} "), Err(NumberError::Empty));
        assert_eq!(parse_number("99999999999999"), Err(NumberError::TooLarge));
    }

    #[test]
    fn vacuum_beyond_the_scale_carries_the_allowed_range() {
        let max = PressureUnit::InHg.to_pressure(30.0);
        assert_eq!(
            parse_vacuum("-20", PressureUnit::InHg, max),
            Ok(PressureUnit::InHg.to_pressure(20.0))
        );
        match parse_vacuum("67,7", PressureUnit::InHg, max) {
            Err(QuantityError::OutOfRange {
                unit: "inHg",
                min,
                max,
                found,
                ..
            }) => {
                assert!(min == 0.0 && (max - 30.0).abs() < 1e-9 && found == 67.7);
            }
            other => panic!("{other:?}"),
        }
    }
}
