//! A value with its standard uncertainty.

use std::ops::{Add, Div, Mul, Neg, Sub};

use serde::{Deserialize, Serialize};

/// A value and its standard uncertainty `u`, both in the same SI unit.
///
/// Arithmetic propagates by the first-order law for *independent* inputs. What two readings share (the
/// offset of one gauge) must be taken out by the caller before subtracting, or `u` comes out too large.
/// Not modelled: correlation, second-order terms, degrees of freedom.
///
/// # Source
/// JCGM 100:2008, 5.1.2 equation (10).
///
/// ```
/// use holdfast_measure::Measured;
/// let drop = Measured::new(20.0, 0.3) - Measured::new(18.0, 0.4);
/// assert_eq!((drop.value, drop.u), (2.0, 0.5));
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Measured {
    /// Best value, SI unit.
    pub value: f64,
    /// Standard uncertainty, the same unit, not negative.
    pub u: f64,
}

impl Measured {
    /// A value with its standard uncertainty; the sign of `u` is dropped.
    #[must_use]
    pub fn new(value: f64, u: f64) -> Self {
        Self { value, u: u.abs() }
    }

    /// A value that is exact by definition.
    #[must_use]
    pub fn exact(value: f64) -> Self {
        Self { value, u: 0.0 }
    }

    /// A value known to lie within ±`half_width` and nowhere more likely: `u = half_width/√3`.
    ///
    /// # Source
    /// JCGM 100:2008, 4.3.7 equation (7).
    #[must_use]
    pub fn rectangular(value: f64, half_width: f64) -> Self {
        Self::new(value, half_width / 3f64.sqrt())
    }

    /// A value shown in steps of `step`: `u = step/√12`.
    ///
    /// # Source
    /// JCGM 100:2008, F.2.2.1.
    #[must_use]
    pub fn resolved(value: f64, step: f64) -> Self {
        Self::rectangular(value, step / 2.0)
    }

    /// The value with a standard uncertainty that is a share of it.
    #[must_use]
    pub fn relative(value: f64, share: f64) -> Self {
        Self::new(value, value * share)
    }

    /// `u` as a share of the value; infinite at zero.
    #[must_use]
    pub fn relative_u(self) -> f64 {
        if self.u == 0.0 {
            0.0
        } else {
            self.u / self.value.abs()
        }
    }

    /// The expanded uncertainty `k·u`.
    #[must_use]
    pub fn expanded(self, k: f64) -> f64 {
        k * self.u
    }

    /// Both figures times a constant.
    #[must_use]
    pub fn scale(self, factor: f64) -> Self {
        Self::new(self.value * factor, self.u * factor)
    }

    /// The natural logarithm; `u` becomes the relative one. Not a number unless `value > 0`.
    #[must_use]
    pub fn ln(self) -> Self {
        Self::new(self.value.ln(), self.relative_u())
    }

    /// The value raised to an exact power.
    #[must_use]
    pub fn powf(self, exponent: f64) -> Self {
        Self::new(
            self.value.powf(exponent),
            exponent * self.value.powf(exponent - 1.0) * self.u,
        )
    }

    /// The value with one more independent standard uncertainty added in quadrature.
    #[must_use]
    pub fn with_u(self, u: f64) -> Self {
        Self::new(self.value, self.u.hypot(u))
    }
}

impl Add for Measured {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self::new(self.value + other.value, self.u.hypot(other.u))
    }
}

impl Sub for Measured {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self::new(self.value - other.value, self.u.hypot(other.u))
    }
}

impl Mul for Measured {
    type Output = Self;
    fn mul(self, other: Self) -> Self {
        Self::new(
            self.value * other.value,
            (self.u * other.value).hypot(other.u * self.value),
        )
    }
}

impl Div for Measured {
    type Output = Self;
    fn div(self, other: Self) -> Self {
        let quotient = self.value / other.value;
        Self::new(
            quotient,
            (self.u / other.value).hypot(other.u * quotient / other.value),
        )
    }
}

impl Neg for Measured {
    type Output = Self;
    fn neg(self) -> Self {
        Self::new(-self.value, self.u)
    }
}

impl std::iter::Sum for Measured {
    fn sum<I: Iterator<Item = Self>>(terms: I) -> Self {
        terms.fold(Self::exact(0.0), |sum, term| sum + term)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;

    #[test]
    fn relative_uncertainties_add_in_quadrature_in_products_and_quotients() {
        let a = Measured::relative(3.0, 0.03);
        let b = Measured::relative(2.0, 0.04);
        assert_relative_eq!((a * b).relative_u(), 0.05, epsilon = 1e-12);
        assert_relative_eq!((a / b).relative_u(), 0.05, epsilon = 1e-12);
        assert_relative_eq!(a.powf(2.0).relative_u(), 0.06, epsilon = 1e-12);
        assert_relative_eq!(a.ln().u, 0.03, epsilon = 1e-12);
    }

    #[test]
    fn an_exact_value_adds_no_uncertainty() {
        let sum: Measured = [
            Measured::new(1.0, 0.3),
            Measured::exact(5.0),
            Measured::new(2.0, 0.4),
        ]
        .into_iter()
        .sum();
        assert_eq!((sum.value, sum.u), (8.0, 0.5));
        assert_eq!((-sum).u, 0.5);
        assert_eq!(Measured::exact(0.0).relative_u(), 0.0);
    }
}
