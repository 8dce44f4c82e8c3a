//! Current and volts in one valve's electric circuit, by Ohm's law.

use super::causes::Fault;
use super::condition::{Joint, Setting};
use super::expect::Expect;
use super::layout::DriveParts;
use super::model::{Model, World};
use crate::faults::{Command, Effect};
use crate::{EngineState, FaultId};

/// Input resistance against which a path counts as no connection, Ω: a hundredth of a volt in ten on 10 MΩ would need more.
const NO_PATH: f64 = 1e6;
/// Relative spread of a filament lamp's resistance as a load.
const LAMP_RELATIVE: f64 = 0.4;

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
        self.feed + self.return_path(true) + self.contacts[0] + self.contacts[1]
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

    fn volts(&self, mean: f64, more_sd: f64, broad: f64) -> Expect {
        let unknown = if mean > 0.5 { self.volts.1 } else { 0.0 };
        let figures = &self.model.data.physics;
        let meter = self.model.situation.instruments.meter.u(mean);
        let sd = (unknown.powi(2) + figures.volts_sd.value.powi(2) + meter.powi(2) + more_sd.powi(2)).sqrt();
        Expect::Volts { mean, sd, broad }
    }

    /// Volts at the battery.
    pub fn battery(&self) -> Expect {
        self.volts(self.volts.0, 0.0, 0.0)
    }

    fn floating(&self) -> Expect {
        self.volts(0.0, 0.0, self.model.data.rates.floating_pin.value)
    }

    fn ohms(&self, ohm: f64) -> Expect {
        let figures = &self.model.data.physics;
        Expect::Ohms {
            ohm: if ohm > NO_PATH { f64::INFINITY } else { ohm },
            relative: figures.ohms_relative.value,
            leads: figures.leads_ohm.value,
        }
    }

    /// Volts of the power pin and of the other pin to the chassis, connector off.
    pub fn pins(&self) -> (Expect, Expect) {
        let live = self.feed < NO_PATH && (self.setting.ground_switched || self.commanded);
        let power = if live { self.battery() } else { self.floating() };
        let other = if !self.setting.ground_switched {
            if self.back < NO_PATH {
                self.volts(0.0, 0.0, 0.0)
            } else {
                self.floating()
            }
        } else if self.control_to_battery {
            self.battery()
        } else if self.control_to_ground {
            self.volts(0.0, 0.0, 0.0)
        } else if self.commanded {
            // A module that sees no load lets go of the pin.
            let rates = &self.model.data.rates;
            self.volts(0.0, 0.0, rates.open_load_off.value * rates.floating_pin.value)
        } else {
            self.floating()
        };
        (power, other)
    }

    /// Volts of the power pin with a lamp to the chassis, connector off.
    pub fn loaded(&self) -> Expect {
        let live = self.feed < NO_PATH && (self.setting.ground_switched || self.commanded);
        if !live {
            return self.volts(0.0, 0.0, 0.0);
        }
        let lamp = self.model.data.physics.lamp_ohm.value;
        let left = self.volts.0 * lamp / (lamp + self.feed);
        self.volts(left, LAMP_RELATIVE * left * self.feed / (lamp + self.feed), 0.0)
    }

    /// Volts before and behind the fuse.
    pub fn at_fuse(&self) -> (Expect, Expect) {
        (
            self.battery(),
            if self.fuse_open {
                self.volts(0.0, 0.0, 0.0)
            } else {
                self.battery()
            },
        )
    }

    /// Ohms of the fuse.
    pub fn fuse_ohms(&self) -> Expect {
        self.ohms(if self.fuse_open { f64::INFINITY } else { 0.0 })
    }

    /// Ohms from fuse to the terminal in the connector.
    pub fn power_wire_ohms(&self) -> Expect {
        self.ohms(self.power_wire)
    }

    /// Volts lost along the power wire under a lamp's current.
    pub fn power_wire_drop(&self) -> Expect {
        let lamp = self.model.data.physics.lamp_ohm.value;
        let share = if self.power_wire > NO_PATH {
            1.0
        } else {
            self.power_wire / (lamp + self.power_wire)
        };
        self.volts(
            self.volts.0 * share,
            LAMP_RELATIVE * self.volts.0 * share * (1.0 - share),
            0.0,
        )
    }

    /// Whether the power wire has no path to the chassis.
    pub fn power_wire_clear(&self) -> Expect {
        Expect::Yes(if self.power_wire_to_ground { 0.0 } else { 1.0 })
    }

    /// The mean that a meter shows of volts that the module chops, and how far that is known; all of them where it doesn't.
    fn mean(&self, volts: f64) -> (f64, f64) {
        if self.model.layout.circuit.properties.pulsed {
            let share = self.model.data.physics.pulsed_on_share;
            (share.value * volts, share.sd * volts)
        } else {
            (volts, 0.0)
        }
    }

    /// Volts across both pins with the connector off, and plugged in.
    pub fn across_pins(&self) -> (Expect, Expect) {
        // A module that sees no load lets go.
        let lets_go = if self.control_to_ground {
            0.0
        } else {
            self.model.data.rates.open_load_off.value
        };
        let open = if self.closed(false) && self.feed < NO_PATH && self.return_path(false) < NO_PATH {
            let (mean, sd) = self.mean(self.volts.0);
            self.volts(mean, sd, lets_go)
        } else {
            self.floating()
        };
        let around = self.around();
        let (coil, chopped) = self.mean(self.across_coil());
        let plugged = if around > NO_PATH || coil == 0.0 {
            self.volts(0.0, 0.0, 0.0)
        } else if self.coil > NO_PATH {
            self.volts(coil, chopped, lets_go)
        } else {
            // Coil and switch are known as bands only; with little in series that hardly matters.
            let all = self.coil + around + self.switch;
            let of_coil = coil * (around + self.switch) / all * self.coil_relative;
            let of_switch = coil * self.switch / all * self.switch_relative;
            self.volts(coil, of_coil.hypot(of_switch).hypot(chopped), 0.0)
        };
        (open, plugged)
    }

    /// Volts of the plugged-in control wire's terminal to the chassis, as it is now.
    pub fn control_pin(&self) -> Expect {
        if !self.setting.ground_switched {
            return if self.closed(true) && self.feed < NO_PATH {
                self.battery()
            } else {
                self.volts(0.0, 0.0, 0.0)
            };
        }
        if self.control_to_battery {
            self.battery()
        } else if self.closed(true) && self.return_path(true) < NO_PATH {
            let all = self.around() + self.coil + self.switch;
            let at = |ohm: f64| {
                if all > NO_PATH {
                    0.0
                } else {
                    self.volts.0 * ohm / all
                }
            };
            let low = at(self.return_path(true) + self.switch);
            let (off, sd) = self.mean(self.volts.0 - low);
            let off = if sd > 0.0 { self.volts.0 - low - off } else { 0.0 };
            self.volts(low + off, (at(self.switch) * self.switch_relative).hypot(sd), 0.0)
        } else if self.feed + self.contacts[0] + self.coil + self.contacts[1] < NO_PATH {
            self.battery()
        } else {
            self.floating()
        }
    }

    /// Ohms from connector to module, and whether that wire is clear of chassis and battery.
    pub fn control_wire(&self) -> (Expect, Expect, Expect) {
        let clear = |path: bool| Expect::Yes(if path { 0.0 } else { 1.0 });
        (
            self.ohms(self.control_wire),
            clear(self.control_to_ground),
            clear(self.control_to_battery),
        )
    }

    /// Ohms across the valve, and whether it is clear of its case.
    pub fn coil(&self, hot: bool) -> (Expect, Expect) {
        let times = if hot {
            self.model.data.physics.coil_hot_times.value
        } else {
            1.0
        };
        let ohms = match self.ohms(self.coil * times) {
            Expect::Ohms { ohm, relative, leads } => Expect::Ohms {
                ohm,
                relative: relative.hypot(self.coil_relative),
                leads,
            },
            other => other,
        };
        (ohms, Expect::Yes(if self.coil_to_case { 0.0 } else { 1.0 }))
    }

    /// Ohms of the leads held together.
    pub fn leads(&self) -> Expect {
        self.ohms(0.0)
    }

    /// Whether the valve moves when it alone is fed by a jumper.
    pub fn moves_on_jumper(&self) -> bool {
        self.coil < NO_PATH && self.volts.0 / self.coil < JUMPER_FUSE_A
    }
}
