//! Running programs whose output matters only when they fail.

use std::process::Command;

use anyhow::{Context, Result, bail};

/// Runs a program and keeps its output to itself.
///
/// # Errors
/// When it isn't installed, or ends with anything but success; then the output is part of the error.
pub fn run_quietly(command: &mut Command) -> Result<()> {
    let name = command.get_program().to_string_lossy().into_owned();
    let out = command
        .output()
        .with_context(|| format!("can't run {name}: is it installed?"))?;
    if !out.status.success() {
        bail!(
            "{name} failed ({})\n{}{}",
            out.status,
            String::from_utf8_lossy(&out.stdout),
            String::from_utf8_lossy(&out.stderr)
        );
    }
    Ok(())
}
