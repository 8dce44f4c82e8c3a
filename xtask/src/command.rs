//! Running other programs, and getting the ones that Debian has.

use std::path::Path;
use std::process::{Command, Stdio};

use anyhow::{Context, Result, bail};

/// What is shipped and what tests it: everything but the tools, which are built unoptimised.
///
/// These packages are always asked for together: asked for one by one, Cargo gives their dependencies other features
/// and compiles half of the graph again.
pub const PRODUCT: [&str; 7] = [
    "--release",
    "--locked",
    "--workspace",
    "--exclude",
    "holdfast-bindgen",
    "--exclude",
    "xtask",
];

/// Runs a program to its end and fails with its name if it fails.
pub fn run(command: &mut Command) -> Result<()> {
    let shown = format!("{command:?}");
    let status = command.status().with_context(|| format!("starting {shown}"))?;
    if !status.success() {
        bail!("{status} from {shown}");
    }
    Ok(())
}

/// Cargo, in the checkout's root.
pub fn cargo(root: &Path) -> Command {
    let mut cargo = Command::new(std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()));
    cargo.current_dir(root);
    cargo
}

/// Whether a program is on the path.
pub fn have(program: &str) -> bool {
    std::env::var_os("PATH")
        .is_some_and(|path| std::env::split_paths(&path).any(|dir| dir.join(program).is_file()))
}

/// Installs Debian packages unless `program` is there already.
pub fn ensure(program: &str, packages: &[&str]) -> Result<()> {
    if have(program) {
        return Ok(());
    }
    println!("installing {} for `{program}`", packages.join(" "));
    let install = || {
        run(Command::new("apt-get")
            .args(["install", "-y", "-qq", "--no-install-recommends"])
            .args(packages)
            .env("DEBIAN_FRONTEND", "noninteractive")
            .stdout(Stdio::null()))
    };
    if install().is_err() {
        run(Command::new("apt-get").args(["update", "-qq"])).context(
            "`apt-get update` failed: this step needs Debian's packages, a network and the right to install",
        )?;
        install().with_context(|| format!("install {} by hand and try again", packages.join(" ")))?;
    }
    Ok(())
}
