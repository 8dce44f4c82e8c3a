//! JPEG: the segments that make the pixels are copied byte by byte, those that tell of place, time and camera go.

use super::error::ImportError;
use super::exif;

/// A picture without its metadata.
#[derive(Debug, PartialEq, Eq)]
pub(super) struct Stripped {
    pub(super) bytes: Vec<u8>,
    pub(super) orientation: u8,
}

/// Takes the metadata out: all APP segments and comments, but for the two that say how to read the pixels (JFIF,
/// without its thumbnail, and Adobe's colour transform) and the colour profile. What follows the end of the
/// picture (a second picture, a film) goes too.
///
/// # Errors
/// [`ImportError::Truncated`] without an end-of-image marker, [`ImportError::Damaged`] for bytes that are no
/// segments.
///
/// # Source
/// ITU-T T.81 annex B (markers and segments); JFIF 1.02 (APP0); ICC.1 annex B (APP2).
pub(super) fn strip(bytes: &[u8]) -> Result<Stripped, ImportError> {
    let mut out = Vec::with_capacity(bytes.len());
    let mut orientation = None;
    let mut at = 2;
    out.extend_from_slice(bytes.get(..2).ok_or(ImportError::Truncated)?);
    loop {
        let (marker, after) = marker(bytes, at)?;
        match marker {
            0xD9 => {
                out.extend_from_slice(&[0xFF, 0xD9]);
                break;
            }
            0x01 | 0xD0..=0xD7 => {
                out.extend_from_slice(&[0xFF, marker]);
                at = after;
            }
            _ => {
                let body = segment(bytes, after)?;
                at = after + 2 + body.len();
                orientation =
                    orientation.or_else(|| (marker == 0xE1).then(|| exif_orientation(body)).flatten());
                if let Some(kept) = kept_part(marker, body) {
                    push_segment(&mut out, marker, kept);
                }
                if marker == 0xDA {
                    let end = entropy_end(bytes, at)?;
                    out.extend_from_slice(bytes.get(at..end).ok_or(ImportError::Truncated)?);
                    at = end;
                }
            }
        }
    }
    Ok(Stripped {
        bytes: out,
        orientation: orientation.unwrap_or(1),
    })
}

/// The marker at `at`, fill bytes before it passed over, and where it ends.
fn marker(bytes: &[u8], at: usize) -> Result<(u8, usize), ImportError> {
    if *bytes.get(at).ok_or(ImportError::Truncated)? != 0xFF {
        return Err(ImportError::Damaged {
            detail: format!("no marker at byte {at}"),
        });
    }
    let rest = bytes.get(at..).ok_or(ImportError::Truncated)?;
    let fill = rest.iter().take_while(|byte| **byte == 0xFF).count();
    match rest.get(fill) {
        None => Err(ImportError::Truncated),
        Some(0 | 0xD8) => Err(ImportError::Damaged {
            detail: format!("a stray marker at byte {at}"),
        }),
        Some(marker) => Ok((*marker, at + fill + 1)),
    }
}

/// The segment whose length stands at `at`, without its length.
fn segment(bytes: &[u8], at: usize) -> Result<&[u8], ImportError> {
    let length: [u8; 2] = bytes
        .get(at..at + 2)
        .and_then(|two| two.try_into().ok())
        .ok_or(ImportError::Truncated)?;
    let length = usize::from(u16::from_be_bytes(length));
    if length < 2 {
        return Err(ImportError::Damaged {
            detail: format!("a segment of {length} bytes at byte {at}"),
        });
    }
    bytes.get(at + 2..at + length).ok_or(ImportError::Truncated)
}

/// Where the coded pixels that begin at `at` end: at the next marker that is not part of them.
fn entropy_end(bytes: &[u8], at: usize) -> Result<usize, ImportError> {
    let mut from = at;
    loop {
        let rest = bytes.get(from..).ok_or(ImportError::Truncated)?;
        let next = rest
            .iter()
            .position(|byte| *byte == 0xFF)
            .ok_or(ImportError::Truncated)?;
        match rest.get(next + 1) {
            None => return Err(ImportError::Truncated),
            Some(0 | 0xD0..=0xD7) => from += next + 2,
            Some(0xFF) => from += next + 1,
            Some(_) => return Ok(from + next),
        }
    }
}

/// What is kept of a segment.
fn kept_part(marker: u8, body: &[u8]) -> Option<&[u8]> {
    match marker {
        // JFIF: without the thumbnail that may follow its 14 bytes.
        0xE0 if body.starts_with(b"JFIF\0") => body.get(..12),
        0xE2 if body.starts_with(b"ICC_PROFILE\0") => Some(body),
        0xEE if body.starts_with(b"Adobe") => Some(body),
        0xE0..=0xEF | 0xFE => None,
        _ => Some(body),
    }
}

fn push_segment(out: &mut Vec<u8>, marker: u8, kept: &[u8]) {
    // The two sides of JFIF's thumbnail, now none.
    let tail: &[u8] = if marker == 0xE0 { &[0, 0] } else { &[] };
    let length = u16::try_from(kept.len() + tail.len() + 2).unwrap_or(u16::MAX);
    out.extend_from_slice(&[0xFF, marker]);
    out.extend_from_slice(&length.to_be_bytes());
    out.extend_from_slice(kept);
    out.extend_from_slice(tail);
}

fn exif_orientation(body: &[u8]) -> Option<u8> {
    exif::orientation(body.strip_prefix(b"Exif\0\0")?)
}
