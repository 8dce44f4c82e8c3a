//! A hold watched by camera: ten frames a second, logged a second at a time.
//!
//! | event | in | leads to |
//! |---|---|---|
//! | `GaugeSeen` | pumping | the needle moves; the figures on the way up are spoken |
//! | `LetGo` | pumping | watching: the first frame with a needle is the start |
//! | `GaugeSeen` | watching | kept; each second of frames goes into the log |
//! | `GaugeSeen`, `Tick` at the set time | watching | the trace handed in |
//! | `ReadNow` | watching | the trace handed in as far as it goes |
//! | `GaugeNotSeen` | pumping, watching | watched on by eye |
//! | any of these without a second frame seen | watching | interrupted: start again |
//!
//! A frame belongs to the tenth of a second in which it came; tenths without one are lost frames. What is in the log
//! after a kill is the trace up to the last whole second.

use holdfast_joblog::{Payload, TraceChunk};

use crate::companion::Companion;
use crate::error::ActError;
use crate::flow::cues::{self, Cue};
use crate::flow::hold::{CutOff, FRAMES_HZ, HoldAt, Moment, Running, Watcher};
use crate::flow::hold_act::{put, speak_on_the_way, standing};
use crate::flow::hold_read::hand_in_hold;
use crate::flow::hold_screen;
use crate::moving::Frames;
use crate::protocol::{Action, Request};
use crate::session::{NoticeAt, TestAt};
use crate::turn::{Seen, Turn};

/// Milliseconds between frames.
const EVERY_MS: u32 = 100;
/// Frames in one entry: a second.
const CHUNK: usize = 10;
/// A frame may come so much later than the last is due and still count, s.
const LATE_S: f64 = 1.0;
/// So long is waited for the last frame before time alone ends the hold, s.
const PATIENCE_S: f64 = 0.2;
/// Half a frame, s.
const HALF_FRAME_S: f64 = 0.5 / FRAMES_HZ;
/// Seconds watched at least when a hold is gone on with.
const AT_LEAST_S: f64 = 1.0;

/// What the camera is asked for.
pub(super) fn request(core: &Companion) -> Request {
    let unit = core.gauge_unit();
    Request::WatchGauge {
        every_ms: EVERY_MS,
        unit: unit.symbol().to_owned(),
        span: unit.from_pressure(core.most_vacuum(unit)),
    }
}

/// What the log calls a hold: the same for each of its chunks, and no other hold's.
fn name(test: &str, since: &Moment) -> String {
    format!("{test} {} {}", since.boot_id, since.mono_ms)
}

/// A hold that begins to be watched by camera.
pub(super) fn begin(core: &mut Companion, strokes: u32, turn: &Turn<'_>) -> HoldAt {
    core.moving.frames = Frames::default();
    core.moving.ticked_ms = None;
    HoldAt::Watch(Running {
        strokes,
        since: Moment::now(turn.clock),
        watcher: Watcher::Camera,
        start: None,
        unit: core.gauge_unit().symbol().to_owned(),
        readings: Vec::new(),
        due_s: core.hold_seconds(),
        gap_s: None,
    })
}

/// The camera looked, or has stopped looking.
pub(super) fn act(core: &mut Companion, action: &Action, turn: &mut Turn<'_>) -> Result<(), ActError> {
    turn.seen = Seen::Same;
    let Some((at, hold)) = standing(core) else {
        return Ok(());
    };
    if !hold.is_watched_by_camera() {
        return Ok(());
    }
    match (hold, action) {
        (hold, Action::GaugeNotSeen) => not_seen(core, at, hold, turn),
        (HoldAt::Watch(running), Action::GaugeSeen { vacuum }) => seen(core, at, running, *vacuum, turn)?,
        (hold, Action::GaugeSeen { vacuum: Some(vacuum) }) if vacuum.is_finite() => {
            core.moving.needle = Some(*vacuum);
            speak_on_the_way(core, &at, &hold, *vacuum, turn);
        }
        _ => {}
    }
    turn.live = hold_screen::live_now(core, turn.clock);
    Ok(())
}

/// One frame of a running hold.
fn seen(
    core: &mut Companion,
    at: TestAt,
    mut running: Running,
    vacuum: Option<f64>,
    turn: &mut Turn<'_>,
) -> Result<(), ActError> {
    let Some(elapsed) = running.since.elapsed_s(turn.clock) else {
        return Ok(());
    };
    let vacuum = vacuum.filter(|figure| figure.is_finite());
    if elapsed <= running.due_s + LATE_S {
        let place = (elapsed * FRAMES_HZ).round() as usize;
        if core.moving.frames.end() + CHUNK <= place {
            log(core, &at.test, &mut running, turn);
        }
        core.moving.frames.put(place, vacuum);
        core.moving.needle = vacuum.or(core.moving.needle);
        running.start = running.start.or(vacuum);
    }
    if elapsed >= running.due_s - HALF_FRAME_S {
        return end(core, at, running, turn);
    }
    if core.moving.frames.seen.len() >= CHUNK {
        log(core, &at.test, &mut running, turn);
    }
    put(core, at, HoldAt::Watch(running));
    Ok(())
}

/// Whether time alone ends a hold: its last frame did not come.
pub(super) fn is_over(running: &Running, turn: &Turn<'_>) -> bool {
    let elapsed = running.since.elapsed_s(turn.clock);
    running.watcher == Watcher::Camera && elapsed.is_some_and(|s| s >= running.due_s + PATIENCE_S)
}

/// Hands in what was seen; without two frames there is nothing to hand in.
pub(super) fn end(
    core: &mut Companion,
    at: TestAt,
    mut running: Running,
    turn: &mut Turn<'_>,
) -> Result<(), ActError> {
    turn.seen = Seen::Anew;
    let seen = trace(core, &at.test, &running);
    log(core, &at.test, &mut running, turn);
    if seen.iter().flatten().count() < 2 {
        let by = CutOff::Unseen;
        put(core, at, HoldAt::Interrupted { hold: running, by });
        return Ok(());
    }
    cues::tell(core, Cue::Seen, "", turn);
    hand_in_hold(core, at, running, seen, turn)
}

/// The camera gave up: the eye goes on with what the camera had.
fn not_seen(core: &mut Companion, at: TestAt, hold: HoldAt, turn: &mut Turn<'_>) {
    turn.seen = Seen::Anew;
    core.session.notice = Some(NoticeAt::Words {
        key: "hold-camera-lost".to_owned(),
    });
    let next = match hold {
        HoldAt::Pump { strokes, .. } => HoldAt::Pump {
            strokes,
            watcher: Watcher::Eye,
        },
        HoldAt::Watch(mut running) => {
            log(core, &at.test, &mut running, turn);
            if running.is_read() {
                HoldAt::Watch(running.by_eye())
            } else {
                let by = CutOff::Unseen;
                HoldAt::Interrupted { hold: running, by }
            }
        }
        other => other,
    };
    core.moving.needle = None;
    put(core, at, next);
}

/// Puts the frames that are not in the log yet in line for it.
fn log(core: &mut Companion, test: &str, running: &mut Running, turn: &mut Turn<'_>) {
    let Frames { from, seen } = std::mem::take(&mut core.moving.frames);
    core.moving.frames.from = from + seen.len();
    let at_s = |place: usize| place as f64 / FRAMES_HZ;
    if let Some((place, last)) = seen.iter().enumerate().rev().find_map(|(i, v)| Some((i, (*v)?)))
        && from + place > 0
    {
        running.readings = vec![(at_s(from + place), last)];
    }
    if seen.iter().all(Option::is_none) {
        return;
    }
    let chunk = TraceChunk {
        hold: name(test, &running.since),
        test: test.to_owned(),
        from_s: at_s(from),
        hz: FRAMES_HZ,
        unit: running.unit.clone(),
        vacuum: seen,
    };
    core.append(Payload::TraceChunk(chunk), turn);
}

/// Puts what was seen of the hold on the screen in line for the log: the person leaves it.
pub(super) fn settle(core: &mut Companion, turn: &mut Turn<'_>) {
    if let Some((at, HoldAt::Watch(mut running))) = standing(core)
        && running.watcher == Watcher::Camera
    {
        log(core, &at.test, &mut running, turn);
        put(core, at, HoldAt::Watch(running));
    }
}

/// Every frame of a hold in order, from the log and from what is not there yet; none of one watched by eye.
pub(super) fn trace(core: &Companion, test: &str, running: &Running) -> Vec<Option<f64>> {
    if running.watcher == Watcher::Eye {
        return Vec::new();
    }
    let mut frames = Frames::default();
    let logged = core
        .job
        .iter()
        .flat_map(|job| job.log.traces.get(&name(test, &running.since)))
        .flatten()
        .map(|chunk| ((chunk.from_s * FRAMES_HZ).round() as usize, &chunk.vacuum));
    let moving = &core.moving.frames;
    for (from, seen) in logged.chain([(moving.from, &moving.seen)]) {
        for (i, vacuum) in seen.iter().enumerate() {
            frames.put(from + i, *vacuum);
        }
    }
    let mut all = vec![None; frames.from];
    all.append(&mut frames.seen);
    all
}

/// When a hold that is gone on with is due: a camera has to see at least a little more.
pub(super) fn due_s(running: &Running, elapsed_s: f64) -> f64 {
    match running.watcher {
        Watcher::Eye => running.due_s,
        Watcher::Camera => running.due_s.max(elapsed_s + AT_LEAST_S),
    }
}
