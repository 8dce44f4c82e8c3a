//! Times of entries in words: local time of the place where the entry was made.

use chrono::{DateTime, Datelike, FixedOffset, TimeZone, Timelike};

use crate::text::{Args, Texts};

/// The day: "25 November 2026".
#[must_use]
pub(crate) fn date(texts: &Texts, at_ms: i64, offset_min: i32) -> String {
    local(at_ms, offset_min).map_or_else(String::new, |time| {
        texts.say_with(
            "date",
            &Args::new()
                .text("day", time.day().to_string())
                .text("month", texts.say(&format!("month-{}", time.month())))
                .text("year", time.year().to_string()),
        )
    })
}

/// Day and minute: "25 November 2026, 09:10".
#[must_use]
pub(crate) fn date_and_time(texts: &Texts, at_ms: i64, offset_min: i32) -> String {
    texts.say_with(
        "date-and-time",
        &Args::new()
            .text("date", date(texts, at_ms, offset_min))
            .text("time", clock(at_ms, offset_min)),
    )
}

/// The second with its zone, for the record: "2026-11-25 09:10:31 +01:00".
#[must_use]
pub(super) fn stamp(at_ms: i64, offset_min: i32) -> String {
    local(at_ms, offset_min).map_or_else(String::new, |time| {
        time.format("%Y-%m-%d %H:%M:%S %:z").to_string()
    })
}

/// Day and minute in short, for a table: "2026-11-25 09:10".
#[must_use]
pub(super) fn minute(at_ms: i64, offset_min: i32) -> String {
    local(at_ms, offset_min).map_or_else(String::new, |time| time.format("%Y-%m-%d %H:%M").to_string())
}

/// The minute: "09:10".
fn clock(at_ms: i64, offset_min: i32) -> String {
    local(at_ms, offset_min).map_or_else(String::new, |time| {
        format!("{:02}:{:02}", time.hour(), time.minute())
    })
}

fn local(at_ms: i64, offset_min: i32) -> Option<DateTime<FixedOffset>> {
    FixedOffset::east_opt(offset_min.checked_mul(60)?)?
        .timestamp_millis_opt(at_ms)
        .single()
}
