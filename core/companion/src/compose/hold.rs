//! The vacuum hold in pictures: the gauge with its target, the fall of the needle.

use holdfast_diagnose::{HoldResult, Reading, Situation, TestResult, hold_target};
use holdfast_measure::{Pressure, PressureUnit, si::pressure::kilopascal};
use holdfast_report::{Dial, FitPoint, HoldChart, HoldSeries, LimitLine, Scene};

use super::mark::state_of;
use crate::job::JobView;
use crate::text::{Args, Texts};

/// The person's own gauge with the band to pump to and the needle at `reading`, in the gauge's unit.
#[must_use]
pub(crate) fn dial(texts: &Texts, situation: &Situation, unit: PressureUnit, reading: f64) -> Dial {
    let gauge = &situation.instruments.gauge;
    let in_unit = |figure: f64| unit.from_pressure(gauge.unit.to_pressure(figure));
    let target = unit.from_pressure(hold_target(situation).vacuum);
    let reach = in_unit(gauge.read_to).max(target * TARGET_REACH);
    let shown = texts.with_unit(&texts.number(reading, unit.decimals()), unit.symbol());
    Dial {
        alt: texts.say_with(
            "dial-alt",
            &Args::new()
                .text("reading", shown.as_str())
                .text("target", texts.vacuum_in(unit.to_pressure(target), unit)),
        ),
        unit: texts.unit_name(unit.symbol()),
        span: in_unit(gauge.span),
        division: in_unit(gauge.division),
        reading,
        doubt: in_unit(gauge.read_to) / 2.0,
        target: Some((target, target + reach)),
        target_label: texts.say("dial-target"),
        reading_text: shown,
        decimal: texts.decimal_mark(),
    }
}

/// How far past the target the band reaches, as a share of it: a stroke too many does no harm.
pub(super) const TARGET_REACH: f64 = 0.05;

/// The fall of the needle in one hold or several, with the limit of the first. Of several, one that did not build vacuum
/// is the level it reached. Nothing where no hold has two readings.
#[must_use]
pub(crate) fn hold_chart(
    texts: &Texts,
    job: &JobView,
    holds: &[(Option<&str>, &Reading, &TestResult)],
) -> Option<Scene> {
    let unit = texts.unit();
    let mut series = Vec::new();
    let mut limit = None;
    let fell = |hold: &&HoldResult| hold.points.len() > 1;
    if !holds
        .iter()
        .any(|(_, _, result)| result.hold.as_ref().is_some_and(|hold| fell(&hold)))
    {
        return None;
    }
    for (label, _, result) in holds {
        let Some(hold) = &result.hold else { continue };
        if !fell(&hold) {
            series.push(HoldSeries {
                label: label.unwrap_or_default().to_owned(),
                state: Some(state_of(result.outcome)),
                points: in_unit(&[(0.0, hold.start_kpa)], unit),
                fit: Vec::new(),
            });
            continue;
        }
        if limit.is_none() && !hold.limit_line.is_empty() {
            limit = Some(LimitLine {
                label: texts.say("chart-limit"),
                points: in_unit(&hold.limit_line, unit),
            });
        }
        series.push(HoldSeries {
            label: label.unwrap_or_default().to_owned(),
            state: Some(state_of(result.outcome)),
            points: in_unit(&hold.points, unit),
            fit: hold.fit.iter().map(|point| fit_point(point, unit)).collect(),
        });
    }
    Some(holdfast_report::hold_chart(&HoldChart {
        alt: chart_alt(texts, job, holds),
        unit: texts.unit_name(unit.symbol()),
        time_label: texts.say("chart-seconds"),
        series,
        limit,
        decimal: texts.decimal_mark(),
    }))
}

/// What a chart shows, in words.
fn chart_alt(texts: &Texts, job: &JobView, holds: &[(Option<&str>, &Reading, &TestResult)]) -> String {
    let fell = |(_, _, result): &(Option<&str>, &Reading, &TestResult)| {
        let hold = result.hold.as_ref();
        hold.map(|hold| fall(texts, hold)).unwrap_or_default()
    };
    let (before, last) = match holds {
        [before, last] => (Some(before), Some(last)),
        others => (None, others.last()),
    };
    let Some(last) = last else { return String::new() };
    let limit = Pressure::new::<kilopascal>(job.situation.limit.drop_kpa);
    let args = Args::new()
        .text("test", texts.test_name(&last.1.test))
        .text("fall", fell(last))
        .text("limit", texts.vacuum(limit))
        .text("seconds", texts.seconds(job.situation.limit.seconds));
    match before {
        Some(before) => texts.say_with("chart-alt-compared", &args.text("before", fell(before))),
        None => texts.say_with("chart-alt", &args),
    }
}

/// The test that condemned a part and the same test after its repair, on one chart.
#[must_use]
pub(crate) fn before_and_after(
    texts: &Texts,
    job: &JobView,
    before: (&Reading, &TestResult),
    after: (&Reading, &TestResult),
) -> Option<Scene> {
    let words = (texts.say("chart-before"), texts.say("chart-after"));
    hold_chart(
        texts,
        job,
        &[
            (Some(&words.0), before.0, before.1),
            (Some(&words.1), after.0, after.1),
        ],
    )
}

/// Whether a hold's readings can't be used, so that it says nothing.
#[must_use]
pub(super) fn is_unusable(hold: &HoldResult) -> bool {
    hold.leak.is_none()
}

/// "lost 6.5 inHg in 20 s", or that it stood still, or how far it got, or that it can't be used.
#[must_use]
pub(super) fn fall(texts: &Texts, hold: &HoldResult) -> String {
    let pressure = |kpa: f64| texts.vacuum(Pressure::new::<kilopascal>(kpa));
    if is_unusable(hold) {
        let start = Args::new().text("start", pressure(hold.start_kpa));
        return texts.say_with("fall-unusable", &start);
    }
    if hold.points.len() < 2 {
        let args = Args::new()
            .text("highest", pressure(hold.start_kpa))
            .text("target", pressure(hold.target_kpa));
        return texts.say_with("fall-short", &args);
    }
    let args = Args::new()
        .text("drop", pressure(hold.drop_kpa.abs()))
        .text("seconds", texts.seconds(hold.seconds))
        .text("start", pressure(hold.start_kpa));
    let least = texts
        .unit()
        .from_pressure(Pressure::new::<kilopascal>(hold.drop_kpa));
    let key = if least.abs() < 0.5 * 10f64.powi(-(i32::try_from(texts.unit().decimals()).unwrap_or(0))) {
        "fall-none"
    } else if hold.drop_kpa < 0.0 {
        "fall-gained"
    } else {
        "fall-lost"
    };
    texts.say_with(key, &args)
}

fn in_unit(points: &[(f64, f64)], unit: PressureUnit) -> Vec<(f64, f64)> {
    points
        .iter()
        .map(|(seconds, kpa)| (*seconds, figure(*kpa, unit)))
        .collect()
}

fn fit_point(point: &holdfast_diagnose::FitPoint, unit: PressureUnit) -> FitPoint {
    FitPoint {
        seconds: point.s,
        value: figure(point.kpa, unit),
        low: figure(point.low_kpa, unit),
        high: figure(point.high_kpa, unit),
    }
}

fn figure(kpa: f64, unit: PressureUnit) -> f64 {
    unit.from_pressure(Pressure::new::<kilopascal>(kpa))
}
