//! What each test should show under a supposed cause, and how likely a reading is then.

use super::complaint::Told;
use super::condition::Setting;
use super::electric::Electric;
use super::expect::{Expect, Value};
use super::model::{Case, Model, World};
use super::observation::{Observation, Seen};
use super::vacuum::Behaviour;
use crate::{EngineState, TestId, TestKind};

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
    /// The size of a leak at work, and what the electric side does.
    Work,
    /// The same, what is felt of the faults themselves, and what vacuum does to the mounts.
    Told,
}

/// What a test's likelihood depends on.
pub(crate) fn depends(seen: &Seen, test: &TestId) -> Depends {
    match (seen, test.kind) {
        (Seen::Hold(_), _) => Depends::Rest,
        (Seen::Look(_), _) => Depends::Signs,
        (Seen::Complaint, _) | (_, TestKind::Complaint | TestKind::Codes | TestKind::Shake) => Depends::Told,
        (
            _,
            TestKind::MountLook
            | TestKind::MountMove
            | TestKind::IdleQuality
            | TestKind::Wiggle
            | TestKind::ValveOff
            | TestKind::ValveOn
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
            | TestKind::ProveMeter
            | TestKind::Coil,
        ) => Depends::Electric,
        _ => Depends::Work,
    }
}

/// Whether an observation of what a circuit does at work shows a sign of a fault beside it, too.
pub(super) fn shows_a_sign(seen: &Observation) -> bool {
    seen.test.kind == TestKind::Source
}

/// Whether what an observation says of signs is worked out by itself.
pub(super) fn has_signs(seen: &Observation) -> bool {
    is_by_hand(seen) || shows_a_sign(seen)
}

/// Whether an observation is of something seen or felt by hand, the same in any setting.
pub(crate) fn is_by_hand(seen: &Observation) -> bool {
    depends(&seen.seen, &seen.test) == Depends::Signs
}

impl Model<'_> {
    /// Whether any of the faults can change what an observation shows.
    pub(crate) fn touches(&self, seen: &Observation, faults: &[usize]) -> bool {
        let tested = seen.test.part.as_ref().and_then(|id| self.layout.number(id));
        faults.iter().any(|f| {
            let fault = &self.faults[*f];
            match depends(&seen.seen, &seen.test) {
                Depends::Signs if matches!(seen.test.kind, TestKind::ValveOff | TestKind::ValveOn) => {
                    self.moves_with(seen, fault)
                }
                Depends::Rest => fault.part.is_some_and(|part| {
                    Some(part) == self.layout.tester || seen.scope.as_ref().is_some_and(|s| s.contains(part))
                }),
                Depends::Signs if seen.test.kind == TestKind::Flow => fault.part == tested,
                Depends::Signs => {
                    fault.shown_by.contains(&seen.test.kind)
                        && (fault.part.is_none() || tested.is_none() || fault.part == tested)
                }
                Depends::Electric => fault.is_electric(),
                Depends::Told => !fault.tester,
                Depends::Work => {
                    !fault.tester && (!fault.effects.is_empty() || fault.shown_by.contains(&seen.test.kind))
                }
            }
        })
    }

    /// Probability (density) of an observation in a world. Readings of the same test are comparable with each other only.
    pub(crate) fn likelihood(&self, seen: &Observation, case: &Case<'_>) -> f64 {
        match &seen.seen {
            Seen::Hold(hold) => seen.scope.as_ref().map_or(1.0, |scope| {
                self.hold_likelihood(self.under_vacuum(&case.world, scope).0, hold)
            }),
            Seen::Look(parts) => self.look(seen, &case.world, parts),
            Seen::Complaint => {
                let told = self.told(&case.world.faults);
                self.complaints(case.behaviour(self), &told, case.setting.softens)
            }
            Seen::Fields(values) => self.values_likelihood(seen, values, &self.fields(seen, case)),
        }
    }

    /// Probability (density) of values where these are to be expected; a value that nothing is expected of says nothing.
    pub(crate) fn values_likelihood(
        &self,
        seen: &Observation,
        values: &[(String, Value)],
        expected: &Fields,
    ) -> f64 {
        let slips = self.slips(seen);
        let of_set = |fields: &[(&'static str, Expect)]| -> f64 {
            let each = fields.iter().map(|(key, expect)| {
                let value = values.iter().find(|(k, _)| k == key);
                value.map_or(1.0, |(_, v)| expect.likelihood(*v, slips))
            });
            each.product()
        };
        expected.iter().map(|(p, fields)| p * of_set(fields)).sum()
    }

    /// What a test should show in a world.
    pub(crate) fn fields(&self, seen: &Observation, case: &Case<'_>) -> Fields {
        match depends(&seen.seen, &seen.test) {
            Depends::Work => {
                let mut fields = self.work_fields(seen, case.behaviour(self));
                if shows_a_sign(seen) {
                    let signs = self.sign_fields(seen, &case.world.faults);
                    fields
                        .iter_mut()
                        .for_each(|(_, set)| set.extend(signs.iter().copied()));
                }
                fields
            }
            Depends::Told => {
                let told = self.told(&case.world.faults);
                self.told_fields(seen, case.behaviour(self), &told, case.setting.softens)
            }
            Depends::Electric => self.electric_fields(seen, &case.world, case.setting),
            Depends::Signs if seen.test.kind == TestKind::Flow => {
                let part = seen.test.part.as_ref().and_then(|id| self.layout.number(id));
                let free = if case.world.of(part).blocks { 0.0 } else { 1.0 };
                vec![(1.0, vec![("free", Expect::Yes(free))])]
            }
            Depends::Signs if matches!(seen.test.kind, TestKind::ValveOff | TestKind::ValveOn) => {
                self.bench_fields(seen, &case.world, case.setting)
            }
            Depends::Signs if seen.test.kind != TestKind::Look => {
                vec![(1.0, self.sign_fields(seen, &case.world.faults))]
            }
            Depends::Signs | Depends::Rest => vec![(1.0, Vec::new())],
        }
    }

    /// What a complaint tried out, stored codes, or the shake should be.
    pub(super) fn told_fields(
        &self,
        seen: &Observation,
        behaviour: &Behaviour,
        told: &Told,
        softens: bool,
    ) -> Fields {
        match seen.test.kind {
            TestKind::Codes => vec![(1.0, self.codes(behaviour, told))],
            TestKind::Shake => self.shake(seen, behaviour, told, softens),
            _ => vec![(1.0, vec![("present", self.reproduced(behaviour, told, softens))])],
        }
    }

    /// What a meter should show. A dead one shows nothing; on the AC range one shows no volts.
    pub(super) fn electric_fields(&self, seen: &Observation, world: &World, setting: Setting) -> Fields {
        let mut sets = self.meter_fields(seen, world, setting);
        if let Some(battery) = self.battery_beside(seen, world, setting) {
            sets.iter_mut().for_each(|(_, fields)| fields.push(battery));
        }
        if world.meter_dead {
            for (_, expect) in sets.iter_mut().flat_map(|(_, fields)| fields) {
                *expect = expect.unseen();
            }
            return sets;
        }
        let ac = self.slips(seen).ac.value;
        let volts = |fields: &[(&'static str, Expect)]| -> Vec<(&'static str, Expect)> {
            let unseen = |(key, expect): &(&'static str, Expect)| match expect {
                Expect::Volts { .. } => (*key, expect.unseen()),
                other => (*key, *other),
            };
            fields.iter().map(unseen).collect()
        };
        let has_volts =
            |fields: &[(&'static str, Expect)]| fields.iter().any(|(_, e)| matches!(e, Expect::Volts { .. }));
        if let Some((_, first)) = sets.first().filter(|(_, fields)| has_volts(fields)) {
            let unseen = (ac, volts(first));
            sets.iter_mut().for_each(|(p, _)| *p *= 1.0 - ac);
            sets.push(unseen);
        }
        sets
    }

    /// What the battery should show that a test reads besides; it says nothing where the test does not.
    fn battery_beside(
        &self,
        seen: &Observation,
        world: &World,
        setting: Setting,
    ) -> Option<(&'static str, Expect)> {
        let drive = self.drive_of(&seen.test)?;
        let battery = Electric::new(self, world, drive, setting, seen.engine, None).battery();
        (seen.number(BATTERY).is_some() || seen.test.kind == TestKind::ProveMeter)
            .then_some((BATTERY, battery))
    }

    fn meter_fields(&self, seen: &Observation, world: &World, setting: Setting) -> Fields {
        let battery = seen.number(BATTERY);
        let Some(drive) = self.drive_of(&seen.test) else {
            return vec![(1.0, Vec::new())];
        };
        let with = |engine| Electric::new(self, world, drive, setting, engine, battery);
        let now = with(seen.engine);
        let out = || {
            let out = Setting {
                window_at_idle: false,
                ..setting
            };
            Electric::new(self, world, drive, out, EngineState::Idle, battery)
        };
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
            TestKind::PowerWire => one(vec![
                ("ohms", now.power_wire_ohms()),
                ("drop_v", now.power_wire_drop()),
                ("to_ground_open", now.power_wire_clear()),
            ]),
            TestKind::ValveVolts => self.unless_out(seen, &now, &out(), |electric| {
                let (open, plugged) = electric.across_pins();
                let volts = if seen.connected == Some(true) {
                    plugged
                } else {
                    open
                };
                vec![("volts", volts), ("plugged_v", plugged)]
            }),
            TestKind::ControlPin => {
                // Off means out of the window, with the feed still there.
                let off = out();
                self.unless_out(seen, &now, &off, |electric| {
                    vec![("off_v", off.control_pin()), ("on_v", electric.control_pin())]
                })
            }
            TestKind::ProveMeter => one(vec![("ohms", now.leads())]),
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

    /// What shows now, and with a small chance what shows while the module works no valve: read too soon, or too late.
    pub(super) fn unless_out<T>(
        &self,
        seen: &Observation,
        now: &T,
        out: &T,
        fields: impl Fn(&T) -> Vec<(&'static str, Expect)>,
    ) -> Fields {
        let slip = self.slips(seen).state.value;
        vec![(1.0 - slip, fields(now)), (slip, fields(out))]
    }
}

/// Key of the volts at the battery that are read beside others.
const BATTERY: &str = "battery";
