//! Judges reports by a validator that is not ours: veraPDF, from Maven, at a locked version.

use std::path::{Path, PathBuf};
use std::process::Command;

use anyhow::{Context, Result, bail};

use crate::{command, layout};

const VALIDATOR: &str = "org.verapdf.apps:greenfield-apps:1.28.2";
const COPY_GOAL: &str = "org.apache.maven.plugins:maven-dependency-plugin:3.8.1:copy-dependencies";

/// The profiles that every report meets at once, as the validator names them.
const PROFILES: [&str; 2] = ["ua1", "3a"];

/// Validates each file against both profiles; every failure is listed.
pub fn validate(files: &[PathBuf]) -> Result<()> {
    if files.is_empty() {
        bail!("no report to validate");
    }
    let jars = validator()?;
    let mut failures = Vec::new();
    for profile in PROFILES {
        let report = Command::new("java")
            .args(["-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-cp"])
            .arg(format!("{}/*", jars.display()))
            .args([
                "org.verapdf.apps.GreenfieldCliWrapper",
                "--format",
                "text",
                "-v",
                "-f",
                profile,
            ])
            .args(files)
            .output()
            .context("starting the validator: is Java there?")?;
        let text = String::from_utf8_lossy(&report.stdout);
        let passed = text.lines().filter(|l| l.starts_with("PASS ")).count();
        println!("PDF profile {profile}: {passed} of {} reports valid", files.len());
        if passed != files.len() {
            let said = String::from_utf8_lossy(&report.stderr);
            failures.push(format!("profile {profile} ({}):\n{text}{said}", report.status));
        }
    }
    if !failures.is_empty() {
        bail!("{}", failures.join("\n"));
    }
    Ok(())
}

/// The validator's jars, fetched once.
fn validator() -> Result<PathBuf> {
    let dir = layout::work("verapdf")?;
    let jars = dir.join("jars");
    let done = dir.join("fetched");
    if done.is_file() {
        return Ok(jars);
    }
    std::fs::write(dir.join("pom.xml"), pom())?;
    fetch(&dir).with_context(|| format!("{VALIDATOR} could not be fetched by Maven: is there a network?"))?;
    std::fs::write(&done, VALIDATOR)?;
    Ok(jars)
}

fn fetch(dir: &Path) -> Result<()> {
    command::run(Command::new("mvn").current_dir(dir).args([
        "-B",
        "-q",
        COPY_GOAL,
        "-DincludeScope=runtime",
        "-DoutputDirectory=jars",
    ]))
}

fn pom() -> String {
    let mut parts = VALIDATOR.split(':');
    let mut part = || parts.next().unwrap_or_default().to_owned();
    let (group, artifact, version) = (part(), part(), part());
    format!(
        "<project><modelVersion>4.0.0</modelVersion><groupId>holdfast</groupId>\
         <artifactId>validator</artifactId><version>1</version><packaging>pom</packaging>\
         <dependencies><dependency><groupId>{group}</groupId><artifactId>{artifact}</artifactId>\
         <version>{version}</version></dependency></dependencies></project>\n"
    )
}
