//! Lengths and temperatures as people read them off an odometer, a rule, a thermometer or a map.

use serde::{Deserialize, Serialize};
use uom::si::f64::{Length, ThermodynamicTemperature};
use uom::si::length::{foot, inch, kilometer, meter, mile, millimeter};
use uom::si::thermodynamic_temperature::{degree_celsius, degree_fahrenheit, kelvin};

/// A unit of length or temperature that some instrument of daily life shows.
///
/// # Source
/// NIST Special Publication 811, appendix B.8, by way of the `uom` library.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum EverydayUnit {
    /// Kilometre.
    #[serde(rename = "km")]
    Kilometre,
    /// Mile, 1609.344 m.
    #[serde(rename = "mi")]
    Mile,
    /// Metre.
    #[serde(rename = "m")]
    Metre,
    /// Foot, 0.3048 m.
    #[serde(rename = "ft")]
    Foot,
    /// Millimetre.
    #[serde(rename = "mm")]
    Millimetre,
    /// Inch, 25.4 mm.
    #[serde(rename = "in")]
    Inch,
    /// Degree Celsius.
    #[serde(rename = "°C")]
    Celsius,
    /// Degree Fahrenheit.
    #[serde(rename = "°F")]
    Fahrenheit,
}

impl EverydayUnit {
    /// Every unit.
    pub const ALL: [Self; 8] = [
        Self::Kilometre,
        Self::Mile,
        Self::Metre,
        Self::Foot,
        Self::Millimetre,
        Self::Inch,
        Self::Celsius,
        Self::Fahrenheit,
    ];

    /// The symbol, the same as in stored data.
    #[must_use]
    pub fn symbol(self) -> &'static str {
        match self {
            Self::Kilometre => "km",
            Self::Mile => "mi",
            Self::Metre => "m",
            Self::Foot => "ft",
            Self::Millimetre => "mm",
            Self::Inch => "in",
            Self::Celsius => "°C",
            Self::Fahrenheit => "°F",
        }
    }

    /// The unit of a symbol.
    #[must_use]
    pub fn from_symbol(symbol: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|unit| unit.symbol() == symbol)
    }

    /// A figure in this unit as one in another; not a number between a length and a temperature.
    ///
    /// ```
    /// use holdfast_measure::EverydayUnit;
    /// assert_eq!(EverydayUnit::Inch.convert(2.0, EverydayUnit::Millimetre), 50.8);
    /// ```
    #[must_use]
    pub fn convert(self, figure: f64, to: Self) -> f64 {
        if self == to {
            return figure;
        }
        match (self.is_temperature(), to.is_temperature()) {
            (true, true) => to.of_kelvin(self.to_kelvin(figure)),
            (false, false) => to.of_metres(self.to_metres(figure)),
            _ => f64::NAN,
        }
    }

    fn is_temperature(self) -> bool {
        matches!(self, Self::Celsius | Self::Fahrenheit)
    }

    fn to_kelvin(self, figure: f64) -> f64 {
        let temperature = match self {
            Self::Fahrenheit => ThermodynamicTemperature::new::<degree_fahrenheit>(figure),
            _ => ThermodynamicTemperature::new::<degree_celsius>(figure),
        };
        temperature.get::<kelvin>()
    }

    fn of_kelvin(self, figure: f64) -> f64 {
        let temperature = ThermodynamicTemperature::new::<kelvin>(figure);
        match self {
            Self::Fahrenheit => temperature.get::<degree_fahrenheit>(),
            _ => temperature.get::<degree_celsius>(),
        }
    }

    fn to_metres(self, figure: f64) -> f64 {
        let length = match self {
            Self::Kilometre => Length::new::<kilometer>(figure),
            Self::Mile => Length::new::<mile>(figure),
            Self::Foot => Length::new::<foot>(figure),
            Self::Millimetre => Length::new::<millimeter>(figure),
            Self::Inch => Length::new::<inch>(figure),
            _ => Length::new::<meter>(figure),
        };
        length.get::<meter>()
    }

    fn of_metres(self, figure: f64) -> f64 {
        let length = Length::new::<meter>(figure);
        match self {
            Self::Kilometre => length.get::<kilometer>(),
            Self::Mile => length.get::<mile>(),
            Self::Foot => length.get::<foot>(),
            Self::Millimetre => length.get::<millimeter>(),
            Self::Inch => length.get::<inch>(),
            _ => length.get::<meter>(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_symbol_names_its_unit() {
        for unit in EverydayUnit::ALL {
            assert_eq!(EverydayUnit::from_symbol(unit.symbol()), Some(unit));
        }
        assert_eq!(EverydayUnit::from_symbol("furlong"), None);
    }

    #[test]
    fn a_figure_comes_back_and_a_length_is_no_temperature() {
        for (from, to) in [
            (EverydayUnit::Foot, EverydayUnit::Metre),
            (EverydayUnit::Mile, EverydayUnit::Kilometre),
            (EverydayUnit::Fahrenheit, EverydayUnit::Celsius),
        ] {
            let there = from.convert(73.5, to);
            assert!((to.convert(there, from) - 73.5).abs() < 1e-9, "{from:?}");
        }
        assert!(EverydayUnit::Foot.convert(1.0, EverydayUnit::Celsius).is_nan());
    }
}
