//! Steady vacuum in the line with the engine idling: zones of equal pressure joined by narrow passages, leaks to the air.

use crate::air::{Leak, flow, passage};
use crate::car::Car;
use crate::condition::Condition;
use holdfast_diagnose::{ComponentId, ComponentKind};

/// Absolute pressure at every component, Pa.
pub struct Line(Vec<f64>);

struct Edge {
    near: usize,
    far: usize,
    passage: Leak,
}

/// What joins two neighbours.
enum Join {
    Wide,
    Narrow(Leak),
    Cut,
}

/// A vent of a valve at rest, mm.
const VENT_MM: f64 = 1.0;

fn join(car: &Car<'_>, condition: &Condition, passing: &[usize], near: usize, far: usize) -> Join {
    // Where an end is off, no vacuum gets past it: both sides are open to the air.
    let parted = condition.parted.get(&near) == Some(&true) || condition.parted.get(&far) == Some(&false);
    if parted || condition.misrouted.contains(&far) {
        return Join::Cut;
    }
    open_port(car, condition, passing, near)
}

/// What air or vacuum passes in a part on the way to its far side.
fn open_port(car: &Car<'_>, condition: &Condition, passing: &[usize], near: usize) -> Join {
    let seat = condition.seats.get(&near).copied();
    if condition.blocked.contains(&near) {
        return seat.map_or(Join::Cut, Join::Narrow);
    }
    let part = &car.scene.circuit.components[near];
    match part.kind {
        ComponentKind::Source => Join::Narrow(passage(car.nature.feed_mm)),
        ComponentKind::Valve if passing.contains(&near) => Join::Narrow(passage(car.nature.valve_mm)),
        ComponentKind::Valve => seat.map_or(Join::Cut, Join::Narrow),
        ComponentKind::Restrictor => Join::Narrow(passage(part.bore_mm.unwrap_or(0.8))),
        _ => Join::Wide,
    }
}

impl Line {
    /// With these valves passing.
    pub fn at_work(car: &Car<'_>, condition: &Condition, passing: &[usize]) -> Self {
        let circuit = &car.scene.circuit;
        let ambient = car.scene.ambient;
        let count = circuit.components.len();
        let mut zone: Vec<usize> = (0..count).collect();
        let mut edges = Vec::new();
        let links: Vec<(usize, usize)> = circuit
            .links
            .iter()
            .filter_map(|l| Some((car.scene.number(&l.from)?, car.scene.number(&l.to)?)))
            .collect();
        for &(near, far) in &links {
            match join(car, condition, passing, near, far) {
                Join::Wide => {
                    let (keep, give) = (zone[near], zone[far]);
                    for z in &mut zone {
                        if *z == give {
                            *z = keep;
                        }
                    }
                }
                Join::Narrow(passage) => edges.push((near, far, passage)),
                Join::Cut => {}
            }
        }
        let edges: Vec<Edge> = edges
            .into_iter()
            .map(|(near, far, passage)| Edge {
                near: zone[near],
                far: zone[far],
                passage,
            })
            .collect();
        let mut leaks = vec![Leak::default(); count];
        for (part, (_, work)) in &condition.leaks {
            if let Some(z) = zone.get(*part) {
                leaks[*z] += *work;
            }
            // What the hose came off lets in air, too: through its own passage, where that is narrow.
            let off_upstream = condition.parted.get(part) == Some(&false);
            for (near, _) in links.iter().filter(|(_, far)| off_upstream && far == part) {
                match open_port(car, condition, passing, *near) {
                    Join::Wide => leaks[zone[*near]] += *work,
                    Join::Narrow(passage) => leaks[zone[*near]] += passage,
                    Join::Cut => {}
                }
            }
        }
        for (number, part) in circuit.components.iter().enumerate() {
            if part.kind == ComponentKind::Bleed && !condition.vent_blocked.contains(&number) {
                leaks[zone[number]] += passage(part.bore_mm.unwrap_or(0.3));
            }
        }
        for &(near, far) in links
            .iter()
            .filter(|(near, _)| car.scene.kind(*near) == ComponentKind::Valve)
        {
            if passing.contains(&near) {
                leaks[zone[far]] += condition.vents.get(&near).copied().unwrap_or_default();
            } else if !condition.vent_blocked.contains(&near) {
                leaks[zone[far]] += passage(VENT_MM);
            }
        }
        let source = circuit
            .components
            .iter()
            .position(|c| c.kind == ComponentKind::Source)
            .map(|n| zone[n]);
        let pressure = balance(car, condition, &edges, &leaks, source);
        Self(zone.iter().map(|z| pressure[*z].min(ambient)).collect())
    }

    /// Vacuum at a component, Pa below ambient.
    pub fn vacuum(&self, car: &Car<'_>, id: &ComponentId) -> f64 {
        car.scene
            .number(id)
            .map_or(0.0, |n| car.scene.ambient - self.0[n])
    }
}

fn balance(
    car: &Car<'_>,
    condition: &Condition,
    edges: &[Edge],
    leaks: &[Leak],
    source: Option<usize>,
) -> Vec<f64> {
    let (ambient, kelvin) = (car.scene.ambient, car.scene.kelvin);
    let lowest = ambient - car.source_vacuum() * condition.source;
    let mut pressure = vec![ambient; leaks.len()];
    if let Some(source) = source {
        pressure[source] = lowest;
    }
    // Zones in the order in which they are reached from the source, each with the edge by which it is.
    let mut reached: Vec<(usize, &Edge)> = Vec::new();
    let mut known: Vec<usize> = source.into_iter().collect();
    while let Some(edge) = edges
        .iter()
        .find(|e| known.contains(&e.near) && !known.contains(&e.far))
    {
        known.push(edge.far);
        reached.push((edge.far, edge));
        pressure[edge.far] = lowest;
    }
    if reached.iter().all(|(z, _)| leaks[*z].total() == 0.0) {
        return pressure;
    }
    for _ in 0..40 {
        let mut moved = 0.0_f64;
        for (z, edge) in reached.iter().rev().chain(&reached) {
            let parent = pressure[edge.near];
            let fed: f64 = edges
                .iter()
                .filter(|e| e.near == *z)
                .map(|e| flow(e.passage, pressure[e.far], pressure[*z], kelvin))
                .sum();
            let (mut low, mut high) = (parent, ambient);
            for _ in 0..22 {
                let p = f64::midpoint(low, high);
                let into = flow(leaks[*z], ambient, p, kelvin) + fed;
                if into > flow(edge.passage, p, parent, kelvin) {
                    low = p;
                } else {
                    high = p;
                }
            }
            let p = f64::midpoint(low, high);
            moved = moved.max((p - pressure[*z]).abs());
            pressure[*z] = p;
        }
        if moved < 15.0 {
            break;
        }
    }
    pressure
}
