//! The circuit map's input: parts by name, shaded by suspicion, marked by what is known of them.

use std::collections::{BTreeMap, BTreeSet};

use holdfast_diagnose::{Circuit, CircuitChoice, ComponentId, ComponentKind, TestId, TestKind};
use holdfast_report::{CircuitMap, MapLink, MapPart, PartKind, Scene, State, Suspicion, TestPoint};

use super::known::{part_states, suspicion};
use crate::job::JobView;
use crate::text::{Args, Texts, capital};

/// What a map is to show.
#[derive(Debug, Clone, Copy)]
pub(crate) enum MapOf<'a> {
    /// Suspicion and what is known.
    Job,
    /// The parts under a test and where its tool goes.
    Test(&'a TestId),
    /// The same, and of the circuit only what lies around the test point, for screens with little room.
    Near(&'a TestId),
    /// What was seen so far in the look-over, by component.
    Look(&'a BTreeMap<ComponentId, State>),
}

/// The circuit as a drawing for the screen, its names as large as the phone's words.
#[must_use]
pub(crate) fn circuit_map(texts: &Texts, job: &JobView, of: MapOf<'_>) -> Scene {
    holdfast_report::circuit_map(&CircuitMap {
        larger: texts.larger(),
        ..mapped(texts, job, of)
    })
}

/// The circuit with the place of a test; nothing for a test that is done elsewhere, as on the engine or the meter.
#[must_use]
pub(crate) fn place_map(texts: &Texts, job: &JobView, of: MapOf<'_>) -> Option<Scene> {
    let there = match of {
        MapOf::Test(test) | MapOf::Near(test) => {
            test.kind == TestKind::Look || tool_place(&job.circuit, test).is_some()
        }
        MapOf::Job | MapOf::Look(_) => true,
    };
    there.then(|| circuit_map(texts, job, of))
}

/// The circuit as a drawing for paper.
#[must_use]
pub(super) fn printed_map(texts: &Texts, job: &JobView, of: MapOf<'_>) -> Scene {
    holdfast_report::circuit_map(&mapped(texts, job, of))
}

fn mapped(texts: &Texts, job: &JobView, of: MapOf<'_>) -> CircuitMap {
    let states = match of {
        MapOf::Look(seen) => seen.clone(),
        MapOf::Job | MapOf::Test(_) | MapOf::Near(_) => part_states(&job.done),
    };
    let in_test = match of {
        MapOf::Test(test) | MapOf::Near(test) => job
            .circuit
            .scope(test)
            .map(|scope| scope.parts)
            .unwrap_or_default(),
        MapOf::Job | MapOf::Look(_) => Vec::new(),
    };
    let shares = match of {
        MapOf::Job => suspicion(&job.finding),
        MapOf::Test(_) | MapOf::Near(_) | MapOf::Look(_) => BTreeMap::new(),
    };
    let mut map = plain(texts, &job.circuit);
    for part in &mut map.parts {
        let id = ComponentId::new(part.id.clone());
        part.state = states.get(&id).copied();
        part.in_test = in_test.contains(&id);
        part.suspicion = shares
            .get(&id)
            .filter(|share| **share >= LEAST_SHOWN)
            .map(|share| Suspicion {
                share: *share,
                text: texts.percent(*share),
            });
        part.spoken = spoken(texts, part);
    }
    if let MapOf::Test(test) | MapOf::Near(test) = of
        && let Some(place) = tool_place(&job.circuit, test)
        && let Some(part) = map.parts.iter_mut().find(|part| part.id == place.as_str())
    {
        part.test_point = Some(TestPoint {
            mark: "1".to_owned(),
            lead: None,
        });
        if matches!(of, MapOf::Near(_)) {
            keep_near(&mut map, place.as_str());
        }
    }
    map.alt = alt(texts, job, of, &shares);
    map
}

/// Links between a test point and what is still shown with it.
const NEAR: usize = 2;

/// Leaves only the parts around one, on its own side of the circuit.
fn keep_near(map: &mut CircuitMap, place: &str) {
    let Some(side) = map
        .parts
        .iter()
        .find(|part| part.id == place)
        .map(|part| part.kind.side())
    else {
        return;
    };
    map.parts.retain(|part| part.kind.side() == side);
    let mut near = BTreeSet::from([place.to_owned()]);
    for _ in 0..NEAR {
        let joined: Vec<String> = map
            .links
            .iter()
            .filter_map(
                |link| match (near.contains(&link.from), near.contains(&link.to)) {
                    (true, false) => Some(link.to.clone()),
                    (false, true) => Some(link.from.clone()),
                    _ => None,
                },
            )
            .collect();
        near.extend(joined);
    }
    map.parts.retain(|part| near.contains(&part.id));
}

/// A circuit with nothing known of it.
#[must_use]
pub(crate) fn plain_map(texts: &Texts, circuit: &Circuit) -> Scene {
    let mut map = plain(texts, circuit);
    map.alt = texts.say(&format!("template-{}", circuit.template));
    map.larger = texts.larger();
    holdfast_report::circuit_map(&map)
}

/// A template as a small drawing to choose by; nothing if the template can't be built.
#[must_use]
pub(crate) fn template_card(texts: &Texts, template: &str) -> Option<Scene> {
    let circuit = Circuit::build(&CircuitChoice::Template(template.to_owned())).ok()?;
    let mut map = plain(texts, &circuit);
    map.alt = texts.say(&format!("template-{template}"));
    map.parts
        .retain(|part| part.kind.side() == holdfast_report::Side::Vacuum);
    Some(holdfast_report::circuit_map(&map))
}

/// Suspicions below this are not written on the map.
const LEAST_SHOWN: f64 = 0.01;

/// Where the tool of a test goes: the part under it, or the outlet or inlet hose.
pub(crate) fn tool_place(circuit: &Circuit, test: &TestId) -> Option<ComponentId> {
    let named = |id: &str| {
        circuit
            .component(&id.into())
            .map(|component| component.id.clone())
    };
    let valve = || {
        test.part
            .clone()
            .and_then(|id| named(id.as_str()))
            .or_else(|| named("valve"))
    };
    match test.kind {
        TestKind::Hold
            if test
                .part
                .as_ref()
                .is_some_and(|part| part.as_str().starts_with("branch")) =>
        {
            named("outlet_hose").or_else(valve)
        }
        TestKind::Hold
            if test
                .part
                .as_ref()
                .is_some_and(|part| part.as_str().starts_with("inlet")) =>
        {
            named("inlet_hose").or_else(valve)
        }
        TestKind::Delivered | TestKind::SwitchOver | TestKind::Bypass => named("outlet_hose").or_else(valve),
        TestKind::Source => named("inlet_hose").or_else(valve),
        TestKind::SupplyVolts
        | TestKind::SupplyLoaded
        | TestKind::ValveVolts
        | TestKind::ControlPin
        | TestKind::ControlWire => named("connector"),
        TestKind::PowerWire => named("power_wire"),
        TestKind::Fuse => named("fuse"),
        TestKind::Coil => named("coil"),
        TestKind::ValveOff | TestKind::ValveOn => valve(),
        _ => test.part.clone().filter(|part| circuit.component(part).is_some()),
    }
}

/// The circuit with nothing known.
fn plain(texts: &Texts, circuit: &Circuit) -> CircuitMap {
    let parts = circuit
        .components
        .iter()
        .filter_map(|component| {
            let kind = part_kind(component.kind)?;
            Some(MapPart::new(
                component.id.as_str(),
                kind,
                texts.part_title(&component.id),
            ))
        })
        .collect();
    let vacuum = circuit
        .links
        .iter()
        .map(|link| MapLink::new(link.from.as_str(), link.to.as_str()));
    let electric = circuit.drives.iter().flat_map(|drive| {
        let parts = drive.parts();
        parts
            .iter()
            .zip(parts.iter().skip(1))
            .map(|(from, to)| MapLink::new(from.as_str(), to.as_str()))
            .collect::<Vec<_>>()
    });
    CircuitMap {
        language: texts.language().tag().to_owned(),
        alt: String::new(),
        parts,
        links: vacuum.chain(electric).collect(),
        larger: 1.0,
    }
}

/// The symbol of a component; what stands beside the circuit has none.
fn part_kind(kind: ComponentKind) -> Option<PartKind> {
    Some(match kind {
        ComponentKind::Source => PartKind::Source,
        ComponentKind::CheckValve => PartKind::CheckValve,
        ComponentKind::Reservoir => PartKind::Reservoir,
        ComponentKind::Hose => PartKind::Hose,
        ComponentKind::Tee => PartKind::Tee,
        ComponentKind::Valve => PartKind::Valve,
        ComponentKind::Mount => PartKind::Mount,
        ComponentKind::Restrictor => PartKind::Restrictor,
        ComponentKind::Bleed => PartKind::Bleed,
        ComponentKind::Consumer => PartKind::OtherUser,
        ComponentKind::Battery => PartKind::Battery,
        ComponentKind::Fuse => PartKind::Fuse,
        ComponentKind::Relay => PartKind::Relay,
        ComponentKind::Wire => PartKind::Wire,
        ComponentKind::Connector => PartKind::Connector,
        ComponentKind::Coil => PartKind::Coil,
        ComponentKind::Module => PartKind::Module,
        ComponentKind::GroundPoint => PartKind::GroundPoint,
        ComponentKind::Splice => PartKind::Splice,
        ComponentKind::HandPump | ComponentKind::Engine => return None,
    })
}

/// What a screen reader says of a part.
fn spoken(texts: &Texts, part: &MapPart) -> String {
    let mut words = vec![part.label.clone()];
    if let Some(state) = part.state {
        words.push(texts.say(state_key(state)));
    }
    if let Some(suspicion) = &part.suspicion {
        words.push(texts.say_with(
            "map-suspicion",
            &Args::new().text("percent", suspicion.text.as_str()),
        ));
    }
    words.join(", ")
}

fn state_key(state: State) -> &'static str {
    match state {
        State::Holds => "map-state-good",
        State::SlowLeak => "state-slow-leak",
        State::Leaks => "map-state-bad",
        State::Undecided => "state-undecided",
        State::WontBuild => "state-will-not-build",
        State::NotDone => "state-not-done",
        State::CantDo => "state-cant-do",
    }
}

fn alt(texts: &Texts, job: &JobView, of: MapOf<'_>, shares: &BTreeMap<ComponentId, f64>) -> String {
    match of {
        MapOf::Test(test) | MapOf::Near(test) => {
            texts.say_with("map-alt-test", &Args::new().text("test", texts.test_title(test)))
        }
        MapOf::Look(_) => texts.say("map-alt-look"),
        MapOf::Job => {
            let likeliest = shares
                .iter()
                .filter(|(part, _)| job.circuit.component(part).is_some())
                .max_by(|a, b| a.1.total_cmp(b.1))
                .filter(|(_, share)| **share >= LEAST_SHOWN);
            match likeliest {
                Some((part, share)) => texts.say_with(
                    "map-alt-job",
                    &texts.of_part(part).text("percent", texts.percent(*share)),
                ),
                None => capital(&texts.say("map-alt-plain")),
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use holdfast_diagnose::{layouts, templates};
    use holdfast_report::Item;

    use super::*;
    use crate::text::Language;

    /// Names that had no room on a map, however it is drawn.
    fn cut(texts: &Texts, circuit: &Circuit, larger: f32) -> Vec<String> {
        let mut map = plain(texts, circuit);
        map.larger = larger;
        for part in &mut map.parts {
            part.in_test = true;
            part.suspicion = Some(Suspicion {
                share: 0.5,
                text: texts.percent(0.5),
            });
        }
        let words = holdfast_report::circuit_map(&map).items.into_iter();
        words
            .filter_map(|item| match item {
                Item::Text { text, .. } if text.ends_with('…') => Some(text),
                _ => None,
            })
            .collect()
    }

    #[test]
    fn every_name_fits_every_map_in_every_language() {
        let mut all = Vec::new();
        for (template, layout) in templates()
            .iter()
            .flat_map(|template| layouts().iter().map(move |layout| (template.id, layout.id)))
        {
            let choice = serde_json::json!({"template": template, "electric": layout});
            let circuit = Circuit::build(&serde_json::from_value::<CircuitChoice>(choice).unwrap()).unwrap();
            for language in Language::ALL {
                let texts = Texts::new(language.tag());
                for larger in [1.0, 1.5, 2.0] {
                    let cut = cut(&texts, &circuit, larger).into_iter();
                    all.extend(
                        cut.map(|name| format!("{template} {layout} {} {larger}: {name}", language.tag())),
                    );
                }
            }
        }
        assert!(all.is_empty(), "{all:#?}");
    }
}
