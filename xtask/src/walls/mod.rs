//! Walls that a machine can check: which crate may use which, where the foreign-function library and the
//! generated handle may appear, what a shell's pure part may not import, that no sentence of the job stands in a shell,
//! and that each shell has all that the core asks of one.

mod shells;
mod words;

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

use anyhow::{Context, Result, bail};

use crate::layout;

/// Which of our crates each crate may use (`tests` and `xtask` may use any).
const EDGES: [(&str, &[&str]); 7] = [
    ("holdfast-measure", &[]),
    ("holdfast-diagnose", &["holdfast-measure"]),
    ("holdfast-joblog", &["holdfast-measure"]),
    ("holdfast-report", &["holdfast-measure"]),
    (
        "holdfast-companion",
        &[
            "holdfast-measure",
            "holdfast-diagnose",
            "holdfast-joblog",
            "holdfast-report",
        ],
    ),
    ("holdfast-bindings", &["holdfast-companion"]),
    ("holdfast-bindgen", &[]),
];

/// Words that may stand only below the named folders, in files of the given kind.
const WORDS: [Wall; 9] = [
    Wall {
        word: "uniffi",
        kind: "rs",
        below: "core",
        allowed: &["core/companion"],
    },
    Wall {
        word: "holdfast.core.Holdfast",
        kind: "kt",
        below: "android",
        allowed: &["android/ui/src/main/kotlin/holdfast/ui/bridge"],
    },
    Wall {
        word: "import android.",
        kind: "kt",
        below: "android/ui",
        allowed: &[],
    },
    Wall {
        word: "import android.",
        kind: "kt",
        below: "android/desktop",
        allowed: &[],
    },
    Wall {
        word: "Holdfast.open",
        kind: "swift",
        below: "ios",
        allowed: &["ios/Sources/HoldfastCore", "ios/Tests"],
    },
    Wall {
        word: "import SwiftUI",
        kind: "swift",
        below: "ios",
        allowed: &["ios/Sources/HoldfastApp", "ios/App", "ios/Tests/StandIn"],
    },
    Wall {
        word: "import UIKit",
        kind: "swift",
        below: "ios",
        allowed: &["ios/Sources/HoldfastApp/Phone"],
    },
    Wall {
        word: "import AVFoundation",
        kind: "swift",
        below: "ios",
        allowed: &["ios/Sources/HoldfastApp/Phone"],
    },
    Wall {
        word: "import CoreMotion",
        kind: "swift",
        below: "ios",
        allowed: &["ios/Sources/HoldfastApp/Phone"],
    },
];

struct Wall {
    word: &'static str,
    kind: &'static str,
    below: &'static str,
    allowed: &'static [&'static str],
}

/// Checks all walls; every breach is listed.
pub fn check() -> Result<()> {
    let root = layout::root()?;
    let mut breaches = crate_edges(&root)?;
    for wall in &WORDS {
        breaches.extend(misplaced(&root, wall)?);
    }
    breaches.extend(words::sentences(&root)?);
    breaches.extend(shells::lacks(&root)?);
    if !breaches.is_empty() {
        bail!("walls broken:\n  {}", breaches.join("\n  "));
    }
    Ok(())
}

fn crate_edges(root: &Path) -> Result<Vec<String>> {
    let metadata = cargo_metadata::MetadataCommand::new()
        .current_dir(root)
        .no_deps()
        .exec()?;
    let mut seen = BTreeSet::new();
    let mut breaches = Vec::new();
    for package in &metadata.packages {
        let name = package.name.to_string();
        let Some((_, allowed)) = EDGES.iter().find(|(of, _)| *of == name) else {
            continue;
        };
        seen.insert(name.clone());
        for dependency in package.dependencies.iter().filter(|d| d.path.is_some()) {
            if !allowed.contains(&dependency.name.as_str()) {
                breaches.push(format!("{name} may not use {}", dependency.name));
            }
        }
    }
    if seen.len() != EDGES.len() {
        bail!(
            "the walls name {} crates and {} were found",
            EDGES.len(),
            seen.len()
        );
    }
    Ok(breaches)
}

fn misplaced(root: &Path, wall: &Wall) -> Result<Vec<String>> {
    let mut files = Vec::new();
    gather(&root.join(wall.below), wall.kind, &mut files)?;
    if files.is_empty() {
        bail!(
            "no .{} file below {}: the wall guards nothing",
            wall.kind,
            wall.below
        );
    }
    let mut breaches = Vec::new();
    for file in files {
        let place = file.strip_prefix(root).context("below the root")?.to_path_buf();
        if wall.allowed.iter().any(|a| place.starts_with(a)) {
            continue;
        }
        let text = std::fs::read_to_string(&file).with_context(|| format!("reading {}", place.display()))?;
        for (number, line) in text.lines().enumerate() {
            let code = line.trim_start();
            if !code.starts_with("//") && code.contains(wall.word) {
                breaches.push(format!("{}:{} says `{}`", place.display(), number + 1, wall.word));
            }
        }
    }
    Ok(breaches)
}

fn gather(dir: &Path, kind: &str, files: &mut Vec<PathBuf>) -> Result<()> {
    for entry in std::fs::read_dir(dir).with_context(|| format!("reading {}", dir.display()))? {
        let path = entry?.path();
        if path.is_dir() {
            gather(&path, kind, files)?;
        } else if path.extension().is_some_and(|e| e == kind) {
            files.push(path);
        }
    }
    Ok(())
}
