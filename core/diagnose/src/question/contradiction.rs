//! A reading against which at least three others speak.

use crate::{Arg, Circuit, Message, Outcome, Reading, Situation, TestKind, ValveRest, judge};

use super::Slip;

/// So many others must speak against it, and none for it.
const OTHERS: usize = 3;

/// Something that several tests can say yes or no to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Fact {
    /// Power reaches the connector.
    Power,
    /// The source gives vacuum.
    Source,
    /// The module works the valve.
    Command,
    /// The valve passes when it is worked.
    Valve,
}

const FACTS: [Fact; 4] = [Fact::Power, Fact::Source, Fact::Command, Fact::Valve];

/// What a sound or unsound result of a test says about a fact; `None`: nothing.
fn says(fact: Fact, kind: TestKind, sound: bool, needs_power: bool) -> Option<bool> {
    use TestKind as T;
    match (fact, kind, sound) {
        (Fact::Power, T::SupplyVolts | T::SupplyLoaded, _) => Some(sound),
        (Fact::Power, T::Fuse | T::PowerWire, false) => Some(false),
        (Fact::Power, T::ValveVolts | T::ControlPin, true) => Some(true),
        (Fact::Source, T::Source, _) => Some(sound),
        (Fact::Source, T::Bypass, true) => Some(true),
        (Fact::Command, T::ValveVolts | T::ControlPin, _) => Some(sound),
        (Fact::Valve, T::ValveOn, _) => Some(sound),
        // Vacuum that comes and goes as it should proves all of it.
        (Fact::Source, T::Delivered, true) => Some(true),
        (Fact::Power | Fact::Command | Fact::Valve, T::Delivered | T::SwitchOver, true) if needs_power => {
            Some(true)
        }
        _ => None,
    }
}

/// Asks about a reading against which three others speak and none for it.
pub(super) fn with_others(
    circuit: &Circuit,
    situation: &Situation,
    earlier: &[Reading],
    reading: &Reading,
) -> Option<Slip> {
    let needs_power = circuit.properties.rest == ValveRest::Closed;
    let sound = |i: usize, r: &Reading| {
        let before = earlier.get(..i).unwrap_or(earlier);
        match judge(circuit, situation, before, r).outcome {
            Outcome::AsExpected => Some(true),
            Outcome::NotAsExpected => Some(false),
            _ => None,
        }
    };
    let touches = |kind| {
        FACTS.iter().any(|f| says(*f, kind, true, needs_power).is_some())
            || FACTS.iter().any(|f| says(*f, kind, false, needs_power).is_some())
    };
    if !touches(reading.test.kind) {
        return None;
    }
    let this = sound(earlier.len(), reading)?;
    let others: Vec<(TestKind, bool)> = earlier
        .iter()
        .enumerate()
        .filter(|(_, r)| r.test != reading.test && touches(r.test.kind))
        .filter(|(_, r)| r.after_repair == reading.after_repair && r.state.hot == reading.state.hot)
        .filter(|(_, r)| r.test.part == reading.test.part)
        .filter_map(|(i, r)| Some((r.test.kind, sound(i, r)?)))
        .collect();
    FACTS.into_iter().find_map(|fact| {
        let mine = says(fact, reading.test.kind, this, needs_power)?;
        let theirs: Vec<bool> = others
            .iter()
            .filter_map(|(kind, sound)| says(fact, *kind, *sound, needs_power))
            .collect();
        (theirs.len() >= OTHERS && theirs.iter().all(|said| *said != mine)).then(|| {
            let message = Message::new("odd-contradicts").with("count", Arg::Count(theirs.len() as i64));
            Slip::new(message, Message::new("likely-other-place"))
        })
    })
}
