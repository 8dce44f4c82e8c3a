//! Android libraries unpacked: class paths, resource folders, package names, and the framework's table.

use std::fs::{self, File};
use std::io::{Read, Write};
use std::path::{Path, PathBuf};

use anyhow::{Context, Result};
use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, ZipArchive, ZipWriter};

use crate::fetch::Fetched;
use crate::toolchain::{Fingerprint, Places, Step, files_under};

/// The fetched Android libraries, ready for the compilers.
#[derive(Debug, Clone)]
pub struct Libraries {
    /// What the app is compiled and packed with.
    pub app: Vec<PathBuf>,
    /// What only tests need.
    pub test: Vec<PathBuf>,
    /// The framework, for compilers; last on a class path to run with.
    pub framework: PathBuf,
    /// Java Native Access for this machine.
    pub jna: PathBuf,
    /// Java Native Access for devices: its `classes.jar` and `jni/` folder.
    pub device_jna: PathBuf,
    /// Package names of libraries that have resources or none: each wants an `R` class.
    pub packages: Vec<String>,
    /// Unpacked libraries with a `res` folder.
    pub with_resources: Vec<PathBuf>,
    /// The framework's resource table as a package the resource compiler links against.
    pub framework_table: PathBuf,
    /// Changes with the libraries.
    pub print: Fingerprint,
}

/// Unpacks all libraries.
///
/// # Errors
/// When an archive is damaged or lacks its manifest.
pub fn unpack(places: &Places, fetched: &Fetched) -> Result<Libraries> {
    let folder = places.product("unpacked");
    let framework = fetched.one("boot", "android-all-")?;
    let framework_table = folder.join("framework.apk");
    let step = Step::new(places, "unpack")
        .word(&fetched.print)
        .makes(&framework_table);
    let print = step.run(|| {
        if folder.exists() {
            fs::remove_dir_all(&folder)?;
        }
        fs::create_dir_all(&folder)?;
        for section in ["app", "test", "appjna"] {
            for archive in fetched.section(section)?.iter().filter(|f| is_library(f)) {
                ZipArchive::new(File::open(archive)?)?
                    .extract(unpacked(&folder, archive))
                    .with_context(|| format!("can't unpack {}", archive.display()))?;
            }
        }
        write_framework_table(&framework, &framework_table)
    })?;
    let mut packages = Vec::new();
    let mut with_resources = Vec::new();
    let mut class_path = |section: &str| -> Result<Vec<PathBuf>> {
        let mut jars = Vec::new();
        for file in fetched.section(section)? {
            if !is_library(&file) {
                jars.push(file);
                continue;
            }
            let dir = unpacked(&folder, &file);
            jars.extend(Some(dir.join("classes.jar")).filter(|jar| jar.exists()));
            jars.extend(files_under(&dir.join("libs"), ".jar")?);
            packages.push(package_of(&dir)?);
            with_resources.extend(Some(dir.clone()).filter(|d| d.join("res").is_dir()));
        }
        Ok(jars)
    };
    let app = class_path("app")?;
    let test = class_path("test")?;
    packages.sort();
    packages.dedup();
    Ok(Libraries {
        app,
        test,
        framework,
        jna: fetched.one("test", "jna-")?,
        device_jna: unpacked(&folder, &fetched.one("appjna", "jna-")?),
        packages,
        with_resources,
        framework_table,
        print,
    })
}

fn is_library(file: &Path) -> bool {
    file.extension().is_some_and(|e| e == "aar")
}

fn unpacked(folder: &Path, archive: &Path) -> PathBuf {
    folder.join(archive.file_stem().unwrap_or_default())
}

/// The `package` attribute of a library's manifest.
fn package_of(library: &Path) -> Result<String> {
    let manifest = fs::read_to_string(library.join("AndroidManifest.xml"))
        .with_context(|| format!("{} has no manifest", library.display()))?;
    manifest
        .split_once("package=\"")
        .and_then(|(_, rest)| rest.split_once('"'))
        .map(|(name, _)| name.to_owned())
        .with_context(|| format!("the manifest of {} names no package", library.display()))
}

/// The resource compiler maps its input into memory, so the members are stored, not deflated.
fn write_framework_table(framework: &Path, to: &Path) -> Result<()> {
    let mut from = ZipArchive::new(File::open(framework)?)?;
    let mut table = ZipWriter::new(File::create(to)?);
    for name in ["AndroidManifest.xml", "resources.arsc"] {
        let mut bytes = Vec::new();
        from.by_name(name)?.read_to_end(&mut bytes)?;
        table.start_file(
            name,
            SimpleFileOptions::default().compression_method(CompressionMethod::Stored),
        )?;
        table.write_all(&bytes)?;
    }
    table.finish()?;
    Ok(())
}
