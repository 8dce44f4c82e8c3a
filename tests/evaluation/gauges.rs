//! Gauge readings with the engine idling: source, delivered, switch-over.

use holdfast_diagnose::{ComponentId, TestId, TestKind};

use crate::air::INHG;
use crate::law::{Branch, Key, Law, Slip, with_slips};
use crate::physics::{At, Physics};

/// The laws of a gauge reading.
pub fn laws(physics: &Physics<'_, '_>, test: &TestId) -> Vec<Branch> {
    let slips = physics.car.scene.person.slips;
    let right = fields(physics, test, physics.window());
    let scaled = |by: f64| -> Vec<(Key, Law)> {
        right
            .iter()
            .map(|(k, law)| (k.clone(), if k == "gauge" { law.scaled(by) } else { law.clone() }))
            .collect()
    };
    let unit = physics.car.scene.situation.instruments.gauge.unit;
    let inner = if unit == holdfast_measure::PressureUnit::InHg {
        2.54
    } else {
        1.0 / 3.386
    };
    let mut more = vec![
        (0.3 * slips, Slip::InnerScale, scaled(inner)),
        (
            0.3 * slips,
            Slip::WrongUnit,
            scaled(if inner > 1.0 { 3.386 } else { 0.1 }),
        ),
    ];
    if test.kind != TestKind::Source {
        // Read while the module did not work the valve: too soon after the start, air conditioning on.
        more.push((0.4 * slips, Slip::EngineState, fields(physics, test, At::Faster)));
    }
    with_slips(Branch::right(right), more)
}

fn vacuum(physics: &Physics<'_, '_>, pa: f64, unsteady: f64) -> Law {
    let scene = physics.car.scene;
    let sd = scene.figure(unsteady).hypot(scene.eye());
    let shown = if pa > 0.02 * INHG {
        pa + physics.car.nature.gauge_error
    } else {
        0.0
    };
    Law::number(scene.figure(shown.max(0.0)), sd, scene.step())
}

fn fields(physics: &Physics<'_, '_>, test: &TestId, at: At) -> Vec<(Key, Law)> {
    let valve = &physics.drive(test).valve;
    match test.kind {
        TestKind::Source => {
            let pa = physics.at_hose_off(valve);
            let rough = physics
                .condition
                .outside
                .iter()
                .any(|(name, _)| name == "engine/rough");
            vec![
                ("gauge".into(), vacuum(physics, pa, 0.5 * INHG)),
                ("steady".into(), Law::Yes(if rough { 0.35 } else { 0.95 })),
            ]
        }
        TestKind::Delivered => {
            let pa = physics.vacuum(at, &physics.outlet(valve));
            vec![
                ("gauge".into(), vacuum(physics, pa, 0.5 * INHG)),
                ("seconds".into(), Law::number(2.0, 0.7, 0.5)),
            ]
        }
        _ => switch_over(physics, valve, at),
    }
}

/// The command ends: does the vacuum leave, and how fast?
fn switch_over(physics: &Physics<'_, '_>, valve: &ComponentId, at: At) -> Vec<(Key, Law)> {
    let outlet = physics.outlet(valve);
    let (before, later) = (physics.vacuum(at, &outlet), physics.vacuum(At::Faster, &outlet));
    let vent_blocked = physics.condition.vent_blocked.contains(&physics.number(valve));
    if before < INHG {
        return rest(physics, 0.0, 0.3, 0.5);
    }
    if later > 3.0 * INHG && !vent_blocked {
        // It stays: the needle does not move, and somebody gives up after a while or says at once that it rests.
        return rest(physics, later, 1.0, 3.0);
    }
    if vent_blocked {
        // It creeps away by the leaks of sound parts; given up after a quarter of a minute.
        let mut fields = rest(physics, 0.6 * before, 14.0, 4.0);
        fields[1].1 = vacuum(physics, 0.6 * before, 3.0 * INHG);
        return fields;
    }
    rest(physics, 0.0, 1.3, 0.4)
}

fn rest(physics: &Physics<'_, '_>, pa: f64, seconds: f64, sd: f64) -> Vec<(Key, Law)> {
    vec![
        ("seconds".into(), Law::number(seconds, sd, 0.5)),
        ("gauge".into(), vacuum(physics, pa, 0.4 * INHG)),
    ]
}
