//! The connector face: where the red and the black lead go.

use crate::diagram::sketch::{Sketch, at, solid};
use crate::diagram::state::{Lead, State};
use crate::scene::{Anchor, Role, Scene, Weight};

/// A connector seen from the mating side (the side the pins are seen from). All words are final.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct ConnectorFace {
    /// Alternative text.
    pub alt: String,
    /// Says from which side it is seen, written under the face.
    pub seen_from: String,
    /// Pins from left to right, one to four; further ones are not drawn.
    pub pins: Vec<Pin>,
    /// Chassis ground as a place for a lead, if the test uses it.
    pub ground: Option<GroundPlace>,
}

/// One pin.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Pin {
    /// Region id, such as `pin1`.
    pub id: String,
    /// Number in the face, such as "1".
    pub number: String,
    /// What the pin is, such as "power wire", or empty.
    pub label: String,
    /// The lead that goes on it now.
    pub lead: Option<Lead>,
    /// The lead in words, such as "red lead here".
    pub lead_words: String,
    /// A reading taken on it, as text with unit, or empty.
    pub reading: String,
    /// What the reading says.
    pub state: Option<State>,
}

/// Chassis ground drawn beside the face.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct GroundPlace {
    /// Its name, such as "chassis ground".
    pub label: String,
    /// The lead that goes on it.
    pub lead: Option<Lead>,
    /// The lead in words.
    pub lead_words: String,
}

/// Draws the face, 360 units wide.
#[must_use]
pub fn connector_face(face: &ConnectorFace) -> Scene {
    let mut sketch = Sketch::new();
    let pins: Vec<&Pin> = face.pins.iter().take(4).collect();
    let mut x = 110.0;
    for pin in pins {
        let centre = at(x, 90.0);
        sketch.circle(centre, 20.0, Some(solid(2.0, Role::Ink)), Some(Role::Paper));
        sketch.text(
            at(x, 96.0),
            Anchor::Middle,
            16.0,
            Weight::Bold,
            Role::Ink,
            &pin.number,
        );
        sketch.text(
            at(x, 40.0),
            Anchor::Middle,
            14.0,
            Weight::Regular,
            Role::Ink,
            &pin.label,
        );
        if let Some(lead) = pin.lead {
            sketch.circle(centre, 26.0, Some(solid(4.0, lead.role())), None);
            sketch.text(
                at(x, 140.0),
                Anchor::Middle,
                14.0,
                Weight::Bold,
                lead.role(),
                &pin.lead_words,
            );
        }
        sketch.region(&pin.id, at(x - 28.0, 62.0), 56.0, 56.0, &pin.label);
        x += 90.0;
    }
    sketch.text(
        at(180.0, 190.0),
        Anchor::Middle,
        14.0,
        Weight::Regular,
        Role::QuietInk,
        &face.seen_from,
    );
    sketch.finish(360.0, 200.0, &face.alt)
}
