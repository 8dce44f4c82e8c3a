//! What a vacuum hold test shows under a supposed cause.

use super::air;
use super::expect::normal;
use super::model::{Model, World};
use crate::{ComponentKind, HoldAnswer, HoldCourse, TestId};
use holdfast_measure::{Pressure, PressureUnit, Volume};
use uom::si::pressure::kilopascal;
use uom::si::volume::cubic_centimeter;

/// Standard uncertainty of the highest figure of a gauge that won't go on, kPa. Source: from memory.
const HIGHEST_SD: f64 = 4.0;
/// Width of the range of strokes on the scale of ln: 1 to 200.
const STROKES_RANGE: f64 = 5.3;
/// No figure below this share of the air pressure is a start that anybody would watch.
const PLAUSIBLE_START: f64 = 0.15;

/// The parts that a hold test sees.
#[derive(Debug, Clone)]
pub(crate) struct HoldScope {
    parts: Vec<usize>,
    entries: Vec<usize>,
}

impl HoldScope {
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
}

/// What the pump sees: leak std cm³/min, volume and its standard uncertainty cm³.
#[derive(Debug, Clone, Copy)]
struct Trapped {
    leak: f64,
    volume: f64,
    volume_u: f64,
}

#[derive(Debug, Clone, Copy, PartialEq)]
enum Course {
    Watched { start: f64, drop: f64, seconds: f64 },
    NeverReached { highest: f64 },
}

impl HoldSeen {
    /// A hold that lost `drop` kPa in `seconds` from `start`.
    pub fn watched(start: f64, drop: f64, seconds: f64, strokes: Option<f64>) -> Self {
        Self {
            readings: vec![(1.0, Course::Watched { start, drop, seconds })],
            strokes,
        }
    }

    /// A hold that never got beyond `highest` kPa.
    pub fn never_reached(highest: f64) -> Self {
        Self {
            readings: vec![(1.0, Course::NeverReached { highest })],
            strokes: None,
        }
    }

    /// From an answer. `unit_slip`: how often a figure is in another unit than said.
    pub fn from_answer(answer: &HoldAnswer, ambient: f64, unit_slip: f64) -> Option<Self> {
        let others = (PressureUnit::ALL.len() - 1) as f64;
        let mut readings: Vec<(f64, Course)> = Vec::new();
        for unit in PressureUnit::ALL {
            let kpa = |figure: f64| unit.to_pressure(figure).value / 1_000.0;
            let course = match &answer.course {
                HoldCourse::Spots { start, readings } => {
                    let (seconds, end) = readings.last().copied()?;
                    Course::Watched {
                        start: kpa(*start),
                        drop: kpa(*start) - kpa(end),
                        seconds,
                    }
                }
                HoldCourse::Trace { hz, readings } => {
                    let seen = |(i, r): (usize, &Option<f64>)| r.map(|r| (i as f64 / hz, r));
                    let first = readings.iter().enumerate().find_map(seen)?;
                    let last = readings.iter().enumerate().rev().find_map(seen)?;
                    Course::Watched {
                        start: kpa(first.1),
                        drop: kpa(first.1) - kpa(last.1),
                        seconds: last.0 - first.0,
                    }
                }
                HoldCourse::NeverReached { highest } => Course::NeverReached {
                    highest: kpa(*highest),
                },
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
        })
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

    /// What the pump sees, tester included.
    fn under_vacuum(&self, world: &World, scope: &HoldScope) -> Trapped {
        let sound = self.data.physics.sound_leak_std_cm3_min.value;
        let mut leak = world.of(self.layout.tester).leak + sound;
        let (mut volume, mut variance) = (self.situation.instruments.pump_cm3, 0.0);
        let mut seen = vec![false; self.layout.down.len()];
        let mut todo = scope.entries.clone();
        while let Some(part) = todo.pop() {
            let condition = world.of(Some(part));
            if std::mem::replace(&mut seen[part], true) || condition.blocks || !scope.parts.contains(&part) {
                continue;
            }
            if Some(part) != self.layout.tester {
                let own = self.layout.circuit.components[part].volume();
                volume += own.value * 1e6;
                variance += (own.u * 1e6).powi(2);
                leak += sound + condition.leak + condition.back_leak + condition.seat_leak;
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
        Trapped {
            leak,
            volume,
            volume_u: variance.sqrt(),
        }
    }

    /// Strokes that a hold of a sound circuit takes to `start` kPa.
    pub(crate) fn usual_strokes(&self, test: &TestId, start: f64) -> Option<f64> {
        let scope = self.hold_scope(test)?;
        let volume = self.under_vacuum(&self.world(&[]), &scope).volume;
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

    /// Probability density of a hold under a supposed cause.
    pub(super) fn hold_likelihood(&self, world: &World, scope: &HoldScope, seen: &HoldSeen) -> f64 {
        let trapped = self.under_vacuum(world, scope);
        let course: f64 = seen
            .readings
            .iter()
            .map(|(p, course)| p * self.course(*course, trapped))
            .sum();
        course
            * seen
                .strokes
                .map_or(1.0, |strokes| self.strokes(strokes, seen, trapped))
    }

    fn course(&self, course: Course, trapped: Trapped) -> f64 {
        let Trapped {
            leak,
            volume,
            volume_u,
        } = trapped;
        let figures = &self.data.physics;
        let rates = &self.data.rates;
        let (bad_seal, sealed) = (rates.hold_bad_seal.value, rates.hold_sealed_by_mistake.value);
        let (right, shut) = match course {
            Course::Watched { start, drop, seconds } => {
                let reached: f64 = self
                    .pace
                    .iter()
                    .map(|(displaced, w)| {
                        let deepest = air::pumped(leak, *displaced, self.ambient);
                        w / (1.0 + ((start - deepest) / HIGHEST_SD).exp())
                    })
                    .sum();
                let expected = air::drop(leak, volume, self.ambient, start, seconds);
                let sd = (self.gauge_u.powi(2)
                    + figures.drop_unmodelled_kpa.value.powi(2)
                    + (figures.drop_relative.value.hypot(volume_u / volume) * expected).powi(2))
                .sqrt();
                let still = self.gauge_u.hypot(figures.drop_unmodelled_kpa.value);
                (reached * normal(drop, expected, sd), normal(drop, 0.0, still))
            }
            Course::NeverReached { highest } => {
                let target = crate::hold_target(self.situation).vacuum.value / 1_000.0;
                let at_pace = |(displaced, w): &(f64, f64)| {
                    let deepest = air::pumped(leak, *displaced, self.ambient);
                    w * normal(highest, deepest, HIGHEST_SD) / (1.0 + ((deepest - target) / HIGHEST_SD).exp())
                };
                (self.pace.iter().map(at_pace).sum(), 0.0)
            }
        };
        // An adapter that leaks shows any drop; a pinched test hose or a sticking needle shows none.
        (1.0 - bad_seal - sealed) * right + sealed * shut + bad_seal / self.ambient
    }

    fn strokes(&self, strokes: f64, seen: &HoldSeen, trapped: Trapped) -> f64 {
        let Trapped {
            leak,
            volume,
            volume_u,
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
        let slip = self.data.rates.answer_slip.value;
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
