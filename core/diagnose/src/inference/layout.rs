//! A circuit with its components numbered, so that physics needs no look-ups by name.

use std::collections::BTreeMap;

use crate::{Circuit, ComponentId, ComponentKind};

/// The electric parts of one valve, numbered as in the circuit, in the order of [`crate::Drive`].
#[derive(Debug, Clone)]
pub(crate) struct DriveParts {
    pub valve: usize,
    pub battery: Option<usize>,
    pub fuse: Option<usize>,
    pub relay: Option<usize>,
    pub splice: Option<usize>,
    pub power_wire: Option<usize>,
    pub connector: Option<usize>,
    pub coil: Option<usize>,
    pub control_wire: Option<usize>,
    pub module: Option<usize>,
    pub ground_point: Option<usize>,
}

/// A circuit with its components numbered.
#[derive(Debug)]
pub(crate) struct Layout<'a> {
    pub circuit: &'a Circuit,
    pub down: Vec<Vec<usize>>,
    pub up: Vec<Vec<usize>>,
    pub mounts: Vec<usize>,
    pub drives: Vec<DriveParts>,
    pub tester: Option<usize>,
    numbers: BTreeMap<&'a str, usize>,
}

impl<'a> Layout<'a> {
    pub fn new(circuit: &'a Circuit) -> Self {
        let numbers: BTreeMap<&str, usize> = circuit
            .components
            .iter()
            .enumerate()
            .map(|(i, c)| (c.id.as_str(), i))
            .collect();
        let mut down = vec![Vec::new(); circuit.components.len()];
        let mut up = down.clone();
        for link in &circuit.links {
            if let (Some(&from), Some(&to)) = (numbers.get(link.from.as_str()), numbers.get(link.to.as_str()))
            {
                down[from].push(to);
                up[to].push(from);
            }
        }
        let of_kind = |kind| {
            circuit
                .components
                .iter()
                .enumerate()
                .filter(move |(_, c)| c.kind == kind)
                .map(|(i, _)| i)
        };
        let mounts = of_kind(ComponentKind::Mount).collect();
        let tester = of_kind(ComponentKind::HandPump).next();
        let find = |id: &ComponentId| numbers.get(id.as_str()).copied();
        let find_some = |id: &Option<ComponentId>| id.as_ref().and_then(find);
        let drives = circuit
            .drives
            .iter()
            .filter_map(|d| {
                Some(DriveParts {
                    valve: find(&d.valve)?,
                    battery: find(&d.battery),
                    fuse: find(&d.fuse),
                    relay: find_some(&d.relay),
                    splice: find_some(&d.splice),
                    power_wire: find(&d.power_wire),
                    connector: find(&d.connector),
                    coil: find(&d.coil),
                    control_wire: find(&d.control_wire),
                    module: find(&d.module),
                    ground_point: find_some(&d.ground_point),
                })
            })
            .collect();
        Self {
            circuit,
            down,
            up,
            mounts,
            drives,
            tester,
            numbers,
        }
    }

    /// The number of a component.
    pub fn number(&self, id: &ComponentId) -> Option<usize> {
        self.numbers.get(id.as_str()).copied()
    }

    /// What a numbered component is.
    pub fn kind(&self, number: usize) -> ComponentKind {
        self.circuit.components[number].kind
    }

    /// The drive that a test means: the one of the part named (its valve or an electric part of it), else the first.
    pub fn drive(&self, part: Option<&ComponentId>) -> Option<&DriveParts> {
        let Some(part) = part else {
            return self.drives.first();
        };
        let of_part =
            self.circuit.drives.iter().position(|d| {
                &d.valve == part || (d.parts().contains(&part) && self.circuit.drives.len() > 1)
            });
        of_part
            .and_then(|i| self.drives.get(i))
            .or_else(|| self.drives.first())
    }

    /// The drive whose valve feeds a mount.
    pub fn drive_of_mount(&self, mount: usize) -> Option<&DriveParts> {
        let mut at = mount;
        for _ in 0..self.up.len() {
            if let Some(drive) = self.drives.iter().find(|d| d.valve == at) {
                return Some(drive);
            }
            at = *self.up[at].first()?;
        }
        None
    }
}
