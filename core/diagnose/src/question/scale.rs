//! Vacuum read on the wrong scale, typed in the wrong unit, or more than the air allows.

use holdfast_measure::{Pressure, PressureUnit};

use crate::{
    Arg, Circuit, HoldAnswer, HoldCourse, Message, Quantity, Reading, Situation, Value, hold_target,
};

use super::Slip;

/// A figure this far above ambient is no matter of the gauge, as a share of ambient.
const ABOVE: f64 = 0.03;
/// A start below this share of the target is asked about, if another unit would put it on the target.
const FAR_BELOW: f64 = 0.5;
/// Another unit is likely when it brings the figure this near to what was asked for, as a ratio.
const NEAR: f64 = 1.15;
/// A possible vacuum, as a share of ambient.
const POSSIBLE: std::ops::Range<f64> = 0.1..0.95;
/// The needle may rise this many times the gauge's own doubt before it is asked about.
const RISES: f64 = 3.0;

/// Units that people take for each other: the other scales of a dial, and what a phone offers.
const OTHERS: [PressureUnit; 8] = [
    PressureUnit::KPa,
    PressureUnit::CmHg,
    PressureUnit::InHg,
    PressureUnit::Mbar,
    PressureUnit::Bar,
    PressureUnit::MmHg,
    PressureUnit::Psi,
    PressureUnit::KgfCm2,
];

/// The unit in which a figure would come nearest to what is expected, if that is near enough.
fn likely_unit(figure: f64, unit: PressureUnit, expected: Pressure, near: f64) -> Option<PressureUnit> {
    OTHERS
        .into_iter()
        .filter(|other| *other != unit)
        .map(|other| (other, (other.to_pressure(figure) / expected).value.ln().abs()))
        .filter(|(_, off)| *off <= near.ln())
        .min_by(|a, b| a.1.total_cmp(&b.1))
        .map(|(other, _)| other)
}

/// What has probably happened when a figure was in another unit.
fn wrong_unit(unit: PressureUnit, likely: PressureUnit) -> Message {
    // The inner scale of a common dial is cmHg under inHg: 2.54 to 1.
    let inner = matches!(
        (unit, likely),
        (PressureUnit::InHg, PressureUnit::CmHg) | (PressureUnit::CmHg, PressureUnit::InHg)
    );
    Message::new(if inner {
        "likely-other-scale"
    } else {
        "likely-other-unit"
    })
    .with("unit", Arg::Unit(unit))
    .with("likely", Arg::Unit(likely))
}

/// Asks about a figure above what the air allows.
fn impossible(situation: &Situation, figure: f64, unit: PressureUnit, expected: Pressure) -> Option<Slip> {
    let ambient = situation.ambient();
    let vacuum = unit.to_pressure(figure);
    if vacuum <= ambient * (1.0 + ABOVE) {
        return None;
    }
    let message = Message::new("odd-above-ambient")
        .with("vacuum", Arg::Pressure(vacuum))
        .with("most", Arg::Pressure(ambient));
    let possible = |other: &PressureUnit| POSSIBLE.contains(&(other.to_pressure(figure) / ambient).value);
    let likely = likely_unit(figure, unit, expected, 3.0).filter(possible);
    let mut slip = match likely {
        Some(likely) => Slip::new(message, wrong_unit(unit, likely)),
        None => Slip::new(message, Message::new("likely-typing")),
    };
    slip.unit = likely;
    Some(slip)
}

/// A hold with figures that can hardly be right.
pub(super) fn odd_hold(situation: &Situation, answer: &HoldAnswer) -> Option<Slip> {
    let target = hold_target(situation).vacuum;
    let unit = answer.unit;
    let (start, later): (f64, Vec<f64>) = match &answer.course {
        HoldCourse::Spots { start, readings } => (*start, readings.iter().map(|r| r.1).collect()),
        HoldCourse::Trace { readings, .. } => {
            let mut seen = readings.iter().flatten().copied();
            (seen.next()?, seen.collect())
        }
        HoldCourse::NeverReached { highest } => return impossible(situation, *highest, unit, target),
    };
    if let Some(odd) = std::iter::once(start)
        .chain(later.iter().copied())
        .find_map(|f| impossible(situation, f, unit, target))
    {
        return Some(odd);
    }
    let vacuum = unit.to_pressure(start);
    if vacuum < target * FAR_BELOW
        && let Some(likely) = likely_unit(start, unit, target, NEAR)
    {
        let message = Message::new("odd-far-below-target")
            .with("vacuum", Arg::Pressure(vacuum))
            .with("target", Arg::Pressure(target));
        let mut slip = Slip::new(message, wrong_unit(unit, likely));
        slip.unit = Some(likely);
        return Some(slip);
    }
    let gauge = &situation.instruments.gauge;
    let doubt = gauge.unit.to_pressure(gauge.u_drop()) * RISES;
    let highest = later.iter().copied().fold(start, f64::max);
    let rise = unit.to_pressure(highest - start);
    (rise > doubt).then(|| {
        let message = Message::new("odd-needle-rises").with("rise", Arg::Pressure(rise));
        Slip::new(message, Message::new("likely-still-pumped"))
    })
}

/// A gauge reading at work that can hardly be right.
pub(super) fn odd_gauge(circuit: &Circuit, situation: &Situation, reading: &Reading) -> Option<Slip> {
    let spec = crate::Catalogue::standard().spec(circuit, &reading.test)?;
    let unit = reading.unit().unwrap_or(situation.instruments.gauge.unit);
    let key = spec
        .fields
        .iter()
        .find(|f| f.quantity == Quantity::Vacuum)
        .map(|f| f.key.clone())?;
    let Some(Value::Number(pa)) = reading.value(key.as_str()) else {
        return None;
    };
    let vacuum = Pressure::new::<uom::si::pressure::pascal>(*pa);
    let figure = unit.from_pressure(vacuum);
    let usual = hold_target(situation).vacuum;
    impossible(situation, figure, unit, usual).map(|slip| slip.about(&key))
}
