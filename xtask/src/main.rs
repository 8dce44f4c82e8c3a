//! Every command a person or CI runs. `cargo xtask help` lists them.

mod android;
mod bindings;
mod command;
mod cross;
mod fetch;
mod layout;
mod lint;
mod pdf;
mod run;
mod swift;
mod test;
mod timing;
mod toolchain;
mod walls;

use anyhow::Result;
use clap::{Parser, Subcommand};

#[derive(Parser)]
#[command(name = "cargo xtask", about = "Build, run and test Holdfast")]
struct Cli {
    #[command(subcommand)]
    task: Task,
}

#[derive(Subcommand)]
enum Task {
    /// Build everything and open the app in a window; without a display, play the demo job into out/.
    Run,
    /// Check the format and the lints.
    Lint,
    /// Run every test, or one step of them by name.
    Test {
        /// Steps to run; all of them if none is named.
        steps: Vec<String>,
    },
    #[command(hide = true)]
    Step { name: String },
    /// The Android shell: build, test, apk.
    Android {
        #[command(subcommand)]
        task: android::Task,
    },
    /// Time the core, each figure beside a peer in the same run.
    Bench,
    /// Draw every screen worth seeing into out/screens.
    Screenshots,
}

fn main() -> Result<()> {
    match Cli::parse().task {
        Task::Run => run::run(),
        Task::Lint => lint::run(),
        Task::Step { name } => test::step(&name),
        Task::Test { steps } => test::run(&steps),
        Task::Android { task } => android::run(task),
        Task::Bench => test::bench(),
        Task::Screenshots => android::screenshots(),
    }
}
