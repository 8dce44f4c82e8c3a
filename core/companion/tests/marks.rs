//! Marks on a photo by finger, and photos kept for the next job on the same kind of vehicle.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "a test ends loudly"
)]

mod phone;

use holdfast_companion::{
    Action, Body, FieldId, FormItem, PhotoScreen, PhotoSource, PhotoSubject, Pick, Place, Request, TestStage,
};
use phone::Phone;

/// A job with one photo of the valve, open. Its scene is 360 units wide and 240 high.
fn with_photo() -> Phone {
    let mut phone = Phone::new();
    phone.begin_job();
    add_photo(&mut phone);
    open_photo(&mut phone);
    phone
}

fn add_photo(phone: &mut Phone) {
    phone.send(Action::AddPhoto {
        from: PhotoSource::Gallery,
        about: PhotoSubject::Component {
            component: "valve".into(),
        },
    });
    let path = phone.dir().join("picked.png");
    let picture = image::RgbImage::from_fn(600, 400, |x, y| {
        image::Rgb([(x % 256) as u8, (y % 256) as u8, 120])
    });
    picture.save(&path).expect("a file");
    phone.asked.clear();
    phone.send(Action::PhotoTaken {
        path: path.to_string_lossy().into_owned(),
    });
}

fn open_photo(phone: &mut Phone) {
    phone.send(Action::Go { to: Place::Log });
    let Body::Log { log } = phone.screen().body else {
        panic!("the log")
    };
    let open = log.photos.iter().find_map(|item| match item {
        FormItem::Photo { photo } => Some(photo.open.clone()),
        _ => None,
    });
    phone.send(open.expect("the photo"));
}

fn shown(phone: &Phone) -> PhotoScreen {
    match phone.screen().body {
        Body::Photo { photo } => photo,
        other => panic!("{other:?}"),
    }
}

/// The regions of the marks: name and middle.
fn marks(phone: &Phone) -> Vec<(String, f32, f32)> {
    let region = |item: &holdfast_report::Item| match item {
        holdfast_report::Item::Region {
            at,
            width,
            height,
            label,
            ..
        } => Some((label.clone(), at.x + width / 2.0, at.y + height / 2.0)),
        _ => None,
    };
    shown(phone).scene.items.iter().filter_map(region).collect()
}

fn near(at: &(String, f32, f32), x: f32, y: f32) -> bool {
    (at.1 - x).abs() < 0.6 && (at.2 - y).abs() < 0.6
}

fn tool(phone: &mut Phone, id: &str) {
    phone.pick(Pick::MarkTool { id: id.into() });
}

#[test]
fn each_mark_is_set_where_the_finger_was() {
    let mut phone = with_photo();
    for (id, places, middle) in [
        ("ring", vec![(60.0, 60.0), (90.0, 60.0)], (60.0, 60.0)),
        ("arrow", vec![(300.0, 30.0), (250.0, 100.0)], (250.0, 100.0)),
        ("measure", vec![(20.0, 200.0), (120.0, 220.0)], (70.0, 210.0)),
        ("blur", vec![(300.0, 180.0), (340.0, 220.0)], (320.0, 200.0)),
        ("pin", vec![(180.0, 180.0)], (180.0, 180.0)),
        ("test-point", vec![(180.0, 60.0)], (180.0, 60.0)),
    ] {
        tool(&mut phone, id);
        phone.stroke(&places);
        let last = marks(&phone).pop().expect("a mark");
        assert!(near(&last, middle.0, middle.1), "{id}: {last:?}");
    }
    assert_eq!(marks(&phone).len(), 6);
    // The test point names what goes there in words.
    phone.pick(Pick::MarkStyle { id: "red".into() });
    phone.type_in(FieldId::MarkText, "pin 1");
    assert!(
        shown(&phone).scene.alt.contains("Red lead: pin 1"),
        "{}",
        shown(&phone).scene.alt
    );
}

#[test]
fn a_mark_is_dragged_by_its_middle_pulled_by_its_end_and_neither_is_logged_on_the_way() {
    let mut phone = with_photo();
    tool(&mut phone, "arrow");
    phone.stroke(&[(100.0, 100.0), (200.0, 100.0)]);
    let entries = |phone: &mut Phone| {
        let before = phone.screen();
        phone.send(Action::Go { to: Place::Log });
        let Body::Log { log } = phone.screen().body else {
            panic!("the log")
        };
        open_photo(phone);
        assert!(matches!(before.body, Body::Photo { .. }));
        log.rows.len()
    };
    let logged = entries(&mut phone);
    // By the shaft: both ends move.
    phone.stroke(&[(150.0, 100.0), (160.0, 120.0), (170.0, 140.0)]);
    assert!(near(&marks(&phone)[0], 220.0, 140.0), "{:?}", marks(&phone));
    // By the tip: only that.
    phone.stroke(&[(220.0, 140.0), (300.0, 60.0)]);
    assert!(near(&marks(&phone)[0], 300.0, 60.0), "{:?}", marks(&phone));
    assert_eq!(
        entries(&mut phone),
        logged + 2,
        "one entry for each time the finger left"
    );
    // Never out of the picture.
    phone.stroke(&[(300.0, 60.0), (900.0, -50.0)]);
    assert!(near(&marks(&phone)[0], 360.0, 0.0), "{:?}", marks(&phone));
}

#[test]
fn undo_goes_back_step_by_step_and_says_when_there_is_nothing_left() {
    let mut phone = with_photo();
    let undo = |phone: &Phone| shown(phone).undo;
    assert!(undo(&phone).why_not.is_some());
    tool(&mut phone, "ring");
    phone.stroke(&[(100.0, 100.0)]);
    phone.pick(Pick::MarkStyle { id: "blue".into() });
    tool(&mut phone, "pin");
    phone.stroke(&[(250.0, 150.0)]);
    for left in [1, 1, 0] {
        phone.send(undo(&phone).action);
        assert_eq!(marks(&phone).len(), left);
    }
    assert!(undo(&phone).why_not.is_some());
}

#[test]
fn the_mark_in_hand_gets_words_another_look_and_goes() {
    let mut phone = with_photo();
    tool(&mut phone, "measure");
    phone.stroke(&[(50.0, 50.0), (150.0, 50.0)]);
    phone.type_in(FieldId::MarkText, "35 cm");
    tool(&mut phone, "pin");
    phone.stroke(&[(250.0, 150.0)]);
    assert!(
        marks(&phone)[0].0.contains("35 cm"),
        "words are kept when another mark is taken up"
    );
    // Touching the measure takes it in hand again.
    phone.stroke(&[(100.0, 50.0)]);
    let panel = shown(&phone).mark.expect("the mark in hand");
    assert_eq!(panel.words.expect("its words").value, "35 cm");
    phone.send(panel.remove.action);
    assert_eq!(marks(&phone).len(), 1);
    assert!(shown(&phone).mark.is_none());
}

#[test]
fn fingers_on_screens_of_any_size_reach_the_same_marks() {
    let mut phone = with_photo();
    tool(&mut phone, "pin");
    phone.stroke(&[(180.0, 120.0)]);
    // Zoomed in, a finger covers less of the photo: beside the pin it sets a new one.
    phone.send(Action::Grab {
        x: 192.0,
        y: 120.0,
        reach: 4.0,
    });
    phone.send(Action::Release);
    assert_eq!(marks(&phone).len(), 2);
    // Not zoomed in it is on the pin.
    phone.send(Action::Grab {
        x: 174.0,
        y: 120.0,
        reach: 20.0,
    });
    phone.send(Action::Release);
    assert_eq!(marks(&phone).len(), 2);
}

#[test]
fn a_process_killed_while_a_mark_is_dragged_reopens_on_the_photo_without_that_drag() {
    let mut phone = with_photo();
    tool(&mut phone, "pin");
    phone.stroke(&[(180.0, 120.0)]);
    phone.send(Action::Grab {
        x: 180.0,
        y: 120.0,
        reach: 20.0,
    });
    phone.send(Action::Drag { x: 300.0, y: 200.0 });
    assert!(near(&marks(&phone)[0], 300.0, 200.0));
    let phone = phone.kill_and_reopen(1_000);
    assert!(near(&marks(&phone)[0], 180.0, 120.0), "{:?}", marks(&phone));
}

#[test]
fn a_photo_kept_for_the_vehicles_kind_shows_the_way_in_the_next_job_on_such_a_vehicle() {
    let mut phone = with_photo();
    tool(&mut phone, "test-point");
    phone.stroke(&[(180.0, 120.0)]);
    phone.send(Action::PromotePhoto);
    let told = |phone: &Phone| format!("{:?}", shown(phone).more);
    assert!(told(&phone).contains("Kept for every"), "{}", told(&phone));

    phone.send(Action::Go { to: Place::Jobs });
    phone.begin_job();
    let own = |phone: &mut Phone| {
        phone.send(Action::ShowTest {
            test: "valve-on".into(),
        });
        match phone.screen().body {
            Body::Test { test } if matches!(test.stage, TestStage::Brief { .. }) => test.own,
            other => panic!("{other:?}"),
        }
    };
    let photo = own(&mut phone).expect("the photo of the kind");
    assert!(photo.words.contains("it is here"), "{}", photo.words);
    assert!(photo.scene.alt.contains("Measure here"), "{}", photo.scene.alt);

    // On another kind of vehicle it is not shown.
    phone.send(Action::Go { to: Place::Vehicle });
    phone.type_in(FieldId::Label, "Another van");
    phone.send(Action::Go { to: Place::Overview });
    assert!(own(&mut phone).is_none());
    // The job's own photo comes before that of the kind.
    add_photo(&mut phone);
    assert!(
        own(&mut phone)
            .expect("the job's own")
            .words
            .contains("Your photo")
    );
}

#[test]
fn a_photo_that_is_no_longer_kept_for_the_kind_is_not_shown() {
    let mut phone = with_photo();
    phone.send(Action::PromotePhoto);
    phone.send(Action::PromotePhoto);
    assert!(format!("{:?}", shown(&phone).more).contains("Keep it for every"));
}

#[test]
fn a_shared_copy_has_the_marks_burnt_in_and_what_is_hidden_is_not_in_its_pixels() {
    let mut phone = with_photo();
    tool(&mut phone, "blur");
    phone.stroke(&[(90.0, 60.0), (270.0, 180.0)]);
    phone.asked.clear();
    phone.send(Action::SharePhoto);
    let path = phone.asked.iter().find_map(|request| match request {
        Request::Share { path, mime, .. } if mime == "image/png" => Some(path.clone()),
        _ => None,
    });
    let copy = image::open(path.expect("a copy")).expect("a picture").into_rgb8();
    assert_eq!(copy.dimensions(), (1_600, 1_067));
    // The red of the picture rises from pixel to pixel; in the box it stands in steps.
    let red = |x: u32| i32::from(copy.get_pixel(x, 533).0[0]);
    let rising = |from: u32, to: u32| {
        (from..to)
            .filter(|x| (2..=6).contains(&(red(x + 10) - red(*x))))
            .count()
    };
    assert!(
        rising(500, 1_100) < 150,
        "{} of 600 rise in the box",
        rising(500, 1_100)
    );
    assert!(rising(20, 380) > 300, "{} of 360 rise beside it", rising(20, 380));
}

#[test]
fn heif_goes_to_the_phone_to_be_decoded_and_what_it_can_t_is_said() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.send(Action::AddPhoto {
        from: PhotoSource::Gallery,
        about: PhotoSubject::Job,
    });
    let path = phone.dir().join("picked");
    std::fs::write(&path, b"\0\0\0\x18ftypheic\0\0\0\0mif1heic....").expect("a file");
    phone.asked.clear();
    phone.send(Action::PhotoTaken {
        path: path.to_string_lossy().into_owned(),
    });
    let asked = phone
        .asked
        .iter()
        .any(|request| matches!(request, Request::DecodePicture { path: p } if *p == path.to_string_lossy()));
    assert!(asked, "{:?}", phone.asked);
    phone.send(Action::PictureNotDecoded);
    assert!(
        phone
            .screen()
            .frame
            .notice
            .expect("why")
            .text
            .contains("can't read it")
    );
}
