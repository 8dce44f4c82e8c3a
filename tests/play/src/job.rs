//! The job from the first test to the report.

use std::collections::BTreeMap;
use std::path::Path;

use holdfast_companion::{Action, AskedStage, Body, CannotReason, FieldId, Pick, Picked, Place, ReportState};
use holdfast_diagnose::{Answer, Catalogue, Next, Policy, TestId, parse_answer};
use holdfast_joblog::{DeviceId, Store};
use serde_json::Value;

use crate::answer;
use crate::clock::PhoneClock;
use crate::error::PlayError;
use crate::hold::{self, Hold};
use crate::outcome::Outcome;
use crate::scenario::{Repair, Scenario};
use crate::setup;
use crate::shell::Shell;

/// How to play.
#[derive(Debug, Clone, Copy, Default)]
pub struct Options<'a> {
    /// How the next test is chosen.
    pub policy: Policy,
    /// Where the report goes; none: no report.
    pub report: Option<&'a Path>,
}

/// More tests than any circuit has.
const MOST_TESTS: usize = 300;

/// Plays a scenario in a data folder of its own, which goes away again.
///
/// # Errors
/// [`PlayError`]: the scenario can't be, or the program is broken.
pub fn play(scenario: &Scenario, options: Options<'_>) -> Result<Outcome, PlayError> {
    let dir = tempfile::tempdir()?;
    play_in(dir.path(), scenario, options).map(|(outcome, _)| outcome)
}

/// Plays a scenario in a data folder, and leaves the app open as it stands at the end.
///
/// # Errors
/// As [`play`].
pub fn play_in(dir: &Path, scenario: &Scenario, options: Options<'_>) -> Result<(Outcome, Shell), PlayError> {
    let mut shell = open(dir)?;
    let outcome = play_on(&mut shell, scenario, options)?;
    Ok((outcome, shell))
}

/// Opens the app on a data folder with a device id of its own, so that the same scenario leaves the same log and the
/// same report.
///
/// # Errors
/// [`PlayError`]: the folder or the log can't be opened.
pub fn open(dir: &Path) -> Result<Shell, PlayError> {
    drop(Store::open_as(dir, DeviceId(*b"holdfast-play---"))?);
    Shell::open(dir, PhoneClock::default())
}

/// Plays a scenario in an open app, from the list of jobs.
///
/// # Errors
/// As [`play`].
pub fn play_on(shell: &mut Shell, scenario: &Scenario, options: Options<'_>) -> Result<Outcome, PlayError> {
    setup::begin(shell, scenario)?;
    shell.core.play_by(options.policy)?;
    shell.look_again();

    let unit = shell
        .core
        .situation()
        .map_or("", |situation| situation.instruments.gauge.unit.symbol());
    let mut answers = Answers::of(&scenario.answers, &scenario.cannot, unit.to_owned());
    let mut asked = 0;
    while let Some(next) = shell.core.next() {
        asked += 1;
        if asked > MOST_TESTS {
            return Err(PlayError::Endless(MOST_TESTS));
        }
        match next {
            Next::Test { id, .. } => {
                shell.press(&Action::ShowTest { test: id.to_string() })?;
                do_test(shell, &id, &mut answers)?;
            }
            Next::LookAgain { id, .. } => {
                shell.press(&Action::ShowTest { test: id.to_string() })?;
                keep_if_questioned(shell)?;
            }
            Next::Stop { .. } => break,
        }
        if shell.offers(&Action::Go { to: Place::Overview }) {
            shell.press(&Action::Go { to: Place::Overview })?;
        }
    }
    shell.press(&Action::Go { to: Place::Finding })?;
    let found = shell.core.results().len();
    if let Some(repair) = &scenario.repair {
        do_repair(shell, repair, unit.to_owned())?;
    }
    let report = match options.report {
        Some(path) => Some(make_report(shell, path)?),
        None => None,
    };
    Ok(Outcome::of(scenario, shell, found, report))
}

/// The answers of a file, and how often each test was asked.
struct Answers<'a> {
    answers: &'a BTreeMap<String, Value>,
    cannot: &'a BTreeMap<String, String>,
    /// The unit of the scenario's gauge.
    unit: String,
    asked: BTreeMap<String, usize>,
}

/// What a file has for a test.
enum Given<'a> {
    Answer(&'a Value),
    Cannot(&'a str),
    Nothing,
}

impl<'a> Answers<'a> {
    fn of(answers: &'a BTreeMap<String, Value>, cannot: &'a BTreeMap<String, String>, unit: String) -> Self {
        Self {
            answers,
            cannot,
            unit,
            asked: BTreeMap::new(),
        }
    }

    /// The answer for this time: of a list the one whose turn it is, the last repeated.
    fn next(&mut self, test: &TestId) -> Given<'a> {
        let id = test.to_string();
        if let Some(reason) = self.cannot.get(&id) {
            return Given::Cannot(reason);
        }
        let Some(answer) = self.answers.get(&id) else {
            return Given::Nothing;
        };
        let times = self.asked.entry(id).or_insert(0);
        let now = *times;
        *times += 1;
        match answer {
            Value::Array(list) => list
                .get(now)
                .or(list.last())
                .map_or(Given::Nothing, Given::Answer),
            one => Given::Answer(one),
        }
    }
}

/// The test on the screen from its briefing to its result.
fn do_test(shell: &mut Shell, id: &TestId, answers: &mut Answers<'_>) -> Result<(), PlayError> {
    let given = match answers.next(id) {
        Given::Answer(answer) => answer,
        Given::Cannot(reason) => return cannot(shell, reason),
        Given::Nothing => {
            let reason = CannotReason::NotAvailable;
            return shell.press(&Action::CannotDo { reason }).map(|_| ());
        }
    };
    let circuit = shell
        .core
        .circuit()
        .cloned()
        .ok_or_else(|| shell.missing("circuit".into()))?;
    let mut given = given.clone();
    let unit = vacuum_unit(&mut given, &answers.unit);
    let (answer, state) = parse_answer(&circuit, id, &given)?;
    let spec = Catalogue::standard()
        .spec(&circuit, id)
        .ok_or_else(|| shell.missing(format!("test {id}")))?;

    if let Some(unit) = unit {
        read_in(shell, unit)?;
    }
    shell.tick_cautions()?;
    answer::state_car(shell, state)?;
    shell.press(&Action::BeginTest)?;
    shell.clock.wait_ms((spec.minutes * 30_000.0) as i64);
    match &answer {
        Answer::Hold(holds) => {
            let mut hold = Hold::of(holds);
            hold::play(shell, &mut hold)?;
            keep_if_questioned(shell)?;
            watch_on(shell, &hold)?;
        }
        _ => {
            answer::play(shell, &spec, &given)?;
            keep_if_questioned(shell)?;
        }
    }
    shell.clock.wait_ms((spec.minutes * 30_000.0) as i64);
    Ok(())
}

/// The unit of the vacuum in an answer: the scenario's gauge is read in its own where the file does not say another.
/// None where there is no vacuum in it.
fn vacuum_unit(answer: &mut Value, own: &str) -> Option<String> {
    let is_vacuum = |key: &&str| ["gauge", "start", "trace", "never_reached"].contains(key);
    let object = answer.as_object_mut()?;
    object
        .keys()
        .map(String::as_str)
        .any(|key| is_vacuum(&key))
        .then(|| {
            object
                .entry("unit")
                .or_insert_with(|| Value::from(own))
                .as_str()
                .map(str::to_owned)
        })?
}

/// A gauge with another scale is read: said in the settings, where a person says it.
fn read_in(shell: &mut Shell, symbol: String) -> Result<(), PlayError> {
    let gauge = shell.core.situation().map(|s| s.instruments.gauge.unit.symbol());
    if gauge.is_some_and(|gauge| gauge != symbol) {
        shell.press(&Action::Go { to: Place::Settings })?;
        shell.pick(&Pick::GaugeUnit { symbol }, Picked::Yes)?;
        shell.press(&Action::Back)?;
    }
    Ok(())
}

fn cannot(shell: &mut Shell, reason: &str) -> Result<(), PlayError> {
    let plain = reason.to_lowercase();
    let offered = [
        (["access", "reach"], CannotReason::NoAccess),
        (["tool", "equipment"], CannotReason::NoTool),
        (["safe", "danger"], CannotReason::NotSafe),
        (["fitted", "no such"], CannotReason::NotFitted),
        (["not now", "later"], CannotReason::NotNow),
    ];
    let known = offered
        .into_iter()
        .find(|(words, _)| words.iter().any(|word| plain.contains(word)));
    match known {
        Some((_, reason)) => shell.press(&Action::CannotDo { reason }).map(|_| ()),
        None => {
            let own = Action::CannotDo {
                reason: CannotReason::OwnWords,
            };
            shell.press(&own)?;
            shell.type_in(&FieldId::CannotWhy, reason)?;
            shell.press(&own).map(|_| ())
        }
    }
}

/// The file's figure is what the person saw: asked whether it can be right, they keep it.
fn keep_if_questioned(shell: &mut Shell) -> Result<(), PlayError> {
    if stage(shell) == Some(AskedStage::Question) {
        shell.press(&Action::KeepReading)?;
    }
    match stage(shell) {
        Some(AskedStage::Result) => Ok(()),
        other => Err(shell.missing(format!("result; it stands at {other:?}"))),
    }
}

fn stage(shell: &Shell) -> Option<AskedStage> {
    shell.core.asked().map(|asked| asked.stage)
}

/// An undecided hold is watched on, as long as the file has later readings.
fn watch_on(shell: &mut Shell, hold: &Hold<'_>) -> Result<(), PlayError> {
    while shell.offers(&Action::GoOn) {
        let last = shell
            .core
            .results()
            .last()
            .and_then(|done| done.result.hold.as_ref())
            .map(|h| h.seconds);
        if !last.is_some_and(|seconds| hold.has_after(seconds, shell)) {
            break;
        }
        shell.press(&Action::GoOn)?;
        hold::watch(shell, hold)?;
        keep_if_questioned(shell)?;
    }
    Ok(())
}

fn do_repair(shell: &mut Shell, repair: &Repair, unit: String) -> Result<(), PlayError> {
    let component = repair.replaced.clone();
    let named = Action::Repair {
        component: component.clone(),
    };
    if shell.offers(&named) {
        shell.press(&named)?;
    } else {
        shell.press(&Action::RepairOther)?;
        let part = Pick::Part {
            component: component.clone(),
        };
        let Some(option) = shell.option(&part) else {
            return Err(PlayError::Value {
                what: "repair.replaced".into(),
                why: format!("there is no {component:?}"),
            });
        };
        shell.send(option.action)?;
    }
    shell.press(&Action::RepairDone)?;
    let Body::Repaired { repair: screen } = &shell.screen().body else {
        return Err(shell.missing("retest".into()));
    };
    let Action::ShowTest { test } = screen.next.action.clone() else {
        return Err(shell.missing("retest".into()));
    };
    let id: TestId = test.parse().map_err(|_| shell.missing(format!("test {test}")))?;
    shell.press(&Action::ShowTest { test })?;
    let nothing = BTreeMap::new();
    do_test(shell, &id, &mut Answers::of(&repair.answers, &nothing, unit))
}

fn make_report(shell: &mut Shell, to: &Path) -> Result<String, PlayError> {
    shell.press(&Action::Go { to: Place::Report })?;
    shell.press(&Action::MakeReport)?;
    let Body::Report { report } = &shell.screen().body else {
        return Err(shell.missing("report".into()));
    };
    let ReportState::Ready { path, .. } = &report.state else {
        return Err(PlayError::Report("it is not ready".into()));
    };
    if let Some(folder) = to.parent() {
        std::fs::create_dir_all(folder)?;
    }
    std::fs::copy(path, to)?;
    Ok(to.to_string_lossy().into_owned())
}
