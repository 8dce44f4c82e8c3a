//! A meter on the wrong range, in the wrong mode or with its leads swapped; a tachometer's factor of ten.

use std::collections::BTreeMap;

use crate::{Arg, Catalogue, Circuit, FieldKey, Message, Quantity, Reading, Situation, TestKind, Value};

use super::Slip;

/// A 12 V vehicle shows no more than this on direct voltage, V.
const MOST_VOLTS: f64 = 17.0;
/// A battery below this doesn't run a meter test, V.
const LEAST_BATTERY: f64 = 6.0;
/// A pin may read above the battery by this, V.
const ABOVE_BATTERY: f64 = 1.0;
/// Swapped leads read below this, V.
const NEGATIVE: f64 = -0.5;
/// From this a wire's ohms are no wire's, Ω.
const NO_WIRE: f64 = 100_000.0;
/// An engine idles within this, 1/min.
const IDLES: std::ops::Range<f64> = 400.0..1_500.0;

/// The first value that can hardly be right.
pub(super) fn odd(
    circuit: &Circuit,
    situation: &Situation,
    reading: &Reading,
    values: &BTreeMap<FieldKey, Value>,
) -> Option<Slip> {
    let spec = Catalogue::standard().spec(circuit, &reading.test)?;
    spec.fields.iter().find_map(|field| {
        let Some(Value::Number(figure)) = values.get(&field.key) else {
            return None;
        };
        let slip = match field.quantity {
            Quantity::Volts => volts(reading, &field.key, *figure),
            Quantity::Ohms => ohms(circuit, situation, reading, *figure),
            Quantity::Rpm => rpm(*figure),
            _ => None,
        }?;
        Some(slip.about(&field.key))
    })
}

fn volts(reading: &Reading, key: &FieldKey, volts: f64) -> Option<Slip> {
    let say = |id: &'static str| Message::new(id).with("volts", Arg::Volts(volts));
    if volts < NEGATIVE {
        return Some(Slip::new(
            say("odd-negative-volts"),
            Message::new("likely-leads-swapped"),
        ));
    }
    if volts > MOST_VOLTS {
        let in_volts = volts / 1000.0;
        let likely = if (0.05..=MOST_VOLTS).contains(&in_volts) {
            Message::new("likely-millivolts").with("volts", Arg::Volts(in_volts))
        } else if volts <= 60.0 {
            Message::new("likely-ac-range")
        } else {
            Message::new("likely-typing")
        };
        return Some(Slip::new(say("odd-many-volts"), likely));
    }
    if key.as_str() == "battery" {
        let low = volts < LEAST_BATTERY;
        return low.then(|| Slip::new(say("odd-battery-low"), Message::new("likely-bad-contact")));
    }
    let battery = reading.number("battery").filter(|b| *b >= LEAST_BATTERY)?;
    (volts > battery + ABOVE_BATTERY).then(|| {
        Slip::new(
            say("odd-above-battery").with("battery", Arg::Volts(battery)),
            Message::new("likely-other-engine-state"),
        )
    })
}

fn ohms(circuit: &Circuit, situation: &Situation, reading: &Reading, ohms: f64) -> Option<Slip> {
    let say = |id: &'static str| Message::new(id).with("ohms", Arg::Ohms(ohms));
    if ohms < 0.0 {
        return Some(Slip::new(
            say("odd-negative-ohms"),
            Message::new("likely-live-wire"),
        ));
    }
    match reading.test.kind {
        TestKind::Coil => {
            let (low, high) = circuit.properties.coil_ohm;
            let fits = |x: f64| (low * 0.7..=high * 1.5).contains(&x);
            let kilo = ohms * 1000.0;
            if !fits(ohms) && ohms > 0.0 && fits(kilo) {
                let likely = Message::new("likely-kiloohms").with("ohms", Arg::Ohms(kilo));
                return Some(Slip::new(say("odd-few-ohms"), likely));
            }
            (ohms >= NO_WIRE).then(|| Slip::new(say("odd-many-ohms"), Message::new("likely-open")))
        }
        TestKind::PowerWire | TestKind::ControlWire | TestKind::Fuse | TestKind::ProveMeter => {
            if ohms >= NO_WIRE {
                return Some(Slip::new(say("odd-many-ohms"), Message::new("likely-open")));
            }
            // Less than half a digit below what the leads alone read is rounding, more is a zeroed meter or another range.
            let digit = 10f64.powi(-i32::from(situation.instruments.meter.digits));
            let milli = ohms / 1000.0;
            (ohms > 50.0 && milli >= digit && milli < 1.0 && ohms.fract() == 0.0 && ohms >= 100.0).then(
                || {
                    let likely = Message::new("likely-milliohms").with("ohms", Arg::Ohms(milli));
                    Slip::new(say("odd-many-ohms"), likely)
                },
            )
        }
        _ => None,
    }
}

fn rpm(rpm: f64) -> Option<Slip> {
    if IDLES.contains(&rpm) {
        return None;
    }
    let message = Message::new("odd-rpm").with("rpm", Arg::Rpm(rpm));
    let factor = [10.0, 100.0, 1000.0]
        .into_iter()
        .find(|f| IDLES.contains(&(rpm * f)));
    Some(match factor {
        Some(factor) => Slip::new(
            message,
            Message::new("likely-dial-factor").with("rpm", Arg::Rpm(rpm * factor)),
        ),
        None => Slip::new(message, Message::new("likely-not-idling")),
    })
}
