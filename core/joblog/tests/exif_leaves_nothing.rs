//! What a photo tells of place, device and time, checked by another library than the one that takes it out:
//! kamadak-exif writes the metadata and looks for them afterwards.
//!
//! Source: CIPA DC-008 (EXIF 2.32): 4.6.6 GPS attribute information, 4.6.5 and 4.6.4 the others.

#![allow(clippy::unwrap_used, reason = "a test that can't make its photo ends loudly")]

use std::fs;
use std::io::Cursor;
use std::path::Path;

use exif::experimental::Writer;
use exif::{Field, In, Reader, Tag, Value};
use holdfast_joblog::{Rendition, Store, Subject};
use image::codecs::jpeg::JpegEncoder;
use image::{Rgb, RgbImage};

/// Where and by what a phone says it took a picture.
fn telling() -> Vec<u8> {
    let degrees = |d: u32, m: u32, s: u32| {
        Value::Rational(
            [(d, 1), (m, 1), (s, 100)]
                .map(|(num, denom)| exif::Rational { num, denom })
                .to_vec(),
        )
    };
    let text = |words: &str| Value::Ascii(vec![words.as_bytes().to_vec()]);
    let fields = [
        (Tag::Make, text("INVENTED MAKER")),
        (Tag::Model, text("INVENTED MODEL")),
        (Tag::DateTimeOriginal, text("2026:11:27 10:11:12")),
        (Tag::BodySerialNumber, text("SERIAL 0815")),
        (Tag::Orientation, Value::Short(vec![6])),
        (Tag::GPSLatitudeRef, text("N")),
        (Tag::GPSLatitude, degrees(12, 34, 5_600)),
        (Tag::GPSLongitudeRef, text("E")),
        (Tag::GPSLongitude, degrees(65, 43, 2_100)),
    ]
    .map(|(tag, value)| Field {
        tag,
        ifd_num: In::PRIMARY,
        value,
    });
    let mut writer = Writer::new();
    for field in &fields {
        writer.push_field(field);
    }
    let mut block = Cursor::new(Vec::new());
    writer.write(&mut block, false).unwrap();
    block.into_inner()
}

fn photo() -> Vec<u8> {
    let image = RgbImage::from_fn(64, 48, |x, y| Rgb([x as u8 * 3, y as u8 * 5, 90]));
    let mut plain = Vec::new();
    JpegEncoder::new(&mut plain).encode_image(&image).unwrap();
    let body = [b"Exif\0\0".as_slice(), &telling()].concat();
    let length = u16::try_from(body.len() + 2).unwrap().to_be_bytes();
    [&plain[..2], &[0xFF, 0xE1], &length, &body, &plain[2..]].concat()
}

fn fields_of(bytes: &[u8]) -> Vec<String> {
    match Reader::new().read_from_container(&mut Cursor::new(bytes)) {
        Ok(exif) => exif.fields().map(|field| field.tag.to_string()).collect(),
        Err(_) => Vec::new(),
    }
}

#[test]
fn no_file_of_a_photo_tells_where_when_or_by_what_it_was_taken() {
    let before = fields_of(&photo());
    for told in [
        "Make",
        "GPSLatitude",
        "GPSLongitude",
        "BodySerialNumber",
        "DateTimeOriginal",
    ] {
        assert!(
            before.iter().any(|field| field == told),
            "{told} is not even there before"
        );
    }
    let dir = tempfile::tempdir().unwrap();
    let taken = dir.path().join("taken.jpg");
    fs::write(&taken, photo()).unwrap();
    let photos = Store::open(&dir.path().join("log")).unwrap().photos();
    let imported = photos.import(&taken, &|_| true).unwrap();
    assert_eq!(
        imported.orientation, 6,
        "which way is up is kept, beside the file"
    );
    let read = |path: &Path| fs::read(path).unwrap();
    for which in [Rendition::Kept, Rendition::Screen, Rendition::Print] {
        let bytes = read(&photos.find(&imported.photo(Subject::Job, ""), which).unwrap());
        assert_eq!(fields_of(&bytes), Vec::<String>::new(), "{which:?}");
        for words in ["INVENTED", "SERIAL", "2026:11:27", "Exif"] {
            assert!(
                !bytes.windows(words.len()).any(|w| w == words.as_bytes()),
                "{which:?}: {words}"
            );
        }
    }
}
