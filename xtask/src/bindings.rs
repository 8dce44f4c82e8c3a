//! The core as a library for this machine, and the sources by which Kotlin and Swift call it.

use std::path::{Path, PathBuf};
use std::process::Command;

use anyhow::Result;

use crate::command;
use crate::toolchain::{Places, Step, fresh, run_quietly};

/// A language that calls the core.
#[derive(Debug, Clone, Copy)]
pub enum Language {
    /// For Android and the desktop.
    Kotlin,
    /// For iOS.
    Swift,
}

/// Builds the library, together with all that is shipped.
///
/// # Errors
/// What Cargo says.
pub fn library(places: &Places) -> Result<PathBuf> {
    if !places.host_library().exists() {
        eprintln!("compiling the core; the first time that takes minutes");
    }
    command::run(
        command::cargo(&places.root)
            .args(["build", "--quiet"])
            .args(command::PRODUCT),
    )?;
    Ok(places.host_library())
}

/// Writes the sources that call the library into a folder of their own.
///
/// # Errors
/// What Cargo or the generator say.
pub fn generate(places: &Places, library: &Path, language: Language) -> Result<PathBuf> {
    let (name, step) = match language {
        Language::Kotlin => ("kotlin", "bindings"),
        Language::Swift => ("swift", "swift bindings"),
    };
    let generated = places.product("bindings").join(name);
    Step::new(places, step)
        .file(library)?
        .file(&places.source("core/companion/uniffi.toml"))?
        .makes(&generated)
        .run(|| {
            fresh(&generated)?;
            // The generator only runs here, so it is built unoptimised: a third of the time.
            command::run(command::cargo(&places.root).args([
                "build",
                "--quiet",
                "--package",
                "holdfast-bindgen",
            ]))?;
            let mut generator = Command::new(places.target.join("debug").join("holdfast-bindgen"));
            generator.args(["generate", "--language", name, "--no-format", "--out-dir"]);
            run_quietly(generator.arg(&generated).arg(library).current_dir(&places.root))
        })?;
    Ok(generated)
}
