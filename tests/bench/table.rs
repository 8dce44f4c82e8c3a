//! The figures as a table.

use std::time::Duration;

use statrs::distribution::{ContinuousCDF, StudentsT};

/// A figure, with what is wanted of it.
pub struct Row {
    what: String,
    want: String,
    got: String,
}

impl Row {
    /// A figure in ms that something is wanted of.
    pub fn wanted(what: &str, want: &str, ms: f64) -> Self {
        Self {
            what: what.to_owned(),
            want: want.to_owned(),
            got: format!("{ms:.2} ms"),
        }
    }

    /// A figure in ms that stands beside it.
    pub fn shown(what: impl Into<String>, ms: f64) -> Self {
        Self {
            what: what.into(),
            want: String::new(),
            got: format!("{ms:.2} ms"),
        }
    }

    /// How many times as long as a peer, with the 95 % interval of the mean over pairs.
    pub fn ratio(what: &str, want: &str, pairs: &[(Duration, Duration)]) -> Self {
        let (middle, low, high) = paired_ratio(pairs);
        Self {
            what: what.to_owned(),
            want: want.to_owned(),
            got: format!("{middle:.2} ({low:.2} to {high:.2})"),
        }
    }

    /// How large something is.
    pub fn megabytes(what: &str, want: &str, bytes: usize) -> Self {
        Self {
            what: what.to_owned(),
            want: want.to_owned(),
            got: format!("{:.2} MB", bytes as f64 / 1e6),
        }
    }

    /// What was not measured, and why.
    pub fn skipped(what: &str, why: &str) -> Self {
        Self {
            what: what.to_owned(),
            want: "skipped".to_owned(),
            got: why.to_owned(),
        }
    }
}

/// Mean and 95 % interval of the ratio of ours to theirs: Student's t on the logarithms of the pairs' ratios.
fn paired_ratio(pairs: &[(Duration, Duration)]) -> (f64, f64, f64) {
    let logs: Vec<f64> = pairs
        .iter()
        .map(|(ours, theirs)| (ours.as_secs_f64() / theirs.as_secs_f64()).ln())
        .collect();
    let count = logs.len() as f64;
    let mean = logs.iter().sum::<f64>() / count;
    let variance = logs.iter().map(|log| (log - mean).powi(2)).sum::<f64>() / (count - 1.0);
    let t = StudentsT::new(0.0, 1.0, count - 1.0)
        .expect("more than one pair")
        .inverse_cdf(0.975);
    let half = t * (variance / count).sqrt();
    (mean.exp(), (mean - half).exp(), (mean + half).exp())
}

/// Prints the rows.
pub fn print(rows: &[Row]) {
    println!("{:<60} {:>14} {:>22}", "", "want", "got");
    for Row { what, want, got } in rows {
        println!("{what:<60} {want:>14} {got:>22}");
    }
}
