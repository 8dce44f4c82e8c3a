//! Shares, means and their 95 % intervals.

/// A share with its 95 % interval (Wilson).
#[derive(Debug, Clone, Copy)]
pub struct Share {
    pub hits: usize,
    pub of: usize,
}

impl Share {
    pub fn of(each: impl IntoIterator<Item = bool>) -> Self {
        let (mut hits, mut of) = (0, 0);
        for hit in each {
            hits += usize::from(hit);
            of += 1;
        }
        Self { hits, of }
    }

    pub fn value(self) -> f64 {
        self.hits as f64 / self.of.max(1) as f64
    }

    pub fn interval(self) -> (f64, f64) {
        const Z: f64 = 1.959_964;
        let n = self.of.max(1) as f64;
        let p = self.value();
        let middle = (p + Z * Z / (2.0 * n)) / (1.0 + Z * Z / n);
        let half = Z / (1.0 + Z * Z / n) * (p * (1.0 - p) / n + Z * Z / (4.0 * n * n)).sqrt();
        ((middle - half).max(0.0), (middle + half).min(1.0))
    }
}

impl std::fmt::Display for Share {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let (low, high) = self.interval();
        write!(
            f,
            "{:5.1} % ({:.1} to {:.1}; {} of {})",
            100.0 * self.value(),
            100.0 * low,
            100.0 * high,
            self.hits,
            self.of
        )
    }
}

/// Minutes saved by one way against another on the same jobs, as a share of the other's, with its 95 % interval (the ratio's
/// standard error from the paired differences).
#[derive(Debug, Clone, Copy)]
pub struct Saving {
    pub ours: f64,
    pub theirs: f64,
    pub share: f64,
    pub half: f64,
    pub of: usize,
}

impl Saving {
    pub fn of(pairs: &[(f64, f64)]) -> Self {
        let n = pairs.len().max(1) as f64;
        let ours = pairs.iter().map(|p| p.0).sum::<f64>() / n;
        let theirs = pairs.iter().map(|p| p.1).sum::<f64>() / n;
        let ratio = ours / theirs;
        let variance = pairs.iter().map(|(a, b)| (a - ratio * b).powi(2)).sum::<f64>() / (n - 1.0).max(1.0);
        Self {
            ours,
            theirs,
            share: 1.0 - ratio,
            half: 1.96 * (variance / n).sqrt() / theirs,
            of: pairs.len(),
        }
    }
}

impl std::fmt::Display for Saving {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(
            f,
            "{:5.1} % (± {:.1}): {:.1} instead of {:.1} min, {} jobs",
            100.0 * self.share,
            100.0 * self.half,
            self.ours,
            self.theirs,
            self.of
        )
    }
}

/// Expected calibration error: how far said probabilities and frequencies are apart, over ten bins of equal width.
pub fn calibration_error(each: &[(f64, bool)]) -> f64 {
    bins(each)
        .iter()
        .map(|bin| bin.share * (bin.said - bin.happened).abs())
        .sum()
}

/// One bin of said probabilities.
#[derive(Debug, Clone, Copy)]
pub struct Bin {
    pub share: f64,
    pub count: usize,
    pub said: f64,
    pub happened: f64,
}

/// Ten bins of equal width, empty ones left out.
pub fn bins(each: &[(f64, bool)]) -> Vec<Bin> {
    let within = |n: usize| {
        let of: Vec<_> = each
            .iter()
            .filter(|(p, _)| ((p * 10.0) as usize).min(9) == n)
            .collect();
        let count = of.len();
        (count > 0).then(|| Bin {
            share: count as f64 / each.len() as f64,
            count,
            said: of.iter().map(|(p, _)| p).sum::<f64>() / count as f64,
            happened: of.iter().filter(|(_, hit)| *hit).count() as f64 / count as f64,
        })
    };
    (0..10).filter_map(within).collect()
}
