//! The hand pump, and the volume that its strokes tell.

use uom::si::f64::{Pressure, Volume};

use crate::measured::Measured;

/// A hand pump with its gauge and adapter.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HandPump {
    /// Volume of tester, gauge and adapter, part of every volume under test.
    pub volume: Volume,
    /// Volume that one full stroke draws.
    pub stroke: Volume,
}

/// Relative standard uncertainty of a stroke: short strokes and a worn pump, which needs 10–40 % more
/// strokes (common practice, no source). Half of that range, centred.
const STROKE_U: f64 = 0.12;
/// A worn pump draws less than its stroke; the centre of the range above.
const STROKE_EFFECT: f64 = 0.87;

/// The volume under test, tester included, from the count of strokes that it took to reach a vacuum.
///
/// Each full stroke expands the air from `V` to `V + stroke`, so after `n` strokes
/// `p = ambient·(V/(V + s))ⁿ` and `V = s/((ambient/p)^(1/n) − 1)`. The stroke's effect is taken as
/// 87 % ± 12 % of its rated volume, because hand pumps wear; the count is good to half a stroke. A leak
/// while pumping makes the volume look larger; that is not modelled.
///
/// `None` unless `strokes >= 1` and `0 < reached < ambient`.
#[must_use]
pub fn volume_from_strokes(
    ambient: Pressure,
    reached: Pressure,
    strokes: u32,
    pump: HandPump,
) -> Option<Measured> {
    let ratio = ambient.value / (ambient.value - reached.value);
    if strokes == 0 || !ratio.is_finite() || ratio <= 1.0 || pump.stroke.value <= 0.0 {
        return None;
    }
    let count = Measured::resolved(f64::from(strokes), 1.0);
    let stroke = Measured::relative(pump.stroke.value * STROKE_EFFECT, STROKE_U / STROKE_EFFECT);
    let growth = ratio.powf(1.0 / count.value);
    let volume = stroke.value / (growth - 1.0);
    // dV/dn by hand, since n sits in an exponent.
    let by_count = volume * growth * ratio.ln() / (count.value * count.value * (growth - 1.0)) * count.u;
    Some(Measured::new(
        volume,
        (volume * stroke.relative_u()).hypot(by_count),
    ))
}

/// Full strokes that a pump as good as new needs to reach a vacuum in a volume (tester included).
///
/// Infinite when `reached` is not below `ambient`.
#[must_use]
pub fn strokes_to_reach(ambient: Pressure, reached: Pressure, volume: Volume, pump: HandPump) -> f64 {
    let ratio = ambient.value / (ambient.value - reached.value);
    if !ratio.is_finite() || ratio < 1.0 {
        return f64::INFINITY;
    }
    ratio.ln() / (pump.stroke / volume).value.ln_1p()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::pressure_unit::PressureUnit;
    use uom::si::pressure::pascal;
    use uom::si::volume::cubic_centimeter;

    fn pump() -> HandPump {
        HandPump {
            volume: Volume::new::<cubic_centimeter>(30.0),
            stroke: Volume::new::<cubic_centimeter>(15.0),
        }
    }

    #[test]
    fn the_volume_found_takes_the_strokes_that_were_counted() {
        let ambient = Pressure::new::<pascal>(101_325.0);
        let reached = PressureUnit::InHg.to_pressure(20.0);
        let worn = HandPump {
            stroke: pump().stroke * STROKE_EFFECT,
            ..pump()
        };
        for strokes in [1_u32, 8, 37] {
            let volume = volume_from_strokes(ambient, reached, strokes, pump()).unwrap();
            let again = strokes_to_reach(ambient, reached, uom_volume(volume.value), worn);
            assert!((again - f64::from(strokes)).abs() < 1e-9);
        }
    }

    #[test]
    fn few_strokes_tell_the_volume_less_well() {
        let ambient = Pressure::new::<pascal>(101_325.0);
        let reached = PressureUnit::InHg.to_pressure(20.0);
        let few = volume_from_strokes(ambient, reached, 2, pump()).unwrap();
        let many = volume_from_strokes(ambient, reached, 20, pump()).unwrap();
        assert!(few.relative_u() > many.relative_u());
        assert_eq!(volume_from_strokes(ambient, reached, 0, pump()), None);
        assert_eq!(volume_from_strokes(ambient, ambient, 5, pump()), None);
    }

    fn uom_volume(m3: f64) -> Volume {
        Volume::new::<uom::si::volume::cubic_meter>(m3)
    }
}
