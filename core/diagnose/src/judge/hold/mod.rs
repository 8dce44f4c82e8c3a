//! The vacuum hold test, by the rules of JCGM 106.

mod remarks;
mod unbuilt;

use holdfast_measure::{
    HoldData, HoldError, HoldSetup, LeakForm, LeakPosterior, LeakRate, Measured, infer_leak,
};

use super::hold_setup::{
    VolumeFrom, bleed_leak, fall, hold_data, limit_drop, limit_for, seconds_of, setup, tester_leak,
    volume_under_test,
};
use super::{FinerGauge, FitPoint, HoldResult, LeakRange, Outcome, TestResult, hold_target};
use crate::{
    Arg, Circuit, ComponentKind, HoldAnswer, HoldCourse, Message, Reading, Situation, TestId, TestKind,
};

/// P(over limit) up to which a part holds, and its complement from which it leaks. Source: an agreed rule, in the form
/// of JCGM 106, 7.
const HOLDS_UP_TO: f64 = 0.05;
const LEAKS_FROM: f64 = 0.95;
/// With the tester's own leak above this share of all that was seen, nothing undecided can be told.
const TESTER_DOMINATES: f64 = 0.5;
/// Points of a chart's lines.
const CHART_POINTS: u32 = 24;

/// Judges a hold.
pub(super) fn judge_hold(
    circuit: &Circuit,
    situation: &Situation,
    earlier: &[Reading],
    reading: &Reading,
    answer: &HoldAnswer,
) -> TestResult {
    let Some((volume, volume_from)) = volume_under_test(circuit, situation, &reading.test, answer) else {
        return TestResult::just(Outcome::Undecided, Message::new("hold-not-in-circuit"));
    };
    let limit = limit_for(situation, volume);
    let tester = match reading.test.kind {
        TestKind::HandPump => None,
        _ => tester_leak(circuit, situation, earlier),
    };
    let taken_off = sum(tester, bleed_leak(circuit, &reading.test));
    let seconds = seconds_of(answer);
    let setup = setup(situation, reading, answer, volume, taken_off, seconds);
    let case = Case {
        circuit,
        situation,
        earlier,
        reading,
        answer,
        setup,
        volume,
        volume_from,
        limit,
        tester,
    };
    match (&answer.course, hold_data(answer)) {
        (HoldCourse::NeverReached { highest }, _) => case.never_reached(*highest),
        (_, None) => case.unusable("hold-no-reading"),
        (_, Some(data)) => match infer_leak(&case.setup, &data) {
            Ok(posterior) => case.judged(&data, &posterior),
            Err(HoldError::NoReading) => case.unusable("hold-no-reading"),
            Err(HoldError::NoVacuum) => case.unusable("hold-no-vacuum"),
            Err(HoldError::AboveAmbient) => case.unusable("hold-above-ambient"),
            Err(HoldError::NotFinite | HoldError::Quantity(_)) => case.unusable("hold-not-usable"),
        },
    }
}

/// Two leaks side by side.
fn sum(a: Option<Measured>, b: Option<Measured>) -> Option<Measured> {
    match (a, b) {
        (Some(a), Some(b)) => Some(Measured {
            value: a.value + b.value,
            u: a.u.hypot(b.u),
        }),
        (one, other) => one.or(other),
    }
}

struct Case<'a> {
    circuit: &'a Circuit,
    situation: &'a Situation,
    earlier: &'a [Reading],
    reading: &'a Reading,
    answer: &'a HoldAnswer,
    setup: HoldSetup,
    volume: Measured,
    volume_from: VolumeFrom,
    limit: LeakRate,
    /// The tester's leak, without what the circuit bleeds.
    tester: Option<Measured>,
}

impl Case<'_> {
    fn test(&self) -> &TestId {
        &self.reading.test
    }

    fn numbers(&self, start_kpa: f64) -> HoldResult {
        HoldResult {
            p_over_limit: 0.5,
            limit_std_cm3_min: self.limit.std_cm3_min(),
            leak: None,
            hole_mm: None,
            volume_cm3: self.volume.value * 1e6,
            volume_u_cm3: self.volume.u * 1e6,
            start_kpa,
            drop_kpa: 0.0,
            seconds: 0.0,
            target_kpa: hold_target(self.situation).vacuum.value / 1000.0,
            more_seconds: None,
            finer_gauge: None,
            form: None,
            flow_in_test: None,
            pa_m3_s: None,
            points: Vec::new(),
            fit: Vec::new(),
            limit_line: Vec::new(),
        }
    }

    /// Readings that say nothing: the test is to be done again.
    fn unusable(&self, why: &'static str) -> TestResult {
        let start = match &self.answer.course {
            HoldCourse::Spots { start, .. } => *start,
            HoldCourse::Trace { readings, .. } => readings.iter().flatten().next().copied().unwrap_or(0.0),
            HoldCourse::NeverReached { highest } => *highest,
        };
        let start = self.answer.unit.to_pressure(start);
        let mut numbers = self.numbers(start.value / 1000.0);
        if why == "hold-no-reading" {
            numbers.more_seconds = Some(self.situation.limit.seconds);
        }
        let most = self.situation.ambient();
        let message = Message::new(why)
            .with("start", Arg::Pressure(start))
            .with("most", Arg::Pressure(most));
        TestResult {
            outcome: Outcome::Undecided,
            hold: Some(numbers),
            says: vec![message],
        }
    }

    fn judged(&self, data: &HoldData, posterior: &LeakPosterior) -> TestResult {
        let numbers = self.measured(data, posterior);
        let outcome = self.outcome(posterior, numbers.p_over_limit);
        let mut numbers = numbers;
        let mut says = vec![self.seen(outcome, &numbers)];
        if outcome == Outcome::Undecided {
            self.what_would_decide(data, posterior, &mut numbers, &mut says);
        } else if self.test().kind == TestKind::HandPump {
            says.push(Message::new(if outcome == Outcome::Leaks {
                "tester-fails"
            } else {
                "tester-proved"
            }));
        } else if outcome != Outcome::Holds {
            says.push(self.place_of_leak());
        }
        self.remarks(posterior, outcome, &numbers, &mut says);
        TestResult {
            outcome,
            hold: Some(numbers),
            says,
        }
    }

    fn measured(&self, data: &HoldData, posterior: &LeakPosterior) -> HoldResult {
        let mut numbers = self.numbers(data.start.value / 1000.0);
        let target = hold_target(self.situation).vacuum;
        numbers.p_over_limit =
            posterior.probability_over_drop(limit_drop(self.situation), self.situation.limit.seconds, target);
        let (low, high) = posterior.interval(0.95);
        let value = if posterior.is_proved() {
            posterior.value()
        } else {
            LeakRate::ZERO
        };
        numbers.leak = Some(LeakRange {
            value: value.std_cm3_min(),
            low: low.std_cm3_min(),
            high: high.std_cm3_min(),
        });
        if posterior.is_proved() {
            numbers.hole_mm = Some(posterior.hole_mm());
            numbers.form = posterior.form();
            numbers.flow_in_test = Some(posterior.flow_in_test().std_cm3_min());
            numbers.pa_m3_s = Some(posterior.pa_m3_s());
        }
        let last = data.points.iter().max_by(|a, b| a.0.value.total_cmp(&b.0.value));
        if let Some((time, vacuum)) = last {
            numbers.seconds = time.value;
            numbers.drop_kpa = (data.start - *vacuum).value / 1000.0;
        }
        numbers.points = std::iter::once((0.0, data.start.value / 1000.0))
            .chain(data.points.iter().map(|(t, p)| (t.value, p.value / 1000.0)))
            .collect();
        let form = if posterior.probability_of_hole() >= 0.5 {
            LeakForm::Hole
        } else {
            LeakForm::Viscous
        };
        let span = numbers.seconds.max(self.situation.limit.seconds);
        for i in 0..=CHART_POINTS {
            let s = span * f64::from(i) / f64::from(CHART_POINTS);
            numbers.fit.push(FitPoint {
                s,
                kpa: posterior.fitted(s).value / 1000.0,
                low_kpa: fall(&self.setup, form, data.start, high, s),
                high_kpa: fall(&self.setup, form, data.start, low, s),
            });
            numbers
                .limit_line
                .push((s, fall(&self.setup, LeakForm::Hole, data.start, self.limit, s)));
        }
        numbers
    }

    fn outcome(&self, posterior: &LeakPosterior, p_over: f64) -> Outcome {
        let tester_fails = self.tester.is_some_and(|t| t.value > self.limit.std_m3_s());
        if p_over >= LEAKS_FROM {
            Outcome::Leaks
        } else if tester_fails {
            Outcome::Undecided
        } else if p_over <= HOLDS_UP_TO {
            if posterior.is_proved() {
                Outcome::SlowLeak
            } else {
                Outcome::Holds
            }
        } else {
            Outcome::Undecided
        }
    }

    /// What was seen, in one sentence.
    fn seen(&self, outcome: Outcome, numbers: &HoldResult) -> Message {
        let id = match outcome {
            Outcome::Holds => "hold-holds",
            Outcome::SlowLeak => "hold-slow-leak",
            Outcome::Leaks => "hold-leaks",
            _ => "hold-undecided",
        };
        Message::new(id)
            .with("drop", Arg::Pressure(kpa(numbers.drop_kpa)))
            .with("seconds", Arg::Seconds(numbers.seconds))
            .with("limit", Arg::Pressure(limit_drop(self.situation)))
            .with("within", Arg::Seconds(self.situation.limit.seconds))
    }

    fn what_would_decide(
        &self,
        data: &HoldData,
        posterior: &LeakPosterior,
        numbers: &mut HoldResult,
        says: &mut Vec<Message>,
    ) {
        let tester_fails = self.tester.is_some_and(|t| t.value > self.limit.std_m3_s());
        if tester_fails || posterior.tester_share() > TESTER_DOMINATES && self.tester.is_some() {
            says.push(Message::new("hold-tester-dominates"));
            return;
        }
        numbers.more_seconds = posterior.seconds_to_decide(&self.setup, data, self.limit);
        numbers.finer_gauge = posterior
            .read_to_that_decides(&self.setup, data, self.limit)
            .map(|step| FinerGauge {
                read_to_kpa: self.setup.gauge.unit.to_pressure(step).value / 1000.0,
            });
        says.push(match (numbers.more_seconds, numbers.finer_gauge) {
            (Some(more), _) => Message::new("hold-go-on").with("seconds", Arg::Seconds(more)),
            (None, Some(gauge)) => {
                Message::new("hold-finer-gauge").with("step", Arg::Pressure(kpa(gauge.read_to_kpa)))
            }
            (None, None) => Message::new("hold-at-the-limit"),
        });
    }

    fn has_bleed(&self) -> bool {
        bleed_leak(self.circuit, self.test()).is_some()
    }

    /// Where the leak can be, from the reach of the test.
    fn place_of_leak(&self) -> Message {
        let parts = self
            .circuit
            .scope(self.test())
            .map(|s| s.parts)
            .unwrap_or_default();
        match parts.as_slice() {
            [one] => Message::new("hold-leak-in-part").with("part", Arg::Part(one.clone())),
            many => Message::new("hold-leak-in-one-of").with("count", Arg::Count(many.len() as i64)),
        }
    }

    fn has(&self, kind: ComponentKind) -> bool {
        self.circuit.scope(self.test()).is_some_and(|s| {
            s.parts
                .iter()
                .any(|id| self.circuit.component(id).is_some_and(|c| c.kind == kind))
        })
    }
}

/// A pressure from kPa.
pub(super) fn kpa(figure: f64) -> holdfast_measure::Pressure {
    holdfast_measure::Pressure::new::<uom::si::pressure::kilopascal>(figure)
}
