//! Which parts a test has under vacuum, and how much air that is.

use std::f64::consts::PI;

use holdfast_measure::Measured;

use super::{Circuit, Component, ComponentKind};
use crate::{ComponentId, TestId, TestKind};

/// The parts under vacuum in a hold test.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Scope {
    /// All parts whose leak the test sees, in circuit order. A valve or check valve at the edge counts: its seat does.
    pub parts: Vec<ComponentId>,
}

impl Component {
    /// Air in it, m³, with its standard uncertainty. A hose's is length × cross-section.
    pub fn volume(&self) -> Measured {
        let cm3 = match (self.kind, self.length_m, self.bore_mm) {
            (ComponentKind::Hose, Some(m), Some(mm)) => PI / 4.0 * mm * mm * m,
            _ => self.volume_cm3,
        };
        Measured {
            value: cm3 * 1e-6,
            u: cm3 * 1e-6 * self.volume_rel_sd,
        }
    }
}

impl Circuit {
    /// The parts that a hold test has under vacuum. `None`: not a hold test, no such part, or a test that can't be done in
    /// this circuit, such as `hold:inlet` where no check valve closes the engine off.
    pub fn scope(&self, test: &TestId) -> Option<Scope> {
        let parts = match (test.kind, &test.part) {
            (TestKind::HandPump, None) => vec!["hand_pump".into()],
            (TestKind::Hold, Some(part)) => match self.reach(part) {
                Some((Reach::Branch, valve)) => self.branch_of(&valve),
                Some((Reach::Inlet, valve)) => self.inlet_of(&valve)?,
                None => {
                    let kind = self.component(part)?.kind;
                    let closes = matches!(
                        kind,
                        ComponentKind::CheckValve
                            | ComponentKind::Reservoir
                            | ComponentKind::Hose
                            | ComponentKind::Tee
                            | ComponentKind::Valve
                            | ComponentKind::Mount
                            | ComponentKind::Restrictor
                    );
                    closes.then(|| vec![part.clone()])?
                }
            },
            _ => return None,
        };
        (!parts.is_empty()).then_some(Scope { parts })
    }

    /// The air that a hold test has under vacuum, without the tester's, m³. `None` as in [`Self::scope`].
    pub fn volume(&self, test: &TestId) -> Option<Measured> {
        let scope = self.scope(test)?;
        let (mut value, mut variance) = (0.0, 0.0);
        for part in scope.parts.iter().filter_map(|id| self.component(id)) {
            let volume = part.volume();
            value += volume.value;
            variance += volume.u * volume.u;
        }
        Some(Measured {
            value,
            u: variance.sqrt(),
        })
    }

    /// The names of the reaches that can be held as a whole: `branch` and `inlet`, with the valve's name behind where there
    /// are several valves (`branch_front_valve`).
    pub fn reaches(&self) -> Vec<ComponentId> {
        let mut names = Vec::new();
        for (prefix, whole) in [("branch", true), ("inlet", false)] {
            for drive in &self.drives {
                if whole || self.inlet_of(&drive.valve).is_some() {
                    names.push(if self.drives.len() == 1 {
                        ComponentId::from(prefix)
                    } else {
                        ComponentId::new(format!("{prefix}_{}", drive.valve))
                    });
                }
            }
        }
        names
    }

    fn reach(&self, name: &ComponentId) -> Option<(Reach, ComponentId)> {
        for (prefix, reach) in [("branch", Reach::Branch), ("inlet", Reach::Inlet)] {
            for drive in &self.drives {
                let alone = self.drives.len() == 1 && name.as_str() == prefix;
                if alone || name.as_str() == format!("{prefix}_{}", drive.valve) {
                    return Some((reach, drive.valve.clone()));
                }
            }
        }
        None
    }

    /// Everything that a valve feeds, the valve itself not included.
    pub fn branch_of(&self, valve: &ComponentId) -> Vec<ComponentId> {
        let mut found = Vec::new();
        let mut todo: Vec<ComponentId> = self.downstream(valve).cloned().collect();
        while let Some(id) = todo.pop() {
            if !found.contains(&id) {
                todo.extend(self.downstream(&id).cloned());
                found.push(id);
            }
        }
        self.in_order(found)
    }

    /// Everything between a valve's inlet and the check valves that close it off, those included, and with them the other
    /// valves fed from there, whose seats see the vacuum too. `None` where the engine's intake stays open to it.
    pub fn inlet_of(&self, valve: &ComponentId) -> Option<Vec<ComponentId>> {
        let mut found: Vec<ComponentId> = Vec::new();
        let mut todo: Vec<ComponentId> = self.upstream(valve).cloned().collect();
        while let Some(id) = todo.pop() {
            if found.contains(&id) || &id == valve {
                continue;
            }
            let kind = self.component(&id)?.kind;
            match kind {
                ComponentKind::Source => return None,
                // Closed towards the source; what hangs behind the seat does not matter.
                ComponentKind::CheckValve | ComponentKind::Valve => {}
                _ => {
                    todo.extend(self.upstream(&id).cloned());
                    todo.extend(self.downstream(&id).cloned());
                }
            }
            found.push(id);
        }
        Some(self.in_order(found))
    }

    fn in_order(&self, found: Vec<ComponentId>) -> Vec<ComponentId> {
        self.components
            .iter()
            .map(|c| &c.id)
            .filter(|id| found.contains(id))
            .cloned()
            .collect()
    }
}

enum Reach {
    Branch,
    Inlet,
}
