//! Number fields: one declaration of label, range and unit gives the hint, the problem and the value.

use holdfast_measure::{Bound, NumberError, QuantityError, parse_number};

use crate::companion::Companion;
use crate::protocol::{Field, FieldId, Keys};
use crate::text::Args;
use crate::typed::Typed;

/// A number that can be typed: its field, its label's key and its range.
#[derive(Clone)]
pub(crate) struct NumberField {
    /// Which field.
    pub id: FieldId,
    /// Key of its label.
    pub label: &'static str,
    /// Its range, with the unit.
    pub bound: Bound,
}

impl NumberField {
    /// What stands in the field: typed, else as it was logged.
    fn shown(&self, core: &Companion, typed: &Typed, logged: Option<f64>) -> String {
        typed.get(&self.id).map_or_else(
            || logged.map_or_else(String::new, |x| plain(core, x)),
            str::to_owned,
        )
    }

    /// The field as it is drawn.
    pub(crate) fn field(&self, core: &Companion, typed: &Typed, logged: Option<f64>) -> Field {
        let value = self.shown(core, typed, logged);
        let problem = match self.bound.parse(&value) {
            Ok(_) | Err(QuantityError::Number(NumberError::Empty)) => None,
            Err(error) => Some(problem(core, &error)),
        };
        Field {
            id: self.id.clone(),
            label: core.say(self.label),
            value,
            unit: self.bound.unit.to_owned(),
            hint: range(core, &self.bound),
            problem,
            keys: Keys::Number,
        }
    }

    /// The value typed, if it is valid; none if nothing was typed over.
    pub(crate) fn typed(&self, typed: &Typed) -> Option<f64> {
        typed.get(&self.id).and_then(|text| self.bound.parse(text).ok())
    }

    /// Whether the field was emptied.
    pub(crate) fn emptied(&self, typed: &Typed) -> bool {
        typed.get(&self.id).is_some_and(|text| text.trim().is_empty())
    }

    /// The value that holds: typed and valid, emptied, else as logged.
    pub(crate) fn holds(&self, typed: &Typed, logged: Option<f64>) -> Option<f64> {
        if self.emptied(typed) {
            None
        } else {
            self.typed(typed).or(logged)
        }
    }
}

/// A number without trailing zeros, in the language's form.
pub(crate) fn plain(core: &Companion, figure: f64) -> String {
    let decimals = (0..=3).find(|d| {
        let scaled = figure * 10f64.powi(*d);
        (scaled - scaled.round()).abs() < 1e-6
    });
    core.texts
        .number(figure, usize::try_from(decimals.unwrap_or(3)).unwrap_or(3))
}

/// The allowed range in words.
pub(crate) fn range(core: &Companion, bound: &Bound) -> String {
    core.say_with(
        "problem-range",
        &range_args(core, bound.min, bound.max, bound.unit),
    )
}

fn range_args(core: &Companion, min: f64, max: f64, unit: &str) -> Args {
    let shown = |figure| {
        if unit == "Ω" {
            return core.texts.ohms(figure);
        }
        let number = plain(core, figure);
        if unit.is_empty() {
            number
        } else {
            core.texts.with_unit(&number, unit)
        }
    };
    Args::new().text("low", shown(min)).text("high", shown(max))
}

/// What is wrong with a typed figure, in words.
pub(crate) fn problem(core: &Companion, error: &QuantityError) -> String {
    match error {
        QuantityError::Number(NumberError::Empty) => core.say("problem-number-empty"),
        QuantityError::Number(NumberError::NotANumber) => core.say("problem-number-none"),
        QuantityError::Number(NumberError::TooLarge) => core.say("problem-number-not-finite"),
        QuantityError::OutOfRange {
            unit,
            min,
            max,
            found,
            ..
        } => {
            let key = if found > max {
                "problem-range-above"
            } else {
                "problem-range-below"
            };
            core.say_with(key, &range_args(core, *min, *max, unit))
        }
    }
}

/// The figure in a typed text, for fields whose range is checked elsewhere.
pub(crate) fn figure(text: &str) -> Option<f64> {
    parse_number(text).ok()
}
