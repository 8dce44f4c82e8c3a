//! `cargo xtask run`: the app in a window, or without a display the demo job on disk.

use anyhow::Result;

/// Builds what is needed and opens the app.
pub fn run() -> Result<()> {
    crate::android::desktop()
}
