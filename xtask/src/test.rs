//! `cargo xtask test`: every test there is, step by step.

use std::fs::File;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use anyhow::{Context, Result, bail};

use crate::timing::{Outcome, passed, timed};
use crate::toolchain::Places;
use crate::{android, command, cross, layout, pdf, swift, walls};

/// The job that the tests of both shells play, and the demonstration.
pub const SCENARIO: &str = "tests/scenarios/split-front-hose-replaced.json";

/// A step: its name, what it proves, and how.
struct Step {
    name: &'static str,
    proves: &'static str,
    run: fn() -> Result<Outcome>,
    lane: Lane,
}

/// Steps of different lanes run side by side: one fetches or has a single thread while the other computes.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Lane {
    Core,
    Android,
    Apple,
}

const LANES: [Lane; 3] = [Lane::Core, Lane::Android, Lane::Apple];

const STEPS: &[Step] = &[
    Step {
        name: "walls",
        proves: "the crates and shells keep to their places",
        run: || walls::check().map(passed),
        lane: Lane::Core,
    },
    Step {
        name: "rust",
        proves: "the core, the references, the scenarios",
        run: || rust().map(passed),
        lane: Lane::Core,
    },
    Step {
        name: "report",
        proves: "the reports are valid PDF/A-3a and PDF/UA-1",
        run: || reports().map(passed),
        lane: Lane::Core,
    },
    Step {
        name: "cross",
        proves: "the core type-checks for Android and iOS",
        run: || cross::check().map(passed),
        lane: Lane::Android,
    },
    Step {
        name: "android",
        proves: "the Compose screens with the real library",
        run: || android_tests().map(passed),
        lane: Lane::Android,
    },
    Step {
        name: "swift",
        proves: "the iOS view models with the real library; the views parse and keep their format",
        run: swift::test,
        lane: Lane::Apple,
    },
];

/// How a step ended.
#[derive(Clone, Copy, PartialEq, Eq)]
enum End {
    Passed,
    Skipped,
    Failed,
}

impl End {
    fn of(result: &Result<Outcome>) -> Self {
        match result {
            Ok(Outcome::Passed) => Self::Passed,
            Ok(Outcome::Skipped(_)) => Self::Skipped,
            Err(_) => Self::Failed,
        }
    }
}

/// What a step's own process ends with when it was skipped, so that it can't be taken for one that passed.
const SKIPPED: i32 = 77;

/// Runs the named steps one after the other, or all in lanes.
pub fn run(names: &[String]) -> Result<()> {
    if let Some(unknown) = names.iter().find(|n| !STEPS.iter().any(|s| s.name == n.as_str())) {
        let known: Vec<_> = STEPS.iter().map(|s| s.name).collect();
        bail!("no test step `{unknown}`; there are {}", known.join(", "));
    }
    let ends: Vec<_> = if names.is_empty() {
        lanes()?
    } else {
        STEPS
            .iter()
            .filter(|s| names.iter().any(|n| n == s.name))
            .map(|s| (s.name, End::of(&timed(s.name, s.proves, s.run))))
            .collect()
    };
    let of = |end| -> Vec<&str> {
        let those = ends.iter().filter(|(_, e)| *e == end);
        those.map(|(name, _)| *name).collect()
    };
    let (passed, skipped, failed) = (of(End::Passed), of(End::Skipped), of(End::Failed));
    println!(
        "\nsteps: {} passed, {} failed, {} SKIPPED",
        passed.len(),
        failed.len(),
        skipped.len()
    );
    if !failed.is_empty() {
        bail!("failed: {}", failed.join(", "));
    }
    if !skipped.is_empty() {
        println!("not tested: {}", skipped.join(", "));
    }
    if passed.is_empty() {
        bail!("nothing was tested");
    }
    Ok(())
}

/// Runs every step in a process of its own, one lane beside the other, and shows each step's words when it has ended.
fn lanes() -> Result<Vec<(&'static str, End)>> {
    let xtask = std::env::current_exe().context("finding this program")?;
    let lane = |which: Lane| -> Result<Vec<(&'static str, End)>> {
        let mut results = Vec::new();
        for step in STEPS.iter().filter(|s| s.lane == which) {
            let log = layout::work("steps")?.join(step.name).with_extension("log");
            let words = File::create(&log).with_context(|| format!("writing {}", log.display()))?;
            let status = Command::new(&xtask)
                .args(["step", step.name])
                .stderr(words.try_clone()?)
                .stdout(words)
                .status()
                .with_context(|| format!("starting step {}", step.name))?;
            println!("{}", std::fs::read_to_string(&log)?.trim_end());
            let end = match status.code() {
                Some(0) => End::Passed,
                Some(SKIPPED) => End::Skipped,
                _ => End::Failed,
            };
            results.push((step.name, end));
        }
        Ok(results)
    };
    std::thread::scope(|scope| {
        let running = LANES.map(|which| scope.spawn(move || lane(which)));
        let mut results = Vec::new();
        for lane in running {
            match lane.join() {
                Ok(more) => results.extend(more?),
                Err(_) => bail!("a lane of steps ended by itself"),
            }
        }
        Ok(results)
    })
}

/// Runs one step, for the lanes.
pub fn step(name: &str) -> Result<()> {
    let step = STEPS
        .iter()
        .find(|s| s.name == name)
        .with_context(|| format!("no test step `{name}`"))?;
    match timed(step.name, step.proves, step.run)? {
        Outcome::Passed => Ok(()),
        Outcome::Skipped(_) => std::process::exit(SKIPPED),
    }
}

fn rust() -> Result<()> {
    let root = layout::root()?;
    command::run(
        command::cargo(&root)
            .args(["test", "--quiet"])
            .args(command::PRODUCT),
    )?;
    command::run(command::cargo(&root).args(["test", "--quiet", "--locked", "--package", "xtask"]))
}

/// Prints the timings and the figures of the reasoning.
pub fn bench() -> Result<()> {
    let root = layout::root()?;
    let peers = python_peers(&root)?;
    command::run(
        command::cargo(&root)
            .args(["bench", "--locked", "--quiet", "-p", "holdfast-tests"])
            .env("HOLDFAST_BENCH_PEERS", peers),
    )
}

/// The peers' libraries from PyPI, in a folder of their own; fetched again when their versions change.
fn python_peers(root: &Path) -> Result<PathBuf> {
    let lock = root.join("tests/bench/peers/requirements.txt");
    let wanted = std::fs::read_to_string(&lock).with_context(|| format!("reading {}", lock.display()))?;
    let folder = std::path::absolute(layout::work("bench-peers")?)?;
    let there = folder.join("requirements.txt");
    if std::fs::read_to_string(&there).is_ok_and(|there| there == wanted) {
        return Ok(folder);
    }
    command::run(
        Command::new("python3")
            .args(["-m", "pip", "install", "-q", "--upgrade", "--target"])
            .arg(&folder)
            .arg("-r")
            .arg(&lock),
    )
    .context("the benches need python3 with pip, and a network connection the first time")?;
    std::fs::write(&there, wanted)?;
    Ok(folder)
}

/// Plays every scenario, and gives the reports to a validator that is not ours.
fn reports() -> Result<()> {
    let root = layout::root()?;
    let out = layout::work("reports")?;
    std::fs::remove_dir_all(&out)?;
    let scenarios = files(&root.join("tests/scenarios"), "json")?;
    command::run(
        command::cargo(&root)
            .args(["build", "--quiet"])
            .args(command::PRODUCT),
    )?;
    command::run(
        Command::new(release("holdfast-play")?)
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
    let strained = out.join("stress");
    command::run(
        Command::new(release("holdfast-stress")?)
            .arg(&strained)
            .stdout(Stdio::null()),
    )?;
    let strained = files(&strained, "pdf")?;
    if strained.len() != PAPERS {
        bail!("the straining report came out on {} papers", strained.len());
    }
    pdf::validate(&[reports, strained].concat())
}

/// The straining report is made for A4 and for US Letter.
const PAPERS: usize = 2;

/// A program of the product, as built for the tests.
fn release(name: &str) -> Result<PathBuf> {
    Ok(std::path::absolute(layout::target()?)?.join("release").join(name))
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

/// The tests of the shell; the report that the demo job ends with goes to the validator, too.
fn android_tests() -> Result<()> {
    let report = Places::find()?.out("tests/job/report.pdf");
    if report.exists() {
        std::fs::remove_file(&report)?;
    }
    android::run(android::Task::Test { filter: None })?;
    pdf::validate(&[report])
}
