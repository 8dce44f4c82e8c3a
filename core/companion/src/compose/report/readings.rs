//! The readings as a table for other programs: RFC 4180, UTF-8, one row a figure, nothing that the record's pages do
//! not show.

use holdfast_diagnose::{
    Answer, Catalogue, HoldAnswer, HoldCourse, LookState, Outcome, Reading, TestResult, TestSpec, Value,
};
use holdfast_measure::PressureUnit;

use super::record::{instrument, uncertainty};
use crate::compose::mark::mark_of;
use crate::compose::reading::value_words;
use crate::compose::time::stamp;
use crate::job::{Behind, JobView};
use crate::text::{Args, Texts, kebab};

/// What one figure is: its label, the figure, its unit, and the seconds into the test.
#[derive(Debug, Clone, Default, PartialEq)]
struct Figure {
    label: String,
    value: String,
    unit: String,
    seconds: String,
}

/// The heads of the columns, by text key.
const HEADS: [&str; 9] = [
    "record-time",
    "record-test",
    "readings-what",
    "readings-value",
    "readings-unit",
    "readings-seconds",
    "record-uncertainty",
    "record-instrument",
    "record-result",
];

/// The readings, heads first; every record ends with CRLF.
#[must_use]
pub(crate) fn readings_csv(texts: &Texts, job: &JobView) -> Vec<u8> {
    let heads = HEADS.map(|key| texts.say(key)).to_vec();
    let mut csv = String::new();
    for row in std::iter::once(heads).chain(rows(texts, job)) {
        let fields: Vec<String> = row.iter().map(|field| escaped(field)).collect();
        csv.push_str(&fields.join(","));
        csv.push_str("\r\n");
    }
    csv.into_bytes()
}

/// A field as RFC 4180 writes it. Words that a table program would take for a formula get an apostrophe before them.
fn escaped(field: &str) -> String {
    let number = field.parse::<f64>().is_ok();
    let formula = field.starts_with(['=', '+', '-', '@', '\t', '\r']) && !number;
    let field = if formula {
        format!("'{field}")
    } else {
        field.to_owned()
    };
    if field.contains([',', '"', '\r', '\n']) {
        format!("\"{}\"", field.replace('"', "\"\""))
    } else {
        field
    }
}

/// A row for each figure of each test that was done.
pub(in crate::compose) fn rows(texts: &Texts, job: &JobView) -> Vec<Vec<String>> {
    job.done
        .iter()
        .zip(&job.behind)
        .filter(|((_, result), _)| result.outcome != Outcome::NotDone)
        .flat_map(|((reading, result), behind)| test_rows(texts, job, reading, result, behind))
        .collect()
}

fn test_rows(
    texts: &Texts,
    job: &JobView,
    reading: &Reading,
    result: &TestResult,
    behind: &Behind,
) -> Vec<Vec<String>> {
    let mut test = texts.test_name(&reading.test);
    if reading.after_repair {
        test = texts.say_with("record-after-repair", &Args::new().text("test", test));
    }
    figures(texts, job, reading)
        .into_iter()
        .map(|figure| {
            vec![
                stamp(behind.at_ms, behind.offset_min),
                test.clone(),
                figure.label,
                plain(texts, &figure.value),
                figure.unit,
                plain(texts, &figure.seconds),
                uncertainty(texts, job, reading),
                instrument(texts, reading),
                mark_of(texts, result.outcome).word,
            ]
        })
        .collect()
}

fn figures(texts: &Texts, job: &JobView, reading: &Reading) -> Vec<Figure> {
    match &reading.answer {
        Answer::Hold(hold) => hold_figures(texts, hold),
        Answer::Values(values) => {
            let spec = Catalogue::standard().spec(&job.circuit, &reading.test);
            let unit = reading.unit().unwrap_or_else(|| texts.unit());
            values
                .iter()
                .filter(|(key, _)| key.as_str() != "unit")
                .map(|(key, value)| value_figure(texts, reading, spec.as_ref(), key.as_str(), value, unit))
                .collect()
        }
        Answer::Look(seen) => seen
            .iter()
            .filter(|(_, state)| **state != LookState::Ok)
            .map(|(part, state)| Figure {
                label: texts.part(part),
                value: texts.say(&format!("look-{}-phrase", kebab(state.as_str()))),
                ..Figure::default()
            })
            .collect(),
        Answer::NotDone { .. } | Answer::NotAvailable => Vec::new(),
    }
}

/// The vacuum at each time it was read; of a trace the first and the last.
fn hold_figures(texts: &Texts, hold: &HoldAnswer) -> Vec<Figure> {
    let at = |seconds: Option<f64>, vacuum: f64| {
        let shown = texts.vacuum_in(hold.unit.to_pressure(vacuum), hold.unit);
        let (value, unit) = parted(&shown);
        Figure {
            label: texts.say("readings-vacuum"),
            value,
            unit,
            seconds: seconds.map_or_else(String::new, |seconds| {
                texts.number(seconds, usize::from((seconds - seconds.round()).abs() > 0.049))
            }),
        }
    };
    match &hold.course {
        HoldCourse::Spots { start, readings } => std::iter::once(at(Some(0.0), *start))
            .chain(
                readings
                    .iter()
                    .map(|(seconds, vacuum)| at(Some(*seconds), *vacuum)),
            )
            .collect(),
        HoldCourse::Trace { hz, readings } => {
            let seen: Vec<(usize, f64)> = readings
                .iter()
                .enumerate()
                .filter_map(|(at, figure)| Some((at, (*figure)?)))
                .collect();
            let first = seen.first().map(|(_, vacuum)| at(Some(0.0), *vacuum));
            let last = seen
                .last()
                .map(|(frame, vacuum)| at(Some(*frame as f64 / hz.max(f64::MIN_POSITIVE)), *vacuum));
            first.into_iter().chain(last).collect()
        }
        HoldCourse::NeverReached { highest } => vec![at(None, *highest)],
    }
}

fn value_figure(
    texts: &Texts,
    reading: &Reading,
    spec: Option<&TestSpec>,
    key: &str,
    value: &Value,
    unit: PressureUnit,
) -> Figure {
    let field = kebab(key);
    let text = |name: String| texts.test_text(&reading.test, &name, &Args::new());
    if let Value::YesNo(yes) = value {
        let answer = if *yes { "yes" } else { "no" };
        if let Some(value) = text(format!("field-{field}-{answer}")) {
            return Figure {
                value,
                ..Figure::default()
            };
        }
    }
    let quantity = spec.and_then(|spec| spec.field(key)).map(|field| field.quantity);
    let shown = value_words(texts, quantity, value, unit);
    let in_a_line = Args::new().text("value", shown.as_str());
    let says_itself = texts
        .test_text(&reading.test, &format!("field-{field}-read"), &in_a_line)
        .is_some();
    let (value, unit) = match value {
        Value::Number(_) => parted(&shown),
        _ => (shown, String::new()),
    };
    let label = text(format!("field-{field}"))
        .filter(|_| !says_itself)
        .unwrap_or_default();
    Figure {
        label: label.trim_end_matches('?').to_owned(),
        value,
        unit,
        seconds: String::new(),
    }
}

/// A shown quantity as figure and unit.
fn parted(shown: &str) -> (String, String) {
    match shown.split_once('\u{a0}') {
        Some((value, unit)) => (value.to_owned(), unit.to_owned()),
        None => (shown.to_owned(), String::new()),
    }
}

/// A shown figure as programs read it: a point, a plain minus. Words stay as they are.
fn plain(texts: &Texts, shown: &str) -> String {
    let together = texts.typed_number(&shown.replace('\u{2212}', "-"));
    let point = together.replace(texts.decimal_mark(), ".");
    if point.parse::<f64>().is_ok() {
        point
    } else {
        shown.to_owned()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: RFC 4180, section 2, rules 5 to 7.
    #[test]
    fn fields_are_quoted_as_the_standard_says() {
        assert_eq!(escaped("plain"), "plain");
        assert_eq!(escaped("a,b"), "\"a,b\"");
        assert_eq!(escaped("say \"x\""), "\"say \"\"x\"\"\"");
        assert_eq!(escaped("two\nlines"), "\"two\nlines\"");
    }

    #[test]
    fn words_never_become_formulas_and_numbers_stay_numbers() {
        assert_eq!(escaped("=1+1"), "'=1+1");
        assert_eq!(escaped("@x"), "'@x");
        assert_eq!(escaped("-0.5"), "-0.5");
    }
}
