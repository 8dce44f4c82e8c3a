//! Times of entries in words: local time of the place where the entry was made.

use chrono::{DateTime, FixedOffset, TimeZone};

use crate::text::Texts;

/// The day: "November 25, 2026".
#[must_use]
pub(crate) fn date(texts: &Texts, at_ms: i64, offset_min: i32) -> String {
    local(at_ms, offset_min)
        .and_then(|time| texts.day(time.date_naive()))
        .unwrap_or_default()
}

/// Day and minute: "November 25, 2026 at 9:10 AM".
#[must_use]
pub(crate) fn date_and_time(texts: &Texts, at_ms: i64, offset_min: i32) -> String {
    local(at_ms, offset_min)
        .and_then(|time| texts.day_and_minute(time.naive_local()))
        .unwrap_or_default()
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

/// The day as it can stand in a file's name: "2026-11-25".
#[must_use]
pub(crate) fn day_in_file_name(at_ms: i64, offset_min: i32) -> String {
    local(at_ms, offset_min).map_or_else(String::new, |time| time.format("%Y-%m-%d").to_string())
}

fn local(at_ms: i64, offset_min: i32) -> Option<DateTime<FixedOffset>> {
    FixedOffset::east_opt(offset_min.checked_mul(60)?)?
        .timestamp_millis_opt(at_ms)
        .single()
}
