//! Money as whole minor units: amounts of lines, tax, totals, and figures as people type them. No fraction is ever
//! kept in binary.
//!
//! Rounding is to the nearest minor unit, halves away from zero: once for each line's amount, once for the tax on the
//! sum of all lines of one rate.

use std::collections::BTreeMap;

use iso_currency::{Country, Currency};

use crate::payload::{CostKind, CostLine, Costs};

/// Decimals of a currency: 2 for EUR, 0 for JPY, 3 for KWD. None for a code that ISO 4217 doesn't have, or one
/// without a minor unit, such as gold.
#[must_use]
pub fn minor_digits(code: &str) -> Option<u32> {
    Currency::from_code(code)?.exponent().map(u32::from)
}

/// The currency that is usual in a country, by its ISO 3166 code of two letters.
#[must_use]
pub fn usual_currency(country: &str) -> Option<&'static str> {
    let country: Country = country.parse().ok()?;
    Currency::from_country(country).first().map(Currency::code)
}

/// What costs come to, in minor units.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Totals {
    /// Each line's amount, in the lines' order.
    pub amounts: Vec<i64>,
    /// The sum of each kind that has lines.
    pub kinds: Vec<(CostKind, i64)>,
    /// The tax of each rate above zero, lowest rate first.
    pub taxes: Vec<TaxSum>,
    /// All lines and all tax.
    pub total: i64,
}

/// The tax of one rate.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct TaxSum {
    /// The rate, in basis points.
    pub bp: u32,
    /// The sum it is on.
    pub on: i64,
    /// The tax.
    pub tax: i64,
}

impl CostLine {
    /// Its amount without tax; none where it is more than can be written.
    #[must_use]
    pub fn amount(&self) -> Option<i64> {
        rounded(
            i128::from(self.unit_minor) * i128::from(self.quantity_milli),
            1_000,
        )
    }
}

impl Costs {
    /// What they come to; none where a sum is more than can be written.
    #[must_use]
    pub fn totals(&self) -> Option<Totals> {
        let amounts: Vec<i64> = self.lines.iter().map(CostLine::amount).collect::<Option<_>>()?;
        let mut kinds: BTreeMap<CostKind, i64> = BTreeMap::new();
        let mut rates: BTreeMap<u32, i64> = BTreeMap::new();
        let mut total: i64 = 0;
        for (line, amount) in self.lines.iter().zip(&amounts) {
            for sum in [
                kinds.entry(line.kind).or_default(),
                rates.entry(line.tax_bp).or_default(),
                &mut total,
            ] {
                *sum = sum.checked_add(*amount)?;
            }
        }
        let mut taxes = Vec::new();
        for (bp, on) in rates.into_iter().filter(|(bp, _)| *bp > 0) {
            let tax = rounded(i128::from(on) * i128::from(bp), 10_000)?;
            total = total.checked_add(tax)?;
            taxes.push(TaxSum { bp, on, tax });
        }
        Some(Totals {
            amounts,
            kinds: kinds.into_iter().collect(),
            taxes,
            total,
        })
    }
}

/// A quotient to the nearest whole, halves away from zero.
fn rounded(dividend: i128, divisor: i128) -> Option<i64> {
    let half = if dividend < 0 { -divisor / 2 } else { divisor / 2 };
    i64::try_from((dividend + half) / divisor).ok()
}

/// Why a typed figure is none.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum FigureError {
    /// Nothing is typed.
    #[error("no figure")]
    Empty,
    /// It is no number.
    #[error("not a number")]
    NotANumber,
    /// It has more decimals than can be kept.
    #[error("more than {most} decimals")]
    Decimals {
        /// So many can be.
        most: u32,
    },
    /// It is too large.
    #[error("too large")]
    TooLarge,
}

/// A typed decimal figure in units of its last of `digits` decimals: "12,5" with two is 1250.
///
/// Comma and point both serve as decimal mark, spaces and apostrophes part thousands. One mark alone with three digits
/// after it parts thousands where three decimals can't be; of two kinds of mark the last one is the decimal mark.
///
/// # Errors
/// [`FigureError`].
pub fn parse_decimal(text: &str, digits: u32) -> Result<i64, FigureError> {
    let text: String = text
        .chars()
        .filter(|c| !c.is_whitespace() && !matches!(c, '\'' | '’'))
        .collect();
    let (negative, unsigned) = match text.strip_prefix(['-', '−']) {
        Some(rest) => (true, rest),
        None => (false, text.as_str()),
    };
    if unsigned.is_empty() {
        return Err(FigureError::Empty);
    }
    let (whole, fraction) = parted(unsigned, digits);
    let plain = |part: &str| part.chars().all(|c| c.is_ascii_digit());
    if !plain(&whole) || !plain(fraction) || (whole.is_empty() && fraction.is_empty()) {
        return Err(FigureError::NotANumber);
    }
    let fraction = fraction.trim_end_matches('0');
    let missing = usize::try_from(digits)
        .ok()
        .and_then(|digits| digits.checked_sub(fraction.len()))
        .ok_or(FigureError::Decimals { most: digits })?;
    let figures = format!("{whole}{fraction}{}", "0".repeat(missing));
    let value: i64 = figures.parse().map_err(|_| FigureError::TooLarge)?;
    Ok(if negative { -value } else { value })
}

/// The whole part without its thousands' marks, and the decimals.
fn parted(unsigned: &str, digits: u32) -> (String, &str) {
    let is_mark = |c: char| matches!(c, '.' | ',');
    let Some((whole, fraction)) = unsigned.rsplit_once(is_mark) else {
        return (unsigned.to_owned(), "");
    };
    let last = unsigned.chars().rev().find(|c| is_mark(*c));
    let repeated = whole.chars().any(|c| Some(c) == last);
    let other = whole.chars().any(|c| is_mark(c) && Some(c) != last);
    let thousands = fraction.len() == 3 && (repeated || (digits < 3 && !other && !whole.is_empty()));
    if thousands {
        (unsigned.replace(is_mark, ""), "")
    } else {
        (whole.replace(is_mark, ""), fraction)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::payload::CostStage;
    use proptest::prelude::*;

    fn line(kind: CostKind, quantity_milli: i64, unit_minor: i64, tax_bp: u32) -> CostLine {
        CostLine {
            kind,
            words: String::new(),
            quantity_milli,
            unit_minor,
            tax_bp,
        }
    }

    fn costs(lines: Vec<CostLine>) -> Costs {
        Costs {
            stage: CostStage::Charged,
            currency: "EUR".into(),
            lines,
        }
    }

    /// Source: ISO 4217 list one, minor units, as published by SIX (table A.1); the codes here from memory.
    #[test]
    fn currencies_have_the_decimals_of_iso_4217() {
        for (code, digits) in [
            ("EUR", 2),
            ("USD", 2),
            ("GBP", 2),
            ("CHF", 2),
            ("INR", 2),
            ("JPY", 0),
            ("KRW", 0),
            ("ISK", 0),
            ("KWD", 3),
            ("BHD", 3),
            ("TND", 3),
            ("CLF", 4),
        ] {
            assert_eq!(minor_digits(code), Some(digits), "{code}");
        }
        for code in ["", "eur", "ABC", "XAU"] {
            assert_eq!(minor_digits(code), None, "{code}");
        }
    }

    /// Source: ISO 4217 list one, the entity of each currency; the pairs here from memory.
    #[test]
    fn a_country_has_its_currency() {
        for (country, code) in [("GB", "GBP"), ("DE", "EUR"), ("JP", "JPY"), ("KW", "KWD")] {
            assert_eq!(usual_currency(country), Some(code), "{country}");
        }
        assert_eq!(usual_currency("419"), None);
    }

    #[test]
    fn halves_are_rounded_away_from_zero() {
        for (quantity, unit, amount) in [
            (1_500, 1, 2),
            (500, 1, 1),
            (-500, 1, -1),
            (499, 1, 0),
            (1_000, -8, -8),
        ] {
            assert_eq!(
                line(CostKind::Part, quantity, unit, 0).amount(),
                Some(amount),
                "{quantity} {unit}"
            );
        }
    }

    /// 1 hose at 18.90, 0.75 h at 92.00, both 19 %: 18.90 + 69.00 = 87.90; tax 16.701 → 16.70; total 104.60.
    /// Worked by hand.
    #[test]
    fn a_small_bill_comes_to_what_it_does_by_hand() {
        let bill = costs(vec![
            line(CostKind::Part, 1_000, 1_890, 1_900),
            line(CostKind::Labour, 750, 9_200, 1_900),
        ]);
        let totals = bill.totals().unwrap();
        assert_eq!(totals.amounts, [1_890, 6_900]);
        assert_eq!(totals.kinds, [(CostKind::Part, 1_890), (CostKind::Labour, 6_900)]);
        assert_eq!(
            totals.taxes,
            [TaxSum {
                bp: 1_900,
                on: 8_790,
                tax: 1_670
            }]
        );
        assert_eq!(totals.total, 10_460);
    }

    #[test]
    fn each_rate_is_taxed_once_on_its_own_sum() {
        // Three lines of 0.33 at 7 %: one by one 0.02 each, together 0.99 × 7 % = 0.0693, which is 0.07.
        let bill = costs(vec![
            line(CostKind::Part, 1_000, 33, 700),
            line(CostKind::Part, 1_000, 33, 700),
            line(CostKind::Part, 1_000, 33, 700),
            line(CostKind::Labour, 1_000, 100, 0),
        ]);
        let totals = bill.totals().unwrap();
        assert_eq!(totals.taxes.len(), 1);
        assert_eq!(totals.taxes[0].tax, 7);
        assert_eq!(totals.total, 206);
    }

    #[test]
    fn more_than_can_be_written_is_no_total() {
        let bill = costs(vec![line(CostKind::Part, i64::MAX, i64::MAX, 0)]);
        assert_eq!(bill.totals(), None);
        let bill = costs(vec![line(CostKind::Part, 1_000, i64::MAX, 0); 2]);
        assert_eq!(bill.totals(), None);
    }

    #[test]
    fn figures_are_read_as_people_type_them() {
        for (text, digits, value) in [
            ("12", 2, 1_200),
            ("12.5", 2, 1_250),
            ("12,50", 2, 1_250),
            (" 1 234,50 ", 2, 123_450),
            ("1,234.50", 2, 123_450),
            ("1.234,50", 2, 123_450),
            ("1,234", 2, 123_400),
            ("1,234", 0, 1_234),
            ("1,234", 3, 1_234),
            ("1,234,567", 3, 1_234_567_000),
            ("1’234.50", 2, 123_450),
            (".5", 2, 50),
            ("12.500", 3, 12_500),
            ("12.5000", 2, 1_250),
            ("-3", 2, -300),
            ("−3", 2, -300),
            ("19", 2, 1_900),
        ] {
            assert_eq!(parse_decimal(text, digits), Ok(value), "{text} with {digits}");
        }
        for (text, digits, error) in [
            ("", 2, FigureError::Empty),
            ("-", 2, FigureError::Empty),
            ("x", 2, FigureError::NotANumber),
            ("1e3", 2, FigureError::NotANumber),
            (".", 2, FigureError::NotANumber),
            ("1.2345", 2, FigureError::Decimals { most: 2 }),
            ("99999999999999999999", 2, FigureError::TooLarge),
        ] {
            assert_eq!(parse_decimal(text, digits), Err(error), "{text}");
        }
    }

    proptest! {
        #[test]
        fn a_total_is_its_amounts_and_its_taxes(
            lines in proptest::collection::vec((-9_999_i64..9_999, -99_999_i64..99_999, 0_u32..3_000), 0..9),
        ) {
            let bill = costs(lines.iter().map(|(q, u, t)| line(CostKind::Other, *q, *u, *t)).collect());
            let totals = bill.totals().unwrap();
            let net: i64 = totals.amounts.iter().sum();
            let tax: i64 = totals.taxes.iter().map(|t| t.tax).sum();
            prop_assert_eq!(totals.total, net + tax);
            // Each rounding is off by half a minor unit at most.
            for (sum, (quantity, unit, _)) in totals.amounts.iter().zip(&lines) {
                prop_assert!((i128::from(*sum) * 1_000 - i128::from(*quantity) * i128::from(*unit)).abs() <= 500);
            }
        }

        #[test]
        fn any_text_is_a_figure_or_an_error(text in ".{0,24}", digits in 0_u32..5) {
            let _ = parse_decimal(&text, digits);
        }

        #[test]
        fn what_was_written_with_decimals_reads_back(value in -9_999_999_i64..9_999_999, digits in 1_u32..4) {
            let scale = 10_i64.pow(digits);
            let sign = if value < 0 { "-" } else { "" };
            let text = format!(
                "{sign}{}.{:0width$}", value.abs() / scale, value.abs() % scale, width = digits as usize,
            );
            prop_assert_eq!(parse_decimal(&text, digits), Ok(value));
        }
    }
}
