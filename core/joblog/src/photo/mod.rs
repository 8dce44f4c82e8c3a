//! Photos on disk: the picture as it was taken but for its metadata, and two renditions to look at.

mod blur;
mod digest;
mod error;
mod exif;
mod import;
mod jpeg;
mod png;
mod rendition;
mod webp;

use std::fs::{self, File};
use std::io::{self, ErrorKind, Write};
use std::path::{Path, PathBuf};

use crate::payload::{Photo, PhotoFormat};

pub use blur::BlurBox;
pub(crate) use digest::is_digest;
pub use error::ImportError;
pub(crate) use import::MOST_FILE_BYTES;
pub use import::{ImportStage, Imported};

/// The photos of a data folder. A handle without state: it can be cloned and used on any thread.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Photos {
    dir: PathBuf,
}

/// The files there are of a photo.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Rendition {
    /// The picture as taken, without metadata, perhaps lying on its side.
    Kept,
    /// Upright JPEG for a screen, long side at most 1,080 pixels.
    Screen,
    /// Upright JPEG for print and for zooming in, long side at most 1,600 pixels.
    Print,
}

impl Photos {
    pub(crate) fn at(data_dir: &Path) -> Self {
        Self {
            dir: data_dir.join("photos"),
        }
    }

    /// The file of a photo; none if it is missing (a bundle without pictures, a folder tidied by another program).
    pub fn find(&self, photo: &Photo, rendition: Rendition) -> Option<PathBuf> {
        let file = self
            .dir
            .join(name(&photo.sha256, photo.format.extension(), rendition)?);
        file.is_file().then_some(file)
    }

    /// The kept file of this digest and format, if it is there.
    pub(crate) fn kept_as(&self, sha256: &str, format: PhotoFormat) -> Option<PathBuf> {
        let file = self.dir.join(name(sha256, format.extension(), Rendition::Kept)?);
        file.is_file().then_some(file)
    }

    /// Takes all files of a photo away.
    pub(crate) fn remove(&self, sha256: &str) -> io::Result<()> {
        self.remove_where(|digest, _| digest == sha256).map(|_| ())
    }

    /// Takes away what a kill left behind: half-written files, and photos that no entry names. Other programs'
    /// files are left alone. Returns how many went.
    pub(crate) fn sweep(&self, is_named: &dyn Fn(&str) -> bool) -> io::Result<usize> {
        self.remove_where(|digest, ending| ending.ends_with("part") || !is_named(digest))
    }

    fn remove_where(&self, goes: impl Fn(&str, &str) -> bool) -> io::Result<usize> {
        let files = match fs::read_dir(&self.dir) {
            Err(error) if error.kind() == ErrorKind::NotFound => return Ok(0),
            other => other?,
        };
        let mut gone = 0;
        for file in files {
            let file = file?;
            let name = file.file_name();
            let parts = name.to_str().and_then(|name| name.split_once('.'));
            if let Some((digest, ending)) = parts
                && digest::is_digest(digest)
                && goes(digest, ending)
            {
                fs::remove_file(file.path())?;
                gone += 1;
            }
        }
        if gone > 0 {
            sync_folder(&self.dir)?;
        }
        Ok(gone)
    }

    /// Writes a file whole or not at all: temporary name, sync, rename. One that is there already is the same.
    fn put(&self, name: &str, bytes: &[u8]) -> io::Result<()> {
        self.lay(name, bytes)?.settle()?;
        sync_folder(&self.dir)
    }

    /// Writes a file under a temporary name, synced; it waits for its own. One that is there already is the same.
    fn lay(&self, name: &str, bytes: &[u8]) -> io::Result<Laid> {
        let file = self.dir.join(name);
        if file.is_file() {
            return Ok(Laid { part: None, file });
        }
        fs::create_dir_all(&self.dir)?;
        let part = self.dir.join(format!("{name}.part"));
        let mut open = File::create(&part)?;
        let laid = Laid {
            part: Some(part),
            file,
        };
        open.write_all(bytes)?;
        open.sync_all()?;
        Ok(laid)
    }
}

/// A whole file under a temporary name, which goes with this.
struct Laid {
    part: Option<PathBuf>,
    file: PathBuf,
}

impl Laid {
    /// Gives it its name; that lasts once the folder is synced.
    fn settle(mut self) -> io::Result<()> {
        if let Some(part) = &self.part {
            fs::rename(part, &self.file)?;
            self.part = None;
        }
        Ok(())
    }
}

impl Drop for Laid {
    fn drop(&mut self) {
        if let Some(part) = &self.part {
            let _gone = fs::remove_file(part);
        }
    }
}

/// The file name of a rendition; none if that is no digest (an entry from elsewhere names what it likes).
fn name(sha256: &str, extension: &str, rendition: Rendition) -> Option<String> {
    digest::is_digest(sha256).then(|| match rendition {
        Rendition::Kept => format!("{sha256}.{extension}"),
        Rendition::Screen => format!("{sha256}.screen.jpg"),
        Rendition::Print => format!("{sha256}.print.jpg"),
    })
}

/// Makes a rename last through a power cut.
fn sync_folder(dir: &Path) -> io::Result<()> {
    File::open(dir)?.sync_all()
}

#[cfg(test)]
pub(crate) mod tests;
