//! The hold test as it is seen: the gauge with its target band, the running seconds, the phase.

use holdfast_diagnose::{TestSpec, hold_target};
use holdfast_measure::{PressureUnit, QuantityError};
use holdfast_report::{Dial, gauge};

use crate::companion::Companion;
use crate::compose;
use crate::flow::hold::{CutOff, HoldAt, Running, Watcher};
use crate::flow::hold_act::unit_of;
use crate::flow::numbers;
use crate::flow::parts::{plain, primary, quiet};
use crate::protocol::{
    Action, Body, Button, Clock, Field, FieldId, HoldPhase, HoldScreen, Keys, Live, PhonePart,
};
use crate::session::{At, Stage, TestAt};
use crate::text::Args;

/// The target in the unit the gauge is read in.
pub(super) fn target(core: &Companion, _test: &str, hold: &HoldAt) -> Option<f64> {
    let job = core.job.as_ref()?;
    Some(unit_of(core, hold).from_pressure(hold_target(&job.situation).vacuum))
}

/// A figure as finely as the gauge is read.
pub(super) fn as_read(core: &Companion, figure: f64) -> f64 {
    let step = core.read_to();
    (figure / step).round() * step
}

/// The gauge as it stands. Its figure is not written on it: it moves with the needle, outside the drawing.
pub(super) fn dial(core: &Companion, hold: &HoldAt) -> Option<Dial> {
    let job = core.job.as_ref()?;
    let unit = unit_of(core, hold);
    let target = unit.from_pressure(hold_target(&job.situation).vacuum);
    let dial = compose::dial(&core.texts, &job.situation, unit, needle(core, hold, target));
    Some(Dial {
        reading_text: String::new(),
        ..dial
    })
}

/// Where the needle is drawn: dragged, else typed, else near where it must be.
fn needle(core: &Companion, hold: &HoldAt, target: f64) -> f64 {
    let typed = match hold {
        HoldAt::First { typed, .. } | HoldAt::Highest { typed, .. } | HoldAt::Read { typed, .. } => {
            numbers::kept(core, typed).map(f64::abs)
        }
        _ => None,
    };
    typed.or(core.moving.needle).unwrap_or_else(|| match hold {
        HoldAt::Pump { .. } | HoldAt::Highest { .. } => 0.0,
        HoldAt::First { .. } => target,
        HoldAt::Watch(running)
        | HoldAt::Read { hold: running, .. }
        | HoldAt::Interrupted { hold: running, .. } => running.last().unwrap_or(0.0),
    })
}

/// A figure of the gauge with its unit.
fn shown(core: &Companion, figure: f64, unit: PressureUnit) -> String {
    core.texts
        .with_unit(&numbers::plain(core, as_read(core, figure)), unit.symbol())
}

/// The moving part of a hold, if one is on the screen.
pub(super) fn live_now(core: &Companion, clock: &Clock) -> Option<Live> {
    let At::Test(TestAt {
        stage: Stage::Hold(hold),
        ..
    }) = &core.session.at
    else {
        return None;
    };
    Some(live(core, hold, clock))
}

fn live(core: &Companion, hold: &HoldAt, clock: &Clock) -> Live {
    let dial = dial(core, hold);
    let unit = unit_of(core, hold);
    let seconds = match hold {
        HoldAt::First { since, .. } => since.elapsed_s(clock).map(|s| core.texts.number(s.floor(), 0)),
        HoldAt::Watch(running) => running
            .since
            .elapsed_s(clock)
            .map(|s| core.texts.number(s.floor(), 0)),
        HoldAt::Read { at_s, .. } => Some(core.texts.number(at_s.floor(), 0)),
        HoldAt::Pump { .. } | HoldAt::Highest { .. } | HoldAt::Interrupted { .. } => None,
    };
    Live {
        seconds: seconds.unwrap_or_default(),
        needle_deg: dial.as_ref().map_or(0.0, |dial| dial.angle_of(dial.reading)),
        reading: dial.as_ref().map_or_else(String::new, |dial| {
            let figure = numbers::plain(core, as_read(core, dial.reading));
            if core.session.settings.large_figures.is_on() {
                // The unit below: the figure can be twice as large.
                format!("{figure}\n{}", core.texts.unit_name(unit.symbol()))
            } else {
                core.texts.with_unit(&figure, unit.symbol())
            }
        }),
        cue: cue(core, hold, clock),
    }
}

fn cue(core: &Companion, hold: &HoldAt, clock: &Clock) -> String {
    match hold {
        HoldAt::Pump { .. } => core.say("hold-cue-pump"),
        HoldAt::First { .. } => core.say("hold-cue-first"),
        HoldAt::Highest { .. } => core.say("hold-cue-highest"),
        HoldAt::Watch(running) => {
            let left = running.due_s - running.since.elapsed_s(clock).unwrap_or(0.0);
            core.say_with(
                "hold-cue-watch",
                &Args::new().text("seconds", core.texts.seconds(left.ceil().max(0.0))),
            )
        }
        HoldAt::Read { .. } => core.say("hold-cue-read"),
        HoldAt::Interrupted { .. } => core.say("hold-cue-interrupted"),
    }
}

pub(super) fn body(core: &Companion, spec: &TestSpec, hold: &HoldAt) -> Body {
    let clock = core.moving.clock.clone().unwrap_or(Clock {
        wall_ms: 0,
        offset_min: 0,
        mono_ms: 0,
        boot_id: String::new(),
    });
    let dial = dial(core, hold).unwrap_or_default();
    let hold = HoldScreen {
        gauge: gauge(&dial),
        live: live(core, hold, &clock),
        phase: phase(core, spec, hold, &clock),
    };
    Body::Hold { hold }
}

fn phase(core: &Companion, spec: &TestSpec, hold: &HoldAt, clock: &Clock) -> HoldPhase {
    match hold {
        HoldAt::Pump { strokes, watcher } => pump(core, spec, *strokes, *watcher),
        HoldAt::First { typed, .. } => read(core, "hold-read-first", hold, typed, vec![start_again(core)]),
        HoldAt::Highest { typed, .. } => {
            read(core, "hold-read-highest", hold, typed, vec![start_again(core)])
        }
        HoldAt::Read {
            hold: running, typed, ..
        } => {
            let mut others = Vec::new();
            if let Some(last) = running.last() {
                let text = numbers::plain(core, last);
                let label = core.say_with(
                    "hold-not-moved",
                    &Args::new().text("reading", shown(core, last, unit_of(core, hold))),
                );
                others.push(plain(
                    label,
                    Action::Type {
                        field: FieldId::GaugeReading,
                        text,
                    },
                ));
            }
            others.push(start_again(core));
            read(core, "hold-read-now", hold, typed, others)
        }
        HoldAt::Watch(running) => watch(core, running),
        HoldAt::Interrupted { hold: running, by } => interrupted(core, running, *by, clock),
    }
}

fn start_again(core: &Companion) -> Button {
    quiet(core.say("hold-start-again"), Action::StartAgain)
}

fn pump(core: &Companion, spec: &TestSpec, strokes: u32, watcher: Watcher) -> HoldPhase {
    let target = core.job.as_ref().map_or_else(String::new, |job| {
        core.texts.message(&hold_target(&job.situation).why)
    });
    let wont_build = quiet(
        core.say_with(
            "hold-wont-build",
            &Args::new().text("test", core.texts.test_title(&spec.id)),
        ),
        Action::WillNotBuild,
    );
    let watch = match watcher {
        Watcher::Camera => Some(quiet(core.say("hold-by-eye"), Action::WatchByEye)),
        Watcher::Eye => core
            .has(PhonePart::GaugeReader)
            .then(|| quiet(core.say("hold-by-camera"), Action::WatchByCamera)),
    };
    let counted = usize::try_from(strokes).unwrap_or(usize::MAX);
    HoldPhase::Pump {
        target,
        strokes: core.say_with("hold-strokes", &Args::new().count("count", counted)),
        count: vec![
            plain(core.say("hold-stroke"), Action::Stroke),
            quiet(core.say("hold-unstroke"), Action::UnStroke)
                .unless((strokes == 0).then(|| core.say("hold-no-strokes"))),
        ],
        let_go: primary(core.say("hold-let-go"), Action::LetGo),
        others: [Some(wont_build), watch].into_iter().flatten().collect(),
    }
}

fn read(core: &Companion, prompt: &str, hold: &HoldAt, typed: &str, mut others: Vec<Button>) -> HoldPhase {
    let unit = unit_of(core, hold);
    let value = match core.moving.needle {
        Some(dragged) if typed.is_empty() => numbers::plain(core, dragged),
        _ => typed.to_owned(),
    };
    let most = core.most_vacuum(unit);
    let wrong = (!typed.trim().is_empty())
        .then(|| numbers::read_vacuum(core, typed, unit, most).err())
        .flatten();
    if matches!(wrong, Some(QuantityError::OutOfRange { .. })) {
        others.insert(0, plain(core.say("keep-out-of-range"), Action::KeepReading));
    }
    let problem = wrong.map(|error| numbers::problem(core, &error));
    let why_not = match (&problem, value.trim().is_empty()) {
        (Some(problem), _) => Some(problem.clone()),
        (None, true) => Some(core.say("hold-read-missing")),
        (None, false) => None,
    };
    HoldPhase::Read {
        prompt: core.say(prompt),
        field: Field {
            id: FieldId::GaugeReading,
            label: core.say("hold-reading"),
            value,
            unit: core.texts.unit_name(unit.symbol()),
            hint: core.say("hold-reading-hint"),
            problem,
            keys: Keys::Number,
        },
        confirm: primary(core.say("hold-confirm"), Action::Confirm).unless(why_not),
        others,
    }
}

fn watch(core: &Companion, running: &Running) -> HoldPhase {
    let (prompt, now) = match running.watcher {
        Watcher::Eye => ("hold-watch", "hold-read-now-early"),
        Watcher::Camera => ("hold-watch-camera", "hold-use-seen"),
    };
    let mut prompt = core.say(prompt);
    if let Some(gap) = running.gap_s {
        let args = Args::new().text("seconds", core.texts.seconds(gap));
        prompt = format!("{prompt} {}", core.say_with("problem-gap", &args));
    }
    HoldPhase::Watch {
        prompt,
        buttons: vec![plain(core.say(now), Action::ReadNow), start_again(core)],
    }
}

fn interrupted(core: &Companion, running: &Running, by: CutOff, clock: &Clock) -> HoldPhase {
    let unit = PressureUnit::from_symbol(&running.unit).unwrap_or_else(|| core.gauge_unit());
    let kept = match (running.start, running.readings.last()) {
        (None, _) => core.say("hold-kept-nothing"),
        (Some(start), None) => core.say_with(
            "hold-kept-start",
            &Args::new().text("start", shown(core, start, unit)),
        ),
        (Some(start), Some((at_s, reading))) => core.say_with(
            "hold-kept-reading",
            &Args::new()
                .text("start", shown(core, start, unit))
                .text("reading", shown(core, *reading, unit))
                .text("seconds", core.texts.seconds(*at_s)),
        ),
    };
    let why = core.say(match by {
        CutOff::Killed => "hold-interrupted-killed",
        CutOff::Restarted => "hold-interrupted-restarted",
        CutOff::Unseen => "hold-interrupted-unseen",
    });
    let same_boot = by != CutOff::Unseen && running.since.elapsed_s(clock).is_some();
    let mut buttons = Vec::new();
    if same_boot {
        buttons.push(primary(core.say("hold-resume"), Action::GoOn));
    }
    if running.is_read() {
        buttons.push(plain(core.say("hold-use-what-there-is"), Action::UseWhatThereIs));
    }
    let again = if same_boot { quiet } else { primary };
    buttons.push(again(core.say("hold-start-again"), Action::StartAgain));
    HoldPhase::Interrupted {
        text: format!("{why} {kept}"),
        buttons,
    }
}
