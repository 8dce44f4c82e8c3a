//! One car worked out once: its condition, and what follows from it at idle.

use holdfast_diagnose::{ComponentId, ComponentKind, Drive, TestId};

use crate::car::Car;
use crate::condition::Condition;
use crate::line::Line;
use crate::wires;

/// A car with its condition.
pub struct Physics<'a, 'b> {
    pub car: &'a Car<'b>,
    pub condition: Condition,
    /// Vacuum in the line when the mounts should have it, in the window and with the engine idling in neutral.
    wanted: Line,
    idling: Line,
    /// The same when they should not have it, the engine turning faster.
    unwanted: Line,
}

/// What the engine does.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum At {
    /// Idling in neutral.
    Idle,
    /// Idling in gear.
    InGear,
    /// Turning faster: out of the window.
    Faster,
}

impl<'a, 'b> Physics<'a, 'b> {
    pub fn of(car: &'a Car<'b>) -> Self {
        let condition = Condition::of(car);
        let line = |at: At| Line::at_work(car, &condition, &passing(car, &condition, at));
        Self {
            wanted: line(At::InGear),
            idling: line(At::Idle),
            unwanted: line(At::Faster),
            condition,
            car,
        }
    }

    /// Vacuum at a component, Pa.
    pub fn vacuum(&self, at: At, id: &ComponentId) -> f64 {
        let line = match at {
            At::Idle => &self.idling,
            At::InGear => &self.wanted,
            At::Faster => &self.unwanted,
        };
        line.vacuum(self.car, id)
    }

    /// Vacuum at the end of the hose that is pulled off a valve's inlet, Pa. What the valve lets in, and what is behind it,
    /// doesn't matter then, nor that this end was off before.
    pub fn at_hose_off(&self, valve: &ComponentId) -> f64 {
        let number = self.number(valve);
        let mut apart = self.condition.clone();
        apart.leaks.remove(&number);
        apart.seats.remove(&number);
        let hose = self.number(&self.inlet(valve));
        if apart.parted.get(&hose) == Some(&true) {
            apart.parted.remove(&hose);
            apart.leaks.remove(&hose);
        }
        let mut others = passing(self.car, &apart, At::Faster);
        others.retain(|n| *n != number);
        Line::at_work(self.car, &apart, &others).vacuum(self.car, valve)
    }

    /// The source's vacuum when sound, Pa.
    pub fn full(&self) -> f64 {
        self.car.source_vacuum()
    }

    /// The drive that a test is about: the valve it names, else the only one, else the one of the part it names.
    pub fn drive(&self, test: &TestId) -> &'b Drive {
        let circuit = &self.car.scene.circuit;
        let named = test.part.as_ref().and_then(|part| circuit.drive(Some(part)));
        named.unwrap_or(&circuit.drives[0])
    }

    /// What is first behind a valve.
    pub fn outlet(&self, valve: &ComponentId) -> ComponentId {
        let circuit = &self.car.scene.circuit;
        circuit.downstream(valve).next().unwrap_or(valve).clone()
    }

    /// What is last ahead of a valve.
    pub fn inlet(&self, valve: &ComponentId) -> ComponentId {
        let circuit = &self.car.scene.circuit;
        circuit.upstream(valve).next().unwrap_or(valve).clone()
    }

    /// What the engine must do in a test that wants the window: as the person was told, else idling in neutral.
    pub fn window(&self) -> At {
        match self.car.scene.circuit.properties.window {
            holdfast_diagnose::Window::IdleInGear => At::InGear,
            _ => At::Idle,
        }
    }

    pub fn number(&self, id: &ComponentId) -> usize {
        self.car.scene.number(id).unwrap_or(usize::MAX)
    }

    pub fn mounts(&self) -> impl Iterator<Item = (usize, &ComponentId)> {
        let components = self.car.scene.circuit.components.iter().enumerate();
        components
            .filter(|(_, c)| c.kind == ComponentKind::Mount)
            .map(|(n, c)| (n, &c.id))
    }

    /// How much of its softness (or stiffness) a mount gets from this vacuum, 0–1: none below 45 % of the full vacuum, all
    /// above 75 %.
    pub fn answers(&self, mount: usize, vacuum: f64) -> f64 {
        if self.condition.dead_mounts.contains(&mount) {
            return 0.0;
        }
        // A diaphragm opened at 45 to 75 % of what a sound source at this height gives.
        ((vacuum / self.full() - 0.45) / 0.3).clamp(0.0, 1.0)
    }
}

/// Whether the module works the valve.
pub fn commanded(car: &Car<'_>, at: At) -> bool {
    match at {
        At::Idle => !car.nature.only_in_gear,
        At::InGear => true,
        At::Faster => false,
    }
}

/// The valves that let vacuum through.
fn passing(car: &Car<'_>, condition: &Condition, at: At) -> Vec<usize> {
    let passes = |drive: &Drive| {
        let valve = car.scene.number(&drive.valve)?;
        let pulled = wires::pulled_in(car, condition, drive, commanded(car, at));
        let open =
            condition.stuck_open.contains(&valve) || (pulled && !condition.stuck_closed.contains(&valve));
        open.then_some(valve)
    };
    car.scene.circuit.drives.iter().filter_map(passes).collect()
}
