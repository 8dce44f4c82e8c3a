//! Taking a bundle in: looked over whole before anything of it is kept.

use std::collections::BTreeMap;
use std::fs::{self, File};
use std::io::Read;
use std::path::{Path, PathBuf};

use super::error::BundleError;
use super::measured::copy;
use super::read::{MOST_PHOTOS, Takes, read};
use crate::entry::Entry;
use crate::payload::{Content, Payload, PhotoFormat};
use crate::photo::{ImportError, Photos};
use crate::store::{Beside, Merged};

/// Takes bundles in; a handle of its own, for use on another thread. From [`Store::importer`](crate::Store::importer).
#[derive(Debug, Clone)]
pub struct Importer {
    dir: PathBuf,
    can_write: bool,
}

/// What came of taking a bundle in.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Received {
    /// What became of its entries.
    pub merged: Merged,
    /// Photos that were new.
    pub photos: usize,
    /// Photos whose files are no pictures that can be shown: left out, and shown as missing.
    pub broken_photos: usize,
}

/// Share of the progress that looking a bundle over takes, thousandths.
const LOOKING: u64 = 300;

/// How far it is: the bytes of the bundle's file, gone through twice.
struct Progress<'a> {
    go_on: &'a mut dyn FnMut(u16) -> bool,
    whole: u64,
}

impl Progress<'_> {
    fn at(&mut self, bytes: u64, from: u64, to: u64) -> Result<(), BundleError> {
        let permille = from + bytes.min(self.whole) * (to - from) / self.whole.max(1);
        if (self.go_on)(u16::try_from(permille).unwrap_or(1_000)) {
            Ok(())
        } else {
            Err(BundleError::Stopped)
        }
    }
}

impl Importer {
    pub(crate) fn new(dir: &Path, can_write: bool) -> Self {
        Self {
            dir: dir.to_owned(),
            can_write,
        }
    }

    /// Takes a bundle in: the log is then the union of both. `go_on` is told how far it is, in thousandths, and says
    /// whether to go on. Broken off in the middle, what was taken in so far stays; the same bundle brings the rest.
    ///
    /// # Errors
    /// See [`BundleError`]. A bundle that is not sound through and through is refused before anything is kept.
    pub fn import(&self, bundle: &Path, go_on: &mut dyn FnMut(u16) -> bool) -> Result<Received, BundleError> {
        if !self.can_write {
            return Err(BundleError::Log(crate::error::UseError::ReadOnly));
        }
        let whole = fs::metadata(bundle)
            .map_err(|error| BundleError::Log(error.into()))?
            .len();
        let mut progress = Progress { go_on, whole };
        let mut looking = Looking {
            progress: &mut progress,
            turned: BTreeMap::new(),
        };
        read(bundle, &mut looking)?;
        let turned = looking.turned;
        let mut keeping = Keeping {
            progress: &mut progress,
            beside: Beside::open(&self.dir)?,
            photos: Photos::at(&self.dir),
            lent: self.dir.join("photo-from-bundle.part"),
            turned,
            received: Received::default(),
        };
        let kept = read(bundle, &mut keeping);
        let _gone = fs::remove_file(&keeping.lent);
        kept.map(|()| keeping.received)
    }
}

/// The first time through: everything is read and held against the bundle's own digests, nothing is kept.
struct Looking<'a, 'b> {
    progress: &'a mut Progress<'b>,
    /// Which way is up, by digest: it stands in the entries, since the files have no metadata.
    turned: BTreeMap<String, u8>,
}

impl Takes for Looking<'_, '_> {
    fn photo(&mut self, _: &str, _: PhotoFormat, _: &mut dyn Read) -> Result<(), BundleError> {
        Ok(())
    }

    fn entries(&mut self, entries: Vec<Entry>) -> Result<(), BundleError> {
        for entry in entries {
            if let Content::Known(Payload::Photo(photo)) = Payload::read(&entry.kind, entry.v, &entry.body)
                && (2..=8).contains(&photo.orientation)
                && self.turned.len() < MOST_PHOTOS
            {
                self.turned.insert(photo.sha256, photo.orientation);
            }
        }
        Ok(())
    }

    fn passed(&mut self, bytes: u64) -> Result<(), BundleError> {
        self.progress.at(bytes, 0, LOOKING)
    }
}

/// The second time through. Photos come before the entries that name them.
struct Keeping<'a, 'b> {
    progress: &'a mut Progress<'b>,
    beside: Beside,
    photos: Photos,
    turned: BTreeMap<String, u8>,
    lent: PathBuf,
    received: Received,
}

impl Takes for Keeping<'_, '_> {
    fn photo(&mut self, sha256: &str, format: PhotoFormat, bytes: &mut dyn Read) -> Result<(), BundleError> {
        if self.photos.kept_as(sha256, format).is_some() {
            return Ok(());
        }
        let mut lent = File::create(&self.lent).map_err(BundleError::writing)?;
        copy(bytes, &mut lent)?;
        drop(lent);
        // As any picture from elsewhere: bounded, stripped, decoded. It must come out as it went in.
        let turned = self.turned.get(sha256).copied().unwrap_or(1);
        match self.photos.import_turned(&self.lent, Some(turned), &|_| true) {
            Ok(taken) if taken.sha256 == sha256 => self.received.photos += 1,
            Err(ImportError::NoSpace) => return Err(BundleError::Log(crate::error::UseError::NoSpace)),
            Err(ImportError::ReadOnly) => return Err(BundleError::Log(crate::error::UseError::ReadOnly)),
            Err(ImportError::Io(error)) => return Err(BundleError::writing(error)),
            Ok(_) | Err(_) => self.received.broken_photos += 1,
        }
        Ok(())
    }

    fn entries(&mut self, entries: Vec<Entry>) -> Result<(), BundleError> {
        self.progress.at(self.progress.whole, LOOKING, 999)?;
        let merged = self.beside.merge(&entries)?;
        self.received.merged.add(merged);
        Ok(())
    }

    fn passed(&mut self, bytes: u64) -> Result<(), BundleError> {
        self.progress.at(bytes, LOOKING, 999)
    }
}
