//! What hands feel of mounts and valves: the shake with vacuum on and off, a valve by itself.

use super::causes::Fault;
use super::condition::Setting;
use super::electric::Electric;
use super::expect::Expect;
use super::model::{Model, World};
use super::observation::{CHANGES, Observation, STEPS, STEPS_AT_AN_END, Seen};
use super::predict::Fields;
use super::vacuum::Behaviour;
use crate::faults::Stuck;
use crate::{EngineState, TestKind, ValveRest};

/// Leak through a seat or vent that is felt in half the cases, std cm³/min. Source: from memory.
const SEAT_FELT: f64 = 100.0;
/// Leak against which a hand pump works a mount in half the cases, std cm³/min. Source: worked out from 50 strokes of
/// 15 cm³ a minute.
const PUMPED_AGAINST: f64 = 300.0;
/// A valve that moves is heard so often, and one that doesn't is not.
const CLICKS: f64 = 0.97;
/// Share of people who feel a change where there is none. Source: from memory.
const UNFELT: f64 = 0.07;

impl Model<'_> {
    /// Whether the shake changes when the mounts' vacuum goes.
    pub(super) fn shake(&self, seen: &Observation, behaviour: &Behaviour) -> (&'static str, Expect) {
        let mounts = &behaviour.at(seen.engine).mounts;
        let starved = self.data.physics.starved_below.value;
        let answering = mounts.iter().filter(|m| !m.dead && m.on >= starved).count();
        self.shaken(seen, answering as f64)
    }

    /// Whether it changes with one mount under a hand pump.
    pub(super) fn shake_of_mount(&self, seen: &Observation, world: &World) -> (&'static str, Expect) {
        let condition = world.of(self.tested(seen));
        let answering = if condition.dead {
            0.0
        } else {
            PUMPED_AGAINST / (PUMPED_AGAINST + condition.leak)
        };
        self.shaken(seen, answering)
    }

    /// The difference that so many answering mounts make: the engine pushes all mounts in step, so their shares add up.
    fn shaken(&self, seen: &Observation, answering: f64) -> (&'static str, Expect) {
        let share = answering / self.layout.mounts.len().max(1) as f64;
        let rates = &self.data.rates;
        let is_seen =
            |wanted: &str| matches!(&seen.seen, Seen::Fields(of) if of.iter().any(|(key, _)| key == wanted));
        if is_seen(CHANGES) {
            return (CHANGES, self.felt(share));
        }
        let (mean, sd) = (rates.shake_steps.value * share, rates.shake_steps.sd);
        let (key, hidden) = if is_seen(STEPS_AT_AN_END) {
            (STEPS_AT_AN_END, rates.shakes_otherwise.value)
        } else {
            (STEPS, 0.0)
        };
        (key, Expect::Steps { mean, sd, hidden })
    }

    pub(super) fn tested(&self, seen: &Observation) -> Option<usize> {
        seen.test.part.as_ref().and_then(|id| self.layout.number(id))
    }

    /// Whether a fault changes what a mount under a hand pump, or a valve by itself, does.
    pub(super) fn moves_with(&self, seen: &Observation, fault: &Fault) -> bool {
        if seen.test.kind == TestKind::Shake {
            return fault.part.is_some() && fault.part == self.tested(seen);
        }
        let drive = self.drive_of(&seen.test);
        fault.part.is_some() && drive.is_some_and(|d| fault.part == Some(d.valve) || fault.part == d.coil)
    }

    /// What a valve by itself should show under a hand pump, off or on a jumper.
    pub(super) fn bench_fields(&self, seen: &Observation, world: &World, setting: Setting) -> Fields {
        let Some(drive) = self.drive_of(&seen.test) else {
            return Vec::new();
        };
        let valve = world.of(Some(drive.valve));
        let rest_open = match valve.stuck {
            Some(position) => position == Stuck::Open,
            None => self.layout.circuit.properties.rest == ValveRest::Open,
        };
        let felt = |leak: f64| leak / (leak + SEAT_FELT);
        if seen.test.kind == TestKind::ValveOff {
            let passes = if rest_open { 1.0 } else { felt(valve.seat_leak) };
            let vents = if rest_open || valve.vent_blocked { 0.0 } else { 1.0 };
            let off = vec![("passes", Expect::Yes(passes)), ("vents", Expect::Yes(vents))];
            return vec![(1.0, off)];
        }
        let fed = Electric::new(self, world, drive, setting, EngineState::Off, None).moves_on_jumper();
        let shows = |moves: bool| {
            let (passes, vents) = if moves != rest_open {
                (1.0, felt(valve.vent_leak))
            } else {
                (0.0, 1.0)
            };
            let clicks = if moves { CLICKS } else { 1.0 - CLICKS };
            vec![
                ("passes", Expect::Yes(passes)),
                ("clicks", Expect::Yes(clicks)),
                ("vents", Expect::Yes(vents)),
            ]
        };
        let slip = self.slips(seen).contact.value;
        let moves = fed && valve.stuck.is_none();
        vec![(1.0 - slip, shows(moves)), (slip, shows(false))]
    }

    /// Whether a change is felt when such a share of the mounts changes.
    pub(super) fn felt(&self, share: f64) -> Expect {
        Expect::Yes(self.data.rates.shake_felt.value * share.sqrt() + UNFELT * (1.0 - share))
    }
}
