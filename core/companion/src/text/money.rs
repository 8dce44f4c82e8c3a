//! Whole minor units as a person reads them: no binary fraction on the way.

use holdfast_joblog::money::minor_digits;

use super::Texts;

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

    /// A figure kept in units of its last of `digits` decimals, thousands parted as the language does it.
    #[must_use]
    pub fn decimal(&self, value: i64, digits: u32) -> String {
        let (whole, fraction) = parts(value, digits);
        let mut shown = String::new();
        if value < 0 {
            shown.push('\u{2212}');
        }
        let count = whole.len();
        for (at, digit) in whole.chars().enumerate() {
            if at > 0 && (count - at).is_multiple_of(3) {
                shown.push_str(&self.say("quantity-thousands-mark"));
            }
            shown.push(digit);
        }
        if !fraction.is_empty() {
            shown.push_str(&self.say("quantity-decimal-mark"));
            shown.push_str(&fraction);
        }
        shown
    }

    /// The same without zeros at the end: "0.75", "19", "7.7".
    #[must_use]
    pub fn trimmed_decimal(&self, value: i64, digits: u32) -> String {
        let (mut value, mut digits) = (value, digits);
        while digits > 0 && value % 10 == 0 {
            value /= 10;
            digits -= 1;
        }
        self.decimal(value, digits)
    }
}

/// The digits before and after the decimal mark.
fn parts(value: i64, digits: u32) -> (String, String) {
    let scale = 10_u64.pow(digits.min(18));
    let unsigned = value.unsigned_abs();
    let fraction = if digits == 0 {
        String::new()
    } else {
        format!(
            "{:0width$}",
            unsigned % scale,
            width = usize::try_from(digits).unwrap_or(0)
        )
    };
    ((unsigned / scale).to_string(), fraction)
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
