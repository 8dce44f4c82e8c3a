//! Where the red and the black lead go, as a drawing with words.

use holdfast_diagnose::{TestId, TestKind};
use holdfast_report::{ConnectorFace, GroundPlace, Lead, Pin, Scene, connector_face};

use crate::text::{Args, Texts};

/// Where a test's leads go on the valve's connector.
struct Leads {
    /// The lead on pin 1 and on pin 2.
    pins: [Option<Lead>; 2],
    /// The lead on chassis ground, if the test uses it.
    ground: Option<Lead>,
    /// From which side the connector is seen.
    seen_from: &'static str,
}

/// The connector of a meter test with its leads; nothing where the test has no place on a connector.
#[must_use]
pub(crate) fn connector(texts: &Texts, test: &TestId) -> Option<Scene> {
    let leads = leads(test.kind)?;
    let lead_words = |lead: Lead| {
        texts.say(match lead {
            Lead::Red => "connector-red-here",
            Lead::Black => "connector-black-here",
        })
    };
    let pins = leads
        .pins
        .iter()
        .zip(["1", "2"])
        .map(|(lead, number)| Pin {
            id: format!("pin{number}"),
            number: number.to_owned(),
            label: texts.say_with("connector-pin", &Args::new().text("number", number)),
            lead: *lead,
            lead_words: lead.map(lead_words).unwrap_or_default(),
            reading: String::new(),
            state: None,
        })
        .collect();
    let red = texts
        .test_text(test, "lead-red", &Args::new())
        .unwrap_or_default();
    let black = texts
        .test_text(test, "lead-black", &Args::new())
        .unwrap_or_default();
    Some(connector_face(&ConnectorFace {
        alt: texts.say_with(
            "connector-alt",
            &Args::new().text("red", red).text("black", black),
        ),
        seen_from: texts.say(leads.seen_from),
        pins,
        ground: leads.ground.map(|lead| GroundPlace {
            label: texts.say("connector-ground"),
            lead: Some(lead),
            lead_words: lead_words(lead),
        }),
    }))
}

fn leads(kind: TestKind) -> Option<Leads> {
    let (pins, ground, seen_from) = match kind {
        TestKind::SupplyVolts => ([Some(Lead::Red), None], Some(Lead::Black), "connector-seen-from"),
        TestKind::SupplyLoaded => ([Some(Lead::Red), None], Some(Lead::Black), "connector-seen-from"),
        TestKind::ValveVolts => (
            [Some(Lead::Red), Some(Lead::Black)],
            None,
            "connector-seen-from-wires",
        ),
        TestKind::ControlPin => (
            [None, Some(Lead::Red)],
            Some(Lead::Black),
            "connector-seen-from-wires",
        ),
        TestKind::ControlWire => ([None, Some(Lead::Red)], Some(Lead::Black), "connector-seen-from"),
        TestKind::PowerWire => ([Some(Lead::Black), None], None, "connector-seen-from"),
        TestKind::Coil => ([Some(Lead::Red), Some(Lead::Black)], None, "connector-seen-valve"),
        _ => return None,
    };
    Some(Leads {
        pins,
        ground,
        seen_from,
    })
}
