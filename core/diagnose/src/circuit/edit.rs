//! What a person can change in a circuit.

use serde::{Deserialize, Serialize};

use super::build::{CircuitError, check_range};
use super::{Circuit, Component, ComponentKind, Link};
use crate::ComponentId;

/// One change to a circuit.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub enum Edit {
    /// One mount more, on a hose of its own.
    AddMount {
        /// The mount's id, not used yet; its hose is called `<id>_hose`.
        id: ComponentId,
        /// Where the hose starts: a tee, a valve or a hose.
        at: ComponentId,
        /// Air in the mount, cm³.
        chamber_cm3: f64,
        /// Length of its hose, m.
        hose_m: f64,
    },
    /// A part taken out: what it fed hangs on what fed it. A mount goes with the hose that feeds only it.
    Remove {
        /// Which.
        id: ComponentId,
    },
    /// A volume put right.
    Volume {
        /// Of which mount, reservoir or consumer.
        id: ComponentId,
        /// Air in it, cm³.
        cm3: f64,
        /// Relative standard uncertainty, 0–1.
        rel_sd: f64,
    },
    /// A length put right.
    Length {
        /// Of which hose or wire.
        id: ComponentId,
        /// Length, m.
        m: f64,
    },
    /// An inner diameter put right.
    Bore {
        /// Of which hose, valve, restrictor or bleed.
        id: ComponentId,
        /// Inner diameter, mm.
        mm: f64,
    },
    /// Minutes to get at a part put right.
    Access {
        /// Which.
        id: ComponentId,
        /// To see it, min.
        look: f64,
        /// To open it, min.
        open: f64,
    },
}

impl Circuit {
    /// Makes one change.
    ///
    /// # Errors
    /// [`CircuitError`]: a part that isn't there or has no such property, an id used twice, a value out of range, a part
    /// that can't be taken out (source, valve, battery and whatever else a drive needs).
    pub fn apply(&mut self, edit: &Edit) -> Result<(), CircuitError> {
        match edit {
            Edit::AddMount {
                id,
                at,
                chamber_cm3,
                hose_m,
            } => self.add_mount(id, at, *chamber_cm3, *hose_m),
            Edit::Remove { id } => self.remove(id),
            Edit::Volume { id, cm3, rel_sd } => {
                check_range("chamber_cm3", *cm3, 1.0, 10_000.0)?;
                check_range("chamber_rel_sd", *rel_sd, 0.0, 1.0)?;
                let part = self.editable(id, |c| {
                    c.kind.side() == super::Side::Vacuum && c.length_m.is_none()
                })?;
                part.volume_cm3 = *cm3;
                part.volume_rel_sd = *rel_sd;
                Ok(())
            }
            Edit::Length { id, m } => {
                check_range("length_m", *m, 0.01, 20.0)?;
                self.editable(id, |c| c.length_m.is_some())?.length_m = Some(*m);
                Ok(())
            }
            Edit::Bore { id, mm } => {
                check_range("bore_mm", *mm, 0.05, 20.0)?;
                self.editable(id, |c| c.bore_mm.is_some())?.bore_mm = Some(*mm);
                Ok(())
            }
            Edit::Access { id, look, open } => {
                check_range("access_min", *look, 0.0, 600.0)?;
                check_range("access_min", *open, 0.0, 600.0)?;
                let part = self.editable(id, |_| true)?;
                part.access.look = *look;
                part.access.open = *open;
                Ok(())
            }
        }
    }

    fn editable(
        &mut self,
        id: &ComponentId,
        fits: impl Fn(&Component) -> bool,
    ) -> Result<&mut Component, CircuitError> {
        match self.components.iter_mut().find(|c| &c.id == id) {
            None => Err(CircuitError::UnknownPart(id.clone())),
            Some(part) if fits(part) => Ok(part),
            Some(_) => Err(CircuitError::DoesNotFit(id.clone())),
        }
    }

    fn add_mount(
        &mut self,
        id: &ComponentId,
        at: &ComponentId,
        chamber_cm3: f64,
        hose_m: f64,
    ) -> Result<(), CircuitError> {
        check_range("chamber_cm3", chamber_cm3, 1.0, 2_000.0)?;
        check_range("length_m", hose_m, 0.01, 20.0)?;
        let hose = ComponentId::new(format!("{id}_hose"));
        for new in [id, &hose] {
            if new.as_str().is_empty() || self.component(new).is_some() {
                return Err(CircuitError::IdInUse(new.clone()));
            }
        }
        let root = self
            .component(at)
            .ok_or_else(|| CircuitError::UnknownPart(at.clone()))?;
        if !matches!(
            root.kind,
            ComponentKind::Tee | ComponentKind::Valve | ComponentKind::Hose
        ) {
            return Err(CircuitError::DoesNotFit(at.clone()));
        }
        let pattern = self.of_kind(ComponentKind::Mount).next();
        let bore = self.of_kind(ComponentKind::Hose).find_map(|h| h.bore_mm);
        let rel_sd = pattern.map_or(0.3, |m| m.volume_rel_sd);
        let at_index = self
            .components
            .iter()
            .rposition(|c| c.kind.side() == super::Side::Vacuum)
            .map_or(0, |i| i + 1);
        let mut part = |component| self.components.insert(at_index, component);
        part(Component {
            id: id.clone(),
            kind: ComponentKind::Mount,
            volume_cm3: chamber_cm3,
            volume_rel_sd: rel_sd,
            length_m: None,
            bore_mm: None,
            area_mm2: None,
            access: super::Access::default(),
        });
        part(Component {
            id: hose.clone(),
            kind: ComponentKind::Hose,
            volume_cm3: 0.0,
            volume_rel_sd: 0.1,
            length_m: Some(hose_m),
            bore_mm: Some(bore.unwrap_or(3.5)),
            area_mm2: None,
            access: super::Access::default(),
        });
        self.links.push(Link {
            from: at.clone(),
            to: hose.clone(),
        });
        self.links.push(Link {
            from: hose,
            to: id.clone(),
        });
        Ok(())
    }

    fn remove(&mut self, id: &ComponentId) -> Result<(), CircuitError> {
        let part = self
            .component(id)
            .ok_or_else(|| CircuitError::UnknownPart(id.clone()))?;
        match part.kind {
            ComponentKind::Mount => {
                if self.of_kind(ComponentKind::Mount).count() == 1 {
                    return Err(CircuitError::CannotRemove(id.clone()));
                }
                self.drop_end(&id.clone());
                Ok(())
            }
            ComponentKind::CheckValve
            | ComponentKind::Reservoir
            | ComponentKind::Hose
            | ComponentKind::Tee
            | ComponentKind::Restrictor
            | ComponentKind::Bleed
            | ComponentKind::Consumer => {
                self.bridge(&id.clone());
                Ok(())
            }
            _ => Err(CircuitError::CannotRemove(id.clone())),
        }
    }

    /// Takes out a part in the middle and joins its neighbours.
    pub(super) fn bridge(&mut self, id: &ComponentId) {
        let from: Vec<_> = self.upstream(id).cloned().collect();
        let to: Vec<_> = self.downstream(id).cloned().collect();
        self.links.retain(|l| &l.from != id && &l.to != id);
        for from in &from {
            for to in &to {
                self.links.push(Link {
                    from: from.clone(),
                    to: to.clone(),
                });
            }
        }
        self.components.retain(|c| &c.id != id);
    }

    /// Takes out a dead end, and the hoses that led only to it.
    fn drop_end(&mut self, id: &ComponentId) {
        let mut end = id.clone();
        loop {
            let feeder = self.upstream(&end).next().cloned();
            self.links.retain(|l| l.to != end);
            self.components.retain(|c| c.id != end);
            match feeder {
                Some(hose)
                    if self
                        .component(&hose)
                        .is_some_and(|c| c.kind == ComponentKind::Hose)
                        && self.downstream(&hose).next().is_none() =>
                {
                    end = hose;
                }
                _ => return,
            }
        }
    }
}
