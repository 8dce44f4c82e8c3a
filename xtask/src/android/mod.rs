//! The Android app and the desktop window, built without Gradle: fetched by lock file, compiled step by step.

mod apk;
mod bindings;
mod desktop;
mod kotlin;
mod resources;
mod robolectric;
mod unpack;

use std::path::PathBuf;

use anyhow::Result;
use clap::Subcommand;

use crate::fetch::{self, Catalogue, Fetched};
use crate::toolchain::{Fingerprint, Places, files_under};
use bindings::Bindings;
use kotlin::{Kotlin, Module};
use resources::Resources;
use unpack::Libraries;

/// What can be done with the Android shell.
#[derive(Subcommand)]
pub enum Task {
    /// Compile the bindings, the ui, the app and the desktop shell.
    Build,
    /// Run its tests on this machine, or those of the classes whose name contains a word.
    Test {
        /// The word.
        filter: Option<String>,
    },
    /// Do a whole job in the desktop window by mouse and keyboard, in real time.
    Clicks,
    /// Pack it into out/holdfast.apk, signed with a key for trying out.
    Apk,
}

/// Does one of the tasks.
///
/// # Errors
/// What a step says.
pub fn run(task: Task) -> Result<()> {
    let places = Places::find()?;
    match task {
        Task::Build => {
            build(&places)?;
            desktop::check(&places)
        }
        Task::Test { filter } => robolectric::test(&build(&places)?, filter.as_deref()),
        Task::Clicks => desktop::click_through(&places),
        Task::Apk => apk::pack(&build(&places)?),
    }
}

/// Plays a job through the real screens and leaves pictures in `out/`.
///
/// # Errors
/// What a step says.
pub fn screenshots() -> Result<()> {
    desktop::screenshots(&Places::find()?)
}

/// Opens the window; without a display it plays a job and leaves pictures in `out/`.
///
/// # Errors
/// What a step says.
pub fn desktop() -> Result<()> {
    desktop::open(&Places::find()?)
}

/// Everything up to the compiled app.
struct App {
    places: Places,
    catalogue: Catalogue,
    fetched: Fetched,
    kotlin: Kotlin,
    libraries: Libraries,
    resources: Resources,
    bindings: Bindings,
    classes: Vec<PathBuf>,
    print: Fingerprint,
}

impl App {
    /// What the app's own classes are compiled against, without the framework.
    fn class_path(&self) -> Vec<PathBuf> {
        let mut path = self.classes.clone();
        path.push(self.bindings.classes.clone());
        path.extend(self.libraries.app.iter().cloned());
        path.push(self.resources.classes.clone());
        path
    }
}

/// Fetches what is missing and compiles core, bindings, screens and app.
///
/// # Errors
/// What a step says.
fn build(places: &Places) -> Result<App> {
    let catalogue = Catalogue::read(places)?;
    let fetched = fetch::fetch(places, &catalogue, "android-lock.txt")?;
    let aapt2 = fetch::fetch_aapt2(places, &catalogue)?;
    let libraries = unpack::unpack(places, &fetched)?;
    let kotlin = Kotlin::new(places, &catalogue, &fetched)?;
    let bindings = bindings::build(places, &kotlin, &libraries)?;
    let resources = resources::link(places, &catalogue, &aapt2, &libraries)?;

    let mut class_path = vec![bindings.classes.clone()];
    class_path.extend(libraries.app.iter().cloned());
    class_path.extend([libraries.jna.clone(), libraries.framework.clone()]);
    let ui = places.product("app/ui.jar");
    let ui_print = kotlin.compile(
        places,
        Module {
            name: "compile ui",
            sources: files_under(&places.source("android/ui/src/main/kotlin"), ".kt")?,
            class_path: class_path.clone(),
            uses: vec![&bindings.print, &libraries.print],
            friends: Vec::new(),
            jar: ui.clone(),
        },
    )?;
    class_path.insert(0, ui.clone());
    class_path.push(resources.classes.clone());
    let app = places.product("app/app.jar");
    let print = kotlin.compile(
        places,
        Module {
            name: "compile app",
            sources: files_under(&places.source("android/app/src/main/kotlin"), ".kt")?,
            class_path,
            uses: vec![&ui_print, &resources.print],
            friends: Vec::new(),
            jar: app.clone(),
        },
    )?;
    let places = places.clone();
    let classes = vec![app, ui];
    Ok(App {
        places,
        catalogue,
        fetched,
        kotlin,
        libraries,
        resources,
        bindings,
        classes,
        print,
    })
}
