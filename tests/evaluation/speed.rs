//! Processor time that choosing the next test takes, along a job.
//!
//! It is this thread's own time, so that other work on the machine doesn't count.

use holdfast_diagnose::{
    Catalogue, Circuit, CircuitChoice, Complaint, Next, Policy, Reading, Reasoner, Situation, judge,
    parse_answer,
};
use rustix::time::{ClockId, clock_gettime};
use serde_json::json;

/// Milliseconds along a job whose readings all look sound; each step's is the median of [`RUNS`].
#[derive(Debug, Clone, Copy)]
pub struct Speed {
    pub finding: Steps,
    /// The next test, once there is a finding on the same readings.
    pub next: Steps,
    /// The next test by itself, causes ranked for it.
    pub next_alone: Steps,
}

/// Median and slowest of a job's steps.
#[derive(Debug, Clone, Copy)]
pub struct Steps {
    pub median: f64,
    pub slowest: f64,
}

/// Times that the job is done, so that what else the machine does in a step doesn't count.
const RUNS: usize = 7;

/// This thread's time on a processor so far, ms.
fn processor_ms() -> f64 {
    let time = clock_gettime(ClockId::ThreadCPUTime);
    time.tv_sec as f64 * 1e3 + time.tv_nsec as f64 / 1e6
}

/// Times a circuit through its first steps.
pub fn of(template: &str) -> Speed {
    let runs: Vec<Vec<[f64; 3]>> = (0..RUNS).map(|_| steps(template)).collect();
    let of = |which: usize| {
        let step = |step: usize| median(runs.iter().map(|run| run[step][which]).collect());
        let steps: Vec<f64> = (0..runs[0].len()).map(step).collect();
        Steps {
            slowest: steps.iter().copied().fold(0.0, f64::max),
            median: median(steps),
        }
    };
    Speed {
        finding: of(0),
        next: of(1),
        next_alone: of(2),
    }
}

fn median(mut of: Vec<f64>) -> f64 {
    of.sort_by(f64::total_cmp);
    of[of.len() / 2]
}

/// Milliseconds of the finding, of the next test after it, and of the next test by itself, in each step of a job. What is worked
/// out once for a circuit is not counted.
fn steps(template: &str) -> Vec<[f64; 3]> {
    let circuit = Circuit::build(&CircuitChoice::Template(template.into())).expect("a template of the core");
    let situation = Situation {
        complaint: [Complaint::ShakeIdle].into(),
        ..Situation::default()
    };
    let reasoner = || {
        let mut reasoner = Reasoner::new(circuit.clone(), situation.clone());
        reasoner.outline(&[]);
        reasoner
    };
    let (mut reasoner, mut alone) = (reasoner(), reasoner());
    let mut readings = Vec::new();
    let mut times = Vec::new();
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
        let start = processor_ms();
        std::hint::black_box(reasoner.finding(&readings));
        let finding = processor_ms() - start;
        let start = processor_ms();
        let chosen = reasoner.next(&readings, Policy::Guided);
        let next = processor_ms() - start;
        let start = processor_ms();
        std::hint::black_box(alone.next(&readings, Policy::Guided));
        times.push([finding, next, processor_ms() - start]);
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
    times
}
