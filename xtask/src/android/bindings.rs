//! The core as a library for this machine, and its Kotlin face.

use std::path::PathBuf;

use anyhow::{Context, Result};

use super::kotlin::{Kotlin, Module};
use super::unpack::Libraries;
use crate::bindings::{self, Language};
use crate::toolchain::{Fingerprint, Places, files_under};

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
    let library = bindings::library(places)?;
    let generated = bindings::generate(places, &library, Language::Kotlin)?;
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
