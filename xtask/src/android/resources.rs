//! The app's resources: compiled and linked by aapt2, with the `R` classes of the app and all libraries.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use anyhow::Result;

use super::unpack::Libraries;
use crate::fetch::Catalogue;
use crate::toolchain::{Fingerprint, Places, Step, files_under, fresh, run_quietly};

/// The app's linked resources.
#[derive(Debug, Clone)]
pub struct Resources {
    /// Table, manifest and files: the package to which code is added.
    pub package: PathBuf,
    /// The `R` classes.
    pub classes: PathBuf,
    /// The manifest they belong to.
    pub manifest: PathBuf,
    /// Changes with the resources.
    pub print: Fingerprint,
}

/// Where the report's fonts live; the app shows the same.
pub const FONTS: &str = "core/report/fonts";

/// The fonts that are taken along, with the name a resource must have.
pub const FONT_FILES: [(&str, &str); 2] = [
    ("NotoSans-Regular.ttf", "noto_sans_regular.ttf"),
    ("NotoSans-Bold.ttf", "noto_sans_bold.ttf"),
];

/// Compiles and links the resources of the app and of its libraries.
///
/// # Errors
/// What the resource compiler or `javac` say.
pub fn link(
    places: &Places,
    catalogue: &Catalogue,
    aapt2: &Path,
    libraries: &Libraries,
) -> Result<Resources> {
    let folder = places.product("resources");
    let compiled = compile_libraries(places, aapt2, libraries, &folder.join("libraries"))?;
    let main = places.source("android/app/src/main");
    let manifest = main.join("AndroidManifest.xml");
    let package = folder.join("resources.apk");
    let classes = folder.join("r.jar");
    let fonts: Vec<_> = FONT_FILES
        .iter()
        .map(|(file, _)| places.source(FONTS).join(file))
        .collect();
    let (min, target) = (catalogue.version("minSdk")?, catalogue.version("targetSdk")?);
    let step = Step::new(places, "resources")
        .word(&compiled)
        .word(min)
        .word(target)
        .file(&manifest)?
        .files(&files_under(&main.join("res"), "")?)?
        .files(&fonts)?
        .makes(&package)
        .makes(&classes);
    let print = step.run(|| {
        let font_folder = folder.join("fonts/font");
        fs::create_dir_all(&font_folder)?;
        for (from, (_, name)) in fonts.iter().zip(FONT_FILES) {
            fs::copy(from, font_folder.join(name))?;
        }
        let mut parts = files_under(&folder.join("libraries"), ".zip")?;
        for (name, res) in [("app.zip", main.join("res")), ("fonts.zip", folder.join("fonts"))] {
            let part = folder.join(name);
            run_quietly(
                Command::new(aapt2)
                    .arg("compile")
                    .arg("--dir")
                    .arg(res)
                    .arg("-o")
                    .arg(&part),
            )?;
            parts.push(part);
        }
        let generated = fresh(&folder.join("generated"))?;
        let mut link = Command::new(aapt2);
        link.arg("link")
            .arg("-I")
            .arg(&libraries.framework_table)
            .arg("--manifest")
            .arg(&manifest);
        link.args([
            "--auto-add-overlay",
            "--min-sdk-version",
            min,
            "--target-sdk-version",
            target,
        ]);
        link.args(["--version-code", "1", "--version-name", env!("CARGO_PKG_VERSION")]);
        link.arg("--java").arg(&generated);
        link.arg("--extra-packages").arg(libraries.packages.join(":"));
        link.arg("-o").arg(&package);
        for part in &parts {
            link.arg("-R").arg(part);
        }
        run_quietly(&mut link)?;
        let compiled = fresh(&folder.join("compiled"))?;
        let mut javac = Command::new("javac");
        run_quietly(
            javac
                .arg("-nowarn")
                .arg("-d")
                .arg(&compiled)
                .args(files_under(&generated, "R.java")?),
        )?;
        run_quietly(
            Command::new("jar")
                .args(["-c", "-f"])
                .arg(&classes)
                .arg("-C")
                .arg(&compiled)
                .arg("."),
        )
    })?;
    Ok(Resources {
        package,
        classes,
        manifest,
        print,
    })
}

fn compile_libraries(places: &Places, aapt2: &Path, libraries: &Libraries, to: &Path) -> Result<Fingerprint> {
    Step::new(places, "library resources")
        .word(&libraries.print)
        .makes(to)
        .run(|| {
            fresh(to)?;
            for library in &libraries.with_resources {
                let name = library
                    .file_name()
                    .unwrap_or_default()
                    .to_string_lossy()
                    .into_owned();
                let mut aapt = Command::new(aapt2);
                aapt.arg("compile").arg("--dir").arg(library.join("res"));
                run_quietly(aapt.arg("-o").arg(to.join(name + ".zip")))?;
            }
            Ok(())
        })
}
