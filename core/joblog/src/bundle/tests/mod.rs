mod hostile;
mod laws;

use std::fs::{self, File};
use std::io::{Read, Write};
use std::path::{Path, PathBuf};

use serde_json::Value;
use tempfile::TempDir;
use zip::write::SimpleFileOptions;
use zip::{ZipArchive, ZipWriter};

use super::*;
use crate::entry::{DeviceId, JobId, Stamp};
use crate::payload::{Note, Opened, Payload, Subject, Undo, Vehicle, VehicleKind};
use crate::{Rendition, Store, kind};

fn at(ms: i64) -> Stamp {
    Stamp {
        wall_ms: ms,
        offset_min: 60,
    }
}

struct Phone {
    dir: TempDir,
    store: Store,
}

impl Phone {
    fn new(device: u8) -> Self {
        let dir = tempfile::tempdir().unwrap();
        let store = Store::open_as(dir.path(), DeviceId([device; 16])).unwrap();
        Self { dir, store }
    }

    /// A job with a plate, a note and a photo that lies on its side.
    fn with_job(device: u8) -> (Self, JobId) {
        let mut phone = Self::new(device);
        let job = phone.store.new_job();
        let vehicle = Vehicle {
            plate: Some("HF-204".into()),
            label: Some("Van 2.0".into()),
            ..Vehicle::default()
        };
        phone.put(job, &Payload::Opened(Opened::by("0.1.0")));
        phone.put(job, &Payload::Vehicle(vehicle));
        phone.note(job, "hose off at the tee");
        phone.photo(job, 6, device);
        (phone, job)
    }

    fn put(&mut self, job: JobId, payload: &Payload) {
        self.store.append(job, payload, at(1_000)).unwrap();
    }

    fn note(&mut self, job: JobId, text: &str) {
        let note = Note {
            text: text.into(),
            about: Subject::Job,
        };
        self.put(job, &Payload::Note(note));
    }

    fn photo(&mut self, job: JobId, orientation: u8, shade: u8) {
        let file = self.dir.path().join("taken.jpg");
        fs::write(&file, crate::photo::tests::taken(orientation, shade)).unwrap();
        let taken = self.store.photos().import(&file, &|_| true).unwrap();
        fs::remove_file(file).unwrap();
        self.put(
            job,
            &Payload::Photo(taken.photo(Subject::Component("valve".into()), "here")),
        );
    }

    fn export(&self, selection: &Selection) -> PathBuf {
        let to = self.dir.path().join("exports/out.zip");
        self.store
            .exporter("0.1.0")
            .export(selection, &to, at(5_000), &mut |_| true)
            .unwrap();
        to
    }

    fn import(&self, bundle: &Path) -> Result<Received, BundleError> {
        self.store.importer().import(bundle, &mut |_| true)
    }
}

/// The files of a bundle, in order.
fn files_of(bundle: &Path) -> Vec<(String, Vec<u8>)> {
    let mut zip = ZipArchive::new(File::open(bundle).unwrap()).unwrap();
    (0..zip.len())
        .map(|at| {
            let mut part = zip.by_index(at).unwrap();
            let mut bytes = Vec::new();
            part.read_to_end(&mut bytes).unwrap();
            (part.name().unwrap().into_owned(), bytes)
        })
        .collect()
}

/// A zip of these files.
fn packed(dir: &Path, files: &[(String, Vec<u8>)]) -> PathBuf {
    let file = dir.join("made.zip");
    let mut zip = ZipWriter::new(File::create(&file).unwrap());
    for (name, bytes) in files {
        zip.start_file(name.as_str(), SimpleFileOptions::default())
            .unwrap();
        zip.write_all(bytes).unwrap();
    }
    zip.finish().unwrap();
    file
}

fn schema(part: &str) -> jsonschema::Validator {
    let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../docs/bundle.schema.json");
    let mut schema: Value = serde_json::from_slice(&fs::read(file).unwrap()).unwrap();
    let root = schema.as_object_mut().unwrap();
    root.remove("oneOf");
    root.insert("$ref".into(), format!("#/$defs/{part}").into());
    jsonschema::validator_for(&schema).unwrap()
}

fn fits(part: &str, json: &[u8]) -> bool {
    schema(part).is_valid(&serde_json::from_slice(json).unwrap())
}

#[test]
fn every_file_is_as_the_schema_says_and_in_the_documented_order() {
    let (phone, job) = Phone::with_job(1);
    let files = files_of(&phone.export(&Selection::Jobs(vec![job])));
    let names: Vec<&str> = files.iter().map(|(name, _)| name.as_str()).collect();
    assert_eq!(
        (names[0], names[2], names[3]),
        ("bundle.json", "entries.jsonl", "contents.json")
    );
    assert!(names[1].starts_with("photos/") && names.len() == 4, "{names:?}");
    assert!(fits("head", &files[0].1));
    assert!(fits("contents", &files[3].1));
    let lines: Vec<&[u8]> = files[2].1.split_inclusive(|b| *b == b'\n').collect();
    assert_eq!(lines.len(), 4);
    assert!(lines.iter().all(|line| fits("entry", line)));
    // The check can fail.
    assert!(!fits("head", br#"{"format":"holdfast-bundle","version":2}"#));
    assert!(!fits("entry", br#"{"key":"x"}"#));
    assert!(!fits("contents", &files[0].1));
}

#[test]
fn a_photo_that_lies_on_its_side_arrives_upright() {
    let (phone, job) = Phone::with_job(1);
    let other = Phone::new(2);
    let received = other.import(&phone.export(&Selection::Jobs(vec![job]))).unwrap();
    assert_eq!(
        (received.merged.added, received.photos, received.broken_photos),
        (4, 1, 0)
    );
    let photo = other.store.fold(job).unwrap().photos[0].value.photo.clone();
    for rendition in [Rendition::Kept, Rendition::Screen, Rendition::Print] {
        let read = |phone: &Phone| fs::read(phone.store.photos().find(&photo, rendition).unwrap()).unwrap();
        assert_eq!(read(&phone), read(&other));
    }
    assert!(!other.dir.path().join("photo-from-bundle.part").exists());
}

#[test]
fn a_job_takes_along_what_is_known_of_its_vehicle_kind_and_no_other_job() {
    let (mut phone, job) = Phone::with_job(1);
    let label = "van 2.0";
    let kind = kind::stream(label).unwrap();
    phone.put(kind, &Payload::VehicleKind(VehicleKind { label: label.into() }));
    phone.photo(kind, 1, 77);
    let strange = phone.store.new_job();
    phone.note(strange, "somebody else's");

    let other = Phone::new(2);
    other.import(&phone.export(&Selection::Jobs(vec![job]))).unwrap();
    assert_eq!(other.store.fold(kind).unwrap().kind.as_deref(), Some(label));
    assert_eq!(other.store.fold(kind).unwrap().photos.len(), 1);
    assert!(other.store.entries(strange).unwrap().is_empty());
    let rows = other.store.list(&crate::Query::default()).unwrap();
    assert_eq!(rows.len(), 1, "a vehicle kind is no job");
}

#[test]
fn several_jobs_and_the_whole_log_travel_together() {
    let (mut phone, one) = Phone::with_job(1);
    let [two, three] = [phone.store.new_job(), phone.store.new_job()];
    phone.note(two, "two");
    let three = if three == two { JobId([3; 16]) } else { three };
    phone.note(three, "three");
    phone.store.bin(three, at(9)).unwrap();
    let (some, all) = (Phone::new(2), Phone::new(3));
    some.import(&phone.export(&Selection::Jobs(vec![one, two])))
        .unwrap();
    assert_eq!(some.store.list(&crate::Query::default()).unwrap().len(), 2);
    all.import(&phone.export(&Selection::All)).unwrap();
    assert_eq!(
        all.store.all_entries().unwrap(),
        phone.store.all_entries().unwrap()
    );
}

#[test]
fn the_same_log_packs_to_the_same_bytes() {
    let (phone, _) = Phone::with_job(1);
    let first = fs::read(phone.export(&Selection::All)).unwrap();
    assert_eq!(first, fs::read(phone.export(&Selection::All)).unwrap());
}

#[test]
fn a_deleted_job_stays_away_until_it_is_asked_for() {
    let (mut phone, job) = Phone::with_job(1);
    let bundle = phone.export(&Selection::All);
    let kept = phone.dir.path().join("kept.zip");
    fs::rename(bundle, &kept).unwrap();
    phone.store.bin(job, at(2_000)).unwrap();
    phone.store.purge(job).unwrap();
    let received = phone.import(&kept).unwrap();
    assert_eq!((received.merged.added, received.merged.purged.len()), (0, 1));
    phone.store.allow_again(job).unwrap();
    assert_eq!(phone.import(&kept).unwrap().merged.added, 4);
}

#[test]
fn a_damaged_log_is_exported_as_far_as_it_reads() {
    let (mut phone, job) = Phone::with_job(1);
    for n in 0..400 {
        phone.note(job, &format!("note {n} {}", "x".repeat(300)));
    }
    let dir = phone.dir.path().to_owned();
    let before = phone.store.all_entries().unwrap().len();
    drop(phone.store);
    let file = dir.join("joblog.sqlite");
    let mut bytes = fs::read(&file).unwrap();
    let page = 4096;
    let hit = (1..bytes.len() / page)
        .find(|n| {
            bytes[n * page..(n + 1) * page]
                .windows(10)
                .any(|w| w == b"note 200 x")
        })
        .unwrap();
    bytes[hit * page..(hit + 1) * page].fill(0x5A);
    fs::write(&file, bytes).unwrap();
    // Not opened again: packed straight from the damaged file.
    let to = dir.join("out.zip");
    Exporter::new(&dir, "0.1.0")
        .export(&Selection::All, &to, at(1), &mut |_| true)
        .unwrap();
    let other = Phone::new(2);
    let received = other.import(&to).unwrap();
    assert!(
        (before - 40..before).contains(&received.merged.added),
        "{received:?}"
    );
    assert_eq!(received.photos, 1);
}

#[test]
fn both_ways_tell_how_far_they_are_and_can_be_stopped() {
    let (phone, _) = Phone::with_job(1);
    let to = phone.dir.path().join("out.zip");
    let mut told = Vec::new();
    let exporter = phone.store.exporter("0.1.0");
    exporter
        .export(&Selection::All, &to, at(1), &mut |permille| {
            told.push(permille);
            true
        })
        .unwrap();
    let other = Phone::new(2);
    other
        .store
        .importer()
        .import(&to, &mut |permille| {
            told.push(permille);
            true
        })
        .unwrap();
    assert!(told.iter().any(|p| (1..1_000).contains(p)) && told.iter().all(|p| *p <= 1_000));

    let stopped = exporter.export(
        &Selection::All,
        &phone.dir.path().join("no.zip"),
        at(1),
        &mut |_| false,
    );
    assert!(matches!(stopped, Err(BundleError::Stopped)));
    let left: Vec<_> = fs::read_dir(phone.dir.path())
        .unwrap()
        .map(|file| file.unwrap().file_name())
        .filter(|name| name.to_string_lossy().starts_with("no."))
        .collect();
    assert!(left.is_empty(), "{left:?}");
    let third = Phone::new(3);
    let stopped = third.store.importer().import(&to, &mut |_| false);
    assert!(matches!(stopped, Err(BundleError::Stopped)));
    assert!(third.store.all_entries().unwrap().is_empty());
}
