//! Laws of the ranking.

use proptest::prelude::*;
use serde_json::json;

use crate::finding::tests::{Job, jobs, sound_answers};
use crate::{Finding, Policy, Reading, TestResult, finding};

fn job(name: &str) -> Job {
    jobs().into_iter().find(|j| j.name == name).unwrap()
}

fn p(finding: &Finding, fault: &str) -> f64 {
    finding
        .causes
        .iter()
        .filter(|c| c.faults.iter().any(|f| f.to_string() == fault))
        .map(|c| c.p)
        .sum()
}

fn given(job: &Job, answers: &[(&str, serde_json::Value)]) -> Finding {
    let mut job = Job {
        answers: job.answers.clone(),
        ..jobs().remove(0)
    };
    job.situation.complaint = [crate::Complaint::ShakeIdle].into();
    let mut readings: Vec<(Reading, TestResult)> = Vec::new();
    for (test, answer) in answers {
        job.answers.insert((*test).to_owned(), answer.clone());
        let reading = job.reading(&test.parse().unwrap(), &readings);
        readings.push(reading);
    }
    finding(&job.circuit, &job.situation, &readings)
}

fn hold(end: f64) -> serde_json::Value {
    json!({"start": 20, "readings": [[20, end]], "unit": "inHg"})
}

#[test]
fn probabilities_sum_to_one_in_every_job() {
    for job in jobs() {
        let (_, finding, _) = job.play(Policy::Fixed);
        let sum: f64 = finding.causes.iter().map(|c| c.p).sum();
        assert!((sum - 1.0).abs() < 1e-9, "{}: {sum}", job.name);
        assert!(
            finding.causes.windows(2).all(|pair| pair[0].p >= pair[1].p),
            "{}",
            job.name
        );
        assert!(finding.causes.iter().all(|c| c.p.is_finite()), "{}", job.name);
    }
}

#[test]
fn a_hold_that_holds_speaks_against_a_leak_there() {
    let base = job("leaking front mount");
    let branch = ("hold:branch", hold(13.5));
    let before = given(&base, std::slice::from_ref(&branch));
    let after = given(&base, &[branch.clone(), ("hold:front_mount", hold(20.0))]);
    let more = given(
        &base,
        &[
            branch,
            ("hold:front_mount", hold(20.0)),
            ("hold:front_hose", hold(20.0)),
        ],
    );
    assert!(p(&after, "front_mount/leaks") < 0.1 * p(&before, "front_mount/leaks"));
    assert!(p(&more, "front_hose/leaks") < p(&after, "front_hose/leaks"));
    assert!(p(&more, "rear_mount/leaks") > p(&before, "rear_mount/leaks"));
}

#[test]
fn a_contradiction_lowers_the_certainty_and_does_not_break_it() {
    let base = job("leaking front mount");
    let plain = given(
        &base,
        &[("hold:branch", hold(13.5)), ("hold:front_mount", hold(9.0))],
    );
    let against = given(
        &base,
        &[("hold:branch", hold(20.0)), ("hold:front_mount", hold(9.0))],
    );
    let holds = given(&base, &[("hold:branch", hold(20.0))]);
    let [sure, less, cleared] = [&plain, &against, &holds].map(|f| p(f, "front_mount/leaks"));
    assert!(less < sure && !against.decided, "{less} against {sure}");
    assert!(
        less > 3.0 * cleared,
        "the mount is suspected more than without its own test: {less} against {cleared}"
    );
}

#[test]
fn a_leaking_tester_leaves_the_car_alone() {
    let leaking = given(
        &job("leaking front mount"),
        &[
            ("hand-pump", hold(15.0)),
            ("hold:branch", hold(19.0)),
            ("hold:front_mount", hold(18.3)),
        ],
    );
    assert!(p(&leaking, "hand_pump/leaks") > 0.95);
    assert!(!leaking.decided && leaking.parts.is_empty());
}

#[test]
fn readings_after_a_repair_do_not_count() {
    let job = job("leaking front mount");
    let (mut readings, before, _) = job.play(Policy::Guided);
    let mut retest = job.reading(&"hold:front_mount".parse().unwrap(), &readings);
    retest.0.after_repair = true;
    readings.push(retest);
    assert_eq!(
        finding(&job.circuit, &job.situation, &readings).causes,
        before.causes
    );
}

#[test]
fn the_fuse_alone_is_not_the_finding_while_its_cause_is_untested() {
    let blown = given(
        &job("blown fuse, chafed power wire"),
        &[
            ("supply-volts", json!({"pin1": 0.0, "pin2": 0.0, "battery": 12.5})),
            ("fuse", json!({"in_v": 12.4, "out_v": 0.0})),
        ],
    );
    assert!(!blown.decided, "{:?}", blown.causes.first());
}

#[test]
fn every_template_can_be_reasoned_about() {
    for template in crate::templates() {
        let circuit = crate::Circuit::build(&crate::CircuitChoice::Template(template.id.into())).unwrap();
        let situation = crate::Situation {
            complaint: [crate::Complaint::ShakeIdle].into(),
            ..Default::default()
        };
        let finding = finding(&circuit, &situation, &[]);
        let sum: f64 = finding.causes.iter().map(|c| c.p).sum();
        assert!((sum - 1.0).abs() < 1e-9, "{}", template.id);
        assert!(!finding.decided, "{}", template.id);
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn the_order_of_readings_does_not_matter(seed in any::<u64>(), end in 0.0..20.0f64) {
        let base = job("leaking front mount");
        let sound = sound_answers();
        let mut answers: Vec<(&str, serde_json::Value)> = vec![
            ("hold:branch", hold(end)), ("hold:front_mount", hold(20.0)), ("source", sound["source"].clone()),
            ("supply-volts", sound["supply-volts"].clone()), ("delivered", sound["delivered"].clone()), ("look", json!({})),
        ];
        let one = given(&base, &answers);
        let mut state = seed;
        for i in (1..answers.len()).rev() {
            state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
            answers.swap(i, (state >> 33) as usize % (i + 1));
        }
        let other = given(&base, &answers);
        for cause in &one.causes {
            let same = other.causes.iter().find(|c| c.faults == cause.faults).unwrap();
            prop_assert!((cause.p - same.p).abs() < 1e-9);
        }
    }
}
