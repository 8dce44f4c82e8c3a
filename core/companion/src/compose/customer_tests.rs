//! Costs, decisions and signatures on the report; the readings that ride inside it.

use holdfast_joblog::{
    Approval, CostKind, CostLine, CostStage, Costs, Decision, Payload, Signature, Workshop,
};
use holdfast_report::{Block, Report, Table};

use super::example::{Example, front_hose_found, leaking_front_hose, nothing_known};
use super::tests::{chewed_power_wire, made, report_text, texts};

/// The repaired job with costs, a decision that was signed, and work that was refused.
fn paid_and_signed(lines: usize) -> Example {
    let line = |n: usize| CostLine {
        kind: if n.is_multiple_of(2) {
            CostKind::Part
        } else {
            CostKind::Labour
        },
        words: format!("Line {n}"),
        quantity_milli: 1_000,
        unit_minor: 1_234,
        tax_bp: 1_900,
    };
    let mut example = leaking_front_hose();
    example.log(Payload::Workshop(Workshop {
        business: "Kerbside Motor Works\n14 Example Lane".into(),
        technician: "R. Invented".into(),
    }));
    let costs = example.log(Payload::Costs(Costs {
        stage: CostStage::Estimate { valid_days: 14 },
        currency: "EUR".into(),
        lines: (0..lines).map(line).collect(),
    }));
    let said = |decision, work: &str, signature| Approval {
        decision,
        work: work.into(),
        name: "A. Example".into(),
        costs: Some(costs),
        signature,
    };
    let signature = Signature {
        height: 4_167,
        strokes: vec![vec![[1_000, 2_000], [3_000, 1_000]], vec![[4_000, 900]]],
    };
    example.log(Payload::Approval(said(
        Decision::Agreed,
        "Replace the front hose",
        Some(signature),
    )));
    example.log(Payload::Approval(said(
        Decision::Refused,
        "Check of the rear mount",
        None,
    )));
    example
}

fn tables(report: &Report) -> impl Iterator<Item = &Table> {
    let blocks = report.customer.iter().chain(&report.record.blocks);
    blocks.filter_map(|block| match block {
        Block::Table(table) => Some(table),
        _ => None,
    })
}

#[test]
fn costs_stand_on_the_first_page_with_the_day_they_are_good_to() {
    let texts = texts();
    let job = paid_and_signed(2).viewed_with(nothing_known());
    let made = made(&texts, &job);
    let heading = made.customer.iter().find_map(|block| match block {
        Block::Heading(words) if words.starts_with("Estimate") => Some(words.clone()),
        _ => None,
    });
    assert_eq!(heading.as_deref(), Some("Estimate, good until March 28, 2026"));
    let table = tables(&made).next().expect("the costs");
    let sums: Vec<&String> = table.rows.iter().filter_map(|row| row.last()).collect();
    // Twice 12.34 is 24.68; 19 % of it 4.6892.
    assert_eq!(sums, ["12.34", "12.34", "4.69", "29.37"]);
    assert_eq!(table.sums, 2);
}

#[test]
fn many_lines_are_summed_up_on_the_first_page_and_listed_in_the_record() {
    let texts = texts();
    let job = paid_and_signed(40).viewed_with(nothing_known());
    let made = made(&texts, &job);
    let costs: Vec<_> = tables(&made)
        .filter(|table| table.sums > 0)
        .map(|table| table.rows.len())
        .collect();
    assert_eq!(costs, [4, 42]);
}

#[test]
fn what_is_signed_prints_as_drawn_with_name_and_time_and_what_is_refused_is_said() {
    let texts = texts();
    let job = paid_and_signed(2).viewed_with(nothing_known());
    let made = made(&texts, &job);
    let lines = made.customer.iter().find_map(|block| match block {
        Block::Sign(lines) => Some(lines),
        _ => None,
    });
    let lines = lines.expect("lines to sign on");
    assert_eq!(lines[0].written, "R. Invented");
    assert!(
        lines[1].written.starts_with("A. Example, March 14, 2026"),
        "{}",
        lines[1].written
    );
    let drawn = lines[1].signature.as_ref().map(|scene| scene.items.len());
    assert_eq!(drawn, Some(2));
    let all = made.record.blocks.iter().find_map(|block| match block {
        Block::Sign(lines) => Some(lines.len()),
        _ => None,
    });
    assert_eq!((lines.len(), all), (2, Some(2)));
    let text = report_text(&made);
    assert!(text.contains("Refused: Check of the rear mount"), "{text}");
    assert!(!text.contains("Put off"));
}

#[test]
fn the_first_page_promises_nothing() {
    // trade.md, section 11.
    let texts = texts();
    for job in [
        paid_and_signed(2).viewed_with(front_hose_found()),
        leaking_front_hose().viewed_with(front_hose_found()),
        chewed_power_wire().viewed_with(nothing_known()),
    ] {
        let page = report_text(&made(&texts, &job)).to_lowercase();
        for word in [
            "guarantee",
            "no other fault",
            "safe to drive",
            "as new",
            "warrant",
        ] {
            assert!(!page.contains(word), "{word}");
        }
    }
}

/// As the eye compares: spaces are spaces, capitals don't count.
fn flat(text: &str) -> String {
    text.to_lowercase()
        .replace(['\u{a0}', '\''], " ")
        .replace('\u{2212}', "-")
}

#[test]
fn the_attached_readings_hold_nothing_that_the_record_does_not_show() {
    let texts = texts();
    for job in [
        leaking_front_hose().viewed_with(front_hose_found()),
        chewed_power_wire().viewed_with(nothing_known()),
    ] {
        let made = made(&texts, &job);
        let shown: Vec<Vec<String>> = tables(&made)
            .flat_map(|table| &table.rows)
            .map(|row| row.iter().map(|cell| flat(cell)).collect())
            .collect();
        let rows = super::report::readings_rows(&texts, &job);
        assert!(rows.len() >= job.done.len() / 2, "{} rows", rows.len());
        for row in rows {
            let [at, test, label, value, unit, seconds, uncertainty, with, result] =
                <[String; 9]>::try_from(row)
                    .expect("nine fields")
                    .map(|field| flat(&field));
            let figure = if unit.is_empty() {
                value.clone()
            } else {
                format!("{value} {unit}")
            };
            let says = |row: &Vec<String>| {
                row.get(1) == Some(&test)
                    && row.get(2).is_some_and(|read| {
                        // What is read at 0 s stands first, later ones with their time.
                        let timed =
                            seconds.is_empty() || seconds == "0" || read.contains(&format!("{seconds} s"));
                        let labelled = label == "vacuum" || read.contains(&label);
                        read.contains(&figure) && timed && labelled
                    })
                    && row.get(3) == Some(&uncertainty)
                    && row.get(4) == Some(&with)
                    && row.get(5) == Some(&result)
            };
            assert!(
                shown.iter().any(says),
                "{test}: {label} {figure} after {seconds}: not shown"
            );
            assert!(
                shown.iter().any(|row| row.first() == Some(&at)),
                "{at} is not shown"
            );
        }
    }
}
