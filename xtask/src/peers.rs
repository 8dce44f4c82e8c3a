//! Fetching the libraries that the benches compare with.

use std::fs;
use std::path::PathBuf;
use std::process::Command;

use anyhow::{Context, Result};

use crate::{command, layout};

/// What the interpreter that has the peers is told to the benches by.
pub const PYTHON: &str = "HOLDFAST_PEER_PYTHON";

/// An interpreter that has the packages of `tests/peers/requirements.txt`, in an environment of its own.
///
/// # Errors
/// When Python or pip isn't there, or the packages can't be fetched.
pub fn python() -> Result<PathBuf> {
    let wanted = layout::root()?.join("tests/peers/requirements.txt");
    let wanted_text = fs::read_to_string(&wanted).with_context(|| format!("reading {}", wanted.display()))?;
    let dir = layout::work("peers")?;
    let venv = dir.join("venv");
    let python = match std::env::consts::OS {
        "windows" => venv.join("Scripts/python.exe"),
        _ => venv.join("bin/python3"),
    };
    // Written last, so that an interrupted fetch is done again.
    let mark = dir.join("fetched.txt");
    if python.is_file() && fs::read_to_string(&mark).is_ok_and(|had| had == wanted_text) {
        return Ok(python);
    }
    println!("fetching the peers named in {}", wanted.display());
    command::run(Command::new("python3").args(["-m", "venv"]).arg(&venv))
        .context("python3 made no environment: the benches with peers need Python and its venv")?;
    command::run(
        Command::new(&python)
            .args(["-m", "pip", "install", "-q", "-r"])
            .arg(&wanted),
    )
    .context("pip could not fetch the peers: the first bench needs a network connection")?;
    fs::write(&mark, wanted_text)?;
    Ok(python)
}
