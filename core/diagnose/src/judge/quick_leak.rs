//! A leak from start and last reading alone, by first-order propagation (JCGM 100, 5.1.2): what the tester loses, and what
//! other holds of the same branch lost. The hold that is judged itself gets the full inference.

use holdfast_measure::{Measured, Pressure, PressureUnit, STD_PRESSURE, Volume, limit_leak};
use uom::si::pressure::pascal;
use uom::si::volume::cubic_meter;

use crate::{Answer, Circuit, Reading, Situation};

use super::hold_setup::{bleed_leak, hold_data, seconds_of, setup, volume_under_test};

/// Spread of a half-normal creep as a share of its scale, and its mean.
const CREEP: (f64, f64) = (0.6, 0.8);

/// The part's own leak, std m³/s, not below zero; `tester` is taken off. `None`: no hold, or nothing to be read from it.
pub(super) fn quick_leak(
    circuit: &Circuit,
    situation: &Situation,
    tester: Option<Measured>,
    reading: &Reading,
) -> Option<Measured> {
    let Answer::Hold(answer) = &reading.answer else {
        return None;
    };
    let (volume, _) = volume_under_test(circuit, situation, &reading.test, answer)?;
    let data = hold_data(answer)?;
    let (time, last) = data
        .points
        .iter()
        .max_by(|a, b| a.0.value.total_cmp(&b.0.value))?;
    let seconds = time.value;
    if seconds <= 0.0 || data.start <= Pressure::new::<pascal>(0.0) || data.start >= situation.ambient() {
        return None;
    }
    let setup = setup(situation, reading, answer, volume, None, seconds_of(answer));
    let drop = (data.start - *last).value - CREEP.1 * setup.creep.value;
    let ambient = situation.ambient().value;
    let hole = |pa: f64| {
        let size = limit_leak(
            Volume::new::<cubic_meter>(volume.value),
            situation.ambient(),
            Pressure::new::<pascal>(pa),
            seconds,
            data.start,
        );
        if pa > 0.0 { size.std_m3_s() } else { 0.0 }
    };
    // Which of the two forms it has is not known from two readings: the middle, and half their difference as a doubt.
    let leak = |pa: f64| {
        f64::midpoint(
            hole(pa),
            viscous(volume.value, ambient, data.start.value, pa, seconds),
        )
    };
    let inside = (situation.ambient() - data.start).value;
    let u_drop = (setup.gauge.u_drop() * setup.gauge.unit_pa())
        .hypot(CREEP.0 * setup.creep.value)
        .hypot(setup.thermal_k * inside / setup.air.value);
    let value = leak(drop);
    let u_reading = leak(drop.max(0.0) + u_drop) - value;
    let u_form = (hole(drop) - value).abs() / 3.0_f64.sqrt();
    let u = u_reading.hypot(u_form).hypot(value * volume.u / volume.value);
    let mut own = Measured { value, u };
    for other in [tester, bleed_leak(circuit, &reading.test)].into_iter().flatten() {
        own = Measured {
            value: (own.value - other.value).max(0.0),
            u: own.u.hypot(other.u),
        };
    }
    Some(own)
}

/// The leak of viscous form through which `volume` loses `drop` from `start` in `seconds`, std m³/s.
///
/// From `dp/dt = K·(pa² − p²)`: `K = (artanh(p1/pa) − artanh(p0/pa))/(pa·t)`. Source: compressible isothermal Poiseuille
/// flow into a rigid volume, integrated in closed form.
fn viscous(volume: f64, ambient: f64, start: f64, drop: f64, seconds: f64) -> f64 {
    let at = |vacuum: f64| ((ambient - vacuum) / ambient).clamp(0.0, 0.9999).atanh();
    let k = (at(start - drop.max(0.0)) - at(start)) / (ambient * seconds);
    let inside = STD_PRESSURE - PressureUnit::InHg.to_pressure(20.0).value;
    k * volume * (STD_PRESSURE * STD_PRESSURE - inside * inside) / STD_PRESSURE
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;
    use crate::{CircuitChoice, judge, parse_answer};

    /// The short way and the full inference agree on a leak that is well seen.
    #[test]
    fn it_agrees_with_the_full_inference() {
        let circuit = Circuit::build(&CircuitChoice::Template("two-mounts-one-valve".into())).unwrap();
        let situation = Situation::default();
        for later in [18.0, 16.0, 12.0, 6.0] {
            let test = "hold:branch".parse().unwrap();
            let json = json!({"start": 20, "readings": [[20, later]], "unit": "inHg"});
            let (answer, _) = parse_answer(&circuit, &test, &json).unwrap();
            let reading = Reading::new(test, answer);
            let quick = quick_leak(&circuit, &situation, None, &reading).unwrap();
            let full = judge(&circuit, &situation, &[], &reading)
                .hold
                .unwrap()
                .leak
                .unwrap();
            let quick = quick.value * 60e6;
            assert!(
                (quick / full.value - 1.0).abs() < 0.15,
                "{later}: {quick} against {}",
                full.value
            );
        }
    }
}
