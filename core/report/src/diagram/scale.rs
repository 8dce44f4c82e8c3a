//! Round steps for scales and axes, and the numbers on them.

/// The smallest of 1, 2, 5, 10 … that divides `range` into at most `most` steps. `range` above zero and finite, else 1.
pub(crate) fn step(range: f64, most: f64) -> f64 {
    if !(range.is_finite() && range > 0.0) {
        return 1.0;
    }
    let least = range / most;
    let ten = 10_f64.powf(least.log10().floor());
    let slack = 1.0 + 1e-9;
    [1.0, 2.0, 5.0, 10.0]
        .into_iter()
        .map(|m| m * ten)
        .find(|s| s * slack >= least)
        .unwrap_or(10.0 * ten)
}

/// A number on a scale, with the decimals its step needs. Zero has none.
pub(crate) fn number(value: f64, step: f64, decimal: char) -> String {
    let decimals = (-step.log10().floor()).clamp(0.0, 6.0) as usize;
    if value.abs() < step * 1e-6 {
        return "0".into();
    }
    let text = format!("{value:.decimals$}");
    let text = if decimal == '.' || decimal == '\0' {
        text
    } else {
        text.replace('.', &decimal.to_string())
    };
    text.replace('-', "\u{2212}")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn steps_are_round() {
        assert_eq!(step(30.0, 8.0), 5.0);
        assert_eq!(step(100.0, 8.0), 20.0);
        assert!((step(1.0, 8.0) - 0.2).abs() < 1e-12);
        assert_eq!(step(f64::NAN, 8.0), 1.0);
    }

    #[test]
    fn numbers_follow_the_language() {
        assert_eq!(number(0.4, 0.2, ','), "0,4");
        assert_eq!(number(-20.0, 5.0, '.'), "\u{2212}20");
        assert_eq!(number(0.0, 0.2, '.'), "0");
    }
}
