//! A probability distribution of a positive quantity, on an even grid of its logarithm.

/// Probability mass on cells of equal width in the logarithm; within a cell it is spread evenly.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct LogGrid {
    /// Logarithm at the middle of the first cell.
    pub(crate) first: f64,
    /// Width of a cell.
    pub(crate) step: f64,
    /// Mass of each cell; sums to 1 after [`LogGrid::normalised`].
    pub(crate) mass: Vec<f64>,
}

impl LogGrid {
    /// The logarithm at the middle of cell `index`.
    pub(crate) fn ln_at(&self, index: usize) -> f64 {
        self.first + self.step * count(index)
    }

    /// The same shape with a total of 1; unchanged when there is no mass at all.
    pub(crate) fn normalised(mut self) -> Self {
        let total: f64 = self.mass.iter().sum();
        if total > 0.0 {
            self.mass.iter_mut().for_each(|m| *m /= total);
        }
        self
    }

    /// Probability that the quantity's logarithm is below `ln`.
    pub(crate) fn below(&self, ln: f64) -> f64 {
        let mut sum = 0.0;
        for (index, mass) in self.mass.iter().enumerate() {
            let share = (ln - self.ln_at(index)) / self.step + 0.5;
            if share <= 0.0 {
                break;
            }
            sum += mass * share.min(1.0);
        }
        sum.min(1.0)
    }

    /// The quantity (not its logarithm) below which it is with probability `p`.
    pub(crate) fn quantile(&self, p: f64) -> f64 {
        let mut sum = 0.0;
        for (index, mass) in self.mass.iter().enumerate() {
            if sum + mass >= p && *mass > 0.0 {
                return (self.ln_at(index) + self.step * ((p - sum) / mass - 0.5)).exp();
            }
            sum += mass;
        }
        (self.first + self.step * (count(self.mass.len()) - 0.5)).exp()
    }

    /// Density per unit of logarithm at `ln`, by straight lines between the cells' middles; the edge values
    /// go on outside to the left (where a likelihood is flat) and fall to zero on the right.
    pub(crate) fn density(&self, ln: f64) -> f64 {
        let place = (ln - self.first) / self.step;
        let at = |i: usize| self.mass.get(i).copied().unwrap_or(0.0) / self.step;
        if place <= 0.0 {
            return at(0);
        }
        // A cell number: positive and small; beyond the end `get` says nothing is there.
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let cell = place as usize;
        let part = place - place.floor();
        at(cell) * (1.0 - part) + at(cell + 1) * part
    }

    /// The distribution of `quantity·factor`, where the factor is log-normal around 1 with spread `sigma`.
    pub(crate) fn blurred(&self, sigma: f64) -> Self {
        let reach = (4.0 * sigma / self.step).ceil();
        if sigma < 0.25 * self.step || !reach.is_finite() {
            return self.clone();
        }
        // At most a few thousand cells: sigma is held below 1 and the step above 1e-4 by the inference.
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let reach = reach as usize;
        let kernel: Vec<f64> = (0..=2 * reach)
            .map(|k| {
                let z = (count(k) - count(reach)) * self.step / sigma;
                (-0.5 * z * z).exp()
            })
            .collect();
        let total: f64 = kernel.iter().sum();
        let mut mass = vec![0.0; self.mass.len() + 2 * reach];
        for (index, own) in self.mass.iter().enumerate().filter(|(_, m)| **m > 0.0) {
            for (target, weight) in mass.iter_mut().skip(index).zip(&kernel) {
                *target += own * weight / total;
            }
        }
        Self {
            first: self.first - count(reach) * self.step,
            step: self.step,
            mass,
        }
    }

    /// The distribution of `quantity·factor` for an exact factor.
    pub(crate) fn scaled(mut self, factor: f64) -> Self {
        self.first += factor.ln();
        self
    }
}

/// A cell number as a figure.
#[allow(clippy::cast_precision_loss)] // grids have far fewer than 2^52 cells
pub(crate) fn count(index: usize) -> f64 {
    index as f64
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;

    fn bell() -> LogGrid {
        let mass = (0..201)
            .map(|i| (-0.5 * ((f64::from(i) - 100.0) / 20.0_f64).powi(2)).exp())
            .collect();
        LogGrid {
            first: -1.0,
            step: 0.01,
            mass,
        }
        .normalised()
    }

    #[test]
    fn quantile_and_probability_are_each_other_s_inverse() {
        for p in [0.025, 0.3, 0.5, 0.95] {
            assert_relative_eq!(bell().below(bell().quantile(p).ln()), p, epsilon = 1e-9);
        }
    }

    #[test]
    fn blurring_adds_spreads_in_quadrature() {
        let wide = bell().blurred(0.15);
        let spread = (wide.quantile(0.841_344_7) / wide.quantile(0.158_655_3)).ln() / 2.0;
        assert_relative_eq!(spread, 0.25, epsilon = 2e-3);
        assert_relative_eq!(wide.mass.iter().sum::<f64>(), 1.0, epsilon = 1e-9);
    }
}
