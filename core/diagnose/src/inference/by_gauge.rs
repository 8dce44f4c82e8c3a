//! What a gauge should show with the engine at work, and whether a mount answers to a spare hose.

use super::expect::Expect;
use super::model::Model;
use super::observation::{CHANGES, Observation};
use super::predict::Fields;
use super::vacuum::{AtMounts, AtWork, Behaviour, MountAtWork};
use crate::TestKind;

/// A time given for a needle that does not move: within a minute or so. Source: from memory.
const ANY_TIME: Expect = Expect::Seconds {
    median: 2.0,
    log10_sd: 0.7,
};
/// Share of the source's vacuum from which on there is some.
const SOME: f64 = 0.3;

impl Model<'_> {
    /// What a test with the engine running, or of a valve by itself, should show.
    pub(super) fn work_fields(&self, seen: &Observation, behaviour: &Behaviour) -> Fields {
        let Some(drive) = self.drive_of(&seen.test) else {
            return vec![(1.0, Vec::new())];
        };
        let one = |fields| vec![(1.0, fields)];
        let now = behaviour.at(seen.engine);
        let gauge = |at: &AtMounts| {
            at.valve(drive.valve)
                .map(|work| self.gauge_fields(seen, behaviour.weak_source, work))
                .unwrap_or_default()
        };
        match seen.test.kind {
            TestKind::Source => {
                let Some(work) = now.valve(drive.valve) else {
                    return one(Vec::new());
                };
                let at = |inlet| self.gauge_fields(seen, behaviour.weak_source, AtWork { inlet, ..work });
                if work.hose_end > work.inlet {
                    let at_valve = self.data.rates.end_off_at_valve.value;
                    vec![(at_valve, at(work.hose_end)), (1.0 - at_valve, at(work.inlet))]
                } else {
                    one(at(work.inlet))
                }
            }
            TestKind::Delivered | TestKind::SwitchOver => self.unless_out(seen, now, &behaviour.out, gauge),
            TestKind::Bypass => {
                let enough = self.data.physics.starved_below.value;
                let behind = |mount: usize| {
                    let drive_of = self.layout.drive_of_mount(mount);
                    drive_of.is_some_and(|d| d.valve == drive.valve)
                };
                let mounts = self.layout.mounts.iter().zip(&now.mounts);
                let answers = |(at, m): &(&usize, &MountAtWork)| behind(**at) && !m.dead && m.fed >= enough;
                let share = mounts.filter(answers).count() as f64 / now.mounts.len().max(1) as f64;
                let changes = |share| vec![(CHANGES, self.felt(share))];
                if now.valve(drive.valve).is_some_and(|work| work.outlet_off) {
                    let at_valve = self.data.rates.end_off_at_valve.value;
                    vec![(at_valve, changes(share)), (1.0 - at_valve, changes(0.0))]
                } else {
                    one(changes(share))
                }
            }
            _ => one(Vec::new()),
        }
    }

    /// What a gauge at a valve should show.
    fn gauge_fields(&self, seen: &Observation, weak: bool, work: AtWork) -> Vec<(&'static str, Expect)> {
        let figures = &self.data.physics;
        let (level, level_sd) = self.source;
        // Where the source was read, what arrives is compared with that; else with what sources make.
        let (times, level_sd) = match seen.seen_source {
            Some(seen) if work.inlet > SOME * level => (seen / work.inlet, 0.0),
            _ => (1.0, level_sd),
        };
        let weak_sd = if weak {
            figures.weak_source_share.sd / figures.weak_source_share.value
        } else {
            0.0
        };
        let vacuum = |kpa: f64, more_sd: f64| {
            let share = kpa / level.max(1.0);
            let sd = level_sd.hypot(weak_sd * level) * share;
            let sd = sd.hypot(figures.delivered_sd_kpa.value * (0.3 + 0.7 * share));
            Expect::Vacuum {
                mean: kpa * times,
                sd: sd.hypot(more_sd),
                range: self.ambient,
            }
        };
        let seconds = |figure: crate::faults::Figure| Expect::Seconds {
            median: figure.value,
            log10_sd: figure.log10_sd,
        };
        let some = |kpa: f64| kpa > SOME * level;
        match seen.test.kind {
            TestKind::Source => {
                let (prior, sd) = self.source;
                let share = work.inlet / level.max(1.0);
                let expect = Expect::Vacuum {
                    mean: prior * share,
                    sd: (sd.hypot(weak_sd * level) * share).hypot(figures.delivered_sd_kpa.value * 0.3),
                    range: self.ambient,
                };
                let felt = if some(work.inlet) { 1.0 } else { 0.05 };
                vec![("gauge", expect), ("felt", Expect::Yes(felt))]
            }
            TestKind::Delivered => {
                let mut fields = vec![("gauge", vacuum(work.on, 0.0))];
                let arrives = if some(work.on) {
                    seconds(figures.arrive_s)
                } else {
                    ANY_TIME
                };
                fields.push(("seconds", arrives));
                fields
            }
            _ => {
                let blocked = !work.vents && work.off > 0.0 && work.off < work.on;
                let more_sd = if blocked {
                    figures.vent_blocked_keeps.sd * work.on
                } else {
                    0.0
                };
                let mut fields = vec![("gauge", vacuum(work.off, more_sd))];
                let leaves = if some(work.on) && blocked {
                    seconds(figures.vent_blocked_s)
                } else if some(work.on) && work.off < 0.5 * work.on {
                    seconds(figures.vent_s)
                } else {
                    ANY_TIME
                };
                fields.push(("seconds", leaves));
                fields
            }
        }
    }
}
