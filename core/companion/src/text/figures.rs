//! Numbers and dates as a locale writes them, and numbers as people type them there. By ICU4X.

use fixed_decimal::Decimal;
use icu_calendar::{Date, Gregorian};
use icu_datetime::FixedCalendarDateTimeFormatter;
use icu_datetime::fieldsets::{YMD, YMDT};
use icu_datetime::input::{DateTime, Time};
use icu_decimal::DecimalFormatter;
use icu_decimal::options::{DecimalFormatterOptions, GroupingStrategy};
use icu_locale_core::Locale;

/// The locale's formatters. One that could not be made (no data) leaves plain digits.
pub(super) struct Figures {
    grouped: Option<DecimalFormatter>,
    ungrouped: Option<DecimalFormatter>,
    day: Option<FixedCalendarDateTimeFormatter<Gregorian, YMD>>,
    minute: Option<FixedCalendarDateTimeFormatter<Gregorian, YMDT>>,
    decimal_mark: char,
    group_mark: Option<char>,
}

/// Whether thousands stand apart.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Thousands {
    /// As the locale sets them apart: to be read.
    Apart,
    /// Not at all: to be edited.
    Together,
}

impl Figures {
    pub(super) fn new(locale: &Locale) -> Self {
        let decimals = |strategy| {
            let mut options = DecimalFormatterOptions::default();
            options.grouping_strategy = Some(strategy);
            DecimalFormatter::try_new(locale.into(), options).ok()
        };
        let mut figures = Self {
            grouped: decimals(GroupingStrategy::Auto),
            ungrouped: decimals(GroupingStrategy::Never),
            day: FixedCalendarDateTimeFormatter::try_new(locale.into(), YMD::long()).ok(),
            minute: FixedCalendarDateTimeFormatter::try_new(locale.into(), YMD::long().with_time_hm()).ok(),
            decimal_mark: '.',
            group_mark: None,
        };
        let mark = |shown: &str| shown.chars().find(|c| !c.is_numeric());
        figures.decimal_mark = mark(&figures.number(1.5, 1, Thousands::Together)).unwrap_or('.');
        figures.group_mark = mark(&figures.number(1_111_111.0, 0, Thousands::Apart));
        figures
    }

    /// A finite number with a fixed count of decimals and a true minus; zero has no sign.
    pub(super) fn number(&self, value: f64, decimals: usize, thousands: Thousands) -> String {
        self.exact(&format!("{value:.decimals$}"), thousands)
    }

    /// A plain decimal figure, such as `-1234.50`, as the locale writes it.
    pub(super) fn exact(&self, plain: &str, thousands: Thousands) -> String {
        let zero = plain.chars().all(|c| matches!(c, '-' | '0' | '.'));
        let unsigned = plain.trim_start_matches('-');
        let formatter = match thousands {
            Thousands::Apart => &self.grouped,
            Thousands::Together => &self.ungrouped,
        };
        let shown = match (formatter, Decimal::try_from_str(unsigned)) {
            (Some(formatter), Ok(decimal)) => formatter.format(&decimal).to_string(),
            _ => unsigned.to_owned(),
        };
        if plain.starts_with('-') && !zero {
            format!("\u{2212}{shown}")
        } else {
            shown
        }
    }

    /// The mark between whole and part.
    pub(super) fn decimal_mark(&self) -> char {
        self.decimal_mark
    }

    /// A typed number with point as the decimal mark and nothing between the thousands.
    ///
    /// Comma and point are both taken as the decimal mark. Only where the other one is this locale's mark between
    /// thousands, and stands where that one would (`1,200` in American English, `1.200` in German), is it read so.
    pub(super) fn without_groups(&self, typed: &str) -> String {
        let Some(mark) = self.group_mark else {
            return typed.to_owned();
        };
        if !matches!(mark, ',' | '.') {
            let groups = |c: char| c == mark || matches!(c, '\'' | '’');
            return typed.chars().filter(|c| !groups(*c)).collect();
        }
        let other_marks = typed.chars().any(|c| matches!(c, ',' | '.') && c != mark);
        let mut groups = typed.trim().split(mark);
        let first = groups
            .next()
            .unwrap_or_default()
            .trim_start_matches(['-', '+', '\u{2212}']);
        let first_fits = (1..=3).contains(&first.chars().count()) && !first.starts_with('0');
        let is_digits = |group: &str| group.chars().all(|c| c.is_ascii_digit());
        let groups: Vec<&str> = groups.collect();
        let rest_fits = !groups.is_empty() && groups.iter().all(|group| group.len() == 3 && is_digits(group));
        if !other_marks && first_fits && is_digits(first) && rest_fits {
            typed.chars().filter(|c| *c != mark).collect()
        } else {
            typed.to_owned()
        }
    }

    /// A day, such as "November 25, 2026".
    pub(super) fn day(&self, (year, month, day): (i32, u8, u8)) -> Option<String> {
        let date = Date::try_new_gregorian(year, month, day).ok()?;
        Some(self.day.as_ref()?.format(&date).to_string())
    }

    /// Day and minute, such as "November 25, 2026 at 9:10 AM".
    pub(super) fn minute(
        &self,
        (year, month, day): (i32, u8, u8),
        (hour, minute): (u8, u8),
    ) -> Option<String> {
        let date = Date::try_new_gregorian(year, month, day).ok()?;
        let time = Time::try_new(hour, minute, 0, 0).ok()?;
        Some(self.minute.as_ref()?.format(&DateTime { date, time }).to_string())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn of(tag: &str) -> Figures {
        Figures::new(&tag.parse().unwrap())
    }

    /// Unicode CLDR 48, `numbers.json` and `ca-gregorian.json` of the locales.
    #[test]
    fn numbers_and_dates_stand_as_cldr_has_them() {
        for (tag, number, day, minute) in [
            (
                "en-US",
                "12,345.6",
                "November 25, 2026",
                "November 25, 2026 at 9:10\u{202f}PM",
            ),
            (
                "en-GB",
                "12,345.6",
                "25 November 2026",
                "25 November 2026 at 21:10",
            ),
            (
                "de",
                "12.345,6",
                "25. November 2026",
                "25. November 2026 um 21:10",
            ),
            (
                "es",
                "12.345,6",
                "25 de noviembre de 2026",
                "25 de noviembre de 2026 a las 21:10",
            ),
            (
                "fr",
                "12\u{202f}345,6",
                "25 novembre 2026",
                "25 novembre 2026 à 21:10",
            ),
            (
                "de-CH",
                "12'345.6",
                "25. November 2026",
                "25. November 2026 um 21:10",
            ),
        ] {
            let figures = of(tag);
            assert_eq!(figures.number(12_345.6, 1, Thousands::Apart), number, "{tag}");
            assert_eq!(figures.day((2026, 11, 25)).as_deref(), Some(day), "{tag}");
            assert_eq!(
                figures.minute((2026, 11, 25), (21, 10)).as_deref(),
                Some(minute),
                "{tag}"
            );
        }
        assert_eq!(of("es").number(1234.0, 0, Thousands::Apart), "1234");
        assert_eq!(of("de").number(-0.04, 1, Thousands::Apart), "0,0");
        assert_eq!(of("de").number(-0.68, 2, Thousands::Apart), "\u{2212}0,68");
        assert_eq!(of("en-US").number(12_345.0, 0, Thousands::Together), "12345");
    }

    #[test]
    fn a_typed_mark_is_a_decimal_mark_unless_it_groups_thousands_here() {
        for (tag, typed, read) in [
            ("en-US", "1,200", "1200"),
            ("en-US", "1,200.5", "1,200.5"),
            ("en-US", "13,5", "13,5"),
            ("en-US", "0,500", "0,500"),
            ("en-US", "-1,200", "-1200"),
            ("en-US", "1,234,567", "1234567"),
            ("en-US", "1.200", "1.200"),
            ("de", "1.200", "1200"),
            ("de", "13.5", "13.5"),
            ("de", "0.500", "0.500"),
            ("de", "1,234", "1,234"),
            ("fr", "1\u{202f}200,5", "1200,5"),
            ("de-CH", "1’200", "1200"),
        ] {
            assert_eq!(of(tag).without_groups(typed), read, "{tag}: {typed}");
        }
    }
}
