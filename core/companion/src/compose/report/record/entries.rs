//! Every entry of the log.

use holdfast_report::{Align, Table};

use super::columns;
use crate::compose::log::{is_told, line_words, standing_words, ticked_caution};
use crate::compose::time::stamp;
use crate::job::JobView;
use crate::text::{Args, Texts};

/// Every entry in order; what was put right or taken back stays and says so. Cautions ticked one after the other share
/// a row, with the time of the first.
pub(super) fn entry_table(texts: &Texts, job: &JobView) -> Table {
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
