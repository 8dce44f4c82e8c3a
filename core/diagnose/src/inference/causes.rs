//! Everything that can be wrong with one circuit: its components' fault modes and the causes outside it.

use std::collections::BTreeMap;

use super::layout::Layout;
use crate::faults::{Effect, FaultData, Fix, Spread};
use crate::{FaultId, LookState, TestKind};

/// One thing that can be wrong.
#[derive(Debug)]
pub(crate) struct Fault {
    pub id: FaultId,
    /// The number of its component; `None` outside the circuit.
    pub part: Option<usize>,
    pub effects: &'static [Effect],
    pub symptoms: &'static BTreeMap<String, f64>,
    pub signs: &'static BTreeMap<String, f64>,
    pub figures: &'static BTreeMap<String, f64>,
    /// Share of looked-over parts with this fault that show each state.
    pub look: Look,
    /// The kinds of test that can show a sign or figure of it.
    pub shown_by: Vec<TestKind>,
    /// Weight relative to "nothing is wrong".
    pub weight: f64,
    /// What puts it right; `None` outside the circuit.
    pub fix: Option<Fix>,
    /// The test that shows the repair; `None` outside the circuit.
    pub retest: Option<TestKind>,
    /// The tester's fault, not the car's.
    pub tester: bool,
}

/// What about a fault differs from car to car.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Size {
    /// Nothing.
    Fixed,
    /// A leak, which passes more at work than in a test at rest.
    Leak(Spread),
    /// A resistance.
    Resistance(Spread),
}

impl Fault {
    /// What about it differs from car to car.
    pub fn size(&self) -> Size {
        self.effects
            .iter()
            .find_map(|e| {
                e.spread().map(|s| {
                    if e.is_leak() {
                        Size::Leak(s)
                    } else {
                        Size::Resistance(s)
                    }
                })
            })
            .unwrap_or(Size::Fixed)
    }

    /// Whether it changes what the electric side does.
    pub fn is_electric(&self) -> bool {
        self.effects.iter().any(Effect::is_electric)
    }

    /// Whether it is a cause outside the circuit.
    pub fn is_outside(&self) -> bool {
        self.part.is_none()
    }
}

/// Share of parts that show each state of [`LookState::ALL`].
pub(crate) type Look = [f64; LookState::ALL.len()];

/// The shares of states among signs.
pub(super) fn look(signs: &BTreeMap<String, f64>) -> Look {
    LookState::ALL.map(|state| {
        signs
            .get(&format!("look.{}", state.as_str()))
            .copied()
            .unwrap_or(0.0)
    })
}

fn shown_by(signs: &BTreeMap<String, f64>, figures: &BTreeMap<String, f64>) -> Vec<TestKind> {
    let kind = |key: &String| {
        key.split_once('.')
            .and_then(|(kind, _)| TestKind::ALL.into_iter().find(|k| k.as_str() == kind))
    };
    let mut kinds: Vec<TestKind> = signs.keys().chain(figures.keys()).filter_map(kind).collect();
    kinds.dedup();
    kinds
}

/// Every fault of a circuit.
pub(super) fn faults(layout: &Layout<'_>, data: &'static FaultData) -> Vec<Fault> {
    let inside = layout
        .circuit
        .components
        .iter()
        .enumerate()
        .flat_map(|(number, component)| {
            data.modes
                .iter()
                .filter(move |m| m.kind == component.kind)
                .map(move |mode| Fault {
                    id: FaultId::new(component.id.clone(), mode.mode.clone()),
                    part: Some(number),
                    effects: &mode.effects,
                    symptoms: &mode.symptoms,
                    signs: &mode.signs,
                    figures: &mode.figures,
                    look: look(&mode.signs),
                    shown_by: shown_by(&mode.signs, &mode.figures),
                    weight: mode.weight,
                    fix: Some(mode.fix),
                    retest: Some(mode.retest),
                    tester: mode.tester,
                })
        });
    let outside = data.outside.iter().map(|o| Fault {
        id: FaultId::new(o.component.as_str(), o.mode.clone()),
        part: None,
        effects: &[],
        symptoms: &o.symptoms,
        signs: &o.signs,
        figures: &o.figures,
        look: look(&o.signs),
        shown_by: shown_by(&o.signs, &o.figures),
        weight: o.weight,
        fix: None,
        retest: None,
        tester: false,
    });
    inside.chain(outside).collect()
}
