//! What a vacuum hold test shows under a supposed cause.

use super::air;
use super::expect::normal;
use super::model::{Model, World};
use super::observation::Observation;
use crate::{ComponentKind, HoldAnswer, HoldCourse, TestId};
use holdfast_measure::{Pressure, PressureUnit, Volume};
use uom::si::pressure::kilopascal;
use uom::si::volume::cubic_centimeter;

/// Standard uncertainty of the highest figure of a gauge that won't go on, kPa. Source: from memory.
const HIGHEST_SD: f64 = 9.0;
/// A bad seal lets in more than a hand pump takes out in so many cases. Source: from memory.
const SEAL_BEATS_PUMP: f64 = 0.2;
/// Width of the range of strokes on the scale of ln: 1 to 200.
const STROKES_RANGE: f64 = 5.3;
/// An earlier reading tells how the needle went when it was taken up to this share of the time.
const EARLY: f64 = 0.6;
/// What the shape of a fall differs by, as a share of it, and what is left of the unmodelled drop. Source: from memory.
const SHAPE_RELATIVE: f64 = 0.05;
const SHAPE_UNMODELLED: f64 = 0.5;
/// No figure below this share of the air pressure is a start that anybody would watch.
const PLAUSIBLE_START: f64 = 0.15;

/// The parts that a hold test sees.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct HoldScope {
    parts: Vec<usize>,
    entries: Vec<usize>,
}

impl HoldScope {
    /// Of a test that sees nothing.
    pub const fn nothing() -> Self {
        Self {
            parts: Vec::new(),
            entries: Vec::new(),
        }
    }

    /// Whether the test sees one part alone.
    pub fn is_one(&self) -> bool {
        self.parts.len() == 1
    }

    /// Whether the test sees a part.
    pub fn contains(&self, part: usize) -> bool {
        self.parts.contains(&part)
    }
}

/// A hold as it was read, in kPa: every way in which the figures can be meant, with its probability.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct HoldSeen {
    readings: Vec<(f64, Course)>,
    strokes: Option<f64>,
    /// The person was asked about it and looked again.
    looked_again: bool,
}

/// What the pump sees: leak std cm³/min, volume and its standard uncertainty cm³, and what the needle does by itself.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Trapped {
    pub leak: f64,
    pub volume: f64,
    pub volume_u: f64,
    /// Vacuum lost in the end without a leak, kPa, and with which time constant, s.
    pub drift: (f64, f64),
    /// The needle stays until so much vacuum has gone, kPa.
    pub sticks: f64,
}

#[derive(Debug, Clone, Copy, PartialEq)]
enum Course {
    Watched {
        start: f64,
        drop: f64,
        seconds: f64,
        /// Seconds and drop of an earlier reading.
        early: Option<(f64, f64)>,
    },
    NeverReached {
        highest: f64,
    },
}

/// What a watched hold should show: how likely it gets to its start, and the drop, kPa.
#[derive(Debug, Clone, Copy)]
struct Awaited {
    reached: f64,
    drop: f64,
    sd: f64,
}

impl HoldSeen {
    /// A hold that lost `drop` kPa in `seconds` from `start`.
    pub fn watched(start: f64, drop: f64, seconds: f64, strokes: Option<f64>) -> Self {
        Self {
            readings: vec![(
                1.0,
                Course::Watched {
                    start,
                    drop,
                    seconds,
                    early: None,
                },
            )],
            strokes,
            looked_again: false,
        }
    }

    /// A hold that never got beyond `highest` kPa.
    pub fn never_reached(highest: f64) -> Self {
        Self {
            readings: vec![(1.0, Course::NeverReached { highest })],
            strokes: None,
            looked_again: false,
        }
    }

    /// The same after it was looked at again: a share `kept` of slips is still there.
    pub fn looked_again(mut self, kept: f64) -> Self {
        self.looked_again = true;
        let meant = self.readings.iter().map(|(p, _)| *p).fold(0.0, f64::max);
        for (p, _) in self.readings.iter_mut().filter(|(p, _)| *p < meant) {
            *p *= kept;
        }
        let total: f64 = self.readings.iter().map(|(p, _)| p).sum();
        self.readings.iter_mut().for_each(|(p, _)| *p /= total);
        self
    }

    /// As somebody with a gauge in this unit would write it down, taken as meant.
    pub fn as_answer(&self, unit: PressureUnit) -> Option<HoldAnswer> {
        let figure = |kpa: f64| unit.from_pressure(Pressure::new::<kilopascal>(kpa));
        let course = match self.readings.first()?.1 {
            Course::Watched {
                start, drop, seconds, ..
            } => HoldCourse::Spots {
                start: figure(start),
                readings: vec![(seconds, figure(start - drop.max(0.0)))],
            },
            Course::NeverReached { highest } => HoldCourse::NeverReached {
                highest: figure(highest),
            },
        };
        Some(HoldAnswer {
            unit,
            course,
            strokes: self.strokes,
            hand_timed: false,
        })
    }

    /// From an answer. `unit_slip`: how often a figure is in another unit than said.
    pub fn from_answer(answer: &HoldAnswer, ambient: f64, unit_slip: f64) -> Option<Self> {
        let others = (PressureUnit::ALL.len() - 1) as f64;
        let mut readings: Vec<(f64, Course)> = Vec::new();
        for unit in PressureUnit::ALL {
            let kpa = |figure: f64| unit.to_pressure(figure).value / 1_000.0;
            let course = match &answer.course {
                HoldCourse::NeverReached { highest } => Course::NeverReached {
                    highest: kpa(*highest),
                },
                watched => {
                    let seen = watched_readings(watched);
                    let (&(begun, start), &(ended, end)) = (seen.first()?, seen.last()?);
                    let between = |r: &&(f64, f64)| r.0 > begun && r.0 <= begun + EARLY * (ended - begun);
                    Course::Watched {
                        start: kpa(start),
                        drop: kpa(start) - kpa(end),
                        seconds: ended - begun,
                        early: seen
                            .iter()
                            .rev()
                            .find(between)
                            .map(|(t, figure)| (t - begun, kpa(start) - kpa(*figure))),
                    }
                }
            };
            let possible = match course {
                Course::Watched { start, seconds, .. } => {
                    seconds > 0.0
                        && start < ambient
                        && (unit == answer.unit || start > PLAUSIBLE_START * ambient)
                }
                Course::NeverReached { highest } => highest < ambient,
            };
            if possible {
                readings.push((
                    if unit == answer.unit {
                        1.0 - unit_slip
                    } else {
                        unit_slip / others
                    },
                    course,
                ));
            }
        }
        let total: f64 = readings.iter().map(|r| r.0).sum();
        (total > 0.0).then(|| Self {
            readings: readings.into_iter().map(|(p, c)| (p / total, c)).collect(),
            strokes: answer.strokes.filter(|n| *n >= 1.0),
            looked_again: false,
        })
    }
}

/// Seconds and figures of a hold that was watched, the start first.
fn watched_readings(course: &HoldCourse) -> Vec<(f64, f64)> {
    match course {
        HoldCourse::Spots { start, readings } => std::iter::once((0.0, *start))
            .chain(readings.iter().copied())
            .collect(),
        HoldCourse::Trace { hz, readings } => readings
            .iter()
            .enumerate()
            .filter_map(|(i, r)| r.map(|r| (i as f64 / hz, r)))
            .collect(),
        HoldCourse::NeverReached { .. } => Vec::new(),
    }
}

impl Model<'_> {
    /// The parts that a hold test sees, and where the pump joins them.
    pub(super) fn hold_scope(&self, test: &TestId) -> Option<HoldScope> {
        let scope = self.layout.circuit.scope(test)?;
        let parts: Vec<usize> = scope
            .parts
            .iter()
            .filter_map(|id| self.layout.number(id))
            .collect();
        // The pump joins where the tested valve was taken off; a part alone is its own beginning.
        let beside_valve = |part: &usize| {
            let neighbours = self.layout.up[*part].iter().chain(&self.layout.down[*part]);
            neighbours
                .into_iter()
                .any(|n| self.layout.kind(*n) == ComponentKind::Valve && !parts.contains(n))
        };
        let mut entries: Vec<usize> = parts.iter().copied().filter(beside_valve).collect();
        if entries.is_empty() || parts.len() == 1 {
            entries.clone_from(&parts);
        }
        Some(HoldScope { parts, entries })
    }

    /// What the pump sees, tester included, and which parts it reaches.
    pub(super) fn under_vacuum(&self, world: &World, scope: &HoldScope) -> (Trapped, Vec<bool>) {
        let sound = self.data.physics.sound_leak_std_cm3_min.value;
        let mut leak = world.of(self.layout.tester).lets_in() + sound;
        let (mut volume, mut variance) = (self.situation.instruments.pump_cm3, 0.0);
        let mut reached = vec![false; self.layout.down.len()];
        let mut todo = scope.entries.clone();
        while let Some(part) = todo.pop() {
            let condition = world.of(Some(part));
            if reached[part] || condition.blocks || !scope.parts.contains(&part) {
                continue;
            }
            reached[part] = true;
            if Some(part) != self.layout.tester {
                let own = self.layout.circuit.components[part].volume();
                volume += own.value * 1e6;
                variance += (own.u * 1e6).powi(2);
                leak += sound + condition.lets_in() + condition.back_leak + condition.seat_leak;
                leak += self.bleed(part, condition.vent_blocked);
                if self.layout.kind(part) == ComponentKind::Valve
                    && condition.stuck == Some(crate::faults::Stuck::Open)
                {
                    leak += air::hole(self.data.physics.valve_passage_mm.value);
                }
            }
            let kind = self.layout.kind(part);
            if kind != ComponentKind::Valve && kind != ComponentKind::CheckValve {
                todo.extend(self.layout.up[part].iter().chain(&self.layout.down[part]));
            }
        }
        let tester = world.of(self.layout.tester);
        // Nothing warms, settles or evens out in a capped tester.
        let capped = scope.parts.iter().all(|p| Some(*p) == self.layout.tester);
        let trapped = Trapped {
            leak,
            volume,
            volume_u: variance.sqrt(),
            drift: if capped { (0.0, 1.0) } else { tester.drift },
            sticks: tester.sticks,
        };
        (trapped, reached)
    }

    /// Strokes that a hold of a sound circuit takes to `start` kPa.
    pub(crate) fn usual_strokes(&self, test: &TestId, start: f64) -> Option<f64> {
        let scope = self.hold_scope(test)?;
        let volume = self.under_vacuum(&self.world(&[]), &scope).0.volume;
        Some((self.ideal_strokes(volume, start) * self.data.physics.strokes_worn.value).max(1.0))
    }

    fn ideal_strokes(&self, volume: f64, start: f64) -> f64 {
        holdfast_measure::strokes_to_reach(
            Pressure::new::<kilopascal>(self.ambient),
            Pressure::new::<kilopascal>(start.min(0.98 * self.ambient)),
            Volume::new::<cubic_centimeter>(volume),
            self.situation.pump(),
        )
    }

    /// Probability densities of several courses of one hold test in a world.
    pub(crate) fn hold_likelihoods(
        &self,
        world: &World,
        test: &Observation,
        courses: &[HoldSeen],
    ) -> Vec<f64> {
        let Some(scope) = &test.scope else {
            return vec![1.0; courses.len()];
        };
        let trapped = self.under_vacuum(world, scope).0;
        courses
            .iter()
            .map(|seen| self.hold_likelihood(trapped, seen))
            .collect()
    }

    /// Probability densities of several drops in a world, kPa, all from one start and watched for so many seconds.
    pub(crate) fn drop_likelihoods(
        &self,
        world: &World,
        test: &Observation,
        (start, seconds): (f64, f64),
        drops: &[f64],
    ) -> Vec<f64> {
        let Some(scope) = &test.scope else {
            return vec![1.0; drops.len()];
        };
        let trapped = self.under_vacuum(world, scope).0;
        let awaited = self.awaited(trapped, start, seconds);
        let of_drop = |drop: &f64| self.or_slipped(self.last(awaited, *drop), test.looked_again);
        drops.iter().map(of_drop).collect()
    }

    /// Probability density of a hold with this trapped.
    pub(super) fn hold_likelihood(&self, trapped: Trapped, seen: &HoldSeen) -> f64 {
        let course: f64 = seen
            .readings
            .iter()
            .map(|(p, course)| p * self.course(*course, seen.looked_again, trapped))
            .sum();
        course
            * seen
                .strokes
                .map_or(1.0, |strokes| self.strokes(strokes, seen, trapped))
    }

    fn course(&self, course: Course, looked_again: bool, trapped: Trapped) -> f64 {
        let densities = match course {
            Course::Watched {
                start,
                drop,
                seconds,
                early,
            } => self.watched(trapped, start, (seconds, drop), early),
            Course::NeverReached { highest } => {
                let target = crate::hold_target(self.situation).vacuum.value / 1_000.0;
                let at_pace = |(displaced, w): &(f64, f64)| {
                    let deepest = air::pumped(trapped.leak, *displaced, self.ambient);
                    w * normal(highest, deepest, HIGHEST_SD) / (1.0 + ((deepest - target) / HIGHEST_SD).exp())
                };
                let right = self.pace.iter().map(at_pace).sum();
                [right, 0.0, SEAL_BEATS_PUMP / self.ambient]
            }
        };
        self.or_slipped(densities, looked_again)
    }

    /// The density of what was seen, from those of a hold as it should be, with nothing seen of what is there, and with any
    /// leak at all.
    fn or_slipped(&self, [right, shut, any]: [f64; 3], looked_again: bool) -> f64 {
        let slips = &self.slips[usize::from(looked_again)];
        let (bad_seal, sealed) = (slips.bad_seal.value, slips.sealed.value);
        // An adapter that leaks shows any drop; a pinched test hose hides all there is.
        (1.0 - bad_seal - sealed) * right + sealed * shut + bad_seal * any
    }

    /// Densities of a watched hold: as it should be, with nothing seen of what is there, and with any leak at all.
    fn watched(&self, trapped: Trapped, start: f64, last: (f64, f64), early: Option<(f64, f64)>) -> [f64; 3] {
        let figures = &self.data.physics;
        let (seconds, drop) = last;
        let awaited = self.awaited(trapped, start, seconds);
        let expected = awaited.drop;
        let mut densities = self.last(awaited, drop);
        if let Some((time, early)) = early {
            let still = self
                .gauge_u
                .hypot(SHAPE_UNMODELLED * figures.drop_unmodelled_kpa.value);
            let before = self.fall(trapped, start, time);
            // What the whole drop is off by, the earlier one is off by in proportion.
            let share = if expected.abs() > still {
                (before / expected).clamp(0.0, 1.0)
            } else {
                time / seconds
            };
            let steady = time / seconds;
            let sd = still.hypot(SHAPE_RELATIVE * drop);
            densities[0] *= normal(early, before + share * (drop - expected), sd);
            densities[1] *= normal(early, 0.0, still);
            densities[2] *= normal(early, steady * drop, sd.hypot(0.1 * drop));
        }
        densities
    }

    /// What a watched hold should show in the end.
    fn awaited(&self, trapped: Trapped, start: f64, seconds: f64) -> Awaited {
        let figures = &self.data.physics;
        let reached = |(displaced, w): &(f64, f64)| {
            let deepest = air::pumped(trapped.leak, *displaced, self.ambient);
            w / (1.0 + ((start - deepest) / HIGHEST_SD).exp())
        };
        let drop = self.fall(trapped, start, seconds);
        let relative = figures
            .drop_relative
            .value
            .hypot(trapped.volume_u / trapped.volume);
        Awaited {
            reached: self.pace.iter().map(reached).sum(),
            drop,
            sd: self.still().hypot(relative * drop),
        }
    }

    /// Densities of the drop in the end.
    fn last(&self, awaited: Awaited, drop: f64) -> [f64; 3] {
        [
            awaited.reached * normal(drop, awaited.drop, awaited.sd),
            normal(drop, 0.0, self.still()),
            1.0 / self.ambient,
        ]
    }

    /// Standard uncertainty of a drop where there is none, kPa.
    fn still(&self) -> f64 {
        self.gauge_u.hypot(self.data.physics.drop_unmodelled_kpa.value)
    }

    /// Vacuum lost to the eye in a time, kPa.
    fn fall(&self, trapped: Trapped, start: f64, seconds: f64) -> f64 {
        let leaked = air::drop(trapped.leak, trapped.volume, self.ambient, start, seconds);
        let (in_the_end, time) = trapped.drift;
        let lost = leaked + in_the_end * (1.0 - (-seconds / time).exp());
        if trapped.sticks > 0.0 {
            (lost - trapped.sticks).max(0.0)
        } else {
            lost
        }
    }

    fn strokes(&self, strokes: f64, seen: &HoldSeen, trapped: Trapped) -> f64 {
        let Trapped {
            leak,
            volume,
            volume_u,
            ..
        } = trapped;
        let figures = &self.data.physics;
        let likelihood = |start: f64| {
            let ideal = self.ideal_strokes(volume, start).max(1.0) * figures.strokes_worn.value;
            let left = (1.0 - start / self.ambient).max(0.02);
            let sd = figures.strokes_log_sd.value.hypot(volume_u / volume);
            // Each stroke takes a share of what is left while the leak adds the same amount: p falls towards where they meet.
            let at_pace = |(displaced, weight): &(f64, f64)| {
                let meet = (leak / displaced).min(0.95 * left);
                let expected = ideal * ((1.0 - meet) / (left - meet)).ln() / (1.0 / left).ln();
                weight * normal(strokes.ln(), expected.ln(), sd)
            };
            self.pace.iter().map(at_pace).sum::<f64>()
        };
        let slip = self.slips[usize::from(seen.looked_again)].answer.value;
        let counted: f64 = seen
            .readings
            .iter()
            .map(|(p, course)| match course {
                Course::Watched { start, .. } => p * likelihood(*start),
                Course::NeverReached { .. } => p / STROKES_RANGE,
            })
            .sum();
        (1.0 - slip) * counted + slip / STROKES_RANGE
    }
}
