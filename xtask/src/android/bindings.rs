//! The core as a library for this machine, and its Kotlin face.

use std::path::PathBuf;
use std::process::Command;

use anyhow::{Context, Result};

use super::kotlin::{Kotlin, Module};
use super::resources::fresh;
use super::unpack::Libraries;
use crate::command;
use crate::toolchain::{Fingerprint, Places, Step, files_under, run_quietly};

/// The core's library and the generated classes that call it.
#[derive(Debug, Clone)]
pub struct Bindings {
    /// The folder that holds the library.
    pub library_folder: PathBuf,
    /// The generated Kotlin, compiled.
    pub classes: PathBuf,
    /// Changes with the library's interface, not with what it does.
    pub print: Fingerprint,
}

/// Builds the library, generates its Kotlin face and compiles that.
///
/// # Errors
/// What Cargo, the generator or the compiler say.
pub fn build(places: &Places, kotlin: &Kotlin, libraries: &Libraries) -> Result<Bindings> {
    let cargo = |arguments: &[&str]| command::run(command::cargo(&places.root).args(arguments));
    command::run(
        command::cargo(&places.root)
            .args(["build", "--quiet"])
            .args(command::PRODUCT),
    )?;
    let library = places.host_library();
    let generated = places.product("bindings/kotlin");
    let generate = Step::new(places, "bindings").file(&library)?.makes(&generated);
    generate.run(|| {
        fresh(&generated)?;
        // The generator only runs here, so it is built unoptimised: a third of the time.
        cargo(&["build", "--quiet", "--package", "holdfast-bindgen"])?;
        let generator = places.target.join("debug").join("holdfast-bindgen");
        let mut command = Command::new(generator);
        command.args(["generate", "--language", "kotlin", "--no-format", "--out-dir"]);
        run_quietly(command.arg(&generated).arg(&library).current_dir(&places.root))
    })?;
    let classes = places.product("bindings/bindings.jar");
    let mut class_path = libraries.app.clone();
    class_path.extend([libraries.jna.clone(), libraries.framework.clone()]);
    let print = kotlin.compile_generated(
        places,
        Module {
            name: "compile bindings",
            sources: files_under(&generated, ".kt")?,
            class_path,
            uses: vec![&libraries.print],
            friends: Vec::new(),
            jar: classes.clone(),
        },
    )?;
    let library_folder = library
        .parent()
        .context("the library has no folder")?
        .to_path_buf();
    Ok(Bindings {
        library_folder,
        classes,
        print,
    })
}
