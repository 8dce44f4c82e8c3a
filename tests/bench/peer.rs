//! A peer in another language: a program that does one piece of work for each line it gets and says what came of it, or how long it took.

use std::io::{BufRead, BufReader, Write};
use std::path::Path;
use std::process::{Child, ChildStdin, ChildStdout, Command, Stdio};
use std::time::Duration;

/// A peer that waits for work.
pub struct Peer {
    child: Child,
    work: ChildStdin,
    answers: BufReader<ChildStdout>,
}

impl Peer {
    /// Starts a script of `peers/`; none where its libraries were not fetched (`cargo xtask bench` does).
    pub fn start(script: &str) -> Option<Self> {
        let libraries = std::env::var_os("HOLDFAST_BENCH_PEERS")?;
        let script = Path::new(env!("CARGO_MANIFEST_DIR"))
            .join("bench/peers")
            .join(script);
        let mut child = Command::new("python3")
            .arg(script)
            .env("PYTHONPATH", libraries)
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .spawn()
            .expect("the peer starts");
        let work = child.stdin.take().expect("its input");
        let answers = BufReader::new(child.stdout.take().expect("its output"));
        Some(Self { child, work, answers })
    }

    /// Lets it do one piece of work.
    pub fn time(&mut self, line: &str) -> Duration {
        let said = self.ask(line);
        Duration::from_secs_f64(said.trim().parse().expect("the peer says how long it took"))
    }

    /// Tells it something to which it says nothing.
    pub fn tell(&mut self, line: &str) {
        writeln!(self.work, "{line}").expect("the peer listens");
    }

    /// Asks it something.
    pub fn ask(&mut self, line: &str) -> String {
        self.tell(line);
        let mut said = String::new();
        self.answers.read_line(&mut said).expect("the peer answers");
        said
    }
}

impl Drop for Peer {
    fn drop(&mut self) {
        let _ended = self.child.kill().and_then(|()| self.child.wait());
    }
}
