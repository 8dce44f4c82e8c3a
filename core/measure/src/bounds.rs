//! The one declaration of every range that a field accepts.

use thiserror::Error;

use crate::number::{NumberError, parse_number};

/// Why a figure is not accepted for a quantity.
#[derive(Debug, Clone, Copy, PartialEq, Error)]
pub enum QuantityError {
    /// The text is no figure.
    #[error(transparent)]
    Number(#[from] NumberError),
    /// The figure is outside `min..=max`.
    #[error("{name} must be from {min} to {max} {unit}")]
    OutOfRange {
        /// The bound's name, a key for texts.
        name: &'static str,
        /// Symbol of the unit of the three figures; empty for counts.
        unit: &'static str,
        /// Least figure accepted.
        min: f64,
        /// Greatest figure accepted.
        max: f64,
        /// What was given.
        found: f64,
    },
}

/// A range with its name and unit; field hints and error messages both read it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bound {
    /// A key for texts, not a sentence.
    pub name: &'static str,
    /// Symbol of the unit in which `min` and `max` are; empty for counts.
    pub unit: &'static str,
    /// Least figure accepted.
    pub min: f64,
    /// Greatest figure accepted.
    pub max: f64,
}

impl Bound {
    const fn new(name: &'static str, unit: &'static str, min: f64, max: f64) -> Self {
        Self { name, unit, min, max }
    }

    /// `figure` itself when `min <= figure <= max`.
    ///
    /// # Errors
    /// [`QuantityError::OutOfRange`] otherwise; a NaN is always out of range.
    pub fn check(&self, figure: f64) -> Result<f64, QuantityError> {
        if figure >= self.min && figure <= self.max {
            Ok(figure)
        } else {
            Err(QuantityError::OutOfRange {
                name: self.name,
                unit: self.unit,
                min: self.min,
                max: self.max,
                found: figure,
            })
        }
    }

    /// The figure typed in `text`, when it is within the range.
    ///
    /// # Errors
    /// [`QuantityError::Number`] when `text` is no figure, else as [`check`](Self::check).
    pub fn parse(&self, text: &str) -> Result<f64, QuantityError> {
        self.check(parse_number(text)?)
    }

    /// Altitude above sea level; the lowest and highest roads with a margin.
    pub const ALTITUDE: Self = Self::new("altitude", "m", -450.0, 6000.0);
    /// Ambient absolute pressure; 6,000 m in bad weather to the lowest road in good.
    pub const AMBIENT: Self = Self::new("ambient", "kPa", 45.0, 112.0);
    /// Pressure reduced to sea level as weather services give it.
    pub const SEA_LEVEL_PRESSURE: Self = Self::new("sea-level-pressure", "hPa", 870.0, 1090.0);
    /// Air temperature where the test is made.
    pub const AIR: Self = Self::new("air", "°C", -40.0, 60.0);
    /// Inner volume of a vacuum chamber.
    pub const CHAMBER: Self = Self::new("chamber", "cm³", 1.0, 20_000.0);
    /// How well a chamber's volume is known.
    pub const CHAMBER_DOUBT: Self = Self::new("chamber-doubt", "%", 0.0, 100.0);
    /// Length of a hose.
    pub const HOSE_LENGTH: Self = Self::new("hose-length", "m", 0.01, 20.0);
    /// Inner diameter of a hose.
    pub const BORE: Self = Self::new("bore", "mm", 0.5, 25.0);
    /// Volume of the tester: hand pump, gauge and adapter.
    pub const PUMP_VOLUME: Self = Self::new("pump-volume", "cm³", 1.0, 500.0);
    /// Volume that one stroke of the hand pump takes.
    pub const STROKE: Self = Self::new("stroke", "cm³", 1.0, 200.0);
    /// Count of strokes.
    pub const STROKES: Self = Self::new("strokes", "", 1.0, 2000.0);
    /// Time of a hold test.
    pub const HOLD_TIME: Self = Self::new("hold-time", "s", 0.5, 7200.0);
    /// Any other time that a person takes with a watch.
    pub const SECONDS: Self = Self::new("seconds", "s", 0.0, 3600.0);
    /// The drop allowed in a hold test.
    pub const LIMIT_DROP: Self = Self::new("limit-drop", "kPa", 0.1, 50.0);
    /// A direct voltage in a 12 or 24 V vehicle; a reversed lead reads negative.
    pub const VOLTS: Self = Self::new("volts", "V", -40.0, 40.0);
    /// A resistance on a handheld meter.
    pub const OHMS: Self = Self::new("ohms", "Ω", 0.0, 60e6);
    /// The rated resistance of a coil.
    pub const COIL: Self = Self::new("coil", "Ω", 1.0, 500.0);
    /// A fuse's rating.
    pub const FUSE: Self = Self::new("fuse", "A", 1.0, 100.0);
    /// Cross-section of a wire.
    pub const WIRE_AREA: Self = Self::new("wire-area", "mm²", 0.05, 120.0);
    /// Engine speed.
    pub const RPM: Self = Self::new("rpm", "1/min", 0.0, 9000.0);
    /// A small distance: how much a mount sags or moves.
    pub const MILLIMETRES: Self = Self::new("millimetres", "mm", 0.0, 100.0);
    /// A felt vibration.
    pub const SCALE: Self = Self::new("scale", "", 0.0, 3.0);
    /// A count of anything.
    pub const COUNT: Self = Self::new("count", "", 0.0, 10_000.0);
    /// The part of a meter's accuracy that goes with the reading.
    pub const METER_PERCENT: Self = Self::new("meter-percent", "%", 0.0, 10.0);
    /// The part of a meter's accuracy in counts of the last digit.
    pub const METER_COUNTS: Self = Self::new("meter-counts", "", 0.0, 50.0);
    /// The end of a gauge's scale, in the gauge's own unit; see also [`Gauge`](crate::Gauge).
    pub const GAUGE_SPAN: Self = Self::new("gauge-span", "", 0.1, 1100.0);
    /// A probability level that a person asks for.
    pub const CONFIDENCE: Self = Self::new("confidence", "", 0.5, 0.999);
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn edges_belong_to_the_range_and_nan_never_does() {
        assert_eq!(Bound::AIR.check(-40.0), Ok(-40.0));
        assert_eq!(Bound::AIR.check(60.0), Ok(60.0));
        assert!(Bound::AIR.check(60.001).is_err());
        assert!(Bound::AIR.check(f64::NAN).is_err());
    }

    #[test]
    fn typed_text_is_read_and_checked() {
        assert_eq!(Bound::VOLTS.parse("12,4"), Ok(12.4));
        assert!(matches!(
            Bound::VOLTS.parse("124"),
            Err(QuantityError::OutOfRange { max: 40.0, .. })
        ));
        assert_eq!(
            Bound::VOLTS.parse("abc"),
            Err(QuantityError::Number(NumberError::NotANumber))
        );
    }
}
