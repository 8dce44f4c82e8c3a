//! Everything that can be wrong with one circuit: its components' fault modes and the causes outside it.

use std::collections::BTreeMap;

use super::complaint::symptom_number;
use super::layout::Layout;
use crate::faults::{Effect, FaultData, Fix, Hides, Spread};
use crate::{FaultId, LookState, TestKind};

/// One thing that can be wrong.
#[derive(Debug)]
pub(crate) struct Fault {
    pub id: FaultId,
    /// The number of its component; `None` outside the circuit.
    pub part: Option<usize>,
    pub effects: &'static [Effect],
    /// What is felt of it, by number, with the share of cars that show it.
    pub symptoms: Vec<(usize, f64)>,
    pub signs: &'static BTreeMap<String, f64>,
    pub figures: &'static BTreeMap<String, f64>,
    /// Share of looked-over parts with this fault that show each state.
    pub look: Look,
    /// The kinds of test that can show a sign or figure of it.
    pub shown_by: Vec<TestKind>,
    /// Weight relative to "nothing is wrong".
    pub weight: f64,
    /// What puts it right; `None` outside the circuit, and where nothing has to be mended.
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
    /// A leak.
    Leak(Spread),
    /// A resistance.
    Resistance(Spread),
    /// What a needle does without a leak, kPa.
    Needle(Spread),
}

impl Fault {
    /// What about it differs from car to car.
    pub fn size(&self) -> Size {
        let size = |e: &Effect| {
            e.spread().map(|s| match e {
                Effect::Series(_) => Size::Resistance(s),
                Effect::Drifts(_) | Effect::Sticks(_) => Size::Needle(s),
                _ => Size::Leak(s),
            })
        };
        self.effects.iter().find_map(size).unwrap_or(Size::Fixed)
    }

    /// The median of what differs from car to car; 0 where nothing does.
    pub fn usual_size(&self) -> f64 {
        match self.size() {
            Size::Leak(spread) | Size::Resistance(spread) | Size::Needle(spread) => spread.median,
            Size::Fixed => 0.0,
        }
    }

    /// Why a hold of its part alone, or of more than it, may show nothing of it.
    pub fn hides(&self, alone: bool) -> Option<Hides> {
        self.effects.iter().find_map(|e| e.hides(alone))
    }

    /// Whether it changes what the electric side does.
    pub fn is_electric(&self) -> bool {
        self.effects.iter().any(Effect::is_electric)
    }

    /// Whether it is at work a leak and nothing else, into the circuit or past a seat: its size matters there.
    pub fn has_size_at_work(&self) -> bool {
        let mut at_work = self.effects.iter().filter(|e| e.shows_at_work()).peekable();
        at_work.peek().is_some() && at_work.all(Effect::leaks_more_at_work)
    }

    /// Whether it is at work a leak into the circuit and nothing else.
    pub fn is_leak_at_work(&self) -> bool {
        self.has_size_at_work() && !self.effects.iter().any(|e| matches!(e, Effect::SeatLeaks(_)))
    }

    /// Whether the two can't be there at once: one part stuck both ways, or what the one opens is open by the other.
    pub fn excludes(&self, other: &Self) -> bool {
        let of = |effects: &[Effect], what: fn(&Effect) -> bool| effects.iter().any(what);
        let both = |what: fn(&Effect) -> bool| of(self.effects, what) && of(other.effects, what);
        self.part.is_some()
            && self.part == other.part
            && (both(|e| matches!(e, Effect::Stuck(_)))
                || both(|e| matches!(e, Effect::Command(_)))
                || both(|e| matches!(e, Effect::Opens | Effect::Series(_)))
                || both(|e| matches!(e, Effect::Blocks | Effect::Misrouted)))
    }

    /// Whether no air gets past it.
    pub fn hides_what_is_behind(&self) -> bool {
        self.effects
            .iter()
            .any(|e| matches!(e, Effect::Blocks | Effect::Misrouted))
    }

    /// Whether the tester has to be put right before its readings say much; gas that warms only needs time.
    pub fn is_bad_tester(&self) -> bool {
        self.tester && self.fix.is_some()
    }

    /// Whether it is a cause outside the circuit.
    pub fn is_outside(&self) -> bool {
        self.part.is_none() && !self.tester
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

fn numbered(data: &FaultData, symptoms: &BTreeMap<String, f64>) -> Vec<(usize, f64)> {
    symptoms
        .iter()
        .filter_map(|(name, p)| Some((symptom_number(data, name)?, *p)))
        .collect()
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
                    symptoms: numbered(data, &mode.symptoms),
                    signs: &mode.signs,
                    figures: &mode.figures,
                    look: look(&mode.signs),
                    shown_by: shown_by(&mode.signs, &mode.figures),
                    weight: mode.weight,
                    fix: mode.fix,
                    retest: Some(mode.retest),
                    tester: mode.tester,
                })
        });
    let outside = data.outside.iter().map(|o| Fault {
        id: FaultId::new(o.component.as_str(), o.mode.clone()),
        part: None,
        effects: &o.effects,
        symptoms: numbered(data, &o.symptoms),
        signs: &o.signs,
        figures: &o.figures,
        look: look(&o.signs),
        shown_by: shown_by(&o.signs, &o.figures),
        weight: o.weight,
        fix: o.fix,
        retest: o.retest,
        tester: o.tester,
    });
    inside.chain(outside).collect()
}
