//! A car as it is: its faults, and what else is hidden about it. And the scene: what everybody knows.

use std::collections::BTreeSet;

use holdfast_diagnose::{Circuit, CircuitChoice, ComponentKind, SourceKind, TestId};

use crate::ailments::Ailment;
use crate::air::{INHG, standard_atmosphere};
use crate::draw::Draw;

/// What is known to both sides: circuit as described, place, instruments, habits of the person.
#[derive(Debug, Clone)]
pub struct Scene {
    pub choice: CircuitChoice,
    /// The circuit as the tool is told.
    pub circuit: Circuit,
    pub situation: holdfast_diagnose::Situation,
    pub person: Person,
    /// Tests that can't be done here.
    pub cannot: BTreeSet<TestId>,
    /// Pressure of the air, Pa.
    pub ambient: f64,
    /// Temperature of the air, K.
    pub kelvin: f64,
    /// The engine was warm not long ago, so that trapped gas changes temperature.
    pub warm: bool,
    /// What is pumped to, Pa below ambient.
    pub target: f64,
}

/// How somebody reads and errs.
#[derive(Debug, Clone, Copy)]
pub struct Person {
    /// Rate of slips of figures, a reading.
    pub slips: f64,
    /// Rate of misjudged yes or no.
    pub misjudges: f64,
    /// Scatter of the eye as a share of the step read to.
    pub eye: f64,
    /// Strokes are counted.
    pub counts: bool,
}

/// What is hidden about a car besides its faults.
#[derive(Debug, Clone)]
pub struct Nature {
    pub seed: u64,
    /// True volumes, cm³, by component number.
    pub volumes: Vec<f64>,
    /// The source's vacuum at sea level as a share of the air's pressure.
    pub source_share: f64,
    /// Bore of each valve's passage and of the feed, mm.
    pub valve_mm: f64,
    pub feed_mm: f64,
    /// Leak of a sound part, std cm³/min.
    pub sound_leak: f64,
    /// Error of the gauge, Pa.
    pub gauge_error: f64,
    pub pump_worn: f64,
    pub battery: f64,
    pub charging: f64,
    pub coil_20: f64,
    pub leads: f64,
    pub wire: f64,
    pub switch_ohm: f64,
    pub pull_in: f64,
    pub lamp: f64,
    /// Volts that the module leaves on an open control pin.
    pub bias: f64,
    /// The module switches off when it sees no load.
    pub off_without_load: bool,
    /// The module works the valve only in gear.
    pub only_in_gear: bool,
    /// Vacuum makes the mounts soft.
    pub softens: bool,
    /// The module lets the feed relay drop before anybody measures, key on and engine off.
    pub relay_drops: bool,
    pub duty: f64,
    pub rpm: f64,
    /// Intensity of the engine's shaking as felt, sound and mounts as they should.
    pub shake: f64,
}

/// A car with its scene.
#[derive(Debug, Clone)]
pub struct Car<'a> {
    pub scene: &'a Scene,
    pub nature: Nature,
    pub ailments: Vec<Ailment>,
}

impl Nature {
    /// What may be hidden about a car of this scene.
    pub fn drawn(scene: &Scene, seed: u64) -> Self {
        use holdfast_diagnose::{VacuumMeans, Window};
        let mut d = Draw::of(seed, "nature");
        let circuit = &scene.circuit;
        let properties = &circuit.properties;
        let volumes = circuit
            .components
            .iter()
            .map(|c| {
                let v = c.volume();
                let relative = if v.value > 0.0 { v.u / v.value } else { 0.0 };
                v.value * 1e6 * (relative.min(0.4) * d.normal()).exp()
            })
            .collect();
        let (mean, sd) = match properties.source {
            SourceKind::Intake => (0.63, 0.05),
            SourceKind::MechanicalPump | SourceKind::ElectricPump => (0.87, 0.03),
        };
        let gauge = &scene.situation.instruments.gauge;
        let (middle, _) = gauge.grade.limits();
        let span = gauge.span * gauge.unit.to_pressure(1.0).value;
        let (low, high) = properties.coil_ohm;
        Self {
            seed,
            volumes,
            source_share: (mean + sd * d.normal()).clamp(0.3, 0.95),
            valve_mm: d.uniform(1.0, 1.6),
            feed_mm: d.uniform(2.2, 3.2),
            sound_leak: d.log_normal(0.15, 0.3),
            gauge_error: d.uniform(-0.7, 0.7) * middle * span,
            pump_worn: d.uniform(1.0, 1.35),
            battery: d.uniform(12.0, 12.7),
            charging: d.uniform(13.4, 14.5),
            coil_20: d.uniform(low, high),
            leads: d.uniform(0.1, 0.4),
            wire: d.uniform(0.05, 0.3),
            switch_ohm: d.uniform(0.3, 1.6),
            pull_in: d.uniform(6.5, 9.0),
            lamp: d.uniform(18.0, 34.0),
            bias: if d.happens(0.15) {
                d.uniform(0.5, 5.0)
            } else {
                d.uniform(0.0, 0.06)
            },
            off_without_load: d.happens(0.25),
            only_in_gear: match properties.window {
                Window::Idle => false,
                Window::IdleInGear => true,
                Window::Unknown => d.happens(0.3),
            },
            softens: match properties.vacuum_means {
                VacuumMeans::Soft => true,
                VacuumMeans::Stiff => false,
                VacuumMeans::Unknown => d.happens(0.8),
            },
            relay_drops: d.happens(0.5),
            duty: d.uniform(0.3, 0.6),
            rpm: 720.0 + 60.0 * d.normal(),
            shake: 0.9 + 0.3 * d.normal(),
        }
    }
}

impl Scene {
    /// A figure on the gauge's scale.
    pub fn figure(&self, vacuum: f64) -> f64 {
        vacuum / self.unit()
    }

    /// Pa per unit of the gauge.
    pub fn unit(&self) -> f64 {
        self.situation.instruments.gauge.unit.to_pressure(1.0).value
    }

    /// What the gauge is read to, in its own unit.
    pub fn step(&self) -> f64 {
        self.situation.instruments.gauge.read_to
    }

    /// Scatter of one reading of the gauge, in its own unit.
    pub fn eye(&self) -> f64 {
        self.person.eye * self.step() + 0.02 * INHG / self.unit()
    }

    pub fn number(&self, id: &holdfast_diagnose::ComponentId) -> Option<usize> {
        self.circuit.components.iter().position(|c| &c.id == id)
    }

    pub fn kind(&self, number: usize) -> ComponentKind {
        self.circuit.components[number].kind
    }
}

impl Car<'_> {
    /// What a sound source makes, Pa below the air around.
    ///
    /// An intake keeps its absolute pressure, whatever the air outside: its vacuum is less by what the air has less, about
    /// 1 inHg per 300 m (public training texts). A pump takes its share of what there is.
    pub fn source_vacuum(&self) -> f64 {
        let (share, ambient) = (self.nature.source_share, self.scene.ambient);
        match self.scene.circuit.properties.source {
            SourceKind::Intake => (ambient - (1.0 - share) * standard_atmosphere(0.0)).max(0.0),
            SourceKind::MechanicalPump | SourceKind::ElectricPump => share * ambient,
        }
    }

    /// What is drawn anew each time a test is done, the same for the same car and test.
    pub fn each_time(&self, test: &TestId) -> Draw {
        Draw::of(self.nature.seed, &test.to_string())
    }
}
