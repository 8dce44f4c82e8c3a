//! The check digit of a vehicle identification number. It warns, it never blocks: vehicles made for other
//! markets than the United States and Canada may carry any sign in that place.

/// What a VIN's form says.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum VinCheck {
    /// Nothing was typed.
    Empty,
    /// It has the form of a VIN and the check digit fits.
    Fits,
    /// It has the form of a VIN; the ninth sign would have to be `expected`, if the vehicle was made for a market
    /// with check digits.
    CheckDigit {
        /// The ninth sign there.
        found: char,
        /// The ninth sign that fits.
        expected: char,
    },
    /// It has not 17 signs.
    Length {
        /// How many it has, without blanks.
        found: usize,
    },
    /// A sign that no VIN has: I, O, Q or something that is neither letter nor digit.
    Sign {
        /// Which.
        found: char,
        /// The how manieth, from 1.
        place: usize,
    },
}

/// Weights of the 17 places, from the left.
///
/// Source: 49 CFR 565.15(c), table VI.
const WEIGHTS: [u32; 17] = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2];

/// Value of a sign.
///
/// Source: 49 CFR 565.15(c), table V.
fn value(sign: char) -> Option<u32> {
    match sign {
        '0'..='9' => sign.to_digit(10),
        'A' | 'J' => Some(1),
        'B' | 'K' | 'S' => Some(2),
        'C' | 'L' | 'T' => Some(3),
        'D' | 'M' | 'U' => Some(4),
        'E' | 'N' | 'V' => Some(5),
        'F' | 'W' => Some(6),
        'G' | 'P' | 'X' => Some(7),
        'H' | 'Y' => Some(8),
        'R' | 'Z' => Some(9),
        _ => None,
    }
}

/// Checks a VIN as typed; blanks and dashes are left out, small letters are taken as capitals.
///
/// It can't see everything: signs of equal value (2 and S, 1 and J) pass for each other, and so do two digits
/// swapped between the eighth and ninth place.
///
/// ```
/// use holdfast_joblog::vin::{VinCheck, check};
/// assert_eq!(check("1m8gdm9axkp042788"), VinCheck::Fits);
/// assert_eq!(check("1M8GDM9A0KP042788"), VinCheck::CheckDigit { found: '0', expected: 'X' });
/// ```
///
/// # Source
/// 49 CFR 565.15(c): sum of value times weight, modulo 11, ten written as X; the signs from ISO 3779.
pub fn check(typed: &str) -> VinCheck {
    let signs: Vec<char> = typed
        .chars()
        .filter(|c| !c.is_whitespace() && *c != '-')
        .map(|c| c.to_ascii_uppercase())
        .collect();
    if signs.is_empty() {
        return VinCheck::Empty;
    }
    if let Some((index, found)) = signs.iter().enumerate().find(|(_, sign)| value(**sign).is_none()) {
        return VinCheck::Sign {
            found: *found,
            place: index + 1,
        };
    }
    let (17, Some(found)) = (signs.len(), signs.get(8).copied()) else {
        return VinCheck::Length { found: signs.len() };
    };
    let sum: u32 = signs
        .iter()
        .zip(WEIGHTS)
        .filter_map(|(sign, weight)| value(*sign).map(|v| v * weight))
        .sum();
    let expected = match sum % 11 {
        10 => 'X',
        digit => char::from_digit(digit, 10).unwrap_or('X'),
    };
    if found == expected {
        VinCheck::Fits
    } else {
        VinCheck::CheckDigit { found, expected }
    }
}
