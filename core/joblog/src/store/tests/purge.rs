use std::fs;

use super::*;
use crate::payload::{Photo, PhotoFormat};

fn photo(sha256: &str) -> Payload {
    Payload::Photo(Photo {
        sha256: sha256.into(),
        format: PhotoFormat::Jpeg,
        width: 4,
        height: 3,
        orientation: 1,
        about: Subject::Job,
        caption: String::new(),
        marks: vec![],
    })
}

fn put_files(dir: &TempDir, sha256: &str) -> [std::path::PathBuf; 3] {
    let photos = dir.path().join("photos");
    fs::create_dir_all(&photos).unwrap();
    ["jpg", "screen.jpg", "print.jpg"].map(|end| {
        let file = photos.join(format!("{sha256}.{end}"));
        fs::write(&file, b"picture").unwrap();
        file
    })
}

#[test]
fn a_binned_job_is_listed_in_the_bin_and_comes_back() {
    let (_dir, mut store) = new_log();
    let job = store.new_job();
    store.append(job, &plate("HF-204"), at(1)).unwrap();
    store.bin(job, at(2)).unwrap();
    let shelf = |store: &Store, shelf| {
        store
            .list(&Query {
                shelf,
                ..Query::default()
            })
            .unwrap()
            .len()
    };
    assert_eq!((shelf(&store, Shelf::All), shelf(&store, Shelf::Bin)), (0, 1));
    assert!(store.unbin(job, at(3)).unwrap().is_some());
    assert_eq!((shelf(&store, Shelf::All), shelf(&store, Shelf::Bin)), (1, 0));
    assert!(store.unbin(job, at(4)).unwrap().is_none());
}

#[test]
fn a_purged_job_leaves_nothing_in_any_file_but_its_id() {
    let (dir, mut store) = new_log();
    let (job, other) = (store.new_job(), store.new_job());
    store.append(job, &plate("SECRETPLATE77"), at(1)).unwrap();
    let fill = (0..200).map(|n| (other, note(&format!("filler {n}")))).collect();
    store
        .write(
            &Write {
                entries: fill,
                session: None,
            },
            at(2),
        )
        .unwrap();
    store
        .append(job, &note("SECRETNOTE88 about a person"), at(3))
        .unwrap();
    let mut store = reopened(&dir, store); // makes the spare copy
    assert!(contains(&all_bytes(dir.path()), "SECRETNOTE88"));
    store.bin(job, at(4)).unwrap();
    store.purge(job).unwrap();
    let left = all_bytes(dir.path());
    for text in ["SECRETPLATE77", "secretplate77", "SECRETNOTE88", "secretnote88"] {
        assert!(!contains(&left, text), "{text}");
    }
    assert_eq!(store.purged().unwrap(), [job]);
    assert_eq!(
        (
            store.entries(job).unwrap().len(),
            store.entries(other).unwrap().len()
        ),
        (0, 200)
    );
    let store = reopened(&dir, store);
    assert!(!contains(&all_bytes(dir.path()), "SECRETNOTE88"));
    assert_eq!(derived_rows(&store), rebuilt_rows(&store));
}

#[test]
fn a_purge_takes_the_photos_that_no_other_job_names() {
    let (dir, mut store) = new_log();
    let (job, other) = (store.new_job(), store.new_job());
    let (own, shared) = ("a".repeat(64), "b".repeat(64));
    let (own_files, shared_files) = (put_files(&dir, &own), put_files(&dir, &shared));
    store.append(job, &photo(&own), at(1)).unwrap();
    store.append(job, &photo(&shared), at(1)).unwrap();
    store.append(other, &photo(&shared), at(1)).unwrap();
    store.bin(job, at(2)).unwrap();
    store.purge(job).unwrap();
    assert!(own_files.iter().all(|file| !file.exists()));
    assert!(shared_files.iter().all(|file| file.exists()));
}

#[test]
fn a_purged_job_does_not_come_back_by_a_merge_unless_asked_for() {
    let (_dir, mut store) = new_log();
    let job = store.new_job();
    store.append(job, &plate("HF-204"), at(1)).unwrap();
    let bundle = store.all_entries().unwrap();
    store.bin(job, at(2)).unwrap();
    store.purge(job).unwrap();
    let merged = store.merge(&bundle).unwrap();
    assert_eq!((merged.added, merged.purged.len()), (0, 1));
    assert!(matches!(
        store.append(job, &note("x"), at(3)),
        Err(UseError::Purged { .. })
    ));
    store.allow_again(job).unwrap();
    assert_eq!(store.merge(&bundle).unwrap().added, 1);
}

#[test]
fn a_job_that_is_not_in_the_bin_is_not_purged() {
    let (_dir, mut store) = new_log();
    let job = store.new_job();
    store.append(job, &opened(), at(1)).unwrap();
    assert!(matches!(store.purge(job), Err(UseError::NotBinned { .. })));
    assert_eq!(store.entries(job).unwrap().len(), 1);
}

#[test]
fn counters_of_purged_entries_are_not_given_again() {
    let (dir, mut store) = new_log();
    let job = store.new_job();
    store.append(job, &opened(), at(1)).unwrap();
    store.bin(job, at(2)).unwrap();
    store.purge(job).unwrap();
    let mut store = reopened(&dir, store);
    let job = store.new_job();
    assert_eq!(store.append(job, &opened(), at(3)).unwrap().key.counter, 3);
}

#[test]
fn orphans_and_half_written_files_are_swept_on_opening_named_and_foreign_ones_stay() {
    let (dir, mut store) = new_log();
    let job = store.new_job();
    let (named, undone, newer, orphan) = ("a".repeat(64), "b".repeat(64), "c".repeat(64), "d".repeat(64));
    store.append(job, &photo(&named), at(1)).unwrap();
    let taken_back = store.append(job, &photo(&undone), at(2)).unwrap();
    store.undo(job, taken_back.key, at(3)).unwrap();
    let strange = Entry {
        key: EntryKey {
            device: DeviceId([5; 16]),
            counter: 1,
        },
        kind: "hologram".into(),
        v: 3,
        body: format!("{{\"file\":\"{newer}\"}}"),
        ..taken_back
    };
    store.merge(&[strange]).unwrap();
    let kept: Vec<_> = [&named, &undone, &newer]
        .into_iter()
        .flat_map(|sha| put_files(&dir, sha))
        .collect();
    let gone = put_files(&dir, &orphan);
    let half = dir.path().join("photos").join(format!("{named}.jpg.part"));
    let foreign = dir.path().join("photos").join("holiday.jpg");
    fs::write(&half, b"half").unwrap();
    fs::write(&foreign, b"mine").unwrap();
    reopened(&dir, store);
    assert!(kept.iter().all(|file| file.exists()));
    assert!(gone.iter().all(|file| !file.exists()) && !half.exists());
    assert!(foreign.exists());
}

#[test]
fn the_emptied_bin_takes_its_jobs_and_their_photos_and_no_others() {
    let (dir, mut store) = new_log();
    let [gone, stays] = [JobId([1; 16]), JobId([2; 16])];
    let [own, shared] = ["a".repeat(64), "b".repeat(64)];
    for (job, sha256) in [(gone, &own), (gone, &shared), (stays, &shared)] {
        store.append(job, &photo(sha256), at(1)).unwrap();
    }
    let (own_files, shared_files) = (put_files(&dir, &own), put_files(&dir, &shared));
    store.bin(gone, at(2)).unwrap();
    assert_eq!(store.empty_bin().unwrap(), [gone]);
    assert!(own_files.iter().all(|file| !file.exists()));
    assert!(shared_files.iter().all(|file| file.exists()));
    assert_eq!(store.purged().unwrap(), [gone]);
    assert!(store.empty_bin().unwrap().is_empty());
}
