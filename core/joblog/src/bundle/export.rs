//! Packing jobs into a bundle: from a snapshot of its own, on any thread.

use std::collections::BTreeSet;
use std::fs::{self, File};
use std::io::Write;
use std::path::{Path, PathBuf};

use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, ZipWriter};

use super::VERSION;
use super::error::BundleError;
use super::form::{CONTENTS, Contents, ENTRIES, FORMAT, HEAD, Head, Packed, PackedPhoto, photo_name};
use super::measured::{Measured, Sum, copy};
use crate::entry::{Entry, JobId, Stamp};
use crate::error::UseError;
use crate::payload::PhotoFormat;
use crate::photo::{MOST_FILE_BYTES, Photos};
use crate::store::Snapshot;

/// Which jobs go into a bundle.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Selection {
    /// These, and what is known of their vehicle kinds.
    Jobs(Vec<JobId>),
    /// Everything in the log, what is in the bin too.
    All,
}

/// Packs bundles; a handle of its own, for use on another thread. From [`Store::exporter`](crate::Store::exporter).
#[derive(Debug, Clone)]
pub struct Exporter {
    dir: PathBuf,
    software: String,
}

/// How far it is.
struct Progress<'a> {
    go_on: &'a mut dyn FnMut(u16) -> bool,
    done: u64,
    of: u64,
}

impl Progress<'_> {
    /// One more thing is done.
    fn step(&mut self) -> Result<(), BundleError> {
        self.done += 1;
        let permille = (self.done * 1_000 / self.of.max(1)).min(1_000);
        if (self.go_on)(u16::try_from(permille).unwrap_or(1_000)) {
            Ok(())
        } else {
            Err(BundleError::Stopped)
        }
    }
}

impl Exporter {
    pub(crate) fn new(dir: &Path, software: &str) -> Self {
        Self {
            dir: dir.to_owned(),
            software: software.to_owned(),
        }
    }

    /// Writes the bundle `to`, whole or not at all. `go_on` is told how far it is, in thousandths, and says whether to
    /// go on. Where the log is damaged everything of the selection that can still be read is packed.
    ///
    /// # Errors
    /// [`BundleError::Stopped`]; [`BundleError::Log`] by what the system refused.
    pub fn export(
        &self,
        selection: &Selection,
        to: &Path,
        made: Stamp,
        go_on: &mut dyn FnMut(u16) -> bool,
    ) -> Result<(), BundleError> {
        if let Some(folder) = to.parent() {
            fs::create_dir_all(folder).map_err(BundleError::writing)?;
        }
        let half = to.with_extension("half");
        let whole = Snapshot::of_log(&self.dir).map_err(BundleError::from);
        let mut packed = whole.and_then(|snapshot| self.pack(&snapshot, selection, &half, made, go_on));
        if let Err(BundleError::Log(UseError::Damaged(_) | UseError::Database(_))) = packed {
            packed = self.pack(&Snapshot::of_readable(&self.dir), selection, &half, made, go_on);
        }
        let named = packed.and_then(|()| fs::rename(&half, to).map_err(BundleError::writing));
        if named.is_err() {
            let _gone = fs::remove_file(&half);
        }
        named
    }

    fn pack(
        &self,
        snapshot: &Snapshot,
        selection: &Selection,
        half: &Path,
        made: Stamp,
        go_on: &mut dyn FnMut(u16) -> bool,
    ) -> Result<(), BundleError> {
        let jobs = match selection {
            Selection::All => snapshot.all_jobs()?,
            Selection::Jobs(jobs) => snapshot.with_kinds(jobs)?,
        };
        let photos = snapshot.photos_of(&jobs)?;
        let mut progress = Progress {
            go_on,
            done: 0,
            of: u64::try_from(photos.len() + jobs.len()).unwrap_or(u64::MAX),
        };
        let mut zip = ZipWriter::new(File::create(half).map_err(BundleError::writing)?);
        let head = Head {
            format: FORMAT.to_owned(),
            version: VERSION,
            software: self.software.clone(),
            made_at_ms: made.wall_ms,
            offset_min: made.offset_min,
        };
        put_json(&mut zip, HEAD, &head)?;
        let photos = self.pack_photos(&mut zip, &photos, &mut progress)?;
        let entries = pack_entries(&mut zip, snapshot, &jobs, &mut progress)?;
        let contents = Contents {
            jobs: jobs.into_iter().collect(),
            entries,
            photos,
        };
        put_json(&mut zip, CONTENTS, &contents)?;
        let file = zip.finish().map_err(zipping)?;
        file.sync_all().map_err(BundleError::writing)
    }

    /// Packs those photos whose files are there; one that is missing stays missing.
    fn pack_photos(
        &self,
        zip: &mut ZipWriter<File>,
        digests: &BTreeSet<String>,
        progress: &mut Progress<'_>,
    ) -> Result<Vec<PackedPhoto>, BundleError> {
        let shelf = Photos::at(&self.dir);
        let mut packed = Vec::new();
        for sha256 in digests {
            progress.step()?;
            let Some((file, format)) = shelf.kept(sha256) else {
                continue;
            };
            // A file that no longer is what its name says would make the whole bundle refused.
            let mut found = Measured::new(File::open(&file).map_err(BundleError::writing)?, MOST_FILE_BYTES);
            let read = copy(&mut found, &mut std::io::sink());
            let bytes = found.sum.bytes;
            if read.is_err() || found.sum.sha256() != *sha256 {
                continue;
            }
            start(zip, &photo_name(sha256, format), CompressionMethod::Stored)?;
            copy(&mut File::open(&file).map_err(BundleError::writing)?, zip)?;
            packed.push(PackedPhoto {
                sha256: sha256.clone(),
                format,
                bytes,
            });
        }
        Ok(packed)
    }
}

fn pack_entries(
    zip: &mut ZipWriter<File>,
    snapshot: &Snapshot,
    jobs: &BTreeSet<JobId>,
    progress: &mut Progress<'_>,
) -> Result<Packed, BundleError> {
    start(zip, ENTRIES, CompressionMethod::Deflated)?;
    let (mut sum, mut count) = (Sum::default(), 0);
    for job in jobs {
        progress.step()?;
        for entry in snapshot.entries_of(*job)? {
            let line = line(&entry)?;
            sum.take(&line);
            zip.write_all(&line).map_err(BundleError::writing)?;
            count += 1;
        }
    }
    Ok(Packed {
        count,
        bytes: sum.bytes,
        sha256: sum.sha256(),
    })
}

fn line(entry: &Entry) -> Result<Vec<u8>, BundleError> {
    let mut line = serde_json::to_vec(entry).map_err(UseError::Body)?;
    line.push(b'\n');
    Ok(line)
}

fn put_json(zip: &mut ZipWriter<File>, name: &str, value: &impl serde::Serialize) -> Result<(), BundleError> {
    start(zip, name, CompressionMethod::Deflated)?;
    let text = serde_json::to_vec_pretty(value).map_err(UseError::Body)?;
    zip.write_all(&text).map_err(BundleError::writing)
}

fn start(zip: &mut ZipWriter<File>, name: &str, by: CompressionMethod) -> Result<(), BundleError> {
    let options = SimpleFileOptions::default()
        .compression_method(by)
        .large_file(name == ENTRIES);
    zip.start_file(name, options).map_err(zipping)
}

fn zipping(error: zip::result::ZipError) -> BundleError {
    match error {
        zip::result::ZipError::Io(error) => BundleError::writing(error),
        other => BundleError::writing(std::io::Error::other(other)),
    }
}

impl Photos {
    /// The kept file of a photo, by its digest alone.
    fn kept(&self, sha256: &str) -> Option<(PathBuf, PhotoFormat)> {
        PhotoFormat::ALL
            .into_iter()
            .find_map(|format| Some((self.kept_as(sha256, format)?, format)))
    }
}
