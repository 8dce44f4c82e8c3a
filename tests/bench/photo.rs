//! Taking in a 12-megapixel photo, against Pillow doing the same, in pairs.

use std::fs;
use std::time::{Duration, Instant};

use holdfast_joblog::Store;
use image::{Rgb, RgbImage};
use jpeg_encoder::{ColorType, Encoder, SamplingFactor};

use crate::peer::Peer;
use crate::percentile::Times;
use crate::table::Row;

const RUNS: u32 = 20;
/// Pixels across and down.
const WIDTH: u16 = 4_000;
const HEIGHT: u16 = 3_000;

/// Imports different 12-megapixel photos that lie on their side, as phones write them; the peer gets each of them too, and
/// the two take turns in going first.
pub fn rows() -> Vec<Row> {
    let dir = tempfile::tempdir().expect("a folder");
    let photos = Store::open(&dir.path().join("log")).expect("a log").photos();
    let mut peer = Peer::start("photo_import.py");
    let (mut imports, mut pairs, mut drafts) = (Times::default(), Vec::new(), Vec::new());
    let import = |file: &std::path::Path| -> Duration {
        let start = Instant::now();
        photos.import(file, &|_| true).expect("the photo is taken in");
        start.elapsed()
    };
    for run in 0..RUNS {
        let file = dir.path().join(format!("photo-{run}.jpg"));
        fs::write(&file, taken(run)).expect("a file");
        let path = file.to_str().expect("a path");
        let mut ours = None;
        if run % 2 == 0 {
            ours = Some(import(&file));
        }
        let theirs = peer
            .as_mut()
            .map(|peer| (peer.time(path), peer.time(&format!("draft {path}"))));
        let ours = ours.unwrap_or_else(|| import(&file));
        // The first run warms both up.
        if run > 0 {
            imports.push(ours);
            if let Some((full, draft)) = theirs {
                pairs.push((ours, full));
                drafts.push((ours, draft));
            }
        }
    }
    let mut rows = vec![
        Row::wanted(
            "import of a 12 MP photo, median",
            "< 500 ms",
            imports.percentile_ms(0.5),
        ),
        Row::shown("import, slowest", imports.percentile_ms(1.0)),
    ];
    let what = "import as times as long as by Pillow (95 % interval)";
    if peer.is_some() {
        rows.push(Row::ratio(what, "reaches 1", &pairs));
        rows.push(Row::ratio("  where Pillow's decoder shrinks first", "", &drafts));
    } else {
        rows.push(Row::skipped(what, "cargo xtask bench fetches Pillow"));
    }
    rows
}

/// A JPEG of 12 megapixels with an EXIF block that says it lies on its side.
fn taken(seed: u32) -> Vec<u8> {
    let mut plain = Vec::new();
    let mut encoder = Encoder::new(&mut plain, 90);
    // Colour at half the resolution, as cameras write it.
    encoder.set_sampling_factor(SamplingFactor::F_2_2);
    encoder
        .encode(picture(seed).as_raw(), WIDTH, HEIGHT, ColorType::Rgb)
        .expect("a JPEG");
    // TIFF, little-endian: one field, tag 0x0112, SHORT, value 6.
    let exif = b"Exif\0\0II*\0\x08\0\0\0\x01\0\x12\x01\x03\0\x01\0\0\0\x06\0\0\0\0\0\0\0";
    let length = u16::try_from(exif.len() + 2).expect("short").to_be_bytes();
    let (start, rest) = plain.split_at(2);
    [start, &[0xFF, 0xE1], &length, exif, rest].concat()
}

/// A picture with detail everywhere, so that compression and decoding have their usual work.
fn picture(seed: u32) -> RgbImage {
    RgbImage::from_fn(WIDTH.into(), HEIGHT.into(), |x, y| {
        let grain = (x.wrapping_mul(2_654_435_761) ^ y.wrapping_mul(40_503) ^ seed.wrapping_mul(97)) >> 27;
        let wave = ((f64::from(x) / 37.0).sin() * (f64::from(y) / 53.0).cos() * 90.0 + 120.0) as u8;
        Rgb([wave.saturating_add(grain as u8), wave, (x / 16) as u8])
    })
}
