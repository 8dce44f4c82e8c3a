//! Simulated people, cars and gauges. Every draw comes from a seeded generator.

use holdfast_measure::si::{pressure::pascal, thermodynamic_temperature::kelvin, time::second};
use holdfast_measure::{
    Gauge, GaugeGrade, HoldData, HoldKind, HoldSetup, Measured, Pressure, PressureUnit,
    ThermodynamicTemperature, Time,
};
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;

use crate::physics::{Car, INHG, Shape};

pub struct Draw(ChaCha8Rng);

impl Draw {
    pub fn seeded(seed: u64) -> Self {
        Self(ChaCha8Rng::seed_from_u64(seed))
    }
    pub fn uniform(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.0.random::<f64>()
    }
    pub fn log_uniform(&mut self, low: f64, high: f64) -> f64 {
        self.uniform(low.ln(), high.ln()).exp()
    }
    pub fn normal(&mut self) -> f64 {
        let (a, b) = (self.uniform(f64::MIN_POSITIVE, 1.0), self.uniform(0.0, 1.0));
        (-2.0 * a.ln()).sqrt() * (std::f64::consts::TAU * b).cos()
    }
    pub fn exponential(&mut self, mean: f64) -> f64 {
        -mean * self.uniform(f64::MIN_POSITIVE, 1.0).ln()
    }
}

/// What the simulator believes of nuisances; `exact.rs` integrates over the same.
pub struct Nuisance;

impl Nuisance {
    pub const WARMING_K: f64 = 0.5;
    pub const HAND_TIME: f64 = 0.3;
    /// Mean of the exponential creep left after settling, Pa.
    pub const CREEP: f64 = 0.08 * INHG;
    pub fn creep_time(draw: &mut Draw) -> f64 {
        draw.uniform(1.5, 5.0)
    }
    /// Reader's scatter as a share of the step read to.
    pub fn reader_share(draw: &mut Draw) -> f64 {
        draw.uniform(0.1, 0.35)
    }
    pub fn volume_factor(draw: &mut Draw, share: f64) -> f64 {
        (share * draw.normal()).exp()
    }
    pub fn slope(draw: &mut Draw, limit: f64) -> f64 {
        1.0 + draw.uniform(-limit, limit)
    }
}

#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Watch {
    Once,
    Thrice,
    Trace,
}

/// A simulated hold test: what the tool is told, and the truth.
pub struct HoldTest {
    pub setup: HoldSetup,
    pub volume_share: f64,
    pub car: Car,
    pub start_true: f64,
    pub gauge_slope: f64,
    pub gauge_offset: f64,
    pub reader: f64,
    pub hand_time: f64,
}

impl HoldTest {
    /// A random place, volume, gauge and person around a leak.
    pub fn random(draw: &mut Draw, std_cm3_min: f64) -> Self {
        let pa = draw.uniform(72_000.0, 103_000.0);
        let air = 273.15 + draw.uniform(0.0, 35.0);
        let gauge = match draw.uniform(0.0, 4.0) as u8 {
            0 => Gauge::default(),
            1 => Gauge {
                read_to: 0.25,
                ..Gauge::default()
            },
            2 => Gauge {
                unit: PressureUnit::KPa,
                span: 100.0,
                division: 2.0,
                grade: GaugeGrade::B,
                read_to: 1.0,
            },
            _ => Gauge {
                division: 0.1,
                grade: GaugeGrade::G1A,
                read_to: 0.1,
                ..Gauge::default()
            },
        };
        let volume = draw.log_uniform(30e-6, 700e-6);
        let volume_share = draw.uniform(0.04, 0.15);
        let (middle, _) = gauge.grade.limits();
        let setup = HoldSetup::new(
            Pressure::new::<pascal>(pa),
            ThermodynamicTemperature::new::<kelvin>(air),
            gauge,
            Measured::relative(volume, volume_share),
        );
        let step = gauge.read_to * gauge.unit.to_pressure(1.0).value;
        let shape = if draw.uniform(0.0, 1.0) < 0.5 {
            Shape::Hole
        } else {
            Shape::Capillary
        };
        let target = (20.0 * INHG).min(0.67 * pa);
        Self {
            volume_share,
            car: Car {
                shape,
                std_cm3_min,
                volume: volume * Nuisance::volume_factor(draw, volume_share),
                pa,
                air,
                warming: Nuisance::WARMING_K * draw.normal(),
                span: 20.0,
                creep: draw.exponential(Nuisance::CREEP),
                creep_time: Nuisance::creep_time(draw),
            },
            start_true: target + draw.uniform(-0.8, 0.8) * INHG,
            gauge_slope: Nuisance::slope(draw, middle),
            gauge_offset: draw.uniform(-middle, middle) * gauge.span * gauge.unit.to_pressure(1.0).value,
            reader: Nuisance::reader_share(draw) * step,
            hand_time: Nuisance::HAND_TIME,
            setup,
        }
    }

    fn step(&self) -> f64 {
        self.setup.gauge.read_to * self.setup.gauge.unit.to_pressure(1.0).value
    }

    /// What a person reads of a true vacuum.
    fn read(&self, draw: &mut Draw, vacuum: f64) -> f64 {
        let shown = vacuum * self.gauge_slope + self.gauge_offset + self.reader * draw.normal();
        (shown / self.step()).round() * self.step()
    }

    /// The seconds at which a person reads: 20, or earlier where the needle would be most of the way down.
    pub fn sensible_time(&self) -> f64 {
        let looks = [1.0, 2.0, 3.0, 5.0, 7.0, 10.0, 15.0, 20.0];
        let seen = self.car.vacuum(self.start_true, &looks);
        looks
            .iter()
            .zip(seen)
            .find(|(_, v)| *v < 0.5 * self.start_true)
            .map_or(20.0, |(t, _)| *t)
    }

    /// Watches until `last` seconds.
    pub fn watch(&mut self, draw: &mut Draw, watch: Watch, last: f64) -> HoldData {
        self.car.span = last;
        let start = self.read(draw, self.start_true);
        let times: Vec<f64> = match watch {
            // Nobody reads a dial three times in a few seconds.
            Watch::Thrice if last < 7.0 => vec![last],
            Watch::Once => vec![last],
            Watch::Thrice => vec![last / 3.0, last / 1.5, last],
            Watch::Trace => (1..=(last * 10.0) as usize).map(|i| i as f64 / 10.0).collect(),
        };
        let by_hand = watch != Watch::Trace;
        self.setup.hand_timed = by_hand;
        let real: Vec<f64> = times
            .iter()
            .map(|t| {
                if by_hand {
                    (t + self.hand_time * draw.normal()).max(0.05)
                } else {
                    *t
                }
            })
            .collect();
        let mut order = real.clone();
        order.sort_by(f64::total_cmp);
        let vacuum = self.car.vacuum(self.start_true, &order);
        let points = times
            .iter()
            .zip(vacuum)
            .filter_map(|(t, v)| {
                let lost = !by_hand && draw.uniform(0.0, 1.0) < 0.1;
                let seen = self.read(draw, v);
                (!lost).then(|| (Time::new::<second>(*t), Pressure::new::<pascal>(seen)))
            })
            .collect();
        let kind = if by_hand {
            HoldKind::Spot
        } else {
            HoldKind::Trace { hz: 10.0 }
        };
        HoldData {
            start: Pressure::new::<pascal>(start),
            points,
            kind,
        }
    }
}
