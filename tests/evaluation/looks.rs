//! What is seen of each part when the circuit is looked over. Rates are this evaluation's own, from memory.

use holdfast_diagnose::{ComponentKind, LookState};

use crate::ailments::Harm;
use crate::law::{Key, Law};
use crate::physics::Physics;

/// One entry a part that may show something; what isn't named is ok.
pub fn fields(physics: &Physics<'_, '_>) -> Vec<(Key, Law)> {
    let parts = physics.car.scene.circuit.components.iter();
    parts
        .filter_map(|c| {
            let sound: &[(LookState, f64)] = match c.kind {
                ComponentKind::Hose => &[
                    (LookState::Cracked, 0.015),
                    (LookState::Oily, 0.03),
                    (LookState::Kinked, 0.006),
                    (LookState::Off, 0.001),
                    (LookState::WetInside, 0.003),
                ],
                ComponentKind::Tee
                | ComponentKind::CheckValve
                | ComponentKind::Reservoir
                | ComponentKind::Valve => &[(LookState::Cracked, 0.008), (LookState::Oily, 0.02)],
                ComponentKind::Mount => &[(LookState::Oily, 0.06), (LookState::Cracked, 0.03)],
                ComponentKind::Wire => &[(LookState::Chafed, 0.012)],
                ComponentKind::Connector | ComponentKind::Splice | ComponentKind::GroundPoint => {
                    &[(LookState::Corroded, 0.03)]
                }
                _ => return None,
            };
            let faults = physics
                .car
                .ailments
                .iter()
                .filter(|a| a.fault.id.component == c.id);
            let shown = faults
                .filter_map(|a| sign(a.fault.harm, c.kind, &a.fault.id.mode))
                .next();
            let mut states: Vec<(&'static str, f64)> = sound
                .iter()
                .map(|(s, p)| (s.as_str(), p * shown.map_or(1.0, |(_, q)| 1.0 - q)))
                .collect();
            if let Some((state, p)) = shown {
                match states.iter_mut().find(|(s, _)| *s == state.as_str()) {
                    Some((_, old)) => *old += p,
                    None => states.push((state.as_str(), p)),
                }
            }
            let seen: f64 = states.iter().map(|(_, p)| p).sum();
            states.insert(0, ("ok", 1.0 - seen));
            Some((Key::from(c.id.as_str().to_owned()), Law::Choice(states)))
        })
        .collect()
}

/// What a fault looks like, and how often it is seen.
fn sign(harm: Harm, kind: ComponentKind, mode: &str) -> Option<(LookState, f64)> {
    Some(match (harm, kind) {
        (Harm::Leaks, ComponentKind::Hose) => (LookState::Cracked, 0.45),
        (Harm::Leaks, ComponentKind::Tee) => (LookState::Cracked, 0.4),
        (Harm::Leaks, ComponentKind::CheckValve | ComponentKind::Reservoir) => (LookState::Cracked, 0.3),
        (Harm::Leaks, ComponentKind::Valve) => (LookState::Cracked, 0.15),
        (Harm::Off, _) => (LookState::Off, 0.85),
        (Harm::Blocks, ComponentKind::Hose) => (LookState::Kinked, 0.5),
        (Harm::Fluid, _) => (LookState::WetInside, 0.7),
        (Harm::Opens, ComponentKind::Wire) => (LookState::Chafed, 0.45),
        (Harm::ToGround, ComponentKind::Wire) => (LookState::Chafed, 0.65),
        (Harm::ToBattery, ComponentKind::Wire) => (LookState::Chafed, 0.5),
        (Harm::Resists, ComponentKind::Wire) => (LookState::Chafed, 0.2),
        (Harm::Resists, ComponentKind::Connector) => (LookState::Corroded, 0.7),
        (Harm::Opens, ComponentKind::Connector) => (LookState::Off, 0.3),
        (Harm::Resists | Harm::Opens, ComponentKind::Splice | ComponentKind::GroundPoint) => {
            (LookState::Corroded, 0.55)
        }
        (Harm::MountDead, _) if mode == "fluid_lost" => (LookState::Oily, 0.45),
        _ => return None,
    })
}
