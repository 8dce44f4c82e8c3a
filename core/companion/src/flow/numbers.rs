//! Number fields: one declaration of label, range and unit gives the hint, the problem and the value.

use holdfast_joblog::Typed as TypedRecord;
use holdfast_measure::{
    Bound, EverydayUnit, NumberError, Pressure, PressureUnit, QuantityError, parse_number, parse_vacuum,
};

use crate::companion::Companion;
use crate::protocol::{Field, FieldId, Keys};
use crate::text::Args;
use crate::typed::Typed;
use crate::units::TypedAs;

/// What the log has of a field.
#[derive(Debug, Clone, Copy, Default)]
pub(crate) struct Logged<'a> {
    /// The figure as it is stored.
    pub figure: Option<f64>,
    /// What was typed for it, if that is known.
    pub record: Option<&'a TypedRecord>,
}

impl<'a> Logged<'a> {
    /// A figure with what was typed for it, found by its key.
    pub(crate) fn with(figure: Option<f64>, records: &'a [TypedRecord], key: &str) -> Self {
        Self {
            figure,
            record: records.iter().find(|record| record.key == key),
        }
    }
}

impl From<Option<f64>> for Logged<'_> {
    fn from(figure: Option<f64>) -> Self {
        Self { figure, record: None }
    }
}

/// Figures nearer than this are the same one, converted there and back.
const SAME: f64 = 1e-9;

/// A number that can be typed: its field, its label's key and its range.
#[derive(Clone)]
pub(crate) struct NumberField {
    /// Which field.
    pub id: FieldId,
    /// Key of its label.
    pub label: &'static str,
    /// Its range, with the unit it is stored in.
    pub bound: Bound,
}

impl NumberField {
    /// What stands in the field: typed, else as it was logged.
    fn shown(&self, core: &Companion, typed: &Typed, logged: Logged<'_>) -> String {
        let as_logged = || match logged.figure {
            Some(figure) => logged
                .record
                .filter(|record| self.still_says(core, record, figure))
                .map_or_else(
                    || plain(core, self.as_typed(core).typed(figure)),
                    |record| record.text.clone(),
                ),
            None => String::new(),
        };
        typed.get(&self.id).map_or_else(as_logged, str::to_owned)
    }

    /// Whether what was typed then would be typed the same way now and give the figure that was logged.
    fn still_says(&self, core: &Companion, record: &TypedRecord, logged: f64) -> bool {
        record.unit == self.as_typed(core).bound.unit && self.says(core, record, logged)
    }

    /// Whether what was typed, in the unit it was typed in, is this figure.
    pub(crate) fn says(&self, core: &Companion, record: &TypedRecord, figure: f64) -> bool {
        let unit = EverydayUnit::from_symbol;
        let stored =
            kept(core, &record.text).map(|typed| match (unit(&record.unit), unit(self.bound.unit)) {
                (Some(from), Some(to)) => from.convert(typed, to),
                _ => typed,
            });
        stored.is_some_and(|stored| (stored - figure).abs() <= figure.abs() * SAME)
    }

    /// The range in the unit it is typed in.
    fn as_typed(&self, core: &Companion) -> TypedAs {
        core.texts.units().typed(&self.bound)
    }

    /// The field as it is drawn.
    pub(crate) fn field<'a>(&self, core: &Companion, typed: &Typed, logged: impl Into<Logged<'a>>) -> Field {
        let logged = logged.into();
        let value = self.shown(core, typed, logged);
        let bound = self.as_typed(core).bound;
        let problem = match read(core, &bound, &value) {
            Ok(_) | Err(QuantityError::Number(NumberError::Empty)) => None,
            Err(error) => Some(problem(core, &error)),
        };
        Field {
            id: self.id.clone(),
            label: core.say(self.label),
            value,
            unit: core.texts.unit_name(bound.unit),
            hint: range(core, &bound),
            problem,
            keys: Keys::Number,
        }
    }

    /// The value typed, as it is stored, if it is valid; none if nothing was typed over.
    pub(crate) fn typed(&self, core: &Companion, typed: &Typed) -> Option<f64> {
        let as_typed = self.as_typed(core);
        let figure = read(core, &as_typed.bound, typed.get(&self.id)?).ok()?;
        Some(as_typed.stored(figure))
    }

    /// What was typed, for the record; none if nothing valid was typed over.
    pub(crate) fn record(&self, core: &Companion, typed: &Typed, key: &str) -> Option<TypedRecord> {
        self.typed(core, typed)?;
        Some(TypedRecord {
            key: key.to_owned(),
            text: typed.get(&self.id)?.to_owned(),
            unit: self.as_typed(core).bound.unit.to_owned(),
        })
    }

    /// Whether the field was emptied.
    pub(crate) fn emptied(&self, typed: &Typed) -> bool {
        typed.get(&self.id).is_some_and(|text| text.trim().is_empty())
    }

    /// The value that holds: typed and valid, emptied, else as logged.
    pub(crate) fn holds(&self, core: &Companion, typed: &Typed, logged: Option<f64>) -> Option<f64> {
        if self.emptied(typed) {
            None
        } else {
            self.typed(core, typed).or(logged)
        }
    }
}

/// A number to be edited, without trailing zeros, in the language's form.
pub(crate) fn plain(core: &Companion, figure: f64) -> String {
    core.texts.editable(figure, decimals(figure))
}

/// How many decimals a figure has, three at most.
fn decimals(figure: f64) -> usize {
    let found = (0..=3).find(|d| {
        let scaled = figure * 10f64.powi(*d);
        (scaled - scaled.round()).abs() < 1e-6
    });
    usize::try_from(found.unwrap_or(3)).unwrap_or(3)
}

/// The figure in a typed text. Read as the locale writes thousands; where that gives more than can be, a mark between
/// thousands is taken as the decimal mark, which it is on every keyboard.
pub(crate) fn read(core: &Companion, bound: &Bound, text: &str) -> Result<f64, QuantityError> {
    let figure = bound.parse(&core.texts.typed_number(text));
    match (&figure, bound.parse(text)) {
        (Err(QuantityError::OutOfRange { .. }), Ok(decimal)) => Ok(decimal),
        _ => figure,
    }
}

/// The vacuum in a typed text, read as [`read`] does.
pub(crate) fn read_vacuum(
    core: &Companion,
    text: &str,
    unit: PressureUnit,
    most: Pressure,
) -> Result<Pressure, QuantityError> {
    let vacuum = parse_vacuum(&core.texts.typed_number(text), unit, most);
    match (&vacuum, parse_vacuum(text, unit, most)) {
        (Err(QuantityError::OutOfRange { .. }), Ok(decimal)) => Ok(decimal),
        _ => vacuum,
    }
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
        let number = core.texts.number(figure, decimals(figure));
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

/// The figure in a typed text of which the person says that it stands, whatever its range.
pub(crate) fn kept(core: &Companion, text: &str) -> Option<f64> {
    parse_number(&core.texts.typed_number(text)).ok()
}

/// The figure in a text that is kept, with a point as its decimal mark.
pub(crate) fn figure(text: &str) -> Option<f64> {
    parse_number(text).ok()
}
