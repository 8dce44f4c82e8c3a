//! Places, circuits, instruments, people: what both sides of the evaluation know of a job.

use std::collections::{BTreeMap, BTreeSet};

use holdfast_diagnose::{
    Circuit, CircuitChoice, ComponentKind, CustomCircuit, Engine, Feed, Instruments, Place, Profile,
    Situation, Switched, TestId, TestKind, Tool, VacuumMeans, Window, hold_target,
};
use holdfast_measure::{Gauge, GaugeGrade, Meter, PressureUnit};

use crate::air::standard_atmosphere;
use crate::car::{Person, Scene};
use crate::draw::Draw;

/// Vacuum layouts with their electric layout and their share of the jobs. Left out: the valve open at rest, the supply side
/// switched and push-pull outputs, where the design doesn't say what "commanded" and "pin 1" mean for a reader.
const LAYOUTS: &[(&str, Option<&str>, f64)] = &[
    ("two-mounts-one-valve", None, 0.48),
    ("two-mounts-one-valve", Some("relay-fed-ground-switched"), 0.12),
    ("one-mount", None, 0.08),
    ("four-mounts", None, 0.08),
    ("reservoir-on-tee", None, 0.05),
    ("two-valves-shared-feed", None, 0.05),
    ("pump-with-brake-booster", None, 0.03),
    ("two-stage-mount", None, 0.02),
    ("bled-branch", None, 0.02),
    ("restricted-branch", None, 0.03),
    ("pulsed-mount", None, 0.02),
    ("shared-valve-block", None, 0.02),
];

/// A scene, without its complaint.
pub fn drawn(seed: u64) -> Scene {
    let mut d = Draw::of(seed, "scene");
    let (template, electric, _) = LAYOUTS[d.by_weight(LAYOUTS.iter().map(|(_, _, w)| *w))];
    let mut custom = CustomCircuit {
        template: template.to_owned(),
        electric: electric.map(str::to_owned),
        ..CustomCircuit::default()
    };
    if d.happens(0.65) {
        custom.vacuum_means = if d.happens(0.8) {
            VacuumMeans::Soft
        } else {
            VacuumMeans::Stiff
        };
    }
    if electric.is_none() && d.happens(0.6) {
        custom.switched = Switched::Ground;
        custom.feed = Feed::Ignition;
    }
    if d.happens(0.6) {
        custom.window = if d.happens(0.75) {
            Window::Idle
        } else {
            Window::IdleInGear
        };
    }
    if d.happens(0.3) {
        custom.chamber_cm3 = chambers(template, &mut d);
    }
    let choice = CircuitChoice::from(custom);
    let circuit = Circuit::build(&choice).expect("the layouts are the core's own");
    let situation = situation(&mut d);
    let profile = situation.profile;
    let owner = profile == Profile::Owner;
    let ambient = situation.place.ambient_kpa.map_or_else(
        || standard_atmosphere(situation.place.altitude_m.unwrap_or(0.0)),
        |kpa| kpa * 1e3,
    );
    Scene {
        kelvin: situation.place.air_c + 273.15,
        ambient,
        warm: d.happens(0.4),
        target: hold_target(&situation).vacuum.value,
        person: Person {
            slips: if owner { 0.02 } else { 0.008 },
            misjudges: if owner { 0.025 } else { 0.01 },
            eye: d.uniform(0.15, 0.35),
            counts: d.happens(0.6),
        },
        cannot: cannot(&circuit, &mut d),
        choice,
        circuit,
        situation,
    }
}

fn chambers(template: &str, d: &mut Draw) -> BTreeMap<holdfast_diagnose::ComponentId, f64> {
    let plain =
        Circuit::build(&CircuitChoice::Template(template.to_owned())).expect("a template of the core");
    plain
        .of_kind(ComponentKind::Mount)
        .map(|c| (c.id.clone(), (c.volume_cm3 * d.uniform(0.7, 1.4)).round()))
        .collect()
}

fn situation(d: &mut Draw) -> Situation {
    let altitude = if d.happens(0.5) {
        d.uniform(0.0, 300.0)
    } else {
        d.uniform(0.0, 3_000.0)
    };
    let barometer = d.happens(0.6);
    let weather = d.uniform(0.98, 1.02);
    let place = Place {
        altitude_m: (!barometer).then_some(altitude.round()),
        ambient_kpa: barometer.then(|| (standard_atmosphere(altitude) * weather / 10.0).round() / 100.0),
        air_c: d.uniform(-5.0, 38.0).round(),
    };
    let gauges = [
        (Gauge::default(), 0.5),
        (
            Gauge {
                read_to: 0.25,
                ..Gauge::default()
            },
            0.1,
        ),
        (kpa(5.0, 2.5, GaugeGrade::B), 0.1),
        (kpa(2.0, 1.0, GaugeGrade::B), 0.15),
        (
            Gauge {
                division: 0.1,
                grade: GaugeGrade::G1A,
                read_to: 0.1,
                ..Gauge::default()
            },
            0.1,
        ),
        (
            Gauge {
                unit: PressureUnit::Mbar,
                span: 1_000.0,
                division: 20.0,
                grade: GaugeGrade::C,
                read_to: 10.0,
            },
            0.05,
        ),
    ];
    let gauge = gauges[d.by_weight(gauges.iter().map(|(_, w)| *w))].0;
    let tools = (!d.happens(0.3)).then(|| {
        let kept = Tool::ALL.into_iter().filter(|tool| {
            let missing = match tool {
                Tool::HandPump => 0.0,
                Tool::Cap | Tool::Multimeter => 0.03,
                Tool::CodeReader | Tool::Tachometer => 0.3,
                Tool::FusedJumper | Tool::Lamp | Tool::SpareHose | Tool::WoodenLever => 0.15,
            };
            !d.happens(missing)
        });
        kept.collect()
    });
    Situation {
        place,
        instruments: Instruments {
            gauge,
            pump_cm3: d.uniform(22.0, 40.0).round(),
            stroke_cm3: d.uniform(12.0, 18.0).round(),
            meter: Meter::default(),
        },
        tools,
        engine: Engine {
            can_run: !d.happens(0.03),
            stopped_min: None,
        },
        second_person: d.happens(0.4),
        profile: if d.happens(0.7) {
            Profile::Mechanic
        } else {
            Profile::Owner
        },
        ..Situation::default()
    }
}

fn kpa(division: f64, read_to: f64, grade: GaugeGrade) -> Gauge {
    Gauge {
        unit: PressureUnit::KPa,
        span: 100.0,
        division,
        grade,
        read_to,
    }
}

/// In one job of six a part can't be got at.
fn cannot(circuit: &Circuit, d: &mut Draw) -> BTreeSet<TestId> {
    let mut tests = BTreeSet::new();
    if !d.happens(0.16) {
        return tests;
    }
    let parts: Vec<_> = circuit
        .components
        .iter()
        .filter(|c| c.access.open >= 1.0)
        .collect();
    let hard: Vec<f64> = parts.iter().map(|c| c.access.open).collect();
    for _ in 0..1 + usize::from(d.happens(0.4)) {
        let part = &parts[d.by_weight(hard.iter().copied())].id;
        for kind in [TestKind::Hold, TestKind::Flow, TestKind::MountMove] {
            tests.insert(TestId::on(kind, part.clone()));
        }
    }
    tests
}
