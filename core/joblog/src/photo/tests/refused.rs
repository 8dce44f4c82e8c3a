//! Pictures that are refused, and what is left of them: nothing.

use std::cell::RefCell;

use super::*;

/// A picture that says it has 20,000 by 10,000 pixels, in each format.
fn pictures_of_200_megapixels() -> [Vec<u8>; 3] {
    let mut jpeg = jpeg_of(&blocks());
    let frame = jpeg
        .windows(2)
        .position(|two| two == [0xFF, 0xC0] || two == [0xFF, 0xC2])
        .unwrap();
    jpeg[frame + 5..frame + 9].copy_from_slice(&[0x27, 0x10, 0x4E, 0x20]);
    let mut png = written(&DynamicImage::ImageRgb8(blocks()), ImageFormat::Png);
    let header = [
        20_000u32.to_be_bytes().as_slice(),
        &10_000u32.to_be_bytes(),
        &png[24..29],
    ]
    .concat();
    png.splice(8..33, chunk(b"IHDR", &header));
    let mut webp = written(&DynamicImage::ImageRgb8(blocks()), ImageFormat::WebP);
    // Lossless WebP: 14 bits of width less one, 14 of height less one.
    let bits = 15_999u32 | (15_999 << 14);
    webp[21..25].copy_from_slice(&bits.to_le_bytes());
    [jpeg, png, webp]
}

#[test]
fn pictures_with_too_many_pixels_are_refused_before_they_are_decoded() {
    for (bytes, pixels) in
        pictures_of_200_megapixels()
            .iter()
            .zip([200_000_000, 200_000_000, 16_000 * 16_000])
    {
        let (dir, refused) = import(bytes);
        assert!(
            matches!(refused, Err(ImportError::TooManyPixels { pixels: n, most: 64_000_000 }) if n == pixels),
            "{pixels}: {refused:?}"
        );
        assert!(files(&dir).is_empty());
    }
}

#[test]
fn a_file_that_is_too_large_is_refused_without_being_read() {
    let dir = tempfile::tempdir().unwrap();
    let file = dir.path().join("huge.jpg");
    File::create(&file).unwrap().set_len((64 << 20) + 1).unwrap();
    let refused = Photos::at(dir.path()).import(&file, &|_| true);
    assert!(matches!(refused, Err(ImportError::TooLarge { .. })));
}

#[test]
fn pictures_cut_off_anywhere_are_refused_and_nothing_is_kept() {
    let image = DynamicImage::ImageRgb8(blocks());
    let plain = jpeg_of(&blocks());
    for whole in [
        plain,
        written(&image, ImageFormat::Png),
        written(&image, ImageFormat::WebP),
    ] {
        for cut in (0..whole.len()).step_by(7).chain([whole.len() - 1]) {
            let (dir, refused) = import(&whole[..cut]);
            assert!(refused.is_err(), "cut at {cut}");
            assert!(files(&dir).is_empty());
        }
    }
}

#[test]
fn what_is_no_picture_is_refused_whatever_it_is_called() {
    for bytes in [
        b"".as_slice(),
        b"%PDF-1.7",
        b"GIF89a",
        b"PK\x03\x04",
        b"<svg/>",
        &[0xFF],
        &[0xFF, 0xD8],
    ] {
        assert!(
            matches!(import(bytes).1, Err(ImportError::NotAPicture)),
            "{bytes:?}"
        );
    }
    let missing = Photos::at(Path::new("/nowhere")).import(Path::new("/nowhere/at all"), &|_| true);
    assert!(matches!(missing, Err(ImportError::Io(_))));
}

#[test]
fn heif_is_known_as_such_so_that_the_phone_can_be_asked() {
    let file = |brands: &[u8]| {
        let length = u32::try_from(8 + brands.len()).unwrap().to_be_bytes();
        [&length, b"ftyp".as_slice(), brands, b"\0\0\0\x08meta"].concat()
    };
    for brands in [
        b"heic\0\0\0\0mif1heic".as_slice(),
        b"mif1\0\0\0\0",
        b"avif\0\0\0\0",
    ] {
        assert!(matches!(import(&file(brands)).1, Err(ImportError::Heif)));
    }
    let film = file(b"isom\0\0\x02\0isomiso2mp41");
    assert!(matches!(import(&film).1, Err(ImportError::NotAPicture)));
}

#[test]
fn moving_pictures_are_refused() {
    let mut webp = b"RIFF\x1a\0\0\0WEBPVP8X\x0a\0\0\0\x02\0\0\0\0\0\0\0\0\0".to_vec();
    webp.extend(b"ANIM\x06\0\0\0\0\0\0\0\0\0");
    let size = u32::try_from(webp.len() - 8).unwrap().to_le_bytes();
    webp[4..8].copy_from_slice(&size);
    assert!(matches!(import(&webp).1, Err(ImportError::Moving)));
}

#[test]
fn exif_that_points_anywhere_is_passed_over() {
    let good = tiff(6, true);
    assert_eq!(exif::orientation(&good), Some(6));
    for (at, value) in [
        (4, 0xFF),
        (5, 0xFF),
        (7, 0xFF),
        (8, 0xFF),
        (9, 0xFF),
        (0, b'X'),
        (2, 0),
        (32, 9),
    ] {
        let mut bad = good.clone();
        bad[at] = value;
        let read = exif::orientation(&bad);
        assert!(read.is_none() || read == Some(6), "{at}: {read:?}");
    }
    for cut in 0..32 {
        assert_eq!(exif::orientation(&good[..cut]), None, "{cut}");
    }
}

#[test]
fn import_stops_before_any_stage_and_keeps_nothing() {
    let stages = RefCell::new(Vec::new());
    let dir = tempfile::tempdir().unwrap();
    let file = dir.path().join("a");
    fs::write(&file, jpeg_of(&blocks())).unwrap();
    let photos = Photos::at(dir.path());
    photos
        .import(&file, &|stage| {
            stages.borrow_mut().push(stage);
            true
        })
        .unwrap();
    let stages = stages.into_inner();
    assert!(stages.is_sorted() && stages.len() == 4);
    for stop in stages {
        let dir = tempfile::tempdir().unwrap();
        let refused = Photos::at(dir.path()).import(&file, &|stage| stage != stop);
        assert!(matches!(refused, Err(ImportError::Stopped)));
        assert!(files(&dir).is_empty());
    }
}

#[test]
fn an_entry_that_names_a_path_finds_nothing() {
    let dir = tempfile::tempdir().unwrap();
    fs::write(dir.path().join("secret.jpg"), b"x").unwrap();
    fs::create_dir_all(dir.path().join("photos")).unwrap();
    let (_other, imported) = import(&jpeg_of(&blocks()));
    let mut photo = imported.unwrap().photo(Subject::Job, "");
    for name in ["../secret", "/etc/passwd", "", &"A".repeat(64)] {
        photo.sha256 = name.to_owned();
        assert_eq!(
            Photos::at(dir.path()).find(&photo, Rendition::Kept),
            None,
            "{name}"
        );
    }
}

mod fuzz {
    use proptest::prelude::*;

    use super::*;

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(200))]

        #[test]
        fn a_picture_with_any_bytes_changed_is_taken_or_refused_never_a_panic(
            which in 0usize..3,
            hits in proptest::collection::vec((any::<prop::sample::Index>(), any::<u8>()), 1..6),
        ) {
            let image = DynamicImage::ImageRgb8(blocks());
            let mut bytes = match which {
                0 => as_a_phone_writes(&blocks(), 6),
                1 => written(&image, ImageFormat::Png),
                _ => written(&image, ImageFormat::WebP),
            };
            for (at, value) in hits {
                let at = at.index(bytes.len());
                bytes[at] = value;
            }
            let (dir, imported) = import(&bytes);
            prop_assert_eq!(files(&dir).len(), if imported.is_ok() { 3 } else { 0 });
        }
    }
}
