//! What people see, hear and feel: complaint, looks, shake, yes and no. Rates are this evaluation's own, from memory.

use holdfast_diagnose::{TestId, TestKind};

use crate::air::{INHG, Leak};
use crate::law::{Branch, Key, Law, Slip, with_slips};
use crate::looks;
use crate::physics::{At, Physics};

type Fields = Vec<(Key, Law)>;

/// The laws of a test answered by the senses.
pub fn laws(physics: &Physics<'_, '_>, test: &TestId) -> Vec<Branch> {
    let right = fields(physics, test);
    let person = physics.car.scene.person;
    // One of the questions is misjudged, not all of them at once.
    let asked: Vec<usize> = (0..right.len())
        .filter(|n| matches!(right[*n].1, Law::Yes(_)))
        .collect();
    let each = person.misjudges / asked.len().max(1) as f64;
    let misjudged = |number: &usize| {
        let mut fields = right.clone();
        fields[*number].1 = fields[*number].1.flipped();
        (each, Slip::Misjudged, fields)
    };
    let mut slips: Vec<_> = asked.iter().map(misjudged).collect();
    if test.kind == TestKind::ValveOn {
        // The jumper makes no contact, or the wrong way round: nothing moves.
        let still = vec![
            ("passes".into(), Law::Yes(0.02)),
            ("clicks".into(), Law::Yes(0.02)),
            ("vents".into(), Law::Yes(0.9)),
        ];
        slips.push((0.6 * person.slips, Slip::WrongPin, still));
    }
    with_slips(Branch::right(right), slips)
}

fn fields(physics: &Physics<'_, '_>, test: &TestId) -> Fields {
    let id = test.part.clone().unwrap_or_else(|| "".into());
    let part = physics.number(&id);
    let condition = &physics.condition;
    match test.kind {
        TestKind::Complaint => {
            let complained = !physics
                .car
                .scene
                .situation
                .complaint
                .contains(&holdfast_diagnose::Complaint::None)
                && !physics.car.scene.situation.complaint.is_empty();
            vec![("present".into(), Law::Yes(if complained { 0.85 } else { 0.02 }))]
        }
        TestKind::Codes => {
            let electric = physics
                .car
                .scene
                .circuit
                .drives
                .iter()
                .any(|d| electric_fault_seen(physics, d));
            let mount = 1.0 - (1.0 - 0.02) * if electric { 0.4 } else { 1.0 };
            let engine = if outside(physics, "engine/rough").is_some() {
                0.5
            } else {
                0.05
            };
            let (none, one) = ((1.0 - mount) * (1.0 - engine), mount * (1.0 - engine));
            vec![(
                "list".into(),
                Law::Choice(vec![
                    ("", none),
                    ("P0A14", one),
                    ("P0300", (1.0 - mount) * engine),
                    ("P0A14 P0300", mount * engine),
                ]),
            )]
        }
        TestKind::IdleQuality => {
            let rough = outside(physics, "engine/rough").is_some();
            let low = outside(physics, "engine/idle_low").is_some();
            let rpm = if low { 490.0 } else { physics.car.nature.rpm };
            vec![
                ("rpm".into(), Law::number(rpm, 15.0, 10.0)),
                (
                    "steady".into(),
                    Law::Yes(if rough {
                        0.35
                    } else if low {
                        0.7
                    } else {
                        0.97
                    }),
                ),
                ("rough".into(), Law::Yes(if rough { 0.92 } else { 0.04 })),
            ]
        }
        TestKind::MountLook => {
            let mode = mode_at(physics, &id);
            let torn = match mode {
                Some("torn") => 0.85,
                Some("leaks") => 0.06,
                _ => 0.02,
            };
            let wet = if mode == Some("fluid_lost") { 0.85 } else { 0.05 };
            let sag = match mode {
                Some("torn") => 3.0,
                Some("fluid_lost") => 2.0,
                Some("sagged") => 5.5,
                _ => 0.0,
            };
            vec![
                ("torn".into(), Law::Yes(torn)),
                ("wet".into(), Law::Yes(wet)),
                ("sag_mm".into(), Law::number(sag, 1.2, 1.0)),
            ]
        }
        TestKind::MountMove => {
            let mode = mode_at(physics, &id);
            let elsewhere = ["strut/worn", "solid_mount/broken"]
                .iter()
                .any(|n| outside(physics, n).is_some());
            let clunk = match mode {
                Some("loose") => 0.9,
                Some("torn") => 0.5,
                _ if elsewhere => 0.25,
                _ => 0.03,
            };
            let gap = match mode {
                Some("torn") => 0.85,
                Some("under_tension") => 0.1,
                _ => 0.02,
            };
            vec![
                ("clunk".into(), Law::Yes(clunk)),
                ("gap_opens".into(), Law::Yes(gap)),
            ]
        }
        TestKind::Look => looks::fields(physics),
        TestKind::Flow => {
            let free = match (condition.blocked.contains(&part), condition.wet.contains(&part)) {
                (true, true) => 0.2,
                (true, false) => 0.04,
                _ => 0.98,
            };
            vec![("free".into(), Law::Yes(free))]
        }
        TestKind::Bypass => {
            // Vacuum by a wide hose to the valve's outlet: every mount behind it that can get it answers.
            let full = physics.full() * condition.source;
            let drive = physics.drive(test);
            let change = softened(physics, |id| {
                let vacuum = if reaches(physics, &physics.outlet(&drive.valve), id) {
                    full
                } else {
                    0.0
                };
                // A big leak behind the hose's end takes even a wide hose's vacuum; an end that was off there is on it now.
                let outlet = physics.outlet(&drive.valve);
                let put_on = condition.parted.get(&physics.number(&outlet)) == Some(&false);
                let lets_in = |(part, (_, work)): (&usize, &(Leak, Leak))| {
                    let id = physics.car.scene.circuit.components.get(*part).map(|c| &c.id);
                    let counts = |id| reaches(physics, &outlet, id) && !(put_on && *id == outlet);
                    if id.is_some_and(counts) { work.total() } else { 0.0 }
                };
                let leak: f64 = condition.leaks.iter().map(lets_in).sum();
                vacuum / (1.0 + leak / 40_000.0)
            }) - softened(physics, |_| 0.0);
            vec![("changes".into(), Law::Yes(felt(change.abs())))]
        }
        TestKind::ValveOff | TestKind::ValveOn => valve(physics, test),
        TestKind::Shake => shake(physics, test),
        _ => vec![("steady".into(), Law::Yes(0.97))],
    }
}

pub fn outside(physics: &Physics<'_, '_>, name: &str) -> Option<f64> {
    physics
        .condition
        .outside
        .iter()
        .find(|(n, _)| n == name)
        .map(|(_, s)| *s)
}

fn mode_at<'p>(physics: &'p Physics<'_, '_>, id: &holdfast_diagnose::ComponentId) -> Option<&'p str> {
    let here = physics.car.ailments.iter().find(|a| &a.fault.id.component == id);
    here.map(|a| &*a.fault.id.mode)
}

/// The module notices no current, or too much.
pub fn electric_fault_seen(physics: &Physics<'_, '_>, drive: &holdfast_diagnose::Drive) -> bool {
    let condition = &physics.condition;
    drive.parts().into_iter().map(|id| physics.number(id)).any(|n| {
        condition.open.contains(&n)
            || condition.to_ground.contains(&n)
            || condition.to_battery.contains(&n)
            || condition.coil_shorted.contains(&n)
            || condition.ohms.get(&n).is_some_and(|r| *r > 100.0)
    })
}

/// Whether vacuum at one component comes to another.
fn reaches(
    physics: &Physics<'_, '_>,
    from: &holdfast_diagnose::ComponentId,
    to: &holdfast_diagnose::ComponentId,
) -> bool {
    if from == to {
        return true;
    }
    let (circuit, condition) = (&physics.car.scene.circuit, &physics.condition);
    let at = physics.number(from);
    let shut = condition.blocked.contains(&at) || condition.parted.get(&at) == Some(&true);
    !shut
        && circuit.downstream(from).any(|next| {
            let number = physics.number(next);
            let cut = condition.misrouted.contains(&number) || condition.parted.get(&number) == Some(&false);
            !cut && reaches(physics, next, to)
        })
}

/// Mean share of the mounts' effect with these vacuums.
fn softened(physics: &Physics<'_, '_>, vacuum: impl Fn(&holdfast_diagnose::ComponentId) -> f64) -> f64 {
    let (mut sum, mut count) = (0.0, 0.0);
    for (number, id) in physics.mounts() {
        sum += physics.answers(number, vacuum(id));
        count += 1.0;
    }
    sum / f64::max(count, 1.0)
}

/// Probability that somebody notices a change of so large a share of all mounts' effect.
fn felt(change: f64) -> f64 {
    0.04 + 0.88 * (change / 0.4).clamp(0.0, 1.0)
}

/// How strongly it shakes, 0–3, with so much of the mounts' effect.
fn level(physics: &Physics<'_, '_>, effect: f64) -> f64 {
    let hard = if physics.car.nature.softens {
        1.0 - effect
    } else {
        effect
    };
    let engine = [
        "engine/rough",
        "engine/idle_low",
        "exhaust/touching",
        "solid_mount/broken",
        "other",
        "strut/worn",
    ]
    .iter()
    .filter_map(|n| outside(physics, n))
    .fold(0.0_f64, |a, s| a + 1.0 + s);
    let loose = if physics.condition.loose_mounts.is_empty() {
        0.0
    } else {
        0.5
    };
    physics.car.nature.shake + 1.8 * hard + engine + loose
}

fn rated(level: f64) -> Law {
    const SD: f64 = 0.45;
    let up_to = |x: f64| crate::draw::below((x - level) / SD);
    Law::Choice(vec![
        ("0", up_to(0.5)),
        ("1", up_to(1.5) - up_to(0.5)),
        ("2", up_to(2.5) - up_to(1.5)),
        ("3", 1.0 - up_to(2.5)),
    ])
}

fn shake(physics: &Physics<'_, '_>, test: &TestId) -> Fields {
    let at = |id: &holdfast_diagnose::ComponentId| physics.vacuum(At::Idle, id);
    let (on, off) = match &test.part {
        None => (softened(physics, at), softened(physics, |_| 0.0)),
        // One mount on the hand pump: it keeps its vacuum for the minute only if it doesn't leak much.
        Some(mount) => {
            let leak = physics
                .condition
                .leaks
                .get(&physics.number(mount))
                .map_or(0.0, |(_, work)| work.total());
            let pumped = if leak > 250.0 {
                0.0
            } else {
                physics.car.scene.target
            };
            let with = |vacuum: f64| softened(physics, |id| if id == mount { vacuum } else { at(id) });
            (with(pumped), with(0.0))
        }
    };
    vec![
        ("on_0_3".into(), rated(level(physics, on))),
        ("off_0_3".into(), rated(level(physics, off))),
    ]
}

fn valve(physics: &Physics<'_, '_>, test: &TestId) -> Fields {
    let condition = &physics.condition;
    let drive = physics.drive(test);
    let (valve, coil) = (physics.number(&drive.valve), physics.number(&drive.coil));
    let on = test.kind == TestKind::ValveOn;
    let works = !condition.open.contains(&coil) && !condition.coil_shorted.contains(&coil);
    let opened =
        condition.stuck_open.contains(&valve) || (on && works && !condition.stuck_closed.contains(&valve));
    let seat = condition.seats.get(&valve).map_or(0.0, |l| l.total());
    // A seat that lets more than a hand pump removes can't be told from an open one.
    let passes = if opened {
        0.98
    } else {
        0.02 + 0.93 * (seat / 600.0).min(1.0)
    };
    let mut fields: Fields = vec![("passes".into(), Law::Yes(passes))];
    if on {
        // A stuck valve's coil still pulls at it: some click a little.
        let click = match (
            works,
            condition.stuck_closed.contains(&valve) || condition.stuck_open.contains(&valve),
        ) {
            (false, _) => 0.02,
            (true, true) => 0.3,
            (true, false) => 0.96,
        };
        let hiss = condition.vents.get(&valve).map_or(0.0, |l| l.total());
        let leaks = if opened {
            0.02 + 0.9 * (hiss / 400.0).min(1.0)
        } else {
            0.4
        };
        fields.push(("clicks".into(), Law::Yes(click)));
        fields.push(("vents".into(), Law::Yes(if opened { leaks } else { 0.9 })));
    } else {
        let blocked = condition.vent_blocked.contains(&valve);
        let vents = if blocked || condition.stuck_open.contains(&valve) {
            0.05
        } else {
            0.97
        };
        fields.push(("vents".into(), Law::Yes(vents)));
    }
    fields
}

/// Whether vacuum is kept at a mount when it should leave.
pub fn kept(physics: &Physics<'_, '_>, mount: &holdfast_diagnose::ComponentId) -> bool {
    let vent_blocked = physics.car.scene.circuit.drives.iter().any(|d| {
        let valve = physics.number(&d.valve);
        physics.condition.vent_blocked.contains(&valve) && reaches(physics, &physics.outlet(&d.valve), mount)
    });
    let before = physics.vacuum(At::InGear, mount);
    physics.vacuum(At::Faster, mount) > 5.0 * INHG || (vent_blocked && before > 5.0 * INHG)
}
