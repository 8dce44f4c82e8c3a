//! Forms and photos: what is typed and picked is kept, checked and logged once.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "a test ends loudly"
)]

mod phone;

use holdfast_companion::{
    Action, Body, FieldId, FormItem, FormScreen, PhotoSource, PhotoSubject, Pick, Picked, Place, Request,
};
use phone::Phone;

fn form(phone: &Phone) -> FormScreen {
    match phone.screen().body {
        Body::Vehicle { form } | Body::Prepare { form } | Body::Settings { form } => form,
        other => panic!("no form: {other:?}"),
    }
}

fn field(phone: &Phone, id: &FieldId) -> holdfast_companion::Field {
    form(phone)
        .sections
        .into_iter()
        .flat_map(|section| section.items)
        .find_map(|item| match item {
            FormItem::Entry { field } if field.id == *id => Some(field),
            _ => None,
        })
        .expect("the field")
}

fn picked(phone: &Phone, pick: &Pick) -> Picked {
    form(phone)
        .sections
        .into_iter()
        .flat_map(|section| section.items)
        .find_map(|item| match item {
            FormItem::Options { choice } => choice
                .options
                .into_iter()
                .find(|option| option.action == Action::Pick { pick: pick.clone() })
                .map(|option| option.picked),
            _ => None,
        })
        .expect("the option")
}

#[test]
fn nothing_and_a_complaint_exclude_each_other() {
    let mut phone = Phone::new();
    phone.send(Action::NewJob);
    let complaint = |id: &str| Pick::Complaint { id: id.into() };
    phone.pick(complaint("shake_idle"));
    phone.pick(complaint("clunk"));
    phone.pick(complaint("none"));
    assert_eq!(picked(&phone, &complaint("clunk")), Picked::No);
    phone.pick(complaint("clunk"));
    assert_eq!(picked(&phone, &complaint("none")), Picked::No);
    assert_eq!(picked(&phone, &complaint("clunk")), Picked::Yes);
}

#[test]
fn what_is_typed_survives_going_back_and_a_kill() {
    let mut phone = Phone::new();
    phone.send(Action::NewJob);
    phone.pick(Pick::Complaint { id: "clunk".into() });
    phone.type_in(FieldId::Label, "Demo \u{1f697} \u{5e9}\u{5dc}\u{5d5}\u{5dd}\u{7}");
    let mut phone = phone.kill_and_reopen(1_000);
    assert_eq!(
        field(&phone, &FieldId::Label).value,
        "Demo \u{1f697} \u{5e9}\u{5dc}\u{5d5}\u{5dd}"
    );
    phone.send(Action::Back);
    let Body::Jobs { jobs } = phone.screen().body else {
        panic!("no list")
    };
    assert_eq!(
        jobs.rows[0].vehicle,
        "Demo \u{1f697} \u{5e9}\u{5dc}\u{5d5}\u{5dd}"
    );
}

#[test]
fn a_name_of_ten_thousand_characters_is_cut() {
    let mut phone = Phone::new();
    phone.send(Action::NewJob);
    phone.type_in(FieldId::Customer, &"x".repeat(10_000));
    assert_eq!(field(&phone, &FieldId::Customer).value.chars().count(), 2_000);
}

#[test]
fn a_mount_can_be_added_and_a_part_taken_out() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.send(Action::Go { to: Place::Circuit });
    let before = phone.core.circuit().expect("a circuit").components.len();
    phone.pick(Pick::AddMount);
    assert_eq!(
        phone.core.circuit().expect("a circuit").components.len(),
        before + 2,
        "a mount and its hose"
    );
    phone.pick(Pick::RemoveComponent {
        component: "mount_2".into(),
    });
    assert_eq!(phone.core.circuit().expect("a circuit").components.len(), before);
    phone.pick(Pick::RemoveComponent {
        component: "valve".into(),
    });
    assert!(
        phone.screen().frame.notice.is_some(),
        "a circuit without its valve is none"
    );
    phone.pick(Pick::Property {
        property: "switched".into(),
        value: "supply".into(),
    });
    assert_eq!(
        picked(
            &phone,
            &Pick::Property {
                property: "switched".into(),
                value: "supply".into()
            }
        ),
        Picked::Yes
    );
}

#[test]
fn a_volume_typed_is_logged_on_leaving_and_one_out_of_range_is_not() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.send(Action::Go { to: Place::Circuit });
    let volume = FieldId::ChamberVolume {
        component: "front_mount".into(),
    };
    phone.type_in(volume.clone(), "91,5");
    phone.type_in(FieldId::HoseBore, "900");
    assert!(field(&phone, &FieldId::HoseBore).problem.is_some());
    phone.send(Action::Confirm);
    let circuit = phone.core.circuit().expect("a circuit");
    let mount = circuit.component(&"front_mount".into()).expect("the mount");
    assert!((mount.volume_cm3 - 91.5).abs() < 1e-9);
    phone.send(Action::Go { to: Place::Circuit });
    assert_eq!(field(&phone, &volume).value, "91,5", "as it was typed");
}

#[test]
fn the_barometer_fills_in_the_ambient_pressure_and_typing_wins() {
    let mut phone = Phone::new();
    phone.send(Action::NewJob);
    phone.pick(Pick::Complaint { id: "clunk".into() });
    let update = phone.send(Action::Confirm);
    assert!(update.requests.contains(&Request::ReadBarometer));
    phone.send(Action::BarometerRead { pa: 84_560.0 });
    assert_eq!(field(&phone, &FieldId::Ambient).value, "84.56");
    phone.type_in(FieldId::Ambient, "85");
    phone.tick_cautions();
    phone.send(Action::Confirm);
    assert_eq!(
        phone.core.situation().expect("a situation").place.ambient_kpa,
        Some(85.0)
    );
}

#[test]
fn a_barometer_gone_wrong_is_not_taken() {
    let mut phone = Phone::new();
    phone.send(Action::NewJob);
    phone.pick(Pick::Complaint { id: "clunk".into() });
    phone.send(Action::Confirm);
    phone.send(Action::BarometerRead { pa: f64::NAN });
    phone.send(Action::BarometerRead { pa: 5.0 });
    assert_eq!(field(&phone, &FieldId::Ambient).value, "");
}

#[test]
fn testing_starts_only_when_every_caution_is_ticked() {
    let mut phone = Phone::new();
    phone.send(Action::NewJob);
    phone.pick(Pick::Complaint { id: "clunk".into() });
    phone.send(Action::Confirm);
    phone.send(Action::Confirm);
    assert!(matches!(phone.screen().body, Body::Prepare { .. }));
    assert!(form(&phone).next.expect("a button").why_not.is_some());
    phone.tick_cautions();
    phone.send(Action::Confirm);
    assert!(matches!(phone.screen().body, Body::Overview { .. }));
}

#[test]
fn the_gauge_in_another_unit_has_the_usual_dial_there_and_keeps_its_limit() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.send(Action::Go { to: Place::Settings });
    phone.pick(Pick::GaugeUnit { symbol: "kPa".into() });
    assert_eq!(field(&phone, &FieldId::GaugeSpan).value, "100");
    assert_eq!(field(&phone, &FieldId::LimitDrop).value, "1.69");
    phone.send(Action::Back);
    let situation = phone.core.situation().expect("a situation");
    assert_eq!(situation.instruments.gauge.unit.symbol(), "kPa");
    assert!((situation.limit.drop_kpa - 1.69).abs() < 1e-9);
}

#[test]
fn settings_of_one_job_are_there_for_the_next() {
    let mut phone = Phone::new();
    phone.send(Action::Go { to: Place::Settings });
    phone.pick(Pick::Speech);
    phone.type_in(FieldId::Confidence, "90");
    phone.send(Action::Back);
    let mut phone = phone.kill_and_reopen(1_000);
    phone.begin_job();
    assert!((phone.core.situation().expect("a situation").confidence - 0.9).abs() < 1e-9);
    phone.begin_test("hold:branch");
    phone.asked.clear();
    phone.send(Action::Drag { x: 320.0, y: 200.0 });
    assert!(
        !phone.asked.iter().any(|r| matches!(r, Request::Speak { .. })),
        "speech was switched off"
    );
}

#[test]
fn the_record_says_which_instruments_what_was_agreed_and_what_torque() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.send(Action::Go { to: Place::Settings });
    phone.type_in(FieldId::GaugeIdentity, "SN 204, calibrated May 2026");
    phone.type_in(FieldId::MeterIdentity, "SN 7, not calibrated");
    phone.send(Action::Back);
    phone.send(Action::Go { to: Place::Vehicle });
    phone.pick(Pick::Profile {
        id: "mechanic".into(),
    });
    phone.type_in(FieldId::Agreed, "Tests up to 150, by phone");
    phone.send(Action::Confirm);
    phone.tick_cautions();
    phone.send(Action::Confirm);
    phone.send(Action::Go { to: Place::Finding });
    phone.send(Action::Repair {
        component: "front_mount".into(),
    });
    phone.type_in(FieldId::Torque, "55 N·m, service information");
    phone.send(Action::RepairDone);
    phone.send(Action::Go { to: Place::Log });
    let Body::Log { log } = phone.screen().body else {
        panic!("the log");
    };
    let all: Vec<&str> = log.rows.iter().map(|row| row.text.as_str()).collect();
    for wanted in [
        "SN 204, calibrated May 2026",
        "SN 7, not calibrated",
        "Tests up to 150, by phone",
        "55 N·m, service information",
    ] {
        assert!(
            all.iter().any(|text| text.contains(wanted)),
            "{wanted} in {all:?}"
        );
    }
}

/// A grey PNG of 2 × 1 pixels.
fn png() -> Vec<u8> {
    let mut bytes = Vec::new();
    image::DynamicImage::new_luma8(2, 1)
        .write_to(&mut std::io::Cursor::new(&mut bytes), image::ImageFormat::Png)
        .expect("a picture");
    bytes
}

#[test]
fn a_photo_is_taken_in_captioned_marked_and_taken_out() {
    let mut phone = Phone::new();
    phone.begin_job();
    let about = PhotoSubject::Test {
        test: "hold:branch".into(),
    };
    let update = phone.send(Action::AddPhoto {
        from: PhotoSource::Camera,
        about,
    });
    assert_eq!(update.requests, [Request::TakePhoto]);
    let path = phone.dir().join("shot.png");
    std::fs::write(&path, png()).expect("a file");
    phone.asked.clear();
    phone.send(Action::PhotoTaken {
        path: path.to_string_lossy().into_owned(),
    });
    phone.send(Action::Go { to: Place::Log });
    let Body::Log { log } = phone.screen().body else {
        panic!("no log")
    };
    let open = log
        .photos
        .iter()
        .find_map(|item| match item {
            FormItem::Photo { photo } => Some(photo.open.clone()),
            _ => None,
        })
        .expect("the photo");
    phone.send(open);
    phone.pick(Pick::MarkTool { id: "arrow".into() });
    phone.stroke(&[(10.0, 10.0), (100.0, 50.0)]);
    phone.pick(Pick::MarkTool { id: "pin".into() });
    phone.stroke(&[(250.0, 50.0)]);
    phone.type_in(FieldId::Caption, "Split end");
    let Body::Photo { photo } = phone.screen().body else {
        panic!("no photo")
    };
    let marked = photo.scene.items.len();
    phone.send(Action::Undo);
    let Body::Photo { photo } = phone.screen().body else {
        panic!("no photo")
    };
    assert!(photo.scene.items.len() < marked);
    let remove = photo.buttons.last().expect("a button").action.clone();
    phone.send(Action::Confirm);
    let Body::Log { log } = phone.screen().body else {
        panic!("no log")
    };
    assert!(format!("{:?}", log.photos).contains("Split end"));
    phone.send(Action::OpenPhoto {
        photo: match &remove {
            Action::RemovePhoto { photo } => photo.clone(),
            other => panic!("{other:?}"),
        },
    });
    phone.send(remove);
    let Body::Log { log } = phone.screen().body else {
        panic!("no log")
    };
    assert!(
        !log.photos
            .iter()
            .any(|item| matches!(item, FormItem::Photo { .. }))
    );
}

#[test]
fn a_file_that_is_no_picture_is_refused_with_the_reason() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.send(Action::AddPhoto {
        from: PhotoSource::Gallery,
        about: PhotoSubject::Job,
    });
    let path = phone.dir().join("not.jpg");
    std::fs::write(&path, b"hello").expect("a file");
    phone.asked.clear();
    phone.send(Action::PhotoTaken {
        path: path.to_string_lossy().into_owned(),
    });
    let notice = phone.screen().frame.notice.expect("the reason");
    assert!(notice.text.contains("JPEG"), "{}", notice.text);
}
