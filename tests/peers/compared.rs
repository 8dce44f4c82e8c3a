//! The same network asked of the core and of pgmpy, in the same run: do they agree, and how long does each take?

use std::io::Write;
use std::process::{Command, Stdio};
use std::time::Instant;

use serde_json::{Value, json};

use crate::network::{Enumerates, Network, Seen};

/// Where `cargo xtask bench` has put the interpreter that has pgmpy.
pub const PYTHON: &str = "HOLDFAST_PEER_PYTHON";

/// What came of it.
#[derive(Debug)]
pub struct Compared {
    /// Greatest difference of any probability.
    pub apart: f64,
    /// Median time of one question, s.
    pub ours: f64,
    pub theirs: f64,
    pub questions: usize,
}

/// Asks both.
///
/// # Errors
/// When pgmpy can't be run or doesn't answer.
pub fn compare(ours: &dyn Enumerates, network: &Network, seen: &[Seen]) -> Result<Compared, String> {
    let python =
        std::env::var(PYTHON).map_err(|_| format!("{PYTHON} is not set: run `cargo xtask bench`"))?;
    let script = concat!(env!("CARGO_MANIFEST_DIR"), "/peers/pgmpy.py");
    let mut child = Command::new(python)
        // The script has the library's name; its folder must not be searched for modules.
        .args(["-P", script])
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .map_err(|e| e.to_string())?;
    let question = json!({"network": network.json(), "seen": seen});
    if let Some(mut stdin) = child.stdin.take() {
        stdin
            .write_all(question.to_string().as_bytes())
            .map_err(|e| e.to_string())?;
    }
    let output = child.wait_with_output().map_err(|e| e.to_string())?;
    let answer: Value = serde_json::from_slice(&output.stdout).map_err(|e| format!("pgmpy's answer: {e}"))?;
    let numbers = |value: &Value| -> Vec<f64> {
        value
            .as_array()
            .into_iter()
            .flatten()
            .filter_map(Value::as_f64)
            .collect()
    };
    let posteriors = answer["posteriors"]
        .as_array()
        .ok_or("pgmpy gave no posteriors")?;
    if posteriors.len() != seen.len() {
        return Err(format!("{} questions, {} answers", seen.len(), posteriors.len()));
    }
    let (mut apart, mut times) = (0.0_f64, Vec::new());
    for (seen, theirs) in seen.iter().zip(posteriors) {
        let start = Instant::now();
        let found = std::hint::black_box(ours.posterior(network, seen));
        times.push(start.elapsed().as_secs_f64());
        let theirs = numbers(theirs);
        if theirs.len() != found.len() {
            return Err(format!("{} causes, {} probabilities", found.len(), theirs.len()));
        }
        apart = found
            .iter()
            .zip(theirs)
            .map(|(a, b)| (a - b).abs())
            .fold(apart, f64::max);
    }
    let median = |mut of: Vec<f64>| {
        of.sort_by(f64::total_cmp);
        of.get(of.len() / 2).copied().unwrap_or(f64::NAN)
    };
    Ok(Compared {
        apart,
        ours: median(times),
        theirs: median(numbers(&answer["seconds"])),
        questions: seen.len(),
    })
}
