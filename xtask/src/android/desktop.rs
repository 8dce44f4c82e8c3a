//! The same screens in a window of this machine, or without one.

use std::path::PathBuf;
use std::process::Command;

use anyhow::{Context, Result};

use super::bindings::{self, Bindings};
use super::kotlin::{Kotlin, Module, QUICK_JAVA};
use super::resources::{FONT_FILES, FONTS};
use super::unpack;
use crate::command;
use crate::fetch::{self, Catalogue};
use crate::test::SCENARIO;
use crate::toolchain::{Fingerprint, Places, files_under};

/// The compiled window.
struct Desktop {
    kotlin: Kotlin,
    jar: PathBuf,
    class_path: Vec<PathBuf>,
    bindings: Bindings,
    print: Fingerprint,
}

fn build(places: &Places) -> Result<Desktop> {
    let catalogue = Catalogue::read(places)?;
    let android = fetch::fetch(places, &catalogue, "android-lock.txt")?;
    let desktop = fetch::fetch(places, &catalogue, "desktop-lock.txt")?;
    let libraries = unpack::unpack(places, &android)?;
    let kotlin = Kotlin::new(places, &catalogue, &android)?;
    let bindings = bindings::build(places, &kotlin, &libraries)?;
    let jar = places.product("desktop/desktop.jar");
    let mut sources = files_under(&places.source("android/ui/src/main/kotlin"), ".kt")?;
    for more in ["android/ui/src/demo/kotlin", "android/desktop/src/main/kotlin"] {
        sources.extend(files_under(&places.source(more), ".kt")?);
    }
    let mut class_path = vec![bindings.classes.clone()];
    class_path.extend(desktop.section("desktop")?);
    let print = kotlin.compile(
        places,
        Module {
            name: "compile desktop",
            sources,
            class_path: class_path.clone(),
            uses: vec![&bindings.print, &desktop.print],
            friends: Vec::new(),
            jar: jar.clone(),
        },
    )?;
    class_path.insert(0, jar.clone());
    Ok(Desktop {
        kotlin,
        jar,
        class_path,
        bindings,
        print,
    })
}

impl Desktop {
    /// The command that runs a class of the window, given what starts Java.
    fn java(&self, places: &Places, mut java: Command) -> Result<Command> {
        java.args(QUICK_JAVA);
        java.arg(format!(
            "-Djna.library.path={}",
            self.bindings.library_folder.display()
        ));
        java.arg(format!("-Dskiko.data.path={}", places.product("skiko").display()));
        for (key, (file, _)) in ["regular", "bold"].iter().zip(FONT_FILES) {
            java.arg(format!(
                "-Dholdfast.font.{key}={}",
                places.source(FONTS).join(file).display()
            ));
        }
        java.arg(format!(
            "-Dholdfast.scenario={}",
            places.source(SCENARIO).display()
        ));
        java.arg("-cp").arg(std::env::join_paths(&self.class_path)?);
        Ok(java)
    }
}

/// Compiles the window.
///
/// # Errors
/// What a step says.
pub fn check(places: &Places) -> Result<()> {
    build(places).map(|_| ())
}

/// Opens the window; without a display it plays a job and leaves pictures and the report in `out/`.
///
/// # Errors
/// What a step says.
pub fn open(places: &Places) -> Result<()> {
    let desktop = build(places)?;
    if has_display() {
        let mut java = desktop.java(places, Command::new("java"))?;
        java.arg("holdfast.desktop.WindowKt")
            .arg(places.product("desktop/data"));
        command::run(&mut java).context("the window closed with an error")
    } else {
        eprintln!("no display: a demonstration job is played instead");
        play(places, &desktop)
    }
}

/// Plays a job through the real screens and leaves a picture of each in `out/`.
///
/// # Errors
/// What a step says.
pub fn screenshots(places: &Places) -> Result<()> {
    let desktop = build(places)?;
    play(places, &desktop)
}

fn play(places: &Places, desktop: &Desktop) -> Result<()> {
    let pictures = pictures(places)?;
    let mut java = desktop.java(places, Command::new("java"))?;
    java.args(["-Djava.awt.headless=true", "holdfast.desktop.DemonstrationKt"])
        .arg(places.out(""))
        .arg(pictures);
    command::run(&mut java).context("the demonstration failed")
}

/// The demo job's photos, drawn by the project's own program.
fn pictures(places: &Places) -> Result<PathBuf> {
    let to = places.product("desktop/pictures");
    command::run(
        command::cargo(&places.root)
            .args(["build", "--quiet"])
            .args(command::PRODUCT),
    )?;
    command::run(Command::new(places.target.join("release/holdfast-pictures")).arg(&to))?;
    Ok(to)
}

/// Does a whole job in the window with a mouse and a keyboard, on a display of its own that nobody sees.
///
/// # Errors
/// What a step says, or that the job did not end with a report.
pub fn click_through(places: &Places) -> Result<()> {
    command::ensure("xvfb-run", &["xvfb", "xauth"])?;
    let mut desktop = build(places)?;
    let jar = places.product("desktop/clicks.jar");
    desktop.kotlin.compile(
        places,
        Module {
            name: "compile clicks",
            sources: files_under(&places.source("android/desktop/src/test/kotlin"), ".kt")?,
            class_path: desktop.class_path.clone(),
            uses: vec![&desktop.print],
            friends: vec![desktop.jar.clone()],
            jar: jar.clone(),
        },
    )?;
    desktop.class_path.insert(0, jar);
    let mut display = Command::new("xvfb-run");
    display.args(["-a", "-s", "-screen 0 900x1000x24", "java"]);
    let mut java = desktop.java(places, display)?;
    java.env("SKIKO_RENDER_API", "SOFTWARE");
    java.arg("holdfast.desktop.ClickThroughKt").arg(places.out(""));
    command::run(&mut java).context("the job by clicks failed")
}

fn has_display() -> bool {
    let set = |name: &str| std::env::var_os(name).is_some_and(|v| !v.is_empty());
    cfg!(not(target_os = "linux")) || set("DISPLAY") || set("WAYLAND_DISPLAY")
}
