//! `holdfast-stress OUT`: the report of a job made to strain it, once for each paper, for a validator and for eyes.

use std::path::Path;

use anyhow::{Context, Result};

fn main() -> Result<()> {
    let out = std::env::args_os().nth(1).context("holdfast-stress OUT")?;
    let data = tempfile::tempdir()?;
    let job = holdfast_tests::stress::job(data.path())?.to_string();
    for file in holdfast_tests::printed::reports(data.path(), &job, Path::new(&out), "stress")? {
        println!("{}", file.display());
    }
    Ok(())
}
