//! The full record: results with instrument and uncertainty, what was not done, what is not known, every entry.

use holdfast_diagnose::{Answer, HoldCourse, Outcome, Quantity, Reading, TestResult, Value};
use holdfast_measure::{Pressure, si::pressure::pascal};
use holdfast_report::{Align, Block, Column, Fact, Table};

use super::advice::all_signed;
use crate::compose::finding::left_open;
use crate::compose::hold::fall;
use crate::compose::log::{is_told, line_words, standing_words, ticked_caution};
use crate::compose::mark::mark_of;
use crate::compose::money::costs_in_full;
use crate::compose::overview::causes;
use crate::compose::reading::{reading_words, reason_words};
use crate::compose::stated::instrument_words;
use crate::compose::time::{minute, stamp};
use crate::job::{Behind, JobView};
use crate::text::{Args, Texts, capital};

/// A coverage factor of two: about 95 % (JCGM 100).
const COVERAGE: f64 = 2.0;

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
    table("record-causes", cause_table(texts, job));
    table("record-results", result_table(texts, job));
    table("record-holds", hold_table(texts, job));
    table("record-skipped", skipped_table(texts, job));
    let costs = job.log.costs.as_ref();
    if let Some(full) = costs.and_then(|dated| costs_in_full(texts, &dated.value)) {
        table("report-costs", full);
    }
    let mut open = left_open(texts, &job.finding);
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

/// Every test that was done: when, what was read, how well, what it says.
fn result_table(texts: &Texts, job: &JobView) -> Table {
    let rows = job
        .done
        .iter()
        .zip(&job.behind)
        .filter(|((_, result), _)| result.outcome != Outcome::NotDone)
        .map(|((reading, result), behind)| result_row(texts, job, reading, result, behind))
        .collect();
    Table {
        caption: texts.say("record-results-caption"),
        columns: columns(
            texts,
            &[
                ("record-time", Align::Start),
                ("record-test", Align::Start),
                ("record-read", Align::Start),
                ("record-uncertainty", Align::Start),
                ("record-instrument", Align::Start),
                ("record-result", Align::Start),
            ],
        ),
        rows,
        sums: 0,
    }
}

fn result_row(
    texts: &Texts,
    job: &JobView,
    reading: &Reading,
    result: &TestResult,
    behind: &Behind,
) -> Vec<String> {
    let mut test = texts.test_name(&reading.test);
    if reading.after_repair {
        test = texts.say_with("record-after-repair", &Args::new().text("test", test));
    }
    let state = state_words(texts, reading);
    let mut read = reading_words(texts, &job.circuit, reading);
    if !state.is_empty() {
        read = format!("{read} ({state})");
    }
    if reading.confirmed {
        read = texts.say_with("record-kept", &Args::new().text("reading", read));
    }
    vec![
        minute(behind.at_ms, behind.offset_min),
        test,
        read,
        uncertainty(texts, job, reading),
        instrument(texts, reading),
        mark_of(texts, result.outcome).word,
    ]
}

/// The state of the car that was said beside a reading.
fn state_words(texts: &Texts, reading: &Reading) -> String {
    let yes_no = |key: &str, value: Option<bool>| {
        value.map(|yes| {
            let state = texts
                .say(&format!("state-{key}-{}", if yes { "yes" } else { "no" }))
                .to_lowercase();
            format!("{} {state}", texts.say(&format!("state-{key}")).to_lowercase())
        })
    };
    let engine = reading.state.engine.map(|engine| {
        let key = match engine {
            holdfast_diagnose::EngineState::Off => "state-engine-off",
            holdfast_diagnose::EngineState::Idle => "state-engine-idle",
            holdfast_diagnose::EngineState::InGear => "state-engine-in-gear",
        };
        format!(
            "{} {}",
            texts.say("state-engine").to_lowercase(),
            texts.say(key).to_lowercase()
        )
    });
    [
        yes_no("connected", reading.state.connected),
        engine,
        yes_no("hot", reading.state.hot),
    ]
    .into_iter()
    .flatten()
    .collect::<Vec<_>>()
    .join(", ")
}

/// What a reading was taken with; which one it is, is said once, under the conditions.
pub(super) fn instrument(texts: &Texts, reading: &Reading) -> String {
    let spec_unit = reading.unit().is_some();
    texts.say(match &reading.answer {
        Answer::Hold(_) => "instrument-name-gauge",
        Answer::Look(_) | Answer::NotDone { .. } | Answer::NotAvailable => "instrument-name-person",
        Answer::Values(_) if spec_unit => "instrument-name-gauge",
        Answer::Values(values) => {
            let samples = values
                .values()
                .any(|value| matches!(value, Value::Samples { .. }));
            let number = values
                .values()
                .any(|value| matches!(value, Value::Number(_) | Value::Open));
            match (samples, is_electric(reading) && number) {
                (true, _) => "instrument-name-phone",
                (_, true) => "instrument-name-meter",
                _ => "instrument-name-person",
            }
        }
    })
}

/// Whether a test is done with a meter.
fn is_electric(reading: &Reading) -> bool {
    use holdfast_diagnose::TestKind;
    !matches!(
        reading.test.kind,
        TestKind::Complaint
            | TestKind::Codes
            | TestKind::IdleQuality
            | TestKind::MountLook
            | TestKind::MountMove
            | TestKind::Shake
    )
}

/// Expanded uncertainty of a reading, k = 2.
pub(super) fn uncertainty(texts: &Texts, job: &JobView, reading: &Reading) -> String {
    let instruments = &job.situation.instruments;
    let gauge = &instruments.gauge;
    match &reading.answer {
        Answer::Hold(hold) => {
            let drop = gauge.unit.to_pressure(COVERAGE * gauge.u_drop());
            let key = match hold.course {
                HoldCourse::NeverReached { .. } => "record-u-reading",
                HoldCourse::Spots { .. } | HoldCourse::Trace { .. } => "record-u-drop",
            };
            texts.say_with(key, &Args::new().text("u", texts.vacuum_in(drop, hold.unit)))
        }
        Answer::Values(values) => {
            let spec = holdfast_diagnose::Catalogue::standard().spec(&job.circuit, &reading.test);
            let mut said: Vec<String> = Vec::new();
            for (key, value) in values {
                let quantity = spec
                    .as_ref()
                    .and_then(|spec| spec.field(key.as_str()))
                    .map(|field| field.quantity);
                let Value::Number(number) = value else { continue };
                let words = match quantity {
                    Some(Quantity::Volts) => {
                        texts.with_unit(&texts.two_figures(COVERAGE * instruments.meter.u(*number)), "V")
                    }
                    Some(Quantity::Ohms) => {
                        texts.with_unit(&texts.two_figures(COVERAGE * instruments.meter.u(*number)), "Ω")
                    }
                    Some(Quantity::Vacuum) => {
                        let u = gauge
                            .u_reading()
                            .hypot(gauge.u_grade(gauge.unit.from_pressure(Pressure::new::<pascal>(*number))));
                        texts.vacuum_in(
                            gauge.unit.to_pressure(COVERAGE * u),
                            reading.unit().unwrap_or(gauge.unit),
                        )
                    }
                    _ => continue,
                };
                let words = texts.say_with("record-u", &Args::new().text("u", words));
                if !said.contains(&words) {
                    said.push(words);
                }
            }
            said.join(", ")
        }
        Answer::Look(_) | Answer::NotDone { .. } | Answer::NotAvailable => String::new(),
    }
}

/// The numbers of each hold.
fn hold_table(texts: &Texts, job: &JobView) -> Table {
    let rows = job
        .done
        .iter()
        .filter_map(|(reading, result)| {
            let hold = result.hold.as_ref()?;
            let (leak, range) = match &hold.leak {
                Some(leak) => (
                    leak_words(texts, leak.value),
                    texts.say_with(
                        "band-from-to",
                        &Args::new()
                            .text("low", texts.leak_number(leak.low))
                            .text("high", texts.leak_number(leak.high)),
                    ),
                ),
                None => (texts.say("record-none"), String::new()),
            };
            Some(vec![
                texts.test_name(&reading.test),
                fall(texts, hold),
                leak,
                range,
                texts.leak_number(hold.limit_std_cm3_min),
                texts.number(hold.volume_cm3, 0),
                texts.percent(hold.p_over_limit),
            ])
        })
        .collect();
    Table {
        caption: texts.say("record-holds-caption"),
        columns: columns(
            texts,
            &[
                ("record-test", Align::Start),
                ("record-fall", Align::Start),
                ("record-leak", Align::Decimal),
                ("record-range", Align::Start),
                ("record-limit-leak", Align::Decimal),
                ("record-volume", Align::Decimal),
                ("record-over", Align::End),
            ],
        ),
        rows,
        sums: 0,
    }
}

/// A leak's figure; a dash where none is proved, as the range beside it says how large it can be.
fn leak_words(texts: &Texts, std_cm3_min: f64) -> String {
    if std_cm3_min > 0.0 {
        texts.leak_number(std_cm3_min)
    } else {
        texts.say("record-none")
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

/// Every entry in order; what was put right or taken back stays and says so. Cautions ticked one after the other share
/// a row, with the time of the first.
fn entry_table(texts: &Texts, job: &JobView) -> Table {
    let mut rows: Vec<Vec<String>> = Vec::new();
    let mut ticked: Option<Vec<String>> = None;
    for line in job.log.record.iter().filter(|line| is_told(&job.log, line)) {
        let when = stamp(line.entry.at_ms, line.entry.offset_min);
        let standing = standing_words(texts, &job.circuit, &job.log, line);
        match (ticked_caution(texts, line), standing.is_empty()) {
            (Some(caution), true) => match &mut ticked {
                Some(cautions) => {
                    cautions.push(caution);
                    if let Some(words) = rows.last_mut().and_then(|row| row.last_mut()) {
                        *words = ticked_words(texts, cautions);
                    }
                }
                None => {
                    let cautions = vec![caution];
                    rows.push(vec![when, ticked_words(texts, &cautions)]);
                    ticked = Some(cautions);
                }
            },
            _ => {
                ticked = None;
                let mut words = line_words(texts, &job.circuit, &job.log, line);
                if !standing.is_empty() {
                    words = texts.say_with(
                        "record-standing",
                        &Args::new().text("entry", words).text("standing", standing),
                    );
                }
                rows.push(vec![when, words]);
            }
        }
    }
    Table {
        caption: String::new(),
        columns: columns(
            texts,
            &[("record-time", Align::Start), ("record-entry", Align::Start)],
        ),
        rows,
        sums: 0,
    }
}

fn ticked_words(texts: &Texts, cautions: &[String]) -> String {
    texts.say_with(
        "log-acknowledged",
        &Args::new().text("caution", cautions.join(" ")),
    )
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
