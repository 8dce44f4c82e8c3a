//! Bundles that are refused, each with nothing kept.

use super::*;
use crate::bundle::form::{CONTENTS, ENTRIES, HEAD};

type Files = Vec<(String, Vec<u8>)>;

/// A sound bundle's files.
fn sound() -> Files {
    let (phone, _) = Phone::with_job(1);
    files_of(&phone.export(&Selection::All))
}

fn refused(file: &Path) -> BundleError {
    let phone = Phone::new(9);
    let error = phone.import(file).unwrap_err();
    assert!(phone.store.all_entries().unwrap().is_empty(), "entries were kept");
    assert!(!phone.dir.path().join("photos").exists(), "photos were kept");
    error
}

/// What becomes of a sound bundle with its files changed.
fn changed(change: impl FnOnce(&mut Files)) -> BundleError {
    let mut files = sound();
    change(&mut files);
    let dir = tempfile::tempdir().unwrap();
    refused(&packed(dir.path(), &files))
}

fn position(files: &Files, name: &str) -> usize {
    files.iter().position(|(n, _)| n.starts_with(name)).unwrap()
}

#[test]
fn packed_again_unchanged_it_is_taken() {
    let dir = tempfile::tempdir().unwrap();
    let phone = Phone::new(9);
    assert_eq!(
        phone.import(&packed(dir.path(), &sound())).unwrap().merged.added,
        4
    );
}

#[test]
fn what_is_no_bundle() {
    let dir = tempfile::tempdir().unwrap();
    let file = dir.path().join("x");
    for bytes in [b"".as_slice(), b"PK", b"%PDF-1.7", &[0; 4_096]] {
        fs::write(&file, bytes).unwrap();
        assert!(matches!(refused(&file), BundleError::NotABundle), "{bytes:?}");
    }
    let zip = packed(dir.path(), &[("letter.txt".into(), b"hello".to_vec())]);
    assert!(matches!(refused(&zip), BundleError::NotABundle));
    assert!(matches!(refused(&dir.path().join("none")), BundleError::Log(_)));
}

#[test]
fn a_newer_format() {
    let error = changed(|files| {
        files[0].1 = br#"{"format":"holdfast-bundle","version":2,"more":true}"#.to_vec();
    });
    assert!(matches!(error, BundleError::Newer { found: 2, known: 1 }));
}

#[test]
fn one_cut_anywhere() {
    let (phone, _) = Phone::with_job(1);
    let whole = fs::read(phone.export(&Selection::All)).unwrap();
    let end = whole.windows(4).position(|w| w == b"PK\x01\x02").unwrap();
    let file = phone.dir.path().join("cut.zip");
    for length in (0..end).step_by(37).chain([end - 1]) {
        fs::write(&file, &whole[..length]).unwrap();
        let error = refused(&file);
        assert!(
            matches!(
                error,
                BundleError::NotABundle | BundleError::Truncated | BundleError::Damaged { .. }
            ),
            "{length} of {end}: {error:?}"
        );
    }
    // What is missing at a file's seam shows by the last file.
    assert!(matches!(
        changed(|files| files.truncate(3)),
        BundleError::Truncated
    ));
    assert!(matches!(
        changed(|files| {
            let at = position(files, "photos/");
            files.remove(at);
        }),
        BundleError::Damaged { .. }
    ));
    let no_entries = changed(|files| {
        let at = position(files, ENTRIES);
        files.remove(at);
    });
    assert!(matches!(no_entries, BundleError::WrongDigest { .. }));
}

#[test]
fn names_that_climb_or_that_no_bundle_holds() {
    for name in [
        "../../joblog.sqlite",
        "/etc/passwd",
        "photos/../../x.jpg",
        "photos/short.jpg",
        "..\\joblog.sqlite",
        "readme.txt",
    ] {
        let error = changed(|files| files.insert(1, (name.into(), b"x".to_vec())));
        assert!(matches!(error, BundleError::Strange { .. }), "{name}: {error:?}");
    }
    // The same name twice, which no honest packer writes.
    let mut files = sound();
    let entries = files[position(&files, ENTRIES)].1.clone();
    files.insert(1, ("entries.jsonL".into(), entries));
    let dir = tempfile::tempdir().unwrap();
    let file = packed(dir.path(), &files);
    let mut bytes = fs::read(&file).unwrap();
    let at = bytes.windows(13).position(|w| w == b"entries.jsonL").unwrap();
    bytes[at + 12] = b'l';
    fs::write(&file, bytes).unwrap();
    let twice = refused(&file);
    assert!(matches!(twice, BundleError::Strange { .. }), "{twice:?}");
}

#[test]
fn wrong_digests() {
    let photo = changed(|files| {
        let at = position(files, "photos/");
        files[at].1.push(0);
    });
    assert!(matches!(photo, BundleError::WrongDigest { .. }), "{photo:?}");
    let entries = changed(|files| {
        let at = position(files, ENTRIES);
        let text = String::from_utf8(files[at].1.clone()).unwrap();
        files[at].1 = text.replace("hose off", "hose on ").into_bytes();
    });
    assert!(matches!(entries, BundleError::WrongDigest { .. }), "{entries:?}");
}

#[test]
fn entries_that_are_none() {
    for line in ["{}\n", "not json\n", "[1]\n", "{\"key\":\"../x-1\"}\n"] {
        let error = changed(|files| {
            let at = position(files, ENTRIES);
            files[at].1.extend_from_slice(line.as_bytes());
        });
        assert!(matches!(error, BundleError::Damaged { .. }), "{line}: {error:?}");
    }
}

#[test]
fn zip_bombs() {
    // 16 MiB of nothing pack to 16 kB: in place of entries, of a photo, of the first and the last file.
    let nothing = vec![0; 16 << 20];
    let names = [ENTRIES, "photos/", HEAD, CONTENTS];
    for name in names {
        let error = changed(|files| {
            let at = position(files, name);
            files[at].1 = nothing.clone();
        });
        assert!(matches!(error, BundleError::TooLarge { .. }), "{name}: {error:?}");
    }
    // Many sound entries that pack very well.
    let error = changed(|files| {
        let at = position(files, ENTRIES);
        let line = files[at]
            .1
            .split_inclusive(|b| *b == b'\n')
            .next()
            .unwrap()
            .to_vec();
        files[at].1 = line.repeat(40_000);
    });
    assert!(matches!(error, BundleError::TooLarge { .. }), "{error:?}");
}

#[test]
fn a_photo_that_is_no_picture_is_left_out_and_the_rest_taken() {
    let mut files = sound();
    let at = position(&files, "photos/");
    let old = files[at].0.replace("photos/", "").replace(".jpg", "");
    let mut sum = crate::bundle::measured::Sum::default();
    sum.take(b"no picture");
    let (bytes, new) = (sum.bytes, sum.sha256());
    files[at] = (format!("photos/{new}.jpg"), b"no picture".to_vec());
    let last = position(&files, CONTENTS);
    let mut contents: Value = serde_json::from_slice(&files[last].1).unwrap();
    assert_eq!(contents["photos"][0]["sha256"], old);
    contents["photos"][0] = serde_json::json!({"sha256": new, "format": "jpeg", "bytes": bytes});
    files[last].1 = contents.to_string().into_bytes();
    let (dir, phone) = (tempfile::tempdir().unwrap(), Phone::new(9));
    let received = phone.import(&packed(dir.path(), &files)).unwrap();
    assert_eq!(
        (received.merged.added, received.photos, received.broken_photos),
        (4, 0, 1)
    );
}
