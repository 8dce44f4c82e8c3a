//! The Android shell: fetching its toolchain, building, testing, packing.

use anyhow::{Result, bail};
use clap::Subcommand;

/// What can be done with the Android shell.
#[derive(Subcommand)]
pub enum Task {
    /// Compile the bindings, the ui, the app and the desktop shell.
    Build,
    /// Run the Robolectric tests.
    Test,
    /// Pack a signed debug APK.
    Apk,
}

/// Does one of the tasks.
pub fn run(task: Task) -> Result<()> {
    match task {
        Task::Build | Task::Test | Task::Apk => bail!("the Android shell is not there yet"),
    }
}

/// Draws every screen worth seeing into out/screens.
pub fn screenshots() -> Result<()> {
    bail!("the Android shell is not there yet")
}

/// Opens the desktop window, or without a display plays the demo job into out/.
pub fn desktop() -> Result<()> {
    bail!("the desktop shell is not there yet")
}
