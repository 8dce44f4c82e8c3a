//! `cargo xtask lint`: the format and the lints, over every target of every package.

use anyhow::Result;

use crate::{command, layout, timing};

/// Checks both.
pub fn run() -> Result<()> {
    timing::timed("format", "every file is as rustfmt writes it", || {
        format().map(timing::passed)
    })?;
    timing::timed("clippy", "no lint has anything to say", || {
        clippy().map(timing::passed)
    })?;
    Ok(())
}

fn format() -> Result<()> {
    command::run(command::cargo(&layout::root()?).args(["fmt", "--all", "--check"]))
}

/// Packages are chosen as the tests choose them, so that what the compiler itself loads is compiled once for both.
fn clippy() -> Result<()> {
    let tools = |name| ["--locked", "--package", name];
    for packages in [&command::PRODUCT[..], &tools("xtask"), &tools("holdfast-bindgen")] {
        command::run(
            command::cargo(&layout::root()?)
                .args(["clippy", "--quiet", "--all-targets"])
                .args(packages)
                .args(["--", "-D", "warnings"]),
        )?;
    }
    Ok(())
}
