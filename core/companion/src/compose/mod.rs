//! What a person sees and reads, put together from the open job: screens, drawings' inputs, the report.
//!
//! Every function is pure: a [`JobView`](crate::job::JobView) or a part of it and the
//! [`Texts`](crate::text::Texts) go in, words and scenes come out. No rule of the trade is decided here.

mod approval;
mod band;
mod connector;
#[cfg(test)]
mod customer_tests;
mod entered;
#[cfg(test)]
mod example;
mod finding;
mod hold;
mod known;
mod log;
mod look;
mod map;
mod mark;
mod money;
mod overview;
#[cfg(test)]
mod page_tests;
mod photo;
mod reading;
mod reasons;
mod repaired;
mod report;
mod spectrum;
mod stated;
mod test;
#[cfg(test)]
mod tests;
mod time;

pub(crate) use approval::proposed;
pub(crate) use band::band;
pub(crate) use connector::{connector, lead_lines};
pub(crate) use entered::entered;
pub(crate) use finding::finding;
pub(crate) use hold::{before_and_after, dial};
pub(crate) use log::log_rows;
pub(crate) use look::part_to_look_at;
pub(crate) use map::{MapOf, circuit_map, place_map, plain_map, template_card, tool_place};
pub(crate) use mark::mark;
pub(crate) use money::sum_lines;
pub(crate) use overview::{LIKELY, cause_words, overview};
pub(crate) use photo::{Boxes, LEADS, STYLES, blur_boxes, look_of, marked_scene, photo_marks, photo_scene};
pub(crate) use repaired::repaired_sentence;
pub(crate) use report::{CSV, ReportWishes, readings_csv, report};
pub(crate) use stated::figure_key;
pub(crate) use test::{brief, not_offered, result, test_args};
pub(crate) use time::{date_and_time, day_in_file_name};
