//! Jobs that travel between two phones, through the companion as a shell meets it.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "a test ends loudly"
)]

mod phone;

use holdfast_companion::{Action, Body, ExportOf, FieldId, PhotoSource, PhotoSubject, Pick, Place, Request};
use holdfast_report::Item;
use phone::Phone;

/// Does the work asked for and gives the file that is handed on.
fn exported(phone: &mut Phone, of: ExportOf) -> String {
    phone.asked.clear();
    phone.send(Action::ExportJobs { of });
    phone
        .asked
        .iter()
        .rev()
        .find_map(|request| match request {
            Request::Share { path, mime, .. } if mime == "application/zip" => Some(path.clone()),
            _ => None,
        })
        .expect("a bundle is handed on")
}

fn take_in(phone: &mut Phone, path: &str) -> String {
    phone.asked.clear();
    phone.send_only(Action::BundleTaken {
        path: path.to_owned(),
    });
    let notice = phone.screen().frame.notice.expect("what goes on");
    assert!(notice.work.is_some(), "{}", notice.text);
    phone.work();
    phone.screen().frame.notice.expect("what came of it").text
}

fn open_first(phone: &mut Phone) {
    phone.send(Action::Go { to: Place::Jobs });
    let Body::Jobs { jobs } = phone.screen().body else {
        panic!("the list")
    };
    phone.send(jobs.rows[0].open.action.clone());
}

fn note(phone: &mut Phone, plate: &str) {
    phone.send(Action::Go { to: Place::Vehicle });
    phone.type_in(FieldId::Plate, plate);
    phone.send(Action::Go { to: Place::Overview });
}

fn photo(phone: &mut Phone) {
    phone.send(Action::AddPhoto {
        from: PhotoSource::Gallery,
        about: PhotoSubject::Component {
            component: "valve".into(),
        },
    });
    let path = phone.dir().join("picked.png");
    let picture = image::DynamicImage::new_rgb8(320, 200);
    picture.save(&path).expect("a file");
    phone.asked.clear();
    phone.send(Action::PhotoTaken {
        path: path.to_string_lossy().into_owned(),
    });
}

/// The report's bytes.
fn report(phone: &mut Phone) -> Vec<u8> {
    phone.send(Action::Go { to: Place::Report });
    phone.asked.clear();
    phone.send(Action::MakeReport);
    let Body::Report { report } = phone.screen().body else {
        panic!("the report")
    };
    match report.state {
        holdfast_companion::ReportState::Ready { path, .. } => std::fs::read(path).expect("the report"),
        other => panic!("{other:?}"),
    }
}

#[test]
fn a_job_continued_on_two_phones_and_merged_both_ways_is_the_same_job_with_the_same_report() {
    let (mut one, mut two) = (Phone::new(), Phone::new());
    // The job names no workshop: that the other phone has one must not show.
    name_workshop(&mut two, "Kerbside Motor Works");
    one.begin_job();
    photo(&mut one);
    let bundle = exported(&mut one, ExportOf::Open);
    assert!(take_in(&mut two, &bundle).contains("1 job"));
    open_first(&mut two);
    let Body::Overview { .. } = two.screen().body else {
        panic!("the job stands where it was left: {:?}", two.screen().frame.title)
    };

    // Both go on, at different times.
    note(&mut one, "ONE 1");
    two.clock.wall_ms += 60_000;
    note(&mut two, "TWO 2");
    photo(&mut two);

    let (from_one, from_two) = (
        exported(&mut one, ExportOf::Open),
        exported(&mut two, ExportOf::Open),
    );
    take_in(&mut one, &from_two);
    take_in(&mut two, &from_one);
    let log = |phone: &mut Phone| {
        phone.send(Action::Go { to: Place::Log });
        let Body::Log { log } = phone.screen().body else {
            panic!("the log")
        };
        log.rows
    };
    let rows = log(&mut one);
    assert_eq!(rows, log(&mut two));
    assert!(
        rows.iter().any(|row| row.text.contains("ONE 1"))
            && rows.iter().any(|row| row.text.contains("TWO 2"))
    );
    one.send(Action::Go { to: Place::Overview });
    two.send(Action::Go { to: Place::Overview });
    assert_eq!(one.screen().body, two.screen().body);
    let (first, second) = (report(&mut one), report(&mut two));
    assert!(
        first.starts_with(b"%PDF") && first == second,
        "the reports differ"
    );
}

/// Types who works here and leaves the settings.
fn name_workshop(phone: &mut Phone, business: &str) {
    phone.send(Action::Go { to: Place::Settings });
    phone.type_in(FieldId::Business, business);
    phone.send(Action::Back);
}

/// The first text of the report: the letterhead where there is one.
fn report_begins_with(phone: &mut Phone) -> String {
    phone.send(Action::Go { to: Place::Report });
    phone.work();
    let Body::Report { report } = phone.screen().body else {
        panic!("the report")
    };
    let text = |item: &Item| match item {
        Item::Text { text, .. } => Some(text.clone()),
        _ => None,
    };
    report.pages[0].items.iter().find_map(text).expect("words")
}

#[test]
fn settings_left_on_a_phone_without_a_workshop_leave_the_one_that_the_job_names() {
    let (mut one, mut two) = (Phone::new(), Phone::new());
    name_workshop(&mut one, "Kerbside Motor Works");
    one.begin_job();
    let bundle = exported(&mut one, ExportOf::Open);
    take_in(&mut two, &bundle);
    open_first(&mut two);
    two.send(Action::Go { to: Place::Settings });
    two.pick(Pick::Speech);
    two.send(Action::Back);
    assert_eq!(report_begins_with(&mut two), "Kerbside Motor Works");
    // Both ways again: the same report on both.
    let back = exported(&mut two, ExportOf::Open);
    take_in(&mut one, &back);
    assert!(report(&mut one) == report(&mut two), "the reports differ");
    // Whoever named it can take it back.
    one.send(Action::Go { to: Place::Settings });
    one.type_in(FieldId::Business, "");
    one.send(Action::Back);
    assert!(report_begins_with(&mut one).contains("TEST 123"));
}

#[test]
fn what_a_report_leaves_out_travels_with_its_job() {
    let (mut one, mut two) = (Phone::new(), Phone::new());
    one.begin_job();
    photo(&mut one);
    one.hold("hold:branch", 19, "20", "19.9");
    let whole = report(&mut one);
    assert!(holds(&whole, b"readings.csv"));
    for id in ["record", "photos", "drawings"] {
        one.pick(Pick::ReportPart { id: id.into() });
    }
    one.pick(Pick::ReportPart {
        id: "drawings".into(),
    });
    let bare = report(&mut one);
    assert!(
        !holds(&bare, b"readings.csv"),
        "the readings go with the pages that show them"
    );
    assert!(bare.len() < whole.len());
    let bundle = exported(&mut one, ExportOf::Open);
    take_in(&mut two, &bundle);
    open_first(&mut two);
    assert!(bare == report(&mut two), "the reports differ");
    two.send(Action::Go { to: Place::Log });
    let Body::Log { log } = two.screen().body else {
        panic!("the log")
    };
    let last = log
        .rows
        .iter()
        .find(|row| row.text.starts_with("Reports without"));
    assert_eq!(
        last.expect("it is said").text,
        "Reports without: photos, full record"
    );
}

fn holds(file: &[u8], part: &[u8]) -> bool {
    file.windows(part.len()).any(|window| window == part)
}

#[test]
fn picked_jobs_travel_together_and_a_search_narrows_what_is_picked_from() {
    let (mut one, mut two) = (Phone::new(), Phone::new());
    for plate in ["AAA 1", "BBB 2", "CCC 3"] {
        one.send(Action::NewJob);
        one.type_in(FieldId::Plate, plate);
        one.send(Action::Go { to: Place::Jobs });
    }
    one.send(Action::SelectJobs);
    for plate in ["aaa", "ccc"] {
        one.type_in(FieldId::Search, plate);
        let Body::Jobs { jobs } = one.screen().body else {
            panic!("the list")
        };
        assert_eq!(jobs.rows.len(), 1, "{plate}");
        one.send(jobs.rows[0].open.action.clone());
    }
    one.type_in(FieldId::Search, "");
    let bundle = exported(&mut one, ExportOf::Picked);
    assert!(take_in(&mut two, &bundle).contains("2 jobs"));
    let Body::Jobs { jobs } = two.screen().body else {
        panic!("the list")
    };
    let plates: Vec<&str> = jobs.rows.iter().map(|row| row.plate.as_str()).collect();
    assert_eq!(plates, ["CCC 3", "AAA 1"]);
}

/// The plates that are listed.
fn plates(phone: &Phone) -> Vec<String> {
    let Body::Jobs { jobs } = phone.screen().body else {
        panic!("the list")
    };
    jobs.rows.iter().map(|row| row.plate.clone()).collect()
}

#[test]
fn jobs_are_found_between_two_days_that_were_typed() {
    let mut phone = Phone::new();
    // 2026-09-21, 15:13 and the same time of the next two days, where the phone is.
    for plate in ["AAA 1", "BBB 2", "CCC 3"] {
        phone.send(Action::NewJob);
        phone.type_in(FieldId::Plate, plate);
        phone.send(Action::Go { to: Place::Jobs });
        phone.clock.wall_ms += 86_400_000;
    }
    phone.send(Action::NarrowDown);
    phone.pick(Pick::WorkedOn { id: "between".into() });
    assert_eq!(plates(&phone).len(), 3, "nothing typed bounds nothing");
    phone.type_in(FieldId::WorkedFrom, "2026-09-22");
    assert_eq!(plates(&phone), ["CCC 3", "BBB 2"]);
    phone.type_in(FieldId::WorkedUntil, "2026-09-22");
    assert_eq!(plates(&phone), ["BBB 2"]);
    phone.type_in(FieldId::WorkedUntil, "2026-09");
    assert_eq!(plates(&phone), ["CCC 3", "BBB 2"]);
    phone.type_in(FieldId::WorkedFrom, "22 September");
    let Body::Jobs { jobs } = phone.screen().body else {
        panic!("the list")
    };
    assert!(jobs.dates[0].problem.is_some() && jobs.dates[1].problem.is_none());
    // What a search had in hand is on disk once anything else is done.
    phone.type_in(FieldId::WorkedFrom, "2026-09-23");
    phone.send(Action::Pause);
    let phone = phone.kill_and_reopen(1_000);
    assert_eq!(plates(&phone), ["CCC 3"]);
}

#[test]
fn what_is_no_bundle_is_refused_in_words_and_the_list_stays() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.send(Action::Go { to: Place::Jobs });
    let file = phone.dir().join("x.zip");
    std::fs::write(&file, b"PK but nothing else").expect("a file");
    let said = take_in(&mut phone, &file.to_string_lossy());
    assert!(said.contains("holds no jobs"), "{said}");
    let Body::Jobs { jobs } = phone.screen().body else {
        panic!("the list")
    };
    assert_eq!(jobs.rows.len(), 1);
}

#[test]
fn a_job_emptied_from_the_bin_is_gone_with_its_report_and_comes_back_only_when_asked_for() {
    let mut phone = Phone::new();
    phone.begin_job();
    photo(&mut phone);
    report(&mut phone);
    let bundle = exported(&mut phone, ExportOf::Open);
    let kept = phone.dir().join("kept.zip");
    std::fs::copy(bundle, &kept).expect("a copy");
    phone.send(Action::Go { to: Place::Jobs });
    let Body::Jobs { jobs } = phone.screen().body else {
        panic!("the list")
    };
    phone.send(jobs.rows[0].buttons[1].action.clone());
    phone.pick(Pick::Shelf { id: "bin".into() });
    // Not without being asked.
    phone.send(Action::EmptyBinForGood);
    let files = |phone: &Phone, folder: &str| {
        std::fs::read_dir(phone.dir().join(folder)).map_or(0, |files| files.count())
    };
    assert!(files(&phone, "photos") > 0);
    phone.send(Action::EmptyBin);
    phone.send(Action::EmptyBinForGood);
    assert_eq!(
        (
            files(&phone, "photos"),
            files(&phone, "reports"),
            files(&phone, "exports")
        ),
        (0, 0, 0)
    );
    phone.pick(Pick::Shelf { id: "all".into() });
    let count = |phone: &Phone| match phone.screen().body {
        Body::Jobs { jobs } => jobs.rows.len(),
        _ => panic!("the list"),
    };
    assert_eq!(count(&phone), 0);
    let said = take_in(&mut phone, &kept.to_string_lossy());
    assert!(said.contains("stays away"), "{said}");
    phone.asked.clear();
    phone.send(Action::TakeAgain);
    assert_eq!(count(&phone), 1);
}

#[test]
fn a_returning_vehicle_gets_a_new_job_with_its_name_and_circuit_and_none_of_its_readings() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.send(Action::Go { to: Place::Jobs });
    let Body::Jobs { jobs } = phone.screen().body else {
        panic!("the list")
    };
    phone.send(jobs.rows[0].buttons[0].action.clone());
    let Body::Vehicle { form } = phone.screen().body else {
        panic!("the vehicle")
    };
    let shown = format!("{form:?}");
    assert!(shown.contains("TEST 123") && shown.contains("Demo estate"));
    assert!(
        form.next.expect("a button").why_not.is_some(),
        "what is complained of is asked anew"
    );
    phone.send(Action::Go { to: Place::Jobs });
    let Body::Jobs { jobs } = phone.screen().body else {
        panic!("the list")
    };
    assert_eq!(jobs.rows.len(), 2);
}
