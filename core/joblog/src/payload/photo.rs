//! Photos and the marks over them.

use serde::{Deserialize, Serialize};

use super::Subject;
use crate::entry::EntryKey;

/// The picture formats that are kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum PhotoFormat {
    /// JPEG.
    Jpeg,
    /// PNG.
    Png,
    /// WebP, still.
    Webp,
}

impl PhotoFormat {
    /// Every format.
    pub const ALL: [Self; 3] = [Self::Jpeg, Self::Png, Self::Webp];

    /// How file names of the format end.
    pub fn extension(self) -> &'static str {
        match self {
            PhotoFormat::Jpeg => "jpg",
            PhotoFormat::Png => "png",
            PhotoFormat::Webp => "webp",
        }
    }
}

/// A photo: the file is found by its digest.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Photo {
    /// SHA-256 of the kept file, 64 hex digits, lower case.
    pub sha256: String,
    /// Its format.
    pub format: PhotoFormat,
    /// Width as shown upright, pixels.
    pub width: u32,
    /// Height as shown upright, pixels.
    pub height: u32,
    /// EXIF orientation of the kept file, `1 <= orientation <= 8`.
    pub orientation: u8,
    /// What it shows.
    #[serde(default)]
    pub about: Subject,
    /// The caption, or empty.
    #[serde(default)]
    pub caption: String,
    /// The marks it came with, lowest first.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub marks: Vec<MarkRecord>,
}

/// A photo's caption and marks, all of them as they are from now on.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct PhotoMarked {
    /// The photo's entry.
    pub photo: EntryKey,
    /// The caption, or empty.
    #[serde(default)]
    pub caption: String,
    /// The marks, lowest first.
    #[serde(default)]
    pub marks: Vec<MarkRecord>,
}

/// A mark. Coordinates are shares of the upright picture: x of its width to the right, y of its height down.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct MarkRecord {
    /// Shape and place.
    pub shape: MarkShapeRecord,
    /// Words beside it, or empty.
    #[serde(default)]
    pub text: String,
    /// How it looks, by an id of the palette, or empty for the usual.
    #[serde(default)]
    pub style: String,
}

/// Shape and place of a mark.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum MarkShapeRecord {
    /// From tail to head.
    Arrow {
        /// The tail.
        from: [f64; 2],
        /// The head.
        to: [f64; 2],
    },
    /// A ring.
    Ring {
        /// The centre.
        at: [f64; 2],
        /// Radius as a share of the width.
        radius: f64,
    },
    /// A numbered pin.
    Pin {
        /// Its point.
        at: [f64; 2],
        /// Its number.
        number: u32,
    },
    /// A test point; the lead's colour is named in the text.
    TestPoint {
        /// Its point.
        at: [f64; 2],
    },
    /// A measure: a line with words.
    Measure {
        /// One end.
        from: [f64; 2],
        /// The other.
        to: [f64; 2],
    },
    /// What lies in the box is made unreadable, in pixels, on export.
    Blur {
        /// One corner.
        from: [f64; 2],
        /// The opposite one.
        to: [f64; 2],
    },
}
