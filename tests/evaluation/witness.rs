//! The person at the car: does a test and reports it as a scenario file would.

use holdfast_diagnose::{Form, TestId, TestKind};
use serde_json::{Map, Value, json};

use crate::ailments::Harm;
use crate::car::Car;
use crate::draw::Draw;
use crate::jobs::{Job, Stratum};
use crate::law::{Branch, Datum, Report, Slip};
use crate::physics::Physics;
use crate::{gauges, holds, meters, senses};

/// The laws of a test on a car; `seconds` are the moments at which a hold is read.
pub fn laws(physics: &Physics<'_, '_>, test: &TestId, seconds: &[f64]) -> Vec<Branch> {
    match test.kind {
        TestKind::Hold | TestKind::HandPump => holds::laws(physics, test, seconds),
        TestKind::Source | TestKind::Delivered | TestKind::SwitchOver => gauges::laws(physics, test),
        TestKind::SupplyVolts
        | TestKind::SupplyLoaded
        | TestKind::Fuse
        | TestKind::PowerWire
        | TestKind::ValveVolts
        | TestKind::ControlPin
        | TestKind::ControlWire
        | TestKind::Coil
        | TestKind::ProveMeter => meters::laws(physics, test),
        _ => senses::laws(physics, test),
    }
}

/// A reading as it was taken: enough to say later how likely it was.
#[derive(Debug, Clone)]
pub struct Taken {
    pub test: TestId,
    pub seconds: Vec<f64>,
    pub report: Report,
    pub slip: Option<Slip>,
    branch: usize,
    /// How often the test had been done before.
    time: u64,
    /// What of the tester had been put right before.
    mended: Vec<Harm>,
}

/// How slips happen in a job.
enum Slips {
    AsTheyCome,
    /// Just one, in this test from the first on, counted down.
    One(Option<usize>),
}

/// The person at the car of a job.
pub struct Witness<'a> {
    car: &'a Car<'a>,
    draw: Draw,
    slips: Slips,
    pub slipped: usize,
    done: Vec<TestId>,
    /// What of the tester has been put right.
    pub mended: Vec<Harm>,
}

impl<'a> Witness<'a> {
    pub fn of(job: &Job, car: &'a Car<'a>) -> Self {
        let mut draw = Draw::of(job.seed, "readings");
        let slips = match job.stratum {
            Stratum::OneSlip => Slips::One(Some(draw.by_weight([1.0; 6]))),
            _ => Slips::AsTheyCome,
        };
        Self {
            car,
            draw,
            slips,
            slipped: 0,
            done: Vec::new(),
            mended: Vec::new(),
        }
    }

    /// Puts the tester right that a test proves.
    pub fn mend_tester(&mut self, proof: TestKind) {
        self.mended.extend(match proof {
            TestKind::HandPump => Some(Harm::TesterLeaks),
            TestKind::ProveMeter => Some(Harm::MeterDead),
            _ => None,
        });
    }

    /// Does a test.
    pub fn take(&mut self, test: &TestId, seconds: &[f64]) -> Taken {
        let time = self.done.iter().filter(|t| *t == test).count() as u64;
        self.done.push(test.clone());
        let car = found(self.car, time, &self.mended);
        let laws = laws(&Physics::of(&car), test, seconds);
        // The same reading whatever was tested before it: a stream for each test.
        let mut draw = car.each_time(&TestId::on(test.kind, format!("{test} read").as_str()));
        let branch = match &mut self.slips {
            Slips::AsTheyCome => draw.by_weight(laws.iter().map(|b| b.weight)),
            Slips::One(Some(0)) if laws.len() > 1 => {
                self.slips = Slips::One(None);
                1 + draw.by_weight(laws.iter().skip(1).map(|b| b.weight))
            }
            Slips::One(Some(left)) => {
                *left = left.saturating_sub(1);
                0
            }
            Slips::One(None) => 0,
        };
        let chosen = &laws[branch];
        if chosen.slip.is_some() {
            self.slipped += 1;
        }
        Taken {
            test: test.clone(),
            seconds: seconds.to_vec(),
            report: chosen
                .fields
                .iter()
                .map(|(k, law)| (k.clone(), law.draw(&mut draw)))
                .collect(),
            slip: chosen.slip,
            branch,
            time,
            mended: self.mended.clone(),
        }
    }

    /// Looks again after being asked: three of four find their slip; who made none keeps the reading.
    pub fn look_again(&mut self, taken: &mut Taken) -> bool {
        if taken.slip.is_none() || !self.draw.happens(0.75) {
            return false;
        }
        let laws = taken.laws(self.car);
        taken.report = laws[0]
            .fields
            .iter()
            .map(|(k, law)| (k.clone(), law.draw(&mut self.draw)))
            .collect();
        taken.slip = None;
        taken.branch = 0;
        true
    }

    /// Watches a hold on to a later moment.
    pub fn watch_on(&mut self, taken: &mut Taken, second: f64) {
        taken.seconds.push(second);
        let laws = taken.laws(self.car);
        let key = format!("r{}", taken.seconds.len() - 1);
        let Some((key, law)) = laws[taken.branch].fields.iter().find(|(k, _)| *k == key.as_str()) else {
            return;
        };
        taken.report.push((key.clone(), law.draw(&mut self.draw)));
    }
}

/// A reading drawn as it comes, slips included.
pub fn drawn(physics: &Physics<'_, '_>, test: &TestId, seconds: &[f64], draw: &mut Draw) -> Taken {
    let laws = laws(physics, test, seconds);
    let branch = draw.by_weight(laws.iter().map(|b| b.weight));
    let chosen = &laws[branch];
    Taken {
        test: test.clone(),
        seconds: seconds.to_vec(),
        report: chosen
            .fields
            .iter()
            .map(|(k, law)| (k.clone(), law.draw(draw)))
            .collect(),
        slip: chosen.slip,
        branch,
        time: 0,
        mended: Vec::new(),
    }
}

/// A car as a test finds it that was done so often before, with this of the tester put right.
fn found<'c>(car: &Car<'c>, time: u64, mended: &[Harm]) -> Car<'c> {
    let mut found = car.clone();
    // What is drawn each time is drawn anew.
    found.nature.seed = found.nature.seed.wrapping_add(time << 40);
    found.ailments.retain(|a| !mended.contains(&a.fault.harm));
    found
}

impl Taken {
    /// The laws of its test on a car.
    pub fn laws(&self, car: &Car<'_>) -> Vec<Branch> {
        let found = found(car, self.time, &self.mended);
        laws(&Physics::of(&found), &self.test, &self.seconds)
    }

    /// Whether it was taken for the first time, with the tester as it was at first.
    pub fn is_plain(&self) -> bool {
        self.time == 0 && self.mended.is_empty()
    }

    fn number(&self, key: &str) -> Option<f64> {
        self.report.iter().find_map(|(k, datum)| match datum {
            Datum::Number(x) if k == key => Some(*x),
            _ => None,
        })
    }

    /// As it stands in a scenario file.
    pub fn json(&self, form: Form, unit: &str) -> Value {
        match form {
            Form::Hold => self.hold(unit),
            _ => self.values(form, unit),
        }
    }

    fn hold(&self, unit: &str) -> Value {
        let mut out = match self.number("never") {
            Some(highest) => json!({"never_reached": highest, "unit": unit}),
            None => {
                let readings: Vec<Value> = self
                    .seconds
                    .iter()
                    .enumerate()
                    .filter_map(|(n, s)| Some(json!([s, self.number(&format!("r{n}"))?])))
                    .collect();
                json!({"start": self.number("start"), "readings": readings, "unit": unit})
            }
        };
        if let Some(strokes) = self.number("strokes") {
            out["strokes"] = strokes.into();
        }
        out
    }

    fn values(&self, form: Form, unit: &str) -> Value {
        let mut out = Map::new();
        for (key, datum) in &self.report {
            let value = match datum {
                Datum::Number(x) => json!(x),
                Datum::Yes(yes) => json!(yes),
                Datum::Open => json!({"open": true}),
                Datum::Word(word) if form == Form::Words => {
                    json!(word.split_whitespace().collect::<Vec<_>>())
                }
                Datum::Word(word) if form == Form::Vibration => json!(word.parse::<f64>().unwrap_or(0.0)),
                // What looks well isn't named.
                Datum::Word("ok") => continue,
                Datum::Word(word) => json!(word),
            };
            out.insert(key.to_string(), value);
        }
        if out.contains_key("gauge") {
            out.insert("unit".into(), json!(unit));
        }
        Value::Object(out)
    }
}
