//! Debian 12 has no Swift and Debian 13 (trixie) has: it is unpacked into a folder and run from there, without being
//! installed. That takes a Debian, its root, a network and some minutes, once.

use std::ffi::OsStr;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use anyhow::{Context, Result, bail};

use crate::{command, layout};

/// The release that has Swift 6.0.
const RELEASE: &str = "trixie";

/// Swift, and what it links with.
const PACKAGES: [&str; 5] = [
    "swiftlang",
    "git",
    "libc6-dev",
    "libstdc++-14-dev",
    "libgcc-14-dev",
];

/// A root that is thrown away when it breaks needs no file synced to disk one by one (dpkg 1.19.5 or later).
const UNSYNCED: [(&str, &str); 1] = [("DPKG_FORCE", "unsafe-io")];

/// Mounts `/proc` and the folders named before `--` where the program sees them, in a mount namespace of its own: they
/// are gone with it, and removing the root never reaches them. Swift finds its libraries through `/proc`.
const ENTER: &str = r#"
root=$1; here=$2; shift 2
mount -t proc proc "$root/proc"
while [ "$1" != -- ]; do mkdir -p "$root$1"; mount --bind "$1" "$root$1"; shift; done
shift
exec chroot "$root" env -C "$here" "$@"
"#;

/// Runs a program of the root, which sees these folders and works in the first.
pub fn inside(root: &Path, sees: &[PathBuf], program: impl AsRef<OsStr>) -> Command {
    let here = sees.first().map_or(Path::new("/"), PathBuf::as_path);
    let mut command = Command::new("unshare");
    command
        .args(["--mount", "--propagation", "private", "sh", "-ec", ENTER, "sh"])
        .arg(root)
        .arg(here)
        .args(sees)
        .arg("--")
        .arg(program)
        .env("HOME", "/root")
        .env("TMPDIR", "/tmp")
        .env("LANG", "C.UTF-8");
    command
}

/// The root; made if it isn't there.
///
/// # Errors
/// Why it can't be made.
pub fn root() -> Result<PathBuf> {
    let folder = std::path::absolute(layout::work("swift")?)?;
    let root = folder.join("root");
    if !root.is_dir() {
        let begun = folder.join("begun");
        make(&begun)?;
        fs::rename(&begun, &root)?;
    }
    Ok(root)
}

fn make(root: &Path) -> Result<()> {
    if !command::have("apt-get") {
        bail!("none is on the path, and Debian's needs apt-get");
    }
    if !is_root()? {
        bail!("none is on the path, and Debian's can only be unpacked by root");
    }
    let mirror = mirror()?;
    if root.exists() {
        fs::remove_dir_all(root).context("clearing what an earlier try left")?;
    }
    println!("unpacking Debian {RELEASE} with Swift from {mirror}: some minutes, once");
    command::ensure("debootstrap", &["debootstrap"])?;
    quietly(
        Command::new("debootstrap")
            .args(["--variant=minbase", "--include=ca-certificates", RELEASE])
            .arg(root)
            .arg(&mirror)
            .envs(UNSYNCED),
    )?;
    quietly(inside(root, &[], "apt-get").args(["update", "-qq"]))?;
    quietly(
        inside(root, &[], "apt-get")
            // There is no terminal inside.
            .args(["-o", "Dpkg::Use-Pty=0"])
            .args(["install", "-y", "-qq", "--no-install-recommends"])
            .args(PACKAGES)
            .env("DEBIAN_FRONTEND", "noninteractive")
            .envs(UNSYNCED),
    )
}

fn quietly(command: &mut Command) -> Result<()> {
    command::run(command.stdout(Stdio::null()))
}

fn is_root() -> Result<bool> {
    let out = Command::new("id")
        .arg("-u")
        .output()
        .context("asking who runs this")?;
    Ok(String::from_utf8_lossy(&out.stdout).trim() == "0")
}

/// The mirror that apt uses here: the first that brings the system's own release.
fn mirror() -> Result<String> {
    let release = fs::read_to_string("/etc/os-release").context("reading what system this is")?;
    let named = |key: &str| {
        release
            .lines()
            .find_map(|line| line.strip_prefix(key)?.strip_prefix('='))
            .map(|value| value.trim_matches('"').to_owned())
    };
    if named("ID").as_deref() != Some("debian") {
        bail!("none is on the path, and only a Debian can unpack Debian's");
    }
    let codename = named("VERSION_CODENAME").context("this Debian has no code name")?;
    let out = Command::new("apt-get")
        .args([
            "indextargets",
            "--format",
            "$(SITE) $(RELEASE) $(CODENAME) $(SUITE)",
        ])
        .arg("Created-By: Packages")
        .output()
        .context("asking apt for its mirror")?;
    first_site(&String::from_utf8_lossy(&out.stdout), &codename)
        .with_context(|| format!("apt names no mirror for {codename}"))
}

/// The first site with this release. Apt calls it by its code name or by its age, depending on what it has fetched.
fn first_site(targets: &str, codename: &str) -> Option<String> {
    targets.lines().find_map(|target| {
        let (site, names) = target.split_once(' ')?;
        let is_it = site.starts_with("http") && names.split(' ').any(|name| name == codename);
        is_it.then(|| site.to_owned())
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_mirror_is_found_by_any_of_the_release_s_names() {
        let fetched = "https://other nodistro  x\nhttp://m/debian bookworm bookworm oldstable\n";
        assert_eq!(
            first_site(fetched, "bookworm").as_deref(),
            Some("http://m/debian")
        );
        assert_eq!(
            first_site("http://m/debian bookworm  \n", "bookworm").as_deref(),
            Some("http://m/debian")
        );
        let security = "http://m/debian-security bookworm-security bookworm-security oldstable-security\n";
        assert_eq!(first_site(security, "bookworm"), None);
    }
}
