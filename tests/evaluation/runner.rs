//! A job done from the first test to the end, by one way of choosing the next.

use std::time::{Duration, Instant};

use holdfast_diagnose::{
    Answer, Catalogue, Finding, Next, Outcome, Policy, Reading, Reasoner, TestId, TestResult, judge,
    parse_answer, question,
};

use crate::ailments::Harm;
use crate::jobs::Job;
use crate::skipping;
use crate::witness::{Taken, Witness};

/// How the next test is chosen.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Way {
    Guided,
    Fixed,
    /// The textbook's order, leaving out what can no longer change anything.
    FixedSkipping,
}

/// A job done.
pub struct Run {
    pub finding: Finding,
    pub minutes: f64,
    pub taken: Vec<Taken>,
    pub readings: Vec<(Reading, TestResult)>,
    /// Tests that were asked for, done or not.
    pub asked: Vec<TestId>,
    pub slipped: usize,
    /// What of the tester was put right on the way.
    pub mended: Vec<Harm>,
    /// How long each choice of the next test took.
    pub thinking: Vec<Duration>,
    /// Minutes to the end as they were said before a test, and as they were.
    pub said: Vec<(f64, f64)>,
    /// A reading that the core refused; there should be none.
    pub refused: Option<String>,
}

/// No job is longer.
const MOST_STEPS: usize = 80;
/// A person watches a needle no longer, s.
const LONGEST_WATCH: f64 = 300.0;

/// Does a job.
pub fn run(job: &Job, way: Way) -> Run {
    let car = job.car();
    let mut witness = Witness::of(job, &car);
    let (circuit, situation) = (&job.scene.circuit, &job.scene.situation);
    let policy = if way == Way::Guided {
        Policy::Guided
    } else {
        Policy::Fixed
    };
    let mut reasoner = Reasoner::new(circuit.clone(), situation.clone());
    let mut readings: Vec<(Reading, TestResult)> = Vec::new();
    let mut run = Run {
        finding: Finding::default(),
        minutes: 0.0,
        taken: Vec::new(),
        readings: Vec::new(),
        asked: Vec::new(),
        slipped: 0,
        mended: Vec::new(),
        thinking: Vec::new(),
        said: Vec::new(),
        refused: None,
    };
    while run.asked.len() < MOST_STEPS {
        let start = Instant::now();
        let next = reasoner.next(&readings, policy);
        run.thinking.push(start.elapsed());
        let (id, minutes) = match next {
            Next::Test {
                id,
                minutes,
                to_finding,
                ..
            } => {
                // The minutes spent so far, until the end is known.
                run.said.extend(to_finding.map(|said| (said, run.minutes)));
                (id, minutes)
            }
            Next::LookAgain { id, minutes, .. } => {
                run.minutes += minutes;
                if let Err(why) = look_again(job, &mut witness, &mut run.taken, &mut readings, &id) {
                    run.refused = Some(why);
                    break;
                }
                continue;
            }
            Next::Stop { .. } => break,
        };
        if run.asked.contains(&id) {
            witness.mend_tester(id.kind);
        }
        run.asked.push(id.clone());
        let skipped =
            way == Way::FixedSkipping && skipping::is_idle(circuit, &reasoner.outline(&readings), &id);
        if skipped || job.scene.cannot.contains(&id) {
            let reason = if skipped { "left out" } else { "no access" };
            readings.push(done(
                job,
                &readings,
                Reading::new(
                    id,
                    Answer::NotDone {
                        reason: reason.into(),
                    },
                ),
            ));
            continue;
        }
        match take(job, &mut witness, &readings, &id) {
            Ok((reading, taken)) => {
                run.minutes += minutes;
                run.taken.push(taken);
                readings.push(reading);
            }
            Err(why) => {
                run.refused = Some(why);
                break;
            }
        }
    }
    for (_, then) in &mut run.said {
        *then = run.minutes - *then;
    }
    run.finding = reasoner.outline(&readings);
    run.slipped = witness.slipped;
    run.mended = witness.mended;
    run.readings = readings;
    run
}

/// Looks once more at what was read in a test; the reading is put right, or confirmed.
fn look_again(
    job: &Job,
    witness: &mut Witness<'_>,
    taken: &mut [Taken],
    readings: &mut [(Reading, TestResult)],
    id: &TestId,
) -> Result<(), String> {
    let (Some(at), Some(taken)) = (
        readings.iter().rposition(|(r, _)| r.test == *id && r.is_answered()),
        taken.iter_mut().rfind(|t| t.test == *id),
    ) else {
        return Err(format!("'{id}' is to be looked at again and was never done"));
    };
    let (before, rest) = readings.split_at_mut(at);
    let mut reading = rest[0].0.clone();
    if witness.look_again(taken) {
        reading = read(job, taken)?;
    }
    reading.confirmed = true;
    rest[0] = done(job, before, reading);
    Ok(())
}

fn done(job: &Job, before: &[(Reading, TestResult)], reading: Reading) -> (Reading, TestResult) {
    let earlier: Vec<Reading> = before.iter().map(|(r, _)| r.clone()).collect();
    let result = judge(&job.scene.circuit, &job.scene.situation, &earlier, &reading);
    (reading, result)
}

/// What was taken, as a reading.
fn read(job: &Job, taken: &Taken) -> Result<Reading, String> {
    let (circuit, id) = (&job.scene.circuit, &taken.test);
    let spec = Catalogue::standard()
        .spec(circuit, id)
        .ok_or_else(|| format!("'{id}' is asked for and not in the catalogue"))?;
    let json = taken.json(spec.form, job.scene.situation.instruments.gauge.unit.symbol());
    let (answer, state) = parse_answer(circuit, id, &json).map_err(|e| format!("{e} in {json}"))?;
    Ok(Reading {
        state,
        ..Reading::new(id.clone(), answer)
    })
}

type Done = ((Reading, TestResult), Taken);

fn take(
    job: &Job,
    witness: &mut Witness<'_>,
    before: &[(Reading, TestResult)],
    id: &TestId,
) -> Result<Done, String> {
    let (circuit, situation) = (&job.scene.circuit, &job.scene.situation);
    let read = |taken: &Taken| read(job, taken);
    let earlier: Vec<Reading> = before.iter().map(|(r, _)| r.clone()).collect();
    let mut taken = witness.take(id, &[situation.limit.seconds]);
    let mut reading = read(&taken)?;
    if question(circuit, situation, &earlier, &reading).is_some() {
        if witness.look_again(&mut taken) {
            reading = read(&taken)?;
        }
        reading.confirmed = true;
    }
    let mut result = judge(circuit, situation, &earlier, &reading);
    for _ in 0..2 {
        let more = result.hold.as_ref().and_then(|h| h.more_seconds);
        let (Outcome::Undecided, Some(more)) = (result.outcome, more) else {
            break;
        };
        let second = taken.seconds.last().copied().unwrap_or(0.0) + more.ceil();
        if second > LONGEST_WATCH {
            break;
        }
        witness.watch_on(&mut taken, second);
        let confirmed = reading.confirmed;
        reading = Reading {
            confirmed,
            ..read(&taken)?
        };
        result = judge(circuit, situation, &earlier, &reading);
    }
    Ok(((reading, result), taken))
}
