//! `holdfast-play FILE.json… [--out DIR] [--report] [--policy guided|fixed]`

use std::path::{Path, PathBuf};
use std::process::ExitCode;

use holdfast_diagnose::Policy;
use holdfast_play::{Options, Outcome, PlayError, Scenario, play};

const USAGE: &str = "holdfast-play FILE.json… [--out DIR] [--report] [--policy guided|fixed]";

struct Arguments {
    files: Vec<PathBuf>,
    out: PathBuf,
    report: bool,
    policy: Policy,
}

fn main() -> ExitCode {
    let arguments = match arguments(std::env::args().skip(1)) {
        Ok(arguments) => arguments,
        Err(why) => {
            eprintln!("{why}\n{USAGE}");
            return ExitCode::from(2);
        }
    };
    let mut exit = ExitCode::SUCCESS;
    for file in &arguments.files {
        let line = one(file, &arguments).and_then(|outcome| Ok(serde_json::to_string(&outcome)?));
        match line {
            Ok(line) => println!("{line}"),
            Err(error) => {
                eprintln!("{}: {error}", file.display());
                println!(
                    "{}",
                    serde_json::json!({"file": file.display().to_string(), "error": error.to_string()})
                );
                exit = ExitCode::FAILURE;
            }
        }
    }
    exit
}

fn arguments(mut given: impl Iterator<Item = String>) -> Result<Arguments, String> {
    let mut arguments = Arguments {
        files: Vec::new(),
        out: PathBuf::from("."),
        report: false,
        policy: Policy::Guided,
    };
    while let Some(word) = given.next() {
        match word.as_str() {
            "--out" => arguments.out = given.next().ok_or("--out needs a folder")?.into(),
            "--report" => arguments.report = true,
            "--policy" => {
                arguments.policy = match given.next().as_deref() {
                    Some("guided") => Policy::Guided,
                    Some("fixed") => Policy::Fixed,
                    other => return Err(format!("--policy is guided or fixed, not {other:?}")),
                }
            }
            "--help" | "-h" => return Err(String::new()),
            option if option.starts_with('-') => return Err(format!("there is no option {option}")),
            file => arguments.files.push(file.into()),
        }
    }
    if arguments.files.is_empty() {
        return Err("no file is named".into());
    }
    Ok(arguments)
}

fn one(file: &Path, arguments: &Arguments) -> Result<Outcome, PlayError> {
    let text = std::fs::read_to_string(file).map_err(|source| PlayError::File {
        path: file.to_owned(),
        source,
    })?;
    let scenario: Scenario = serde_json::from_str(&text)?;
    let stem = file.file_stem().unwrap_or_default().to_string_lossy();
    let report = arguments.out.join(format!("{stem}.pdf"));
    play(
        &scenario,
        Options {
            policy: arguments.policy,
            report: arguments.report.then_some(report.as_path()),
        },
    )
}
