//! The report's plain input: the customer's page, the evidence, the full record.

mod advice;
mod customer;
mod evidence;
mod readings;
mod record;

pub(in crate::compose) use advice::proposals as repair_proposals;
#[cfg(test)]
pub(in crate::compose) use customer::words;

pub(crate) use readings::readings_csv;
#[cfg(test)]
pub(in crate::compose) use readings::rows as readings_rows;
pub(in crate::compose) use record::{Instrument, instrument_of};

use std::path::PathBuf;

use holdfast_joblog::{PhotoState, ReportPart};
use holdfast_report::{Attachment, Business, Fact, Finding, Report, ReportWords, Section, Written};
use sha2::{Digest, Sha256};

use super::finding::{certainty_now, finding_state, headline_now};
use super::time::date;
use crate::job::JobView;
use crate::protocol::Direction;
use crate::text::{Args, Texts};

/// Media type of the readings.
pub(crate) const CSV: &str = "text/csv";

/// What the person wants in the report, and where its photos are.
pub(crate) struct ReportWishes<'a> {
    /// The upright print rendition of a photo, what is to be unreadable made so.
    pub photo: &'a dyn Fn(&PhotoState) -> Option<PathBuf>,
    /// Font files at hand for names in further scripts.
    pub fonts: &'a [PathBuf],
    /// Version of this software.
    pub version: &'a str,
}

/// The report of a job. The same log gives the same report.
#[must_use]
pub(crate) fn report(texts: &Texts, job: &JobView, wishes: &ReportWishes<'_>) -> Report {
    let last = job.log.record.last();
    let (at_ms, offset_min) = last.map_or((0, 0), |line| (line.entry.at_ms, line.entry.offset_min));
    let (state, _) = finding_state(job);
    let mut shown = evidence::all(texts, job, wishes);
    let telling = customer::comparison(texts, job).or_else(|| evidence::take_strongest(&mut shown, job));
    let mut map = Some(evidence::map(texts, job));
    let aside = customer::aside(job, &mut map, telling);
    let has = |part| !job.log.report_left_out.contains(&part);
    evidence::keep(&mut shown, has(ReportPart::Drawings), has(ReportPart::Photos));
    let evidence = evidence::blocks(map.filter(|_| has(ReportPart::Drawings)), shown);
    let (record, attachments) = if has(ReportPart::Record) {
        (record::blocks(texts, job), attachments(texts, job))
    } else {
        Default::default()
    };
    Report {
        language: texts.language().tag().to_owned(),
        direction: match texts.language().direction() {
            Direction::LeftToRight => holdfast_report::Direction::LeftToRight,
            Direction::RightToLeft => holdfast_report::Direction::RightToLeft,
        },
        title: title(texts, job),
        written: Written { at_ms, offset_min },
        business: job
            .log
            .workshop
            .as_ref()
            .map(|workshop| business(&workshop.business))
            .unwrap_or_default(),
        facts: facts(texts, job, at_ms, offset_min),
        finding: Finding {
            state: Some(state),
            sentence: headline_now(texts, job),
            certainty: certainty_now(texts, job),
        },
        aside,
        customer: customer::page(texts, job),
        evidence: Section {
            heading: texts.say("report-evidence"),
            blocks: evidence,
        },
        record: Section {
            heading: texts.say("report-record"),
            blocks: record,
        },
        fonts: wishes.fonts.to_vec(),
        attachments,
        digest: digest(job),
        version: texts.say_with("report-software", &Args::new().text("version", wishes.version)),
        words: ReportWords {
            page: texts.say("report-page"),
            digest: texts.say("report-digest"),
            version: texts.say("report-written-by"),
            figure: texts.say("report-figure"),
            decimal: texts.decimal_mark(),
        },
    }
}

/// The readings for other programs, inside the file.
fn attachments(texts: &Texts, job: &JobView) -> Vec<Attachment> {
    vec![Attachment {
        name: "readings.csv".to_owned(),
        mime: CSV.to_owned(),
        description: texts.say("readings-description"),
        data: readings_csv(texts, job),
    }]
}

fn title(texts: &Texts, job: &JobView) -> String {
    let vehicle = &job.log.vehicle;
    match vehicle.plate.as_deref().or(vehicle.label.as_deref()) {
        Some(name) => texts.say_with("report-heading", &Args::new().text("vehicle", name)),
        None => texts.say("report-heading-plain"),
    }
}

fn business(typed: &str) -> Business {
    let mut lines = typed
        .lines()
        .map(str::trim)
        .filter(|line| !line.is_empty())
        .map(str::to_owned);
    Business {
        name: lines.next().unwrap_or_default(),
        lines: lines.collect(),
    }
}

fn facts(texts: &Texts, job: &JobView, at_ms: i64, offset_min: i32) -> Vec<Fact> {
    let vehicle = &job.log.vehicle;
    let began = job
        .log
        .record
        .first()
        .map(|line| date(texts, line.entry.at_ms, line.entry.offset_min));
    let ended = Some(date(texts, at_ms, offset_min)).filter(|ended| Some(ended) != began.as_ref());
    let odometer = |typed: &Option<String>| typed.as_deref().map(|typed| texts.odometer(typed));
    // What stands in the title is not said again.
    let label = vehicle.label.clone().filter(|_| vehicle.plate.is_some());
    [
        ("record-label", label),
        ("record-vin", vehicle.vin.clone()),
        ("record-odometer", odometer(&vehicle.odometer)),
        ("record-odometer-out", odometer(&vehicle.odometer_out)),
        ("record-handed-over", vehicle.handed_over.clone()),
        ("record-customer", vehicle.customer.clone()),
        ("report-began", began),
        ("report-ended", ended),
    ]
    .into_iter()
    .filter_map(|(label, value)| {
        let value = value.filter(|value| !value.trim().is_empty())?;
        Some(Fact {
            label: texts.say(label),
            value,
        })
    })
    .collect()
}

/// SHA-256 over every entry in order: key, time, kind, version and body, each ended by a zero byte. Whoever holds the
/// log can work it out again.
fn digest(job: &JobView) -> String {
    let mut hash = Sha256::new();
    for line in &job.log.record {
        let entry = &line.entry;
        for part in [
            entry.key.to_string(),
            entry.hlc.to_string(),
            entry.at_ms.to_string(),
            entry.offset_min.to_string(),
            entry.kind.clone(),
            entry.v.to_string(),
            entry.body.clone(),
        ] {
            hash.update(part.as_bytes());
            hash.update([0]);
        }
    }
    hash.finalize().iter().map(|byte| format!("{byte:02x}")).collect()
}
