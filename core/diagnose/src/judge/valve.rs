//! The valve on the bench of a hand pump: without power, and on a fused jumper.

use crate::{Message, ValveRest};

use super::{Case, TestResult};

/// Without power.
pub(super) fn off(case: &Case<'_>) -> TestResult {
    let Some(passes) = case.yes("passes") else {
        return TestResult::does_not_fit();
    };
    let open_at_rest = case.circuit.properties.rest == ValveRest::Open;
    match (open_at_rest, passes) {
        (false, true) => return TestResult::bad(Message::new("valve-off-passes")),
        (true, false) => return TestResult::bad(Message::new("valve-off-shut")),
        _ => {}
    }
    // At rest the shut valve lets the mounts breathe; the open one must not.
    match (open_at_rest, case.yes("vents")) {
        (false, Some(false)) => TestResult::bad(Message::new("valve-off-no-vent")),
        (true, Some(true)) => TestResult::bad(Message::new("valve-off-vents")),
        (false, None) => {
            TestResult::good(Message::new("valve-off-good")).and(Message::new("valve-off-vent-not-tried"))
        }
        _ => TestResult::good(Message::new("valve-off-good")),
    }
}

/// On a fused jumper.
pub(super) fn on(case: &Case<'_>) -> TestResult {
    let Some(passes) = case.yes("passes") else {
        return TestResult::does_not_fit();
    };
    let open_at_rest = case.circuit.properties.rest == ValveRest::Open;
    let clicks = case.yes("clicks");
    let moved = passes != open_at_rest;
    if !moved {
        return TestResult::bad(Message::new(match clicks {
            Some(false) => "valve-on-dead",
            Some(true) => "valve-on-clicks-only",
            None => "valve-on-stuck",
        }));
    }
    if clicks == Some(false) {
        return TestResult::open(Message::new("valve-on-no-click"));
    }
    match (open_at_rest, case.yes("vents")) {
        (false, Some(true)) => TestResult::bad(Message::new("valve-on-vents")),
        (true, Some(false)) => TestResult::bad(Message::new("valve-on-no-vent")),
        _ => TestResult::good(Message::new("valve-on-good")),
    }
}
