//! Storage that fails: damaged, only to be read, newer than the app.

use std::fs;

use holdfast_companion::{Action, Body, FieldId, OpenError, Place, Remedy};
use holdfast_joblog::{OpenError as LogError, Store};
use holdfast_play::{PhoneClock, PlayError, Shell};

use crate::hands::{Phone, begin, job};

fn one_reading() -> Phone {
    let mut phone = job();
    begin(&mut phone, "delivered");
    phone
        .shell
        .fill(&FieldId::Answer { key: "gauge".into() }, "18,5")
        .unwrap();
    phone.shell.press(&Action::Confirm).unwrap();
    phone
}

#[test]
fn a_damaged_log_is_kept_aside_said_so_and_what_was_readable_is_there() {
    let phone = one_reading();
    let (readings, entries) = (phone.shell.core.results(), phone.shell.core.entries());
    let Phone { dir, shell } = phone;
    drop(shell);
    let log = dir.path().join("joblog.sqlite");
    let mut bytes = fs::read(&log).unwrap();
    // The list of jobs, which is made anew, and not the entries: so everything can be read.
    let page = (1..bytes.len() / 4096)
        .find(|page| {
            let page = &bytes[page * 4096..(page + 1) * 4096];
            page[0] == 13
                && page.windows(10).any(|text| text == b"shake_idle")
                && !page.windows(7).any(|t| t == b"phrases")
        })
        .unwrap();
    bytes[page * 4096..(page + 1) * 4096].fill(0xA5);
    fs::write(&log, &bytes).unwrap();

    let shell = Shell::open(dir.path(), PhoneClock::default()).unwrap();
    let notice = shell.screen().frame.notice.clone().unwrap();
    assert!(notice.text.contains("damaged"), "{}", notice.text);
    assert_eq!((shell.core.results(), shell.core.entries()), (readings, entries));
    assert_eq!(
        fs::read(dir.path().join("damaged-1").join("joblog.sqlite")).unwrap(),
        bytes
    );
}

#[test]
fn a_log_that_is_no_database_any_more_opens_the_app_empty_and_says_so() {
    let Phone { dir, shell } = one_reading();
    drop(shell);
    fs::write(dir.path().join("joblog.sqlite"), b"nothing of a database").unwrap();
    let mut shell = Shell::open(dir.path(), PhoneClock::default()).unwrap();
    assert!(shell.screen().frame.notice.is_some());
    shell.send(Action::Go { to: Place::Jobs }).unwrap();
    shell.press(&Action::NewJob).unwrap();
    assert!(shell.core.entries() > 0);
}

#[test]
fn a_log_that_can_only_be_read_is_shown_and_an_entry_is_refused_with_words() {
    let Phone { dir, shell } = one_reading();
    let (results, entries) = (shell.core.results(), shell.core.entries());
    drop(shell);
    // A folder in the place of SQLite's write-ahead log: it can't be made, whatever the rights of who runs this.
    fs::create_dir(dir.path().join("joblog.sqlite-wal")).unwrap();
    let mut shell = Shell::open(dir.path(), PhoneClock::default()).unwrap();
    assert!(shell.screen().frame.notice.is_some());
    assert_eq!((shell.core.results(), shell.core.entries()), (results, entries));
    for place in [Place::Finding, Place::Log, Place::Overview] {
        shell.send(Action::Go { to: place }).unwrap();
        assert!(shell.screen().frame.notice.is_some(), "{place:?}");
    }
    assert!(matches!(shell.screen().body, Body::Overview { .. }));
    shell
        .press(&Action::ShowTest {
            test: "hold:branch".into(),
        })
        .unwrap();
    let reason = holdfast_companion::CannotReason::NoAccess;
    match shell.send(Action::CannotDo { reason }) {
        Err(PlayError::Act(error)) => {
            assert_eq!(error.remedy(), Remedy::FreeSpace);
            assert!(!error.text("en").is_empty());
        }
        other => panic!("{other:?}"),
    }
    assert_eq!(
        (shell.core.asked().unwrap().test.to_string(), shell.core.entries()),
        ("hold:branch".into(), entries)
    );
}

#[test]
fn a_log_of_a_newer_version_is_refused_by_name_and_left_as_it_is() {
    let Phone { dir, shell } = one_reading();
    drop(shell);
    let file = dir.path().join("joblog.sqlite");
    let connection = rusqlite::Connection::open(&file).unwrap();
    connection.pragma_update(None, "user_version", 7).unwrap();
    drop(connection);
    let before = fs::read(&file).unwrap();
    match Shell::open(dir.path(), PhoneClock::default()) {
        Err(PlayError::Open(error @ OpenError::Log(LogError::Newer { found: 7, .. }))) => {
            assert_eq!(error.remedy(), Remedy::UpdateApp);
            assert!(error.text("en").contains('7'));
        }
        Err(other) => panic!("{other}"),
        Ok(_) => panic!("it opened"),
    }
    assert_eq!(fs::read(&file).unwrap(), before);
    assert!(Store::open(dir.path()).is_err());
}
