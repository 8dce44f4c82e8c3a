//! What hands feel of mounts and valves: the shake with vacuum on and off, a valve by itself.

use super::causes::Fault;
use super::complaint::Told;
use super::condition::Setting;
use super::electric::Electric;
use super::expect::Expect;
use super::model::{Model, World};
use super::observation::{CHANGES, MARKS, Observation, Seen};
use super::predict::Fields;
use super::vacuum::{Behaviour, MountAtWork};
use crate::faults::Stuck;
use crate::{EngineState, TestKind, ValveRest};

/// Leak through a seat or vent that is felt in half the cases, std cm³/min. Source: from memory.
const SEAT_FELT: f64 = 100.0;
/// A valve that moves is heard so often, and one without current is not.
const CLICKS: f64 = 0.97;
/// A stuck one is heard so often when its coil pulls: it gives a little. Source: from memory.
const CLICKS_STUCK: f64 = 0.25;
/// Share of people who feel a change where there is none. Source: from memory.
const UNFELT: f64 = 0.07;

/// Standard normal deviates and weights that stand for how cars and people differ. Source: Gauss and Hermite's rule of three.
const DIFFERENT: [(f64, f64); 3] = [
    (-1.732_050_808, 1.0 / 6.0),
    (0.0, 2.0 / 3.0),
    (1.732_050_808, 1.0 / 6.0),
];

impl Model<'_> {
    /// How strong the shake is felt with the mounts' vacuum on and off, or with one mount's under a hand pump. The engine
    /// pushes all mounts in step, so their shares add up; what shakes by itself comes on top of both.
    pub(super) fn shake(
        &self,
        seen: &Observation,
        behaviour: &Behaviour,
        told: &Told,
        softens: bool,
    ) -> Fields {
        let (on, off) = self.answering(seen, &behaviour.at(seen.engine).mounts, told);
        let recorded = matches!(&seen.seen, Seen::Fields(of) if of.iter().any(|(key, _)| key == CHANGES));
        if recorded {
            return vec![(1.0, vec![(CHANGES, self.felt((on - off).abs()))])];
        }
        let rates = &self.data.rates;
        let (calm, hard, otherwise) = (rates.shake_calm, rates.shake_hard, rates.shake_otherwise);
        let hardness = |answering: f64| if softens { 1.0 - answering } else { answering };
        let of_car = |(p, mean, sd): (f64, f64, f64)| {
            DIFFERENT.map(|(z, weight)| {
                let felt = |answering| mean + z * sd + hard.value * hardness(answering);
                let [key_on, key_off] = MARKS;
                let mark = |answering| Expect::mark(felt(answering), hard.sd);
                (p * weight, vec![(key_on, mark(on)), (key_off, mark(off))])
            })
        };
        let sd = calm.sd.hypot(otherwise.sd);
        let cars = [
            (1.0 - told.shakes, calm.value, calm.sd),
            (told.shakes, calm.value + otherwise.value, sd),
        ];
        cars.into_iter()
            .filter(|car| car.0 > 0.0)
            .flat_map(of_car)
            .collect()
    }

    /// Share of all mounts' effect that is there with vacuum on and off.
    fn answering(&self, seen: &Observation, mounts: &[MountAtWork], told: &Told) -> (f64, f64) {
        let starved = self.data.physics.starved_below.value;
        let tested = self.tested(seen);
        let answers = |m: &MountAtWork| !m.dead && m.on >= starved;
        let (mut on, mut off) = (0.0, 0.0);
        for ((number, mount), pumped) in self.layout.mounts.iter().zip(mounts).zip(&told.pumped) {
            let at_idle = if answers(mount) { 1.0 } else { 0.0 };
            if tested.is_none() {
                on += at_idle;
            } else if tested == Some(*number) {
                on += if mount.dead { 0.0 } else { *pumped };
            } else {
                on += at_idle;
                off += at_idle;
            }
        }
        let all = mounts.len().max(1) as f64;
        (on / all, off / all)
    }

    pub(super) fn tested(&self, seen: &Observation) -> Option<usize> {
        seen.test.part.as_ref().and_then(|id| self.layout.number(id))
    }

    /// Whether a fault changes what a valve by itself does.
    pub(super) fn moves_with(&self, seen: &Observation, fault: &Fault) -> bool {
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
        let shows = |fed: bool| {
            let moves = fed && valve.stuck.is_none();
            let (passes, vents) = if moves != rest_open {
                (1.0, felt(valve.vent_leak))
            } else {
                (0.0, 1.0)
            };
            let clicks = match (fed, moves) {
                (true, true) => CLICKS,
                (true, false) => CLICKS_STUCK,
                (false, _) => 1.0 - CLICKS,
            };
            vec![
                ("passes", Expect::Yes(passes)),
                ("clicks", Expect::Yes(clicks)),
                ("vents", Expect::Yes(vents)),
            ]
        };
        let slip = self.slips(seen).contact.value;
        vec![(1.0 - slip, shows(fed)), (slip, shows(false))]
    }

    /// Whether a change is felt when such a share of the mounts changes.
    pub(super) fn felt(&self, share: f64) -> Expect {
        Expect::Yes(self.data.rates.shake_felt.value * share.sqrt() + UNFELT * (1.0 - share))
    }
}
