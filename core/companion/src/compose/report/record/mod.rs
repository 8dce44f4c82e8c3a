//! The full record: results with instrument and uncertainty, what was not done, what is not known, every entry.

mod entries;
mod holds;
mod results;

pub(in crate::compose) use results::{Instrument, instrument_of};
pub(super) use results::{instrument, uncertainty};

use entries::entry_table;
use holdfast_diagnose::{Answer, Outcome};
use holdfast_measure::{Pressure, si::pressure::pascal};
use holdfast_report::{Align, Block, Column, Fact, Table};
use holds::hold_table;
use results::result_table;

use super::advice::all_signed;
use crate::compose::finding::left_open;
use crate::compose::money::costs_in_full;
use crate::compose::overview::causes;
use crate::compose::reading::reason_words;
use crate::compose::stated::instrument_words;
use crate::job::JobView;
use crate::text::{Args, Texts, capital};

/// All causes that the record lists.
const MOST_CAUSES: usize = 12;

pub(super) fn blocks(texts: &Texts, job: &JobView) -> Vec<Block> {
    let mut blocks = vec![Block::Facts(conditions(texts, job))];
    let mut table = |heading: &str, table: Table| {
        if !table.rows.is_empty() {
            blocks.push(Block::Heading(texts.say(heading)));
            blocks.push(Block::Table(table));
        }
    };
    let causes = match job.repaired() {
        Some(_) => "record-causes-before",
        None => "record-causes",
    };
    table(causes, cause_table(texts, job));
    table("record-results", result_table(texts, job));
    table("record-holds", hold_table(texts, job));
    table("record-skipped", skipped_table(texts, job));
    let costs = job.log.costs.as_ref();
    if let Some(full) = costs.and_then(|dated| costs_in_full(texts, &dated.value)) {
        table("report-costs", full);
    }
    let mut open = left_open(texts, job);
    if job.log.newer() > 0 {
        open.push(texts.say_with("record-newer", &Args::new().count("count", job.log.newer())));
    }
    if !open.is_empty() {
        blocks.push(Block::Heading(texts.say("record-open")));
        blocks.push(Block::List(open));
    }
    if let Some(signed) = all_signed(texts, job) {
        blocks.push(Block::Heading(texts.say("approval-signature")));
        blocks.push(signed);
    }
    blocks.push(Block::Heading(texts.say("record-entries")));
    blocks.push(Block::Table(entry_table(texts, job)));
    blocks.push(Block::Text(texts.say("record-how")));
    blocks
}

/// Where, with what, against which limit.
fn conditions(texts: &Texts, job: &JobView) -> Vec<Fact> {
    let situation = &job.situation;
    let ambient = texts.absolute_kpa(situation.ambient().get::<pascal>() / 1_000.0);
    let from = texts.say(match situation.place.ambient_from() {
        holdfast_diagnose::AmbientFrom::Measured => "record-ambient-measured",
        holdfast_diagnose::AmbientFrom::Altitude => "record-ambient-altitude",
        holdfast_diagnose::AmbientFrom::SeaLevelAssumed => "record-ambient-assumed",
    });
    let instruments = job.log.instruments.as_ref().map_or_else(
        || texts.say("instrument-assumed"),
        |instruments| capital(&instrument_words(texts, instruments)),
    );
    let limit = texts.say_with(
        "record-limit-value",
        &Args::new()
            .text(
                "drop",
                texts.vacuum(Pressure::new::<pascal>(situation.limit.drop_kpa * 1_000.0)),
            )
            .text("seconds", texts.seconds(situation.limit.seconds)),
    );
    [
        ("record-ambient", format!("{ambient}, {from}")),
        (
            "record-agreed",
            job.log.vehicle.agreed.clone().unwrap_or_default(),
        ),
        ("record-air", texts.celsius(situation.place.air_c)),
        ("record-instruments", instruments),
        ("record-limit", limit),
        ("record-confidence", texts.percent(situation.confidence)),
        (
            "record-circuit",
            texts.say(&format!("template-{}", job.circuit.template)),
        ),
    ]
    .into_iter()
    .filter(|(_, value)| !value.is_empty())
    .map(|(label, value)| Fact {
        label: texts.say(label),
        value,
    })
    .collect()
}

fn cause_table(texts: &Texts, job: &JobView) -> Table {
    Table {
        caption: String::new(),
        columns: columns(
            texts,
            &[("record-cause", Align::Start), ("record-probability", Align::End)],
        ),
        rows: causes(texts, &job.finding, MOST_CAUSES)
            .into_iter()
            .map(|cause| vec![cause.name, cause.percent])
            .collect(),
        sums: 0,
    }
}

fn skipped_table(texts: &Texts, job: &JobView) -> Table {
    let rows = job
        .done
        .iter()
        .filter(|(_, result)| result.outcome == Outcome::NotDone)
        .map(|(reading, _)| {
            let reason = match &reading.answer {
                Answer::NotDone { reason } => reason_words(texts, reason),
                _ => reason_words(texts, "not_available"),
            };
            vec![texts.test_name(&reading.test), capital(&reason)]
        })
        .collect();
    Table {
        caption: String::new(),
        columns: columns(
            texts,
            &[("record-test", Align::Start), ("record-reason", Align::Start)],
        ),
        rows,
        sums: 0,
    }
}

fn columns(texts: &Texts, heads: &[(&str, Align)]) -> Vec<Column> {
    heads
        .iter()
        .map(|(key, align)| Column {
            head: texts.say(key),
            align: *align,
        })
        .collect()
}
