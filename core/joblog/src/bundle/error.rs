//! Why a bundle is not written or not taken in.

use std::io;

use crate::error::UseError;

/// Why a bundle is not written or not taken in. Of a bundle that is refused nothing was taken in.
#[derive(Debug, thiserror::Error)]
pub enum BundleError {
    /// The file is no bundle.
    #[error("not a bundle")]
    NotABundle,
    /// A newer version made it. To be taken in by that version.
    #[error("the bundle has format {found}, this software knows up to {known}")]
    Newer {
        /// The format's number in the bundle.
        found: u32,
        /// The newest this software knows.
        known: u32,
    },
    /// The file ends before the bundle does.
    #[error("the bundle ends too soon")]
    Truncated,
    /// A file in it has a name that no bundle holds, such as one that climbs out of its folder.
    #[error("a bundle holds no {name:?}")]
    Strange {
        /// The name, at most its first 80 characters.
        name: String,
    },
    /// A file in it unpacks to more than it may.
    #[error("{name} unpacks to more than {most} bytes")]
    TooLarge {
        /// Which.
        name: String,
        /// The bound, bytes.
        most: u64,
    },
    /// A file in it is not the one that was packed.
    #[error("{name} does not have the digest that the bundle names")]
    WrongDigest {
        /// Which.
        name: String,
    },
    /// It begins as a bundle and does not go on as one.
    #[error("the bundle is damaged: {detail}")]
    Damaged {
        /// What the reader says, for a log; never shown as it is.
        detail: String,
    },
    /// The person stopped it.
    #[error("stopped")]
    Stopped,
    /// The log could not be read or written.
    #[error("the log refused")]
    Log(#[from] UseError),
}

impl BundleError {
    /// The error of reading the bundle's file.
    pub(super) fn reading(error: io::Error) -> Self {
        use io::ErrorKind as Kind;
        match error.kind() {
            Kind::UnexpectedEof => Self::Truncated,
            Kind::InvalidData | Kind::InvalidInput | Kind::Other => Self::Damaged {
                detail: error.to_string(),
            },
            _ => Self::Log(error.into()),
        }
    }

    /// The error of writing beside the log.
    pub(super) fn writing(error: io::Error) -> Self {
        Self::Log(error.into())
    }

    pub(super) fn damaged(detail: impl std::fmt::Display) -> Self {
        Self::Damaged {
            detail: detail.to_string(),
        }
    }
}

impl From<rusqlite::Error> for BundleError {
    fn from(error: rusqlite::Error) -> Self {
        Self::Log(error.into())
    }
}
