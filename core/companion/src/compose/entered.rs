//! A reading as it was entered, so that a person can hold it against the instrument.

use holdfast_diagnose::{Answer, Catalogue, FieldKey, Reading, Value};
use holdfast_joblog::{Instruments, Reading as ReadingRecord};

use super::reading::{field_words, reading_words};
use super::report::{Instrument, instrument_of};
use super::stated::instrument_words;
use super::time::date_and_time;
use crate::job::JobView;
use crate::protocol::Entered;
use crate::session::Taken;
use crate::situation;
use crate::text::{Args, Texts, capital};

/// What was entered, figure by figure as it was typed, with which instrument, and when.
#[must_use]
pub(crate) fn entered(texts: &Texts, job: &JobView, record: &ReadingRecord, taken: Option<Taken>) -> Entered {
    let reading = situation::reading(record);
    let instrument = reading
        .as_ref()
        .and_then(|reading| read_with(texts, job, reading));
    let when = taken.map(|taken| date_and_time(texts, taken.at_ms, taken.offset_min));
    Entered {
        label: texts.say("question-entered"),
        lines: reading.map_or_else(Vec::new, |reading| lines(texts, job, record, &reading)),
        taken: [
            instrument.map(|instrument| capital(&instrument)),
            when.map(|when| texts.say_with("question-when", &Args::new().text("when", when))),
        ]
        .into_iter()
        .flatten()
        .collect(),
    }
}

/// A line for each value; a hold and a look over have theirs as everywhere.
fn lines(texts: &Texts, job: &JobView, record: &ReadingRecord, reading: &Reading) -> Vec<String> {
    let Answer::Values(values) = &reading.answer else {
        return vec![reading_words(texts, &job.circuit, reading)];
    };
    let spec = Catalogue::standard().spec(&job.circuit, &reading.test);
    let unit = reading.unit().unwrap_or_else(|| texts.unit());
    let known = spec.iter().flat_map(|spec| &spec.fields).map(|field| &field.key);
    let line = |key: &FieldKey, value: &Value| {
        let as_typed = record.typed.iter().find(|typed| typed.key == key.as_str());
        let words = match (as_typed, value) {
            (Some(typed), Value::Number(_)) => {
                let text = texts.with_unit(typed.text.trim(), &typed.unit);
                field_words(texts, &reading.test, spec.as_ref(), key, &Value::Word(text), unit)
            }
            _ => field_words(texts, &reading.test, spec.as_ref(), key, value, unit),
        };
        capital(&words)
    };
    known
        .filter_map(|key| values.get(key).map(|value| line(key, value)))
        .collect()
}

/// The instrument that a reading is read from, as far as it is known.
fn read_with(texts: &Texts, job: &JobView, reading: &Reading) -> Option<String> {
    let known = job.log.instruments.as_ref()?;
    let only = match instrument_of(reading) {
        Instrument::Gauge => Instruments {
            gauge: known.gauge.clone(),
            ..Instruments::default()
        },
        Instrument::Meter => Instruments {
            meter: known.meter.clone(),
            ..Instruments::default()
        },
        Instrument::Phone | Instrument::Person => return None,
    };
    Some(instrument_words(texts, &only))
}
