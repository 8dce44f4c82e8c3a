//! Volts in a valve's circuit: a network of resistors solved by Kirchhoff's laws, the meter's own resistance included.

use holdfast_diagnose::{Drive, Switched};

use crate::car::Car;
use crate::condition::Condition;

/// Where one can touch.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Point {
    Battery = 0,
    FuseOut = 1,
    RelayOut = 2,
    SpliceOut = 3,
    /// Power terminal in the car's connector.
    PowerTerminal = 4,
    /// The valve's own pins.
    PowerPin = 5,
    ControlPin = 6,
    /// Control terminal in the car's connector.
    ControlTerminal = 7,
    ModulePin = 8,
}

const POINTS: usize = 9;
const OPEN: f64 = 1e12;
/// A good contact.
const CONTACT: f64 = 0.02;
const SHORT: f64 = 0.3;
const METER: f64 = 10e6;
/// Dirt and air: what makes an unconnected point read zero.
const AIR: f64 = 2e8;

/// How things stand while somebody measures.
#[derive(Debug, Clone, Copy)]
pub struct Setup {
    pub plugged: bool,
    /// Ignition on.
    pub key: bool,
    pub running: bool,
    /// The module is told to work the valve.
    pub commanded: bool,
    pub lamp: bool,
    /// Where the meter's leads are; without the second the black one is on ground.
    pub meter: (Point, Option<Point>),
}

/// The volts a perfect 10 MΩ meter shows.
pub fn volts(car: &Car<'_>, condition: &Condition, drive: &Drive, setup: Setup) -> f64 {
    let nature = &car.nature;
    let number = |id| car.scene.number(id).unwrap_or(usize::MAX);
    let open = |n: usize| condition.open.contains(&n);
    let more = |n: usize| condition.ohms.get(&n).copied().unwrap_or(0.0);
    let mut net = Net::default();
    let battery = battery(car, condition, setup.running);

    let fuse = number(&drive.fuse);
    net.join(0, 1, if open(fuse) || !setup.key { OPEN } else { 0.02 });
    let relay = drive.relay.as_ref().map(number);
    let relay_closed = relay.is_none_or(|r| !open(r) && (setup.running || !nature.relay_drops));
    net.join(1, 2, if relay_closed { 0.03 } else { OPEN });
    let splice = drive.splice.as_ref().map_or(usize::MAX, number);
    net.join(2, 3, if open(splice) { OPEN } else { 0.01 + more(splice) });
    let wire = number(&drive.power_wire);
    let control = number(&drive.control_wire);
    let connector = number(&drive.connector);
    // A connector's fault sits on one of its pins, in the wire's terminal or in the contact.
    let bad = |pin: bool, mating: bool| {
        let here = condition.control_pin == pin && condition.mating == mating;
        match here {
            true if open(connector) => OPEN,
            true => more(connector),
            false => 0.0,
        }
    };
    let series = |n: usize| if open(n) { OPEN } else { nature.wire + more(n) };
    net.join(3, 4, series(wire) + bad(false, false));
    let contact = |mating: f64| if setup.plugged { CONTACT + mating } else { OPEN };
    net.join(4, 5, contact(bad(false, true)));
    let coil = number(&drive.coil);
    let ohms = coil_ohms(car, condition, drive, setup.running);
    net.join(5, 6, if open(coil) { OPEN } else { ohms });
    net.join(6, 7, contact(bad(true, true)));
    net.join(7, 8, series(control) + bad(true, false));

    let drives = !condition.module_dead && (condition.module_always || setup.commanded) && setup.key;
    let sees_load = setup.plugged && !open(coil);
    let on = drives && (sees_load || !nature.off_without_load || condition.module_always);
    if on {
        net.ground(8, switch(car, ohms));
    } else {
        net.pull(8, nature.bias, 100e3);
    }
    for part in &condition.to_ground {
        if *part == wire {
            net.ground(4, SHORT);
        } else if *part == control {
            net.ground(7, SHORT);
        } else if *part == coil {
            net.ground(if condition.case_at_power { 5 } else { 6 }, 1.5);
        }
    }
    for part in &condition.to_battery {
        if *part == wire {
            net.pull(4, battery, SHORT);
        } else if *part == control {
            net.pull(7, battery, SHORT);
        }
    }
    if setup.lamp {
        net.ground(4, nature.lamp);
    }
    match setup.meter {
        (a, None) => net.ground(a as usize, METER),
        (a, Some(b)) => net.join(a as usize, b as usize, METER),
    }
    net.pull(0, battery, 1e-3);
    let at = net.solve();
    at[setup.meter.0 as usize] - setup.meter.1.map_or(0.0, |b| at[b as usize])
}

/// A pulsed output shows a meter its mean: as a resistance it lets that share of the current through.
fn switch(car: &Car<'_>, coil: f64) -> f64 {
    if car.scene.circuit.properties.pulsed {
        car.nature.switch_ohm + coil * (1.0 / car.nature.duty - 1.0)
    } else {
        car.nature.switch_ohm
    }
}

pub fn battery(car: &Car<'_>, condition: &Condition, running: bool) -> f64 {
    if running {
        // A poor battery pulls the charging voltage down a little.
        car.nature.charging * (1.0 - 0.3 * (1.0 - condition.battery))
    } else {
        car.nature.battery * condition.battery
    }
}

/// The coil at its temperature: copper, 0.00393 per kelvin (IEC 60028); a warm engine bay has 60 °C.
pub fn coil_ohms(car: &Car<'_>, condition: &Condition, drive: &Drive, hot: bool) -> f64 {
    let celsius = if hot { 60.0 } else { car.scene.kelvin - 273.15 };
    let warm = car.nature.coil_20 * (1.0 + 0.003_93 * (celsius - 20.0));
    match car.scene.number(&drive.coil) {
        Some(n) if condition.coil_shorted.contains(&n) => 0.5,
        _ => warm,
    }
}

/// Whether the valve is pulled in, engine idling.
pub fn pulled_in(car: &Car<'_>, condition: &Condition, drive: &Drive, commanded: bool) -> bool {
    let setup = Setup {
        plugged: true,
        key: true,
        running: true,
        commanded,
        lamp: false,
        meter: (Point::PowerPin, Some(Point::ControlPin)),
    };
    let shorted = car
        .scene
        .number(&drive.coil)
        .is_some_and(|n| condition.coil_shorted.contains(&n) || condition.open.contains(&n));
    // A pulsed valve follows the mean by design.
    let needed = if car.scene.circuit.properties.pulsed {
        0.3
    } else {
        1.0
    } * car.nature.pull_in;
    !shorted && volts(car, condition, drive, setup) >= needed
}

/// Layouts that this network describes: the ground side is switched.
pub fn describes(switched: Switched, push_pull: bool) -> bool {
    switched == Switched::Ground && !push_pull
}

#[derive(Default)]
struct Net {
    matrix: [[f64; POINTS]; POINTS],
    fed: [f64; POINTS],
}

impl Net {
    fn join(&mut self, a: usize, b: usize, ohms: f64) {
        let g = 1.0 / ohms.max(1e-6);
        self.matrix[a][a] += g;
        self.matrix[b][b] += g;
        self.matrix[a][b] -= g;
        self.matrix[b][a] -= g;
    }

    fn ground(&mut self, a: usize, ohms: f64) {
        self.matrix[a][a] += 1.0 / ohms;
    }

    fn pull(&mut self, a: usize, volts: f64, ohms: f64) {
        self.ground(a, ohms);
        self.fed[a] += volts / ohms;
    }

    /// Gauss's elimination; the matrix is diagonally dominant, so that no pivot is needed.
    fn solve(mut self) -> [f64; POINTS] {
        for a in 0..POINTS {
            self.ground(a, AIR);
        }
        let (m, v) = (&mut self.matrix, &mut self.fed);
        for k in 0..POINTS {
            let pivot = m[k];
            for i in k + 1..POINTS {
                let by = m[i][k] / pivot[k];
                if by != 0.0 {
                    for (x, p) in m[i].iter_mut().zip(pivot).skip(k) {
                        *x -= by * p;
                    }
                    v[i] -= by * v[k];
                }
            }
        }
        let mut x = [0.0; POINTS];
        for k in (0..POINTS).rev() {
            let known: f64 = (k + 1..POINTS).map(|j| m[k][j] * x[j]).sum();
            x[k] = (v[k] - known) / m[k][k];
        }
        x
    }
}
