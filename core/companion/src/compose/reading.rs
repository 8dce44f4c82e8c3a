//! A reading in words, as the log, the report and the finding show it.

use std::collections::BTreeMap;

use holdfast_diagnose::{
    Answer, Catalogue, Circuit, ComponentId, FieldKey, HoldAnswer, HoldCourse, LookState, Quantity, Reading,
    TestId, TestSpec, Value,
};
use holdfast_measure::{Pressure, PressureUnit, si::pressure::pascal};

use crate::text::{Args, Texts, capital, kebab};

/// What was seen, by itself: "20 inHg, after 20 s 13.5 inHg; 19 strokes".
#[must_use]
pub(crate) fn reading_words(texts: &Texts, circuit: &Circuit, reading: &Reading) -> String {
    capital(&on_a_line(texts, circuit, reading))
}

/// What was seen, as it goes on a line. The texts are written so: a language knows which words keep their capitals there.
#[must_use]
pub(super) fn on_a_line(texts: &Texts, circuit: &Circuit, reading: &Reading) -> String {
    match &reading.answer {
        Answer::Hold(hold) => hold_words(texts, hold),
        Answer::Values(values) => values_words(texts, circuit, &reading.test, values),
        Answer::Look(seen) => look_words(texts, seen),
        Answer::NotDone { reason } => reason_words(texts, reason),
        Answer::NotAvailable => reason_words(texts, "not_available"),
    }
}

/// Why a test was not done, as a clause; a reason in someone's own words stays as it is.
#[must_use]
pub(crate) fn reason_words(texts: &Texts, reason: &str) -> String {
    texts
        .find(&format!("cannot-{}-reason", kebab(reason)), &Args::new())
        .unwrap_or_else(|| reason.to_owned())
}

fn hold_words(texts: &Texts, hold: &HoldAnswer) -> String {
    let vacuum = |figure: f64| texts.vacuum_in(hold.unit.to_pressure(figure), hold.unit);
    let words = match &hold.course {
        HoldCourse::Spots { start, readings } => {
            let later: Vec<String> = readings
                .iter()
                .map(|(seconds, figure)| {
                    texts.say_with(
                        "reading-hold-later",
                        &Args::new()
                            .text("vacuum", vacuum(*figure))
                            .text("seconds", texts.seconds(*seconds)),
                    )
                })
                .collect();
            [vec![vacuum(*start)], later].concat().join(", ")
        }
        HoldCourse::Trace { hz, readings } => {
            let seen: Vec<(usize, f64)> = readings
                .iter()
                .enumerate()
                .filter_map(|(at, figure)| figure.map(|f| (at, f)))
                .collect();
            match (seen.first(), seen.last()) {
                (Some((_, first)), Some((at, last))) => texts.say_with(
                    "reading-hold-trace",
                    &Args::new()
                        .text("start", vacuum(*first))
                        .text("vacuum", vacuum(*last))
                        .text("seconds", texts.seconds(*at as f64 / hz.max(f64::MIN_POSITIVE)))
                        .count("count", seen.len()),
                ),
                _ => texts.say("reading-nothing"),
            }
        }
        HoldCourse::NeverReached { highest } => {
            texts.say_with("fall-never", &Args::new().text("highest", vacuum(*highest)))
        }
    };
    match hold.strokes {
        Some(strokes) if strokes > 0.0 => {
            let strokes = texts.say_with(
                "reading-strokes",
                &Args::new().quantity("strokes", texts.number(strokes, 0), strokes),
            );
            format!("{words}; {strokes}")
        }
        _ => words,
    }
}

fn values_words(
    texts: &Texts,
    circuit: &Circuit,
    test: &TestId,
    values: &BTreeMap<FieldKey, Value>,
) -> String {
    let spec = Catalogue::standard().spec(circuit, test);
    let unit = values
        .get(&FieldKey::from("unit"))
        .and_then(|value| match value {
            Value::Word(symbol) => PressureUnit::from_symbol(symbol),
            _ => None,
        })
        .unwrap_or_else(|| texts.unit());
    let known: Vec<FieldKey> = spec
        .as_ref()
        .map(|spec| spec.fields.iter().map(|field| field.key.clone()).collect())
        .unwrap_or_default();
    let first = known.iter().filter(|key| values.contains_key(*key));
    let rest = values
        .keys()
        .filter(|key| !known.contains(key) && key.as_str() != "unit");
    let words: Vec<String> = first
        .chain(rest)
        .filter_map(|key| {
            let value = values.get(key)?;
            Some(field_words(texts, test, spec.as_ref(), key, value, unit))
        })
        .collect();
    if words.is_empty() {
        return texts.say("reading-nothing");
    }
    words.join(", ")
}

/// A field with its value: "Pin 1 to chassis ground 12.4 V", or the words of the answer where they say it all.
#[must_use]
pub(super) fn field_words(
    texts: &Texts,
    test: &TestId,
    spec: Option<&TestSpec>,
    key: &FieldKey,
    value: &Value,
    unit: PressureUnit,
) -> String {
    let field = kebab(key.as_str());
    if let Value::YesNo(yes) = value {
        let answer = if *yes { "yes" } else { "no" };
        if let Some(words) = texts.test_text(test, &format!("field-{field}-{answer}"), &Args::new()) {
            return words;
        }
    }
    let quantity = spec
        .and_then(|spec| spec.field(key.as_str()))
        .map(|field| field.quantity);
    let value = value_words(texts, quantity, value, unit);
    let in_a_line = Args::new().text("value", value.as_str());
    if let Some(words) = texts.test_text(test, &format!("field-{field}-read"), &in_a_line) {
        return words;
    }
    let label = texts
        .test_text(test, &format!("field-{field}"), &Args::new())
        .unwrap_or_else(|| field.clone());
    let label = label.trim_end_matches('?');
    texts.say_with(
        "reading-field",
        &Args::new().text("label", label).text("value", value),
    )
}

/// A value with its unit.
#[must_use]
pub(crate) fn value_words(
    texts: &Texts,
    quantity: Option<Quantity>,
    value: &Value,
    unit: PressureUnit,
) -> String {
    match value {
        Value::Number(number) => number_words(texts, quantity, *number, unit),
        Value::YesNo(true) => texts.say("yes"),
        Value::YesNo(false) => texts.say("no"),
        Value::Open => texts.say("reading-open"),
        Value::Word(word) => word.clone(),
        Value::Words(words) if words.is_empty() => texts.say("reading-none"),
        Value::Words(words) => words.join(", "),
        Value::Samples { hz, mg } => texts.say_with(
            "reading-samples",
            &Args::new().text(
                "seconds",
                texts.seconds(mg.len() as f64 / hz.max(f64::MIN_POSITIVE)),
            ),
        ),
    }
}

#[must_use]
pub(super) fn number_words(
    texts: &Texts,
    quantity: Option<Quantity>,
    number: f64,
    unit: PressureUnit,
) -> String {
    match quantity {
        Some(Quantity::Volts) => texts.volts(number),
        Some(Quantity::Ohms) => texts.ohms(number),
        Some(Quantity::Vacuum) => texts.vacuum_in(Pressure::new::<pascal>(number), unit),
        Some(Quantity::Seconds) => texts.seconds(number),
        Some(Quantity::Rpm) => texts.rpm(number),
        Some(Quantity::Millimetres) => texts.gap(number),
        Some(Quantity::Scale) => texts
            .find(&format!("test-shake-scale-{number:.0}"), &Args::new())
            .unwrap_or_else(|| texts.number(number, 0)),
        Some(Quantity::Count | Quantity::Words | Quantity::YesNo | Quantity::Samples) | None => {
            texts.number(number, usize::from(number.fract().abs() > 1e-9))
        }
    }
}

fn look_words(texts: &Texts, seen: &BTreeMap<ComponentId, LookState>) -> String {
    let odd: Vec<String> = seen
        .iter()
        .filter(|(_, state)| **state != LookState::Ok)
        .map(|(part, state)| {
            texts.say_with(
                "reading-look",
                &texts.of_part(part).text(
                    "state",
                    texts.say(&format!("look-{}-phrase", kebab(state.as_str()))),
                ),
            )
        })
        .collect();
    if odd.is_empty() {
        texts.say("reading-look-nothing")
    } else {
        odd.join("; ")
    }
}
