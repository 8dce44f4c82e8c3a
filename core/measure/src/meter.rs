//! Multimeters: accuracy as ±(% of reading + counts) and the load they are.

use serde::{Deserialize, Serialize};

use crate::measured::Measured;

/// A digital multimeter on one range.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Meter {
    /// Per cent of the reading, `>= 0`.
    pub percent: f64,
    /// Counts of the last digit, `>= 0`.
    pub counts: f64,
    /// Decimals shown on the range, so that one count is `10^-digits` of the unit read.
    pub digits: u8,
    /// Input resistance on the voltage ranges, ohms.
    pub input_ohm: f64,
}

impl Default for Meter {
    /// ±(0.5 % + 2 counts), hundredths shown, 10 MΩ: a common handheld (common practice, no source).
    fn default() -> Self {
        Self {
            percent: 0.5,
            counts: 2.0,
            digits: 2,
            input_ohm: 10e6,
        }
    }
}

impl Meter {
    /// One count of the last digit, in the unit read.
    #[must_use]
    pub fn count(&self) -> f64 {
        10f64.powi(-i32::from(self.digits))
    }

    /// Limit of error at `reading`, taken as ±, in the unit read.
    #[must_use]
    pub fn limit(&self, reading: f64) -> f64 {
        self.percent / 100.0 * reading.abs() + self.counts * self.count()
    }

    /// Standard uncertainty at `reading`: the limit taken as rectangular.
    ///
    /// # Source
    /// JCGM 100:2008, 4.3.7.
    #[must_use]
    pub fn u(&self, reading: f64) -> f64 {
        Measured::rectangular(reading, self.limit(reading)).u
    }

    /// The reading with its standard uncertainty.
    #[must_use]
    pub fn measured(&self, reading: f64) -> Measured {
        Measured::new(reading, self.u(reading))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn counts_matter_near_zero_and_per_cent_far_from_it() {
        let meter = Meter::default();
        assert!((meter.limit(0.0) - 0.02).abs() < 1e-12);
        assert!((meter.limit(-12.0) - meter.limit(12.0)).abs() < 1e-12);
        assert!((meter.limit(12.0) - 0.08).abs() < 1e-12);
    }
}
