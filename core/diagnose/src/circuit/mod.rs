//! One vehicle's vacuum side and electric side.

mod build;
mod choice;
mod component;
mod data;
mod edit;
mod properties;
mod reach;

pub use build::CircuitError;
pub use choice::{CircuitChoice, CustomCircuit};
pub use component::{Access, Component, ComponentKind, Drive, Link, Side};
pub use data::{LayoutSummary, TemplateSummary, layouts, templates};
pub use edit::Edit;
pub use properties::{Feed, Properties, SourceKind, Switched, VacuumMeans, ValveRest, Window};
pub use reach::Scope;

use crate::ComponentId;

/// One vehicle's circuit: components, how they are joined, and its properties.
///
/// Vacuum links run from the source towards the mounts; each [`Drive`] names the electric parts of one valve.
#[derive(Debug, Clone, PartialEq)]
pub struct Circuit {
    /// The template it was built from.
    pub template: String,
    /// The electric layout it was built with.
    pub electric: String,
    /// All components, vacuum side first, from the source on.
    pub components: Vec<Component>,
    /// Vacuum connections, from the source towards the mounts.
    pub links: Vec<Link>,
    /// The electric parts of each valve.
    pub drives: Vec<Drive>,
    /// What decides which reading is right.
    pub properties: Properties,
}

impl Circuit {
    /// A component by its id.
    pub fn component(&self, id: &ComponentId) -> Option<&Component> {
        self.components.iter().find(|c| &c.id == id)
    }

    /// All components of a kind.
    pub fn of_kind(&self, kind: ComponentKind) -> impl Iterator<Item = &Component> {
        self.components.iter().filter(move |c| c.kind == kind)
    }

    /// The drive of a valve; the only one, where a test names none.
    pub fn drive(&self, valve: Option<&ComponentId>) -> Option<&Drive> {
        match valve {
            Some(id) => self.drives.iter().find(|d| &d.valve == id),
            None => self.drives.first(),
        }
    }

    /// What the component feeds, towards the mounts.
    pub fn downstream<'a>(&'a self, id: &'a ComponentId) -> impl Iterator<Item = &'a ComponentId> {
        self.links.iter().filter(move |l| &l.from == id).map(|l| &l.to)
    }

    /// What feeds the component, towards the source.
    pub fn upstream<'a>(&'a self, id: &'a ComponentId) -> impl Iterator<Item = &'a ComponentId> {
        self.links.iter().filter(move |l| &l.to == id).map(|l| &l.from)
    }
}

#[cfg(test)]
mod tests;
