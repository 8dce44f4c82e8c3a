//! Whole jobs at the level of readings.

use std::collections::BTreeMap;

use crate::{
    Answer, Circuit, CircuitChoice, Complaint, Finding, HoldAnswer, HoldCourse, Next, Outcome, Policy,
    Reading, Situation, TestId, TestResult, Value, finding, next,
};
use holdfast_measure::PressureUnit;

fn circuit() -> Circuit {
    Circuit::build(&CircuitChoice::Template("two-mounts-one-valve".into())).unwrap()
}

fn complaining(complaint: Complaint) -> Situation {
    Situation {
        complaint: [complaint].into(),
        ..Situation::default()
    }
}

fn reading(test: &str, answer: Answer) -> (Reading, TestResult) {
    let reading = Reading::new(test.parse().unwrap(), answer);
    // The finding is drawn from the reading; the result only names it in the explanation.
    (
        reading,
        TestResult {
            outcome: Outcome::Undecided,
            hold: None,
            says: Vec::new(),
        },
    )
}

fn hold(test: &str, start: f64, seconds: f64, end: f64, strokes: Option<f64>) -> (Reading, TestResult) {
    let course = HoldCourse::Spots {
        start,
        readings: vec![(seconds, end)],
    };
    reading(
        test,
        Answer::Hold(HoldAnswer {
            unit: PressureUnit::InHg,
            course,
            strokes,
            hand_timed: false,
        }),
    )
}

fn values(test: &str, values: &[(&str, Value)]) -> (Reading, TestResult) {
    let values: BTreeMap<_, _> = values.iter().map(|(k, v)| ((*k).into(), v.clone())).collect();
    reading(test, Answer::Values(values))
}

fn v(x: f64) -> Value {
    Value::Number(x)
}

fn inhg(x: f64) -> Value {
    Value::Number(x * 3386.389)
}

fn print(finding: &Finding) {
    for cause in finding.causes.iter().take(8) {
        let names: Vec<String> = cause.faults.iter().map(ToString::to_string).collect();
        println!("{:<40} {:.4}", names.join(" + "), cause.p);
    }
    println!(
        "decided {} parts {:?} explains {:?} open {:?}",
        finding.decided, finding.parts, finding.explains_complaint, finding.left_open
    );
}

fn first(finding: &Finding) -> String {
    finding.causes[0]
        .faults
        .iter()
        .map(ToString::to_string)
        .collect::<Vec<_>>()
        .join(" + ")
}

#[test]
fn a_leaking_front_mount_is_found() {
    let readings = [
        hold("hand-pump", 20.0, 20.0, 20.0, Some(3.0)),
        hold("hold:branch", 20.0, 20.0, 13.5, Some(19.0)),
        hold("hold:front_mount", 20.0, 20.0, 8.0, Some(9.0)),
    ];
    let situation = complaining(Complaint::ShakeIdle);
    let finding = finding(&circuit(), &situation, &readings);
    print(&finding);
    assert_eq!(first(&finding), "front_mount/leaks");
    let sum: f64 = finding.causes.iter().map(|c| c.p).sum();
    assert!((sum - 1.0).abs() < 1e-9);
    println!("{:?}", next(&circuit(), &situation, &readings, Policy::Guided));
    println!("{:?}", next(&circuit(), &situation, &[], Policy::Guided));
    println!("{:?}", next(&circuit(), &situation, &[], Policy::Fixed));
}

#[test]
fn timing_smoke() {
    let circuit = circuit();
    let situation = complaining(Complaint::ShakeIdle);
    let readings = [
        hold("hand-pump", 20.0, 20.0, 20.0, Some(3.0)),
        hold("hold:branch", 20.0, 20.0, 13.5, Some(19.0)),
        hold("hold:front_mount", 20.0, 20.0, 20.0, Some(9.0)),
        values("delivered", &[("gauge", inhg(10.0)), ("seconds", v(2.0))]),
        values(
            "supply-volts",
            &[("pin1", v(12.4)), ("pin2", v(0.02)), ("battery", v(12.5))],
        ),
    ];
    for n in [0, 2, 5] {
        let t = std::time::Instant::now();
        for _ in 0..20 {
            std::hint::black_box(crate::finding::Reasoned::new(
                &circuit,
                &situation,
                &readings[..n],
            ));
        }
        let a = t.elapsed() / 20;
        let t = std::time::Instant::now();
        for _ in 0..20 {
            std::hint::black_box(next(&circuit, &situation, &readings[..n], Policy::Guided));
        }
        println!("{n} readings: rank {a:?}, next {:?}", t.elapsed() / 20);
    }
}
