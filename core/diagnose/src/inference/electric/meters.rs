//! What meters show of one valve's electric circuit.

use super::{Electric, NO_PATH};
use crate::inference::expect::Expect;

/// Relative spread of a filament lamp's resistance as a load.
const LAMP_RELATIVE: f64 = 0.4;

impl Electric<'_> {
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

    /// The mean that a meter shows of volts that the module chops, and how far that is known; all of them where it doesn't, or
    /// the circuit is closed without it.
    fn mean(&self, volts: f64, plugged: bool) -> (f64, f64) {
        let without_module = self.wire_bridges || (plugged && self.bridge.is_some());
        if self.model.layout.circuit.properties.pulsed && !without_module {
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
            let (mean, sd) = self.mean(self.volts.0, false);
            self.volts(mean, sd, lets_go)
        } else {
            self.floating()
        };
        let around = self.around();
        let (coil, chopped) = self.mean(self.across_coil(), true);
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
            let (off, sd) = self.mean(self.volts.0 - low, true);
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
}
