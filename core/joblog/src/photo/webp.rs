//! WebP: the chunks that make the pixels are copied, all others go.

use super::error::ImportError;
use super::exif;
use super::jpeg::Stripped;

/// Bits of the extended header that say "has EXIF" and "has XMP".
///
/// Source: RFC 9649, section 2.7.1.
const METADATA_BITS: u8 = 0b0000_1100;

/// Takes the metadata out.
///
/// # Errors
/// [`ImportError::Truncated`] if a chunk ends past the file, [`ImportError::Moving`] for an animation.
pub(super) fn strip(bytes: &[u8]) -> Result<Stripped, ImportError> {
    let number = |at: usize| -> Option<usize> {
        let four: [u8; 4] = bytes.get(at..at.checked_add(4)?)?.try_into().ok()?;
        usize::try_from(u32::from_le_bytes(four)).ok()
    };
    let end = number(4)
        .and_then(|size| size.checked_add(8))
        .ok_or(ImportError::Truncated)?;
    if end > bytes.len() {
        return Err(ImportError::Truncated);
    }
    let mut out = b"RIFF\0\0\0\0WEBP".to_vec();
    let mut orientation = None;
    let mut at = 12;
    while at + 8 <= end {
        let size = number(at + 4).ok_or(ImportError::Truncated)?;
        let body_end = at
            .checked_add(8)
            .and_then(|body| body.checked_add(size))
            .ok_or(ImportError::Truncated)?;
        let body = bytes.get(at + 8..body_end).ok_or(ImportError::Truncated)?;
        let kind = bytes.get(at..at + 4).ok_or(ImportError::Truncated)?;
        match kind {
            b"ANIM" | b"ANMF" => return Err(ImportError::Moving),
            // Some writers put JPEG's prefix before the TIFF block.
            b"EXIF" => orientation = exif::orientation(body.strip_prefix(b"Exif\0\0").unwrap_or(body)),
            b"VP8 " | b"VP8L" | b"VP8X" | b"ALPH" | b"ICCP" => {
                let start = out.len();
                out.extend_from_slice(kind);
                out.extend_from_slice(&u32::try_from(size).unwrap_or(u32::MAX).to_le_bytes());
                out.extend_from_slice(body);
                if let (b"VP8X", Some(flags)) = (kind, out.get_mut(start + 8)) {
                    *flags &= !METADATA_BITS;
                }
                if size % 2 == 1 {
                    out.push(0);
                }
            }
            _ => {}
        }
        at = body_end + size % 2;
    }
    let size = u32::try_from(out.len() - 8).unwrap_or(u32::MAX);
    if let Some(place) = out.get_mut(4..8) {
        place.copy_from_slice(&size.to_le_bytes());
    }
    Ok(Stripped {
        bytes: out,
        orientation: orientation.unwrap_or(1),
    })
}
