//! Reading a bundle from its start to its end, every byte of it held against what the bundle says of itself.

use std::collections::BTreeMap;
use std::fs::File;
use std::io::{self, BufRead, BufReader, Read};
use std::path::Path;

use zip::CompressionMethod;
use zip::read::{ZipFile, read_zipfile_from_stream};
use zip::result::ZipError;

use super::VERSION;
use super::error::BundleError;
use super::form::{AnyHead, CONTENTS, Contents, ENTRIES, FORMAT, HEAD, Head, Packed, PackedPhoto, photo_of};
use super::measured::{Measured, copy};
use crate::entry::Entry;
use crate::payload::PhotoFormat;
use crate::photo::MOST_FILE_BYTES;
use crate::store::MOST_BODY_BYTES;

/// Bytes of the first and last file at most, unpacked: the last one names 100,000 photos in that.
const MOST_SAID_BYTES: u64 = 16 << 20;
/// Bytes of all entries at most, unpacked: 100,000 jobs fit.
const MOST_ENTRIES_BYTES: u64 = 4 << 30;
/// Bytes of one entry at most: a body of the largest size, each sign of it escaped.
const MOST_LINE_BYTES: u64 = 6 * MOST_BODY_BYTES as u64 + 1_024;
/// Photos at most.
pub(super) const MOST_PHOTOS: usize = 100_000;
/// How many times its packed size a file may unpack to. Entries come to 5 to 30, a zip bomb to 1,000.
const MOST_RATIO: u64 = 100;
/// Bytes that a file may unpack to whatever its packed size.
const FREE_BYTES: u64 = 1 << 20;
/// Entries that are handed on at a time.
const BATCH: usize = 500;

/// What becomes of the parts of a bundle.
pub(super) trait Takes {
    /// A photo's file.
    fn photo(&mut self, sha256: &str, format: PhotoFormat, bytes: &mut dyn Read) -> Result<(), BundleError>;

    /// Some entries.
    fn entries(&mut self, entries: Vec<Entry>) -> Result<(), BundleError>;

    /// So many bytes of the bundle's file were read.
    fn passed(&mut self, bytes: u64) -> Result<(), BundleError>;
}

/// Counts the bytes of the bundle's own file.
struct Counted<R> {
    from: R,
    bytes: u64,
}

impl<R: Read> Read for Counted<R> {
    fn read(&mut self, into: &mut [u8]) -> io::Result<usize> {
        let read = self.from.read(into)?;
        self.bytes += u64::try_from(read).unwrap_or(0);
        Ok(read)
    }
}

/// Reads all of a bundle and hands its parts on.
pub(super) fn read(file: &Path, takes: &mut dyn Takes) -> Result<(), BundleError> {
    let file = File::open(file).map_err(|error| BundleError::Log(error.into()))?;
    let mut from = Counted {
        from: BufReader::new(file),
        bytes: 0,
    };
    read_head(&mut from)?;
    let mut seen = Seen::default();
    loop {
        takes.passed(from.bytes)?;
        let Some(mut part) = next(&mut from)? else {
            return Err(BundleError::Truncated);
        };
        let name = name_of(&part);
        if let Some((sha256, format)) = photo_of(&name) {
            let photo = read_photo(&mut part, &name, sha256, format, takes)?;
            seen.photo(photo)?;
        } else if name == ENTRIES && seen.entries.is_none() {
            seen.entries = Some(read_entries(&mut part, takes)?);
        } else if name == CONTENTS {
            let contents: Contents =
                serde_json::from_slice(&read_small(&mut part, &name)?).map_err(BundleError::damaged)?;
            return seen.check(contents);
        } else {
            let name = name.chars().take(80).collect();
            return Err(BundleError::Strange { name });
        }
    }
}

/// The parts seen so far.
#[derive(Default)]
struct Seen {
    entries: Option<Packed>,
    photos: BTreeMap<String, PackedPhoto>,
}

impl Seen {
    fn photo(&mut self, photo: PackedPhoto) -> Result<(), BundleError> {
        let name = photo.sha256.clone();
        if self.photos.insert(name, photo).is_some() {
            return Err(BundleError::damaged("a photo twice"));
        }
        if self.photos.len() > MOST_PHOTOS {
            return Err(BundleError::damaged("too many photos"));
        }
        Ok(())
    }

    /// Whether all that was packed was seen, and nothing else.
    fn check(self, mut contents: Contents) -> Result<(), BundleError> {
        if self.entries.as_ref() != Some(&contents.entries) {
            return Err(BundleError::WrongDigest {
                name: ENTRIES.to_owned(),
            });
        }
        contents.photos.sort_by(|a, b| a.sha256.cmp(&b.sha256));
        if !self.photos.into_values().eq(contents.photos) {
            return Err(BundleError::damaged("other photos than were packed"));
        }
        Ok(())
    }
}

/// The next file of the zip; none where its directory begins.
fn next<R: Read>(from: &mut R) -> Result<Option<ZipFile<'_, R>>, BundleError> {
    let part = read_zipfile_from_stream(from).map_err(|error| match error {
        ZipError::Io(error) => BundleError::reading(error),
        other => BundleError::damaged(other),
    })?;
    if let Some(part) = &part {
        let known = matches!(
            part.compression(),
            CompressionMethod::Stored | CompressionMethod::Deflated
        );
        if !known || part.encrypted() {
            return Err(BundleError::damaged("packed in a way that bundles are not"));
        }
    }
    Ok(part)
}

/// A part's name; empty, which no bundle holds, where it is no text.
fn name_of<R: Read>(part: &ZipFile<'_, R>) -> String {
    part.name().map(|name| name.into_owned()).unwrap_or_default()
}

/// The first file says what this is; anything that does not begin so is no bundle.
fn read_head<R: Read>(from: &mut R) -> Result<(), BundleError> {
    let mut part = match next(from) {
        Ok(Some(part)) if name_of(&part) == HEAD => part,
        Err(BundleError::Log(error)) => return Err(BundleError::Log(error)),
        _ => return Err(BundleError::NotABundle),
    };
    let said = read_small(&mut part, HEAD)?;
    match serde_json::from_slice::<AnyHead>(&said) {
        Ok(head) if head.format != FORMAT => Err(BundleError::NotABundle),
        Ok(head) if head.version > VERSION => Err(BundleError::Newer {
            found: head.version,
            known: VERSION,
        }),
        Ok(_) => serde_json::from_slice::<Head>(&said)
            .map(|_| ())
            .map_err(BundleError::damaged),
        Err(_) => Err(BundleError::NotABundle),
    }
}

/// A part's bytes, summed, within the bound for its kind and for its packed size.
fn measured<'a, 'b, R: Read>(part: &'a mut ZipFile<'b, R>, most: u64) -> Measured<&'a mut ZipFile<'b, R>> {
    let by_ratio = part
        .compressed_size()
        .saturating_mul(MOST_RATIO)
        .saturating_add(FREE_BYTES);
    Measured::new(part, most.min(by_ratio))
}

fn too_large(name: &str, most: u64) -> BundleError {
    BundleError::TooLarge {
        name: name.to_owned(),
        most,
    }
}

fn read_small<R: Read>(part: &mut ZipFile<'_, R>, name: &str) -> Result<Vec<u8>, BundleError> {
    let mut from = measured(part, MOST_SAID_BYTES);
    let mut bytes = Vec::new();
    match from.read_to_end(&mut bytes) {
        Ok(_) => Ok(bytes),
        Err(_) if from.over => Err(too_large(name, MOST_SAID_BYTES)),
        Err(error) => Err(BundleError::reading(error)),
    }
}

fn read_photo<R: Read>(
    part: &mut ZipFile<'_, R>,
    name: &str,
    sha256: String,
    format: PhotoFormat,
    takes: &mut dyn Takes,
) -> Result<PackedPhoto, BundleError> {
    let mut from = measured(part, MOST_FILE_BYTES);
    let taken = takes
        .photo(&sha256, format, &mut from)
        .and_then(|()| copy(&mut from, &mut io::sink()));
    match taken {
        Err(_) if from.over => return Err(too_large(name, MOST_FILE_BYTES)),
        other => other?,
    }
    let bytes = from.sum.bytes;
    if from.sum.sha256() != sha256 {
        return Err(BundleError::WrongDigest {
            name: name.to_owned(),
        });
    }
    Ok(PackedPhoto {
        sha256,
        format,
        bytes,
    })
}

fn read_entries<R: Read>(part: &mut ZipFile<'_, R>, takes: &mut dyn Takes) -> Result<Packed, BundleError> {
    let mut from = BufReader::new(measured(part, MOST_ENTRIES_BYTES));
    let mut count = 0;
    let mut batch = Vec::new();
    let mut line = Vec::new();
    loop {
        line.clear();
        let read = (&mut from).take(MOST_LINE_BYTES + 1).read_until(b'\n', &mut line);
        match read {
            Err(_) if from.get_ref().over => return Err(too_large(ENTRIES, MOST_ENTRIES_BYTES)),
            Err(error) => return Err(BundleError::reading(error)),
            Ok(0) => break,
            Ok(_) if line.len() as u64 > MOST_LINE_BYTES => {
                return Err(too_large("an entry", MOST_LINE_BYTES));
            }
            Ok(_) => {}
        }
        batch.push(serde_json::from_slice::<Entry>(&line).map_err(BundleError::damaged)?);
        count += 1;
        if batch.len() == BATCH {
            takes.entries(std::mem::take(&mut batch))?;
        }
    }
    takes.entries(batch)?;
    let sum = from.into_inner().sum;
    Ok(Packed {
        count,
        bytes: sum.bytes,
        sha256: sum.sha256(),
    })
}
