//! An odometer as people type it: a figure, with its unit behind it or with the unit that the car's odometer has.

use holdfast_measure::{EverydayUnit, parse_number};

use crate::text::Texts;

/// How people write the two units, as they end a text.
const WRITTEN: [(&str, EverydayUnit); 4] = [
    ("km", EverydayUnit::Kilometre),
    ("miles", EverydayUnit::Mile),
    ("mile", EverydayUnit::Mile),
    ("mi", EverydayUnit::Mile),
];

/// A typed text without its unit, and the unit where one is written.
pub(crate) fn parts(typed: &str) -> (&str, Option<EverydayUnit>) {
    let typed = typed.trim();
    let ending = |written: &str| {
        let at = typed.len().checked_sub(written.len())?;
        let (figure, end) = typed.split_at_checked(at)?;
        (end.eq_ignore_ascii_case(written) && figure.trim_end().ends_with(|c: char| c.is_ascii_digit()))
            .then(|| figure.trim_end())
    };
    WRITTEN
        .into_iter()
        .find_map(|(written, unit)| ending(written).map(|figure| (figure, Some(unit))))
        .unwrap_or((typed, None))
}

/// A typed text as it is kept: with its unit behind it where it is a figure, and the same in km.
pub(crate) fn kept(texts: &Texts, typed: &str, own: EverydayUnit) -> (String, Option<f64>) {
    let (figure, written) = parts(typed);
    let unit = written.unwrap_or(own);
    match parse_number(&texts.typed_number(figure)) {
        Ok(distance) if distance >= 0.0 => (
            format!("{figure} {}", unit.symbol()),
            Some(unit.convert(distance, EverydayUnit::Kilometre)),
        ),
        _ => (typed.trim().to_owned(), None),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_unit_written_behind_counts_else_the_cars() {
        let texts = Texts::new("en-US");
        let kept = |typed: &str| kept(&texts, typed, EverydayUnit::Mile);
        assert_eq!(kept("84 200 km"), ("84 200 km".into(), Some(84_200.0)));
        let (text, km) = kept("1000");
        assert_eq!((text.as_str(), km.map(f64::round)), ("1000 mi", Some(1609.0)));
        assert_eq!(kept("52,000 Miles").0, "52,000 mi");
        assert_eq!(kept("about 5 km").1, None);
        assert_eq!(kept("unreadable"), ("unreadable".into(), None));
        assert_eq!(kept(""), (String::new(), None));
    }

    #[test]
    fn a_plain_figure_is_shown_as_the_locale_writes_it_and_any_other_as_typed() {
        let texts = Texts::new("de");
        assert_eq!(texts.odometer("184000 km"), "184.000\u{a0}km");
        assert_eq!(texts.odometer("184.000 km"), "184.000 km");
        assert_eq!(texts.odometer("unlesbar"), "unlesbar");
    }
}
