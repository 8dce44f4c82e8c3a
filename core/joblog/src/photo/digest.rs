//! Names of photos: the SHA-256 of the kept file.

use sha2::{Digest, Sha256};

/// SHA-256 as 64 hex digits, lower case.
pub(super) fn of(bytes: &[u8]) -> String {
    Sha256::digest(bytes)
        .iter()
        .map(|byte| format!("{byte:02x}"))
        .collect()
}

/// Whether a text is such a digest, so that it can be a file's name and nothing else.
pub(crate) fn is_digest(text: &str) -> bool {
    text.len() == 64 && text.bytes().all(|b| matches!(b, b'0'..=b'9' | b'a'..=b'f'))
}
