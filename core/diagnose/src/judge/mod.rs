//! What one reading says by itself.

mod additivity;
mod battery;
mod coil;
mod continuity;
mod control;
mod effect;
mod hold;
mod hold_setup;
mod looks;
mod quick_leak;
mod result;
mod shake;
mod supply;
mod target;
mod vacuum;
mod valve;

pub use battery::{Band, expected_band};
pub use effect::{Effect, effect};
pub use result::{FinerGauge, FitPoint, HoldResult, LeakRange, Outcome, Target, TestResult};
pub use target::hold_target;

use vacuum::source_vacuum;

use crate::{Answer, Catalogue, Circuit, EngineState, Message, Reading, Situation, TestKind};

/// Judges one reading. `earlier` are the readings before it: the tester's own leak, the battery now, what the source gave.
///
/// The answer must belong to the test; one that doesn't (values for a hold) is [`Outcome::Undecided`] and says so.
pub fn judge(circuit: &Circuit, situation: &Situation, earlier: &[Reading], reading: &Reading) -> TestResult {
    let case = Case {
        circuit,
        situation,
        earlier,
        reading,
    };
    match &reading.answer {
        Answer::NotDone { reason } => TestResult::just(
            Outcome::NotDone,
            Message::new("not-done").with("reason", crate::Arg::Words(reason.clone())),
        ),
        Answer::NotAvailable => TestResult::just(Outcome::NotDone, Message::new("not-available")),
        Answer::Hold(answer) if reading.test.is_hold() => {
            hold::judge_hold(circuit, situation, earlier, reading, answer)
        }
        Answer::Look(seen) if reading.test.kind == TestKind::Look => looks::look(seen),
        Answer::Values(_) => match reading.test.kind {
            TestKind::Complaint => looks::complaint(&case),
            TestKind::Codes => looks::codes(&case),
            TestKind::IdleQuality => looks::idle_quality(&case),
            TestKind::MountLook => looks::mount_look(&case),
            TestKind::MountMove => looks::mount_move(&case),
            TestKind::Wiggle => looks::wiggle(&case),
            TestKind::Delivered => vacuum::delivered(&case),
            TestKind::SwitchOver => vacuum::switch_over(&case),
            TestKind::Source => vacuum::source(&case),
            TestKind::Flow => vacuum::flow(&case),
            TestKind::Bypass => vacuum::bypass(&case),
            TestKind::ValveOff => valve::off(&case),
            TestKind::ValveOn => valve::on(&case),
            TestKind::SupplyVolts => supply::volts(&case),
            TestKind::SupplyLoaded => supply::loaded(&case),
            TestKind::Fuse => supply::fuse(&case),
            TestKind::PowerWire => continuity::power_wire(&case),
            TestKind::ControlWire => continuity::control_wire(&case),
            TestKind::ProveMeter => continuity::prove_meter(&case),
            TestKind::ValveVolts => control::valve_volts(&case),
            TestKind::ControlPin => control::control_pin(&case),
            TestKind::Coil => coil::coil(&case),
            TestKind::Shake => shake::shake(&case),
            TestKind::Look | TestKind::Hold | TestKind::HandPump => TestResult::does_not_fit(),
        },
        Answer::Hold(_) | Answer::Look(_) => TestResult::does_not_fit(),
    }
}

/// One reading in its surroundings.
#[derive(Clone, Copy)]
pub(crate) struct Case<'a> {
    pub(crate) circuit: &'a Circuit,
    pub(crate) situation: &'a Situation,
    pub(crate) earlier: &'a [Reading],
    pub(crate) reading: &'a Reading,
}

impl Case<'_> {
    /// What the engine did: as was said, else as the test asks.
    pub(crate) fn engine(&self) -> EngineState {
        let asked = || Catalogue::standard().engine_in(self.circuit, self.reading.test.kind);
        self.reading.state.engine.unwrap_or_else(asked)
    }

    /// Whether the engine ran.
    pub(crate) fn running(&self) -> bool {
        self.engine() != EngineState::Off
    }

    /// The last reading of another test before this one.
    pub(crate) fn last(&self, kind: TestKind) -> Option<&Reading> {
        self.earlier
            .iter()
            .rev()
            .find(|r| r.test.kind == kind && matches!(r.answer, Answer::Values(_)))
    }

    pub(crate) fn number(&self, key: &str) -> Option<f64> {
        self.reading.number(key)
    }

    pub(crate) fn yes(&self, key: &str) -> Option<bool> {
        self.reading.yes(key)
    }

    /// Largest error of the meter at a reading.
    pub(crate) fn meter_limit(&self, reading: f64) -> f64 {
        self.situation.instruments.meter.limit(reading)
    }
}

#[cfg(test)]
mod tests;
