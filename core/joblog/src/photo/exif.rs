//! The one thing read out of a photo's metadata before they go: which way is up.

/// EXIF orientation tag.
///
/// Source: CIPA DC-008 (EXIF), tag 0x0112, SHORT, values 1 to 8, 1 if missing.
const ORIENTATION: u16 = 0x0112;

/// Orientation out of a TIFF block as it stands in EXIF, `1 <= orientation <= 8`; none if there is none.
pub(super) fn orientation(tiff: &[u8]) -> Option<u8> {
    let little = match tiff.get(0..4)? {
        [b'I', b'I', 42, 0] => true,
        [b'M', b'M', 0, 42] => false,
        _ => return None,
    };
    let short = |at: usize| {
        let two: [u8; 2] = tiff.get(at..at.checked_add(2)?)?.try_into().ok()?;
        Some(if little {
            u16::from_le_bytes(two)
        } else {
            u16::from_be_bytes(two)
        })
    };
    let long = |at: usize| {
        let four: [u8; 4] = tiff.get(at..at.checked_add(4)?)?.try_into().ok()?;
        Some(if little {
            u32::from_le_bytes(four)
        } else {
            u32::from_be_bytes(four)
        })
    };
    let directory = usize::try_from(long(4)?).ok()?;
    let fields = usize::from(short(directory)?);
    let first = directory.checked_add(2)?;
    let field = (0..fields)
        .map_while(|index| first.checked_add(index * 12))
        .take_while(|at| short(*at).is_some())
        .find(|at| short(*at) == Some(ORIENTATION))?;
    // Type 3 is SHORT; its value stands in the first two of the four value bytes.
    if short(field + 2)? != 3 {
        return None;
    }
    u8::try_from(short(field + 8)?)
        .ok()
        .filter(|value| (1..=8).contains(value))
}
