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
}

/// Whether a field took what was typed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Taken {
    /// It did.
    Yes,
    /// It lies outside what the screen takes.
    No,
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

    /// Whether there is a reading after a moment.
    pub(crate) fn has_after(&self, s: f64) -> bool {
        self.readings.iter().any(|(later, _)| *later > s + 0.05)
    }
}

/// Plays a hold from the pump to the reading handed in.
pub(crate) fn play(shell: &mut Shell, hold: &mut Hold<'_>) -> Result<Taken, PlayError> {
    for _ in 0..hold.answer.strokes.unwrap_or(0.0).round() as u32 {
        shell.clock.wait_ms(STROKE_MS);
        shell.press(&Action::Stroke)?;
    }
    let (button, first) = match &hold.answer.course {
        HoldCourse::Spots { start, .. } => (Action::LetGo, *start),
        HoldCourse::NeverReached { highest } => (Action::WillNotBuild, *highest),
        HoldCourse::Trace { .. } => return Ok(Taken::No),
    };
    shell.press(&button)?;
    hold.let_go_ms = shell.clock.now().mono_ms;
    shell.clock.wait_ms(TYPING_MS);
    if shell.type_in(&FieldId::GaugeReading, &figure(first))?.is_some() {
        return Ok(Taken::No);
    }
    shell.press(&Action::Confirm)?;
    if button == Action::WillNotBuild {
        return Ok(Taken::Yes);
    }
    watch(shell, hold)
}

/// Watches until the reading is due, and gives it.
pub(crate) fn watch(shell: &mut Shell, hold: &Hold<'_>) -> Result<Taken, PlayError> {
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
    shell.clock.wait_ms(TYPING_MS);
    if shell.type_in(&FieldId::GaugeReading, &figure(reading))?.is_some() {
        return Ok(Taken::No);
    }
    shell.press(&Action::Confirm)?;
    Ok(Taken::Yes)
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
