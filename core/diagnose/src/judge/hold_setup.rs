//! From a hold as it was read to what the physics needs: volume, tester, temperature, readings.

use holdfast_measure::{
    HoldData, HoldKind, HoldSetup, LeakForm, Measured, Pressure, PressureUnit, ThermodynamicTemperature,
    Time, limit_leak, predict_form, volume_from_strokes,
};
use uom::si::pressure::pascal;
use uom::si::thermodynamic_temperature::degree_celsius;
use uom::si::time::second;
use uom::si::volume::cubic_meter;

use super::quick_leak::quick_leak;
use crate::{
    Answer, Circuit, ComponentKind, HoldAnswer, HoldCourse, Reading, Situation, TestId, TestKind, hold_target,
};

/// Relative uncertainty of the tester's own volume. Source: common practice, no source.
const PUMP_REL_SD: f64 = 0.05;
/// Strokes and circuit must agree within this many standard deviations to be combined.
const VOLUME_AGREES: f64 = 2.5;
/// A bleed passes what its bore says within this share. Source: common practice, no source.
const BLEED_REL_SD: f64 = 0.25;

/// How the volume under test is known.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum VolumeFrom {
    /// From the circuit alone.
    Circuit,
    /// From the circuit and the strokes, which agree.
    Both,
    /// From the strokes, which say less than the circuit: something is shut before it.
    StrokesLess,
    /// From the circuit, as the strokes say more: a leak while pumping, or a volume not thought of.
    StrokesMore,
}

/// Volume under test, tester included, m³.
pub(crate) fn volume_under_test(
    circuit: &Circuit,
    situation: &Situation,
    test: &TestId,
    answer: &HoldAnswer,
) -> Option<(Measured, VolumeFrom)> {
    let pump = Measured::relative(situation.pump_volume().value, PUMP_REL_SD);
    let parts = match test.kind {
        TestKind::HandPump => Measured { value: 0.0, u: 0.0 },
        _ => circuit.volume(test)?,
    };
    let known = Measured {
        value: pump.value + parts.value,
        u: pump.u.hypot(parts.u),
    };
    let reached = match &answer.course {
        HoldCourse::Spots { start, .. } => Some(*start),
        HoldCourse::Trace { readings, .. } => readings.iter().flatten().next().copied(),
        HoldCourse::NeverReached { .. } => None,
    };
    let counted = reached
        .zip(answer.strokes.filter(|n| (1.0..=2_000.0).contains(n)))
        .and_then(|(start, n)| {
            let reached = answer.unit.to_pressure(start);
            // A count is whole; what a file gives in between is rounded.
            volume_from_strokes(situation.ambient(), reached, n.round() as u32, situation.pump())
        });
    Some(match counted {
        None => (known, VolumeFrom::Circuit),
        Some(counted) => {
            let apart = (counted.value.ln() - known.value.ln())
                / (counted.u / counted.value).hypot(known.u / known.value);
            if apart < -VOLUME_AGREES {
                (counted, VolumeFrom::StrokesLess)
            } else if apart > VOLUME_AGREES {
                (known, VolumeFrom::StrokesMore)
            } else {
                (weighted(known, counted), VolumeFrom::Both)
            }
        }
    })
}

/// Two values of the same thing, combined by their weights in the logarithm.
fn weighted(a: Measured, b: Measured) -> Measured {
    let (ra, rb) = (a.u / a.value, b.u / b.value);
    let (wa, wb) = (1.0 / (ra * ra), 1.0 / (rb * rb));
    let value = ((wa * a.value.ln() + wb * b.value.ln()) / (wa + wb)).exp();
    Measured {
        value,
        u: value / (wa + wb).sqrt(),
    }
}

/// The tester's own leak, std m³/s, from the last `hand-pump` test; `None`: not tested, or not to be known.
pub(crate) fn tester_leak(circuit: &Circuit, situation: &Situation, earlier: &[Reading]) -> Option<Measured> {
    let reading = earlier.iter().rev().find(|r| {
        r.test.kind == TestKind::HandPump
            && matches!(&r.answer, Answer::Hold(h) if !matches!(h.course, HoldCourse::NeverReached { .. }))
    })?;
    let seen = quick_leak(circuit, situation, None, reading)?;
    // Nothing proved: anything from none to the upper end, so nothing is taken off but the doubt.
    let proved = seen.value > 1.96 * seen.u;
    Some(if proved {
        seen
    } else {
        Measured {
            value: 0.0,
            u: seen.value / 1.96 + seen.u,
        }
    })
}

/// What the circuit lets in on purpose in this test, std m³/s.
pub(crate) fn bleed_leak(circuit: &Circuit, test: &TestId) -> Option<Measured> {
    let scope = circuit.scope(test)?;
    let flow: f64 = scope
        .parts
        .iter()
        .filter_map(|id| circuit.component(id))
        .filter(|c| c.kind == ComponentKind::Bleed)
        .filter_map(|c| c.bore_mm)
        .map(|mm| holdfast_measure::leak_of_hole(millimetres(mm)).std_m3_s())
        .sum();
    (flow > 0.0).then(|| Measured::relative(flow, BLEED_REL_SD))
}

pub(crate) fn millimetres(mm: f64) -> holdfast_measure::Length {
    holdfast_measure::Length::new::<uom::si::length::millimeter>(mm)
}

/// Everything about the test but its readings.
pub(crate) fn setup(
    situation: &Situation,
    reading: &Reading,
    answer: &HoldAnswer,
    volume: Measured,
    tester: Option<Measured>,
    seconds: f64,
) -> HoldSetup {
    let air = ThermodynamicTemperature::new::<degree_celsius>(situation.place.air_c);
    let gauge = holdfast_measure::Gauge {
        unit: answer.unit,
        ..gauge_in(situation, answer.unit)
    };
    let mut setup = HoldSetup::new(situation.ambient(), air, gauge, volume);
    setup.tester = tester;
    setup.thermal_k = thermal_k(situation, reading, seconds);
    setup.hand_timed = answer.hand_timed;
    if matches!(answer.course, HoldCourse::Trace { .. }) {
        setup.hand_timed = false;
    }
    setup
}

/// The gauge with its figures in another unit, where a dial with two scales was read on the other one.
fn gauge_in(situation: &Situation, unit: PressureUnit) -> holdfast_measure::Gauge {
    let gauge = situation.instruments.gauge;
    if gauge.unit == unit {
        return gauge;
    }
    let factor = unit.from_pressure(gauge.unit.to_pressure(1.0));
    holdfast_measure::Gauge {
        unit,
        span: gauge.span * factor,
        division: gauge.division * factor,
        read_to: gauge.read_to * factor,
        ..gauge
    }
}

/// How far trapped gas may warm or cool while the needle is watched, K (one standard deviation).
///
/// A part at rest drifts 0.002 K/s; within the first half hour after the engine stopped, or where the parts were said to
/// be hot, up to 0.02 K/s, fading. Source: common practice, no source.
fn thermal_k(situation: &Situation, reading: &Reading, seconds: f64) -> f64 {
    const AT_REST: f64 = 0.002;
    const HOT: f64 = 0.02;
    const FADES_MIN: f64 = 40.0;
    let near_engine = reading.test.kind != TestKind::HandPump;
    let rate = match (reading.state.hot, situation.engine.stopped_min) {
        _ if !near_engine => AT_REST,
        (Some(true), _) => HOT,
        (Some(false), _) => AT_REST,
        (None, Some(minutes)) => AT_REST + HOT * (-minutes.max(0.0) / FADES_MIN).exp(),
        (None, None) => AT_REST * 2.0,
    };
    (0.05_f64).hypot(rate * seconds)
}

/// The readings as vacuum and time. `None`: the target was never reached, or nothing but lost frames.
pub(crate) fn hold_data(answer: &HoldAnswer) -> Option<HoldData> {
    let vacuum = |figure: f64| answer.unit.to_pressure(figure);
    match &answer.course {
        HoldCourse::Spots { start, readings } => Some(HoldData {
            start: vacuum(*start),
            points: readings
                .iter()
                .map(|(s, figure)| (Time::new::<second>(*s), vacuum(*figure)))
                .collect(),
            kind: HoldKind::Spot,
        }),
        HoldCourse::Trace { hz, readings } => {
            let first = readings.iter().position(Option::is_some)?;
            let start = readings.get(first).copied().flatten()?;
            let points = readings
                .iter()
                .enumerate()
                .skip(first + 1)
                .filter_map(|(i, figure)| figure.map(|f| ((i - first) as f64 / hz, f)))
                .map(|(s, figure)| (Time::new::<second>(s), vacuum(figure)))
                .collect();
            Some(HoldData {
                start: vacuum(start),
                points,
                kind: HoldKind::Trace { hz: *hz },
            })
        }
        HoldCourse::NeverReached { .. } => None,
    }
}

/// Seconds from the start to the last reading.
pub(crate) fn seconds_of(answer: &HoldAnswer) -> f64 {
    hold_data(answer).map_or(0.0, |data| {
        data.points.iter().map(|(t, _)| t.value).fold(0.0, f64::max)
    })
}

/// The limit as a leak for this volume, std cm³/min.
pub(crate) fn limit_for(situation: &Situation, volume: Measured) -> holdfast_measure::LeakRate {
    limit_leak(
        holdfast_measure::Volume::new::<cubic_meter>(volume.value),
        situation.ambient(),
        limit_drop(situation),
        situation.limit.seconds,
        hold_target(situation).vacuum,
    )
}

pub(crate) fn limit_drop(situation: &Situation) -> Pressure {
    Pressure::new::<pascal>(situation.limit.drop_kpa * 1000.0)
}

/// Vacuum at some moments along the fall through a known leak, kPa.
pub(crate) fn fall(
    setup: &HoldSetup,
    form: LeakForm,
    start: Pressure,
    leak: holdfast_measure::LeakRate,
    seconds: f64,
) -> f64 {
    (start - predict_form(setup, form, start, leak, seconds)).value / 1000.0
}
