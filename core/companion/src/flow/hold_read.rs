//! The reading of a hold: what was typed or lies under the needle, taken and handed in.

use holdfast_joblog::Typed;
use holdfast_measure::{Pressure, PressureUnit};

use crate::companion::Companion;
use crate::error::ActError;
use crate::flow::hold::{HoldAt, Running, Watcher, never_reached};
use crate::flow::hold_act::{put, unit_of};
use crate::flow::reading::{Handed, hand_in};
use crate::flow::{hold_screen, numbers};
use crate::session::TestAt;
use crate::turn::Turn;

/// The reading that stands: typed, else under the needle. None if there is none, or it is out of range.
fn stands(core: &Companion, typed: &str, unit: PressureUnit, most: Pressure) -> Option<f64> {
    if typed.trim().is_empty() {
        return core.moving.needle;
    }
    numbers::read_vacuum(core, typed, unit, most)
        .ok()
        .map(|vacuum| unit.from_pressure(vacuum))
}

/// Takes the reading that stands, if it is one.
pub(super) fn confirm(
    core: &mut Companion,
    at: TestAt,
    hold: HoldAt,
    most: Pressure,
    turn: &mut Turn<'_>,
) -> Result<(), ActError> {
    let unit = unit_of(core, &hold);
    match hold {
        HoldAt::First {
            strokes,
            since,
            typed,
        } => {
            let Some(start) = stands(core, &typed, unit, most) else {
                return Ok(());
            };
            let running = Running {
                strokes,
                since,
                watcher: Watcher::Eye,
                start: Some(start),
                unit: unit.symbol().to_owned(),
                readings: Vec::new(),
                due_s: core.hold_seconds(),
                gap_s: None,
            };
            core.moving.needle = None;
            core.moving.ticked_ms = Some(turn.clock.mono_ms);
            core.moving.marks = 0.0;
            put(core, at, HoldAt::Watch(running));
            turn.live = hold_screen::live_now(core, turn.clock);
            Ok(())
        }
        HoldAt::Highest { strokes, typed } => {
            let Some(highest) = stands(core, &typed, unit, most) else {
                return Ok(());
            };
            let typed = typed_record("highest", &typed, unit);
            hand_in(
                core,
                at,
                never_reached(highest, unit, strokes),
                Handed {
                    typed,
                    ..Handed::default()
                },
                turn,
            )
        }
        HoldAt::Read {
            hold: mut running,
            at_s,
            typed,
        } => {
            let Some(reading) = stands(core, &typed, unit, most) else {
                return Ok(());
            };
            running.readings.retain(|(at, _)| *at < at_s);
            running.readings.push((at_s, reading));
            hand_in_hold(core, at, running, Vec::new(), turn)
        }
        HoldAt::Pump { .. } | HoldAt::Watch(_) | HoldAt::Interrupted { .. } => Ok(()),
    }
}

fn typed_record(key: &str, typed: &str, unit: PressureUnit) -> Vec<Typed> {
    if typed.is_empty() {
        return Vec::new();
    }
    vec![Typed {
        key: key.to_owned(),
        text: typed.to_owned(),
        unit: unit.symbol().to_owned(),
    }]
}

/// Hands in a hold; `seen` is the camera's trace.
pub(super) fn hand_in_hold(
    core: &mut Companion,
    at: TestAt,
    running: Running,
    seen: Vec<Option<f64>>,
    turn: &mut Turn<'_>,
) -> Result<(), ActError> {
    let Some(answer) = running.answer(seen) else {
        return Ok(());
    };
    core.moving.needle = None;
    hand_in(
        core,
        at,
        answer,
        Handed {
            hold: Some(running),
            ..Handed::default()
        },
        turn,
    )
}
