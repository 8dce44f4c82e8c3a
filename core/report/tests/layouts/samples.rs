//! Invented jobs for pictures and snapshots. No real vehicle, person or business.

use holdfast_report::{
    Band, CircuitMap, ConnectorFace, Dial, FitPoint, GroundPlace, HoldChart, HoldSeries, Lead, LimitLine,
    Pin, Point, State, Suspicion, TestPoint,
};

use super::{LAYOUTS, map};

/// A map half way through a job: states, suspicion, one hold test under way.
pub fn map_in_a_job() -> CircuitMap {
    let mut map = map(LAYOUTS[1].1);
    for part in &mut map.parts {
        let (state, share) = match part.id.as_str() {
            "source" | "valve" | "front_mount" => (State::Holds, 0.004),
            "inlet_hose" => (State::SlowLeak, 0.02),
            "front_hose" => (State::Leaks, 0.62),
            "rear_hose" => (State::Undecided, 0.21),
            "rear_mount" => (State::CantDo, 0.09),
            "outlet_hose" | "tee" => (State::NotDone, 0.03),
            _ => (State::NotDone, 0.0),
        };
        part.state = Some(state);
        part.suspicion = Some(Suspicion {
            share,
            text: format!("{:.0}\u{a0}%", share * 100.0),
        });
    }
    map
}

/// The map while the branch is under test.
pub fn map_under_test() -> CircuitMap {
    let mut map = map(LAYOUTS[1].1);
    for part in &mut map.parts {
        part.in_test = [
            "outlet_hose",
            "tee",
            "front_hose",
            "rear_hose",
            "front_mount",
            "rear_mount",
        ]
        .contains(&part.id.as_str());
        if part.id == "outlet_hose" {
            part.test_point = Some(TestPoint {
                mark: "1".into(),
                lead: None,
            });
        }
    }
    map
}

/// Two pins, red lead on the first, black lead on chassis ground.
pub fn connector() -> ConnectorFace {
    ConnectorFace {
        language: "en".into(),
        alt: "Connector with two pins seen from the mating side. Red lead on pin 1, black lead on chassis ground.".into(),
        seen_from: "Seen from the mating side, lock on top".into(),
        pins: vec![
            Pin {
                id: "pin1".into(),
                number: "1".into(),
                label: "power wire".into(),
                lead: Some(Lead::Red),
                lead_words: "red lead".into(),
                reading: "12.4\u{a0}V".into(),
                state: Some(State::Holds),
            },
            Pin {
                id: "pin2".into(),
                number: "2".into(),
                label: "control wire".into(),
                reading: "0.02\u{a0}V".into(),
                ..Pin::default()
            },
        ],
        ground: Some(GroundPlace {
            label: "chassis ground".into(),
            lead: Some(Lead::Black),
            lead_words: "black lead".into(),
        }),
    }
}

/// Pumping up to 20 inHg.
pub fn dial() -> Dial {
    Dial {
        alt: "Gauge at 18.5 inHg, target 19 to 21 inHg".into(),
        reading: 18.5,
        doubt: 0.5,
        target: Some((19.0, 21.0)),
        target_label: "pump to 20".into(),
        reading_text: "18.5".into(),
        ..Dial::default()
    }
}

/// The same on a gauge in bar.
pub fn dial_in_bar() -> Dial {
    Dial {
        unit: "bar".into(),
        span: 1.0,
        division: 0.02,
        reading: 0.64,
        doubt: 0.015,
        target: Some((0.645, 0.71)),
        target_label: "auf 0,68 pumpen".into(),
        reading_text: "0,64".into(),
        decimal: ',',
        ..dial()
    }
}

fn fit(seconds: f64, rate: f64, widen: f64) -> Vec<FitPoint> {
    (0_u8..=20)
        .map(|i| {
            let t = seconds * f64::from(i) / 20.0;
            let value = 20.0 - rate * t;
            FitPoint {
                seconds: t,
                value,
                low: value - 0.15 - widen * t,
                high: value + 0.15 + widen * t,
            }
        })
        .collect()
}

/// One test that leaks.
pub fn chart() -> HoldChart {
    HoldChart {
        alt: "Vacuum fell from 20 to 13.5 inHg in 20 seconds, limit 0.5 inHg".into(),
        time_label: "seconds".into(),
        series: vec![HoldSeries {
            label: "13.5".into(),
            state: Some(State::Leaks),
            points: vec![(0.0, 20.0), (5.0, 18.4), (10.0, 16.7), (20.0, 13.5)],
            fit: fit(20.0, 0.325, 0.012),
        }],
        limit: Some(LimitLine {
            label: "limit".into(),
            points: vec![(0.0, 20.0), (20.0, 19.5)],
        }),
        ..HoldChart::default()
    }
}

/// Before and after a repair.
pub fn before_after() -> HoldChart {
    let mut chart = chart();
    chart.alt = "Before the repair vacuum fell 6.5 inHg in 20 seconds, after it nothing".into();
    chart.series[0].label = "before".into();
    chart.series.push(HoldSeries {
        label: "after".into(),
        state: Some(State::Holds),
        points: vec![(0.0, 20.0), (20.0, 20.0), (60.0, 19.9)],
        fit: fit(60.0, 0.0012, 0.002),
    });
    chart.limit = Some(LimitLine {
        label: "limit".into(),
        points: vec![(0.0, 20.0), (20.0, 19.5), (60.0, 18.5)],
    });
    chart
}

/// A slow leak on a 10 Hz trace.
pub fn trace() -> HoldChart {
    let points = (0_u16..300)
        .filter(|i| i % 17 != 3)
        .map(|i| {
            let t = f64::from(i) / 10.0;
            (
                t,
                ((20.0 - 0.012 * t + 0.02 * (f64::from(i) * 1.7).sin()) * 20.0).round() / 20.0,
            )
        })
        .collect();
    HoldChart {
        alt: "Vacuum fell 0.4 inHg in 30 seconds, inside the limit".into(),
        time_label: "seconds".into(),
        series: vec![HoldSeries {
            label: "slow leak".into(),
            state: Some(State::SlowLeak),
            points,
            fit: fit(30.0, 0.012, 0.001),
        }],
        limit: Some(LimitLine {
            label: "limit".into(),
            points: vec![(0.0, 20.0), (30.0, 19.25)],
        }),
        ..HoldChart::default()
    }
}

/// A supply reading that is as expected.
pub fn volts() -> Band {
    Band {
        alt: "12.4 V, expected 12.3 to 12.6 V".into(),
        title: "Pin 1 to chassis ground".into(),
        low: 12.3,
        high: 12.6,
        low_text: "12.3\u{a0}V".into(),
        high_text: "12.6\u{a0}V".into(),
        band_label: "expected".into(),
        reading: Some(12.4),
        doubt: 0.08,
        reading_text: "12.4\u{a0}V".into(),
        state: Some(State::Holds),
    }
}

/// A loaded reading far below.
pub fn volts_loaded() -> Band {
    Band {
        reading: Some(2.9),
        reading_text: "2.9\u{a0}V".into(),
        state: Some(State::Leaks),
        ..volts()
    }
}

/// A coil that is open.
pub fn coil_open() -> Band {
    Band {
        title: "Across the coil".into(),
        low: 25.0,
        high: 31.0,
        low_text: "25\u{a0}Ω".into(),
        high_text: "31\u{a0}Ω".into(),
        reading: None,
        reading_text: "over range".into(),
        state: Some(State::Leaks),
        ..volts()
    }
}

/// A scrawl that is nobody's.
pub fn strokes() -> Vec<Vec<Point>> {
    let wave = |from: f32, count: u16, height: f32| {
        (0..count)
            .map(|i| {
                let t = f32::from(i) / 6.0;
                Point {
                    x: from + t * 9.0 + (t * 2.3).sin() * 6.0,
                    y: 80.0 - (t * 3.1).sin() * height * (-t / 9.0).exp(),
                }
            })
            .collect()
    };
    vec![wave(60.0, 60, 34.0), wave(170.0, 90, 22.0), wave(120.0, 12, 4.0)]
}
