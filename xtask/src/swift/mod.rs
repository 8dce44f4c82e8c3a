//! The iOS shell, as far as it can be proved without a Mac: `HoldfastKit` is built and tested with the core's library
//! of this machine; the SwiftUI views are parsed, held to their format and type-checked against a stand-in; the services
//! of Apple's phones are only parsed.

mod debian;
mod toolchain;

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use anyhow::{Context, Result, bail};

use crate::bindings::{self, Language};
use crate::test::SCENARIO;
use crate::timing::Outcome;
use crate::toolchain::{Places, files_under, fresh, run_quietly};
use toolchain::Swift;

/// Set by `.ci/run`: there a missing Swift is an error, not a reason to skip.
const CI: &str = "HOLDFAST_CI";

/// Tests what can be tested here.
///
/// # Errors
/// When something does not compile, a test fails, a view does not parse or keep its format; in CI also when there is
/// no Swift.
pub fn test() -> Result<Outcome> {
    let places = Places::find()?;
    let swift = match toolchain::find(&places) {
        Ok(swift) => swift,
        Err(error) if std::env::var_os(CI).is_none() => {
            return Ok(Outcome::Skipped(format!("there is no Swift here: {error:#}")));
        }
        Err(error) => return Err(error.context("CI tests the iOS shell, and there is no Swift here")),
    };
    println!("Swift: {swift}");
    let sources = sources(&places)?;
    parse(&swift, &sources)?;
    lint(&swift, &places)?;
    call_the_core(&places)?;
    package_tests(&swift, &places)?;
    types(&swift, &places)?;
    Ok(Outcome::Passed)
}

/// The Swift files of the views, and those that start the app.
fn sources(places: &Places) -> Result<Vec<PathBuf>> {
    let mut found = Vec::new();
    for folder in ["ios/Sources/HoldfastApp", "ios/App"] {
        found.extend(files_under(&places.source(folder), ".swift")?);
    }
    if found.is_empty() {
        bail!("there are no views to parse");
    }
    Ok(found)
}

fn parse(swift: &Swift, sources: &[PathBuf]) -> Result<()> {
    let mut parse = swift.command("swiftc");
    parse
        .args(["-frontend", "-parse", "-swift-version", "6"])
        .args(sources);
    run_quietly(&mut parse).context("the views do not parse")?;
    println!("{} files of views and phone services parse", sources.len());
    Ok(())
}

fn lint(swift: &Swift, places: &Places) -> Result<()> {
    let mut lint = swift.command("swift");
    lint.args(["format", "lint", "--strict", "--recursive", "--configuration"])
        .arg(places.source("ios/.swift-format"));
    for written in [
        "Package.swift",
        "App",
        "Sources/HoldfastApp",
        "Sources/HoldfastKit",
        "Tests/HoldfastKitTests",
    ] {
        lint.arg(places.source("ios").join(written));
    }
    lint.arg(places.source("ios/Sources/HoldfastCore/RustCore.swift"));
    run_quietly(&mut lint).context("`swift format` would write it otherwise")
}

/// Puts the generated sources where the package expects them, and leaves alone what has not changed.
fn call_the_core(places: &Places) -> Result<()> {
    let library = bindings::library(places)?;
    let generated = bindings::generate(places, &library, Language::Swift)?;
    for (name, to) in [
        ("HoldfastCore.swift", "HoldfastCore/Generated"),
        ("HoldfastFFI.h", "HoldfastFFI"),
    ] {
        let folder = places.source("ios/Sources").join(to);
        fs::create_dir_all(&folder)?;
        keep(&generated.join(name), &folder.join(name))?;
    }
    Ok(())
}

fn keep(from: &Path, to: &Path) -> Result<()> {
    let new = fs::read(from).with_context(|| format!("reading {}", from.display()))?;
    if fs::read(to).is_ok_and(|old| old == new) {
        return Ok(());
    }
    fs::write(to, new).with_context(|| format!("writing {}", to.display()))
}

/// The package as it is built here: its folder for products, and what its manifest asks of the environment.
fn package(swift: &Swift, places: &Places, task: &str) -> Result<Command> {
    let library = places.host_library();
    let library_folder = library.parent().context("the library has no folder")?;
    let mut command = swift.command("swift");
    command
        .args([task, "--package-path"])
        .arg(places.source("ios"))
        .arg("--scratch-path")
        .arg(places.product("swift/build"))
        .env("HOLDFAST_LIBRARY", library_folder)
        .env("HOLDFAST_SCENARIO", places.source(SCENARIO));
    Ok(command)
}

fn package_tests(swift: &Swift, places: &Places) -> Result<()> {
    fs::create_dir_all(places.product("swift"))?;
    let mut test = package(swift, places, "test")?;
    let out = test
        .arg("--disable-swift-testing")
        .output()
        .context("starting Swift")?;
    let words = String::from_utf8_lossy(&out.stdout) + String::from_utf8_lossy(&out.stderr);
    if !out.status.success() {
        println!("{words}");
        bail!("the tests of HoldfastKit failed");
    }
    match executed(&words) {
        Some(tests) if tests > 0 => println!("HoldfastKit: {tests} tests passed"),
        _ => bail!("no test of HoldfastKit ran"),
    }
    Ok(())
}

/// How many tests ran, by the last line that says so.
fn executed(words: &str) -> Option<u32> {
    let (_, after) = words.rsplit_once("Executed ")?;
    after.split(' ').next()?.parse().ok()
}

/// Type-checks the views, which Linux has no SwiftUI for, against a stand-in that has the signatures they use. This
/// proves the project's own names, types and switches; whether Apple's are as written there, only a Mac can tell.
fn types(swift: &Swift, places: &Places) -> Result<()> {
    let out = package(swift, places, "build")?.arg("--show-bin-path").output()?;
    let products = PathBuf::from(String::from_utf8_lossy(&out.stdout).trim());
    let stand_in = places.source("ios/Tests/StandIn");
    let module = fresh(&places.product("swift/stand-in"))?;
    run_quietly(
        swift
            .command("swiftc")
            .args([
                "-swift-version",
                "6",
                "-emit-module",
                "-module-name",
                "SwiftUI",
                "-emit-module-path",
            ])
            .arg(module.join("SwiftUI.swiftmodule"))
            .args(files_under(&stand_in.join("SwiftUI"), ".swift")?),
    )
    .context("the stand-in for SwiftUI does not compile")?;
    let phone = places.source("ios/Sources/HoldfastApp/Phone");
    let mut views = files_under(&places.source("ios/Sources/HoldfastApp"), ".swift")?;
    views.retain(|file| !file.starts_with(&phone));
    let count = views.len();
    views.push(stand_in.join("Phone.swift"));
    run_quietly(
        swift
            .command("swiftc")
            .args([
                "-typecheck",
                "-swift-version",
                "6",
                "-module-name",
                "HoldfastApp",
                "-I",
            ])
            .arg(&module)
            .arg("-I")
            .arg(products.join("Modules"))
            .arg("-Xcc")
            .arg(format!(
                "-fmodule-map-file={}",
                places
                    .source("ios/Sources/HoldfastFFI/module.modulemap")
                    .display()
            ))
            .args(&views),
    )
    .context("the views do not fit the core's types")?;
    println!("{count} files of the views fit the core's types; SwiftUI was stood in for");
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_last_count_of_tests_is_the_whole_one() {
        let words = "\t Executed 3 tests, with 0 failures\n\t Executed 35 tests, with 0 failures\n";
        assert_eq!(executed(words), Some(35));
        assert_eq!(executed("Build complete!"), None);
    }
}
