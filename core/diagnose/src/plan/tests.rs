use super::order::{PlanData, data};
use crate::finding::tests::jobs;
use crate::{
    Answer, Branch, Catalogue, Circuit, CircuitChoice, Engine, Next, Policy, Reading, Reasoner, Situation,
    TestResult, Trial, discretised, judge, listed_messages,
};

#[test]
fn the_data_file_reads() {
    serde_json::from_str::<PlanData>(include_str!("../../data/plan.json")).unwrap();
}

/// Source: the design, section 5, last paragraph.
#[test]
fn the_textbooks_order_is_the_designs() {
    let circuit = Circuit::build(&CircuitChoice::Template("two-mounts-one-valve".into())).unwrap();
    let specs = Catalogue::standard().all_for(&circuit);
    let order: Vec<String> = data()
        .textbook(&circuit, &specs)
        .iter()
        .map(ToString::to_string)
        .collect();
    let design = "look, hand-pump, hold:branch, hold:front_mount, hold:rear_mount, hold:front_hose, hold:rear_hose, \
                  hold:outlet_hose, hold:tee, hold:inlet, hold:valve, supply-volts, fuse, power-wire, valve-volts, \
                  control-wire, coil, source";
    assert_eq!(order.join(", "), design);
}

fn not_available(circuit: &Circuit, situation: &Situation, id: &crate::TestId) -> (Reading, TestResult) {
    let reading = Reading::new(id.clone(), Answer::NotAvailable);
    let result = judge(circuit, situation, &[], &reading);
    (reading, result)
}

#[test]
fn what_cannot_be_answered_is_asked_once_and_then_it_ends() {
    let circuit = Circuit::build(&CircuitChoice::Template("two-mounts-one-valve".into())).unwrap();
    let situation = Situation::default();
    for policy in [Policy::Guided, Policy::Fixed, Policy::FixedSkipping] {
        let mut readings = Vec::new();
        let mut reasoner = Reasoner::new(circuit.clone(), situation.clone());
        while let Next::Test { id, minutes, .. } = reasoner.next(&readings, policy) {
            assert!(minutes > 0.0);
            assert!(
                readings.iter().all(|(r, _): &(Reading, TestResult)| r.test != id),
                "{id} is asked for again"
            );
            readings.push(not_available(&circuit, &situation, &id));
        }
        assert!(readings.len() > 5, "{policy:?}");
    }
}

/// Worked out by hand from `plan.json`: half a minute for gloves, once, and none any more after twenty minutes.
#[test]
fn parts_that_are_still_hot_take_longer_until_they_have_cooled() {
    let trial = |minutes, running, at_hot_parts| Trial {
        minutes,
        running,
        connected: None,
        at_hot_parts,
        chances: Vec::new(),
    };
    let (idle, hold) = (trial(4.0, Some(true), false), trial(4.0, Some(false), true));
    let electric = trial(6.0, Some(false), false);
    let circuit = Circuit::build(&CircuitChoice::Template("two-mounts-one-valve".into())).unwrap();
    let mut reasoner = Reasoner::new(circuit, Situation::default());
    let reasoned = reasoner.reasoned(&[]);
    let problem = reasoned.outlook().problem();
    let cold = problem.ready;
    let minutes = |tests: &[&Trial]| {
        let then = tests.iter().fold((cold, 0.0), |(ready, _), t| {
            (problem.after(ready, t), problem.minutes(ready, t))
        });
        then.1
    };
    assert!((minutes(&[&hold]) - 4.0).abs() < 1e-12, "nothing has run yet");
    assert!(
        (minutes(&[&idle, &hold]) - 5.0).abs() < 1e-12,
        "stopped, and gloves on"
    );
    assert!(
        (minutes(&[&idle, &hold, &hold]) - 4.0).abs() < 1e-12,
        "they are on"
    );
    assert!((minutes(&[&idle, &electric, &electric, &electric, &hold]) - 4.5).abs() < 1e-12);
    assert!((minutes(&[&idle, &electric, &electric, &electric, &electric, &hold]) - 4.0).abs() < 1e-12);

    let situation = Situation {
        engine: Engine {
            stopped_min: Some(5.0),
            ..Engine::default()
        },
        ..Situation::default()
    };
    let mut reasoner = Reasoner::new(reasoner.about().0.clone(), situation);
    let ready = reasoner.reasoned(&[]).outlook().problem().ready;
    assert!(
        (ready.hot_minutes - 15.0).abs() < 1e-12,
        "it was said when it was stopped"
    );
}

#[test]
fn guided_takes_fewer_minutes_than_the_textbook() {
    let (mut guided, mut fixed, mut skipping) = (0.0, 0.0, 0.0);
    let mut decided = [0; 3];
    for job in jobs() {
        let plays = [Policy::Guided, Policy::Fixed, Policy::FixedSkipping].map(|policy| job.play(policy));
        for (decided, (_, finding, _)) in decided.iter_mut().zip(&plays) {
            *decided += usize::from(finding.decided);
        }
        if plays[0].1.decided {
            guided += plays[0].2;
            fixed += plays[1].2;
            skipping += plays[2].2;
        }
    }
    println!(
        "jobs decided when guided: {guided} min, textbook {fixed} min, with skipping {skipping} min; decided: {decided:?}"
    );
    assert!(guided < 0.75 * fixed, "{guided} min against {fixed} min");
    assert!(
        decided[0] >= decided[1] && decided[1] >= decided[2],
        "{decided:?}"
    );
}

#[test]
fn both_conclusions_in_one_go_are_the_same() {
    for job in jobs().into_iter().take(4) {
        let (readings, ..) = job.play(Policy::Fixed);
        let part = &readings[..readings.len() / 2];
        let (found, then) = job.reasoner().conclude(part, Policy::Guided);
        assert_eq!(found, crate::finding(&job.circuit, &job.situation, part));
        assert_eq!(then, job.reasoner().next(part, Policy::Guided));
    }
}

#[test]
fn what_if_says_where_each_outcome_would_lead() {
    let job = jobs()
        .into_iter()
        .find(|j| j.name == "leaking front mount")
        .unwrap();
    let readings = ["hand-pump", "hold:branch"].map(|test| job.reading(&test.parse().unwrap(), &[]));
    let test = "hold:front_mount".parse().unwrap();
    let branches = job.reasoner().what_if(&readings, &test);
    let chances: f64 = branches.iter().map(|b| b.chance).sum();
    assert!(
        branches.len() > 1 && chances > 0.95 && chances < 1.0 + 1e-9,
        "{branches:#?}"
    );
    assert!(branches.windows(2).all(|b| b[0].chance >= b[1].chance));
    let first = |b: &Branch| b.causes[0].faults.first().map(ToString::to_string);
    let leaks = branches
        .iter()
        .find(|b| b.outcome.id.as_str() == "hold-leaks")
        .unwrap();
    assert_eq!(first(leaks).as_deref(), Some("front_mount/leaks"));
    let holds = branches
        .iter()
        .find(|b| b.outcome.id.as_str() == "hold-holds")
        .unwrap();
    assert_ne!(first(holds).as_deref(), Some("front_mount/leaks"));
    for branch in &branches {
        assert!(
            listed_messages().iter().any(|m| m.fits(&branch.outcome)),
            "{:?}",
            branch.outcome
        );
    }
    let done = job.reasoner().what_if(&readings, &readings[0].0.test);
    assert!(done.is_empty());
}

#[test]
fn every_outcome_of_every_test_can_be_shown() {
    let circuit = Circuit::build(&CircuitChoice::Template("two-mounts-one-valve".into())).unwrap();
    let situation = Situation::default();
    let mut reasoner = Reasoner::new(circuit.clone(), situation.clone());
    for spec in Catalogue::standard().tests_for(&circuit, &situation) {
        for branch in reasoner.what_if(&[], &spec.id) {
            let listed = listed_messages().iter().any(|m| m.fits(&branch.outcome));
            assert!(listed, "{}: {:?}", spec.id, branch.outcome);
        }
    }
}

#[test]
fn a_network_is_made_of_probabilities() {
    let circuit = Circuit::build(&CircuitChoice::Template("two-mounts-one-valve".into())).unwrap();
    let network = discretised(&circuit, &Situation::default());
    let sums_to_one = |p: &mut dyn Iterator<Item = f64>| (p.sum::<f64>() - 1.0).abs() < 1e-9;
    assert!(sums_to_one(&mut network.causes.iter().map(|c| c.1)));
    assert!(network.causes.len() > 30 && network.tests.len() > 20);
    for test in &network.tests {
        for cause in 0..network.causes.len() {
            assert!(
                sums_to_one(&mut test.chances.iter().map(|row| row[cause])),
                "{}",
                test.test
            );
        }
    }
    // Bayes' theorem, written out.
    let (a, b) = ((0, 0), (3, 1));
    let joint = |(n, (_, p)): (usize, &(String, f64))| {
        p * network.tests[0].chances[0][n] * network.tests[3].chances[1][n]
    };
    let joint: Vec<f64> = network.causes.iter().enumerate().map(joint).collect();
    let total: f64 = joint.iter().sum();
    for (p, joint) in network.posterior(&[a, b]).iter().zip(&joint) {
        assert!((p - joint / total).abs() < 1e-12);
    }
}
