//! Where the red and the black lead go, as a drawing with words.

use holdfast_diagnose::{Circuit, Switched, TestId, TestKind};
use holdfast_report::{ConnectorFace, GroundPlace, Lead, Pin, Scene, connector_face};

use crate::text::{Args, Texts};

/// Where a test's leads go on the valve's connector.
struct Leads {
    /// The lead on pin 1 and on pin 2.
    pins: [Option<Lead>; 2],
    /// The lead on chassis ground, if the test uses it.
    ground: Option<Lead>,
    /// From which side the connector is seen.
    seen_from: SeenFrom,
}

/// The side that a connector is seen from, its latch up.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum SeenFrom {
    /// Into the open face of the car's connector: here the pins are counted from the left.
    Face,
    /// From behind, where its wires go in.
    Wires,
    /// Into the valve's socket, which it goes on.
    Socket,
}

impl SeenFrom {
    fn words(self) -> &'static str {
        match self {
            Self::Face => "connector-seen-from",
            Self::Wires => "connector-seen-from-wires",
            Self::Socket => "connector-seen-valve",
        }
    }

    /// From behind, and in what it goes on, left and right change places.
    fn is_mirrored(self) -> bool {
        self != Self::Face
    }
}

/// What the two pins are, by how the valve is wired.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Wiring {
    /// Power on one pin, the module grounds the other; also where nobody said.
    GroundSide,
    /// The module gives the power, the other pin is on ground.
    SupplySide,
    /// The module drives both.
    BothSides,
}

impl Wiring {
    fn of(circuit: &Circuit) -> Self {
        match circuit.properties.switched {
            _ if circuit.properties.push_pull => Self::BothSides,
            Switched::Supply => Self::SupplySide,
            Switched::Ground | Switched::Unknown => Self::GroundSide,
        }
    }

    /// The pins' names.
    fn pins(self) -> [&'static str; 2] {
        match self {
            Self::GroundSide => ["connector-power-pin", "connector-control-pin"],
            Self::SupplySide => ["connector-control-pin", "connector-ground-pin"],
            Self::BothSides => ["connector-control-pin", "connector-control-pin"],
        }
    }
}

/// The connector of a meter test with its leads; nothing where the test has no place on a connector.
#[must_use]
pub(crate) fn connector(texts: &Texts, circuit: &Circuit, test: &TestId) -> Option<Scene> {
    let wiring = Wiring::of(circuit);
    let leads = leads(test.kind, wiring)?;
    let lead_words = |lead: Lead| {
        texts.say(match lead {
            Lead::Red => "connector-red-here",
            Lead::Black => "connector-black-here",
        })
    };
    // Which pin is which is what the first test finds out, and the coil has no sides.
    let named = !matches!(test.kind, TestKind::SupplyVolts | TestKind::Coil) || wiring == Wiring::BothSides;
    let mut pins: Vec<Pin> = leads
        .pins
        .iter()
        .zip(["1", "2"])
        .zip(wiring.pins())
        .map(|((lead, number), name)| Pin {
            id: format!("pin{number}"),
            number: number.to_owned(),
            label: if named {
                texts.say(name)
            } else {
                texts.say_with("connector-pin", &Args::new().text("number", number))
            },
            lead: *lead,
            lead_words: lead.map(lead_words).unwrap_or_default(),
            reading: String::new(),
            state: None,
        })
        .collect();
    if leads.seen_from.is_mirrored() {
        pins.reverse();
    }
    let [red, black] = lead_lines(texts, circuit, test).map(Option::unwrap_or_default);
    Some(connector_face(&ConnectorFace {
        language: texts.language().tag().to_owned(),
        alt: texts.say_with(
            "connector-alt",
            &Args::new().text("red", red).text("black", black),
        ),
        seen_from: texts.say(leads.seen_from.words()),
        pins,
        ground: leads.ground.map(|lead| GroundPlace {
            label: texts.say("connector-ground"),
            lead: Some(lead),
            lead_words: lead_words(lead),
        }),
    }))
}

/// Where the red and the black lead go, in words.
#[must_use]
pub(crate) fn lead_lines(texts: &Texts, circuit: &Circuit, test: &TestId) -> [Option<String>; 2] {
    let usual = |what: &str| texts.test_text(test, what, &Args::new());
    let say = |key: &str| Some(texts.say(key));
    match (Wiring::of(circuit), test.kind) {
        (Wiring::SupplySide, TestKind::ValveVolts) => {
            [say("lead-red-control-pin"), say("lead-black-ground-pin")]
        }
        (Wiring::SupplySide, TestKind::SupplyLoaded) => {
            [say("lead-red-control-pin-lamp"), usual("lead-black")]
        }
        (Wiring::BothSides, TestKind::ValveVolts) => [say("lead-red-pin-1"), say("lead-black-pin-2")],
        (Wiring::BothSides, TestKind::ControlPin | TestKind::SupplyLoaded) => {
            [say("lead-red-each-pin"), usual("lead-black")]
        }
        _ => [usual("lead-red"), usual("lead-black")],
    }
}

fn leads(kind: TestKind, wiring: Wiring) -> Option<Leads> {
    let (red, black) = (Some(Lead::Red), Some(Lead::Black));
    // The pin with the control wire.
    let control = match wiring {
        Wiring::GroundSide => [None, red],
        Wiring::SupplySide | Wiring::BothSides => [red, None],
    };
    let (pins, ground, seen_from) = match kind {
        TestKind::SupplyVolts | TestKind::SupplyLoaded => ([red, None], black, SeenFrom::Face),
        TestKind::ValveVolts => ([red, black], None, SeenFrom::Wires),
        TestKind::ControlPin => (control, black, SeenFrom::Wires),
        TestKind::ControlWire => (control, black, SeenFrom::Face),
        TestKind::PowerWire if wiring == Wiring::GroundSide => ([black, None], None, SeenFrom::Face),
        TestKind::Coil => ([red, black], None, SeenFrom::Socket),
        _ => return None,
    };
    Some(Leads {
        pins,
        ground,
        seen_from,
    })
}

#[cfg(test)]
mod tests {
    use holdfast_diagnose::CircuitChoice;
    use holdfast_report::Item;

    use super::*;

    /// What is written on a test's connector in a layout, and the words for the leads.
    fn shown(electric: &str, kind: TestKind) -> (Vec<String>, [Option<String>; 2]) {
        let choice: CircuitChoice = serde_json::from_value(
            serde_json::json!({"template": "two-mounts-one-valve", "electric": electric}),
        )
        .unwrap();
        let circuit = Circuit::build(&choice).unwrap();
        let (texts, test) = (Texts::new("en-US"), TestId::of(kind));
        let scene = connector(&texts, &circuit, &test).unwrap();
        let words = scene
            .items
            .into_iter()
            .filter_map(|item| match item {
                Item::Text { text, .. } => Some(text),
                _ => None,
            })
            .collect();
        (words, lead_lines(&texts, &circuit, &test))
    }

    fn count(words: &[String], wanted: &str) -> usize {
        words.iter().filter(|word| *word == wanted).count()
    }

    #[test]
    fn pins_are_named_by_the_side_that_is_switched() {
        let (ground_side, _) = shown("ignition-fed-ground-switched", TestKind::ValveVolts);
        assert_eq!(count(&ground_side, "power wire"), 1);
        assert_eq!(count(&ground_side, "control wire"), 1);
        let (supply_side, leads) = shown("supply-switched", TestKind::ValveVolts);
        assert_eq!(count(&supply_side, "power wire"), 0);
        assert_eq!(count(&supply_side, "ground wire"), 1);
        assert_eq!(leads[0].as_deref(), Some("Red lead on the control pin."));
    }

    #[test]
    fn a_valve_driven_on_both_pins_has_two_control_wires() {
        let (both, leads) = shown("push-pull", TestKind::ControlPin);
        assert_eq!(count(&both, "control wire"), 2);
        assert!(leads[0].as_deref().unwrap().contains("then the other"));
    }

    #[test]
    fn left_and_right_change_places_from_behind_and_in_the_valve() {
        let numbers = |kind| {
            let (words, _) = shown("ignition-fed-ground-switched", kind);
            let numbers = words.into_iter().filter(|word| word == "1" || word == "2");
            numbers.collect::<Vec<_>>()
        };
        assert_eq!(numbers(TestKind::SupplyVolts), ["1", "2"], "into its face");
        assert_eq!(numbers(TestKind::ControlPin), ["2", "1"], "from its wires");
        assert_eq!(numbers(TestKind::Coil), ["2", "1"], "into the valve");
    }

    #[test]
    fn every_name_fits_every_connector_in_every_language() {
        let mut all = Vec::new();
        for layout in holdfast_diagnose::layouts() {
            let choice = serde_json::json!({"template": "two-mounts-one-valve", "electric": layout.id});
            let circuit = Circuit::build(&serde_json::from_value::<CircuitChoice>(choice).unwrap()).unwrap();
            for language in crate::text::Language::ALL {
                let texts = Texts::new(language.tag());
                let faces = TestKind::ALL
                    .into_iter()
                    .filter_map(|kind| connector(&texts, &circuit, &TestId::of(kind)));
                all.extend(faces.flat_map(|face| face.items).filter_map(|item| match item {
                    Item::Text { text, .. } if text.ends_with('…') => {
                        Some(format!("{} {}: {text}", layout.id, language.tag()))
                    }
                    _ => None,
                }));
            }
        }
        assert!(all.is_empty(), "{all:#?}");
    }
}
