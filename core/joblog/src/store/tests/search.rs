use super::*;
use crate::payload::{Closed, Complaint, Repair};

fn shop() -> (TempDir, Store, Vec<JobId>) {
    let (dir, mut store) = new_log();
    let vehicles = [
        ("HF-204", "Grey estate", "Ögmundsdóttir"),
        ("B 42 HF", "Blue van", "O'Neill"),
        ("東京 12-34", "White coupé", "משה כהן"),
    ];
    let mut jobs = Vec::new();
    for (ms, (plate, label, customer)) in (1i64..).zip(vehicles) {
        let job = store.new_job();
        let vehicle = Vehicle {
            plate: Some(plate.into()),
            label: Some(label.into()),
            customer: Some(customer.into()),
            ..Vehicle::default()
        };
        store
            .append(job, &Payload::Vehicle(vehicle), at(ms * 1_000))
            .unwrap();
        jobs.push(job);
    }
    (dir, store, jobs)
}

fn found(store: &Store, text: &str) -> Vec<JobId> {
    store
        .list(&Query::search(text))
        .unwrap()
        .into_iter()
        .map(|row| row.job)
        .collect()
}

#[test]
fn search_goes_by_beginnings_of_words_whatever_case_and_accents() {
    let (_dir, store, jobs) = shop();
    for (text, hit) in [
        ("est", 0),
        ("GREY ES", 0),
        ("ogmunds", 0),
        ("ÖGM", 0),
        ("coupe", 2),
        ("neill", 1),
        ("o'ne", 1),
        ("משה", 2),
        ("blue van", 1),
        ("van blue", 1),
    ] {
        assert_eq!(found(&store, text), [jobs[hit]], "{text}");
    }
    assert!(found(&store, "blue estate").is_empty());
    assert!(found(&store, "state").is_empty());
}

#[test]
fn a_plate_is_found_by_any_piece_of_it_with_or_without_gaps() {
    let (_dir, store, jobs) = shop();
    assert_eq!(found(&store, "f2"), [jobs[0]]);
    assert_eq!(found(&store, "hf204"), [jobs[0]]);
    assert_eq!(found(&store, "b42-hf"), [jobs[1]]);
    assert_eq!(found(&store, "1234"), [jobs[2]]);
    assert_eq!(found(&store, "hf"), [jobs[1], jobs[0]]);
}

#[test]
fn nothing_typed_can_break_the_search() {
    let (_dir, store, jobs) = shop();
    for text in [
        "\"", "'", "*", "a AND", "NOT", "plate:", "(", "NEAR(", "-", "\0", "%", "_", "\u{202e}", "^x", "{a}",
    ] {
        store.list(&Query::search(text)).unwrap();
    }
    assert!(found(&store, "?!").is_empty());
    assert!(found(&store, "%%").is_empty());
    assert!(found(&store, &"x".repeat(100_000)).is_empty());
    assert_eq!(found(&store, "  ").len(), jobs.len());
}

#[test]
fn complaint_note_part_and_finding_are_found() {
    let (_dir, mut store, jobs) = shop();
    let complaint = Complaint {
        phrases: vec!["harsh_pulling_away".into()],
        note: "since the winter".into(),
    };
    store
        .append(jobs[0], &Payload::Complaint(complaint), at(9_000))
        .unwrap();
    store.append(jobs[1], &note("smells of fuel"), at(9_001)).unwrap();
    let repair = Repair {
        component: "rear_hose".into(),
        part: "EPDM 3.5".into(),
        torque: String::new(),
        note: String::new(),
        done: true,
    };
    store
        .append(jobs[1], &Payload::Repair(repair), at(9_002))
        .unwrap();
    let closed = Closed {
        parts: vec!["front_mount".into()],
        p: 0.97,
        causes: vec![],
        repaired: false,
        headline: "The front mount is torn.".into(),
        software: "0.1.0".into(),
    };
    store
        .append(jobs[2], &Payload::Closed(closed), at(9_003))
        .unwrap();
    for (text, hit) in [
        ("harsh", 0),
        ("winter", 0),
        ("fuel", 1),
        ("rear hose", 1),
        ("epdm", 1),
        ("front mount", 2),
        ("torn", 2),
    ] {
        assert_eq!(found(&store, text), [jobs[hit]], "{text}");
    }
    let shelf = |shelf| {
        store
            .list(&Query {
                shelf,
                ..Query::default()
            })
            .unwrap()
    };
    assert_eq!((shelf(Shelf::Open).len(), shelf(Shelf::Closed).len()), (2, 1));
    let row = shelf(Shelf::Closed).remove(0).closed.unwrap();
    assert_eq!((row.parts, row.p), (vec!["front_mount".to_owned()], 0.97));
}

#[test]
fn what_was_corrected_or_undone_is_no_longer_found() {
    let (_dir, mut store, jobs) = shop();
    let wrong = store.append(jobs[0], &note("gearbox"), at(9_000)).unwrap();
    store
        .correct(jobs[0], wrong.key, &note("bulkhead"), at(9_001))
        .unwrap();
    assert!(found(&store, "gearbox").is_empty());
    assert_eq!(found(&store, "bulkhead"), [jobs[0]]);
}

#[test]
fn the_list_has_the_job_last_worked_on_first_and_comes_in_pages_and_dates() {
    let (_dir, mut store, jobs) = shop();
    store.append(jobs[0], &reading("look"), at(50_000)).unwrap();
    let ask = |query: &Query| {
        store
            .list(query)
            .unwrap()
            .into_iter()
            .map(|row| row.job)
            .collect::<Vec<_>>()
    };
    assert_eq!(ask(&Query::default()), [jobs[0], jobs[2], jobs[1]]);
    assert_eq!(
        ask(&Query {
            skip: 1,
            most: 1,
            ..Query::default()
        }),
        [jobs[2]]
    );
    assert_eq!(
        ask(&Query {
            from_ms: Some(3_000),
            ..Query::default()
        }),
        [jobs[0], jobs[2]]
    );
    assert_eq!(
        ask(&Query {
            before_ms: Some(3_000),
            ..Query::default()
        }),
        [jobs[1]]
    );
    let row = store
        .list(&Query {
            most: 1,
            ..Query::default()
        })
        .unwrap()
        .remove(0);
    assert_eq!(
        (row.entries, row.readings, row.last_ms, row.opened_ms),
        (2, 1, 50_000, 1_000)
    );
}
