//! What the customer's page needs, typed and signed on the screens.
#![expect(
    clippy::expect_used,
    reason = "the helpers of tests, too, end them by panicking"
)]

use holdfast_companion::{Action, Body, FieldId, Pick, Picked, Place};
use holdfast_joblog::{CostKind, CostStage, Decision, Payload, Store};
use holdfast_play::{Options, Scenario, Shell, open, play_on};
use holdfast_report::Point;

fn begun(dir: &std::path::Path) -> Shell {
    let text = include_str!("../../scenarios/blown-fuse.json");
    let scenario: Scenario = serde_json::from_str(text).expect("a scenario");
    let mut shell = open(dir).expect("an empty log opens");
    play_on(&mut shell, &scenario, Options::default()).expect("the scenario plays");
    shell
        .press(&Action::Go { to: Place::Report })
        .expect("a way to the report");
    shell
}

/// The job's entries of a kind, from disk.
fn logged<T>(dir: &std::path::Path, of: impl Fn(Payload) -> Option<T>) -> Vec<T> {
    let store = Store::open(dir).expect("the log opens");
    let job = store.list(&holdfast_joblog::Query::default()).expect("a list")[0].job;
    let record = store.fold(job).expect("the job").record;
    record
        .into_iter()
        .filter_map(|line| match line.content {
            holdfast_joblog::Content::Known(payload) => of(payload),
            _ => None,
        })
        .collect()
}

fn fill_costs(shell: &mut Shell) {
    shell.press(&Action::Go { to: Place::Costs }).expect("costs");
    shell.fill(&FieldId::Currency, "kwd").expect("a currency");
    shell.fill(&FieldId::TaxParts, "19").expect("a rate");
    shell.fill(&FieldId::TaxLabour, "7,5").expect("a rate");
    shell
        .type_in(&FieldId::CostWords { line: 0 }, "Fuse 10 A")
        .expect("words");
    shell
        .fill(&FieldId::CostPrice { line: 0 }, "1.234")
        .expect("a price");
    shell
        .type_in(&FieldId::CostWords { line: 1 }, "Tracing the short")
        .expect("words");
    shell
        .fill(&FieldId::CostQuantity { line: 1 }, "0.5")
        .expect("hours");
    shell
        .fill(&FieldId::CostPrice { line: 1 }, "20")
        .expect("a price");
}

#[test]
fn costs_are_logged_in_minor_units_and_come_back_as_typed() {
    let dir = tempfile::tempdir().expect("a folder");
    let mut shell = begun(dir.path());
    fill_costs(&mut shell);
    shell.press(&Action::Confirm).expect("nothing is wrong");
    let costs = logged(dir.path(), |payload| match payload {
        Payload::Costs(costs) => Some(costs),
        _ => None,
    });
    assert_eq!(costs.len(), 1);
    let lines: Vec<_> = costs[0]
        .lines
        .iter()
        .map(|line| (line.kind, line.quantity_milli, line.unit_minor, line.tax_bp))
        .collect();
    assert_eq!(
        lines,
        [
            (CostKind::Part, 1_000, 1_234, 1_900),
            (CostKind::Labour, 500, 20_000, 750)
        ]
    );
    assert_eq!(costs[0].stage, CostStage::Estimate { valid_days: 14 });

    shell.press(&Action::Go { to: Place::Costs }).expect("costs");
    let typed = |id| shell.field(&id).map(|field| field.value);
    assert_eq!(typed(FieldId::CostPrice { line: 0 }).as_deref(), Some("1.234"));
    assert_eq!(typed(FieldId::CostQuantity { line: 1 }).as_deref(), Some("0.5"));
    assert_eq!(typed(FieldId::TaxLabour).as_deref(), Some("7.5"));
    // Nothing was changed: nothing is logged.
    shell.press(&Action::Back).expect("back");
    let again = logged(dir.path(), |payload| {
        matches!(payload, Payload::Costs(_)).then_some(())
    });
    assert_eq!(again.len(), 1);
}

#[test]
fn a_wrong_figure_is_said_and_holds_the_costs_back() {
    let dir = tempfile::tempdir().expect("a folder");
    let mut shell = begun(dir.path());
    fill_costs(&mut shell);
    for (id, text) in [
        (FieldId::CostPrice { line: 0 }, "1.2345"),
        (FieldId::CostPrice { line: 0 }, "a lot"),
        (FieldId::Currency, "XYZ"),
        (FieldId::TaxParts, "101"),
        (FieldId::ValidDays, "0"),
    ] {
        let was = shell.field(&id).expect("the field").value;
        let problem = shell.type_in(&id, text).expect("the field");
        assert!(problem.is_some(), "{id:?} {text}");
        assert!(!shell.offers(&Action::Confirm), "{id:?} {text}");
        shell.fill(&id, &was).expect("as before");
    }
    assert!(shell.offers(&Action::Confirm));
}

#[test]
fn lines_are_added_and_taken_out() {
    let dir = tempfile::tempdir().expect("a folder");
    let mut shell = begun(dir.path());
    fill_costs(&mut shell);
    shell
        .press(&Action::AddCost { kind: "other".into() })
        .expect("a button");
    shell
        .type_in(&FieldId::CostWords { line: 2 }, "Discount")
        .expect("words");
    shell
        .fill(&FieldId::CostPrice { line: 2 }, "-2")
        .expect("less than nothing");
    shell.press(&Action::RemoveCost { line: 0 }).expect("a button");
    shell
        .pick(&Pick::CostStage { id: "charged".into() }, Picked::Yes)
        .expect("an option");
    shell.press(&Action::Confirm).expect("nothing is wrong");
    let costs = logged(dir.path(), |payload| match payload {
        Payload::Costs(costs) => Some(costs),
        _ => None,
    });
    let words: Vec<&str> = costs[0].lines.iter().map(|line| line.words.as_str()).collect();
    assert_eq!(words, ["Tracing the short", "Discount"]);
    assert_eq!(costs[0].stage, CostStage::Charged);
}

#[test]
fn a_signature_is_drawn_taken_back_and_kept_in_the_log() {
    let dir = tempfile::tempdir().expect("a folder");
    let mut shell = begun(dir.path());
    shell.press(&Action::Go { to: Place::Approval }).expect("the pad");
    assert!(!shell.offers(&Action::Confirm), "a name is missing");
    assert!(!shell.offers(&Action::Undo), "nothing is drawn");
    let stroke = |from: f32| Action::Ink {
        stroke: (0..20)
            .map(|i| Point {
                x: from + 4.0 * i as f32,
                y: 60.0 + if i % 2 == 0 { 15.0 } else { -15.0 },
            })
            .collect(),
    };
    shell.send(stroke(40.0)).expect("a stroke");
    shell.send(stroke(150.0)).expect("a stroke");
    shell.press(&Action::Undo).expect("undo");
    shell
        .send(Action::Ink {
            stroke: vec![Point { x: f32::NAN, y: 0.0 }, Point { x: 9_000.0, y: -3.0 }],
        })
        .expect("what no hand draws does no harm");
    shell.fill(&FieldId::Signer, "A. Example").expect("a name");
    let Body::Approval { approval } = &shell.screen().body else {
        panic!("the pad");
    };
    assert!(approval.pad.alt.contains('2'), "{}", approval.pad.alt);
    shell.press(&Action::Confirm).expect("it can be kept");
    let said = logged(dir.path(), |payload| match payload {
        Payload::Approval(approval) => Some(approval),
        _ => None,
    });
    assert_eq!((said.len(), said[0].decision), (1, Decision::Agreed));
    let signature = said[0].signature.as_ref().expect("signed");
    assert_eq!(signature.strokes.len(), 2);
    assert_eq!(signature.strokes[1], [[10_000, 0]]);
    assert_eq!(signature.strokes[0][0], [1_111, 2_083]);
}

#[test]
fn a_refusal_needs_a_name_and_no_signature() {
    let dir = tempfile::tempdir().expect("a folder");
    let mut shell = begun(dir.path());
    shell.press(&Action::Go { to: Place::Approval }).expect("the pad");
    shell
        .pick(&Pick::Decision { id: "refused".into() }, Picked::Yes)
        .expect("an option");
    shell.fill(&FieldId::Signer, "A. Example").expect("a name");
    shell.fill(&FieldId::DecidedWork, "New fuse").expect("the work");
    shell.press(&Action::Confirm).expect("it can be kept");
    let said = logged(dir.path(), |payload| match payload {
        Payload::Approval(approval) => Some(approval),
        _ => None,
    });
    assert_eq!(
        (said[0].decision, said[0].work.as_str()),
        (Decision::Refused, "New fuse")
    );
    assert_eq!(said[0].signature, None);
}
