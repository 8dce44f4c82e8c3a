//! A car's ailments as physics: which parts leak how much, what is shut, what conducts.

use std::collections::BTreeMap;

use crate::ailments::{Ailment, Harm};
use crate::air::Leak;
use crate::car::Car;
use crate::draw::below;

/// The state of the parts, by component number where it is one part's.
#[derive(Debug, Clone, Default)]
pub struct Condition {
    /// Leak of the part at rest, and at work: warm, shaken.
    pub leaks: BTreeMap<usize, (Leak, Leak)>,
    /// An open end that a tester doesn't see when the hose is held alone.
    pub off: Vec<usize>,
    /// Hoses with an end off, and whether that is the end that is farther from the source.
    pub parted: BTreeMap<usize, bool>,
    /// Nothing passes on from here.
    pub blocked: Vec<usize>,
    /// It was clear enough to let a little through when tried.
    pub wet: Vec<usize>,
    /// Nothing arrives here.
    pub misrouted: Vec<usize>,
    /// Past a seat that should close.
    pub seats: BTreeMap<usize, Leak>,
    pub vents: BTreeMap<usize, Leak>,
    pub vent_blocked: Vec<usize>,
    pub stuck_closed: Vec<usize>,
    pub stuck_open: Vec<usize>,
    pub dead_mounts: Vec<usize>,
    pub loose_mounts: Vec<usize>,
    /// 1 for a sound source.
    pub source: f64,
    pub battery: f64,
    /// Open parts of the electric side.
    pub open: Vec<usize>,
    /// Ohms more than there should be.
    pub ohms: BTreeMap<usize, f64>,
    /// Faults of a connector sit in the mating contact, not in the wire's terminal; and on the control pin.
    pub mating: bool,
    pub control_pin: bool,
    pub to_ground: Vec<usize>,
    pub to_battery: Vec<usize>,
    pub coil_shorted: Vec<usize>,
    /// A coil's short to its case sits at the power pin.
    pub case_at_power: bool,
    pub module_dead: bool,
    pub module_always: bool,
    pub tester: Leak,
    pub meter_dead: bool,
    pub outside: Vec<(String, f64)>,
}

/// A leak of so many std cm³/min; three in four are holes, the others thin paths.
fn leak(ailment: &Ailment, total: f64) -> Leak {
    if ailment.form < 0.75 {
        Leak {
            hole: total,
            thin: 0.0,
        }
    } else {
        Leak {
            hole: 0.0,
            thin: total,
        }
    }
}

/// At work a split opens by movement and heat in half of the parts; in the others it stays as it is. How much: median ten
/// times, half a decade.
fn opens(ailment: &Ailment) -> f64 {
    let share = below(ailment.at_work);
    if share < 0.5 {
        1.0
    } else {
        let z = crate::draw::quantile((share - 0.5) * 2.0);
        (10.0 * 10_f64.powf(0.5 * z)).max(1.0)
    }
}

impl Condition {
    pub fn of(car: &Car<'_>) -> Self {
        let mut condition = Self {
            source: 1.0,
            battery: 1.0,
            ..Self::default()
        };
        for ailment in &car.ailments {
            condition.add(car, ailment);
        }
        condition.blow_fuses(car);
        condition
    }

    fn add(&mut self, car: &Car<'_>, ailment: &Ailment) {
        let number = car.scene.number(&ailment.fault.id.component);
        let part = number.unwrap_or(usize::MAX);
        let mut leaks = |rest: Leak, work: Leak| {
            let entry = self.leaks.entry(part).or_default();
            entry.0 += rest;
            entry.1 += work;
        };
        match ailment.fault.harm {
            Harm::Leaks => {
                // Median 130 std cm³/min, 0.65 decades: from a needle that just moves to one that drops at once.
                let total = 130.0 * ailment.factor(0.65);
                leaks(leak(ailment, total), leak(ailment, total * opens(ailment)));
            }
            Harm::Off => {
                let open = leak(
                    &Ailment {
                        form: 0.0,
                        ..ailment.clone()
                    },
                    40_000.0 * ailment.factor(0.1),
                );
                leaks(open, open);
                self.parted.insert(part, below(ailment.at_work) < 0.5);
                // Half of the ends came off because they are oval or hard: no adapter seals on them either.
                if ailment.place < 0.5 {
                    self.off.push(part);
                }
            }
            Harm::Blocks => self.blocked.push(part),
            Harm::Fluid => {
                self.blocked.push(part);
                self.wet.push(part);
            }
            Harm::Misrouted => self.misrouted.push(part),
            Harm::SeatLeaks => {
                self.seats
                    .insert(part, leak(ailment, 250.0 * ailment.factor(0.6)));
            }
            Harm::Reversed => {
                self.blocked.push(part);
                self.seats
                    .insert(part, leak(ailment, 6_000.0 * ailment.factor(0.2)));
            }
            Harm::StuckClosed => self.stuck_closed.push(part),
            Harm::StuckOpen => self.stuck_open.push(part),
            Harm::VentLeaks => {
                self.vents
                    .insert(part, leak(ailment, 1_200.0 * ailment.factor(0.6)));
            }
            Harm::VentBlocked => self.vent_blocked.push(part),
            Harm::SourceWeak => self.source = 0.25 + 0.35 * below(ailment.size),
            Harm::MountDead => self.dead_mounts.push(part),
            Harm::MountLoose => self.loose_mounts.push(part),
            Harm::BatteryWeak => self.battery = 0.80 + 0.11 * below(ailment.size),
            Harm::Opens => {
                self.open.push(part);
                self.site(ailment);
            }
            Harm::Resists => {
                self.ohms.insert(part, 50.0 * ailment.factor(0.5));
                self.site(ailment);
            }
            Harm::ToGround => {
                self.to_ground.push(part);
                self.case_at_power = ailment.place < 0.5;
            }
            Harm::ToBattery => self.to_battery.push(part),
            Harm::CoilShorted => self.coil_shorted.push(part),
            Harm::ModuleDead => self.module_dead = true,
            Harm::ModuleAlways => self.module_always = true,
            Harm::TesterLeaks => self.tester += leak(ailment, 20.0 * ailment.factor(0.5)),
            Harm::MeterDead => self.meter_dead = true,
            Harm::Outside => {
                let name = ailment.fault.id.to_string();
                self.outside.push((name, below(ailment.size)));
            }
        }
    }

    fn site(&mut self, ailment: &Ailment) {
        // Spread, pushed back or green contacts are commoner than a bad crimp behind them.
        self.mating = ailment.place < 0.75;
        self.control_pin = ailment.form < 0.5;
    }

    /// A chafed power wire or a coil shorted to ground on its fed side blows the fuse; a coil shorted in itself does so
    /// in most cars (the current is above the fuse's rating many times), in the others the module's switch gives way first.
    fn blow_fuses(&mut self, car: &Car<'_>) {
        for drive in &car.scene.circuit.drives {
            let number = |id| car.scene.number(id).unwrap_or(usize::MAX);
            let wire = self.to_ground.contains(&number(&drive.power_wire));
            let coil = self.to_ground.contains(&number(&drive.coil)) && self.case_at_power;
            let short = self.coil_shorted.contains(&number(&drive.coil)) && !self.module_dead;
            let fuse = number(&drive.fuse);
            if (wire || coil || short) && !self.open.contains(&fuse) {
                self.open.push(fuse);
            }
        }
    }
}
