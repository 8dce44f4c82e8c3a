//! The pressure in one or two connected closed volumes, integrated exactly: any leaks, warming, creep.

use thiserror::Error;
use uom::si::f64::{Pressure, ThermodynamicTemperature, Time, Volume};
use uom::si::pressure::pascal;

use crate::air::GAS_CONSTANT;
use crate::element::Element;
use crate::ode::{Tolerance, integrate};

/// Error allowed in each step of the integration.
const TOLERANCE: Tolerance = Tolerance {
    relative: 1e-9,
    absolute: 1e-6,
};
/// Steps after which an integration is given up.
const MOST_STEPS: usize = 2_000_000;

/// How the temperature of trapped air changes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Warming {
    /// It stays.
    None,
    /// It changes evenly, K/s; negative cools.
    Steady(f64),
    /// It approaches a temperature (K) with a time constant (s).
    Towards {
        /// Final temperature, K.
        kelvin: f64,
        /// Time constant, s, `> 0`.
        time_constant: f64,
    },
}

impl Warming {
    fn kelvin(self, start: f64, seconds: f64) -> f64 {
        match self {
            Self::None => start,
            Self::Steady(rate) => start + rate * seconds,
            Self::Towards {
                kelvin,
                time_constant,
            } => kelvin + (start - kelvin) * (-seconds / time_constant).exp(),
        }
    }
}

/// How rubber gives under vacuum: the volume shrinks by a share, with a time constant.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Creep {
    /// Share of the volume lost in the end, `0 <= share < 1`.
    pub share: f64,
    /// Time constant, s, `> 0`.
    pub time_constant: f64,
}

impl Creep {
    /// No creep.
    pub const NONE: Self = Self {
        share: 0.0,
        time_constant: 1.0,
    };

    fn factor(self, seconds: f64) -> f64 {
        1.0 - self.share * (1.0 - (-seconds / self.time_constant).exp())
    }
}

/// One closed volume with what happens to it.
#[derive(Debug, Clone, PartialEq)]
pub struct ClosedVolume {
    /// Volume at the start.
    pub volume: Volume,
    /// Vacuum at the start, below ambient.
    pub vacuum: Pressure,
    /// Temperature of the trapped air at the start.
    pub temperature: ThermodynamicTemperature,
    /// Passages from outside into this volume; they add.
    pub leaks: Vec<Element>,
    /// Change of the trapped air's temperature.
    pub warming: Warming,
    /// Give of the walls.
    pub creep: Creep,
}

impl ClosedVolume {
    /// A rigid volume at rest with one set of leaks, its air as warm as given.
    #[must_use]
    pub fn rigid(
        volume: Volume,
        vacuum: Pressure,
        temperature: ThermodynamicTemperature,
        leaks: Vec<Element>,
    ) -> Self {
        Self {
            volume,
            vacuum,
            temperature,
            leaks,
            warming: Warming::None,
            creep: Creep::NONE,
        }
    }

    fn pressure(&self, mass: f64, seconds: f64) -> f64 {
        let kelvin = self.warming.kelvin(self.temperature.value, seconds);
        mass * GAS_CONSTANT * kelvin / (self.volume.value * self.creep.factor(seconds))
    }

    fn mass(&self, ambient: f64) -> f64 {
        (ambient - self.vacuum.value) * self.volume.value / (GAS_CONSTANT * self.temperature.value)
    }

    fn inflow(&self, outside: Outside, pressure: f64) -> f64 {
        self.leaks
            .iter()
            .map(|leak| leak.mass_flow(outside.ambient, pressure, outside.kelvin))
            .sum()
    }

    fn check(&self, ambient: f64) -> Result<(), FallError> {
        let given = [
            self.volume.value,
            self.temperature.value,
            ambient - self.vacuum.value,
            ambient,
        ];
        let shares = (0.0..1.0).contains(&self.creep.share) && self.creep.time_constant > 0.0;
        let warming = match self.warming {
            Warming::None => true,
            Warming::Steady(rate) => rate.is_finite(),
            Warming::Towards {
                kelvin,
                time_constant,
            } => kelvin > 0.0 && time_constant > 0.0,
        };
        if given.iter().all(|figure| figure.is_finite() && *figure > 0.0) && shares && warming {
            Ok(())
        } else {
            Err(FallError::NotPhysical)
        }
    }
}

/// Why a fall could not be worked out.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Error)]
pub enum FallError {
    /// A volume, temperature or absolute pressure is not positive, or a time runs backwards.
    #[error("a figure of the closed volume is not physical")]
    NotPhysical,
    /// The volumes are so tightly connected that millions of steps would be needed; treat them as one.
    #[error("the integration needs too many steps")]
    TooStiff,
}

#[derive(Clone, Copy)]
struct Outside {
    ambient: f64,
    kelvin: f64,
}

/// Vacuum in one closed volume at `times` (from the start, in rising order).
///
/// Exact but for the integration's error, below 10⁻⁵ of the pressure: ideal gas, the air outside at `air`, the
/// trapped air at its own temperature. Heat exchange is not modelled: temperatures are given, not found.
///
/// # Errors
/// [`FallError::NotPhysical`] for figures that no volume has; [`FallError::TooStiff`] after two million steps.
pub fn fall_of_one(
    ambient: Pressure,
    air: ThermodynamicTemperature,
    volume: &ClosedVolume,
    times: &[Time],
) -> Result<Vec<Pressure>, FallError> {
    volume.check(ambient.value)?;
    let outside = Outside {
        ambient: ambient.value,
        kelvin: air.value,
    };
    let scale = volume.mass(outside.ambient);
    let slope = |t: f64, y: &[f64; 1]| [volume.inflow(outside, volume.pressure(y[0] * scale, t)) / scale];
    Ok(along(times, [1.0], &slope)?
        .into_iter()
        .map(|(t, [y])| Pressure::new::<pascal>(outside.ambient - volume.pressure(y * scale, t)))
        .collect())
}

/// Vacuum in two closed volumes joined by a passage (a narrow hose), at `times`: `(first, second)`.
///
/// The joining passage takes the temperature of the volume that the air comes from. Else as [`fall_of_one`].
///
/// # Errors
/// As [`fall_of_one`].
pub fn fall_of_two(
    ambient: Pressure,
    air: ThermodynamicTemperature,
    (first, second): (&ClosedVolume, &ClosedVolume),
    joined_by: Element,
    times: &[Time],
) -> Result<Vec<(Pressure, Pressure)>, FallError> {
    first.check(ambient.value)?;
    second.check(ambient.value)?;
    let outside = Outside {
        ambient: ambient.value,
        kelvin: air.value,
    };
    let (scale_a, scale_b) = (first.mass(outside.ambient), second.mass(outside.ambient));
    let slope = |t: f64, y: &[f64; 2]| {
        let (pa, pb) = (
            first.pressure(y[0] * scale_a, t),
            second.pressure(y[1] * scale_b, t),
        );
        let from = if pa >= pb { first } else { second };
        let kelvin = from.warming.kelvin(from.temperature.value, t);
        let across = joined_by.mass_flow(pa, pb, kelvin);
        [
            (first.inflow(outside, pa) - across) / scale_a,
            (second.inflow(outside, pb) + across) / scale_b,
        ]
    };
    let vacuum = |p: f64| Pressure::new::<pascal>(outside.ambient - p);
    Ok(along(times, [1.0, 1.0], &slope)?
        .into_iter()
        .map(|(t, [a, b])| {
            (
                vacuum(first.pressure(a * scale_a, t)),
                vacuum(second.pressure(b * scale_b, t)),
            )
        })
        .collect())
}

/// States at the given times, from time 0.
fn along<const N: usize>(
    times: &[Time],
    start: [f64; N],
    slope: &impl Fn(f64, &[f64; N]) -> [f64; N],
) -> Result<Vec<(f64, [f64; N])>, FallError> {
    let (mut t, mut y) = (0.0, start);
    let mut states = Vec::with_capacity(times.len());
    for time in times {
        if !time.value.is_finite() || time.value < t {
            return Err(FallError::NotPhysical);
        }
        y = integrate(slope, (t, time.value), y, TOLERANCE, MOST_STEPS).ok_or(FallError::TooStiff)?;
        t = time.value;
        states.push((t, y));
    }
    Ok(states)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::element::LeakForm;
    use crate::hold::{HoldSetup, predict_form};
    use crate::leak_rate::LeakRate;
    use crate::{Gauge, Measured, PressureUnit};
    use approx::assert_relative_eq;
    use uom::si::thermodynamic_temperature::degree_celsius;
    use uom::si::time::second;
    use uom::si::volume::cubic_centimeter;

    fn inhg(figure: f64) -> Pressure {
        PressureUnit::InHg.to_pressure(figure)
    }

    fn air() -> ThermodynamicTemperature {
        ThermodynamicTemperature::new::<degree_celsius>(20.0)
    }

    fn sealed(cm3: f64) -> ClosedVolume {
        ClosedVolume::rigid(Volume::new::<cubic_centimeter>(cm3), inhg(20.0), air(), vec![])
    }

    const SEA: f64 = 101_325.0;

    #[test]
    fn closed_form_and_integration_agree() {
        let leak = LeakRate::from_std_cm3_min(300.0);
        for form in [LeakForm::Hole, LeakForm::Viscous] {
            for (ambient, celsius) in [(SEA, 20.0), (75_000.0, -5.0)] {
                let ambient = Pressure::new::<pascal>(ambient);
                let air = ThermodynamicTemperature::new::<degree_celsius>(celsius);
                let setup = HoldSetup::new(ambient, air, Gauge::default(), Measured::exact(120e-6));
                let volume = ClosedVolume {
                    leaks: vec![Element::leak(form, leak)],
                    temperature: air,
                    ..sealed(120.0)
                };
                for seconds in [1.0, 10.0, 20.0] {
                    let time = [Time::new::<second>(seconds)];
                    let exact = inhg(20.0) - fall_of_one(ambient, air, &volume, &time).unwrap()[0];
                    let closed = predict_form(&setup, form, inhg(20.0), leak, seconds);
                    assert_relative_eq!(exact.value, closed.value, max_relative = 1e-6);
                }
            }
        }
    }

    #[test]
    fn two_sealed_volumes_meet_in_the_middle_and_keep_their_air() {
        let deep = ClosedVolume {
            vacuum: inhg(20.0),
            ..sealed(30.0)
        };
        let shallow = ClosedVolume {
            vacuum: inhg(10.0),
            ..sealed(90.0)
        };
        let hose = Element::round_hole(uom::si::f64::Length::new::<uom::si::length::millimeter>(0.5));
        let time = [Time::new::<second>(30.0)];
        let ends = fall_of_two(
            Pressure::new::<pascal>(SEA),
            air(),
            (&deep, &shallow),
            hose,
            &time,
        )
        .unwrap();
        let (a, b) = ends[0];
        assert_relative_eq!(a.value, b.value, max_relative = 1e-5);
        assert_relative_eq!(a.value, inhg(12.5).value, max_relative = 1e-6);
    }

    #[test]
    fn a_wide_hose_makes_two_volumes_one() {
        let leak = Element::leak(LeakForm::Hole, LeakRate::from_std_cm3_min(200.0));
        let near = sealed(30.0);
        let far = ClosedVolume {
            leaks: vec![leak],
            ..sealed(90.0)
        };
        let hose = Element::capillary(
            uom::si::f64::Length::new::<uom::si::length::millimeter>(3.5),
            uom::si::f64::Length::new::<uom::si::length::meter>(0.5),
        );
        let whole = ClosedVolume {
            leaks: vec![leak],
            ..sealed(120.0)
        };
        let time = [Time::new::<second>(20.0)];
        let ambient = Pressure::new::<pascal>(SEA);
        let two = fall_of_two(ambient, air(), (&near, &far), hose, &time).unwrap()[0].0;
        let one = fall_of_one(ambient, air(), &whole, &time).unwrap()[0];
        assert_relative_eq!(two.value, one.value, max_relative = 2e-3);
    }

    #[test]
    fn shrinking_walls_and_warm_air_lose_vacuum_without_a_leak() {
        let creeping = ClosedVolume {
            creep: Creep {
                share: 0.05,
                time_constant: 3.0,
            },
            ..sealed(100.0)
        };
        let warming = ClosedVolume {
            warming: Warming::Towards {
                kelvin: 298.15,
                time_constant: 10.0,
            },
            ..sealed(100.0)
        };
        let time = [Time::new::<second>(600.0)];
        let left = |volume: &ClosedVolume| {
            fall_of_one(Pressure::new::<pascal>(SEA), air(), volume, &time).unwrap()[0].value
        };
        let p0 = SEA - inhg(20.0).value;
        assert_relative_eq!(left(&creeping), SEA - p0 / 0.95, max_relative = 1e-9);
        assert_relative_eq!(left(&warming), SEA - p0 * 298.15 / 293.15, max_relative = 1e-9);
    }

    #[test]
    fn impossible_volumes_are_refused() {
        let ambient = Pressure::new::<pascal>(SEA);
        let none = ClosedVolume {
            volume: Volume::new::<cubic_centimeter>(0.0),
            ..sealed(1.0)
        };
        let time = [Time::new::<second>(1.0)];
        assert_eq!(
            fall_of_one(ambient, air(), &none, &time),
            Err(FallError::NotPhysical)
        );
        let back = [Time::new::<second>(2.0), Time::new::<second>(1.0)];
        assert_eq!(
            fall_of_one(ambient, air(), &sealed(10.0), &back),
            Err(FallError::NotPhysical)
        );
    }
}
