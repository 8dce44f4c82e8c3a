//! Everything that can be wrong with one circuit: its components' fault modes and the causes outside it.

use std::collections::BTreeMap;

use super::layout::Layout;
use crate::faults::{Effect, FaultData, Fix, Spread};
use crate::{FaultId, TestKind};

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
        weight: o.weight,
        fix: None,
        retest: None,
        tester: false,
    });
    inside.chain(outside).collect()
}
