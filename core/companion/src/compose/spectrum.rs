//! Recorded vibration: how strong at each frequency, with vacuum and without.

use holdfast_diagnose::{Reading, Value};
use holdfast_measure::{SpectrumLine, spectrum};
use holdfast_report::{Scene, Spectrum, SpectrumSeries};

use crate::text::{Args, Texts};

/// Up to here, Hz: an idling engine shakes at its half order and its firing order and twice that. Common practice, no
/// source.
const MOST_HZ: f64 = 60.0;

/// The spectra of a test whose vibration was recorded. Nothing where it was felt, or recorded too shortly.
#[must_use]
pub(super) fn spectra(texts: &Texts, reading: &Reading) -> Option<Scene> {
    let [on, off] = ["on", "off"].map(|key| match reading.value(key) {
        Some(Value::Samples { hz, mg }) => spectrum(*hz, mg, MOST_HZ),
        _ => Vec::new(),
    });
    let args = Args::new()
        .text("test", texts.test_name(&reading.test))
        .text("on", peak(texts, &on)?)
        .text("off", peak(texts, &off)?);
    let series = |label: &str, lines: &[SpectrumLine]| SpectrumSeries {
        label: texts.say(label),
        lines: lines.iter().map(|line| (line.hz, line.rms)).collect(),
    };
    Some(holdfast_report::spectrum(&Spectrum {
        alt: texts.say_with("spectrum-alt", &args),
        unit: "mg".to_owned(),
        frequency_label: texts.say("spectrum-hz"),
        series: vec![series("spectrum-on", &on), series("spectrum-off", &off)],
        decimal: texts.decimal_mark(),
    }))
}

/// The strongest line in words.
fn peak(texts: &Texts, lines: &[SpectrumLine]) -> Option<String> {
    let strongest = lines.iter().max_by(|a, b| a.rms.total_cmp(&b.rms))?;
    let level = texts.with_unit(&texts.two_figures(strongest.rms), "mg");
    let hz = texts.with_unit(&texts.number(strongest.hz, 1), "Hz");
    Some(texts.say_with("spectrum-peak", &Args::new().text("level", level).text("hz", hz)))
}
