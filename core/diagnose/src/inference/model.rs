//! One circuit in one situation, ready to be asked what it would show with any set of faults.

use std::borrow::Cow;
use std::cell::OnceCell;

use super::causes::{Fault, Look, faults, look};
use super::complaint::Felt;
use super::condition::{Condition, Joint, Setting};
use super::layout::{DriveParts, Layout};
use super::learning::learn;
use super::observation::Observation;
use super::vacuum::Behaviour;
use crate::faults::{Effect, FaultData, Slips, data};
use crate::{
    Catalogue, Circuit, EngineState, Feed, Situation, SourceKind, Switched, TestId, TestKind, VacuumMeans,
    Window,
};

/// A circuit in a situation, its faults, and what is not known of it.
pub(crate) struct Model<'a> {
    pub layout: Layout<'a>,
    pub situation: &'a Situation,
    pub data: &'static FaultData,
    pub faults: Vec<Fault>,
    /// Every way the circuit can be, as far as is known, with its probability.
    pub settings: Vec<(Setting, f64)>,
    /// Pressure of the air around, kPa.
    pub ambient: f64,
    /// Vacuum of the source, kPa, before any reading.
    pub source: (f64, f64),
    /// How fast people pump: cm³ a minute, with weights.
    pub pace: [(f64, f64); 5],
    /// What the gauge adds to the uncertainty of a drop, kPa.
    pub gauge_u: f64,
    /// Share of looked-over sound parts that show each state.
    pub sound_look: Look,
    /// What symptoms make people complain of.
    pub felt: Felt,
    /// How often a reading is wrong, and one that was looked at again.
    pub slips: [Slips; 2],
}

/// The state of every component under a supposed cause.
#[derive(Debug, Clone)]
pub(crate) struct World {
    pub conditions: Vec<Condition>,
    /// The faults at work, as numbers in [`Model::faults`].
    pub faults: Vec<usize>,
    /// The meter shows nothing, whatever it is held to.
    pub meter_dead: bool,
}

/// A world in a setting, with what it does at work, worked out once when first asked for.
pub(crate) struct Case<'w> {
    pub world: Cow<'w, World>,
    pub setting: Setting,
    behaviour: OnceCell<Behaviour>,
}

impl<'w> Case<'w> {
    pub fn new(world: &'w World, setting: Setting) -> Self {
        Self::of(Cow::Borrowed(world), setting)
    }

    /// The same, with the world kept.
    pub fn of(world: Cow<'w, World>, setting: Setting) -> Self {
        Self {
            world,
            setting,
            behaviour: OnceCell::new(),
        }
    }

    /// What it does at work.
    pub fn behaviour(&self, model: &Model<'_>) -> &Behaviour {
        self.behaviour
            .get_or_init(|| model.behaviour(&self.world, &model.pulls(&self.world, self.setting)))
    }
}

impl World {
    /// The condition of a component; a part that the circuit does not have is sound.
    pub fn of(&self, part: Option<usize>) -> Condition {
        part.and_then(|p| self.conditions.get(p))
            .copied()
            .unwrap_or_default()
    }
}

impl<'a> Model<'a> {
    pub fn new(circuit: &'a Circuit, situation: &'a Situation) -> Self {
        let data = data();
        let layout = Layout::new(circuit);
        let mut faults = faults(&layout, data);
        learn(&mut faults, &situation.learned, &data.learning);
        let ambient = situation.ambient().value / 1_000.0;
        let figures = &data.physics;
        let source = match circuit.properties.source {
            // An intake keeps its absolute pressure: at altitude the vacuum is less by what the air has less.
            SourceKind::Intake => {
                let share = figures.source_vacuum_share;
                (
                    (ambient - 101.325 * (1.0 - share.value)).max(0.0),
                    share.sd * 101.325,
                )
            }
            SourceKind::MechanicalPump | SourceKind::ElectricPump => (
                figures.pump_vacuum_share.value * ambient,
                figures.pump_vacuum_share.sd * ambient,
            ),
        };
        Self {
            settings: settings(circuit, data),
            layout,
            situation,
            data,
            faults,
            ambient,
            source,
            pace: pace(situation, data),
            gauge_u: situation.instruments.gauge.u_drop() * situation.instruments.gauge.unit_pa() / 1_000.0,
            felt: Felt::new(data),
            slips: [data.slips.clone(), data.slips.looked_again()],
            sound_look: look(&data.signs_when_sound),
        }
    }

    /// The world with these faults at these sizes.
    pub fn world(&self, faults: &[(usize, f64)]) -> World {
        let mut conditions = vec![Condition::default(); self.layout.circuit.components.len()];
        for &(number, size) in faults {
            let fault = &self.faults[number];
            if let Some(part) = fault.part {
                for effect in fault.effects {
                    conditions[part].suffer(effect, size);
                }
            }
        }
        let meter_dead = |f: &(usize, f64)| self.faults[f.0].effects.contains(&Effect::MeterDead);
        World {
            conditions,
            faults: faults.iter().map(|f| f.0).collect(),
            meter_dead: faults.iter().any(meter_dead),
        }
    }

    /// What the engine does in a test, where nothing else was said.
    pub fn asked_engine(&self, test: TestKind) -> EngineState {
        Catalogue::standard().engine_in(self.layout.circuit, test)
    }

    /// How often a reading like this is wrong.
    pub fn slips(&self, seen: &Observation) -> &Slips {
        &self.slips[usize::from(seen.looked_again)]
    }

    /// The drive a test is about.
    pub fn drive_of(&self, test: &TestId) -> Option<&DriveParts> {
        self.layout.drive(test.part.as_ref())
    }
}

/// Standard normal deviates and weights that stand for how fast people pump.
const PACE: [(f64, f64); 5] = [(-1.6, 0.1), (-0.8, 0.22), (0.0, 0.36), (0.8, 0.22), (1.6, 0.1)];

fn pace(situation: &Situation, data: &FaultData) -> [(f64, f64); 5] {
    let pace = data.physics.pump_strokes_per_min;
    let displaced = |z: f64| situation.instruments.stroke_cm3 * pace.value * 10f64.powf(z * pace.log10_sd);
    PACE.map(|(z, weight)| (displaced(z), weight))
}

fn settings(circuit: &Circuit, data: &FaultData) -> Vec<(Setting, f64)> {
    let (properties, rates) = (&circuit.properties, &data.rates);
    let ground = match properties.switched {
        Switched::Ground => 1.0,
        Switched::Supply => 0.0,
        Switched::Unknown => rates.switched_ground.value,
    };
    let ignition = match properties.feed {
        Feed::Ignition => 1.0,
        Feed::Relay => 0.0,
        Feed::Unknown => rates.feed_ignition.value,
    };
    let idle = match properties.window {
        Window::Idle => 1.0,
        Window::IdleInGear => 0.0,
        Window::Unknown => rates.window_idle.value,
    };
    let soft = match properties.vacuum_means {
        VacuumMeans::Soft => 1.0,
        VacuumMeans::Stiff => 0.0,
        VacuumMeans::Unknown => rates.vacuum_softens.value,
    };
    let both = |p: f64| [(true, p), (false, 1.0 - p)];
    let mut all = Vec::new();
    for (ground_switched, pg) in both(ground) {
        for (ignition_fed, pi) in both(ignition) {
            for (window_at_idle, pw) in both(idle) {
                for (softens, ps) in both(soft) {
                    let p = pg * pi * pw * ps;
                    if p > 0.0 {
                        all.push((
                            Setting {
                                ground_switched,
                                ignition_fed,
                                window_at_idle,
                                softens,
                                joint: Joint::default(),
                            },
                            p,
                        ));
                    }
                }
            }
        }
    }
    all
}
