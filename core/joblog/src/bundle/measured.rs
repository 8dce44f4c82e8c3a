//! Bytes counted, summed and bounded while they pass.

use std::io::{self, Read, Write};

use sha2::{Digest, Sha256};

use super::error::BundleError;

/// Size of the piece that is in memory at a time, bytes.
const PIECE: usize = 64 << 10;

/// What has passed.
#[derive(Debug, Clone, Default)]
pub(super) struct Sum {
    digest: Sha256,
    /// How many bytes.
    pub bytes: u64,
}

impl Sum {
    pub(super) fn take(&mut self, piece: &[u8]) {
        self.digest.update(piece);
        self.bytes += u64::try_from(piece.len()).unwrap_or(u64::MAX);
    }

    /// SHA-256 of all that passed, 64 hex digits.
    pub(super) fn sha256(self) -> String {
        self.digest
            .finalize()
            .iter()
            .map(|byte| format!("{byte:02x}"))
            .collect()
    }
}

/// A reader that sums what passes and gives nothing past its bound.
pub(super) struct Measured<R> {
    from: R,
    most: u64,
    /// What has passed.
    pub sum: Sum,
    /// There is more than the bound.
    pub over: bool,
}

impl<R: Read> Measured<R> {
    pub(super) fn new(from: R, most: u64) -> Self {
        Self {
            from,
            most,
            sum: Sum::default(),
            over: false,
        }
    }
}

impl<R: Read> Read for Measured<R> {
    fn read(&mut self, into: &mut [u8]) -> io::Result<usize> {
        let read = self.from.read(into)?;
        self.sum.take(into.get(..read).unwrap_or(&[]));
        if self.sum.bytes > self.most {
            self.over = true;
            return Err(io::ErrorKind::InvalidData.into());
        }
        Ok(read)
    }
}

/// Copies to the end, in pieces. Which side failed decides the error.
pub(super) fn copy(from: &mut dyn Read, to: &mut dyn Write) -> Result<(), BundleError> {
    let mut piece = vec![0; PIECE];
    loop {
        match from.read(&mut piece) {
            Ok(0) => return Ok(()),
            Ok(read) => to
                .write_all(piece.get(..read).unwrap_or(&[]))
                .map_err(BundleError::writing)?,
            Err(error) if error.kind() == io::ErrorKind::Interrupted => {}
            Err(error) => return Err(BundleError::reading(error)),
        }
    }
}
