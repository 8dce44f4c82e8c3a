//! What each test should show under a supposed cause, and how likely a reading is then.

use super::condition::Setting;
use super::electric::Electric;
use super::expect::{Expect, Value};
use super::model::{Case, Model, World};
use super::observation::{Observation, Seen};
use crate::{EngineState, TestKind};

/// The values of one test, by key; several sets where it can be meant in several ways, with their probabilities.
pub(crate) type Fields = Vec<(f64, Vec<(&'static str, Expect)>)>;

/// What a likelihood depends on, beside the fault itself.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Depends {
    /// The size of a leak at rest.
    Rest,
    /// Nothing that is unknown.
    Signs,
    /// The circuit's electric setting.
    Electric,
    /// The size of a leak at work, and the setting.
    Work,
}

/// What a test's likelihood depends on.
pub(crate) fn depends(seen: &Seen, test: TestKind) -> Depends {
    match (seen, test) {
        (Seen::Hold(_), _) => Depends::Rest,
        (Seen::Look(_), _) => Depends::Signs,
        (Seen::Complaint, _) => Depends::Work,
        (
            _,
            TestKind::MountLook
            | TestKind::MountMove
            | TestKind::IdleQuality
            | TestKind::Wiggle
            | TestKind::ProveMeter
            | TestKind::Flow,
        ) => Depends::Signs,
        (
            _,
            TestKind::SupplyVolts
            | TestKind::SupplyLoaded
            | TestKind::Fuse
            | TestKind::PowerWire
            | TestKind::ValveVolts
            | TestKind::ControlPin
            | TestKind::ControlWire
            | TestKind::Coil,
        ) => Depends::Electric,
        _ => Depends::Work,
    }
}

/// Whether an observation is of the circuit at rest: a hold test.
pub(crate) fn depends_at_rest(seen: &Observation) -> bool {
    depends(&seen.seen, seen.test.kind) == Depends::Rest
}

/// Whether an observation is of the electric side, by a meter.
pub(crate) fn depends_on_meter(seen: &Observation) -> bool {
    depends(&seen.seen, seen.test.kind) == Depends::Electric
}

/// Whether an observation is of something seen or felt by hand, the same in any setting.
pub(crate) fn is_by_hand(seen: &Observation) -> bool {
    depends(&seen.seen, seen.test.kind) == Depends::Signs
}

impl Observation {
    /// Whether the observation can't tell two settings apart. `electric`: some fault changes the electric side.
    pub(crate) fn is_blind_to(&self, electric: bool, a: Setting, b: Setting) -> bool {
        let wired = a.ground_switched == b.ground_switched && a.ignition_fed == b.ignition_fed;
        let windowed = a.window_at_idle == b.window_at_idle;
        let softens = a.softens == b.softens;
        let complaint = matches!(self.seen, Seen::Complaint) || self.test.kind == TestKind::Complaint;
        match depends(&self.seen, self.test.kind) {
            Depends::Rest | Depends::Signs => true,
            Depends::Electric => wired && windowed,
            // With sound electrics it doesn't matter how they are wired; a complaint is felt with the window met.
            Depends::Work if complaint => softens && (wired || !electric),
            Depends::Work => windowed && (wired || !electric),
        }
    }
}

impl Model<'_> {
    /// Whether any of the faults can change what an observation shows.
    pub(crate) fn touches(&self, seen: &Observation, faults: &[usize]) -> bool {
        let tested = seen.test.part.as_ref().and_then(|id| self.layout.number(id));
        faults.iter().any(|f| {
            let fault = &self.faults[*f];
            match depends(&seen.seen, seen.test.kind) {
                Depends::Rest => fault.part.is_some_and(|part| {
                    Some(part) == self.layout.tester || seen.scope.as_ref().is_some_and(|s| s.contains(part))
                }),
                Depends::Signs if seen.test.kind == TestKind::Flow => fault.part == tested,
                Depends::Signs => {
                    fault.shown_by.contains(&seen.test.kind)
                        && (fault.part.is_none() || tested.is_none() || fault.part == tested)
                }
                Depends::Electric => fault.is_electric(),
                Depends::Work if matches!(seen.test.kind, TestKind::Complaint | TestKind::Codes) => {
                    !fault.tester
                }
                Depends::Work => !fault.tester && !fault.effects.is_empty(),
            }
        })
    }

    /// Probability (density) of an observation in a world. Readings of the same test are comparable with each other only.
    pub(crate) fn likelihood(&self, seen: &Observation, case: &Case<'_>) -> f64 {
        match &seen.seen {
            Seen::Hold(hold) => seen
                .scope
                .as_ref()
                .map_or(1.0, |scope| self.hold_likelihood(&case.world, scope, hold)),
            Seen::Look(parts) => self.look(&case.world, parts),
            Seen::Complaint => self.complaints(case),
            Seen::Fields(values) => {
                let battery = values.iter().find_map(|(k, v)| match v {
                    Value::Number(x) if k == "battery" => Some(*x),
                    _ => None,
                });
                self.values_likelihood(values, &self.fields(seen, case, battery))
            }
        }
    }

    /// Probability (density) of values where these are to be expected; a value that nothing is expected of says nothing.
    pub(crate) fn values_likelihood(&self, values: &[(String, Value)], expected: &Fields) -> f64 {
        let of_set = |fields: &[(&'static str, Expect)]| -> f64 {
            let each = fields.iter().map(|(key, expect)| {
                let value = values.iter().find(|(k, _)| k == key);
                value.map_or(1.0, |(_, v)| expect.likelihood(*v, &self.data.rates))
            });
            each.product()
        };
        expected.iter().map(|(p, fields)| p * of_set(fields)).sum()
    }

    /// What a test should show in a world.
    pub(crate) fn fields(&self, seen: &Observation, case: &Case<'_>, battery: Option<f64>) -> Fields {
        let (world, setting) = (&*case.world, case.setting);
        let test = &seen.test;
        let one = |fields| vec![(1.0, fields)];
        match test.kind {
            TestKind::Source
            | TestKind::Delivered
            | TestKind::SwitchOver
            | TestKind::Bypass
            | TestKind::Shake
            | TestKind::ValveOff
            | TestKind::ValveOn => one(self.vacuum_fields(seen, case)),
            TestKind::Flow => {
                let part = test.part.as_ref().and_then(|id| self.layout.number(id));
                one(vec![(
                    "free",
                    Expect::Yes(if world.of(part).blocks { 0.0 } else { 1.0 }),
                )])
            }
            TestKind::Complaint => one(vec![("present", self.reproduced(case))]),
            TestKind::Codes
            | TestKind::IdleQuality
            | TestKind::MountLook
            | TestKind::MountMove
            | TestKind::Wiggle => one(self.sign_fields(seen, case)),
            TestKind::SupplyVolts
            | TestKind::SupplyLoaded
            | TestKind::Fuse
            | TestKind::PowerWire
            | TestKind::ValveVolts
            | TestKind::ControlPin
            | TestKind::ControlWire
            | TestKind::Coil => self.electric_fields(seen, world, setting, battery),
            TestKind::Look | TestKind::HandPump | TestKind::Hold | TestKind::ProveMeter => one(Vec::new()),
        }
    }

    fn electric_fields(
        &self,
        seen: &Observation,
        world: &World,
        setting: Setting,
        battery: Option<f64>,
    ) -> Fields {
        let Some(drive) = self.drive_of(&seen.test) else {
            return vec![(1.0, Vec::new())];
        };
        let with = |engine| Electric::new(self, world, drive, setting, engine, battery);
        let now = with(seen.engine);
        let one = |fields| vec![(1.0, fields)];
        match seen.test.kind {
            TestKind::SupplyVolts => {
                let (power, other) = now.pins();
                // Pin numbers differ between connectors.
                vec![
                    (0.5, vec![("pin1", power), ("pin2", other)]),
                    (0.5, vec![("pin2", power), ("pin1", other)]),
                ]
            }
            TestKind::SupplyLoaded => one(vec![("pin1", now.loaded())]),
            TestKind::Fuse => {
                let (before, behind) = now.at_fuse();
                one(vec![
                    ("in_v", before),
                    ("out_v", behind),
                    ("ohms", now.fuse_ohms()),
                ])
            }
            TestKind::PowerWire => {
                let with_terminal = self.data.rates.terminal_in_wire_test.value;
                let fields = |terminal| {
                    vec![
                        ("ohms", now.power_wire_ohms(terminal)),
                        ("drop_v", now.power_wire_drop()),
                        ("to_ground_open", now.power_wire_clear()),
                    ]
                };
                vec![
                    (1.0 - with_terminal, fields(false)),
                    (with_terminal, fields(true)),
                ]
            }
            TestKind::ValveVolts => {
                let (open, plugged) = now.across_pins();
                let volts = if seen.connected == Some(true) {
                    plugged
                } else {
                    open
                };
                one(vec![("volts", volts), ("plugged_v", plugged)])
            }
            TestKind::ControlPin => {
                // Off means out of the window, with the feed still there.
                let out = Setting {
                    window_at_idle: false,
                    ..setting
                };
                let off = Electric::new(self, world, drive, out, EngineState::Idle, battery);
                one(vec![("off_v", off.control_pin()), ("on_v", now.control_pin())])
            }
            TestKind::ControlWire => {
                let (ohms, ground, battery) = now.control_wire();
                one(vec![
                    ("ohms", ohms),
                    ("to_ground_open", ground),
                    ("to_battery_open", battery),
                ])
            }
            TestKind::Coil => {
                let (ohms, case) = now.coil(seen.hot);
                one(vec![("ohms", ohms), ("to_case_open", case)])
            }
            _ => one(Vec::new()),
        }
    }

    fn vacuum_fields(&self, seen: &Observation, case: &Case<'_>) -> Vec<(&'static str, Expect)> {
        let (world, setting) = (&*case.world, case.setting);
        let Some(drive) = self.drive_of(&seen.test) else {
            return Vec::new();
        };
        let figures = &self.data.physics;
        let level = self.source.0;
        let at_mounts = case.at_mounts(self, seen.engine);
        let Some(work) = at_mounts.valve(drive.valve) else {
            return Vec::new();
        };
        // Where the source was read, what arrives is compared with that; else with what sources make.
        let (times, level_sd) = match self.seen_source {
            Some(seen) if work.inlet > 0.3 * level => (seen / work.inlet, 0.0),
            _ => (1.0, self.source.1),
        };
        let vacuum = |kpa: f64| {
            let share = kpa / level.max(1.0);
            let sd = (level_sd * share).hypot(figures.delivered_sd_kpa.value * (0.3 + 0.7 * share));
            Expect::Vacuum {
                mean: kpa * times,
                sd,
                range: self.ambient,
            }
        };
        let seconds = |figure: crate::faults::Figure| Expect::Seconds {
            median: figure.value,
            log10_sd: figure.log10_sd,
        };
        let some = |kpa: f64| kpa > 0.3 * level;
        match seen.test.kind {
            TestKind::Source => {
                let (prior, sd) = self.source;
                let share = work.inlet / level.max(1.0);
                let expect = Expect::Vacuum {
                    mean: prior * share,
                    sd: (sd * share).hypot(figures.delivered_sd_kpa.value * 0.3),
                    range: self.ambient,
                };
                vec![
                    ("gauge", expect),
                    ("felt", Expect::Yes(if some(work.inlet) { 1.0 } else { 0.05 })),
                ]
            }
            TestKind::Delivered => {
                let mut fields = vec![("gauge", vacuum(work.on))];
                if some(work.on) {
                    fields.push(("seconds", seconds(figures.arrive_s)));
                }
                fields
            }
            TestKind::SwitchOver => {
                let mut fields = vec![("gauge", vacuum(work.off))];
                if some(work.on) && work.off < 0.5 * work.on {
                    fields.push((
                        "seconds",
                        seconds(if work.vents {
                            figures.vent_s
                        } else {
                            figures.vent_blocked_s
                        }),
                    ));
                }
                fields
            }
            TestKind::Bypass => {
                let mounts = &case.at_mounts(self, seen.engine).mounts;
                let gains = |m: &&super::vacuum::MountAtWork| {
                    m.reached && !m.dead && m.on < figures.starved_below.value
                };
                vec![(
                    "changes",
                    self.felt(mounts.iter().filter(gains).count(), mounts.len()),
                )]
            }
            TestKind::Shake => vec![("changes", self.shake(seen, case))],
            TestKind::ValveOff => {
                let valve = world.of(Some(drive.valve));
                let open = self.at_rest_open(world, drive.valve);
                let seat = valve.seat_leak / (valve.seat_leak + SEAT_FELT);
                vec![
                    ("passes", Expect::Yes(if open { 1.0 } else { seat })),
                    (
                        "vents",
                        Expect::Yes(if open || valve.vent_blocked { 0.0 } else { 1.0 }),
                    ),
                ]
            }
            TestKind::ValveOn => {
                let valve = world.of(Some(drive.valve));
                let powered =
                    Electric::new(self, world, drive, setting, EngineState::Off, None).moves_on_jumper();
                let moves = powered && valve.stuck.is_none();
                let open = moves != self.at_rest_open(world, drive.valve);
                let vent = valve.vent_leak / (valve.vent_leak + SEAT_FELT);
                vec![
                    ("passes", Expect::Yes(if open { 1.0 } else { 0.0 })),
                    ("clicks", Expect::Yes(if moves { 0.97 } else { 0.03 })),
                    ("vents", Expect::Yes(if open { vent } else { 1.0 })),
                ]
            }
            _ => Vec::new(),
        }
    }

    fn at_rest_open(&self, world: &World, valve: usize) -> bool {
        match world.of(Some(valve)).stuck {
            Some(position) => position == crate::faults::Stuck::Open,
            None => self.layout.circuit.properties.rest == crate::ValveRest::Open,
        }
    }

    fn shake(&self, seen: &Observation, case: &Case<'_>) -> Expect {
        match seen.test.part.as_ref().and_then(|id| self.layout.number(id)) {
            Some(mount) => {
                let condition = case.world.of(Some(mount));
                let works = !condition.dead && condition.leak < PUMPED_AGAINST;
                self.felt(usize::from(works), 1)
            }
            None => {
                let mounts = &case.at_mounts(self, seen.engine).mounts;
                let starved = self.data.physics.starved_below.value;
                self.felt(
                    mounts.iter().filter(|m| !m.dead && m.on >= starved).count(),
                    mounts.len(),
                )
            }
        }
    }

    /// Whether a change is felt when so many of the mounts change.
    fn felt(&self, changing: usize, all: usize) -> Expect {
        let share = changing as f64 / all.max(1) as f64;
        Expect::Yes(self.data.rates.shake_felt.value * share.sqrt() + UNFELT * (1.0 - share))
    }
}

/// Leak through a seat or vent that is felt in half the cases, std cm³/min. Source: from memory.
const SEAT_FELT: f64 = 100.0;
/// Leak against which a hand pump still works a mount, std cm³/min. Source: worked out from 50 strokes of 15 cm³ a minute.
const PUMPED_AGAINST: f64 = 300.0;
/// Share of people who feel a change where there is none. Source: from memory.
pub(super) const UNFELT: f64 = 0.07;
