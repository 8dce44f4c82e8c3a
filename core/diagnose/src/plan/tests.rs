use super::order::{PlanData, data};
use crate::finding::tests::jobs;
use crate::{
    Answer, Catalogue, Circuit, CircuitChoice, Next, Policy, Reading, Situation, TestResult, judge, next,
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
    for policy in [Policy::Guided, Policy::Fixed] {
        let mut readings = Vec::new();
        while let Next::Test { id, minutes, .. } = next(&circuit, &situation, &readings, policy) {
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

#[test]
fn guided_takes_fewer_minutes_than_the_textbook() {
    let (mut guided, mut fixed) = (0.0, 0.0);
    for job in jobs() {
        let (_, finding, minutes) = job.play(Policy::Guided);
        if finding.decided {
            guided += minutes;
            fixed += job.play(Policy::Fixed).2;
        }
    }
    println!("decided jobs: guided {guided} min, textbook {fixed} min");
    assert!(guided < 0.75 * fixed, "{guided} min against {fixed} min");
}

#[test]
fn both_conclusions_in_one_go_are_the_same() {
    for job in jobs().into_iter().take(4) {
        let (readings, ..) = job.play(Policy::Fixed);
        let part = &readings[..readings.len() / 2];
        let (found, then) = crate::conclude(&job.circuit, &job.situation, part, Policy::Guided);
        assert_eq!(found, crate::finding(&job.circuit, &job.situation, part));
        assert_eq!(then, next(&job.circuit, &job.situation, part, Policy::Guided));
    }
}
