//! Jobs for the tests of this module: a log written through the store, then viewed as the flow views it.

use holdfast_diagnose::{
    Arg, Cause, Circuit, CircuitChoice, FaultId, Finding, Message, Next, Policy, TestId, parse_answer,
};
use holdfast_joblog::{
    CarState, CircuitStated, Complaint, EntryKey, JobId, Opened, Payload, Place, Profile, Reading, Repair,
    Skipped, Stamp, Store, Vehicle,
};
use serde_json::{Value as Json, json};

use crate::job::JobView;

/// A job that grows entry by entry; the clock moves on four minutes with each.
pub(super) struct Example {
    _dir: tempfile::TempDir,
    store: Store,
    job: JobId,
    wall_ms: i64,
    circuit: Circuit,
}

/// 2026-03-14T08:00Z, in a place one hour ahead.
const BEGUN_MS: i64 = 1_773_475_200_000;

impl Example {
    /// A named vehicle with a shake at idle, at sea level, mechanic at work.
    pub(super) fn begun() -> Self {
        let dir = tempfile::tempdir().unwrap();
        let mut store = Store::open_as(dir.path(), holdfast_joblog::DeviceId([7; 16])).unwrap();
        let _ = store.new_job();
        let job = JobId([1; 16]);
        let choice = json!("two-mounts-one-valve");
        let circuit =
            Circuit::build(&serde_json::from_value::<CircuitChoice>(choice.clone()).unwrap()).unwrap();
        let mut example = Self {
            _dir: dir,
            store,
            job,
            wall_ms: BEGUN_MS,
            circuit,
        };
        example.log(Payload::Opened(Opened::by("0.1.0")));
        example.log(Payload::Vehicle(Vehicle {
            plate: Some("HF 204 K".into()),
            label: Some("Estate, 2.0 diesel".into()),
            ..Vehicle::default()
        }));
        example.log(Payload::Complaint(Complaint {
            phrases: vec!["shake_idle".into()],
            note: "It shakes so much at the lights that the mirror blurs.".into(),
        }));
        example.log(Payload::Circuit(CircuitStated::of(choice)));
        example.log(Payload::Place(Place {
            altitude_m: Some(0.0),
            air_c: Some(20.0),
            ..Place::default()
        }));
        example
    }

    pub(super) fn owner(mut self) -> Self {
        self.log(Payload::Profile(Profile { id: "owner".into() }));
        self
    }

    pub(super) fn log(&mut self, payload: Payload) -> EntryKey {
        self.wall_ms += 240_000;
        let stamp = Stamp {
            wall_ms: self.wall_ms,
            offset_min: 60,
        };
        self.store.append(self.job, &payload, stamp).unwrap().key
    }

    /// A test's answer as a scenario file gives it.
    pub(super) fn read(mut self, test: &str, answer: Json) -> Self {
        self.add(test, &answer, false);
        self
    }

    /// The same test after the repair.
    pub(super) fn retest(mut self, test: &str, answer: Json) -> Self {
        self.add(test, &answer, true);
        self
    }

    pub(super) fn add(&mut self, test: &str, answer: &Json, after_repair: bool) -> EntryKey {
        let reading = self.reading(test, answer, after_repair);
        self.log(Payload::Reading(reading))
    }

    pub(super) fn reading(&self, test: &str, answer: &Json, after_repair: bool) -> Reading {
        let id: TestId = test.parse().unwrap();
        let (parsed, _) = parse_answer(&self.circuit, &id, answer).unwrap();
        Reading {
            test: test.into(),
            answer: serde_json::to_value(&parsed).unwrap(),
            typed: Vec::new(),
            state: CarState::default(),
            confirmed: false,
            after_repair,
            begun_at_ms: None,
            watched_s: None,
            asked_because: None,
        }
    }

    pub(super) fn correct(&mut self, target: EntryKey, test: &str, answer: &Json) {
        self.wall_ms += 240_000;
        let instead = Payload::Reading(self.reading(test, answer, false));
        let stamp = Stamp {
            wall_ms: self.wall_ms,
            offset_min: 60,
        };
        let correction = holdfast_joblog::Correction::of(target, &instead).unwrap();
        self.store
            .append(self.job, &Payload::Correction(correction), stamp)
            .unwrap();
    }

    pub(super) fn skip(mut self, test: &str, reason: &str) -> Self {
        self.log(Payload::Skipped(Skipped {
            test: test.into(),
            reason: reason.into(),
            note: String::new(),
            asked_because: None,
        }));
        self
    }

    pub(super) fn repaired(mut self, component: &str) -> Self {
        self.log(Payload::Repair(Repair {
            component: component.into(),
            part: "new hose, 3.5 mm".into(),
            torque: String::new(),
            note: String::new(),
            done: true,
        }));
        self
    }

    /// The job with a finding and a next step that are given, not reasoned.
    pub(super) fn viewed_with(&self, (finding, next): (Finding, Next)) -> JobView {
        JobView {
            finding,
            next,
            ..self.view()
        }
    }

    pub(super) fn view(&self) -> JobView {
        JobView::of(self.store.fold(self.job).unwrap(), None, Policy::Guided).unwrap()
    }
}

/// What the reasoning may have said of the leaking front hose: fixed here, so that these tests read the words and not
/// the reasoning.
pub(super) fn front_hose_found() -> (Finding, Next) {
    let leaks = |part: &str| FaultId::new(part, "leaks");
    let cause = |part: &str, p: f64| Cause {
        faults: vec![leaks(part)],
        p,
    };
    let evidence = |id: &'static str, test: &str, times: f64| {
        Message::new(id)
            .with("test", Arg::Test(test.parse().unwrap()))
            .with("outcome", Arg::Text("outcome-leaks".into()))
            .with("times", Arg::Times(times))
    };
    let finding = Finding {
        causes: vec![
            cause("front_hose", 0.962),
            cause("rear_mount", 0.024),
            Cause {
                faults: vec![FaultId::other()],
                p: 0.014,
            },
        ],
        decided: true,
        parts: vec!["front_hose".into()],
        explains_complaint: Some(true),
        left_open: vec![leaks("rear_mount")],
        speaks_for: vec![
            evidence("evidence-for", "hold:front_hose", 94.0),
            evidence("evidence-for", "hold:branch", 5.2),
            evidence("evidence-for", "delivered", 3.1),
        ],
        speaks_against: vec![evidence("evidence-against", "look", 1.8)],
        ..Finding::default()
    };
    let why = Message::new("stop-found")
        .with("sure", Arg::Percent(0.962))
        .with("part", Arg::Part("front_hose".into()));
    (finding, Next::Stop { why })
}

/// What the reasoning may say of a job just begun.
pub(super) fn nothing_known() -> (Finding, Next) {
    let causes = vec![
        Cause {
            faults: vec![FaultId::new("engine", "rough")],
            p: 0.07,
        },
        Cause {
            faults: Vec::new(),
            p: 0.06,
        },
        Cause {
            faults: vec![FaultId::new("front_mount", "torn"), FaultId::new("strut", "worn")],
            p: 0.05,
        },
        Cause {
            faults: vec![FaultId::other()],
            p: 0.82,
        },
    ];
    let finding = Finding {
        causes,
        ..Finding::default()
    };
    let why = Message::new("why-settles")
        .with("test", Arg::Test("look".parse().unwrap()))
        .with("minutes", Arg::Minutes(3.0))
        .with("count", Arg::Count(16))
        .with("share", Arg::Percent(0.17))
        .with("finding", Arg::Minutes(31.0));
    (
        finding,
        Next::Test {
            id: "look".parse().unwrap(),
            why,
            minutes: 3.0,
            to_finding: Some(31.0),
        },
    )
}

/// A leaking front hose, found by splitting the branch; the rear mount can't be reached.
pub(super) fn leaking_front_hose() -> Example {
    Example::begun()
        .read(
            "hand-pump",
            json!({"start": 20, "readings": [[20, 20]], "strokes": 3, "unit": "inHg"}),
        )
        .read("look", json!({"connector": "corroded"}))
        .read("delivered", json!({"gauge": 9, "unit": "inHg", "seconds": 4}))
        .read("source", json!({"gauge": 19, "unit": "inHg", "steady": true}))
        .read(
            "hold:branch",
            json!({"start": 20, "readings": [[20, 13.5]], "strokes": 19, "unit": "inHg"}),
        )
        .read(
            "hold:front_mount",
            json!({"start": 20, "readings": [[20, 20], [60, 20]], "unit": "inHg"}),
        )
        .skip("hold:rear_mount", "no_access")
        .read(
            "hold:front_hose",
            json!({"start": 20, "readings": [[20, 4]], "unit": "inHg"}),
        )
}
