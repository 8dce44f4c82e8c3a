//! What nobody may stumble over who reads one page: a page that contradicts itself, names a part that is none of the car, or
//! shows what is well beside what is broken.

use holdfast_diagnose::{Arg, Cause, FaultId, Finding, Message, Next};
use holdfast_joblog::{Correction, Payload};
use holdfast_report::Report;
use serde_json::json;

use super::example::{Example, front_hose_found, leaking_front_hose};
use super::log::log_rows;
use super::reading::reading_words;
use super::tests::{made, report_text, texts};
use crate::text::Texts;

/// A finding of these faults in these parts, spoken for by these tests.
fn found(faults: &[(&str, &str)], parts: &[&str], tests: &[&str]) -> (Finding, Next) {
    let fault = |(part, mode): &(&str, &str)| FaultId::new(*part, *mode);
    let faults: Vec<FaultId> = faults.iter().map(fault).collect();
    let speaks = |test: &&str| {
        Message::new("evidence-for")
            .with("test", Arg::Test(test.parse().unwrap()))
            .with("outcome", Arg::Text("outcome-leaks".into()))
            .with("times", Arg::Times(12.0))
    };
    let finding = Finding {
        causes: vec![
            Cause { faults, p: 0.9 },
            Cause {
                faults: vec![FaultId::other()],
                p: 0.1,
            },
        ],
        decided: true,
        parts: parts.iter().map(|part| (*part).into()).collect(),
        explains_complaint: Some(true),
        speaks_for: tests.iter().map(speaks).collect(),
        ..Finding::default()
    };
    let why = Message::new("stop-found");
    (finding, Next::Stop { why })
}

fn captions(report: &Report) -> Vec<String> {
    let asides = report.aside.iter();
    asides.map(|figure| spaced(&figure.caption)).collect()
}

/// All that a report says, spaces that do not break as others.
fn said(report: &Report) -> String {
    spaced(&report_text(report))
}

fn spaced(text: &str) -> String {
    text.replace('\u{a0}', " ")
}

fn blown_fuse() -> Example {
    Example::begun()
        .read("coil", json!({"ohms": 29.0}))
        .read("control-pin", json!({"off_v": 0.0, "on_v": 0.0}))
        .read("fuse", json!({"in_v": 12.4, "out_v": 0.0}))
}

#[test]
fn a_figure_within_its_band_is_as_expected_whatever_its_test_came_to() {
    let found = found(&[("fuse", "blown")], &["fuse"], &["coil", "fuse"]);
    let text = said(&made(&texts(), &blown_fuse().viewed_with(found)));
    for said in [
        "Control pin: off 0.00 V – not as expected",
        "Control pin: on 0.00 V – this figure as expected",
        "Fuse: before it 12.4 V – this figure as expected",
        "Fuse: behind it 0.00 V – not as expected",
    ] {
        assert!(text.contains(said), "{said}\n{text}");
    }
}

#[test]
fn beside_a_fault_stands_a_figure_on_which_something_is_wrong() {
    let texts = texts();
    let fault = [("fuse", "blown")];
    let report = made(
        &texts,
        &blown_fuse().viewed_with(found(&fault, &["fuse"], &["coil", "fuse"])),
    );
    assert_eq!(
        captions(&report)[1..],
        ["Fuse: behind it 0.00 V – not as expected"]
    );
    let good_only = found(&fault, &["fuse"], &["coil"]);
    let report = made(&texts, &blown_fuse().viewed_with(good_only));
    assert_eq!(captions(&report).len(), 1, "the circuit alone");
}

#[test]
fn a_tester_in_doubt_is_shown_by_its_own_test() {
    let example = Example::begun()
        .read(
            "hand-pump",
            json!({"start": 20, "readings": [[20, 15.5]], "unit": "inHg"}),
        )
        .read(
            "mount-look:front_mount",
            json!({"torn": false, "wet": false, "sag_mm": 0}),
        );
    let (finding, next) = found(&[("hand_pump", "leaks")], &[], &["mount-look:front_mount"]);
    let finding = Finding {
        decided: false,
        in_tester: true,
        ..finding
    };
    let report = made(&texts(), &example.viewed_with((finding, next)));
    let text = said(&report);
    assert!(
        text.contains("## How it is known\nHand pump alone: lost 4.5 inHg in 20 s."),
        "{text}"
    );
    assert_eq!(
        captions(&report)[1..],
        ["Hand pump alone: lost 4.5 inHg in 20 s – leaks"]
    );
}

#[test]
fn what_does_not_explain_the_complaint_is_not_called_its_cause() {
    let texts = texts();
    let example = || {
        Example::begun().read(
            "hold:front_mount",
            json!({"start": 20, "readings": [[20, 14.5]], "unit": "inHg"}),
        )
    };
    let leaks = || {
        let (mut finding, next) = found(
            &[("front_mount", "leaks")],
            &["front_mount"],
            &["hold:front_mount"],
        );
        // Likely enough by another fault of the same part that not the fault is sure, only the part.
        finding.causes[1].faults = vec![FaultId::new("front_mount", "torn")];
        (finding, next)
    };
    let says = |(finding, next)| {
        made(&texts, &example().viewed_with((finding, next)))
            .finding
            .sentence
    };
    assert!(says(leaks()).starts_with("The cause is the front mount."));
    let (finding, next) = leaks();
    let aside = Finding {
        explains_complaint: Some(false),
        ..finding
    };
    let sentence = says((aside, next));
    assert!(!sentence.contains("The cause is"), "{sentence}");
    assert!(sentence.contains("not behind the complaint"), "{sentence}");
}

#[test]
fn a_reading_that_cannot_be_proves_nothing_and_is_not_drawn() {
    let example = leaking_front_hose().read(
        "hold:branch",
        json!({"start": 67.7, "readings": [[20, 57.6]], "unit": "inHg"}),
    );
    let report = made(&texts(), &example.viewed_with(front_hose_found()));
    let text = said(&report);
    let page = text.split("=== Full record").next().unwrap_or_default();
    assert!(!page.contains("67.7"), "{page}");
    assert!(text.contains("read 67.7 inHg, not usable"), "{text}");
}

#[test]
fn what_the_finding_names_does_not_stay_open_beside_it() {
    let (finding, next) = found(
        &[("power_wire", "to_ground"), ("fuse", "blown")],
        &["power_wire", "fuse"],
        &["fuse"],
    );
    let finding = Finding {
        left_open: vec![FaultId::new("fuse", "blown"), FaultId::new("coil", "shorted")],
        ..finding
    };
    let text = said(&made(&texts(), &blown_fuse().viewed_with((finding, next))));
    assert!(
        text.contains("Still possible: the valve coil is shorted."),
        "{text}"
    );
    assert!(!text.contains("Still possible: the fuse is blown."), "{text}");
}

#[test]
fn a_reading_that_was_kept_was_not_put_right() {
    let texts = texts();
    let mut example = Example::begun();
    let answer = json!({"off_v": 0.0, "on_v": 0.0});
    let asked = example.add("control-pin", &answer, false);
    let kept = holdfast_joblog::Reading {
        confirmed: true,
        ..example.reading("control-pin", &answer, false)
    };
    let kept = Correction::of(asked, &Payload::Reading(kept)).unwrap();
    example.log(Payload::Correction(kept));
    let rows: Vec<String> = log_rows(&texts, &example.view())
        .into_iter()
        .map(|row| spaced(&format!("{} | {}", row.text, row.state)))
        .take(2)
        .collect();
    assert_eq!(
        rows,
        [
            "Questioned and kept: Control pin: Off 0.00 V, on 0.00 V | ",
            "Control pin: Off 0.00 V, on 0.00 V | questioned later and kept",
        ]
    );
}

#[test]
fn on_a_line_nouns_keep_the_capitals_of_their_language() {
    let example = || {
        Example::begun()
            .read("source", json!({"gauge": 19, "unit": "inHg", "steady": true}))
            .read(
                "mount-move:front_mount",
                json!({"clunk": true, "gap_opens": true}),
            )
            .read("look", json!({"connector": "corroded"}))
            .read(
                "idle-quality",
                json!({"rpm": 740, "steady": true, "rough": false}),
            )
    };
    let read = |language: &str| {
        let (texts, job) = (Texts::new(language), example().view());
        let read = job
            .done
            .iter()
            .map(|(reading, _)| reading_words(&texts, &job.circuit, reading));
        read.map(|words| spaced(&words)).collect::<Vec<_>>()
    };
    assert_eq!(
        read("en"),
        [
            "19.0 inHg, needle stands still",
            "A knock, metal to metal, a gap opens",
            "Connector corroded",
            "740 rpm, steady speed, smooth and even",
        ]
    );
    assert_eq!(
        read("de"),
        [
            "19,0 inHg, Zeiger steht still",
            "Ein Schlag, Metall auf Metall, ein Spalt öffnet sich",
            "Stecker: korrodiert",
            "740 1/min, Drehzahl ruhig, rund und gleichmäßig",
        ]
    );
}
