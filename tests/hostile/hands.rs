//! A phone to do these things on.

use holdfast_companion::{Action, Place};
use holdfast_play::{PhoneClock, Scenario, Shell};
use tempfile::TempDir;

/// A data folder and the app open on it.
pub struct Phone {
    /// The folder; gone when the phone is.
    pub dir: TempDir,
    /// The app, taken out and put back by what kills it.
    pub shell: Shell,
}

/// The app opened for the first time.
pub fn phone() -> Phone {
    let dir = tempfile::tempdir().unwrap();
    let shell = Shell::open(dir.path(), PhoneClock::default()).unwrap();
    Phone { dir, shell }
}

/// A job past its preparations, on the overview.
pub fn job() -> Phone {
    job_of(r#"{"name": "x", "circuit": "two-mounts-one-valve", "complaint": ["shake_idle"]}"#)
}

/// A scenario's job past its preparations, on the overview.
pub fn job_of(scenario: &str) -> Phone {
    let scenario: Scenario = serde_json::from_str(scenario).unwrap();
    let mut phone = phone();
    holdfast_play::begin(&mut phone.shell, &scenario).unwrap();
    phone
}

/// On the screen of a test, past its briefing.
pub fn begin(phone: &mut Phone, test: &str) {
    phone.shell.send(Action::Go { to: Place::Overview }).unwrap();
    phone
        .shell
        .press(&Action::ShowTest { test: test.into() })
        .unwrap();
    phone.shell.tick_cautions().unwrap();
    phone.shell.press(&Action::BeginTest).unwrap();
}

/// Kills the process and opens the app again.
pub fn killed(phone: Phone, after_ms: i64) -> Phone {
    let Phone { dir, shell } = phone;
    Phone {
        shell: shell.killed(after_ms).unwrap(),
        dir,
    }
}
