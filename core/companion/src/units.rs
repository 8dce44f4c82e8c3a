//! Which units a person reads and types in, apart from vacuum's: chosen once by the phone's region, then instrument by
//! instrument.

use holdfast_measure::EverydayUnit::{
    self, Celsius, Fahrenheit, Foot, Inch, Kilometre, Metre, Mile, Millimetre,
};
use holdfast_measure::{Bound, PressureUnit};
use icu_locale_core::Locale;
use icu_locale_core::extensions::unicode::{Key, key};
use serde::{Deserialize, Serialize};

/// The unit of each instrument.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub(crate) struct Units {
    /// The odometer's.
    pub odometer: EverydayUnit,
    /// The thermometer's.
    pub thermometer: EverydayUnit,
    /// That of heights above the sea and of hoses.
    pub tape: EverydayUnit,
    /// That of small sizes: bores, gaps, holes.
    pub rule: EverydayUnit,
}

impl Default for Units {
    fn default() -> Self {
        Self::METRIC
    }
}

/// An instrument whose unit can be chosen.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Reader {
    /// The odometer.
    Odometer,
    /// The thermometer.
    Thermometer,
    /// Maps and tape measures.
    Tape,
    /// A rule or feeler gauge.
    Rule,
}

impl Reader {
    /// All of them, in the order in which they are offered.
    pub(crate) const ALL: [Self; 4] = [Self::Odometer, Self::Thermometer, Self::Tape, Self::Rule];

    /// Its id, as it stands in keys and options.
    pub(crate) const fn id(self) -> &'static str {
        match self {
            Self::Odometer => "odometer",
            Self::Thermometer => "thermometer",
            Self::Tape => "tape",
            Self::Rule => "rule",
        }
    }

    /// The units it can have; figures are stored in the first.
    pub(crate) const fn offered(self) -> [EverydayUnit; 2] {
        match self {
            Self::Odometer => [Kilometre, Mile],
            Self::Thermometer => [Celsius, Fahrenheit],
            Self::Tape => [Metre, Foot],
            Self::Rule => [Millimetre, Inch],
        }
    }
}

impl Units {
    /// Kilometres, Celsius, metres, millimetres.
    pub(crate) const METRIC: Self = Self {
        odometer: Kilometre,
        thermometer: Celsius,
        tape: Metre,
        rule: Millimetre,
    };
    /// As in the United States.
    pub(crate) const US: Self = Self {
        odometer: Mile,
        thermometer: Fahrenheit,
        tape: Foot,
        rule: Inch,
    };
    /// As in the United Kingdom: roads in miles, the rest metric.
    pub(crate) const UK: Self = Self {
        odometer: Mile,
        ..Self::METRIC
    };

    /// The sets that can be chosen at once, by their ids.
    pub(crate) const SETS: [(&'static str, Self); 3] =
        [("metric", Self::METRIC), ("us", Self::US), ("uk", Self::UK)];

    /// Those of a region. A locale that says its measures itself (`-u-ms-metric`, `-u-mu-celsius`) is believed.
    ///
    /// # Source
    /// Unicode CLDR 48, `supplemental/measurementData.json`, and UTS 35, keys `ms` and `mu`.
    pub(crate) fn of(locale: &Locale) -> Self {
        let said = |key: Key| {
            locale
                .extensions
                .unicode
                .keywords
                .get(&key)
                .map(ToString::to_string)
        };
        let region = locale.id.region.as_ref().map_or("", |region| region.as_str());
        let mut units = match (said(key!("ms")).as_deref(), region) {
            (Some("ussystem"), _) => Self::US,
            (Some("uksystem"), _) => Self::UK,
            (Some("metric"), _) => Self::METRIC,
            (_, "US" | "LR" | "MM") => Self::US,
            (_, "GB") => Self::UK,
            _ => Self::METRIC,
        };
        match (said(key!("mu")).as_deref(), region) {
            (Some("fahrenhe"), _) => units.thermometer = Fahrenheit,
            (Some("celsius"), _) => units.thermometer = Celsius,
            (_, "BS" | "BZ" | "KY" | "PR" | "PW") => units.thermometer = Fahrenheit,
            (_, "LR" | "MM") => units.thermometer = Celsius,
            _ => {}
        }
        units
    }

    /// The unit of an instrument.
    pub(crate) fn reads(&self, reader: Reader) -> EverydayUnit {
        match reader {
            Reader::Odometer => self.odometer,
            Reader::Thermometer => self.thermometer,
            Reader::Tape => self.tape,
            Reader::Rule => self.rule,
        }
    }

    /// Chooses the unit of an instrument by its symbol; one that it can't have changes nothing.
    pub(crate) fn choose(&mut self, reader: &str, symbol: &str) {
        let Some(reader) = Reader::ALL.into_iter().find(|it| it.id() == reader) else {
            return;
        };
        let Some(unit) = reader.offered().into_iter().find(|unit| unit.symbol() == symbol) else {
            return;
        };
        *match reader {
            Reader::Odometer => &mut self.odometer,
            Reader::Thermometer => &mut self.thermometer,
            Reader::Tape => &mut self.tape,
            Reader::Rule => &mut self.rule,
        } = unit;
    }

    /// The unit in which a figure stored in `stored` is shown and typed.
    pub(crate) fn shown(&self, stored: EverydayUnit) -> EverydayUnit {
        match stored {
            Kilometre | Mile => self.odometer,
            Metre | Foot => self.tape,
            Millimetre | Inch => self.rule,
            Celsius | Fahrenheit => self.thermometer,
        }
    }

    /// A range as it is typed, with the way back to what is stored. Its ends are rounded inwards to three figures.
    pub(crate) fn typed(&self, bound: &Bound) -> TypedAs {
        let Some(stored) = EverydayUnit::from_symbol(bound.unit) else {
            return TypedAs {
                bound: *bound,
                units: None,
            };
        };
        let shown = self.shown(stored);
        if shown == stored {
            return TypedAs {
                bound: *bound,
                units: None,
            };
        }
        let end = |figure: f64, round: fn(f64) -> f64| {
            let figure = stored.convert(figure, shown);
            let step = step_of(figure, 3);
            round(figure / step) * step
        };
        let bound = Bound {
            unit: shown.symbol(),
            min: end(bound.min, f64::ceil),
            max: end(bound.max, f64::floor),
            ..*bound
        };
        TypedAs {
            bound,
            units: Some((stored, shown)),
        }
    }
}

/// A range in the unit it is typed in.
pub(crate) struct TypedAs {
    /// The range.
    pub bound: Bound,
    /// Stored and typed unit, where they differ.
    units: Option<(EverydayUnit, EverydayUnit)>,
}

impl TypedAs {
    /// A typed figure as it is stored.
    pub(crate) fn stored(&self, figure: f64) -> f64 {
        self.units
            .map_or(figure, |(stored, typed)| typed.convert(figure, stored))
    }

    /// A stored figure as it would be typed: to five figures where it was converted.
    pub(crate) fn typed(&self, figure: f64) -> f64 {
        self.units.map_or(figure, |(stored, typed)| {
            let figure = stored.convert(figure, typed);
            let step = step_of(figure, 5);
            (figure / step).round() * step
        })
    }
}

/// The step of the last of so many figures.
fn step_of(figure: f64, figures: i32) -> f64 {
    let first = figure.abs().max(1e-6).log10().floor();
    10f64.powf(first - f64::from(figures - 1))
}

/// The unit vacuum gauges are read in by region: inches of mercury where English-speaking trades use them and where the
/// region is not known, else millibars. From memory.
pub(crate) fn vacuum_unit(locale: &Locale) -> PressureUnit {
    let region = locale.id.region.as_ref().map_or("", |region| region.as_str());
    match region {
        "" | "US" | "CA" | "GB" | "IE" | "AU" | "NZ" | "ZA" | "IN" => PressureUnit::InHg,
        "XA" | "XB" => PressureUnit::InHg,
        _ => PressureUnit::Mbar,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn of(tag: &str) -> Units {
        Units::of(&tag.parse().unwrap())
    }

    /// Unicode CLDR 48, `supplemental/measurementData.json`.
    #[test]
    fn a_region_has_its_units() {
        assert_eq!(of("en-US"), Units::US);
        assert_eq!(of("es-US"), Units::US);
        assert_eq!(of("en-GB"), Units::UK);
        assert_eq!(of("de-DE"), Units::METRIC);
        assert_eq!(of("fr"), Units::METRIC);
        assert_eq!(of("es-PR").thermometer, Fahrenheit);
        assert_eq!(of("es-PR").odometer, Kilometre);
    }

    /// UTS 35, Unicode locale extension keys `ms` and `mu`.
    #[test]
    fn a_phone_that_says_its_measures_is_believed() {
        assert_eq!(of("en-US-u-ms-metric"), Units::METRIC);
        assert_eq!(of("de-DE-u-mu-fahrenhe").thermometer, Fahrenheit);
        assert_eq!(of("en-US-u-mu-celsius").thermometer, Celsius);
        assert_eq!(of("en-US-u-mu-celsius").odometer, Mile);
    }

    #[test]
    fn a_range_stays_inside_itself_and_figures_come_back() {
        for (_, units) in Units::SETS {
            for bound in [
                Bound::ALTITUDE,
                Bound::AIR,
                Bound::BORE,
                Bound::HOSE_LENGTH,
                Bound::MILLIMETRES,
            ] {
                let typed = units.typed(&bound);
                for end in [typed.bound.min, typed.bound.max] {
                    assert!(bound.check(typed.stored(end)).is_ok(), "{bound:?} {end}");
                }
                let middle = (typed.bound.min + typed.bound.max) / 2.0;
                let back = typed.typed(typed.stored(middle));
                assert!(
                    (back - middle).abs() <= middle.abs() * 1e-4,
                    "{bound:?} {middle} {back}"
                );
            }
        }
        let altitude = Units::US.typed(&Bound::ALTITUDE);
        assert_eq!(altitude.typed(altitude.stored(5280.0)), 5280.0);
    }

    #[test]
    fn what_an_instrument_can_not_have_changes_nothing() {
        let mut units = Units::METRIC;
        units.choose("rule", "in");
        assert_eq!(units.rule, Inch);
        units.choose("rule", "°F");
        units.choose("sundial", "in");
        assert_eq!(
            units,
            Units {
                rule: Inch,
                ..Units::METRIC
            }
        );
    }
}
