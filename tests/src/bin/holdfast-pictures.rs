//! `holdfast-pictures OUT`: the two pictures of the demo job, drawn anew.

use std::path::Path;

use anyhow::{Context, Result};
use holdfast_tests::pictures::{Hose, hose};

/// Pixels across: what a phone's camera gives.
const WIDTH: u32 = 4_000;

fn main() -> Result<()> {
    let out = std::env::args_os().nth(1).context("holdfast-pictures OUT")?;
    let out = Path::new(&out);
    std::fs::create_dir_all(out)?;
    for (name, state, seed) in [("before", Hose::Split, 5), ("after", Hose::New, 5)] {
        let picture = hose(state, WIDTH, seed).context("no picture")?;
        picture.save(out.join(name).with_extension("jpg"))?;
    }
    Ok(())
}
