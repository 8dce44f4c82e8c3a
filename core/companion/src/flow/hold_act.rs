//! The events of a vacuum hold test; the table is in [`super::hold`].

use holdfast_joblog::{HoldPoint, Interrupted, Payload};
use holdfast_measure::PressureUnit;
use holdfast_report::Point;

use crate::companion::Companion;
use crate::error::ActError;
use crate::flow::answered::meant;
use crate::flow::cues::{self, Cue};
use crate::flow::hold::{HoldAt, Moment, Running, Watcher};
use crate::flow::hold_read::{confirm, hand_in_hold};
use crate::flow::{hold_camera, hold_screen};
use crate::protocol::{Action, Buzz, FieldId, PhonePart};
use crate::session::{At, Stage, TestAt};
use crate::turn::{Seen, Turn};

/// A gap in ticks longer than this is shown: the phone slept.
const GAP_S: f64 = 3.0;
/// A tick to feel each so many seconds.
const MARK_S: f64 = 5.0;
/// Shares of the target that are said aloud on the way up: ten, fifteen, eighteen of twenty.
pub(super) const SPOKEN: [f64; 3] = [0.5, 0.75, 0.9];

pub(super) fn standing(core: &Companion) -> Option<(TestAt, HoldAt)> {
    match &core.session.at {
        At::Test(at) => match &at.stage {
            Stage::Hold(hold) => Some((at.clone(), hold.clone())),
            _ => None,
        },
        _ => None,
    }
}

pub(super) fn put(core: &mut Companion, at: TestAt, hold: HoldAt) {
    core.session.at = At::Test(TestAt {
        stage: Stage::Hold(hold),
        ..at
    });
}

/// The unit a hold is read in: its own, once something was read, else that of the gauge.
pub(super) fn unit_of(core: &Companion, hold: &HoldAt) -> PressureUnit {
    hold.running()
        .and_then(|running| PressureUnit::from_symbol(&running.unit))
        .unwrap_or_else(|| core.gauge_unit())
}

/// Time has passed.
pub(super) fn tick(core: &mut Companion, turn: &mut Turn<'_>) -> Result<(), ActError> {
    turn.seen = Seen::Same;
    let Some((at, hold)) = standing(core) else {
        return Ok(());
    };
    let unit = unit_of(core, &hold);
    let hold = match hold.checked(turn.clock, unit.symbol()) {
        HoldAt::Watch(running) if hold_camera::is_over(&running, turn) => {
            hold_camera::end(core, at, running, turn)?;
            turn.live = hold_screen::live_now(core, turn.clock);
            return Ok(());
        }
        HoldAt::Watch(running) => watch_on(core, running, turn),
        other => other,
    };
    let anew =
        !matches!(&core.session.at, At::Test(TestAt { stage: Stage::Hold(before), .. }) if *before == hold);
    if anew {
        turn.seen = Seen::Anew;
        core.moving.needle = None;
        put(core, at, hold);
    }
    turn.live = hold_screen::live_now(core, turn.clock);
    Ok(())
}

fn watch_on(core: &mut Companion, mut running: Running, turn: &mut Turn<'_>) -> HoldAt {
    let Some(elapsed) = running.since.elapsed_s(turn.clock) else {
        return HoldAt::Watch(running);
    };
    let before = core.moving.ticked_ms.replace(turn.clock.mono_ms);
    let gap = before.map_or(0.0, |ms| {
        Moment {
            mono_ms: ms,
            boot_id: turn.clock.boot_id.clone(),
        }
        .elapsed_s(turn.clock)
        .unwrap_or(0.0)
    });
    if gap > GAP_S {
        running.gap_s = Some(running.gap_s.unwrap_or(0.0).max(gap));
    }
    if running.watcher == Watcher::Eye && elapsed >= running.due_s {
        cues::tell(core, Cue::ReadNow, "", turn);
        return HoldAt::Read {
            hold: running,
            at_s: elapsed,
            typed: String::new(),
        };
    }
    let marks = (elapsed / MARK_S).floor();
    if marks > core.moving.marks {
        core.moving.marks = marks;
        turn.buzz_if(core.session.settings.buzz, Buzz::Tick);
    }
    cues::count_down(core, &running, elapsed, turn);
    HoldAt::Watch(running)
}

/// A finger drags the needle: only the moving part changes, and nothing is written.
pub(super) fn drag(core: &mut Companion, x: f32, y: f32, turn: &mut Turn<'_>) {
    turn.seen = Seen::Same;
    let Some((at, hold)) = standing(core) else { return };
    let Some(dial) = hold_screen::dial(core, &hold) else {
        return;
    };
    let reading = hold_screen::as_read(core, dial.reading_at(Point { x, y }));
    let first = core.moving.needle.replace(reading).is_none();
    match &hold {
        HoldAt::Pump { .. } => speak_on_the_way(core, &at, &hold, reading, turn),
        HoldAt::First { typed, .. } | HoldAt::Highest { typed, .. } | HoldAt::Read { typed, .. } => {
            if first || !typed.is_empty() {
                turn.seen = Seen::Anew;
            }
            put(core, at, hold.typed(""));
        }
        HoldAt::Watch(_) | HoldAt::Interrupted { .. } => {}
    }
    turn.live = hold_screen::live_now(core, turn.clock);
}

pub(super) fn speak_on_the_way(
    core: &mut Companion,
    at: &TestAt,
    hold: &HoldAt,
    reading: f64,
    turn: &mut Turn<'_>,
) {
    let Some(target) = hold_screen::target(core, &at.test, hold) else {
        return;
    };
    if reading >= target * 0.995 {
        if core.moving.spoken <= SPOKEN.len() {
            core.moving.spoken = SPOKEN.len() + 1;
            cues::tell(core, Cue::LetGo, "", turn);
        }
        return;
    }
    let passed = SPOKEN.iter().filter(|share| reading >= target * **share).count();
    if passed > core.moving.spoken {
        core.moving.spoken = passed;
        let share = SPOKEN.get(passed - 1).copied().unwrap_or(1.0);
        let figure = crate::flow::numbers::plain(core, hold_screen::as_read(core, target * share));
        cues::tell(core, Cue::Figure, &figure, turn);
    }
}

pub(super) fn act(
    core: &mut Companion,
    at: TestAt,
    action: Action,
    turn: &mut Turn<'_>,
) -> Result<(), ActError> {
    let Stage::Hold(hold) = at.stage.clone() else {
        return Ok(());
    };
    let unit = unit_of(core, &hold);
    let hold = hold.checked(turn.clock, unit.symbol());
    let next = match (hold, action) {
        (HoldAt::Pump { strokes, watcher }, Action::Stroke) => HoldAt::Pump {
            strokes: strokes.saturating_add(1),
            watcher,
        },
        (HoldAt::Pump { strokes, watcher }, Action::UnStroke) => HoldAt::Pump {
            strokes: strokes.saturating_sub(1),
            watcher,
        },
        (HoldAt::Pump { strokes, .. }, Action::WatchByCamera) if core.has(PhonePart::GaugeReader) => {
            HoldAt::Pump {
                strokes,
                watcher: Watcher::Camera,
            }
        }
        (HoldAt::Pump { strokes, .. }, Action::WatchByEye) => HoldAt::Pump {
            strokes,
            watcher: Watcher::Eye,
        },
        (HoldAt::Pump { strokes, watcher }, Action::LetGo) => {
            cues::tell(core, Cue::Start, "", turn);
            core.moving.needle = None;
            core.moving.left = None;
            match watcher {
                Watcher::Camera => hold_camera::begin(core, strokes, turn),
                Watcher::Eye => HoldAt::First {
                    strokes,
                    since: Moment::now(turn.clock),
                    typed: String::new(),
                },
            }
        }
        (HoldAt::Pump { strokes, .. }, Action::WillNotBuild) => {
            core.moving.needle = None;
            HoldAt::Highest {
                strokes,
                typed: String::new(),
            }
        }
        (
            hold @ (HoldAt::First { .. } | HoldAt::Highest { .. } | HoldAt::Read { .. }),
            Action::Type {
                field: FieldId::GaugeReading,
                text,
            },
        ) => {
            core.moving.needle = None;
            hold.typed(&text)
        }
        (HoldAt::Watch(running), Action::ReadNow) if running.watcher == Watcher::Camera => {
            return hold_camera::end(core, at, running, turn);
        }
        (HoldAt::Watch(running), Action::ReadNow) => {
            let at_s = running.since.elapsed_s(turn.clock).unwrap_or(running.due_s);
            core.moving.needle = None;
            HoldAt::Read {
                hold: running,
                at_s,
                typed: String::new(),
            }
        }
        (HoldAt::Interrupted { hold, .. }, Action::GoOn) => gone_on(core, hold, turn),
        (HoldAt::Interrupted { hold, .. }, Action::UseWhatThereIs) => {
            let seen = hold_camera::trace(core, &at.test, &hold);
            return hand_in_hold(core, at, hold, seen, turn);
        }
        (hold, Action::StartAgain) => {
            hold_camera::settle(core, turn);
            log_broken_off(core, &at, &hold, turn);
            core.moving.needle = None;
            core.moving.spoken = 0;
            HoldAt::begin_watched(hold.watcher())
        }
        (hold, Action::Confirm) => return confirm(core, at, hold, core.most_vacuum(unit), turn),
        (hold, Action::KeepReading) => return confirm(core, at, hold, meant(), turn),
        (hold, _) => hold,
    };
    put(core, at, next);
    turn.live = hold_screen::live_now(core, turn.clock);
    Ok(())
}

/// An interrupted hold taken up on the same boot: the monotonic clock never stopped.
fn gone_on(core: &mut Companion, hold: Running, turn: &Turn<'_>) -> HoldAt {
    let elapsed = hold.since.elapsed_s(turn.clock).unwrap_or(0.0);
    core.moving.ticked_ms = None;
    match hold.start {
        None if hold.watcher == Watcher::Eye => HoldAt::First {
            strokes: hold.strokes,
            since: hold.since,
            typed: String::new(),
        },
        _ => {
            let due_s = hold_camera::due_s(&hold, elapsed).max(elapsed);
            HoldAt::Watch(Running { due_s, ..hold })
        }
    }
}

/// A broken-off hold is kept in the log with what it had.
fn log_broken_off(core: &mut Companion, at: &TestAt, hold: &HoldAt, turn: &mut Turn<'_>) {
    let Some(running) = hold.running() else { return };
    let broken = Interrupted {
        test: at.test.clone(),
        by: hold.cut_off_by().to_owned(),
        unit: running.unit.clone(),
        start: running.start,
        points: running
            .readings
            .iter()
            .map(|(at_s, vacuum)| HoldPoint {
                at_s: *at_s,
                vacuum: *vacuum,
            })
            .collect(),
        strokes: running.strokes,
        ran_s: running.readings.last().map_or(0.0, |(at_s, _)| *at_s),
    };
    core.append(Payload::Interrupted(broken), turn);
}

/// Watching on from where it is, for so many seconds more.
pub(super) fn watch_more(core: &mut Companion, at: TestAt, hold: Running, more_s: f64, turn: &mut Turn<'_>) {
    core.moving.needle = None;
    core.moving.ticked_ms = Some(turn.clock.mono_ms);
    let elapsed = hold.since.elapsed_s(turn.clock).unwrap_or(0.0);
    core.moving.marks = (elapsed / MARK_S).floor();
    core.moving.left = None;
    let hold = hold.gone_on(more_s);
    let due_s = hold_camera::due_s(&hold, elapsed);
    let next = HoldAt::Watch(Running { due_s, ..hold }).checked(turn.clock, "");
    put(core, at, next);
    turn.live = hold_screen::live_now(core, turn.clock);
}
