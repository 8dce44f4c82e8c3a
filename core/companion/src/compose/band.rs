//! Meter and gauge readings on the band that was expected.

use holdfast_diagnose::{
    Band as Expected, CarState, Catalogue, FieldKey, Outcome, Quantity, Reading, TestId, TestResult, Value,
    expected_band,
};
use holdfast_measure::{Pressure, PressureUnit, si::pressure::kilopascal};
use holdfast_report::{Band, Scene};

use super::hold::{TARGET_REACH, is_unusable};
use super::mark::state_of;
use super::reading::{field_words, number_words, value_words};
use crate::job::JobView;
use crate::text::{Args, Texts};

/// One field of a test, in the state of the car it was or is to be read in.
struct Field<'a> {
    job: &'a JobView,
    test: &'a TestId,
    state: CarState,
    key: &'a FieldKey,
}

/// One field's reading on its expected band; nothing where nothing certain is expected. `reading` is in the
/// field's unit, vacuum in Pa.
#[must_use]
pub(crate) fn band(
    texts: &Texts,
    job: &JobView,
    test: &TestId,
    state: CarState,
    key: &FieldKey,
    reading: Option<f64>,
) -> Option<Scene> {
    let earlier: Vec<Reading> = job.done.iter().map(|(reading, _)| reading.clone()).collect();
    let field = Field {
        job,
        test,
        state,
        key,
    };
    field.drawn(texts, &earlier, reading.map(Value::Number).as_ref(), None)
}

/// A drawing of what was read in a test.
pub(super) struct Drawn {
    /// The drawing.
    pub scene: Scene,
    /// What was read, in words.
    pub words: String,
    /// What that says by itself.
    pub outcome: Outcome,
}

/// Every reading of a test that has an expected band, in the catalogue's order.
#[must_use]
pub(super) fn bands(texts: &Texts, job: &JobView, reading: &Reading, result: &TestResult) -> Vec<Drawn> {
    let Some(spec) = Catalogue::standard().spec(&job.circuit, &reading.test) else {
        return Vec::new();
    };
    let done = job.done.iter().map(|(earlier, _)| earlier);
    let earlier: Vec<Reading> = done
        .take_while(|earlier| *earlier != reading)
        .chain([reading])
        .cloned()
        .collect();
    let unit = reading.unit().unwrap_or_else(|| texts.unit());
    let fields = spec.fields.iter().filter(|field| field.key.as_str() != "battery");
    fields
        .filter_map(|field| {
            let value = reading.value(field.key.as_str())?;
            let words = field_words(texts, &reading.test, Some(&spec), &field.key, value, unit);
            let field = Field {
                job,
                test: &reading.test,
                state: reading.state,
                key: &field.key,
            };
            let outcome = field.says(&earlier, value, result.outcome)?;
            let scene = field.drawn(texts, &earlier, Some(value), Some(outcome))?;
            Some(Drawn {
                scene,
                words,
                outcome,
            })
        })
        .collect()
}

/// The highest vacuum of a hold that did not build any, on the band to pump to. Nothing for one that did.
#[must_use]
pub(super) fn reached(texts: &Texts, reading: &Reading, result: &TestResult) -> Option<Scene> {
    let hold = result
        .hold
        .as_ref()
        .filter(|hold| hold.points.is_empty() && !is_unusable(hold))?;
    let words = |kpa: f64| texts.vacuum(Pressure::new::<kilopascal>(kpa));
    let title = texts.say("band-reached");
    let (low, high) = (hold.target_kpa, hold.target_kpa * (1.0 + TARGET_REACH));
    let expected = Args::new().text("low", words(low)).text("high", words(high));
    let args = Args::new()
        .text("what", texts.test_name(&reading.test))
        .text("reading", words(hold.start_kpa))
        .text("expected", texts.say_with("band-from-to", &expected));
    Some(holdfast_report::band(&Band {
        alt: texts.say_with("band-alt", &args),
        title,
        low,
        high,
        low_text: words(low),
        high_text: words(high),
        band_label: texts.say("band-expected"),
        reading: Some(hold.start_kpa),
        doubt: 0.0,
        reading_text: words(hold.start_kpa),
        state: Some(state_of(result.outcome)),
    }))
}

impl Field<'_> {
    fn drawn(
        &self,
        texts: &Texts,
        earlier: &[Reading],
        value: Option<&Value>,
        says: Option<Outcome>,
    ) -> Option<Scene> {
        let Self { job, test, key, .. } = *self;
        let expected = self.expected(earlier)?;
        let quantity = quantity(job, test, key);
        let unit = texts.unit();
        let reading = match value {
            Some(Value::Number(number)) => Some(*number),
            Some(Value::Open) | None => None,
            Some(_) => return None,
        };
        let reading_text = match value {
            Some(value) => value_words(texts, quantity, value, unit),
            None => String::new(),
        };
        let title = texts
            .test_text(
                test,
                &format!("field-{}", key.as_str().replace('_', "-")),
                &Args::new(),
            )
            .unwrap_or_default();
        let expected_text = expected_words(texts, quantity, expected, unit);
        let alt = texts.say_with(
            if reading_text.is_empty() {
                "band-alt-open"
            } else {
                "band-alt"
            },
            &Args::new()
                .text("what", title.as_str())
                .text("reading", reading_text.as_str())
                .text("expected", expected_text),
        );
        let doubt = reading.map_or(0.0, |number| self.doubt(number));
        let low = expected.low.max(0.0);
        let number = |number: f64| number_words(texts, quantity, number, unit);
        Some(holdfast_report::band(&Band {
            alt,
            title,
            low,
            high: expected.high,
            low_text: number(low),
            high_text: number(expected.high),
            band_label: texts.say("band-expected"),
            reading,
            doubt,
            reading_text,
            state: says.map(state_of),
        }))
    }

    fn expected(&self, earlier: &[Reading]) -> Option<Expected> {
        let job = self.job;
        expected_band(
            &job.circuit,
            &job.situation,
            earlier,
            self.test,
            self.state,
            self.key,
        )
    }

    /// Half width of a figure's doubt.
    fn doubt(&self, number: f64) -> f64 {
        let instruments = &self.job.situation.instruments;
        match quantity(self.job, self.test, self.key) {
            Some(Quantity::Volts | Quantity::Ohms) => 2.0 * instruments.meter.u(number),
            Some(Quantity::Vacuum) => {
                let gauge = &instruments.gauge;
                gauge.unit.to_pressure(2.0 * gauge.u_reading()).value
            }
            _ => 0.0,
        }
    }

    /// What a figure says by itself: of a test that came out wrong, not every figure has to be.
    fn says(&self, earlier: &[Reading], value: &Value, whole: Outcome) -> Option<Outcome> {
        let expected = self.expected(earlier)?;
        let within = match value {
            Value::Number(number) => {
                let doubt = self.doubt(*number);
                (expected.low - doubt..=expected.high + doubt).contains(number)
            }
            _ => false,
        };
        Some(match whole {
            Outcome::NotAsExpected if within => Outcome::AsExpected,
            whole => whole,
        })
    }
}

fn expected_words(
    texts: &Texts,
    quantity: Option<Quantity>,
    expected: Expected,
    unit: PressureUnit,
) -> String {
    let number = |number: f64| number_words(texts, quantity, number, unit);
    texts.say_with(
        "band-from-to",
        &Args::new()
            .text("low", number(expected.low.max(0.0)))
            .text("high", number(expected.high)),
    )
}

fn quantity(job: &JobView, test: &TestId, key: &FieldKey) -> Option<Quantity> {
    let spec = Catalogue::standard().spec(&job.circuit, test)?;
    spec.field(key.as_str()).map(|field| field.quantity)
}
