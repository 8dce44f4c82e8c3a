//! Taking in a 12-megapixel photo, against the decoding alone by the library it uses.

use std::time::Instant;

use holdfast_joblog::Store;
use image::{ImageFormat, Rgb, RgbImage};

use crate::percentile::Times;
use crate::table::Row;

const RUNS: u32 = 8;

/// Imports different 12-megapixel photos.
pub fn rows() -> Vec<Row> {
    let dir = tempfile::tempdir().expect("a folder");
    let photos = Store::open(&dir.path().join("log")).expect("a log").photos();
    let (mut imports, mut decodings) = (Times::default(), Times::default());
    for run in 0..RUNS {
        let file = dir.path().join("photo.jpg");
        picture(run)
            .save_with_format(&file, ImageFormat::Jpeg)
            .expect("a JPEG");
        let start = Instant::now();
        photos.import(&file, &|_| true).expect("the photo is taken in");
        imports.push(start.elapsed());
        let start = Instant::now();
        image::open(&file).expect("the photo decodes");
        decodings.push(start.elapsed());
    }
    vec![
        Row::wanted(
            "import of a 12 MP photo, median",
            "< 500 ms",
            imports.percentile_ms(0.5),
        ),
        Row::shown("import, slowest", imports.percentile_ms(1.0)),
        Row::shown(
            "decoding alone by the image library, median",
            decodings.percentile_ms(0.5),
        ),
    ]
}

/// A picture with detail everywhere, so that compression and decoding have their usual work.
fn picture(seed: u32) -> RgbImage {
    RgbImage::from_fn(4_000, 3_000, |x, y| {
        let grain = (x.wrapping_mul(2_654_435_761) ^ y.wrapping_mul(40_503) ^ seed) >> 27;
        let wave = ((f64::from(x) / 37.0).sin() * (f64::from(y) / 53.0).cos() * 90.0 + 120.0) as u8;
        Rgb([wave.saturating_add(grain as u8), wave, (x / 16) as u8])
    })
}
