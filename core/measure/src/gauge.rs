//! Vacuum gauges: what can be read on them and how far they can be wrong.

use serde::{Deserialize, Serialize};
use uom::si::f64::Pressure;

use crate::bounds::QuantityError;
use crate::measured::Measured;
use crate::pressure_unit::PressureUnit;

/// Accuracy grade of a dial gauge: its limit of error as a share of the span.
///
/// # Source
/// ASME B40.100; the quarters and grade A seen in a public text, the other grades from memory. The grades
/// of the former edition have other limits under the same letters.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize, Default)]
pub enum GaugeGrade {
    /// ±0.1 % of span.
    #[serde(rename = "4A")]
    G4A,
    /// ±0.25 % of span.
    #[serde(rename = "3A")]
    G3A,
    /// ±0.5 % of span.
    #[serde(rename = "2A")]
    G2A,
    /// ±1 % of span.
    #[serde(rename = "1A")]
    G1A,
    /// ±1 % of span in the middle half, ±2 % outside.
    A,
    /// ±2 % of span in the middle half, ±3 % outside; the usual hand-pump gauge.
    #[default]
    B,
    /// ±3 % of span in the middle half, ±4 % outside.
    C,
    /// ±5 % of span.
    D,
}

impl GaugeGrade {
    /// Limit of error as a share of the span: in the middle half of the scale, and in both outer quarters.
    #[must_use]
    pub fn limits(self) -> (f64, f64) {
        match self {
            Self::G4A => (0.001, 0.001),
            Self::G3A => (0.0025, 0.0025),
            Self::G2A => (0.005, 0.005),
            Self::G1A => (0.01, 0.01),
            Self::A => (0.01, 0.02),
            Self::B => (0.02, 0.03),
            Self::C => (0.03, 0.04),
            Self::D => (0.05, 0.05),
        }
    }
}

/// A dial gauge as the person describes it. All figures are in the gauge's own `unit`.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Gauge {
    /// Unit printed on the scale that is read.
    pub unit: PressureUnit,
    /// Last figure of the scale, `span > 0`; the scale starts at 0.
    pub span: f64,
    /// Distance between two marks.
    pub division: f64,
    /// Accuracy grade.
    pub grade: GaugeGrade,
    /// Step to which a person (or a display) reads: a half division by eye, the last digit of a display.
    pub read_to: f64,
}

impl Default for Gauge {
    /// 0–30 inHg, 1 inHg divisions, grade B, read to a half: what comes with most hand pumps (common
    /// practice, no source).
    fn default() -> Self {
        Self {
            unit: PressureUnit::InHg,
            span: 30.0,
            division: 1.0,
            grade: GaugeGrade::B,
            read_to: 0.5,
        }
    }
}

/// The eye's own scatter as a share of a division: parallax, width of the needle (common practice, no source).
const READER_SHARE: f64 = 0.05;

impl Gauge {
    /// The gauge itself when its figures can be those of a gauge.
    ///
    /// # Errors
    /// [`QuantityError::OutOfRange`] naming the figure unless `0 < division <= span`, `0 < read_to <= span`
    /// and the span is between 0.1 inHg and 1.2 bar.
    pub fn checked(self) -> Result<Self, QuantityError> {
        let unit = self.unit.symbol();
        let span_pa = self.unit.to_pressure(self.span).value;
        let least = self.unit.from_pressure(PressureUnit::InHg.to_pressure(0.1));
        let most = self.unit.from_pressure(PressureUnit::Bar.to_pressure(1.2));
        let refuse = |name, min, max, found| {
            Err(QuantityError::OutOfRange {
                name,
                unit,
                min,
                max,
                found,
            })
        };
        if !(338.0..=120_000.0 * (1.0 + 1e-9)).contains(&span_pa) {
            return refuse("gauge-span", least, most, self.span);
        }
        if !(self.division > 0.0 && self.division <= self.span) {
            return refuse("gauge-division", 0.0, self.span, self.division);
        }
        if !(self.read_to > 0.0 && self.read_to <= self.span) {
            return refuse("gauge-read-to", 0.0, self.span, self.read_to);
        }
        Ok(self)
    }

    /// One figure of the gauge's unit, in pascals.
    #[must_use]
    pub fn unit_pa(&self) -> f64 {
        self.unit.to_pressure(1.0).value
    }

    /// The whole scale as a pressure.
    #[must_use]
    pub fn full_scale(&self) -> Pressure {
        self.unit.to_pressure(self.span)
    }

    /// Standard uncertainty from reading in steps of `read_to`, gauge units: `read_to/√12`.
    ///
    /// # Source
    /// JCGM 100:2008, F.2.2.1.
    #[must_use]
    pub fn u_resolution(&self) -> f64 {
        Measured::resolved(0.0, self.read_to).u
    }

    /// Scatter of the reader before rounding, gauge units: a twentieth of a division, and at least three tenths and
    /// at most a half of the step read (common practice, no source).
    #[must_use]
    pub fn u_reader(&self) -> f64 {
        (READER_SHARE * self.division).clamp(0.3 * self.read_to, 0.5 * self.read_to)
    }

    /// Standard uncertainty of one reading without the gauge's own error, gauge units: resolution and reader.
    #[must_use]
    pub fn u_reading(&self) -> f64 {
        self.u_resolution().hypot(self.u_reader())
    }

    /// Limit of error by the grade at a reading `at`, gauge units, taken as ±.
    #[must_use]
    pub fn grade_limit(&self, at: f64) -> f64 {
        let (middle, outer) = self.grade.limits();
        let share = at / self.span;
        self.span
            * if (0.25..=0.75).contains(&share) {
                middle
            } else {
                outer
            }
    }

    /// Standard uncertainty from the grade at a reading `at`, gauge units: the limit over √3.
    #[must_use]
    pub fn u_grade(&self, at: f64) -> f64 {
        Measured::rectangular(0.0, self.grade_limit(at)).u
    }

    /// Standard uncertainty of a single reading `at`, gauge units: reading and grade together.
    #[must_use]
    pub fn u_single(&self, at: f64) -> f64 {
        self.u_reading().hypot(self.u_grade(at))
    }

    /// Standard uncertainty of the difference of two readings, gauge units. The gauge's error is common to
    /// both and cancels; reading twice does not.
    #[must_use]
    pub fn u_drop(&self) -> f64 {
        2f64.sqrt() * self.u_reading()
    }

    /// Error, taken as ±, that all readings share, gauge units: the grade's limit in the middle half.
    #[must_use]
    pub fn offset_limit(&self) -> f64 {
        self.span * self.grade.limits().0
    }

    /// Relative standard uncertainty of a drop from the slope of the scale: the error may run from one
    /// limit to the other along the whole scale, so the slope is good to about `limit/span`.
    #[must_use]
    pub fn relative_u_slope(&self) -> f64 {
        Measured::rectangular(0.0, self.grade.limits().0).u
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn grade_b_is_wider_in_the_outer_quarters() {
        let gauge = Gauge::default();
        assert!((gauge.grade_limit(5.0) - 0.9).abs() < 1e-12);
        assert!((gauge.grade_limit(18.6) - 0.6).abs() < 1e-12);
        assert!((gauge.grade_limit(25.0) - 0.9).abs() < 1e-12);
    }

    #[test]
    fn impossible_gauges_are_refused_by_name() {
        let named = |gauge: Gauge| match gauge.checked() {
            Err(QuantityError::OutOfRange { name, .. }) => name,
            other => panic!("{other:?}"),
        };
        assert!(Gauge::default().checked().is_ok());
        assert_eq!(
            named(Gauge {
                span: f64::NAN,
                ..Gauge::default()
            }),
            "gauge-span"
        );
        assert_eq!(
            named(Gauge {
                span: 400.0,
                ..Gauge::default()
            }),
            "gauge-span"
        );
        assert_eq!(
            named(Gauge {
                division: 0.0,
                ..Gauge::default()
            }),
            "gauge-division"
        );
        assert_eq!(
            named(Gauge {
                read_to: -1.0,
                ..Gauge::default()
            }),
            "gauge-read-to"
        );
    }
}
