//! The connector face: where the red and the black lead go.

use crate::diagram::label::Place;
use crate::diagram::sketch::{Sketch, at, solid};
use crate::diagram::state::{Lead, State};
use crate::scene::{Anchor, Role, Scene, Weight};

/// A connector seen from the mating side (the side the pins are seen from). All words are final.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct ConnectorFace {
    /// BCP 47 tag of the language of the words: names are broken by its rules.
    pub language: String,
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
    /// The lead in words, such as "red lead".
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

const WIDTH: f32 = 360.0;
const HEIGHT: f32 = 264.0;
const PIN_Y: f32 = 104.0;
const SMALL: f32 = 15.0;
/// From line to line of words.
const LEADING: f32 = 17.0;

/// Draws the face, 360 by 264 units.
#[must_use]
pub fn connector_face(face: &ConnectorFace) -> Scene {
    let mut sketch = Sketch::new();
    let pins = face.pins.get(..face.pins.len().min(4)).unwrap_or_default();
    let columns = pins.len().max(1) + usize::from(face.ground.is_some());
    let column = (WIDTH / columns as f32).min(132.0);
    let left = (WIDTH - column * columns as f32) / 2.0;
    let centre = |i: usize| left + column * (i as f32 + 0.5);

    housing(
        &mut sketch,
        left + column / 2.0 - 44.0,
        column * (pins.len().max(1) - 1) as f32 + 88.0,
    );
    for (i, pin) in pins.iter().enumerate() {
        let x = centre(i);
        // What the pin is stands above the face, its number in the cavity.
        name_above(&mut sketch, x, &pin.label, column, &face.language);
        sketch.rounded(
            at(x - 21.0, PIN_Y - 23.0),
            42.0,
            46.0,
            7.0,
            Some(solid(2.0, Role::Ink)),
            Some(Role::Paper),
        );
        if let Some(lead) = pin.lead {
            probe(
                &mut sketch,
                x,
                PIN_Y,
                (lead, &pin.lead_words),
                column - 8.0,
                &face.language,
            );
        }
        sketch.circle(
            at(x, PIN_Y),
            13.0,
            Some(solid(2.0, Role::Ink)),
            Some(Role::Raised),
        );
        sketch.text(
            at(x, PIN_Y + 6.0),
            Anchor::Middle,
            18.0,
            Weight::Bold,
            Role::Ink,
            &pin.number,
        );
        if !pin.reading.is_empty() {
            let role = pin.state.map_or(Role::Ink, State::role);
            let half = crate::text::Ruler::of(Weight::Bold, 18.0).width(&pin.reading) / 2.0;
            let right = if let Some(state) = pin.state {
                sketch.state(at(x - half - 2.0, 228.0), 7.0, state);
                10.0
            } else {
                0.0
            };
            sketch.text(
                at(x + right, 234.0),
                Anchor::Middle,
                18.0,
                Weight::Bold,
                role,
                &pin.reading,
            );
        }
        sketch.region(
            &pin.id,
            at(x - column / 2.0, PIN_Y - 32.0),
            column,
            64.0,
            &pin.label,
        );
    }
    if let Some(ground) = &face.ground {
        draw_ground(&mut sketch, centre(columns - 1), ground, column, &face.language);
    }
    sketch.text(
        at(WIDTH / 2.0, 257.0),
        Anchor::Middle,
        SMALL,
        Weight::Regular,
        Role::QuietInk,
        &face.seen_from,
    );
    sketch.finish(WIDTH, HEIGHT, &face.alt)
}

/// The connector's body, with the lock on top so that left and right can't be taken for each other.
fn housing(sketch: &mut Sketch, left: f32, width: f32) {
    let top = PIN_Y - 42.0;
    let stroke = Some(solid(2.2, Role::Ink));
    let middle = left + width / 2.0;
    sketch.rounded(
        at(middle - 19.0, top - 13.0),
        38.0,
        22.0,
        5.0,
        stroke,
        Some(Role::Raised),
    );
    sketch.rounded(at(left, top), width, 84.0, 16.0, stroke, Some(Role::Raised));
    sketch.rounded(
        at(left + 7.0, top + 7.0),
        width - 14.0,
        70.0,
        11.0,
        Some(solid(1.0, Role::Line)),
        None,
    );
}

/// A meter lead that comes from below, with its name on it in one line or two.
fn probe(sketch: &mut Sketch, x: f32, y: f32, (lead, words): (Lead, &str), width: f32, language: &str) {
    let role = lead.role();
    sketch.line(&[at(x, y), at(x, 172.0)], solid(5.0, role));
    let name = Place {
        language,
        weight: Weight::Bold,
        size: SMALL,
        width: width - 12.0,
        lines: 2,
    };
    let lines = name.wrapped(words);
    let ruler = crate::text::Ruler::of(Weight::Bold, SMALL);
    let widest = lines.iter().map(|line| ruler.width(line)).fold(0.0, f32::max);
    let half = (widest / 2.0 + 9.0).clamp(20.0, width / 2.0);
    let height = 10.0 + LEADING * lines.len().max(1) as f32;
    sketch.rounded(at(x - half, 170.0), half * 2.0, height, 9.0, None, Some(role));
    for (n, line) in lines.iter().enumerate() {
        let place = at(x, 188.5 + LEADING * n as f32);
        sketch.text(place, Anchor::Middle, SMALL, Weight::Bold, Role::OnNeedle, line);
    }
}

/// What a place for a lead is, in two lines above it.
fn name_above(sketch: &mut Sketch, x: f32, name: &str, column: f32, language: &str) {
    let place = Place {
        language,
        weight: Weight::Regular,
        size: SMALL,
        width: column - 8.0,
        lines: 2,
    };
    for (n, line) in place.wrapped(name).iter().enumerate() {
        let y = 18.0 + LEADING * n as f32;
        sketch.text(at(x, y), Anchor::Middle, SMALL, Weight::Regular, Role::Ink, line);
    }
}

fn draw_ground(sketch: &mut Sketch, x: f32, ground: &GroundPlace, column: f32, language: &str) {
    name_above(sketch, x, &ground.label, column, language);
    sketch.line(&[at(x, 52.0), at(x, 80.0)], solid(2.5, Role::Ink));
    for (half, dy) in [(24.0, 0.0), (16.0, 10.0), (8.0, 20.0)] {
        sketch.line(
            &[at(x - half, 80.0 + dy), at(x + half, 80.0 + dy)],
            solid(2.5, Role::Ink),
        );
    }
    if let Some(lead) = ground.lead {
        probe(
            sketch,
            x,
            108.0,
            (lead, &ground.lead_words),
            column - 8.0,
            language,
        );
        sketch.circle(at(x, 108.0), 6.0, None, Some(lead.role()));
    }
}
