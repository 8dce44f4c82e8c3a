//! A target that was never reached.

use holdfast_measure::{LeakForm, LeakRate};

use super::Case;
use crate::judge::{LeakRange, Outcome, TestResult, hold_target};
use crate::{Arg, Message, TestKind};

/// Strokes a second that a person makes: slow, usual, fast. Source: common practice, no source.
const STROKES_PER_S: (f64, f64, f64) = (0.4, 1.0, 2.5);
/// A stroke draws this share of its rated volume, from a worn pump to a new one. Source: common practice, no source.
const STROKE_EFFECT: (f64, f64, f64) = (0.7, 0.87, 1.0);

impl Case<'_> {
    /// The target was not reached: the pump draws what the leak lets in, which gives a rough figure.
    pub(super) fn never_reached(&self, highest: f64) -> TestResult {
        let highest = self.answer.unit.to_pressure(highest.max(0.0));
        let mut numbers = self.numbers(highest.value / 1000.0);
        let inside = (self.setup.ambient - highest).value.max(0.0);
        // Vacuum in the reference state, where a hole passes as much as it ever does.
        let leak = |(strokes, effect): (f64, f64)| {
            let drawn = strokes * effect * self.situation.pump().stroke.value * inside;
            let seen = drawn / holdfast_measure::STD_PRESSURE;
            let unit =
                holdfast_measure::Element::leak(LeakForm::Hole, LeakRate::from_std_m3_s(seen.max(1e-12)));
            let passes = unit.std_flow(self.setup.ambient.value, inside, self.setup.air.value);
            let other = self.setup.tester.map_or(0.0, |t| t.value);
            let own = seen * seen / passes.max(1e-12) - other;
            LeakRate::from_std_m3_s(own.max(0.0)).std_cm3_min()
        };
        let range = LeakRange {
            low: leak((STROKES_PER_S.0, STROKE_EFFECT.0)),
            value: leak((STROKES_PER_S.1, STROKE_EFFECT.1)),
            high: leak((STROKES_PER_S.2, STROKE_EFFECT.2)),
        };
        numbers.p_over_limit = if range.low > numbers.limit_std_cm3_min {
            1.0
        } else {
            0.99
        };
        numbers.hole_mm = Some(hole_mm(range.value));
        numbers.leak = Some(range);
        let mut says = vec![
            Message::new("hold-will-not-build")
                .with("highest", Arg::Pressure(highest))
                .with("target", Arg::Pressure(hold_target(self.situation).vacuum)),
        ];
        if self.test().kind == TestKind::HandPump {
            says.push(Message::new("tester-fails"));
        } else if self.has_bleed() {
            says.push(Message::new("hold-bleed-normal"));
        } else {
            says.push(self.place_of_leak());
        }
        TestResult {
            outcome: Outcome::WillNotBuild,
            hold: Some(numbers),
            says,
        }
    }
}

fn hole_mm(leak: f64) -> f64 {
    holdfast_measure::ideal_hole(LeakRate::from_std_cm3_min(leak)).get::<uom::si::length::millimeter>()
}
