//! How strongly something shakes at each frequency.

use std::f64::consts::{SQRT_2, TAU};

/// Length of the stretches a recording is cut into, s: lines half a hertz apart, half of an idling engine's half order.
const STRETCH_S: f64 = 2.0;

/// Level of a shake around a frequency.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SpectrumLine {
    /// Frequency, Hz.
    pub hz: f64,
    /// Root mean square in the unit of the samples: a pure sine at this frequency reads its own.
    pub rms: f64,
}

/// Spectrum of a recording at `rate_hz` samples a second, up to `most_hz` or half the rate, in lines of equal distance
/// above zero. Its mean (gravity) is taken off. Empty for less than two seconds, or anything that is not finite.
///
/// # Source
/// Averaged over half overlapping stretches after P. D. Welch, IEEE Trans. Audio Electroacoust. AU-15 (1967) 70, under
/// the Hann window with its coherent gain of one half (F. J. Harris, Proc. IEEE 66 (1978) 51, table I); each line after
/// G. Goertzel, Amer. Math. Monthly 65 (1958) 34. Cited from memory.
#[must_use]
pub fn spectrum(rate_hz: f64, samples: &[f64], most_hz: f64) -> Vec<SpectrumLine> {
    let sound = rate_hz.is_finite() && rate_hz > 0.0 && samples.iter().all(|sample| sample.is_finite());
    let length = (STRETCH_S * rate_hz).round() as usize;
    if !sound || length < 4 || samples.len() < length {
        return Vec::new();
    }
    let stretches: Vec<Vec<f64>> = samples
        .windows(length)
        .step_by(length / 2)
        .map(windowed)
        .collect();
    let lines = (most_hz.min(rate_hz / 2.0) * STRETCH_S).floor().max(0.0) as usize;
    (1..=lines)
        .map(|line| {
            let power: f64 = stretches.iter().map(|stretch| power(stretch, line)).sum();
            SpectrumLine {
                hz: line as f64 * rate_hz / length as f64,
                // Half of the window's gain, then from amplitude to root mean square.
                rms: (power / stretches.len() as f64).sqrt() * 4.0 / (length as f64 * SQRT_2),
            }
        })
        .collect()
}

/// A stretch without its mean, under the Hann window.
fn windowed(stretch: &[f64]) -> Vec<f64> {
    let count = stretch.len() as f64;
    let mean = stretch.iter().sum::<f64>() / count;
    let weight = |at: usize| 0.5 - 0.5 * (TAU * at as f64 / count).cos();
    stretch
        .iter()
        .enumerate()
        .map(|(at, sample)| (sample - mean) * weight(at))
        .collect()
}

/// Square of the size of one line of the discrete Fourier transform.
fn power(stretch: &[f64], line: usize) -> f64 {
    let turn = 2.0 * (TAU * line as f64 / stretch.len() as f64).cos();
    let (last, before) = stretch.iter().fold((0.0, 0.0), |(last, before), sample| {
        (sample + turn * last - before, last)
    });
    last * last + before * before - turn * last * before
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A sine of a frequency and amplitude on top of gravity, eight seconds long.
    fn sine(rate_hz: f64, hz: f64, amplitude: f64) -> Vec<f64> {
        (0..(8.0 * rate_hz) as usize)
            .map(|at| 1_000.0 + amplitude * (TAU * hz * at as f64 / rate_hz).sin())
            .collect()
    }

    #[test]
    fn a_sine_reads_its_own_root_mean_square_at_its_own_frequency() {
        for rate in [100.0, 208.0, 400.0] {
            let lines = spectrum(rate, &sine(rate, 25.0, 40.0), 60.0);
            let top = lines
                .iter()
                .max_by(|a, b| a.rms.total_cmp(&b.rms))
                .expect("lines");
            assert!((top.hz - 25.0).abs() < 1e-9, "{top:?}");
            assert!((top.rms / (40.0 / SQRT_2) - 1.0).abs() < 1e-6, "{top:?}");
            let far = lines.iter().filter(|line| (line.hz - 25.0).abs() > 1.0);
            assert!(far.clone().count() > 50 && far.clone().all(|line| line.rms < 1e-6));
        }
    }

    #[test]
    fn between_two_lines_it_reads_at_most_a_sixth_too_low() {
        // Scalloping loss of the Hann window: 1.42 dB (Harris 1978, table I; from memory).
        let lines = spectrum(200.0, &sine(200.0, 25.25, 40.0), 60.0);
        let top = lines.iter().map(|line| line.rms).fold(0.0, f64::max);
        let loss = -20.0 * (top / (40.0 / SQRT_2)).log10();
        assert!((loss - 1.42).abs() < 0.02, "{loss}");
    }

    #[test]
    fn what_can_not_be_has_no_spectrum() {
        assert!(spectrum(100.0, &[0.0; 199], 60.0).is_empty());
        assert!(spectrum(f64::NAN, &[0.0; 500], 60.0).is_empty());
        assert!(spectrum(100.0, &[f64::INFINITY; 500], 60.0).is_empty());
        assert_eq!(
            spectrum(40.0, &[0.0; 500], 60.0).last().map(|line| line.hz),
            Some(20.0)
        );
    }
}
