//! What the customer complains of. Rates are this evaluation's own, from memory.

use std::collections::BTreeSet;

use holdfast_diagnose::Complaint;

use crate::draw::Draw;
use crate::physics::{At, Physics};
use crate::senses::{electric_fault_seen, kept, outside};

/// How often people come without a complaint, for a check.
pub const CHECK_ONLY: f64 = 0.04;

/// The probability of each complaint with this car.
pub fn rates(physics: &Physics<'_, '_>) -> Vec<(Complaint, f64)> {
    use Complaint::{
        Clunk, CodeStored, HarshPullingAway, ShakeIdle, ShakeIdleGear, ShakeIdleSlight, SoftUnderWay,
    };
    let mut without: Vec<(Complaint, f64)> = [
        ShakeIdle,
        ShakeIdleSlight,
        ShakeIdleGear,
        HarshPullingAway,
        SoftUnderWay,
        Clunk,
    ]
    .into_iter()
    .map(|c| (c, 1.0 - 0.012))
    .chain([(CodeStored, 1.0 - 0.008)])
    .collect();
    let mut add = |list: &[(Complaint, f64)], strength: f64| {
        for (complaint, rate) in list {
            if let Some((_, p)) = without.iter_mut().find(|(c, _)| c == complaint) {
                *p *= 1.0 - rate * strength;
            }
        }
    };
    let car = physics.car;
    let count = physics.mounts().count().max(1) as f64;
    let (mut lacking, mut stuck, mut loose) = (0.0, 0.0, 0.0);
    for (number, id) in physics.mounts() {
        // The worst mount is felt, the others add to it.
        let answers = physics.answers(number, physics.vacuum(At::InGear, id));
        lacking += (1.0 - answers) / count;
        stuck += f64::from(kept(physics, id)) / count;
        loose += f64::from(physics.condition.loose_mounts.contains(&number));
    }
    let torn = car.ailments.iter().any(|a| *a.fault.id.mode == *"torn");
    let felt = |share: f64| if share > 0.05 { 0.45 + 0.55 * share } else { 0.0 };
    let shakes = [
        (ShakeIdle, 0.65),
        (ShakeIdleGear, 0.6),
        (ShakeIdleSlight, 0.25),
        (HarshPullingAway, 0.15),
    ];
    let wallows = [(SoftUnderWay, 0.65), (Clunk, 0.5)];
    if car.nature.softens {
        add(&shakes, felt(lacking));
        add(&wallows, felt(stuck));
    } else {
        add(&wallows, felt(lacking));
        add(&shakes, felt(stuck));
    }
    if loose > 0.0 || torn {
        add(&[(Clunk, 0.75), (SoftUnderWay, 0.4)], 1.0);
    }
    if car
        .scene
        .circuit
        .drives
        .iter()
        .any(|d| electric_fault_seen(physics, d))
    {
        add(&[(CodeStored, 0.45)], 1.0);
    }
    for (name, list) in [
        (
            "engine/rough",
            &[(ShakeIdle, 0.8), (ShakeIdleGear, 0.5), (CodeStored, 0.35)][..],
        ),
        ("engine/idle_low", &[(ShakeIdle, 0.7), (ShakeIdleGear, 0.6)]),
        (
            "strut/worn",
            &[(Clunk, 0.6), (SoftUnderWay, 0.4), (ShakeIdleGear, 0.3)],
        ),
        ("exhaust/touching", &[(ShakeIdle, 0.65), (ShakeIdleSlight, 0.4)]),
        (
            "solid_mount/broken",
            &[(Clunk, 0.5), (ShakeIdle, 0.5), (SoftUnderWay, 0.3)],
        ),
        ("drivetrain/other", &[(Clunk, 0.6), (HarshPullingAway, 0.5)]),
        ("other", &[(ShakeIdle, 0.4), (ShakeIdleSlight, 0.3), (Clunk, 0.3)]),
    ] {
        if outside(physics, name).is_some() {
            add(list, 1.0);
        }
    }
    without.into_iter().map(|(c, p)| (c, 1.0 - p)).collect()
}

/// What is complained of; `None`: nobody comes with this car.
pub fn drawn(physics: &Physics<'_, '_>, draw: &mut Draw) -> Option<BTreeSet<Complaint>> {
    let felt: BTreeSet<Complaint> = rates(physics)
        .into_iter()
        .filter(|(_, p)| draw.happens(*p))
        .map(|(c, _)| c)
        .collect();
    if !felt.is_empty() {
        return Some(felt);
    }
    draw.happens(CHECK_ONLY).then(|| [Complaint::None].into())
}

/// Natural logarithm of the probability of just these complaints.
pub fn ln_mass(physics: &Physics<'_, '_>, felt: &BTreeSet<Complaint>) -> f64 {
    let each = rates(physics);
    each.into_iter()
        .map(|(c, p)| {
            if felt.contains(&c) {
                p.ln()
            } else {
                (1.0 - p).max(1e-9).ln()
            }
        })
        .sum()
}
