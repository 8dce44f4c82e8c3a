//! The installable package: code as dex, resources, device libraries, aligned and signed.

use std::fs::{self, File};
use std::io::{Read, Write};
use std::path::{Path, PathBuf};
use std::process::Command;

use anyhow::{Context, Result, bail};
use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, ZipArchive, ZipWriter};

use super::App;
use crate::command;
use crate::toolchain::{Step, files_under, fresh, run_quietly};

/// Android's name of a processor, and Rust's.
const DEVICES: [(&str, &str); 3] = [
    ("arm64-v8a", "aarch64-linux-android"),
    ("armeabi-v7a", "armv7-linux-androideabi"),
    ("x86_64", "x86_64-linux-android"),
];

/// Packs the app into `out/holdfast.apk`.
///
/// # Errors
/// When a tool is missing or fails.
pub fn pack(app: &App) -> Result<()> {
    command::ensure("zipalign", &["zipalign"])?;
    command::ensure("apksigner", &["apksigner"])?;
    let dex = dex(app)?;
    let devices = device_libraries(app)?;
    let folder = app.places.product("apk");
    let plain = folder.join("plain.apk");
    write_package(app, &dex, &devices, &plain)?;
    let aligned = folder.join("aligned.apk");
    run_quietly(
        Command::new("zipalign")
            .args(["-f", "-p", "4"])
            .arg(&plain)
            .arg(&aligned),
    )?;
    let key = key(app)?;
    let package = app.places.out("holdfast.apk");
    fs::create_dir_all(app.places.out(""))?;
    let mut sign = Command::new("apksigner");
    sign.args(["sign", "--ks-pass", "pass:holdfast", "--ks"])
        .arg(&key);
    run_quietly(sign.arg("--out").arg(&package).arg(&aligned))?;
    run_quietly(
        Command::new("apksigner")
            .args(["verify", "--min-sdk-version", "26"])
            .arg(&package),
    )?;
    let size = fs::metadata(&package)?.len() / 1024;
    println!("out/holdfast.apk: {size} kB, signed with a key for trying out");
    if devices.is_empty() {
        println!(
            "It has NO device libraries: no Android NDK was found (ANDROID_NDK_HOME), so it installs but \
             can't start on a device."
        );
    } else {
        let names: Vec<_> = devices.iter().map(|(abi, _)| *abi).collect();
        println!("device libraries: {}", names.join(", "));
    }
    Ok(())
}

fn d8(app: &App) -> Result<Command> {
    let mut java = Command::new("java");
    java.arg("-Xmx3g")
        .arg("-cp")
        .arg(app.fetched.one("tools", "r8-")?);
    java.args([
        "com.android.tools.r8.D8",
        "--release",
        "--min-api",
        app.catalogue.version("minSdk")?,
    ]);
    java.arg("--lib").arg(&app.libraries.framework);
    Ok(java)
}

/// Dexes the libraries once, the app's own classes at each change, and merges both.
fn dex(app: &App) -> Result<PathBuf> {
    let folder = app.places.product("apk");
    fs::create_dir_all(&folder)?;
    let mut libraries = app.libraries.app.clone();
    libraries.push(app.libraries.device_jna.join("classes.jar"));
    let libraries_dex = folder.join("libraries.zip");
    let step = Step::new(&app.places, "dex libraries")
        .word(&app.libraries.print)
        .makes(&libraries_dex);
    let libraries_print = step.run(|| {
        run_quietly(
            d8(app)?
                .args(["--intermediate", "--output"])
                .arg(&libraries_dex)
                .args(&libraries),
        )
    })?;
    let mut own = app.classes.clone();
    own.extend([app.bindings.classes.clone(), app.resources.classes.clone()]);
    let merged = folder.join("dex");
    Step::new(&app.places, "dex")
        .word(&libraries_print)
        .word(&app.print)
        .files(&own)?
        .makes(merged.join("classes.dex"))
        .run(|| {
            let own_dex = folder.join("own.zip");
            let mut java = d8(app)?;
            java.arg("--intermediate");
            for library in &libraries {
                java.arg("--classpath").arg(library);
            }
            run_quietly(java.arg("--output").arg(&own_dex).args(&own))?;
            fresh(&merged)?;
            run_quietly(
                d8(app)?
                    .arg("--output")
                    .arg(&merged)
                    .arg(&libraries_dex)
                    .arg(&own_dex),
            )
        })?;
    Ok(merged)
}

/// The core for each kind of device, when there is an NDK to link it with.
fn device_libraries(app: &App) -> Result<Vec<(&'static str, PathBuf)>> {
    let Some(tools) = ndk_tools()? else {
        return Ok(Vec::new());
    };
    let api = app.catalogue.version("minSdk")?;
    let mut built = Vec::new();
    for (abi, target) in DEVICES {
        let clang_target = target.replace("armv7-", "armv7a-");
        let clang = tools.join(format!("{clang_target}{api}-clang"));
        let upper = target.to_uppercase().replace('-', "_");
        let lower = target.replace('-', "_");
        // Cargo and the C code's build scripts read these.
        let status = command::cargo(&app.places.root)
            .env(format!("CARGO_TARGET_{upper}_LINKER"), &clang)
            .env(format!("CC_{lower}"), &clang)
            .env(format!("AR_{lower}"), tools.join("llvm-ar"))
            .args([
                "build",
                "--release",
                "--package",
                "holdfast-bindings",
                "--target",
                target,
            ])
            .status()?;
        if !status.success() {
            bail!("the core did not build for {target}; is its standard library there (rustup target add)?");
        }
        built.push((abi, app.places.target.join(target).join("release/libholdfast.so")));
    }
    Ok(built)
}

/// The folder of the NDK's compilers.
fn ndk_tools() -> Result<Option<PathBuf>> {
    let Some(ndk) = ["ANDROID_NDK_HOME", "ANDROID_NDK_ROOT"]
        .iter()
        .find_map(std::env::var_os)
    else {
        return Ok(None);
    };
    let prebuilt = Path::new(&ndk).join("toolchains/llvm/prebuilt");
    let host = fs::read_dir(&prebuilt)
        .with_context(|| {
            format!(
                "{} is no NDK: it lacks toolchains/llvm/prebuilt",
                ndk.to_string_lossy()
            )
        })?
        .next()
        .context("the NDK has no compilers")??;
    Ok(Some(host.path().join("bin")))
}

fn write_package(app: &App, dex: &Path, devices: &[(&'static str, PathBuf)], to: &Path) -> Result<()> {
    let mut from = ZipArchive::new(File::open(&app.resources.package)?)?;
    let mut package = ZipWriter::new(File::create(to)?);
    for index in 0..from.len() {
        package.raw_copy_file(from.by_index_raw(index)?)?;
    }
    for file in files_under(dex, ".dex")? {
        let name = file
            .file_name()
            .unwrap_or_default()
            .to_string_lossy()
            .into_owned();
        add(&mut package, &name, &file, CompressionMethod::Deflated)?;
    }
    for (abi, library) in devices {
        // Stored and aligned: the system maps them without unpacking.
        add(
            &mut package,
            &format!("lib/{abi}/libholdfast.so"),
            library,
            CompressionMethod::Stored,
        )?;
        let jna = app
            .libraries
            .device_jna
            .join("jni")
            .join(abi)
            .join("libjnidispatch.so");
        add(
            &mut package,
            &format!("lib/{abi}/libjnidispatch.so"),
            &jna,
            CompressionMethod::Stored,
        )?;
    }
    package.finish()?;
    Ok(())
}

fn add(package: &mut ZipWriter<File>, name: &str, file: &Path, method: CompressionMethod) -> Result<()> {
    let mut bytes = Vec::new();
    File::open(file)
        .with_context(|| format!("can't read {}", file.display()))?
        .read_to_end(&mut bytes)?;
    package.start_file(name, SimpleFileOptions::default().compression_method(method))?;
    package.write_all(&bytes)?;
    Ok(())
}

/// A key for trying out, made on first use and kept with the build products.
fn key(app: &App) -> Result<PathBuf> {
    let key = app.places.product("apk/debug.keystore");
    if !key.exists() {
        let mut keytool = Command::new("keytool");
        keytool.args(["-genkeypair", "-keystore"]).arg(&key);
        keytool.args([
            "-storepass",
            "holdfast",
            "-keypass",
            "holdfast",
            "-alias",
            "debug",
        ]);
        keytool.args([
            "-keyalg",
            "RSA",
            "-keysize",
            "2048",
            "-validity",
            "10000",
            "-dname",
            "CN=Holdfast debug",
        ]);
        run_quietly(&mut keytool)?;
    }
    Ok(key)
}
