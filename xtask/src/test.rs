//! `cargo xtask test`: every test there is, step by step.

use std::path::{Path, PathBuf};
use std::process::Stdio;
use std::time::Instant;

use anyhow::{Context, Result, bail};

use crate::{android, command, cross, layout, pdf, peers, walls};

/// A step: its name, what it proves, and how.
struct Step {
    name: &'static str,
    proves: &'static str,
    run: fn() -> Result<()>,
}

const STEPS: &[Step] = &[
    Step {
        name: "walls",
        proves: "the crates and shells keep to their places",
        run: walls::check,
    },
    Step {
        name: "rust",
        proves: "the core, the references, the scenarios",
        run: rust,
    },
    Step {
        name: "report",
        proves: "the reports are valid PDF/A-3a and PDF/UA-1",
        run: reports,
    },
    Step {
        name: "android",
        proves: "the Compose screens with the real library",
        run: android_tests,
    },
    Step {
        name: "cross",
        proves: "the core type-checks for Android and iOS",
        run: cross::check,
    },
];

/// Runs the named steps, or all.
pub fn run(names: &[String]) -> Result<()> {
    if let Some(unknown) = names.iter().find(|n| !STEPS.iter().any(|s| s.name == n.as_str())) {
        let known: Vec<_> = STEPS.iter().map(|s| s.name).collect();
        bail!("no test step `{unknown}`; there are {}", known.join(", "));
    }
    let mut failed = Vec::new();
    let mut passed = 0;
    for step in STEPS
        .iter()
        .filter(|s| names.is_empty() || names.iter().any(|n| n == s.name))
    {
        println!("\n== {}: {}", step.name, step.proves);
        let start = Instant::now();
        let result = (step.run)();
        let seconds = start.elapsed().as_secs();
        match result {
            Ok(()) => {
                passed += 1;
                println!("== {} passed in {seconds} s", step.name);
            }
            Err(error) => {
                println!("== {} FAILED after {seconds} s: {error:#}", step.name);
                failed.push(step.name);
            }
        }
    }
    println!("\nsteps: {passed} passed, {} failed", failed.len());
    if !failed.is_empty() {
        bail!("failed: {}", failed.join(", "));
    }
    Ok(())
}

fn rust() -> Result<()> {
    let root = layout::root()?;
    // The bindings' generator has no tests, and optimising it takes longer than everything else together.
    command::run(
        command::cargo(&root)
            .args([
                "test",
                "--release",
                "--workspace",
                "--exclude",
                "holdfast-bindgen",
            ])
            .args(["--locked", "--quiet"]),
    )
}

/// Prints the timings and the figures of the reasoning.
pub fn bench() -> Result<()> {
    let root = layout::root()?;
    command::run(
        command::cargo(&root)
            .args(["bench", "--locked", "--quiet", "-p", "holdfast-tests"])
            .env(peers::PYTHON, peers::python()?),
    )
}

/// Plays every scenario, and gives the reports to a validator that is not ours.
fn reports() -> Result<()> {
    let root = layout::root()?;
    let out = layout::work("reports")?;
    std::fs::remove_dir_all(&out)?;
    let scenarios = files(&root.join("tests/scenarios"), "json")?;
    command::run(
        command::cargo(&root)
            .args([
                "run",
                "--release",
                "--locked",
                "--quiet",
                "-p",
                "holdfast-play",
                "--",
            ])
            .args(&scenarios)
            .args(["--report", "--out"])
            .arg(&out)
            .stdout(Stdio::null()),
    )?;
    let reports = files(&out, "pdf")?;
    if reports.len() != scenarios.len() {
        bail!(
            "{} scenarios were played and {} reports came out",
            scenarios.len(),
            reports.len()
        );
    }
    pdf::validate(&reports)
}

/// The files of a folder with this ending, in order.
fn files(dir: &Path, ending: &str) -> Result<Vec<PathBuf>> {
    let mut found = Vec::new();
    for entry in std::fs::read_dir(dir).with_context(|| format!("reading {}", dir.display()))? {
        let path = entry?.path();
        if path.extension().is_some_and(|e| e == ending) {
            found.push(path);
        }
    }
    found.sort();
    Ok(found)
}

fn android_tests() -> Result<()> {
    android::run(android::Task::Test { filter: None })
}
