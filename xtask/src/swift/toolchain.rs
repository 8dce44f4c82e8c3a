//! A Swift that can build the package: this machine's own, or Debian's in a folder of its own.

use std::fmt::{self, Display};
use std::path::PathBuf;
use std::process::Command;

use anyhow::{Context, Result, bail};

use super::debian;
use crate::command;
use crate::toolchain::Places;

/// The package asks for its language mode.
const OLDEST: u32 = 6;

/// Where Swift is.
#[derive(Debug)]
pub enum Swift {
    /// On the path.
    Here,
    /// In a Debian of its own: this folder is its root; it sees the other folders where they are.
    Inside {
        /// Its root.
        root: PathBuf,
        /// What it sees of this machine.
        sees: Vec<PathBuf>,
    },
}

impl Swift {
    /// Runs one of its programs.
    pub fn command(&self, program: &str) -> Command {
        match self {
            Self::Here => Command::new(program),
            Self::Inside { root, sees } => debian::inside(root, sees, program),
        }
    }
}

impl Display for Swift {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Here => f.write_str("this machine's own"),
            Self::Inside { .. } => f.write_str("Debian's, in a folder of its own"),
        }
    }
}

/// Finds Swift, or makes the folder in which it can be run; that takes minutes, once.
///
/// # Errors
/// Why there is none: for a person to read.
pub fn find(places: &Places) -> Result<Swift> {
    if cfg!(target_os = "macos") {
        bail!("on a Mac Xcode tests the package; ios/README.md says how");
    }
    if command::have("swift") {
        return own();
    }
    let root = debian::root()?;
    let folders = [places.root.clone(), places.target.clone()];
    let sees = folders.map(|folder| std::fs::canonicalize(&folder).unwrap_or(folder));
    Ok(Swift::Inside {
        root,
        sees: sees.into(),
    })
}

fn own() -> Result<Swift> {
    let out = Command::new("swift")
        .arg("--version")
        .output()
        .context("asking Swift for its version")?;
    let words = String::from_utf8_lossy(&out.stdout).into_owned();
    match major(&words) {
        Some(major) if major >= OLDEST => Ok(Swift::Here),
        _ => bail!(
            "Swift {OLDEST} or later is needed; this one says: {}",
            words.trim()
        ),
    }
}

/// The first number of `Swift version 6.0.3 (…)`.
fn major(words: &str) -> Option<u32> {
    let (_, after) = words.split_once("Swift version ")?;
    after.split('.').next()?.parse().ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_version_is_read_from_the_words() {
        assert_eq!(
            major("Swift version 6.0.3 (swift-6.0.3-RELEASE)\nTarget: x"),
            Some(6)
        );
        assert_eq!(
            major("swift-driver version: 1.1 Apple Swift version 5.10 (x)"),
            Some(5)
        );
        assert_eq!(major("no such program"), None);
    }
}
