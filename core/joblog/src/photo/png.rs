//! PNG: the chunks that make the pixels are copied, all others go.

use super::error::ImportError;
use super::exif;
use super::jpeg::Stripped;

/// The chunks that make the pixels and say what their colours mean.
///
/// Source: W3C PNG (third edition), clause 11.
const KEPT: [&[u8; 4]; 10] = [
    b"IHDR", b"PLTE", b"IDAT", b"IEND", b"tRNS", b"gAMA", b"cHRM", b"sRGB", b"iCCP", b"cICP",
];

pub(super) const MAGIC: &[u8] = b"\x89PNG\r\n\x1a\n";

/// Takes the metadata out. What follows the end of the picture goes too.
///
/// # Errors
/// [`ImportError::Truncated`] without an end chunk.
pub(super) fn strip(bytes: &[u8]) -> Result<Stripped, ImportError> {
    let mut out = MAGIC.to_vec();
    let mut orientation = None;
    let mut at = MAGIC.len();
    loop {
        let head = bytes.get(at..at + 8).ok_or(ImportError::Truncated)?;
        let (length, kind) = head.split_at(4);
        let length: [u8; 4] = length.try_into().map_err(|_| ImportError::Truncated)?;
        let length = usize::try_from(u32::from_be_bytes(length)).map_err(|_| ImportError::Truncated)?;
        let end = at
            .checked_add(12)
            .and_then(|head| head.checked_add(length))
            .ok_or(ImportError::Truncated)?;
        let chunk = bytes.get(at..end).ok_or(ImportError::Truncated)?;
        if kind == b"eXIf" {
            orientation = chunk.get(8..8 + length).and_then(exif::orientation);
        }
        if KEPT.iter().any(|kept| kept.as_slice() == kind) {
            out.extend_from_slice(chunk);
        }
        if kind == b"IEND" {
            break;
        }
        at = end;
    }
    Ok(Stripped {
        bytes: out,
        orientation: orientation.unwrap_or(1),
    })
}
