//! What a leak does at work: to the vacuum at the mount, and to the idle.

use holdfast_measure::{
    Element, LeakForm, LeakRate, Length, Pressure, PressureUnit, ThermodynamicTemperature,
    steady_vacuum_at_mount,
};
use uom::si::length::{meter, millimeter};
use uom::si::pressure::pascal;
use uom::si::thermodynamic_temperature::degree_celsius;

use crate::{
    Answer, Arg, Circuit, ComponentId, ComponentKind, HoldResult, Message, Reading, Situation, SourceKind,
    TestId, TestKind,
};

use super::{Case, source_vacuum};

/// Air that a warm engine takes at idle, kg/s (from memory: 2–4 g/s for 1.6–2 litres).
const IDLE_AIR: f64 = 0.003;
/// A valve of which nothing is known passes as this hole, mm. Common practice, no source.
const VALVE_MM: f64 = 1.5;
/// A mount that lacks more than this of the source's vacuum doesn't get it, inHg (from memory).
const LACKS_INHG: f64 = 2.0;
/// From this share of idle air the idle can change. Common practice, no source.
const IDLE_CHANGES: f64 = 0.03;

/// What a leak does at work.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Effect {
    /// Vacuum that stays at the mount.
    pub at_mount: Pressure,
    /// The source's vacuum.
    pub source: Pressure,
    /// `at_mount` was measured by `delivered`, which outranks what is computed.
    pub measured: bool,
    /// The mount gets its vacuum all the same: within 2 inHg of the source.
    pub mount_keeps_it: bool,
    /// Unmetered air as a share of the air at idle; `None` where the source is no intake.
    pub share_of_idle: Option<f64>,
}

/// What a leak in the branch of a valve (the only one, where none is named) does while the source feeds it through valve and
/// hoses. The leak counts as a hole at the mount's end, the worst place.
pub fn effect(
    circuit: &Circuit,
    situation: &Situation,
    earlier: &[Reading],
    valve: Option<&ComponentId>,
    leak_std_cm3_min: f64,
) -> Effect {
    let nothing = Reading::new(TestId::of(TestKind::Delivered), Answer::NotAvailable);
    let case = Case {
        circuit,
        situation,
        earlier,
        reading: &nothing,
    };
    let (source_pa, _) = source_vacuum(&case);
    let source = Pressure::new::<pascal>(source_pa);
    let ambient = situation.ambient();
    let air = ThermodynamicTemperature::new::<degree_celsius>(situation.place.air_c);
    let leak = Element::leak(
        LeakForm::Hole,
        LeakRate::from_std_cm3_min(leak_std_cm3_min.max(0.0)),
    );
    let computed = steady_vacuum_at_mount(source, ambient, air, &feed(circuit, valve), &[leak]);
    let measured = case
        .earlier
        .iter()
        .rev()
        .find(|r| {
            r.test.kind == TestKind::Delivered && (r.test.part.is_none() || r.test.part.as_ref() == valve)
        })
        .and_then(|r| r.number("gauge"))
        .map(Pressure::new::<pascal>);
    let at_mount = measured.unwrap_or(computed);
    let share_of_idle = (circuit.properties.source == SourceKind::Intake).then(|| {
        let inside = (ambient - computed).value.max(0.0);
        leak.mass_flow(ambient.value, inside, air.value) / IDLE_AIR
    });
    Effect {
        at_mount,
        source,
        measured: measured.is_some(),
        mount_keeps_it: (source - at_mount) <= PressureUnit::InHg.to_pressure(LACKS_INHG),
        share_of_idle,
    }
}

/// The passages from the source to the farthest mount, in a row.
fn feed(circuit: &Circuit, valve: Option<&ComponentId>) -> Vec<Element> {
    let Some(valve) = circuit.drive(valve).map(|d| d.valve.clone()) else {
        return Vec::new();
    };
    let hole = |mm: f64| Element::round_hole(Length::new::<millimeter>(mm));
    let bore = circuit.component(&valve).and_then(|c| c.bore_mm);
    let mut passages = vec![hole(bore.unwrap_or(VALVE_MM))];
    let branch = circuit.branch_of(&valve);
    let parts = branch.iter().filter_map(|id| circuit.component(id));
    let mut longest: Option<(f64, f64)> = None;
    for part in parts {
        match (part.kind, part.bore_mm, part.length_m) {
            (ComponentKind::Restrictor, Some(mm), _) => passages.push(hole(mm)),
            (ComponentKind::Hose, Some(mm), Some(m)) if longest.is_none_or(|(_, l)| m > l) => {
                longest = Some((mm, m));
            }
            _ => {}
        }
    }
    // Two hoses of the longest kind, valve to tee and tee to mount.
    if let Some((mm, m)) = longest {
        passages.push(Element::capillary(
            Length::new::<millimeter>(mm),
            Length::new::<meter>(2.0 * m),
        ));
    }
    passages
}

/// What is to be said about a hold's leak at work. Nothing where the part isn't in a branch, or no leak is proved.
pub(super) fn of_result(
    circuit: &Circuit,
    situation: &Situation,
    earlier: &[Reading],
    test: &TestId,
    numbers: &HoldResult,
) -> Vec<Message> {
    let (Some(leak), Some(scope)) = (numbers.leak.filter(|l| l.low > 0.0), circuit.scope(test)) else {
        return Vec::new();
    };
    let in_branch = circuit
        .drives
        .iter()
        .find(|d| {
            scope
                .parts
                .iter()
                .all(|part| circuit.branch_of(&d.valve).contains(part))
        })
        .map(|d| d.valve.clone());
    let Some(valve) = in_branch else { return Vec::new() };
    let effect = effect(circuit, situation, earlier, Some(&valve), leak.value);
    let id = match (effect.measured, effect.mount_keeps_it) {
        (true, true) => "effect-measured-keeps",
        (true, false) => "effect-measured-lacks",
        (false, true) => "effect-mount-keeps",
        (false, false) => "effect-mount-lacks",
    };
    let mut says = vec![
        Message::new(id)
            .with("vacuum", Arg::Pressure(effect.at_mount))
            .with("source", Arg::Pressure(effect.source)),
    ];
    if let Some(share) = effect.share_of_idle {
        let id = if share >= IDLE_CHANGES {
            "effect-idle-changes"
        } else {
            "effect-idle-unchanged"
        };
        says.push(Message::new(id).with("share", Arg::Percent(share)));
    }
    says
}
