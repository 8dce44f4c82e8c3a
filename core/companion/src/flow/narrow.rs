//! What narrows the list of jobs down: the shelf, and when they were worked on.
//!
//! | time | the jobs whose last entry is |
//! |---|---|
//! | any | of any time |
//! | week, month, year | not older than that |
//! | between | from the first typed day to the last, both included; a missing or half-typed one bounds nothing |

use chrono::{Days, FixedOffset, Months, NaiveDate, TimeZone};
use holdfast_joblog::{Query, Shelf};

use crate::companion::Companion;
use crate::flow::parts::{option, text_field};
use crate::protocol::{Choice, ChoiceKind, Field, FieldId, Keys, Pick};
use crate::session::ListAt;

const DAY_MS: i64 = 86_400_000;
/// Shelves by id.
const SHELVES: [(&str, Shelf, &str); 4] = [
    ("all", Shelf::All, "jobs-shelf-all"),
    ("open", Shelf::Open, "jobs-shelf-open"),
    ("closed", Shelf::Closed, "jobs-shelf-closed"),
    ("bin", Shelf::Bin, "jobs-shelf-bin"),
];
/// The time by its id that is bounded by typed days.
const BETWEEN: &str = "between";
/// Times by id: worked on in the last so many days.
const TIMES: [(&str, Option<i64>, &str); 5] = [
    ("any", None, "jobs-time-any"),
    ("week", Some(7), "jobs-time-week"),
    ("month", Some(31), "jobs-time-month"),
    ("year", Some(366), "jobs-time-year"),
    (BETWEEN, None, "jobs-time-between"),
];

/// What the list asks of the log.
pub(super) fn query(core: &Companion, list: &ListAt, most: u32) -> Query {
    let shelf = SHELVES.iter().find(|(id, ..)| *id == list.shelf);
    let clock = core.moving.clock.as_ref();
    let (from_ms, before_ms) = if list.time == BETWEEN {
        let at = |day: NaiveDate| starts_ms(day, clock.map_or(0, |clock| clock.offset_min));
        (
            span(&list.from).and_then(|(first, _)| at(first)),
            span(&list.until).and_then(|(_, last)| at(last.checked_add_days(Days::new(1))?)),
        )
    } else {
        let days = TIMES
            .iter()
            .find(|(id, ..)| *id == list.time)
            .and_then(|(_, days, _)| *days);
        let now = clock.map(|clock| clock.wall_ms);
        (now.zip(days).map(|(now, days)| now - days * DAY_MS), None)
    };
    Query {
        text: list.search.clone(),
        shelf: shelf.map_or(Shelf::All, |(_, shelf, _)| *shelf),
        from_ms,
        before_ms,
        most,
        ..Query::default()
    }
}

/// Shelves and times, while they are offered.
pub(super) fn filters(core: &Companion, list: &ListAt) -> Vec<Choice> {
    if !list.is_narrowed() {
        return Vec::new();
    }
    let shelves = SHELVES
        .iter()
        .map(|(id, _, key)| {
            let pick = Pick::Shelf { id: (*id).to_owned() };
            option(core.say(key), list.shelf == *id, pick)
        })
        .collect();
    let times = TIMES
        .iter()
        .map(|(id, _, key)| {
            let pick = Pick::WorkedOn { id: (*id).to_owned() };
            option(core.say(key), list.time == *id, pick)
        })
        .collect();
    [("jobs-shelf", shelves), ("jobs-time", times)]
        .into_iter()
        .map(|(label, options)| Choice {
            label: core.say(label),
            kind: ChoiceKind::One,
            options,
        })
        .collect()
}

/// The first and the last day, where the time is bounded by them.
pub(super) fn dates(core: &Companion, list: &ListAt) -> Vec<Field> {
    if !list.is_narrowed() || list.time != BETWEEN {
        return Vec::new();
    }
    [
        (FieldId::WorkedFrom, "jobs-from", &list.from),
        (FieldId::WorkedUntil, "jobs-until", &list.until),
    ]
    .into_iter()
    .map(|(id, label, typed)| {
        let mut field = text_field(id, core.say(label), typed.clone(), Keys::Text);
        // Half a year is being typed, not mistaken.
        let wrong = typed.trim().chars().count() >= 4 && span(typed).is_none();
        field.problem = wrong.then(|| core.say("jobs-date-problem"));
        field.hint = core.say("jobs-date-hint");
        field
    })
    .collect()
}

/// The first and the last day of what was typed, year first: a day, a month or a year.
fn span(typed: &str) -> Option<(NaiveDate, NaiveDate)> {
    let figures = typed
        .split(|c: char| !c.is_ascii_digit())
        .filter(|figures| !figures.is_empty())
        .map(|figures| figures.parse::<u32>().ok())
        .collect::<Option<Vec<u32>>>()?;
    let first = |year: u32, month, day| {
        let year = i32::try_from(year)
            .ok()
            .filter(|year| (1_970..=9_999).contains(year))?;
        NaiveDate::from_ymd_opt(year, month, day)
    };
    let (first, next) = match figures.as_slice() {
        [year] => {
            let first = first(*year, 1, 1)?;
            (first, first.checked_add_months(Months::new(12)))
        }
        [year, month] => {
            let first = first(*year, *month, 1)?;
            (first, first.checked_add_months(Months::new(1)))
        }
        [year, month, day] => {
            let first = first(*year, *month, *day)?;
            (first, first.checked_add_days(Days::new(1)))
        }
        _ => return None,
    };
    Some((first, next?.pred_opt()?))
}

/// When a day begins where the phone is, ms since 1970-01-01T00:00Z.
fn starts_ms(day: NaiveDate, offset_min: i32) -> Option<i64> {
    let here = FixedOffset::east_opt(offset_min.checked_mul(60)?)?;
    let midnight = here.from_local_datetime(&day.and_hms_opt(0, 0, 0)?).single()?;
    Some(midnight.timestamp_millis())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_date_is_a_day_a_month_or_a_year_with_the_year_first() {
        let said = |typed| span(typed).map(|(first, last)| format!("{first} {last}"));
        assert_eq!(said("2026-11-28").unwrap(), "2026-11-28 2026-11-28");
        assert_eq!(said(" 2026.2 ").unwrap(), "2026-02-01 2026-02-28");
        assert_eq!(said("2024/02").unwrap(), "2024-02-01 2024-02-29");
        assert_eq!(said("2026").unwrap(), "2026-01-01 2026-12-31");
        for wrong in [
            "",
            "20",
            "28.11.2026",
            "2026-02-29",
            "2026-13",
            "2026-1-1-1",
            "99999",
            "4294967296",
            "last week",
        ] {
            assert_eq!(said(wrong), None, "{wrong}");
        }
    }

    #[test]
    fn a_day_begins_at_midnight_where_the_phone_is() {
        let day = NaiveDate::from_ymd_opt(1970, 1, 2).unwrap();
        assert_eq!(starts_ms(day, 0), Some(DAY_MS));
        assert_eq!(starts_ms(day, 120), Some(DAY_MS - 2 * 3_600_000));
        assert_eq!(starts_ms(day, i32::MAX), None);
    }
}
