//! Photos as the shell hands them over: good ones, and the others.

use holdfast_companion::{
    Action, Body, FormItem, PhotoSource, PhotoSubject, Place, Request, Update, WorkOutcome,
};
use holdfast_play::Shell;
use image::codecs::jpeg::JpegEncoder;
use image::{Rgb, RgbImage};

use crate::hands::{Phone, job, killed};

/// Hands a file over for the job, as the gallery would; the work it asks for is left to be done.
fn hand_over(phone: &mut Phone, bytes: &[u8]) -> Update {
    let file = phone.dir.path().join("picked.tmp");
    std::fs::write(&file, bytes).unwrap();
    phone.shell.send(Action::Go { to: Place::Log }).unwrap();
    let from = PhotoSource::Gallery;
    phone
        .shell
        .send(Action::AddPhoto {
            from,
            about: PhotoSubject::Job,
        })
        .unwrap();
    phone
        .shell
        .send_only(Action::PhotoTaken {
            path: file.to_str().unwrap().to_owned(),
        })
        .unwrap()
}

/// Runs the work, and tells its end if there is anybody left to tell.
fn work(phone: &mut Phone, update: &Update, tell: bool) -> Option<WorkOutcome> {
    let mut outcome = None;
    for request in &update.requests {
        let Request::Work { id } = request else { continue };
        outcome = phone.shell.core.work(*id).map(|work| work.run(&mut |_| {}));
        if tell {
            phone.shell.send(Action::WorkDone { id: *id }).unwrap();
        }
    }
    outcome
}

fn photos(shell: &mut Shell) -> usize {
    shell.send(Action::Go { to: Place::Log }).unwrap();
    shell.look_again();
    let Body::Log { log } = &shell.screen().body else {
        panic!("log expected")
    };
    log.photos
        .iter()
        .filter(|item| matches!(item, FormItem::Photo { .. }))
        .count()
}

fn jpeg() -> Vec<u8> {
    let mut bytes = Vec::new();
    let image = RgbImage::from_fn(300, 200, |x, y| Rgb([(x % 256) as u8, y as u8, 90]));
    JpegEncoder::new_with_quality(&mut bytes, 90)
        .encode_image(&image)
        .unwrap();
    bytes
}

#[test]
fn a_photo_is_taken_in_and_outlives_a_kill() {
    let mut phone = job();
    let update = hand_over(&mut phone, &jpeg());
    assert_eq!(work(&mut phone, &update, true), Some(WorkOutcome::Done));
    assert_eq!(photos(&mut phone.shell), 1);
    let mut phone = killed(phone, 1_000);
    assert_eq!(photos(&mut phone.shell), 1);
}

#[test]
fn what_is_no_picture_is_refused_with_words_and_nothing_is_kept() {
    let whole = jpeg();
    let mut huge = whole.clone();
    let frame = huge.windows(2).position(|two| two == [0xFF, 0xC0]).unwrap();
    huge[frame + 5..frame + 9].copy_from_slice(&[0x27, 0x10, 0x4E, 0x20]);
    for bad in [
        &b""[..],
        b"not a picture",
        b"GIF89a",
        &whole[..whole.len() / 2],
        &huge,
    ] {
        let mut phone = job();
        let entries = phone.shell.core.entries();
        let update = hand_over(&mut phone, bad);
        assert_eq!(work(&mut phone, &update, true), Some(WorkOutcome::Failed));
        let notice = phone.shell.core.screen().frame.notice;
        assert!(notice.is_some_and(|notice| !notice.text.is_empty()));
        assert_eq!(
            (photos(&mut phone.shell), phone.shell.core.entries()),
            (0, entries)
        );
    }
}

#[test]
fn killed_before_the_photo_was_logged_the_next_opening_sweeps_its_files() {
    let mut phone = job();
    let update = hand_over(&mut phone, &jpeg());
    // The work is done, its end never told.
    work(&mut phone, &update, false);
    let folder = phone.dir.path().join("photos");
    assert_eq!(std::fs::read_dir(&folder).unwrap().count(), 3);
    let mut phone = killed(phone, 1_000);
    assert_eq!(std::fs::read_dir(&folder).unwrap().count(), 0);
    assert_eq!(photos(&mut phone.shell), 0);
}
