//! Build steps that are skipped while nothing they read has changed.

use std::fmt::{self, Display};
use std::fs;
use std::path::{Path, PathBuf};
use std::time::Instant;

use anyhow::{Context, Result};
use sha2::{Digest, Sha256};

use super::Places;

/// What a step's inputs were: the SHA-256 over all of them.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Fingerprint(String);

impl Display for Fingerprint {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

/// A step with a name, its inputs so far, and the products that must exist for it to be skipped.
pub struct Step<'a> {
    places: &'a Places,
    name: &'static str,
    inputs: Sha256,
    products: Vec<PathBuf>,
}

impl<'a> Step<'a> {
    /// Begins to describe a step. Two steps of one name would overwrite each other's mark.
    pub fn new(places: &'a Places, name: &'static str) -> Self {
        Self {
            places,
            name,
            inputs: Sha256::new(),
            products: Vec::new(),
        }
    }

    /// A word that changes the product: a version, an option, another step's fingerprint.
    pub fn word(mut self, word: impl Display) -> Self {
        let text = word.to_string();
        self.inputs.update((text.len() as u64).to_le_bytes());
        self.inputs.update(text.as_bytes());
        self
    }

    /// A file by its name and content.
    ///
    /// # Errors
    /// When it can't be read.
    pub fn file(mut self, path: &Path) -> Result<Self> {
        let bytes = fs::read(path).with_context(|| format!("can't read {}", path.display()))?;
        let name = path
            .strip_prefix(&self.places.root)
            .unwrap_or(path)
            .to_string_lossy()
            .into_owned();
        self = self.word(name).word(bytes.len());
        self.inputs.update(&bytes);
        Ok(self)
    }

    /// Files by their names and contents.
    ///
    /// # Errors
    /// When one can't be read.
    pub fn files(mut self, paths: &[PathBuf]) -> Result<Self> {
        for path in paths {
            self = self.file(path)?;
        }
        Ok(self)
    }

    /// Something the step writes.
    pub fn makes(mut self, product: impl Into<PathBuf>) -> Self {
        self.products.push(product.into());
        self
    }

    /// Does the work unless the same inputs already gave the products.
    ///
    /// # Errors
    /// Those of the work; the step then counts as not done.
    pub fn run(self, work: impl FnOnce() -> Result<()>) -> Result<Fingerprint> {
        let digest = self.inputs.finalize();
        let print = Fingerprint(digest.iter().map(|b| format!("{b:02x}")).collect());
        let mark = self.places.product("done").join(self.name);
        let same = fs::read_to_string(&mark).is_ok_and(|old| old == print.0);
        if same && self.products.iter().all(|p| p.exists()) {
            return Ok(print);
        }
        if mark.exists() {
            fs::remove_file(&mark)?;
        }
        let begin = Instant::now();
        work().with_context(|| format!("step '{}' failed", self.name))?;
        if let Some(folder) = mark.parent() {
            fs::create_dir_all(folder)?;
        }
        fs::write(&mark, &print.0)?;
        eprintln!("  {} ({:.1} s)", self.name, begin.elapsed().as_secs_f32());
        Ok(print)
    }
}

/// All files below a folder whose names end so, in a fixed order. No ending takes every file.
///
/// # Errors
/// When a folder can't be read; a folder that doesn't exist has no files.
pub fn files_under(folder: &Path, ending: &str) -> Result<Vec<PathBuf>> {
    let mut found = Vec::new();
    let mut todo = vec![folder.to_path_buf()];
    while let Some(dir) = todo.pop() {
        if !dir.is_dir() {
            continue;
        }
        for entry in fs::read_dir(&dir).with_context(|| format!("can't read {}", dir.display()))? {
            let path = entry?.path();
            if path.is_dir() {
                todo.push(path);
            } else if path.to_string_lossy().ends_with(ending) {
                found.push(path);
            }
        }
    }
    found.sort();
    Ok(found)
}
