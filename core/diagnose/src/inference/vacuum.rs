//! Where vacuum arrives, with the engine at work.

use std::cell::RefCell;
use std::rc::Rc;

use super::air;
use super::condition::Setting;
use super::electric::Electric;
use super::layout::DriveParts;
use super::model::{Model, World};
use crate::faults::Stuck;
use crate::{ComponentKind, EngineState, ValveRest};

/// What a valve does at work.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct AtWork {
    /// Vacuum that reaches the valve's inlet, kPa.
    pub inlet: f64,
    /// Vacuum at the valve's outlet while the module may command it, kPa.
    pub on: f64,
    /// Vacuum that stays at the outlet when the command has ended, kPa.
    pub off: f64,
    /// The outlet can be vented.
    pub vents: bool,
}

/// What the electric side does to one valve.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Pull {
    /// The coil pulls while the module may command it.
    energised: bool,
    /// It still pulls when the command should have ended.
    kept_on: bool,
    /// The module sees an electric fault.
    fault_seen: bool,
}

/// What was worked out for a world's vacuum side, by what the electric side does.
pub(crate) type WorkedOut = Rc<RefCell<Vec<(Vec<Pull>, Rc<AtMounts>)>>>;

impl Model<'_> {
    /// What the electric side does to each valve, with the engine in a state.
    fn pulls(&self, world: &World, setting: Setting, engine: EngineState) -> Vec<Pull> {
        let pull = |drive: &DriveParts| {
            let electric = Electric::new(self, world, drive, setting, engine, None);
            let energised = electric.energised();
            // A command that never ends keeps the coil on; an ended one leaves the valve at rest.
            let kept_on = energised && self.never_ends(world, drive, setting);
            Pull {
                energised,
                kept_on,
                fault_seen: electric.module_sees_fault(),
            }
        };
        self.layout.drives.iter().map(pull).collect()
    }

    /// What a valve does. The source makes its usual vacuum.
    fn at_work(&self, world: &World, drive: &DriveParts, pull: Pull) -> AtWork {
        let inlet = self.inlet(world, drive);
        let valve = world.of(Some(drive.valve));
        let rest_open = self.layout.circuit.properties.rest == ValveRest::Open;
        let open = |energised: bool| match valve.stuck {
            Some(Stuck::Open) => true,
            Some(Stuck::Closed) => false,
            None => energised != rest_open,
        };
        let outlet = |on: bool| {
            if !open(on) {
                return 0.0;
            }
            let leak =
                self.leak_behind(world, drive.valve) + valve.leak + if on { valve.vent_leak } else { 0.0 };
            let passage = self.passage(drive.valve);
            let routed = self.layout.down[drive.valve]
                .iter()
                .all(|&n| !world.of(Some(n)).misrouted);
            if routed {
                air::steady(inlet, self.ambient, passage, leak)
            } else {
                0.0
            }
        };
        AtWork {
            inlet,
            on: outlet(pull.energised),
            off: outlet(pull.kept_on),
            vents: !valve.vent_blocked && !open(pull.kept_on),
        }
    }

    /// Whether the valve stays on although the module wants it off.
    fn never_ends(&self, world: &World, drive: &DriveParts, setting: Setting) -> bool {
        Electric::new(self, world, drive, setting, EngineState::Off, None).commanded
            || if setting.ground_switched {
                world.of(drive.control_wire).to_ground.is_finite()
            } else {
                world.of(drive.control_wire).to_battery.is_finite()
            }
    }

    /// Vacuum at the valve's inlet, kPa.
    fn inlet(&self, world: &World, drive: &DriveParts) -> f64 {
        let (mut vacuum, mut at) = (self.source.0, drive.valve);
        let mut leak = 0.0;
        for _ in 0..self.layout.up.len() {
            let Some(&next) = self.layout.up[at].first() else {
                break;
            };
            let condition = world.of(Some(next));
            if condition.blocks || condition.misrouted {
                return 0.0;
            }
            vacuum *= condition.source_share;
            // What hangs beside the way to the source, such as a reservoir.
            leak += condition.leak;
            for &beside in self.layout.down[next].iter().filter(|&&n| n != at) {
                if self.layout.kind(beside) != ComponentKind::Valve && !world.of(Some(beside)).blocks {
                    leak += world.of(Some(beside)).leak + self.leak_behind(world, beside);
                }
            }
            at = next;
        }
        air::steady(vacuum, self.ambient, self.data.physics.hose_bore_mm.value, leak)
    }

    /// What leaks in behind a component, as far as air gets there.
    fn leak_behind(&self, world: &World, from: usize) -> f64 {
        let mut leak = 0.0;
        let mut todo: Vec<usize> = self.layout.down[from].clone();
        let mut steps = 0;
        while let Some(part) = todo.pop() {
            steps += 1;
            let condition = world.of(Some(part));
            if condition.blocks
                || steps > self.layout.down.len()
                || self.layout.kind(part) == ComponentKind::Valve
            {
                continue;
            }
            leak += condition.leak + self.bleed(part, condition.vent_blocked);
            todo.extend(&self.layout.down[part]);
        }
        leak
    }

    /// What a bleed lets in on purpose.
    pub(super) fn bleed(&self, part: usize, blocked: bool) -> f64 {
        let component = &self.layout.circuit.components[part];
        match (component.kind, component.bore_mm) {
            (ComponentKind::Bleed, Some(mm)) if !blocked => air::hole(mm),
            _ => 0.0,
        }
    }

    fn passage(&self, valve: usize) -> f64 {
        self.layout.circuit.components[valve]
            .bore_mm
            .unwrap_or(self.data.physics.valve_passage_mm.value)
    }

    /// Whether what is at the valve's outlet also reaches a mount.
    fn reaches(&self, world: &World, mount: usize, valve: usize) -> bool {
        let mut at = mount;
        for _ in 0..self.layout.up.len() {
            let condition = world.of(Some(at));
            if at == valve {
                return true;
            }
            if condition.blocks || condition.misrouted {
                return false;
            }
            match self.layout.up[at].first() {
                Some(&next) => at = next,
                None => return false,
            }
        }
        false
    }

    /// What the whole circuit does at work, worked out once for each thing that the electric side does.
    pub(super) fn at_mounts(&self, world: &World, setting: Setting, engine: EngineState) -> Rc<AtMounts> {
        let pulls = self.pulls(world, setting, engine);
        if let Some((_, known)) = world.worked_out.borrow().iter().find(|(p, _)| *p == pulls) {
            return Rc::clone(known);
        }
        let at_mounts = Rc::new(self.work_out(world, &pulls));
        world.worked_out.borrow_mut().push((pulls, Rc::clone(&at_mounts)));
        at_mounts
    }

    fn work_out(&self, world: &World, pulls: &[Pull]) -> AtMounts {
        let fault_seen = pulls.iter().any(|p| p.fault_seen);
        let work = |(drive, pull): (&DriveParts, &Pull)| (drive.valve, self.at_work(world, drive, *pull));
        let works: Vec<(usize, AtWork)> = self.layout.drives.iter().zip(pulls).map(work).collect();
        let mounts = self
            .layout
            .mounts
            .iter()
            .map(|&mount| {
                let work = self
                    .layout
                    .drive_of_mount(mount)
                    .and_then(|d| works.iter().find(|(valve, _)| *valve == d.valve))
                    .filter(|(valve, _)| self.reaches(world, mount, *valve));
                let full = self.source.0.max(1.0);
                MountAtWork {
                    on: work.map_or(0.0, |(_, w)| w.on / full),
                    off: work.map_or(0.0, |(_, w)| w.off / full),
                    reached: work.is_some(),
                    dead: world.of(Some(mount)).dead,
                }
            })
            .collect();
        AtMounts {
            mounts,
            valves: works,
            fault_seen,
        }
    }
}

/// What the whole circuit does at work.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct AtMounts {
    pub mounts: Vec<MountAtWork>,
    /// Each valve by its number.
    pub valves: Vec<(usize, AtWork)>,
    /// The module sees an electric fault.
    pub fault_seen: bool,
}

impl AtMounts {
    /// What a valve does.
    pub fn valve(&self, number: usize) -> Option<AtWork> {
        self.valves
            .iter()
            .find(|(n, _)| *n == number)
            .map(|(_, work)| *work)
    }
}

/// What one mount gets at work.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct MountAtWork {
    /// Share of the source's vacuum while commanded.
    pub on: f64,
    /// Share that stays when the command has ended.
    pub off: f64,
    /// The way from the valve is free.
    pub reached: bool,
    /// Does not change with vacuum.
    pub dead: bool,
}
