//! How long a step took, on the clock and on the processors: only the second means much on a shared machine.

use std::time::Instant;

use anyhow::{Result, bail};

/// How a step ended that did not fail.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Outcome {
    /// It proved what it should.
    Passed,
    /// It was not done, and why. Nothing is proved.
    Skipped(String),
}

/// What a step that can't be skipped gives: it ended, so it passed.
pub fn passed((): ()) -> Outcome {
    Outcome::Passed
}

/// Runs a step between a line that says what it proves and one that says how it went.
pub fn timed(name: &str, proves: &str, run: impl FnOnce() -> Result<Outcome>) -> Result<Outcome> {
    println!("\n== {name}: {proves}");
    let (clock, processor) = (Instant::now(), children_s());
    let result = run();
    let mut took = format!("{} s", clock.elapsed().as_secs());
    if let (Some(before), Some(after)) = (processor, children_s()) {
        took.push_str(&format!(", {:.0} s of processor time", after - before));
    }
    match result {
        Ok(outcome) => {
            match &outcome {
                Outcome::Passed => println!("== {name} passed in {took}"),
                Outcome::Skipped(why) => println!("== {name} SKIPPED, nothing was tested: {why}"),
            }
            Ok(outcome)
        }
        Err(error) => {
            println!("== {name} FAILED after {took}: {error:#}");
            bail!("{name} failed");
        }
    }
}

/// Processor seconds, user and system, of the programs that this one has started and waited for. Linux tells.
fn children_s() -> Option<f64> {
    /// Since Linux 2.6 the unit of these figures is a hundredth of a second on every common machine.
    const TICKS_PER_S: f64 = 100.0;
    let stat = std::fs::read_to_string("/proc/self/stat").ok()?;
    // The program's name, in brackets, may hold spaces: proc(5) counts fields from before it.
    let (_, fields) = stat.rsplit_once(')')?;
    let mut times = fields
        .split_whitespace()
        .skip(13)
        .map_while(|f| f.parse::<f64>().ok());
    Some((times.next()? + times.next()?) / TICKS_PER_S)
}

#[cfg(test)]
mod tests {
    use std::process::Command;

    use super::*;

    #[test]
    #[cfg(target_os = "linux")]
    fn the_work_of_a_child_counts() {
        let before = children_s().unwrap();
        let busy = "i=0; while [ $i -lt 200000 ]; do i=$((i+1)); done";
        assert!(Command::new("sh").args(["-c", busy]).status().unwrap().success());
        assert!(children_s().unwrap() > before);
    }
}
