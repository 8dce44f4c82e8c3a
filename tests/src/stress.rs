//! A job made to strain the report: sixty readings, twenty-four pictures, names in six scripts, notes of one line and
//! of ten thousand characters, costs and a signature. Invented from end to end.

use std::path::Path;

use anyhow::{Context, Result, anyhow};
use holdfast_diagnose::{Circuit, CircuitChoice, TestId, parse_answer};
use holdfast_joblog::{
    Approval, CarState, CircuitStated, Complaint, CostKind, CostLine, CostStage, Costs, Decision, DeviceId,
    Instruments, JobId, MarkRecord, MarkShapeRecord, Note, Opened, Payload, PhotoMarked, Place as Placed,
    Reading, Repair, Signature, Skipped, Stamp, Store, Subject, Vehicle, Workshop,
};
use serde_json::{Value, json};

use crate::pictures::{Hose, gauge, hose};

/// 2026-03-14T08:00Z, in a place one hour ahead.
const BEGUN_MS: i64 = 1_773_475_200_000;
/// The commonest circuit.
const CIRCUIT: &str = "two-mounts-one-valve";
/// How many readings.
const READINGS: usize = 60;
/// How many pictures.
pub const PICTURES: usize = 24;
/// Pixels across a picture: small ones are drawn sooner and print as large.
const WIDTH: u32 = 1_600;
/// Pixels across the one that is as large as cameras take them: twelve megapixels, a gauge to be read in print.
const LARGE: (usize, u32) = (1, 4_000);

/// Names in six scripts, as the cut-down fonts of `core/report/testdata` have them.
pub const NAMES: [&str; 6] = [
    "Ögmundsdóttir",
    "محمد الأمين",
    "אברהם כהן",
    "कृष्णा शर्मा",
    "张伟",
    "山田はなこ",
];

/// The log as it is written.
struct Writer {
    store: Store,
    job: JobId,
    wall_ms: i64,
}

impl Writer {
    fn log(&mut self, payload: &Payload) -> Result<holdfast_joblog::EntryKey> {
        self.wall_ms += 97_000;
        let stamp = Stamp {
            wall_ms: self.wall_ms,
            offset_min: 60,
        };
        Ok(self.store.append(self.job, payload, stamp)?.key)
    }
}

/// Writes the job into a data folder.
///
/// # Errors
/// What the log or the pictures say.
pub fn job(data: &Path) -> Result<JobId> {
    std::fs::create_dir_all(data)?;
    let mut store = Store::open_as(data, DeviceId(*b"holdfast-stress-"))?;
    let job = store.new_job();
    let mut writer = Writer {
        store,
        job,
        wall_ms: BEGUN_MS,
    };
    begin(&mut writer)?;
    readings(&mut writer)?;
    pictures(&mut writer, data)?;
    notes(&mut writer)?;
    settle(&mut writer)?;
    Ok(job)
}

fn begin(writer: &mut Writer) -> Result<()> {
    let text = |text: &str| Some(text.to_owned());
    for payload in [
        Payload::Opened(Opened::by("0.1.0")),
        Payload::Vehicle(Vehicle {
            plate: text("HF 204 K"),
            label: text("कृष्णा शर्मा, estate, 2.0 diesel"),
            odometer: text("184 200 km"),
            odometer_km: Some(184_200.0),
            customer: text("محمد الأمين"),
            ..Vehicle::default()
        }),
        Payload::Workshop(Workshop {
            business: "山田はなこ 検査\n14 Example Lane, Sampleton\n+00 000 000 000".into(),
            technician: "אברהם כהן".into(),
        }),
        Payload::Complaint(Complaint {
            phrases: vec!["shake_idle".into(), "clunk".into()],
            note: "It shakes. ".repeat(910).trim().to_owned(),
        }),
        Payload::Circuit(CircuitStated::of(json!(CIRCUIT))),
        Payload::Instruments(instruments()?),
        Payload::Place(Placed {
            altitude_m: Some(120.0),
            air_c: Some(14.0),
            ..Placed::default()
        }),
    ] {
        writer.log(&payload)?;
    }
    Ok(())
}

fn instruments() -> Result<Instruments> {
    Ok(serde_json::from_value(json!({
        "gauge": {"unit": "inHg", "span": 30.0, "division": 1.0, "grade": "B", "read_to": 0.5,
                  "identity": "SN 204, calibrated May 2026"},
        "pump_cm3": 30.0, "stroke_cm3": 15.0,
        "meter": {"percent": 0.5, "counts": 2.0, "digits": 2},
    }))?)
}

/// The readings over and over, each a little other than before; the last third after a repair.
fn readings(writer: &mut Writer) -> Result<()> {
    let choice: CircuitChoice = serde_json::from_value(json!(CIRCUIT))?;
    let circuit = Circuit::build(&choice)?;
    let holds = [
        "branch",
        "front_mount",
        "rear_mount",
        "front_hose",
        "rear_hose",
        "outlet_hose",
        "tee",
    ];
    for at in 0..READINGS {
        let part = holds.get(at % holds.len()).copied().unwrap_or("branch");
        let leaks = matches!(part, "branch" | "front_hose") && at < 40;
        let fall = if leaks { 6.5 } else { 0.1 } + at as f64 / 100.0;
        let (test, answer): (String, Value) = match at % 12 {
            9 => (
                "supply-volts".into(),
                json!({"pin1": 12.4 - at as f64 / 100.0, "pin2": 0.02, "battery": 12.5}),
            ),
            10 => (
                "source".into(),
                json!({"gauge": 19.0, "unit": "inHg", "steady": true}),
            ),
            11 => ("coil".into(), json!({"ohms": 28.5, "to_case_open": true})),
            _ => (
                format!("hold:{part}"),
                json!({"start": 20.0, "readings": [[20.0, 20.0 - fall]], "strokes": 19, "unit": "inHg"}),
            ),
        };
        if at == 40 {
            writer.log(&Payload::Repair(Repair {
                component: "front_hose".into(),
                part: "Hose 3.5 mm, 0.5 m".into(),
                torque: String::new(),
                note: String::new(),
                done: true,
            }))?;
        }
        let id: TestId = test.parse().map_err(|_| anyhow!("no test {test}"))?;
        let (answer, _) = parse_answer(&circuit, &id, &answer)?;
        writer.log(&Payload::Reading(Reading {
            test,
            answer: serde_json::to_value(&answer)?,
            typed: Vec::new(),
            state: CarState::default(),
            confirmed: at % 17 == 3,
            after_repair: at >= 40,
            begun_at_ms: None,
            watched_s: None,
            asked_because: None,
        }))?;
    }
    writer.log(&Payload::Skipped(Skipped {
        test: "control-wire".into(),
        reason: "no_access".into(),
        note: "Under the tray".into(),
        asked_because: None,
    }))?;
    Ok(())
}

/// Hoses and gauges with every kind of mark; captions from none to ten thousand characters.
fn pictures(writer: &mut Writer, data: &Path) -> Result<()> {
    let photos = writer.store.photos();
    for at in 0..PICTURES {
        let seed = u32::try_from(at)?;
        let width = if at == LARGE.0 { LARGE.1 } else { WIDTH };
        let picture = match at % 3 {
            0 => hose(Hose::Split, width, seed),
            1 => gauge(20.0 - at as f64 / 2.0, width, seed),
            _ => hose(Hose::New, width, seed),
        };
        let file = data.join("picture.jpg");
        picture.context("no picture")?.save(&file)?;
        let imported = photos.import(&file, &|_| true)?;
        let about = Subject::Component("front_hose".into());
        let photo = writer.log(&Payload::Photo(imported.photo(about, "")))?;
        let caption = match at % 6 {
            0 => "The hose end".to_owned(),
            1 => NAMES.join(", "),
            2 => "A caption that goes on and on. ".repeat(330),
            3 => "x".repeat(10_000),
            4 => String::new(),
            _ => format!(
                "Seen by {}",
                NAMES.get(at % NAMES.len()).copied().unwrap_or_default()
            ),
        };
        writer.log(&Payload::PhotoMarked(PhotoMarked {
            photo,
            caption,
            marks: marks(at),
        }))?;
        std::fs::remove_file(&file)?;
    }
    Ok(())
}

fn marks(at: usize) -> Vec<MarkRecord> {
    let shapes = [
        MarkShapeRecord::Ring {
            at: [0.58, 0.5],
            radius: 0.09,
        },
        MarkShapeRecord::Arrow {
            from: [0.3, 0.85],
            to: [0.56, 0.54],
        },
        MarkShapeRecord::Pin {
            at: [0.62, 0.52],
            number: 12,
        },
        MarkShapeRecord::TestPoint { at: [0.8, 0.6] },
        MarkShapeRecord::Measure {
            from: [0.5, 0.42],
            to: [0.66, 0.56],
        },
    ];
    shapes
        .into_iter()
        .enumerate()
        .filter(|(index, _)| !(at + index).is_multiple_of(3))
        .map(|(index, shape)| MarkRecord {
            shape,
            text: NAMES
                .get((at + index) % NAMES.len())
                .copied()
                .unwrap_or_default()
                .to_owned(),
            style: String::new(),
        })
        .collect()
}

fn notes(writer: &mut Writer) -> Result<()> {
    let long = NAMES.join(" and ") + " looked at it. ";
    for text in [
        "One line.".to_owned(),
        long.repeat(10_000 / long.chars().count() + 1),
        "\u{202e}=1+1\u{7} 🚗 김민수".to_owned(),
    ] {
        writer.log(&Payload::Note(Note {
            text,
            about: Subject::Job,
        }))?;
    }
    Ok(())
}

/// Costs in a currency of three decimals, and what the customer said to them.
fn settle(writer: &mut Writer) -> Result<()> {
    let line = |at: i64| CostLine {
        kind: CostKind::ALL
            .into_iter()
            .cycle()
            .nth(at as usize % 3)
            .unwrap_or(CostKind::Other),
        words: format!(
            "Line {at}, for {}",
            NAMES.get(at as usize % 6).copied().unwrap_or_default()
        ),
        quantity_milli: 250 * (at + 1),
        unit_minor: 1_234 * (at + 1),
        tax_bp: if at % 2 == 0 { 500 } else { 1_500 },
    };
    let costs = writer.log(&Payload::Costs(Costs {
        stage: CostStage::Estimate { valid_days: 30 },
        currency: "KWD".into(),
        lines: (0..12).map(line).collect(),
    }))?;
    let stroke = |from: u16| (0..40).map(|i| [from + i * 60, 2_000 + (i % 5) * 260]).collect();
    for (decision, name, work) in [
        (Decision::Agreed, "山田はなこ", "Replace the front hose"),
        (Decision::Refused, "张伟", "Check of the rear mount from below"),
        (Decision::PutOff, "محمد الأمين", "New vacuum reservoir"),
    ] {
        writer.log(&Payload::Approval(Approval {
            decision,
            work: work.into(),
            name: name.into(),
            costs: Some(costs),
            signature: Some(Signature {
                height: 4_167,
                strokes: vec![stroke(900), stroke(5_200)],
            }),
        }))?;
    }
    Ok(())
}
