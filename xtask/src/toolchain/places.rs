//! Folders of the project and of its build products.

use std::fs;
use std::path::{Path, PathBuf};

use anyhow::Result;

use crate::layout;

/// Where sources are read and products written.
#[derive(Debug, Clone)]
pub struct Places {
    /// The workspace.
    pub root: PathBuf,
    /// Cargo's target folder.
    pub target: PathBuf,
    out: PathBuf,
}

impl Places {
    /// This checkout's folders, as absolute paths: programs are run in other folders too.
    ///
    /// # Errors
    /// When the working folder is gone.
    pub fn find() -> Result<Self> {
        Ok(Self {
            root: layout::root()?,
            target: std::path::absolute(layout::target()?)?,
            out: layout::out()?,
        })
    }

    /// A path below the workspace.
    pub fn source(&self, below: impl AsRef<Path>) -> PathBuf {
        self.root.join(below)
    }

    /// A path for fetched things and products of the shells' builds.
    pub fn product(&self, below: impl AsRef<Path>) -> PathBuf {
        self.target.join("xtask/shells").join(below)
    }

    /// A path for what is handed to the person who ran the command.
    pub fn out(&self, below: impl AsRef<Path>) -> PathBuf {
        self.out.join(below)
    }

    /// The host's library for phones, built in the release profile.
    pub fn host_library(&self) -> PathBuf {
        let name = match std::env::consts::OS {
            "windows" => "holdfast.dll",
            "macos" => "libholdfast.dylib",
            _ => "libholdfast.so",
        };
        self.target.join("release").join(name)
    }
}

/// An empty folder.
///
/// # Errors
/// When it can't be cleared or made.
pub fn fresh(folder: &Path) -> Result<PathBuf> {
    if folder.exists() {
        fs::remove_dir_all(folder)?;
    }
    fs::create_dir_all(folder)?;
    Ok(folder.to_path_buf())
}
