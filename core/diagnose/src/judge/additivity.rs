//! The whole and its parts: their leaks must add up.

use holdfast_measure::Measured;

use crate::{Arg, Circuit, ComponentId, HoldResult, Message, Reading, Situation, TestId, TestKind};

use super::hold_setup::tester_leak;
use super::quick_leak::quick_leak;

/// Whole and parts must agree within this many standard deviations.
const AGREES: f64 = 2.0;
const STD_M3_S_PER_CM3_MIN: f64 = 1e-6 / 60.0;

/// Compares this hold with the holds of the whole it belongs to, or of its parts. Says nothing before both sides are there.
pub(super) fn compare(
    circuit: &Circuit,
    situation: &Situation,
    earlier: &[Reading],
    reading: &Reading,
    numbers: &HoldResult,
) -> Vec<Message> {
    let Some(this) = numbers.leak.map(|l| Measured {
        value: l.value * STD_M3_S_PER_CM3_MIN,
        u: (l.high - l.low) / (2.0 * 1.96) * STD_M3_S_PER_CM3_MIN,
    }) else {
        return Vec::new();
    };
    let tester = tester_leak(circuit, situation, earlier);
    let leak_of = |test: &TestId| {
        if *test == reading.test {
            return Some(this);
        }
        earlier
            .iter()
            .rev()
            .find(|r| r.test == *test && r.after_repair == reading.after_repair)
            .and_then(|r| quick_leak(circuit, situation, tester, r))
    };
    circuit
        .reaches()
        .iter()
        .filter_map(|reach| {
            let whole = TestId::on(TestKind::Hold, reach.clone());
            let parts = circuit.scope(&whole)?.parts;
            let tests: Vec<TestId> = parts
                .iter()
                .map(|p| TestId::on(TestKind::Hold, p.clone()))
                .collect();
            if reading.test != whole && !tests.contains(&reading.test) {
                return None;
            }
            let known: Vec<(ComponentId, Option<Measured>)> = parts
                .into_iter()
                .zip(&tests)
                .map(|(part, test)| (part, leak_of(test)))
                .collect();
            verdict(reach, leak_of(&whole)?, &known)
        })
        .collect()
}

fn verdict(
    reach: &ComponentId,
    whole: Measured,
    parts: &[(ComponentId, Option<Measured>)],
) -> Option<Message> {
    let measured: Vec<Measured> = parts.iter().filter_map(|(_, leak)| *leak).collect();
    if measured.is_empty() {
        return None;
    }
    let untested: Vec<&ComponentId> = parts
        .iter()
        .filter(|(_, l)| l.is_none())
        .map(|(id, _)| id)
        .collect();
    let sum: f64 = measured.iter().map(|m| m.value).sum();
    let variance: f64 = measured.iter().map(|m| m.u * m.u).sum();
    let rest = whole.value - sum;
    let u = (variance + whole.u * whole.u).sqrt();
    let say = |id: &'static str| {
        Message::new(id)
            .with("reach", Arg::Part(reach.clone()))
            .with("whole", Arg::Leak(whole.value / STD_M3_S_PER_CM3_MIN))
            .with("sum", Arg::Leak(sum / STD_M3_S_PER_CM3_MIN))
            .with("rest", Arg::Leak((rest / STD_M3_S_PER_CM3_MIN).max(0.0)))
            .with("untested", Arg::Count(untested.len() as i64))
    };
    if rest < -AGREES * u {
        return Some(say("additivity-parts-more"));
    }
    if rest > AGREES * u {
        return Some(match untested.as_slice() {
            [] => say("additivity-whole-more"),
            [one] => say("additivity-rest-in").with("part", Arg::Part((*one).clone())),
            _ => say("additivity-rest"),
        });
    }
    // Agreement says something only where there was a leak to explain, or nothing is left to test.
    if sum > AGREES * variance.sqrt() {
        Some(say("additivity-explained"))
    } else {
        untested.is_empty().then(|| say("additivity-agrees"))
    }
}
