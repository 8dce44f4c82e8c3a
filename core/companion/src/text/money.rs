//! Whole minor units as a person reads them: no binary fraction on the way.

use holdfast_joblog::money::minor_digits;

use super::Texts;
use super::figures::Thousands;

impl Texts {
    /// An amount with its currency: "1,234.50 EUR", "1,234 JPY".
    #[must_use]
    pub fn money(&self, minor: i64, currency: &str) -> String {
        self.with_unit(&self.amount(minor, currency), currency)
    }

    /// An amount alone, in a column that names the currency: "1,234.50".
    #[must_use]
    pub fn amount(&self, minor: i64, currency: &str) -> String {
        self.decimal(minor, minor_digits(currency).unwrap_or(2))
    }

    /// A figure kept in units of its last of `digits` decimals, as the language writes it.
    #[must_use]
    pub fn decimal(&self, value: i64, digits: u32) -> String {
        self.figures.exact(&plain(value, digits), Thousands::Apart)
    }

    /// The same to be edited: nothing between the thousands.
    #[must_use]
    pub fn editable_decimal(&self, value: i64, digits: u32) -> String {
        self.figures.exact(&plain(value, digits), Thousands::Together)
    }

    /// The same without zeros at the end: "0.75", "19", "7.7".
    #[must_use]
    pub fn trimmed_decimal(&self, value: i64, digits: u32) -> String {
        let (mut value, mut digits) = (value, digits);
        while digits > 0 && value % 10 == 0 {
            value /= 10;
            digits -= 1;
        }
        self.editable_decimal(value, digits)
    }
}

/// The figure with a point as decimal mark and nothing between the thousands.
fn plain(value: i64, digits: u32) -> String {
    let scale = 10_u64.pow(digits.min(18));
    let unsigned = value.unsigned_abs();
    let sign = if value < 0 { "-" } else { "" };
    let whole = unsigned / scale;
    if digits == 0 {
        return format!("{sign}{whole}");
    }
    let width = usize::try_from(digits).unwrap_or(0);
    format!("{sign}{whole}.{:0width$}", unsigned % scale)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn amounts_have_the_decimals_of_their_currency() {
        let texts = Texts::new("en-GB");
        assert_eq!(texts.money(123_450, "EUR"), "1,234.50\u{a0}EUR");
        assert_eq!(texts.money(1_234, "JPY"), "1,234\u{a0}JPY");
        assert_eq!(texts.money(1_234, "KWD"), "1.234\u{a0}KWD");
        assert_eq!(texts.money(-5, "EUR"), "\u{2212}0.05\u{a0}EUR");
        assert_eq!(Texts::new("de").money(123_450, "EUR"), "1.234,50\u{a0}EUR");
        assert_eq!(texts.editable_decimal(123_450, 2), "1234.50");
        assert_eq!(texts.money(0, "EUR"), "0.00\u{a0}EUR");
        assert_eq!(
            texts
                .amount(i64::MIN, "JPY")
                .chars()
                .filter(char::is_ascii_digit)
                .count(),
            19
        );
    }

    #[test]
    fn zeros_at_the_end_of_a_quantity_say_nothing() {
        let texts = Texts::new("en");
        assert_eq!(texts.trimmed_decimal(750, 3), "0.75");
        assert_eq!(texts.trimmed_decimal(1_000, 3), "1");
        assert_eq!(texts.trimmed_decimal(770, 2), "7.7");
        assert_eq!(texts.trimmed_decimal(0, 2), "0");
        assert_eq!(texts.trimmed_decimal(100_000, 3), "100");
    }
}
