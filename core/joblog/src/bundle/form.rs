//! What stands in a bundle: its files, their names and their JSON. `docs/bundle.schema.json` says the same.

use serde::{Deserialize, Serialize};

use crate::entry::JobId;
use crate::payload::PhotoFormat;
use crate::photo::is_digest;

/// What the first file says the whole is.
pub(super) const FORMAT: &str = "holdfast-bundle";

/// The first file: what this is.
pub(super) const HEAD: &str = "bundle.json";
/// The entries, one a line: [`Entry`](crate::entry::Entry) as JSON.
pub(super) const ENTRIES: &str = "entries.jsonl";
/// The last file: what was packed.
pub(super) const CONTENTS: &str = "contents.json";

/// The first file.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Head {
    /// [`FORMAT`].
    pub format: String,
    /// The format's number.
    pub version: u32,
    /// Version of the software that made the bundle.
    pub software: String,
    /// When it was made, ms since 1970-01-01T00:00Z.
    pub made_at_ms: i64,
    /// Local time's offset from UTC then, minutes.
    pub offset_min: i32,
}

/// As much of the first file as a newer version is sure to have.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub(super) struct AnyHead {
    /// [`FORMAT`].
    pub format: String,
    /// The format's number.
    pub version: u32,
}

/// The last file.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Contents {
    /// The streams of entries that are packed: jobs, and what is known of vehicle kinds.
    pub jobs: Vec<JobId>,
    /// The entries' file.
    pub entries: Packed,
    /// The photos' files, by digest.
    pub photos: Vec<PackedPhoto>,
}

/// The entries' file as packed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Packed {
    /// How many entries.
    pub count: u64,
    /// Bytes, unpacked.
    pub bytes: u64,
    /// SHA-256, unpacked.
    pub sha256: String,
}

/// A photo's file as packed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct PackedPhoto {
    /// SHA-256; the photo's name too.
    pub sha256: String,
    /// Its format.
    pub format: PhotoFormat,
    /// Bytes.
    pub bytes: u64,
}

/// The file of a photo in the bundle.
pub(super) fn photo_name(sha256: &str, format: PhotoFormat) -> String {
    format!("photos/{sha256}.{}", format.extension())
}

/// The photo of a file in the bundle; none if no photo is named so.
pub(super) fn photo_of(name: &str) -> Option<(String, PhotoFormat)> {
    let (sha256, ending) = name.strip_prefix("photos/")?.split_once('.')?;
    let format = PhotoFormat::ALL
        .into_iter()
        .find(|format| format.extension() == ending)?;
    is_digest(sha256).then(|| (sha256.to_owned(), format))
}
