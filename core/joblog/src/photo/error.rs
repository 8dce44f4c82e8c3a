//! Why a picture is not taken in.

use std::io;

/// Why a picture is not taken in. Nothing of it was kept.
#[derive(Debug, thiserror::Error)]
pub enum ImportError {
    /// Neither JPEG nor PNG nor WebP nor HEIF.
    #[error("neither JPEG nor PNG nor WebP")]
    NotAPicture,
    /// HEIF: only the phone itself may know how to decode it.
    #[error("HEIF, which only the phone may decode")]
    Heif,
    /// The file ends before the picture does.
    #[error("the file ends before the picture does")]
    Truncated,
    /// A moving picture.
    #[error("a moving picture")]
    Moving,
    /// The file is larger than is read.
    #[error("{bytes} bytes, at most {most} are read")]
    TooLarge {
        /// Its size, bytes.
        bytes: u64,
        /// The bound, bytes.
        most: u64,
    },
    /// The picture has more pixels than are decoded.
    #[error("{pixels} pixels, at most {most} are decoded")]
    TooManyPixels {
        /// Its width times its height.
        pixels: u64,
        /// The bound.
        most: u64,
    },
    /// It begins as a picture and does not go on as one.
    #[error("the picture is damaged: {detail}")]
    Damaged {
        /// What the decoder says, for a log; never shown as it is.
        detail: String,
    },
    /// The person stopped it.
    #[error("stopped")]
    Stopped,
    /// No room on the device.
    #[error("no room on the device")]
    NoSpace,
    /// The data folder can't be written to.
    #[error("the data folder can't be written to")]
    ReadOnly,
    /// The file system failed.
    #[error("the file system failed")]
    Io(#[source] io::Error),
}

impl From<io::Error> for ImportError {
    fn from(error: io::Error) -> Self {
        use io::ErrorKind as Kind;
        match error.kind() {
            Kind::StorageFull | Kind::QuotaExceeded => ImportError::NoSpace,
            Kind::PermissionDenied | Kind::ReadOnlyFilesystem => ImportError::ReadOnly,
            _ => ImportError::Io(error),
        }
    }
}
