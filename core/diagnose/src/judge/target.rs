//! What to pump to.

use holdfast_measure::{Pressure, PressureUnit};
use uom::si::pressure::pascal;

use crate::situation::AmbientFrom;
use crate::{Arg, Message, Situation, Target};

/// The usual target, inHg. Source: common practice, no source.
const USUAL_INHG: f64 = 20.0;
/// The usual target may be at most this share of what the air allows; a hand pump gets no further with ease.
/// Source: common practice, no source.
const MOST_OF_AMBIENT: f64 = 0.8;
/// Standard atmosphere at sea level, Pa: the same share of ambient is taken where 20 inHg is too much.
const SEA_LEVEL_PA: f64 = 101_325.0;
/// The needle should stand at most here on its scale.
const MOST_OF_SPAN: f64 = 0.9;

/// What to pump to: 20 inHg where that leaves a margin to what the air allows, else the same share of ambient; less
/// where the gauge's scale ends before.
pub fn hold_target(situation: &Situation) -> Target {
    let ambient = situation.ambient();
    let usual = PressureUnit::InHg.to_pressure(USUAL_INHG);
    let gauge = &situation.instruments.gauge;
    let reach = gauge.full_scale() * MOST_OF_SPAN;
    let (vacuum, why) = if usual <= ambient * MOST_OF_AMBIENT {
        let assumed = situation.place.ambient_from() == AmbientFrom::SeaLevelAssumed;
        (
            usual,
            if assumed {
                "target-usual-sea-level-assumed"
            } else {
                "target-usual"
            },
        )
    } else {
        (ambient * (usual.value / SEA_LEVEL_PA), "target-thin-air")
    };
    let (vacuum, why) = if vacuum > reach {
        (reach, "target-short-scale")
    } else {
        (vacuum, why)
    };
    Target {
        vacuum: Pressure::new::<pascal>(vacuum.value),
        why: Message::new(why)
            .with("target", Arg::Pressure(vacuum))
            .with("most", Arg::Pressure(ambient)),
    }
}

#[cfg(test)]
mod tests {
    use approx::assert_relative_eq;

    use super::*;
    use crate::Place;

    fn at(altitude_m: f64) -> Target {
        let place = Place {
            altitude_m: Some(altitude_m),
            ..Place::default()
        };
        hold_target(&Situation {
            place,
            ..Situation::default()
        })
    }

    #[test]
    fn at_sea_level_it_is_twenty_inhg() {
        assert_relative_eq!(
            PressureUnit::InHg.from_pressure(at(0.0).vacuum),
            20.0,
            max_relative = 1e-9
        );
        assert_eq!(at(0.0).why.id.as_str(), "target-usual");
    }

    #[test]
    fn in_thin_air_it_is_the_same_share_of_ambient() {
        let high = at(2_400.0);
        assert_eq!(high.why.id.as_str(), "target-thin-air");
        let inhg = PressureUnit::InHg.from_pressure(high.vacuum);
        // ISO 2533 at 2,400 m is 75.6 kPa, so 20/29.92 of it is 14.9 inHg.
        assert!((14.8..15.0).contains(&inhg), "{inhg}");
    }

    #[test]
    fn nothing_said_about_the_place_is_told() {
        assert_eq!(
            hold_target(&Situation::default()).why.id.as_str(),
            "target-usual-sea-level-assumed"
        );
    }

    #[test]
    fn a_short_scale_lowers_it() {
        let mut situation = Situation::default();
        situation.instruments.gauge.span = 15.0;
        let target = hold_target(&situation);
        assert_eq!(target.why.id.as_str(), "target-short-scale");
        assert_relative_eq!(
            PressureUnit::InHg.from_pressure(target.vacuum),
            13.5,
            max_relative = 1e-9
        );
    }
}
