//! A vacuum hold test played: pump, let go, read, watch, read.

use holdfast_companion::{Action, AskedHold, AskedStage, FieldId};
use holdfast_diagnose::{HoldAnswer, HoldCourse};

use crate::clock::ms;
use crate::error::PlayError;
use crate::setup::figure;
use crate::shell::Shell;

/// What a hold test has in the file.
pub(crate) struct Hold<'a> {
    answer: &'a HoldAnswer,
    /// Seconds and figure of the later readings, in order of time; a trace has none here.
    readings: Vec<(f64, f64)>,
    /// The monotonic clock at letting go.
    let_go_ms: i64,
    /// Milliseconds between the frames of a trace.
    frame_ms: f64,
}

const TICK_MS: i64 = 100;
/// Reading and typing a figure, ms: short, so that a reading soon after letting go can be given at its moment.
const TYPING_MS: i64 = 200;
/// A stroke of the hand pump, ms.
const STROKE_MS: i64 = 700;

impl<'a> Hold<'a> {
    pub(crate) fn of(answer: &'a HoldAnswer) -> Self {
        let readings = match &answer.course {
            HoldCourse::Spots { readings, .. } => readings.clone(),
            _ => Vec::new(),
        };
        Self {
            answer,
            readings,
            let_go_ms: 0,
            frame_ms: 0.0,
        }
    }

    /// The reading for a moment: the first at or after it, else the last there is.
    fn at(&self, asked_s: f64) -> Option<(f64, f64)> {
        // A reading at 20 s answers the question for 20 s even where binary fractions differ.
        self.readings
            .iter()
            .find(|(s, _)| *s >= asked_s - 0.05)
            .or(self.readings.last())
            .copied()
    }

    /// The frames of a hold that the camera watches.
    fn trace(&self) -> Option<&[Option<f64>]> {
        match &self.answer.course {
            HoldCourse::Trace { readings, .. } => Some(readings),
            _ => None,
        }
    }

    /// Whether there is more to see after so many seconds, and on this clock.
    pub(crate) fn has_after(&self, s: f64, shell: &Shell) -> bool {
        match self.trace() {
            Some(frames) => {
                let end_ms = self.let_go_ms as f64 + frames.len() as f64 * self.frame_ms;
                shell.clock.now().mono_ms as f64 + 1_000.0 < end_ms
            }
            None => self.readings.iter().any(|(later, _)| *later > s + 0.05),
        }
    }
}

/// Plays a hold from the pump to the reading handed in.
pub(crate) fn play(shell: &mut Shell, hold: &mut Hold<'_>) -> Result<(), PlayError> {
    if let HoldCourse::Trace { hz, .. } = &hold.answer.course {
        hold.frame_ms = 1_000.0 / hz;
        shell.press(&Action::WatchByCamera)?;
    }
    for _ in 0..hold.answer.strokes.unwrap_or(0.0).round() as u32 {
        shell.clock.wait_ms(STROKE_MS);
        shell.press(&Action::Stroke)?;
    }
    let (button, first) = match &hold.answer.course {
        HoldCourse::Spots { start, .. } => (Action::LetGo, *start),
        HoldCourse::NeverReached { highest } => (Action::WillNotBuild, *highest),
        HoldCourse::Trace { .. } => (Action::LetGo, f64::NAN),
    };
    shell.press(&button)?;
    hold.let_go_ms = shell.clock.now().mono_ms;
    if hold.trace().is_some() {
        return watch(shell, hold);
    }
    read(shell, first)?;
    if button == Action::WillNotBuild {
        return Ok(());
    }
    watch(shell, hold)
}

/// Types a figure of the gauge. One outside its scale is what it shows all the same.
fn read(shell: &mut Shell, reading: f64) -> Result<(), PlayError> {
    shell.clock.wait_ms(TYPING_MS);
    let against = shell.type_in(&FieldId::GaugeReading, &figure(reading))?;
    let done = if against.is_some() {
        Action::KeepReading
    } else {
        Action::Confirm
    };
    shell.press(&done)?;
    Ok(())
}

/// Watches until the reading is due, and gives it.
pub(crate) fn watch(shell: &mut Shell, hold: &Hold<'_>) -> Result<(), PlayError> {
    if let Some(frames) = hold.trace() {
        return watch_by_camera(shell, hold, frames);
    }
    let asked = shell.core.asked().map(|asked| asked.stage);
    let Some(AskedStage::Hold(AskedHold::Watch { due_s })) = asked else {
        return Err(shell.missing("running hold".into()));
    };
    let (at_s, reading) = hold.at(due_s).ok_or_else(|| PlayError::Value {
        what: "hold answer".into(),
        why: "it has no reading after the start".into(),
    })?;
    tick_until(shell, hold.let_go_ms, at_s, due_s)?;
    if at_s < due_s - 0.05 {
        shell.press(&Action::ReadNow)?;
    }
    read(shell, reading)
}

/// The camera's frames come one by one, until the hold ends or the file has no more.
fn watch_by_camera(shell: &mut Shell, hold: &Hold<'_>, frames: &[Option<f64>]) -> Result<(), PlayError> {
    for (place, vacuum) in frames.iter().enumerate() {
        let at_ms = hold.let_go_ms + (place as f64 * hold.frame_ms).round() as i64;
        let left = at_ms - shell.clock.now().mono_ms;
        // Gone by while the person looked at a result: nobody watched.
        if left < 0 {
            continue;
        }
        shell.clock.wait_ms(left);
        if !is_watched(shell) {
            return Ok(());
        }
        shell.send(Action::GaugeSeen { vacuum: *vacuum })?;
    }
    if is_watched(shell) {
        shell.press(&Action::ReadNow)?;
    }
    Ok(())
}

fn is_watched(shell: &Shell) -> bool {
    let asked = shell.core.asked().map(|asked| asked.stage);
    matches!(asked, Some(AskedStage::Hold(AskedHold::Watch { .. })))
}

/// Ticks until so many seconds after letting go. Where the file has the reading only later than it is due, the last
/// tick comes as late: the person was not at the phone.
fn tick_until(shell: &mut Shell, let_go_ms: i64, at_s: f64, due_s: f64) -> Result<(), PlayError> {
    let end = let_go_ms + ms(at_s);
    let early = let_go_ms + ms(due_s) - TICK_MS;
    while shell.clock.now().mono_ms + TICK_MS <= end.min(early) {
        shell.clock.wait_ms(TICK_MS);
        shell.send(Action::Tick)?;
    }
    let left = end - shell.clock.now().mono_ms;
    shell.clock.wait_ms(left.max(0));
    shell.send(Action::Tick)?;
    Ok(())
}
