//! How long choosing the next test takes, one job after the other on one processor.

use std::time::Instant;

use holdfast_diagnose::{
    Catalogue, Circuit, CircuitChoice, Complaint, Next, Policy, Reading, Situation, finding, judge, next,
    parse_answer,
};
use serde_json::json;

/// Median and slowest of ten, ms, of `finding` and of `next`, along a job whose readings all look sound.
#[derive(Debug, Clone, Copy)]
pub struct Speed {
    pub finding: f64,
    pub next: f64,
    pub slowest_next: f64,
}

/// Times a circuit through its first steps.
pub fn of(template: &str) -> Speed {
    let circuit = Circuit::build(&CircuitChoice::Template(template.into())).expect("a template of the core");
    let situation = Situation {
        complaint: [Complaint::ShakeIdle].into(),
        ..Situation::default()
    };
    let mut readings = Vec::new();
    let (mut findings, mut nexts) = (Vec::new(), Vec::new());
    for (test, answer) in [
        ("look", json!({})),
        ("delivered", json!({"gauge": 8.0, "unit": "inHg"})),
        ("source", json!({"gauge": 18.5, "unit": "inHg"})),
        (
            "hold:branch",
            json!({"start": 20.0, "readings": [[20, 19.0]], "unit": "inHg"}),
        ),
        (
            "supply-volts",
            json!({"pin1": 12.4, "pin2": 0.0, "battery": 12.5}),
        ),
    ] {
        let start = Instant::now();
        std::hint::black_box(finding(&circuit, &situation, &readings));
        findings.push(start.elapsed().as_secs_f64() * 1e3);
        let start = Instant::now();
        let chosen = next(&circuit, &situation, &readings, Policy::Guided);
        nexts.push(start.elapsed().as_secs_f64() * 1e3);
        if matches!(chosen, Next::Stop { .. }) {
            break;
        }
        let test = test.parse().expect("an id of the catalogue");
        if Catalogue::standard().spec(&circuit, &test).is_none() {
            continue;
        }
        let (answer, state) = parse_answer(&circuit, &test, &answer).expect("an answer of the contract");
        let reading = Reading {
            state,
            ..Reading::new(test, answer)
        };
        let result = judge(&circuit, &situation, &[], &reading);
        readings.push((reading, result));
    }
    let median = |of: &mut Vec<f64>| {
        of.sort_by(f64::total_cmp);
        of[of.len() / 2]
    };
    Speed {
        finding: median(&mut findings),
        slowest_next: nexts.iter().copied().fold(0.0, f64::max),
        next: median(&mut nexts),
    }
}
