//! Vacuum hold tests: which leaks the pump sees, how far it gets, how the needle falls, what a person reads.

use holdfast_diagnose::{ComponentKind, TestId, TestKind};

use crate::air::{INHG, Leak, after, pumped};
use crate::draw::Draw;
use crate::law::{Branch, Key, Law, Slip, with_slips};
use crate::physics::Physics;

/// Strokes of somebody pumping steadily, a minute.
const STROKES_A_MINUTE: f64 = 50.0;

/// What is under the pump.
struct Bench {
    leak: Leak,
    cm3: f64,
    has_rubber: bool,
}

/// The parts that the pump reaches from where it is put, in a chain or tree cut where something is shut.
fn reached(physics: &Physics<'_, '_>, parts: &[usize]) -> Vec<usize> {
    let circuit = &physics.car.scene.circuit;
    let Some(first) = parts.first() else {
        return Vec::new();
    };
    // From the branch's outlet towards the mounts, from the valve's inlet towards the source: both ways over links.
    let mut found = vec![*first];
    let mut next = 0;
    while let Some(here) = found.get(next).copied() {
        next += 1;
        for link in &circuit.links {
            let (near, far) = (physics.number(&link.from), physics.number(&link.to));
            // A check valve the wrong way round is shut to the source's pull and open to the air behind it.
            let condition = &physics.condition;
            let shut = (condition.blocked.contains(&near) && !condition.seats.contains_key(&near))
                || condition.misrouted.contains(&far);
            for (a, b) in [(near, far), (far, near)] {
                if a == here && !shut && parts.contains(&b) && !found.contains(&b) {
                    found.push(b);
                }
            }
        }
    }
    found
}

fn bench(physics: &Physics<'_, '_>, test: &TestId) -> Bench {
    let car = physics.car;
    let circuit = &car.scene.circuit;
    let condition = &physics.condition;
    let mut leak = condition.tester;
    leak.thin += 0.02;
    let mut cm3 = car.scene.situation.instruments.pump_cm3;
    let mut has_rubber = false;
    let scope: Vec<usize> = circuit
        .scope(test)
        .map(|s| s.parts.iter().filter_map(|id| car.scene.number(id)).collect())
        .unwrap_or_default();
    let alone = scope.len() == 1;
    // The inlet side is pumped from its end at the valve, the branch from its first hose.
    let inlet = test
        .part
        .as_ref()
        .is_some_and(|p| p.as_str().starts_with("inlet"))
        && circuit
            .component(test.part.as_ref().unwrap_or(&"".into()))
            .is_none();
    let mut order = scope;
    if inlet {
        let valve = &physics.drive_of_reach(test).valve;
        let at = physics.number(&physics.inlet(valve));
        order.sort_by_key(|n| *n != at);
    }
    for part in reached(physics, &order) {
        let kind = car.scene.kind(part);
        cm3 += car.nature.volumes[part];
        has_rubber |= kind == ComponentKind::Mount;
        let off = circuit_off(physics, part);
        let own = condition
            .leaks
            .get(&part)
            .map(|(rest, _)| *rest)
            .unwrap_or_default();
        match kind {
            // A valve or check valve at the edge shows its seat; its body only when it is the part under test.
            ComponentKind::Valve if !alone => {}
            _ if alone && off && !condition.off.contains(&part) => {}
            _ => leak += own,
        }
        if matches!(kind, ComponentKind::Valve | ComponentKind::CheckValve) {
            leak += condition.seats.get(&part).copied().unwrap_or_default();
            if kind == ComponentKind::Valve && condition.stuck_open.contains(&part) {
                leak.hole += 6_000.0;
            }
        }
        if kind == ComponentKind::Bleed && !condition.vent_blocked.contains(&part) {
            let mm = circuit.components[part].bore_mm.unwrap_or(0.3);
            leak += crate::air::passage(mm);
        }
        leak.hole += car.nature.sound_leak;
    }
    Bench {
        leak,
        cm3,
        has_rubber,
    }
}

fn circuit_off(physics: &Physics<'_, '_>, part: usize) -> bool {
    let id = &physics.car.scene.circuit.components[part].id;
    let off = |a: &crate::ailments::Ailment| {
        &a.fault.id.component == id && a.fault.harm == crate::ailments::Harm::Off
    };
    physics.car.ailments.iter().any(off)
}

impl<'b> Physics<'_, 'b> {
    fn drive_of_reach(&self, test: &TestId) -> &'b holdfast_diagnose::Drive {
        let circuit = &self.car.scene.circuit;
        let named = circuit.drives.iter().find(|d| {
            test.part
                .as_ref()
                .is_some_and(|p| p.as_str().ends_with(&format!("_{}", d.valve)))
        });
        named.unwrap_or(&circuit.drives[0])
    }
}

/// The laws of a hold read at these seconds.
pub fn laws(physics: &Physics<'_, '_>, test: &TestId, seconds: &[f64]) -> Vec<Branch> {
    let mut draw = physics.car.each_time(test);
    let bench = bench(physics, test);
    let course = Course::drawn(physics, &bench, &mut draw);
    let right = course.fields(physics, &bench, seconds, 1.0);
    // A bad seal adds a leak of its own, from hardly any to a hiss.
    let seal = Leak {
        hole: draw.log_normal(150.0, 0.6),
        thin: 0.0,
    };
    let mut leaking = Bench {
        leak: bench.leak,
        ..bench
    };
    leaking.leak += seal;
    let early = course.fields(physics, &bench, seconds, draw.uniform(0.2, 0.6));
    let slips = physics.car.scene.person.slips;
    let scaled = |by: f64| -> Vec<(Key, Law)> {
        right
            .iter()
            .map(|(k, law)| {
                (
                    k.clone(),
                    if k == "strokes" {
                        law.clone()
                    } else {
                        law.scaled(by)
                    },
                )
            })
            .collect()
    };
    let unit = physics.car.scene.situation.instruments.gauge.unit;
    let inner = if unit == holdfast_measure::PressureUnit::InHg {
        2.54
    } else {
        1.0 / 3.386
    };
    with_slips(
        Branch::right(right.clone()),
        vec![
            (
                0.35 * slips,
                Slip::BadSeal,
                course.fields(physics, &leaking, seconds, 1.0),
            ),
            (0.25 * slips, Slip::StoppedEarly, early),
            (0.2 * slips, Slip::InnerScale, scaled(inner)),
            (
                0.2 * slips,
                Slip::WrongUnit,
                scaled(if inner > 1.0 { 3.386 } else { 0.1 }),
            ),
        ],
    )
}

/// What this hold is like besides its leak.
struct Course {
    /// The figure that the person pumped to, as read.
    start: f64,
    /// How much trapped gas warms (or cools), K, with a time of a minute.
    warms: f64,
    /// Rubber gives up so much, Pa, within so many seconds.
    creep: f64,
    creep_s: f64,
    /// What makes a pump give up short of the target.
    patience: f64,
}

impl Course {
    fn drawn(physics: &Physics<'_, '_>, bench: &Bench, draw: &mut Draw) -> Self {
        let scene = physics.car.scene;
        let step = scene.step();
        let steps_off = draw.by_weight([0.2, 0.6, 0.2]) as f64 - 1.0;
        Self {
            start: ((scene.figure(scene.target) / step).round() + steps_off) * step,
            warms: draw.normal() * if scene.warm { 0.9 } else { 0.25 },
            creep: if bench.has_rubber {
                draw.exponential(0.08 * INHG)
            } else {
                0.0
            },
            creep_s: draw.uniform(1.5, 5.0),
            patience: draw.uniform(1.0, 1.04),
        }
    }

    fn fields(
        &self,
        physics: &Physics<'_, '_>,
        bench: &Bench,
        seconds: &[f64],
        share: f64,
    ) -> Vec<(Key, Law)> {
        let (car, scene) = (physics.car, physics.car.scene);
        let pump = scene.situation.instruments.stroke_cm3 * STROKES_A_MINUTE * 0.75;
        let best = scene.ambient - pumped(bench.leak, scene.ambient, scene.kelvin, pump);
        let (step, eye) = (scene.step(), scene.eye());
        let start_true = self.start * scene.unit() - car.nature.gauge_error;
        let mut fields: Vec<(Key, Law)> = Vec::new();
        if best < start_true * self.patience {
            let shown = scene.figure((best + car.nature.gauge_error).max(0.0));
            fields.push(("never".into(), Law::number(shown, eye.hypot(0.03 * shown), step)));
        } else {
            fields.push(("start".into(), Law::Given(self.start)));
            let start = scene.ambient - start_true;
            for (number, t) in seconds.iter().enumerate() {
                let t = t * share;
                let p = after(bench.leak, bench.cm3, scene.ambient, scene.kelvin, start, t);
                let warming = p * self.warms / scene.kelvin * (1.0 - (-t / 60.0).exp());
                let creep = self.creep * (1.0 - (-t / self.creep_s).exp());
                let vacuum = scene.ambient - p - warming - creep;
                let shown = scene.figure((vacuum + car.nature.gauge_error).max(0.0));
                fields.push((format!("r{number}").into(), Law::number(shown, eye * 1.4, step)));
            }
        }
        if scene.person.counts {
            fields.push((
                "strokes".into(),
                self.strokes(physics, bench, start_true.min(best), pump),
            ));
        }
        fields
    }

    fn strokes(&self, physics: &Physics<'_, '_>, bench: &Bench, vacuum: f64, pump: f64) -> Law {
        let scene = physics.car.scene;
        let to = (scene.ambient - vacuum).max(0.05 * scene.ambient);
        let stroke = scene.situation.instruments.stroke_cm3;
        let clean = (scene.ambient / to).ln() / (1.0 + stroke / bench.cm3).ln();
        let against = crate::air::flow(bench.leak, scene.ambient, to, scene.kelvin)
            / (pump * to / crate::air::SEA_LEVEL);
        let n = clean * physics.car.nature.pump_worn / (1.0 - against.min(0.7));
        Law::number(n.min(60.0), 0.6 + 0.06 * n, 1.0)
    }
}

/// Whether a test is a hold.
pub fn is_hold(test: &TestId) -> bool {
    matches!(test.kind, TestKind::Hold | TestKind::HandPump)
}
