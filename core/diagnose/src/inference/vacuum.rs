//! Where vacuum arrives, with the engine at work.

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
    /// Vacuum at the end of the hose that leads there, kPa, should that be the end that is off; else the same.
    pub hose_end: f64,
    /// The hose behind the valve is off at one of its ends.
    pub outlet_off: bool,
    /// Vacuum at the valve's outlet while the module may command it, kPa.
    pub on: f64,
    /// Vacuum that stays at the outlet when the command has ended, kPa.
    pub off: f64,
    /// The outlet can be vented.
    pub vents: bool,
}

/// What leaks in at work around one valve, std cm³/min.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct LeaksAtWork {
    pub behind: f64,
    pub before: f64,
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

/// What the electric side does to all valves: at idle, in gear, and while the module works none.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Pulls([Vec<Pull>; 3]);

impl Model<'_> {
    /// What the electric side does to all valves, whatever the engine does; one that stands still makes no vacuum.
    pub(super) fn pulls(&self, world: &World, setting: Setting) -> Pulls {
        let out = Setting {
            window_at_idle: false,
            ..setting
        };
        let at = [
            (setting, EngineState::Idle),
            (setting, EngineState::InGear),
            (out, EngineState::Idle),
        ];
        Pulls(at.map(|(setting, engine)| {
            let pull = |drive| self.pull(world, drive, setting, engine);
            self.layout.drives.iter().map(pull).collect()
        }))
    }

    fn pull(&self, world: &World, drive: &DriveParts, setting: Setting, engine: EngineState) -> Pull {
        let electric = Electric::new(self, world, drive, setting, engine, None);
        let energised = electric.energised();
        Pull {
            energised,
            // A command that never ends keeps the coil on; an ended one leaves the valve at rest.
            kept_on: energised
                && Electric::new(self, world, drive, setting, EngineState::Off, None).never_ends(),
            fault_seen: electric.module_sees_fault(),
        }
    }

    /// What a valve does. The source makes its usual vacuum.
    fn at_work(&self, world: &World, drive: &DriveParts, pull: Pull) -> AtWork {
        let (inlet, hose_end) = self.inlet(world, drive);
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
        let on = outlet(pull.energised);
        let at_rest = outlet(pull.kept_on);
        // A blocked vent keeps what has arrived; past a seat that leaks more comes than leaves.
        let half = self.data.physics.seat_keeps_half_std_cm3_min.value;
        let off = if at_rest > 0.0 {
            at_rest
        } else if valve.vent_blocked {
            on * self.data.physics.vent_blocked_keeps.value
        } else {
            inlet * valve.seat_leak / (valve.seat_leak + half)
        };
        AtWork {
            inlet,
            hose_end,
            outlet_off: self.outlets_off(world, drive.valve).next().is_some(),
            on,
            off,
            vents: !valve.vent_blocked && !open(pull.kept_on),
        }
    }

    /// What leaks in at work, around each valve.
    pub(super) fn leaks_at_work(&self, world: &World) -> Vec<LeaksAtWork> {
        let at = |drive: &DriveParts| {
            let valve = world.of(Some(drive.valve));
            LeaksAtWork {
                behind: self.leak_behind(world, drive.valve) + valve.leak + valve.vent_leak,
                before: self.before(world, drive).map_or(0.0, |(_, leak)| leak),
            }
        };
        self.layout.drives.iter().map(at).collect()
    }

    /// Vacuum at the valve's inlet, and at the end of the hose that leads there, kPa.
    fn inlet(&self, world: &World, drive: &DriveParts) -> (f64, f64) {
        let bore = self.data.physics.hose_bore_mm.value;
        let steady = |(vacuum, leak)| air::steady(vacuum, self.ambient, bore, leak);
        let vacuum = self.before(world, drive).map_or(0.0, steady);
        if self.hose_off(world, drive) {
            (0.0, vacuum)
        } else {
            (vacuum, vacuum)
        }
    }

    /// Whether an end of the part that leads to a valve is off.
    fn hose_off(&self, world: &World, drive: &DriveParts) -> bool {
        let leads = self.layout.up[drive.valve].first().copied();
        world.of(leads).is_off()
    }

    /// What the parts first behind a valve let in whose ends are off, std cm³/min.
    fn outlets_off<'w>(&'w self, world: &'w World, valve: usize) -> impl Iterator<Item = f64> + 'w {
        let behind = self.layout.down[valve].iter();
        let off = behind.map(|&part| &world.conditions[part]).filter(|c| c.is_off());
        off.map(|condition| condition.open_end)
    }

    /// What the source makes, kPa, and what leaks in before the valve; nothing where the way is blocked, or open to the air. That
    /// the hose at the valve itself is off doesn't count here.
    fn before(&self, world: &World, drive: &DriveParts) -> Option<(f64, f64)> {
        let (mut vacuum, mut at) = (self.source.0, drive.valve);
        let mut leak = 0.0;
        for _ in 0..self.layout.up.len() {
            let Some(&next) = self.layout.up[at].first() else {
                break;
            };
            let condition = world.of(Some(next));
            let at_valve = at == drive.valve;
            if condition.blocks || condition.misrouted || (condition.is_off() && !at_valve) {
                return None;
            }
            vacuum *= condition.source_share;
            // What hangs beside the way to the source, such as a reservoir.
            leak += condition.leak;
            for &beside in self.layout.down[next].iter().filter(|&&n| n != at) {
                if self.layout.kind(beside) != ComponentKind::Valve && !world.of(Some(beside)).blocks {
                    leak += world.of(Some(beside)).lets_in() + self.leak_behind(world, beside);
                }
            }
            at = next;
        }
        Some((vacuum, leak))
    }

    /// Vacuum behind a valve, kPa, where a spare hose from the source takes the valve's place; it is put on an end that is off,
    /// too.
    fn fed_directly(&self, world: &World, valve: usize) -> f64 {
        let share: f64 = world.conditions.iter().map(|c| c.source_share).product();
        let bore = self.data.physics.hose_bore_mm.value;
        let closed: f64 = self.outlets_off(world, valve).sum();
        let leak = self.leak_behind(world, valve) - closed;
        air::steady(self.source.0 * share, self.ambient, bore, leak)
    }

    /// What leaks in behind a component, as far as air gets there.
    fn leak_behind(&self, world: &World, from: usize) -> f64 {
        self.leak_within(world, from, self.layout.down.len())
    }

    /// The same, over at most so many parts in a row.
    fn leak_within(&self, world: &World, from: usize, parts: usize) -> f64 {
        let leak = |part: &usize| {
            let condition = &world.conditions[*part];
            if condition.blocks || parts == 0 || self.layout.kind(*part) == ComponentKind::Valve {
                return 0.0;
            }
            condition.lets_in()
                + self.bleed(*part, condition.vent_blocked)
                + self.leak_within(world, *part, parts - 1)
        };
        self.layout.down[from].iter().map(leak).sum()
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

    /// Whether a mount gets what is at the valve's outlet, and what a spare hose in the valve's place brings: a hose on a
    /// wrong port of the valve leads to its mounts when it is fed itself.
    fn reached(&self, world: &World, mount: usize, valve: usize) -> (bool, bool) {
        let mut at = mount;
        for _ in 0..self.layout.up.len() {
            let condition = world.of(Some(at));
            let Some(&next) = self.layout.up[at].first() else {
                break;
            };
            if condition.blocks {
                break;
            }
            let leads_on = !condition.misrouted && !condition.is_off();
            if next == valve {
                return (leads_on, true);
            }
            if !leads_on {
                break;
            }
            at = next;
        }
        (false, false)
    }

    /// What a circuit does under a cause, where it is known what the electric side does.
    pub(super) fn behaviour(&self, world: &World, pulls: &Pulls) -> Behaviour {
        let idle = self.work_out(world, &pulls.0[0]);
        let like_idle = |n: usize| {
            if pulls.0[n] == pulls.0[0] {
                idle.clone()
            } else {
                self.work_out(world, &pulls.0[n])
            }
        };
        Behaviour {
            in_gear: like_idle(1),
            out: like_idle(2),
            idle,
            weak_source: world.conditions.iter().any(|c| c.source_share < 1.0),
        }
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
                let own = self
                    .layout
                    .drive_of_mount(mount)
                    .and_then(|d| works.iter().find(|(valve, _)| *valve == d.valve));
                let (led, led_directly) =
                    own.map_or((false, false), |(valve, _)| self.reached(world, mount, *valve));
                let (work, fed) = (own.filter(|_| led), own.filter(|_| led_directly));
                let full = self.source.0.max(1.0);
                MountAtWork {
                    on: work.map_or(0.0, |(_, w)| w.on / full),
                    off: work.map_or(0.0, |(_, w)| w.off / full),
                    fed: fed.map_or(0.0, |(valve, _)| self.fed_directly(world, *valve) / full),
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

/// Everything that a circuit does at work.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Behaviour {
    pub idle: AtMounts,
    pub in_gear: AtMounts,
    /// At idle while the module works no valve.
    pub out: AtMounts,
    /// The source makes less than it should.
    pub weak_source: bool,
}

impl Behaviour {
    /// With the engine in a state; one that stands still makes nothing and is taken as idling.
    pub fn at(&self, engine: EngineState) -> &AtMounts {
        if engine == EngineState::InGear {
            &self.in_gear
        } else {
            &self.idle
        }
    }

    /// What it looks like when vacuum is told to half a percent of `full` kPa: behaviours with the same look are one.
    pub fn look(&self, full: f64) -> Vec<u16> {
        let mut look = Vec::with_capacity(64);
        let share = |x: f64| (x * STEPS).round() as u16;
        for at in [&self.idle, &self.in_gear, &self.out] {
            for (_, valve) in &at.valves {
                look.extend([valve.inlet, valve.hose_end, valve.on, valve.off].map(|kpa| share(kpa / full)));
                look.extend([valve.vents, valve.outlet_off].map(u16::from));
            }
            for mount in &at.mounts {
                look.extend([share(mount.on), share(mount.off), share(mount.fed)]);
                look.push(u16::from(mount.dead));
            }
            look.push(u16::from(at.fault_seen));
        }
        look.push(u16::from(self.weak_source));
        look
    }
}

/// Steps in which shares are told apart.
const STEPS: f64 = 200.0;

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
    /// Share of the source's vacuum that a spare hose in the valve's place would bring.
    pub fed: f64,
    /// Does not change with vacuum.
    pub dead: bool,
}
