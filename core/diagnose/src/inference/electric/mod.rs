//! Current and volts in one valve's electric circuit, by Ohm's law.

mod meters;

use super::causes::Fault;
use super::condition::{Joint, Setting};
use super::layout::DriveParts;
use super::model::{Model, World};
use crate::faults::{Command, Effect};
use crate::{EngineState, FaultId};

/// Input resistance against which a path counts as no connection, Ω: a hundredth of a volt in ten on 10 MΩ would need more.
const NO_PATH: f64 = 1e6;
/// Fuse of the jumper, A. Source: from memory, 3 to 5 A.
const JUMPER_FUSE_A: f64 = 5.0;

impl Model<'_> {
    /// What a world's faults break in turn: the faults that open a fuse of themselves, where a short has opened it.
    pub(crate) fn broken_in_turn(&self, world: &World, setting: Setting) -> Vec<FaultId> {
        let mut broken = Vec::new();
        for drive in &self.layout.drives {
            let electric = Electric::new(self, world, drive, setting, EngineState::InGear, None);
            if !electric.fuse_open || world.of(drive.fuse).series > NO_PATH {
                continue;
            }
            let opens = |f: &&Fault| f.part == drive.fuse && f.effects.contains(&Effect::Opens);
            if let Some(fault) = self.faults.iter().find(opens)
                && !broken.contains(&fault.id)
            {
                broken.push(fault.id.clone());
            }
        }
        broken
    }
}

impl Model<'_> {
    /// Whether a valve's wires or coil draw so much that its fuse goes. It went while the engine ran.
    fn blows(&self, world: &World, drive: &DriveParts, setting: Setting) -> bool {
        let (figures, properties) = (&self.data.physics, &self.layout.circuit.properties);
        let coil = world.of(drive.coil);
        let (low, high) = properties.coil_ohm;
        let ohms = 0.5 * (low + high) * coil.ohm_share + coil.series + 2.0 * figures.wire_ohm.value;
        let control_wire = if setting.ground_switched {
            f64::INFINITY
        } else {
            world.of(drive.control_wire).to_ground
        };
        let coil_to_case = if setting.joint.at_power() {
            coil.to_ground
        } else {
            f64::INFINITY
        };
        let paths = [
            world.of(drive.power_wire).to_ground,
            coil_to_case,
            control_wire,
            ohms,
        ];
        let least = paths.into_iter().fold(f64::INFINITY, f64::min).max(1e-3);
        figures.charging_v.value / least > figures.fuse_blow_times.value * properties.fuse_a
    }
}

/// One valve's circuit in one state of the car.
pub(super) struct Electric<'m> {
    model: &'m Model<'m>,
    setting: Setting,
    /// Volts at the battery and their standard deviation.
    volts: (f64, f64),
    /// The module wants the valve on.
    pub commanded: bool,
    fuse_open: bool,
    /// Battery to the power wire's terminal in the connector, the module's switch not counted, Ω; infinite without a path.
    feed: f64,
    /// The other wire's terminal to the chassis, the module's switch not counted, Ω.
    back: f64,
    /// Where the halves of the connector meet, at the power pin and at the other, Ω.
    contacts: [f64; 2],
    coil: f64,
    coil_relative: f64,
    /// What closes the plugged-in coil's circuit without the module, Ω: a chafed wire, or the coil's other end on its case.
    bridge: Option<f64>,
    /// It is the wire that does so.
    wire_bridges: bool,
    /// The module's closed switch, Ω; nothing where the circuit is closed without it.
    switch: f64,
    /// How far that is known, as a share.
    switch_relative: f64,
    power_wire: f64,
    control_wire: f64,
    power_wire_to_ground: bool,
    control_to_ground: bool,
    control_to_battery: bool,
    coil_to_case: bool,
}

impl<'m> Electric<'m> {
    pub fn new(
        model: &'m Model<'m>,
        world: &World,
        drive: &DriveParts,
        setting: Setting,
        engine: EngineState,
        battery: Option<f64>,
    ) -> Self {
        let figures = &model.data.physics;
        let properties = &model.layout.circuit.properties;
        let running = engine != EngineState::Off;
        let share = world.of(drive.battery).volts_share;
        let volts = match battery {
            Some(v) => (v, figures.volts_sd.value),
            None if running => (figures.charging_v.value, figures.charging_v.sd),
            None => (figures.battery_rest_v.value * share, figures.battery_rest_v.sd),
        };
        let module = world.of(drive.module);
        let commanded = match module.command {
            Some(Command::Never) => false,
            Some(Command::Always) => true,
            None => engine == EngineState::InGear || (engine == EngineState::Idle && setting.window_at_idle),
        };
        let wire = figures.wire_ohm.value;
        let connector = world.of(drive.connector).series;
        let bad = |joint| if setting.joint == joint { connector } else { 0.0 };
        // Each wire with its terminal.
        let power_wire = world.of(drive.power_wire).series + wire + bad(Joint::PowerTerminal);
        let control_wire = world.of(drive.control_wire).series + wire + bad(Joint::ControlTerminal);
        let contacts = [bad(Joint::PowerContact), bad(Joint::ControlContact)];
        let coil_condition = world.of(drive.coil);
        let (low, high) = properties.coil_ohm;
        let nominal = 0.5 * (low + high);
        let coil = nominal * coil_condition.ohm_share + coil_condition.series;

        let control_to_ground = world.of(drive.control_wire).to_ground.is_finite();
        let control_to_battery = world.of(drive.control_wire).to_battery.is_finite();
        let case_bridges = coil_condition.to_ground.is_finite() && !setting.joint.at_power();
        let (wire_bridges, case_bridges) = if setting.ground_switched {
            (control_to_ground, case_bridges)
        } else {
            (control_to_battery, false)
        };
        let bridge = if wire_bridges {
            Some(0.0)
        } else {
            case_bridges.then_some(coil_condition.to_ground)
        };
        // The usual loss at the usual current.
        let switch_ohm = figures.switch_on_v.value * nominal / figures.charging_v.value;
        let shares_fuse = |d: &&DriveParts| d.fuse == drive.fuse;
        let blown = model
            .layout
            .drives
            .iter()
            .filter(shares_fuse)
            .any(|d| model.blows(world, d, setting));
        let fuse_open = blown || world.of(drive.fuse).series > NO_PATH;

        let upstream = world.of(drive.fuse).series + world.of(drive.splice).series + power_wire;
        let (feed, back) = if setting.ground_switched {
            let fed = setting.ignition_fed || running;
            let relay = if setting.ignition_fed {
                0.0
            } else {
                world.of(drive.relay).series
            };
            let feed = if fuse_open || !fed {
                f64::INFINITY
            } else {
                upstream + relay
            };
            (feed, control_wire)
        } else {
            let feed = if fuse_open {
                f64::INFINITY
            } else {
                upstream + control_wire
            };
            (feed, wire + world.of(drive.ground_point).series)
        };
        Self {
            model,
            setting,
            volts,
            commanded,
            fuse_open,
            feed,
            back,
            contacts,
            coil,
            coil_relative: (high - low) / 12f64.sqrt() / nominal,
            switch: if setting.ground_switched && bridge.is_some() {
                0.0
            } else {
                switch_ohm
            },
            bridge,
            wire_bridges,
            switch_relative: figures.switch_on_v.sd / figures.switch_on_v.value,
            power_wire,
            control_wire,
            power_wire_to_ground: world.of(drive.power_wire).to_ground.is_finite(),
            control_to_ground,
            control_to_battery,
            coil_to_case: coil_condition.to_ground.is_finite(),
        }
    }

    /// The way between the coil and the chassis (or battery) is closed, by the module or without it. With the connector off
    /// what the coil itself touches doesn't count.
    fn closed(&self, plugged: bool) -> bool {
        let without_module = if plugged {
            self.bridge.is_some()
        } else {
            self.wire_bridges
        };
        let held_up = self.setting.ground_switched && self.control_to_battery;
        (self.commanded || without_module) && !held_up
    }

    /// Whether the valve stays on whatever the module wants.
    pub fn never_ends(&self) -> bool {
        self.commanded || self.bridge.is_some()
    }

    /// Resistance of the other pin to the chassis, by whichever way is shorter.
    fn return_path(&self, plugged: bool) -> f64 {
        match self.bridge {
            Some(bridge) if self.setting.ground_switched && (plugged || self.wire_bridges) => bridge,
            _ => self.back,
        }
    }

    /// Everything around the plugged-in coil, Ω.
    fn around(&self) -> f64 {
        // What closes the circuit at the coil itself goes round the second contact.
        let contact = if self.bridge.is_some() && !self.wire_bridges {
            0.0
        } else {
            self.contacts[1]
        };
        self.feed + self.return_path(true) + self.contacts[0] + contact
    }

    /// Volts across the plugged-in coil.
    fn across_coil(&self) -> f64 {
        let around = self.around();
        if !self.closed(true) || around > NO_PATH {
            return 0.0;
        }
        // Without a current nothing is lost on the way.
        if self.coil > NO_PATH {
            self.volts.0
        } else {
            self.volts.0 * self.coil / (self.coil + around + self.switch)
        }
    }

    /// Whether the valve is pulled.
    pub fn energised(&self) -> bool {
        self.coil < NO_PATH && self.across_coil() >= self.model.data.physics.pull_in_v.value
    }

    /// Whether the module could see that something is wrong: commanded and no proper current, or a path that shouldn't be.
    pub fn module_sees_fault(&self) -> bool {
        let current_wrong = self.commanded && (self.coil > NO_PATH || !self.energised());
        current_wrong || self.bridge.is_some() || self.control_to_ground || self.control_to_battery
    }

    /// Whether the valve moves when it alone is fed by a jumper.
    pub fn moves_on_jumper(&self) -> bool {
        self.coil < NO_PATH && self.volts.0 / self.coil < JUMPER_FUSE_A
    }
}
