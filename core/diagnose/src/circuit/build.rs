//! From a choice to a circuit.

use super::data::{ElectricLayout, VacuumLayout, data};
use super::{
    Circuit, CircuitChoice, Component, ComponentKind, CustomCircuit, Drive, Feed, Properties, Switched,
};
use crate::ComponentId;

/// Why a choice gives no circuit.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum CircuitError {
    /// No such template.
    #[error("no template is called '{0}'")]
    UnknownTemplate(String),
    /// No such electric layout.
    #[error("no electric layout is called '{0}'")]
    UnknownLayout(String),
    /// No such component.
    #[error("the circuit has no part '{0}'")]
    UnknownPart(ComponentId),
    /// The component has no such property.
    #[error("'{0}' is not the kind of part for this")]
    DoesNotFit(ComponentId),
    /// An id that is taken or empty.
    #[error("a part '{0}' can't be added: the id is empty or in use")]
    IdInUse(ComponentId),
    /// The circuit makes no sense without it.
    #[error("'{0}' can't be taken out")]
    CannotRemove(ComponentId),
    /// A value out of its range.
    #[error("{name} is {value}, allowed is {min} to {max}")]
    OutOfRange {
        /// Which value.
        name: &'static str,
        /// What it was.
        value: f64,
        /// Smallest allowed.
        min: f64,
        /// Largest allowed.
        max: f64,
    },
    /// Lowest above highest.
    #[error("{name}: the lowest is above the highest")]
    Reversed {
        /// Which pair.
        name: &'static str,
    },
}

/// Whether a value is within its range, bounds included.
pub(super) fn check_range(name: &'static str, value: f64, min: f64, max: f64) -> Result<(), CircuitError> {
    if value.is_finite() && (min..=max).contains(&value) {
        Ok(())
    } else {
        Err(CircuitError::OutOfRange {
            name,
            value,
            min,
            max,
        })
    }
}

impl Circuit {
    /// The circuit that a choice describes.
    ///
    /// # Errors
    /// [`CircuitError`]: a template, layout or part that isn't there, a value out of its range.
    pub fn build(choice: &CircuitChoice) -> Result<Self, CircuitError> {
        let custom = choice.to_custom();
        let vacuum = data()
            .vacuum
            .iter()
            .find(|l| l.id == custom.template)
            .ok_or_else(|| CircuitError::UnknownTemplate(custom.template.clone()))?;
        let wanted = custom.electric.as_ref().unwrap_or(&vacuum.electric);
        let electric = data()
            .electric
            .iter()
            .find(|l| &l.id == wanted)
            .ok_or_else(|| CircuitError::UnknownLayout(wanted.clone()))?;
        let mut circuit = join(vacuum, electric, &custom);
        circuit.adapt(&custom)?;
        for edit in &custom.edits {
            circuit.apply(edit)?;
        }
        Ok(circuit)
    }

    /// Puts in what is known of this vehicle.
    fn adapt(&mut self, custom: &CustomCircuit) -> Result<(), CircuitError> {
        if let Some(rel_sd) = custom.chamber_rel_sd {
            check_range("chamber_rel_sd", rel_sd, 0.0, 1.0)?;
            for part in self
                .components
                .iter_mut()
                .filter(|c| c.kind == ComponentKind::Mount)
            {
                part.volume_rel_sd = rel_sd;
            }
        }
        for (id, cm3) in &custom.chamber_cm3 {
            check_range("chamber_cm3", *cm3, 1.0, 2_000.0)?;
            let part = self.part_mut(id, |c| c.kind == ComponentKind::Mount)?;
            part.volume_cm3 = *cm3;
            if custom.chamber_rel_sd.is_none() {
                part.volume_rel_sd = part.volume_rel_sd.min(STATED_CHAMBER_REL_SD);
            }
        }
        if let Some(mm) = custom.bore_mm {
            check_range("bore_mm", mm, 0.5, 20.0)?;
            for part in self
                .components
                .iter_mut()
                .filter(|c| c.kind == ComponentKind::Hose)
            {
                part.bore_mm = Some(mm);
            }
        }
        for (id, m) in &custom.length_m {
            check_range("length_m", *m, 0.01, 20.0)?;
            self.part_mut(id, |c| c.length_m.is_some())?.length_m = Some(*m);
        }
        if let Some(cm3) = custom.reservoir_cm3 {
            check_range("reservoir_cm3", cm3, 0.0, 10_000.0)?;
            let reservoir = self
                .of_kind(ComponentKind::Reservoir)
                .next()
                .map(|c| c.id.clone());
            match reservoir {
                Some(id) if cm3 == 0.0 => self.bridge(&id),
                Some(id) => {
                    let part = self.part_mut(&id, |_| true)?;
                    part.volume_cm3 = cm3;
                    part.volume_rel_sd = STATED_RESERVOIR_REL_SD;
                }
                None if cm3 == 0.0 => {}
                None => return Err(CircuitError::UnknownPart("reservoir".into())),
            }
        }
        match custom.check_valve {
            Some(false) => {
                let ids: Vec<_> = self
                    .of_kind(ComponentKind::CheckValve)
                    .map(|c| c.id.clone())
                    .collect();
                for id in ids {
                    self.bridge(&id);
                }
            }
            Some(true) if self.of_kind(ComponentKind::CheckValve).next().is_none() => {
                return Err(CircuitError::UnknownPart("check_valve".into()));
            }
            Some(true) | None => {}
        }
        if let Some((low, high)) = custom.coil_ohm {
            check_range("coil_ohm", low, 0.5, 500.0)?;
            check_range("coil_ohm", high, 0.5, 500.0)?;
            if low > high {
                return Err(CircuitError::Reversed { name: "coil_ohm" });
            }
            self.properties.coil_ohm = (low, high);
            self.properties.coil_known = true;
        }
        if let Some(fuse_a) = custom.fuse_a {
            check_range("fuse_a", fuse_a, 0.5, 100.0)?;
            self.properties.fuse_a = fuse_a;
        }
        Ok(())
    }

    fn part_mut(
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
}

/// Uncertainty of a chamber whose volume was given without one. Source: common practice, no source.
const STATED_CHAMBER_REL_SD: f64 = 0.1;
/// Uncertainty of a reservoir whose volume was given. Source: common practice, no source.
const STATED_RESERVOIR_REL_SD: f64 = 0.05;

/// The vacuum layout with the electric layout once for each valve.
fn join(vacuum: &VacuumLayout, electric: &ElectricLayout, custom: &CustomCircuit) -> Circuit {
    let mut components = vacuum.components.clone();
    components.extend(electric.shared.iter().cloned());
    let mut drives = Vec::new();
    for slot in &vacuum.valves {
        let own = |component: &Component| Component {
            id: ComponentId::new(format!("{}{}", slot.prefix, component.id)),
            ..component.clone()
        };
        let mine: Vec<Component> = electric.each.iter().map(own).collect();
        let find = |id: &str| {
            let prefixed = ComponentId::new(format!("{}{id}", slot.prefix));
            let shared = ComponentId::from(id);
            if mine.iter().any(|c| c.id == prefixed) {
                Some(prefixed)
            } else {
                electric.shared.iter().any(|c| c.id == shared).then_some(shared)
            }
        };
        let must = |id: &str| find(id).unwrap_or_else(|| ComponentId::from(id));
        drives.push(Drive {
            valve: slot.valve.clone(),
            battery: must("battery"),
            fuse: must("fuse"),
            relay: find("relay"),
            splice: find("splice"),
            power_wire: must("power_wire"),
            connector: must("connector"),
            coil: must("coil"),
            control_wire: must("control_wire"),
            module: must("module"),
            ground_point: find("ground_point"),
        });
        components.extend(mine);
    }
    for (id, kind) in [
        ("hand_pump", ComponentKind::HandPump),
        ("engine", ComponentKind::Engine),
    ] {
        components.push(Component {
            id: id.into(),
            kind,
            volume_cm3: 0.0,
            volume_rel_sd: 0.0,
            length_m: None,
            bore_mm: None,
            area_mm2: None,
            access: super::Access::default(),
        });
    }
    let plain = custom.electric.is_none();
    Circuit {
        template: vacuum.id.clone(),
        electric: electric.id.clone(),
        properties: Properties {
            vacuum_means: custom.vacuum_means,
            rest: vacuum.rest,
            // A layout that nobody picked says nothing about the vehicle: unknown stays unknown.
            switched: match custom.switched {
                Switched::Unknown if !plain => electric.switched,
                said => said,
            },
            feed: match custom.feed {
                Feed::Unknown if !plain => electric.feed,
                said => said,
            },
            window: custom.window,
            source: vacuum.source,
            bleed: components.iter().any(|c| c.kind == ComponentKind::Bleed),
            pulsed: electric.pulsed,
            push_pull: electric.push_pull,
            fuse_a: electric.fuse_a,
            coil_ohm: electric.coil_ohm,
            coil_known: false,
        },
        components,
        links: vacuum.links.clone(),
        drives,
    }
}
