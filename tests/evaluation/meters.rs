//! Readings of a multimeter.

use holdfast_diagnose::{Catalogue, EngineNeed, TestId, TestKind};

use crate::law::{Branch, Key, Law, Slip, with_slips};
use crate::physics::{At, Physics, commanded};
use crate::wires::{Point, Setup, battery, coil_ohms, volts};

type Fields = Vec<(Key, Law)>;

/// The laws of an electric test.
pub fn laws(physics: &Physics<'_, '_>, test: &TestId) -> Vec<Branch> {
    let slips = physics.car.scene.person.slips;
    let right = fields(physics, test, physics.window());
    let mut more = Vec::new();
    let has_volts = right
        .iter()
        .any(|(k, _)| k != "ohms" && !k.ends_with("open") && k != "lamp");
    if has_volts && test.kind != TestKind::ProveMeter {
        // AC left on shows nothing of a steady voltage.
        let dead = |law: &Law| match law {
            Law::Number { .. } => Law::number(0.0, 0.02, 0.01),
            other => other.clone(),
        };
        let ac: Fields = right.iter().map(|(k, law)| (k.clone(), dead(law))).collect();
        more.push((0.3 * slips, Slip::AcVolts, ac));
    }
    match test.kind {
        TestKind::SupplyVolts => more.push((0.5 * slips, Slip::WrongPin, swapped(&right, "pin1", "pin2"))),
        TestKind::ValveVolts | TestKind::ControlPin => {
            more.push((0.6 * slips, Slip::EngineState, fields(physics, test, At::Faster)));
        }
        TestKind::PowerWire | TestKind::ControlWire | TestKind::Coil => {
            // A probe beside the terminal: no contact.
            let open: Fields = right
                .iter()
                .map(|(k, law)| (k.clone(), if k == "ohms" { Law::Open } else { law.clone() }))
                .collect();
            more.push((0.6 * slips, Slip::WrongPin, open));
        }
        _ => {}
    }
    with_slips(Branch::right(right), more)
}

fn swapped(fields: &Fields, a: &str, b: &str) -> Fields {
    let find = |key: &str| fields.iter().find(|(k, _)| k == key).map(|(_, law)| law.clone());
    let mut out = fields.clone();
    for (key, law) in &mut out {
        let other = if key == a {
            find(b)
        } else if key == b {
            find(a)
        } else {
            None
        };
        if let Some(other) = other {
            *law = other;
        }
    }
    out
}

/// Volts as a hand-held meter shows them: 0.3 % of the reading, and the battery sags and recovers between two readings.
fn shown(physics: &Physics<'_, '_>, v: f64) -> Law {
    let v = if physics.condition.meter_dead {
        0.0
    } else {
        v.max(0.0)
    };
    Law::number(v, (0.004 * v).hypot(if v > 1.0 { 0.06 } else { 0.01 }), 0.01)
}

fn ohms(physics: &Physics<'_, '_>, r: f64) -> Law {
    if physics.condition.meter_dead || r > 2e6 {
        Law::Open
    } else {
        Law::number(r + physics.car.nature.leads, (0.01 * r).hypot(0.1), 0.1)
    }
}

/// A sound answer to "is it open?".
fn open(physics: &Physics<'_, '_>, is: bool) -> Law {
    let wrong = 0.5 * physics.car.scene.person.misjudges;
    Law::Yes(if is || physics.condition.meter_dead {
        1.0 - wrong
    } else {
        wrong
    })
}

fn fields(physics: &Physics<'_, '_>, test: &TestId, at: At) -> Fields {
    let (car, condition) = (physics.car, &physics.condition);
    let drive = physics.drive(test);
    // The person does as the test says: for some circuits the supply is measured with the engine running.
    let asked = Catalogue::standard().spec(&car.scene.circuit, test);
    let running = asked.is_some_and(|spec| matches!(spec.needs.engine, EngineNeed::Idle | EngineNeed::InGear));
    let setup = Setup {
        plugged: false,
        key: true,
        running,
        commanded: running && commanded(car, at),
        lamp: false,
        meter: (Point::Battery, None),
    };
    let read = |setup: Setup| shown(physics, volts(car, condition, drive, setup));
    let at_point = |point: Point| {
        read(Setup {
            meter: (point, None),
            ..setup
        })
    };
    let battery_now = shown(physics, battery(car, condition, running));
    let part = |id| car.scene.number(id).unwrap_or(usize::MAX);
    let is_open = |id| condition.open.contains(&part(id));
    let more = |id| condition.ohms.get(&part(id)).copied().unwrap_or(0.0);
    // What of a connector's fault is seen with the connector off: the wire's terminal.
    let terminal = |control: bool| {
        let here = !condition.mating && condition.control_pin == control;
        match here {
            true if is_open(&drive.connector) => f64::INFINITY,
            true => more(&drive.connector),
            false => 0.0,
        }
    };
    let along = |id| {
        if is_open(id) {
            f64::INFINITY
        } else {
            car.nature.wire + more(id)
        }
    };
    match test.kind {
        TestKind::SupplyVolts => vec![
            ("pin1".into(), at_point(Point::PowerTerminal)),
            ("pin2".into(), at_point(Point::ControlTerminal)),
            ("battery".into(), battery_now),
        ],
        TestKind::SupplyLoaded => vec![
            (
                "pin1".into(),
                read(Setup {
                    lamp: true,
                    meter: (Point::PowerTerminal, None),
                    ..setup
                }),
            ),
            ("battery".into(), battery_now),
        ],
        TestKind::Fuse => vec![
            ("in_v".into(), shown(physics, battery(car, condition, false))),
            ("out_v".into(), at_point(Point::FuseOut)),
        ],
        TestKind::PowerWire => {
            let splice = drive.splice.as_ref().map_or(0.0, along);
            let wire = part(&drive.power_wire);
            vec![
                (
                    "ohms".into(),
                    ohms(physics, along(&drive.power_wire) + splice + terminal(false)),
                ),
                (
                    "to_ground_open".into(),
                    open(physics, !condition.to_ground.contains(&wire)),
                ),
            ]
        }
        TestKind::ValveVolts => {
            let across = (Point::PowerPin, Some(Point::ControlPin));
            vec![
                (
                    "volts".into(),
                    read(Setup {
                        meter: (Point::PowerTerminal, Some(Point::ControlTerminal)),
                        ..setup
                    }),
                ),
                (
                    "plugged_v".into(),
                    read(Setup {
                        plugged: true,
                        meter: across,
                        ..setup
                    }),
                ),
                ("battery".into(), battery_now),
            ]
        }
        TestKind::ControlPin => {
            let pin = |commanded| {
                read(Setup {
                    plugged: true,
                    commanded,
                    meter: (Point::ControlTerminal, None),
                    ..setup
                })
            };
            vec![
                ("off_v".into(), pin(false)),
                ("on_v".into(), pin(setup.commanded)),
                ("battery".into(), battery_now),
            ]
        }
        TestKind::ControlWire => {
            let wire = part(&drive.control_wire);
            vec![
                (
                    "ohms".into(),
                    ohms(physics, along(&drive.control_wire) + terminal(true)),
                ),
                (
                    "to_ground_open".into(),
                    open(physics, !condition.to_ground.contains(&wire)),
                ),
                (
                    "to_battery_open".into(),
                    open(physics, !condition.to_battery.contains(&wire)),
                ),
            ]
        }
        TestKind::Coil => {
            let coil = part(&drive.coil);
            let r = if is_open(&drive.coil) {
                f64::INFINITY
            } else {
                coil_ohms(car, condition, drive, car.scene.warm)
            };
            vec![
                ("ohms".into(), ohms(physics, r)),
                (
                    "to_case_open".into(),
                    open(physics, !condition.to_ground.contains(&coil)),
                ),
            ]
        }
        _ => vec![
            ("ohms".into(), ohms(physics, 0.0)),
            ("battery".into(), shown(physics, battery(car, condition, false))),
            ("lamp".into(), Law::Yes(0.99)),
        ],
    }
}
