//! Where things are in this checkout.

use std::path::{Path, PathBuf};

use anyhow::{Context, Result};

/// The checkout's root: the one Cargo was called in, which need not be the one this was compiled in.
pub fn root() -> Result<PathBuf> {
    let here = std::env::var_os("CARGO_MANIFEST_DIR").map(PathBuf::from);
    here.as_deref()
        .unwrap_or_else(|| Path::new(env!("CARGO_MANIFEST_DIR")))
        .parent()
        .map(Path::to_path_buf)
        .context("xtask sits below the root")
}

/// Cargo's target folder: `CARGO_TARGET_DIR` or the checkout's own.
pub fn target() -> Result<PathBuf> {
    match std::env::var_os("CARGO_TARGET_DIR") {
        Some(dir) => Ok(PathBuf::from(dir)),
        None => Ok(root()?.join("target")),
    }
}

/// What xtask fetches and makes besides cargo's products.
pub fn work(part: &str) -> Result<PathBuf> {
    let dir = target()?.join("xtask").join(part);
    std::fs::create_dir_all(&dir).with_context(|| format!("making {}", dir.display()))?;
    Ok(dir)
}

/// What a person is meant to look at.
pub fn out() -> Result<PathBuf> {
    let dir = root()?.join("out");
    std::fs::create_dir_all(&dir).with_context(|| format!("making {}", dir.display()))?;
    Ok(dir)
}
