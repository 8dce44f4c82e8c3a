//! Bayes' theorem on plain numbers.

/// ln of a sum, of terms given by their ln.
pub(crate) fn log_sum(terms: impl Iterator<Item = f64> + Clone) -> f64 {
    let top = terms.clone().fold(f64::NEG_INFINITY, f64::max);
    if top == f64::NEG_INFINITY {
        top
    } else {
        top + terms.map(|t| (t - top).exp()).sum::<f64>().ln()
    }
}

/// Probabilities from the ln of weights; they sum to 1.
pub(crate) fn normalised(ln_weights: &[f64]) -> Vec<f64> {
    let top = ln_weights.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let mut p: Vec<f64> = ln_weights.iter().map(|ln| (ln - top).exp()).collect();
    let total: f64 = p.iter().sum();
    p.iter_mut().for_each(|p| *p /= total);
    p
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_abs_diff_eq;

    /// Source: references i, an imperfect test: prior 0.30, sensitivity 0.90, specificity 0.95.
    #[test]
    fn an_imperfect_test_moves_the_odds_as_it_should() {
        let after = |fault: f64, sound: f64| normalised(&[(0.30 * fault).ln(), (0.70 * sound).ln()])[0];
        assert_abs_diff_eq!(after(0.90, 0.05), 0.885_246, epsilon = 1e-6);
        assert_abs_diff_eq!(after(0.10, 0.95), 0.043_165, epsilon = 1e-6);
    }

    /// Source: references i, three exclusive causes 0.5, 0.3, 0.2 and two independent findings.
    #[test]
    fn two_findings_about_three_causes_agree_with_the_worked_example() {
        let prior = [0.5f64, 0.3, 0.2];
        let (one, two) = ([0.9f64, 0.2, 0.5], [0.3f64, 0.7, 0.5]);
        let ln: Vec<f64> = (0..3).map(|i| (prior[i] * one[i] * two[i]).ln()).collect();
        for (p, expected) in normalised(&ln).into_iter().zip([0.594_714, 0.185_022, 0.220_264]) {
            assert_abs_diff_eq!(p, expected, epsilon = 1e-6);
        }
    }

    #[test]
    fn weights_far_below_what_a_number_can_hold_still_sum_to_one() {
        let p = normalised(&[-5_000.0, -5_001.0, -9_000.0]);
        assert_abs_diff_eq!(p.iter().sum::<f64>(), 1.0, epsilon = 1e-12);
        assert!(p[0] > p[1] && p[2] == 0.0);
    }
}
