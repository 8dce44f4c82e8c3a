//! What can be wrong with a car, and how often: the list and the rates are the core's fault data (so that the frequency
//! of faults is no point of dispute); what a fault does and looks like is this evaluation's own.

use std::sync::LazyLock;

use holdfast_diagnose::{Circuit, Component, ComponentKind, FaultId};
use serde_json::Value;

use crate::draw::Draw;

/// What a fault does to the car.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Harm {
    /// Lets air in: a split, a crack.
    Leaks,
    /// A hose end off its nipple.
    Off,
    /// Nothing passes on.
    Blocks,
    /// Fluid in the line: hardly anything passes.
    Fluid,
    /// Joined to a wrong port: nothing arrives by it.
    Misrouted,
    /// A check valve's or valve's seat.
    SeatLeaks,
    /// Check valve the wrong way round.
    Reversed,
    StuckClosed,
    StuckOpen,
    VentLeaks,
    VentBlocked,
    SourceWeak,
    MountDead,
    MountLoose,
    BatteryWeak,
    /// No current passes.
    Opens,
    /// A bad joint.
    Resists,
    ToGround,
    ToBattery,
    CoilShorted,
    ModuleDead,
    ModuleAlways,
    TesterLeaks,
    /// The meter shows nothing, whatever it is held to: a broken lead. The core has no such cause.
    MeterDead,
    /// Something outside the circuit.
    Outside,
}

/// A fault that a circuit can have.
#[derive(Debug, Clone)]
pub struct Fault {
    pub id: FaultId,
    pub harm: Harm,
    pub weight: f64,
}

struct Kind {
    kind: ComponentKind,
    mode: String,
    harm: Harm,
    weight: f64,
}

struct Data {
    kinds: Vec<Kind>,
    outside: Vec<(FaultId, f64)>,
    unknown: Vec<(String, f64)>,
}

static DATA: LazyLock<Data> = LazyLock::new(read);

fn read() -> Data {
    let text = include_str!("../../core/diagnose/data/faults.json");
    let json: Value = serde_json::from_str(text).expect("the core's fault data are JSON");
    let list = |key: &str| json[key].as_array().cloned().unwrap_or_default();
    let word = |entry: &Value, key: &str| entry[key].as_str().unwrap_or_default().to_owned();
    let mut data = Data {
        kinds: Vec::new(),
        outside: Vec::new(),
        unknown: Vec::new(),
    };
    for entry in list("modes") {
        let (kind, mode) = (word(&entry, "kind"), word(&entry, "mode"));
        let weight = entry["weight"].as_f64().unwrap_or(0.0);
        match (serde_json::from_value(entry["kind"].clone()), harm(&kind, &mode)) {
            (Ok(kind), Some(harm)) => data.kinds.push(Kind {
                kind,
                mode,
                harm,
                weight,
            }),
            // What moves a needle without a leak is in every simulated hold: no cause of anything.
            _ if entry["tester"].as_bool() == Some(true) => {}
            _ => data.unknown.push((format!("{kind}/{mode}"), weight)),
        }
    }
    for entry in list("outside") {
        // A bad tester is no cause of anything in the car; it is drawn by its own harm.
        if entry["tester"].as_bool() == Some(true) {
            continue;
        }
        let id = match word(&entry, "mode").as_str() {
            "" => FaultId::other(),
            mode => FaultId::new(word(&entry, "component").as_str(), mode),
        };
        data.outside.push((id, entry["weight"].as_f64().unwrap_or(0.0)));
    }
    data
}

fn harm(kind: &str, mode: &str) -> Option<Harm> {
    Some(match (kind, mode) {
        ("hand_pump", "leaks") => Harm::TesterLeaks,
        ("mount" | "hose" | "tee" | "check_valve" | "reservoir" | "valve", "leaks") => Harm::Leaks,
        ("hose", "off") => Harm::Off,
        ("hose" | "tee" | "source" | "restrictor", "blocked") | ("check_valve", "stuck_closed") => {
            Harm::Blocks
        }
        ("hose", "fluid_inside") => Harm::Fluid,
        ("hose", "crossed") => Harm::Misrouted,
        ("check_valve" | "valve", "passes") => Harm::SeatLeaks,
        ("check_valve", "reversed") => Harm::Reversed,
        ("valve", "stuck_closed") => Harm::StuckClosed,
        ("valve", "stuck_open") => Harm::StuckOpen,
        ("valve", "vent_leaks") => Harm::VentLeaks,
        ("valve", "vent_blocked") | ("bleed", "blocked") => Harm::VentBlocked,
        ("source", "weak") => Harm::SourceWeak,
        ("mount", "torn" | "fluid_lost" | "sagged" | "jammed" | "under_tension" | "wrong_part") => {
            Harm::MountDead
        }
        ("mount", "loose") => Harm::MountLoose,
        ("battery", "weak") => Harm::BatteryWeak,
        ("fuse", "blown") | ("relay", "dead") | ("wire" | "connector" | "splice" | "coil", "open") => {
            Harm::Opens
        }
        ("wire" | "connector" | "splice" | "ground_point", "high_resistance") => Harm::Resists,
        ("wire" | "coil", "to_ground") => Harm::ToGround,
        ("wire", "to_battery") => Harm::ToBattery,
        ("coil", "shorted") => Harm::CoilShorted,
        ("module", "dead") => Harm::ModuleDead,
        ("module", "always_on") => Harm::ModuleAlways,
        _ => return None,
    })
}

/// Modes of the core's data that this evaluation has no physics for, with their rates: they are never drawn.
pub fn not_simulated() -> &'static [(String, f64)] {
    &DATA.unknown
}

/// Everything that can be wrong around a circuit, the tester included.
pub fn faults_of(circuit: &Circuit) -> Vec<Fault> {
    fn of(component: &Component) -> impl Iterator<Item = Fault> + use<> {
        let (id, kind) = (component.id.clone(), component.kind);
        DATA.kinds
            .iter()
            .filter(move |k| k.kind == kind)
            .map(move |k| Fault {
                id: FaultId::new(id.clone(), k.mode.clone()),
                harm: k.harm,
                weight: k.weight,
            })
    }
    let mut faults: Vec<Fault> = circuit.components.iter().flat_map(of).collect();
    faults.extend(DATA.outside.iter().map(|(id, weight)| Fault {
        id: id.clone(),
        harm: Harm::Outside,
        weight: *weight,
    }));
    let tester = DATA.kinds.iter().find(|k| k.harm == Harm::TesterLeaks);
    let listed = faults.iter().any(|f| f.harm == Harm::TesterLeaks);
    if let Some(kind) = tester.filter(|_| !listed) {
        faults.push(Fault {
            id: FaultId::new("hand_pump", kind.mode.clone()),
            harm: Harm::TesterLeaks,
            weight: kind.weight,
        });
    }
    faults
}

impl Fault {
    /// A fault of the car's circuit, not of the tester and not outside.
    pub fn is_of_the_circuit(&self) -> bool {
        !matches!(self.harm, Harm::Outside | Harm::TesterLeaks | Harm::MeterDead)
    }
}

/// A fault of this car with what is hidden about it.
#[derive(Debug, Clone)]
pub struct Ailment {
    pub fault: Fault,
    /// How large, as a standard normal; what it scales depends on the harm.
    pub size: f64,
    /// How much larger at work than at rest, as a standard normal.
    pub at_work: f64,
    /// Where in the part, or which of two kinds, 0–1.
    pub place: f64,
    /// A second such share.
    pub form: f64,
}

impl Ailment {
    pub fn drawn(fault: Fault, draw: &mut Draw) -> Self {
        Self {
            fault,
            size: draw.normal(),
            at_work: draw.normal(),
            place: draw.share(),
            form: draw.share(),
        }
    }

    /// As a factor: median 1, standard deviation in decades.
    pub fn factor(&self, decades: f64) -> f64 {
        10_f64.powf(decades * self.size)
    }
}
