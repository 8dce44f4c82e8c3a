//! An invented job as a report: a rear hose that leaks, found, replaced, tested again.

use holdfast_report::{
    Align, Attachment, Band, Block, Business, CircuitMap, Column, Fact, Figure, Finding, PhotoMark,
    PhotoScene, PhotoShape, Report, Section, SignLine, Signal, Spot, State, Suspicion, Table, Written, band,
    circuit_map, connector_face, hold_chart, photo, signature,
};

use super::{LAYOUTS, map, samples};

fn fact(label: &str, value: &str) -> Fact {
    Fact {
        label: label.into(),
        value: value.into(),
    }
}

fn found() -> CircuitMap {
    let mut map = map(LAYOUTS[1].1);
    map.alt =
        "Circuit map: the rear hose leaks with 97 % certainty; source, valve and both mounts hold.".into();
    for part in &mut map.parts {
        let state = match part.id.as_str() {
            "source" | "check_valve" | "inlet_hose" | "valve" | "front_hose" | "front_mount"
            | "rear_mount" => State::Holds,
            "rear_hose" => State::Leaks,
            "battery" | "fuse" | "power_wire" | "connector" | "coil" => State::Holds,
            _ => State::NotDone,
        };
        part.state = Some(state);
        if part.id == "rear_hose" {
            part.suspicion = Some(Suspicion {
                share: 0.97,
                text: "97\u{a0}%".into(),
            });
        }
    }
    map
}

/// A report with `rows` rows in its record and, if given, a photo at that path (1,200 by 900).
pub fn report(rows: usize, picture: Option<&str>) -> Report {
    let hold = |title: &str, reading: f64, text: &str, state: State| Band {
        alt: format!("{title}: lost {text}, limit 0.5 inHg in 20 s"),
        title: title.into(),
        low: 0.0,
        high: 0.5,
        low_text: "0".into(),
        high_text: "0.5\u{a0}inHg".into(),
        band_label: "allowed".into(),
        reading: Some(reading),
        doubt: 0.25,
        reading_text: text.into(),
        state: Some(state),
    };
    let mut evidence = vec![
        Block::Pair(
            Figure {
                scene: circuit_map(&found()),
                caption: "The circuit with what each part showed. Shaded: where the fault is.".into(),
                width_share: 0.5,
            },
            Figure {
                scene: connector_face(&samples::connector()),
                caption: "The valve’s connector, key on, engine off: power arrives at pin 1.".into(),
                width_share: 0.5,
            },
        ),
        Block::Heading("Readings against what was expected".into()),
        Block::Pair(
            Figure {
                scene: band(&hold("Rear hose alone, 20 s", 6.5, "6.5\u{a0}inHg", State::Leaks)),
                caption: "The rear hose lost thirteen times what is allowed.".into(),
                width_share: 0.5,
            },
            Figure {
                scene: band(&hold(
                    "Rear mount alone, 20 s",
                    0.1,
                    "0.1\u{a0}inHg",
                    State::Holds,
                )),
                caption: "The rear mount itself holds vacuum.".into(),
                width_share: 0.5,
            },
        ),
        Block::Pair(
            Figure {
                scene: band(&samples::volts()),
                caption: "Power wire, key on, engine off.".into(),
                width_share: 0.5,
            },
            Figure {
                scene: hold_chart(&samples::trace()),
                caption: "The inlet hose: a slow leak inside the limit.".into(),
                width_share: 0.5,
            },
        ),
    ];
    if let Some(path) = picture {
        let marks = vec![
            PhotoShape::Ring {
                centre: Spot { x: 0.36, y: 0.4 },
                radius: 0.09,
            }
            .plain(),
            PhotoShape::Arrow {
                from: Spot { x: 0.72, y: 0.75 },
                to: Spot { x: 0.46, y: 0.48 },
            }
            .plain(),
            PhotoShape::Pin {
                at: Spot { x: 0.74, y: 0.42 },
                number: "2".into(),
            }
            .plain(),
            PhotoMark {
                words: "split, 12 mm long".into(),
                ..PhotoShape::Words {
                    at: Spot { x: 0.55, y: 0.85 },
                }
                .plain()
            },
        ];
        let scene = PhotoScene {
            alt: "Photo of the rear hose end with a ring round the split".into(),
            path: path.into(),
            width_px: 1_200,
            height_px: 900,
            marks,
            grips: vec![],
        };
        evidence.push(Block::Figure(Figure {
            scene: photo(&scene),
            caption: "The split at the end of the rear hose (drawn for this example).".into(),
            width_share: 0.7,
        }));
    }
    Report {
        language: "en-GB".into(),
        title: "Engine mounts: what was found".into(),
        written: Written { at_ms: 1_790_000_000_000, offset_min: 120 },
        business: Business {
            name: "Kerbside Motor Works".into(),
            lines: vec!["14 Example Lane, Sampleton".into(), "+00 000 000 000".into(), "Technician: R. Invented".into()],
        },
        facts: vec![
            fact("Vehicle", "Sample estate, 2.0 petrol"),
            fact("Number plate", "HF 204 K"),
            fact("VIN", "not recorded"),
            fact("Odometer", "148,210 km"),
            fact("Tested on", "21 September 2026, 15:33"),
            fact("Customer", "A. Example"),
        ],
        finding: Finding {
            state: Some(State::Leaks),
            sentence: "The vacuum hose to the rear engine mount is split and leaks.".into(),
            certainty: "97 in 100 sure, from nine measurements. It explains the shake at idle.".into(),
        },
        aside: vec![Figure {
            scene: hold_chart(&samples::before_after()),
            caption: "The same test before and after the repair.".into(),
            width_share: 0.44,
        }],
        customer: vec![
            Block::Heading("How we know".into()),
            Block::Text(
                "With the rear hose alone on the hand pump, the gauge fell 6.5 inHg in 20 seconds; half an inHg is \
                 allowed. Both mounts, the valve and the other hoses kept their vacuum, and power reaches the valve."
                    .into(),
            ),
            Block::Heading("What was done".into()),
            Block::Text("Rear hose replaced with new vacuum hose of the same bore and length.".into()),
            Block::Table(costs()),
            Block::Heading("Not tested".into()),
            Block::List(vec![
                "Rear mount from below: no ramp at the kerb.".into(),
                "Control wire to the module: the valve switches as it should.".into(),
            ]),
            Block::Caution {
                signal: Signal::Caution,
                word: "CAUTION".into(),
                text: "The hose runs 60 mm from the exhaust. Have its clip checked at the next service.".into(),
            },
            Block::Sign(vec![
                SignLine { label: "Work done by".into(), written: "R. Invented".into(), signature: None },
                SignLine {
                    label: "Approved by the customer".into(),
                    written: "A. Example, 21 September 2026, 16:13".into(),
                    signature: signature(&samples::strokes(), "Signature of A. Example"),
                },
            ]),
        ],
        evidence: Section { heading: "Evidence".into(), blocks: evidence },
        record: Section { heading: "Full record".into(), blocks: vec![Block::Table(record(rows)), Block::Table(instruments())] },
        attachments: vec![Attachment {
            name: "readings.csv".into(),
            mime: "text/csv".into(),
            description: "The readings of this report as a table".into(),
            data: b"Test,Value\r\nRear hose,13.25\r\n".to_vec(),
        }],
        digest: "9f2c7d3ab0e4518c6a7712f0de94b3c1".into(),
        version: "Holdfast 0.1.0".into(),
        ..Report::default()
    }
}

fn costs() -> Table {
    let column = |head: &str, align: Align| Column {
        head: head.into(),
        align,
    };
    let row = |cells: [&str; 4]| cells.iter().map(|s| (*s).to_owned()).collect();
    Table {
        caption: "Costs".into(),
        columns: vec![
            column("What", Align::Start),
            column("Quantity", Align::Decimal),
            column("Each, EUR", Align::End),
            column("Amount, EUR", Align::End),
        ],
        rows: vec![
            row(["Vacuum hose 3.5 mm, 0.9 m", "1", "18.90", "18.90"]),
            row(["Labour, hours", "0.75", "92.00", "69.00"]),
            row(["Tax 19 % on 87.90", "", "", "16.70"]),
            row(["Total", "", "", "104.60"]),
        ],
        sums: 2,
    }
}

fn record(rows: usize) -> Table {
    let column = |head: &str, align: Align| Column {
        head: head.into(),
        align,
    };
    let sample = [
        [
            "15:02",
            "Complaint",
            "shake at idle, in gear",
            "",
            "as expected",
            "reproduced with the customer in the car",
        ],
        [
            "15:05",
            "Source",
            "19.0 inHg",
            "±0.5",
            "as expected",
            "warm idle, neutral",
        ],
        [
            "15:09",
            "Hand pump, capped",
            "0.0 inHg in 60 s",
            "±0.2",
            "holds",
            "",
        ],
        [
            "15:12",
            "Branch",
            "6.5 inHg in 20 s",
            "±0.3",
            "leaks",
            "19 strokes",
        ],
        ["15:16", "Front mount", "0.1 inHg in 20 s", "±0.2", "holds", ""],
        [
            "15:21",
            "Rear hose",
            "13.25 inHg in 20 s",
            "±0.3",
            "leaks",
            "hose alone: less volume, so it falls faster",
        ],
        [
            "15:24",
            "Power wire, pin 1",
            "12.4 V",
            "±0.08",
            "as expected",
            "key on, engine off, connector off",
        ],
        [
            "15:25",
            "Control wire, pin 2",
            "0.02 V",
            "±0.02",
            "as expected",
            "",
        ],
        ["15:27", "Coil", "28.5 Ω", "±0.3", "as expected", "cold, 20 °C"],
        [
            "15:28",
            "Rear mount from below",
            "not done",
            "",
            "not done",
            "no ramp",
        ],
    ];
    Table {
        caption: "Every entry in order".into(),
        columns: vec![
            column("Time", Align::Start),
            column("Test", Align::Start),
            column("Reading", Align::Decimal),
            column("Uncertainty", Align::Start),
            column("Result", Align::Start),
            column("Note", Align::Start),
        ],
        rows: (0..rows)
            .map(|i| sample[i % sample.len()].iter().map(|s| (*s).to_owned()).collect())
            .collect(),
        sums: 0,
    }
}

fn instruments() -> Table {
    let column = |head: &str| Column {
        head: head.into(),
        align: Align::Start,
    };
    let row = |cells: [&str; 3]| cells.iter().map(|s| (*s).to_owned()).collect();
    Table {
        caption: "Instruments".into(),
        columns: vec![column("Instrument"), column("Range and grade"), column("Checked")],
        rows: vec![
            row([
                "Hand pump with gauge",
                "0–30 inHg, divisions 1, grade B",
                "capped, held 60 s before the tests",
            ]),
            row(["Multimeter", "0.5 % + 2 counts", "battery posts before and after"]),
        ],
        sums: 0,
    }
}
