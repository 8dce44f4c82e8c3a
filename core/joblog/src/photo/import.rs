//! Taking a picture in: look, strip, name, keep, make the renditions.

use std::fs::File;
use std::io::{ErrorKind, Read};
use std::panic::resume_unwind;
use std::path::Path;
use std::thread::{self, ScopedJoinHandle};

use super::error::ImportError;
use super::jpeg::{self, Stripped};
use super::rendition::Bounded;
use super::{Photos, Rendition, digest, name, png, rendition, webp};
use crate::payload::{Photo, PhotoFormat, Subject};

/// The largest file that is read, bytes.
pub(crate) const MOST_FILE_BYTES: u64 = 64 << 20;
/// Long side of the rendition for screens, pixels.
const SCREEN_SIDE: u32 = 1_080;
/// Long side of the rendition for print, pixels.
const PRINT_SIDE: u32 = 1_600;

/// How far an import is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum ImportStage {
    /// The file is to be read.
    Reading,
    /// The pixels are to be decoded.
    Decoding,
    /// The renditions are to be made.
    Rendering,
    /// The files are to be written.
    Keeping,
}

/// A picture that was taken in. It becomes part of a job by a [`Photo`] entry; without one the next opening of
/// the log sweeps it away.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Imported {
    /// SHA-256 of the kept file.
    pub sha256: String,
    /// Its format.
    pub format: PhotoFormat,
    /// Width as shown upright, pixels.
    pub width: u32,
    /// Height as shown upright, pixels.
    pub height: u32,
    /// EXIF orientation of the kept file.
    pub orientation: u8,
}

impl Imported {
    /// The body of its entry.
    pub fn photo(&self, about: Subject, caption: &str) -> Photo {
        Photo {
            sha256: self.sha256.clone(),
            format: self.format,
            width: self.width,
            height: self.height,
            orientation: self.orientation,
            about,
            caption: caption.to_owned(),
            marks: Vec::new(),
        }
    }
}

impl Photos {
    /// Takes a picture file in: its pixels bit for bit, its metadata not, and two upright renditions. `go_on` is
    /// asked before each stage. The file itself is left where it is.
    ///
    /// Size and memory are bounded before anything is decoded: at most 64 MiB of file, 64 million pixels.
    ///
    /// # Errors
    /// See [`ImportError`]; nothing is kept then but files that the next opening sweeps away.
    pub fn import(
        &self,
        source: &Path,
        go_on: &dyn Fn(ImportStage) -> bool,
    ) -> Result<Imported, ImportError> {
        self.import_turned(source, None, go_on)
    }

    /// As [`Photos::import`], of a file that was stripped before: which way is up is known from elsewhere.
    pub(crate) fn import_turned(
        &self,
        source: &Path,
        known: Option<u8>,
        go_on: &dyn Fn(ImportStage) -> bool,
    ) -> Result<Imported, ImportError> {
        let ask = |stage| {
            if go_on(stage) {
                Ok(())
            } else {
                Err(ImportError::Stopped)
            }
        };
        ask(ImportStage::Reading)?;
        let taken = read(source)?;
        let (format, stripped) = strip(&taken)?;
        let Stripped { bytes, orientation } = stripped;
        let orientation = known.unwrap_or(orientation);
        let bounded = rendition::bounded(&bytes, format)?;
        let (width, height) = if orientation >= 5 {
            (bounded.height, bounded.width)
        } else {
            (bounded.width, bounded.height)
        };
        let lay = |sha256: &str, which, bytes: &[u8]| match name(sha256, format.extension(), which) {
            Some(name) => self.lay(&name, bytes),
            None => Err(ErrorKind::InvalidInput.into()),
        };

        // What needs no pixels is done beside their decoding. No file has its name before all are whole: a picture that
        // can't be shown is not taken.
        let sha256 = thread::scope(|beside| -> Result<String, ImportError> {
            let kept = beside.spawn(|| {
                let sha256 = digest::of(&bytes);
                lay(&sha256, Rendition::Kept, &bytes).map(|laid| (sha256, laid))
            });
            let (print, screen) = renditions(bounded, orientation, &ask)?;
            ask(ImportStage::Keeping)?;
            let (sha256, kept) = joined(kept)?;
            let print = beside.spawn({
                let sha256 = sha256.clone();
                move || lay(&sha256, Rendition::Print, &print)
            });
            let screen = lay(&sha256, Rendition::Screen, &screen)?;
            for laid in [joined(print)?, screen, kept] {
                laid.settle()?;
            }
            Ok(sha256)
        })?;
        super::sync_folder(&self.dir)?;
        Ok(Imported {
            sha256,
            format,
            width,
            height,
            orientation,
        })
    }
}

/// The JPEGs for print and for screens.
fn renditions(
    bounded: Bounded<'_>,
    orientation: u8,
    ask: &dyn Fn(ImportStage) -> Result<(), ImportError>,
) -> Result<(Vec<u8>, Vec<u8>), ImportError> {
    ask(ImportStage::Decoding)?;
    let decoded = bounded.decode()?;
    let print = rendition::upright(rendition::fit(&decoded, PRINT_SIDE), orientation);
    drop(decoded);

    ask(ImportStage::Rendering)?;
    let (print, screen) = thread::scope(|beside| {
        let print_jpeg = beside.spawn(|| rendition::write_jpeg(&print));
        let screen_jpeg = rendition::write_jpeg(&rendition::fit(&print, SCREEN_SIDE));
        (joined(print_jpeg), screen_jpeg)
    });
    Ok((print?, screen?))
}

/// What a thread came to; its panic goes on here.
fn joined<T>(thread: ScopedJoinHandle<'_, T>) -> T {
    thread.join().unwrap_or_else(|panic| resume_unwind(panic))
}

/// Reads a file that is not too large, whatever its length is said to be.
fn read(source: &Path) -> Result<Vec<u8>, ImportError> {
    let file = File::open(source)?;
    let said = file.metadata()?.len();
    if said > MOST_FILE_BYTES {
        return Err(ImportError::TooLarge {
            bytes: said,
            most: MOST_FILE_BYTES,
        });
    }
    let mut bytes = Vec::with_capacity(usize::try_from(said).unwrap_or(0));
    file.take(MOST_FILE_BYTES + 1).read_to_end(&mut bytes)?;
    let length = u64::try_from(bytes.len()).unwrap_or(u64::MAX);
    if length > MOST_FILE_BYTES {
        return Err(ImportError::TooLarge {
            bytes: length,
            most: MOST_FILE_BYTES,
        });
    }
    Ok(bytes)
}

/// Finds the format by the first bytes, never by the name, and takes the metadata out.
fn strip(bytes: &[u8]) -> Result<(PhotoFormat, Stripped), ImportError> {
    if bytes.starts_with(&[0xFF, 0xD8, 0xFF]) {
        Ok((PhotoFormat::Jpeg, jpeg::strip(bytes)?))
    } else if bytes.starts_with(png::MAGIC) {
        Ok((PhotoFormat::Png, png::strip(bytes)?))
    } else if bytes.starts_with(b"RIFF") && bytes.get(8..12) == Some(b"WEBP") {
        Ok((PhotoFormat::Webp, webp::strip(bytes)?))
    } else if is_heif(bytes) {
        Err(ImportError::Heif)
    } else {
        Err(ImportError::NotAPicture)
    }
}

/// Whether a file says that it is HEIF or AVIF.
///
/// Source: ISO/IEC 14496-12 (the `ftyp` box: major brand, version, compatible brands); brands of ISO/IEC 23008-12
/// annex B and, for AV1, of the AVIF specification.
fn is_heif(bytes: &[u8]) -> bool {
    const BRANDS: [&[u8; 4]; 8] = [
        b"mif1", b"msf1", b"heic", b"heix", b"heim", b"heis", b"hevc", b"avif",
    ];
    let length = bytes
        .first_chunk::<4>()
        .map_or(0, |four| u32::from_be_bytes(*four) as usize);
    let is_box = bytes.get(4..8) == Some(b"ftyp");
    let brands = bytes.get(8..length.min(256)).unwrap_or(&[]);
    is_box
        && brands
            .chunks_exact(4)
            .any(|brand| BRANDS.iter().any(|known| known.as_slice() == brand))
}
