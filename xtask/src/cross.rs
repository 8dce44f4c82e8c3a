//! Type-checks the library that phones load for Android and iOS, by a compiler from Debian's packages.
//!
//! rustup's own targets can't be fetched everywhere; Debian's `rustc-web` with its sources can build the
//! standard library for any target. C code is stood in for: this proves types, not linking.

use std::path::{Path, PathBuf};
use std::process::Command;

use anyhow::{Context, Result, bail};

use crate::{command, layout};

const TARGETS: [&str; 2] = ["aarch64-linux-android", "aarch64-apple-ios"];
const PACKAGES: [&str; 5] = [
    "rustc-web",
    "rust-web-src",
    "libstd-rust-web-1.96",
    "libstd-rust-web-dev",
    "libllvm22",
];

/// Checks the bindings for every target in one call, so that what runs on this machine is compiled once.
pub fn check() -> Result<()> {
    let root = layout::root()?;
    let usr = compiler()?;
    let (cc, ar) = stand_ins()?;
    let libraries = format!(
        "{}:{}",
        usr.join("lib/x86_64-linux-gnu").display(),
        usr.join("lib").display()
    );
    let mut cargo = command::cargo(&root);
    cargo
        .args(["check", "--locked", "--quiet", "-p", "holdfast-bindings"])
        .arg("-Zbuild-std=std,panic_abort")
        .env("LD_LIBRARY_PATH", libraries)
        .env("RUSTC", usr.join("bin/rustc"))
        .env("RUSTC_BOOTSTRAP", "1")
        .env("CARGO_TARGET_DIR", layout::work("cross")?.join("target"))
        // No Apple SDK is needed for types, but the C build asks where it is.
        .env("SDKROOT", layout::work("cross")?);
    for target in TARGETS {
        println!("checking for {target}");
        let under = target.replace('-', "_");
        cargo
            .args(["--target", target])
            .env(format!("CC_{under}"), &cc)
            .env(format!("AR_{under}"), &ar);
    }
    command::run(&mut cargo)
}

/// Unpacks the compiler beside the target folder without installing it.
fn compiler() -> Result<PathBuf> {
    let dir = layout::work("cross")?;
    let usr = dir.join("root/usr");
    if usr.join("bin/rustc").is_file() {
        return Ok(usr);
    }
    if !command::have("apt-get") {
        bail!("the Android and iOS check needs Debian's packages (apt-get)");
    }
    download(&dir)?;
    for entry in std::fs::read_dir(&dir)? {
        let path = entry?.path();
        if path.extension().is_some_and(|e| e == "deb") {
            command::run(Command::new("dpkg").arg("-x").arg(&path).arg(dir.join("root")))?;
            std::fs::remove_file(&path)?;
        }
    }
    Ok(usr)
}

fn download(dir: &Path) -> Result<()> {
    let get = || {
        command::run(
            Command::new("apt-get")
                .current_dir(dir)
                .arg("download")
                .args(PACKAGES),
        )
    };
    if get().is_err() {
        command::run(Command::new("apt-get").args(["update", "-qq"]))?;
        get().context(
            "the compiler for the Android and iOS check could not be fetched: is there a network?",
        )?;
    }
    Ok(())
}

/// Stand-ins for a C compiler and archiver: they make empty files.
fn stand_ins() -> Result<(PathBuf, PathBuf)> {
    let dir = layout::work("cross")?;
    let cc = dir.join("stand-in-cc");
    let ar = dir.join("stand-in-ar");
    write_script(
        &cc,
        "while [ $# -gt 0 ]; do [ \"$1\" = -o ] && : > \"$2\"; shift; done\n",
    )?;
    write_script(&ar, "exit 0\n")?;
    Ok((cc, ar))
}

fn write_script(path: &Path, body: &str) -> Result<()> {
    use std::os::unix::fs::PermissionsExt;
    std::fs::write(path, format!("#!/bin/sh\n{body}"))?;
    std::fs::set_permissions(path, std::fs::Permissions::from_mode(0o755))?;
    Ok(())
}
