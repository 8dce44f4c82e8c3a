mod refused;

use image::codecs::jpeg::JpegEncoder;
use image::{DynamicImage, ImageFormat, Rgb, RgbImage};
use tempfile::TempDir;

use super::*;
use crate::payload::{PhotoFormat, Subject};

/// Blocks of 32 pixels, `ABC` over `DEF`, each a colour of its own that a lossy picture keeps apart.
const BLOCK: u32 = 32;
const COLOURS: [(char, [u8; 3]); 6] = [
    ('A', [255, 0, 0]),
    ('B', [0, 255, 0]),
    ('C', [0, 0, 255]),
    ('D', [255, 255, 255]),
    ('E', [0, 0, 0]),
    ('F', [255, 255, 0]),
];

fn blocks() -> RgbImage {
    RgbImage::from_fn(3 * BLOCK, 2 * BLOCK, |x, y| {
        Rgb(COLOURS[usize::try_from(x / BLOCK + 3 * (y / BLOCK)).unwrap()].1)
    })
}

fn letters(file: &Path) -> Vec<String> {
    let image = image::open(file).unwrap().into_rgb8();
    let letter = |pixel: &Rgb<u8>| {
        let far = |colour: [u8; 3]| -> u32 {
            colour
                .iter()
                .zip(pixel.0)
                .map(|(a, b)| u32::from(a.abs_diff(b)).pow(2))
                .sum()
        };
        COLOURS.iter().min_by_key(|(_, colour)| far(*colour)).unwrap().0
    };
    (0..image.height() / BLOCK)
        .map(|row| {
            (0..image.width() / BLOCK)
                .map(|column| letter(image.get_pixel(column * BLOCK + BLOCK / 2, row * BLOCK + BLOCK / 2)))
                .collect()
        })
        .collect()
}

fn jpeg_of(image: &RgbImage) -> Vec<u8> {
    let mut bytes = Vec::new();
    JpegEncoder::new_with_quality(&mut bytes, 95)
        .encode_image(image)
        .unwrap();
    bytes
}

fn written(image: &DynamicImage, format: ImageFormat) -> Vec<u8> {
    let mut bytes = std::io::Cursor::new(Vec::new());
    image.write_to(&mut bytes, format).unwrap();
    bytes.into_inner()
}

/// A TIFF block as EXIF has it: a maker's name, the orientation, a place.
fn tiff(orientation: u16, little: bool) -> Vec<u8> {
    let two = |n: u16| if little { n.to_le_bytes() } else { n.to_be_bytes() };
    let four = |n: u32| if little { n.to_le_bytes() } else { n.to_be_bytes() };
    let mut out = if little { b"II".to_vec() } else { b"MM".to_vec() };
    out.extend(two(42));
    out.extend(four(8));
    out.extend(two(3));
    for (tag, kind, count, value) in [
        (0x010F, 2, 12, four(50)),
        (0x0112, 3, 1, [0; 4]),
        (0x8825, 4, 1, four(50)),
    ] {
        out.extend(two(tag));
        out.extend(two(kind));
        out.extend(four(count));
        if tag == 0x0112 {
            out.extend(two(orientation));
            out.extend([0, 0]);
        } else {
            out.extend(value);
        }
    }
    out.extend(four(0));
    out.extend(b"SECRETCAMERA GPSPLACE");
    out
}

fn segment(marker: u8, body: &[u8]) -> Vec<u8> {
    let length = u16::try_from(body.len() + 2).unwrap();
    [&[0xFF, marker], length.to_be_bytes().as_slice(), body].concat()
}

/// The picture as a phone would write it: EXIF, XMP, a colour profile, a comment, something after the end.
fn as_a_phone_writes(image: &RgbImage, orientation: u16) -> Vec<u8> {
    let plain = jpeg_of(image);
    [
        plain[..2].to_vec(),
        segment(
            0xE1,
            &[
                b"Exif\0\0",
                tiff(orientation, orientation.is_multiple_of(2)).as_slice(),
            ]
            .concat(),
        ),
        segment(0xE1, b"http://ns.adobe.com/xap/1.0/\0<x>SECRETXMP</x>"),
        segment(0xE2, b"ICC_PROFILE\0\x01\x01PROFILEBYTES"),
        segment(0xE2, b"MPF\0SECRETSECOND"),
        segment(0xED, b"Photoshop 3.0\0SECRETCAPTION"),
        segment(0xFE, b"SECRETCOMMENT"),
        plain[2..].to_vec(),
        jpeg_of(&RgbImage::new(8, 8)),
        b"SECRETFILM".to_vec(),
    ]
    .concat()
}

/// A small picture of one shade as a phone would write it.
pub(crate) fn taken(orientation: u8, shade: u8) -> Vec<u8> {
    let image = RgbImage::from_fn(48, 32, |x, y| Rgb([shade, (x * 5) as u8, (y * 7) as u8]));
    as_a_phone_writes(&image, orientation.into())
}

fn import(bytes: &[u8]) -> (TempDir, Result<Imported, ImportError>) {
    let dir = tempfile::tempdir().unwrap();
    let file = dir.path().join("from the camera");
    fs::write(&file, bytes).unwrap();
    let imported = Photos::at(dir.path()).import(&file, &|_| true);
    (dir, imported)
}

fn files(dir: &TempDir) -> Vec<String> {
    let Ok(read) = fs::read_dir(dir.path().join("photos")) else {
        return Vec::new();
    };
    let mut names: Vec<String> = read
        .map(|file| file.unwrap().file_name().into_string().unwrap())
        .collect();
    names.sort();
    names
}

fn file_of(dir: &TempDir, imported: &Imported, which: Rendition) -> PathBuf {
    Photos::at(dir.path())
        .find(&imported.photo(Subject::Job, ""), which)
        .unwrap()
}

#[test]
fn a_jpeg_keeps_its_pixels_to_the_bit_and_loses_what_it_tells() {
    let bytes = as_a_phone_writes(&blocks(), 1);
    let (dir, imported) = import(&bytes);
    let kept = fs::read(file_of(&dir, &imported.unwrap(), Rendition::Kept)).unwrap();
    let text = String::from_utf8_lossy(&kept);
    assert!(String::from_utf8_lossy(&bytes).contains("SECRETCAMERA"));
    assert!(!text.contains("SECRET") && !text.contains("GPS") && !text.contains("Exif"));
    assert!(
        text.contains("PROFILEBYTES"),
        "the colour profile is part of the pixels' meaning"
    );
    let pixels = |bytes: &[u8]| image::load_from_memory(bytes).unwrap().into_rgb8().into_raw();
    assert_eq!(pixels(&kept), pixels(&jpeg_of(&blocks())));
    // All that makes the pixels, byte by byte: from the first table to the end of the picture.
    let plain = jpeg_of(&blocks());
    let tables = plain.windows(2).position(|two| two == [0xFF, 0xDB]).unwrap();
    assert!(kept.ends_with(&plain[tables..]));
}

/// Source: CIPA DC-008 (EXIF), tag 0x0112; the letters as Pillow's `ImageOps.exif_transpose` shows them.
#[test]
fn all_eight_orientations_are_shown_upright() {
    let expected = [
        ["ABC", "DEF"].as_slice(),
        &["CBA", "FED"],
        &["FED", "CBA"],
        &["DEF", "ABC"],
        &["AD", "BE", "CF"],
        &["DA", "EB", "FC"],
        &["FC", "EB", "DA"],
        &["CF", "BE", "AD"],
    ];
    for (orientation, shown) in (1u16..).zip(expected) {
        let (dir, imported) = import(&as_a_phone_writes(&blocks(), orientation));
        let imported = imported.unwrap();
        assert_eq!(u16::from(imported.orientation), orientation);
        let size = (
            u32::try_from(shown[0].len()).unwrap() * BLOCK,
            u32::try_from(shown.len()).unwrap() * BLOCK,
        );
        assert_eq!((imported.width, imported.height), size, "{orientation}");
        for which in [Rendition::Screen, Rendition::Print] {
            assert_eq!(letters(&file_of(&dir, &imported, which)), shown, "{orientation}");
        }
        assert_eq!(letters(&file_of(&dir, &imported, Rendition::Kept)), expected[0]);
    }
}

#[test]
fn png_and_webp_are_taken_without_their_metadata() {
    let image = DynamicImage::ImageRgb8(blocks());
    let mut png = written(&image, ImageFormat::Png);
    let after_header = 8 + 12 + 13;
    png.splice(after_header..after_header, chunk(b"tEXt", b"Author\0SECRET"));
    png.splice(after_header..after_header, chunk(b"eXIf", &tiff(6, true)));
    png.extend(b"SECRETTAIL");
    let plain = written(&image, ImageFormat::WebP);
    let exif = tiff(6, false);
    let mut webp = [
        b"RIFF\0\0\0\0WEBP".as_slice(),
        b"VP8X\x0a\0\0\0\x0c\0\0\0\x5f\0\0\x3f\0\0",
        &plain[12..],
    ]
    .concat();
    webp.extend(
        [
            b"EXIF",
            u32::try_from(exif.len()).unwrap().to_le_bytes().as_slice(),
            &exif,
        ]
        .concat(),
    );
    if exif.len() % 2 == 1 {
        webp.push(0);
    }
    let size = u32::try_from(webp.len() - 8).unwrap().to_le_bytes();
    webp[4..8].copy_from_slice(&size);

    for (bytes, format) in [(png, PhotoFormat::Png), (webp, PhotoFormat::Webp)] {
        let (dir, imported) = import(&bytes);
        let imported = imported.unwrap();
        assert_eq!((imported.format, imported.orientation), (format, 6));
        assert_eq!(
            letters(&file_of(&dir, &imported, Rendition::Print)),
            ["DA", "EB", "FC"]
        );
        let kept = fs::read(file_of(&dir, &imported, Rendition::Kept)).unwrap();
        assert!(!String::from_utf8_lossy(&kept).contains("SECRET"));
        assert_eq!(
            image::load_from_memory(&kept).unwrap().into_rgb8(),
            blocks(),
            "{format:?}"
        );
    }
}

#[test]
fn transparent_parts_are_shown_on_white() {
    let clear = image::RgbaImage::from_pixel(8, 8, image::Rgba([10, 20, 30, 0]));
    let (dir, imported) = import(&written(&DynamicImage::ImageRgba8(clear), ImageFormat::Png));
    let shown = image::open(file_of(&dir, &imported.unwrap(), Rendition::Screen))
        .unwrap()
        .into_rgb8();
    assert!(
        shown
            .pixels()
            .all(|pixel| pixel.0.iter().all(|value| *value > 250))
    );
}

#[test]
fn renditions_are_no_larger_than_their_bounds_and_never_blown_up() {
    let wide = RgbImage::from_fn(2_400, 900, |x, _| Rgb([u8::try_from(x % 256).unwrap(), 90, 90]));
    let (dir, imported) = import(&jpeg_of(&wide));
    let imported = imported.unwrap();
    let size = |which| image::image_dimensions(file_of(&dir, &imported, which)).unwrap();
    assert_eq!(
        (size(Rendition::Screen), size(Rendition::Print)),
        ((1_080, 405), (1_600, 600))
    );
    let (dir, imported) = import(&jpeg_of(&blocks()));
    let size = image::image_dimensions(file_of(&dir, &imported.unwrap(), Rendition::Print)).unwrap();
    assert_eq!(size, (96, 64));
}

/// Source: averaging over areas keeps the sum; checked against the mean of the picture itself.
#[test]
fn making_smaller_keeps_the_mean_and_thin_lines() {
    let lines = RgbImage::from_fn(1_000, 700, |x, y| {
        if (x + y).is_multiple_of(10) {
            Rgb([255; 3])
        } else {
            Rgb([0; 3])
        }
    });
    let mean = |image: &RgbImage| {
        image.as_raw().iter().map(|value| f64::from(*value)).sum::<f64>() / image.as_raw().len() as f64
    };
    let small = rendition::fit(&lines, 333);
    assert_eq!(small.dimensions(), (333, 233));
    assert!(
        (mean(&small) - mean(&lines)).abs() < 0.6,
        "{} {}",
        mean(&small),
        mean(&lines)
    );
    let even = rendition::fit(&RgbImage::from_pixel(1_234, 777, Rgb([7, 99, 254])), 100);
    assert!(even.pixels().all(|pixel| pixel.0 == [7, 99, 254]));
}

#[test]
fn the_same_picture_taken_twice_is_kept_once() {
    let dir = tempfile::tempdir().unwrap();
    let photos = Photos::at(dir.path());
    let mut taken = Vec::new();
    for (name, orientation) in [("a", 1), ("b", 1)] {
        let file = dir.path().join(name);
        fs::write(&file, as_a_phone_writes(&blocks(), orientation)).unwrap();
        taken.push(photos.import(&file, &|_| true).unwrap());
    }
    assert_eq!(taken[0], taken[1]);
    assert_eq!(files(&dir).len(), 3);
    assert_eq!(files(&dir)[0], format!("{}.jpg", taken[0].sha256));
    let kept = fs::read(file_of(&dir, &taken[0], Rendition::Kept)).unwrap();
    assert_eq!(digest::of(&kept), taken[0].sha256);
}

fn chunk(kind: &[u8; 4], body: &[u8]) -> Vec<u8> {
    let mut crc = u32::MAX;
    for byte in kind.iter().chain(body) {
        crc ^= u32::from(*byte);
        for _ in 0..8 {
            crc = if crc & 1 == 1 {
                (crc >> 1) ^ 0xEDB8_8320
            } else {
                crc >> 1
            };
        }
    }
    [
        u32::try_from(body.len()).unwrap().to_be_bytes().as_slice(),
        kind,
        body,
        (!crc).to_be_bytes().as_slice(),
    ]
    .concat()
}
