use holdfast_measure::{PressureUnit, Time};
use proptest::prelude::*;
use uom::si::time::second;

use super::hold::{circuit, fine, judged, spots};
use crate::judge::*;
use crate::{HoldAnswer, HoldCourse, TestId};

fn trace(leak: f64) -> Reading {
    let circuit = circuit();
    let test: TestId = "hold:branch".parse().unwrap();
    let plain = HoldAnswer {
        unit: PressureUnit::KPa,
        course: HoldCourse::Spots {
            start: 67.7,
            readings: vec![],
        },
        strokes: None,
        hand_timed: false,
    };
    let situation = fine();
    let (volume, _) =
        crate::judge::hold_setup::volume_under_test(&circuit, &situation, &test, &plain).unwrap();
    let empty = Reading::new(test.clone(), Answer::Hold(plain.clone()));
    let setup = crate::judge::hold_setup::setup(&situation, &empty, &plain, volume, None, 20.0);
    let start = PressureUnit::KPa.to_pressure(67.7);
    let vacuum = |s: f64| {
        crate::judge::hold_setup::fall(
            &setup,
            holdfast_measure::LeakForm::Hole,
            start,
            holdfast_measure::LeakRate::from_std_cm3_min(leak),
            Time::new::<second>(s).value,
        )
    };
    let readings = (0..=200)
        .map(|i| (i % 7 != 3).then(|| vacuum(f64::from(i) / 10.0)))
        .collect();
    let course = HoldCourse::Trace { hz: 10.0, readings };
    Reading::new(test, Answer::Hold(HoldAnswer { course, ..plain }))
}

#[test]
fn a_trace_with_lost_frames_is_read() {
    let result = judged(&fine(), &[], &trace(60.0));
    assert_eq!(result.outcome, Outcome::Leaks);
    let leak = result.hold.unwrap().leak.unwrap();
    assert!(leak.low < 60.0 && 60.0 < leak.high, "{leak:?}");
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 48, ..ProptestConfig::default() })]

    /// A bigger fall never looks better.
    #[test]
    fn more_fall_is_never_more_likely_within_the_limit(seconds in 10.0..120.0f64, drop in 0.0..8.0f64, more in 0.1..4.0f64) {
        let p = |drop: f64| {
            judged(&fine(), &[], &spots("hold:branch", 20.0, &[(seconds, 20.0 - drop)])).hold.unwrap().p_over_limit
        };
        prop_assert!(p(drop + more) >= p(drop) - 0.01);
    }

    /// Whatever is entered, the result keeps its promises.
    #[test]
    fn a_hold_keeps_its_promises(
        start in -5.0..40.0f64,
        figures in proptest::collection::vec((0.0..400.0f64, -5.0..40.0f64), 0..6),
        strokes in proptest::option::of(0.0..300.0f64),
    ) {
        let course = HoldCourse::Spots { start, readings: figures };
        let answer = HoldAnswer { unit: PressureUnit::InHg, course, strokes, hand_timed: true };
        let reading = Reading::new("hold:branch".parse().unwrap(), Answer::Hold(answer));
        let result = judged(&Situation::default(), &[], &reading);
        let hold = result.hold.unwrap();
        prop_assert!((0.0..=1.0).contains(&hold.p_over_limit));
        prop_assert!(hold.volume_cm3 > 0.0 && hold.limit_std_cm3_min > 0.0);
        match result.outcome {
            Outcome::Holds | Outcome::SlowLeak => prop_assert!(hold.p_over_limit <= 0.05),
            Outcome::Leaks => prop_assert!(hold.p_over_limit >= 0.95),
            Outcome::Undecided => prop_assert!(hold.leak.is_none() || (0.05..0.95).contains(&hold.p_over_limit)),
            other => prop_assert!(false, "{other:?}"),
        }
        if let Some(leak) = hold.leak {
            prop_assert!(leak.low <= leak.value && leak.value <= leak.high);
        }
        if hold.more_seconds.is_some() {
            prop_assert_eq!(result.outcome, Outcome::Undecided);
        }
    }
}
