//! Fonts for scripts that the embedded family lacks: files that the shell has, taken from the shelf when a text first
//! needs them.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use skrifa::charmap::Charmap;
use skrifa::raw::FileRef;
use skrifa::string::StringId;
use skrifa::{FontRef, MetadataProvider};

use super::scripts::{files_of, script_of, scripts_of};
use crate::scene::Weight;

/// No font file is larger than this: a family for all of Chinese, Japanese and Korean is a third of it.
const MOST_BYTES: u64 = 64 << 20;

/// One face of a font file.
#[derive(Clone)]
pub(crate) struct Extra {
    /// The family's name.
    pub(crate) family: String,
    /// The file.
    pub(crate) bytes: Arc<Vec<u8>>,
    /// Which face of the file.
    pub(crate) index: u32,
}

impl Extra {
    pub(crate) fn font(&self) -> Option<FontRef<'_>> {
        FontRef::from_index(&self.bytes, self.index).ok()
    }

    fn charmap(&self) -> Option<Charmap<'_>> {
        self.font().map(|font| font.charmap())
    }

    /// Whether it has a character.
    pub(super) fn has(&self, c: char) -> bool {
        self.charmap().is_some_and(|map| map.map(c).is_some())
    }
}

/// A font file that was read.
pub(super) struct FontFile {
    /// The weight it is for.
    pub(super) weight: Weight,
    /// What is in it.
    pub(super) bytes: Arc<Vec<u8>>,
}

/// The files there are, and what was asked of them.
#[derive(Default)]
pub(super) struct Shelf {
    files: Vec<PathBuf>,
    asked: BTreeSet<usize>,
}

impl Shelf {
    pub(super) fn of(files: &[PathBuf]) -> Self {
        let mut files = files.to_vec();
        // The same files in any order give the same page.
        files.sort();
        Self {
            files,
            asked: BTreeSet::new(),
        }
    }

    /// The files for the scripts of a text that were not asked for before.
    pub(super) fn files_for(&mut self, text: &str) -> Vec<FontFile> {
        if self.files.is_empty() {
            return Vec::new();
        }
        let scripts: BTreeSet<usize> = text.chars().filter_map(script_of).collect();
        let new: Vec<usize> = scripts.difference(&self.asked).copied().collect();
        new.into_iter().flat_map(|script| self.take(script)).collect()
    }

    /// The first family on the shelf for a script, regular and, where there is one, bold. Scripts that share its files
    /// need not ask again.
    fn take(&mut self, script: usize) -> Vec<FontFile> {
        if self.asked.contains(&script) {
            return Vec::new();
        }
        let names = files_of(script);
        self.asked.extend(scripts_of(names));
        for name in names {
            let found: Vec<FontFile> = [(Weight::Regular, "Regular"), (Weight::Bold, "Bold")]
                .into_iter()
                .filter_map(|(weight, ending)| read(self.file(name, ending)?, weight))
                .collect();
            if !found.is_empty() {
                return found;
            }
        }
        Vec::new()
    }

    /// A file of a family by its weight: `NotoSansHebrew-Bold.ttf`. One that holds all weights stands for the regular.
    fn file(&self, family: &str, weight: &str) -> Option<&Path> {
        let named = |path: &&PathBuf| {
            let stem = path.file_stem().unwrap_or_default().to_string_lossy();
            stem.strip_prefix(family)
                .is_some_and(|rest| match rest.strip_prefix(['-', '[']) {
                    Some(rest) => rest == weight || (weight == "Regular" && rest.starts_with("VF")),
                    None => rest.is_empty() && weight == "Regular",
                })
        };
        self.files.iter().find(named).map(PathBuf::as_path)
    }
}

/// A file with its faces; none where it can't be read or is no font.
fn read(file: &Path, weight: Weight) -> Option<FontFile> {
    if std::fs::metadata(file).ok()?.len() > MOST_BYTES {
        return None;
    }
    let bytes = Arc::new(std::fs::read(file).ok()?);
    FileRef::new(&bytes).ok()?;
    Some(FontFile { weight, bytes })
}

impl FontFile {
    /// Its faces: one, or several of a collection.
    pub(super) fn faces(&self) -> Vec<Extra> {
        let count = match FileRef::new(&self.bytes) {
            Ok(FileRef::Collection(collection)) => collection.len(),
            Ok(FileRef::Font(_)) => 1,
            Err(_) => 0,
        };
        (0..count).filter_map(|index| self.face(index)).collect()
    }

    fn face(&self, index: u32) -> Option<Extra> {
        let font = FontRef::from_index(&self.bytes, index).ok()?;
        let name = |id| {
            font.localized_strings(id)
                .english_or_first()
                .map(|s| s.to_string())
        };
        let family = name(StringId::TYPOGRAPHIC_FAMILY_NAME).or_else(|| name(StringId::FAMILY_NAME))?;
        Some(Extra {
            family,
            bytes: Arc::clone(&self.bytes),
            index,
        })
    }
}
