//! The app's tests under Robolectric: the real screens on a simulated Android, calling the real core.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use anyhow::{Context, Result, bail};

use super::App;
use super::kotlin::{Module, QUICK_JAVA};
use crate::test::SCENARIO;
use crate::toolchain::{files_under, fresh};

/// Compiles the tests and runs all of them, or the classes whose name contains `filter`.
///
/// # Errors
/// When something doesn't compile or a test fails.
pub fn test(app: &App, filter: Option<&str>) -> Result<()> {
    let sources_root = app.places.source("android/app/src/test/kotlin");
    let mut sources = files_under(&sources_root, ".kt")?;
    for more in ["android/ui/src/states/kotlin", "android/ui/src/demo/kotlin"] {
        sources.extend(files_under(&app.places.source(more), ".kt")?);
    }
    let jar = app.places.product("app/tests.jar");
    let mut class_path = app.class_path();
    class_path.extend(app.libraries.test.iter().cloned());
    class_path.push(app.libraries.framework.clone());
    app.kotlin.compile(
        &app.places,
        Module {
            name: "compile tests",
            sources: sources.clone(),
            class_path: class_path.clone(),
            uses: vec![&app.print],
            friends: app.classes.clone(),
            jar: jar.clone(),
        },
    )?;
    let configuration = configure(app)?;
    let mut run_path = vec![configuration, jar];
    run_path.append(&mut class_path);
    let classes: Vec<_> = sources
        .iter()
        .filter(|source| source.to_string_lossy().ends_with("Test.kt"))
        .filter_map(|source| class_name(&sources_root, source))
        .filter(|name| filter.is_none_or(|part| name.contains(part)))
        .collect();
    let pictures = app.places.out("tests");
    fs::create_dir_all(&pictures)?;
    let mut java = Command::new("java");
    java.args(QUICK_JAVA)
        .arg("-Xmx3g")
        .arg("-Drobolectric.offline=true");
    // Robolectric reaches into the file descriptors it simulates.
    java.arg("--add-opens=java.base/java.io=ALL-UNNAMED");
    java.arg(property("robolectric.dependency.dir", &app.fetched.folder("sdk")));
    java.arg(property("jna.library.path", &app.bindings.library_folder));
    java.arg(property(
        "holdfast.golden",
        &app.places.source("android/app/src/test/golden"),
    ));
    java.arg(property("holdfast.pictures", &pictures));
    java.arg(property("holdfast.scenario", &app.places.source(SCENARIO)));
    if std::env::var_os("HOLDFAST_RECORD").is_some() {
        // Only after looking at out/tests: these become the pictures that later ones are held against.
        java.arg("-Dholdfast.record=yes");
    }
    java.arg("-cp").arg(std::env::join_paths(run_path)?);
    java.arg("holdfast.app.RunnerKt").args(classes);
    // Each failure has been told; the command line with its long class path would only hide that.
    let status = java.status().context("can't run java: is a JDK installed?")?;
    if status.success() {
        Ok(())
    } else {
        bail!("the app's tests failed")
    }
}

/// The two property files that tell Robolectric about the app and about the phone to simulate.
fn configure(app: &App) -> Result<PathBuf> {
    let folder = fresh(&app.places.product("app/robolectric"))?;
    let tools = folder.join("com/android/tools");
    fs::create_dir_all(&tools)?;
    fs::write(
        tools.join("test_config.properties"),
        format!(
            "android_merged_manifest={}\nandroid_resource_apk={}\nandroid_custom_package=holdfast.app\n",
            app.resources.manifest.display(),
            app.resources.package.display()
        ),
    )?;
    let sdk = app.catalogue.version("compileSdk")?;
    fs::write(
        folder.join("robolectric.properties"),
        format!("sdk={sdk}\ngraphicsMode=NATIVE\nqualifiers=w411dp-h891dp-420dpi\n"),
    )?;
    Ok(folder)
}

fn property(name: &str, value: &Path) -> String {
    format!("-D{name}={}", value.display())
}

/// `holdfast/app/JobTest.kt` below the root is the class `holdfast.app.JobTest`.
fn class_name(root: &Path, source: &Path) -> Option<String> {
    let below = source.strip_prefix(root).ok()?.with_extension("");
    let parts: Vec<_> = below
        .iter()
        .map(|part| part.to_string_lossy().into_owned())
        .collect();
    Some(parts.join("."))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_test_file_names_its_class() {
        let name = class_name(Path::new("a"), Path::new("a/holdfast/app/JobTest.kt"));
        assert_eq!(name.as_deref(), Some("holdfast.app.JobTest"));
    }
}
